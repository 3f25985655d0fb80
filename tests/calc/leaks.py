"""What the tests of leak rates and of leak repair duties share."""

from datetime import date

from chargebench import rules
from chargebench.calc.leak_rate import Addition
from chargebench.rules import LeakRate, Regulation
from chargebench.units import Q, Quantity


def lb(pounds: float) -> Quantity:
    return Q(pounds, "lb")


def american() -> LeakRate:
    leak_rate = rules.load("us-federal").leak_rate
    assert leak_rate is not None
    return leak_rate


def ozone() -> Regulation:
    return american().regulation("82.157")


def hfc() -> Regulation:
    return american().regulation("84.106")


def percent(rate: Quantity) -> float:
    return float(rate.m_as("percent"))


def additions(*pairs: tuple[date, float]) -> list[Addition]:
    return [Addition(on, lb(pounds)) for on, pounds in pairs]


TODAY = date(2026, 9, 1)
