"""The section question: the map, and what must hold in any box."""

import numpy as np
import pytest

from bot.ask import ask
from bot.drawing import Side
from bot.language.units import Units
from bot.preferences import Preferences
from bot.render.picture import draw
from bot.reply import Reply, Value
from bot.saying.voice import voice
from calc.setup.set_up import Act, Sign, Thing
from calc.uv.lamp import Fixture, Lamp
from calc.uv.patches import Shade
from calc.uv.screen import NoScreen
from calc.uv.section import HungTube, uvi_field

INCH = 0.0254

LINE = "section tube:12% reflector:polished screen:none distance:16in enclosure:48x24x24in"
DRAGON = "animal:bearded dragon"


def value(reply: Reply, name: str) -> Value:
    return next(v for v in reply.values if v.name == name)


def row(reply: Reply, label: str) -> str:
    return next(r.text for r in reply.rows if r.label == label)


def test_the_platform_stands_where_the_distance_puts_it(anyone: Preferences) -> None:
    reply = ask(f"{LINE} {DRAGON} back:2in", anyone)
    # 24 in of height, 16 in to the back, a back 2 in over the platform.
    assert value(reply, "platform_top").best == pytest.approx(6 * 0.0254)


def test_the_strongest_place_agrees_with_the_uvi_question(anyone: Preferences) -> None:
    where = "length:22in platform:11in"
    reply = ask(f"{LINE} {DRAGON} {where}", anyone)
    straight = ask(
        f"uvi distance:16in tube:12% reflector:polished screen:none length:22in {DRAGON}", anyone
    )
    assert value(reply, "uvi_strongest").best == pytest.approx(
        value(straight, "uvi").best, rel=0.005
    )


def test_more_tubes_give_more_everywhere(anyone: Preferences) -> None:
    one, two, four = (ask(f"{LINE} {DRAGON} tubes:{n}", anyone) for n in (1, 2, 4))
    for name in ("uvi_strongest", "uvi_weakest"):
        ordered = [value(reply, name).best for reply in (one, two, four)]
        assert ordered == sorted(ordered)
    assert value(two, "uvi_weakest").best == pytest.approx(
        2 * value(one, "uvi_weakest").best, rel=0.1
    )


def test_a_screen_and_a_weaker_tube_give_less(anyone: Preferences) -> None:
    bare = ask(f"{LINE} {DRAGON}", anyone)
    screened = ask(f"{LINE} {DRAGON}".replace("screen:none", "screen:45%"), anyone)
    assert value(screened, "uvi_strongest").best == pytest.approx(
        0.55 * value(bare, "uvi_strongest").best
    )
    weak = ask(f"{LINE} {DRAGON}".replace("12%", "6%"), anyone)
    assert value(weak, "shade_share").best >= value(bare, "shade_share").best


def test_a_heat_lamp_at_the_far_end_lies_apart(anyone: Preferences) -> None:
    near, far = (ask(f"{LINE} {DRAGON} heat:{x}", anyone) for x in ("6in", "44in"))
    assert "lie together" in row(near, "Heat and UV")
    assert "apart" in row(far, "Heat and UV")
    assert any("Move the heat lamp" in step for step in far.steps)


def test_without_shade_it_asks_for_shade(anyone: Preferences) -> None:
    bright = ask(f"{LINE} {DRAGON} tubes:3", anyone)
    assert "no shade" in bright.answer
    assert any("shade" in step for step in bright.steps)
    long = ask(f"{LINE} {DRAGON} length:22in".replace("48x24x24in", "96x24x24in"), anyone)
    assert "There is shade to go to" in long.answer


def test_the_map_is_a_table_of_heights_by_places(anyone: Preferences) -> None:
    reply = ask(f"{LINE} {DRAGON}", anyone)
    assert reply.table is not None
    columns = list(zip(*(line[1:] for line in reply.table.rows), strict=True))
    for under_tube in columns[:3]:
        falling = [float(text) for text in under_tube]
        assert falling == sorted(falling, reverse=True)


