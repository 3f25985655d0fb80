"""The weigh-in."""

from chargebench.steps.form import Asks, Field, Form
from chargebench.steps.forms.common import AIR, SAFETY_LIST, reading, scale
from chargebench.steps.taken import TAKEN
from chargebench.units import Kind

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
                scale(),
                Field(
                    "arrangement", "On the scale", Asks.CHOICE, choices=ARRANGEMENTS, required=True
                ),
                reading("start", "Start reading", Kind.SCALE, "4312.5 g", required=True),
                reading("end", "End reading", Kind.SCALE, "4223.8 g", required=True),
                Field("drawn_as", "Drawn as", Asks.CHOICE, choices=("liquid", "vapour")),
                Field(
                    "hose_state", "Hose at the end", Asks.CHOICE, choices=HOSE_STATES, required=True
                ),
                reading("hose_length", "Hose length", Kind.LENGTH, "36 in"),
                reading("hose_bore", "Hose bore", Kind.LENGTH, "4.8 mm or 3/16 in"),
                reading("hose_volume", "or hose volume", Kind.VOLUME, "16.5 mL"),
                reading("hose_temperature", "Hose temperature", Kind.TEMPERATURE, "20 °C"),
                reading("hose_pressure", "Pressure in the hose", Kind.PRESSURE, "15 psig"),
            ),
        ),
        Field("origin", "Refrigerant is", Asks.CHOICE, choices=("virgin", "recycled", "reclaimed")),
        Field(
            "not_counted",
            "Not for a leak",
            Asks.CHOICE,
            choices=("new installation", "retrofit", "seasonal variance"),
            hint="Leave empty where it replaces what leaked.",
        ),
        SAFETY_LIST,
        Field("remarks", "Remarks", Asks.LONG_TEXT),
        TAKEN,
    ),
)
