"""A care sheet of a set-up that was told or planned: needs, readings, days, cautions, sources."""

from datetime import date

import pytest

from bot.ask import ask
from bot.drawing import Side, Tone, Tool
from bot.fronts.console import converse
from bot.language.units import Units
from bot.preferences import LANGUAGES, Preferences
from bot.render.picture import page_of
from bot.reply import Reply

CHECKED = (
    "check bearded dragon, 48x24x36in enclosure, 34in 12% tube, shiny hood, no mesh, "
    "30 in to its back, basking 104F, cool 60F"
)
PLANNED = "plan animal:leopard gecko enclosure:36x18x18in lid:full mesh room:70F night:62F"
ON = date(2026, 5, 4)


def drawn(reply: Reply) -> Side:
    assert reply.sheet is not None
    assert isinstance(reply.sheet.drawing, Side)
    return reply.sheet.drawing


def asked(line: str, language: str = "en", units: Units = Units.IN) -> Reply:
    preferences = Preferences(language=language, forced_units=units, today=ON)  # type: ignore[arg-type]
    return ask(line, preferences)


def test_a_sheet_of_a_checked_set_up_has_its_box_and_the_signs_of_the_answer() -> None:
    reply = asked(CHECKED)
    drawing = drawn(reply)
    assert (drawing.width_m, drawing.height_m) == pytest.approx((48 * 0.0254, 36 * 0.0254))
    [away] = drawing.dimensions
    assert away.y0 - away.y1 == pytest.approx(30 * 0.0254)
    tones = {place.tool: place.tone for place in drawing.places if place.tool is not Tool.PROBE}
    assert reply.picture is not None
    shown = reply.picture.drawing
    assert isinstance(shown, Side)
    of_picture = {place.tool: place.tone for place in shown.places}
    assert tones[Tool.UV_METER] is of_picture[Tool.UV_METER] is Tone.BAD
    assert tones[Tool.INFRARED_GUN] is of_picture[Tool.INFRARED_GUN] is Tone.GOOD
    cool = next(p for p in drawing.places if p.gauge and p.gauge.label == "Cool end")
    assert (cool.tone, cool.gauge and cool.gauge.reading_text) == (
        Tone.BAD,
        "reads 60\u00a0°F (15.5\u00a0°C)",
    )


@pytest.mark.parametrize("line", [CHECKED, PLANNED])
def test_a_sheet_says_when_what_to_mind_and_who_says_so(line: str) -> None:
    lines = drawn(asked(line)).note.splitlines()
    assert any("4 May 2026" in one for one in lines)
    assert any("reptile vet" in one for one in lines)
    assert len([one for one in lines if one.startswith("•")]) >= 1


def test_a_sheet_of_a_plan_has_nothing_read_and_its_tube_as_far_as_planned() -> None:
    reply = asked(PLANNED)
    drawing = drawn(reply)
    away = next(value for value in reply.values if value.name == "tube_to_back")
    assert drawing.dimensions[0].y0 - drawing.dimensions[0].y1 == pytest.approx(away.best)
    assert not any(place.gauge and place.gauge.reading for place in drawing.places)


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("units", Units)
@pytest.mark.parametrize("line", [CHECKED, PLANNED])
def test_no_words_of_a_sheet_meet(line: str, units: Units, language: str) -> None:
    assert page_of(drawn(asked(line, language, units))).words


@pytest.mark.parametrize(
    "line",
    [
        "check 12% tube, 14 in to its back, basking 104F",
        "check bearded dragon, 12% tube, basking 150F",
    ],
    ids=["nobody named", "cannot wait"],
)
def test_there_is_no_sheet_where_it_would_mislead(line: str) -> None:
    assert asked(line).sheet is None


def test_a_word_in_the_console_opens_the_sheet() -> None:
    told: list[str] = []
    preferences = Preferences(today=ON)
    converse([CHECKED, "sheet", "care sheet"], told.append, preferences)
    first, *sheets = told
    assert "care sheet" in first.splitlines()[-2]
    assert len(set(sheets)) == 1
    assert sheets[0].startswith("Care sheet:\n")
