"""Who works at the bench, whether their signature is unlocked, and posting under it."""

from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from chargebench.desk import rights
from chargebench.desk.opened import Opened, now
from chargebench.desk.rights import Act
from chargebench.errors import AlreadyRecorded, ChargebenchError, NotAllowed, SignatureLocked
from chargebench.ledger import Entry, NewEntry, Picture, Reader, Transfer
from chargebench.steps import REGISTERS, answer
from chargebench.words import say

SHIFT, IDLE = timedelta(hours=12), timedelta(minutes=30)  # unless the shop says otherwise


@dataclass(slots=True)
class _Unlocked:
    """Whose signature is unlocked, since when and how long it lasts."""

    person: str
    since: datetime
    touched: datetime
    shift: timedelta
    idle: timedelta

    def holds(self, at: datetime) -> bool:
        """Whether it still lasts; a clock that was put back ends it."""
        return (
            self.since <= self.touched <= at
            and at - self.since < self.shift
            and at - self.touched < self.idle
        )


class Signing(Opened):
    """Says who may sign, and asks for a passphrase once a shift and after idleness."""

    def __init__(self, ledger: Reader, person: str = "") -> None:
        super().__init__(ledger, person)
        self.asks: Callable[[], None] | None = None  # lets the person unlock, or gives up
        self._unlocked: _Unlocked | None = None
        self._vouched = False  # for what is taken in, whoever takes it in has signed

    def refusal(self, act: Act) -> str:
        """Why the person chosen may not do something; empty where they may, or nobody is."""
        return rights.refusal(act, self.person, self.reading.rows("person")) if self.person else ""

    def choose(self, person: str) -> None:
        """Let a person of the register work here; whoever worked before is locked.

        Raises
        ------
        ChargebenchError
            Nobody of that id.
        """
        if person not in self.reading.rows("person"):
            raise ChargebenchError(
                say("Expected a person of the register; got “{person}”.", person=person)
            )
        if person != self.person:
            self.lock()
        self.person = person

    def person_called(self, words: str) -> str:
        """Id of the person of an id or a name.

        Raises
        ------
        ChargebenchError
            Nobody, or more than one.
        """
        people = self.reading.rows("person")
        if words in people:
            return words
        named = [
            key for key, row in people.items() if row.get("name", "").casefold() == words.casefold()
        ]
        if len(named) != 1:
            called = ", ".join(f"{key} ({row.get('name', key)})" for key, row in people.items())
            raise ChargebenchError(
                say("Expected one of {called}; got “{words}”.", called=called, words=words)
            )
        return named[0]

    @property
    def needs_passphrase(self) -> bool:
        """Whether the person chosen signs by passphrase: one is set, or the shop wants one."""
        wanted = self.has_passphrase or self.shop.get("passphrases") == "yes"
        return wanted and not self.refusal(Act.RECORD)  # who only reads signs nothing

    @property
    def has_passphrase(self) -> bool:
        """Whether the person chosen has set a passphrase."""
        return self.person in self.reading.passphrase_holders()

    @property
    def unlocked(self) -> bool:
        """Whether the person chosen has unlocked their signature and it still lasts."""
        unlocked = self._unlocked
        return (
            unlocked is not None and unlocked.person == self.person and unlocked.holds(self.clock())
        )

    @property
    def locked(self) -> bool:
        """Whether signing asks for a passphrase first."""
        return bool(self.person) and not self.unlocked and self.needs_passphrase

    @staticmethod
    def clock() -> datetime:
        """The bench's wall clock: unlike others it runs on while the computer sleeps."""
        return now()

    def unlock(self, passphrase: str) -> None:
        """Unlock the signature of the person chosen, for a shift or until idleness.

        Raises
        ------
        PassphraseRefused
            Not the person's, or too soon after wrong ones.
        """
        self.ledger.try_passphrase(self.signer, passphrase, self.clock())
        self._unlock()

    def _unlock(self) -> None:
        shop, at = answer(REGISTERS["shop"], self.shop), self.clock()
        shift, idle = shop.quantity("shift"), shop.quantity("idle")
        self._unlocked = _Unlocked(
            self.person,
            since=at,
            touched=at,
            shift=SHIFT if shift is None else timedelta(seconds=shift.m_as("s")),
            idle=IDLE if idle is None else timedelta(seconds=idle.m_as("s")),
        )

    def lock(self) -> None:
        """Ask for the passphrase again before the next signature."""
        self._unlocked = None

    def touch(self) -> None:
        """Somebody is at work; what has gone idle already stays locked."""
        if self._unlocked is not None:
            at = self.clock()
            if self._unlocked.holds(at):
                self._unlocked.touched = at
            else:
                self._unlocked = None

    def set_passphrase(self, person: str, passphrase: str, *, present: str = "") -> Entry:
        """Set a person's passphrase: one's own against the present one, another's as the shop.

        Raises
        ------
        NotAllowed
            Somebody else's, by somebody who is not of the shop.
        PassphraseRefused
            Too short, or the present one is wrong.
        """
        own = person == self.signer
        if not own:
            self._signs(Act.PEOPLE)
        elif says := self.refusal(Act.RECORD):
            raise NotAllowed(says)
        elif self.has_passphrase:
            self.ledger.try_passphrase(person, present, self.clock())
        if person not in self.reading.rows("person"):
            raise ChargebenchError(
                say("Expected a person of the register; got “{person}”.", person=person)
            )
        entry = self.ledger.set_passphrase(
            person, passphrase, by=self.person, happened_at=self.clock()
        )
        if own:
            self._unlock()
        return entry

    def _signs(self, act: Act) -> str:
        """Who signs, once they may and their signature is unlocked."""
        person = self.signer
        if self._vouched:
            return person
        if says := self.refusal(act):
            raise NotAllowed(says)
        if self.locked and self.asks is not None:
            self.asks()
        if self.locked:
            name = self.reading.rows("person").get(person, {}).get("name", person)
            missing = "" if self.has_passphrase else " None is set yet; set one first."
            raise SignatureLocked(
                say(
                    "Nothing was recorded: the signature of {name} takes a passphrase.{missing}",
                    name=name,
                    missing=missing,
                )
            )
        assert self.person == person, "somebody else was chosen while a passphrase was asked for"
        return person

    @contextmanager
    def _vouching(self) -> Iterator[None]:
        """Record what others signed elsewhere; whoever takes it in may, and signs for that."""
        if self.person or self.reading.rows("person"):
            self._signs(Act.TAKE_IN)
        self._vouched = True
        try:
            yield
        finally:
            self._vouched = False

    def _post(
        self,
        kind: str,
        payload: Mapping[str, Any],
        *,
        job: str | None = None,
        transfers: tuple[Transfer, ...] = (),
        happened_at: datetime | None = None,
        may_overdraw_mg: Mapping[str, int] | None = None,
        signs: str | None = None,
        picture: Picture | None = None,
    ) -> Entry:
        by = self._signs(rights.of_kind(kind))  # first: a person may take a while to unlock
        new = NewEntry(
            kind=kind,
            by=by,
            happened_at=happened_at or now(),
            payload=dict(payload),
            transfers=transfers,
            job=job,
        )
        try:
            return self.ledger.post(
                new, may_overdraw_mg=may_overdraw_mg or {}, signs=signs, picture=picture
            )
        except AlreadyRecorded:  # before, when the server went away: what stands is to be shown
            self._changed(job)
            raise
