# SPDX-License-Identifier: MIT
"""Journeys through the window: what a person does with keys and clicks, and what the person gets.

journeys.py FOLDER_OF_PROGRAMS [JOURNEY...]
"""
import json
import pathlib
import re
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

    def picture_of_failure(self):
        subprocess.run(["import", "-window", "root", str(self.folder / "failed.png")], env=self.screen.around)
        for line in self.windows[0].errors.read_text(errors="replace").splitlines()[-20:] if self.windows else []:
            print("        " + line)

    def close(self):
        for window in self.windows:
            if window.process.poll() is None:
                window.kill()
        self.screen.close()

    def doorcard(self, *arguments):
        done = subprocess.run([str(self.programs / "doorcard"), *map(str, arguments)], env=self.screen.around,
                              capture_output=True, text=True)
        sure(f"doorcard {arguments}: {done.stderr}", done.returncode in (0, 1))
        return done.stdout

    def findings(self, survey):
        return json.loads(self.doorcard("check", "--json", survey))["findings"]

    def text_of_pdf(self, path):
        return subprocess.check_output(["pdftotext", "-layout", str(path), "-"], text=True)

    def example(self):
        copy = self.folder / "alder-row.survey.toml"
        shutil.copy(example, copy)
        return copy


def in_list(window):
    """The rows of the panel as its plain list has them, by space."""
    window.keys("ctrl+l")
    rows = {row[0]: row for row in window.rows_of("Panel as a list")}
    window.keys("ctrl+l")
    until("the face is back", lambda: window.find("panel", "") and not window.find("table", "Panel as a list"))
    return rows


def go_to_face(window):
    window.keys("F2")
    window.wait_for_focus("Panel face")


def begin(window):
    """The start screen by keyboard: what is chosen there may stay as it is."""
    window.tab_to("Begin")
    window.keys("Return")
    window.wait_for_focus("Panel face")


def new_survey(journey):
    """A new survey of 12 circuits is typed in by keyboard alone, its card saved as PDF."""
    window = journey.start()
    begin(window)
    window.enter("20 Kitchen?", "30/2 Dryer", "15t Hall|Bath", "20 gf", "20 arc Bedrooms", "s", "-", "20 Fridge",
                 "15 Stair lights", "40/2 Range", "20 Dishwasher", "20 Disposer", "30/2 Water heater")
    window.keys("Home", "Down", "Down", "Down", "Down")  # 1, 3, 7a, 7b, 9: words alone name what is there
    window.enter("Laundry")
    seen = in_list(window)
    expected = {"1": ("Kitchen", "20 A"), "3+5": ("Dryer", "30 A, 2 poles"), "7a": ("Hall", "15 A"),
                "7b": ("Bath", "15 A"), "9": ("Laundry", "20 A, leg A, ground guard"), "11": ("Bedrooms", "arc guard"),
                "13": ("Spare", ""), "15": ("Space", ""), "17": ("Fridge", "20 A"), "19": ("Stair lights", "15 A"),
                "21+23": ("Range", "40 A, 2 poles"), "2": ("Dishwasher", "20 A"), "4": ("Disposer", "20 A"),
                "6+8": ("Water heater", "30 A, 2 poles"), "10": ("Not seen", "")}
    for space, (what, device) in expected.items():
        row = seen.get(space, [])
        sure(f"{space} is {what}, {device}: {row}", row and row[1].startswith(what) and device in row[2])
    window.keys("F3")
    window.tab_to("Title")
    window.enter("Nine steps down")
    survey = journey.folder / "nine-steps.survey.toml"
    window.keys("ctrl+s")
    window.answer_file_dialog(survey)
    window.wait_for_words("all in the file")
    window.keys("F9")
    window.tab_to("Save as...")
    window.keys("Return")
    card = journey.folder / "card.pdf"
    window.answer_file_dialog(card)
    window.wait_for_words("card.pdf")
    window.quit()
    sure("the file holds 12 circuits", survey.read_text().count("\n[[circuit]]") == 12)
    sure("of which check knows no danger",
         not [one for one in journey.findings(survey) if one["severity"] in ("danger", "warning")])
    printed = journey.text_of_pdf(card)
    for words in ("Nine steps down", "Kitchen", "Dryer", "Hall", "Bath", "Laundry", "Bedrooms", "Spare", "Fridge",
                  "Stair lights", "Range", "Dishwasher", "Disposer", "Water heater", "0 of 12"):
        sure(f"the card says '{words}':\n{printed}", words in printed)


