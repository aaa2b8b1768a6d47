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
            assert found == said, line
        checked += 1
    assert checked == 4
    try:
        overwater.vapour_pressure(150.0)
    except overwater.OverwaterError as error:
        assert f"# {(error.code, error.allowed)}" in block


def test_the_objects_named_are_all_there_are():
    named = re.search(r"What is more than a number \((.*?)\)", SECTION, re.DOTALL).group(1)
    assert set(re.findall(r"`(\w+)`", named)) == {name for name, home in overwater._LATER.items() if home == "_results"}
