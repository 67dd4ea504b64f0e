"""White light beside UV and heat: told in plan, arrange, section, drawn, and past no limit."""

from dataclasses import replace

import pytest

from bot.ask import ask
from bot.drawing import Side, Tone
from bot.preferences import Language, Preferences
from bot.render.picture import draw
from bot.reply import Reply
from calc.setup.set_up import SetUp

SECTION = (
    "section tube:12% reflector:polished screen:none distance:16in enclosure:48x24x24in "
    "animal:bearded dragon"
)
PLAN = "plan animal:bearded dragon enclosure:48x24x24in lid:full mesh room:70F"


def rows(reply: Reply) -> dict[str, str]:
    return {row.label: row.text.replace("\u00a0", " ") for row in reply.rows}


@pytest.mark.parametrize("asked", [SECTION, PLAN])
@pytest.mark.parametrize("language", ["en", "de"])
def test_a_white_lamp_is_the_third_layer_in_answer_and_picture(
    asked: str, language: Language
) -> None:
    dark, lit = (
        ask(one, Preferences(language=language)) for one in (asked, f"{asked} light:30W led bar")
    )
    label, sun = {
        "en": ("Brightness", "One patch of sun"),
        "de": ("Helligkeit", "Ein Fleck Sonne"),
    }[language]
    assert " lx" in rows(lit)[label]
    assert " lx" not in rows(dark)[label]
    assert "heat lamp's" not in rows(lit)[sun]
    assert lit.picture is not None
    drawing = lit.picture.drawing
    assert isinstance(drawing, Side)
    assert drawing.end is not None
    assert len(drawing.end.lights) == 1
    assert "\u00a0lx" in lit.picture.alt
    assert draw(drawing)


def test_a_told_lamp_takes_no_patch_away_and_two_are_brighter_than_one() -> None:
    def told(light: str) -> tuple[float, float]:
        reply = ask(f"{SECTION} {light}", Preferences())
        lux = {value.name: value.best for value in reply.values}.get("light", 0.0)
        assert isinstance(reply.set_up, SetUp)
        assert reply.set_up.sun is not None
        return lux, reply.set_up.sun.all_three.best

    none, one, two = map(told, ("", "light:2000lm led bar", "light:2 x 2000lm led bar"))
    assert 0.0 == none[0] < one[0] < two[0]
    assert none[1] <= one[1] <= two[1]


@pytest.mark.parametrize(
    "light", ["red lamp", "75W flood", "6500K", "led bar", "12% uvb tube", "2", "40W metal halide"]
)
def test_what_is_no_white_lamp_with_its_label_is_asked_again(light: str) -> None:
    reply = ask(f"{PLAN} light:{light}", Preferences())
    assert reply.status == "problem"
    assert "24W led bar" in reply.answer + "".join(reply.steps)


def test_a_bar_that_warms_the_cool_end_past_its_range_is_said_first() -> None:
    hot = ask(f"{PLAN.replace('70F', '78F')} light:4 x 60W led bar", Preferences())
    assert "past its range" in rows(hot)["The white light's heat"]
    assert any("fewer watts" in line.text for line in hot.brief or ())
    mild = ask(f"{PLAN} light:20W led bar", Preferences())
    assert "past its range" not in rows(mild)["The white light's heat"]


@pytest.mark.parametrize("level", ["good", "better"])
@pytest.mark.parametrize("room", ["65F", "70F", "74F", "78F", "80F"])
@pytest.mark.parametrize("animal", ["bearded dragon", "veiled chameleon", "crested gecko"])
def test_the_bar_of_a_level_never_warms_the_cool_end_past_its_range(
    animal: str, room: str, level: str
) -> None:
    box = f"enclosure:48x24x36in lid:full mesh room:{room}"
    reply = ask(f"plan animal:{animal} {box} level:{level}", Preferences())
    assert "past its range" not in rows(reply).get("The white light's heat", "")


