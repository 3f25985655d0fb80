"""Every entry that can still be read of a damaged shop, put into a new file by its chain."""

import tempfile
from collections.abc import Iterable, Sequence
from contextlib import ExitStack, suppress
from datetime import datetime
from itertools import pairwise
from operator import itemgetter
from pathlib import Path
from typing import Any

import msgspec
from sqlalchemy import Connection, insert, select
from sqlalchemy.exc import DBAPIError

from chargebench.errors import ShopFileRefused
from chargebench.ledger import astray, backup, dialect, posting, schema, shopfile, sqlite
from chargebench.ledger.entry import NewEntry, mass_words
from chargebench.ledger.projection import search_words
from chargebench.ledger.rescued import Rescued, unread
from chargebench.ledger.scan import Scan
from chargebench.ledger.wreck import Found, Wreck
from chargebench.words import say

SIGNED = "rescue"  # nobody signs it: a program put the file together
_TOLD_MOST = 20
_KEYS = {  # tables that are no work of the entries, or may say what lost entries said
    "register_row": "register, id",
    "job": "id",
    "typed": "job, step",
    "checkpoint": "id",
    "picture": "hash",
    "passphrase": "person",
}


def rescue(old: Path | str, out: Path | str, happened_at: datetime) -> Rescued:
    """Bring every entry that can be read, in the file or else in its backups, into a new file.

    Entries go verbatim, with their hashes; registers, jobs and balances are built from them anew.
    The old file and its backups are only read.
    """
    old, out = Path(old), Path(out)
    kept = backup.backups(old)
    sources = [path for path in (old, *kept) if path.is_file()]
    if not sources:
        raise ShopFileRefused(
            say("There is no file {old} and no backup of it; check the path.", old=old)
        )
    if out.exists():
        raise ShopFileRefused(say("{out} is there already; name a file that is not.", out=out))
    if not out.parent.is_dir():
        raise ShopFileRefused(
            say("There is no folder {parent}. Make it, or choose another.", parent=out.parent)
        )
    half = out.with_name(out.name + ".new")
    try:
        with tempfile.TemporaryDirectory(prefix=".rescue-", dir=out.parent) as folder:
            rescued = _Rescue(sources, kept, Path(folder)).into(half, out, happened_at)
        backup.settle(half)
        half.replace(out)
        backup.settle_folder(out.parent)
    except (OSError, *sqlite.ERRORS) as problem:
        reason = getattr(problem, "strerror", None) or sqlite.says(problem) or str(problem)
        raise ShopFileRefused(
            say("{out} can not be written: {reason}.", out=out, reason=reason)
        ) from problem
    finally:
        with suppress(OSError):
            backup.remove(half)
    return rescued


