"""What each state of a reading says of each fault: the trade's reasoning as data.

Every line is common practice; none is from a standard.
"""

from enum import StrEnum


class Hypothesis(StrEnum):
    """Faults weighed against each other."""

    LOW_CHARGE = "low charge"
    RESTRICTION = "restriction"
    AIRFLOW = "poor airflow or iced coil"
    VALVE = "valve fault"
    OVERCHARGE = "overcharge"
    CONDENSER = "dirty condenser"


class Says(StrEnum):
    """What a reading says of a fault."""

    FOR = "for"
    AGAINST = "against"
    NOTHING = "nothing"


class Measure(StrEnum):
    """What can be measured or seen."""

    CONDENSER = "condenser surface"
    FROST = "frost pattern"
    EVAPORATOR_FAN = "evaporator fan"
    CONDENSER_FAN = "condenser fan"
    BOX = "box temperature"
    CURRENT = "compressor current"
    DRIER = "temperature drop across the drier"
    SPLIT = "condensing split"
    EVAPORATOR = "evaporator difference"
    SUPERHEAT = "superheat"
    SUBCOOLING = "subcooling"


class Frost(StrEnum):
    """How frost lies on the evaporator and its lines."""

    EVEN = "even over the whole coil"
    INLET_ONLY = "only at the inlet"
    SPOT = "a cold spot in the liquid line or drier"
    ICED = "iced solid"
    FLOODED = "out along the suction line"
    NONE = "none where there should be"


class CondenserState(StrEnum):
    """How the condenser surface looks."""

    CLEAN = "clean"
    DIRTY = "dirty"


class FanState(StrEnum):
    """How a fan turns."""

    RUNS = "runs"
    WEAK = "slow or stopped"


EASE = tuple(Measure)  # easiest first: seen, then felt, then measured
# With hoses, or from surfaces with more doubt; all others need no hose at all.
BY_PRESSURE = frozenset((Measure.SPLIT, Measure.EVAPORATOR, Measure.SUPERHEAT, Measure.SUBCOOLING))

_F, _A, _N = Says.FOR, Says.AGAINST, Says.NOTHING
_ORDER = tuple(Hypothesis)
_Row = tuple[Says, str]
_FAN_FIRST = "Mend the fan first: until then the other readings mislead."
_EVERY = "Every fault on the list does this."
_APART = "Has no bearing on it."
_STARVED = "The evaporator gets too little liquid and the vapour is heated long after boiling."
_FED = "An evaporator fed enough liquid speaks against too little reaching it."
_BACKED = "Liquid that can not pass on is held back in the condenser."


def _rows(*rows: _Row) -> dict[Hypothesis, _Row]:
    return dict(zip(_ORDER, rows, strict=True))


def _alone(fault: Hypothesis, row: _Row, others: str = _APART) -> dict[Hypothesis, _Row]:
    return {each: row if each is fault else (Says.NOTHING, others) for each in _ORDER}


