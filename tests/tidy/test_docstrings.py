"""Rule 8: what computes says of each quantity its unit, and where the formula comes from."""

import ast
import inspect
import re
from pathlib import Path

from chargebench.sources import SOURCES
from tests.tidy import tree

LAYERS = ("chargebench/calc", "chargebench/fluids", "chargebench/rules")
UNIT = re.compile(r"\[[^\]]+\]")


def _public(body: list[ast.stmt]) -> list[tree.Function]:
    return [n for n in body if isinstance(n, tree.Function) and not n.name.startswith("_")]


def _is_property(function: tree.Function) -> bool:
    decorators = [ast.unparse(decorator) for decorator in function.decorator_list]
    return bool({"property", "cached_property", "functools.cached_property"} & set(decorators))


def _computing() -> list[tuple[Path, tree.Function]]:
    """Public functions of the layers with a quantity among arguments or result."""
    return [
        (path, function)
        for path in tree.sources(*LAYERS)
        for function in _public(tree.parsed(path).body)
        if "Quantity" in ast.unparse(function.args) + ast.unparse(function.returns or ast.Name(""))
        and not _is_property(function)
    ]


def _sections(docstring: str) -> dict[str, str]:
    """The sections of a numpy docstring by their heads."""
    parts = re.split(r"^(\w[\w ]*)\n-{3,}\n", docstring, flags=re.MULTILINE)
    return dict(zip(parts[1::2], parts[2::2], strict=True))


def _arguments(function: tree.Function) -> list[ast.arg]:
    listed = [*function.args.posonlyargs, *function.args.args, *function.args.kwonlyargs]
    return [argument for argument in listed if argument.arg not in ("self", "cls")]


def _entries(section: str) -> dict[str, str]:
    """Names described in a Parameters section, with what stands behind the colon."""
    described: dict[str, str] = {}
    for names, kind in re.findall(r"^(\S[^:\n]*?) *: *(.*)$", section, flags=re.MULTILINE):
        described |= dict.fromkeys(re.split(r", *", names), kind)
    return described


def _faults(function: tree.Function) -> list[str]:
    sections = _sections(inspect.cleandoc(ast.get_docstring(function) or ""))
    described = _entries(sections.get("Parameters", ""))
    faults = []
    for argument in _arguments(function):
        kind = described.get(argument.arg)
        annotation = ast.unparse(argument.annotation) if argument.annotation else ""
        if kind is None:
            faults.append(f"{argument.arg} is not under Parameters")
        elif "Quantity" in annotation and not UNIT.search(kind):
            faults.append(f"{argument.arg} has no [unit]")
    returned = ast.unparse(function.returns) if function.returns else "None"
    if returned != "None" and "Returns" not in sections and "Yields" not in sections:
        faults.append("no Returns")
    elif re.fullmatch(r"Quantity( \| None)?", returned) and not UNIT.search(sections["Returns"]):
        faults.append("Returns has no [unit]")
    cited = re.findall(r"^(\S+?)[,;.:]?(?:\s|$)", sections.get("Source", ""), flags=re.MULTILINE)
    if not cited or cited[0] not in SOURCES:
        faults.append(f"Source cites {cited[0] if cited else 'nothing'}, no key of sources.py")
    return faults


def test_that_what_computes_names_units_and_sources() -> None:
    faults = [
        f"{tree.name(path)}:{function.lineno} {function.name}: {fault}"
        for path, function in _computing()
        for fault in _faults(function)
    ]
    assert _computing()
    assert faults == []
