"""The workings against SciPy and an astronomy library, over random questions.

    python cross.py WORKINGS [--share S] [--seed N] [--only ASK]

WORKINGS is the built program that answers questions. Asks it everything that the
modules of asks/ make up, prints the largest difference of each ask and fails where
one is over its tolerance: relative 1e-9 for closed forms, absolute 1e-3 for the
posterior, none for whole numbers, dates and words. --share asks only so large a
part of the questions, --only one kind.
"""

import argparse
import json
import math
import random
import subprocess
import sys
import time

from asks import emergence, packet, results, season, sowing, wait

MODULES = [emergence, packet, sowing, wait, season, results]
WRONG = ['{"ask": "no such"}', "{", "[]", '{"ask": "rate", "crop": "no such", "temperature_c": 20}',
         '{"ask": "interval", "successes": 3, "trials": 2, "level": 0.9}',
         '{"ask": "degree_days", "min_c": 9, "max_c": 2, "lower_c": 1, "upper_c": 2}']


class Largest:
    """The largest difference of one ask, and the question it was found at."""

    def __init__(self):
        self.asked, self.by, self.allowed, self.at = 0, 0.0, 0.0, None
        self.failures = []

    def compare(self, question, wanted, found, tolerance):
        self.asked += 1
        if wanted == {"error": "any"}:
            if "code" not in found.get("error", {}):
                self.failures.append((question, "error", "any", found))
            return
        for key, value in wanted.items():
            allowed = tolerance.get(key, 0.0) if isinstance(tolerance, dict) else tolerance
            difference = self.difference(value, found.get(key, "missing"), allowed)
            if difference > allowed or math.isnan(difference):
                self.failures.append((question, key, value, found))
            if difference >= self.by and allowed > 0:
                self.by, self.allowed, self.at = difference, allowed, key

    def difference(self, wanted, found, allowed):
        if isinstance(wanted, (list, tuple)):
            if not isinstance(found, list) or len(found) != len(wanted):
                return math.inf
            return max((self.difference(w, f, allowed) for w, f in zip(wanted, found)), default=0.0)
        if allowed == 0 or wanted is None or isinstance(wanted, str) or not isinstance(found, (int, float)):
            return 0.0 if wanted == found else math.inf
        difference = abs(float(wanted) - found)
        # Relative for closed forms, down to where a float has no digits left.
        return difference if allowed >= 1e-6 else difference / max(abs(wanted), 1e-6)


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("workings")
    parser.add_argument("--share", type=float, default=1.0)
    parser.add_argument("--seed", type=int, default=1954)
    parser.add_argument("--only")
    options = parser.parse_args()
    chance = random.Random(options.seed)

    lines = []
    for module in MODULES:
        for name, (number, make, answer, tolerance) in module.ASKS.items():
            # What follows a colon says by what means, where one ask has two.
            ask = name.partition(":")[0]
            if options.only not in (None, ask):
                continue
            for _ in range(math.ceil(number * options.share)):
                lines.append((name, {"ask": ask, **make(chance)}, answer, tolerance))
    chance.shuffle(lines)
    # A wrong line now and then must not disturb its neighbours.
    for i in range(0, len(lines), 100):
        lines.insert(i, (None, chance.choice(WRONG), None, None))
    text = "\n".join(q if ask is None else json.dumps(q) for ask, q, _, _ in lines) + "\n"
    start = time.monotonic()
    told = subprocess.run([options.workings], input=text, capture_output=True, text=True, check=True)
    took = time.monotonic() - start
    answers = [json.loads(line) for line in told.stdout.splitlines()]
    if len(answers) != len(lines):
        sys.exit(f"{len(lines)} questions got {len(answers)} answers")

    largest, wrong = {}, 0
    for (ask, question, answer, tolerance), found in zip(lines, answers):
        if ask is None:
            wrong += 1
            if "code" not in found.get("error", {}):
                sys.exit(f"a wrong question was answered: {question} by {found}")
            continue
        largest.setdefault(ask, Largest()).compare(question, answer(question), found, tolerance)

    failed = False
    print(f"{'ask':28} {'asked':>6}  {'largest':>8} {'allowed':>8}  in")
    for ask in sorted(largest):
        seen = largest[ask]
        by = f"{seen.by:8.1e} {seen.allowed:8.0e}  {seen.at}" if seen.at else f"{'exact':>8} {'exact':>8}"
        print(f"{ask:28} {seen.asked:6}  {by}")
        for question, key, value, found in seen.failures[:3]:
            failed = True
            print(f"    {len(seen.failures)} wrong: {key} should be {value}\n    {json.dumps(question)[:600]}\n    {found}")
    asked = sum(seen.asked for seen in largest.values())
    print(f"{asked} questions and {wrong} wrong lines, answered in {took:.1f} s")
    sys.exit(failed)


if __name__ == "__main__":
    main()