SAYS: dict[tuple[Measure, str], dict[Hypothesis, _Row]] = {
    (Measure.SUPERHEAT, "high"): _rows(
        (_F, _STARVED),
        (_F, _STARVED),
        (_A, "Too little air leaves liquid unboiled, so the superheat falls."),
        (_F, "A valve that opens too little starves the evaporator."),
        (_A, "Too much charge feeds the evaporator rather more."),
        (_N, "High head pressure hardly raises superheat."),
    ),
    (Measure.SUPERHEAT, "usual"): _rows(
        (_N, "An expansion valve hides a shortage until vapour reaches it."),
        (_A, _FED),
        (_A, "With too little air the superheat would fall."),
        (_A, "A valve that holds its superheat works."),
        (_N, "An expansion valve hides an overcharge too."),
        (_N, _APART),
    ),
    (Measure.SUPERHEAT, "low"): _rows(
        (_A, _FED),
        (_A, _FED),
        (_F, "Too little air or ice on the coil leaves liquid unboiled."),
        (_F, "A valve stuck open, or a loose bulb, overfeeds."),
        (_F, "With a capillary tube too much charge overfeeds."),
        (_N, "Head pressure pushes more through a capillary tube, but slightly."),
    ),
    (Measure.SUBCOOLING, "high"): _rows(
        (_A, "Liquid stands in the condenser: there is some to spare."),
        (_F, _BACKED),
        (_N, _APART),
        (_F, "A valve that opens too little holds liquid back in the condenser."),
        (_F, "What is too much stands as liquid in the condenser."),
        (_N, "A dirty condenser shifts temperatures, not much the subcooling."),
    ),
    (Measure.SUBCOOLING, "usual"): _rows(
        (_A, "Liquid stands in the condenser as it should; on a capillary tube that proves less."),
        (_N, "A restriction downstream may hold back little."),
        (_N, _APART),
        (_N, "A valve may fail without changing it much."),
        (_A, "Too much charge would stand as more subcooling."),
        (_N, _APART),
    ),
    (Measure.SUBCOOLING, "low"): _rows(
        (_F, "There is hardly any liquid left standing in the condenser."),
        (_A, "A restriction would hold liquid back."),
        (_N, _APART),
        (_N, "A valve that overfeeds lowers it, one that starves raises it."),
        (_A, "Too much charge would stand as more subcooling."),
        (_N, "A dirty condenser shifts temperatures, not much the subcooling."),
    ),
    (Measure.SPLIT, "high"): _rows(
        (_A, "Too little charge gives the condenser less heat to shed."),
        (_N, "Held-back liquid takes some surface, a starved coil brings less heat."),
        (_A, "Less heat taken up means less to shed."),
        (_N, "Depends on whether it starves or overfeeds."),
        (_F, "Standing liquid takes condensing surface away."),
        (_F, "Dirt, or too little air, keeps the heat in."),
    ),
    (Measure.SPLIT, "usual"): _rows(
        (_N, "A small shortage does not show here."),
        (_N, "A partial restriction does not show here."),
        (_N, _APART),
        (_N, _APART),
        (_N, "A small overcharge does not show here."),
        (_A, "A blocked condenser would raise it."),
    ),
    (Measure.SPLIT, "low"): _rows(
        (_F, "Little refrigerant goes round, so there is little heat to shed."),
        (_F, "Little refrigerant goes round, so there is little heat to shed."),
        (_F, "Little heat taken up, little to shed."),
        (_N, "Depends on whether it starves or overfeeds."),
        (_A, "Standing liquid would raise it."),
        (_A, "A blocked condenser would raise it."),
    ),
    (Measure.EVAPORATOR, "high"): _rows(
        (_F, "A starved coil boils at a lower temperature."),
        (_F, "A starved coil boils at a lower temperature."),
        (_F, "With little air the coil falls far below it."),
        (_F, "A valve that opens too little lowers the boiling temperature."),
        (_A, "Too much charge raises the boiling temperature."),
        (_N, _APART),
    ),
    (Measure.EVAPORATOR, "usual"): _rows(
        (_N, "A small shortage does not show here."),
        (_A, "A restriction would lower the boiling temperature."),
        (_A, "Poor airflow would raise the difference."),
        (_N, "A valve may hunt around the right figure."),
        (_N, _APART),
        (_N, _APART),
    ),
    (Measure.EVAPORATOR, "low"): _rows(
        (_A, "A starved coil would boil colder."),
        (_A, "A starved coil would boil colder."),
        (_A, "Poor airflow would raise the difference."),
        (_F, "A valve that overfeeds raises the boiling temperature."),
        (_F, "Too much charge raises the boiling temperature."),
        (_F, "High head pressure weakens the compressor's suction."),
    ),
    (Measure.DRIER, "high"): _alone(
        Hypothesis.RESTRICTION, (_F, "Liquid that cools across the drier is being throttled there.")
    ),
    (Measure.DRIER, "usual"): _alone(
        Hypothesis.RESTRICTION,
        (_A, "Not at the drier; a capillary tube can still be blocked."),
    ),
    (Measure.BOX, "high"): _rows(*((_N, _EVERY),) * 6),
    (Measure.BOX, "usual"): _rows(
        *((_N, "A box at its set point may still run too long to hold it."),) * 6
    ),
    (Measure.CURRENT, "high"): _rows(
        (_A, "Little gas to pump means little current."),
        (_A, "Little gas to pump means little current."),
        (_A, "Low suction means little current."),
        (_N, "Depends on whether it starves or overfeeds."),
        (_F, "High head and dense suction load the compressor."),
        (_F, "High head loads the compressor."),
    ),
    (Measure.CURRENT, "usual"): _rows(*((_N, "Faults of a small degree do not show here."),) * 6),
    (Measure.CURRENT, "low"): _rows(
        (_F, "Little gas to pump means little current."),
        (_F, "Little gas to pump means little current."),
        (_N, "Low suction lowers it, but seldom as far."),
        (_N, "Depends on whether it starves or overfeeds."),
        (_A, "Dense suction gas would raise it."),
        (_A, "High head would raise it."),
    ),
    (Measure.FROST, Frost.EVEN.value): _rows(
        (_A, "Liquid reaches the whole coil."),
        (_A, "Liquid reaches the whole coil."),
        (_A, "An even thin frost lets air through."),
        (_N, "A valve may still overfeed."),
        (_N, "Too much charge frosts evenly too."),
        (_N, _APART),
    ),
    (Measure.FROST, Frost.INLET_ONLY.value): _rows(
        (_F, "Liquid is used up soon after the inlet."),
        (_F, "Liquid is used up soon after the inlet."),
        (_A, "Too little air would let frost grow over the whole coil."),
        (_F, "A valve that starves feeds the inlet only."),
        (_A, "Too much charge would fill the coil."),
        (_N, _APART),
    ),
    (Measure.FROST, Frost.SPOT.value): _alone(
        Hypothesis.RESTRICTION, (_F, "A cold spot is where the liquid is throttled.")
    ),
    (Measure.FROST, Frost.ICED.value): _alone(
        Hypothesis.AIRFLOW,
        (_F, "Ice keeps the air out, whatever first caused it."),
        "Behind ice no pattern can be read: defrost first.",
    ),
    (Measure.FROST, Frost.FLOODED.value): _rows(
        (_A, "Liquid comes past the coil."),
        (_A, "Liquid comes past the coil."),
        (_F, "Without air it does not boil in the coil."),
        (_F, "A valve stuck open overfeeds."),
        (_F, "Too much charge spills over into the suction line."),
        (_N, _APART),
    ),
    (Measure.FROST, Frost.NONE.value): _rows(
        (_F, "Too little refrigerant to cool the coil."),
        (_F, "Hardly any refrigerant reaches the coil."),
        (_A, "Too little air would make it colder."),
        (_F, "A valve that stays shut feeds nothing."),
        (_A, "Too much charge does not leave a coil dry."),
        (_N, _APART),
    ),
    (Measure.CONDENSER, CondenserState.DIRTY.value): _alone(
        Hypothesis.CONDENSER,
        (_F, "Dirt was seen."),
        "Clean it first: until then the other readings mislead.",
    ),
    (Measure.CONDENSER, CondenserState.CLEAN.value): _alone(
        Hypothesis.CONDENSER, (_A, "It was seen to be clean, as far as one can look in.")
    ),
    (Measure.CONDENSER_FAN, FanState.RUNS.value): _alone(
        Hypothesis.CONDENSER, (_N, "A running fan does not move air through dirt.")
    ),
    (Measure.CONDENSER_FAN, FanState.WEAK.value): _alone(
        Hypothesis.CONDENSER, (_F, "Without air the condenser acts as a dirty one."), _FAN_FIRST
    ),
    (Measure.EVAPORATOR_FAN, FanState.RUNS.value): _alone(
        Hypothesis.AIRFLOW,
        (_N, "A running fan does not move air through ice or past a blocked grille."),
    ),
    (Measure.EVAPORATOR_FAN, FanState.WEAK.value): _alone(
        Hypothesis.AIRFLOW, (_F, "Without the fan there is too little air."), _FAN_FIRST
    ),
}