def danger_mended(journey):
    """The example is opened, its danger found and mended, the finding is gone; undo brings it back."""
    survey = journey.example()
    window = journey.start(survey)
    danger = "SHOP 1 and SHOP 5 share neutral N5 on leg A"

    def stands():
        return [row for row in window.rows_of("Findings") if any(cell.startswith(danger) for cell in row)]
    sure("the danger stands in the findings", stands())
    window.keys("F7")
    window.wait_for_focus("Findings")
    lines = [row[1] for row in window.rows_of("Findings")]
    window.keys(*["Down"] * [line.startswith(danger) for line in lines].index(True), "Return")
    window.wait_for_focus("Neutral")
    window.choose("Neutral", "its own, shared with nobody")
    until("the danger has gone from the findings", lambda: not stands())
    window.wait_for_words("not yet in the file")
    sure("before it is saved the file is as it was", survey.read_bytes() == example.read_bytes())
    window.keys("ctrl+s")
    window.wait_for_words("all in the file")
    sure("check finds no such danger in what was saved",
         "neutral-same-leg" not in [one["rule"] for one in journey.findings(survey)])
    window.keys("ctrl+z")
    until("undo brings the danger back", stands)
    window.keys("ctrl+s")
    window.wait_for_words("all in the file")
    sure("and saved again the file is what it was", survey.read_bytes() == example.read_bytes())
    window.keys("Escape")
    window.wait_for_focus("Panel face")
    window.quit()


def killed(journey):
    """Killed in the middle of editing: what was typed is offered at the next start, taken, and nothing is lost."""
    survey = journey.example()
    window = journey.start(survey)
    go_to_face(window)
    window.keys("Home")
    window.enter("Disposer at the sink")
    window.keys("Home", "Down")
    window.enter("15 Porch lights")
    time.sleep(1)  # what may be lost is the last second
    window.type("20 Half a wo")
    window.kill()
    sure("the file is as it was", survey.read_bytes() == example.read_bytes())
    window = journey.start(survey)
    window.wait_for_words("were kept")
    sure("nothing is merged in silence", "Porch lights" not in str(in_list(window)))
    window.click("push button", "Show them")
    seen = str(until("what was kept is shown", lambda: "Porch lights" in str(in_list(window)) and in_list(window)))
    sure("all of it", "Disposer at the sink" in seen and "Half a wo" not in seen)
    window.keys("ctrl+s")
    window.wait_for_words("all in the file")
    window.quit()
    saved = survey.read_text()
    sure("and saved", "Porch lights" in saved and "Disposer at the sink" in saved)
    sure("with nothing left beside the file", sorted(one.name for one in journey.folder.glob(".alder*")) == [])


def killed_without_a_file(journey):
    """Killed before a survey was ever saved: the next start offers it."""
    window = journey.start()
    begin(window)
    window.enter("20 Kitchen?", "30/2 Dryer")
    time.sleep(1)  # what may be lost is the last second
    window.kill()
    window = journey.start()
    window.click("push button", "A survey that was never saved")
    window.wait_for("panel", "Panel face")
    seen = str(in_list(window))
    sure("both rows are there", "Kitchen" in seen and "Dryer" in seen)
    window.keys("ctrl+s")
    survey = journey.folder / "kept.survey.toml"
    window.answer_file_dialog(survey)
    window.wait_for_words("all in the file")
    window.quit()
    sure("and saved", "Kitchen" in survey.read_text() and "Dryer" in survey.read_text())
    window = journey.start()
    sure("it is not offered again", not window.find("push button", "A survey that was never saved"))
    window.quit()


def pasted_onto_the_face(journey):
    """An old list out of a spreadsheet, pasted onto the face, becomes rows; a line that cannot be is said."""
    window = journey.start()
    begin(window)
    window.enter("20 Freezer, leave on")
    journey.screen.put_on_clipboard("Ckt\tServes\tAmps\n1\tAttic\t15\n2,4\tRange\t50/2\n3\tHall lights\t15\n"
                                    "4-Feb\tDryer\t30/2\n6\tSpare\t20\n")
    window.keys("ctrl+v")
    seen = until("the list becomes rows", lambda: "Hall lights" in str(in_list(window)) and in_list(window))
    sure("Range is a two-pole breaker", seen["2+4"][1].startswith("Range") and "50 A, 2 poles" in seen["2+4"][2])
    sure("Hall lights are only claimed", "claimed" in seen["3"][1])
    sure("6 is a spare", seen["6"][1] == "Spare")
    sure("what was there is not written over", seen["1"][1].startswith("Freezer"))
    sure("what was not understood is said", window.shows("4-Feb"))
    window.keys("ctrl+z")
    until("undo takes the whole list out", lambda: "Hall lights" not in str(in_list(window)))
    window.keys("ctrl+shift+z", "ctrl+s")
    survey = journey.folder / "pasted.survey.toml"
    window.answer_file_dialog(survey)
    window.wait_for_words("all in the file")
    window.quit()
    sure("and saved", 'old_label = "Hall lights"' in survey.read_text())


