"""A reading taken into the field that is typed in, marked as read."""

from dataclasses import dataclass

from chargebench.steps import Field, Typed
from chargebench.steps.taken import AsTyped, with_taken
from chargebench.ui.fieldrow import FieldRow
from chargebench.ui.formview import FormView
from chargebench.ui.lines import LinesField
from chargebench.units import Kind


@dataclass(frozen=True, slots=True)
class Place:
    """A field of a form, and where in the typed text it stands."""

    path: str
    field: Field


def _places(form: FormView) -> list[tuple[Place, FieldRow]]:
    found: list[tuple[Place, FieldRow]] = []
    for field in form.form.fields:
        if not field.shown:
            continue
        shown = form.field(field.key)
        if isinstance(shown, FieldRow):
            found.append((Place(field.key, field), shown))
        elif isinstance(shown, LinesField):
            for number in range(len(shown)):
                for row in shown.line_rows(number).values():
                    path = f"{field.key}[{number}].{row.field.key}"
                    found.append((Place(path, row.field), row))
    return found


def focused_place(form: FormView, kind: Kind) -> Place | None:
    """The field typed in, where a reading of a kind belongs."""
    for place, row in _places(form):
        if row.editor.hasFocus() and place.field.kind is kind:
            return place
    return None


def first_empty(form: FormView, kind: Kind) -> Place | None:
    """The first field of a kind that is still empty."""
    for place, row in _places(form):
        if place.field.kind is kind and not row.text().strip():
            return place
    return None


def take(form: FormView, place: Place, text: str, source: str) -> None:
    """Put a reading into a field in a person's stead, and keep where it is from."""
    typed = _put(form.typed(), place.path, text)
    whole = with_taken(typed, source, {place.path: text})
    key = place.path.partition("[")[0]
    form.type_over({key: whole[key], "taken": whole["taken"]})
    form.focus_path(place.path)


def _put(typed: Typed, path: str, text: str) -> AsTyped:
    key, _, rest = path.partition("[")
    whole: AsTyped = {
        each: given if isinstance(given, str) else [dict(line) for line in given]
        for each, given in typed.items()
    }
    if not rest:
        whole[key] = text
        return whole
    number, _, inner = rest.partition("].")
    given = whole.get(key, [])
    lines = [] if isinstance(given, str) else given
    lines.extend({} for _ in range(int(number) + 1 - len(lines)))
    lines[int(number)][inner] = text
    whole[key] = lines
    return whole
