#!/usr/bin/env python3
# SPDX-FileCopyrightText: 2026 The Padside authors
# SPDX-License-Identifier: Apache-2.0
"""Makes track_forecasts.csv and track_scores.csv: made-up forecasts and their scores by scikit-learn and scipy."""

import csv
import math
import pathlib

import numpy
import scipy
import sklearn
from scipy.stats import binomtest
from sklearn.calibration import calibration_curve
from sklearn.metrics import brier_score_loss, log_loss

here = pathlib.Path(__file__).parent
dice = numpy.random.default_rng(20261126)
chance = numpy.round(dice.beta(0.6, 2.2, 500), 6).clip(0.000101, 0.999899)
spent = (dice.random(500) < numpy.clip(chance * 0.8 + 0.03, 0, 1)).astype(int)
base = numpy.full(500, spent.mean())

with open(here / "track_forecasts.csv", "w", newline="") as file:
    rows = csv.writer(file, lineterminator="\n")
    rows.writerow(["chance", "spent"])
    rows.writerows([f"{p:.6f}", o] for p, o in zip(chance, spent))

scores = [
    ("brier", brier_score_loss(spent, chance)),
    ("log", log_loss(spent, chance)),
    ("base-brier", brier_score_loss(spent, base)),
    ("base-log", log_loss(spent, base)),
]
came, said = calibration_curve(spent, chance, n_bins=10, strategy="uniform")
count = numpy.histogram(chance, bins=numpy.linspace(0, 1, 11))[0]
assert len(came) == numpy.count_nonzero(count)
filled = [tenth for tenth in range(10) if count[tenth] > 0]
two_errors = math.erf(2 / math.sqrt(2))
for tenth, observed, forecast in zip(filled, came, said):
    hits = round(observed * count[tenth])
    interval = binomtest(hits, int(count[tenth])).proportion_ci(confidence_level=two_errors, method="wilson")
    scores += [
        (f"count-{tenth}", count[tenth]),
        (f"came-{tenth}", observed),
        (f"said-{tenth}", forecast),
        (f"low-{tenth}", interval.low),
        (f"high-{tenth}", interval.high),
    ]

with open(here / "track_scores.csv", "w", newline="") as file:
    rows = csv.writer(file, lineterminator="\n")
    rows.writerow(["name", "value"])
    rows.writerows([name, repr(float(value))] for name, value in scores)

print("scikit-learn", sklearn.__version__, "scipy", scipy.__version__, "numpy", numpy.__version__)
for hits, trials in ((81, 263), (15, 148), (0, 20), (1, 29)):
    print(hits, trials, binomtest(hits, trials).proportion_ci(0.95, method="wilson"))
