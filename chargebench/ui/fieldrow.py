"""One field on the page: its label, its editor, and under it what is wrong with what is typed."""

from collections.abc import Mapping
from typing import Protocol

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QLabel, QSizePolicy, QWidget

from chargebench.steps import Answers, Asks, Field
from chargebench.ui import theme
from chargebench.ui.fields import Choice, LineEdit, WhenEdit, YesNo
from chargebench.ui.language import tr
from chargebench.ui.longtext import LongText
from chargebench.ui.pick import PickEdit
from chargebench.ui.wording import understood
from chargebench.units import System
from chargebench.words import say

Editor = LineEdit | LongText | Choice | YesNo
LABEL_EMS = 11


class KnowsRows(Protocol):
    """What a form needs of a desk; the first start has none yet."""

    person: str

    @property
    def units(self) -> System:
        """Units shown."""

    def choices(self, register: str) -> Mapping[str, Mapping[str, str]]:
        """Rows of a register by id."""

    def label(self, register: str, row_id: str) -> str:
        """How a row is called."""


def wrapped(text: str = "", weight: str = "") -> QLabel:
    """A label that breaks into lines."""
    label = QLabel(tr(text))
    label.setWordWrap(True)
    label.setTextFormat(Qt.TextFormat.PlainText)
    if weight:
        label.setProperty("weight", weight)
    return label


def labels_of(desk: KnowsRows, field: Field) -> Mapping[str, str]:
    """Rows a field can pick, by id, as they are called."""
    called: dict[str, str] = {}
    for row_id, row in desk.choices(field.register).items():
        if field.only and row.get("kind") != field.only:
            continue
        label = desk.label(field.register, row_id)
        called[row_id] = (
            label
            if label.startswith(row_id)
            else say("{row_id} {label}", row_id=row_id, label=label)
        )
    return called


