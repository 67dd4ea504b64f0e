"""Two set-ups beside each other: the second is the first but for what is told of it."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Reply, Role

_ONE = "compare distance:14in tube:12% reflector:polished screen:none animal:bearded dragon"


def _ask(line: str) -> Reply:
    return ask(line, Preferences())


def _value(reply: Reply, name: str) -> tuple[float, float, float]:
    return next((v.low, v.best, v.high) for v in reply.values if v.name == name)


@pytest.mark.parametrize(
    ("other", "told"),
    [
        ("with_tube:6%", "tube:6%"),
        ("with_reflector:plain", "reflector:plain"),
        ("with_screen:45%", "screen:45%"),
        ("with_distance:20in", "distance:20in"),
        ("with_length:34in", "length:34in"),
        ("with_age:12 months", "age:12 months"),
    ],
)
def test_each_side_is_what_uvi_tells_of_it_alone(other: str, told: str) -> None:
    name = told.partition(":")[0]
    options = dict(part.split(":") for part in _options().split("|"))
    options[name] = told.partition(":")[2]
    alone = "uvi " + " ".join(f"{key}:{value}" for key, value in options.items())
    reply = _ask(f"{_ONE} {other}")
    assert reply.status == "ok"
    assert _value(reply, "uvi") == _value(_ask("uvi" + _ONE.removeprefix("compare")), "uvi")
    assert _value(reply, "uvi_other") == _value(_ask(alone), "uvi")


def _options() -> str:
    return "distance:14in|tube:12%|reflector:polished|screen:none|animal:bearded dragon"


def test_the_head_says_which_is_right() -> None:
    heads = {
        other: next(line.text for line in _ask(f"{_ONE} {other}").brief if line.role is Role.HEAD)
        for other in ("with_screen:45%", "with_distance:40in")
    }
    assert heads["with_screen:45%"] == "Only the second is right there."
    assert heads["with_distance:40in"] == "Neither is surely right there."


def test_swapped_set_ups_swap_the_answer() -> None:
    one = _ask(f"{_ONE} with_screen:45%")
    back = _ask(f"{_ONE.replace('screen:none', 'screen:45%')} with_screen:none")
    assert _value(one, "uvi") == _value(back, "uvi_other")
    assert next(line.text for line in back.brief).startswith("Only the first")


def test_nothing_different_is_asked_for() -> None:
    reply = _ask(_ONE)
    assert reply.status == "problem"
    assert "with_tube:6%" in " ".join(line.text for line in reply.brief)


def test_a_danger_of_the_second_alone_is_said_first() -> None:
    reply = _ask(f"{_ONE} with_distance:8in with_tube:14%")
    assert reply.dangers
    assert reply.brief[0].role is Role.DANGER


def test_no_figure_is_made_for_a_pane() -> None:
    reply = _ask(f"{_ONE} with_screen:glass")
    assert not any(value.name == "uvi_other" for value in reply.values)


def test_what_is_too_near_for_any_tube_is_said_first() -> None:
    reply = _ask(f"{_ONE} with_distance:4in")
    assert reply.brief[0].text == "The second is too close for any tube."
    assert any(line.role is Role.STEP and "8 in" in line.text for line in reply.brief)
