"""An untold length of the tube: no answer, step or table leads past the wanted range."""

import re
from collections.abc import Iterator
from itertools import product

import pytest

from bot.ask import ask as asked
from bot.language.hearing.word_lists import word_list
from bot.language.quantities import Units
from bot.preferences import Preferences
from bot.reply import Reply, Value
from calc.animals import animals
from calc.uv.lamp import Fixture, Lamp, uvi_at
from calc.uv.lengths import DARK_ENDS_M
from calc.uv.screen import FlatScreen, NoScreen, Screen
from calc.uv.tube import STANDARD_T5_HO

ANIMALS = ("bearded dragon", "leopard gecko", "crested gecko", "uromastyx", "red-eared slider")
BY_NAME = {animal.name: animal for animal in animals().values()}
SCREENS: dict[str, Screen] = {"none": NoScreen(), "30%": FlatScreen(0.7), "45%": FlatScreen(0.55)}
FIXTURES = {"polished": Fixture.POLISHED, "plain": Fixture.PLAIN}
BOXES = {"": None, "enclosure:4ft": 1.2192, "enclosure:3ft": 0.9144, "enclosure:60cm": 0.6}
STRONG = "tube:14% reflector:polished screen:none animal:bearded dragon"
START = "distance tube:{}% reflector:{} screen:{} animal:{} {}"


def ask(text: str, units: Units = Units.IN) -> Reply:
    return asked(text, Preferences(units=units))


def value(reply: Reply, name: str) -> Value:
    return next(v for v in reply.values if v.name == name)


def fitting(box_m: float | None) -> Iterator[float]:
    for tube in STANDARD_T5_HO:
        if box_m is None or tube.face_to_face_m <= box_m:
            yield tube.lit_length_m


def most(animal: str) -> float:
    wanted = BY_NAME[animal].uvi
    assert wanted is not None
    return wanted.high * (1.0 + 1e-4)


@pytest.mark.parametrize("animal", [name for name in ANIMALS if name in BY_NAME])
@pytest.mark.parametrize("box", BOXES)
def test_no_start_leads_past_the_range(animal: str, box: str) -> None:
    for strength in (2, 6, 12, 14):
        for fixture, behind in FIXTURES.items():
            for screen, between in SCREENS.items():
                reply = ask(START.format(strength, fixture, screen, animal, box))
                assert "length" in {v.name for v in reply.values}
                if reply.status == "problem":
                    continue
                for lit, start in starts(reply, BOXES[box]):
                    there = uvi_at(Lamp(float(strength), behind, lit), start, between)
                    assert there <= most(animal)


def starts(reply: Reply, box_m: float | None) -> Iterator[tuple[float, float]]:
    """Return every length [m] with its start [m]: the same one, or where none is right for all."""
    if reply.table is None:
        found = value(reply, "distance")
        assert found.low <= found.best <= found.high
        yield from ((lit, found.best) for lit in fitting(box_m))
        return
    for lit in fitting(box_m):
        long_mm = round((lit + DARK_ENDS_M) * 1000.0)
        yield lit, value(reply, f"distance_{long_mm}_mm").best


def test_a_start_is_never_shown_beyond_its_range() -> None:
    shown = re.compile(r"(?:[\d.]+ to )?([\d.]+) in \((?:[\d.]+ to )?([\d.]+) cm\);")
    start = re.compile(r"start at ([\d.]+) in \(([\d.]+) cm\)")
    wishes = ("uvi:3", "uvi:3 to 3.4", "animal:bearded dragon")
    told = 0
    for strength, screen, wish, tubes in product((2, 6, 12, 14), SCREENS, wishes, (1, 2, 3)):
        line = f"distance tube:{strength}% reflector:polished screen:{screen} {wish} tubes:{tubes}"
        reply = ask(line)
        if reply.status == "problem" or reply.table is not None:
            continue
        told_all = next(row.text for row in reply.rows if row.label == "Tube to back")
        ends, begun = shown.search(told_all), start.search(told_all)
        assert ends is not None
        assert begun is not None
        for far, at in zip(ends.groups(), begun.groups(), strict=True):
            assert float(at) <= float(far), reply.answer
        told += 1
    assert told >= 10


