"""What a verification compared, in sentences."""

from collections.abc import Sequence

from chargebench.ledger.scan import Checkpoint, Scan
from chargebench.words import joined, say


def checked(
    scan: Scan,
    inside: Sequence[Checkpoint],
    outside: Sequence[Checkpoint],
    pictures: int,
) -> tuple[str, ...]:
    """What was compared with what, as sentences."""
    chains = joined(
        "; ",
        (
            say("bench {name}: {number} entries", name=name, number=bench.number)
            for name, bench in sorted(scan.benches.items(), key=lambda each: str(each[0]))
        ),
    )
    return (
        say(
            "{entries} entries were read ({chains}): numbers without a gap, each "
            "hash recomputed from what is stored and from the hash before it.",
            entries=scan.entries,
            chains=chains or "none yet",
        ),
        say(
            "{lines} mass lines were compared with the hashed content of their entries.",
            lines=scan.lines,
        ),
        say(
            "{count} balances were summed anew from the mass lines; over all places "
            "every refrigerant must sum to zero.",
            count=len(scan.balances),
        ),
        say(
            "{count} register rows, {count_2} jobs and {count_3} reversals were "
            "rebuilt from the entries and compared.",
            count=len(scan.replay.rows),
            count_2=len(scan.replay.jobs),
            count_3=len(scan.replay.reversals),
        ),
        say(
            "{days} totals of days and {places} mentions of places were counted anew.",
            days=len(scan.replay.days),
            places=len(scan.replay.places),
        ),
        say(
            "The end of each chain was compared with its kept head, with {count} "
            "heads kept at exports in this file and {count_2} kept elsewhere.",
            count=len(inside),
            count_2=len(outside),
        ),
        say(
            "{pictures} pictures were compared with the hashes they are kept under.",
            pictures=pictures,
        ),
        "The guards against changing records and the pages of the file were examined.",
    )