class FieldRow(QWidget):
    """Label, editor, refusal."""

    edited = Signal()
    wants_new = Signal(str)

    def __init__(
        self, field: Field, desk: KnowsRows, *, label: str, choices: tuple[str, ...] = ()
    ) -> None:
        super().__init__()
        self.field = field
        self._desk = desk
        self._units = desk.units
        self._last: tuple[object, str] = (None, "")
        self.label = QLabel(tr(label), self)  # shown without a parent it would be a window
        self.label.setWordWrap(True)
        self.editor = self._make_editor(choices)
        self.refusal = wrapped(weight="refusal")
        self.refusal.hide()
        if isinstance(self.editor, YesNo):
            self.editor.name(field.label)
            self.label.setBuddy(self.editor.parts()[0])
        else:
            self.label.setBuddy(self.editor)
        self.editor.setAccessibleName(tr(field.label))
        self.editor.setAccessibleDescription(tr(self._described()))
        if field.hint:
            self.editor.setToolTip(tr(field.hint))
        self.editor.edited.connect(self.edited)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(theme.em() // 2)
        self._grid.setVerticalSpacing(theme.em() // 6)
        self._beside: bool | None = None
        self.lay_out(beside=True)

    def _make_editor(self, choices: tuple[str, ...]) -> Editor:
        field = self.field
        offered = choices or field.choices
        if offered:
            return Choice(offered)
        match field.asks:
            case Asks.YES_NO:
                return YesNo()
            case Asks.LONG_TEXT:
                return LongText(field.example)
            case Asks.DATE | Asks.WHEN:
                return WhenEdit(field.example, moment=field.asks is Asks.WHEN)
            case Asks.ROW:
                pick = PickEdit(field.register, lambda: labels_of(self._desk, field))
                pick.reread()
                pick.wants_new.connect(self.wants_new)
                return pick
            case _:
                return LineEdit(field.example)

    def _described(self) -> str:
        said = [
            self.field.hint,
            say("for example {example}", example=self.field.example) if self.field.example else "",
        ]
        if self.field.required:
            said.append("needed")
        return ". ".join(each for each in said if each)

    def editors(self) -> list[QWidget]:
        """What takes the keys."""
        return self.editor.parts() if isinstance(self.editor, YesNo) else [self.editor]

    def lay_out(self, *, beside: bool, labelled: bool = True) -> None:
        """Label beside the editor, or above it where the page is narrow."""
        self.label.setHidden(not labelled)
        if beside == self._beside:
            return
        self._beside = beside
        below: list[QWidget] = [self.refusal]
        if isinstance(self.editor, PickEdit):
            below.insert(0, self.editor.matches)
        for each in (self.label, self.editor, *below):
            self._grid.removeWidget(each)
        if beside:
            self.label.setFixedWidth(theme.em() * LABEL_EMS)
            top = Qt.AlignmentFlag.AlignTop
            self._grid.addWidget(self.label, 0, 0, top)
            if isinstance(self.editor, LongText):  # beside its first line
                self.label.setAlignment(top)
                self.label.setContentsMargins(0, theme.em() // 2, 0, 0)
            self.label.setMinimumHeight(theme.target())
            self._grid.addWidget(self.editor, 0, 1)
            for row, each in enumerate(below, start=1):
                self._grid.addWidget(each, row, 1)
            self._grid.setColumnStretch(0, 0)
            self._grid.setColumnStretch(1, 1)
        else:
            self.label.setContentsMargins(0, 0, 0, 0)
            self.label.setMinimumWidth(0)
            self.label.setMaximumWidth(16_777_215)
            self.label.setMinimumHeight(0)
            self.label.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
            for row, each in enumerate((self.label, self.editor, *below)):
                self._grid.addWidget(each, row, 0)
            self._grid.setColumnStretch(0, 1)
            self._grid.setColumnStretch(1, 0)

    def text(self) -> str:
        """What is typed."""
        return self.editor.text()

    def put(self, text: str) -> None:
        """Show a text as if it had been typed earlier."""
        self.editor.put(text)

    def lock(self, *, locked: bool) -> None:
        """Only to be read."""
        self.editor.lock(locked=locked)

    def tell(self, path: str, answers: Answers, refusals: Mapping[str, str]) -> None:
        """Show what the text was understood as, or why it was not."""
        refusal = refusals.get(path, "")
        if isinstance(self.editor, PickEdit):
            refusal = self._tell_pick(self.editor) or refusal
        elif isinstance(self.editor, LineEdit):
            self.editor.say(self._understood(answers))
        elif isinstance(self.editor, Choice | YesNo):
            self.editor.say("needed" if self.field.required and not self.text() else "")
        refusal = tr(refusal)
        if refusal != self.refusal.text():
            self.refusal.setText(refusal)
            self.refusal.setVisible(bool(refusal))
            spoken = say(
                "{refusal} {described}", refusal=refusal, described=self._described()
            ).strip()
            self.editor.setAccessibleDescription(tr(spoken))

    def _understood(self, answers: Answers) -> str:
        value = answers.values.get(self.field.key)
        if value is None:
            empty = not self.editor.text().strip()
            return "needed" if empty and self.field.required else ""
        # Quantities cost tens of microseconds each to write; most fields did not change.
        if self._last[0] != value:
            self._last = (value, understood(self.field, value, self._units))
        return self._last[1]

    def _tell_pick(self, pick: PickEdit) -> str:
        typed = pick.text().strip()
        if not typed:
            pick.say("needed" if self.field.required else "")
            return ""
        if pick.id():
            pick.say(say("= {label_of}", label_of=pick.label_of()) if pick.label_of() else "")
            return ""
        if pick.hasFocus() or pick.listing():
            count = len(pick.matching())
            pick.say("in none" if not count else say("in {count}", count=count))
            return ""
        pick.say("")
        kind = self.field.only or self.field.register
        return say(
            "Expected an id of the {kind} register; got “{typed}”. Press Down to see "
            "what there is, or to make a new one.",
            kind=kind,
            typed=typed[:40],
        )
