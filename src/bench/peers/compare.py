"""Solves the problems that Peers.java writes with SciPy's LSODA and sets all solvers side by side.

Error: the largest difference of any cell from a reference, in wt% of carbon. Time: of one heat, the
best of many, interpolated between tolerances to the error that this project's solver has at its own.
"""

import math
import sys
import time

import numpy as np
from scipy.integrate import solve_ivp

OWN = 2e-3  # tolerance of the answers
SAME = 3e-4  # wt%, for what more cells cost at the same error
PERCENT = 100 / 4.65  # carbon per metal atom to wt%, near enough
PROBLEMS = [f"{kind}-{n}" for kind in ("smooth", "plateau") for n in (100, 200, 400)]


class Law:
    def __init__(self, numbers):
        (self.dilute, self.k, self.c0, self.c1, self.c2, self.ferrite, self.ferrite_most, self.least,
         self.most) = numbers
        k, d = self.k, self.dilute
        self.p = (self.c1, 2 * self.c2 - self.c1, -2 * self.c2)
        q3 = d * self.p[2] / k
        q2 = (d * self.p[1] - 3 * q3) / k
        q1 = (d * self.p[0] - 2 * q2) / k
        self.q = ((d - q1) / k, q1, q2, q3)
        self.below = self.ferrite * self.ferrite_most
        self.base = self.below - self.integral(self.least)
        self.above = self.base + self.integral(self.most)

    def integral(self, y):
        q = self.q
        return np.exp(self.k * y) * (q[0] + y * (q[1] + y * (q[2] + y * q[3]))) - q[0]

    def potential(self, y):
        inside = (y >= self.least) & (y > self.ferrite_most) & (y < self.most)
        dilute = self.ferrite if self.ferrite_most > 0 else self.dilute
        other = np.where(y <= self.ferrite_most, dilute * y,
                         np.where(y < self.least, self.below, self.above))
        return np.where(inside, self.base + self.integral(y), other)

    def slope(self, y):
        return self.dilute * math.exp(self.k * y) * (
            1 + y * (self.p[0] + y * (self.p[1] + y * self.p[2])))

    def ln(self, y):
        return math.log(y / (1 - y)) + self.c0 + y * (self.c1 + y * self.c2)

    def ln_slope(self, y):
        return 1 / (y * (1 - y)) + self.c1 + 2 * self.c2 * y


class Problem:
    def __init__(self, path):
        with open(path) as text:
            n, self.seconds, self.edge, self.seam = text.readline().split()
            self.n, self.seconds, self.edge, self.seam = (
                int(n), float(self.seconds), float(self.edge), int(self.seam))
            self.left = Law([float(x) for x in text.readline().split()])
            self.right = Law([float(x) for x in text.readline().split()])
            cells = np.array([[float(x) for x in line.split()] for line in text])
        self.h, self.start = cells[:, 0], cells[:, 1]
        self.apart = 2 / (self.h[:-1] + self.h[1:])
        self.face = [self.start[self.seam - 1], self.start[self.seam]]

    def rhs(self, _, y):
        s = self.seam
        if s:
            potential = np.concatenate([self.left.potential(y[:s]), self.right.potential(y[s:])])
        else:
            potential = self.left.potential(y)
        flux = np.zeros(self.n + 1)
        flux[1:-1] = self.apart * (potential[:-1] - potential[1:])
        if s:
            flux[s] = self.across(potential[s - 1], potential[s])
        if self.edge >= 0 and y[0] > self.edge:
            flux[0] = 2 / self.h[0] * (float(self.left.potential(np.array(self.edge))) - potential[0])
        return (flux[:-1] - flux[1:]) / self.h

    def across(self, pl, pr):
        l, r, s = self.left, self.right, self.seam
        el, er = 2 / self.h[s - 1], 2 / self.h[s]
        yl, yr = self.face
        for _ in range(30):
            sl, sr = el * l.slope(yl), er * r.slope(yr)
            ml, mr = sl / l.ln_slope(yl), sr / r.ln_slope(yr)
            step = r.ln(yr) - l.ln(yl)
            fl = el * (pl - (l.base + l.integral(yl)))
            fr = er * (pr - (r.base + r.integral(yr)))
            rise = (fl + fr + mr * step) / (ml + mr)
            dl, dr = rise / l.ln_slope(yl), (rise - step) / r.ln_slope(yr)
            yl, yr = yl + dl, yr + dr
            if abs(dl) <= 1e-5 * yl and abs(dr) <= 1e-5 * yr:
                break
        self.face = [yl, yr]
        return fl - sl * dl

    def solve(self, tolerance):
        return solve_ivp(self.rhs, (0, self.seconds), self.start, method="LSODA", rtol=tolerance,
                         atol=tolerance * 0.0047, lband=1, uband=1).y[:, -1]


def read(path):
    runs = {}
    with open(path) as text:
        for line in text:
            w = line.split()
            runs.setdefault(w[0], []).append(
                (float(w[1]), float(w[2]), int(w[3]), np.array([float(x) for x in w[4:]])))
    return runs


def scipy_runs(folder, name):
    runs = []
    for tolerance in (1e-2, 1e-3, 1e-4, 1e-5, 1e-6):
        least = math.inf
        for _ in range(3):
            problem = Problem(f"{folder}/{name}.txt")
            start = time.process_time()
            end = problem.solve(tolerance)
            least = min(least, time.process_time() - start)
        runs.append((tolerance, least, 0, end))
    return runs


def curve(runs, reference):
    points = sorted((PERCENT * np.max(np.abs(y - reference)), t) for _, t, _, y in runs)
    kept, least = [], math.inf
    for error, t in points:
        if t < least:
            kept.append((error, t))
            least = t
    return kept


def at(points, error):
    """Time at an error, straight on logarithmic scales; the nearest end outside."""
    if error <= points[0][0]:
        return points[0][1]
    for (e0, t0), (e1, t1) in zip(points, points[1:]):
        if e0 <= error <= e1:
            part = math.log(error / e0) / math.log(e1 / e0)
            return math.exp(math.log(t0) + part * math.log(t1 / t0))
    return points[-1][1]


def main(folder):
    own, cvode = read(f"{folder}/seamsoak.txt"), read(f"{folder}/cvode.txt")
    print("problem      error wt%   ours ms  kB   CVODE/ours  LSODA/ours  ms at 3e-4: ours  CVODE")
    for name in PROBLEMS:
        reference = cvode[name][-1][3]
        mine = next(r for r in own[name] if r[0] == OWN)
        error = PERCENT * np.max(np.abs(mine[3] - reference))
        ours = at(curve(own[name], reference), error)
        c = at(curve(cvode[name][:-1], reference), error)
        s = at(curve(scipy_runs(folder, name), reference), error)
        print(f"{name:12s} {error:9.5f}  {1e3 * ours:8.3f} {mine[2] // 1024:4d}  {c / ours:9.2f}"
              f"  {s / ours:10.1f}  {1e3 * at(curve(own[name], reference), SAME):16.3f}"
              f"  {1e3 * at(curve(cvode[name][:-1], reference), SAME):5.2f}")
        if len(sys.argv) > 2:
            for label, runs in (("ours", own[name]), ("cvode", cvode[name][:-1])):
                for tolerance, t, _, y in runs:
                    print(f"    {label:6s} {tolerance:7.0e} {1e3 * t:9.3f} ms"
                          f" {PERCENT * np.max(np.abs(y - reference)):.6f}")


main(sys.argv[1])
