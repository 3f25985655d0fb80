"""The steps of a job, in the order they are worked through, and the form of each."""

from chargebench.steps.form import Form
from chargebench.steps.forms.arriving import AS_FOUND, AS_LEFT, FINDINGS, NAMEPLATE
from chargebench.steps.forms.charging import WEIGH_IN
from chargebench.steps.forms.circuit import (
    EVACUATION,
    LEAK_SEARCH,
    PRESSURE_TEST,
    RECOVERY,
    SAFETY,
)
from chargebench.steps.forms.paperwork import CLOSE, FOLLOW_UP, SUPPORT, TIME_AND_PARTS

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
