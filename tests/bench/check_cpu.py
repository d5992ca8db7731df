#!/usr/bin/env python3
"""Prints the CPU time of whole `lumwright check` runs, start to finish. usage: check_cpu.py LUMWRIGHT EXAMPLES_DIR"""
import pathlib
import resource
import statistics
import subprocess
import sys

lumwright, examples = sys.argv[1], pathlib.Path(sys.argv[2])
RUNS = 30


def cpu_of_children():
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    return used.ru_utime + used.ru_stime


for example in sorted(examples.glob('*.yaml')):
    times = []
    for _ in range(RUNS):
        before = cpu_of_children()
        subprocess.run([lumwright, 'check', '--samples', '0', example], stdout=subprocess.DEVNULL, check=False)
        times.append(1e3 * (cpu_of_children() - before))
    print(f'check {example.name}: median {statistics.median(times):.1f} ms, worst {max(times):.1f} ms of CPU in {RUNS} runs')
