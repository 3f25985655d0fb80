"""A list to tick: each line's text and source, who ticked it and when."""

from collections.abc import Mapping, Sequence
from datetime import datetime

from PySide6.QtCore import QEvent, QObject, QPoint, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QMouseEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QCheckBox, QGridLayout, QLabel, QVBoxLayout, QWidget

from chargebench import sources
from chargebench.desk.views import TickLine
from chargebench.steps import Answers, Field
from chargebench.steps.form import TypedLine
from chargebench.ui import theme
from chargebench.ui.fieldrow import KnowsRows, wrapped
from chargebench.ui.language import tr
from chargebench.ui.shapes import draw
from chargebench.ui.wording import at
from chargebench.words import joined, say


class TickBox(QCheckBox):
    """A box large enough for a glove; the frame shows focus, the mark the tick."""

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """A square to press."""
        return QSize(theme.target(), theme.target())

    def hitButton(self, pos: QPoint) -> bool:  # noqa: N802 - Qt's name
        """All of it can be pressed."""
        return self.rect().contains(pos)

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802, ARG002 - Qt's name
        """Draw."""
        colours = theme.colours()
        side = theme.em() * 1.3
        box = QRectF((self.width() - side) / 2, (self.height() - side) / 2, side, side)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        empty = colours.panel if self.isEnabled() else colours.ground
        painter.setBrush(QColor(colours.accent if self.isChecked() else empty))
        painter.setPen(QPen(QColor(colours.focus if self.hasFocus() else colours.line), 2))
        painter.drawRoundedRect(box, 3, 3)
        if self.hasFocus():
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(box.adjusted(-4, -4, 4, 4), 5, 5)
        if self.isChecked():
            draw(painter, box, "ticked")
        painter.end()


class _Line(QWidget):
    """A box, the line's text, and under it its source and who ticked it."""

    def __init__(self, line: TickLine) -> None:
        super().__init__()
        self.line = line
        self.box = TickBox()
        self.box.setFixedSize(theme.target(), theme.target())
        self.box.setAccessibleName(tr(line.text))
        self.box.setAccessibleDescription(tr(sources.said(line.source, line.mark)))
        self.text = wrapped(line.text)
        self.under = wrapped(sources.said(line.source, line.mark), "faint")
        self.text.installEventFilter(self)
        layout = QGridLayout(self)
        layout.setContentsMargins(0, 0, 0, theme.em() // 3)
        layout.setVerticalSpacing(0)
        layout.addWidget(self.box, 0, 0, 2, 1, Qt.AlignmentFlag.AlignTop)
        layout.addWidget(self.text, 0, 1, Qt.AlignmentFlag.AlignBottom)
        layout.addWidget(self.under, 1, 1, Qt.AlignmentFlag.AlignTop)
        layout.setHorizontalSpacing(theme.em() // 4)
        layout.setColumnStretch(1, 1)

    def tell(self, tick: TypedLine | None, person: str) -> None:
        """Show whether it is ticked, by whom and when."""
        self.box.setChecked(tick is not None)
        said = [sources.said(self.line.source, self.line.mark)] if self.line.source else []
        if tick is not None:
            said.insert(
                0, say("ticked by {person}, {at}", person=person, at=_at(tick.get("at", "")))
            )
        self.under.setText(tr(joined(" · ", said)))
        self.under.setVisible(bool(said))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802 - Qt's name
        """A press on the text is a press on the box."""
        if isinstance(event, QMouseEvent) and event.type() is QEvent.Type.MouseButtonRelease:
            self.box.click()
            return True
        return super().eventFilter(watched, event)


def _at(iso: str) -> str:
    try:
        return at(datetime.fromisoformat(iso))
    except ValueError:
        return iso


class TicksField(QWidget):
    """A list of lines to tick."""

    edited = Signal()

    def __init__(
        self, field: Field, desk: KnowsRows, lines: Sequence[TickLine], *, label: str
    ) -> None:
        super().__init__()
        self.field = field
        self._desk = desk
        self._ticks: dict[str, dict[str, str]] = {}
        self.label = QLabel(tr(label if lines else field.label.replace("&", "&&")))
        self.label.setProperty("weight", "head")
        self._count = wrapped(weight="faint")
        self.refusal = wrapped(weight="refusal")
        self.refusal.hide()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, theme.em() // 2, 0, 0)
        layout.setSpacing(theme.em() // 6)
        for each in (self.label, self._count, self.refusal):
            layout.addWidget(each)
        self._lines: dict[str, _Line] = {}
        for line in lines:
            self._add(line)
        if self._lines:
            self.label.setBuddy(next(iter(self._lines.values())).box)
        self._show()

    def _add(self, line: TickLine) -> None:
        shown = _Line(line)
        shown.box.clicked.connect(lambda checked, key=line.key: self._tick(key, checked=checked))
        self._lines[line.key] = shown
        layout = self.layout()
        assert layout is not None
        layout.addWidget(shown)

    def editors(self) -> list[QWidget]:
        """What takes the keys."""
        return [line.box for line in self._lines.values()]

    def typed(self) -> list[dict[str, str]]:
        """The ticks."""
        return [dict(tick) for tick in self._ticks.values()]

    def put(self, ticks: Sequence[TypedLine]) -> None:
        """Show ticks made earlier, also of lines that are not asked any more."""
        self._ticks = {tick["line"]: dict(tick) for tick in ticks if tick.get("line")}
        for key in self._ticks:
            if key not in self._lines:
                self._add(TickLine(key, key, "not asked for this job now"))
        self._show()

    def lock(self, *, locked: bool) -> None:
        """Only to be read."""
        for line in self._lines.values():
            line.box.setDisabled(locked)

    def lay_out(self, *, beside: bool) -> None:
        """Takes the whole width anyway."""

    def tell(self, path: str, answers: Answers, refusals: Mapping[str, str]) -> None:  # noqa: ARG002
        """Show why it was not taken."""
        refusal = refusals.get(path, "") or next(
            (text for key, text in refusals.items() if key.startswith(f"{path}[")), ""
        )
        self.refusal.setText(tr(refusal))
        self.refusal.setVisible(bool(refusal))

    def _tick(self, key: str, *, checked: bool) -> None:
        if checked:
            now = datetime.now().astimezone().isoformat(timespec="seconds")
            self._ticks[key] = {"line": key, "at": now, "by": self._desk.person}
        else:
            self._ticks.pop(key, None)
        self._show()
        self.edited.emit()

    def _show(self) -> None:
        for key, line in self._lines.items():
            tick = self._ticks.get(key)
            by = self._desk.label("person", tick.get("by", "")) if tick else ""
            line.tell(tick, by)
        done = sum(key in self._ticks for key in self._lines)
        if self._lines:
            self._count.setText(
                tr(say("{done} of {count} ticked; Space ticks", done=done, count=len(self._lines)))
            )
        else:
            self._count.setText(tr("Nothing to tick until the refrigerant is known."))
