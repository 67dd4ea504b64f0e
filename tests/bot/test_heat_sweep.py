"""What worried keepers type about heat, and what must not go unsaid or unheard."""

import re

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Reply

BOX = "enclosure:48x24x24in material:wood lid:solid"


def everything(reply: Reply) -> str:
    return " ".join((reply.answer, *reply.steps, *reply.cautions, *(r.text for r in reply.rows)))


@pytest.mark.parametrize("night", ["4C", "40F", "-2C"])
def test_an_animal_that_was_nearly_frozen_comes_before_any_heater(
    night: str, anyone: Preferences
) -> None:
    reply = ask(f"temps night:{night} animal:bearded dragon", anyone)
    assert "warmer room" in reply.answer
    assert "warmer room" in reply.steps[0]
    assert "reptile vet" in reply.answer
    cool = ask("temps night:59.5F animal:bearded dragon", anyone)
    assert "warmer room" not in everything(cool)


def test_a_cool_end_that_may_really_be_so_hot_is_cooled_down(anyone: Preferences) -> None:
    reply = ask("temps basking:75F cool:98F warm:85F animal:bearded dragon", anyone)
    assert "really is so hot" in everything(reply)
    mild = ask("temps basking:78F cool:80F animal:bearded dragon", anyone)
    assert "really is so hot" not in everything(mild)


@pytest.mark.parametrize(
    ("animal", "want", "told"),
    [
        ("bearded dragon", "85F", True),
        ("bearded dragon", "103F", False),
        ("corn snake", "95F", True),
    ],
)
def test_a_wish_outside_what_the_animal_wants_is_told_so(
    animal: str, want: str, told: bool, anyone: Preferences
) -> None:
    reply = ask(f"basking surface:92F air:80F distance:10in want:{want} animal:{animal}", anyone)
    assert any("not what is usual" in row.text for row in reply.rows) is told


@pytest.mark.parametrize("air", ["27F", "-4F", "-20C"])
def test_air_beside_a_lit_lamp_is_never_frosty(air: str, anyone: Preferences) -> None:
    reply = ask(f"basking surface:92F air:{air} distance:10in animal:bearded dragon", anyone)
    assert reply.status == "problem"


def test_a_narrow_spot_is_advised_against_before_anything_is_bought(anyone: Preferences) -> None:
    reply = ask("watts room:70F distance:10in lamp:narrow animal:bearded dragon", anyone)
    assert reply.answer.startswith("A narrow spot is not for basking")
    assert "lamp:flood" in reply.steps[0]


@pytest.mark.parametrize(
    "line",
    ["watts room:86F distance:10in animal:corn snake", "watts room:70F distance:10in want:75F"],
)
def test_a_room_as_warm_as_the_wish_needs_no_lamp(line: str, anyone: Preferences) -> None:
    reply = ask(line, anyone)
    assert (reply.status == "problem") is not bool(reply.dangers)
    assert "a lamp can only warm" in reply.answer
    assert "room:" in everything(reply)


def test_the_seasons_on_the_equator_are_one(anyone: Preferences) -> None:
    reply = ask("hours animal:green iguana latitude:home", anyone)
    assert reply.answer.startswith("12 h in every month")


@pytest.mark.parametrize(
    ("line", "unheard"),
    [
        ("hours animal:corn snake zone:Europe/Berlin", "zone"),
        ("hours animal:corn snake months:turned year:2026", "months and year"),
        ("hours latitude:30N on:8:00 zone:Europe/Berlin", "on"),
    ],
)
def test_an_option_that_changes_nothing_is_said_to(
    line: str, unheard: str, anyone: Preferences
) -> None:
    rows = {row.label: row.text for row in ask(line, anyone).rows}
    assert rows["Not used"].startswith(f"{unheard}:")
    assert "Not used" not in {r.label for r in ask("hours animal:corn snake on:8:00", anyone).rows}


@pytest.mark.parametrize(("on", "at_night"), [("19:00", True), ("7pm", True), ("8:00", False)])
def test_lights_through_the_night_are_asked_about(
    on: str, at_night: bool, anyone: Preferences
) -> None:
    told = ask(f"hours animal:bearded dragon on:{on}", anyone).answer
    assert told.startswith("Is that meant?") is at_night


def test_months_without_a_sunrise_all_year_are_told_in_two_words(anyone: Preferences) -> None:
    reply = ask("hours latitude:90N year:2026", anyone)
    assert any("all year" in row.text for row in reply.rows if row.label == "Polar")


@pytest.mark.parametrize("watts", ["0W", "5000W"])
def test_a_lamp_that_is_no_lamp_is_refused(watts: str, anyone: Preferences) -> None:
    reply = ask(f"air {BOX} room:68F want:80F watts:{watts}", anyone)
    assert reply.status == "problem"
    assert "Lamp power" in reply.answer


