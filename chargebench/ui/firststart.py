"""First start: make a shop on one page, or look at the sample."""

import os
from collections.abc import Mapping
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from chargebench import rules
from chargebench.desk import Desk
from chargebench.errors import ChargebenchError, StepRefused
from chargebench.steps import REGISTERS, Form, answer
from chargebench.ui import theme
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.formview import FormView
from chargebench.ui.handing import file_to_begin, told
from chargebench.ui.language import tr
from chargebench.ui.ruling import RulesSaid
from chargebench.units import System
from chargebench.words import say

_PERSON = "person_"
_LABELS = {"name": "Your name", "certificate": "Your certificate number"}
_BEGIN: dict[str, str] = {
    "units": "SI",
    "rule_set": "generic",
    f"{_PERSON}role": "shop",
}
_LATER = ("passphrases", "shift", "idle")  # the shop's page asks, once there are people
_MAKE_SAYS = "One page: the shop's name, units, rule set, your name and certificate."
_JOIN_SAYS = (
    "This computer becomes a further bench of a shop there is already: choose the chain file that "
    "was handed over there to begin one."
)
_SAMPLE_SAYS = (
    "An invented shop with jobs, cylinders and records to walk through; "
    "nothing you do there touches your own."
)

FIRST = Form(
    "first",
    "Your shop",
    "All of this can be changed later; each change is recorded.",
    (
        *(field for field in REGISTERS["shop"].fields if field.key not in _LATER),
        *(
            replace(field, key=_PERSON + field.key, label=_LABELS.get(field.key, field.label))
            for field in REGISTERS["person"].fields
        ),
    ),
)


class _NoShop:
    """A desk's place before there is one."""

    person = ""
    units: System = "SI"

    def choices(self, register: str) -> Mapping[str, Mapping[str, str]]:  # noqa: ARG002
        """None yet."""
        return {}

    def label(self, register: str, row_id: str) -> str:  # noqa: ARG002
        """The id."""
        return row_id


def _breakable(path: Path) -> str:
    """A path that a narrow page may break after each folder."""
    return str(path).replace(os.sep, f"{os.sep}\u200b")


