"""Any form on the page: of a step, of a register, of stock work."""

from collections.abc import Mapping, Sequence

from PySide6.QtCore import QEvent, QObject, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent, QKeySequence, QResizeEvent
from PySide6.QtWidgets import QFrame, QScrollArea, QVBoxLayout, QWidget

from chargebench.desk import Desk
from chargebench.desk.views import TickLine
from chargebench.steps import Answers, Asks, Field, Form, Typed
from chargebench.steps.taken import checked
from chargebench.ui import theme
from chargebench.ui.fieldrow import FieldRow, KnowsRows
from chargebench.ui.language import tr
from chargebench.ui.lines import LinesField
from chargebench.ui.longtext import LongText
from chargebench.ui.pick import PickEdit
from chargebench.ui.registerdialog import make_row
from chargebench.ui.ticks import TicksField
from chargebench.ui.undo import TypedUndo

_TAB = Qt.FocusPolicy.TabFocus
BESIDE_EMS = 30  # narrower than this, labels stand above their editors

Shown = FieldRow | LinesField | TicksField


def mnemonics(labels: Sequence[str], taken: str = "") -> list[str]:
    """Labels with an Alt letter each, first letters of words first, as far as letters last."""
    used = set(taken.casefold())
    marked: list[str] = []
    for label in labels:
        starts = [i for i, c in enumerate(label) if c.isalpha() and (i == 0 or label[i - 1] == " ")]
        places = [*starts, *(i for i, c in enumerate(label) if c.isalpha() and i not in starts)]
        place = next((i for i in places if label[i].casefold() not in used), None)
        if place is None:
            marked.append(label.replace("&", "&&"))
            continue
        used.add(label[place].casefold())
        before, after = (part.replace("&", "&&") for part in (label[:place], label[place:]))
        marked.append(f"{before}&{after}")
    return marked


