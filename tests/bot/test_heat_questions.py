"""Air, night, infrared readings and heat sources, as keepers ask."""

from itertools import pairwise

import pytest

from bot.ask import ask
from bot.language.quantities import Units
from bot.preferences import Preferences
from bot.reply import Reply, Value
from tests.bot.saying.pinning import everything

BOX = "enclosure:48x24x24in material:wood lid:solid"


def value(reply: Reply, name: str) -> Value:
    return next(v for v in reply.values if v.name == name)


def row(reply: Reply, label: str) -> str:
    return next(r.text for r in reply.rows if r.label == label)


def test_the_watts_are_told_with_where_they_go(anyone: Preferences) -> None:
    reply = ask(f"air {BOX} room:68F want:80F", anyone)
    total = value(reply, "power")
    walls, air = value(reply, "through_walls"), value(reply, "with_air")
    assert walls.best + air.best == pytest.approx(total.best)
    assert total.high / total.best == pytest.approx(1.35)
    assert "through walls" in row(reply, "Where it goes")


@pytest.mark.parametrize(
    ("watts", "told"), [("40W", "does not cover"), ("80W", "may just"), ("125W", "too much")]
)
def test_whether_the_lamp_alone_is_enough(watts: str, told: str, anyone: Preferences) -> None:
    assert told in ask(f"air {BOX} room:68F want:80F watts:{watts}", anyone).answer


def test_a_lamp_above_the_mesh_counts_less(anyone: Preferences) -> None:
    line = "air enclosure:90x45x45cm material:glass lid:full mesh room:20C want:25C watts:75W"
    inside, above = (ask(f"{line} place:{place}", anyone) for place in ("inside", "above"))
    assert value(above, "air_held").best < value(inside, "air_held").best
    assert "About 60 W of it" in row(above, "Basking lamp")


def test_sizes_in_either_unit_are_the_same_box(anyone: Preferences) -> None:
    feet = ask("air enclosure:4x2x2 ft material:glass lid:solid room:20C want:26C", anyone)
    metric = ask(
        "air enclosure:121.92x60.96x60.96cm material:glass lid:solid room:68F want:78.8F", anyone
    )
    assert value(feet, "power").best == pytest.approx(value(metric, "power").best, rel=1e-9)


def test_a_room_that_is_too_warm_is_told(anyone: Preferences) -> None:
    reply = ask(f"air {BOX} room:85F animal:bearded dragon", anyone)
    assert reply.answer.startswith("No heat: the room is")


@pytest.mark.parametrize(
    ("room", "told"),
    [
        ("64F", "No heat: 64 °F"),
        ("60F", "No heat: 60 °F"),
        ("59F", "Yes, heat"),
        ("29C", "too warm"),
    ],
)
def test_a_bearded_dragon_s_night(room: str, told: str, anyone: Preferences) -> None:
    reply = ask(f"night room:{room} animal:bearded dragon", anyone)
    assert told in reply.answer
    assert any("No red, blue or purple night lamps" in text for text in reply.cautions)


def test_a_night_drop_is_called_good(anyone: Preferences) -> None:
    assert "is good" in everything(ask("night room:64F animal:bearded dragon", anyone))


def test_a_cold_night_gets_a_thermostat_that_turns_off_and_watts(anyone: Preferences) -> None:
    reply = ask(f"night room:55F animal:bearded dragon {BOX}", anyone)
    assert any("turn off at about 72 °F (22 °C)" in step for step in reply.steps)
    assert value(reply, "thermostat_off").best == pytest.approx((72 - 32) / 1.8)
    assert value(reply, "emitter_power").low < value(reply, "emitter_power").high
    assert "one of 60 W" in row(reply, "Heater")
    asked_again = ask("night room:55F animal:bearded dragon", anyone)
    assert any("Ask again with enclosure" in step for step in asked_again.steps)


def test_a_disputed_and_an_unknown_night_are_said_to_be(anyone: Preferences) -> None:
    assert "Keepers differ" in everything(ask("night room:66F animal:corn snake", anyone))
    assert "too cold for its water" in ask("night room:50F animal:slider", anyone).answer
    assert "Its water counts" in ask("night room:66F animal:slider", anyone).answer


def test_an_infrared_reading_is_corrected_for_its_surface(anyone: Preferences) -> None:
    reply = ask("surface reading:40C material:slate air:22C", anyone)
    # By hand from the fourth power: emissivity 0.85 gives 41.92 °C.
    assert value(reply, "surface").best == pytest.approx(41.92, abs=0.005)
    assert "Hotter than shown" in reply.answer
    assert "about right" in ask("surface reading:40C material:brick air:27C", anyone).answer


