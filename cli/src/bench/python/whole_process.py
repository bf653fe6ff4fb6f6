"""Whole processes side by side: the program with all its outputs, and a Python script that does only
seven basic steps with OpenCV. In turns, so that both meet the same load.

    whole_process.py PROGRAM FOLDER_OF_THE_DRAWN_PHOTO [ROUNDS]

Prints wall time (least and middle), processor time (least) and greatest resident memory of each.
"""
import glob
import json
import os
import statistics
import sys
import tempfile
import time


def run(command):
    start = time.monotonic()
    child = os.fork()
    if child == 0:
        quiet = os.open(os.devnull, os.O_WRONLY)
        os.dup2(quiet, 1)
        os.dup2(quiet, 2)
        os.execvp(command[0], command)
    _, status, usage = os.wait4(child, 0)
    if status:
        sys.exit("failed: " + " ".join(command))
    return time.monotonic() - start, usage.ru_utime + usage.ru_stime, usage.ru_maxrss / 1024


def main():
    program, folder = sys.argv[1:3]
    rounds = int(sys.argv[3]) if len(sys.argv) > 3 else 7
    with open(glob.glob(os.path.join(folder, "*.truth.json"))[0], encoding="utf-8") as f:
        truth = json.load(f)
    picture = os.path.join(folder, truth["file"])
    corners = ["%f,%f" % tuple(corner) for corner in truth["corners_px"]]
    steps = os.path.join(os.path.dirname(os.path.abspath(__file__)), "seven_steps.py")
    with tempfile.TemporaryDirectory() as out:
        commands = {
            "wickmark measure": [program, "measure", picture, "--out", out, "--replace"],
            "seven steps in Python": [sys.executable, steps, picture, *corners],
        }
        figures = {name: [] for name in commands}
        for _ in range(rounds):
            for name, command in commands.items():
                figures[name].append(run(command))
    print("| process | wall s, least | wall s, middle | processor s, least | MiB resident |")
    print("| --- | --- | --- | --- | --- |")
    for name, runs in figures.items():
        wall, processor, memory = zip(*runs)
        print("| %s | %.2f | %.2f | %.2f | %.0f |" % (
            name, min(wall), statistics.median(wall), min(processor), max(memory)))
    least = [min(run[0] for run in runs) for runs in figures.values()]
    processor = [min(run[1] for run in runs) for runs in figures.values()]
    print("\nratio of wall time %.2f, of processor time %.2f; load %.1f" % (
        least[0] / least[1], processor[0] / processor[1], os.getloadavg()[0]))


main()
