"""Job report for the customer or a warranty claim; one page where it fits."""

from collections.abc import Sequence
from itertools import zip_longest

from chargebench.reports import job_words
from chargebench.reports.checklist_facts import said_source
from chargebench.reports.content import JobRecord
from chargebench.reports.decay_drawing import decay_marks
from chargebench.reports.drawn import Drawn
from chargebench.reports.letterhead import DEFERENCE, Letterhead, joined
from chargebench.reports.page import BODY, GREY, Page, fewest
from chargebench.reports.photos import Photo, draw_photos
from chargebench.reports.readings import side_by_side
from chargebench.steps import Table
from chargebench.steps.evacuation import Evacuated
from chargebench.steps.weigh_in import WeighedIn

_SIZES = (BODY, 8.2, 7.6)  # points: smaller where that saves a page
_PLOT_MM = 40.0
_COLUMNS_MOST = 2  # of values, up to which readings stand in two halves beside each other


def draw_job_report(letterhead: Letterhead, job: JobRecord, photos: Sequence[Photo] = ()) -> Drawn:
    """The report of a job, from what is signed."""
    page = fewest(lambda size: _laid_out(letterhead, job, photos, size), _SIZES)
    title = f"Job report {job.case.number}, {letterhead.name}"
    return page.finish(title, letterhead.made_at, letterhead.program)


def _laid_out(letterhead: Letterhead, job: JobRecord, photos: Sequence[Photo], body: float) -> Page:
    shop = letterhead.shop
    page = Page(
        paper=letterhead.paper,
        head=joined(
            letterhead.name, shop.get("address", ""), shop.get("certificate", ""), by="   ·   "
        ),
        foot=f"{DEFERENCE} Made {letterhead.made_at:%Y-%m-%d} from signed entries.",
        body=body,
    )
    page.title_line(f"Job report {job.case.number}")
    page.paragraph(job.title, bold=True)
    page.y += 1
    label = 30 * body / BODY
    one, other = job_words.what(job), job_words.who(letterhead, job)
    page.facts_beside(one, other, label=label)
    _found(page, job, label)
    _flags(page, job)
    _readings(page, job)
    _evidence(page, job)
    _work(page, job, label)
    _decay(page, job, letterhead)
    _weighed(page, job)
    _money(page, job)
    if photos:
        page.heading("Photos", keep=50)
        draw_photos(page, photos)
    if rows := job_words.follow_up(job):
        page.heading("Follow-up")
        page.facts(rows, label=label)
    _signed(page, letterhead, job)
    return page


def _found(page: Page, job: JobRecord, label: float) -> None:
    page.heading("Findings")
    rows = job_words.found(job)
    if rows:
        page.facts(rows, label=label)
    else:
        page.paragraph("No findings are signed yet.", grey=GREY)


def _flags(page: Page, job: JobRecord) -> None:
    """What stood when this was made, worst first; the checklist has its own paper."""
    if not job.flags:
        return
    page.heading("What to mind")
    for flag in job.flags:
        source = f" ({said_source(flag.source, flag.mark)})" if flag.source else ""
        page.bullet(f"{flag.level.upper()}  {flag.says}{source}")


def _readings(page: Page, job: JobRecord) -> None:
    read = side_by_side(job)
    if not read.rows:
        return
    heads, rows = read.heads, read.rows
    page.heading("Readings", keep=24)
    shares: tuple[float, ...] = (5, *(3 for _ in heads[1:]))
    if len(heads) <= 1 + _COLUMNS_MOST:
        half, empty = (len(rows) + 1) // 2, ("",) * len(heads)
        folded = zip_longest(rows[:half], rows[half:], fillvalue=empty)
        rows = [(*one, "", *other) for one, other in folded]
        heads, shares = (*heads, "", *heads), (*shares, 0.6, *shares)
    right = [place for place, head in enumerate(heads) if head not in ("Reading", "")]
    page.table(heads, rows, shares, right=right)
    if read.says:
        page.paragraph(read.says, page.small, grey=GREY)


def _evidence(page: Page, job: JobRecord) -> None:
    """What the readings as found speak for and against; lines with nothing to say are left out."""
    record = job.counts("as_found")
    table = _table(record.worked.tables if record else (), "evidence")
    if table is None:
        return
    # A row for each reading: its words are long, those of the faults are not.
    faults, *columns = zip(
        *([_word(cell.value) for cell in row] for row in table.rows), strict=True
    )
    rows = [
        (head, *cells)
        for head, cells in zip(table.heads[1:], columns, strict=True)
        if any(cell != "–" for cell in cells)
    ]
    if rows:
        page.heading("What the readings speak for", keep=26)
        page.table(("Reading", *faults), rows, (5, *(3 for _ in faults)))
        page.paragraph(table.says, page.small, grey=GREY)


def _word(value: object) -> str:
    return "–" if str(value) == "nothing" else str(value)


def _table(tables: Sequence[Table], key: str) -> Table | None:
    return next((each for each in tables if each.key == key), None)


def _work(page: Page, job: JobRecord, label: float) -> None:
    rows = [row for step in job_words.WORK if (row := job_words.worked(job, step)) is not None]
    if rows:
        page.heading("Work and tests")
        page.facts(rows, label=label)


def _decay(page: Page, job: JobRecord, letterhead: Letterhead) -> None:
    record = job.counts("evacuation")
    result = record.worked.result if record else None
    if not isinstance(result, Evacuated) or len(result.minutes) < 2:
        return
    tall = _PLOT_MM * page.body / BODY
    page.heading("Decay test", keep=tall + 12)
    page.mark(*decay_marks(result, letterhead.units, page.left, page.y, page.across, tall))
    page.y += tall + 1


def _weighed(page: Page, job: JobRecord) -> None:
    """The charge against the nameplate, and its doubt line by line."""
    record = job.counts("weigh_in")
    if record is None or not isinstance(record.worked.result, WeighedIn):
        return
    table = _table(record.worked.tables, "budget")
    if table is None:
        return
    case = job.case
    rows = [
        [
            str(cell.value) if isinstance(cell.value, str) else case.shown(cell.value, finer=1)
            for cell in row
        ]
        for row in table.rows
    ]
    page.heading("Uncertainty of the charge", keep=26)
    page.table(table.heads, rows, (3, 6, 3), right=(2,))
    page.paragraph(table.says, page.small, grey=GREY)


def _money(page: Page, job: JobRecord) -> None:
    support, time = job.counts("support"), job.counts("time_and_parts")
    if support is not None and (calls := support.answers.lines("calls")):
        page.heading("Calls to the maker", keep=22)
        rows = [
            (
                f"{at:%Y-%m-%d %H:%M}" if (at := line.values.get("at")) else "",
                *(line.text(key) for key in ("who", "about", "number")),
            )
            for line in calls
        ]
        page.table(("When", "With whom", "About", "Claim or authorisation"), rows, (3, 4, 7, 4))
    if time is not None and (parts := time.answers.lines("parts")):
        page.heading("Parts", keep=22)
        rows = [
            (
                line.text("part"),
                line.text("number"),
                count.text if (count := line.reading("count")) else "",
                line.text("work"),
            )
            for line in parts
        ]
        page.table(("Part", "Number", "Count", "Work"), rows, (6, 4, 2, 6), right=(2,))


def _signed(page: Page, letterhead: Letterhead, job: JobRecord) -> None:
    page.heading("Signatures", keep=26)
    if says := job_words.signed(letterhead, job):
        page.paragraph(f"Entries signed, with their numbers. {says}", page.small, grey=GREY)
    page.sign_here("Technician, date", "Customer, date")
