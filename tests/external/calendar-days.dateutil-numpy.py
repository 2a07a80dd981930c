# Writes calendar-days.dateutil-numpy.json: what Python's datetime, dateutil and numpy say of days, months, weekdays and
# visiting days. Run it by hand, from this folder, when the sets change:
# python3 calendar-days.dateutil-numpy.py > calendar-days.dateutil-numpy.json, then npm run format
import json
import random
import sys
from datetime import date, timedelta

import dateutil
import numpy
from dateutil.relativedelta import relativedelta

rng = random.Random(20261214)
names = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"]
ends = [date(2024, 1, 31), date(2024, 2, 29), date(2027, 2, 28), date(2028, 2, 29), date(2099, 12, 31), date(2100, 2, 28)]


def any_day():
    return date(1900, 1, 1) + timedelta(days=rng.randrange(0, 109572))


def days():
    for start in ends + [any_day() for _ in range(60)]:
        count = rng.randrange(-5000, 20000)
        yield [str(start), count, str(start + timedelta(days=count))]


def months():
    for start in ends + [any_day() for _ in range(60)]:
        count = rng.choice([-24, -1, 1, 2, 3, 6, 12, 18, 24, 25, 36, 48, 600])
        yield [str(start), count, str(start + relativedelta(months=count))]


def weekdays():
    for start in ends + [any_day() for _ in range(60)]:
        yield [str(start), names[start.weekday()]]


def visiting():
    for _ in range(80):
        start = date(2026, 1, 1) + timedelta(days=rng.randrange(0, 1500))
        open_days = sorted(rng.sample(range(7), rng.randrange(1, 8)))
        closed = sorted({start + timedelta(days=rng.randrange(0, 30)) for _ in range(rng.randrange(0, 8))})
        mask = [int(day in open_days) for day in range(7)]
        found = numpy.busday_offset(start, 0, roll="forward", weekmask=mask, holidays=closed)
        yield {
            "date": str(start),
            "weekdays": [names[day] for day in open_days],
            "closed": [str(day) for day in closed],
            "visit": str(found),
        }


# The visits of a clinic at 2 and 6 weeks, 3, 6 and 12 months and then every 12 months, up to 24 months after the day.
def calendars():
    for start in ends[:4] + [date(2026, 12, 14), date(2027, 8, 31), date(2027, 11, 30)]:
        closed = [date(2026, 12, 25), date(2027, 1, 1), date(2027, 12, 24), date(2028, 12, 25)]
        counted = [start + timedelta(weeks=2), start + timedelta(weeks=6)]
        counted += [start + relativedelta(months=count) for count in (3, 6, 12, 24)]
        mask = [1, 1, 0, 1, 1, 0, 0]
        moved = [str(numpy.busday_offset(day, 0, roll="forward", weekmask=mask, holidays=closed)) for day in counted]
        yield {
            "date": str(start),
            "closed": [str(day) for day in closed],
            "counted": [str(day) for day in counted],
            "visits": moved,
            "next": str(start + relativedelta(months=36)),
        }


made = {
    "python": sys.version.split()[0],
    "dateutil": dateutil.__version__,
    "numpy": numpy.__version__,
    "days": list(days()),
    "months": list(months()),
    "weekdays": list(weekdays()),
    "visiting": list(visiting()),
    "calendars": list(calendars()),
}
print(json.dumps(made))
