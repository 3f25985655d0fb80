"""The main window: three areas, who signs, and one line at the foot.

Nothing heavy is imported here: the shell paints first, areas are made when first shown.
"""

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QCloseEvent, QKeySequence, QPaintEvent, QShortcut
from PySide6.QtWidgets import (
    QApplication,
    QLabel,
    QMainWindow,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from chargebench.ui import keys, language, theme
from chargebench.ui.language import tr
from chargebench.ui.lookout import Lookout
from chargebench.ui.notice import Notice
from chargebench.ui.notifier import Notifier
from chargebench.ui.oneline import OneLine
from chargebench.ui.topbar import AREAS, TopBar

if TYPE_CHECKING:
    from chargebench.desk import Desk
    from chargebench.ui.bench import BenchArea


class MainWindow(QMainWindow):
    """The shell."""

    painted = Signal()
    backups_wanted = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setWindowTitle(tr("chargebench"))
        self.resize(1180, 780)
        self.setMinimumSize(640, 480)
        self.notifier = Notifier(self)
        self._lookout = Lookout(self)
        self._lookout.moved.connect(self.notifier.changed)
        self._lookout.gone.connect(self.tell)
        self._desk: Desk | None = None
        self._areas: dict[int, QWidget] = {}
        self._bench: BenchArea | None = None
        self._units = ""
        self._told = ""  # about the rule file; said once
        self._was_painted = False
        self.stack = QStackedWidget()
        self.waiting = QLabel(tr("Opening the shop's records …"))
        self.waiting.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.stack.addWidget(self.waiting)
        self._build()
        self._connect()

    def _build(self) -> None:
        self.notice = Notice()
        self.notice_says, self.notice_close = self.notice.says, self.notice.close_button
        self.foot = OneLine()
        self.foot.setProperty("weight", "faint")
        self.foot.setContentsMargins(theme.em() // 2, 2, theme.em() // 2, 4)
        page = QWidget()
        self._column = QVBoxLayout(page)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(0)
        self._put_top()
        self._column.addWidget(self.notice)
        self._column.addWidget(self.stack, 1)
        self._column.addWidget(self.foot)
        self.setCentralWidget(page)
        self._show_keys()

    def _put_top(self) -> None:
        self.top = TopBar()
        self.who, self.signs, self.shop = self.top.who, self.top.who.people, self.top.shop
        self._column.insertWidget(0, self.top)
        self.top.area_wanted.connect(self.show_area)
        self.who.leaving.connect(self.flush)
        self.who.chosen.connect(self.notifier.changed)
        self.who.said.connect(self.say)
        self.top.settings.clicked.connect(lambda _: self.change_shop())

    def _connect(self) -> None:
        self.notifier.changed.connect(self._read_top)
        pressed: dict[str, Callable[[], object]] = {
            "Alt+1": lambda: self.show_area(0),
            "Alt+2": lambda: self.show_area(1),
            "Alt+3": lambda: self.show_area(2),
            "Ctrl++": lambda: self.text_size(1),
            "Ctrl+=": lambda: self.text_size(1),
            "Ctrl+-": lambda: self.text_size(-1),
            "F1": self.show_guide,
            "Ctrl+,": self.change_shop,
            "F7": self.show_reference,
        }
        for key, act in pressed.items():
            QShortcut(QKeySequence(key), self).activated.connect(act)

    def show_page(self, page: QWidget) -> None:
        """Show a page that is not an area, such as the first start."""
        self.stack.addWidget(page)
        self.stack.setCurrentWidget(page)

    def open_desk(self, desk: "Desk") -> None:
        """Work with an open shop from now on."""
        self._forget_areas()
        self._desk = desk
        self._open_top()
        self.show_area(0)
        self._lookout.watch(desk)

    def _open_top(self) -> None:
        assert self._desk is not None
        self.who.open_desk(self._desk)
        self.top.open()
        self._read_top()

    def _read_top(self) -> None:
        assert self._desk is not None
        if self._areas and self._desk.units != self._units:
            QTimer.singleShot(0, self, self._make_anew)
        self._units = self._desk.units
        shop = self._desk.shop
        units = "g | °C" if self._desk.units == "SI" else "oz | °F"
        judged = f"{units}   {self._desk.rule_set.called}"
        self.shop.say(f"{shop.get('name', '')}   {judged}", judged, units)
        if self._desk.rule_trouble not in ("", self._told):
            self.tell(self._desk.rule_trouble)
        self._told = self._desk.rule_trouble
        self.who.read()

    def change_shop(self) -> None:
        """Change the shop's name, address, units, rule set and rule file."""
        if self._desk is None:
            return
        from chargebench.ui.registerdialog import make_row

        dialog = make_row(self._desk, "shop", self, lambda _: self._shop_changed(), row_id="shop")
        dialog.finished.connect(lambda _: self.look_as_chosen())

    def show_guide(self) -> None:
        """Open the guide at the page that fits what is shown."""
        from chargebench.ui.guide import GuideDialog, page_for

        job = self._bench.shown_job() if self._bench is not None else None
        area = AREAS[self.top.area].lower() if self._desk is not None else ""
        GuideDialog(page_for(area, job[1] if job else ""), self).show()

    def show_reference(self, refrigerant: str = "") -> None:
        """Look a refrigerant up: the one named, else that of the job that is open."""
        if self._desk is None:
            return
        from chargebench.ui.reference import open_reference

        shown = self._bench.shown_job() if self._bench is not None else None
        at_bench = self.stack.currentWidget() is self._bench
        open_reference(self._desk, shown[0] if shown and at_bench else "", refrigerant, self)

    def _shop_changed(self) -> None:
        assert self._desk is not None
        self.notifier.changed.emit()
        self.say(f"Shop saved; {self._desk.rule_set.called} from now on.")

    def show_area(self, place: int) -> None:
        """Show an area; it is made when first shown."""
        if self._desk is None:
            return
        self.flush()
        if place not in self._areas:
            self._areas[place] = self._make_area(place, self._desk)
            self.stack.addWidget(self._areas[place])
        self.stack.setCurrentWidget(self._areas[place])
        self.top.show_area(place)
        self._show_keys()

    def _make_area(self, place: int, desk: "Desk") -> QWidget:
        from chargebench.ui import areas

        if place == 0:
            self._bench = areas.make_bench(desk, self)
            self._bench.currentChanged.connect(lambda _: self._show_keys())
            return self._bench
        return areas.make_stock(desk, self) if place == 1 else areas.make_records(desk, self)

    def open_job(self, job: str) -> None:
        """Go to a job on the Bench."""
        self.show_area(0)
        self.bench.open_job(job)

    def open_cylinder(self, cylinder: str) -> None:
        """Go to a cylinder in Stock."""
        from chargebench.ui.stock import StockArea

        self.show_area(1)
        stock = self._areas[1]
        assert isinstance(stock, StockArea)
        stock.open_cylinder(cylinder)

    @property
    def bench(self) -> "BenchArea":
        """The Bench area, once it has been shown."""
        assert self._bench is not None
        return self._bench

    def _show_keys(self) -> None:
        page = AREAS[max(self.top.area, 0)].lower()
        if page == "bench" and self._bench is not None and self._bench.shown_job():
            page = "job"
        self.foot.say(*keys.at_foot(page))

    def say(self, text: str) -> None:
        """Write what was just recorded at the foot."""
        self.foot.say(text)

    def tell(self, text: str) -> None:
        """Say something that must not be missed; stays until closed."""
        self.notice.tell(text)

    def text_size(self, by: int) -> None:
        """Make text larger or smaller; what is typed is kept."""
        self.flush()
        theme.step_text(_application(), by)
        self.restyle()

    def look_as_chosen(self) -> None:
        """Take on the look, text size and language this bench chose, where they are others."""
        before = theme.colours(), theme.text_size(), language.spoken()
        theme.apply_chosen(_application())
        language.speak(language.chosen())
        if before != (theme.colours(), theme.text_size(), language.spoken()):
            self.restyle()

    def restyle(self) -> None:
        """Draw everything anew in the colours, size and language that are in use now."""
        if self._desk is None:
            return
        self.flush()
        old, place = self.top, self.top.area
        self._put_top()
        old.deleteLater()
        old.hide()
        self._open_top()
        self.top.show_area(max(place, 0))
        self._make_anew()

    def _make_anew(self) -> None:
        """Make the areas again, at the job that was open; what is typed is kept."""
        self.flush()
        place = self.top.area
        job = self._bench.shown_job() if self._bench is not None else None
        self._forget_areas()
        if job:
            self.show_area(0)
            self.bench.open_job(*job)
        self.show_area(max(place, 0))

    def flush(self) -> None:
        """Keep what is typed, now."""
        if self._bench is not None:
            self._bench.flush()

    def _forget_areas(self) -> None:
        for area in self._areas.values():
            self.stack.removeWidget(area)
            area.deleteLater()
        self._areas.clear()
        self._bench = None

    def closeEvent(self, event: QCloseEvent) -> None:  # noqa: N802 - Qt's name
        """Nothing typed is lost."""
        self._lookout.stop()
        self.flush()
        super().closeEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802 - Qt's name
        """Say when the shell is on the screen."""
        super().paintEvent(event)
        if not self._was_painted:
            self._was_painted = True
            self.painted.emit()


def _application() -> QApplication:
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    return app
