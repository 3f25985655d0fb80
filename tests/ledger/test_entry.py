"""What an entry and a transfer may hold, and the bytes of them that are hashed and chained."""

import hashlib
import json
import sqlite3
from datetime import UTC, datetime
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench.errors import (
    PostingRefused,
)
from chargebench.ledger import Ledger, NewEntry, Transfer, mass_words
from chargebench.ledger.entry import canonical, payload_text
from tests.ledger import books
from tests.ledger.books import BY, CYLINDER, NOON


def test_that_numbers_run_without_a_gap_and_hashes_follow(shop: Ledger) -> None:
    books.whole_job(shop)
    entries = list(shop.entries())
    assert [entry.number for entry in entries] == list(range(1, len(entries) + 1))
    assert entries[0].previous_hash == "00" * 32
    assert [e.previous_hash for e in entries[1:]] == [e.hash for e in entries[:-1]]
    assert shop.head() == (len(entries), entries[-1].hash)


def test_that_anybody_can_recompute_the_chain_with_common_tools(filed: Ledger) -> None:
    books.whole_job(filed)
    filed.close()
    tool = sqlite3.connect(filed.path)
    previous = bytes(32)
    for row in tool.execute(
        "SELECT position, hash, id, bench, number, kind, job, happened_at, recorded_at, "
        '"by", payload FROM entry ORDER BY number'
    ).fetchall():
        lines = tool.execute(
            "SELECT source, target, refrigerant, mass_mg, as_typed FROM transfer "
            "WHERE entry = ? ORDER BY line",
            row[:1],
        ).fetchall()
        content = [1, *row[2:10], json.loads(row[10]), lines]
        text = json.dumps(content, ensure_ascii=False, separators=(",", ":"), sort_keys=True)
        previous = hashlib.sha256(previous + text.encode()).digest()
        assert previous == row[1]
    tool.close()


@pytest.mark.parametrize(
    ("source", "target", "refrigerant", "mass_mg", "says"),
    [
        ("nowhere", "supplier", "R290", 1, "not a place"),
        ("cylinder:", "supplier", "R290", 1, "not a place"),
        ("cylinder:C\n1", "supplier", "R290", 1, "not a place"),
        ("supplier", "supplier", "R290", 1, "Both ends"),
        ("supplier", CYLINDER, "R290", -1, "not a mass"),
        ("supplier", CYLINDER, "R290", 10**12 + 1, "not a mass"),
        ("supplier", CYLINDER, "R290", True, "not a mass"),
        ("supplier", CYLINDER, "", 1, "no refrigerant"),
    ],
)
def test_that_a_transfer_names_two_places_a_refrigerant_and_a_mass(
    source: str, target: str, refrigerant: str, mass_mg: int, says: str
) -> None:
    with pytest.raises(PostingRefused, match=says):
        Transfer(source, target, refrigerant, mass_mg, "1 mg")


@pytest.mark.parametrize("value", [1.5, float("nan"), b"x", NOON, {1: "a"}])
def test_that_nothing_encoders_disagree_on_is_hashed(shop: Ledger, value: Any) -> None:
    with pytest.raises(TypeError, match=r"hashed|not text"):
        shop.post(NewEntry("weighed", BY, NOON, {"value": [value]}))
    assert shop.head()[0] == 0


@pytest.mark.parametrize("value", ["\ud800", 2**63])
def test_that_what_can_not_be_stored_is_refused(shop: Ledger, value: Any) -> None:
    with pytest.raises(PostingRefused, match=r"no file can store|too large"):
        shop.post(NewEntry("weighed", BY, NOON, {"value": value}))
    assert shop.head()[0] == 0


def test_that_a_deep_payload_is_refused() -> None:
    deep: Any = "bottom"
    for _ in range(60):
        deep = [deep]
    with pytest.raises(PostingRefused, match="50 levels"):
        payload_text({"value": deep})


def test_that_a_moment_without_a_zone_is_a_bug() -> None:
    naive = datetime(2026, 3, 2, tzinfo=UTC).replace(tzinfo=None)
    with pytest.raises(AssertionError, match="zone"):
        NewEntry("weighed", BY, naive, {})


PLAIN = st.recursive(
    st.none() | st.booleans() | st.integers(-(2**63), 2**63 - 1) | st.text(),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(), inner, max_size=3),
    max_leaves=8,
)


# The standard library's encoder gives the same bytes, so anybody's tools can check ours.
@given(st.dictionaries(st.text(), PLAIN, max_size=4))
def test_that_canonical_bytes_are_what_a_common_encoder_writes(payload: dict[str, Any]) -> None:
    text = json.dumps(payload, ensure_ascii=False, separators=(",", ":"), sort_keys=True)
    assert payload_text(payload) == text
    assert canonical(["id", "B", 1, "k", None, "h", "r", "by", text], []).decode() == (
        f'[1,"id","B",1,"k",null,"h","r","by",{text},[]]'
    )


@pytest.mark.parametrize(
    ("mass_mg", "words"),
    [(0, "0 g"), (85_000, "85 g"), (-300, "-0.3 g"), (999_999, "999.999 g"), (1_500_000, "1.5 kg")],
)
def test_that_a_mass_is_said_exactly(mass_mg: int, words: str) -> None:
    assert mass_words(mass_mg) == words
