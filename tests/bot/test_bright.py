"""How bright it is: figures that agree with the engine, no need and no verdict, never a UV lamp."""

from math import log10

import pytest

from bot.ask import ask
from bot.drawing import Axis, Scale, Sheet, Ticks
from bot.language.errors import NotUnderstoodError
from bot.language.light import LIGHT_LAMPS, read_beam, read_lumens, read_lux
from bot.preferences import LANGUAGES, Language, Preferences
from bot.render.picture import draw
from bot.render.picture.axes import ticks_of
from bot.reply import Reply
from calc.light.kinds import light_kinds

ANYONE = Preferences()
LED = "bright lamp:led bar lumens:{} distance:40cm length:85cm animal:bearded dragon"


def asked(line: str) -> Reply:
    return ask(line, ANYONE)


def value(reply: Reply, name: str) -> float:
    return next(v.best for v in reply.values if v.name == name)


def brief(reply: Reply) -> str:
    return " ".join(line.text for line in reply.brief)


def test_the_light_of_a_bar_is_the_one_worked_out_beforehand() -> None:
    # 8120 lm of a bar of 0.85 m give 10 000 lx at 40 cm: worked out apart from this code.
    assert value(asked(LED.format(8120)), "illuminance") == pytest.approx(10_000.0, rel=0.01)
    half = value(asked(LED.format(4060)), "illuminance")
    assert half == pytest.approx(5000.0, rel=0.01)


def test_what_is_said_to_be_fair_is_fair_when_it_is_asked_again() -> None:
    many = asked("bright lamp:led bar distance:40cm length:85cm animal:bearded dragon")
    lumens = value(many, "fair_lumens")
    assert brief(asked(LED.format(round(lumens)))).startswith("Fair: ")


@pytest.mark.parametrize(
    "line",
    [
        LED.format(1500),
        LED.format(60_000),
        "bright reading:900 by:phone animal:bearded dragon",
        "bright lamp:led panel lumens:3000 distance:30cm",
        "bright lamp:led bar distance:40cm",
        "bright",
    ],
)
def test_no_brightness_is_a_need_or_a_verdict(line: str) -> None:
    told = brief(asked(line)).lower()
    assert "no need is published" in told
    for word in ("too dim", "not enough", "needs more", "too dark", "must"):
        assert word not in told


@pytest.mark.parametrize("lamp", LIGHT_LAMPS)
def test_no_lamp_for_light_is_taken_for_a_uv_lamp(lamp: str) -> None:
    reply = asked(f"bright lamp:{lamp} lumens:3000 distance:50cm beam:60 animal:bearded dragon")
    assert "uv" in brief(reply).lower()
    if lamp.startswith("led"):
        assert "never replaces the uv tube" in brief(reply).lower()


def test_every_kind_that_can_be_typed_is_known() -> None:
    kinds = {name.replace(" ", "-") for name in LIGHT_LAMPS} - {"coloured-lamp"}
    assert kinds == set(light_kinds())


def test_a_coloured_lamp_and_a_uv_tube_without_lumens_get_no_lux() -> None:
    for line in ("bright lamp:red distance:10in lumens:800", "bright lamp:uv tube distance:30cm"):
        assert not any(v.name == "illuminance" for v in asked(line).values)


def test_an_animal_of_the_night_is_asked_for_no_bright_spot() -> None:
    told = brief(asked("bright lamp:led bar lumens:6000 distance:30cm animal:leopard gecko"))
    assert "no bright spot" in told
    assert "lm" not in told


def test_glass_lets_light_through_and_no_uv() -> None:
    clear = asked("bright lamp:led bar lumens:4000 distance:40cm length:85cm")
    behind = asked("bright lamp:led bar lumens:4000 distance:40cm length:85cm screen:glass")
    share = value(behind, "illuminance") / value(clear, "illuminance")
    assert share == pytest.approx(0.9)
    assert "glass" in brief(behind).lower()


def test_two_lamps_give_more_and_less_than_twice_beside_each_other() -> None:
    one = value(asked(LED.format(4000)), "illuminance")
    two = value(asked(LED.format(4000) + " lamps:2"), "illuminance")
    assert one < two < 2.0 * one


BAR, FLOOD = "lamp:led bar watts:24W", "lamp:halogen flood watts:75W"


def test_the_light_of_several_kinds_adds_up_and_each_part_is_told() -> None:
    both = asked("bright lamps:24W led bar + 75W halogen flood distance:40cm")
    bar, flood = (
        value(asked(f"bright {one} distance:40cm"), "illuminance") for one in (BAR, FLOOD)
    )
    together = value(both, "illuminance")
    # Side by side each hangs a hand aside of the middle, so a little less than the sum.
    assert max(bar, flood) < together < bar + flood
    assert together == pytest.approx(bar + flood, rel=0.2)
    assert sum(row.label == "Of that" for row in both.rows) == 2


def test_the_same_lamps_in_another_order_or_as_two_options_give_the_same_light() -> None:
    lines = (
        "bright lamps:24W led bar + 75W halogen flood distance:40cm",
        "bright lamps:75W flood and 24W led bar distance:40cm",
        "bright lamp:led bar watts:24W lamps:75W flood distance:40cm",
        "bright lamps:24W led bar at 40cm, 75W flood at 40cm",
    )
    found = {round(value(asked(line), "illuminance"), 6) for line in lines}
    assert len(found) == 1


