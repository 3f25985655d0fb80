"""A said text is its English wording everywhere, and another language's where it is looked up."""

import pickle

from hypothesis import given
from hypothesis import strategies as st

from chargebench.ledger.entry import payload_text
from chargebench.words import Measured, Said, say, translated

GERMAN = {
    "Over nameplate by {over} in {what}.": "{what}: {over} über der Angabe auf dem Typenschild.",
    "the freezer": "der Froster",
}


def _german(text: str) -> str:
    return translated(text, lambda key: GERMAN.get(key, key), ",")


def test_that_a_said_text_is_its_english_wording_wherever_it_is_stored() -> None:
    said = say("Over nameplate by {over} in {what}.", over=Measured("3.4 g"), what="the freezer")
    assert said == "Over nameplate by 3.4 g in the freezer."
    assert payload_text({"says": said}) == payload_text({"says": said[:]})
    kept = pickle.loads(pickle.dumps(said))  # noqa: S301  made in the line before
    assert isinstance(kept, Said)
    assert isinstance(said, Said)
    assert kept.values == said.values


def test_that_another_language_may_order_the_values_otherwise_and_marks_decimals_its_way() -> None:
    said = say("Over nameplate by {over} in {what}.", over=Measured("3.4 g"), what="the freezer")
    assert _german(said) == "der Froster: 3,4 g über der Angabe auf dem Typenschild."


def test_that_what_is_in_no_dictionary_stays_as_it_is() -> None:
    assert _german("C-014 holds 3.5 oz") == "C-014 holds 3.5 oz"


@given(st.text(), st.integers())
def test_that_values_are_never_read_as_templates(value: str, number: int) -> None:
    said = say("{value} {number}", value=value, number=number)
    assert _german(say("{said}!", said=said)) == f"{value} {number}!"
