"""The civil calendar of decisions by Python's datetime and zoneinfo alone: days, periods, starts of days.

Days are datetime.date, instants whole seconds from 1970-01-01T00:00:00Z.
"""
import calendar
import datetime
import functools
import zoneinfo

UTC = datetime.timezone.utc
EPOCH = datetime.date(1970, 1, 1)
DAY = 86400
HOUR = 3600


def instant(text):
    return int(datetime.datetime.strptime(text, "%Y-%m-%dT%H:%M:%S%z").timestamp())


def instant_text(seconds):
    return datetime.datetime.fromtimestamp(seconds, UTC).strftime("%Y-%m-%dT%H:%M:%SZ")


def date(text):
    return datetime.date.fromisoformat(text)


@functools.cache
def zone(name):
    return zoneinfo.ZoneInfo(name)


def day(name, t):
    return datetime.datetime.fromtimestamp(t, zone(name)).date()


def offset(name, t):
    return int(datetime.datetime.fromtimestamp(t, zone(name)).utcoffset().total_seconds())


def _change(name, low, high):
    """The instant in (low, high] from which the offset is that at `high`."""
    after = offset(name, high)
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (low, middle) if offset(name, middle) == after else (middle, high)
    return high


@functools.cache
def start(name, d):
    """The first instant whose civil date is `d` or later, stretch by stretch of unchanged offset.

    Supposes that no zone changes its clock twice within three hours (none does).
    """
    midnight = (d - EPOCH).days * DAY
    t, last = midnight - 2 * DAY, midnight + 2 * DAY
    while t < last:
        step = t + 3 * HOUR
        until = _change(name, t, step) if offset(name, t) != offset(name, step) else step
        first = max(t, midnight - offset(name, t))
        if first < until:
            return first
        t = until
    raise AssertionError(f"{name} has no {d}")


def end(d, period):
    """The last day that a period begun on `d` covers."""
    (unit, count), = period.items()
    if unit == "days":
        return d + datetime.timedelta(days=count)
    months = d.year * 12 + d.month - 1 + count
    year, month = divmod(months, 12)
    last = calendar.monthrange(year, month + 1)[1]
    return datetime.date(year, month + 1, last if unit == "calendar_months" else min(d.day, last))


def past(name, d):
    """The first instant after day `d`."""
    return start(name, d + datetime.timedelta(days=1))


def birthday(born, years):
    """Born on 29 February: 1 March in common years."""
    year = born.year + years
    if (born.month, born.day) == (2, 29) and not calendar.isleap(year):
        return datetime.date(year, 3, 1)
    return born.replace(year=year)
