"""Glass and plastic stop the UV: no distance is handed out through them, and the hazard is told."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Reply

_KEY = "no_uv_through_glass"
_LINES = (
    "distance tube:12% reflector:polished screen:{pane} animal:bearded dragon",
    "distance tube:12% reflector:not sure screen:{pane} animal:bearded dragon",
    "uvi distance:30cm tube:12% reflector:polished screen:{pane} animal:bearded dragon",
    "tube distance:14in screen:{pane} animal:bearded dragon enclosure:4ft",
    (
        "section tube:12% reflector:polished screen:{pane} distance:16in enclosure:48x24x24in "
        "animal:bearded dragon"
    ),
    "plan animal:bearded dragon enclosure:48x24x24in lid:full mesh screen:{pane}",
)


def _keys(reply: Reply) -> set[str]:
    return {alarm.key for alarm in reply.alarms} | {danger.key for danger in reply.dangers}


def _placed(reply: Reply) -> list[str]:
    return [v.name for v in reply.values if v.name.startswith(("distance", "uvi", "tube"))]


@pytest.mark.parametrize("line", _LINES)
@pytest.mark.parametrize(
    "pane", ["glass", "Glass lid", "plexi", "acrylic sheet", "perspex", "clear plastic", "window"]
)
def test_no_distance_is_given_through_a_pane(line: str, pane: str, anyone: Preferences) -> None:
    reply = ask(line.format(pane=pane), anyone)
    assert reply.status == "problem"
    assert _KEY in _keys(reply)
    assert not _placed(reply)
    assert reply.table is None


@pytest.mark.parametrize(
    "said",
    [
        "bearded dragon, 12% T5 on glass lid, 12in, polished, basking 100F, cool 78F",
        "bearded dragon, 12% T5 over a plexi lid, 12in, polished",
        "bearded dragon, 12% tube on top of the glass top, 30 cm to his back, polished",
        "bearded dragon, the 12% uvb shines through glass, 12in, polished",
        "bearded dragon, 12% uvb tube above an acrylic sheet, 12 inches, shiny reflector",
        "beardie, the uvb 12% is on the plexiglass, 12in from back, polished",
    ],
)
def test_a_told_pane_between_is_a_hazard_and_no_fine_uv(said: str, anyone: Preferences) -> None:
    reply = ask(f"check {said}", anyone)
    assert reply.table is not None
    (uv,) = [row for row in reply.table.rows if row[0] == "UV"]
    assert uv[1] == "change"
    assert any("No useful UV comes through" in text for text in reply.why)
    assert _KEY in _keys(reply)
    assert not _placed(reply)


@pytest.mark.parametrize(
    "said",
    [
        "bearded dragon, 12% T5 inside a glass tank, 17in to his back, polished, basking 100F",
        "bearded dragon, glass tank with a mesh lid, 12% on the mesh 12 in, polished, blocks 45%",
        "bearded dragon, 12% tube inside under the glass lid, nothing between, 17in, polished",
        "bearded dragon, 12% uvb no mesh 17in polished, thermometer stuck on the glass",
        "bearded dragon, 12% tube 17in polished no mesh, he keeps scratching on the glass",
    ],
)
def test_glass_that_is_not_between_is_no_hazard(said: str, anyone: Preferences) -> None:
    reply = ask(f"check {said}", anyone)
    assert _KEY not in _keys(reply)


def test_a_glass_lid_without_a_word_of_the_tube_is_asked_about(anyone: Preferences) -> None:
    reply = ask("check bearded dragon, 12% T5, plexi lid, 12in, polished", anyone)
    assert [alarm.asked for alarm in reply.alarms if alarm.key == _KEY] in ([True], [])
    assert reply.table is not None
    assert [row[1] for row in reply.table.rows if row[0] == "UV"] == ["depends"]


@pytest.mark.parametrize(
    "said",
    [
        "can i put the uvb on top of the glass lid",
        "does uvb go through glass",
        "is it ok to have the tube over a plexiglass lid",
        "will my t5 work through acrylic",
    ],
)
def test_whether_uv_goes_through_glass_is_answered(said: str, anyone: Preferences) -> None:
    reply = ask(f"ask {said}", anyone)
    assert reply.command == "guide"
    assert "Glass and plastic" in reply.title or "Does glass let UV through?" in reply.title


def test_free_words_about_a_tube_over_glass_get_no_distance(anyone: Preferences) -> None:
    said = "how far should a 12% tube be from my beardie through the glass, polished"
    reply = ask(f"ask {said}", anyone)
    assert _KEY in _keys(reply)
    assert not _placed(reply)
