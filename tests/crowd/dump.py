"""What whoever looks after a server does by himself: a shop dumped by pg_dump while desks are at work, and restored into another database.
The shop there opens, is whole to the verifier, has a part of the commits and all of what was answered before the dump began, and still refuses
what it refused. See README.md.

usage: dump.py CROWD"""
import pathlib
import subprocess
import sys
import tempfile
import time

sys.path.insert(0, str(pathlib.Path(__file__).parents[1] / "oracles"))
import cluster as servers  # noqa: E402

FORBIDDEN = ("DELETE FROM records", "UPDATE records SET leaf = leaf", "DELETE FROM taken", "UPDATE tree_edge SET size = size - 1",
             "INSERT INTO taken SELECT 1, 'machine b1', 0, 9, NULL FROM shop",
             "INSERT INTO records SELECT max(ord) + 1, max(commit_no), 'new', 'use', 9999999999, NULL, NULL, '{}', '' FROM records")


def main():
    crowd = sys.argv[1]
    with tempfile.TemporaryDirectory(prefix="dump-") as name, servers.cluster() as server:
        notes, before = pathlib.Path(name) / "notes", pathlib.Path(name) / "before"
        for database in ("shop", "restored"):
            server.script(f"CREATE DATABASE {database}")
        shop, restored = server.address("shop"), server.address("restored")
        subprocess.run([crowd, "make", shop], check=True)
        subprocess.run([crowd, "work", shop, "0", "100", str(notes)], check=True)
        before.write_text(notes.read_text())
        desk = subprocess.Popen([crowd, "work", shop, "0", "400", str(notes)])
        while len(notes.read_text().splitlines()) < 120:
            time.sleep(0.01)
        dump = server.folder / "shop.dump"
        server.run("pg_dump", "-Fc", "-d", shop, "-f", dump)
        desk.wait()
        server.run("pg_restore", "-d", restored, "--exit-on-error", dump)
        wrong = subprocess.run([crowd, "holds", restored, str(before)]).returncode
        for sql in FORBIDDEN:
            try:
                server.script(sql, "restored")
            except RuntimeError:
                continue
            print("was not refused: " + sql)
            wrong = 1
        wrong = wrong or subprocess.run([crowd, "work", restored, "1", "50", str(notes) + "-1"]).returncode
        return wrong


if __name__ == "__main__":
    sys.exit(main())
