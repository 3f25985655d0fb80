"""The forms of stock work: receive, weigh, decant, return."""

from chargebench.steps.form import Asks, Field, Form
from chargebench.units import Kind


def _cylinder(key: str, label: str) -> Field:
    return Field(key, label, Asks.ROW, register="cylinder", required=True)


def _gross(key: str, label: str, example: str) -> Field:
    return Field(key, label, Asks.READING, Kind.SCALE, example, required=True)


_SCALE = Field("scale", "Scale", Asks.ROW, register="instrument", only="scale", required=True)
_REMARKS = Field("remarks", "Remarks", Asks.LONG_TEXT)
_OVERRIDE = Field("override", "Reason to fill above the limit")

RECEIVE = Form(
    "receive",
    "Receive",
    "A cylinder comes in: what it weighs now and who it came from.",
    (
        _cylinder("cylinder", "Cylinder"),
        Field("mass", "Net mass as invoiced", Asks.READING, Kind.MASS, "5 kg", required=True),
        Field("supplier", "Supplier"),
        Field("invoice", "Invoice or delivery note"),
        _REMARKS,
    ),
)
WEIGH = Form(
    "weigh",
    "Weigh",
    "The scale against the ledger.",
    (
        _cylinder("cylinder", "Cylinder"),
        _SCALE,
        _gross("gross", "Gross weight", "12.430 kg"),
        Field("accept", "Book the difference", Asks.YES_NO),
        Field("reason", "Reason of the difference"),
    ),
)
DECANT = Form(
    "decant",
    "Decant",
    "From one cylinder into another, by the weight of the one on the scale.",
    (
        _cylinder("source", "From"),
        _cylinder("target", "Into"),
        _SCALE,
        Field("weighed", "On the scale", Asks.CHOICE, choices=("from", "into"), required=True),
        _gross("before", "Before", "12.430 kg"),
        _gross("after", "After", "10.180 kg"),
        _OVERRIDE,
        _REMARKS,
    ),
)
RETURN = Form(
    "return",
    "Return",
    "A cylinder's content leaves the shop.",
    (
        _cylinder("cylinder", "Cylinder"),
        Field(
            "to", "To", Asks.CHOICE, choices=("supplier", "reclaimer", "destruction"), required=True
        ),
        Field("mass", "Net mass", Asks.READING, Kind.MASS, "8.6 kg", required=True),
        Field("receiver", "Receiver, name and address"),
        Field("document", "Document number"),
        _REMARKS,
    ),
)

STOCK: dict[str, Form] = {form.key: form for form in (RECEIVE, WEIGH, DECANT, RETURN)}
