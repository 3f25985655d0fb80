"""A stock act on the page: receive, weigh, decant or return, and what it comes to."""

from collections.abc import Mapping

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QHideEvent, QKeyEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from chargebench.desk import Act, Desk
from chargebench.desk.views import Look
from chargebench.errors import ChargebenchError, StepRefused
from chargebench.steps import STOCK, Typed
from chargebench.ui import theme
from chargebench.ui.cautions import Cautions
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.flagbar import FlagLine
from chargebench.ui.formview import FormView
from chargebench.ui.language import tr
from chargebench.ui.wording import figure_of, value_of
from chargebench.words import joined, say

_FLAGS_SHOWN = 3
_KEEP_MS = 400
_KEPT_AS = "stock"  # stands where the job's id stands for the steps of a job


class StockAct(QWidget):
    """One form of stock work, worked out at each key, recorded by one deliberate act."""

    recorded = Signal(str, str)  # the cylinder it was about; what was recorded, in words
    left = Signal()

    def __init__(self, desk: Desk, act: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.act = act
        form = STOCK[act]
        self.form = FormView(form, desk, taken="cb")
        self.form.setMinimumHeight(theme.em() * 10)
        self.comes = wrapped()
        self.comes.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.says = wrapped(weight="refusal")
        self.says.hide()
        self.cautions = Cautions()
        self.flags = [FlagLine() for _ in range(_FLAGS_SHOWN)]
        self.back = QPushButton(tr("&Back"))
        self.back.setToolTip(tr("Esc; what is typed stays here"))
        self.clear = QPushButton(tr("&Clear"))
        self.record = QPushButton(tr(say("Record: {form}", form=form.title.lower())))
        self.record.setProperty("weight", "main")
        self.record.setToolTip(tr("Ctrl+Return"))
        self._build(form.title, form.purpose)
        QShortcut(
            QKeySequence("Ctrl+Return"),
            self,
            self.sign,
            context=Qt.ShortcutContext.WidgetWithChildrenShortcut,
        )
        self._keep = QTimer(self)
        self._keep.setSingleShot(True)
        self._keep.setInterval(_KEEP_MS)
        self._keep.timeout.connect(self.flush)
        self.form.edited.connect(lambda _: self._edited())
        self.back.clicked.connect(lambda _: self.left.emit())
        self.clear.clicked.connect(lambda _: self._empty())
        self.record.clicked.connect(lambda _: self.sign())
        self.put(desk.typed(_KEPT_AS, act))

    def _build(self, title: str, purpose: str) -> None:
        buttons = QHBoxLayout()
        buttons.addWidget(self.back)
        buttons.addWidget(self.clear)
        buttons.addStretch(1)
        buttons.addWidget(self.record)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(wrapped(title, "title"))
        layout.addWidget(wrapped(purpose, "faint"))
        layout.addWidget(self.cautions)
        layout.addWidget(self.form, 1)
        layout.addWidget(self.comes)
        for line in self.flags:
            layout.addWidget(line)
        layout.addWidget(self.says)
        layout.addLayout(buttons)

    def begin(self, cylinder: str = "") -> None:
        """Start at a cylinder; what was typed before and not recorded is still there."""
        may_not = self._desk.refusal(Act.RECORD)
        self.form.lock(locked=bool(may_not))
        self.record.setEnabled(not may_not)
        if may_not:
            self._refuse(may_not)
        if not self.form.typed():  # what was taken back stands open again
            self.put(self._desk.typed(_KEPT_AS, self.act))
        key = "source" if self.act == "decant" else "cylinder"
        if cylinder and not self.form.typed():
            self.put({key: cylinder})
        self.form.focus_first()

    def put(self, typed: Typed) -> None:
        """Show what is typed."""
        self.form.put(typed)
        self._look()

    def _edited(self) -> None:
        self._keep.start()
        self._look()

    def flush(self) -> None:
        """Keep what is typed, now."""
        self._keep.stop()
        self._desk.keep(_KEPT_AS, self.act, self.form.typed())

    def _empty(self) -> None:
        self.put({})
        self.flush()

    def hideEvent(self, event: QHideEvent) -> None:  # noqa: N802 - Qt's name
        """What is typed and not kept yet is kept when the page goes out of sight."""
        if self._keep.isActive():
            self.flush()
        super().hideEvent(event)

    def _look(self, refused: Mapping[str, str] | None = None) -> None:
        look = self._desk.look_stock(self.act, self.form.typed())
        self.form.tell(look.answers, refused)
        if refused is None:
            self.says.hide()
        self._show(look)
        self.cautions.show_lines(self._desk.cautions(self.act, look.answers))

    def _show(self, look: Look) -> None:
        system = self._desk.units
        lines = list(look.worked.sentences)
        for figure in look.worked.figures:
            limit = ""
            if figure.limit is not None:
                limit = say(
                    ", limit {value_of}", value_of=value_of(figure.limit, system, like=figure.value)
                )
            lines.append(
                say(
                    "{label} {figure_of}{limit}",
                    label=figure.label,
                    figure_of=figure_of(figure, system),
                    limit=limit,
                )
            )
        self.comes.setText(tr(joined("\n", lines) or "What is typed is worked out here."))
        for place, line in enumerate(self.flags):
            line.setVisible(place < len(look.flags))
            if place < len(look.flags):
                line.show_flag(look.flags[place])

    def sign(self) -> None:
        """Record it."""
        typed = self.form.typed()
        try:
            entry = self._desk.act(self.act, typed)
        except StepRefused as refusal:
            self._look(refusal.fields)
            self._refuse(str(refusal))
            if refusal.fields:
                self.form.focus_path(next(iter(refusal.fields)))
            return
        except ChargebenchError as refusal:
            self._refuse(str(refusal))
            return
        about = str(typed.get("target" if self.act == "decant" else "cylinder", ""))
        self._empty()
        self.recorded.emit(
            about,
            say(
                "{title}: {about}, entry {entry_number}.",
                title=STOCK[self.act].title,
                about=about,
                entry_number=entry.number,
            ),
        )

    def _refuse(self, says: str) -> None:
        self.says.setText(tr(says))
        self.says.show()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Esc goes back."""
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
            return
        super().keyPressEvent(event)
