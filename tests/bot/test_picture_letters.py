"""The letters of the pictures: their widths are the font's, and the font comes along."""

import json
from pathlib import Path

import pytest
from fontTools.ttLib import TTFont

from bot.render.picture import lettering
from bot.render.picture.lettering import FONTS, font_files

FOLDER = Path(lettering.__file__).parent / "letters"


@pytest.mark.parametrize(("weight", "name"), list(zip(("medium", "bold"), FONTS, strict=True)))
def test_the_widths_are_those_of_the_font(weight: str, name: str) -> None:
    told = json.loads((FOLDER / "advances.json").read_text("utf-8"))[weight]
    font = TTFont(FOLDER / name)
    per_em, metrics = font["head"].unitsPerEm, font["hmtx"]
    found = {chr(code): metrics[glyph][0] / per_em for code, glyph in font.getBestCmap().items()}
    assert told == pytest.approx(found)


def test_the_licence_stands_beside_the_letters() -> None:
    assert "SIL Open Font License" in (FOLDER / "OFL.txt").read_text("utf-8")
    assert [Path(file).parent for file in font_files()] == [FOLDER, FOLDER]


@pytest.mark.parametrize("weight", ["medium", "bold"])
def test_both_languages_can_be_set_whole(weight: str) -> None:
    told = json.loads((FOLDER / "advances.json").read_text("utf-8"))[weight]
    assert set("ÄÖÜäöüß°×–—„“‚‘’…−µ²³½¼¾%&") <= set(told)
