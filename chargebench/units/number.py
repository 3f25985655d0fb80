"""Typed digits to an exact number, in either way to write decimals and thousands."""

import re
from decimal import Decimal
from fractions import Fraction

from chargebench.errors import ReadingRefused
from chargebench.units.tables import RULES, Kind
from chargebench.words import say

SPACES = " \u00a0\u2009\u202f"
_GROUPED = re.compile(rf"\d{{1,3}}(?:[{SPACES}]\d{{3}})+")


def quoted(text: str) -> str:
    """What was typed, in quotation marks and no longer than a refusal bears."""
    return say("“{typed}”", typed=text if len(text) <= 30 else text[:29] + "…")


def number_of(kind: Kind, typed: str, text: str) -> Fraction:
    """The exact number that was typed; `text` is all of it, for the refusal."""
    number = typed.replace("\u2212", "-")
    if "/" in number:
        return _inch_fraction(kind, number)
    sign = number[0] if number[0] in "+-" else ""
    digits = number.removeprefix(sign)
    whole, _, _ = digits.replace(",", ".").partition(".")
    if any(space in digits for space in SPACES):
        if not _GROUPED.fullmatch(whole):
            raise ReadingRefused(
                say(
                    "Expected one number in {text}; spaces may only part thousands, as in 4 312.5.",
                    text=quoted(text),
                )
            )
        digits = re.sub(rf"[{SPACES}]", "", digits)
    if digits.count(".") + digits.count(",") > 1:
        raise ReadingRefused(
            say(
                "Expected one decimal mark in {text}; write 1234.5 or 1234,5, without "
                "marks between thousands.",
                text=quoted(text),
            )
        )
    if re.fullmatch(r"[1-9]\d{0,2},\d{3}", digits):
        raise ReadingRefused(
            say(
                "{text} could be {whole} or {decimal}; write it without a comma.",
                text=quoted(text),
                whole=digits.replace(",", ""),
                decimal=digits.replace(",", "."),
            )
        )
    if not re.fullmatch(r"\d+[.,]?\d*|[.,]\d+", digits):
        raise ReadingRefused(
            say(
                "Expected {kind}, such as {example}; got {text}.",
                kind=kind.with_article,
                example=RULES[kind].example,
                text=quoted(text),
            )
        )
    return Fraction(Decimal(sign + digits.replace(",", ".")))


def _inch_fraction(kind: Kind, number: str) -> Fraction:
    top, bottom = (int(part) for part in number.split("/"))
    if kind is not Kind.LENGTH or bottom not in (2, 4, 8, 16, 32, 64):
        raise ReadingRefused(
            say(
                "Expected {kind}, such as {example}; fractions are read only for "
                "lengths, in halves to 64ths of an inch.",
                kind=kind.with_article,
                example=RULES[kind].example,
            )
        )
    return Fraction(top, bottom)
