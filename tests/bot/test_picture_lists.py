"""Pictures of lists: the ways a set-up may be, a day's dose, kinds of lamps; each as the reply."""

import pytest

from bot.ask import ask
from bot.drawing import Card, Drawing, Ladder, Tone
from bot.language.units import Units
from bot.preferences import LANGUAGES, Preferences
from bot.render.picture import page_of
from bot.reply import Reply

UNSURE = "distance tube:12% reflector:not sure screen:not sure animal:bearded dragon"
THERE = "uvi distance:{}in tube:12% reflector:not sure screen:mesh animal:bearded dragon"
DOSE = "dose uvi:4 hours:10 distance:14in latitude:27S month:June"
LINES = (
    *(UNSURE, THERE.format(14), THERE.format(3), THERE.format(60), DOSE, "dose uvi:4 hours:4"),
    *("dose uvi:1 hours:6 lamp:mercury", "lamp", "lamp kind:radiant panel"),
    *("tube animal:leopard gecko enclosure:90cm", "tube animal:bearded dragon screen:45%"),
    *("lamp metal halide", "lamp halogen flood", "lamp red lamp"),
)


def asked(line: str, language: str = "en", units: Units = Units.IN) -> tuple[Reply, Drawing]:
    base = Preferences(language=language, forced_units=units)  # type: ignore[arg-type]
    reply = ask(line, base)
    assert reply.picture is not None
    assert reply.picture.drawing is not None
    return reply, reply.picture.drawing


def plain(words: str) -> str:
    return words.replace("\u00a0", " ")


@pytest.mark.parametrize("line", LINES)
@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("units", Units)
def test_its_head_is_the_answer_and_its_words_tell_it(
    line: str, language: str, units: Units
) -> None:
    reply, drawing = asked(line, language, units)
    assert page_of(drawing).words
    heads = [told.text for told in reply.brief]
    assert plain(drawing.title) in heads
    assert reply.picture is not None
    assert plain(drawing.title) in reply.picture.alt
    assert len(reply.picture.alt) <= 1024


def test_each_way_is_a_bar_of_the_table() -> None:
    reply, drawing = asked(UNSURE)
    assert isinstance(drawing, Ladder)
    assert reply.table is not None
    assert [plain(rung.label) for rung in drawing.rungs] == [row[0] for row in reply.table.rows]
    for rung, row in zip(drawing.rungs, reply.table.rows, strict=True):
        assert plain(rung.verdict) == row[1]
        assert rung.is_barred is any(c.isdigit() for c in row[1])
        assert (rung.tone is Tone.BAD) is not rung.is_barred
    assert drawing.tone is Tone.DOUBTFUL
    start = next(value for value in reply.values if value.name == "distance")
    assert drawing.wanted is not None
    assert drawing.wanted.low == start.best


@pytest.mark.parametrize(("distance", "tone"), [(14, Tone.DOUBTFUL), (3, Tone.BAD), (60, Tone.BAD)])
def test_a_given_place_has_the_sign_of_what_all_ways_say(distance: int, tone: Tone) -> None:
    reply, drawing = asked(THERE.format(distance))
    assert isinstance(drawing, Ladder)
    assert drawing.tone is tone
    assert reply.table is not None
    for rung, row in zip(drawing.rungs, reply.table.rows, strict=True):
        assert float(row[1].split()[0]) == pytest.approx(rung.best, rel=0.05)


def test_the_bars_of_a_dose_are_its_figures() -> None:
    reply, drawing = asked(DOSE)
    assert isinstance(drawing, Ladder)
    lamp, sun, person, at_arm = drawing.rungs
    values = {value.name: value for value in reply.values}
    assert (lamp.low, lamp.high) == (0.0, values["dose_sed"].high)
    assert (sun.low, sun.high) == (values["sun_dose_sed"].low, values["sun_dose_sed"].high)
    assert "7 min" in plain(person.verdict)
    # At UVI 4 in seven minutes: 4 x 0.025 W/m2 x 420 s = 42 J/m2, by hand.
    assert person.high == pytest.approx(0.42, abs=0.005)
    assert at_arm.high < lamp.high / 20.0


def test_of_a_lamp_whose_waves_nobody_knows_no_time_is_drawn() -> None:
    _, drawing = asked("dose uvi:1 hours:6 lamp:mercury")
    assert isinstance(drawing, Ladder)
    assert len(drawing.rungs) == 2


@pytest.mark.parametrize(
    ("line", "tone"),
    [
        ("lamp halogen flood", Tone.GOOD),
        ("lamp metal halide", Tone.DOUBTFUL),
        ("lamp kind:radiant panel", Tone.BAD),
        ("lamp red lamp", Tone.BAD),
        ("lamp", Tone.PLAIN),
    ],
)
def test_a_kind_of_lamp_has_the_sign_of_its_answer(line: str, tone: Tone) -> None:
    reply, drawing = asked(line)
    assert isinstance(drawing, Card)
    assert drawing.tone is tone
    first = reply.brief[0].text.partition(" ")[0]
    words = {Tone.GOOD: "Yes.", Tone.DOUBTFUL: "Maybe.", Tone.BAD: "No.", Tone.PLAIN: "Take"}
    assert first == words[tone]


def test_the_list_of_lamps_is_the_table() -> None:
    reply, drawing = asked("lamp")
    assert isinstance(drawing, Card)
    assert reply.table is not None
    told = [(plain(row.label), plain(row.cells[0].first)) for row in drawing.rows]
    assert told == [row[:2] for row in reply.table.rows]


def test_where_a_tube_hangs_is_drawn_as_it_is_told() -> None:
    reply, drawing = asked("tube animal:leopard gecko enclosure:90cm")
    assert isinstance(drawing, Ladder)
    told = [line.text for line in reply.brief]
    for rung in drawing.rungs:
        assert any(plain(rung.verdict) in line for line in told), rung
        assert rung.low < rung.high
