"""A stack of parts drawn many times with numpy; median time of a run in milliseconds, mean and spread, as JSON.

Reads {"runs", "trials", "sizes", "doubts", "seed"} from standard input. Import and start-up are not timed.
"""
import json
import sys
import time

import numpy as np

given = json.load(sys.stdin)
sizes, doubts = np.array(given["sizes"]), np.array(given["doubts"])
draw = np.random.default_rng(given["seed"])
times = []
for _ in range(given["runs"]):
    start = time.perf_counter()
    sums = draw.normal(sizes, doubts, size=(given["trials"], sizes.size)).sum(axis=1)
    found = sums.mean(), sums.std(ddof=1), *np.quantile(sums, [0.025, 0.975])
    times.append((time.perf_counter() - start) * 1e3)
print(json.dumps({"ms": sorted(times)[len(times) // 2], "mean": found[0], "standard": found[1]}))