def test_each_of_several_lamps_hangs_at_its_own_height() -> None:
    near, far = (
        value(asked(f"bright lamps:24W led bar at {cm}cm + 75W flood at 40cm"), "illuminance")
        for cm in (25, 60)
    )
    assert near > far


@pytest.mark.parametrize("other", ["24W uvb", "red", "led panel", "12% T5"])
def test_a_lamp_whose_light_nobody_knows_is_named_and_not_counted(other: str) -> None:
    alone = value(asked("bright lamps:24W led bar + 75W flood distance:40cm"), "illuminance")
    reply = asked(f"bright lamps:24W led bar + {other} + 75W flood distance:40cm")
    assert value(reply, "illuminance") == pytest.approx(alone)
    assert "Not counted" in brief(reply)


@pytest.mark.parametrize(
    "line",
    [
        "bright lamps:24W trumpet + 75W flood distance:40cm",
        "bright lamps:7 lamp:led bar distance:40cm",
        "bright lamps:9 led bars distance:40cm",
        "bright lamps:+ distance:40cm",
        "bright lamps:1W led + 1W led + 1W led + 1W led + 1W led + 1W led + 1W led distance:40cm",
        "bright lamps:24W led bar + 75W flood",
    ],
)
def test_lamps_that_are_not_understood_are_refused_with_an_example(line: str) -> None:
    reply = asked(line)
    assert reply.status == "problem"
    assert "For example" in reply.answer or "for example" in reply.answer


def test_foot_candles_are_brought_to_lux() -> None:
    found = value(asked("bright reading:100 fc by:meter"), "illuminance")
    assert found == pytest.approx(1076.39)


def test_the_retreat_is_a_twentieth_of_the_spot_at_most() -> None:
    reply = asked(LED.format(4000))
    assert value(reply, "shade_illuminance") <= value(reply, "illuminance") / 20.0


@pytest.mark.parametrize(
    ("text", "lumens"), [("2,000 lm", 2000.0), ("2.000", 2000.0), ("1.5k lumens", 1500.0)]
)
def test_lumens_are_read_with_their_thousands(text: str, lumens: float) -> None:
    assert read_lumens(text) == lumens


@pytest.mark.parametrize("text", ["", "many", "0", "-5", "2000 W", "9" * 50])
def test_what_are_no_lumens_are_refused(text: str) -> None:
    with pytest.raises(NotUnderstoodError):
        read_lumens(text)


def test_lux_and_beams_are_read() -> None:
    assert read_lux("560 foot candles").is_foot_candles
    assert not read_lux("6,000 lux").is_foot_candles
    assert read_beam("36 degrees") == 36.0
    for read, text in ((read_lux, "bright"), (read_beam, "wide")):
        with pytest.raises(NotUnderstoodError):
            read(text)


@pytest.mark.parametrize("lamp", ["halogen flood", "household bulb", "metal halide"])
def test_a_lamp_for_heat_that_hangs_so_near_that_it_burns_gets_no_lux(lamp: str) -> None:
    reply = asked(f"bright lamp:{lamp} watts:75W distance:10cm")
    assert "burns" in brief(reply)
    assert "basking" in brief(reply)
    assert not any(v.name == "illuminance" for v in reply.values)
    assert "burns" in brief(asked(f"bright lamp:{lamp} distance:10cm"))
    assert "burns" in brief(asked(f"bright lamps:24W led bar at 40cm + 50W {lamp} at 10cm"))
    far = asked(f"bright lamp:{lamp} watts:50W distance:40cm")
    assert any(v.name == "illuminance" for v in far.values)


def test_our_own_levels_are_told_where_no_lamp_is_and_none_for_the_night() -> None:
    assert "fair 10000" in brief(asked("bright animal:bearded dragon")).replace("\u00a0", " ")
    assert "no bright spot" in brief(asked("bright animal:leopard gecko"))


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_picture_has_the_place_first_and_the_light_of_other_places_below(
    language: Language,
) -> None:
    line = "bright lamps:24W led bar + 75W flood distance:40cm enclosure:120x60x60cm"
    reply = ask(line, Preferences(language=language))
    assert reply.picture is not None
    drawing = reply.picture.drawing
    assert isinstance(drawing, Sheet)
    first, cool, *sky = drawing.gauges
    spot = next(v for v in reply.values if v.name == "illuminance")
    assert first.reading == pytest.approx((log10(spot.low), log10(spot.high)))
    assert first.reading is not None
    assert cool.reading is not None
    assert cool.reading[1] < first.reading[0]
    assert len(sky) == 4
    # No target is drawn: nobody knows one.
    assert all(gauge.wanted is None for gauge in drawing.gauges)
    assert draw(drawing)


def test_what_plants_make_of_it_is_told_where_plants_or_hours_are() -> None:
    asking = "will plants grow under my led bar, 3000 lumens, 12 inches up"
    assert "Plants, roughly: low to medium light." in brief(asked(asking))
    assert "Plants" not in brief(asked("bright lamp:led bar lumens:3000 distance:12in"))


def test_the_scale_of_a_brightness_goes_by_tens() -> None:
    axis = Axis("", 1.0, 5.3, (Scale("lx"),), Ticks.POWERS)
    told = [(tick.at, tick.lines) for tick in ticks_of(axis, axis.scales[0])]
    assert told == [(float(n), (str(10**n),)) for n in range(1, 6)]
