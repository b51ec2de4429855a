"""Many desks at once on one store, with desks and the server killed at random: nothing lost, nothing twice. See README.md.

usage: crowd.py CROWD [--engine postgres|file] [--desks 8] [--commands 2000] [--calm 1] [--seed N]"""
import argparse
import pathlib
import random
import subprocess
import sys
import tempfile
import time

sys.path.insert(0, str(pathlib.Path(__file__).parents[1] / "oracles"))
import cluster as servers  # noqa: E402


class Desk:
    def __init__(self, crowd, store, number, commands, folder):
        self.notes = folder / f"notes-{number}"
        self.words = [crowd, "work", store, str(number), str(commands), str(self.notes)]
        self.begin()

    def begin(self):
        self.process = subprocess.Popen(self.words)

    def is_done(self):
        """A desk that was killed begins again where its notes end."""
        returned = self.process.poll()
        if returned is not None and returned < 0:
            self.begin()
        elif returned is not None and returned > 0:
            raise SystemExit(f"a desk failed: {' '.join(self.words)}")
        return returned == 0


def start_again(server):
    """What the killed server left holds its memory for a moment."""
    for _ in range(100):
        try:
            return server.start()
        except RuntimeError:
            time.sleep(0.1)
    raise SystemExit("the server does not come back: " + (server.folder / "log").read_text()[-2000:])


def work(args, store, folder, server):
    each = -(-args.commands // args.desks)
    desks = [Desk(args.crowd, store, n, each, folder) for n in range(args.desks)]
    killed = {"desks": 0, "servers": 0}
    longer = args.calm * max(1, args.commands / 10000)
    next_server = time.monotonic() + random.uniform(1, 3) * args.calm
    began = time.monotonic()
    while not all([desk.is_done() for desk in desks]):
        time.sleep(random.uniform(0.05, 0.4) * longer)
        running = [desk for desk in desks if desk.process.poll() is None]
        if running:
            random.choice(running).process.kill()
            killed["desks"] += 1
        if server and time.monotonic() > next_server:
            server.kill()
            start_again(server)
            killed["servers"] += 1
            next_server = time.monotonic() + random.uniform(2, 5) * longer
    took = time.monotonic() - began
    print(f"{args.desks} desks, {took:.1f} s; desks killed {killed['desks']} times, the server {killed['servers']} times;"
          f" seed {args.seed}", flush=True)
    return subprocess.run([args.crowd, "check", store, *[str(desk.notes) for desk in desks]]).returncode


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("crowd")
    parser.add_argument("--engine", choices=["postgres", "file"], default="postgres")
    parser.add_argument("--desks", type=int, default=8)
    parser.add_argument("--commands", type=int, default=2000)
    parser.add_argument("--calm", type=float, default=1, help="so many times as long between one kill and the next")
    parser.add_argument("--seed", type=int, default=random.randrange(10**6))
    args = parser.parse_args()
    random.seed(args.seed)
    with tempfile.TemporaryDirectory(prefix="crowd-") as name:
        folder = pathlib.Path(name)
        if args.engine == "file":
            store = str(folder / "shop.wm")
            subprocess.run([args.crowd, "make", store], check=True)
            return work(args, store, folder, None)
        with servers.cluster("-c max_connections=60") as server:
            server.script("CREATE DATABASE shop")
            store = server.address("shop")
            subprocess.run([args.crowd, "make", store], check=True)
            return work(args, store, folder, server)


if __name__ == "__main__":
    sys.exit(main())
