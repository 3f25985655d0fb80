"""Leak search: what to look at, what was looked at, and whether the detector was to be trusted."""

from collections.abc import Collection
from dataclasses import dataclass
from enum import StrEnum

from chargebench.units import Quantity, System, dimensions
from chargebench.words import joined, say

AIR_MOLAR_MASS = 28.96  # g/mol, dry air (ISO2533, table 1: 28.964 kg/kmol)
_PRESSURE_LEAST: dict[System, str] = {"SI": "2 bar", "IP": "29 psi"}
_PRESSURE_LEAST_PA = 200_000  # gauge; our own choice: below it little comes out to be found


class EquipmentKind(StrEnum):
    """Kinds of equipment whose components are listed."""

    CABINET = "self-contained cabinet"
    SPLIT = "split system"
    RACK = "rack"


class DetectorWord(StrEnum):
    """Whether what a detector did not find counts."""

    COUNTS = "counts"
    FAILED = "does not count"
    UNCHECKED = "not proven"


@dataclass(frozen=True, slots=True)
class Component:
    """One place to search."""

    key: str
    label: str
    hint: str


@dataclass(frozen=True, slots=True)
class Coverage:
    """How much of the list was searched."""

    done: tuple[Component, ...]
    left: tuple[Component, ...]
    everything: bool
    sentence: str


@dataclass(frozen=True, slots=True)
class DetectorCheck:
    """What the checks before and after say of a search."""

    word: DetectorWord
    reason: str


@dataclass(frozen=True, slots=True)
class Advice:
    """Something to heed in the search, and why."""

    advice: str
    reason: str


_COMMON = (
    Component("process-stubs", "Process stubs and their seals", "crimped or brazed ends"),
    Component("service-valves", "Service valves, cores and caps", "also line-tap valves left on"),
    Component("compressor", "Compressor: joints, terminals, shell seam", "oil marks"),
    Component("condenser", "Condenser: return bends, inlet, outlet", "rubbing on brackets"),
    Component("drier", "Filter-drier joints", "both ends"),
    Component("metering", "Capillary tube or expansion valve", "where it meets the coil"),
    Component("evaporator", "Evaporator: bends, plate, joints", "ice-pick holes, drain corrosion"),
    Component("suction-line", "Suction line and heat exchanger", "under the insulation"),
    Component("discharge-line", "Discharge line", "fatigue at the first bend"),
)
_OF: dict[EquipmentKind, tuple[Component, ...]] = {
    EquipmentKind.CABINET: (
        Component("door-heater", "Door-frame heater loop", "hot gas in the foam, if fitted"),
        Component("drain-pan-loop", "Drain-pan loop", "corrodes where it stands in water"),
    ),
    EquipmentKind.SPLIT: (
        Component("flares", "Flare joints at both units", "nut cracks, torque"),
        Component("line-set", "Line set between the units", "wall passages, rubbing, nails"),
        Component("reversing-valve", "Reversing valve", "if a heat pump"),
        Component("outdoor-valves", "Outdoor unit's stop valves", "under the caps"),
    ),
    EquipmentKind.RACK: (
        Component("receiver", "Receiver, sight glass, level controls", "fusible plug, seals"),
        Component("relief", "Relief valves and their vents", "a lifted valve seldom reseats"),
        Component("headers", "Suction, liquid and hot-gas headers", "saddles and supports"),
        Component("oil-system", "Oil separator, reservoir, floats", "union joints"),
        Component("ball-valves", "Isolation valves: stems and caps", "on each circuit"),
        Component("case-coils", "Coils and valves of each case or room", "every one, by number"),
        Component("pressure-controls", "Switches, transducers and their tubes", "chafed tubes"),
        Component("shaft-seals", "Shaft seals and gaskets of compressors", "open machines"),
        Component("remote-condenser", "Remote condenser and its valves", "on the roof: wind"),
    ),
}


def components(kind: EquipmentKind) -> tuple[Component, ...]:
    """Places to search on a kind of equipment, as a list to tick.

    Parameters
    ----------
    kind : EquipmentKind [-]
        Cabinet, split system or rack.

    Returns
    -------
    tuple of Component [-]
        In the order of the flow, then what this kind has besides.

    Source
    ------
    COMMON.
    """
    return _COMMON + _OF[kind]


