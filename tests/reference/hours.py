#!/usr/bin/env python3
"""Prints, by Python's own zoneinfo, when stretches of the wall clock begin and end around changes of the clocks.

One line a stretch: ZONE DAY FROM_MINUTE TO_MINUTE BEGINS ENDS (days and seconds counted from 1970-01-01 UTC). Where the clock leaves a
minute out it is the jump that counts, of a minute shown twice the first. Every change from 1990 to 2040 in every zone.
"""
import datetime
import random
import sys
import zoneinfo

UTC = datetime.timezone.utc
EPOCH = datetime.datetime(1970, 1, 1)
HOUR, DAY = 3600, 86400


def offset(zone, t):
    return int(datetime.datetime.fromtimestamp(t, UTC).astimezone(zone).utcoffset().total_seconds())


def wall(zone, t):
    return t + offset(zone, t)


def jumps(zone, first, last):
    found = []
    step = 12 * HOUR
    for t in range(first, last, step):
        if offset(zone, t) == offset(zone, t + step):
            continue
        low, high = t, t + step
        while high - low > 1:
            middle = (low + high) // 2
            low, high = (middle, high) if offset(zone, middle) == offset(zone, low) else (low, middle)
        found.append(high)
    return found


def shown_first(zone, shown, near):
    """The first instant at which the wall clock shows `shown` seconds, or the jump over it. `near` are the jumps."""
    candidates = [shown - offset(zone, shown + d) for d in range(-26 * HOUR, 27 * HOUR, HOUR)]
    right = [t for t in candidates if wall(zone, t) == shown]
    if right:
        return min(right)
    return min(j for j in near if wall(zone, j - 1) < shown <= wall(zone, j))


def main():
    rng = random.Random(7)
    first = int(datetime.datetime(1990, 1, 1, tzinfo=UTC).timestamp())
    last = int(datetime.datetime(2041, 1, 1, tzinfo=UTC).timestamp())
    names = sorted(zoneinfo.available_timezones())
    if len(sys.argv) > 1:
        names = rng.sample(names, int(sys.argv[1])) + ["America/New_York", "Europe/Berlin", "Australia/Lord_Howe", "America/Sao_Paulo"]
    for name in names:
        zone = zoneinfo.ZoneInfo(name)
        near = jumps(zone, first, last)
        for jump in rng.sample(near, min(6, len(near))):
            day = wall(zone, jump) // DAY
            for _ in range(8):
                # Minutes close to the jump, and the whole day.
                centre = (wall(zone, jump) // 60 - day * 1440) + rng.randint(-150, 90)
                start = max(0, min(1439, centre))
                end = min(1440, start + rng.choice([15, 30, 60, 180, 1440]))
                begins = shown_first(zone, day * DAY + start * 60, near)
                ends = shown_first(zone, day * DAY + end * 60, near)
                if end == 1440:  # midnight: when the next day begins, however often the clock comes to it
                    t = ends - 3 * HOUR
                    while wall(zone, t) // DAY <= day:
                        t += 60
                    ends = t
                print(name, day, start, end, begins, ends)


main()
