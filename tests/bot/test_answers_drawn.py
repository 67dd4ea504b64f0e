"""Answers about warmth and sun with their pictures: what is drawn is what is told."""

import pytest

from bot.ask import ask
from bot.drawing import Chart, Side, Tone
from bot.language.units import Units
from bot.preferences import LANGUAGES, Preferences
from bot.render.picture import page_of
from bot.reply import Reply

BASKING = "basking surface:{}F air:79F distance:12in animal:bearded dragon"
AIR = "air enclosure:48x24x24in material:wood lid:full mesh room:68F animal:bearded dragon"
WATTS = "watts room:70F distance:10in lamp:flood want:103F"
SURFACE = "surface reading:103F material:slate"
OUTDOORS = "outdoors latitude:40N month:June animal:bearded dragon"
NIGHT = "night room:{}F animal:bearded dragon"
EVERY = (BASKING.format(92), BASKING.format(115), AIR, WATTS, SURFACE, OUTDOORS, NIGHT.format(50))


def asked(line: str) -> Reply:
    return ask(line, Preferences())


def side(reply: Reply) -> Side:
    assert reply.picture is not None
    assert isinstance(reply.picture.drawing, Side)
    return reply.picture.drawing


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("units", Units)
@pytest.mark.parametrize("line", EVERY)
def test_no_words_of_it_meet_and_its_words_tell_the_answer(
    line: str, units: Units, language: str
) -> None:
    reply = ask(line, Preferences(language=language, forced_units=units))  # type: ignore[arg-type]
    assert reply.picture is not None
    assert reply.picture.drawing is not None
    assert page_of(reply.picture.drawing).words
    alt = reply.picture.alt.replace("\u00a0", " ")
    assert reply.brief[0].text in alt or reply.dangers


@pytest.mark.parametrize(
    ("line", "tone"),
    [
        (NIGHT.format(64), Tone.GOOD),
        (NIGHT.format(58), Tone.BAD),
        (NIGHT.format(92), Tone.BAD),
        (BASKING.format(103), Tone.GOOD),
        (BASKING.format(92), Tone.BAD),
        (BASKING.format(115), Tone.BAD),
    ],
)
def test_the_sign_is_the_verdict_of_the_answer(line: str, tone: Tone) -> None:
    drawing = side(asked(line))
    assert (drawing.tone, drawing.places[0].tone) == (tone, tone)


@pytest.mark.parametrize(("surface", "way"), [(92, -1.0), (115, 1.0)])
def test_a_lamp_is_moved_as_far_as_is_told(surface: int, way: float) -> None:
    reply = asked(BASKING.format(surface))
    [shift] = side(reply).shifts
    [away] = side(reply).dimensions
    told = next(value for value in reply.values if value.name == "lamp_distance")
    assert shift.up * way > 0.0
    assert away.y0 - away.y1 == pytest.approx(12 * 0.0254)
    assert 12 * 0.0254 + shift.up == pytest.approx(told.high)


def test_the_warmth_that_leaves_is_drawn_at_wall_and_lid() -> None:
    walls, lid = side(asked(AIR)).flows
    assert walls.x1 > walls.x0
    assert lid.y1 > lid.y0
    shares = [int(flow.label.split()[0].rstrip("\u00a0%")) for flow in (walls, lid)]
    assert sum(shares) == 100


def test_the_right_hours_of_the_sun_are_those_of_the_answer() -> None:
    reply = asked(OUTDOORS)
    assert reply.picture is not None
    drawing = reply.picture.drawing
    assert isinstance(drawing, Chart)
    quarters = [round(4 * end) for span in drawing.spans for end in (span.low, span.high)]
    clocks = [f"{n // 4:02}:{15 * (n % 4):02}" for n in quarters]
    assert all(clock in reply.answer for clock in clocks)
