"""The page of differences from the references is what its script draws."""

import importlib.util
import pathlib
import re

import program

FOLDER = program.ROOT / "examples" / "accuracy"


def drawn_anew(folder):
    specification = importlib.util.spec_from_file_location("draw", FOLDER / "draw.py")
    script = importlib.util.module_from_spec(specification)
    specification.loader.exec_module(script)
    script.main(folder)


def numbers(text):
    return [float(number) for number in re.findall(r"-?\d+\.?\d*(?:e-?\d+)?", text)]


def test_the_page_and_its_drawings_are_those_of_today(tmp_path):
    drawn_anew(tmp_path)
    assert (tmp_path / "README.md").read_text() == (FOLDER / "README.md").read_text()
    names = sorted(path.name for path in tmp_path.glob("*.svg"))
    assert names == sorted(path.name for path in FOLDER.glob("*.svg"))
    for name in names:
        new, kept = [(folder / name).read_text() for folder in (tmp_path, FOLDER)]
        # The last figures of a coordinate may differ between processors: a hundredth of a point cannot be seen.
        shape = [re.sub(r"-?\d+\.?\d*(?:e-?\d+)?", "0", text) for text in (new, kept)]
        assert shape[0] == shape[1], name
        pairs = zip(numbers(new), numbers(kept), strict=True)
        assert all(abs(one - other) < 0.01 for one, other in pairs), name


def test_every_drawing_says_what_it_shows():
    for path in pathlib.Path(FOLDER).glob("*.svg"):
        text = path.read_text()
        assert 'role="img"' in text and "<title" in text, path.name
        said = re.search(r"<desc[^>]*>(.*?)</desc>", text)[1]
        assert said.startswith("Worst difference along "), path.name
        assert "#000000" not in text and "currentColor" in text, path.name
