"""Which ids name one thing: a cylinder or a person met twice, decided by a person, as entries.

A decision is a row of the register `same-as`, one for each pair. Things are grouped by all
decisions together and go by the group's shortest id, the first of those in order: so it does not
matter in which order benches decided, and no circle can be made. Entries keep the id they were
signed with; balances and histories are of the thing.
"""

from collections.abc import Iterable, Mapping

import msgspec
from sqlalchemy import Connection, bindparam, case, or_, select

from chargebench.errors import PostingRefused
from chargebench.ledger import dialect, schema
from chargebench.ledger.prepared import Prepared

SAME = "same-as"
ALIKE = ("cylinder", "person", "instrument")  # registers whose rows can be met twice
_KEYS = {"register", "one", "other", "same", "reason"}

_DECIDED = Prepared(
    select(schema.register_row.c.content).where(
        schema.register_row.c.register == bindparam("register_is")
    )
)
_PUT_BALANCE = dialect.put(schema.balance)
Names = Mapping[str, str]


def pair_id(register: str, one: str, other: str) -> str:
    """Id of the decision on two rows, whichever is named first."""
    return msgspec.json.encode([register, *sorted((one, other))]).decode()


def decision(register: str, one: str, other: str, *, same: bool, reason: str) -> dict[str, str]:
    """The row of a decision."""
    one, other = sorted((one, other))
    words = "yes" if same else "no"
    return {"register": register, "one": one, "other": other, "same": words, "reason": reason}


def check(row_id: str, row: Mapping[str, str]) -> None:
    """Refuse a decision that is not on two rows of one register."""
    if set(row) != _KEYS or row["register"] not in ALIKE or row["same"] not in ("yes", "no"):
        raise PostingRefused("A decision on two ids of one register was expected.")
    if row["one"] == row["other"] or row_id != pair_id(row["register"], row["one"], row["other"]):
        raise PostingRefused("A decision is on two different ids, under the id of their pair.")


def names(decisions: Iterable[Mapping[str, str]]) -> dict[str, str]:
    """For each id that others name too, written register:id, the one its thing goes by."""
    group: dict[str, set[str]] = {}
    for row in decisions:
        if row["same"] == "yes":
            ends = [f"{row['register']}:{row[end]}" for end in ("one", "other")]
            joined = set(ends).union(*(group.get(end, ()) for end in ends))
            group |= dict.fromkeys(joined, joined)
    return {each: min(joined, key=lambda name: (len(name), name)) for each, joined in group.items()}


def read(connection: Connection) -> dict[str, str]:
    """The names as all decisions of this ledger give them."""
    return names_of(_DECIDED.run(connection, {"register_is": SAME}).scalars())


def names_of(decided: Iterable[str | None]) -> dict[str, str]:
    """The names as the stored words of all decisions give them."""
    return names(msgspec.json.decode(row, type=dict[str, str]) for row in decided if row)


def called(known: Names, each: str) -> list[str]:
    """Every id of the thing one of them names, written register:id."""
    by = known.get(each, each)
    return sorted({each, by, *(alias for alias, name in known.items() if name == by)})


def rebalance(connection: Connection, known: Names, places: Iterable[str]) -> None:
    """Sum the balances of places anew from their mass lines, each under the name it goes by."""
    wanted = sorted(set(places))
    should: dict[tuple[str, str], int] = {}
    for place in wanted:
        line = schema.transfer.c
        gain = case((line.target == place, line.mass_mg), else_=-line.mass_mg)
        sums = select(line.refrigerant, dialect.total(gain)).where(
            or_(line.source == place, line.target == place)
        )
        for refrigerant, mass_mg in connection.execute(sums.group_by(line.refrigerant)):
            key = (known.get(place, place), refrigerant)
            should[key] = should.get(key, 0) + mass_mg
    table = schema.balance
    stored = connection.execute(select(table).where(table.c.place.in_(wanted)))
    held = {(row.place, row.refrigerant): row.mass_mg for row in stored}
    for place, refrigerant in sorted(should.keys() | held.keys()):
        mass_mg = should.get((place, refrigerant), 0)
        if mass_mg != held.get((place, refrigerant), 0):
            row = {"place": place, "refrigerant": refrigerant, "mass_mg": mass_mg}
            connection.execute(_PUT_BALANCE, row)
