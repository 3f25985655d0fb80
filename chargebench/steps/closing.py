"""Closing the circuit: what leaves with an equipment that is taken out of service."""

from chargebench.ledger import Transfer
from chargebench.steps.case import Case
from chargebench.steps.evacuation import presumed_lost

OUT_OF_SERVICE = "taken out of service"


def movements(case: Case) -> tuple[Transfer, ...]:
    """Taken out of service after recovery, what the ledger still has in it is presumed lost."""
    if case.step("close").text("ends") != OUT_OF_SERVICE or not case.is_signed("recovery"):
        return ()
    return presumed_lost(case)
