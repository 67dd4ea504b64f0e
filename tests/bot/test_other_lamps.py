"""A UV lamp that is no T5 HO tube never gets a figure of one, whatever question is asked."""

import re

import pytest

from bot.ask import ask
from bot.language.uv_lamps import UvLamp
from bot.preferences import Preferences
from bot.reply import Reply

_OTHERS = [kind for kind in UvLamp if kind is not UvLamp.T5_HO]
_IN_OPTIONS = (
    "distance lamp:{kind} tube:12% reflector:polished screen:none animal:bearded dragon",
    "distance lamp:{kind} tube:12% reflector:not sure screen:mesh animal:bearded dragon",
    "distance tube:{kind} reflector:polished screen:none animal:bearded dragon",
    "uvi lamp:{kind} tube:12% reflector:polished screen:none animal:bearded dragon distance:14in",
    "uvi tube:{kind} reflector:plain screen:45% animal:bearded dragon distance:35cm",
    (
        "section tube:12% lamp:{kind} reflector:polished screen:none distance:16in "
        "enclosure:48x24x24in animal:bearded dragon"
    ),
    "plan animal:bearded dragon enclosure:48x24x24in lid:full mesh tube:{kind} reflector:polished",
)
_IN_WORDS = (
    "my tube is a t8 10.0, how close should it be for a bearded dragon",
    "t8 5.0 how far from my crested gecko",
    "how far should a compact uvb bulb be from my russian tortoise",
    "how far for a sprial uvb bulb, russian tortoise",
    "uvb 100 compact how close for a bearded dragon",
    "how far should a metal halide uvb lamp be, bearded dragon",
    "how high do i hang a halide lamp for my uromastyx",
    "how far away do i put a led uvb bar for my beardie",
    "how far should a mercury bulb be from my bearded dragon",
    "what distance for a mvb over a bearded dragon",
    "how far should a normal fluorescent 5.0 be from a leopard gecko",
    "distance for a cfl uvb 10.0 and a hermanns tortoise",
)
# The figures that a T5 HO tube of the usual classes gets for these animals.
_A_DISTANCE = re.compile(r"\bkeep \d|start at \d|to \d[\d.]* in \(", re.I)


def _places(reply: Reply) -> list[str]:
    """Return the names of values that would hand a place or a UV index out."""
    return [value.name for value in reply.values if value.name.startswith(("distance", "uvi"))]


@pytest.mark.parametrize("line", _IN_OPTIONS)
@pytest.mark.parametrize("kind", _OTHERS)
def test_no_question_hands_out_a_figure_for_another_lamp(
    kind: UvLamp, line: str, anyone: Preferences
) -> None:
    reply = ask(line.format(kind=kind.value), anyone)
    assert reply.status == "problem"
    told = " ".join(one.text for one in reply.brief)
    assert "no figures for" in told
    assert re.search("UV (?:index )?meter", told)
    assert "3 to 5" in told
    assert re.search(r"(?:at least|never past) (?:8 in \(20 cm\)|20 cm \(8 in\))", told)
    assert not _places(reply)
    assert not _A_DISTANCE.search(reply.answer)
    assert reply.table is None


@pytest.mark.parametrize("said", _IN_WORDS)
def test_free_words_about_another_lamp_find_the_meter(said: str, anyone: Preferences) -> None:
    reply = ask(f"ask {said}", anyone)
    assert reply.command == "distance"
    assert "I have no figures for" in reply.answer
    assert not _places(reply)


@pytest.mark.parametrize("said", ["how far should a metal halide uvb lamp be", "distance lamp:t8"])
def test_what_holds_for_any_animal_waits_for_no_name(said: str, anyone: Preferences) -> None:
    reply = ask(said, anyone)
    assert "what your animal needs" in " ".join(reply.steps)
    assert "never past 8 in (20 cm)" in " ".join(one.text for one in reply.brief)


@pytest.mark.parametrize(
    "setup",
    [
        "bearded dragon, 5.0 t8 on mesh, 14 inches to his back, basking 100, cool 78",
        "bearded dragon, compact uvb 10.0, 10 inches to his back, basking 100, cool 78",
        "bearded dragon, metal halide 70w 14 inches, basking 100, cool 78",
        "bearded dragon, led uvb bar 12 inches to the back, basking 100, cool 78",
        "bearded dragon, mvb 160w 14 inches, basking 100, cool 78",
    ],
)
def test_a_set_up_with_another_lamp_is_not_judged_by_a_distance(
    setup: str, anyone: Preferences
) -> None:
    reply = ask(f"check {setup}", anyone)
    assert reply.table is not None
    (uv,) = [row for row in reply.table.rows if row[0] == "UV"]
    assert uv[1] == "cannot tell"
    assert any(text.startswith("UV: I have no figures for") for text in reply.why)
    assert not _places(reply)


