"""The problem of finder.mjs with numpy: one array of all combinations; median time of a run in milliseconds and the count.

Reads what every-combination.mjs used, from standard input. Import, start-up and the room of the valves are not timed.
"""
import json
import sys
import time

import numpy as np

given = json.load(sys.stdin)
fixed, wanted, heights = given["fixed"], given["wanted"], given["heights"]
SLACK = 1e-9


def along(values, axis):
    shape = [1] * 9
    shape[axis] = -1
    return np.asarray(values, dtype=float).reshape(shape)


def count():
    thickness = along([one["thickness"] for one in given["gaskets"]], 0)
    bore = along([one["bore"] for one in given["gaskets"]], 0)
    tall = along([one["compressionHeight"] for one in given["pistons"]], 1)
    crown = along([one["crownVolume"] for one in given["pistons"]], 1)
    lift = along(np.asarray(given["ratios"]) * fixed["intake"]["lobe"]["peakLift"], 7)
    pushrod = along(given["pushrods"], 8)
    area = np.pi / 4 * fixed["cylinders"][0]["bore"] ** 2
    keeps = fixed["intake"]["springHeight"] - lift - fixed["intake"]["bindHeight"] >= wanted["bindRoom"]["intake"] - SLACK
    keeps = keeps & (fixed["intake"]["retainerRoom"] - lift >= wanted["retainerRoom"]["intake"] - SLACK)

    def inside(value, window):
        return (value >= window["low"] - SLACK) & (value <= window["high"] + SLACK)

    for bank in range(2):
        deck, head = along(given["decks"], 2 + bank), along(given["heads"], 4 + bank)
        clear = heights[bank] - fixed["stroke"] / 2 - fixed["rodLength"] - tall - deck
        volume = (
            fixed["cylinders"][0]["chamber"]
            - fixed["chamberArea"] * head
            + np.pi / 4 * bore**2 * thickness
            + area * clear
            + crown
            + fixed["cylinders"][0]["other"]
        )
        closer = head + deck - (thickness - fixed["gasket"]["thickness"])
        up = tall - fixed["piston"]["compressionHeight"]
        keeps = keeps & inside((area * fixed["stroke"] + volume) / volume, wanted["ratio"])
        keeps = keeps & inside(clear + thickness, wanted["quench"])
        keeps = keeps & (heights[bank] - deck >= wanted["deckHeight"] - SLACK)
        keeps = keeps & (fixed["headThickness"] - head >= wanted["headThickness"] - SLACK)
        shift = closer * np.sin(fixed["bankAngle"]) / np.cos(fixed["faceAngle"])
        keeps = keeps & (np.abs(shift) <= wanted["intakeShift"] + SLACK)
        for side in ("intake", "exhaust"):
            room = np.asarray(given["room"][side]).reshape((1,) * 6 + (-1, len(given["ratios"]), 1))
            room = room - np.cos(fixed["intake"]["angle"]) * (closer + up)
            keeps = keeps & (room >= wanted["valveRoom"][side] - SLACK)
        keeps = keeps & inside(pushrod - fixed["zeroLashPushrod"] + closer, wanted["preload"])
    return int(np.count_nonzero(keeps))


times = []
for _ in range(given["runs"]):
    start = time.perf_counter()
    feasible = count()
    times.append((time.perf_counter() - start) * 1e3)
print(json.dumps({"ms": sorted(times)[len(times) // 2], "feasible": feasible}))
