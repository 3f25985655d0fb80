"""The forms of jobs and registers as data, and what each step works out from typed answers."""

from chargebench.steps.form import NOTHING, Answers, Asks, Field, Form, Typed, answer
from chargebench.steps.forms import STEPS
from chargebench.steps.registers import REGISTERS

__all__ = ["NOTHING", "REGISTERS", "STEPS", "Answers", "Asks", "Field", "Form", "Typed", "answer"]
