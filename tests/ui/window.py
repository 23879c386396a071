# SPDX-License-Identifier: MIT
"""A window on a screen of its own, driven by keys and clicks, read by what a screen reader is told and by pictures."""
import os
import pathlib
import shutil
import signal
import subprocess
import time

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi, GLib  # noqa: E402

State = Atspi.StateType
alarms = ("CRITICAL", "ssert", "terminate", "runtime error", "Sanitizer")
# Said by GTK 3 about itself: of pages that go while a screen reader looks, of what has no size yet before it is shown.
quirks = ("gtk_notebook_get_tab_label", "gtk_distribute_natural_allocation", "gtk_box_gadget_distribute")
patience = 30  # seconds, on a machine that compiles beside


class Failed(Exception):
    """Something a person would miss."""


def until(what, condition, seconds=patience):
    """What the condition gives, as soon as it is true; Failed after so many seconds."""
    end = time.monotonic() + seconds
    news = GLib.MainContext.default()
    while True:
        while news.iteration(False):  # what the program has told of itself meanwhile
            pass
        try:
            found = condition()
        except GLib.Error:  # the program is busy, or a control has gone meanwhile
            found = None
        if found:
            return found
        if time.monotonic() > end:
            raise Failed(f"not within {seconds} s: {what}")
        time.sleep(0.02)


def sure(what, holds):
    if not holds:
        raise Failed(what)


class Screen:
    """An X server, a window manager and the surroundings of a user who starts for the first time."""

    def __init__(self, folder, size="1600x1200"):
        self.folder = pathlib.Path(folder)
        shutil.rmtree(self.folder, ignore_errors=True)
        self.folder.mkdir(parents=True)
        mine, servers = os.pipe()
        command = ["Xvfb", "-displayfd", str(servers), "-screen", "0", size + "x24", "-nolisten", "tcp", "-noreset"]
        self.server = subprocess.Popen(command, pass_fds=[servers], stderr=subprocess.DEVNULL)
        os.close(servers)
        with os.fdopen(mine) as number:
            os.environ["DISPLAY"] = ":" + number.readline().strip()
        home = str(self.folder / "home")
        self.around = dict(os.environ, HOME=home, XDG_CONFIG_HOME=home + "/config", XDG_STATE_HOME=home + "/state",
                           XDG_CACHE_HOME=os.environ.get("XDG_CACHE_HOME", home + "/cache"),
                           XDG_DATA_HOME=home + "/data", GDK_BACKEND="x11", GSETTINGS_BACKEND="memory",
                           LC_ALL="C.UTF-8", NO_COLOR="1")
        os.makedirs(home)
        self.manager = subprocess.Popen(["openbox"], env=self.around, stderr=subprocess.DEVNULL)
        Atspi.init()

    def close(self):
        for one in (self.manager, self.server):
            one.terminate()
            one.wait()

    def put_on_clipboard(self, text):
        subprocess.run(["xclip", "-selection", "clipboard"], input=text.encode(), check=True, env=self.around,
                       stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)


