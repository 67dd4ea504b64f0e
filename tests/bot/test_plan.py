"""The plan question: the same in both units, an honest answer for every animal, plain words."""

import re
from datetime import date

import pytest

from bot.ask import ask
from bot.drawing import Side
from bot.preferences import Preferences
from bot.render.picture import draw
from bot.render.post import render_post
from bot.reply import Reply, Value
from bot.saved.group import Own, OwnLamp
from calc.animals import animals

LINE = "plan enclosure:48x24x24in lid:solid material:wood room:70F night:62F"
DRAGON = "animal:bearded dragon"
DRY = f"{LINE} {DRAGON}"
MESH = "plan animal:bearded dragon enclosure:120x60x60cm lid:full mesh room:21C"
SET_ON = date(2026, 1, 3)
BOXES = ("48x24x24in lid:solid material:wood", "60x45x90cm lid:full mesh", "30x12x12in lid:mesh")


def value(reply: Reply, name: str) -> Value:
    return next(v for v in reply.values if v.name == name)


def row(reply: Reply, label: str) -> str:
    return next(r.text for r in reply.rows if r.label == label)


def told_in(reply: Reply) -> str:
    """Return the answer, its brief and its reasons."""
    return " ".join((reply.answer, *(line.text for line in reply.brief), *reply.why))


def bought(reply: Reply) -> dict[str, str]:
    assert reply.table is not None
    return {line[0]: line[1] for line in reply.table.rows}


# --- the same in every unit ----------------------------------------------------------------


def test_both_systems_give_the_same_figures(anyone: Preferences) -> None:
    line = f"{DRY} back:2in".replace("70F", "68F").replace("62F", "59F")
    changes = (("48x24x24in", "121.92x60.96x60.96 cm"), ("68F", "20C"), ("59F", "15C"))
    metric = line.replace("2in", "5.08cm")
    for imperial, si in changes:
        metric = metric.replace(imperial, si)
    first, other = ask(line, anyone), ask(metric, anyone)
    assert first.status == other.status == "ok"
    for a, b in zip(first.values, other.values, strict=True):
        assert (a.name, a.unit) == (b.name, b.unit)
        for x, y in ((a.low, b.low), (a.best, b.best), (a.high, b.high)):
            assert y == pytest.approx(x, rel=1e-6)


def test_the_askers_unit_stands_first(anyone: Preferences) -> None:
    inches, metric = ask(DRY, anyone), ask(MESH, anyone)
    assert re.search(r"\d in \(\d+ cm\)", inches.answer)
    assert re.search(r"\d cm \(\d+\.?\d* in\)", metric.answer)
    assert "°F (" in row(inches, "Basking surface")
    assert "°C (" in row(metric, "Basking surface")


def test_a_bare_size_takes_feet_and_says_so(anyone: Preferences) -> None:
    reply = ask(f"plan {DRAGON} enclosure:4x2x2 lid:mesh", anyone)
    assert reply.status == "ok"
    assert "ft" in row(reply, "Assumed")


# --- what it is made of --------------------------------------------------------------------


def test_tube_distance_back_and_platform_add_up_to_the_height(anyone: Preferences) -> None:
    inside = ask(f"{DRY} back:2in", anyone)
    parts = [value(inside, name).best for name in ("platform_top", "back", "tube_to_back")]
    assert sum(parts) == pytest.approx(24 * 0.0254 - 0.05)
    over = ask(f"{MESH} back:5cm", anyone)
    parts = [value(over, name).best for name in ("platform_top", "back", "tube_to_back")]
    assert sum(parts) == pytest.approx(0.6 + 0.02)


def test_the_uvi_is_that_of_the_uvi_question_for_the_tube_it_chose(anyone: Preferences) -> None:
    reply = ask(DRY, anyone)
    distance = f"{value(reply, 'tube_to_back').best / 0.0254:.4f}"
    asked = f"uvi distance:{distance}in tube:8% screen:none length:0.849m {DRAGON}"
    assert "8 % or weaker, polished" in told_in(reply)
    assert value(ask(f"{asked} reflector:polished", anyone), "uvi").best == pytest.approx(
        value(reply, "uvi").best, rel=1e-4
    )


def test_every_doubtful_figure_has_its_range(anyone: Preferences) -> None:
    reply = ask(DRY, anyone)
    for name in ("tube_to_back", "uvi", "platform_top", "back", "lamp_power", "air_held"):
        found = value(reply, name)
        assert found.low < found.best < found.high, name


def test_a_taller_back_lowers_the_platform(anyone: Preferences) -> None:
    low, high = (ask(f"{DRY} back:{x}", anyone) for x in ("1in", "3in"))
    lowered = value(low, "platform_top").best - value(high, "platform_top").best
    assert lowered == pytest.approx(2 * 0.0254)


def test_what_nobody_gave_is_said_to_be_assumed(anyone: Preferences) -> None:
    told = row(ask(f"plan {DRAGON} enclosure:4x2x2ft lid:full mesh", anyone), "I assumed")
    for words in ("a back 2 in", "in an adult, from memory", "70 °F", "blocks 45 %"):
        assert words in told
    given = ask(f"{DRY} back:2in", anyone)
    assert not [r for r in given.rows if r.label == "I assumed"]


