"""The steps of a job, in the order they are worked through, and the form of each."""

from chargebench.steps.form import Asks, Field, Form
from chargebench.units import Kind


def _scale(key: str = "scale", label: str = "Scale") -> Field:
    return Field(key, label, Asks.ROW, register="instrument", only="scale", required=True)


def _reading(key: str, label: str, kind: Kind, example: str, *, required: bool = False) -> Field:
    return Field(key, label, Asks.READING, kind, example, required=required)


AIR = _reading("air_pressure", "Air pressure here", Kind.AIR_PRESSURE, "1013 hPa or 29.92 inHg")
FROST = (
    "none",
    "even over the whole evaporator",
    "only near the inlet",
    "only near the outlet",
    "heavy ice over the whole evaporator",
    "on the suction line back to the compressor",
    "on the drier or the capillary",
)
COIL = ("clean", "dusty", "clogged", "iced", "not seen")
FAN = ("running", "slow or blocked", "stopped", "none fitted", "not seen")
_RUNNING: tuple[Field, ...] = (
    AIR,
    Field("refrigerant_found", "Refrigerant found", Asks.REFRIGERANT, example="R290"),
    Field("tapped", "Gauges connected", Asks.YES_NO, hint="No: temperatures only, system sealed."),
    _reading("suction_pressure", "Suction pressure", Kind.PRESSURE, "12 psig"),
    _reading("suction_line", "Suction line temperature", Kind.TEMPERATURE, "-12.5 °C or 9 F"),
    _reading("discharge_pressure", "Condensing pressure", Kind.PRESSURE, "160 psig"),
    _reading("liquid_line", "Liquid line temperature", Kind.TEMPERATURE, "95 F"),
    _reading("discharge_line", "Discharge line temperature", Kind.TEMPERATURE, "70 °C"),
    _reading("condenser_surface", "Condenser surface, middle", Kind.TEMPERATURE, "43 °C"),
    _reading("evaporator_inlet", "Evaporator surface, inlet", Kind.TEMPERATURE, "-28 °C"),
    _reading("evaporator_outlet", "Evaporator surface, outlet", Kind.TEMPERATURE, "-26 °C"),
    _reading("ambient", "Air onto the condenser", Kind.TEMPERATURE, "24 °C"),
    _reading("box", "Box temperature", Kind.TEMPERATURE, "-16 °C"),
    _reading("set_point", "Set point", Kind.TEMPERATURE, "-20 °C"),
    _reading("current", "Compressor current", Kind.CURRENT, "2.1 A"),
    _reading("rated_current", "Rated current", Kind.CURRENT, "2.4 A"),
    Field("frost", "Frost", Asks.CHOICE, choices=FROST),
    Field("condenser_state", "Condenser", Asks.CHOICE, choices=COIL),
    Field("evaporator_state", "Evaporator", Asks.CHOICE, choices=COIL),
    Field("condenser_fan", "Condenser fan", Asks.CHOICE, choices=FAN),
    Field("evaporator_fan", "Evaporator fan", Asks.CHOICE, choices=FAN),
    Field("running", "Compressor runs", Asks.CHOICE, choices=("cycling", "all the time", "not")),
    Field("remarks", "Remarks", Asks.LONG_TEXT),
)

