"""What stands in the invented shop of the walks."""

from chargebench.desk import Desk

_CYLINDER = {"refillable": "yes", "requalification_due": "2031-02-28", "owner": "Larkmoor Cold"}
_CYLINDERS = {
    "C-014": {
        **_CYLINDER,
        "refrigerant": "R290",
        "contents": "new",
        "tare": "5.60 kg",
        "tare_found": "5612.0 g",
        "water_capacity": "26.2 lb",
    },
    "C-034": {
        **_CYLINDER,
        "refrigerant": "R290",
        "contents": "recovered",
        "tare": "7.81 kg",
        "tare_found": "7806.2 g",
        "water_capacity": "26.2 lb",
    },
    "C-041": {
        **_CYLINDER,
        "refrigerant": "R404A",
        "contents": "recovered",
        "tare": "7.85 kg",
        "tare_found": "7.85 kg",
        "water_capacity": "26.2 lb",
    },
    "C-050": {
        **_CYLINDER,
        "refrigerant": "R404A",
        "contents": "new",
        "refillable": "no",
        "tare": "3.10 kg",
    },
}
_EQUIPMENT = {
    "E-203": {
        "name": "Bakery freezer",
        "category": "commercial refrigeration",
        "cabinet": "self-contained with doors or drawers",
        "refrigerant": "R290",
        "charge": "3.0 oz",
        "tolerance": "2 g",
        "factory_sealed": "yes",
        "low_side_design": "150 psig",
        "volume": "4.5 L",
    },
    "E-007": {
        "name": "Display cabinet",
        "category": "commercial refrigeration",
        "cabinet": "self-contained open",
        "refrigerant": "R404A",
        "charge": "12.000 kg",
        "charge_method": "1 maker's figure",
        "low_side_design": "150 psig",
    },
}
_INSTRUMENTS = {
    "S-2": {
        "kind": "scale",
        "name": "Bench scale",
        "resolution": "0.1 g",
        "repeatability": "0.3 g",
    },
    "S-3": {"kind": "scale", "name": "Floor scale", "resolution": "5 g", "repeatability": "5 g"},
    "G-1": {"kind": "pressure gauge", "name": "Manifold", "pressure_resolution": "0.1 psig"},
    "V-1": {"kind": "vacuum gauge", "name": "Vacuum gauge"},
    "D-1": {"kind": "leak detector", "name": "Leak detector", "flammable_suitable": "yes"},
    "R-1": {"kind": "recovery machine", "name": "Recovery machine", "flammable_suitable": "yes"},
    "VP-1": {"kind": "vacuum pump", "name": "Two-stage pump", "flammable_suitable": "yes"},
}


def furnish(desk: Desk) -> None:
    """Put everything on the registers, and fill the cylinder that is to be charged from."""
    site = desk.save_row("site", None, {"name": "Bakery, Quay Street", "elevation": "0 m"})
    for key, row in _EQUIPMENT.items():
        desk.save_row("equipment", key, {**row, "site": site})
    for key, row in _CYLINDERS.items():
        desk.save_row("cylinder", key, row)
    for key, row in _INSTRUMENTS.items():
        desk.save_row("instrument", key, row)
    desk.act("receive", {"cylinder": "C-014", "mass": "4 kg"})