def test_the_shopping_list_names_classes_and_marks_what_is_owned(anyone: Preferences) -> None:
    new = bought(ask(DRY, anyone))
    assert new["UV tube"].startswith("T5 HO, 8 % or weaker,")
    assert re.fullmatch(r"flood, \d+ W and \d+ W", new["Heat lamp"])
    assert "guard" in new["Lamp holder"]
    have = bought(ask(f"{DRY} tube:6% reflector:polished watts:75W", anyone))
    assert have["UV tube"].startswith("you have it: T5 HO, 6 %")
    assert have["UV fixture"].startswith("you have it: polished")
    assert have["Heat lamp"] == "you have it: flood, 75 W"


def test_the_groups_own_tube_is_planned_with_its_readings() -> None:
    lamp = OwnLamp(
        name="our tube",
        constant_uvi_m=1.2,
        doubt_factor=1.15,
        readings=2,
        lit_length_m=0.819,
        set_on=SET_ON,
    )
    asker = Preferences(own=Own(lamps=(lamp,)))
    reply = ask(f"{DRY} tube:our tube", asker)
    assert reply.status == "ok", reply.answer
    assert "the group's own lamp" in told_in(reply)
    assert value(reply, "tube_length").best == pytest.approx(0.849)


def test_a_cold_night_is_given_its_watts_and_a_mild_one_is_left_alone(anyone: Preferences) -> None:
    cold = ask(DRY.replace("62F", "50F"), anyone)
    assert "too cold" in row(cold, "Night")
    assert "without light" in bought(cold)["Night heater"]
    assert value(cold, "night_power").best > 0.0
    mild = ask(DRY, anyone)
    assert "needs no heat" in row(mild, "Night")
    assert "Night heater" not in bought(mild)
    unknown = ask(f"plan {DRAGON} enclosure:4x2x2ft lid:solid", anyone)
    assert "only if the room falls below 60 °F" in row(unknown, "Night")


def test_steps_are_for_the_first_day_and_week_and_end_with_measuring(anyone: Preferences) -> None:
    steps = ask(DRY, anyone).steps
    assert sum(step.startswith("First day:") for step in steps) == 4
    assert sum(step.startswith("First week:") for step in steps) == 2
    assert "measure again" in steps[-1]


def test_it_defers_to_electrical_codes_and_to_a_vet(anyone: Preferences) -> None:
    for line in (DRY, f"{MESH} place:above screen:95%"):
        told = " ".join(ask(line, anyone).cautions)
        assert "local electrical codes" in told
        assert "reptile vet" in told
    turtle = ask("plan animal:slider enclosure:4x2x2ft lid:full mesh", anyone)
    assert any("drip loop" in caution for caution in turtle.cautions)


# --- every animal --------------------------------------------------------------------------


@pytest.mark.parametrize("size", BOXES)
@pytest.mark.parametrize("slug", sorted(s for s, a in animals().items() if a.uvi is not None))
def test_every_animal_gets_a_plan_or_a_refusal_with_a_way_out(
    slug: str, size: str, anyone: Preferences
) -> None:
    name = animals()[slug].name
    reply = ask(f"plan animal:{name} enclosure:{size} room:21C night:14C", anyone)
    assert reply.command == "plan"
    assert reply.sources
    assert name.lower() in " ".join((reply.title, told_in(reply), *reply.steps)).lower()
    # Behind a night that is too cold for some of them, a refusal is an answer like any other.
    if "No:" in reply.answer:
        assert any(s.startswith(("Would work:", "For now:", "Best of all:")) for s in reply.steps)
        assert reply.table is None
        return
    assert reply.table is not None
    assert reply.picture is not None
    assert len(reply.picture.alt) <= 1024
    shown = render_post(reply).text
    # What cannot wait takes the room of the last of a plan's many rows.
    assert reply.dangers or "do not fit here" not in shown


# --- what cannot be done -------------------------------------------------------------------


@pytest.mark.parametrize(
    ("line", "why", "way"),
    [
        (MESH.replace("60x60cm", "60x23cm"), "too low", "a box at least"),
        (f"{MESH} screen:80%", "closer than 20 cm", "hang the tube inside"),
        (f"{MESH} screen:80%", "closer than 20 cm", "a wider mesh"),
        (f"{MESH} screen:80% tube:2%", "is too weak", "another tube"),
        (
            MESH.replace("120x60", "60x45"),
            "too short to have a warm and a cool end",
            "at least 73 cm",
        ),
        (MESH.replace("120x60", "45x45"), "every usual T5 HO tube is too long", "a box at least"),
        (f"{MESH} length:145cm tube:12%", "longer than the box", "another tube"),
        (f"{DRY} place:above", "no UV passes a solid lid", "hang the tube inside"),
        (DRY.replace("24x24in", "24x12in"), "too low for a heat lamp inside", "partly mesh"),
        (DRY.replace("70F", "88F"), "a room of 88 °F (31 °C) is too warm", "or cooler"),
        (f"{DRY} watts:400W", "make the whole box too warm", "a smaller heat lamp"),
    ],
)
def test_what_cannot_be_done_says_why_and_what_would_help(
    line: str, why: str, way: str, anyone: Preferences
) -> None:
    reply = ask(line, anyone)
    # A room that is a danger by itself is told first, as an answer.
    assert (reply.status == "problem") is not bool(reply.dangers)
    assert why in told_in(reply)
    assert any(way in step for step in reply.steps), reply.steps
    assert "measure" in reply.steps[-1]