class _Rescue:
    """One rescue: the file first, then each backup for what is still missing."""

    def __init__(self, sources: Sequence[Path], kept: Sequence[Path], folder: Path) -> None:
        self._sources, self._kept, self._folder = sources, kept, folder
        self._have: dict[str, dict[int, str]] = {}  # bench -> number -> when recorded
        self._positions: set[int] = set()
        self._ids: set[str] = set()
        self._from_backups = 0
        self._notes: list[str] = []

    def into(self, half: Path, out: Path, happened_at: datetime) -> Rescued:
        """Make the new file."""
        with ExitStack() as stack:
            model = self._folder / "model"
            shopfile.create(model, "B")
            wrecks = []
            for place, path in enumerate(self._sources):
                under = self._folder / str(place)
                under.mkdir()
                wrecks.append(stack.enter_context(Wreck(path, under, [*self._kept, model])))
            about = {
                row["key"]: row["value"]
                for wreck in reversed(wrecks)
                for row in wreck.table("about", "key")
                if row["key"] != astray.OPEN
            }
            if "bench" not in about or "shop" not in about:
                raise ShopFileRefused(
                    say(
                        "Nothing of a shop can be read in {sources}, nor in a backup of it.",
                        sources=self._sources[0],
                    )
                )
            backup.remove(half)
            shopfile.create(half, about["bench"])
            engine, connection = shopfile.connect(half, writing=True)
            try:
                with connection.begin():
                    missing = self._fill(connection, wrecks, about)
                    self._record(connection, about["bench"], happened_at, missing)
            finally:
                connection.close()
                engine.dispose()
        entries = sum(len(numbers) for numbers in self._have.values())
        return Rescued(out, entries, self._from_backups, tuple(missing), tuple(self._notes))

    def _fill(
        self, connection: Connection, wrecks: Sequence[Wreck], about: dict[str, str]
    ) -> list[str]:
        """Entries, then all that hangs on them; what is missing, a sentence each."""
        heads: dict[str, tuple[int, bytes]] = {}
        for wreck in wrecks:
            for row in wreck.table("head", "bench"):
                known = heads.get(row["bench"], (0, b""))
                heads[row["bench"]] = max(known, (row["number"], row["hash"]), key=itemgetter(0))
        for place, wreck in enumerate(wrecks):
            if place and not self._gaps(heads):
                break
            self._from_backups += self._take(connection, wreck.entries()) if place else 0
            if not place:
                self._take(connection, wreck.entries())
        missing = [sentence for bench in sorted({*heads, *self._have})
                   for sentence in self._missing(bench, heads)]  # fmt: skip
        scan = Scan(connection, ())
        scan.run(None)
        self._put_heads(connection, heads, about["bench"])
        self._project(connection, scan, wrecks[0])
        self._bring(connection, wrecks, about)
        return missing

    def _take(self, connection: Connection, found: Iterable[Found]) -> int:
        """Write the entries that are sound and not there yet; how many."""
        names = [column.name for column in schema.entry.c]
        lines = [column.name for column in schema.MASS_LINE]
        taken = 0
        for each in found:
            bench, number = each.key
            if number in self._have.get(bench, {}) or not each.sound or each.row[1] in self._ids:
                continue
            row = dict(zip(names, each.row, strict=True))
            if row["position"] in self._positions:  # of a backup from before the chains parted
                row["position"] = max(self._positions) + 1
            connection.execute(insert(schema.entry), row)
            for count, line in enumerate(each.lines):
                mass_line = dict(zip(lines, line, strict=True))
                connection.execute(
                    insert(schema.transfer),
                    {"entry": row["position"], "line": count, **mass_line},
                )
            self._positions.add(row["position"])
            self._ids.add(row["id"])
            self._have.setdefault(bench, {})[number] = row["recorded_at"]
            taken += 1
        return taken

    def _gaps(self, heads: dict[str, tuple[int, bytes]]) -> bool:
        """Whether an entry is missing, or it can not be told how many there were."""
        return not heads or any(
            len(self._have.get(bench, {})) < number for bench, (number, _) in heads.items()
        )

    def _missing(self, bench: str, heads: dict[str, tuple[int, bytes]]) -> list[str]:
        have = self._have.get(bench, {})
        last = max(have, default=0)
        said = []
        if bench not in heads:
            said.append(
                say(
                    "How far the chain of bench {bench} went can not be told; entry {last} "
                    "is the last that was found.",
                    bench=bench,
                    last=last,
                )
            )
        top = max(last, heads.get(bench, (0, b""))[0])
        for first, upto in _gaps(have, top):
            after, before = have.get(first - 1, ""), have.get(upto + 1, "")
            said.append(unread(bench, first, upto, after, before))
        return said

    def _put_heads(
        self, connection: Connection, heads: dict[str, tuple[int, bytes]], own: str
    ) -> None:
        """Heads as the file has them: the next entry of this bench goes on behind what is lost."""
        for bench, numbers in self._have.items():
            last = max(numbers)
            digest = connection.execute(
                select(schema.entry.c.hash).where(
                    schema.entry.c.bench == bench, schema.entry.c.number == last
                )
            ).scalar_one()
            if bench == own and bench in heads and heads[bench][0] > last:
                last, digest = heads[bench]
            connection.execute(
                dialect.put(schema.head), {"bench": bench, "number": last, "hash": digest}
            )

    def _project(self, connection: Connection, scan: Scan, wreck: Wreck) -> None:
        """What follows from the entries, as they give it."""
        for (register, row_id), content in scan.replay.rows.items():
            words = search_words(msgspec.json.decode(content))
            row = {"register": register, "id": row_id, "content": content, "words": words}
            connection.execute(insert(schema.register_row), row)
        names = [column.name for column in schema.job.c]
        for job in scan.replay.jobs.values():
            connection.execute(insert(schema.job), dict(zip(names, job, strict=True)))
        for entry, reversal in scan.replay.reversals.items():
            connection.execute(insert(schema.reversed_entry), {"id": entry, "reversal": reversal})
        for key, total in scan.replay.days.items():
            day = dict(zip(schema.day_total.c.keys(), (*key, *total), strict=True))
            connection.execute(insert(schema.day_total), day)
        for place, kind, position in scan.replay.places:
            named = {"place": place, "kind": kind, "entry": position}
            connection.execute(insert(schema.place_entry), named)
        balances, _ = scan.due()
        for (place, refrigerant), mass_mg in sorted(balances.items()):
            held = {"place": place, "refrigerant": refrigerant, "mass_mg": mass_mg}
            connection.execute(insert(schema.balance), held)
        for was in wreck.table("balance", "place, refrigerant"):
            now = balances.get((was["place"], was["refrigerant"]), 0)
            if was["mass_mg"] != now and len(self._notes) < _TOLD_MOST:
                self._notes.append(
                    say(
                        "{place} stood at {mass_words} of {refrigerant}; the entries that "
                        "were read give {mass_words_2}.",
                        place=was["place"],
                        mass_words=mass_words(was["mass_mg"]),
                        refrigerant=was["refrigerant"],
                        mass_words_2=mass_words(now),
                    )
                )

    def _bring(
        self, connection: Connection, wrecks: Sequence[Wreck], about: dict[str, str]
    ) -> None:
        """Rows of the other tables that can be read and that the entries did not give."""
        said = [{"key": key, "value": value} for key, value in about.items()]
        connection.execute(dialect.put(schema.about), said)
        for name in _KEYS:
            table = schema.metadata.tables[name]
            rows = wrecks[0].table(name, _KEYS[name])
            if name in wrecks[0].damaged:
                rows += [row for wreck in wrecks[1:] for row in wreck.table(name, _KEYS[name])]
                self._notes.append(say("Of the table {name} not all can be read.", name=name))
            for row in rows:
                self._bring_row(connection, table, row)

    def _bring_row(self, connection: Connection, table: Any, row: dict[str, Any]) -> None:
        if table is schema.job and row.get("opened_by") not in self._positions:
            first = select(schema.entry.c.position).where(schema.entry.c.job == row.get("id"))
            row = {**row, "opened_by": connection.execute(first.limit(1)).scalar()}
        try:
            with connection.begin_nested():
                connection.execute(dialect.put_new(table), row)
        except DBAPIError:  # half of a row
            self._notes.append(say("A row of the table {table} can not be used.", table=table.name))

    def _record(
        self, connection: Connection, bench: str, happened_at: datetime, missing: list[str]
    ) -> None:
        """Say in the chain itself that the file was put together."""
        said = {
            "from": self._sources[0].name,
            "from_backups": self._from_backups,
            "missing": missing,
            "notes": list(self._notes),
        }
        posting.record(connection, bench, NewEntry("rescued", SIGNED, happened_at, said), {})


def _gaps(have: Iterable[int], top: int) -> list[tuple[int, int]]:
    """First and last of each run of numbers up to `top` that are not there, however long."""
    ends = [0, *sorted(have), top + 1]
    return [(before + 1, after - 1) for before, after in pairwise(ends) if after - before > 1]