def pasted_readings(journey):
    """Readings out of a spreadsheet, pasted into the grid, become readings."""
    survey = journey.example()
    before = survey.read_text().count("[[reading]]")
    window = journey.start(survey)
    journey.screen.put_on_clipboard("9\t14.25\n14\t7.5\n")
    window.keys("F5")
    window.wait_for_focus("Readings")
    window.keys("ctrl+v")
    window.wait_for_words("not yet in the file")
    window.keys("ctrl+s")
    window.wait_for_words("all in the file")
    saved = survey.read_text()
    sure("two more readings", saved.count("[[reading]]") == before + 2)
    for reading in ('of = "breaker:MAIN:9"', "amps = 14.25", 'of = "breaker:MAIN:14"', "amps = 7.5"):
        sure(f"{reading} is in the file", reading in saved)
    window.quit()


def rooms_and_answers(journey):
    """Rooms at typing speed, and a round's answers as a row from paper."""
    survey = journey.example()
    window = journey.start(survey)
    window.keys("F4")
    window.wait_for_focus("Room and its outlets")
    window.enter("Garage r3 l1 opener", "off 5", "G: o o s . o")
    until("the garage stands in the grid's line", lambda: window.text_of(window.focus()) == "")
    window.enter("off 99")
    window.wait_for_words("99")
    sure("what cannot be understood stays in the line", window.text_of(window.focus()) == "off 99")
    window.keys("ctrl+a", "Delete", "ctrl+s")
    window.wait_for_words("all in the file")
    saved = survey.read_text()
    for line in ('off = ["MAIN:5"]', 'went_out = ["G1", "G2", "G5"]', 'stayed_on = ["G3"]', 'title = "Garage"'):
        sure(f"{line} is in the file", line in saved)
    window.quit()


def moved_and_planned(journey):
    """A breaker is moved by key; once as found is locked, a change is planned and the file keeps what is."""
    survey = journey.example()
    window = journey.start(survey)
    go_to_face(window)
    window.keys("Home", "alt+Down")
    until("it hangs at 3", lambda: "Dishwasher" in in_list(window)["3"][1])
    window.keys("ctrl+z")
    until("undo moves it back", lambda: "Dishwasher" in in_list(window)["1"][1])
    window.keys("ctrl+shift+l", "Home")
    window.enter("15")
    plan = journey.folder / ".alder-row.survey.toml.plan"
    until("the plan is kept beside the survey", lambda: plan.exists() and '"amps": 15' in plan.read_text())
    sure("as found stays", "20 A" in in_list(window)["1"][2] and window.shows("all in the file"))
    window.keys("alt+s", "Up", "Up", "Return")  # What is planned is done
    until("done is done", lambda: "15 A" in in_list(window)["1"][2])
    window.keys("ctrl+s")
    window.wait_for_words("all in the file")
    window.quit()


def changed_outside(journey):
    """The file is changed by somebody else: noticed, never overwritten; theirs taken, or mine kept."""
    survey = journey.example()
    theirs = survey.read_text().replace('revision = "2"', 'revision = "7"')
    window = journey.start(survey)
    go_to_face(window)
    window.keys("Home")
    window.enter("Disposer at the sink")
    window.wait_for_words("not yet in the file")
    survey.write_text(theirs)
    written = time.monotonic()
    window.wait_for_words("Somebody else has changed this file")
    print(f"   {time.monotonic() - written:.1f} s until it is noticed")
    window.keys("ctrl+s")
    window.wait_for("push button", "Keep mine")
    sure("their file stays", survey.read_text() == theirs)
    window.click("push button", "Take theirs")
    until("theirs is shown", lambda: "Disposer" not in in_list(window)["1"][1])
    window.keys("ctrl+z")
    until("undo brings mine back", lambda: "Disposer" in in_list(window)["1"][1])
    window.keys("ctrl+shift+z")
    window.wait_for_words("all in the file")
    sure("their file is as they left it", survey.read_text() == theirs)
    window.quit()

    window = journey.start(survey)
    go_to_face(window)
    window.keys("Home")
    window.enter("Disposer at the sink")
    survey.write_text(theirs.replace('revision = "7"', 'revision = "8"'))
    window.click("push button", "Keep mine")
    window.wait_for_words("not yet in the file")
    sure("their file stays until I save", 'revision = "8"' in survey.read_text())
    window.keys("ctrl+s")
    window.wait_for_words("all in the file")
    window.quit()
    sure("mine is in the file", "Disposer" in survey.read_text() and 'revision = "7"' in survey.read_text())


