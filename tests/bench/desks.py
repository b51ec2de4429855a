#!/usr/bin/env python3
"""One, five and twenty desks at one store, each a program of its own, on a PostgreSQL server and on a file: commands a second
and how long one takes. Prints a table; nothing passes or fails.

usage: desks.py DESKS FOLDER [--desks 1,5,20] [--seconds 20] [--part 0.05]"""
import argparse
import pathlib
import subprocess
import sys

sys.path.insert(0, str(pathlib.Path(__file__).parents[1] / "oracles"))
import cluster as servers  # noqa: E402


def together(all_words):
    """Programs that begin at the same moment, and what each of them printed."""
    running = [subprocess.Popen(words, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True) for words in all_words]
    for one in running:
        if one.stdout.readline() != "ready\n":
            raise SystemExit("a desk does not begin: " + " ".join(one.args))
    for one in running:
        one.stdin.write("go\n")
        one.stdin.flush()
    said = [one.communicate()[0] for one in running]
    if any(one.returncode for one in running):
        raise SystemExit("a desk failed")
    return [(line.split()[0], float(line.split()[1])) for text in said for line in text.splitlines()]


def line(what, desks, seconds, took):
    times = sorted(one for _, one in took)
    at = lambda percent: times[min(len(times) - 1, len(times) * percent // 100)]  # noqa: E731
    refused = sum(kind.endswith("-refused") for kind, _ in took)
    print(f"| {what} | {desks} | {len(times) / seconds:.0f} | {at(50) * 1e3:.1f} ms | {at(99) * 1e3:.1f} ms | {len(times)} | {refused} |",
          flush=True)


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("program")
    parser.add_argument("folder", type=pathlib.Path)
    parser.add_argument("--desks", default="1,5,20")
    parser.add_argument("--seconds", type=float, default=20)
    parser.add_argument("--part", default="0.05")
    args = parser.parse_args()
    counts = [int(n) for n in args.desks.split(",")]
    store = str(args.folder / "w.witnessmark")
    subprocess.run([args.program, "make", store, args.part], check=True)
    # Here a commit is to reach the disk, and on the one where the file lies too.
    with servers.cluster("-c max_connections=60 -c fsync=on -c full_page_writes=on", args.folder) as server:
        server.script("CREATE DATABASE shop")
        subprocess.run([args.program, "take", store, server.address("shop")], check=True)
        print("| where | desks | commands a second | median | 99 of 100 | commands | of them refused |\n|---|---|---|---|---|---|---|")
        round_no = 0
        for desks in counts:
            for what, place in (("the shop on PostgreSQL", server.address("shop")), ("the shop's file", store)):
                round_no += 1
                took = together([args.program, "work", place, f"round{round_no}-desk{n}", str(args.seconds)] for n in range(desks))
                line(what, desks, args.seconds, took)
            took = together([args.program, "bare", str(args.folder / f"bare{desks}"), str(args.seconds)] for _ in range(desks))
            line("rows by plain SQLite, the limit of a file", desks, args.seconds, took)


if __name__ == "__main__":
    main()
