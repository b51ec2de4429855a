#!/usr/bin/env python3
"""Has R work out the figures of random quizzes that oracle_quizzes prints with its own.

usage: quiz_judge.py ORACLE_QUIZZES [--seed N] [--quizzes N]
"""
import argparse
import pathlib
import shutil
import subprocess
import sys

MISSING = 77  # how a judge says that its package is missing


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("program")
    parser.add_argument("--seed", default="1")
    parser.add_argument("--quizzes", default="200")
    words = parser.parse_args()
    if shutil.which("Rscript") is None:
        print("R IS MISSING, SO THE FIGURES OF QUIZZES ARE NOT JUDGED BY IT. Install the package r-base-core.")
        return MISSING
    quizzes = subprocess.run([words.program, words.seed, words.quizzes], check=True, capture_output=True)
    script = pathlib.Path(__file__).with_name("quiz_figures.R")
    return subprocess.run(["Rscript", "--vanilla", script], input=quizzes.stdout).returncode


sys.exit(main())
