"""A plan for a box: it keeps its own promises, and says when a box will not do."""

import pytest

from bot.answers.plan import answer_plan
from bot.answers.uvi import answer_uvi
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Units
from bot.preferences import Context
from bot.queries.setup import PlanQuery
from bot.queries.uv import UviQuery
from bot.reply import Reply, Value

WISH = "a beardie in a 4x2x2 wooden viv with a mesh lid, room 70F, 62F at night"


def planned(words: str, units: Units = Units.IN, **options: str) -> Reply:
    query = PlanQuery.model_validate({"wish": words, **options}, context={"units": units})
    return answer_plan(query, Context(units))


def value(reply: Reply, name: str) -> Value:
    return next(value for value in reply.values if value.name == name)


def rows(reply: Reply, label: str) -> list[str]:
    return [row.text for row in reply.rows if row.label == label]


def test_a_plan_tells_everything_that_is_needed() -> None:
    reply = planned(WISH)
    assert reply.status == "ok"
    assert reply.table is not None
    bought = {item for item, _, _ in reply.table.rows}
    assert {"UV tube", "Fixture", "Basking lamp", "Infrared gun", "Timer"} <= bought
    assert "platform" in reply.answer
    for label in ("Basking surface", "Cool end", "Night", "Hours", "Air", "Where the tube goes"):
        assert rows(reply, label), label
    assert any(step.startswith("First day") for step in reply.steps)
    assert any(step.startswith("First week") for step in reply.steps)


def test_the_heights_of_a_plan_add_up_in_the_box() -> None:
    reply = planned(WISH)
    platform, distance = value(reply, "platform_height").best, value(reply, "distance").best
    back, over_mesh = 0.05, 0.02
    assert platform + back + distance == pytest.approx(24 * 0.0254 + over_mesh)


def test_the_uv_of_a_plan_is_what_the_question_uvi_answers() -> None:
    reply = planned(WISH)
    given = {
        "tube": "12%",
        "reflector": "polished",
        "screen": "45%",
        "animal": "bearded dragon",
        "length": f"{value(reply, 'tube_length').best:.6f} m",
        "distance": f"{value(reply, 'distance').best:.6f} m",
    }
    asked = answer_uvi(UviQuery.model_validate(given), Context(Units.IN))
    assert value(asked, "uvi").best == pytest.approx(value(reply, "uvi").best, rel=1e-4)


def test_what_was_not_told_is_said_to_be_taken() -> None:
    taken = " ".join(rows(planned("beardie 4x2x2 ft"), "Taken, as nothing was said"))
    for thing in ("walls of glass", "mesh lid", "blocks 45 %", "room of 70 °F", "2 in"):
        assert thing in taken
    told = planned(WISH, back="3in", screen="30%")
    assert rows(told, "Taken, as nothing was said") == []


def test_options_come_before_the_words() -> None:
    reply = planned(WISH, lid="solid", enclosure="180x60x60cm")
    assert "solid lid" in rows(reply, "Enclosure")[0]
    assert "inside, under the lid" in reply.answer


def test_a_tube_that_is_owned_is_used_and_not_bought() -> None:
    reply = planned("beardie, i own a 6% tube with plain hood, 120x60x60cm wood solid lid")
    assert "6 %, plain fixture" in reply.answer
    assert reply.table is not None
    assert "UV tube" not in {item for item, _, _ in reply.table.rows}


def test_a_box_too_low_says_how_high_it_would_have_to_be() -> None:
    reply = planned("bearded dragon, 120x60x20 cm glass, solid lid", Units.CM)
    assert reply.status == "problem"
    assert "A box of at least" in reply.answer
    assert reply.steps


def test_a_box_too_short_for_a_gradient_is_no_good_plan() -> None:
    reply = planned("bearded dragon, 45x45x60 cm glass, mesh lid", Units.CM)
    assert reply.status == "problem"
    assert "short for a gradient" in reply.answer


def test_a_cold_night_gets_heat_without_light_and_a_warm_one_nothing() -> None:
    cold = planned("bearded dragon 4x2x2 ft wood, solid lid, room 68F, 52F at night")
    assert "without light" in rows(cold, "Night")[0]
    assert cold.table is not None
    assert "Thermostat" in {item for item, _, _ in cold.table.rows}
    assert "nothing to do" in rows(planned(WISH), "Night")[0]


def test_without_an_enclosure_it_is_asked_for() -> None:
    with pytest.raises(NotUnderstoodError, match="length, depth and height"):
        planned("a bearded dragon")
    with pytest.raises(NotUnderstoodError, match="80x60x50"):
        planned("a bearded dragon in an 80x60x50")


def test_a_plan_is_the_same_in_both_units() -> None:
    inches = planned("bearded dragon, 48x24x24 in, wood, mesh lid, room 70F, back 2in", back="2in")
    metric = planned(
        "bearded dragon, 121.92x60.96x60.96 cm, wood, mesh lid, room 21.111111 C",
        Units.CM,
        back="5.08cm",
    )
    for one, other in zip(inches.values, metric.values, strict=True):
        assert one.name == other.name
        assert one.best == pytest.approx(other.best, rel=1e-5)
