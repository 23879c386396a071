# SPDX-License-Identifier: MIT
"""Pictures of every page of the window: take.py FOLDER_OF_PROGRAMS [SCALE THEME]..."""
import json
import pathlib
import shutil
import sys

sys.path.insert(0, str(pathlib.Path(__file__).parent.parent / "ui"))
from window import Screen, Window  # noqa: E402

example = pathlib.Path("examples/alder-row.survey.toml").absolute()
kinds = ("Front", "Back, by room", "Schedule", "Corrections")


def pages(window):
    """Goes from page to page by keys, and says the name of each."""
    yield "arrival"
    window.keys("F4")
    window.wait_for("text", "Room and its outlets")
    yield "rooms"
    window.keys("F5")
    window.wait_for("toggle button", "Readings")
    yield "readings"
    window.click("toggle button", "Nameplates")
    window.wait_for("panel", "Nameplates")
    yield "nameplates"
    window.keys("F9")
    for kind in kinds:
        window.click("toggle button", kind)
        yield "card-" + kind.split(",")[0].lower()
    window.keys("F2", "Home", "Down", "Down", "ctrl+Return")
    window.wait_for("push button", "Back")
    yield "slip"
    window.keys("Escape", "ctrl+l")
    window.table("Panel as a list")
    yield "list"
    window.keys("ctrl+l", "F7")
    window.wait_for_focus("Findings")
    window.keys("Down", "Return")
    window.wait_for("push button", "Back")
    yield "finding"


def started(screen, program, scale, theme, *arguments):
    settings = pathlib.Path(screen.around["XDG_CONFIG_HOME"]) / "doorcard" / "settings.json"
    settings.parent.mkdir(parents=True, exist_ok=True)
    settings.write_text(json.dumps({"theme": theme}))
    return Window(screen, program, *arguments, GDK_SCALE=scale)


def take(programs, scale, theme):
    folder = programs.parent / "screens"
    screen = Screen(folder / f"{scale}x-{theme}", f"{1500 * int(scale)}x{1050 * int(scale)}")
    program = str(programs / "doorcard-ui")
    try:
        window = started(screen, program, scale, theme)
        window.picture("start")
        window.quit()
        copy = screen.folder / example.name
        shutil.copy(example, copy)
        window = started(screen, program, scale, theme, str(copy))
        for name in pages(window):
            print(window.picture(name))
        window.quit()
    finally:
        screen.close()


def main(programs, *wanted):
    pairs = list(zip(wanted[::2], wanted[1::2])) or [(s, t) for s in ("1", "2") for t in ("light", "dark")]
    for scale, theme in pairs:
        take(pathlib.Path(programs), scale, theme)


if __name__ == "__main__":
    main(*sys.argv[1:])
