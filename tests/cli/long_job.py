#!/usr/bin/env python3
"""A long job on a terminal: it says how far it is, wipes that line at the end, and Ctrl-C leaves nothing behind.

usage: long_job.py LUMWRIGHT EXAMPLE
"""
import os
import pty
import signal
import subprocess
import sys
import tempfile
import time


def read_all(end):
    out = b''
    while True:
        try:
            piece = os.read(end, 4096)
        except OSError:
            return out
        if not piece:
            return out
        out += piece


def start(arguments, out, environment=None):
    ours, theirs = pty.openpty()
    process = subprocess.Popen(arguments, stdout=out, stderr=theirs, stdin=subprocess.DEVNULL,
                               env={**os.environ, 'TERM': 'xterm', **(environment or {})})
    os.close(theirs)
    return process, ours


lumwright, example = sys.argv[1:3]
with tempfile.TemporaryDirectory() as folder:
    name = os.path.join(folder, 'answer.txt')
    with open(name, 'wb') as out:
        process, terminal = start([lumwright, 'check', '--samples', '4000', example], out)
        said = read_all(terminal).decode()
        process.wait()
    assert process.returncode == 0, said
    assert 'of 4000 samples, about' in said and 's left' in said, repr(said)
    assert said.endswith('\r' + ' ' * 78 + '\r'), repr(said)
    assert '4000 samples' in open(name).read()

    process, terminal = start([lumwright, 'check', '--samples', '1500', example], subprocess.DEVNULL, {'TERM': 'dumb'})
    assert read_all(terminal) == b'', 'a dumb terminal was written to'
    assert process.wait() == 0

    with open(name, 'wb') as out:
        process, terminal = start([lumwright, 'check', '--samples', '200000', example], out)
        os.read(terminal, 64)  # it has begun to tell
        process.send_signal(signal.SIGINT)
        begun = time.monotonic()
        process.wait(timeout=10)
    assert process.returncode == -signal.SIGINT, process.returncode
    assert os.path.getsize(name) == 0, 'half an answer'
    assert os.listdir(folder) == ['answer.txt']
print('progress is told, wiped and interrupted')
