"""A second reading of docs/methods.md sections 1, 2, 3 and 4, written apart from the program.

It knows no class of the program: matches are made up, written as event CSV, and worked out here
from the definitions alone. Casts are logged on arrival, so that no spell opens with a fish.
SecondReadingTest holds the program's review against what it found.

Run: python3 src/test/python/second_reading.py  (needs numpy and scipy; prints their versions,
takes some minutes, writes src/test/resources/second-reading).
"""
import csv
import json
import pathlib
import random
from datetime import datetime, timedelta

import numpy as np
import scipy
from scipy.special import gammaln
from scipy.stats import chi2

OUT = pathlib.Path(__file__).parent.parent / "resources" / "second-reading"
ALL_IN = datetime(2026, 6, 6, 10)
MATCH = 300 * 60
LINES = ("short", "edge", "long")
WATER = {"cast", "bite", "hooked", "landed", "lost", "foul"}
DRAWS = 8000


# A made-up match: (seconds since all in, kind, line, fish, grams).


def match(seed, casts_logged):
    """Spells of 5 to 75 minutes on three lines; with casts forgotten where casts_logged < 1."""
    r = random.Random(seed)
    events, now, line = [(0, "all-in", "", 0, 0)], 0.0, None
    feeds = {name: r.uniform(0, 1200) for name in LINES}

    def log(kind, fish=0, grams=0, where=None, at=None):
        events.append((round(now if at is None else at), kind, where or line, fish, grams))

    while now < MATCH - 60:
        if line is not None and (casts_logged == 1 or r.random() < 0.6):
            log("move")
            now += r.uniform(20, 240)
        line = r.choice([name for name in LINES if name != line])
        left = min(MATCH - 5, now + 60 * r.uniform(5, 75))
        pace = r.choice([60, 150, 400])
        log("cast")
        while now < left:
            for name in LINES:
                while feeds[name] < now:
                    log("fed", where=name, at=feeds[name])
                    feeds[name] += r.choice([60, 240, 900, 1800]) * r.uniform(0.5, 1.5)
            if r.random() < casts_logged:
                log("cast")
            wait = r.expovariate(1 / pace)
            if now + wait >= left:
                now = left
                break
            now += wait
            what = r.random()
            if what < 0.3:
                log("bite")
                now += r.uniform(5, 20)
            elif what < 0.35:
                log("off")
                now += r.uniform(30, 900)
                log("cast")
            else:
                if r.random() < 0.5:
                    log("bite")
                    now += r.uniform(2, 9)
                if r.random() < 0.8:
                    log("hooked")
                    now += r.uniform(5, 120)
                came = r.random()
                if came < 0.75:
                    log("landed", r.choice([1] * 9 + [2]), round(r.lognormvariate(6.5, 0.5)))
                elif came < 0.95:
                    log("lost")
                else:
                    log("foul", 1, 900)
                now += r.uniform(5, 40)
    events = [e for e in events if e[0] <= MATCH] + [(MATCH, "all-out", "", 0, 0)]
    order = {"all-in": 0, "all-out": 2}
    return sorted(events, key=lambda e: (e[0], order.get(e[1], 1)))


def one_line(seed, before, after):
    """Bites at one rate an hour, then another from a random minute on; nothing but bites."""
    r = np.random.default_rng(seed)
    change = r.uniform(90, 210)
    minutes = np.r_[
        r.uniform(0, change, r.poisson(before * change / 60)),
        r.uniform(change, 300, r.poisson(after * (300 - change) / 60)),
    ]
    events = [(0, "all-in", "", 0, 0), (0, "cast", "short", 0, 0)]
    for second in sorted(int(60 * m) for m in minutes):
        events += [(second, "bite", "short", 0, 0), (second, "cast", "short", 0, 0)]
    return events + [(MATCH, "all-out", "", 0, 0)]


def write(events, path):
    with open(path, "w", newline="") as out:
        rows = csv.writer(out, lineterminator="\n")
        rows.writerow("time,event,line,count,weight_g".split(","))
        for at, kind, line, fish, grams in events:
            time = (ALL_IN + timedelta(seconds=at)).strftime("%H:%M:%S")
            rows.writerow([time, kind, line, fish if kind == "landed" else "", grams or ""])


# Section 1: spells, bites, bait time. A spell is a dictionary; times are in seconds.


