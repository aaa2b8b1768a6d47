"""The conversation vectors through the program, and against the schema by a validator that is not ours."""

import json
import pathlib
import subprocess

import jsonschema
import program
import pytest

VECTORS = program.ROOT / "tests" / "vectors"
SCHEMA = json.loads((program.ROOT / "crates" / "overwater-exchange" / "schema.json").read_text())
REQUESTS = sorted(VECTORS.glob("*.request.json"))


def validator(part):
    """A validator of one part of the schema, in which references are looked up in the whole."""
    return jsonschema.Draft202012Validator({**SCHEMA, "oneOf": [part]})


ASKED = validator({"$ref": "#/$defs/AnyRequest"})
ANSWERED = validator({"$ref": "#/$defs/AnyAnswer"})
REFUSED = validator(SCHEMA["oneOf"][2])


def answer_file(request):
    return pathlib.Path(str(request).replace(".request.json", ".answer.json"))


def answer_of(request):
    return json.loads(answer_file(request).read_text())


def once(pairs):
    """An object, in which a key may stand once."""
    assert len({key for key, _ in pairs}) == len(pairs), pairs
    return dict(pairs)


def test_there_are_as_many_requests_as_answers():
    assert len(REQUESTS) >= 60
    assert {answer_file(request) for request in REQUESTS} == set(VECTORS.glob("*.answer.json"))


@pytest.mark.parametrize("request_file", REQUESTS, ids=lambda path: path.name.removesuffix(".request.json"))
def test_the_program_prints_the_bytes_that_are_kept(request_file):
    done = subprocess.run(
        [program.PROGRAM, "answer", "-"], input=request_file.read_bytes(), capture_output=True, check=False
    )
    assert done.stdout == answer_file(request_file).read_bytes()
    assert done.returncode == (2 if "error" in json.loads(done.stdout) else 0)


def test_the_schema_is_one_of_2020_12():
    jsonschema.Draft202012Validator.check_schema(SCHEMA)
    assert SCHEMA["$schema"] == "https://json-schema.org/draft/2020-12/schema"


@pytest.mark.parametrize("request_file", REQUESTS, ids=lambda path: path.name.removesuffix(".request.json"))
def test_what_is_answered_agrees_with_the_schema(request_file):
    answer = answer_of(request_file)
    if "error" in answer:
        REFUSED.validate(answer)
        assert not ANSWERED.is_valid(answer)
    else:
        ASKED.validate(json.loads(request_file.read_text(), object_pairs_hook=once))
        ANSWERED.validate(answer)


# What the schema can know of a refusal: misspelt, missing, of the wrong kind. Ranges and names are the core's.
SHAPES = [
    "bounds-list-for-text",
    "calculate-infinity-as-text",
    "cautions-number-for-text",
    "dilute-no-volume",
    "envelope-list-for-object",
    "envelope-no-object",
    "envelope-other-format",
    "envelope-unknown-key",
    "envelope-unknown-task",
    "envelope-without-format",
    "envelope-without-request",
    "envelope-without-task",
    "formulas-misspelt-key",
    "plan-list-for-object",
    "plan-misspelt-key",
    "plan-no-stock",
    "plan-number-as-text",
    "propagate-seed-too-long-for-a-number",
    "rate-seed-too-long-for-a-number",
    "reduce-unknown-practical",
    "sources-number-for-text",
    "weigh-unknown-weights",
]


@pytest.mark.parametrize("name", SHAPES)
def test_what_has_the_wrong_shape_disagrees_with_the_schema(name):
    request = VECTORS / f"{name}.request.json"
    assert "error" in answer_of(request)
    assert not ASKED.is_valid(json.loads(request.read_text()))


def test_numbers_come_back_as_they_were_sent():
    """Every number of every answer, read and written by another library, keeps its digits: no double is changed by an ulp."""
    for request in REQUESTS:
        text = answer_file(request).read_text()
        numbers = []
        json.loads(text, parse_float=lambda digits: numbers.append(digits) or 0.0)
        for digits in numbers:
            value = float(digits)
            assert float(repr(value)) == value
            # The shortest digits that lead to the double, however the exponent is written.
            assert digits.replace(".", "").lower().split("e")[0].strip("-0") == (
                repr(value).replace(".", "").lower().split("e")[0].strip("-0")
            ), digits
