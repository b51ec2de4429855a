"""Desks at a server with a synchronous replica: the first server is killed in the middle of their work, the replica is promoted, and the
desks go on there by themselves. Everything that a desk was told is entered must be there. See README.md.

usage: replica.py CROWD [--desks 4] [--commands 400]"""
import argparse
import pathlib
import shutil
import socket
import subprocess
import sys
import tempfile
import time

sys.path.insert(0, str(pathlib.Path(__file__).parents[1] / "oracles"))
import cluster as servers  # noqa: E402


def free_port():
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        return one.getsockname()[1]


def loopback(port):
    return f"-c listen_addresses=127.0.0.1 -c port={port}"


def replica_of(first, ports):
    """A second server that follows the first, which from then on answers only what is on both."""
    second = servers.Cluster.__new__(servers.Cluster)
    second.programs, second.before, second.folder = first.programs, first.before, first.folder
    second.data, second.log = first.folder / "replica", "replica-log"
    second.settings = f"-k {first.folder} -c fsync=off {loopback(ports[1])}"
    second.run("pg_basebackup", "-h", "127.0.0.1", "-p", ports[0], "-U", "judge", "-D", second.data, "-X", "stream", "-R", "-C", "-S", "second", "-c", "fast",
               "-d", "application_name=second")
    second.start()
    said = lambda sql: first.run("psql", "-X", "-q", "-At", "-h", first.folder, "-p", ports[0], "-U", "judge", "-d", "postgres", input=sql)  # noqa: E731
    said("ALTER SYSTEM SET synchronous_standby_names = 'FIRST 1 (second)'; SELECT pg_reload_conf();")
    for _ in range(100):
        if said("SELECT sync_state FROM pg_stat_replication").strip() == "sync":
            return second
        time.sleep(0.1)
    raise SystemExit("the replica does not follow: " + (first.folder / "replica-log").read_text()[-2000:])


def both(args, first, ports, notes):
    first.start()
    psql = ["psql", "-X", "-q", "-h", first.folder, "-p", ports[0], "-U", "judge", "-d", "postgres"]
    first.run(*psql, input="CREATE DATABASE shop")
    # Both servers stand in the address; a desk takes whichever may be written to.
    store = f"postgresql://judge@/shop?host=127.0.0.1,127.0.0.1&port={ports[0]},{ports[1]}&target_session_attrs=read-write"
    subprocess.run([args.crowd, "make", store], check=True)
    second = replica_of(first, ports)
    try:
        each = str(-(-args.commands // args.desks))
        desks = [subprocess.Popen([args.crowd, "work", store, str(n), each, str(note)]) for n, note in enumerate(notes)]
        done = lambda: sum(len(note.read_text().splitlines()) for note in notes if note.exists())  # noqa: E731
        while done() < args.commands // 3:
            time.sleep(0.02)
        told = done()
        first.kill()
        second.run("pg_ctl", "-D", second.data, "-w", "promote")
        wrong = [desk.wait() for desk in desks]
        print(f"{args.desks} desks, {told} commands answered when the first server was killed, {done()} in all", flush=True)
        checked = subprocess.run([args.crowd, "check", store, *map(str, notes)]).returncode
        return 1 if any(wrong) or told >= args.commands else checked
    finally:
        second.stop()


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("crowd")
    parser.add_argument("--desks", type=int, default=4)
    parser.add_argument("--commands", type=int, default=400)
    args = parser.parse_args()
    ports = free_port(), free_port()
    first = servers.Cluster(loopback(ports[0]))
    try:
        with tempfile.TemporaryDirectory(prefix="replica-") as name:
            return both(args, first, ports, [pathlib.Path(name) / f"notes-{n}" for n in range(args.desks)])
    finally:
        shutil.rmtree(first.folder, ignore_errors=True)


if __name__ == "__main__":
    sys.exit(main())
