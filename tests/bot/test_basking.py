"""The basking lamp: moved, changed or dimmed from the keeper's own reading; a first wattage."""

import pytest

from bot.ask import ask
from bot.language.quantities import Units
from bot.preferences import Preferences
from bot.reply import Reply, Value
from calc.heat.basking import Reading, surface_at
from calc.heat.guards import WOOD_LIMIT_C
from tests.bot.english import temperature
from tests.bot.saying.pinning import everything

READING = "basking surface:42C air:22C distance:30cm animal:bearded dragon"


def value(reply: Reply, name: str) -> Value:
    return next(v for v in reply.values if v.name == name)


def row(reply: Reply, label: str) -> str:
    return next(r.text for r in reply.rows if r.label == label)


def test_the_lamp_is_raised_to_cool_and_lowered_to_warm(anyone: Preferences) -> None:
    cooler, warmer = (ask(f"{READING} want:{want}", anyone) for want in ("37C", "44C"))
    assert cooler.answer.startswith("Raise the lamp")
    assert warmer.answer.startswith("Lower the lamp")
    moved = value(cooler, "lamp_distance")
    # By hand: 30 cm, rise 20 to 15 K: 34.6 cm by the plain law, 37.6 cm with p 0.83 and 10 cm.
    assert moved.low == pytest.approx(0.346, abs=5e-4)
    assert moved.high == pytest.approx(0.376, abs=5e-4)


def test_the_careful_end_is_the_far_one_both_ways(anyone: Preferences) -> None:
    for want in ("37C", "44C"):
        reply = ask(f"{READING} want:{want}", anyone)
        far_cm = f"{value(reply, 'lamp_distance').high * 100:.0f} cm"
        assert f"the lamp to {far_cm}" in reply.answer
        assert "Measure again after two hours" in reply.steps[-1]


def test_moving_as_told_and_measuring_again_lands_on_the_wanted_surface(
    anyone: Preferences,
) -> None:
    # Under the model: the middle answer from the likely scaling brings exactly what was wanted.
    moved = value(ask(f"{READING} want:37C", anyone), "lamp_distance")
    assert surface_at(Reading(42.0, 22.0, 0.30), moved.best).best == pytest.approx(37.0)


def test_either_unit_gives_the_same_figures(anyone: Preferences) -> None:
    metric = ask("basking surface:35C air:25C distance:25.4cm want:40C watts:75W", anyone)
    imperial = ask("basking surface:95F air:77F distance:10in want:104F watts:75W", anyone)
    for a, b in zip(metric.values, imperial.values, strict=True):
        assert b.low == pytest.approx(a.low, rel=1e-12)
        assert b.high == pytest.approx(a.high, rel=1e-12)
    assert "10 in (25 cm)" in imperial.answer
    assert "25 cm (10 in)" in metric.answer


def test_the_lamps_that_are_sold_are_offered_with_the_surface_to_expect(
    anyone: Preferences,
) -> None:
    reply = ask(f"{READING} want:39C watts:75W", anyone)
    assert reply.table is not None
    assert [line[0].split()[0] for line in reply.table.rows[1:]] == ["60", "75"]


def test_a_dimmed_lamp_counts_with_what_it_gives_and_not_with_its_label(
    anyone: Preferences,
) -> None:
    full = value(ask(f"{READING} want:39C watts:75W", anyone), "lamp_power")
    dimmed = value(ask(f"{READING} want:39C watts:75W dimmer:80%", anyone), "lamp_power")
    assert dimmed.best == pytest.approx(0.8 * full.best)


def test_more_than_a_fifth_of_dimming_means_a_smaller_lamp(anyone: Preferences) -> None:
    much = ask(f"{READING} want:34C watts:75W dimmer:100%", anyone)
    assert "too much" in row(much, "Dimmer")
    # The lamp that the table calls fine, and no other.
    assert "40 W" in row(much, "Dimmer")
    assert much.table is not None
    assert [line[2] for line in much.table.rows if line[0].startswith("40 W")] == ["fine"]
    dimmed = ask(f"{READING} want:43C watts:75W dimmer:60%", anyone)
    assert "too much" in row(dimmed, "Dimmer")
    little = ask(f"{READING} want:40C watts:75W dimmer:100%", anyone)
    assert "small steps" in row(little, "Dimmer")
    assert "light" in row(little, "What dimming does")
    beyond = ask(f"{READING} want:44C watts:75W dimmer:100%", anyone)
    assert "not enough" in row(beyond, "Dimmer")


@pytest.mark.parametrize(
    ("option", "told"),
    [
        ("safe:50cm", "label allows"),
        ("watts:100W holder:60W", "marked for"),
        ("wood:80C", "catch fire"),
        ("reach:yes", "touch a lamp"),
    ],
)
def test_a_guard_stops_before_the_arithmetic(option: str, told: str, anyone: Preferences) -> None:
    reply = ask(f"{READING} want:44C {option}", anyone)
    assert "Stop: " in reply.answer
    assert told in reply.answer


@pytest.mark.parametrize("option", ["watts:100W holder:60W", "wood:80C", "reach:yes"])
@pytest.mark.parametrize("want", ["44C", "42C", "37C"])
def test_what_is_dangerous_is_put_right_before_any_move_or_lamp_is_told(
    option: str, want: str, anyone: Preferences
) -> None:
    reply = ask(f"{READING} want:{want} {option}", anyone)
    assert reply.dangers
    assert reply.table is None
    assert "lamp_distance" not in {v.name for v in reply.values}
    assert not any("Set the lamp" in step or "as in the table" in step for step in reply.steps)
    assert "measure" in reply.steps[-1]


