"""The bench display over a weigh-in form: what is typed there stands in the form."""

from PySide6.QtWidgets import QWidget

from chargebench.desk import Desk
from chargebench.desk.views import JobView
from chargebench.ui.bench_display import BenchDisplay
from chargebench.ui.formview import FormView
from chargebench.ui.mass_view import MassView, mass_view


class Weighing:
    """The last line of a weigh-in, typed through the bench display."""

    def __init__(self, desk: Desk, view: JobView, form: FormView) -> None:
        self._desk = desk
        self._view = view
        self._form = form

    def _lines(self) -> list[dict[str, str]]:
        given = self._form.typed().get("lines", [])
        lines = [dict(line) for line in given] if isinstance(given, list) else []
        return lines or [{}]

    def _with(self, **texts: str) -> list[dict[str, str]]:
        *before, last = self._lines()
        return [*before, {**last, **texts}]

    def _look(self, start: str, live: str) -> MassView | None:
        typed = {**self._form.typed(), "lines": self._with(start=start, end=live)}
        look = self._desk.look(self._view.id, self._form.form.key, typed)
        return mass_view(look.worked, self._desk.units, self._view.case, look.answers)

    def display(self, parent: QWidget) -> BenchDisplay:
        """Make the display; its start and end readings are typed into the form."""
        last = self._lines()[-1]
        cylinder, scale = last.get("cylinder", ""), last.get("scale", "")
        refrigerant = self._view.case.refrigerant
        name = self._desk.label("equipment", self._view.equipment_id)
        display = BenchDisplay(
            self._look,
            head=f"{refrigerant.name if refrigerant else ''} into {name}".strip(),
            place=" on ".join(each for each in (cylinder, scale) if each),
            start=last.get("start", ""),
            parent=parent,
        )
        display.started.connect(
            lambda text: self._form.type_over({"lines": self._with(start=text)})
        )
        display.ended.connect(lambda text: self._form.type_over({"lines": self._with(end=text)}))
        return display