def test_a_tube_inside_is_tried_before_it_is_refused(anyone: Preferences) -> None:
    reply = ask("plan animal:hermanns tortoise enclosure:120x60x120cm lid:full mesh", anyone)
    assert reply.status == "ok"
    assert any("Hang the tube inside" in step for step in reply.steps)
    assert any("Not on the mesh" in why for why in reply.why)


def test_a_low_box_for_a_snake_also_names_gentle_heat(anyone: Preferences) -> None:
    reply = ask("plan animal:royal python enclosure:36x18x12in lid:solid material:pvc", anyone)
    assert reply.status == "problem"
    assert any("lamp heat mat" in step for step in reply.steps)


# --- what people type ----------------------------------------------------------------------


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("plan", "I still need enclosure"),
        ("plan enclosure:4x2x2ft lid:mesh", "I still need animal"),
        ("plan animal:beardie enclosure:60x30x30 lid:mesh", "inches or centimetres"),
        ("plan animl:beardie enclosure:4x2x2ft lid:mesh", "did you mean animal?"),
        ("plan animal:beerded dargon enclosure:4x2x2ft lid:mesh", "perhaps bearded dragon"),
        ("plan animal:beardie enclosure:4x2x2ft lid:banana", "“banana” for lid"),
        ("plan animal:beardie enclosure:4x2ft lid:mesh", "“4x2ft” for enclosure"),
        ("plan animal:beardie enclosure:4x2x2ft lid:mesh room:38", "“38” for room"),
        ("plan animal:beardie enclosure:40x20x20ft lid:mesh", "my figures hold"),
        ("plan animal:beardie enclosure:4x2x2ft lid:mesh back:3ft", "Height of the back"),
        ("plan animal:beardie enclosure:4x2x2ft lid:mesh room:20F", "Room air"),
    ],
)
def test_what_is_not_understood_is_told_in_one_sentence(
    line: str, told: str, anyone: Preferences
) -> None:
    reply = ask(line, anyone)
    assert (reply.status == "problem") is not bool(reply.dangers)
    assert told in reply.answer


@pytest.mark.parametrize("lid", ["mesh", "messh", "full mesh", "screen top", "Mesh Top"])
def test_a_lid_is_understood_as_people_type_it(lid: str, anyone: Preferences) -> None:
    reply = ask(f"plan {DRAGON} enclosure:4x2x2ft lid:{lid}", anyone)
    if reply.status == "problem":
        assert "did you mean mesh?" in reply.answer
        return
    assert reply.values == ask(f"plan {DRAGON} enclosure:4x2x2ft lid:full mesh", anyone).values


# --- the picture ---------------------------------------------------------------------------


@pytest.mark.parametrize(
    "line",
    [
        DRY,
        MESH,
        "plan animal:veiled chameleon enclosure:60x60x120cm lid:full mesh",
        "plan animal:crested gecko enclosure:24x18x24in lid:full mesh",
    ],
)
def test_the_picture_is_to_scale_and_agrees_with_the_figures(
    line: str, anyone: Preferences
) -> None:
    reply = ask(line, anyone)
    assert reply.picture is not None
    drawing = reply.picture.drawing
    assert isinstance(drawing, Side)
    platform, tube = drawing.blocks[0], drawing.tubes[0]
    assert platform.y1 == pytest.approx(value(reply, "platform_top").best)
    assert drawing.back is not None
    assert tube.y - drawing.back.y == pytest.approx(value(reply, "tube_to_back").best)
    assert (tube.x0 + tube.x1) / 2 == pytest.approx(value(reply, "middle_from_warm_end").best)
    assert 0.0 <= platform.x0 < drawing.back.x < platform.x1 <= drawing.width_m
    # The lamp hangs beside the tube, which is seen from the warm end and not from the front.
    end = drawing.end
    assert end is not None
    assert drawing.heat_lamp is None
    assert (end.heat_lamp is None) == ("Heat lamp" not in bought(reply))
    for bar in end.tubes:
        assert end.heat_lamp is None or abs(end.heat_lamp.x - bar.x0) >= 0.1
    assert "Side view to scale" in reply.picture.alt


def test_the_picture_can_be_drawn(anyone: Preferences) -> None:
    reply = ask(MESH, anyone)
    assert reply.picture is not None
    assert reply.picture.drawing is not None
    assert draw(reply.picture.drawing).startswith(b"\x89PNG")