class FormView(QScrollArea):
    """The fields of a form in order; says each change, shows what it is told about them."""

    edited = Signal(dict)

    def __init__(
        self,
        form: Form,
        desk: KnowsRows,
        *,
        ticks: Mapping[str, Sequence[TickLine]] | None = None,
        choices: Mapping[str, tuple[str, ...]] | None = None,
        taken: str = "",
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.form = form
        self._desk = desk
        self._undo = TypedUndo()
        self._beside: bool | None = None
        self._locked = False
        self.setWidgetResizable(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        page = QWidget()
        page.setObjectName("page")
        self._column = QVBoxLayout(page)
        self._column.setSpacing(theme.em() // 3)
        self._column.setContentsMargins(2, 2, theme.em() // 2, theme.em())
        self._unseen: dict[str, str | Sequence[Mapping[str, str]]] = {}
        fields = [each for each in form.fields if each.shown]
        labels = mnemonics([tr(each.label) for each in fields], taken)
        self._fields: dict[str, Shown] = {}
        for field, label in zip(fields, labels, strict=True):
            self._fields[field.key] = self._make(field, label, ticks or {}, choices or {})
            self._column.addWidget(self._fields[field.key])
        self._column.addStretch()
        self.setWidget(page)
        self._watch()

    def _make(
        self,
        field: Field,
        label: str,
        ticks: Mapping[str, Sequence[TickLine]],
        choices: Mapping[str, tuple[str, ...]],
    ) -> Shown:
        if field.asks is Asks.TICKS:
            ticked = TicksField(field, self._desk, ticks.get(field.key, ()), label=label)
            ticked.edited.connect(lambda: self._changed(field.key))
            return ticked
        if field.asks is Asks.LINES:
            lines = LinesField(field, self._desk, label=label)
            lines.edited.connect(lambda: self._changed(field.key))
            lines.wants_new.connect(self._new_row)
            lines.grown.connect(self._watch)
            return lines
        row = FieldRow(field, self._desk, label=label, choices=choices.get(field.key, ()))
        row.edited.connect(lambda: self._changed(field.key))
        row.wants_new.connect(lambda register, r=row: self._new_row(register, r))
        return row

    def field(self, key: str) -> Shown:
        """What shows one field."""
        return self._fields[key]

    def row(self, key: str) -> FieldRow:
        """What shows one plain field."""
        shown = self._fields[key]
        assert isinstance(shown, FieldRow), key
        return shown

    def lines(self, key: str) -> LinesField:
        """What shows one repeated group."""
        shown = self._fields[key]
        assert isinstance(shown, LinesField), key
        return shown

    def typed(self) -> dict[str, str | list[dict[str, str]]]:
        """All that is typed; fields left empty are left out."""
        typed: dict[str, str | list[dict[str, str]]] = {}
        for key, shown in self._fields.items():
            given = shown.text() if isinstance(shown, FieldRow) else shown.typed()
            if given:
                typed[key] = given
        return checked({**typed, **self._unseen}) if self._unseen else typed

    def put(self, typed: Typed) -> None:
        """Show what was typed earlier."""
        self._put(typed)
        self._undo.start(self.typed())

    def set_foot(self, foot: QWidget) -> None:
        """Put something under the last field, inside what scrolls."""
        self._column.insertWidget(self._column.count() - 1, foot)

    def type_over(self, part: Typed) -> None:
        """Put a part of the form in a person's stead; counts as typed."""
        self._put({**self.typed(), **part})
        self._changed(next(iter(part)))

    def _put(self, typed: Typed) -> None:
        for key, shown in self._fields.items():
            given = typed.get(key, "")
            if isinstance(shown, FieldRow):
                shown.put(given if isinstance(given, str) else "")
            else:
                shown.put([] if isinstance(given, str) else given)
        unseen = (each.key for each in self.form.fields if not each.shown)
        self._unseen = {key: typed[key] for key in unseen if typed.get(key)}
        if self._locked:
            self.lock(locked=True)

    def tell(self, answers: Answers, refused: Mapping[str, str] | None = None) -> None:
        """Show what each text was understood as; `refused` adds what only signing refuses."""
        refusals = {**(refused or {}), **answers.refusals}
        for key, shown in self._fields.items():
            shown.tell(key, answers, refusals)

    def lock(self, *, locked: bool) -> None:
        """Only to be read."""
        self._locked = locked
        for shown in self._fields.values():
            shown.lock(locked=locked)

    def focus_first(self) -> None:
        """Begin at the first field."""
        for shown in self._fields.values():
            if editors := shown.editors():
                editors[0].setFocus(Qt.FocusReason.OtherFocusReason)
                return

    def focus_path(self, path: str) -> None:
        """Go to the field at a path such as `charge` or `lines[0].end`."""
        key, _, rest = path.partition("[")
        shown = self._fields.get(key)
        if shown is None:
            return
        editors = shown.editors()
        if isinstance(shown, LinesField) and "]." in rest:
            number, _, inner = rest.partition("].")
            if number.isdigit() and int(number) < len(shown):
                row = shown.line_rows(int(number)).get(inner)
                editors = row.editors() if row else editors
        if editors:
            editors[0].setFocus(Qt.FocusReason.OtherFocusReason)
            QTimer.singleShot(0, self, self._into_sight)

    def undo(self) -> None:
        """Take the last change back."""
        self._restore(self._undo.undo())

    def redo(self) -> None:
        """Make the change taken back again."""
        self._restore(self._undo.redo())

    def _restore(self, found: tuple[str, Typed] | None) -> None:
        if found is None or self._locked:
            return
        path, typed = found
        self._put(typed)
        self.edited.emit(self.typed())
        shown = self._fields[path.partition("[")[0]]
        if self.focusWidget() not in shown.editors():
            self.focus_path(path)

    def _changed(self, path: str) -> None:
        typed = self.typed()
        self._undo.changed(path, typed)
        self.edited.emit(typed)

    def _new_row(self, register: str, row: FieldRow) -> None:
        assert isinstance(self._desk, Desk), "a form with register picks needs an open shop"
        preset = {"kind": row.field.only} if row.field.only else {}
        make_row(self._desk, register, self, lambda row_id: self._made(row, row_id), preset=preset)

    def _made(self, row: FieldRow, row_id: str) -> None:
        if isinstance(row.editor, PickEdit):
            row.editor.reread()
            row.editor.type_over(row_id)
            row.editor.setFocus()

    def _watch(self) -> None:
        for shown in self._fields.values():
            for editor in shown.editors():
                editor.removeEventFilter(self)
                editor.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802 - Qt's name
        """Undo in every editor is the form's; the field typed in is always in sight."""
        if event.type() is QEvent.Type.FocusIn and isinstance(watched, QWidget):
            QTimer.singleShot(0, self, lambda: self._into_sight())
        if isinstance(event, QKeyEvent) and event.type() is QEvent.Type.KeyPress:
            if event.matches(QKeySequence.StandardKey.Undo):
                self.undo()
                return True
            if event.matches(QKeySequence.StandardKey.Redo):
                self.redo()
                return True
            if self._takes_line_away(event):
                return True
        return super().eventFilter(watched, event)

    def _takes_line_away(self, event: QKeyEvent) -> bool:
        held = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
        if event.key() != Qt.Key.Key_Delete or event.modifiers() != held:
            return False
        groups = [each for each in self._fields.values() if isinstance(each, LinesField)]
        return any(each.remove_focused() for each in groups)

    def _into_sight(self) -> None:
        focused = self.focusWidget()
        if focused is not None and self.isAncestorOf(focused):
            self.ensureWidgetVisible(focused, theme.em(), theme.em() * 2)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Enter goes on to the next field."""
        enter = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter)
        if enter and not event.modifiers() and not isinstance(self.focusWidget(), LongText):
            self._next_editor()
            return
        super().keyPressEvent(event)

    def _next_editor(self) -> None:
        editors = [editor for shown in self._fields.values() for editor in shown.editors()]
        focused = self.focusWidget()
        place = editors.index(focused) if focused in editors else len(editors)
        # The second button of a yes or no is not stopped at; nor is what is hidden.
        stops = (
            each
            for each in editors[place + 1 :]
            if each.isVisible() and each.isEnabled() and each.focusPolicy() & _TAB
        )
        following = next(stops, None)
        if following is not None:
            following.setFocus(Qt.FocusReason.TabFocusReason)
        else:
            self.focusNextChild()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Labels beside or above, by the width there is."""
        super().resizeEvent(event)
        beside = self.viewport().width() >= theme.em() * BESIDE_EMS
        for shown in self._fields.values():
            shown.lay_out(beside=beside)
