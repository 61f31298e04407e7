#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
"""Sets match-speed's fully permuted rail of 72 pins beside a general assignment solver.

Usage: assignment_reference.py path/to/match-speed
Needs python3-scipy (Debian). The reference, scipy.optimize.linear_sum_assignment, gets the finished
72 x 72 matrix of costs; the diagnosis starts from readings, weighs every explanation and writes
findings. So the ratio says how far the whole is from the bare assignment, and is well above 1.
"""
import json
import subprocess
import sys
import time

try:
    import numpy
    from scipy.optimize import linear_sum_assignment
except ImportError:
    sys.exit("The reference needs scipy, which is not here: apt-get install python3-scipy")

PINS = 72
ROUNDS = 50


def assignment_ms():
    draw = numpy.random.default_rng(7)
    planned = numpy.sort(draw.uniform(1.5, 14.0, PINS))
    shown = planned[(numpy.arange(PINS) * 29 + 17) % PINS]
    cost = ((shown[:, None] - planned[None, :]) / 0.1) ** 2 / 2
    best = float("inf")
    for _ in range(ROUNDS):
        start = time.perf_counter()
        rows, columns = linear_sum_assignment(cost)
        best = min(best, time.perf_counter() - start)
    if abs(cost[rows, columns].sum()) > 1e-9:
        sys.exit("the reference did not find the permutation")
    return 1000 * best


def diagnosis_ms(program):
    out = subprocess.run(
        [program, "--benchmark_filter=permuted", "--benchmark_format=json"],
        check=True, capture_output=True, text=True).stdout
    return json.loads(out)["benchmarks"][0]["cpu_time"]


def main():
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    reference = assignment_ms()
    ours = diagnosis_ms(sys.argv[1])
    print(f"linear_sum_assignment {reference:.3f} ms, diagnosis of the rail {ours:.3f} ms, "
          f"ratio {ours / reference:.0f}")


if __name__ == "__main__":
    main()
