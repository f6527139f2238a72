"""Frost, the sun and warmth over days."""

import math
from datetime import date, timedelta
from statistics import mean, stdev

import ephem
import numpy as np
from scipy import integrate, special


def declination(day):
    return 0.409 * math.sin(2 * math.pi / 365 * day.timetuple().tm_yday - 1.39)


def make_sun(chance):
    return {"latitude": chance.choice([chance.uniform(-90, 90), float(chance.randrange(-66, 67)), 90.0, -90.0]),
            "date": str(date(2020, 1, 1) + timedelta(chance.randrange(2500)))}


def make_temperate(chance):
    return make_sun(chance) | {"latitude": chance.uniform(-60, 60)}


def sun_height(q):
    """The sine of the sun's height over the hour angle."""
    latitude, sun = math.radians(q["latitude"]), declination(date.fromisoformat(q["date"]))
    return (math.sin(latitude) * math.sin(sun), math.cos(latitude) * math.cos(sun))


def sunset(q):
    level, swing = sun_height(q)
    return math.acos(max(-1.0, min(1.0, -level / swing)))


def almanac_hours(q):
    """Day length by an astronomy library: the sun's centre on the true horizon, no air."""
    place = ephem.Observer()
    place.lat, place.lon, place.pressure, place.horizon = str(q["latitude"]), "0", 0, "0"
    place.date = q["date"] + " 12:00:00"
    rise = place.previous_rising(ephem.Sun(), use_center=True)
    return 24 * (place.next_setting(ephem.Sun(), use_center=True) - rise)


def answer_day_length(q):
    return {"hours": 24 / math.pi * sunset(q)}


def answer_radiation(q):
    level, swing = sun_height(q)
    distance = 1 + 0.033 * math.cos(2 * math.pi / 365 * date.fromisoformat(q["date"]).timetuple().tm_yday)
    half = sunset(q)
    day, _ = integrate.quad(lambda angle: level + swing * math.cos(angle), -half, half, epsabs=1e-13, epsrel=1e-13)
    return {"mj_m2_day": max(0.0, 24 * 60 / (2 * math.pi) * 0.0820 * distance * day)}


def make_degree_days(chance):
    low = chance.choice([chance.uniform(-10, 35), float(chance.randrange(-5, 35))])
    lower = chance.choice([4.0, 7.0, 10.0, chance.uniform(0, 15)])
    return {"min_c": low, "max_c": low + chance.choice([0.0, chance.uniform(0, 25)]), "lower_c": lower,
            "upper_c": lower + chance.uniform(1, 25)}


def answer_degree_days(q):
    middle, swing = (q["max_c"] + q["min_c"]) / 2, (q["max_c"] - q["min_c"]) / 2
    kinks = sorted(math.asin((t - middle) / swing) for t in (q["lower_c"], q["upper_c"])
                   if swing > 0 and abs(t - middle) < swing)
    warmth = lambda angle: float(np.clip(middle + swing * math.sin(angle), q["lower_c"], q["upper_c"])) - q["lower_c"]
    # The rising half of the sine, piece by piece between its kinks; the falling is its mirror.
    ends = [-math.pi / 2, *kinks, math.pi / 2]
    pieces = [integrate.quad(warmth, a, b, epsabs=1e-14, epsrel=1e-13)[0] for a, b in zip(ends, ends[1:])]
    return {"degree_days": sum(pieces) / math.pi}


def make_frost(chance):
    first = date(2000 + chance.randrange(10), 1, 1)
    south = chance.random() < 0.5
    warm, swing = chance.uniform(4, 11), chance.uniform(5, 11)
    minima = []
    for i in range(int(365.25 * chance.choice([7, 9, 12]))):
        day = first + timedelta(i)
        season = math.cos(2 * math.pi * (day.timetuple().tm_yday - (200 if not south else 18)) / 365)
        if chance.random() < 0.97 and not (day.year % 4 == 3 and chance.random() < 0.3):
            minima.append([str(day), round(warm + swing * season + chance.gauss(0, 2.5), 1)])
    chance.shuffle(minima)
    return {"minima": minima, "threshold_c": chance.choice([0.0, 2.0, -1.0]), "chance": chance.choice([0.1, 0.3, 0.5]),
            "half": chance.choice(["spring", "autumn"]), "hemisphere": "south" if south else "north"}


def answer_frost(q):
    low = {}
    for day, minimum in q["minima"]:
        low[date.fromisoformat(day)] = minimum
    spring, north = q["half"] == "spring", q["hemisphere"] == "north"
    frosts, full = [], 0
    for year in range(min(low).year - 1, max(low).year + 2):
        if spring == north:
            first, last = date(year, 1, 16), date(year, 7, 15)
        else:
            first, last = date(year, 7, 16), date(year + 1, 1, 15)
        days = [first + timedelta(i) for i in range((last - first).days + 1)]
        known = [day for day in days if day in low]
        if len(known) < 0.9 * len(days):
            continue
        full += 1
        cold = [(day - date(year, 7, 15)).days for day in known if low[day] <= q["threshold_c"]]
        if cold:
            frosts.append(cold[-1] if spring else cold[0])
    if len(frosts) < 5:
        return {"error": "any"}
    share = q["chance"] * full / len(frosts)
    if share >= 1:
        return {"month_day": None, "years": len(frosts)}
    z = special.ndtri(share)
    day = math.ceil(mean(frosts) - stdev(frosts) * z) if spring else math.floor(mean(frosts) + stdev(frosts) * z)
    day = max(-180, min(0, day)) if spring == north else max(1, min(184, day))
    return {"month_day": f"{date(2001, 7, 15) + timedelta(day):%m-%d}", "years": len(frosts)}


ASKS = {
    "day_length": (600, make_sun, answer_day_length, 1e-9),
    # Up to 18 minutes at 60 degrees: FAO-56's declination is one sine over the year, which is
    # more than a degree off in October.
    "day_length: almanac": (150, make_temperate, lambda q: {"hours": almanac_hours(q)}, 0.3),
    "extraterrestrial_radiation": (500, make_sun, answer_radiation, 1e-9),
    "degree_days": (700, make_degree_days, answer_degree_days, 1e-9),
    "frost_chance": (150, make_frost, answer_frost, 0.0),
}
