"""The sample shop looked at: every area, job and step, in light and dark, small and large.

`CHARGEBENCH_SHOTS` names a folder: then every look is taken, and a picture of every screen is left
there, with a list of words that have less room than they need.
"""

import os
import shutil
from collections.abc import Iterator
from dataclasses import dataclass
from functools import partial
from pathlib import Path

import pytest
from PySide6.QtCore import QSize
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel, QWidget
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.steps import STEPS, STOCK
from chargebench.ui import theme
from chargebench.ui.decay_plot import DecayPlot
from chargebench.ui.records import RecordsArea
from chargebench.ui.records_page import VIEWS
from chargebench.ui.stock import StockArea
from chargebench.ui.window import MainWindow

pytestmark = pytest.mark.slow

ROUNDS_MOST = 20
SHOTS = os.environ.get("CHARGEBENCH_SHOTS", "")


@dataclass(frozen=True)
class Look:
    """How the window is looked at."""

    dark: bool
    text: float
    wide: int
    high: int

    def __str__(self) -> str:
        return f"{'dark' if self.dark else 'light'}-{self.text:.0%}-{self.wide}x{self.high}"


ALL_LOOKS = [
    Look(dark, text, *size)
    for dark in (False, True)
    for text in (1.0, 2.0)
    for size in ((1024, 700), (1600, 1000))
]
LOOKS = ALL_LOOKS if SHOTS else [Look(False, 1.0, 1600, 1000), Look(True, 2.0, 1024, 700)]


@pytest.fixture
def desk(sample_shop: Path, tmp_path: Path) -> Iterator[Desk]:
    shutil.copy(sample_shop, tmp_path / "sample.chargebench")
    with Desk.open(tmp_path / "sample.chargebench") as opened:
        yield opened


class Looker:
    """Looks at a page once it is laid out, and takes its picture where one is asked for."""

    def __init__(self, window: MainWindow, look: Look, qtbot: QtBot) -> None:
        self.window = window
        self.look = look
        self.bot = qtbot
        self.seen = 0
        self.cramped: list[str] = []

    def see(self, name: str) -> None:
        """Wait until it is painted; the window has kept its size and every word its room."""
        self.seen += 1
        shown = self.window.grab()
        assert not shown.isNull()
        assert self.window.size() == QSize(self.look.wide, self.look.high), name
        if SHOTS:
            self._settle()
            self.cramped += [f"{name}: {words}" for words in _cramped(self.window)]
            folder = Path(SHOTS) / str(self.look)
            folder.mkdir(parents=True, exist_ok=True)
            assert self.window.grab().save(str(folder / f"{name}.png"))

    def _settle(self) -> None:
        """Until what waits to be loaded, laid out or put away is, and the picture stands still."""
        for plot in self.window.findChildren(DecayPlot):
            if plot.isVisible():
                self.bot.waitUntil(partial(_has_chart, plot))
        before = self.window.grab().toImage()
        for _ in range(ROUNDS_MOST):
            QApplication.processEvents()
            after = self.window.grab().toImage()
            if after == before:
                return
            before = after


def _has_chart(plot: DecayPlot) -> bool:
    return plot.chart is not None


def _cramped(window: QWidget) -> Iterator[str]:
    """Words on buttons and in labels that have less room than they need."""
    for label in window.findChildren(QLabel):
        if label.isVisible() and label.wordWrap() and label.text():
            needed = label.heightForWidth(label.width())
            if needed > label.height() + 1:
                yield f"“{label.text()[:60]}” has {label.height()} of {needed} px in height"
    for button in window.findChildren(QAbstractButton):
        words = button.text().replace("&", "")
        needed = button.fontMetrics().horizontalAdvance(words)
        if button.isVisible() and words and needed > button.width():
            yield f"“{words}” has {button.width()} of {needed} px in width"


@pytest.fixture(params=LOOKS, ids=str)
def looker(
    request: pytest.FixtureRequest, qtbot: QtBot, qapp: QApplication, desk: Desk
) -> Iterator[Looker]:
    look: Look = request.param
    theme.apply(qapp, dark=look.dark, text=look.text)
    window = MainWindow()
    qtbot.addWidget(window)
    window.resize(look.wide, look.high)
    window.show()
    window.open_desk(desk)
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    looker = Looker(window, look, qtbot)
    yield looker
    theme.apply(qapp, dark=False, text=1.0)
    if SHOTS:
        cramped = "\n".join(looker.cramped)
        (Path(SHOTS) / f"{look}-cramped.txt").write_text(cramped, encoding="utf-8")


def test_that_every_screen_of_the_sample_shop_opens_without_a_complaint(
    looker: Looker, desk: Desk
) -> None:
    before = desk.ledger.head()
    _bench(looker, desk)
    _stock(looker, desk)
    _records(looker)
    assert desk.ledger.head() == before  # looking records nothing
    assert looker.seen > len(STEPS) * len(desk.jobs())


def _bench(looker: Looker, desk: Desk) -> None:
    bench = looker.window.bench
    looker.see("bench")
    bench.new_job.ask()
    looker.see("bench-new-job")
    for job in desk.jobs():
        flags = {(flag.key, flag.about) for flag in desk.job(job.id).flags}
        for step in STEPS:
            bench.open_job(job.id, step)
            page = bench.job_page()
            assert job.number in page.title.text()
            assert page.step_title.text() == STEPS[step].title
            # The step looked at raises its flags anew; none may get lost over that.
            assert {(flag.key, flag.about) for flag in page.flag_bar.flags()} == flags
            looker.see(f"{job.number}-{list(STEPS).index(step):02}-{step}")


def _stock(looker: Looker, desk: Desk) -> None:
    looker.window.show_area(1)
    stock = looker.window.stack.currentWidget()
    assert isinstance(stock, StockArea)
    assert stock.cylinders.rowCount() == len(desk.cylinders())
    looker.see("stock")
    stock.show_instruments.click()
    assert stock.instruments.rowCount() == len(desk.rows("instrument"))
    looker.see("stock-instruments")
    stock.show_cylinders.click()
    for line in desk.cylinders():
        stock.open_cylinder(line.id)
        assert line.id in stock.page.title.text()
        looker.see(f"stock-{line.id}")
    for act in STOCK:
        stock.begin(act)
        assert stock.act(act).isVisible()
        looker.see(f"stock-act-{act}")


def _records(looker: Looker) -> None:
    looker.window.show_area(2)
    records = looker.window.stack.currentWidget()
    assert isinstance(records, RecordsArea)
    for view, name in enumerate(VIEWS):
        records.show_view(view)
        table = records.tables[view]
        looker.bot.waitUntil(table.isVisible, timeout=20_000)
        assert table.model().rowCount() > 0
        looker.see(f"records-{name.lower().replace(' ', '-')}")
    records.show_export()
    looker.see("records-export")
    with looker.bot.waitSignal(records.verify_panel.done, timeout=30_000):
        records.show_verify()
    looker.bot.waitUntil(lambda: not records.verify_panel.working)
    assert "nothing disagrees" in records.verify_panel.says.text()
    looker.see("records-verify")
