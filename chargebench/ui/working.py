"""What Records works out on a thread of its own, by view."""

from collections.abc import Callable, Sequence
from typing import Any

from chargebench.desk import Desk
from chargebench.flags import Flag, worst_first
from chargebench.ui.errand import Errand
from chargebench.ui.record_columns import due_order
from chargebench.ui.records_page import DUE, FLAGS, LEAKS


def _flags(desk: Desk, errand: Errand) -> Sequence[Flag]:
    """Every flag, worst first; those found so far are shown meanwhile."""
    found: list[Flag] = []
    for part in desk.flags_in_parts():
        if errand.cancelled():
            break
        found = list(worst_first((*found, *part)))
        if part:
            errand.partly.emit(found)
    return found


WORK: dict[int, Callable[[Desk, Errand], Sequence[Any]]] = {
    FLAGS: _flags,
    LEAKS: lambda desk, _: desk.leak_rates(),
    DUE: lambda desk, _: due_order(desk.due()),
}