def spells(events):
    done, now = [], None

    def end(at):
        nonlocal now
        now["to"] = now["off"] if now["off"] is not None else at
        done.append(now)
        now = None

    for at, kind, line, fish, grams in events:
        if kind in WATER:
            if now and now["line"] == line and now["off"] is not None:
                if at - now["off"] <= 600:
                    now["gaps"].append((now["off"], at))
                    now["off"] = None
                else:
                    end(at)
            elif now and now["line"] != line:
                end(at if kind == "cast" else now["water"][-1][0])
            if now is None:
                now = {"line": line, "from": at, "gaps": [], "water": [], "off": None}
            now["water"].append((at, kind, fish, grams))
        elif kind == "move" and now:
            end(at)
        elif kind == "off" and now and now["off"] is None:
            now["off"] = at
    if now:
        end(MATCH)
    for spell in done:
        spell["bites"], spell["hooks"] = bites(spell["water"])
    for line in LINES:
        handling([s for s in done if s["line"] == line])
    return done


def bites(water):
    """(seconds, how many) of each bite, and (start, index of the last event) of each hook-up."""
    found, hooks, taken = [], [], set()
    for i, (at, kind, fish, _) in enumerate(water):
        following = water[i + 1] if i + 1 < len(water) else (0, "", 0, 0)
        if kind == "hooked":
            found.append((at, 1))
            ends = following[1] in ("landed", "lost", "foul")
            if ends:
                taken.add(i + 1)
                if following[2] > 1:
                    found.append((following[0], following[2] - 1))
            hooks.append((at, i + ends))
        elif kind in ("landed", "lost", "foul") and i not in taken:
            found.append((at, max(1, fish)))
            hooks.append((at, i))
        elif kind == "bite" and not (following[1] == "hooked" and following[0] - at <= 10):
            found.append((at, 1))
    return found, hooks


def handling(line):
    """Leaves each spell's time with a bait in the water, as spans."""
    found = []
    for spell in line:
        for start, last in spell["hooks"]:
            rest = spell["water"][last + 1 :]
            cast = next((at for at, kind, *_ in rest if kind == "cast"), None)
            if cast is not None:
                taken = rest[0][0] if rest[0][1] != "cast" else None
                found.append((spell, start, cast, taken))

    def off(spell, start, cast):
        return sum(min(b, cast) - a for a, b in spell["gaps"] if start <= a < cast)

    logged = [c - at - off(spell, at, c) for spell, at, c, taken in found if taken is None]
    typical = float(np.median(logged)) if logged else None
    for spell in line:
        spell["out"] = list(spell["gaps"])
    for spell, start, cast, taken in found:
        if taken is None:
            longest = 3 * typical + off(spell, start, cast)
            spell["out"].append((start, min(cast, start + longest)))
        elif typical is not None:
            spell["out"].append((start, min(taken, start + typical)))
    for spell in line:
        spell["bait"] = without(spell["from"], spell["to"], spell["out"])
        spell["fished"] = without(spell["from"], spell["to"], spell["gaps"])


def without(start, end, spans):
    left = []
    for a, b in sorted(spans):
        if a > start:
            left.append((start, min(a, end)))
        start = max(start, b)
    return left + [(start, end)] if start < end else left


def length(spans):
    return sum(b - a for a, b in spans)


# Section 2: exact limits (Garwood 1936), weighted sums (Fay and Feuer 1997), 95%.


def rate(n, hours):
    low = chi2.ppf(0.025, 2 * n) / 2 if n else 0.0
    return [n / hours, low / hours, chi2.ppf(0.975, 2 * n + 2) / 2 / hours]


def weight_rate(grams, hours):
    y, v, m = sum(grams), sum(w * w for w in grams), max(grams)
    low = v / (2 * y) * chi2.ppf(0.025, 2 * y * y / v)
    high = (v + m * m) / (2 * (y + m)) * chi2.ppf(0.975, 2 * (y + m) ** 2 / (v + m * m))
    return [y / hours, low / hours, high / hours]


# Section 3: rows of (entry, exit, bite) in minutes since the feeding episode began.


def first_bites(line, feeds):
    starts = [at for i, at in enumerate(feeds) if i == 0 or at - feeds[i - 1] > 300]
    rows = []
    for start, end in zip(starts, starts[1:] + [MATCH]):
        for spell in line:
            took = None
            for a, b in spell["bait"]:
                entry, leave = max(a, start), min(b, end)
                came = [t for t, _ in spell["bites"] if start < t < end and entry <= t <= leave]
                took = min(came, default=None)
                stop = leave if took is None else took
                if stop > entry:
                    rows.append([(entry - start) / 60, (stop - start) / 60, took is not None])
                if took is not None:
                    break
            if took is not None:
                break
    return rows


