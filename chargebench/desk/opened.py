"""A shop that is open: its ledger, its settings, and who signs."""

from collections.abc import Mapping
from datetime import UTC, date, datetime
from pathlib import Path
from typing import Self

from chargebench import rules
from chargebench.desk import rights, where
from chargebench.errors import ChargebenchError, NotAllowed, RuleSetRefused, StepRefused
from chargebench.ledger import Ledger, Place, Reader
from chargebench.rules import RuleSet
from chargebench.steps import REGISTERS, Typed, answer
from chargebench.units import System
from chargebench.words import say

SHOP_ID = "shop"


def now() -> datetime:
    """The bench's wall clock with its zone."""
    return datetime.now(UTC).astimezone()


class Opened:
    """An open shop, in a file or on a server. Everything the desk does goes through its ledger."""

    def __init__(self, ledger: Reader, person: str = "") -> None:
        self.reading = ledger
        self.place: Place = ledger.place
        self._seen: dict[str, tuple[int, str]] = {}  # how far every bench had come when last asked
        self.person = person or next(iter(ledger.rows("person")), "")
        self._ruled: tuple[tuple[str, str], RuleSet, str] | None = None

    @classmethod
    def create(
        cls,
        place: Place,
        shop: Typed,
        person: Typed,
        *,
        person_id: str = "P-01",
        bench: str = "B",
    ) -> Self:
        """Make a new shop with its first person, as a file or on a server.

        Raises
        ------
        StepRefused
            The shop's or the person's form is not complete.
        ShopFileRefused
            There is a shop already, or none can be made there.
        """
        for register, typed in (("shop", shop), ("person", person)):
            refuse_incomplete(register, typed, folder_of(place))
        refuse_nobody_left({person_id: as_row(person)})
        ledger = Ledger.create(place, bench)
        desk = cls(ledger, person_id)
        when = now()
        ledger.put_row("person", person_id, as_row(person), by=person_id, happened_at=when)
        ledger.put_row("shop", SHOP_ID, as_row(shop), by=person_id, happened_at=when)
        return desk

    @classmethod
    def open(cls, place: Place, *, at_once: int | None = None) -> Self:
        """Open a shop: to record where a bench does from here, else, as an officer, to read.

        The backup of a file larger than `at_once` bytes waits for whoever opens it.

        Raises
        ------
        ShopFileRefused
            Not a shop, a newer one, damaged, in use, or on a server that does not answer.
        """
        ledger = Ledger.open(place, at_once=at_once)
        if ledger.records:
            return cls(ledger)
        ledger.close()
        return cls(Reader.open_reading(place))

    @classmethod
    def open_reading(cls, place: Place) -> Self:
        """Open a shop only to read it, also one whose guards are gone.

        Raises
        ------
        ShopFileRefused
            Not a shop file, a newer one, or damaged beyond reading.
        """
        return cls(Reader.open_reading(place, guarded=False))

    @property
    def path(self) -> Path:
        """The shop's file; refuses where the shop is on a server."""
        return self.reading.path

    @property
    def folder(self) -> Path:
        """Where what belongs to the shop is looked for and put, such as exports."""
        return folder_of(self.place)

    @property
    def shared(self) -> bool:
        """Whether other benches record in the same book."""
        return not isinstance(self.place, Path)

    @property
    def server_gone(self) -> bool:
        """Whether the shop's server did not answer when last asked; a file never is gone so."""
        return self.reading.server_gone

    def refresh(self) -> bool:
        """Forget what rests on the book if another bench recorded since; whether one did."""
        heads = self.reading.heads()
        if heads == self._seen:
            return False
        self._seen = heads
        self._changed()
        return True

    def _changed(self, job: str | None = None) -> None:
        """Something recorded has changed, in one job or anywhere: forget what rests on it."""

    @property
    def ledger(self) -> Ledger:
        """The ledger to record in; a desk that only reads has none."""
        if not isinstance(self.reading, Ledger):
            raise NotAllowed("This shop is open only to be read; nothing is recorded from here.")
        return self.reading

    @property
    def signer(self) -> str:
        """Who signs.

        Raises
        ------
        ChargebenchError
            Nobody is chosen.
        """
        if not self.person:
            raise ChargebenchError("Expected somebody who signs; choose a person first.")
        return self.person

    def reader(self) -> Self:
        """A desk on a read-only connection of its own, for a worker thread."""
        return type(self)(self.reading.reader(), self.person)

    def close(self) -> None:
        """Close the file; everything signed or kept is already in it."""
        self.reading.close()

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    @property
    def at_opening(self) -> tuple[str, ...]:
        """What was seen at opening and must be told: other copies beside, a backup refused."""
        if not isinstance(self.reading, Ledger):
            return ()
        refused = self.reading.backup_refused
        return (*self.reading.copies_beside, *([refused] if refused else []))

    @property
    def backup_waits(self) -> bool:
        """Whether the backup of this opening is still to be made."""
        return isinstance(self.reading, Ledger) and self.reading.backup_waits

    @property
    def shop(self) -> dict[str, str]:
        """The shop's own row."""
        return self.reading.row("shop", SHOP_ID) or {}

    @property
    def units(self) -> System:
        """Units the shop wants shown."""
        return "IP" if self.shop.get("units") == "IP" else "SI"

    @property
    def rule_set(self) -> RuleSet:
        """The rule set the shop has chosen, with its own file laid over it."""
        return self._rules()[1]

    @property
    def rule_trouble(self) -> str:
        """Why the shop's rule file does not count; empty where it does, or there is none."""
        return self._rules()[2]

    def _rules(self) -> tuple[tuple[str, str], RuleSet, str]:
        """Rules as read when the shop was opened or its settings saved."""
        shop = self.shop
        chosen = (shop.get("rule_set", "") or "generic", shop.get("rule_file", ""))
        if self._ruled is None or self._ruled[0] != chosen:
            try:
                self._ruled = (chosen, chosen_rules(shop, self.folder), "")
            except RuleSetRefused as refusal:
                if not chosen[1]:
                    raise
                # Work must go on when the file was moved; what counts instead is said.
                self._ruled = (
                    chosen,
                    rules.load(chosen[0]),
                    say(
                        "The shop's rule file does not count: {refusal} {chosen} counts alone.",
                        refusal=refusal,
                        chosen=chosen[0],
                    ),
                )
        return self._ruled

    @property
    def today(self) -> date:
        """The bench's date."""
        return now().date()


