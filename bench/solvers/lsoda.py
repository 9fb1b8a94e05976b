"""LSODA (Hindmarsh & Petzold, through scipy's odeint) for a system that another process serves over standard input and output.

Frames of 29 float64, little-endian. Sent: kind, time, 27 values; kind 0 asks for derivatives, 1 gives a row, 2 gives the end of a
stretch and asks for the next, 3 gives counts and times. Received: two times and 27 values; a stretch that starts at NaN is the end.
"""
import math
import struct
import sys
import time

import numpy as np
from scipy.integrate import odeint

SIZE = 27
FRAME = struct.Struct("<29d")
tolerance = float(sys.argv[1])
scale = np.array([float(x) for x in sys.argv[2].split(",")])
out, into = sys.stdout.buffer, sys.stdin.buffer
waited = 0.0
evaluations = 0


def ask(kind, t, y):
    out.write(FRAME.pack(kind, t, *y))
    out.flush()
    return FRAME.unpack(into.read(FRAME.size))


def derivative(y, t):
    global waited, evaluations
    start = time.perf_counter()
    answer = ask(0, t, y)
    evaluations += 1
    waited += time.perf_counter() - start
    return answer[2:]


solving = 0.0
stretch = ask(2, 0.0, [0.0] * SIZE)
while not math.isnan(stretch[0]):
    begin, end, y = stretch[0], stretch[1], np.array(stretch[2:])
    seconds = np.arange(math.ceil(begin), math.ceil(end), dtype=float)
    times = np.concatenate([[begin], seconds[seconds > begin], [end]])
    start = time.perf_counter()
    states = odeint(derivative, y, times, rtol=tolerance, atol=tolerance * scale, tcrit=[end], mxstep=100000)
    solving += time.perf_counter() - start
    for t, state in zip(times[:-1], states[:-1]):
        if t == math.floor(t):
            out.write(FRAME.pack(1, t, *state))
    stretch = ask(2, end, states[-1])
out.write(FRAME.pack(3, evaluations, solving, waited, *([0.0] * (SIZE - 2))))
out.flush()
