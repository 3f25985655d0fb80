"""Leak rates of appliances, and what a rate over its threshold sets in motion."""

from chargebench.calc.leak_rate.duties import (
    Chronic,
    Circuit,
    DueDates,
    applies,
    chronic,
    due_dates,
    inspection,
    over_threshold,
    threshold,
)
from chargebench.calc.leak_rate.rates import (
    YEAR_DAYS,
    Addition,
    annualizing,
    beyond_seasonal_variance,
    days_since_last,
    merged,
    rolling,
)

__all__ = [
    "YEAR_DAYS",
    "Addition",
    "Chronic",
    "Circuit",
    "DueDates",
    "annualizing",
    "applies",
    "beyond_seasonal_variance",
    "chronic",
    "days_since_last",
    "due_dates",
    "inspection",
    "merged",
    "over_threshold",
    "rolling",
    "threshold",
]
