"""What the README says of Python is what happens."""

import re
from pathlib import Path

import overwater

README = (Path(__file__).parents[2] / "README.md").read_text()
SECTION = README.split("\n## In Python\n")[1].split("\n## ")[0]


def test_each_line_gives_what_its_comment_says():
    (block,) = re.findall(r"```python\n(.*?)```", SECTION, re.DOTALL)
    compile(block, "README.md", "exec")
    checked = 0
    for line in block.splitlines():
        code, mark, said = line.strip().partition("  # ")
        if not mark or code.startswith("error."):
            continue
        found = eval(code, {"overwater": overwater})
        if isinstance(found, float):
            digits = said.split()[0]
            assert f"{found:.{len(digits.partition('.')[2])}f}" == digits, line
        else:
            assert str(found) == said.partition(",")[0], line
        checked += 1
    assert checked == 6
    try:
        overwater.vapour_pressure(150.0)
    except overwater.OverwaterError as error:
        assert f"# {(error.code, error.allowed)}" in block


def classes():
    """The classes of answers, by name."""
    later = {name: getattr(overwater, name) for name, home in overwater._LATER.items() if home in ("_results", "_tasks")}
    return {name: one for name, one in later.items() if isinstance(one, type)}


def test_the_objects_named_are_all_there_are():
    named = re.search(r"What is more than a number \((.*?)\)", SECTION, re.DOTALL).group(1)
    assert {*re.findall(r"`(\w+)`", named), "Answer"} == set(classes())


def test_pictures_and_tables_are_of_those_that_are_named():
    for method in ("plot", "to_frame"):
        (named,) = re.findall(rf"`{method}\(\)`, of a\s(.*?) \(with", SECTION, re.DOTALL)
        assert set(re.findall(r"`(\w+)`", named)) == {name for name, one in classes().items() if hasattr(one, method)}
