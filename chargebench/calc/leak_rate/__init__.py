"""Leak rates of appliances, and what a rate over its threshold sets in motion."""

from chargebench.calc.leak_rate.clocks import (
    Afterwards,
    Exceedance,
    exceedance_duties,
    extended_to,
    inspection_duties,
    report_duty,
)
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
    days_since_last,
    merged,
    rolling,
    rolling_start,
)
from chargebench.calc.leak_rate.seasonal import (
    Removal,
    beyond_seasonal_variance,
    without_seasonal,
)
from chargebench.calc.leak_rate.verifying import (
    Extension,
    Paper,
    Proof,
    VerificationTest,
    good_follow_ups,
    proof,
)

__all__ = [
    "YEAR_DAYS",
    "Addition",
    "Afterwards",
    "Chronic",
    "Circuit",
    "DueDates",
    "Exceedance",
    "Extension",
    "Paper",
    "Proof",
    "Removal",
    "VerificationTest",
    "annualizing",
    "applies",
    "beyond_seasonal_variance",
    "chronic",
    "days_since_last",
    "due_dates",
    "exceedance_duties",
    "extended_to",
    "good_follow_ups",
    "inspection",
    "inspection_duties",
    "merged",
    "over_threshold",
    "proof",
    "report_duty",
    "rolling",
    "rolling_start",
    "threshold",
    "without_seasonal",
]
