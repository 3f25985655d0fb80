"""Flags of benches that worked without seeing each other, and of things met twice."""

from chargebench.flags.flag import Flag
from chargebench.ledger import Conflict, mass_words
from chargebench.words import say

_SAY = "open this flag and say how it was settled"
_LOOK = say("Look at both, put right what is wrong, then {settle}.", settle=_SAY)
_CALLED = {"cylinder": "Cylinder", "person": "Person", "instrument": "Instrument"}


def of_conflict(conflict: Conflict, key: str, bench: str, job: str) -> Flag:
    """The flag of one conflict; `key` leads back to it, `bench` names the file's, `job` its job."""
    entry = say("Entry {number} of bench {bench}", number=conflict.number, bench=conflict.bench)
    thing = conflict.place.partition(":")[2]
    match conflict.what:
        case "overdrawn" | "mixed":
            says = _of_cylinder(conflict, thing, bench)
        case "closed-job":
            says = say(
                "{entry} belongs to job {job}, which was closed meanwhile. It is recorded, "
                "but was not in sight when the job was closed. {look}",
                entry=entry,
                job=job,
                look=_LOOK,
            )
        case "signed-twice":
            says = say(
                "{entry} signs the step “{step}” of job {job}, which another bench has "
                "signed too. Both moved what they say they moved; take one back if it was "
                "done once, then {settle}.",
                entry=entry,
                step=conflict.step,
                job=job,
                settle=_SAY,
            )
        case "reversed-twice":
            says = say(
                "{entry} takes back what another bench had taken back already, so its "
                "masses were turned round twice. Weigh what it moved, book the difference, "
                "then {settle}.",
                entry=entry,
                settle=_SAY,
            )
        case "row":
            says = _of_row(conflict)
        case _:
            says = say(
                "Entries of this bench itself ({bench}) came back in a file: its records "
                "had been set back to an older copy. {look}",
                bench=bench,
                look=_LOOK,
            )
    stops = conflict.what == "mixed"
    return Flag("stop" if stops else "check", f"bench-{conflict.what}", says, key)


def _of_cylinder(conflict: Conflict, thing: str, bench: str) -> str:
    """Two benches drew from one cylinder more than it held, or filled it with two refrigerants."""
    if conflict.what == "mixed":
        return say(
            "{refrigerant} went into cylinder {thing} at bench {bench}, and another "
            "refrigerant at another bench. Do not use it until it is known what is in "
            "it. {look}",
            refrigerant=conflict.refrigerant,
            thing=thing,
            bench=bench,
            look=_LOOK,
        )
    return say(
        "Cylinder {thing} was overdrawn by two benches: with what bench {bench} "
        "handed over it stands at −{mass} of {refrigerant}. Put it on the "
        "scale, book the difference, then {settle}.",
        thing=thing,
        bench=bench,
        mass=mass_words(-conflict.mass_mg),
        refrigerant=conflict.refrigerant,
        settle=_SAY,
    )


def _of_row(conflict: Conflict) -> str:
    """Two benches wrote different words about one row."""
    serials = (conflict.here.get("serial", ""), conflict.there.get("serial", ""))
    if all(serials):
        return say(
            "{called} {row} has serial number {serial} here and {other_serial} at bench "
            "{bench}: perhaps two things under one id. Read the plate. If they are "
            "two, register one under another id and book what it holds over to it; "
            "then {settle}.",
            called=_CALLED.get(conflict.register, conflict.register.capitalize()),
            row=conflict.row,
            serial=serials[0],
            other_serial=serials[1],
            bench=conflict.bench,
            settle=_SAY,
        )
    differ = "; ".join(
        say(
            "{key} “{words}” here, “{there}” there",
            key=key.replace("_", " "),
            words=words,
            there=conflict.there.get(key, ""),
        )
        for key, words in conflict.here.items()
    )
    stands = "here" if conflict.stands == "here" else say("of bench {bench}", bench=conflict.bench)
    return say(
        "{register} {row} was changed here and at bench {bench} ({differ}). The "
        "words {stands} stand, for they are the later ones. {look}",
        register=conflict.register.capitalize(),
        row=conflict.row,
        bench=conflict.bench,
        differ=differ,
        stands=stands,
        look=_LOOK,
    )


def of_met_twice(register: str, one: str, other: str, *, what: str, number: str) -> Flag:
    """Two ids that may name one thing, for a person to decide."""
    return Flag(
        "check",
        "met-twice",
        say(
            "{called} {one} and {other} have the same {what} {number}. Open this flag "
            "and say whether they are one thing; both are then shown as one.",
            called=_CALLED[register],
            one=one,
            other=other,
            what=what,
            number=number,
        ),
        f"twice:{register}:{one}={other}",
        number,
    )
