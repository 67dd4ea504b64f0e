"""The distance question and its reverse, as keepers ask them."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Reply, Value

INCH = 0.0254
# Common practice, no source: tube-to-back distances in inches for a bearded dragon.
ROWS = [
    ("12%", "polished", "none", 16, 20),
    ("12%", "plain", "none", 12, 16),
    ("6%", "polished", "none", 10, 12),
    ("6%", "plain", "none", 8, 10),
    ("12%", "polished", "blocks 45%", 10, 14),
    ("12%", "plain", "45%", 8, 10),
]


def value(reply: Reply, name: str) -> Value:
    return next(v for v in reply.values if v.name == name)


@pytest.mark.parametrize(("tube", "reflector", "screen", "near", "far"), ROWS)
def test_the_range_agrees_with_common_practice_within_two_inches(
    tube: str, reflector: str, screen: str, near: float, far: float, anyone: Preferences
) -> None:
    line = f"distance tube:{tube} reflector:{reflector} screen:{screen} animal:bearded dragon"
    distance = value(ask(line, anyone), "distance")
    assert distance.low / INCH == pytest.approx(near, abs=2.0)
    assert distance.high / INCH == pytest.approx(far, abs=2.0)
    assert distance.low < far * INCH
    assert distance.high > near * INCH


@pytest.mark.parametrize(("older", "label"), [("10", "12%"), ("5", "6%"), ("10.0", "12%")])
def test_the_older_scale_means_the_same_class(older: str, label: str, anyone: Preferences) -> None:
    tail = "reflector:plain screen:none animal:bearded dragon"
    assert (
        ask(f"distance tube:{older} {tail}", anyone).values
        == ask(f"distance tube:{label} {tail}", anyone).values
    )


@pytest.mark.parametrize("reflector", ["polished", "plain"])
def test_a_six_percent_tube_over_a_screen_is_refused_with_something_better(
    reflector: str, anyone: Preferences
) -> None:
    line = f"distance tube:6% reflector:{reflector} screen:45% animal:bearded dragon"
    reply = ask(line, anyone)
    assert reply.status == "problem"
    assert "too close for comfort" in " ".join(reply.why)
    assert any("12 %" in step for step in reply.steps)


def test_what_is_too_weak_is_refused(anyone: Preferences) -> None:
    reply = ask("distance tube:2% reflector:plain screen:45% animal:bearded dragon", anyone)
    assert reply.status == "problem"
    assert "closest safe place" in reply.answer


def test_what_is_too_strong_everywhere_is_refused(anyone: Preferences) -> None:
    reply = ask("distance tube:14% reflector:polished screen:none uvi:0.05-0.1", anyone)
    assert reply.status == "problem"
    assert "too strong" in reply.answer


@pytest.mark.parametrize("length", ["22in", "55.88cm", "558.8 mm", "1 ft 10 in"])
def test_any_unit_gives_the_same_figures(length: str, anyone: Preferences) -> None:
    tail = "tube:12% reflector:polished screen:none animal:bearded dragon"
    first = ask(f"distance {tail} length:22in", anyone)
    other = ask(f"distance {tail} length:{length}", anyone)
    for a, b in zip(first.values, other.values, strict=True):
        assert b.low == pytest.approx(a.low, rel=1e-12)
        assert b.high == pytest.approx(a.high, rel=1e-12)


def test_the_reverse_question_finds_the_wanted_range_at_the_answered_distances(
    anyone: Preferences,
) -> None:
    tail = "tube:12% reflector:polished screen:18x16 0.011in animal:bearded dragon"
    distance = value(ask(f"distance {tail}", anyone), "distance")
    for metres, wanted in ((distance.low, 5.0), (distance.high, 3.0)):
        reply = ask(f"uvi distance:{metres:.6f} m {tail}", anyone)
        assert value(reply, "uvi").best == pytest.approx(wanted, rel=1e-4)


@pytest.mark.parametrize(
    ("distance", "told", "way"),
    [
        ("10in", "probably high", "farther"),
        ("30in", "far too low", "closer"),
        ("20in", "fine", "Leave it"),
        # Fine for a short tube only.
        ("17in", "fine", "farther"),
    ],
)
def test_the_reverse_question_says_which_way_to_move(
    distance: str, told: str, way: str, anyone: Preferences
) -> None:
    tail = "tube:12% reflector:polished screen:none animal:bearded dragon"
    reply = ask(f"uvi distance:{distance} {tail}", anyone)
    assert told in reply.answer
    assert any(way in step for step in reply.steps)


def test_a_place_too_near_is_never_called_right(anyone: Preferences) -> None:
    reply = ask("uvi distance:4in tube:2% reflector:plain screen:none uvi:1-10", anyone)
    assert any("too close to be safe" in step for step in reply.steps)


def test_an_animal_without_a_known_range_is_not_given_one(anyone: Preferences) -> None:
    reply = ask("distance tube:12% reflector:plain screen:none", anyone)
    assert reply.status == "problem"
    assert "animal" in reply.answer


def test_a_tube_is_picked_for_a_fixed_place_with_its_length(anyone: Preferences) -> None:
    reply = ask("tube distance:17in screen:none animal:bearded dragon enclosure:4ft", anyone)
    assert reply.table is not None
    assert "fine" in {row[3] for row in reply.table.rows}
    assert value(reply, "tube_length").best == pytest.approx(0.849)


def test_every_figure_shown_has_a_range_or_a_doubt(anyone: Preferences) -> None:
    reply = ask("distance tube:12% reflector:polished screen:45% animal:bearded dragon", anyone)
    for entry in reply.values:
        # The answer starts from the shortest tube there may be.
        assert entry.low < entry.best < entry.high or entry.name == "length", entry.name


def test_a_tube_too_near_is_sent_to_its_right_distance_and_no_nearer(anyone: Preferences) -> None:
    reply = ask(
        "uvi distance:4in tube:12% reflector:polished screen:none animal:bearded dragon", anyone
    )
    assert reply.dangers[0].key == "uv_too_strong"
    (near,) = (step for step in reply.steps if "too close to be safe" in step)
    assert "20 in (51 cm)" in near


def test_no_tube_is_picked_for_a_place_that_is_too_near(anyone: Preferences) -> None:
    reply = ask("tube distance:5in screen:none animal:bearded dragon", anyone)
    assert reply.status == "problem"
    assert "8 in (20 cm)" in reply.answer
    assert reply.table is not None
    assert {line[3] for line in reply.table.rows} == {"too close"}


def test_a_beginner_is_led_away_from_a_weak_tube_over_a_screen(anyone: Preferences) -> None:
    tight = ask("distance tube:6% reflector:polished screen:30% animal:bearded dragon", anyone)
    assert any(
        step.startswith("Better for a beginner: a stronger tube, up to 8 %") for step in tight.steps
    )
    refused = ask("distance tube:6% reflector:plain screen:30% animal:bearded dragon", anyone)
    assert refused.status == "problem"
    assert not any("6 %" in step and "a screen that" in step for step in refused.steps)
    row_of_the_trade = "distance tube:12% reflector:plain screen:45% animal:bearded dragon"
    assert not any("beginner" in step for step in ask(row_of_the_trade, anyone).steps)


@pytest.mark.parametrize(
    ("option", "told"),
    [("tube:unknown", "UV meter"), ("screen:glass lid", "Nearly all of the UVB")],
)
def test_what_nobody_can_reckon_with_is_explained(
    option: str, told: str, anyone: Preferences
) -> None:
    given = {"tube": "12%", "reflector": "plain", "screen": "none", "animal": "bearded dragon"}
    name, text = option.split(":")
    line = "distance " + " ".join(f"{n}:{t}" for n, t in (given | {name: text}).items())
    reply = ask(line, anyone)
    assert reply.status == "problem"
    assert told in reply.answer


def test_a_new_tube_may_be_told_in_one_word(anyone: Preferences) -> None:
    tail = "tube:12% reflector:plain screen:none animal:bearded dragon"
    assert ask(f"distance {tail} age:new", anyone).status == "ok"