NAMEPLATE = Form(
    "nameplate",
    "Nameplate",
    "What the nameplate says, as read on the equipment today.",
    (
        Field("refrigerant", "Refrigerant", Asks.REFRIGERANT, required=True, example="R290"),
        _reading("charge", "Nameplate charge", Kind.MASS, "3.0 oz or 85 g", required=True),
        _reading("tolerance", "Charge tolerance", Kind.MASS, "2 g"),
        _reading("low_side_design", "Low-side design pressure", Kind.PRESSURE, "150 psig"),
        _reading("high_side_design", "High-side design pressure", Kind.PRESSURE, "320 psig"),
        Field("model", "Model"),
        Field("serial", "Serial number"),
        _reading("room_area", "Floor area of the room", Kind.AREA, "24 m²"),
        _reading("room_height", "Height of the room", Kind.LENGTH, "2.8 m"),
        Field("last_known_full", "Last known full on", Asks.DATE, example="2024-06-01"),
        Field("complaint", "Complaint", Asks.LONG_TEXT, example="not holding temperature"),
    ),
)
AS_FOUND = Form("as_found", "As found", "Readings before anything is changed.", _RUNNING)
FINDINGS = Form(
    "findings",
    "Findings",
    "What was found, why it happened, and what was set differently.",
    (
        Field("found", "Found", Asks.LONG_TEXT, required=True),
        Field("cause", "Cause", Asks.LONG_TEXT),
        Field("done", "Done", Asks.LONG_TEXT),
        Field(
            "settings",
            "Settings changed",
            Asks.LINES,
            fields=(
                Field("what", "Setting", required=True, example="defrosts a day"),
                Field("before", "Before", required=True, example="2"),
                Field("after", "After", required=True, example="4"),
                Field("why", "Why"),
            ),
        ),
    ),
)
SAFETY = Form(
    "safety",
    "Safety",
    "Before the circuit is opened: the area, the people, the tools.",
    (
        Field("ticks", "Safety list", Asks.TICKS, required=True),
        Field("detector", "Area detector", Asks.ROW, register="instrument", only="leak detector"),
        Field("ventilation", "How the area is ventilated", example="door open, fan at floor level"),
        Field(
            "place",
            "Where the work is done",
            Asks.CHOICE,
            choices=("outdoors", "workshop", "customer's room"),
        ),
        Field("remarks", "Remarks", Asks.LONG_TEXT),
    ),
)
LEAK_METHODS = (
    "electronic detector",
    "bubbles",
    "ultrasonic",
    "fluorescent dye already present",
    "trace gas",
    "oil traces by eye",
)
LEAK_SEARCH = Form(
    "leak_search",
    "Leak search",
    "Where was searched, with what, and what was found.",
    (
        Field("method", "Method", Asks.CHOICE, choices=LEAK_METHODS, required=True),
        Field("detector", "Detector", Asks.ROW, register="instrument", only="leak detector"),
        Field("checked_before", "Detector checked before", Asks.YES_NO),
        Field("checked_after", "Detector checked after", Asks.YES_NO),
        _reading("system_pressure", "System pressure", Kind.PRESSURE, "90 psig"),
        _reading("standing", "Standing time", Kind.DURATION, "20 min"),
        Field("wind", "Air movement", Asks.CHOICE, choices=("still", "draught", "windy")),
        Field("low_first", "Searched from the lowest point up", Asks.YES_NO),
        Field("components", "Components searched", Asks.TICKS),
        Field("all_accessible", "All visible and accessible parts searched", Asks.YES_NO),
        Field(
            "leaks",
            "Leaks found",
            Asks.LINES,
            fields=(
                Field("where", "Where", required=True, example="process valve core"),
                Field("how", "Seen by", Asks.CHOICE, choices=LEAK_METHODS),
                Field("repair", "Repair", example="stub pinched, brazed shut"),
                Field("verified", "Verified tight", Asks.YES_NO),
            ),
        ),
        Field("remarks", "Remarks", Asks.LONG_TEXT),
    ),
)
PRESSURE_TEST = Form(
    "pressure_test",
    "Pressure test",
    "Dry nitrogen, regulated and relieved; never oxygen or air.",
    (
        AIR,
        Field(
            "gas",
            "Gas",
            Asks.CHOICE,
            choices=("dry nitrogen", "nitrogen with trace gas"),
            required=True,
        ),
        Field("regulated", "Regulator and relief fitted", Asks.YES_NO, required=True),
        _reading("volume", "Internal volume", Kind.VOLUME, "4.5 L"),
        Field("gauge", "Gauge", Asks.ROW, register="instrument", only="pressure gauge"),
        _reading("gauge_resolution", "Gauge resolution", Kind.PRESSURE, "0.5 psig"),
        _reading("temperature_uncertainty", "Thermometer uncertainty", Kind.DIFFERENCE, "0.5 K"),
        _reading("start_pressure", "Pressure at start", Kind.PRESSURE, "150 psig", required=True),
        _reading(
            "start_temperature", "Temperature at start", Kind.TEMPERATURE, "72 F", required=True
        ),
        _reading("hold", "Held for", Kind.DURATION, "30 min", required=True),
        _reading("end_pressure", "Pressure at end", Kind.PRESSURE, "150 psig", required=True),
        _reading("end_temperature", "Temperature at end", Kind.TEMPERATURE, "71 F", required=True),
        Field("bubbles", "Joints soaped meanwhile", Asks.YES_NO),
        Field("remarks", "Remarks", Asks.LONG_TEXT),
    ),
)
RECOVERY = Form(
    "recovery",
    "Recovery",
    "What was taken out, into which cylinder, down to which level.",
    (
        AIR,
        Field(
            "how",
            "How",
            Asks.CHOICE,
            required=True,
            choices=("recovered", "released where the law allows", "nothing left in the system"),
        ),
        Field(
            "machine", "Recovery machine", Asks.ROW, register="instrument", only="recovery machine"
        ),
        Field("compressor_works", "Compressor works", Asks.YES_NO),
        Field(
            "opening",
            "The circuit is",
            Asks.CHOICE,
            choices=("opened for repair", "opened for major repair", "disposed of", "not opened"),
        ),
        Field(
            "lines",
            "Weighings",
            Asks.LINES,
            fields=(
                Field("cylinder", "Cylinder", Asks.ROW, register="cylinder", required=True),
                _scale(),
                _reading("before", "Cylinder before", Kind.SCALE, "9.125 kg", required=True),
                _reading("after", "Cylinder after", Kind.SCALE, "9.210 kg", required=True),
                Field("override", "Reason to fill above the limit"),
            ),
        ),
        _reading("level", "Level reached", Kind.PRESSURE, "-4 inHg"),
        _reading("released", "Mass released", Kind.MASS, "40 g"),
        Field("ground", "Why release is lawful", Asks.LONG_TEXT),
        Field("remarks", "Remarks", Asks.LONG_TEXT),
    ),
)
EVACUATION = Form(
    "evacuation",
    "Vacuum",
    "Pulled down, isolated, and watched: dry and tight, or not.",
    (
        Field("pump", "Vacuum pump", Asks.ROW, register="instrument", only="vacuum pump"),
        Field("gauge", "Vacuum gauge", Asks.ROW, register="instrument", only="vacuum gauge"),
        _reading("pulled_to", "Pulled down to", Kind.PRESSURE, "350 micron"),
        _reading("pulling_time", "Pump ran", Kind.DURATION, "45 min"),
        Field("breaks", "Times broken with nitrogen", Asks.CHOICE, choices=("0", "1", "2", "3")),
        _reading("coldest", "Coldest part", Kind.TEMPERATURE, "18 °C"),
        _reading("volume", "Internal volume", Kind.VOLUME, "4.5 L"),
        Field(
            "decay",
            "Decay test",
            Asks.LINES,
            fields=(
                _reading("at", "After", Kind.DURATION, "5 min", required=True),
                _reading("reading", "Reading", Kind.PRESSURE, "420 micron", required=True),
            ),
        ),
        Field("remarks", "Remarks", Asks.LONG_TEXT),
    ),
)
ARRANGEMENTS = ("cylinder on the scale", "equipment on the scale", "zeroed display")
HOSE_STATES = (
    "no hose, closed at the equipment",
    "liquid",
    "saturated vapour",
    "vapour at suction pressure",
)
CHARGE_KINDS = ("into an evacuated system", "brought to full charge", "part of a charge")
WEIGH_IN = Form(
    "weigh_in",
    "Weigh-in",
    "The charge, weighed to the gram against the nameplate.",
    (
        AIR,
        Field("kind", "Charge", Asks.CHOICE, choices=CHARGE_KINDS, required=True),
        Field(
            "lines",
            "Cylinders",
            Asks.LINES,
            required=True,
            fields=(
                Field("cylinder", "Cylinder", Asks.ROW, register="cylinder", required=True),
                _scale(),
                Field(
                    "arrangement", "On the scale", Asks.CHOICE, choices=ARRANGEMENTS, required=True
                ),
                _reading("start", "Start reading", Kind.SCALE, "4312.5 g", required=True),
                _reading("end", "End reading", Kind.SCALE, "4223.8 g", required=True),
                Field("drawn_as", "Drawn as", Asks.CHOICE, choices=("liquid", "vapour")),
                Field(
                    "hose_state", "Hose at the end", Asks.CHOICE, choices=HOSE_STATES, required=True
                ),
                _reading("hose_length", "Hose length", Kind.LENGTH, "36 in"),
                _reading("hose_bore", "Hose bore", Kind.LENGTH, "4.8 mm or 3/16 in"),
                _reading("hose_volume", "or hose volume", Kind.VOLUME, "16.5 mL"),
                _reading("hose_temperature", "Hose temperature", Kind.TEMPERATURE, "20 °C"),
                _reading("hose_pressure", "Pressure in the hose", Kind.PRESSURE, "15 psig"),
            ),
        ),
        Field("origin", "Refrigerant is", Asks.CHOICE, choices=("virgin", "recycled", "reclaimed")),
        Field("remarks", "Remarks", Asks.LONG_TEXT),
    ),
)
AS_LEFT = Form("as_left", "As left", "Readings with the work done.", _RUNNING)
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
                Field("what", "Figure", required=True, example="suction pressure, box at -20 °C"),
                Field("expected", "Expected", required=True, example="2 to 5 psig"),
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
        _reading("travel", "Travel", Kind.DURATION, "40 min"),
        Field(
            "parts",
            "Parts",
            Asks.LINES,
            fields=(
                Field("part", "Part", required=True, example="filter drier"),
                Field("number", "Number"),
                _reading("count", "Count", Kind.NUMBER, "1"),
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
    ),
)

STEPS: dict[str, Form] = {
    form.key: form
    for form in (
        NAMEPLATE,
        AS_FOUND,
        FINDINGS,
        SAFETY,
        LEAK_SEARCH,
        PRESSURE_TEST,
        RECOVERY,
        EVACUATION,
        WEIGH_IN,
        AS_LEFT,
        SUPPORT,
        TIME_AND_PARTS,
        CLOSE,
        FOLLOW_UP,
    )
}
