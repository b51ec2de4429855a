"""A throw-away PostgreSQL server: made in a temporary folder, reached by a Unix socket alone, gone afterwards."""
import contextlib
import os
import pathlib
import pwd
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


@contextlib.contextmanager
def server():
    """Yields a function that runs a script by psql and returns what it prints."""
    programs = binaries()
    folder = pathlib.Path(tempfile.mkdtemp(prefix="oracle-pg-"))
    before, user = [], pwd.getpwuid(os.getuid()).pw_name
    if os.getuid() == 0:  # the server refuses to be root
        user = "postgres" if any(p.pw_name == "postgres" for p in pwd.getpwall()) else "nobody"
        shutil.chown(folder, user)
        before = ["runuser", "-u", user, "--"]
    data = folder / "data"

    def run(name, *words, **more):
        done = subprocess.run([*before, str(programs / name), *map(str, words)], capture_output=True, text=True,
                              cwd="/", **more)
        if done.returncode != 0:
            raise RuntimeError(f"{name} failed: {done.stdout[-2000:]}{done.stderr[-4000:]}")
        return done.stdout

    def script(text):
        return run("psql", "-X", "-q", "-At", "-v", "ON_ERROR_STOP=1", "-h", folder, "-U", "judge", "-d", "postgres",
                   input=text)

    signal.signal(signal.SIGTERM, lambda *_: sys.exit(1))  # so that what follows `finally` is done
    try:
        run("initdb", "-D", data, "-U", "judge", "-A", "trust", "-E", "UTF8", "--locale=C", "--no-sync")
        settings = f"-k {folder} -c listen_addresses= -c fsync=off -c full_page_writes=off -c max_connections=5"
        run("pg_ctl", "-D", data, "-w", "-l", folder / "log", "-o", settings, "start")
        try:
            yield script
        finally:
            run("pg_ctl", "-D", data, "-m", "immediate", "-w", "stop")
    finally:
        shutil.rmtree(folder, ignore_errors=True)
