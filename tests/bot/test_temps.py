"""Readings judged, as keepers give them: in both units, too soon, with the wrong tool, or none."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Reply, Value


def value(reply: Reply, name: str) -> Value:
    return next(v for v in reply.values if v.name == name)


def row(reply: Reply, label: str) -> str:
    return next(r.text for r in reply.rows if r.label == label)


@pytest.mark.parametrize(
    ("readings", "told", "first"),
    [
        ("basking:98F cool:75F", "cool end is probably too cool", "Leave it, and measure again"),
        ("basking:98F cool:72F", "cool end is 5 °F (3 °C) too cool", "to the middle"),
        ("basking:103F cool:88F", "cool end is 6 °F (3.5 °C) too warm", "next smaller lamp"),
        ("basking:88F cool:79F", "basking surface is 7 °F (4 °C) too cool", "Lower the lamp"),
        ("basking:116F cool:79F", "basking surface is 6 °F (3.5 °C) too hot", "raise the lamp"),
        (
            "basking:103F cool:80F warm:83F",
            "Basking spot 103 °F (39.5 °C): right",
            "Leave everything",
        ),
    ],
)
def test_the_answer_says_what_is_off_and_what_to_do_first(
    readings: str, told: str, first: str, anyone: Preferences
) -> None:
    reply = ask(f"temps {readings} lamp_on:3 hours animal:bearded dragon", anyone)
    assert reply.status == "ok"
    assert told in reply.answer
    assert first in reply.steps[0]


def test_a_change_ends_in_measuring_again_after_two_hours(anyone: Preferences) -> None:
    changed = ask("temps basking:88F cool:79F lamp_on:3h animal:beardie", anyone)
    left = ask("temps basking:103F cool:79F lamp_on:3h animal:beardie", anyone)
    assert "Measure again after two hours" in changed.steps[-1]
    assert not any("Measure again" in step for step in left.steps)


def test_either_unit_gives_the_same_figures_and_its_own_unit_first(anyone: Preferences) -> None:
    fahrenheit = ask("temps basking:95F cool:77F warm:86F night:59F animal:beardie", anyone)
    celsius = ask("temps basking:35C cool:25C warm:30C night:15C animal:beardie", anyone)
    for a, b in zip(fahrenheit.values, celsius.values, strict=True):
        assert (a.name, a.low, a.best, a.high) == (b.name, b.low, b.best, b.high)
    assert "95 °F (35 °C)" in row(fahrenheit, "Basking surface")
    assert "35 °C (95 °F)" in row(celsius, "Basking surface")
    assert [s.split(":")[0] for s in fahrenheit.steps] == [s.split(":")[0] for s in celsius.steps]


def test_a_reading_taken_too_soon_is_called_so(anyone: Preferences) -> None:
    reply = ask("temps basking:85F lamp_on:30 minutes animal:bearded dragon", anyone)
    assert reply.answer.startswith("It is too soon to judge")
    assert "Read again" in reply.steps[0]


@pytest.mark.parametrize(
    ("tool", "told"),
    [
        ("dial", "dial or strip"),
        ("infrared gun", "with a digital probe"),
        ("probe", "with an infrared gun"),
    ],
)
def test_the_wrong_tool_is_told_first(tool: str, told: str, anyone: Preferences) -> None:
    line = f"temps basking:90F cool:79F lamp_on:3h measured:{tool} animal:bearded dragon"
    assert told in ask(line, anyone).steps[0]


def test_both_tools_together_are_trusted(anyone: Preferences) -> None:
    line = "temps basking:103F cool:79F lamp_on:3h measured:IR gun and a probe animal:beardie"
    assert not any("robe" in told or "gun" in told for told in ask(line, anyone).why)


def test_contradictions_are_pointed_out_and_no_lamp_is_moved(anyone: Preferences) -> None:
    reply = ask("temps basking:78F cool:103F animal:bearded dragon", anyone)
    assert "contradict" in reply.answer
    assert not any("lamp " in step and "move" in step.lower() for step in reply.steps)


def test_what_can_burn_is_switched_off_at_once(anyone: Preferences) -> None:
    reply = ask("temps basking:140F cool:80F animal:bearded dragon", anyone)
    assert reply.answer.startswith("Switch all heat off now")
    assert "reptile vet" in reply.answer


def test_nothing_given_asks_for_the_readings_in_order(anyone: Preferences) -> None:
    reply = ask("temps animal:bearded dragon", anyone)
    assert reply.status == "ok"
    assert "basking surface" in reply.steps[0]
    assert "cool end" in reply.steps[1]
    missing = row(reply, "Still to measure")
    assert missing.index("basking") < missing.index("cool end") < missing.index("warm end")


def test_a_target_that_is_not_known_is_not_made_up(anyone: Preferences) -> None:
    reply = ask("temps basking:30C cool:23C lamp_on:3h animal:slider", anyone)
    assert "know no target" in row(reply, "Cool end")
    assert reply.steps


def test_targets_and_bodies_are_told_apart_with_their_kind(anyone: Preferences) -> None:
    reply = ask("temps basking:98F animal:bearded dragon", anyone)
    assert "common practice, no source" in row(reply, "Basking surface")
    assert "published" in row(reply, "Body, not surface")
    assert {"common practice", "paper"} <= {source.kind for source in reply.sources}


def test_a_bare_number_takes_the_unit_of_the_setting_and_says_so(in_inches: Preferences) -> None:
    reply = ask("temps basking:98 cool:75 animal:bearded dragon", in_inches)
    assert value(reply, "basking_surface").best == pytest.approx((98 - 32) / 1.8)
    assert any(r.label == "Assumed" for r in reply.rows)


@pytest.mark.parametrize(
    ("typed", "taken"),
    [("basking:98 cool:75", "degF"), ("basking:39 cool:24", "degC"), ("night:62", "degF")],
)
def test_a_bare_number_that_only_one_unit_makes_possible_takes_it_and_says_so(
    typed: str, taken: str
) -> None:
    reply = ask(f"temps {typed} animal:bearded dragon", Preferences())
    assert reply.status == "ok"
    told = [row.text for row in reply.rows if row.label == "Assumed"]
    assert len(told) == len(typed.split())
    assert all({"degF": "°F", "degC": "°C"}[taken] in text for text in told)


@pytest.mark.parametrize("typed", ["basking:50", "cool:40"])
def test_a_bare_number_that_two_units_make_possible_is_asked_about(typed: str) -> None:
    reply = ask(f"temps {typed} animal:bearded dragon", Preferences())
    assert reply.status == "problem"
    place, number = typed.split(":")
    assert f"{number}F or {number}C, whichever your thermometer shows" in reply.answer
    # So cold no lit box is in °F: the example beside it is one that leads to an answer.
    example = reply.answer.rpartition("for example ")[2].rstrip(".")
    assert ask(f"temps {place}:{example} animal:bearded dragon", Preferences()).status == "ok"


def test_every_figure_has_a_range(anyone: Preferences) -> None:
    reply = ask("temps basking:98F cool:75F warm:83F animal:bearded dragon", anyone)
    for entry in reply.values:
        assert entry.low < entry.high, entry.name


@pytest.mark.parametrize(
    "readings",
    [
        "",
        "night:55F",
        "night:85F",
        "warm:85F",
        "basking:103F",
        "basking:103F cool:88F warm:84F",
        "basking:103F cool:79F lamp_on:3h measured:dial",
        "basking:39.5C cool:26C night:14C",
    ],
)
def test_every_answer_ends_in_measuring_again(readings: str, anyone: Preferences) -> None:
    last = ask(f"temps animal:bearded dragon {readings}", anyone).steps[-1].lower()
    assert "measure" in last or "read" in last


@pytest.mark.parametrize("reading", ["basking:39F cool:26F", "cool:26F", "warm:30F"])
def test_celsius_typed_as_fahrenheit_is_asked_about_and_heats_nothing(
    reading: str, anyone: Preferences
) -> None:
    reply = ask(f"temps {reading} animal:bearded dragon", anyone)
    assert reply.status == "problem"
    assert "C if your thermometer shows" in reply.answer


def test_fahrenheit_typed_as_celsius_is_pointed_out_and_still_switched_off(
    anyone: Preferences,
) -> None:
    reply = ask("temps basking:103C cool:79C animal:bearded dragon", anyone)
    assert any("Switch the basking lamp off" in step for step in reply.steps)
    assert "ask again with F" in row(reply, "Wrong unit?")


def test_a_reading_without_a_target_is_not_called_well_done(anyone: Preferences) -> None:
    reply = ask("temps basking:33C cool:24C water:25C lamp_on:3h animal:slider", anyone)
    assert "Well done" not in reply.answer
    assert "reptile vet" in reply.steps[0]


def test_a_spot_that_no_animal_of_a_kind_needs_is_said_to_be_needless(anyone: Preferences) -> None:
    reply = ask("temps basking:29C cool:22C lamp_on:3h animal:crested gecko", anyone)
    assert "needs no hot spot" in reply.brief[0].text
    assert "know no" not in reply.answer


@pytest.mark.parametrize("question", ["temps animal:axolotl water:25C", "check axolotl water 25C"])
def test_water_past_a_limit_is_said_first(question: str, anyone: Preferences) -> None:
    reply = ask(question, anyone)
    assert [alarm.key for alarm in reply.alarms] == ["water_too_hot"]
    assert "The water is" in reply.answer


def test_what_swims_has_its_water_asked_for_and_no_cool_end(anyone: Preferences) -> None:
    reply = ask("temps basking:33C lamp_on:3h animal:slider", anyone)
    assert reply.steps[0].startswith("Read the water")
    alone = ask("temps animal:axolotl", anyone)
    assert alone.steps[0].startswith("Read the water")


def test_a_room_that_is_too_hot_is_cooled_first(anyone: Preferences) -> None:
    line = "temps basking:103F cool:86F lamp_on:3h animal:bearded dragon"
    told = ask(f"{line} room:84F", anyone)
    assert told.steps[0].startswith("Cool the room")
    assert told.table is not None
    assert [row[2] for row in told.table.rows] == ["fine"]
    untold = ask(line, anyone)
    assert untold.table is None
    assert "only a cooler room helps" in row(untold, "Room")


def test_what_mends_the_cool_end_is_named_with_its_figure_and_no_table_contradicts_it(
    anyone: Preferences,
) -> None:
    box = "enclosure:36x18x18in lid:solid material:glass"
    reply = ask(
        f"temps basking:103F cool:86F lamp_on:3h animal:beardie room:72F watts:100W {box}", anyone
    )
    assert reply.steps[0].startswith("Use a 60 W lamp instead")
    assert reply.table is not None
    assert reply.table.rows[0][0] == "a 60 W lamp"
    assert reply.table.rows[0][2] == "fine"


def test_below_four_fifths_of_the_power_a_smaller_lamp_is_named_and_no_dimmer(
    anyone: Preferences,
) -> None:
    line = "temps basking:103F cool:86F lamp_on:3h animal:bearded dragon"
    much, little = (ask(f"{line} room:{room}F", anyone) for room in (72, 50))
    assert "and no dimmer" in much.steps[0]
    assert "dim it by no more than 20 %" not in much.steps[0]
    assert "dim it by no more than 20 %" in little.steps[0]
    assert little.table is not None
    assert little.table.rows[0][2] == "fine"
