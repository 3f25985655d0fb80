"""Comparison with a limit, deaf to what rounding to whole milligrams and to floats can do.

Ledger masses are whole milligrams: 50 lb is 22 679 618.5 mg and is kept as 22 679 618. A limit met
exactly as typed must stay met, so a millionth of the limit decides nothing.
"""

from chargebench.units import Quantity

_HAIR = 1e-6


def at_least(value: Quantity, limit: Quantity) -> bool:
    """Whether a value reaches a limit, equality included.

    Parameters
    ----------
    value : Quantity [of any dimension]
        What was found.
    limit : Quantity [of the same dimension]
        The limit.

    Returns
    -------
    bool
        True from equality on.

    Source
    ------
    CHARGEBENCH, one millionth of the limit is what rounding may do.
    """
    bound = limit.to_base_units().magnitude
    return bool(value.to_base_units().magnitude >= bound - abs(bound) * _HAIR)


def above(value: Quantity, limit: Quantity) -> bool:
    """Whether a value is strictly over a limit.

    Parameters
    ----------
    value : Quantity [of any dimension]
        What was found.
    limit : Quantity [of the same dimension]
        The limit.

    Returns
    -------
    bool
        False at equality.

    Source
    ------
    CHARGEBENCH, one millionth of the limit is what rounding may do.
    """
    bound = limit.to_base_units().magnitude
    return bool(value.to_base_units().magnitude > bound + abs(bound) * _HAIR)
