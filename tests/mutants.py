"""Small wrong changes to a module, one at a time, for `tests.mutation`.

Most changes are mutmut's own: numbers, operators, comparisons at their boundary, True and False,
None in place of what is assigned, both arms of a conditional. Added are those that turn a decision
round. Text is left alone, and so is what stands in a message: it is for people to judge.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import libcst as cst
from libcst.metadata import MetadataWrapper, PositionProvider
from mutmut.mutation import mutators

_LEFT_OUT = {
    mutators.operator_string,
    mutators.operator_dict_arguments,
    mutators.operator_arg_removal,
    mutators.operator_symmetric_string_methods_swap,
    mutators.operator_unsymmetrical_string_methods_swap,
}
# Types, texts and decorators (the dimensions a function asks for are text) are not mutated.
_UNTOUCHED = (cst.Annotation, cst.Decorator, cst.FormattedString, cst.Import, cst.ImportFrom)
_OTHER_WAY: dict[Any, Any] = {
    cst.LessThan: cst.GreaterThanEqual,
    cst.LessThanEqual: cst.GreaterThan,
    cst.GreaterThan: cst.LessThanEqual,
    cst.GreaterThanEqual: cst.LessThan,
}
_OTHER_CALL = {
    "min": "max",
    "max": "min",
    "any": "all",
    "all": "any",
    "floor": "ceil",
    "ceil": "floor",
}
_SHOWN = 70  # characters of the code before and after


@dataclass(frozen=True, slots=True)
class Mutant:
    """A module with one change in it, and where the change is."""

    module: Path
    first: int  # line on which the statement begins
    last: int  # line on which the change ends
    in_function: bool
    kind: str
    before: str
    after: str
    code: str


def _always_or_never(node: Any) -> Iterator[Any]:
    for word in ("True", "False"):
        yield node.with_changes(test=cst.Name(word))


def _nothing(node: Any) -> Iterator[Any]:
    if node.value is not None and not node.value.deep_equals(cst.Name("None")):
        yield node.with_changes(value=cst.Name("None"))


def _other_way(node: Any) -> Iterator[Any]:
    if type(node.operator) in _OTHER_WAY:
        yield node.with_changes(operator=_OTHER_WAY[type(node.operator)]())


def _one_less(node: Any) -> Iterator[Any]:
    less = repr(node.evaluated_value - 1)
    yield cst.parse_expression(f"({less})" if less.startswith("-") else less)


def _other_call(node: Any) -> Iterator[Any]:
    of = node.func.attr if isinstance(node.func, cst.Attribute) else node.func
    if isinstance(of, cst.Name) and of.value in _OTHER_CALL:
        yield node.with_deep_changes(of, value=_OTHER_CALL[of.value])


_OPERATORS: list[tuple[Any, Callable[[Any], Any]]] = [
    *(
        (kind, operator)
        for kind, operator in mutators.mutation_operators
        if operator not in _LEFT_OUT
    ),
    ((cst.If, cst.While, cst.CompIf), _always_or_never),
    (cst.Return, _nothing),
    (cst.ComparisonTarget, _other_way),
    ((cst.Integer, cst.Float), _one_less),
    (cst.Call, _other_call),
]


def _exports(node: Any) -> bool:
    return isinstance(node, cst.Assign) and node.targets[0].target.deep_equals(cst.Name("__all__"))


def _says(node: Any) -> bool:
    """Whether it is a sentence put together from a template, as an f-string is."""
    return isinstance(node, cst.Call) and node.func.deep_equals(cst.Name("say"))


def _walk(node: Any, statement: Any, *, in_function: bool) -> Iterator[tuple[Any, Any, bool]]:
    """Every node that may change, its statement, and whether it runs in a function."""
    if isinstance(node, _UNTOUCHED) or _exports(node) or _says(node):
        return
    if isinstance(node, cst.BaseStatement | cst.BaseSmallStatement):
        statement = node
    yield node, statement, in_function
    for child in node.children:
        inside = in_function or (isinstance(node, cst.FunctionDef) and child is node.body)
        yield from _walk(child, statement, in_function=inside)


def _shown(code: str) -> str:
    line = " ".join(code.split())
    return line if len(line) <= _SHOWN else f"{line[: _SHOWN - 1]}…"


def mutants(module: Path) -> Iterator[Mutant]:
    """Every mutant of a module, in the order of its lines."""
    wrapper = MetadataWrapper(cst.parse_module(module.read_text("utf-8")))
    tree, places = wrapper.module, wrapper.resolve(PositionProvider)
    for node, statement, in_function in _walk(tree, None, in_function=False):
        for kinds, operator in _OPERATORS:
            if not isinstance(node, kinds):
                continue
            for changed in operator(node):
                whole = statement or node
                before, after = tree.code_for_node(node), tree.code_for_node(changed)
                if isinstance(node, cst.If | cst.While):  # its head says it all
                    before, after = before.split("\n")[0], after.split("\n")[0]
                yield Mutant(
                    module=module,
                    first=places[whole].start.line,
                    last=places[node.test if hasattr(node, "test") else node].end.line,
                    in_function=in_function,
                    kind=operator.__name__.removeprefix("operator_").strip("_"),
                    before=_shown(before),
                    after=_shown(after),
                    code=tree.deep_replace(node, changed).code,
                )