def test_no_part_of_a_move_is_nearer_than_the_label_allows(anyone: Preferences) -> None:
    reply = ask("basking surface:92F air:80F distance:10in want:103F safe:6.5in", anyone)
    moved = value(reply, "lamp_distance")
    assert moved.low == pytest.approx(6.5 * 0.0254)
    assert moved.low < moved.best < moved.high
    none = ask("basking surface:92F air:80F distance:10in want:103F safe:9in", anyone)
    assert none.answer.startswith("Stop")
    assert "lamp_distance" not in {v.name for v in none.values}


def test_without_a_label_no_lamp_is_sent_nearer_than_a_hand_is_long(anyone: Preferences) -> None:
    near = ask("basking surface:92F air:80F distance:2in want:103F", anyone)
    assert "6 in (15 cm)" in everything(near)
    far = ask("basking surface:85F air:80F distance:20in want:110F", anyone)
    assert value(far, "lamp_distance").low >= 0.15


def test_a_right_surface_under_a_lamp_too_near_is_not_left(anyone: Preferences) -> None:
    reply = ask("basking surface:103F air:82F distance:10in safe:12in animal:beardie", anyone)
    assert "Leave the lamp" not in reply.answer
    assert "12 in (30 cm)" in everything(reply)


def test_a_lamp_that_may_not_come_nearer_is_replaced_from_a_safe_distance(
    anyone: Preferences,
) -> None:
    reply = ask(f"{READING} want:44C watts:75W safe:28cm", anyone)
    assert "stronger" in reply.answer or "lamp of about" in reply.answer
    assert reply.table is not None
    assert all("this lamp" not in line[0] for line in reply.table.rows)


def test_a_surface_that_is_right_is_left(anyone: Preferences) -> None:
    reply = ask("basking surface:103F air:80F distance:10in animal:bearded dragon", anyone)
    assert reply.answer.startswith("Leave the lamp")


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("basking surface:92F air:91F distance:10in want:103F", "cooler than the surface"),
        ("basking surface:92F air:80F distance:10in want:78F", "can only warm"),
        (
            "basking surface:92F air:80F distance:10in want:160F animal:beardie",
            "burn a bearded dragon",
        ),
        ("watts room:70F want:160F distance:10in animal:beardie", "burn a bearded dragon"),
        (
            "basking surface:82F air:78F distance:10in animal:crested gecko",
            "needs no hot spot",
        ),
        ("basking surface:92F air:80F", "still need distance"),
    ],
)
def test_what_cannot_be_answered_is_told_in_a_sentence(
    line: str, told: str, anyone: Preferences
) -> None:
    reply = ask(line, anyone)
    assert reply.status == "problem"
    assert told in reply.answer


def test_no_refusal_offers_a_wish_past_the_limit_of_the_animal(anyone: Preferences) -> None:
    line = "basking surface:82F air:78F distance:10in animal:crested gecko"
    for wish in ("", " want:110F"):
        told = everything(ask(line + wish, anyone))
        assert ("want:" in told) is bool(wish)
        assert "103F" not in told
        assert "bearded" not in told


def test_a_first_wattage_is_wide_and_snapped_to_what_is_sold(anyone: Preferences) -> None:
    reply = ask("watts room:70F want:103F distance:10in lamp:flood", anyone)
    power = value(reply, "lamp_power")
    assert power.high > 2.0 * power.low
    assert "25 to 75 W" in reply.answer
    assert "40 W" in reply.steps[0]
    assert "no forecast" in " ".join(reply.why)


def test_a_narrow_lamp_is_advised_against_and_a_weak_holder_stops(anyone: Preferences) -> None:
    narrow = ask("watts room:21C distance:30cm lamp:spot animal:bearded dragon", anyone)
    assert "not for basking" in narrow.cautions[0]
    held = ask("watts room:21C distance:40cm lamp:dome want:40C holder:40W", anyone)
    assert held.answer.startswith("First: your 40 W holder")
    assert "or more" in held.steps[0]
    assert any("marked for" in caution for caution in held.cautions)


def test_a_distance_that_no_lamp_sold_can_warm_is_refused_with_a_nearer_one(
    anyone: Preferences,
) -> None:
    far = ask("watts room:70F distance:30in lamp:dome animal:bearded dragon", anyone)
    assert far.status == "problem"
    assert "250 W" in far.answer
    assert "label" in far.steps[0]
    nearer = ask("watts room:70F distance:15.5in lamp:dome animal:bearded dragon", anyone)
    assert nearer.status == "ok"
    assert value(nearer, "lamp_power").best < 250.0


def test_celsius_typed_as_fahrenheit_lowers_no_lamp(anyone: Preferences) -> None:
    reply = ask("basking surface:39F air:27F distance:10in animal:bearded dragon", anyone)
    assert reply.status == "problem"
    assert "39C" in reply.answer


@pytest.mark.parametrize(
    ("wood", "stops"), [("169F", False), ("170F", True), ("76C", False), ("77C", True)]
)
def test_wood_is_too_hot_from_the_temperature_that_is_told(
    wood: str, stops: bool, anyone: Preferences
) -> None:
    reply = ask(f"{READING} want:39C wood:{wood}", anyone)
    assert ("catch fire" in reply.answer) is stops
    if stops:
        assert temperature(WOOD_LIMIT_C, Units.CM) in reply.answer
