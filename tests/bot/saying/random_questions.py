"""Questions as a keeper may ask them, drawn at random: any options, figures within reason."""

import random
from collections.abc import Callable, Iterator, Mapping

from bot.command import Command
from bot.commands import COMMANDS
from bot.completion import values_of
from bot.queries.question import Question
from bot.reply import PartName

__all__ = ["random_questions"]

Draw = Callable[[random.Random], str]


def _length(low_in: float, high_in: float) -> Draw:
    def drawn(at: random.Random) -> str:
        inches = at.uniform(low_in, high_in)
        return at.choice((f"{inches:.0f}in", f"{inches * 2.54:.0f}cm", f"{inches:.1f} in"))

    return drawn


def _heat(low_f: float, high_f: float) -> Draw:
    def drawn(at: random.Random) -> str:
        degrees = at.uniform(low_f, high_f)
        return at.choice((f"{degrees:.0f}F", f"{(degrees - 32.0) / 1.8:.1f}C"))

    return drawn


def _number(low: float, high: float, unit: str = "", digits: int = 0) -> Draw:
    return lambda at: f"{at.uniform(low, high):.{digits}f}{unit}"


def _of(*values: str) -> Draw:
    return lambda at: at.choice(values)


def _size(at: random.Random) -> str:
    length, depth = at.choice(((24, 18), (36, 18), (48, 24), (72, 24), (96, 48)))
    height = at.choice((16, 18, 24, 36, 48))
    in_cm = "x".join(f"{side * 2.5:.0f}" for side in (length, depth, height))
    return at.choice((f"{length}x{depth}x{height}in", f"{in_cm}cm"))


def _uvi(at: random.Random) -> str:
    low = at.uniform(0.3, 6.0)
    return at.choice((f"{low:.1f}", f"{low:.1f}-{low * at.uniform(1.2, 2.0):.1f}"))


def _readings(at: random.Random) -> str:
    first, at_in = at.uniform(0.5, 9.0), at.uniform(6.0, 16.0)
    near, far = f"{first:.1f} at {at_in:.0f} in", f"{first * 0.55:.1f} at {at_in * 1.6:.0f} in"
    return at.choice((near, f"{near}, {far}"))


def _dated(at: random.Random) -> str:
    first = at.uniform(1.0, 8.0)
    later = first * at.uniform(0.4, 1.02)
    return f"2026-0{at.randint(1, 4)}-03 {first:.1f}, 2026-0{at.randint(5, 9)}-01 {later:.1f}"


_DRAWS: Mapping[str, Draw] = {
    "age": _of("new", "3 months", "8 months", "14 months", "2 years"),
    "air": _heat(65, 95),
    "back": _length(1, 5),
    "basking": _heat(75, 125),
    "beam": _of("24 degrees", "36 degrees", "90 degrees"),
    "cool": _heat(62, 90),
    "dimmer": _number(30, 100, "%"),
    "distance": _length(6, 40),
    "enclosure": _size,
    "gap": _length(1, 8),
    "heard": _heat(70, 120),
    "holder": _number(40, 200, "W"),
    "hours": _number(6, 16, " hours"),
    "lamp_on": _of("20 minutes", "1 hour", "3 hours"),
    "latitude": _of("home", "27S", "40N", "52N", "0"),
    "length": _of("22in", "34in", "46in", "85cm", "39W"),
    "lumens": _number(300, 9000, "lm"),
    "meter": _uvi,
    "month": _of("January", "March", "June", "December"),
    "night": _heat(50, 82),
    "reading": _heat(70, 125),
    "room": _heat(52, 88),
    "safe": _length(4, 14),
    "screen": _of("none", "45%", "passes 55%", "18x16 0.011in", "mesh", "not sure", "glass"),
    "setting": _of("95%", "0.90"),
    "surface": _heat(70, 125),
    "tube": _of("12%", "6%", "14%", "10%", "8%", "2%", "10.0", "T8 5.0", "compact 10.0"),
    "uvi": _uvi,
    "value": _of("14in", "35cm", "98F", "31C", "difference 10F"),
    "want": _heat(80, 115),
    "warm": _heat(70, 98),
    "water": _heat(60, 90),
    "watts": _number(25, 200, "W"),
    "wood": _heat(80, 180),
}
_OF_ONE: Mapping[tuple[str, str], Draw] = {
    ("bright", "reading"): _number(300, 60_000, "lx"),
    ("decline", "readings"): _dated,
    ("meter", "without"): _readings,
    ("tube", "screen"): _of("none", "45%", "passes 55%", "18x16 0.011in", "glass"),
}
_MOST_OPTIONAL = 0.4


def random_questions(count: int, seed: int) -> Iterator[Question]:
    """Yield so many questions of those whose answers have a brief; the same for the same seed."""
    at = random.Random(seed)
    whole = len(PartName)
    asked = [c for c in COMMANDS if c.tell and len(c.opens) < whole and len(c.query.options()) > 1]
    for _ in range(count):
        yield _drawn(at.choice(asked), at)


def _drawn(command: Command, at: random.Random) -> Question:
    needed = set(command.query.lacking({}))
    chance = at.uniform(0.0, _MOST_OPTIONAL)
    values: dict[str, object] = {}
    for option in command.query.options():
        wanted = option.name in needed or option.name == "animal" or at.random() < chance
        value = _value(command, option.name, at) if wanted else ""
        if value:
            values[option.name] = value
    return Question(command.name, values)


def _value(command: Command, option: str, at: random.Random) -> str:
    draw = _OF_ONE.get((command.name, option)) or _DRAWS.get(option)
    if option in ("readings", "without") and (command.name, option) not in _OF_ONE:
        draw = _readings
    if draw is not None:
        return draw(at)
    values = values_of(command.name, option)
    return at.choice(values) if values else command.query.examples()[option]
