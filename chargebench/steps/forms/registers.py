"""The registers: what is asked of a site, an equipment, a cylinder, a person, an instrument."""

from chargebench.steps.form import Asks, Field, Form
from chargebench.units import Kind

CATEGORIES = (
    "commercial refrigeration",
    "industrial process",
    "comfort cooling",
    "refrigerated transport",
    "household",
    "other",
)
CABINETS = (
    "self-contained with doors or drawers",
    "self-contained open",
    "household refrigerator or freezer",
    "ice machine",
    "split system",
    "walk-in or remote condensing",
    "rack or chiller",
    "other",
)
METHODS = (
    "1 maker's figure",
    "2 calculated from components",
    "3 actual weight",
    "4 established range",
)
RATE_METHODS = ("annualizing", "rolling average")
CONTENTS = ("new", "recovered", "mixed waste")
INSTRUMENTS = (
    "scale",
    "pressure gauge",
    "vacuum gauge",
    "thermometer",
    "leak detector",
    "recovery machine",
    "vacuum pump",
    "barometer",
)

SHOP = Form(
    "shop",
    "Shop",
    "Who keeps these records, in which units, under which rules.",
    (
        Field("name", "Name", required=True, example="Larkmoor Cold"),
        Field("address", "Address", Asks.LONG_TEXT),
        Field("units", "Units shown", Asks.CHOICE, choices=("SI", "IP"), required=True),
        Field("certificate", "Company certificate", example="company certification number"),
        Field(
            "paper",
            "Paper",
            Asks.CHOICE,
            choices=("A4", "Letter"),
            hint="What is printed on; left empty, as this computer's country has it.",
        ),
        Field("rule_set", "Rule set", required=True, hint="Limits and duties of one jurisdiction."),
        Field(
            "rule_file",
            "Rule file of the shop",
            example="larkmoor.toml",
            hint="Figures of the shop's own, laid over the rule set; beside the shop's records.",
        ),
        Field(
            "passphrases",
            "Every signature needs a passphrase",
            Asks.YES_NO,
            hint="If not, it does only of people who have set one.",
        ),
        Field("shift", "A signature stays unlocked for", Asks.READING, Kind.DURATION, "12 h"),
        Field("idle", "Without a key it locks after", Asks.READING, Kind.DURATION, "30 min"),
    ),
)
SITE = Form(
    "site",
    "Site",
    "Where equipment stands and who answers for it.",
    (
        Field("name", "Name", required=True, example="Bakery, Quay Street"),
        Field("owner_operator", "Owner or operator"),
        Field("address", "Address", Asks.LONG_TEXT),
        Field("elevation", "Height above sea level", Asks.READING, Kind.LENGTH, "120 m"),
        Field(
            "leak_method",
            "Leak rate method",
            Asks.CHOICE,
            choices=RATE_METHODS,
            hint="One for every appliance of a facility; while none is chosen both count.",
        ),
        Field(
            "leak_method_why",
            "Why the method was changed",
            example="facility bought, its former owner used the other",
        ),
    ),
)
EQUIPMENT = Form(
    "equipment",
    "Equipment",
    "One refrigerant circuit: what its nameplate says and which rules see in it.",
    (
        Field("name", "Name", required=True, example="Bakery freezer"),
        Field("site", "Site", Asks.ROW, register="site", required=True),
        Field("category", "Category", Asks.CHOICE, choices=CATEGORIES, required=True),
        Field("cabinet", "Type", Asks.CHOICE, choices=CABINETS, required=True),
        Field("make", "Make"),
        Field("model", "Model"),
        Field("serial", "Serial number"),
        Field("circuit", "Circuit", example="1 of 2"),
        Field("refrigerant", "Refrigerant", Asks.REFRIGERANT, required=True, example="R290"),
        Field("charge", "Full charge", Asks.READING, Kind.MASS, "3.0 oz or 85 g", required=True),
        Field("charge_method", "How the full charge is known", Asks.CHOICE, choices=METHODS),
        Field("range_low", "Range, low", Asks.READING, Kind.MASS, "13.5 kg"),
        Field("range_high", "Range, high", Asks.READING, Kind.MASS, "14.9 kg"),
        Field("range_basis", "How the range was found", example="sight glass, winter and summer"),
        Field("charge_revised", "Full charge revised on", Asks.DATE),
        Field("charge_revised_why", "How the full charge was revised"),
        Field("tolerance", "Charge tolerance", Asks.READING, Kind.MASS, "2 g"),
        Field("factory_sealed", "Factory charged and sealed", Asks.YES_NO),
        Field("hermetic_labelled", "Labelled hermetically sealed", Asks.YES_NO),
        Field("leak_detection", "Leak detection system fitted", Asks.YES_NO),
        Field("detection_checked", "Detection system last checked", Asks.DATE),
        Field("residential", "In a residential building", Asks.YES_NO),
        Field("subsector_excluded", "Residential or light commercial AC", Asks.YES_NO),
        Field("installed", "Installed on", Asks.DATE, example="2021-03-15"),
        Field("mothballed", "Mothballed since", Asks.DATE, hint="Evacuated and shut down."),
        Field("mothball_ended", "Mothballed until", Asks.DATE),
        Field("retired", "Retired on", Asks.DATE),
        Field(
            "low_side_design", "Low-side design pressure", Asks.READING, Kind.PRESSURE, "150 psig"
        ),
        Field(
            "high_side_design", "High-side design pressure", Asks.READING, Kind.PRESSURE, "320 psig"
        ),
        Field("volume", "Internal volume", Asks.READING, Kind.VOLUME, "4.5 L"),
        Field("room_area", "Floor area of the room", Asks.READING, Kind.AREA, "24 m²"),
        Field("room_height", "Height of the room", Asks.READING, Kind.LENGTH, "2.8 m"),
        Field("release_height", "Height of a release", Asks.READING, Kind.LENGTH, "0.6 m"),
    ),
)
CYLINDER = Form(
    "cylinder",
    "Cylinder",
    "What a cylinder is and how far it may be filled.",
    (
        Field("refrigerant", "Refrigerant", Asks.REFRIGERANT, example="R290", required=True),
        Field("contents", "Contents", Asks.CHOICE, choices=CONTENTS, required=True),
        Field("serial", "Serial number"),
        Field("spec", "Specification", example="4BA400"),
        Field("refillable", "Refillable", Asks.YES_NO, required=True),
        Field("tare", "Tare stamped", Asks.READING, Kind.MASS, "7.85 kg or 17 lb 5 oz"),
        Field("tare_found", "Tare as weighed empty", Asks.READING, Kind.MASS, "7.83 kg"),
        Field("water_capacity", "Water capacity", Asks.READING, Kind.MASS, "26.2 lb"),
        Field("requalified", "Last requalified", Asks.DATE, example="2023-06-30"),
        Field("requalification_due", "Requalification due", Asks.DATE, example="2028-06-30"),
        Field("thread", "Valve thread", example="1/4 in SAE flare, left-hand"),
        Field("owner", "Owner"),
        Field("batch", "Batch or reclaim number"),
        Field("origin", "Origin", Asks.CHOICE, choices=("virgin", "recycled", "reclaimed")),
        Field("reclaimer", "Reclaimed or recycled by", hint="Name and address of the facility."),
        Field("reclaimer_certificate", "Certificate of the facility"),
        Field("supplier", "Supplier"),
    ),
)
PERSON = Form(
    "person",
    "Person",
    "Who signs, and by which certificate.",
    (
        Field("name", "Name", required=True),
        Field(
            "role", "Role", Asks.CHOICE, choices=("technician", "shop", "officer"), required=True
        ),
        Field("certificate", "Certificate number"),
        Field("certificate_type", "Certificate type", example="Universal, Type I, A1"),
        Field("certificate_body", "Certified by"),
        Field("certificate_until", "Valid until", Asks.DATE),
        Field("employer", "Employer", hint="If not this shop."),
        Field("employer_certificate", "Certificate of the employer"),
    ),
)
INSTRUMENT = Form(
    "instrument",
    "Instrument",
    "Scales, gauges, detectors and machines: what they can resolve, when they were last checked.",
    (
        Field("kind", "Kind", Asks.CHOICE, choices=INSTRUMENTS, required=True),
        Field("name", "Name", required=True, example="Bench scale"),
        Field("serial", "Serial number"),
        Field("resolution", "Resolution of a scale", Asks.READING, Kind.MASS, "0.1 g"),
        Field("repeatability", "Repeatability of a scale", Asks.READING, Kind.MASS, "0.2 g"),
        Field("gain", "Accuracy in % of reading", Asks.READING, Kind.PERCENT, "0.1 %"),
        Field(
            "pressure_resolution",
            "Resolution of a gauge",
            Asks.READING,
            Kind.PRESSURE,
            "0.1 bar(g)",
        ),
        Field(
            "temperature_uncertainty",
            "Uncertainty of a thermometer",
            Asks.READING,
            Kind.DIFFERENCE,
            "0.5 K",
        ),
        Field("sensitivity", "Sensitivity of a detector", Asks.READING, Kind.MASS_RATE, "3 g/yr"),
        Field("flammable_suitable", "Suitable for flammable refrigerants", Asks.YES_NO),
        Field(
            "serial_line",
            "Serial line",
            Asks.SERIAL_LINE,
            example="9600 8N1, stable ST",
            hint="How a scale or gauge speaks, where it can be read straight from its port.",
        ),
        Field("made", "Made on", Asks.DATE, hint="Decides the recovery level of a machine."),
        Field("calibrated", "Last calibrated", Asks.DATE),
        Field("calibration_due", "Calibration due", Asks.DATE),
    ),
)

REGISTERS: dict[str, Form] = {
    form.key: form for form in (SHOP, SITE, EQUIPMENT, CYLINDER, PERSON, INSTRUMENT)
}
