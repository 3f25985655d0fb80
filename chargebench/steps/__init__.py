"""The forms of jobs and registers as data, and what each step works out from typed answers."""

from chargebench.steps.case import NOT_WORKED, Case, Cell, Figure, Signed, Table, Worked
from chargebench.steps.form import NOTHING, Answers, Asks, Field, Form, Typed, answer
from chargebench.steps.forms import STEPS
from chargebench.steps.forms.registers import REGISTERS
from chargebench.steps.forms.stock import STOCK
from chargebench.steps.work import components, movements, overdraw_allowed_mg, refusals, work_out

__all__ = [
    "NOTHING",
    "NOT_WORKED",
    "REGISTERS",
    "STEPS",
    "STOCK",
    "Answers",
    "Asks",
    "Case",
    "Cell",
    "Field",
    "Figure",
    "Form",
    "Signed",
    "Table",
    "Typed",
    "Worked",
    "answer",
    "components",
    "movements",
    "overdraw_allowed_mg",
    "refusals",
    "work_out",
]
