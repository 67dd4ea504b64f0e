"""The enclosure in the tube question: a length or a whole size, and boxes too short for a tube."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Reply

TUBE = "tube distance:14in screen:none animal:bearded dragon"


def row(reply: Reply, label: str) -> str:
    return next(r.text for r in reply.rows if r.label == label)


@pytest.mark.parametrize("size", ["48x24x24in", "48 x 24 x 24 in", '48"x24"x24"', "4x2x2 ft"])
def test_the_length_is_taken_from_a_whole_size(size: str, anyone: Preferences) -> None:
    alone = ask(f"{TUBE} enclosure:48in", anyone)
    whole = ask(f"{TUBE} enclosure:{size}", anyone)
    assert whole.status == "ok"
    assert whole.values == alone.values
    assert row(whole, "Enclosure").startswith("48 in (122 cm) long, 24 in (61 cm) deep")


def test_a_length_alone_is_shown_as_read(anyone: Preferences) -> None:
    assert row(ask(f"{TUBE} enclosure:120cm", anyone), "Enclosure") == "47 in (120 cm) long."


@pytest.mark.parametrize("size", ["48x24", "x24x24in", "48xtwoxthree"])
def test_half_a_size_is_asked_about(size: str, anyone: Preferences) -> None:
    reply = ask(f"{TUBE} enclosure:{size}", anyone)
    assert reply.status == "problem"
    assert "length, depth and height" in reply.answer


@pytest.mark.parametrize("box", ["1ft", "10in", "12x12x18in", "45cm", "21in"])
def test_a_box_shorter_than_every_tube_is_told_so(box: str, anyone: Preferences) -> None:
    reply = ask(f"{TUBE} enclosure:{box}", anyone)
    assert reply.status == "problem"
    assert reply.answer.startswith("No T5 HO tube fits into")
    assert "21.5 in (55 cm)" in reply.answer
    assert "longer box" in reply.steps[0]
    assert "UV meter" in reply.steps[1]


def test_a_tube_shorter_than_any_standard_one_is_pointed_out(anyone: Preferences) -> None:
    line = "distance tube:12% reflector:plain screen:none animal:bearded dragon length:"
    assert "shortest standard" in row(ask(f"{line}12in", anyone), "So short?")
    assert "So short?" not in [row.label for row in ask(f"{line}22in", anyone).rows]


def test_a_plan_for_such_a_box_says_the_same(anyone: Preferences) -> None:
    reply = ask("plan animal:bearded dragon enclosure:12x12x12in lid:full mesh room:70F", anyone)
    assert reply.status == "problem"
    assert "The shortest usual T5 HO tube is 21.5 in (55 cm) long" in reply.why[0]
    assert any("compact lamp" in step and "UV meter" in step for step in reply.steps)


def test_a_tube_that_is_fixed_is_not_bought_again_and_has_to_fit(anyone: Preferences) -> None:
    fixed = ask(f"{TUBE} enclosure:48in length:22in", anyone)
    assert "buy the" not in fixed.answer
    long = ask(f"{TUBE} enclosure:48x24x24in length:60in", anyone)
    assert long.status == "problem"
    assert "for length" in long.answer
    assert "48 in (122 cm)" in long.answer