@pytest.mark.parametrize(
    ("line", "told", "instead"),
    [
        ("surface reading:40C material:aluminium", "bare metal", "tape"),
        ("surface reading:40C material:slate glass:yes", "through glass", "Open the door"),
    ],
)
def test_a_reading_of_metal_or_through_glass_is_refused(
    line: str, told: str, instead: str, anyone: Preferences
) -> None:
    reply = ask(line, anyone)
    assert reply.status == "problem"
    assert told in reply.answer
    assert any(instead in step for step in reply.steps)
    assert reply.values == ()


@pytest.mark.parametrize(
    ("kind", "told", "stops"),
    [
        ("halogen flood", "is good for the basking spot", 2),
        ("che", "is not for the basking spot", 2),
        ("red bulb", "is not for this set-up at all", 2),
        ("MVB", "is not for this set-up at all", 2),
        ("hot rocks", "is not for this set-up at all", 2),
        ("led", "no UV and far too little heat", 1),
    ],
)
def test_a_heat_source_is_judged_with_a_reason(
    kind: str, told: str, stops: int, anyone: Preferences
) -> None:
    reply = ask(f"lamp {kind}", anyone)
    assert told in reply.answer
    # The verdict, and one sentence of why; a hazard that is asked about is answered before it.
    assert reply.answer.count(". ") == stops + 2 * reply.answer.startswith("No: ")
    assert "common practice" in {source.kind for source in reply.sources}


def test_all_heat_sources_are_listed_and_a_slip_is_helped(anyone: Preferences) -> None:
    every = ask("lamp", anyone)
    assert every.table is not None
    assert len(every.table.rows) >= 12
    slip = ask("lamp ceramik emiter", anyone)
    assert slip.status == "problem"
    assert "Did you mean ceramic" in slip.answer


@pytest.mark.parametrize(
    "line",
    [
        f"air {BOX} room:68F want:80F watts:75W",
        f"night room:55F animal:bearded dragon {BOX}",
        "surface reading:98F material:slate",
        "watts room:70F want:103F distance:10in lamp:flood",
        "basking surface:92F air:80F distance:10in want:103F watts:75W",
        "hours latitude:home zone:Europe/London animal:corn snake",
    ],
)
def test_figures_are_shown_in_both_units_and_in_the_order_asked(line: str) -> None:
    american = ask(line, Preferences(forced_units=Units.IN))
    metric = ask(line, Preferences(forced_units=Units.CM))
    assert american.values == metric.values
    assert american.status == metric.status == "ok"
    if "°F" in american.answer:
        assert american.answer.index("°F") < american.answer.index("°C")
        assert metric.answer.index("°C") < metric.answer.index("°F")


def test_a_first_lamp_for_a_box_counts_the_air_that_it_holds_there(anyone: Preferences) -> None:
    line = "watts room:70F distance:12in animal:bearded dragon"
    alone, boxed = (ask(f"{line} {box}", anyone) for box in ("", BOX))
    assert value(boxed, "lamp_power").best < value(alone, "lamp_power").best
    assert "48x24x24in" in row(boxed, "Enclosure")
    assert "within" in row(boxed, "Cool end then")
    hot = ask("watts room:84F distance:20in want:110F enclosure:12x12x12in lid:solid", anyone)
    assert hot.status == "problem"
    assert hot.answer.startswith("No: ")


def test_a_lamp_is_dimmed_to_the_smaller_one_only_where_that_is_four_fifths_of_it(
    anyone: Preferences,
) -> None:
    seen = set()
    for distance in range(8, 24, 2):
        reply = ask(f"watts room:70F distance:{distance}in animal:bearded dragon", anyone)
        words = reply.steps[0].replace(".", "").replace(",", "").split()
        sizes = [float(a) for a, b in pairwise(words) if b == "W"]
        if reply.status == "ok" and len(sizes) == 2:
            dims = "dimmer" in reply.steps[0]
            assert dims == (min(sizes) >= 0.8 * max(sizes))
            seen.add(dims)
    assert seen == {True, False}


def test_an_emitter_above_the_mesh_is_a_stronger_one(anyone: Preferences) -> None:
    line = "night room:55F animal:bearded dragon enclosure:36x18x18in lid:full mesh"
    inside, above = (ask(f"{line} place:{place}", anyone) for place in ("inside", "above"))
    assert value(above, "emitter_power").best > value(inside, "emitter_power").best
    assert "above the mesh" in row(above, "Heater").lower()