def test_a_meter_reading_stands_whatever_the_lamp(anyone: Preferences) -> None:
    setup = "bearded dragon, mercury vapour 160w, uv meter reads 4.0, basking 100F, cool 78F"
    reply = ask(f"check {setup}", anyone)
    assert reply.table is not None
    verdicts = {row[0]: row[1] for row in reply.table.rows}
    assert verdicts["UV"] == "fine"
    assert verdicts["Lamps"] == "fine"


@pytest.mark.parametrize("kind", _OTHERS)
def test_its_example_is_answered(kind: UvLamp, anyone: Preferences) -> None:
    reply = ask(f"distance lamp:{kind.value} animal:bearded dragon", anyone)
    (example,) = [step.partition("such as: ")[2] for step in reply.steps if "such as: " in step]
    assert ask(example, anyone).status == "ok"


@pytest.mark.parametrize(
    ("tube", "lamp", "told"),
    [
        ("12%", "", True),
        ("T5 12%", "", True),
        ("T5 HO 12%", "", False),
        ("12%", " lamp:T5 HO tube", False),
    ],
)
def test_what_was_taken_for_a_t5_ho_tube_is_said(
    tube: str, lamp: str, told: bool, anyone: Preferences
) -> None:
    line = f"distance tube:{tube} reflector:polished screen:none animal:bearded dragon{lamp}"
    reply = ask(line, anyone)
    kinds = [row.text for row in reply.rows if row.label == "Kind"]
    assert ["I assumed a T5 HO tube" in kind for kind in kinds] == ([True] if told else [])
    assert any("I assumed a T5 HO tube" in one.text for one in reply.brief) is told


@pytest.mark.parametrize(
    ("kind", "gives"),
    [
        ("metal halide", "only a meter tells how strong"),
        ("T8", "less than a T5 HO tube"),
        ("led uvb", "only a meter tells"),
        ("compact", "only a meter tells how strong"),
        ("mvb", "only a meter tells how strong"),
        ("T5 HO", "by the strength on its label"),
        ("plant light", "none that an animal can use"),
        ("grow light", "none that an animal can use"),
        ("white led", "none"),
        ("halogen", "none"),
        ("spot", "none"),
        ("radiant panel", "none"),
        ("infrared projector", "none"),
    ],
)
def test_each_kind_of_lamp_tells_what_it_gives(kind: str, gives: str, anyone: Preferences) -> None:
    reply = ask(f"lamp kind:{kind}", anyone)
    assert reply.status == "ok"
    rows = {row.label: row.text for row in reply.rows}
    assert gives in rows["UV"]
    assert rows["Heat"]
    assert rows["Light"]


@pytest.mark.parametrize(
    ("tube", "told"), [("t8 10.0", "10 on it"), ("T8 12%", "12 on it"), ("t8", "")]
)
def test_the_number_on_another_lamp_is_told_and_not_worked_with(
    tube: str, told: str, anyone: Preferences
) -> None:
    reply = ask(f"distance tube:{tube} animal:bearded dragon", anyone)
    labels = [row.text for row in reply.rows if row.label == "Its label"]
    assert [told in label for label in labels] == ([True] if told else [])
    assert not [v for v in reply.values if v.name.startswith("distance")]


@pytest.mark.parametrize("kind", ["compact lamp", "mercury bulb", "coil"])
def test_what_was_read_where_the_animal_is_is_held_against_the_limits(kind: str) -> None:
    line = f"uvi distance:12in lamp:{kind} animal:leopard gecko readings:"
    strong = ask(f"{line}20 at 12in", Preferences())
    assert [(d.key, d.urgency) for d in strong.dangers] == [("uv_too_strong", "now")]
    # Of what was read nearer to the lamp than the animal is, nobody knows what is left there.
    assert ask(f"{line}20 at 6in", Preferences()).dangers == ()
    assert ask(f"{line}1.0 at 12in", Preferences()).dangers == ()


def test_a_tube_in_place_of_another_kind_is_told_with_what_is_not_known_of_that_kind() -> None:
    reply = ask("tube lamp:coil distance:14in screen:none animal:bearded dragon", Preferences())
    assert reply.answer.startswith("Choose T5 HO, ")
    assert "I have no figures for compact lamps." in reply.answer