@pytest.mark.parametrize("more", ["", "tubes:3", "length:22in platform:11in", "length:46in"])
def test_answer_row_picture_and_value_tell_the_same_of_the_shade(
    more: str, anyone: Preferences
) -> None:
    reply = ask(f"{LINE} {DRAGON} {more}", anyone)
    found = reply.set_up
    assert found is not None
    assert found.shade is not None
    english = voice("en", Units.IN)
    name = found.shade.name.lower()
    assert english.words.spoken(f"section-shade-{name}")(None, english) in reply.answer
    assert reply.picture is not None
    drawing = reply.picture.drawing
    assert isinstance(drawing, Side)
    here = english.words.text("section").partition(f"section-shade-here-{name} = ")[2]
    assert drawing.ends[1].text.startswith(here.partition("{")[0].partition("\n")[0])
    hidden = any(not hide.is_there for hide in found.hides)
    assert hidden == any("Put a hide" in step for step in reply.steps)
    assert hidden == (found.shade not in (Shade.THERE, Shade.PROBABLY))


def test_a_move_that_was_tried_gives_what_it_promised_when_it_is_asked(
    anyone: Preferences,
) -> None:
    reply = ask(f"{LINE} {DRAGON} length:34in", anyone)
    found = reply.set_up
    assert found is not None
    assert found.first is not None
    assert found.first.act is Act.MOVE
    assert found.first.things == (Thing.STAND,)
    assert found.first.by_m is not None
    away_m = 16 * INCH - found.first.by_m[2]
    again = ask(
        f"{LINE} {DRAGON} length:34in".replace("distance:16in", f"distance:{away_m:.5f}m"), anyone
    )
    then = value(again, "uvi_strongest")
    assert f"UV index {then.best:.1f} ({then.low:.1f} to {then.high:.1f})" in reply.steps[0]
    assert again.set_up is not None
    assert again.set_up.spots[0].sign is Sign.FINE


@pytest.mark.parametrize(("heat", "from_the_front"), [("6in", False), ("44in", True)])
def test_a_lamp_is_drawn_once_and_never_under_the_tube(
    heat: str, from_the_front: bool, anyone: Preferences
) -> None:
    reply = ask(f"{LINE} {DRAGON} heat:{heat}", anyone)
    assert reply.picture is not None
    drawing = reply.picture.drawing
    assert isinstance(drawing, Side)
    assert drawing.end is not None
    assert (drawing.heat_lamp is not None) == from_the_front
    assert (drawing.end.heat_lamp is None) == from_the_front
    if drawing.heat_lamp is not None:
        assert drawing.heat_lamp.x > drawing.tubes[0].x1
    else:
        assert drawing.end.heat_lamp is not None
        assert abs(drawing.end.heat_lamp.x - drawing.end.tubes[0].x0) >= 0.1


def test_the_strongest_place_of_the_value_is_judged_as_the_reply_s_figure(
    anyone: Preferences,
) -> None:
    for tubes, sign in ((1, Sign.CANNOT_TELL), (3, Sign.CHANGE)):
        reply = ask(f"{LINE} {DRAGON} length:34in tubes:{tubes}", anyone)
        assert reply.set_up is not None
        strongest = reply.set_up.spots[0]
        assert strongest.value is not None
        assert Value.of("uvi_strongest", strongest.value, "1") == value(reply, "uvi_strongest")
        assert strongest.sign is sign


@pytest.mark.parametrize("size", ["4x2x2 ft", "121.92x60.96x60.96 cm", "48 x 24 x 24 in"])
def test_any_unit_of_the_size_gives_the_same(size: str, anyone: Preferences) -> None:
    first = ask(f"{LINE} {DRAGON}", anyone)
    other = ask(f"{LINE} {DRAGON}".replace("48x24x24in", size), anyone)
    for a, b in zip(first.values, other.values, strict=True):
        assert b.best == pytest.approx(a.best, rel=1e-9)


