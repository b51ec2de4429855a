"""What the judges have in common: running the engine's side, and keeping what they disagree about."""
import argparse
import json
import pathlib
import shutil
import subprocess
import sys
import time

HERE = pathlib.Path(__file__).parent
SKIPPED = 77  # ctest's SKIP_RETURN_CODE
SECONDS = 30  # to make a counter-example small


def shops(program, seed, count, most):
    """Random scenarios without asks."""
    out = subprocess.run([program, "shops", str(seed), str(count), str(most)], capture_output=True, text=True,
                         check=True).stdout
    return [json.loads(line) for line in out.splitlines()]


def engine(program, scenarios):
    """The engine's answers: a list for each scenario."""
    text = "".join(json.dumps(s) + "\n" for s in scenarios)
    run = subprocess.run([program, "answer"], input=text, capture_output=True, text=True)
    if run.returncode != 0:
        sys.exit(f"The engine refuses a scenario: {run.stderr}")
    return [json.loads(line) for line in run.stdout.splitlines()]


def skip(package, command):
    print(f"\n*** SKIPPED: {command} is missing, so THIS JUDGE HAS JUDGED NOTHING. Install the package {package}. ***\n")
    sys.exit(SKIPPED)


def words_for_clingo(usage, most):
    """What a judge that asks clingo was called with; `most` records in a shop, where nothing else is said."""
    parser = argparse.ArgumentParser(description=usage)
    parser.add_argument("program")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--worlds", type=int, default=300)
    parser.add_argument("--most", type=int, default=most)
    parser.add_argument("--keep", type=pathlib.Path, default=pathlib.Path("oracle-found"))
    parser.add_argument("--file", type=pathlib.Path, help="only print what clingo answers to this scenario")
    words = parser.parse_args()
    if shutil.which("clingo") is None:
        skip("gringo", "clingo")
    return words


def smaller(scenario, differs):
    """The scenario with all taken out that `differs` (of a scenario) does not need to stay true, as far as time allows."""
    stop = time.monotonic() + SECONDS

    def try_to(changed):
        nonlocal scenario
        if time.monotonic() > stop or not differs(changed):
            return
        scenario = changed

    for part in ("records", "rulebooks", "machines", "people"):
        for i in reversed(range(len(scenario.get(part, [])))):
            try_to(dict(scenario, **{part: scenario[part][:i] + scenario[part][i + 1:]}))
    for i, book in enumerate(scenario["rulebooks"]):
        for kind in ("tiers", "classes"):
            for j in range(len(book[kind])):
                for field in ("gates", "mode_gates", "conditions", "supervision"):
                    if book[kind][j].get(field):
                        changed = json.loads(json.dumps(scenario))
                        del changed["rulebooks"][i][kind][j][field]
                        try_to(changed)
    return scenario


def keep(folder, name, program, scenario, ask, right, wrong=None):
    """Makes a counter-example small and writes it down: the scenario with this ask, and what the judge holds right.

    `right` is the judge's answer to a scenario; `wrong` says of a scenario and the engine's answer whether they differ.
    """
    wrong = wrong or (lambda changed, ours: ours != right(changed))

    def differs(changed):
        run = subprocess.run([program, "answer"], input=json.dumps(changed), capture_output=True, text=True)
        # It is refused where something that is named went with what was taken out.
        return run.returncode == 0 and wrong(changed, json.loads(run.stdout)[0])

    scenario = smaller(dict(scenario, asks=[ask]), differs)
    folder.mkdir(parents=True, exist_ok=True)
    (folder / f"{name}.json").write_text(json.dumps(scenario, indent=1) + "\n")
    (folder / f"{name}.answers.jsonl").write_text(json.dumps(right(scenario)) + "\n")
    print(f"  kept as {folder / name}.json", file=sys.stderr)