def test_a_level_says_why_it_brings_no_bar() -> None:
    hot = PLAN.replace("full mesh", "solid").replace("70F", "76F")
    bought = ask(f"{hot} level:good", Preferences()).table
    assert bought is not None
    which = {row[0]: row[1] for row in bought.rows}
    assert "A cooler room comes first" in which["White LED bar"]


def test_the_minimum_has_no_white_bar_and_who_wakes_at_night_gets_none() -> None:
    assert "lx" not in rows(ask(f"{PLAN} level:minimum", Preferences()))["Brightness"]
    night = "plan animal:leopard gecko enclosure:90x45x45cm lid:solid room:21C level:better"
    assert "lx" not in rows(ask(night, Preferences()))["Brightness"]


CHECKED = (
    "check beardie, 48x24x24in, 34in 12% tube, shiny hood, no mesh, 18in to its back, lamp beside "
    "the tube, meter reads uvi 4.0, basking 103F, cool 79F, night 68F, lights 12 hours"
)


@pytest.mark.parametrize(("light", "told"), [(", 30w led bar", True), ("", False)])
def test_a_checked_set_up_tells_its_shade_and_white_light_without_a_verdict(
    light: str, told: bool
) -> None:
    dark, lit = ask(CHECKED, Preferences()), ask(f"{CHECKED}{light}", Preferences())
    why = " ".join(lit.why).replace("\u00a0", " ")
    assert "Shade from all three" in why
    assert ("lx on the back" in why) is told
    assert "no need is published" in why or not told

    def verdicts(reply: Reply) -> dict[str, str]:
        assert reply.table is not None
        return {row[0]: row[1] for row in reply.table.rows if row[0] != "Lamps"}

    assert verdicts(dark) == verdicts(lit)


@pytest.mark.slow
@pytest.mark.parametrize(
    ("language", "lux", "words"),
    [("en", "about 2400 lx", "dim"), ("de", "etwa 2400 lx", "eher dunkel")],
)
def test_a_checked_set_up_draws_its_white_lamp_over_the_tube_with_a_plate_and_no_sign(
    language: Language, lux: str, words: str
) -> None:
    picture = ask(f"{CHECKED}, 30w led bar", Preferences(language=language)).picture
    assert picture is not None
    side = picture.drawing
    assert isinstance(side, Side)
    [bar], [tube] = side.lights, side.tubes
    assert tube.x0 <= bar.x0 < bar.x1 < tube.x1
    plate = side.places[-1].gauge
    assert plate is not None
    assert plate.reading_text.replace("\u00a0", " ") == lux
    assert (plate.verdict, plate.tone, side.places[-1].tone) == (words, Tone.PLAIN, Tone.PLAIN)
    assert {"en": "The white light makes", "de": "Mit dem weißen Licht"}[language] in picture.alt
    assert draw(side) != draw(replace(side, lights=()))


@pytest.mark.parametrize(
    ("light", "told"), [(", 30w led bar", True), ("", False), (", red bulb", False)]
)
def test_a_white_lamp_is_drawn_only_where_told_and_how_bright_only_where_worked_out(
    light: str, told: bool
) -> None:
    # Its UV is too strong: nothing else is worked out before it.
    asked = "check beardie, 48x24x24in, 34in 12% tube, polished hood, no mesh, 10in to its back"
    picture = ask(f"{asked}{light}", Preferences()).picture
    assert picture is not None
    side = picture.drawing
    assert isinstance(side, Side)
    assert bool(side.lights) is told
    assert not any("lx" in place.gauge.reading_text for place in side.places if place.gauge)
    assert ("not worked out" in picture.alt) is told
    assert any("not worked out" in one.text for one in side.placeless) is told


def test_free_words_bring_a_white_lamp_along_and_its_watts_are_no_heat_lamps() -> None:
    told = "want to get a bearded dragon, 4x2x2 wooden, mesh lid, room 70F, i have a 24w led bar"
    reply = ask(told, Preferences())
    assert reply.command == "plan"
    assert " lx" in rows(reply)["Brightness"]
    assert "24" not in rows(reply)["Heat lamp"]
