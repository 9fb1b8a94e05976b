#!/usr/bin/env python3
"""Fits the four constants of src/core/matter/activity.ts; needs numpy and scipy, and is not part of the build.

Form, Starzak & Peacock 1997 (Zuckerindustrie 122) with one further term: x mole fraction of sucrose, T in kelvin,
    ln aw = ln(1-x) + x^2 [ (Q/RT)(1 + a1 x + a2 x^2) + c x^2 ]

Targets
  - boiling at 1 atm, 50-97 %: mean of the Starzak-Peacock curve and the confectionery table (weight 1; above 97 %, from memory, 0.5)
  - 25 C, 30-70 %: Norrish 1966 with K = 6.47
  - 25 C, 95 and 97 %: sorption of amorphous sucrose, order of magnitude (aw 0.19 and 0.11)
Bars, as stiff penalties
  - 40-97 %: within 1 C of Starzak-Peacock; 80 %: within 2.5 C of the food-text table (112 C)
  - aw falls with solids to 99.95 % at 0, 200 and 250 C

Run from the project's root: python3 scripts/fit-activity.py
"""
import csv

import numpy as np
from scipy.optimize import brentq, least_squares

GAS = 8.314462618
ATM = 101325.0
STARZAK_PEACOCK = (-17638.0, -1.0038, -0.24653, 0.0)


def saturation_pressure(celsius):
    kelvin = celsius + 273.15
    t = 1 - kelvin / 647.096
    a = (-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502)
    powers = (1, 1.5, 3, 3.5, 4, 7.5)
    return 22.064e6 * np.exp(647.096 / kelvin * sum(c * t**p for c, p in zip(a, powers)))


def mole_fraction(w):
    sucrose = w / 342.2965
    return sucrose / (sucrose + (1 - w) / 18.01528)


def activity(w, celsius, constants):
    q, a1, a2, c = constants
    x = mole_fraction(w)
    return (1 - x) * np.exp(x * x * (q / GAS / (celsius + 273.15) * (1 + a1 * x + a2 * x * x) + c * x * x))


def boiling(w, constants):
    return brentq(lambda t: np.log(activity(w, t, constants) * saturation_pressure(t) / ATM), 60, 300)


def read_table(path):
    with open(path, encoding="utf-8") as file:
        rows = list(csv.DictReader(line for line in file if not line.startswith("#")))
    return {float(row["mass_percent_sucrose"]) / 100: float(row["boiling_C"]) for row in rows}


def residuals(scaled, table, text):
    constants = (scaled[0] * 1e4, *scaled[1:])
    out = []
    for w, celsius in table.items():
        target = (celsius + boiling(w, STARZAK_PEACOCK)) / 2
        out.append((boiling(w, constants) - target) * (1 if w <= 0.97 else 0.5))
    thin = np.linspace(0.3, 0.7, 9)
    x = mole_fraction(thin)
    out += list(300 * (activity(thin, 25, constants) - (1 - x) * np.exp(-6.47 * x**2)))
    out += [5 * (activity(0.95, 25, constants) - 0.19), 5 * (activity(0.97, 25, constants) - 0.11)]
    dense = np.linspace(0.5, 0.9995, 400)
    for celsius in (0, 200, 250):
        out.append(100 * max(0, np.diff(np.log(activity(dense, celsius, constants))).max() + 2e-4))
    for w in np.linspace(0.4, 0.97, 39):
        out.append(30 * max(0, abs(boiling(w, constants) - boiling(w, STARZAK_PEACOCK)) - 0.93))
    out.append(30 * max(0, text[0.8] - 2.47 - boiling(0.8, constants)))
    return np.array(out)


def report(name, constants, table, text):
    print(name, constants)
    grid = np.linspace(0.4, 0.97, 571)
    off = [boiling(w, constants) - boiling(w, STARZAK_PEACOCK) for w in grid]
    worst = int(np.argmax(np.abs(off)))
    print(f"  against Starzak-Peacock, 40-97 %: {off[worst]:+.3f} C at {100 * grid[worst]:.1f} %")
    for label, rows in (("confectionery", table), ("food text", text)):
        print(f"  against {label}:", {w: round(boiling(w, constants) - t, 2) for w, t in rows.items()})
    print("  aw at 25 C, 95 and 97 %:", [round(float(activity(w, 25, constants)), 3) for w in (0.95, 0.97)])
    dense = np.linspace(0.001, 0.9999, 20000)
    rising = [t for t in (-20, 0, 25, 100, 150, 200, 250) if np.diff(np.log(activity(dense, t, constants))).max() > 0]
    print("  temperatures at which aw rises with solids:", rising or "none")


def main():
    table = read_table("reference/boiling-sucrose-confectionery.csv")
    text = read_table("reference/boiling-sucrose-food-text.csv")
    start = [-1.85, -1.114, 1.042, 5.82]
    fit = least_squares(residuals, start, x_scale=[0.01, 0.1, 0.1, 0.1], args=(table, text)).x
    report("fitted", (fit[0] * 1e4, *fit[1:]), table, text)
    report("rounded", (round(fit[0] * 1e3) * 10, *(round(v, 2) for v in fit[1:])), table, text)


if __name__ == "__main__":
    main()
