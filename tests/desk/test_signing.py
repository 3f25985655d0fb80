"""Signatures unlocked by a passphrase: for a shift, until idleness, for one person."""

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import datetime, timedelta
from pathlib import Path

import pytest

from chargebench.desk import Desk
from chargebench.errors import (
    ChargebenchError,
    NotAllowed,
    PassphraseRefused,
    SignatureLocked,
    StepRefused,
)
from chargebench.ledger import backups
from chargebench.resource import sample_jobs
from tests.desk import shops
from tests.desk.shops import expect_refusal

PIN, WORDS = "73915", "quay street 1948"


class Clock:
    """A wall clock that is moved by hand."""

    def __init__(self) -> None:
        self.now = datetime.now().astimezone()

    def __call__(self) -> datetime:
        return self.now

    def on(self, **span: float) -> None:
        self.now += timedelta(**span)


@pytest.fixture
def clock(desk: Desk, monkeypatch: pytest.MonkeyPatch) -> Clock:
    made = Clock()
    monkeypatch.setattr(desk, "clock", made)
    return made


@pytest.fixture
def guarded(desk: Desk, clock: Clock) -> Desk:  # noqa: ARG001 - set before the first unlocking
    """The shop, whose first technician has set a PIN and is locked."""
    desk.set_passphrase("P-01", PIN)
    desk.lock()
    return desk


@contextmanager
def expect_asking(desk: Desk) -> Iterator[None]:
    with expect_refusal(desk, SignatureLocked, "the signature of N. Okafor takes a passphrase"):
        yield


def test_that_people_without_a_passphrase_sign_as_ever(desk: Desk) -> None:
    assert not desk.locked
    shops.receive(desk)
    assert list(desk.entries())[-1].by == "P-01"


def test_that_signing_asks_once_for_the_shift(guarded: Desk, clock: Clock) -> None:
    with expect_asking(guarded):
        shops.receive(guarded)
    guarded.unlock(PIN)
    for _ in range(12 * 6 - 1):
        clock.on(minutes=10)
        guarded.touch()
        shops.receive(guarded, "1 g")
    clock.on(minutes=10)
    with expect_asking(guarded):
        shops.receive(guarded)


def test_that_idleness_locks_and_a_late_key_does_not_unlock(guarded: Desk, clock: Clock) -> None:
    guarded.unlock(PIN)
    clock.on(minutes=29)
    guarded.touch()
    clock.on(minutes=29)
    shops.receive(guarded)
    clock.on(minutes=1)
    guarded.touch()
    with expect_asking(guarded):
        shops.receive(guarded)


def test_that_the_shop_sets_both_spans(guarded: Desk, clock: Clock) -> None:
    guarded.unlock(PIN)
    guarded.save_row("shop", "shop", {**shops.SHOP, "shift": "2 h", "idle": "90 min"})
    guarded.unlock(PIN)
    clock.on(minutes=80)
    guarded.touch()
    shops.receive(guarded)
    clock.on(minutes=41)
    with expect_asking(guarded):
        shops.receive(guarded)


def test_that_spans_that_are_none_are_refused(desk: Desk) -> None:
    with pytest.raises(StepRefused) as refusal:
        desk.save_row("shop", "shop", {**shops.SHOP, "shift": "a day or so", "idle": "5 kg"})
    assert set(refusal.value.fields) == {"shift", "idle"}


def test_that_a_clock_put_back_locks(guarded: Desk, clock: Clock) -> None:
    guarded.unlock(PIN)
    clock.on(hours=-1)
    with expect_asking(guarded):
        shops.receive(guarded)


def test_that_every_kind_of_signature_asks(guarded: Desk) -> None:
    guarded.unlock(PIN)
    entry, job = shops.receive(guarded), guarded.open_job("E-001")
    guarded.lock()
    acts = (
        lambda: guarded.sign(job, "nameplate", shops.NAMEPLATE),
        lambda: guarded.not_needed(job, "as_found", "not asked for"),
        lambda: guarded.open_job("E-002"),
        lambda: guarded.reverse(entry, "wrong cylinder"),
        lambda: guarded.save_row("site", "L-009", {"name": "Harbour Kitchen"}),
        lambda: guarded.take_in(min(sample_jobs().glob("*.json"))),
        lambda: guarded.set_passphrase("P-02", "56789"),
    )
    for act in acts:
        with expect_asking(guarded):
            act()