class FirstStart(QStackedWidget):
    """Two choices, then one page."""

    made = Signal(object)  # Desk
    sample_wanted = Signal()

    def __init__(self, path: Path, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._path = path
        self.make = QPushButton(tr("&Make your shop"))
        self.make.setProperty("weight", "main")
        self.sample = QPushButton(tr("&Look at the sample"))
        self.join = QPushButton(tr("&Join a shop…"))
        self.form = FormView(FIRST, _NoShop(), choices={"rule_set": rules.names()}, taken="kbf")
        self.says = wrapped(weight="refusal")
        self.refused = wrapped(weight="refusal")
        for label in (self.says, self.refused):
            label.hide()
        self.keep = QPushButton(tr("&Keep records here"))
        self.keep.setProperty("weight", "main")
        self.keep.setShortcut("Ctrl+Return")
        self.back = QPushButton(tr("&Back"))
        self.addWidget(self._choices())
        self.addWidget(self._page())
        self.rules = RulesSaid(path.parent)
        self.form.set_foot(self.rules)
        self.rules.file_chosen.connect(lambda file: self.form.type_over({"rule_file": file}))
        self.form.put(_BEGIN)
        self.form.edited.connect(lambda _: self._tell())
        self._tell()
        self.make.clicked.connect(lambda _: self.begin())
        self.sample.clicked.connect(lambda _: self.sample_wanted.emit())
        self.join.clicked.connect(lambda _: self.join_shop(file_to_begin(self)))
        self.keep.clicked.connect(lambda _: self.make_shop())
        self.back.clicked.connect(lambda _: self.setCurrentIndex(0))

    def _choices(self) -> QWidget:
        page = QWidget()
        page.setObjectName("page")
        column = QVBoxLayout(page)
        inner = QVBoxLayout()
        inner.setSpacing(theme.em() // 2)
        choices = (
            (
                self.make,
                say(
                    "{make_says} Records are kept in {path}.",
                    make_says=_MAKE_SAYS,
                    path=_breakable(self._path),
                ),
            ),
            (
                self.join,
                _JOIN_SAYS,
            ),
            (
                self.sample,
                _SAMPLE_SAYS,
            ),
        )
        inner.addWidget(wrapped("Charge, recovery and every gram in between", "title"))
        inner.addWidget(
            wrapped(
                "It computes, records and flags. Local codes, the equipment maker's instructions "
                "and a licensed person's judgement come first.",
            )
        )
        for button, says in choices:
            inner.addSpacing(theme.em())
            button.setMinimumHeight(theme.target() * 3 // 2)
            inner.addWidget(button)
            inner.addWidget(wrapped(says, "faint"))
        inner.addWidget(self.refused)
        inside = QWidget()
        inside.setLayout(inner)
        inside.setMaximumWidth(theme.em() * 44)
        line = QHBoxLayout()
        line.addWidget(inside)
        column.addStretch(1)
        column.addLayout(line)
        column.addStretch(2)
        scroll = QScrollArea()
        scroll.setWidgetResizable(True)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setWidget(page)
        return scroll

    def _page(self) -> QWidget:
        page = QWidget()
        column = QVBoxLayout(page)
        edge = theme.em()
        column.setContentsMargins(edge, edge, edge, edge // 2)
        column.addWidget(wrapped(FIRST.title, "title"))
        column.addWidget(wrapped(FIRST.purpose, "faint"))
        column.addWidget(self.form, 1)
        column.addWidget(self.says)
        acts = QHBoxLayout()
        acts.addWidget(self.back)
        acts.addStretch()
        acts.addWidget(self.keep)
        column.addLayout(acts)
        return page

    def join_shop(self, chain: Path | None) -> None:
        """Begin a further bench of a shop, of its chain file."""
        if chain is None:
            return
        try:
            self._path.parent.mkdir(parents=True, exist_ok=True)
            with told(self, "Taking in what the shop knows …") as progress:
                desk = Desk.begin(self._path, chain, progress)
        except (ChargebenchError, OSError) as refusal:
            self.refused.setText(tr(str(refusal)))
            self.refused.show()
        else:
            self.made.emit(desk)

    def begin(self) -> None:
        """Show the page."""
        self.setCurrentIndex(1)
        self.form.focus_first()

    def _tell(self, refused: Mapping[str, str] | None = None) -> None:
        typed = self.form.typed()
        if refusal := self.rules.show_typed(typed):
            refused = {"rule_file": refusal, **(refused or {})}
        self.form.tell(answer(FIRST, typed), refused)

    def make_shop(self) -> None:
        """Make the shop."""
        typed = {key: text for key, text in self.form.typed().items() if isinstance(text, str)}
        answers = answer(FIRST, typed)
        wanting = {
            path: say("Expected {what}.", what=what.lower())
            for path, what in answers.missing.items()
        }
        if wanting or answers.refusals:
            self._refuse("Not made yet: look at the marked fields.", wanting)
            return
        shop = {key: text for key, text in typed.items() if not key.startswith(_PERSON)}
        person = {
            key.removeprefix(_PERSON): text
            for key, text in typed.items()
            if key.startswith(_PERSON)
        }
        try:
            self._path.parent.mkdir(parents=True, exist_ok=True)
            desk = Desk.create(self._path, shop, person)
        except StepRefused as refusal:
            self._refuse(str(refusal), refusal.fields)
        except (ChargebenchError, OSError) as refusal:
            self._refuse(str(refusal), {})
        else:
            self.made.emit(desk)

    def _refuse(self, says: str, fields: Mapping[str, str]) -> None:
        self._tell(fields)
        self.says.setText(tr(says))
        self.says.show()
        if fields:
            self.form.focus_path(next(iter(fields)))