# Section 4: faded, by steps and by a decline, minute by bait minute.

SCALES = np.array([1.5, 3, 6, 12, 24, 48.0])
CHANGE = 1 - np.exp(-0.25 / 60)
SHORTEST = 10
HALF_LIVES = np.exp(np.linspace(np.log(10), np.log(480), 40))


def log_mean(values):
    top = values.max()
    return top + np.log(np.exp(values - top).mean())


class Steps:
    """Piecewise constant rates at each scale of the prior: evidence and curves drawn from it."""

    def __init__(self, counts, hours):
        self.n = len(counts)
        self.total = np.r_[0, np.cumsum(counts)], np.r_[0, np.cumsum(hours)]
        runs = [self.recursion(1 / m) for m in SCALES]
        logs = np.array([r[0] for r in runs])
        self.evidence = log_mean(logs)
        self.weights = np.exp(logs - logs.max()) / np.exp(logs - logs.max()).sum()
        self.ends = [r[1] for r in runs]

    def recursion(self, b):
        y, e = self.total
        log_q, ends = np.full(self.n + 1, -np.inf), [None] * self.n
        stay = np.log1p(-CHANGE)
        for t in range(self.n - 1, -1, -1):
            js = np.r_[t + SHORTEST : self.n, self.n].astype(int)
            s, x, d = y[js] - y[t], e[js] - e[t], js - t
            v = gammaln(1 + s) + np.log(b) - (1 + s) * np.log(b + x)
            v += np.where(
                js < self.n,
                np.log(CHANGE) + stay * (d - SHORTEST) + log_q[js],
                stay * np.maximum(0, d - SHORTEST),
            )
            log_q[t] = v.max() + np.log(np.exp(v - v.max()).sum())
            ends[t] = js, np.cumsum(np.exp(v - log_q[t]))
        return log_q[0], ends

    def draw(self, rng):
        y, e = self.total
        scale, t, curve = rng.choice(len(SCALES), p=self.weights), 0, np.empty(self.n)
        while t < self.n:
            js, below = self.ends[scale][t]
            j = js[min(np.searchsorted(below, rng.random() * below[-1]), len(js) - 1)]
            curve[t:j] = rng.gamma(1 + y[j] - y[t]) / (1 / SCALES[scale] + e[j] - e[t])
            t = j
        return curve


def first_faded(curve, counts):
    """First bin from which the curve stays at half its best earlier hour or less; -1 if none."""
    sums, seen = np.r_[0, np.cumsum(curve)], np.r_[0, np.cumsum(counts)]
    highest_after = np.maximum.accumulate(curve[::-1])[::-1]
    going = 0.0
    for t in range(20, len(curve)):
        going = max(going, sums[t] / t if t < 60 else (sums[t] - sums[t - 60]) / 60)
        if seen[t] >= 5 and highest_after[t] <= going / 2:
            return t
    return -1


def bunching(counts, starts, whole):
    total, pairs = 10.0, 10
    for start, end in zip(starts, starts[1:] + [whole]):
        first = int(np.ceil(start / 60 - 1e-9))
        last = min(int(end / 60 + 1e-9), int(whole / 60 + 1e-9))
        blocks = [counts[i : i + 10].sum() for i in range(first, last - 9, 10)]
        for a, b in zip(blocks, blocks[1:]):
            if a + b > 0:
                total, pairs = total + (a - b) ** 2 / (a + b), pairs + 1
    return max(1.0, total / pairs)


def clock(line, spell_start, minute):
    """The second at which a bait minute of the line starts; at a gap, the clock after it."""
    left = max(spell_start, 60 * minute)
    for start, end in (span for spell in line for span in spell["bait"]):
        if left < end - start:
            return float(start + left)
        left -= end - start
    return float(line[-1]["to"])