def test_that_reading_and_typing_go_on_while_locked(guarded: Desk) -> None:
    guarded.unlock(PIN)
    job = guarded.open_job("E-001")
    guarded.lock()
    guarded.keep(job, "nameplate", {"charge": "10"})
    assert guarded.typed(job, "nameplate") == {"charge": "10"}
    assert guarded.look(job, "nameplate", shops.NAMEPLATE).answers.refusals == {}
    assert guarded.verify().ok


def test_that_what_is_wrong_in_the_form_is_said_before_the_passphrase_is_asked(
    guarded: Desk,
) -> None:
    guarded.asks = lambda: pytest.fail("asked")
    with expect_refusal(guarded, StepRefused, "Expected"):
        guarded.act("receive", {"cylinder": "C-001"})


def test_that_what_was_signed_goes_on_once_it_is_unlocked(guarded: Desk) -> None:
    guarded.asks = lambda: guarded.unlock(PIN)
    shops.receive(guarded)
    assert shops.held(guarded, "cylinder:C-001") == 400_000


def test_that_another_person_is_locked_and_locks_the_one_before(guarded: Desk) -> None:
    guarded.unlock(PIN)
    guarded.choose("P-02")
    guarded.set_passphrase("P-02", WORDS)
    assert guarded.unlocked
    guarded.choose("P-01")
    with expect_asking(guarded):
        shops.receive(guarded)
    with pytest.raises(PassphraseRefused):
        guarded.unlock(WORDS)


def test_that_the_shop_may_want_a_passphrase_of_everybody(desk: Desk) -> None:
    desk.save_row("shop", "shop", {**shops.SHOP, "passphrases": "yes"})
    with expect_refusal(desk, SignatureLocked, "None is set yet; set one first"):
        shops.receive(desk)
    desk.set_passphrase("P-01", PIN)
    shops.receive(desk)


def test_that_ones_own_is_changed_against_the_present_one(guarded: Desk) -> None:
    with expect_refusal(guarded, PassphraseRefused, "not the passphrase"):
        guarded.set_passphrase("P-01", WORDS, present="0000")
    guarded.set_passphrase("P-01", WORDS, present=PIN)
    guarded.lock()
    guarded.unlock(WORDS)
    assert guarded.unlocked


def test_that_only_the_shop_sets_that_of_another(guarded: Desk) -> None:
    guarded.unlock(PIN)
    guarded.save_row("person", "P-10", {"name": "A. Lindqvist", "role": "shop"})
    with expect_refusal(guarded, NotAllowed, "Expected A. Lindqvist"):
        guarded.set_passphrase("P-02", WORDS)
    guarded.choose("P-10")
    guarded.set_passphrase("P-01", WORDS)
    entry = list(guarded.entries())[-1]
    assert (entry.kind, entry.by, entry.payload["person"]) == ("passphrase-set", "P-10", "P-01")
    guarded.choose("P-01")
    guarded.unlock(WORDS)
    with pytest.raises(ChargebenchError, match="is not reversed"):
        guarded.reverse(entry.id, "set by mistake")


def test_that_what_others_signed_is_taken_in_under_one_signature(
    guarded: Desk, tmp_path: Path
) -> None:
    guarded.unlock(PIN)
    files = sorted(sample_jobs().glob("*.json"))
    with Desk.create(tmp_path / "other", shops.SHOP, shops.PERSON, person_id="P-99") as other:
        other.set_passphrase("P-99", PIN)
        other.lock()
        asked: list[str] = []

        def asks() -> None:
            asked.append(other.person)
            other.unlock(PIN)

        other.asks = asks
        other.take_in(files[0])
        assert asked == ["P-99"]
        kinds = {entry.kind: entry.by for entry in other.entries()}
        assert kinds["taken-in"] == "P-99"
        other.lock()
        other.asks = None
        with expect_refusal(other, SignatureLocked, "takes a passphrase"):
            other.take_in(files[1])


def test_that_the_passphrase_leaves_with_nothing(guarded: Desk, tmp_path: Path) -> None:
    guarded.unlock(PIN)
    guarded.set_passphrase("P-01", WORDS, present=PIN)
    shops.receive(guarded)
    exported = guarded.export(tmp_path / "export")
    guarded.backup()
    written = [*exported.files, *backups(guarded.path)]
    assert len(written) > 3
    for path in written:
        assert WORDS.encode() not in path.read_bytes()
    for path in exported.files:
        assert b"argon2" not in path.read_bytes()
    payloads = [str(entry.payload) for entry in guarded.entries()]
    assert not any(WORDS in each or "argon2" in each for each in payloads)
