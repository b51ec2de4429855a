#!/usr/bin/env python3
"""Holds core/calendar against two readers from outside: python-dateutil for the times of random rules of RFC 5545
and for those of random time zones that calendars define, and vobject for the files that are written.

    calendar_judge.py ORACLE_CALENDARS [--seed N] [--rules N] [--zones N] [--files N]
"""
import argparse
import datetime
import io
import json
import os
import random
import subprocess
import sys
import tempfile

try:
    import vobject
    from dateutil import rrule, tz
except ImportError:
    # Debian's packages are Debian's Python's, whatever other one comes first.
    if sys.executable != "/usr/bin/python3" and os.path.exists("/usr/bin/python3"):
        os.execv("/usr/bin/python3", ["/usr/bin/python3", "-B", *sys.argv])
    print("python3-vobject or python3-dateutil is missing, so CALENDARS ARE NOT JUDGED.")
    sys.exit(77)

DAYS = ["MO", "TU", "WE", "TH", "FR", "SA", "SU"]
FIRST, LAST = datetime.datetime(1990, 1, 1), datetime.datetime(2010, 1, 1)


def some(rng, values, most):
    return ",".join(str(v) for v in sorted(rng.sample(values, rng.randint(1, most))))


def random_rule(rng):
    """A rule that RFC 5545 allows, of the kinds that calendars write."""
    freq = rng.choice(["DAILY", "WEEKLY", "MONTHLY", "YEARLY"])
    parts = [f"FREQ={freq}"]
    if rng.random() < 0.5:
        parts.append(f"INTERVAL={rng.randint(1, 5)}")
    if rng.random() < 0.3:
        parts.append(f"WKST={rng.choice(DAYS)}")
    months = list(range(1, 13))
    month_days = list(range(1, 32)) + list(range(-31, 0))
    if freq == "DAILY":
        if rng.random() < 0.5:
            parts.append("BYMONTH=" + some(rng, months, 4))
        if rng.random() < 0.4:
            parts.append("BYDAY=" + some(rng, DAYS, 4))
    elif freq == "WEEKLY":
        parts.append("BYDAY=" + some(rng, DAYS, 4))
    elif freq == "MONTHLY":
        if rng.random() < 0.5:
            parts.append("BYMONTHDAY=" + some(rng, month_days, 4))
        else:
            numbered = [f"{n}{d}" for n in (1, 2, 3, 4, 5, -1, -2) for d in DAYS]
            parts.append("BYDAY=" + some(rng, rng.choice([DAYS, numbered]), 4))
            if rng.random() < 0.4 and not any(c.isdigit() for c in parts[-1]):
                parts.append("BYSETPOS=" + some(rng, [1, 2, 3, -1, -2], 2))
    else:
        kind = rng.randint(0, 3)
        if kind == 0:
            parts += ["BYMONTH=" + some(rng, months, 3), "BYMONTHDAY=" + some(rng, month_days, 3)]
        elif kind == 1:
            parts += ["BYMONTH=" + some(rng, months, 3), "BYDAY=" + some(rng, [f"{n}{d}" for n in (1, 2, 3, -1) for d in DAYS], 3)]
        elif kind == 2:
            parts.append("BYYEARDAY=" + some(rng, list(range(1, 367)) + list(range(-366, 0)), 4))
        else:
            parts += ["BYWEEKNO=" + some(rng, list(range(2, 52)), 3), "BYDAY=" + some(rng, DAYS, 3)]
    end = rng.random()
    if end < 0.4:
        parts.append(f"COUNT={rng.randint(1, 40)}")
    elif end < 0.7:
        parts.append(f"UNTIL={rng.randint(1995, 2008)}{rng.randint(1, 12):02}15T090000Z")
    return ";".join(parts)


def judged(rule, first):
    """dateutil's times; it leaves the first one out where the rule does not have it, which RFC 5545 never does."""
    naive = rule.replace("Z", "") if "UNTIL" in rule else rule
    start = datetime.datetime.strptime(first, "%Y%m%dT%H%M%S")
    times = []
    for t in rrule.rrulestr(naive, dtstart=start):
        if t >= LAST:
            break
        if not times and t != start:
            return None  # the first is not one of the rule's: what it counts for is said differently
        times.append(t)
    return [t for t in times if t >= FIRST] if times else None