def fades(line, rng):
    """[spell, probability, [5%, 50% and 95% points in seconds since all in], bunching]."""
    starts, bite_at, position = [], [], 0.0
    for spell in line:
        starts.append(position)
        for at, n in spell["bites"]:
            into = sum(max(0, min(at, b) - a) for a, b in spell["bait"])
            bite_at += [position + into] * n
        position += length(spell["bait"])
    found = []
    for k, start in enumerate(starts):
        whole = starts[k + 1] if k + 1 < len(starts) else position
        if whole - start < 20 * 60:
            continue
        n, first = int(np.ceil(whole / 60 - 1e-9)), int(start / 60 + 1e-9)
        hours = np.full(n, 1 / 60)
        hours[-1] = (whole - 60 * (n - 1)) / 3600
        counts = np.zeros(n)
        for at in bite_at:
            if at <= whole:
                counts[min(n - 1, int(at / 60 + 1e-9))] += 1
        phi = bunching(counts, starts[: k + 1], whole)
        y, e = counts / phi, hours / phi
        steps = Steps(y, e)
        before = Steps(y[:first], e[:first]) if first else None
        step_taus = np.array([first_faded(steps.draw(rng), counts) for _ in range(DRAWS)])
        x, ys, es = np.arange(n - first) + 0.5, y[first:], e[first:]
        shapes = np.exp(-np.log(2) / HALF_LIVES[:, None] * x)
        logs = np.array(
            [
                gammaln(1 + ys.sum())
                - np.log(SCALES)
                - (1 + ys.sum()) * np.log(1 / SCALES + (es * shape).sum())
                + (ys * np.log(shape)).sum()
                for shape in shapes
            ]
        )
        p = np.exp(logs - logs.max()).ravel()
        decline_taus = []
        for pick in rng.choice(p.size, size=DRAWS, p=p / p.sum()):
            shape, m = shapes[pick // len(SCALES)], SCALES[pick % len(SCALES)]
            own = shape * rng.gamma(1 + ys.sum()) / (1 / m + (es * shape).sum())
            curve = np.r_[before.draw(rng), own] if before else own
            decline_taus.append(first_faded(curve, counts))
        decline_taus = np.array(decline_taus)
        odds = steps.evidence - (before.evidence if before else 0) - log_mean(logs.ravel())
        share = 1 / (1 + np.exp(-odds))
        by_step, by_decline = (step_taus >= first).mean(), (decline_taus >= first).mean()
        taus = step_taus if by_step >= 0.1 else decline_taus
        taus = taus[taus >= first] if (taus >= first).any() else np.array([first])
        points = [clock(line, start, tau) for tau in np.quantile(taus, [0.05, 0.5, 0.95])]
        pr = share * by_step + (1 - share) * by_decline
        found.append([k, round(float(pr), 4), points, float(phi)])
    return found


def reading(events, rng):
    lines = {}
    done = spells(events)
    for name in LINES:
        line = [s for s in done if s["line"] == name]
        if not line:
            continue
        hours = sum(length(s["fished"]) for s in line) / 3600
        fish = [
            (at, n, grams)
            for s in line
            for at, kind, n, grams in s["water"]
            if kind == "landed"
        ]
        grams = [g / n for _, n, g in fish for _ in range(n)]
        feeds = [at for at, kind, where, *_ in events if kind == "fed" and where == name]
        lines[name] = {
            "spells": [
                [
                    s["from"],
                    s["to"],
                    length(s["fished"]) / 60,
                    length(s["bait"]) / 60,
                    sum(n for _, n in s["bites"]),
                ]
                for s in line
            ],
            "fishRate": rate(sum(n for _, n, _ in fish), hours),
            "weightRate": weight_rate(grams, hours) if grams else None,
            "firstBites": first_bites(line, feeds),
            "fades": fades(line, rng),
        }
    return lines


def main():
    print("numpy", np.__version__, "scipy", scipy.__version__)
    matches = {f"match-{seed}": match(seed, 1) for seed in (1, 2, 3)}
    matches |= {f"casts-forgotten-{seed}": match(seed, 0.7) for seed in (4, 5)}
    for seed, (before, after) in enumerate([(20, 2), (12, 3), (8, 4), (10, 10)], 1):
        matches[f"one-line-{before}-{after}"] = one_line(seed, before, after)
    OUT.mkdir(parents=True, exist_ok=True)
    rng, found = np.random.default_rng(7), {}
    for name, events in matches.items():
        write(events, OUT / f"{name}.csv")
        found[name] = reading(events, rng)
        print(name, {line: values["fades"] for line, values in found[name].items()})
    (OUT / "expected.json").write_text(json.dumps(found, indent=1) + "\n")


if __name__ == "__main__":
    main()
