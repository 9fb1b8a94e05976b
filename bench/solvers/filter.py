"""The serial square-root filter of one observation, plainly in NumPy: the equations of src/core/twin/assimilate.ts over whole arrays."""

import json
import sys
import time

import numpy as np

problem = json.load(sys.stdin)
start = np.array(problem["ensemble"]).reshape(problem["members"], -1)
expected = np.array(problem["expected"])
reach = np.array(problem["reach"])
observed, variance, relaxation = problem["observed"], problem["variance"], problem["relaxation"]


def analysed(ensemble):
    members = len(expected)
    off = expected - expected.mean()
    spread = off @ off / (members - 1)
    total = spread + variance
    shrink = 1 / (1 + np.sqrt(variance / total))
    average = ensemble.mean(axis=0)
    deviations = ensemble - average
    covariance = off @ deviations
    before = (deviations**2).sum(axis=0)
    r2 = covariance**2 / before / (spread * (members - 1))
    gain = reach * r2 / (r2 + (1 + r2) / members) * covariance / (members - 1) / total
    shrunk = deviations - shrink * np.outer(off, gain)
    widen = 1 + relaxation * (np.sqrt(before / (shrunk**2).sum(axis=0)) - 1)
    return average + gain * (observed - expected.mean()) + widen * shrunk


times = []
for _ in range(problem["times"]):
    begun = time.perf_counter()
    after = analysed(start)
    times.append(1000 * (time.perf_counter() - begun))
json.dump({"ensemble": after.ravel().tolist(), "times": times, "version": np.__version__}, sys.stdout)
