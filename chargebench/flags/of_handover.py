"""Flags of benches that worked without seeing each other, and of things met twice."""

from chargebench.flags.flag import Flag
from chargebench.ledger import Conflict, mass_words

_SAY = "open this flag and say how it was settled"
_LOOK = f"Look at both, put right what is wrong, then {_SAY}."
_CALLED = {"cylinder": "Cylinder", "person": "Person", "instrument": "Instrument"}


def of_conflict(conflict: Conflict, key: str, bench: str, job: str) -> Flag:
    """The flag of one conflict; `key` leads back to it, `bench` names the file's, `job` its job."""
    entry = f"Entry {conflict.number} of bench {conflict.bench}"
    thing = conflict.place.partition(":")[2]
    match conflict.what:
        case "overdrawn":
            says = (
                f"Cylinder {thing} was overdrawn by two benches: with what bench {bench} handed "
                f"over it stands at −{mass_words(-conflict.mass_mg)} of {conflict.refrigerant}. "
                f"Put it on the scale, book the difference, then {_SAY}."
            )
        case "mixed":
            says = (
                f"{conflict.refrigerant} went into cylinder {thing} at bench {bench}, and another "
                "refrigerant at another bench. Do not use it until it is known what is in it. "
                f"{_LOOK}"
            )
        case "closed-job":
            says = (
                f"{entry} belongs to job {job}, which was closed meanwhile. It is recorded, but "
                f"was not in sight when the job was closed. {_LOOK}"
            )
        case "signed-twice":
            says = (
                f"{entry} signs the step “{conflict.step}” of job {job}, which another bench has "
                "signed too. Both moved what they say they moved; take one back if it was done "
                f"once, then {_SAY}."
            )
        case "reversed-twice":
            says = (
                f"{entry} takes back what another bench had taken back already, so its masses were "
                "turned round twice. Weigh what it moved, book the difference, then "
                f"{_SAY}."
            )
        case "row":
            says = _of_row(conflict)
        case _:
            says = (
                f"Entries of this bench itself ({bench}) came back in a file: its records had "
                f"been set back to an older copy. {_LOOK}"
            )
    level = "stop" if conflict.what == "mixed" else "check"
    return Flag("stop" if level == "stop" else "check", f"bench-{conflict.what}", says, key)


def _of_row(conflict: Conflict) -> str:
    """Two benches wrote different words about one row."""
    serials = (conflict.here.get("serial", ""), conflict.there.get("serial", ""))
    if all(serials):
        return (
            f"{_CALLED.get(conflict.register, conflict.register.capitalize())} {conflict.row} has "
            f"serial number {serials[0]} here and {serials[1]} at bench {conflict.bench}: perhaps "
            "two things under one id. Read the plate. If they are two, register one under another "
            f"id and book what it holds over to it; then {_SAY}."
        )
    differ = "; ".join(
        f"{key.replace('_', ' ')} “{words}” here, “{conflict.there.get(key, '')}” there"
        for key, words in conflict.here.items()
    )
    stands = "here" if conflict.stands == "here" else f"of bench {conflict.bench}"
    return (
        f"{conflict.register.capitalize()} {conflict.row} was changed here and at bench "
        f"{conflict.bench} ({differ}). The words {stands} stand, for they are the later ones. "
        f"{_LOOK}"
    )


def of_met_twice(register: str, one: str, other: str, *, what: str, number: str) -> Flag:
    """Two ids that may name one thing, for a person to decide."""
    return Flag(
        "check",
        "met-twice",
        f"{_CALLED[register]} {one} and {other} have the same {what} {number}. Open this flag and "
        "say whether they are one thing; both are then shown as one.",
        f"twice:{register}:{one}={other}",
        number,
    )