def read_aloud(journey):
    """The panel and the fields are read as a screen reader reads them."""
    window = journey.start(journey.example())
    seen = in_list(window)
    spaces = [position for one in seen for position in one.rstrip("ab").split("+")]
    sure(f"every space once: {spaces}", sorted(map(int, spaces)) == list(range(1, 25)))
    for space, column, words in (("1", 1, "Dishwasher"), ("6+8", 1, "Dryer"), ("6+8", 2, "30 A, 2 poles"),
                                 ("5", 4, "3.3 A"), ("21", 1, "Not traced: treat as live"), ("23", 1, "Spare"),
                                 ("20", 1, "Space"), ("9", 3, "15.9"), ("2", 1, "only claimed")):
        sure(f"{space}: '{words}' is read, of {seen[space]}", words in seen[space][column])
    window.keys("Home")
    window.wait_for_focus("1")
    sure(f"the chosen row says itself: {window.focus_name()}", "Dishwasher" in window.focus_name())
    window.keys("Down")
    window.wait_for_focus("3")
    window.keys("alt+Down")
    window.wait_for_focus("5")
    sure("what was moved says where it is now", "Hall" in window.focus_name())
    window.keys("ctrl+z")
    sure("the danger is read first", window.rows_of("Findings")[0][0].strip() == "DANGER")
    window.keys("F3")
    for role, name in (("combo box", "Who works"), ("text", "Surveyed by"), ("text", "Title"),
                       ("text", "What is wrong, in the caller's words"), ("combo box", "Dead front")):
        sure(f"{role} '{name}' is on Arrival", window.find(role, name))
    for page in ("F3", "F4", "F5", "F9"):
        window.keys(page)
        for one in list(window.all_shown()):
            role = one.get_role_name()
            if role in ("text", "combo box", "push button", "toggle button", "table"):
                sure(f"a {role} after {page} has no name", one.get_name())
    window.quit()


def words_shown(window):
    """Every word that the window itself says, page by page."""
    roles = ("label", "push button", "toggle button", "page tab", "text", "combo box", "table")
    words = {name for menu, commands in window.menus().items() for name in [menu, *commands]}
    for page in range(4):
        window.go_to_page(page)
        words |= {one.get_name() for one in window.all_shown() if one.get_role_name() in roles}
        choices = [one for one in window.all_shown() if one.get_role_name() == "combo box"]
        words |= {item for choice in choices for item in window.items_of(choice)}
    return words


def in_spanish(journey):
    """Menus, pages and fields are Spanish where the user is."""
    english = journey.start(journey.example())
    words = words_shown(english)
    english.quit()
    window = journey.start(journey.example(), LC_ALL="es_US.UTF-8")
    written = example.read_text()
    same = {one for one in words & words_shown(window) if any(map(str.isalpha, one)) and one not in written
            and not re.match(r"NEC 20|[0-9Y/]+ [13]ph|((MAIN|SHOP) )?[0-9]", one)}
    sure(f"left in English: {sorted(same - alike)}", same <= alike)
    table = next(one for one in window.all_shown() if one.get_role_name() == "table")
    sure("findings are Spanish", "neutro" in str(window.rows_of(table.get_name())))
    window.quit()


# Words that are the same in both languages.
alike = {"English", "Español", "A4"}


def in_every_look(journey):
    """Larger, by night, in high contrast: each looks otherwise, and all of it comes back."""
    window = journey.start(journey.example())
    go_to_face(window)
    window.keys("Home", "F3")
    looks = {"day": window.picture("day")}

    def light(name):
        mean = ["convert", looks[name], "-colorspace", "gray", "-format", "%[fx:mean]", "info:"]
        return float(subprocess.check_output(mean, text=True))

    for name, keys in (("larger", ["ctrl+plus"]), ("smaller", ["ctrl+minus", "ctrl+minus"]), ("usual", ["ctrl+0"]),
                       ("night", ["alt+v", "n"]), ("contrast", ["alt+v", "h"]), ("day again", ["alt+v", "d"])):
        before = list(looks.values())[-1]
        window.keys(*keys)
        looks[name] = window.picture(name, other_than=before)
    sure("night is dark", light("night") < 0.3 < 0.7 < light("day"))
    sure("high contrast is not day", looks["contrast"].read_bytes() != looks["day"].read_bytes())
    window.quit()
    window = journey.start(journey.example(), GDK_SCALE="2")
    window.quit()


journeys = [new_survey, pasted_onto_the_face, pasted_readings, danger_mended, killed, killed_without_a_file,
            rooms_and_answers, moved_and_planned, changed_outside, read_aloud, in_spanish, in_every_look]


def gone_through(programs, journey):
    here = Journey(programs, journey.__name__)
    began = time.monotonic()
    try:
        journey(here)
    except Exception:
        here.picture_of_failure()
        raise
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
