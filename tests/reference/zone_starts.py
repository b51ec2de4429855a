#!/usr/bin/env python3
"""Prints, by Python's own zoneinfo, when civil days start in every zone of the system's list.

One line a fact: ZONE start DAY SECONDS, or ZONE day SECONDS DAY (days and seconds counted from 1970-01-01 UTC).
Days are those around every change of a zone's clock from 1900 to 2100, and a sample of days to 2999.
"""
import bisect
import datetime
import random
import struct
import sys
import zoneinfo

UTC = datetime.timezone.utc
EPOCH = datetime.date(1970, 1, 1)
DAY = 86400


def seconds(year):
    return int(datetime.datetime(year, 1, 1, tzinfo=UTC).timestamp())


FIRST, LAST = seconds(1900), seconds(2101)


def file_transitions(name):
    """The instants listed in the zone's file (RFC 8536, version 2 block)."""
    for folder in zoneinfo.TZPATH:
        try:
            data = open(f"{folder}/{name}", "rb").read()
            break
        except OSError:
            continue
    else:
        return []
    head = struct.Struct(">4s1s15x6l")
    _, _, isutc, isstd, leap, times, types, chars = head.unpack_from(data)
    skip = head.size + times * 5 + types * 6 + chars + leap * 8 + isstd + isutc
    times = head.unpack_from(data, skip)[5]
    return list(struct.unpack_from(f">{times}q", data, skip + head.size))


def offset(zone, t):
    return int(datetime.datetime.fromtimestamp(t, UTC).astimezone(zone).utcoffset().total_seconds())


def transitions(name, zone):
    """Every instant from FIRST to LAST at which the offset changes: the file's, then those of its closing rule."""
    listed = [t for t in file_transitions(name) if FIRST <= t < LAST]
    t = max(listed[-1] if listed else FIRST, seconds(2007))
    found = set(listed)
    while t < LAST:
        step = t + 5 * DAY
        if offset(zone, t) != offset(zone, step):
            low, high = t, step
            while high - low > 1:
                middle = (low + high) // 2
                if offset(zone, middle) == offset(zone, low):
                    low = middle
                else:
                    high = middle
            found.add(high)
        t = step
    return sorted(x for x in found if offset(zone, x - 1) != offset(zone, x))


def start(day, zone, changes):
    """The first instant whose civil date is `day` or later: stretch by stretch of unchanged offset."""
    midnight = day * DAY
    t = midnight - 3 * DAY
    while True:
        i = bisect.bisect_right(changes, t)
        until = changes[i] if i < len(changes) else midnight + 4 * DAY
        earliest = max(t, midnight - offset(zone, t))
        if earliest < until:
            return earliest
        t = until


def main():
    out = sys.stdout
    rng = random.Random(20261125)
    for name in sorted(zoneinfo.available_timezones()):
        zone = zoneinfo.ZoneInfo(name)
        changes = transitions(name, zone)
        days = set()
        for t in changes:
            for side in (t - 1, t):
                day = (side + offset(zone, side)) // DAY
                days.update((day - 1, day, day + 1))
                out.write(f"{name} day {side} {day}\n")
        for day in sorted(days):
            out.write(f"{name} start {day} {start(day, zone, changes)}\n")
        for _ in range(20):
            date = datetime.date(rng.randint(2101, 2999), rng.randint(1, 12), rng.randint(1, 28))
            day = (date - EPOCH).days
            near = day * DAY
            local = [t for t in range(near - 3 * DAY, near + 3 * DAY, 1800)]
            around = [b for a, b in zip(local, local[1:]) if offset(zone, a) != offset(zone, b)]
            begins = start(day, zone, around)
            out.write(f"{name} start {day} {begins}\n")
            for t in (begins - 1, begins):
                out.write(f"{name} day {t} {(t + offset(zone, t)) // DAY}\n")


main()
