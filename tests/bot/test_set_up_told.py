"""The set-up that an answer makes: its figures and signs are those of the reply and its picture."""

import pytest

from bot.ask import ask
from bot.drawing import Moved, Side, Tone, Tool
from bot.facts import Say
from bot.preferences import Preferences
from bot.reply import Reply, Value
from calc.quantities import Quantity
from calc.setup.set_up import Act, Movement, SetUp, Sign, Thing
from tests.bot.refusing import said

PLAN = "plan enclosure:48x24x24in lid:solid material:wood room:70F night:62F animal:bearded dragon"
CHECK = "check bearded dragon, 12% t5 ho 34in, polished reflector, no mesh, {}"
TONES = {Sign.FINE: Tone.GOOD, Sign.CHANGE: Tone.BAD, Sign.CANNOT_TELL: Tone.DOUBTFUL}
PARTS = {
    Quantity.UVI: "UV",
    Quantity.BASKING_SURFACE: "Basking spot",
    Quantity.COOL_AIR: "Cool end",
    Quantity.WARM_AIR: "Warm end",
}
MARKS = {Sign.FINE: "fine", Sign.CHANGE: "change", Sign.CANNOT_TELL: "cannot tell"}


def value(reply: Reply, name: str) -> Value:
    return next(v for v in reply.values if v.name == name)


def made(reply: Reply) -> SetUp:
    assert reply.status == "ok", reply.answer
    assert reply.set_up is not None
    return reply.set_up


def test_the_value_of_a_plan_agrees_with_its_figures(anyone: Preferences) -> None:
    reply = ask(f"{PLAN}", anyone)
    found = made(reply)
    assert found.back_z_m is not None
    uv = found.spot_of(Quantity.UVI)
    assert uv is not None
    assert uv.value is not None
    assert Value.of("uvi", uv.value, "1") == value(reply, "uvi")
    assert found.tubes[0].z_m - found.back_z_m == pytest.approx(value(reply, "tube_to_back").best)
    assert [spot.quantity for spot in found.spots if spot.is_read] == [
        Quantity.BASKING_SURFACE,
        Quantity.COOL_AIR,
    ]
    assert reply.picture is not None
    assert isinstance(reply.picture.drawing, Side)
    assert len(reply.picture.drawing.places) == len(found.spots)


def test_two_tubes_of_a_plan_light_the_whole_box(anyone: Preferences) -> None:
    one, two = (
        ask(f"{PLAN} tube:6% reflector:plain length:34in tubes:{n} gap:0in", anyone) for n in (1, 2)
    )
    assert len(made(one).tubes) == 1
    assert len(made(two).tubes) == 2
    near_one, near_two = (value(reply, "tube_to_back").best for reply in (one, two))
    assert near_two > near_one
    # Farther away, so it falls off more slowly towards the cool end.
    assert value(two, "uvi_weakest").best > value(one, "uvi_weakest").best


@pytest.mark.parametrize(
    "readings",
    [
        "basking:103F cool:79F warm:83F night:70F",
        "basking:90F cool:86F warm:83F night:45F",
        "basking:120F cool:75F",
        "basking:94F cool:76F night:58F",
        "cool:95F",
    ],
)
def test_gauges_and_sentence_of_temperatures_have_the_verdicts_of_the_value(
    readings: str, anyone: Preferences
) -> None:
    reply = ask(f"temps {readings} lamp_on:3h animal:bearded dragon", anyone)
    assert reply.picture is not None
    places = seen(reply).places
    for place, spot in zip(places, made(reply).spots, strict=True):
        gauge = place.gauge
        assert gauge is not None
        assert place.tone is gauge.tone
        if spot.value is None:
            assert gauge.reading is None
            continue
        assert gauge.reading == (spot.value.low, spot.value.high)
        assert gauge.tone is TONES[spot.sign]
        assert spot.judged is not None
        if spot.held is not None:
            assert "These readings contradict each other" in reply.answer
            assert gauge.verdict == "cannot tell"
        elif not spot.keepers_differ:
            assert gauge.verdict == said(Say.by("verdict", spot.judged.verdict))
        if spot.sign is Sign.FINE and "contradict" not in reply.answer:
            assert any("is right at" in why for why in reply.why)


