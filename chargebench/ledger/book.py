"""The ledger of one shop: what is recorded, and the questions one may ask of it."""

from collections.abc import Callable, Iterable, Mapping
from datetime import UTC, datetime
from pathlib import Path
from types import MappingProxyType
from typing import Any, BinaryIO, Self

from sqlalchemy import Connection, delete

from chargebench.errors import PassphraseRefused, ShopFileRefused
from chargebench.ledger import (
    astray,
    backup,
    chainfile,
    dialect,
    handover,
    passphrases,
    pictures,
    posting,
    reading,
    schema,
    shopfile,
)
from chargebench.ledger.entry import (
    Entry,
    NewEntry,
    moment_text,
    new_id,
    now_text,
    payload_text,
)
from chargebench.ledger.pictures import Picture
from chargebench.ledger.place import Place, place_of
from chargebench.ledger.writing import Writing
from chargebench.words import say

NO_TOLERANCE: Mapping[str, int] = MappingProxyType({})
_KEEP_TYPED = dialect.put(schema.typed)
_PUT_ABOUT = dialect.put(schema.about)


class Ledger(Writing):
    """A shop open for recording; belongs to the thread that opened it."""

    backup_refused: str | None = None  # why no backup was kept at opening, to be shown
    backup_waits: bool = False  # whether the backup of this opening is still to be made
    copies_beside: tuple[str, ...] = ()  # further files of this shop, and what to do with them

    @classmethod
    def create(cls, place: Place | str, bench: str = "B") -> Self:
        """Make a shop for a bench, as a file or on a server, and open it."""
        place = place_of(place)
        if isinstance(place, Path):
            shopfile.create(place, bench)
        else:
            from chargebench.ledger import server  # with its driver, which a file does without

            server.make(place, bench)
        return cls.open(place, backups=0)

    @classmethod
    def open(
        cls, place: Place | str, *, backups: int = backup.KEEP, at_once: int | None = None
    ) -> Self:
        """Open a shop, of a file keeping a rotated backup if it changed and `backups` is not 0.

        A file larger than `at_once` bytes is not copied here; `backup_waits` then says that the
        copy is still to be made, by whoever can do so without keeping a person waiting.
        """
        place = place_of(place)
        if not isinstance(place, Path):  # its copies and backups are the server's
            return cls(place, *shopfile.connect(place, writing=True))
        had_wal = astray.has_wal(place)
        ledger = cls(place, *shopfile.connect(place, writing=True))
        ledger._look_around(had_wal=had_wal)
        if backups and at_once is not None and place.stat().st_size > at_once:
            ledger.backup_waits = True
        elif backups:
            try:
                ledger.backup(keep_newest=backups)
            except ShopFileRefused as refusal:  # a full disk must not keep the bench from its book
                ledger.backup_refused = str(refusal)
        astray.say_open(ledger._connection)
        return ledger

    def _look_around(self, *, had_wal: bool) -> None:
        """Refuse half of a copy and an older file; see which others stand beside this one."""
        try:
            self._opened = astray.identity(self.path)
            with self._reading() as connection:
                astray.check_whole(self.path, connection, had_wal=had_wal)
                self.copies_beside = tuple(astray.copies_beside(self.path, connection))
        except BaseException:
            super().close()
            raise

    def close(self) -> None:
        """Close the file; it no longer says it is open."""
        if self._opened is not None and not self._connection.closed:
            astray.say_closed(self._connection)
        super().close()

    def belong_to(self, shop: str, begun_from: str) -> None:
        """Make this the file of a further bench of a shop; only before anything is recorded."""
        assert self.head()[0] == 0, "a bench with entries has its shop"
        said = {"shop": shop, "begun_from": begun_from}
        with self._writing() as connection:
            rows = [{"key": key, "value": value} for key, value in said.items()]
            connection.execute(_PUT_ABOUT, rows)
        self._about |= said

    @classmethod
    def mend_guards(cls, place: Place | str, by: str, happened_at: datetime) -> Entry:
        """Put back append-only guards that another tool took away, and record that it was so."""
        place = place_of(place)
        ledger = cls(place, *shopfile.connect(place, writing=True, guarded=False))
        with ledger, ledger._writing() as connection:
            own = dialect.of(connection)
            missing = own.missing_guards(connection)
            if not missing:
                raise ShopFileRefused(
                    say("{place} has all its guards; there is nothing to mend.", place=place)
                )
            own.put_back_guards(connection, missing)
            new = NewEntry("guards-mended", by, happened_at, {"missing": missing})
            return posting.record(connection, ledger.bench, new, NO_TOLERANCE)

    def post(
        self,
        new: NewEntry,
        *,
        may_overdraw_mg: Mapping[str, int] = NO_TOLERANCE,
        signs: str | None = None,
        picture: Picture | None = None,
    ) -> Entry:
        """Record an entry durably; a second post of the same id gives back what stands.

        `may_overdraw_mg` is how far below zero each cylinder may go: its weighing tolerance.
        `signs` names the open step whose typed text goes with the same commit, `picture` what is
        kept with it.
        """

        def work(connection: Connection) -> Entry:
            entry = self._record(connection, new, may_overdraw_mg)
            if signs is not None:
                self._forget(connection, str(entry.job), signs)
            if picture is not None:
                pictures.keep(connection, picture)
            return entry

        return self._once((new.id,), work)

    def post_all(
        self, new: Iterable[NewEntry], *, may_overdraw_mg: Mapping[str, int] = NO_TOLERANCE
    ) -> list[Entry]:
        """Record several entries in order, all or none."""
        several = list(new)
        return self._once(
            [each.id for each in several],
            lambda connection: [
                self._record(connection, each, may_overdraw_mg) for each in several
            ],
        )

    def put_row(
        self,
        register: str,
        row_id: str,
        row: dict[str, str],
        by: str,
        happened_at: datetime,
        *,
        id: str | None = None,  # noqa: A002  an entry's id, as everywhere
    ) -> Entry:
        """Write a register row; the entry keeps what it was before and after."""
        payload = {"register": register, "id": row_id, "after": row}
        return self.post(NewEntry("register", by, happened_at, payload, id=id or new_id()))

    def reverse(
        self,
        entry_id: str,
        by: str,
        happened_at: datetime,
        reason: str,
        *,
        may_overdraw_mg: Mapping[str, int] = NO_TOLERANCE,
        id: str | None = None,  # noqa: A002
    ) -> Entry:
        """Record the reversal of an entry: its transfers turned round, with a reason."""
        own_id = id or new_id()

        def work(connection: Connection) -> Entry:
            new = posting.reversal(connection, entry_id, by, happened_at, reason, own_id)
            return self._record(connection, new, may_overdraw_mg)

        return self._once((own_id,), work)

    def set_passphrase(
        self, person: str, passphrase: str, *, by: str, happened_at: datetime
    ) -> Entry:
        """Set what unlocks a person's signature; the entry says who and when, and no hash."""
        digest = passphrases.hashed(passphrase)  # before the file is locked for writing
        set_at = moment_text(happened_at.astimezone(UTC))
        new = NewEntry(passphrases.SET, by, happened_at, {"person": person, "set_at": set_at})

        def work(connection: Connection) -> Entry:
            passphrases.put(connection, passphrases.Kept(person, digest, set_at))
            return self._record(connection, new, NO_TOLERANCE)

        return self._once((new.id,), work)

    def try_passphrase(self, person: str, passphrase: str, at: datetime) -> None:
        """Hold a passphrase against the one set; wrong ones are counted in the file.

        Raises
        ------
        PassphraseRefused
            Not the one, none set, or too soon after wrong ones; says the seconds to wait.
        """
        with self._writing() as connection:
            kept, left = passphrases.begin_try(connection, person, at)
        if kept is None:
            raise PassphraseRefused("No passphrase was set; set one first.")
        if left:
            raise PassphraseRefused(passphrases.wait_words(left), left)
        if not passphrases.matches(kept, passphrase):
            left = passphrases.wait_seconds(kept.failures)
            wait = f" {passphrases.wait_words(left)}" if left else ""
            raise PassphraseRefused(say("That is not the passphrase.{wait}", wait=wait), left)
        with self._writing() as connection:
            passphrases.forget_tries(connection, kept)

    def take_over(
        self,
        source: Path | BinaryIO,
        by: str,
        happened_at: datetime,
        *,
        name: str = "",
        check: Callable[[NewEntry], None] = lambda _: None,
        progress: Callable[[int, int], None] | None = None,
    ) -> handover.TakenOver:
        """Take in a chain file, whole or not at all; see `handover.take_over`.

        Raises
        ------
        ChainFileRefused
            Why it can not be taken in; nothing of it was.
        """
        with chainfile.opened(source) as file, self._writing() as connection:
            taker = handover.Taker(self.shop_id, self.bench, by, happened_at, name)
            return handover.take_over(connection, file, taker, check, progress)

    def keep_typed(self, job: str, step: str, typed: dict[str, Any]) -> None:
        """Keep the text of an open step as typed, durably; it is no record and not chained."""
        content = payload_text(typed)
        row = {"job": job, "step": step, "content": content, "kept_at": now_text()}
        with self._writing() as connection:
            connection.execute(_KEEP_TYPED, row)

    def forget_typed(self, job: str, step: str) -> None:
        """Drop the kept text of a step."""
        with self._writing() as connection:
            self._forget(connection, job, step)

    @staticmethod
    def _forget(connection: Connection, job: str, step: str) -> None:
        connection.execute(
            delete(schema.typed).where(schema.typed.c.job == job, schema.typed.c.step == step)
        )

    def keep_checkpoint(self, why: str) -> tuple[int, str]:
        """Keep the head of the chain, so that a tail cut off later is seen; gives it back.

        One that is kept already is not kept again.
        """
        with self._writing() as connection:
            number, digest = reading.head(connection, self.bench)
            head = {"bench": self.bench, "number": number, "hash": digest, "why": why}
            if not reading.holds_checkpoint(connection, head):
                connection.execute(schema.checkpoint.insert(), {**head, "kept_at": now_text()})
        return number, digest.hex()
