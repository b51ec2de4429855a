"""A throw-away PostgreSQL server: made in a temporary folder, reached by a Unix socket alone, gone afterwards.

As a program, it runs a command beside a server, whose address the command finds in WM_SERVER, and what stops and starts it in WM_SERVER_CONTROL."""
import contextlib
import os
import pathlib
import pwd
import shlex
import shutil
import signal
import subprocess
import sys
import tempfile

import judging


def binaries():
    found = sorted(pathlib.Path("/usr/lib/postgresql").glob("*/bin/initdb"), key=lambda p: float(p.parts[-3]))
    if found:
        return found[-1].parent
    initdb = shutil.which("initdb")
    return pathlib.Path(initdb).parent if initdb else judging.skip("postgresql-15", "PostgreSQL's initdb")


class Cluster:
    """A server's folder, and what is done with it. `settings` go to the server beside the usual ones; `within`: where the folder
    is made, on the system's own place for such otherwise."""

    def __init__(self, settings="", within=None):
        self.programs = binaries()
        self.folder = pathlib.Path(tempfile.mkdtemp(prefix="oracle-pg-", dir=within))
        self.before, user = [], pwd.getpwuid(os.getuid()).pw_name
        if os.getuid() == 0:  # the server refuses to be root
            user = "postgres" if any(p.pw_name == "postgres" for p in pwd.getpwall()) else "nobody"
            shutil.chown(self.folder, user)
            self.before = ["runuser", "-u", user, "--"]
        self.data, self.log = self.folder / "data", "log"
        # The machine itself does not fail here, so that nothing need reach the disk for a killed server to find it again.
        self.settings = f"-k {self.folder} -c listen_addresses= -c fsync=off -c full_page_writes=off {settings}"
        self.run("initdb", "-D", self.data, "-U", "judge", "-A", "trust", "-E", "UTF8", "--locale=C", "--no-sync")

    def run(self, name, *words, **more):
        done = subprocess.run([*self.before, str(self.programs / name), *map(str, words)], capture_output=True,
                              text=True, cwd="/", **more)
        if done.returncode != 0:
            raise RuntimeError(f"{name} failed: {done.stdout[-2000:]}{done.stderr[-4000:]}")
        return done.stdout

    def script(self, text, database="postgres"):
        """What psql prints for it."""
        return self.run("psql", "-X", "-q", "-At", "-v", "ON_ERROR_STOP=1", "-h", self.folder, "-U", "judge", "-d",
                        database, input=text)

    def address(self, database="postgres", user="judge"):
        return f"postgresql://{user}@/{database}?host={self.folder}"

    def start(self):
        self.run("pg_ctl", "-D", self.data, "-w", "-l", self.folder / self.log, "-o", self.settings, "start")

    def stop(self):
        self.run("pg_ctl", "-D", self.data, "-m", "immediate", "-w", "stop")

    def kill(self):
        """As a power cut would: the server's own process, and its children find out by themselves."""
        os.kill(int((self.data / "postmaster.pid").read_text().split()[0]), signal.SIGKILL)


@contextlib.contextmanager
def cluster(settings="", within=None):
    made = Cluster(settings, within)
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(1))  # so that what follows `finally` is done
    try:
        made.start()
        try:
            yield made
        finally:
            made.stop()
    finally:
        shutil.rmtree(made.folder, ignore_errors=True)


@contextlib.contextmanager
def server():
    """Yields a function that runs a script by psql and returns what it prints."""
    with cluster("-c max_connections=5") as made:
        yield made.script


def control_of(made):
    """A program that stops and starts the server."""
    program = made.folder / "control"
    words = [*made.before, str(made.programs / "pg_ctl"), "-D", str(made.data), "-w", "-l", str(made.folder / made.log), "-o", made.settings]
    program.write_text(f'#!/bin/sh\ncd /\nexec {shlex.join(words)} "$@" >/dev/null\n')
    program.chmod(0o755)
    return str(program)


def main():
    with cluster("-c max_connections=40") as made:
        return subprocess.run(sys.argv[1:], env={**os.environ, "WM_SERVER": made.address(), "WM_SERVER_CONTROL": control_of(made)}).returncode


if __name__ == "__main__":
    sys.exit(main())
