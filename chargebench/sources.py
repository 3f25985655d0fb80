"""Bibliography: the keys that docstrings, rule sets, screens and sheet footers cite.

A mark says how far a figure taken from the source was checked: SEEN, read in the source named;
SEEN-2, read in a secondary source that quotes it; MEMORY, recalled and not checked; CALC, computed
from seen inputs. What nobody printed but everybody does is `COMMON`.
"""

from dataclasses import dataclass
from typing import Literal

Mark = Literal["SEEN", "SEEN-2", "CALC", "MEMORY"]


@dataclass(frozen=True, slots=True)
class Source:
    """One work cited: its citation and, where there is one, its edition or date."""

    citation: str
    edition: str = ""


SOURCES: dict[str, Source] = {
    "40CFR82F": Source(
        "40 CFR Part 82 subpart F, Recycling and Emissions Reduction (Clean Air Act section 608)",
        "text as of 2026-09-25",
    ),
    "40CFR84.106": Source("40 CFR 84.106, leak repair under the AIM Act", "text as of 2026-09-25"),
    "89FR82682": Source(
        "89 FR 82682, management of certain HFCs and substitutes (AIM Act subsection (h))",
        "2024-10-11, as summarised in the trade press",
    ),
    "42USC7675": Source("42 U.S.C. 7675(c)(1), exchange values of regulated substances"),
    "EPA608": Source("EPA, Section 608 test topics and record-keeping pages", "2025 and 2026"),
    "EU2024/573": Source("Regulation (EU) 2024/573 on fluorinated greenhouse gases", "2024-02-20"),
    "EU517/2014": Source("Regulation (EU) No 517/2014 as retained in Great Britain"),
    "49CFR173": Source(
        "49 CFR 173.304a, 178.65, 180.205, 180.209: cylinders", "snapshot of about 2021"
    ),
    "RD552/2019": Source(
        "Real Decreto 552/2019 (Spain), instructions IF-02, IF-04 and IF-09", "BOE-A-2019-15228"
    ),
    "AHRI-K": Source(
        "AHRI Guideline K, filling of recovery cylinders", "2004, as explained in ACHR News 111771"
    ),
    "AHRI700": Source("AHRI 700 in 40 CFR 82 subpart F appendix A", "2016"),
    "IPCC-AR4": Source("IPCC Fourth Assessment Report, 100-year GWP", "2007"),
    "IPCC-AR5": Source("IPCC Fifth Assessment Report, 100-year GWP", "2014"),
    "IPCC-AR6": Source("IPCC Sixth Assessment Report, 100-year GWP", "2021"),
    "ASHRAE34": Source("ANSI/ASHRAE Standard 34, designation and safety classification", "2019"),
    "ISO817": Source("ISO 817, refrigerants: designation and safety classification"),
    "IEC60079-20-1": Source("IEC 60079-20-1, flammability limits of gases", "2010"),
    "NFPA497": Source("NFPA 497, flammability limits of gases", "2008"),
    "IEC60335-2-40": Source(
        "IEC 60335-2-40 annex GG, charge limits in rooms",
        "2018, formulas as printed in appliance manuals",
    ),
    "IEC60335-2-89": Source("IEC 60335-2-89, commercial refrigerating appliances", "2010 and 2019"),
    "IEC60335-2-24": Source("IEC 60335-2-24, household refrigerating appliances"),
    "UL60335-2-89": Source("UL 60335-2-89, second edition", "2021-10-27"),
    "ANNEX-DD": Source(
        "Annex DD of IEC 60335-2-40 and -2-89, servicing with flammable refrigerants",
        "as reprinted in appliance manuals",
    ),
    "UL-A2L": Source("UL charge tables for A2L refrigerants, as quoted in the trade press"),
    "SNAP": Source(
        "EPA SNAP listings: 76 FR 78832 (2011), 2018 rule, 40 CFR 82 subpart G appendix V, "
        "89 FR 50410 (2024)"
    ),
    "EN378": Source("EN 378, refrigerating systems and heat pumps: safety and environment", "2016"),
    "CLENSHAW": Source(
        "C. W. Clenshaw, A note on the summation of Chebyshev series, MTAC 9 (1955) 118"
    ),
    "COOLPROP": Source(
        "I. H. Bell et al., CoolProp, Ind. Eng. Chem. Res. 53 (2014) 2498", "version 8.0.0"
    ),
    "IAPWS-SR1": Source("IAPWS SR1-86(1992), saturation properties of ordinary water"),
    "IAPWS-R14": Source("IAPWS R14-08(2011), pressure along the melting and sublimation curves"),
    "JCGM100": Source("JCGM 100:2008, Guide to the expression of uncertainty in measurement"),
    "NISTSP811": Source("NIST SP 811, Guide for the use of the SI", "2008"),
    "ISO2533": Source("ISO 2533, standard atmosphere", "1975"),
    "PFEIFFER": Source("Pfeiffer Vacuum, Know-How Book, 7.1.2: leak rate q = V dp/dt"),
    "ACHR153295": Source("ACHR News 153295, nitrogen pressure test and temperature"),
    "ACHR111771": Source("ACHR News 111771, On the level: filling cylinders"),
    "CHARGEBENCH": Source("a working figure of this program, chosen by judgement; not a standard"),
    "ADR-P200": Source("ADR, packing instruction P200, filling of liquefied gases"),
    "ACHR-BLENDS": Source("ACHR News, The new wave of blends: evacuation and charging of blends"),
    "AMANA-HP": Source("Heat-pump service manual, Amana 2916779, p. 7: vacuum and its rise"),
    "HVACSPEC": Source("hvacspecialists.info: deep vacuum dehydration; choosing a charging scale"),
    "JSWMI445": Source("jswmi.happyfox.com, knowledge base 445: vacuum rise test"),
    "CARRIER19EX": Source("Carrier 17/19EX chiller manual: standing vacuum test"),
    "HVACLAB": Source("hvaclaboratory.com: resolution and accuracy of charging scales"),
    "UNEP-HC": Source("UNEP technician manual on hydrocarbons, p. 136"),
    "A3-MANUALS": Source(
        "Appliance makers' service instructions for flammable refrigerants "
        "(Perlick BBR96, Hussmann SGN141S, Argo, Haier 3379715, Bimar, HTW, Carrier 42QHC)"
    ),
    "29CFR1910": Source(
        "29 CFR 1910.157, portable fire extinguishers, as named in SNAP conditions"
    ),
    "FORANE": Source("Arkema Forane technical tip: cylinder valves for A2L refrigerants"),
    "JCGM106": Source(
        "JCGM 106:2012, The role of measurement uncertainty in conformity assessment"
    ),
    "AICC": Source(
        "C. M. Hurvich, C.-L. Tsai, Regression and time series model selection in small samples, "
        "Biometrika 76 (1989) 297"
    ),
    "LEAKFLOW": Source(
        "LACO Titan Versa manual, section 10: leak rates of other gases, viscous and molecular"
    ),
    "COMMON": Source("common practice of the trade; no published source"),
}

