"""The meter question, and readings given to the other UV questions."""

import pytest

from bot.ask import ask
from bot.drawing import Drop, PointKind
from bot.preferences import Preferences
from bot.render.picture import draw
from bot.reply import Reply, Value

INCH = 0.0254
DRAGON = "animal:bearded dragon"


def value(reply: Reply, name: str) -> Value:
    return next(v for v in reply.values if v.name == name)


def row(reply: Reply, label: str) -> str:
    return next(r.text for r in reply.rows if r.label == label)


def test_readings_give_the_distances_of_that_very_lamp(anyone: Preferences) -> None:
    reply = ask(f"meter readings:4.2 at 12 in, 2.9 at 15 in {DRAGON}", anyone)
    assert reply.status == "ok"
    distance = value(reply, "distance")
    # 4.2 was read at 12 in and 2.9 at 15 in: UVI 5 lies nearer, UVI 3 between the two.
    assert distance.low < 12 * INCH < distance.best < 15.5 * INCH
    assert 12 * INCH < distance.high == pytest.approx(15 * INCH, abs=INCH)
    assert value(reply, "uvi").best == pytest.approx(4.2, rel=0.05)
    assert "UV index 4.1, fine" in reply.answer


@pytest.mark.parametrize(
    "readings",
    ["4.2 at 12 in; 2.9 at 15 in", "12in 4.2, 15in 2.9", "4,2 at 30.48cm, 2,9 at 38.1cm"],
)
def test_any_way_of_writing_them_gives_the_same(readings: str, anyone: Preferences) -> None:
    first = ask(f"meter readings:4.2 at 12 in, 2.9 at 15 in {DRAGON}", anyone)
    other = ask(f"meter readings:{readings} {DRAGON}", anyone)
    for a, b in zip(first.values, other.values, strict=True):
        assert (b.low, b.best, b.high) == pytest.approx((a.low, a.best, a.high))


def test_one_wild_reading_is_set_aside_and_told(anyone: Preferences) -> None:
    good = "6.9 at 30cm, 4.6 at 40cm, 2.4 at 60cm"
    reply = ask(f"meter readings:{good}, 1.2 at 50cm {DRAGON}", anyone)
    without = ask(f"meter readings:{good} {DRAGON}", anyone)
    assert "1.2" in row(reply, "Set aside")
    assert value(reply, "distance") == value(without, "distance")
    assert reply.table is not None
    assert [line[-1] for line in reply.table.rows] == ["yes", "yes", "yes", "set aside"]
    assert any("Read again" in step for step in reply.steps)
    assert reply.picture is not None
    drawing = reply.picture.drawing
    assert isinstance(drawing, Drop)
    assert [p.kind for p in drawing.points].count(PointKind.SET_ASIDE) == 1


def test_a_pattern_is_told_with_its_possible_reasons(anyone: Preferences) -> None:
    reply = ask(
        f"meter readings:5.5 at 30cm, 4.4 at 40cm, 3.5 at 50cm, 2.8 at 60cm {DRAGON}", anyone
    )
    assert "low close by" in row(reply, "Your readings")
    told = row(reply, "Possible reasons")
    assert "beside the middle" in told
    assert "another lamp" in told


def test_a_pair_with_and_without_gives_the_screen(anyone: Preferences) -> None:
    reply = ask(f"meter readings:3.3 at 12 in without:6.0 at 12 in {DRAGON}", anyone)
    passes = value(reply, "screen_transmission")
    assert passes.best == pytest.approx(0.55)
    assert passes.low < 0.55 < passes.high
    assert "55 %" in row(reply, "Screen")
    assert value(reply, "uvi").best == pytest.approx(3.3, rel=1e-6)


@pytest.mark.parametrize(
    "line",
    [
        "meter readings:3.3 at 12 in without:6.0 at 12 in screen:45% animal:bearded dragon",
        "meter readings:6.0 at 12 in without:3.3 at 12 in animal:bearded dragon",
        "meter readings:0 at 12 in animal:bearded dragon",
        "meter readings:4 at 12 m animal:bearded dragon",
        "meter readings:4 at 12 animal:bearded dragon",
        "meter readings:4.2 animal:bearded dragon",
        "meter animal:bearded dragon",
        "meter readings:4.2 at 12 in",
    ],
)
def test_what_cannot_be_answered_is_refused_in_one_sentence(line: str, anyone: Preferences) -> None:
    reply = ask(line, anyone)
    assert reply.status == "problem"
    assert len(reply.answer) < 600


