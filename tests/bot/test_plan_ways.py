"""The ways to hang the lamps of a plan: the same as arrange compares, one picked, and taken."""

import pytest

from bot.ask import ask
from bot.drawing import Side
from bot.preferences import Language, Preferences
from bot.render.picture import draw
from calc.setup.set_up import SetUp


def test_a_plan_compares_the_ways_to_hang_its_lamps_as_arrange_does() -> None:
    box = "animal:bearded dragon enclosure:48x24x24in lid:full mesh room:70F"
    planned, arranged = ask(f"plan {box}", Preferences()), ask(f"arrange {box}", Preferences())
    compared = next(row.text for row in planned.rows if row.label == "Ways compared")
    assert arranged.table is not None
    for name, heat, *_ in arranged.table.rows:
        told = name.removesuffix(" (my pick)").lower()
        assert f"{told}: {heat} of the warm spot" in compared.replace("\u00a0", " ").lower()
    assert compared.count("(my pick)") == 1
    assert any("simplest" in why for why in planned.why)


@pytest.mark.parametrize("place", ["", " place:inside", " place:above"])
def test_the_better_side_of_a_mesh_is_planned_unless_one_was_told(place: str) -> None:
    box = "animal:egyptian uromastyx enclosure:120x60x60cm lid:full mesh room:21C"
    told = ask(f"plan {box}{place}", Preferences()).steps[1]
    assert ("inside" in told) == (place == " place:inside")


@pytest.mark.slow
@pytest.mark.parametrize("language", ["en", "de"])
@pytest.mark.parametrize(
    ("animal", "lid", "across"),
    [("bearded dragon", "full mesh", False), ("egyptian uromastyx", "solid", True)],
)
def test_the_way_that_is_picked_is_the_one_that_is_drawn(
    animal: str, lid: str, across: bool, language: Language
) -> None:
    box = f"animal:{animal} enclosure:48x24x24in lid:{lid} room:70F"
    arranged, planned = (
        ask(f"{asked} {box}", Preferences(language=language)) for asked in ("arrange", "plan")
    )
    assert arranged.set_up == planned.set_up
    for reply in (arranged, planned):
        assert reply.picture is not None
        drawing, made = reply.picture.drawing, reply.set_up
        assert isinstance(drawing, Side)
        assert isinstance(made, SetUp)
        assert made.is_turned is across
        assert drawing.end is not None
        # The box is seen from the front first, a tube across from its end.
        assert drawing.width_m > drawing.end.width_m
        (tube,) = drawing.tubes
        assert (tube.x0 == tube.x1) is across
        assert (drawing.end.tubes[0].x0 < drawing.end.tubes[0].x1) is across
        assert (drawing.heat_lamp is not None) is across
        assert draw(drawing)


def test_a_tube_across_is_built_by_plan_and_says_why() -> None:
    box = "animal:egyptian uromastyx enclosure:120x60x60cm lid:solid room:21C"
    planned = ask(f"plan {box}", Preferences())
    assert planned.brief is not None
    assert any("across" in line.text for line in planned.brief)
    assert "from back to front" in planned.steps[1]
    assert any("hardly any shade" in why for why in planned.why)
    assert not any("ask arrange" in step for step in planned.steps)
    short = planned.table.rows[0][1] if planned.table else ""
    assert "55 cm" in short


def test_the_strip_of_the_picture_is_where_all_three_meet() -> None:
    reply = ask("plan animal:bearded dragon enclosure:48x24x24in lid:solid room:70F", Preferences())
    assert reply.picture is not None
    drawing, made = reply.picture.drawing, reply.set_up
    assert isinstance(drawing, Side)
    assert isinstance(made, SetUp)
    assert made.sun is not None
    assert drawing.sun is not None
    assert drawing.end is not None
    assert drawing.end.sun is not None
    assert made.sun.x_m == (drawing.sun.x0, drawing.sun.x1)
    assert made.sun.y_m == (drawing.end.sun.x0, drawing.end.sun.x1)
    assert "UV, heat and light meet" in reply.picture.alt
    assert "Gold" in drawing.note


@pytest.mark.parametrize(
    ("language", "kept", "lid"),
    [("en", "limits kept", "over the lid"), ("de", "Grenzen eingehalten", "über dem Deckel")],
)
def test_one_table_tells_the_gradient_and_what_touches_what_of_every_way(
    language: Language, kept: str, lid: str
) -> None:
    box = "animal:bearded dragon enclosure:48x24x24in lid:full mesh room:70F"
    table = ask(f"arrange {box}", Preferences(language=language)).table
    assert table is not None
    assert len(table.columns) == 7
    for _, _, _, light, cool, _, touches in table.rows:
        assert light.startswith("UV")
        assert " in (" in cool
        assert touches.startswith(kept)
        assert touches.count(" cm)") >= 4
    assert lid in table.rows[0][-1]


@pytest.mark.parametrize(("language", "told"), [("en", "not known"), ("de", "nicht bekannt")])
@pytest.mark.parametrize(
    "asked",
    [
        "plan animal:bearded dragon enclosure:48x24x24in lid:solid room:70F",
        "section tube:12% reflector:polished screen:none distance:16in enclosure:4x2x2ft uvi:3-5",
    ],
)
def test_light_that_no_lamp_was_told_for_is_said_to_be_unknown(
    asked: str, language: Language, told: str
) -> None:
    label = {"en": "Brightness", "de": "Helligkeit"}[language]
    rows = {row.label: row.text for row in ask(asked, Preferences(language=language)).rows}
    assert rows[label].startswith(told)