NAMES: dict[str, str] = {
    "40CFR82F": "40 CFR 82 subpart F",
    "40CFR84.106": "40 CFR 84.106",
    "89FR82682": "89 FR 82682",
    "42USC7675": "42 U.S.C. 7675",
    "EPA608": "EPA section 608 pages",
    "EU2024/573": "EU 2024/573",
    "EU517/2014": "EU 517/2014 as kept in Great Britain",
    "49CFR173": "49 CFR on cylinders",
    "RD552/2019": "Real Decreto 552/2019",
    "AHRI-K": "AHRI Guideline K",
    "AHRI700": "AHRI 700",
    "IPCC-AR4": "IPCC, fourth report",
    "IPCC-AR5": "IPCC, fifth report",
    "IPCC-AR6": "IPCC, sixth report",
    "ASHRAE34": "ASHRAE 34",
    "ISO817": "ISO 817",
    "IEC60079-20-1": "IEC 60079-20-1",
    "NFPA497": "NFPA 497",
    "IEC60335-2-40": "IEC 60335-2-40",
    "IEC60335-2-89": "IEC 60335-2-89",
    "IEC60335-2-24": "IEC 60335-2-24",
    "UL60335-2-89": "UL 60335-2-89",
    "ANNEX-DD": "IEC 60335-2-40 and -2-89, annex DD",
    "UL-A2L": "UL charge tables for A2L",
    "SNAP": "EPA SNAP listings",
    "EN378": "EN 378",
    "CLENSHAW": "Clenshaw 1955",
    "COOLPROP": "CoolProp",
    "IAPWS-SR1": "IAPWS SR1-86",
    "IAPWS-R14": "IAPWS R14-08",
    "JCGM100": "Guide to uncertainty (JCGM 100)",
    "JCGM106": "JCGM 106",
    "NISTSP811": "NIST SP 811",
    "ISO2533": "ISO 2533",
    "PFEIFFER": "Pfeiffer Know-How Book",
    "ACHR153295": "ACHR News",
    "ACHR111771": "ACHR News",
    "CHARGEBENCH": "this program's own working figure",
    "ADR-P200": "ADR, P200",
    "ACHR-BLENDS": "ACHR News",
    "AMANA-HP": "Amana heat-pump manual",
    "HVACSPEC": "hvacspecialists.info",
    "JSWMI445": "JSW knowledge base",
    "CARRIER19EX": "Carrier chiller manual",
    "HVACLAB": "hvaclaboratory.com",
    "UNEP-HC": "UNEP manual on hydrocarbons",
    "A3-MANUALS": "makers' service instructions",
    "29CFR1910": "29 CFR 1910.157",
    "FORANE": "Arkema technical tip",
    "AICC": "Hurvich and Tsai 1989",
    "LEAKFLOW": "LACO leak test manual",
    "COMMON": "common practice",
}
MARKS_SAID: dict[str, str] = {
    "SEEN": "read in the source named",
    "SEEN-2": "as quoted by a second source",
    "CALC": "computed from figures read in their sources",
    "MEMORY": "not checked at its source",
}


def name(key: str) -> str:
    """Short name a person knows a source by; what follows the key's comma, its place, is kept.

    A key without a name of its own is called by the beginning of its citation, and what is no key
    stays as it is: a register row may cite anything.
    """
    head, comma, place = key.partition(",")
    found = NAMES.get(head.strip())
    if found is None and head.strip() in SOURCES:
        found = SOURCES[head.strip()].citation.partition(",")[0].partition(":")[0]
    return f"{found or head}{comma}{place}"


def said(key: str, mark: str = "") -> str:
    """A source as a screen shows it: its short name, and whether the figure is not verified."""
    doubt = f" ({MARKS_SAID[mark]})" if mark == "MEMORY" else ""
    return f"{name(key)}{doubt}"


def checked(mark: str) -> str:
    """How far a figure was checked, as sheets and papers print it."""
    return "unverified" if mark == "MEMORY" else mark


def cite(key: str) -> str:
    """Citation with its edition.

    Raises
    ------
    KeyError
        A key that is not in the bibliography: a bug in the data that cites it.
    """
    source = SOURCES[key.split(",", 1)[0].strip()]
    return f"{source.citation} ({source.edition})" if source.edition else source.citation
