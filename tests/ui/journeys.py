# SPDX-License-Identifier: MIT
"""Journeys through the window: what a person does with keys and clicks, and what the person gets.

journeys.py FOLDER_OF_PROGRAMS [JOURNEY...]
"""
import json
import pathlib
import shutil
import subprocess
import sys
import time

from window import Failed, Screen, Window, sure, until

example = pathlib.Path("examples/alder-row.survey.toml")


class Journey:
    """A screen, the programs, and the windows opened on the way."""

    def __init__(self, programs, name):
        self.programs = pathlib.Path(programs)
        self.screen = Screen(self.programs.parent / "ui-test" / name)
        self.folder = self.screen.folder
        self.windows = []

    def start(self, *arguments, **around):
        window = Window(self.screen, str(self.programs / "doorcard-ui"), *map(str, arguments), **around)
        self.windows.append(window)
        print(f"   {window.seconds_to_start:.2f} s from start to usable window")
        return window

    def close(self):
        for window in self.windows:
            window.kill()
        self.screen.close()

    def doorcard(self, *arguments):
        done = subprocess.run([str(self.programs / "doorcard"), *map(str, arguments)], env=self.screen.around,
                              capture_output=True, text=True)
        sure(f"doorcard {arguments}: {done.stderr}", done.returncode in (0, 1))
        return done.stdout

    def findings(self, survey):
        return json.loads(self.doorcard("check", "--json", survey))["findings"]

    def example(self):
        copy = self.folder / "alder-row.survey.toml"
        shutil.copy(example, copy)
        return copy


def begin(window):
    """The start screen by keyboard: what is chosen there may stay as it is."""
    window.tab_to("Begin")
    window.keys("Return")
    window.wait_for_focus("Panel face")


def new_survey(journey):
    """A new survey of 12 circuits by keyboard alone, its card as PDF."""
    window = journey.start()
    begin(window)
    window.enter("20 Kitchen?", "30/2 Dryer", "15t Hall|Bath", "20 gf", "20 arc", "s", "-")
    window.keys("ctrl+l")
    for row in window.rows_of("Panel as a list"): print(row)
    window.picture("list")


journeys = [new_survey]


def gone_through(programs, journey):
    here = Journey(programs, journey.__name__)
    began = time.monotonic()
    try:
        journey(here)
    finally:
        here.close()
    print(f"ok      {journey.__doc__} {time.monotonic() - began:.1f} s")


def main(programs, *names):
    failures = 0
    for journey in journeys:
        if names and journey.__name__ not in names:
            continue
        try:
            gone_through(programs, journey)
        except Failed as failure:
            failures += 1
            print(f"FAILED  {journey.__doc__}\n        {failure}")
    return failures > 0


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
