"""The published JSON Schema: current, itself a schema, and of one mind with the reader."""

import json

import jsonschema
import pytest

from chargebench import jobfile
from chargebench.resource import resource, sample_jobs
from tests.jobfile.broken import BROKEN, file

SAMPLES = sorted(sample_jobs().glob("*.json"))
# What a schema can not say, and only reading finds out.
BEYOND_A_SCHEMA = {
    "nothing in it",
    "not a number",
    "reading without unit",
    "wrong kind of unit",
    "unknown refrigerant",
    "key twice",
    "control character",
    "text turned around",
    "text turned around at a mark",
    "half a character",
    "time without zone",
    "closed before opened",
    "step before the job",
    "step after the job",
    "step twice",
    "again the first time",
    "act with a wrong reading",
    "act at no time",
    "cylinder without its row",
    "equipment without its row",
    "site without its row",
    "person without a row",
    "tick by nobody known",
    "row without an id",
    "thirty problems",
    "50 MB",
}
NOT_EVEN_JSON = {
    "empty",
    "spaces only",
    "cut short",
    "cut short in a text",
    "not JSON",
    "not UTF-8",
    "hundred thousand levels deep",
    "just over the largest",
}


def _checker() -> jsonschema.Draft202012Validator:
    return jsonschema.Draft202012Validator(jobfile.schema())


def test_that_the_schema_in_resources_is_current() -> None:
    kept = json.loads(resource("job-file.schema.json").read_text(encoding="utf-8"))
    assert kept == jobfile.schema(), "run resources/build_job_file_schema.py"


def test_that_the_schema_is_one() -> None:
    jsonschema.Draft202012Validator.check_schema(jobfile.schema())


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_that_every_sample_fits_the_schema(path: object) -> None:
    assert list(_checker().iter_errors(json.loads(path.read_text("utf-8")))) == []  # type: ignore[attr-defined]


def test_that_the_small_good_file_fits_the_schema() -> None:
    assert list(_checker().iter_errors(json.loads(file()))) == []


@pytest.mark.parametrize("name", sorted(set(BROKEN) - BEYOND_A_SCHEMA - NOT_EVEN_JSON))
def test_that_a_broken_file_breaks_the_schema(name: str) -> None:
    assert list(_checker().iter_errors(json.loads(BROKEN[name])))