@pytest.mark.parametrize(
    "change",
    [
        ("distance:16in", "distance:30in"),
        ("enclosure:48x24x24in", "enclosure:48x24"),
        ("enclosure:48x24x24in", "enclosure:6x6x24in"),
        ("enclosure:48x24x24in", "enclosure:48x24x24in length:60in"),
        ("enclosure:48x24x24in", "enclosure:48x24x24in tubes:5"),
        ("enclosure:48x24x24in", "enclosure:48x24x24in tubes:1.5"),
        ("enclosure:48x24x24in", "enclosure:48x24x24in patch:9ft"),
    ],
)
def test_what_does_not_fit_is_refused(change: tuple[str, str], anyone: Preferences) -> None:
    assert ask(f"{LINE} {DRAGON}".replace(*change), anyone).status == "problem"


@pytest.mark.parametrize("screen", ["none", "18x16 0.011in"])
def test_the_picture_tells_itself_in_words_and_can_be_drawn(
    screen: str, anyone: Preferences
) -> None:
    reply = ask(f"{LINE} {DRAGON}".replace("screen:none", f"screen:{screen}"), anyone)
    assert reply.picture is not None
    drawing = reply.picture.drawing
    assert isinstance(drawing, Side)
    assert drawing.grid is not None
    assert "Map of the UV index" in reply.picture.alt
    assert len(reply.picture.alt) <= 1024
    assert draw(drawing).startswith(b"\x89PNG")


def test_the_end_view_is_the_engine_s_map_across_the_platform(anyone: Preferences) -> None:
    picture = ask(f"{LINE} {DRAGON} tubes:2 platform:12in", anyone).picture
    assert picture is not None
    assert isinstance(picture.drawing, Side)
    end = picture.drawing.end
    assert end is not None
    assert end.grid is not None
    assert (end.width_m, end.height_m) == pytest.approx((24 * INCH, 24 * INCH))
    assert len(end.tubes) == 2
    lamp = Lamp(12.0, Fixture.POLISHED, 0.8185)
    tubes = [
        HungTube(lamp, 0.4245, 12 * INCH + side, 24 * INCH, NoScreen()) for side in (-0.05, 0.05)
    ]
    found = uvi_field(tubes, 6 * INCH, np.array(end.grid.x), np.array(end.grid.y)[:, None])
    told = ~np.isnan(found)
    assert np.array(end.grid.values)[told] == pytest.approx(found[told], rel=1e-3)
    assert "end view" in picture.alt


def test_a_start_too_far_along_is_what_gets_refused(anyone: Preferences) -> None:
    reply = ask(f"{LINE} {DRAGON} start:20in", anyone)
    assert reply.status == "problem"
    assert "“20in” for start" in reply.answer
    assert "14.5 in (37 cm)" in reply.answer


@pytest.mark.parametrize(
    ("change", "ways"),
    [
        (("reflector:polished", "reflector:not sure"), 2),
        (("screen:none", "screen:mesh"), 3),
        (("reflector:polished screen:none", "reflector:not sure screen:not sure"), 8),
    ],
)
def test_what_is_not_known_of_the_tube_is_answered_case_by_case(
    change: tuple[str, str], ways: int, anyone: Preferences
) -> None:
    reply = ask(f"{LINE} {DRAGON}".replace(*change), anyone)
    assert reply.status == "ok"
    assert reply.table is not None
    assert len(reply.table.rows) == ways
    known = f"{LINE} {DRAGON} length:22in"
    known = known if change[1] != "screen:mesh" else known.replace("screen:none", "screen:45%")
    surely = value(ask(known, anyone), "uvi_strongest")
    found = value(reply, "uvi")
    assert found.low < surely.best < found.high
    again = next(step for step in reply.steps if "section tube:" in step)
    surer = ask(again.partition("such as: ")[2], anyone)
    assert surer.set_up is not None
