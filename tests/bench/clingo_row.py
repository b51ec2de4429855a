#!/usr/bin/env python3
"""The same asks of one small shop, answered by clingo and by the engine: whole processes, by the clock.

usage: clingo_row.py ORACLE_WORLDS OUT   (writes a JSON object; nothing where clingo is missing, said on stderr)
"""
import json
import pathlib
import random
import shutil
import sys
import time

sys.path.insert(0, str(pathlib.Path(__file__).parent.parent / "oracles"))
import civil
import clingo_judge
import judging
from scenario_facts import Shop

SEED, RECORDS, RUNS = 3, 120, 5


def shop(program):
    """One with some of everything, asked for everybody's standing on everything at its last instant."""
    scenario = judging.shops(program, SEED, 1, RECORDS)[0]
    clingo_judge.crowd(scenario, random.Random(SEED))
    at = civil.instant_text(max(Shop(scenario).edges))
    targets = sorted({t for book in scenario["rulebooks"] for t in clingo_judge.targets_of(book)})
    scenario["asks"] = [{"ask": "standing", "person": person["id"], "target": target, "at": at}
                        for person in scenario["people"] for target in targets]
    return scenario


def timed(work):
    begin = time.perf_counter()
    result = work()
    return time.perf_counter() - begin, result


def main():
    program, out = sys.argv[1:]
    if shutil.which("clingo") is None:
        print("tests/bench: no row for clingo, which is not installed (Debian: apt-get install gringo)", file=sys.stderr)
        return
    scenario = shop(program)
    engine, ours = min((timed(lambda: judging.engine(program, [scenario])[0]) for _ in range(RUNS)),
                       key=lambda run: run[0])
    clingo, (theirs, _) = timed(lambda: clingo_judge.judge(scenario))
    if ours != theirs:
        sys.exit("clingo and the engine do not say the same.")
    pathlib.Path(out).write_text(json.dumps({"records": len(scenario["records"]), "asks": len(scenario["asks"]),
                                             "engine": engine, "clingo": clingo}))


if __name__ == "__main__":
    main()
