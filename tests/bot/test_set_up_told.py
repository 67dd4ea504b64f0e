"""The set-up that an answer makes: its figures and signs are those of the reply and its picture."""

import pytest

from bot.ask import ask
from bot.drawing import Sheet, Side, Tone
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
    drawing = reply.picture.drawing
    assert isinstance(drawing, Sheet)
    for gauge, spot in zip(drawing.gauges, made(reply).spots, strict=True):
        if spot.value is None:
            assert gauge.reading is None
            continue
        assert gauge.reading == (spot.value.low, spot.value.high)
        assert gauge.tone is TONES[spot.sign]
        assert spot.judged is not None
        if not spot.keepers_differ:
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
    assert reply.picture is not None
    assert isinstance(reply.picture.drawing, Sheet)
    wanted = [gauge.wanted for gauge in reply.picture.drawing.gauges]
    assert wanted == [spot.wanted for spot in made(reply).spots]
