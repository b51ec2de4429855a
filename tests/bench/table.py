#!/usr/bin/env python3
"""Prints what Google Benchmark measured as one table, each row beside its limit and its goal.

usage: table.py FOLDER   (with world.json, with clingo.json and desk.json where those were measured)
"""
import json
import pathlib
import sys

UNITS = {"ns": 1e-9, "us": 1e-6, "ms": 1e-3, "s": 1}


def rows(path):
    found = {}
    for row in json.loads(path.read_text())["benchmarks"]:
        # All run on one thread, so CPU time is what they take on a machine with nothing else to do.
        row["seconds"] = row["cpu_time"] * UNITS[row["time_unit"]]
        found[row["name"].split("/")[0]] = row
    return found


def shown(seconds):
    for unit in ("s", "ms", "µs", "ns"):
        if seconds >= {"s": 1, "ms": 1e-3, "µs": 1e-6, "ns": 0}[unit]:
            return f"{seconds / {'s': 1, 'ms': 1e-3, 'µs': 1e-6, 'ns': 1e-9}[unit]:.3g} {unit}"


def line(what, measured, beside, goal):
    print(f"| {what} | {measured} | {beside} | {goal} |")


def times(a, b):
    return f"{a / b:.3g}"


def world(path):
    r = rows(path)
    context = json.loads(path.read_text())["context"]
    scan, every, sql = (r[n]["seconds"] for n in ("plain_scan", "all_decisions", "all_decisions_by_sql"))
    one, one_sql = r["one_decision"]["median_s"], r["one_decision_by_sql"]["median_s"]
    mib = float(context["records_mib"]), r["loading"]["mib"]
    line("the records looked at once (the limit)", shown(scan), "", "")
    line("one decision with reasons, known person, median", shown(one), f"{times(one_sql, one)} × faster than SQL", "150 ns")
    line("the same asked for the first time, median", shown(r["first_decision"]["median_s"]), f"p95 {shown(r['first_decision']['p95_s'])}", "")
    line("a timeline from records, median", shown(r["timeline"]["median_s"]), f"p95 {shown(r['timeline']['p95_s'])}", "2 µs")
    line("the same at once again, median", shown(r["timeline_again"]["median_s"]), f"p95 {shown(r['timeline_again']['p95_s'])}", "")
    line("all decisions of W", shown(every), f"{times(every, scan)} × the scan; {times(sql, every)} × faster than SQL",
         "3 × the scan; 100 × faster than SQL")
    line("all decisions of W by SQL", shown(sql), "", "")
    line("who, p95", shown(r["who"]["p95_s"]), f"SQL {shown(r['who_by_sql']['median_s'])}", "5 ms")
    line("what if", shown(r["what_if"]["seconds"]), f"{r['what_if']['changes']:.0f} standings would change", "2 s")
    line("rests on, p95", shown(r["rests_on"]["p95_s"]), f"median {shown(r['rests_on']['median_s'])}", "10 ms")
    line("one new record taken in, p95", shown(r["taken_in"]["p95_s"]), f"median {shown(r['taken_in']['median_s'])}", "1 ms")
    line("W read, and everybody's timelines worked out", shown(r["loading"]["seconds"]), "", "")
    line("W in memory: what is kept; and the records it came from", f"{mib[1]:.0f} + {mib[0]:.0f} MiB", "", "400 MiB in all")


def clingo(path):
    r = json.loads(path.read_text())
    line(f"{r['asks']} whole answers on a shop of {r['records']} records, a process of its own", shown(r["engine"]),
         f"{times(r['clingo'], r['engine'])} × faster than clingo ({shown(r['clingo'])})", "")


def desk(path):
    r = rows(path)
    limits = {"a_usable_desk": "bare_reading_of_the_file", "a_key_in_the_search_field": "the_window_drawn",
              "a_person_opened": "the_window_drawn", "a_look_for_others": "the_bare_question_for_others"}
    for name, row in r.items():
        limit = limits.get(name)
        beside = f"{times(row['seconds'], r[limit]['seconds'])} × {limit.replace('_', ' ')}" if limit else "a limit"
        line("desk: " + name.replace("_", " "), shown(row["seconds"]), beside, "")


def store(path):
    r = rows(path)
    read, bare, commit = r["all_read"], r["bare_write_and_sync"], r["one_commit"]
    line("store: bytes a record", f"{read['bytes'] / read['records']:.0f}", f"{read['records']:.0f} records", "400")
    line("store: opened for one person, all of their answers, median", shown(r["first_look"]["median_s"]), f"processor {shown(r['first_look']['seconds'])}", "1 s")
    line("store: one more person then, median", shown(r["next_look"]["median_s"]), f"processor {shown(r['next_look']['seconds'])}", "")
    line("store: all of it read and worked out", shown(read["real_time"] * 1e-9), f"processor {shown(read['seconds'])}", "")
    line("store: one commit, 99 of 100", shown(commit["p99_s"]), f"{times(commit['p99_s'], bare['p99_s'])} × as many bytes written and synced ({shown(bare['p99_s'])})", "3 ×")
    line("store: looked through, every record", shown(r["looked_through"]["real_time"] * 1e-9), f"processor {shown(r['looked_through']['seconds'])}", "")
    line("store: backed up, read back and compared", shown(r["backed_up"]["real_time"] * 1e-9), f"processor {shown(r['backed_up']['seconds'])}", "3 s")


folder = pathlib.Path(sys.argv[1])
print("| what | measured | beside | goal |\n|---|---|---|---|")
if (folder / "store.json").exists():
    store(folder / "store.json")
if (folder / "world.json").exists():
    world(folder / "world.json")
if (folder / "clingo.json").exists():
    clingo(folder / "clingo.json")
if (folder / "desk.json").exists():
    desk(folder / "desk.json")
