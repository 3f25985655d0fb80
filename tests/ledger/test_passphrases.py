"""What unlocks a signature: set, tried, counted, waited for; and what of it is nowhere."""

from datetime import UTC, datetime, timedelta
from itertools import pairwise
from pathlib import Path

import pytest

from chargebench.errors import PassphraseRefused
from chargebench.ledger import Ledger, passphrases
from tests.ledger.books import BY, NOON, later

WORDS = "quay street 1948"


def _set(shop: Ledger, words: str = WORDS) -> None:
    shop.set_passphrase("P-1", words, by=BY, happened_at=NOON)


def _wrong(shop: Ledger, at: datetime, words: str = "0000") -> int:
    """A wrong try; the seconds then to wait."""
    with pytest.raises(PassphraseRefused) as refusal:
        shop.try_passphrase("P-1", words, at)
    return refusal.value.wait_seconds


def test_that_only_the_passphrase_set_is_taken(shop: Ledger) -> None:
    _set(shop)
    assert shop.passphrase_holders() == {"P-1"}
    shop.try_passphrase("P-1", WORDS, NOON)
    with pytest.raises(PassphraseRefused, match="not the passphrase"):
        shop.try_passphrase("P-1", WORDS.upper(), NOON)
    with pytest.raises(PassphraseRefused, match="No passphrase was set"):
        shop.try_passphrase("P-2", WORDS, NOON)


def test_that_an_accent_may_be_typed_in_either_way(shop: Ledger) -> None:
    # Unicode Standard Annex 15, figure 3: U+00E9 and U+0065 U+0301 are canonically equivalent.
    _set(shop, "caf\u00e9")
    shop.try_passphrase("P-1", "cafe\u0301", NOON)
    with pytest.raises(PassphraseRefused):
        shop.try_passphrase("P-1", "cafe", NOON)


@pytest.mark.parametrize("words", ["", "123", "x" * 201])
def test_that_too_short_or_too_long_is_refused_and_nothing_set(shop: Ledger, words: str) -> None:
    with pytest.raises(PassphraseRefused, match="4 to 200 characters"):
        _set(shop, words)
    assert (shop.passphrase_holders(), shop.head()[0]) == (frozenset(), 0)


def test_that_the_entry_says_who_and_when_and_the_file_holds_argon2id_only(
    filed: Ledger,
) -> None:
    _set(filed)
    (entry,) = filed.entries()
    assert (entry.kind, entry.by) == ("passphrase-set", BY)
    assert set(entry.payload) == {"person", "set_at"}
    assert datetime.fromisoformat(entry.payload["set_at"]) == NOON
    path = filed.path
    filed.close()
    content = path.read_bytes() + b"".join(
        each.read_bytes() for each in path.parent.glob(f"{path.name}-*") if each.is_file()
    )
    assert WORDS.encode() not in content
    # RFC 9106: the first recommended variant is Argon2id; its PHC string begins with its name.
    assert b"$argon2id$" in content


def test_that_two_people_with_one_passphrase_have_different_hashes() -> None:
    assert passphrases.hashed(WORDS) != passphrases.hashed(WORDS)


def test_that_the_wait_after_wrong_tries_doubles_and_ends(shop: Ledger) -> None:
    _set(shop)
    at, waits = NOON, []
    for _ in range(12):
        waits.append(_wrong(shop, at))
        at += timedelta(seconds=waits[-1])
    assert waits[:2] == [0, 0]
    growing = [wait for wait in waits if wait]
    assert growing[0] > 0
    for one, next_one in pairwise(growing):
        assert next_one in (2 * one, 900)
    assert growing[-1] == 900
    shop.try_passphrase("P-1", WORDS, at)
    assert _wrong(shop, at) == 0  # a right one clears the count


def test_that_during_the_wait_even_the_right_one_is_not_looked_at(shop: Ledger) -> None:
    _set(shop)
    for _ in range(3):
        wait = _wrong(shop, NOON)
    one_left = NOON + timedelta(seconds=wait - 1)
    with pytest.raises(PassphraseRefused, match=r"Try again in 1 second\."):
        shop.try_passphrase("P-1", WORDS, one_left)
    shop.try_passphrase("P-1", WORDS, NOON + timedelta(seconds=wait))


def test_that_opening_the_file_again_does_not_spare_the_wait(tmp_path: Path) -> None:
    path = tmp_path / "larkmoor.chargebench"
    with Ledger.create(path) as shop:
        _set(shop)
        for _ in range(3):
            wait = _wrong(shop, NOON)
    with Ledger.open(path) as again:
        assert 0 < _wrong(again, NOON, WORDS) <= wait


def test_that_a_try_counts_also_when_the_program_ends_before_it_is_looked_at(
    shop: Ledger, monkeypatch: pytest.MonkeyPatch
) -> None:
    _set(shop)

    def killed(*_: object) -> bool:
        raise KeyboardInterrupt

    with monkeypatch.context() as patch:
        patch.setattr(passphrases, "matches", killed)
        for _ in range(3):
            with pytest.raises(KeyboardInterrupt):
                shop.try_passphrase("P-1", "0000", NOON)
    assert _wrong(shop, NOON, WORDS) > 0


def test_that_a_clock_put_back_does_not_lock_for_ever(shop: Ledger) -> None:
    _set(shop)
    future = NOON + timedelta(days=36_000)
    for _ in range(3):
        _wrong(shop, future)
    wait = _wrong(shop, NOON, WORDS)
    assert wait > 0
    shop.try_passphrase("P-1", WORDS, NOON + timedelta(seconds=wait))


def test_that_setting_it_anew_ends_the_wait_and_the_old_one(shop: Ledger) -> None:
    _set(shop)
    for _ in range(4):
        _wrong(shop, later(60).astimezone(UTC))
    _set(shop, "another 2077")
    shop.try_passphrase("P-1", "another 2077", NOON)
    assert _wrong(shop, NOON, WORDS) == 0
    assert shop.verify().ok


def test_that_neither_passphrase_nor_hash_is_in_what_python_shows(shop: Ledger) -> None:
    _set(shop)
    kept = passphrases.Kept("P-1", passphrases.hashed(WORDS), "")
    with pytest.raises(PassphraseRefused) as refusal:
        shop.try_passphrase("P-1", "wrong words 9", NOON)
    shown = f"{refusal.value!r} {refusal.value} {kept!r}"
    assert "wrong words" not in shown
    assert "argon2" not in shown
