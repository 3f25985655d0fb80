"""Pictures of every screen of the sample shop, for eyes to look at.

Usage: python -m tests.screens FOLDER [--languages en,de,es] [--only PART]

Light and dark, 100 and 200 % text, 1024x700 and 1600x1000. Where there is no display a virtual X
screen is started for it. Beside the pictures of a look lies a list of words without room.
"""

import argparse
import os
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from itertools import product
from pathlib import Path

SIZES = ((1024, 700), (1600, 1000))
TEXT = (1.0, 2.0)
LANGUAGES = ("en", "de", "es")


@dataclass(frozen=True)
class Look:
    """How the window is looked at."""

    language: str
    dark: bool
    text: float
    wide: int
    high: int

    def __str__(self) -> str:
        ground = "dark" if self.dark else "light"
        return f"{self.language}-{ground}-{self.text:.0%}-{self.wide}x{self.high}"


@contextmanager
def screen() -> Iterator[None]:
    """A display: the one there is, else a virtual X screen as long as this lasts."""
    if os.environ.get("DISPLAY") or sys.platform in ("win32", "darwin"):
        yield
        return
    server = shutil.which("Xvfb")
    if server is None:
        sys.exit("There is no display and no Xvfb to make one. Install xvfb, or set DISPLAY.")
    told, tells = os.pipe()
    size = "1700x1100x24"
    with subprocess.Popen(
        [server, "-displayfd", str(tells), "-screen", "0", size, "-nolisten", "tcp"],
        pass_fds=(tells,),
        stderr=subprocess.DEVNULL,
    ) as started:
        os.close(tells)
        with os.fdopen(told) as said:
            os.environ["DISPLAY"] = f":{said.readline().strip()}"
        try:
            yield
        finally:
            started.terminate()


def take(folder: Path, looks: list[Look], only: str) -> int:
    """Take the pictures; how many."""
    from PySide6.QtWidgets import QApplication

    from chargebench.desk import sample
    from chargebench.ui import language, theme
    from chargebench.ui.window import MainWindow
    from tests.room import without_room
    from tests.tour import Tour

    app = QApplication.instance() or QApplication([])
    assert isinstance(app, QApplication)
    taken = 0
    with tempfile.TemporaryDirectory() as away:
        desk = sample.build(Path(away) / "sample.chargebench")
        for look in looks:
            language.speak(look.language)
            theme.apply(app, dark=look.dark, text=look.text)
            window = MainWindow()
            window.resize(look.wide, look.high)
            window.show()
            window.open_desk(desk)
            place = folder / str(look)
            place.mkdir(parents=True, exist_ok=True)
            cramped: list[str] = []
            for shown in Tour(window, desk, Path(away)).screens():
                if only in shown.name:
                    shown.widget.grab().save(str(place / f"{shown.name}.png"))
                    cramped += [f"{shown.name}: {words}" for words in without_room(shown.widget)]
                    taken += 1
            (place / "without-room.txt").write_text("\n".join(cramped), encoding="utf-8")
            print(f"{look}: {len(cramped)} without room", flush=True)
            window.close()
            window.deleteLater()
            app.processEvents()
        desk.close()
    return taken


def main() -> None:
    """Take pictures into the folder named."""
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("folder", type=Path)
    asked.add_argument("--languages", default=",".join(LANGUAGES))
    asked.add_argument("--only", default="", help="screens whose name holds this")
    asked.add_argument("--look", default="", help="looks whose name holds this")
    given = asked.parse_args()
    looks = [
        look
        for each in product(given.languages.split(","), (False, True), TEXT, SIZES)
        if given.look in str(look := Look(*each[:3], *each[3]))
    ]
    with screen():
        print(f"{take(given.folder, looks, given.only)} pictures in {given.folder}")


if __name__ == "__main__":
    main()
