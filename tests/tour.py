"""Every kind of screen of the sample shop, one after the other, as it is really shown."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QDeadlineTimer, QEvent, QEventLoop
from PySide6.QtWidgets import QApplication, QDialog, QWidget

from chargebench.desk import Desk
from chargebench.steps import REGISTERS, STEPS, STOCK
from chargebench.ui.bench_display import BenchDisplay
from chargebench.ui.decay_plot import DecayPlot
from chargebench.ui.firststart import FirstStart
from chargebench.ui.guide import GuideDialog
from chargebench.ui.line_dialog import LineDialog
from chargebench.ui.passphrase import SetDialog
from chargebench.ui.photos import PhotosDialog
from chargebench.ui.printing import PrintDialog
from chargebench.ui.records import RecordsArea
from chargebench.ui.records_page import VIEWS
from chargebench.ui.reference import Reference
from chargebench.ui.registerdialog import RegisterDialog
from chargebench.ui.registers import RegistersDialog
from chargebench.ui.stock import StockArea
from chargebench.ui.trouble_page import TroublePage
from chargebench.ui.window import MainWindow

ROUNDS_MOST = 30
WAIT_MS = 20_000
OPEN, SIGNED, LEAKING = "B-0010", "B-0006", "B-0007"  # jobs of the sample
STEPS_OPEN = ("findings", "as_left", "close")


@dataclass(frozen=True)
class Screen:
    """What is shown, under a name for its picture."""

    name: str
    widget: QWidget


class Tour:
    """Goes through the window; looking records nothing."""

    def __init__(self, window: MainWindow, desk: Desk, away: Path) -> None:
        self._window = window
        self._desk = desk
        self._away = away  # a folder for a shop that is not there yet

    def screens(self) -> Iterator[Screen]:
        """Every kind of screen, laid out and painted when it is handed over."""
        for part in (self._bench, self._jobs, self._stock, self._records, self._others):
            for screen in part():
                settle(screen.widget)
                yield screen

    def _here(self, name: str) -> Screen:
        return Screen(name, self._window)

    def _bench(self) -> Iterator[Screen]:
        bench = self._window.bench
        yield self._here("bench")
        bench.ask_new()
        yield self._here("bench-new-job")
        bench.new_job.put_away.emit()
        bench.search.setText("no such job")
        wait_until(lambda: bench.empty.isVisible())
        yield self._here("bench-nothing-found")
        bench.search.clear()
        wait_until(lambda: bench.table.isVisible())

    def _jobs(self) -> Iterator[Screen]:
        ids = {job.number: job.id for job in self._desk.jobs()}
        bench = self._window.bench
        for place, step in enumerate(STEPS):
            job = OPEN if step in STEPS_OPEN else SIGNED
            bench.open_job(ids[job], step)
            yield self._here(f"job-{place:02}-{step}")
        bench.open_job(ids[OPEN], "as_left")
        page = bench.job_page()
        page.flag_bar.more.click()
        yield self._here("job-flags")
        page.flag_bar.more.click()
        page.pane.strip.aside.click()
        yield self._here("job-asks-a-reason")
        page.pane.strip.reason.leave()
        if page.turn.isVisible():
            bench.open_job(ids[SIGNED], "weigh_in")
            page.turn.click()
            yield self._here("job-worked-out")
            bench.open_job(ids[SIGNED], "evacuation")
            yield self._here("job-worked-out-plot")
            page.turn.click()
        bench.open_job(ids[OPEN], "weigh_in")
        display = page.pane.weighing().display(self._window)
        display.resize(self._window.size())
        yield from _put_away_after(display, "bench-display")
        bench.show_list()

    def _stock(self) -> Iterator[Screen]:
        self._window.show_area(1)
        stock = self._window.stack.currentWidget()
        assert isinstance(stock, StockArea)
        yield self._here("stock")
        stock.show_instruments.click()
        yield self._here("stock-instruments")
        stock.show_cylinders.click()
        for cylinder in ("C-014", "C-031"):
            stock.open_cylinder(cylinder)
            yield self._here(f"stock-{cylinder}")
        for act in STOCK:
            stock.begin(act)
            yield self._here(f"stock-act-{act}")
        stock.begin_stocktake()
        yield self._here("stock-take")
        stock.show_list()

    def _records(self) -> Iterator[Screen]:
        self._window.show_area(2)
        records = self._window.stack.currentWidget()
        assert isinstance(records, RecordsArea)
        for view, name in enumerate(VIEWS):
            records.show_view(view)
            wait_until(lambda v=view: records.tables[v].isVisible())  # type: ignore[misc]
            yield self._here(f"records-{name.lower().replace(' ', '-')}")
        records.show_view(0)
        records.show_export()
        yield self._here("records-export")
        records.show_hand_over()
        yield self._here("records-hand-over")
        records.show_verify()
        wait_until(lambda: not records.verify_panel.working)
        yield self._here("records-verify")
        records.verify_panel.left.emit()

    def _others(self) -> Iterator[Screen]:
        window, desk = self._window, self._desk
        window.tell("What must not be missed stands here until it is closed.")
        yield self._here("notice")
        window.notice.hide()
        yield from _put_away_after(RegistersDialog(desk, window.notifier, window), "registers")
        for register in REGISTERS:
            row = next(iter(desk.rows(register)), None) if register != "shop" else "shop"
            made = RegisterDialog(desk, register, row, window)
            yield from _put_away_after(made, f"register-{register}")
        job = next(each.id for each in desk.jobs() if each.number == SIGNED)
        yield from _put_away_after(PhotosDialog(desk, job, "nameplate", window), "photos")
        yield from _put_away_after(GuideDialog("job", window), "guide")
        window.bench.open_job(job)
        window.show_area(0)
        window.bench.job_page().show_print()
        printing = next(each for each in window.findChildren(PrintDialog) if each.isVisible())
        yield from _put_away_after(printing, "printing")
        yield from _put_away_after(SetDialog(desk, desk.person, window), "passphrase")
        scale = next(k for k, row in desk.rows("instrument").items() if row["kind"] == "scale")
        yield from _put_away_after(LineDialog(desk, scale, window), "port")
        reference = Reference(desk, "R449A", window)
        reference.resize(window.size())
        reference.show()
        for view, name in enumerate(("table", "chart", "known")):
            reference.show_view(view)
            settle(reference)
            yield Screen(f"reference-{name}", reference)
        _put_away(reference)
        first = FirstStart(self._away / "shop.chargebench")
        window.show_page(first)
        yield self._here("first-start")
        first.begin()
        yield self._here("first-start-shop")
        trouble = TroublePage(desk.path, "The shop file can not be read.")
        window.show_page(trouble)
        yield self._here("trouble")
        for page in (first, trouble):
            window.stack.removeWidget(page)
            page.deleteLater()
        window.show_area(0)


def _put_away_after(dialog: QWidget, name: str) -> Iterator[Screen]:
    dialog.show()
    settle(dialog)
    yield Screen(name, dialog)
    _put_away(dialog)


def _put_away(dialog: QWidget) -> None:
    if isinstance(dialog, QDialog):
        dialog.done(0)
    if isinstance(dialog, BenchDisplay):
        dialog.left.emit()
    dialog.close()
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def wait_until(done: Callable[[], bool]) -> None:
    """Let the window work until something is so."""
    deadline = QDeadlineTimer(WAIT_MS)
    while not done():
        assert not deadline.hasExpired(), "waited for in vain"
        QApplication.processEvents(QEventLoop.ProcessEventsFlag.AllEvents, 20)


def settle(widget: QWidget) -> None:
    """Until what waits to be loaded, laid out or put away is, and the picture stands still."""
    for plot in widget.findChildren(DecayPlot):
        if plot.isVisible():
            wait_until(lambda p=plot: p.chart is not None)  # type: ignore[misc]
    before = widget.grab().toImage()
    for _ in range(ROUNDS_MOST):
        QApplication.processEvents(QEventLoop.ProcessEventsFlag.AllEvents, 10)
        after = widget.grab().toImage()
        if after == before:
            return
        before = after