class Window:
    """The program: started, typed into, clicked, read."""

    def __init__(self, screen, program, *arguments, **around):
        self.screen = screen
        self.errors = screen.folder / "errors.txt"
        self.scale = int(around.get("GDK_SCALE", 1))
        began = time.monotonic()
        with open(self.errors, "ab") as errors:
            self.process = subprocess.Popen([program, *arguments], env=dict(screen.around, **around), stderr=errors)
        self.focused = None
        self.raw_pictures = {}
        self._listener = Atspi.EventListener.new(self._on_focus)
        self._listener.register("object:state-changed:focused")
        self.application = until("the program is there", self._application)
        until("its window is there", lambda: self.frame() and self.focus())
        self.seconds_to_start = time.monotonic() - began

    def _application(self):
        desktop = Atspi.get_desktop(0)
        for i in range(desktop.get_child_count()):
            one = desktop.get_child_at_index(i)
            if one and one.get_process_id() == self.process.pid and one.get_child_count() > 0:
                return one
        sure(f"the program has ended at once: {self.errors.read_text()}", self.process.poll() is None)
        return None

    # --- what is seen
    def windows(self):
        count = self.application.get_child_count()
        return [one for one in map(self.application.get_child_at_index, range(count)) if one]

    def frame(self):
        return next((one for one in self.windows() if one.get_role_name() == "frame"), None)

    def title(self):
        return self.frame().get_name()

    def dialog(self):
        """A window above the frame, once it is the one that is typed into."""
        for one in self.windows():
            if one.get_role_name() != "frame" and one.get_state_set().contains(State.ACTIVE):
                return one
        return None

    def all_shown(self, top=None):
        """Every control that is shown, with its role."""
        waiting = [top] if top else self.windows()
        while waiting:
            one = waiting.pop()
            if not one or not one.get_state_set().contains(State.SHOWING):
                continue
            yield one
            if one.get_role_name() in ("menu bar", "menu", "table", "tree table", "combo box"):
                continue
            waiting.extend(one.get_child_at_index(i) for i in reversed(range(one.get_child_count())))

    def find(self, role, name, top=None):
        """The control shown of that role whose name begins so."""
        for one in self.all_shown(top):
            if one.get_role_name() == role and one.get_name().startswith(name):
                return one
        return None

    def wait_for(self, role, name, seconds=patience):
        return until(f"{role} '{name}' is shown", lambda: self.find(role, name), seconds)

    def shows(self, text):
        """Whether it stands on a label."""
        return any(one.get_role_name() == "label" and text in one.get_name() for one in self.all_shown())

    def wait_for_words(self, text, seconds=patience):
        until(f"'{text}' can be read", lambda: self.shows(text), seconds)

    def _on_focus(self, event, *_):
        try:
            if event.detail1 and event.source.get_process_id() == self.process.pid:
                self.focused = event.source
        except GLib.Error:  # its program has gone
            pass

    def focus(self):
        """What is typed into now, as a screen reader has been told."""
        return self.focused

    def focus_name(self):
        try:
            return self.focused.get_name() if self.focused else ""
        except GLib.Error:  # it has gone meanwhile
            return ""

    def wait_for_focus(self, name):
        try:
            return until("the focus goes on", lambda: self.focus_name().startswith(name) and self.focused)
        except Failed:
            raise Failed(f"the focus is not on '{name}' but on '{self.focus_name()}'") from None

    @staticmethod
    def text_of(control):
        return Atspi.Text.get_text(control, 0, Atspi.Text.get_character_count(control))

    def table(self, name):
        return until(f"table '{name}' is shown", lambda: self.find("table", name) or self.find("tree table", name))

    def rows_of(self, name):
        """The cells of a table, row by row, as a screen reader reads them."""
        table = self.table(name)

        def cells():
            return [[Atspi.Table.get_accessible_at(table, row, column).get_name()
                     for column in range(Atspi.Table.get_n_columns(table))]
                    for row in range(Atspi.Table.get_n_rows(table))]
        return until(f"table '{name}' can be read", cells)

    @staticmethod
    def items_of(choice):
        menu = choice.get_child_at_index(0)
        return [menu.get_child_at_index(i).get_name() for i in range(menu.get_child_count())]

    @staticmethod
    def chosen_of(choice):
        return Atspi.Selection.get_selected_child(choice, 0).get_name()

    def page(self):
        """The number of the page that is in front, and its name."""
        tabs = [one for one in self.all_shown() if one.get_role_name() == "page tab"]
        fronts = [(i, tab.get_name()) for i, tab in enumerate(tabs) if tab.get_state_set().contains(State.SELECTED)]
        return fronts[0] if fronts else (-1, "")

    def go_to_page(self, number):
        self.keys(("F3", "F4", "F5", "F9")[number])
        until(f"page {number} is in front", lambda: self.page()[0] == number)

    def menus(self):
        bar = next(one for one in self.all_shown(self.frame()) if one.get_role_name() == "menu bar")
        menus = [bar.get_child_at_index(i) for i in range(bar.get_child_count())]
        return {menu.get_name(): [menu.get_child_at_index(i).get_name() for i in range(menu.get_child_count())]
                for menu in menus}

    def place_of(self, control):
        """Left, top, width and height in pixels of the screen."""
        area = Atspi.Component.get_extents(control, Atspi.CoordType.SCREEN)
        return [self.scale * one for one in (area.x, area.y, area.width, area.height)]

    def picture(self, name, other_than=None):
        """The window as it looks once it has come to rest, and other than that picture."""
        raw, path = self.screen.folder / "screen.ppm", self.screen.folder / (name + ".png")

        def taken():
            x, y, width, height = self.place_of(self.frame().get_child_at_index(0))  # without what the manager puts around
            subprocess.run(["import", "-window", "root", "-crop", f"{width}x{height}+{x}+{y}", "+repage", raw],
                           check=True, env=self.screen.around)
            return raw.read_bytes()
        unlike = self.raw_pictures.get(other_than)
        before = taken()

        def rests():
            nonlocal before
            time.sleep(0.1)
            last, before = before, taken()
            return last == before != unlike
        until(f"the picture {name} rests, and is not like {other_than}", rests)
        subprocess.run(["convert", raw, path], check=True)
        raw.unlink()
        self.raw_pictures[path] = before
        return path

    # --- what is done
    def _input(self, *arguments):
        subprocess.run(["xdotool", *arguments], check=True, env=self.screen.around)

    def keys(self, *names):
        self._input("key", "--delay", "8", *names)

    def type(self, text):
        self._input("type", "--delay", "8", text)

    def enter(self, *lines):
        for line in lines:
            self.type(line)
            self.keys("Return")

    def tab_to(self, name, most=40):
        """Tab until the focus is there, as one does who cannot see more than where one is."""
        for _ in range(most):
            if self.focus_name().startswith(name):
                return
            before, self.focused = self.focused, None
            self.keys("Tab")
            until("Tab moves on", self.focus, 5)
        raise Failed(f"Tab does not lead to '{name}', last to '{self.focus_name()}'")

    def choose(self, name, item):
        """With the arrow keys, in the choice that has the focus."""
        choice = self.wait_for("combo box", name)
        items = self.items_of(choice)
        sure(f"{name} offers {item}, not only {items}", item in items)
        way = items.index(item) - items.index(self.chosen_of(choice))
        self.keys(*["Down" if way > 0 else "Up"] * abs(way))
        until(f"{name} is {item}", lambda: self.chosen_of(choice) == item)

    def click(self, role, name):
        control = self.wait_for(role, name)
        x, y, width, height = until("it has its place", lambda: self.place_of(control))
        self._input("mousemove", str(x + width // 2), str(y + height // 2), "click", "1")

    def answer_file_dialog(self, path):
        """Types a file's path into the dialog that asks for one."""
        until("a dialog asks for the file", self.dialog)
        self.keys("ctrl+a")
        self.type(str(path))
        self.keys("Return")
        until("the window is typed into again", lambda: self.frame().get_state_set().contains(State.ACTIVE))

    def kill(self):
        self.process.send_signal(signal.SIGKILL)
        self._gone()

    def _gone(self):
        self.process.wait()
        self._listener.deregister("object:state-changed:focused")

    def quit(self):
        """As a person does, and it has to end well."""
        self.keys("ctrl+q")
        until("it closes", lambda: self.process.poll() is not None)
        self._gone()
        sure(f"it ended with status {self.process.returncode}:\n{self.errors.read_text(errors='replace')}",
             self.process.returncode == 0)
        sure(f"said against it: {self.complaints()}", not self.complaints())

    def complaints(self):
        """What the toolkit or a sanitizer had to say against the program."""
        lines = self.errors.read_text(errors="replace").splitlines()
        return [line for line in lines if any(word in line for word in alarms) and not any(word in line for word in quirks)]