def judge_rules(program, seed, count):
    rng = random.Random(seed)
    rules = []
    while len(rules) < count:
        rule = random_rule(rng)
        # Begin where the rule has a time, as a calendar does.
        start = datetime.datetime(rng.randint(1990, 1998), rng.randint(1, 12), rng.randint(1, 28), 9)
        naive = rule.split(";COUNT=")[0].split(";UNTIL=")[0]
        begin = next(iter(rrule.rrulestr(naive, dtstart=start)), None)
        if begin is None or begin >= LAST:
            continue
        rules.append((rule, begin.strftime("%Y%m%dT%H%M%S")))
    with tempfile.NamedTemporaryFile("w", suffix=".txt", delete=False) as file:
        file.writelines(f"{rule}\t{first}\n" for rule, first in rules)
    answers = subprocess.run([program, "repeats", file.name], capture_output=True, text=True, check=True).stdout.split("\n")
    os.unlink(file.name)
    compared = wrong = 0
    for (rule, first), answer in zip(rules, answers):
        expected = judged(rule, first)
        if expected is None:
            continue
        compared += 1
        if answer.split() != [t.strftime("%Y-%m-%dT%H:%M:%SZ") for t in expected]:
            wrong += 1
            if wrong <= 10:
                print(f"DIFFERS: {rule} from {first}\n  ours     {answer[:200]}\n  dateutil "
                      f"{' '.join(t.strftime('%Y-%m-%dT%H:%M:%SZ') for t in expected)[:200]}")
    print(f"{compared} rules compared with dateutil, {wrong} differ")
    return compared > count * 0.8 and wrong == 0


def written_offset(minutes):
    return f"{'-' if minutes < 0 else '+'}{abs(minutes) // 60:02}{abs(minutes) % 60:02}"


def random_onsets(rng, month, years):
    """How a part of a zone says when it begins, each year or in the years told: DTSTART and what follows."""
    hour = rng.choice([0, 1, 2, 3, 23])
    day = rng.choice([f"{rng.choice([1, 2, 3, -1, -2])}{rng.choice(DAYS)}", None])
    rule = f"FREQ=YEARLY;BYMONTH={month};" + (f"BYDAY={day}" if day else f"BYMONTHDAY={rng.randint(1, 28)}")
    first = datetime.datetime(years[0], 1, 1, hour)
    times = []
    for t in rrule.rrulestr(rule, dtstart=first):
        if t.year > years[1]:
            break
        times.append(t.strftime("%Y%m%dT%H%M%S"))
    if rng.random() < 0.2:
        return [f"DTSTART:{times[0]}"] + [f"RDATE:{t}" for t in times[1:]]
    how = rng.random()
    if how < 0.2:
        rule += f";COUNT={len(times)}"
    elif how < 0.6:
        # Far from any change: dateutil compares UNTIL on the wall.
        rule += f";UNTIL={years[1]}1220T000000Z"
    return [f"DTSTART:{times[0]}", f"RRULE:{rule}"]


def random_zone(rng):
    """A zone of a name of its own as lines, with its first year: the clocks stand, or change by rules that are others
    later; or rules without end from 1601 on, on a day that is none of them."""
    standard = 15 * rng.randint(-11 * 4, 12 * 4)
    summer = standard + rng.choice([30, 60, 60, 60, 120])
    kind = rng.random()

    def part(name, onsets, before, after):
        return [f"BEGIN:{name}", *onsets, f"TZOFFSETFROM:{written_offset(before)}", f"TZOFFSETTO:{written_offset(after)}",
                f"END:{name}"]

    if kind < 0.1:
        return part("STANDARD", ["DTSTART:19700101T000000"], standard, standard), 1990
    spring, autumn = rng.choice([(3, 10), (4, 11), (10, 3), (9, 4)])
    if kind < 0.4:
        begin = "DTSTART:16010101T020000"
        return (part("STANDARD", [begin, f"RRULE:FREQ=YEARLY;BYDAY={rng.choice([1, 2, -1])}SU;BYMONTH={autumn}"], summer, standard)
                + part("DAYLIGHT", [begin, f"RRULE:FREQ=YEARLY;BYDAY={rng.choice([1, 2, -1])}SU;BYMONTH={spring}"], standard,
                       summer)), 1990
    lines, year = [], rng.randint(1985, 1995)
    while year < 2040:
        last = min(2040, year + rng.randint(1, 25))
        lines += part("DAYLIGHT", random_onsets(rng, spring, (year, last)), standard, summer)
        lines += part("STANDARD", random_onsets(rng, autumn, (year, last)), summer, standard)
        year = last + 1
    return lines, 1997


