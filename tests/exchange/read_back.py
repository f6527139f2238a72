"""Reads the exports back with Python's csv (RFC 4180) and the icalendar library (RFC 5545)."""

import csv
import io
import json
import re
import sys
from datetime import datetime, timedelta, timezone
from html.parser import HTMLParser
from zoneinfo import ZoneInfo

import icalendar

FORMULA = tuple("=+-@\t\r")
with open(sys.argv[1], encoding="utf-8") as file:
    told = json.load(file)


def table(part):
    text = told[part]
    assert text.count("\r\n") >= 2, f"{part}: lines end in CR LF"
    names, *rows = csv.reader(io.StringIO(text, newline=""), strict=True)
    assert rows, f"{part} has no rows"
    for row in rows:
        assert len(row) == len(names), f"{part}: {row}"
        for cell in row:
            number = re.fullmatch(r"-?\d+(\.\d+)?", cell)
            assert number or not cell.startswith(FORMULA), f"{part}: a formula: {cell!r}"
    return [dict(zip(names, row)) for row in rows]


def as_typed(cell):
    """What was typed: an apostrophe stands before what would be a formula, and before an apostrophe."""
    return cell[1:] if cell.startswith("'") else cell


packets, sowings, readings = table("packets"), table("sowings"), table("readings")
varieties = {as_typed(packet["variety"]) for packet in packets}
assert set(told["hostile"]) <= varieties, set(told["hostile"]) - varieties
assert any(packet["variety"] == "'=2+5" for packet in packets)
assert sum(int(packet["sowings"]) for packet in packets) == len(sowings)
for sowing in sowings:
    datetime.fromisoformat(sowing["sown"])
    parts = ["pricked_out_or_on", "thinned", "lost", "missing", "planted_out", "sold", "given_away", "still_there"]
    assert int(sowing["up"]) == sum(int(sowing[part]) for part in parts), sowing
for reading in readings:
    if reading["lowest_c"]:
        assert float(reading["lowest_c"]) <= float(reading["highest_c"])
    else:
        float(reading["now_c"])
assert any(reading["lowest_c"].startswith("-") for reading in readings), "no frost to tell a number from a formula by"


def events(text):
    calendar = icalendar.Calendar.from_ical(text)
    assert calendar["VERSION"] == "2.0" and "Plumule" in calendar["PRODID"]
    # RFC 5545, 3.1: lines SHOULD have at most 75 octets; the writing library counts without the blank of a continuation.
    assert all(len(line.encode()) <= 76 for line in text.split("\r\n")), "lines are folded"
    found = list(calendar.walk("VEVENT"))
    assert found and not calendar.errors
    for event in found:
        assert not event.errors and event["SUMMARY"] and event["DTSTAMP"]
        start, end = event["DTSTART"].dt, event["DTEND"].dt
        assert start.tzinfo is not None and start < end
        now = datetime.fromisoformat(told["now"])
        assert now <= start <= now + timedelta(days=28), start
        local = start.astimezone(ZoneInfo("Europe/London"))
        assert (local.hour, local.minute) in [(8, 0), (18, 0)], f"not at a round: {local}"
    uids = [str(event["UID"]) for event in found]
    assert len(uids) == len(set(uids))
    return {str(event["UID"]): event["DTSTART"].dt.astimezone(timezone.utc) for event in found}


first, later = events(told["calendar"]), events(told["calendar_later"])
assert first == later, "the same needs have the same names"


class Page(HTMLParser):
    def handle_starttag(self, tag, attrs):
        assert tag not in {"script", "img", "iframe", "link", "object"}, tag
        assert not any(name.startswith("on") or name in {"src", "href"} for name, _ in attrs), attrs


Page().feed(told["report"])
assert "default-src 'none'" in told["report"] or "default-src &#39;none&#39;" in told["report"]
print(f"{len(packets)} packets, {len(sowings)} sowings, {len(readings)} readings and {len(first)} events read back")
