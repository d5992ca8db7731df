"""How long lumwright takes against second implementations of the same equations, in the same run on the same machine:
scipy's integrators (written from the equations, tests/live) for the raise and the discharge, ngspice for the discharge.

usage: ratios.py RAISE_PROBE POWER_PROBE DESCRIPTION...

Lumwright's are medians inside one process, scipy's CPU time of the run alone (no start, no reading, no preparing of tables),
ngspice's wall time less that of an empty circuit. What they answer is compared as well: a fast wrong answer is no figure.
"""
import os
import statistics
import sys
import time

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "live"))
import ngspice_discharge  # noqa: E402
import power_model  # noqa: E402
import power_scipy  # noqa: E402
import raise_reference  # noqa: E402

EMPTY = "empty\nV1 a 0 1\nR1 a 0 1\n.tran 1 2\n.meas tran stop_at when v(a)=1\n.end\n"


def clocked(work, clock=time.process_time):
    start = clock()
    answer = work()
    return clock() - start, answer


def line(what, ours, theirs, other, apart):
    print(f"{what[:58]:<58} {1e3 * ours:9.3f} ms   {other:<8} {1e3 * theirs:9.1f} ms   {theirs / ours:8.0f} times   {apart:.1e} apart",
          flush=True)


def raises(probe, files):
    water = raise_reference.Water()
    for file in files:
        told, complaint = raise_reference.ask(probe, file, "201")
        if told is None:
            print(f"{os.path.basename(file)}: {complaint}")
            continue
        took, found = clocked(raise_reference.Reference(told, water).run)
        apart = max(abs(told["raise"][name]["at"]["t"] / found[name][0] - 1)
                    for name in ("own_blower", "working", "pack_stops") if told["raise"][name] and name in found)
        line(f"raise of {os.path.basename(file)}", told["seconds"], took, "scipy", apart)


def discharges(probe):
    def spice(text):  # the program itself, not what we write and read
        return clocked(lambda: ngspice_discharge.spice(text), time.perf_counter)

    empty = statistics.median(clocked(lambda: ngspice_discharge.run_spice(EMPTY), time.perf_counter)[0] for _ in range(5))
    for case in power_model.ask(probe, ngspice_discharge.CASES, "2001"):
        took, found = spice(ngspice_discharge.netlist(case))
        line(case["name"], case["seconds"], max(took - empty, 1e-9), "ngspice", abs(case["runtime_s"] / found["runtime"] - 1))
        took, (runtime, _) = clocked(lambda: power_scipy.run_down(case))
        line("  the same", case["seconds"], took, "scipy", abs(case["runtime_s"] / runtime - 1))


if __name__ == "__main__":
    if len(sys.argv) < 4:
        sys.exit(__doc__)
    raises(sys.argv[1], sys.argv[3:])
    discharges(sys.argv[2])
