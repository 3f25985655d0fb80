"""Work on the circuit before charging: safety, leak search, pressure test, recovery, vacuum."""

from chargebench.steps.form import Asks, Field, Form
from chargebench.steps.forms.common import AIR, SAFETY_LIST, reading, scale
from chargebench.steps.forms.verifying import LEAK_METHODS, TESTS
from chargebench.steps.taken import TAKEN
from chargebench.units import Kind

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
LEAK_SEARCH = Form(
    "leak_search",
    "Leak search",
    "Where was searched, with what, and what was found.",
    (
        Field("method", "Method", Asks.CHOICE, choices=LEAK_METHODS, required=True),
        Field("detector", "Detector", Asks.ROW, register="instrument", only="leak detector"),
        Field("checked_before", "Detector checked before", Asks.YES_NO),
        Field("checked_after", "Detector checked after", Asks.YES_NO),
        reading("system_pressure", "System pressure", Kind.PRESSURE, "90 psig"),
        reading("standing", "Standing time", Kind.DURATION, "20 min"),
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
        TESTS,
        Field("shutdown", "Repair needs an industrial process shutdown", Asks.YES_NO),
        SAFETY_LIST,
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
        reading("volume", "Internal volume", Kind.VOLUME, "4.5 L"),
        Field("gauge", "Gauge", Asks.ROW, register="instrument", only="pressure gauge"),
        reading("gauge_resolution", "Gauge resolution", Kind.PRESSURE, "0.5 psig"),
        reading("temperature_uncertainty", "Thermometer uncertainty", Kind.DIFFERENCE, "0.5 K"),
        reading("start_pressure", "Pressure at start", Kind.PRESSURE, "150 psig", required=True),
        reading(
            "start_temperature", "Temperature at start", Kind.TEMPERATURE, "72 F", required=True
        ),
        reading("hold", "Held for", Kind.DURATION, "30 min", required=True),
        reading("end_pressure", "Pressure at end", Kind.PRESSURE, "150 psig", required=True),
        reading("end_temperature", "Temperature at end", Kind.TEMPERATURE, "71 F", required=True),
        Field("test_started", "Closed off at", Asks.WHEN, example="2026-11-25 14:30:00"),
        reading("test_every", "Reading every", Kind.DURATION, "10 min"),
        Field(
            "readings",
            "Readings meanwhile",
            Asks.LINES,
            fields=(
                reading("at", "After", Kind.DURATION, "10 min", required=True),
                reading("reading", "Pressure", Kind.PRESSURE, "150 psig", required=True),
                reading("temperature", "Temperature", Kind.TEMPERATURE, "72 F"),
            ),
        ),
        reading("leak_wanted", "Loss it is to see", Kind.MASS_RATE, "5 g/yr"),
        Field("bubbles", "Joints soaped meanwhile", Asks.YES_NO),
        SAFETY_LIST,
        Field("remarks", "Remarks", Asks.LONG_TEXT),
        TAKEN,
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
                scale(),
                reading("before", "Cylinder before", Kind.SCALE, "9.125 kg", required=True),
                reading("after", "Cylinder after", Kind.SCALE, "9.210 kg", required=True),
                Field("override", "Reason to fill above the limit"),
            ),
        ),
        reading("level", "Level reached", Kind.PRESSURE, "-4 inHg"),
        Field(
            "seasonal",
            "Taken out for the season",
            Asks.YES_NO,
            hint="Put back within a year it is no leak, as far as no more goes in.",
        ),
        reading("released", "Mass released", Kind.MASS, "40 g"),
        Field("ground", "Why release is lawful", Asks.LONG_TEXT),
        SAFETY_LIST,
        Field("remarks", "Remarks", Asks.LONG_TEXT),
        TAKEN,
    ),
)
EVACUATION = Form(
    "evacuation",
    "Vacuum",
    "Pulled down, isolated, and watched: dry and tight, or not.",
    (
        Field("pump", "Vacuum pump", Asks.ROW, register="instrument", only="vacuum pump"),
        Field("gauge", "Vacuum gauge", Asks.ROW, register="instrument", only="vacuum gauge"),
        reading("pulled_to", "Pulled down to", Kind.PRESSURE, "350 micron"),
        reading("pulling_time", "Pump ran", Kind.DURATION, "45 min"),
        Field("breaks", "Times broken with nitrogen", Asks.CHOICE, choices=("0", "1", "2", "3")),
        reading("coldest", "Coldest part", Kind.TEMPERATURE, "18 °C"),
        reading("volume", "Internal volume", Kind.VOLUME, "4.5 L"),
        Field("decay_started", "Isolated at", Asks.WHEN, example="2026-11-25 14:30:00"),
        reading("decay_every", "Reading every", Kind.DURATION, "1 min"),
        Field(
            "decay",
            "Decay test",
            Asks.LINES,
            fields=(
                reading("at", "After", Kind.DURATION, "5 min", required=True),
                reading("reading", "Reading", Kind.PRESSURE, "420 micron", required=True),
            ),
        ),
        SAFETY_LIST,
        Field("remarks", "Remarks", Asks.LONG_TEXT),
        TAKEN,
    ),
)