def test_bare_distances_take_the_setting_and_say_so(in_inches: Preferences) -> None:
    reply = ask(f"meter readings:4.2 at 12, 2.9 at 15 {DRAGON}", in_inches)
    inches = ask(f"meter readings:4.2 at 12 in, 2.9 at 15 in {DRAGON}", in_inches)
    assert reply.values == inches.values
    assert [r.text for r in reply.rows if r.label == "Assumed"] == [
        "readings 12 has no unit, so I took it as in",
        "readings 15 has no unit, so I took it as in",
    ]
    assert ask(reply.asked, Preferences()).values == inches.values


def test_the_lamp_is_set_against_its_class_where_it_is_named(anyone: Preferences) -> None:
    tail = f"readings:3.6 at 12 in {DRAGON}"
    named = ask(f"meter {tail} tube:12% reflector:polished", anyone)
    assert "T5 HO, 12 %" in row(named, "Against its class")
    assert not [r for r in ask(f"meter {tail}", anyone).rows if r.label == "Against its class"]


def test_a_lamp_that_cannot_serve_is_told_so(anyone: Preferences) -> None:
    reply = ask("meter readings:0.4 at 12 in uvi:3-5", anyone)
    assert reply.status == "ok"
    assert "too" in reply.answer
    assert not [v for v in reply.values if v.name == "distance"]


def test_distance_answers_from_readings_and_says_so(anyone: Preferences) -> None:
    line = f"distance tube:12% reflector:polished screen:none {DRAGON}"
    read = "readings:4.2 at 12 in, 2.9 at 15 in"
    reply = ask(f"{line} {read}", anyone)
    meter = ask(f"meter {read} {DRAGON}", anyone)
    assert value(reply, "distance") == value(meter, "distance")
    assert value(reply, "distance") != value(ask(line, anyone), "distance")
    assert "by your readings" in row(reply, "Tube")
    assert "uv_meter_judgement" in {source.key for source in reply.sources}


def test_uvi_answers_from_readings_through_the_same_screen(anyone: Preferences) -> None:
    line = f"uvi distance:12in tube:6% reflector:plain screen:45% {DRAGON} readings:4.0 at 12 in"
    reply = ask(line, anyone)
    assert value(reply, "uvi").best == pytest.approx(4.0)
    assert "by your readings" in row(reply, "Tube")


def test_tube_sets_the_own_lamp_beside_the_classes(anyone: Preferences) -> None:
    line = f"tube distance:14in screen:none {DRAGON} readings:4.2 at 12 in"
    reply = ask(line, anyone)
    assert reply.table is not None
    assert reply.table.rows[0][0] == "your own lamp"
    assert value(reply, "uvi_own_lamp").best < 4.2
    assert "Keep your own lamp" in reply.answer
    weak = ask(line.replace("4.2", "0.8"), anyone)
    assert "Keep your own lamp" not in weak.answer


def test_the_picture_can_be_drawn(anyone: Preferences) -> None:
    reply = ask(f"meter readings:4.2 at 12 in, 2.9 at 15 in {DRAGON}", anyone)
    assert reply.picture is not None
    assert reply.picture.drawing is not None
    assert draw(reply.picture.drawing).startswith(b"\x89PNG")


def test_meter_readings_need_no_name_before_them(anyone: Preferences) -> None:
    named = ask(f"meter readings:4.2 at 12 in, 2.9 at 15 in {DRAGON}", anyone)
    assert ask(f"meter 4.2 at 12 in, 2.9 at 15 in {DRAGON}", anyone) == named
    bare = ask("meter 4.2 at 12 in, 2.9 at 15 in", anyone)
    assert bare.command == "meter"
    assert "animal" in bare.answer


@pytest.mark.parametrize("readings", ["6 at 10in, 6.2 at 15in, 7 at 20in", "2 at 12in, 8 at 12in"])
def test_readings_that_contradict_each_other_move_nothing(
    readings: str, anyone: Preferences
) -> None:
    reply = ask(f"meter {readings} {DRAGON}", anyone)
    assert reply.answer.startswith("Not yet: your readings do not agree")
    assert reply.why[0].startswith("Your readings do not fit one tube")
    assert reply.brief[-2].text == "Read again before you move it."
    assert reply.steps[0].startswith("Read again after 30 minutes")
    steady = ask(f"meter 4.2 at 12 in, 2.9 at 15 in {DRAGON}", anyone)
    assert "do not agree" not in steady.answer
