"""Where the tube hangs across the depth, and lamps of a group's own in the map."""

from dataclasses import replace
from datetime import date

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Reply, Value
from bot.saved.group import Own, OwnLamp

SECTION = "section reflector:plain screen:none distance:14in enclosure:48x24x24in uvi:3-5"


def figures(reply: Reply) -> dict[str, Value]:
    return {v.name: v for v in reply.values}


def row(reply: Reply, label: str) -> str:
    return next(r.text for r in reply.rows if r.label == label)


@pytest.mark.parametrize("tubes", [1, 2, 3])
def test_the_middle_of_the_depth_is_what_was_taken_before(tubes: int, anyone: Preferences) -> None:
    middle = ask(f"{SECTION} tube:12% tubes:{tubes} across:12in", anyone)
    assert middle.status == "ok"
    assert middle.values == ask(f"{SECTION} tube:12% tubes:{tubes}", anyone).values


@pytest.mark.parametrize("away", [4, 8])
def test_as_far_behind_the_middle_as_before_it_gives_the_same(
    away: int, anyone: Preferences
) -> None:
    back, front = (ask(f"{SECTION} tube:12% across:{a}in", anyone) for a in (away, 24 - away))
    for name, value in figures(back).items():
        assert figures(front)[name].best == pytest.approx(value.best, rel=1e-6), name
    # What is no longer over the platform gives it less.
    middle = ask(f"{SECTION} tube:12%", anyone)
    assert figures(back)["uvi_strongest"].best <= figures(middle)["uvi_strongest"].best * 1.001


def test_the_end_view_is_strongest_where_the_tube_hangs(anyone: Preferences) -> None:
    told = row(ask(f"{SECTION} tube:12% across:3in", anyone), "Across the platform")
    read = [float(part.split(" at ")[0].split()[-1]) for part in told.split(", ")[1:]]
    assert read == sorted(read, reverse=True)


@pytest.mark.parametrize("across", ["26in", "2in tubes:3", "0in tubes:2"])
def test_tubes_that_hang_outside_the_box_are_refused(across: str, anyone: Preferences) -> None:
    reply = ask(f"{SECTION} tube:12% across:{across}", anyone)
    assert reply.status == "problem"
    assert "across" in reply.answer


def test_a_lamp_of_the_groups_own_gives_its_own_light(anyone: Preferences) -> None:
    lamp = OwnLamp(
        name="Club lamp",
        constant_uvi_m=0.89,
        doubt_factor=1.2,
        readings=3,
        lit_length_m=0.519,
        set_on=date(2026, 1, 3),
    )
    club = replace(anyone, own=Own(lamps=(lamp,)))
    own = ask(f'{SECTION} tube:"Club lamp" length:22in', club)
    assert own.status == "ok"
    twelve = ask(f"{SECTION} tube:12% length:22in", club)
    # The class gives 1.78 UVI m times 0.70 in a plain fixture.
    share = figures(own)["uvi_strongest"].best / figures(twelve)["uvi_strongest"].best
    assert share == pytest.approx(0.89 / (1.78 * 0.70), rel=0.05)
