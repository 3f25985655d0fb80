"""The bench display over a weigh-in form: what is typed or read there stands in the form."""

from collections.abc import Callable

from PySide6.QtWidgets import QWidget

from chargebench.desk import Desk
from chargebench.desk.views import JobView, Look
from chargebench.flags import worst_first
from chargebench.instruments.listening import Live
from chargebench.steps.taken import with_taken
from chargebench.ui.bench_display import BenchDisplay
from chargebench.ui.bench_zone import Seen
from chargebench.ui.formview import FormView
from chargebench.ui.mass_view import mass_view
from chargebench.words import say


class Weighing:
    """The last line of a weigh-in, typed or read through the bench display."""

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

    def _look(self, start: str, live: str) -> Seen:
        typed = {**self._form.typed(), "lines": self._with(start=start, end=live)}
        look = self._desk.look(self._view.id, self._form.form.key, typed)
        view = mass_view(look.worked, self._desk.units, self._view.case, look.answers)
        return Seen(view, self._stops(look))

    def _stops(self, look: Look) -> tuple[str, ...]:
        """Stop flags of this weigh-in as it stands, and those the job has from elsewhere."""
        mine = {(flag.key, flag.about) for flag in look.flags}
        others = (
            flag
            for flag in self._view.flags
            if (flag.key, flag.about) not in mine and flag.about != f"step:{self._form.form.key}"
        )
        flags = worst_first((*look.flags, *others))
        return tuple(flag.says for flag in flags if flag.level == "stop")

    def _take(self, field: str, text: str, source: str) -> None:
        lines = self._with(**{field: text})
        typed = {**self._form.typed(), "lines": lines}
        path = f"lines[{len(lines) - 1}].{field}"
        whole = with_taken(typed, source, {path: text} if source else {})
        self._form.type_over({"lines": whole["lines"], "taken": whole.get("taken", [])})

    def display(
        self, parent: QWidget, live: Callable[[], Live] | None = None, source: str = ""
    ) -> BenchDisplay:
        """Make the display; its start and end readings go into the form."""
        last = self._lines()[-1]
        cylinder, scale = last.get("cylinder", ""), last.get("scale", "")
        refrigerant = self._view.case.refrigerant
        name = self._desk.label("equipment", self._view.equipment_id)
        where = " on ".join(each for each in (cylinder, scale) if each)
        display = BenchDisplay(
            self._look,
            head=say(
                "{refrigerant} into {name}",
                refrigerant=refrigerant.name if refrigerant else "",
                name=name,
            ).strip(),
            place=say("{where}, live", where=where) if live is not None else where,
            start=last.get("start", ""),
            live=live,
            source=source,
            parent=parent,
        )
        display.started.connect(lambda text, read: self._take("start", text, read))
        display.ended.connect(lambda text, read: self._take("end", text, read))
        return display
