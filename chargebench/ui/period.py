"""The period and filters on top of the Records area."""

from dataclasses import dataclass
from datetime import date, timedelta

from PySide6.QtCore import QSize, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QComboBox, QGridLayout, QLabel, QWidget

from chargebench.desk import Desk, Filters
from chargebench.ui import theme
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.fields import WhenEdit
from chargebench.ui.language import tr
from chargebench.words import say

OWN = "own dates"
PERIODS = ("this year", "last year", "last 12 months", "this month", "everything", OWN)


@dataclass(frozen=True, slots=True)
class Period:
    """First and last day, both included; None is open."""

    since: date | None = None
    until: date | None = None

    @property
    def words(self) -> str:
        """The period in words."""
        if self.since is None and self.until is None:
            return "everything recorded"
        if self.until is None:
            return say("from {since}", since=self.since)
        return (
            say("{since} to {until}", since=self.since, until=self.until)
            if self.since
            else say("up to {until}", until=self.until)
        )


def named_period(name: str, today: date) -> Period:
    """A period by its name."""
    match name:
        case "this year":
            return Period(date(today.year, 1, 1), date(today.year, 12, 31))
        case "last year":
            return Period(date(today.year - 1, 1, 1), date(today.year - 1, 12, 31))
        case "last 12 months":
            return Period(today - timedelta(days=365), today)
        case "this month":
            following = today.replace(day=28) + timedelta(days=4)
            return Period(today.replace(day=1), following - timedelta(days=following.day))
    return Period()


class PeriodBar(QWidget):
    """Period and filters; says when they change to something that can be read."""

    changed = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.named = QComboBox()
        self.named.addItems([tr(each) for each in PERIODS])
        self.named.setAccessibleName(tr("Period"))
        self.since = WhenEdit("2026-01-01", moment=False)
        self.until = WhenEdit("2026-12-31", moment=False)
        self.equipment = _filter("Equipment")
        self.refrigerant = _filter("Refrigerant")
        self.person = _filter("Person")
        self.says = wrapped(weight="refusal")
        self.says.hide()
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._pairs: list[tuple[QLabel, QWidget]] = []
        for words, editor in (
            ("&Period", self.named),
            ("Fro&m", self.since),
            ("Unt&il", self.until),
            ("E&quipment", self.equipment),
            ("Re&frigerant", self.refrigerant),
            ("P&erson", self.person),
        ):
            label = QLabel(tr(words))
            label.setBuddy(editor)
            label.setProperty("weight", "faint")
            self._pairs.append((label, editor))
        self._across = 0
        self._lay_out(len(self._pairs))
        self.since.setAccessibleName(tr("From, first day"))
        self.until.setAccessibleName(tr("Until, last day"))
        self.read_registers()
        self._choose(PERIODS[0])
        self.named.activated.connect(lambda _: self._chosen())
        for edit in (self.since, self.until):
            edit.edited.connect(self._typed)
        for box in (self.equipment, self.refrigerant, self.person):
            box.activated.connect(lambda _: self.changed.emit())

    def _lay_out(self, across: int) -> None:
        """Six in a row, or three in each of two."""
        if across == self._across:
            return
        self._across = across
        for place in range(len(self._pairs)):
            self._grid.setColumnStretch(place, 1 if place < across else 0)
        for place, (label, editor) in enumerate(self._pairs):
            row, column = divmod(place, across)
            self._grid.addWidget(label, 2 * row, column)
            self._grid.addWidget(editor, 2 * row + 1, column)
        self._grid.addWidget(self.says, 4, 0, 1, across)

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Room for three beside each other."""
        return QSize(theme.em() * 24, super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Fold where the width asks for it."""
        super().resizeEvent(event)
        self._lay_out(6 if self.width() >= theme.em() * 56 else 3)

    def read_registers(self) -> None:
        """Offer the equipment, refrigerants and people there are."""
        equipment = self._desk.rows("equipment")
        people = self._desk.rows("person")
        kinds = {row.get("refrigerant", "") for row in equipment.values()}
        kinds |= {row.get("refrigerant", "") for row in self._desk.rows("cylinder").values()}
        names = {key: f"{key} {row.get('name', '')}" for key, row in equipment.items()}
        _offer(self.equipment, names)
        _offer(self.refrigerant, {kind: kind for kind in sorted(kinds - {""})})
        _offer(self.person, {key: row.get("name", key) for key, row in people.items()})

    @property
    def period(self) -> Period:
        """The period typed; the last one that could be read."""
        return self._period

    @property
    def filters(self) -> Filters:
        """What is chosen beside the period."""
        return Filters(
            refrigerant=self.refrigerant.currentData() or None,
            by=self.person.currentData() or None,
            equipment=self.equipment.currentData() or None,
        )

    def narrow(self, *, period: bool, rest: bool) -> None:
        """Whether period and filters count for the view shown."""
        self.named.setEnabled(period)
        for edit in (self.since, self.until):
            edit.lock(locked=not period)
        for part in (self.equipment, self.refrigerant, self.person):
            part.setEnabled(rest)

    def _choose(self, name: str) -> None:
        self._period = named_period(name, self._desk.today)
        self.since.put(self._period.since.isoformat() if self._period.since else "")
        self.until.put(self._period.until.isoformat() if self._period.until else "")
        self.says.hide()

    def _chosen(self) -> None:
        if self.named.currentText() == OWN:
            self.since.setFocus()
            return
        self._choose(self.named.currentText())
        self.changed.emit()

    def _typed(self) -> None:
        self.named.setCurrentText(OWN)
        try:
            period = Period(_day(self.since.text()), _day(self.until.text()))
        except ValueError:
            self._refuse("Expected a date as year-month-day, such as 2026-11-25, or nothing.")
            return
        if period.since and period.until and period.until < period.since:
            self._refuse("Expected a last day that is not before the first.")
            return
        self.says.hide()
        self._period = period
        self.changed.emit()

    def _refuse(self, says: str) -> None:
        self.says.setText(tr(says))
        self.says.show()


def _day(text: str) -> date | None:
    return date.fromisoformat(text.strip()) if text.strip() else None


def _filter(name: str) -> QComboBox:
    box = QComboBox()
    box.setAccessibleName(tr(name))
    box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
    box.setMinimumContentsLength(5)
    return box


def _offer(box: QComboBox, names: dict[str, str]) -> None:
    chosen = box.currentData()
    box.clear()
    box.addItem(tr("all"), "")
    for key, name in names.items():
        box.addItem(name, key)
    box.setCurrentIndex(max(box.findData(chosen), 0))
