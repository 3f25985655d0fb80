"""What is recorded after a repair of a leak: tests, more time, plans and reports."""

from chargebench.calc.leak_rate.verifying import (
    CHRONIC_REPORT,
    FOLLOW_UP,
    INITIAL,
    PLAN,
    PLAN_DONE,
)
from chargebench.steps.form import Asks, Field
from chargebench.steps.forms.common import reading
from chargebench.units import Kind

TIGHT = "tight"
LEAK_METHODS = (
    "electronic detector",
    "bubbles",
    "ultrasonic",
    "fluorescent dye already present",
    "trace gas",
    "oil traces by eye",
)
GROUNDS = (
    "parts not available in time",
    "another rule makes it impossible in time",
    "radiological contamination",
)
TESTS = Field(
    "tests",
    "Tests of repaired leaks",
    Asks.LINES,
    fields=(
        Field("kind", "Test", Asks.CHOICE, choices=(INITIAL, FOLLOW_UP), required=True,
              hint="Initial: before refrigerant goes back in. Follow-up: running as normal."),
        Field("on", "On", Asks.DATE, example="2026-11-25", required=True),
        Field("where", "Repaired leak tested", required=True, example="process valve core"),
        Field("how", "By", Asks.CHOICE, choices=(*LEAK_METHODS, "pressure test", "decay test")),
        reading("ran", "Ran since the repair", Kind.DURATION, "26 h"),
        Field("result", "Result", Asks.CHOICE, choices=(TIGHT, "leaks"), required=True),
    ),
)  # fmt: skip
EXTENSIONS = Field(
    "extensions",
    "More time for the repair",
    Asks.LINES,
    fields=(
        Field("asked", "Asked for on", Asks.DATE, example="2026-11-25", required=True),
        Field("ground", "Ground", Asks.CHOICE, choices=GROUNDS, required=True),
        Field("until", "Until", Asks.DATE, example="2027-01-31", required=True),
        Field("delivered", "Parts came on", Asks.DATE),
        Field("efforts", "Done so far, and why not in time"),
        Field("signed", "Signed by, for the owner or operator"),
    ),
)
PAPERS = Field(
    "papers",
    "Plans and reports",
    Asks.LINES,
    fields=(
        Field(
            "what", "What", Asks.CHOICE, choices=(PLAN, PLAN_DONE, CHRONIC_REPORT), required=True
        ),
        Field("on", "Dated", Asks.DATE, example="2026-11-25", required=True),
        Field("reference", "Reference", example="letter, file or claim number"),
    ),
)
