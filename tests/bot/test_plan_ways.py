"""The ways to hang the lamps of a plan: the same as arrange compares, one picked, and taken."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences


def test_a_plan_compares_the_ways_to_hang_its_lamps_as_arrange_does() -> None:
    box = "animal:bearded dragon enclosure:48x24x24in lid:full mesh room:70F"
    planned, arranged = ask(f"plan {box}", Preferences()), ask(f"arrange {box}", Preferences())
    compared = next(row.text for row in planned.rows if row.label == "Ways compared")
    assert arranged.table is not None
    for name, heat, _, _ in arranged.table.rows:
        told = name.removesuffix(" (my pick)").lower()
        assert f"{told}: {heat} of the warm spot" in compared.replace("\u00a0", " ").lower()
    assert compared.count("(my pick)") == 1
    assert any("simplest" in why for why in planned.why)


@pytest.mark.parametrize("place", ["", " place:inside", " place:above"])
def test_the_better_side_of_a_mesh_is_planned_unless_one_was_told(place: str) -> None:
    box = "animal:egyptian uromastyx enclosure:120x60x60cm lid:full mesh room:21C"
    told = ask(f"plan {box}{place}", Preferences()).steps[1]
    assert ("inside" in told) == (place == " place:inside")