def test_where_no_distance_is_right_for_every_length_each_has_its_own() -> None:
    reply = ask(f"distance {STRONG}")
    assert reply.answer.startswith("It depends on how long the tube is")
    assert reply.table is not None
    assert len(reply.table.rows) == len(STANDARD_T5_HO)
    near, *_ = ask(f"uvi distance:12in {STRONG}").steps
    assert near.startswith("Measure how long the tube is")
    assert "Until then hang it" in near
    far, *_ = ask(f"uvi distance:40in {STRONG}").steps
    assert "Until then" not in far


@pytest.mark.parametrize("box", BOXES)
def test_no_start_of_an_unsure_asker_leads_past_the_range(box: str) -> None:
    reply = ask(f"distance tube:12% reflector:not sure screen:not sure animal:bearded dragon {box}")
    start = value(reply, "distance").best
    strongest = max(
        uvi_at(Lamp(12.0, Fixture.POLISHED, lit), start, NoScreen()) for lit in fitting(BOXES[box])
    )
    assert strongest <= most("bearded dragon")
    assert "however long the tube is" in " ".join(reply.why)


def test_the_reply_says_why_and_asks_how_long_the_tube_is() -> None:
    reply = ask("distance tube:12% reflector:polished screen:none animal:bearded dragon")
    assert "A long one" in next(line.text for line in reply.brief if line.role == "assumed")
    assert "You did not tell me the length" in " ".join(reply.why)
    assert reply.steps[0].startswith("How long is the tube?")
    assert "length:39 W" in reply.steps[0]
    long = value(reply, "length")
    assert (long.low, long.best, long.high) == pytest.approx((0.549, 0.549, 1.449))
    centimetres = ask(
        "distance tube:12% reflector:polished screen:none animal:bearded dragon",
        Units.CM,
    )
    assert "length:85 cm" in centimetres.steps[0]


@pytest.mark.parametrize(
    ("told", "metres", "how"),
    [
        ("length:39W", 0.849, "inferred from 39 W"),
        ("length:54 watts", 1.149, "inferred from 54 W"),
        ("length:85cm", 0.85, "as you told me"),
        ("enclosure:60cm", 0.549, "inferred from the enclosure"),
        ("length:24W enclosure:4ft", 0.549, "inferred from 24 W"),
    ],
)
def test_a_known_length_is_told_with_how_it_is_known(told: str, metres: float, how: str) -> None:
    reply = ask(f"distance tube:12% reflector:polished screen:none animal:bearded dragon {told}")
    long = value(reply, "length")
    assert (long.low, long.best, long.high) == pytest.approx((metres,) * 3, abs=0.001)
    assert how in next(row.text for row in reply.rows if row.label == "Length")
    assert not any(step.startswith("How long") for step in reply.steps)


def test_watts_that_no_t5_ho_tube_has_are_told_in_one_sentence() -> None:
    reply = ask("distance tube:12% reflector:polished screen:none uvi:3-5 length:28W")
    assert reply.status == "problem"
    assert "24, 39, 54 or 80 W" in reply.answer


def test_the_watts_that_are_heard_are_those_of_the_table() -> None:
    assert word_list("tube_watts") == {f"{tube.power_w:.0f}" for tube in STANDARD_T5_HO}


@pytest.mark.parametrize(
    ("words", "length"),
    [
        ("39w t5 12% polished no mesh bearded dragon how far", "39 W"),
        ("how far for a 54 watt t5 ho 12%, polished, no mesh, bearded dragon", "54 W"),
        ("12% t5 ho 24w polished reflector no mesh, how far from my bearded dragon", "24 W"),
    ],
)
def test_watts_of_a_tube_are_heard_as_its_length(words: str, length: str) -> None:
    reply = ask(f"ask {words}")
    understood = next(row.text for row in reply.rows if row.label == "Understood as")
    assert f"length:{length}" in understood


