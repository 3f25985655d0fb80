"""A register row in a dialog: made or changed through the same form as a step."""

from collections.abc import Callable, Mapping

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QLineEdit, QVBoxLayout, QWidget

from chargebench import rules
from chargebench.desk import Desk
from chargebench.errors import ChargebenchError, StepRefused
from chargebench.steps import REGISTERS
from chargebench.ui import theme
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.language import tr
from chargebench.ui.ruling import RulesSaid
from chargebench.ui.this_bench import ThisBench
from chargebench.words import say


class RegisterDialog(QDialog):
    """One row of a register."""

    def __init__(
        self,
        desk: Desk,
        register: str,
        row_id: str | None,
        parent: QWidget,
        preset: Mapping[str, str] | None = None,
    ) -> None:
        from chargebench.ui.formview import FormView  # a form's field can open this dialog

        super().__init__(parent)
        self._desk = desk
        self._register = register
        self._row_id = row_id
        self.saved_id = ""
        form = REGISTERS[register]
        verb = "Change" if row_id else "New"
        self.setWindowTitle(tr(say("{verb} {form}", verb=verb, form=form.title.lower())))
        self.setWindowModality(Qt.WindowModality.WindowModal)
        choices = {"rule_set": tuple(rules.names())} if register == "shop" else {}
        self.form = FormView(form, desk, choices=choices, taken="scfp")
        self.says = wrapped(weight="refusal")
        self.says.hide()
        self._asked = False
        self.id_field = QLineEdit(row_id or desk.next_id(register))
        self.id_field.setReadOnly(row_id is not None)
        if row_id is not None:
            self.id_field.setFocusPolicy(Qt.FocusPolicy.ClickFocus)
        self.id_field.setAccessibleName(tr(say("Id of the {register}", register=register)))
        layout = QVBoxLayout(self)
        head = wrapped(
            say(
                "{form} {row_id}",
                form=form.title,
                row_id="" if register == "shop" else row_id or "",
            ).strip(),
            "title",
        )
        layout.addWidget(head)
        layout.addWidget(wrapped(form.purpose, "faint"))
        if register != "shop":
            layout.addWidget(wrapped("Id, as on its label", "faint"))
            layout.addWidget(self.id_field)
        layout.addWidget(self.form, 1)
        layout.addWidget(self.says)
        layout.addWidget(self._buttons())
        room = parent.window().size()
        self.resize(min(theme.em() * 36, room.width()), min(theme.em() * 40, room.height() - 40))
        self.rules = RulesSaid(desk.folder) if register == "shop" else None
        if self.rules is not None:
            self.form.set_foot(self.rules)
            self.form.set_foot(ThisBench())
            self.rules.file_chosen.connect(lambda file: self.form.type_over({"rule_file": file}))
        self.form.put(desk.row(register, row_id) if row_id else preset or {})
        self._began = self.form.typed()
        self.form.edited.connect(lambda _: self._tell())
        self._tell()

    def _buttons(self) -> QDialogButtonBox:
        box = QDialogButtonBox()
        if self._register == "person" and self._row_id:
            key = box.addButton(tr("&Passphrase…"), QDialogButtonBox.ButtonRole.ActionRole)
            key.setAutoDefault(False)
            key.clicked.connect(lambda _: self._set_passphrase())
        save = box.addButton(tr("&Save"), QDialogButtonBox.ButtonRole.AcceptRole)
        save.setProperty("weight", "main")
        save.setToolTip(tr("Ctrl+Return"))
        save.setShortcut("Ctrl+Return")
        # Enter goes on to the next field; it must not save a half-typed row.
        save.setAutoDefault(False)
        cancel = box.addButton(tr("&Cancel"), QDialogButtonBox.ButtonRole.RejectRole)
        cancel.setAutoDefault(False)
        box.accepted.connect(self.save)
        box.rejected.connect(self.reject)
        self.save_button = save
        return box

    def _set_passphrase(self) -> None:
        from chargebench.ui.passphrase import SetDialog

        dialog = SetDialog(self._desk, str(self._row_id), self)
        dialog.accepted.connect(lambda: self._say("The passphrase is set."))
        dialog.finished.connect(dialog.deleteLater)
        dialog.open()

    def _tell(self, refused: Mapping[str, str] | None = None) -> None:
        typed = self.form.typed()
        if self.rules is not None and (refusal := self.rules.show_typed(typed)):
            refused = {"rule_file": refusal, **(refused or {})}
        self.form.tell(self._desk.check_row(self._register, typed), refused)

    def save(self) -> None:
        """Save the row; it becomes an entry with before and after."""
        row_id = self._row_id or self.id_field.text().strip()
        if not self._row_id and row_id in self._desk.rows(self._register):
            self._say(say("{row_id} is in the register already; choose another id.", row_id=row_id))
            return
        try:
            self.saved_id = self._desk.save_row(self._register, row_id, self.form.typed())
        except StepRefused as refusal:
            self._tell(refusal.fields)
            self._say(str(refusal))
            if refusal.fields:
                self.form.focus_path(next(iter(refusal.fields)))
            return
        except ChargebenchError as refusal:
            self._say(str(refusal))
            return
        self.accept()

    def reject(self) -> None:
        """Leave without saving; asks once where something typed would be lost."""
        if self.form.typed() != self._began and not self._asked:
            self._asked = True
            self._say("Not saved yet. Save it, or cancel once more to throw it away.")
            return
        super().reject()

    def _say(self, text: str) -> None:
        self.says.setText(tr(text))
        self.says.show()


def make_row(
    desk: Desk,
    register: str,
    parent: QWidget,
    made: Callable[[str], None],
    *,
    row_id: str | None = None,
    preset: Mapping[str, str] | None = None,
) -> RegisterDialog:
    """Open the dialog; `made` is called with the id once the row is saved."""
    dialog = RegisterDialog(desk, register, row_id, parent, preset)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.accepted.connect(lambda: made(dialog.saved_id))
    dialog.finished.connect(parent.window().activateWindow)  # not every desktop gives the keys back
    dialog.open()
    dialog.form.focus_first()
    return dialog
