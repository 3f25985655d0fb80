"""What is read and found: nameplate, readings as found and as left, findings."""

from chargebench.calc.evidence_rules import CondenserState, FanState, Frost
from chargebench.steps.form import Asks, Field, Form
from chargebench.steps.forms.common import AIR, reading
from chargebench.units import Kind

# What the undertaking did, as EU 2024/573, article 7(1)(e), tells it apart.
WORK = ("installation", "maintenance or service", "repair", "leak check", "decommissioning")
_RUNNING: tuple[Field, ...] = (
    AIR,
    Field("refrigerant_found", "Refrigerant found", Asks.REFRIGERANT, example="R290"),
    Field("tapped", "Gauges connected", Asks.YES_NO, hint="No: temperatures only, system sealed."),
    reading("suction_pressure", "Suction pressure", Kind.PRESSURE, "12 psig"),
    reading("suction_line", "Suction line temperature", Kind.TEMPERATURE, "-12.5 °C or 9 F"),
    reading("discharge_pressure", "Condensing pressure", Kind.PRESSURE, "160 psig"),
    reading("liquid_line", "Liquid line temperature", Kind.TEMPERATURE, "95 F"),
    reading("discharge_line", "Discharge line temperature", Kind.TEMPERATURE, "70 °C"),
    reading("condenser_surface", "Condenser surface, middle", Kind.TEMPERATURE, "43 °C"),
    reading("evaporator_inlet", "Evaporator surface, inlet", Kind.TEMPERATURE, "-28 °C"),
    reading("evaporator_outlet", "Evaporator surface, outlet", Kind.TEMPERATURE, "-26 °C"),
    reading("drier_in", "Drier, in", Kind.TEMPERATURE, "36 °C"),
    reading("drier_out", "Drier, out", Kind.TEMPERATURE, "35 °C"),
    reading("ambient", "Air onto the condenser", Kind.TEMPERATURE, "24 °C"),
    reading("box", "Box temperature", Kind.TEMPERATURE, "-16 °C"),
    reading("set_point", "Set point", Kind.TEMPERATURE, "-20 °C"),
    reading("current", "Compressor current", Kind.CURRENT, "2.1 A"),
    reading("rated_current", "Rated current", Kind.CURRENT, "2.4 A"),
    Field("frost", "Frost", Asks.CHOICE, choices=tuple(Frost)),
    Field("condenser_state", "Condenser", Asks.CHOICE, choices=tuple(CondenserState)),
    Field("condenser_fan", "Condenser fan", Asks.CHOICE, choices=tuple(FanState)),
    Field("evaporator_fan", "Evaporator fan", Asks.CHOICE, choices=tuple(FanState)),
    Field("running", "Compressor runs", Asks.CHOICE, choices=("cycling", "all the time", "not")),
    Field(
        "sister",
        "Sister unit",
        Asks.ROW,
        register="equipment",
        hint="To compare with; else equipment of the same make and model.",
    ),
    Field("remarks", "Remarks", Asks.LONG_TEXT),
)

NAMEPLATE = Form(
    "nameplate",
    "Nameplate",
    "What the nameplate says, as read on the equipment today.",
    (
        Field("refrigerant", "Refrigerant", Asks.REFRIGERANT, required=True, example="R290"),
        reading("charge", "Nameplate charge", Kind.MASS, "3.0 oz or 85 g", required=True),
        reading("tolerance", "Charge tolerance", Kind.MASS, "2 g"),
        reading("low_side_design", "Low-side design pressure", Kind.PRESSURE, "150 psig"),
        reading("high_side_design", "High-side design pressure", Kind.PRESSURE, "320 psig"),
        Field("model", "Model"),
        Field("serial", "Serial number"),
        reading("room_area", "Floor area of the room", Kind.AREA, "24 m²"),
        reading("room_height", "Height of the room", Kind.LENGTH, "2.8 m"),
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
        Field("work", "Kind of work", Asks.CHOICE, choices=WORK),
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

AS_LEFT = Form("as_left", "As left", "Readings with the work done.", _RUNNING)