def judge_zones(program, seed, count):
    rng = random.Random(seed)
    compared = wrong = 0
    for i in range(count):
        parts, since = random_zone(rng)
        name = f"Zone {i}"
        zone = ["BEGIN:VTIMEZONE", f"TZID:{name}", *parts, "END:VTIMEZONE"]
        theirs = tz.tzical(io.StringIO("\n".join(["BEGIN:VCALENDAR", *zone, "END:VCALENDAR"]) + "\n")).get(name)
        lines, expected = ["BEGIN:VCALENDAR"], set()
        first = rng.randint(since, 2036)
        for _ in range(60):
            t = datetime.datetime(rng.randint(first, first + 3), rng.randint(1, 12), rng.randint(2, 28), rng.randint(0, 23),
                                  rng.randint(0, 59))
            hours = [t + datetime.timedelta(hours=h) for h in (-3, -2, -1, 0, 1, 2, 3)]
            # Around a change the two mean different things by a time that is left out or comes twice.
            if len({theirs.utcoffset(h) for h in hours}) > 1:
                continue
            expected.add((t - theirs.utcoffset(t)).strftime("%Y-%m-%dT%H:%M:%SZ"))
            lines += ["BEGIN:VEVENT", f"DTSTART;TZID={name}:{t.strftime('%Y%m%dT%H%M%S')}", "DURATION:PT1S", "END:VEVENT"]
        lines += [*zone, "END:VCALENDAR"] if rng.random() < 0.5 else ["END:VCALENDAR"]
        if lines[-2] != "END:VTIMEZONE":
            lines[1:1] = zone  # before what names it; else after
        with tempfile.NamedTemporaryFile("w", suffix=".ics", delete=False) as file:
            file.write("\n".join(lines) + "\n")
        answer = subprocess.run([program, "busy", file.name, str(first)], capture_output=True, text=True, check=True).stdout
        os.unlink(file.name)
        compared += len(expected)
        if answer.split() != sorted(expected):
            wrong += 1
            if wrong <= 5:
                differing = sorted(set(answer.split()) ^ expected)
                print("DIFFERS: " + " ".join(parts) + f"\n  {answer[:100] if 'refused' in answer else differing[:6]}")
    print(f"{compared} times in {count} time zones compared with dateutil, {wrong} zones differ")
    return compared > count * 40 and wrong == 0


def utc(line):
    return line.value.astimezone(datetime.timezone.utc).strftime("%Y-%m-%dT%H:%M:%SZ")


def read_back(calendar):
    return [
        {"uid": e.uid.value, "sequence": int(e.sequence.value), "status": e.status.value, "from": utc(e.dtstart),
         "to": utc(e.dtend), "summary": e.summary.value, "description": e.description.value, "place": e.location.value}
        for e in calendar.vevent_list
    ]


def judge_files(program, seed, count):
    wrong = events = 0
    for i in range(count):
        run = subprocess.run([program, "write", str(seed + i)], capture_output=True, check=True)
        says = json.loads(run.stderr)
        events += len(says)
        method = "CANCEL" if (seed + i) % 3 == 0 else "PUBLISH"
        calendar = vobject.readOne(run.stdout.decode())
        found = read_back(calendar)
        differing = [(key, a[key], b[key]) for a, b in zip(found, says) for key in b if a[key] != b[key]]
        if calendar.method.value != method or len(found) != len(says) or differing:
            wrong += 1
            print(f"DIFFERS: file {seed + i}: " + "; ".join(f"{k}: {a!r} instead of {b!r}" for k, a, b in differing[:2]))
    print(f"{count} files with {events} events read by vobject, {wrong} differ")
    return wrong == 0 and events > 0


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("program")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--rules", type=int, default=500)
    parser.add_argument("--zones", type=int, default=200)
    parser.add_argument("--files", type=int, default=50)
    told = parser.parse_args()
    rules = judge_rules(told.program, told.seed, told.rules)
    zones = judge_zones(told.program, told.seed, told.zones)
    files = judge_files(told.program, told.seed, told.files)
    sys.exit(0 if rules and zones and files else 1)


main()