def folder_of(place: Place) -> Path:
    """A shop file's folder; for a shop on a server this person's own."""
    return place.parent if isinstance(place, Path) else where.folder()


def as_row(typed: Typed) -> dict[str, str]:
    """A register's form as its row: text only, empty fields left out."""
    return {
        key: text.strip() for key, text in typed.items() if isinstance(text, str) and text.strip()
    }


def refuse_nobody_left(people: Mapping[str, rights.Row]) -> None:
    """Refuse roles after which nobody could change the registers any more."""
    if rights.nobody_left(people):
        raise StepRefused(
            REGISTERS["person"].title,
            {"role": "Expected somebody left who is of the shop, to keep its registers."},
        )


def chosen_rules(shop: Typed, folder: Path) -> RuleSet:
    """The rule set a shop's form chooses; its rule file is looked for in `folder`.

    Raises
    ------
    RuleSetRefused
        No such rule set, or a file that can not be used, with the line.
    """
    name, file = str(shop.get("rule_set", "")).strip(), str(shop.get("rule_file", "")).strip()
    named = rules.load(name or "generic")
    if not file:
        return named
    return rules.load_file(folder / Path(file).expanduser(), over=named.name)


def refuse_incomplete(register: str, typed: Typed, folder: Path) -> None:
    """Refuse a register's form that has wrong or missing fields."""
    answers = answer(REGISTERS[register], typed)
    fields = dict(answers.refusals)
    fields |= {
        path: say("Expected {label}.", label=label.lower())
        for path, label in answers.missing.items()
    }
    if register == "shop" and typed.get("rule_set"):
        try:
            chosen_rules(typed, folder)
        except RuleSetRefused as refusal:
            known = str(typed["rule_set"]).strip() in rules.names()
            fields["rule_file" if known else "rule_set"] = (
                str(refusal)
                if known
                else say("Expected one of: {names}.", names=", ".join(rules.names()))
            )
    if fields:
        raise StepRefused(REGISTERS[register].title, fields)
