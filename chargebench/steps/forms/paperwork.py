"""What decides the money and the next visit: maker, time and parts, resealing, follow-up."""

from chargebench.steps.form import Asks, Field, Form
from chargebench.steps.forms.common import SAFETY_LIST, reading
from chargebench.steps.forms.verifying import EXTENSIONS, PAPERS, TESTS
from chargebench.units import Kind

# What a maker's figure can be of: as chosen -> key of the reading or difference, and its kind.
MAKERS_READINGS: dict[str, tuple[str, Kind]] = {
    "superheat": ("superheat", Kind.DIFFERENCE),
    "subcooling": ("subcooling", Kind.DIFFERENCE),
    "condensing over ambient": ("condensing_split", Kind.DIFFERENCE),
    "air over evaporating": ("evaporator_difference", Kind.DIFFERENCE),
    "suction pressure": ("suction_pressure", Kind.PRESSURE),
    "condensing pressure": ("discharge_pressure", Kind.PRESSURE),
    "box temperature": ("box", Kind.TEMPERATURE),
    "suction line temperature": ("suction_line", Kind.TEMPERATURE),
    "liquid line temperature": ("liquid_line", Kind.TEMPERATURE),
    "discharge line temperature": ("discharge_line", Kind.TEMPERATURE),
    "condenser surface": ("condenser_surface", Kind.TEMPERATURE),
    "evaporator surface, inlet": ("evaporator_inlet", Kind.TEMPERATURE),
    "evaporator surface, outlet": ("evaporator_outlet", Kind.TEMPERATURE),
    "compressor current": ("current", Kind.CURRENT),
}
SUPPORT = Form(
    "support",
    "Maker",
    "The maker's expected figures, calls and authorisations.",
    (
        Field(
            "figures",
            "Maker's figures",
            Asks.LINES,
            fields=(
                Field(
                    "reading",
                    "Of the reading",
                    Asks.CHOICE,
                    choices=tuple(MAKERS_READINGS),
                    hint="Held against today's; a figure of another kind stands in words below.",
                ),
                Field("what", "In words", example="box at -20 °C"),
                Field("expected", "Expected", required=True, example="6 K, or 5 to 8 K"),
                Field("tolerance", "Tolerance, either side", example="1.5 K"),
                Field("given_by", "Given by", example="service sheet, support line"),
            ),
        ),
        Field(
            "calls",
            "Calls",
            Asks.LINES,
            fields=(
                Field("at", "When", Asks.WHEN, example="2026-11-25 14:30"),
                Field("who", "With whom", required=True),
                Field("about", "About", required=True),
                Field("number", "Authorisation or claim number"),
            ),
        ),
    ),
)
TIME_AND_PARTS = Form(
    "time_and_parts",
    "Time, parts",
    "What the visit took.",
    (
        Field("arrived", "Arrived", Asks.WHEN, example="2026-11-25 08:10"),
        Field("left", "Left", Asks.WHEN, example="2026-11-25 11:40"),
        reading("travel", "Travel", Kind.DURATION, "40 min"),
        Field(
            "parts",
            "Parts",
            Asks.LINES,
            fields=(
                Field("part", "Part", required=True, example="filter drier"),
                Field("number", "Number"),
                reading("count", "Count", Kind.NUMBER, "1"),
                Field("work", "Work done on it", example="replaced"),
            ),
        ),
        Field("remarks", "Remarks", Asks.LONG_TEXT),
    ),
)
CLOSE = Form(
    "close",
    "Reseal",
    "The circuit closed, labelled and left as it should be.",
    (
        Field("resealed", "Process stub resealed, service fittings off", Asks.YES_NO),
        Field("leak_checked", "Leak checked after charging and before leaving", Asks.YES_NO),
        Field("labels", "Labels and markings in place", Asks.YES_NO),
        Field(
            "ends",
            "Equipment is",
            Asks.CHOICE,
            required=True,
            choices=("left running", "left off", "taken out of service"),
        ),
        Field(
            "disposal",
            "Recovery and disposal",
            Asks.LONG_TEXT,
            hint="Where it is taken out of service: what was done, and who takes the equipment.",
        ),
        SAFETY_LIST,
        Field("remarks", "Remarks", Asks.LONG_TEXT),
    ),
)
FOLLOW_UP = Form(
    "follow_up",
    "Follow-up",
    "What is to be looked at again, when, and how it turned out.",
    (
        Field("due", "Due on", Asks.DATE, example="2026-12-16"),
        Field("what", "What to look at", Asks.LONG_TEXT, required=True),
        Field("done_on", "Looked at on", Asks.DATE),
        Field("result", "Result", Asks.LONG_TEXT),
        Field("normal_running", "Running as normal since", Asks.DATE),
        TESTS,
        EXTENSIONS,
        PAPERS,
    ),
)