@pytest.mark.parametrize(
    "told",
    [
        "16 in to his back, basking 103F, cool side 79F, warm side 83F",
        "9 in to his back, basking 90F, cool side 90F",
        "5 in to his back, basking 130F, cool side 70F",
        "28 in to his back, basking 96F, cool side 76F",
        "uv meter reads 4.2, basking 101F",
        "uv meter reads 12, cool side 84F",
    ],
)
def test_the_signs_of_a_checked_set_up_are_the_marks_of_its_table(
    told: str, anyone: Preferences
) -> None:
    reply = ask(CHECK.format(told), anyone)
    assert reply.table is not None
    marks = {row[0]: row[1] for row in reply.table.rows}
    found = made(reply)
    assert found.spots
    for spot in found.spots:
        assert marks[PARTS[spot.quantity]] == MARKS[spot.sign]
        if spot.quantity is Quantity.UVI:
            assert spot.value is not None
            assert spot.value.best == pytest.approx(value(reply, "uvi").best)


@pytest.mark.parametrize("preferences", [Preferences(language="en"), Preferences(language="de")])
@pytest.mark.parametrize(
    "told",
    [
        "16 in to his back, basking 103F, cool side 79F, warm side 83F",
        "9 in to his back, basking 90F, cool side 90F, enclosure 48x24x24in",
        "28 in to his back, basking 96F, cool side 76F, heat lamp 10in above the rock",
        "uv meter reads 12, cool side 84F, night 60F",
    ],
)
def test_the_picture_of_a_checked_set_up_has_the_verdicts_of_its_table(
    told: str, preferences: Preferences
) -> None:
    reply = ask(CHECK.format(told), preferences)
    drawing = seen(reply)
    assert reply.table is not None
    marks = {row[0]: row[1] for row in reply.table.rows}
    gauges = [place.gauge for place in drawing.places if place.gauge]
    told_of = {gauge.label: gauge.verdict for gauge in gauges}
    for line in drawing.placeless:
        piece, rest = line.text.split(": ", 1)
        told_of[piece] = rest.split(", ")[0]
    assert len(gauges) == len(drawing.places)
    assert told_of == marks
    signs = [TONES[spot.sign] for spot in made(reply).spots if spot.quantity in PARTS]
    assert [place.tone for place in drawing.places] == signs
    assert [place.gauge.tone for place in drawing.places if place.gauge] == signs


def seen(reply: Reply) -> Side:
    assert reply.picture is not None
    assert isinstance(reply.picture.drawing, Side)
    return reply.picture.drawing


def test_a_checked_set_up_is_drawn_to_the_scale_of_what_was_told(anyone: Preferences) -> None:
    told = "28 in to his back, enclosure 48x24x36in, heat lamp 10in above the rock"
    drawing = seen(ask(CHECK.format(told), anyone))
    inch = 0.0254
    assert (drawing.width_m, drawing.height_m) == pytest.approx((48 * inch, 36 * inch))
    assert drawing.back is not None
    assert drawing.heat_lamp is not None
    [tube], [away] = drawing.tubes, drawing.dimensions
    assert tube.x1 - tube.x0 == pytest.approx(34 * inch)
    assert tube.y - drawing.back.y == pytest.approx(28 * inch)
    assert (away.y0, away.y1) == (tube.y, drawing.back.y)
    [stand] = drawing.blocks
    assert drawing.heat_lamp.y - stand.y1 == pytest.approx(10 * inch)


def test_the_first_change_is_an_arrow_as_long_as_the_tube_is_moved(anyone: Preferences) -> None:
    reply = ask(CHECK.format("28 in to his back"), anyone)
    first, [shift] = made(reply).first, seen(reply).shifts
    assert first is not None
    assert first.by_m is not None
    assert shift.what is Moved.TUBE
    assert shift.is_measured
    assert (shift.along, shift.up) == (first.by_m[0], first.by_m[2])
    assert shift.up < 0.0


