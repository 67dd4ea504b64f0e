"""A care sheet: the needs of a kept animal in its own box, with its last readings and their day."""

import pytest

from bot.drawing import Chart, Side, Tone, Tool
from bot.reply import Reply
from tests.bot.keeping.conftest import Ask
from tests.bot.keeping.people import row

SAVE = (
    "mine save name:Pebble's box animal:bearded dragon tube:12% reflector:polished "
    "screen:passes 55% distance:14in length:22in age:2 months enclosure:120x60x60cm"
)


def drawn(reply: Reply) -> Side:
    assert reply.picture is not None
    assert isinstance(reply.picture.drawing, Side)
    return reply.picture.drawing


async def test_a_sheet_has_the_keepers_box_with_needs_readings_and_days(ok: Ask) -> None:
    await ok(SAVE)
    await ok("mine reading uvi:9.4 basking:103F cool:70F")
    reply = await ok("mine sheet")
    drawing = drawn(reply)
    assert (drawing.width_m, drawing.height_m) == pytest.approx((1.2, 0.6))
    [away] = drawing.dimensions
    assert away.y0 - away.y1 == pytest.approx(14 * 0.0254)
    [tube] = drawing.tubes
    assert tube.x1 - tube.x0 == pytest.approx(22 * 0.0254)
    found = {place.tool: place.gauge for place in drawing.places}
    uv, surface = found[Tool.UV_METER], found[Tool.INFRARED_GUN]
    assert uv is not None
    assert surface is not None
    assert (uv.reading_text, uv.tone) == ("UVI 9.4", Tone.BAD)
    assert surface.tone is Tone.GOOD
    assert "5 March 2026" in drawing.note
    assert "4 May 2026" in drawing.note
    assert row(reply, "Basking surface").startswith("95 to 110 °F")


async def test_the_verdicts_of_a_sheet_are_those_of_the_last_readings(ok: Ask) -> None:
    await ok(SAVE)
    await ok("mine reading basking:130F cool:70F day:2026-05-01")
    await ok("mine reading basking:103F")
    reply = await ok("mine sheet")
    places = [place for place in drawn(reply).places if place.gauge and place.gauge.reading]
    assert [place.tone for place in places] == [Tone.GOOD, Tone.BAD]
    assert "right" in row(reply, "Last surface")


async def test_a_sheet_without_an_animal_says_what_is_missing(ok: Ask) -> None:
    await ok("mine save name:Spare tube:12%")
    reply = await ok("mine sheet")
    assert reply.picture is None
    assert reply.answer.startswith("I do not know who lives in it.")
    assert reply.steps[0].endswith("mine save name:Spare animal:bearded dragon")


async def test_an_enclosure_without_a_trend_is_shown_as_its_own_box(ok: Ask) -> None:
    await ok(SAVE)
    await ok("mine reading basking:130F cool:79F")
    reply = await ok("mine show")
    drawing = drawn(reply)
    assert (drawing.width_m, drawing.height_m) == pytest.approx((1.2, 0.6))
    gauges = {place.tool: place.gauge for place in drawing.places}
    surface = gauges[Tool.INFRARED_GUN]
    assert surface is not None
    assert surface.tone is Tone.BAD
    assert drawing.title.replace("\u00a0", " ") == reply.brief[0].text
    assert reply.picture is not None
    assert surface.reading_text in reply.picture.alt
    await ok("mine reading uvi:4.4 distance:14in")
    trend = await ok("mine show")
    assert trend.picture is not None
    assert isinstance(trend.picture.drawing, Chart)


async def test_an_enclosure_of_nobody_known_has_no_box(ok: Ask) -> None:
    await ok("mine save name:Spare tube:12%")
    await ok("mine reading basking:103F name:Spare")
    assert (await ok("mine show name:Spare")).picture is None
