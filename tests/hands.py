"""A person at the keyboard: presses keys, and looks where the focus is; never reaches inside."""

from collections.abc import Mapping, Sequence

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from chargebench.steps import Typed
from chargebench.ui.fieldrow import FieldRow
from chargebench.ui.fields import Choice
from chargebench.ui.formview import FormView
from chargebench.ui.job import JobPage
from chargebench.ui.lines import LinesField
from chargebench.ui.longtext import LongText
from chargebench.ui.ticks import TicksField
from chargebench.ui.window import MainWindow

CTRL = Qt.KeyboardModifier.ControlModifier
SHIFT = Qt.KeyboardModifier.ShiftModifier
ALT = Qt.KeyboardModifier.AltModifier
BARE = Qt.KeyboardModifier.NoModifier
ALL = "all"  # stands for the ticks of a list where every line is ticked
PRESSES_MOST = 400  # no page has as many stops as this


def focused() -> QWidget:
    """What has the focus now."""
    widget = QApplication.focusWidget()
    assert widget is not None, "nothing has the focus"
    return widget


class Hands:
    """Types into whatever has the focus."""

    def __init__(self, window: MainWindow) -> None:
        self.window = window

    def type(self, text: str, *, then: Qt.Key | None = None) -> None:
        """Type a text, key by key."""
        QTest.keyClicks(focused(), text)
        if then is not None:
            self.press(then)

    def press(self, key: Qt.Key, held: Qt.KeyboardModifier = BARE) -> None:
        """Press one key."""
        QTest.keyClick(focused(), key, held)

    @property
    def page(self) -> JobPage:
        """The job looked at."""
        return self.window.bench.job_page()

    @property
    def form(self) -> FormView:
        """The form of the step looked at."""
        return self.page.pane.form()

    def to_step(self, key: str) -> None:
        """Go down the steps to one."""
        while self.page.steps.current() != key:
            before = self.page.steps.current()
            self.press(Qt.Key.Key_Down, CTRL)
            assert self.page.steps.current() != before, key

    def to(self, wanted: QWidget, key: Qt.Key = Qt.Key.Key_Tab) -> None:
        """Press Tab until the focus is where it is wanted."""
        for _ in range(PRESSES_MOST):
            if wanted.hasFocus():
                return
            self.press(key)
        raise AssertionError(f"no key reaches {wanted.accessibleName() or wanted}")

    def push(self, button: QWidget) -> None:
        """Go to a button and press it."""
        self.to(button)
        self.press(Qt.Key.Key_Space)

    def sign(self) -> None:
        """Sign what stands in the form."""
        self.press(Qt.Key.Key_Return, CTRL)

    def fill(self, form: FormView, typed: Typed) -> None:
        """Fill a form in its order, going on with Enter; lists are ticked with Space."""
        for field in form.form.fields:
            given = typed.get(field.key)
            if given is None:
                continue
            shown = form.field(field.key)
            if isinstance(shown, TicksField):
                assert given == ALL, field.key
                self._tick_all(shown)
            elif isinstance(shown, LinesField):
                assert not isinstance(given, str)
                self._fill_lines(shown, given)
            else:
                assert isinstance(given, str)
                self._enter(shown, given)

    def _fill_lines(self, shown: LinesField, lines: Sequence[Mapping[str, str]]) -> None:
        for number, line in enumerate(lines):
            if number >= len(shown):
                self.push(shown.add)
            for field in shown.field.fields:
                if field.key in line:
                    self._enter(shown.line_rows(number)[field.key], line[field.key])

    def _enter(self, row: FieldRow, text: str) -> None:
        editors = row.editors()
        self._on_to(editors)
        if isinstance(row.editor, Choice):
            self._choose(row.editor, text)
        elif len(editors) > 1:
            self.type(text[0])  # y or n
        else:
            self.press(Qt.Key.Key_A, CTRL)
            self.type(text)

    def _on_to(self, editors: Sequence[QWidget]) -> None:
        for _ in range(PRESSES_MOST):
            if any(each.hasFocus() for each in editors):
                return
            in_text = isinstance(focused(), LongText)  # where Enter begins a line
            self.press(Qt.Key.Key_Tab if in_text else Qt.Key.Key_Return)
        raise AssertionError(f"Enter never comes to {editors[0].accessibleName()}")

    def _choose(self, choice: Choice, text: str) -> None:
        self.type(text.partition(" ")[0].rstrip(","))
        for _ in range(choice.count()):
            if choice.text() == text:
                return
            self.press(Qt.Key.Key_Down)
        raise AssertionError(f"{text} is not offered")

    def _tick_all(self, shown: TicksField) -> None:
        for box in shown.editors():
            self._on_to([box])
            self.press(Qt.Key.Key_Space)
