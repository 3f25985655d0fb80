"""Every figure of a rule set in one list, for the screen and the sheet that show them."""

import dataclasses
from collections.abc import Iterator, Mapping

from chargebench.rules.figure import Cited
from chargebench.rules.model import RuleSet


def figures(rule_set: RuleSet) -> tuple[Cited, ...]:
    """Every cited figure of a rule set.

    Parameters
    ----------
    rule_set : RuleSet
        A loaded rule set.

    Returns
    -------
    tuple of Cited
        In the order of the model; each with key, text, reference, mark and effective date.

    Source
    ------
    Each figure names its own.
    """
    return tuple(_walk(rule_set))


def _walk(value: object) -> Iterator[Cited]:
    if isinstance(value, Cited):
        yield value
    elif isinstance(value, tuple):
        for one in value:
            yield from _walk(one)
    elif isinstance(value, Mapping):
        yield from _walk(tuple(value.values()))
    elif dataclasses.is_dataclass(value):
        for field in dataclasses.fields(value):
            yield from _walk(getattr(value, field.name))