def test_a_lamp_that_is_moved_has_an_arrow_of_its_own(anyone: Preferences) -> None:
    told = "check bearded dragon, heat lamp 10in above the rock, basking 88F, cool side 79F"
    reply = ask(told, anyone)
    first = made(reply).first
    assert first is not None
    assert first.things == (Thing.HEAT_LAMP,)
    assert [shift.what for shift in seen(reply).shifts] == [Moved.LAMP]


def test_an_alarm_leaves_no_arrow_beside_it(anyone: Preferences) -> None:
    reply = ask(CHECK.format("5 in to his back, basking 130F, cool side 95F"), anyone)
    assert reply.alarms
    assert not seen(reply).shifts


def test_a_tube_too_high_for_its_box_is_said_not_to_be_drawn(anyone: Preferences) -> None:
    drawing = seen(ask(CHECK.format("40 in to his back, enclosure 48x24x24in"), anyone))
    assert not drawing.tubes
    assert "not drawn" in drawing.note


@pytest.mark.parametrize("told", ["beardie, 12% tube, lights 12 hours", "beardie, night 60F"])
def test_what_has_no_place_has_no_picture(told: str, anyone: Preferences) -> None:
    assert ask(f"check {told}", anyone).picture is None


def test_a_box_that_was_not_told_is_said_to_be_an_example(anyone: Preferences) -> None:
    assert "example" in seen(ask(CHECK.format("28 in to his back"), anyone)).note
    told = CHECK.format("28 in to his back, enclosure 48x24x36in")
    assert "your size" in seen(ask(told, anyone)).note


def test_the_first_change_of_a_check_is_the_first_step_as_a_movement(anyone: Preferences) -> None:
    near = ask(CHECK.format("14 in to his back, basking 101F, cool side 80F"), anyone)
    first = made(near).first
    assert first is not None
    assert (first.act, first.things) == (Act.MOVE, (Thing.TUBE,))
    assert first.toward == (0, 0, 1)
    assert "farther" in near.steps[0]
    burning = ask(CHECK.format("8 in to his back, basking 101F, cool side 80F"), anyone)
    assert made(burning).first == Movement(Act.SWITCH_OFF, (Thing.TUBE,))
    assert "off now" in burning.steps[0]
    hot = ask(CHECK.format("uv meter reads 4.2, basking 118F, cool side 80F"), anyone)
    first = made(hot).first
    assert first is not None
    assert first.things == (Thing.HEAT_LAMP,)
    nothing = ask(CHECK.format("uv meter reads 4.2, basking 101F, cool side 80F"), anyone)
    assert made(nothing).spots[0].sign is Sign.FINE


def test_a_told_box_is_in_the_value_and_an_untold_one_is_not(anyone: Preferences) -> None:
    box = made(ask(CHECK.format("16 in to his back, 48x24x24 in, glass lid"), anyone)).box
    assert box is not None
    assert (box.length_m, box.height_m) == pytest.approx((48 * 0.0254, 24 * 0.0254))
    untold = made(ask(CHECK.format("16 in to his back"), anyone))
    assert untold.box is None
    assert untold.lid is None
    assert untold.tubes == ()
    assert untold.tube_to_back_m is not None
    assert untold.tube_to_back_m.best == pytest.approx(16 * 0.0254)


def test_what_is_needed_is_drawn_from_the_same_value(anyone: Preferences) -> None:
    reply = ask("needs leopard gecko", anyone)
    assert all(spot.value is None for spot in made(reply).spots)
    gauges = [
        place.gauge
        for place in seen(reply).places
        if place.gauge and place.tool not in (Tool.UV_METER, Tool.CLOCK)
    ]
    for spot, gauge in zip(made(reply).spots, gauges, strict=True):
        if spot.quantity is Quantity.NIGHT_AIR:
            assert spot.wanted is not None
            assert gauge.below == spot.wanted[0]
        else:
            assert gauge.wanted == spot.wanted
