"""A verdict with its condition, where what was not said of the tube decides."""

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Reply


def checked(told: str) -> Reply:
    return ask(f"check {told}", Preferences())


def lines(told: str) -> list[str]:
    return [line.text for line in checked(told).brief]


def test_what_decides_is_the_head_and_each_way_has_its_verdict() -> None:
    found = lines("bearded dragon, 12% tube, 34 inches long, at 15 inches, basking 103, cool 79")
    assert found[0] == "The UV depends on mesh and reflector."
    assert found[1].startswith("UVI ")
    assert "without mesh and with a mirror" in found[1]
    assert found[2].endswith("through mesh (60 %) and without a mirror: too weak.")


def test_where_the_reflector_was_told_the_mesh_alone_decides() -> None:
    found = lines("leopard gecko, 6% tube 22 in long 10 inches over mesh, no reflector")
    assert found[0] == "The UV depends on the mesh."
    assert any("through mesh (30 %): probably too strong." in line for line in found)


def test_where_one_way_is_too_strong_the_tube_hangs_farther_for_now() -> None:
    reply = checked("bearded dragon, 12% tube 46 in long, 8 inches away")
    assert any(line.text.startswith("For now hang it") for line in reply.brief)
    assert any("dangerous" in line.text or "too strong" in line.text for line in reply.brief)


def test_the_table_says_that_it_depends() -> None:
    table = checked("bearded dragon, 12% tube, 34 inches long, at 15 inches").table
    assert table is not None
    assert next(row for row in table.rows if row[0] == "UV")[1] == "depends"


def test_where_all_ways_agree_there_is_one_verdict() -> None:
    found = lines("bearded dragon, 2% tube 22 in long 30 inches away")
    assert not any("depends" in line for line in found)
    assert found[0].startswith("The UV is too weak")