@pytest.mark.parametrize(
    "words",
    [
        "bearded dragon, 12% T5 HO, polished, no mesh, 16in to back, 75w basking bulb",
        "bearded dragon, 24w compact uvb, 12% t5, polished, no mesh, 16in to back",
        "bearded dragon, 12% t5 46 inch tube, 24w t5, polished, no mesh, 16in to back",
    ],
)
def test_other_watts_are_no_length(words: str) -> None:
    rows = " ".join(row.text for row in ask(f"check {words}").rows)
    assert "tube length 24w" not in rows
    assert "tube length 75w" not in rows


def test_a_place_that_may_be_too_strong_is_told_so_and_moved_farther() -> None:
    told = "tube:12% reflector:polished screen:none animal:bearded dragon distance:16in"
    reply = ask(f"uvi {told}")
    assert "A long tube gives" in reply.answer
    assert "farther from" in reply.steps[0]
    sure = ask(f"uvi {told} length:24W")
    assert "long tube" not in sure.answer
    assert sure.steps[0].startswith("Leave it")


def test_a_set_up_is_not_fine_while_a_longer_tube_would_be_too_strong() -> None:
    words = "check bearded dragon, 12% T5 HO, polished reflector, no mesh, 16in to back"
    unknown, known = ask(words), ask(f"{words}, 24w tube")
    assert next(r for r in _table(unknown) if r[0] == "UV")[1] == "cannot tell"
    assert any("how long the tube is" in line.text for line in unknown.brief)
    assert next(r for r in _table(known) if r[0] == "UV")[1] == "fine"


def _table(reply: Reply) -> tuple[tuple[str, ...], ...]:
    assert reply.table is not None
    return reply.table.rows


def test_no_tube_is_advised_that_is_too_strong_when_it_is_long() -> None:
    for inches in range(8, 40):
        reply = ask(f"tube distance:{inches}in screen:none animal:bearded dragon")
        if not reply.answer.startswith("Take a"):
            continue
        first = reply.answer.partition(":")[0]
        strength = float(first.split(", ")[1].split(" %")[0])
        fixture = Fixture.POLISHED if "polished" in first else Fixture.PLAIN
        lengths = [tube.lit_length_m for tube in STANDARD_T5_HO]
        over = [
            lit
            for lit in lengths
            if uvi_at(Lamp(strength, fixture, lit), inches * 0.0254, NoScreen()) > 5.0005
        ]
        assert ("no longer than" in first) is bool(over)


def test_the_card_says_which_length_a_row_is_for() -> None:
    card = ask("card animal:bearded dragon")
    rows = _table(card)
    assert all("any length" in row[0] for row in rows)
    assert any(step.startswith("Start at the far end") for step in card.steps)
    known = ask("card animal:bearded dragon length:54W")
    assert known.table is not None
    assert all("115 cm" in row[0] for row in known.table.rows)
    assert any(step.startswith("Start in the middle") for step in known.steps)
    for one in (v for v in card.values if v.name.startswith("distance_")):
        _, strength, fixture, *screen = one.name.split("_")
        between = SCREENS[{"bare": "none"}.get(screen[-1], f"{screen[-1]}%")]
        lamp = Lamp(float(strength), Fixture[fixture.upper()], STANDARD_T5_HO[-1].lit_length_m)
        for distance in (one.best, one.high):
            assert uvi_at(lamp, distance, between) <= 5.0005


def test_a_plan_with_a_tube_of_unknown_length_is_safe_for_the_longest_that_fits() -> None:
    for tube in ("6%", "12%"):
        for lid in ("full mesh", "solid"):
            reply = ask(
                f"plan animal:bearded dragon enclosure:48x24x24in lid:{lid} tube:{tube} "
                "reflector:polished"
            )
            if reply.status == "problem":
                continue
            screen = (
                FlatScreen(0.55)
                if any("on the mesh" in step for step in reply.steps)
                else NoScreen()
            )
            strength = float(tube[:-1])
            for lit in fitting(1.2192):
                lamp = Lamp(strength, Fixture.POLISHED, lit)
                there = uvi_at(lamp, value(reply, "tube_to_back").best, screen)
                assert there <= 5.0005
