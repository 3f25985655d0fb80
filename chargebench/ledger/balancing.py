"""Running balances: moved by mass lines, and held against what a cylinder can hold."""

from collections.abc import Iterator, Mapping, Sequence
from functools import cache

from sqlalchemy import Connection, bindparam, select, text

from chargebench.errors import Overdrawn, WrongRefrigerant
from chargebench.ledger import dialect, projection, sameness, schema
from chargebench.ledger.entry import Transfer, mass_words
from chargebench.ledger.prepared import Prepared
from chargebench.words import say

_GAIN = ["place", "refrigerant", "mass_mg"]
_OTHERS = Prepared(
    select(schema.balance.c.refrigerant, schema.balance.c.mass_mg).where(
        schema.balance.c.place == bindparam("place_is"),
        schema.balance.c.refrigerant != bindparam("refrigerant_is"),
        schema.balance.c.mass_mg > 0,
    )
)


@cache
def _add_to_balances(count: int) -> tuple[Prepared, list[str]]:
    """What balances gain, and what they then hold: no bench reads while another writes."""
    values, names = dialect.rows_of(_GAIN, count)
    written = (
        f"INSERT INTO balance ({', '.join(_GAIN)}) VALUES {values} "  # noqa: S608
        "ON CONFLICT (place, refrigerant) DO UPDATE SET "
        "mass_mg = balance.mass_mg + excluded.mass_mg RETURNING place, refrigerant, mass_mg"
    )
    return Prepared(text(written)), names


def move_checked(
    connection: Connection,
    transfers: tuple[Transfer, ...],
    names: sameness.Names,
    may_overdraw_mg: Mapping[str, int],
) -> None:
    """Move the running balances, then hold what they now say against what a cylinder can hold."""
    allowed = {names.get(place, place): mass for place, mass in may_overdraw_mg.items()}
    gains, filled = turnover(transfers, names)
    if filled:  # before any balance is locked, so benches never wait for each other in a ring
        dialect.of(connection).hold(connection, [place for place, _ in filled])
    for place, refrigerant, gain, left in move(connection, gains):
        if gain < 0 and place.startswith("cylinder:") and left < -allowed.get(place, 0):
            raise Overdrawn(
                say(
                    "Cylinder {removeprefix} holds {mass_words} of {refrigerant} by the "
                    "book; {mass_words_2} was to be taken. Put the cylinder on the scale, "
                    "or correct the amount.",
                    removeprefix=place.removeprefix("cylinder:"),
                    mass_words=mass_words(left - gain),
                    refrigerant=refrigerant,
                    mass_words_2=mass_words(-gain),
                )
            )
    for place, refrigerant in filled:
        check_content(connection, place, refrigerant)


def turnover(
    transfers: Sequence[Transfer], names: sameness.Names
) -> tuple[dict[tuple[str, str], int], list[tuple[str, str]]]:
    """What each place gains of each refrigerant, and what goes into which cylinder."""
    gains: dict[tuple[str, str], int] = {}
    filled: dict[tuple[str, str], None] = {}
    for line in transfers:
        source, target = (names.get(end, end) for end in (line.source, line.target))
        taken, given = (source, line.refrigerant), (target, line.refrigerant)
        gains[taken] = gains.get(taken, 0) - line.mass_mg
        gains[given] = gains.get(given, 0) + line.mass_mg
        if line.mass_mg and target.startswith("cylinder:"):
            filled[given] = None
    return gains, list(filled)


def move(
    connection: Connection, gains: Mapping[tuple[str, str], int]
) -> Iterator[tuple[str, str, int, int]]:
    """Move the running balances; each with its gain and what is then left."""
    ordered = sorted(gains.items())  # one order, so benches never deadlock
    if not ordered:
        return
    statement, names = _add_to_balances(len(ordered))
    given = [value for key, gain in ordered for value in (*key, gain)]
    rows = statement.run(connection, dict(zip(names, given, strict=True)))
    left = {(place, refrigerant): mass_mg for place, refrigerant, mass_mg in rows}
    for (place, refrigerant), gain in ordered:
        yield place, refrigerant, gain, left[place, refrigerant]


def check_content(connection: Connection, place: str, refrigerant: str) -> None:
    """Refuse to mix refrigerants in a cylinder that is not registered as mixed waste."""
    cylinder = place.removeprefix("cylinder:")
    row = projection.row_content(connection, "cylinder", cylinder) or {}
    if row.get("contents") == "mixed waste":
        return
    registered = row.get("refrigerant") or refrigerant
    if registered != refrigerant:
        raise WrongRefrigerant(
            say(
                "Cylinder {cylinder} is registered for {registered}; {refrigerant} does "
                "not go into it. Choose another cylinder, or register this one as mixed "
                "waste.",
                cylinder=cylinder,
                registered=registered,
                refrigerant=refrigerant,
            )
        )
    other = _OTHERS.run(connection, {"place_is": place, "refrigerant_is": refrigerant}).first()
    if other is not None:
        raise WrongRefrigerant(
            say(
                "Cylinder {cylinder} holds {mass_words} of {other}; {refrigerant} does "
                "not go into it. Choose another cylinder, or register this one as mixed "
                "waste.",
                cylinder=cylinder,
                mass_words=mass_words(other[1]),
                other=other[0],
                refrigerant=refrigerant,
            )
        )
