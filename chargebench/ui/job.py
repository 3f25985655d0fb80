"""A job: where it stands, what to type now, what it means, what must not be missed."""

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from chargebench.desk import Desk
from chargebench.desk.views import JobView, Look
from chargebench.flags import Flag, worst_first
from chargebench.steps import STEPS
from chargebench.ui import theme
from chargebench.ui.closing import Closing
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.flagbar import FlagBar
from chargebench.ui.language import tr
from chargebench.ui.notifier import Notifier
from chargebench.ui.oneline import OneLine
from chargebench.ui.photos_button import PhotosButton
from chargebench.ui.print_here import print_button, print_job
from chargebench.ui.side import SidePanel
from chargebench.ui.stepcolumn import StepColumn
from chargebench.ui.steppane import StepPane
from chargebench.words import say

LOW_EMS = 28  # page height under which everything but the form gives way
COLUMN_EMS, SIDE_EMS = 42, 58  # page widths from which the steps and the side panel stand beside


class JobPage(QWidget):
    """One job open at a step."""

    left = Signal()
    said = Signal(str)

    def __init__(self, desk: Desk, notifier: Notifier, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._notifier = notifier
        self._job = ""
        self._view: JobView | None = None
        self._other_flags: tuple[Flag, ...] = ()
        self._turned = False
        self.flag_bar = FlagBar()
        self.closing = Closing(desk)
        self.steps = StepColumn()
        self.pane = StepPane(desk)
        self.side = SidePanel(desk.units)
        self._body = QGridLayout()
        self._build()
        self._connect()

    def _build(self) -> None:
        head = self._build_head()
        self._middle = QVBoxLayout()
        self._middle.addLayout(self._build_step_head())
        self._middle.addWidget(self.pane, 1)
        self._body.setHorizontalSpacing(theme.em() // 2)
        self._body.addWidget(self.steps, 0, 0)
        self._body.addLayout(self._middle, 0, 1)
        self._body.addWidget(self.side, 0, 2)
        column = QVBoxLayout(self)
        column.setContentsMargins(theme.em() // 2, theme.em() // 3, theme.em() // 2, 0)
        column.addLayout(head)
        column.addWidget(self.flag_bar)
        column.addWidget(self.closing)
        column.addLayout(self._body, 1)

    def _build_head(self) -> QHBoxLayout:
        self.back = QPushButton(tr("‹ Jobs"))
        self.back.setToolTip(tr("Alt+Left"))
        self.title = OneLine()
        self.title.setProperty("weight", "title")
        self.headline = wrapped()
        self.close_button = QPushButton(tr("C&lose job"))
        self.reopen_button = QPushButton(tr("Reopen"))
        tip = "Ctrl+P: report, checklist, statement; with preview"
        self.print_button = print_button("Print…", tip, self, self.show_print)
        self.photos_button = PhotosButton(self._desk, self.where, self)
        for button in (self.close_button, self.reopen_button):
            button.setToolTip(tr("Ctrl+Shift+Return"))
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(self.title)
        words.addWidget(self.headline)
        head = QHBoxLayout()
        top = Qt.AlignmentFlag.AlignTop
        head.addWidget(self.back, 0, top)
        head.addLayout(words, 1)
        papers = (self.photos_button, self.print_button)
        for button in (*papers, self.close_button, self.reopen_button):
            head.addWidget(button, 0, top)
        return head

    def _build_step_head(self) -> QHBoxLayout:
        self.previous, self.next = QPushButton("‹"), QPushButton("›")
        self.previous.setAccessibleName(tr("Previous step"))
        self.next.setAccessibleName(tr("Next step"))
        self.turn = QPushButton(tr("Worked out"))
        self.turn.setToolTip(tr("F9"))
        self.turn.setCheckable(True)
        self.step_title = wrapped(weight="head")
        self.purpose = wrapped(weight="faint")
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(self.step_title)
        words.addWidget(self.purpose)
        head = QHBoxLayout()
        head.setSpacing(theme.em() // 3)
        head.addWidget(self.previous)
        head.addLayout(words, 1)
        head.addWidget(self.turn)
        head.addWidget(self.next)
        return head

    def _connect(self) -> None:
        self.back.clicked.connect(lambda _: self.leave())
        self.close_button.clicked.connect(lambda _: self._close())
        self.reopen_button.clicked.connect(lambda _: self.closing.reopen(self._job))
        self.steps.chosen.connect(self._show_step)
        self.steps.entered.connect(self._into_form)
        self.previous.clicked.connect(lambda _: self.steps.go(-1))
        self.next.clicked.connect(lambda _: self.steps.go(1))
        self.turn.toggled.connect(lambda _: self._arrange())
        self.pane.looked.connect(self._show_look)
        self.pane.recorded.connect(self._after)
        self.closing.recorded.connect(lambda said: self._after(said, onward=False))
        self._notifier.changed.connect(self._changed_elsewhere)
        keys: dict[str, Callable[[], object]] = {
            "Ctrl+Up": lambda: self.steps.go(-1),
            "Ctrl+Down": lambda: self.steps.go(1),
            "F6": self._between,
            "F9": self.turn.toggle,
            "Alt+Left": self.leave,
            "Ctrl+Shift+Return": self._close_or_reopen,
        }
        for key, act in keys.items():
            shortcut = QShortcut(QKeySequence(key), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(act)

    # -- showing --------------------------------------------------------------------------------

    def where(self) -> tuple[str, str]:
        """Job and step shown."""
        return self._job, self.steps.current()

    def open(self, job: str, step: str = "") -> None:
        """Show a job at a step, else at the first that is open."""
        self.pane.clear()
        self.closing.leave()
        self._job = job
        view = self._read()
        self.steps.setCurrentRow(-1)
        first = next((step.key for step in view.steps if step.state == "open"), view.steps[0].key)
        self.steps.choose(step or first)
        self._into_form()

    def _read(self) -> JobView:
        view = self._desk.job(self._job)
        self._view = view
        self._write_title(low=self.headline.isHidden())
        self.close_button.setVisible(view.state == "open")
        self.reopen_button.setVisible(view.state != "open")
        self.steps.show_steps(view.steps)
        return view

    def _write_title(self, *, low: bool) -> None:
        if self._view is not None:
            title = say(
                "{view_number}  {view}", view_number=self._view.number, view=self._view.title
            )
            said = self._view.headline + ("" if self._view.state == "open" else " · closed")
            if low:
                self.title.say(f"{title} · {said}", title)
            else:
                self.title.say(title)
            self.headline.setText(tr(said))

    def _show_step(self, key: str) -> None:
        self.pane.clear()
        view = self._read()
        self.step_title.setText(tr(STEPS[key].title))
        self.purpose.setText(tr(STEPS[key].purpose))
        self.side.show_step(key)
        look = self.pane.show_step(view, key)
        self._take_flags(view, look)
        self._show_look(look)
        self._arrange()
        if not self.steps.hasFocus():  # arrow keys may go on down the column
            self._into_form()

    def _take_flags(self, view: JobView, look: Look) -> None:
        # What this step raises is read from the form at each key; the rest stands as recorded.
        mine = {(flag.key, flag.about) for flag in look.flags}
        self._other_flags = tuple(
            flag
            for flag in view.flags
            if (flag.key, flag.about) not in mine and flag.about != f"step:{self.pane.key()}"
        )

    def _show_look(self, look: Look) -> None:
        assert self._view is not None
        self.side.show_look(look, self._view.case)
        self.flag_bar.show_flags(worst_first((*look.flags, *self._other_flags)))

    def show_print(self) -> None:
        """Show what can be printed of the job."""
        self.flush()
        print_job(self._desk, self._job, self)

    def flush(self) -> None:
        """Keep what is typed, now."""
        self.pane.flush()

    def leave(self) -> None:
        """Go back to the list."""
        self.flush()
        self.left.emit()

    def _changed_elsewhere(self) -> None:
        if self.pane.key() and self.isVisible():
            view, could_not = self._read(), self.pane.may_not
            self.pane.see(view)
            if self.pane.may_not != could_not:  # somebody else works here now
                self._show_step(self.pane.key())
                return
            look = self.pane.look()
            self._take_flags(view, look)
            self._show_look(look)

    # -- acts on the job ------------------------------------------------------------------------

    def _after(self, said: str, onward: bool) -> None:  # noqa: FBT001 - a signal's signature
        key = self.steps.current()
        steps = self._read().steps
        place = next(i for i, step in enumerate(steps) if step.key == key)
        following = (step.key for step in steps[place:] if step.state == "open")
        target = next(following, key) if onward else key
        if target == key:
            self._show_step(key)
        else:
            self.steps.choose(target)
        self._into_form()
        self._notifier.changed.emit()
        self.said.emit(said)

    def _close_or_reopen(self) -> None:
        button = self.reopen_button if self.close_button.isHidden() else self.close_button
        button.click()

    def _close(self) -> None:
        self.flush()
        self.closing.close_job(self._job)

    # -- moving about ---------------------------------------------------------------------------

    def _into_form(self) -> None:
        if self.pane.key():
            self.pane.form().focus_first()

    def _between(self) -> None:
        inside = not self.steps.hasFocus() and self.steps.isVisible()
        self.steps.setFocus() if inside else self._into_form()

    def _arrange(self) -> None:
        width = self.width() / theme.em()
        beside = width >= SIDE_EMS
        self.steps.setVisible(width >= COLUMN_EMS)
        for button in (self.print_button, self.photos_button):
            button.setVisible(width >= COLUMN_EMS)
        self.steps.setFixedWidth(self.steps.sizeHint().width())
        for each in (self.previous, self.next):
            each.setVisible(width < COLUMN_EMS)
        self.turn.setVisible(not beside)
        turned = self.turn.isChecked() and not beside
        if turned != self._turned:  # the worked-out panel takes the form's place
            self._turned = turned
            if turned:
                self._middle.addWidget(self.side, 1)
            else:
                self._body.addWidget(self.side, 0, 2)
        self.side.setVisible(beside or turned)
        self.pane.setVisible(not turned)
        low = self.height() / theme.em() < LOW_EMS
        self.pane.set_low(low=low)
        self.flag_bar.set_low(low=low)
        self.purpose.setVisible(not low)
        self.headline.setVisible(not low)
        self.title.setProperty("weight", "head" if low else "title")
        self.title.style().polish(self.title)
        self._write_title(low=low)
        self._body.setColumnStretch(1, 5)
        self._body.setColumnStretch(2, 3 if beside else 0)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Beside or behind, by the width there is."""
        super().resizeEvent(event)
        self._arrange()