def coverage(kind: EquipmentKind, ticked: Collection[str]) -> Coverage:
    """How much of the list was searched, so that "everything was scanned" is a record.

    Parameters
    ----------
    kind : EquipmentKind [-]
        Whose list.
    ticked : collection of str [-]
        Keys ticked; keys of no component on the list are ignored.

    Returns
    -------
    Coverage [-]
        Done, left, and a sentence.

    Source
    ------
    COMMON.
    """
    listed = components(kind)
    done = tuple(each for each in listed if each.key in ticked)
    left = tuple(each for each in listed if each.key not in ticked)
    if not left:
        sentence = say(
            "All {listed} places of a {kind} were searched.", listed=len(listed), kind=kind
        )
    elif not done:
        sentence = say(
            "None of the {listed} places of a {kind} was searched.", listed=len(listed), kind=kind
        )
    else:
        names = joined("; ", (each.label for each in left))
        sentence = say(
            "{done} of {listed} places were searched. Not searched: {names}.",
            done=len(done),
            listed=len(listed),
            names=names,
        )
    return Coverage(done, left, not left, sentence)


def detector_check(*, before: bool | None, after: bool | None) -> DetectorCheck:
    """Whether a search without a find counts, by the detector's checks before and after.

    Parameters
    ----------
    before, after : bool or None [-]
        Responded to a reference leak or gas; None where not checked.

    Returns
    -------
    DetectorCheck [-]
        Word and reason.

    Source
    ------
    COMMON.
    """
    if before is False or after is False:
        when = "before" if before is False else "after"
        return DetectorCheck(
            DetectorWord.FAILED,
            say("The detector failed its check {when} the search: search again.", when=when),
        )
    if before and after:
        return DetectorCheck(
            DetectorWord.COUNTS, "The detector answered before and after the search."
        )
    missing = joined(
        " and ",
        (name for name, answer in (("before", before), ("after", after)) if answer is None),
    )
    return DetectorCheck(
        DetectorWord.UNCHECKED,
        say("The detector was not checked {missing} the search.", missing=missing),
    )


@dimensions(
    molar_mass="[mass] / [substance]", system_pressure="[pressure]", air_pressure="[pressure]"
)
def advice(
    *,
    molar_mass: Quantity,
    system_pressure: Quantity | None,
    air_pressure: Quantity,
    wind: bool,
    system: System = "SI",
) -> tuple[Advice, ...]:
    """How to search: where first, against wind, and whether the pressure is enough.

    Parameters
    ----------
    molar_mass : Quantity [g/mol]
        Of the refrigerant.
    system_pressure : Quantity [Pa] or None
        Absolute, on the side searched; None where not read.
    air_pressure : Quantity [Pa]
        Absolute.
    wind : bool [-]
        Wind or draught at the place.
    system : System [-]
        Units the reasons speak in.

    Returns
    -------
    tuple of Advice [-]
        What to heed.

    Source
    ------
    COMMON; the pressure below which it warns, 2 bar gauge, is our own choice.
    """
    heavier = molar_mass.m_as("g/mol") > AIR_MOLAR_MASS
    found = [
        Advice("Search low first, below each joint.", "Its vapour is heavier than air and sinks.")
        if heavier
        else Advice("Search above each joint first.", "Its vapour is lighter than air and rises.")
    ]
    if wind:
        found.append(
            Advice(
                "Shield each joint and stop fans.", "Moving air thins a leak below what is seen."
            )
        )
    if system_pressure is None:
        found.append(Advice("Read the pressure first.", "Without pressure nothing comes out."))
    elif system_pressure.m_as("Pa") - air_pressure.m_as("Pa") < _PRESSURE_LEAST_PA:
        found.append(
            Advice(
                "Raise the pressure with dry nitrogen, within the design pressure.",
                say(
                    "Little comes out to be found below {pressure} gauge.",
                    pressure=_PRESSURE_LEAST[system],
                ),
            )
        )
    return tuple(found)