def test_more_watts_than_lamps_give_is_no_shopping_list(anyone: Preferences) -> None:
    air = ask(
        "air enclosure:120x60x60cm material:glass lid:full mesh room:5C animal:bearded dragon",
        anyone,
    )
    assert "Warm the room" in air.steps[0]
    night = ask(
        "night room:6C animal:boa constrictor enclosure:300x300x300cm material:glass lid:full mesh",
        anyone,
    )
    assert "share it between two" not in everything(night)
    assert "Warm the room" in everything(night)


def test_a_room_below_freezing_is_answered_even_with_an_enclosure(anyone: Preferences) -> None:
    reply = ask(f"night room:-5C animal:bearded dragon {BOX}", anyone)
    assert reply.status == "ok"
    assert "warmer room" in reply.steps[0]


def test_a_night_that_overheats_is_cooled_today(anyone: Preferences) -> None:
    reply = ask("night room:90F animal:crested gecko", anyone)
    assert "coolest room" in reply.steps[0]
    assert "reptile vet" in everything(reply)


@pytest.mark.parametrize(
    ("setting", "shown"), [("0.95", "0.95"), ("95%", "0.95"), ("95", "0.95"), ("1", "1")]
)
def test_a_gun_s_setting_is_read_as_the_gun_shows_it(
    setting: str, shown: str, anyone: Preferences
) -> None:
    rows = {
        r.label: r.text
        for r in ask(f"surface reading:98F material:slate setting:{setting}", anyone).rows
    }
    assert f"set to {shown}" in rows["Emissivity"]


def test_a_setting_that_no_gun_has_is_refused_in_the_asker_s_unit(anyone: Preferences) -> None:
    reply = ask("surface reading:98F material:slate setting:30%", anyone)
    assert "from 50% to 100%" in reply.answer


@pytest.mark.parametrize("reading", ["130F", "160F"])
def test_a_surface_that_burns_is_said_to_whatever_it_is_made_of(
    reading: str, anyone: Preferences
) -> None:
    reply = ask(f"surface reading:{reading} material:slate", anyone)
    assert [alarm.key for alarm in reply.alarms] == ["box_too_hot"]
    assert ask("surface reading:98F material:slate", anyone).alarms == ()


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("convert 30cm to in", "11.81 in"),
        ("convert 98F to C", "36.7 °C"),
        ("convert 12 to 14 in to cm", "30.48 to 35.56 cm"),
    ],
)
def test_a_conversion_may_name_where_to(line: str, told: str, anyone: Preferences) -> None:
    assert told in ask(line, anyone).answer


def test_a_percentage_is_refused_with_its_ends(anyone: Preferences) -> None:
    line = "basking surface:92F air:80F distance:10in animal:bearded dragon dimmer:500%"
    assert "from 0% to 100%" in ask(line, anyone).answer


@pytest.mark.parametrize(("kind", "name"), [("cfl", "compact UV"), ("tungsten", "incandescent")])
def test_a_heat_source_is_known_by_what_people_call_it(
    kind: str, name: str, anyone: Preferences
) -> None:
    assert name in ask(f"lamp {kind}", anyone).answer


def test_a_uromastyx_is_not_an(anyone: Preferences) -> None:
    line = "watts room:50F distance:10in animal:ornate uro"
    told = everything(ask(line, anyone))
    assert "a Saharan uromastyx" in told
    assert "an Saharan" not in told


def test_a_whole_set_up_with_a_freezing_night_is_told_that_first(anyone: Preferences) -> None:
    told = "check beardie, basking 103F, cool 80F, night"
    assert "warmer room" in ask(f"{told} 36F", anyone).steps[0]
    assert "warmer room" not in everything(ask(f"{told} 62F", anyone))


@pytest.mark.parametrize(
    ("line", "option", "given"),
    [
        ("night room:55F animal:bearded dragon enclosure:48x24x24in", "material:", "material:wood"),
        ("night room:55F animal:bearded dragon enclosure:48x24x24in", "lid:", "lid:solid"),
        ("watts room:70F distance:10in animal:bearded dragon", "lamp:", "lamp:flood"),
        (f"air {BOX} room:68F want:80F watts:75W", "place:", "place:inside"),
    ],
)
def test_what_was_not_said_is_said_to_be_taken(
    line: str, option: str, given: str, anyone: Preferences
) -> None:
    def told(reply: Reply) -> bool:
        taken = (row.text for row in reply.rows if re.search("not said|did not say", row.text))
        return any(option in text for text in taken)

    assert told(ask(line, anyone))
    assert not told(ask(f"{line} {given}", anyone))
