"""Who may do what: one table, asked by every act that records.

Reading, exporting, verifying and keeping a backup record nothing and are open to everybody.
"""

from collections.abc import Mapping
from enum import StrEnum
from types import MappingProxyType

from chargebench.words import joined, say

Row = Mapping[str, str]


class Act(StrEnum):
    """What a person can want to do, worded to follow “to”."""

    RECORD = "sign steps of jobs and stock work"
    CORRECT_OWN = "take back an entry of their own"
    CORRECT_OTHERS = "take back what somebody else signed"
    CLOSE = "close a job or open it again"
    REGISTER = "change the registers and the shop's settings"
    PEOPLE = "register people and set their passphrases anew"
    TAKE_IN = "take in what was recorded elsewhere"


MAY: Mapping[str, frozenset[Act]] = MappingProxyType(
    {
        "technician": frozenset({Act.RECORD, Act.CORRECT_OWN}),
        "shop": frozenset(Act),
        "officer": frozenset(),
    }
)
_OF_KIND = {  # of an entry; all others are job or stock work
    "job-closed": Act.CLOSE,
    "job-reopened": Act.CLOSE,
    "taken-in": Act.TAKE_IN,
    "handed-over": Act.TAKE_IN,
    "same-as": Act.REGISTER,
    "bench-named": Act.REGISTER,
}
_CALLED = {"technician": "a technician", "shop": "of the shop", "officer": "an officer"}


def of_kind(kind: str) -> Act:
    """What it takes to record an entry of a kind."""
    return _OF_KIND.get(kind, Act.RECORD)


def role(row: Row) -> str:
    """A person's role.

    Somebody registered without one counts as of the shop: until roles were asked for everybody
    could do everything, and an upgrade must not lock a shop out of its own registers.
    """
    return row.get("role") or "shop"


def acts(person: str, people: Mapping[str, Row]) -> frozenset[Act]:
    """What a person of the register may do.

    Where nobody is of the shop, technicians do its work too: somebody has to, and a business of
    one person need not choose between two roles.
    """
    mine = role(people[person])
    if mine == "technician" and all(role(row) != "shop" for row in people.values()):
        mine = "shop"
    return MAY.get(mine, frozenset())


def refusal(act: Act, person: str, people: Mapping[str, Row]) -> str:
    """Why a person may not do something, and who may; empty where they may."""
    if not people:
        return ""  # a shop whose first person is about to be taken in
    if person not in people:
        return say(
            "“{person}” is not in the register of people; choose somebody who is.", person=person
        )
    if act in acts(person, people):
        return ""
    who = [row.get("name", key) for key, row in people.items() if act in acts(key, people)]
    name, mine = people[person].get("name", person), role(people[person])
    return say(
        "{name} is {mine} and may not {act}. Expected {who}.",
        name=name,
        mine=_CALLED.get(mine, mine),
        act=act,
        who=joined(" or ", who) or "somebody of the shop",
    )


def nobody_left(people: Mapping[str, Row]) -> bool:
    """Whether nobody could change the register of people any more."""
    return bool(people) and not any(Act.PEOPLE in acts(person, people) for person in people)
