"""The invented sentences, what must be heard in each, and how much of it was."""

import tomllib
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from bot.language.hearing import Fact, Heard, hear
from bot.language.lamps import TubeStrength
from bot.language.quantities import Dimension, Measure, convert
from bot.language.readings import PlacedReading
from bot.language.screens import Blocks, NoScreen, Passes, Weave
from bot.language.sizes import Size
from bot.questions.setup.told import kept_names

SENTENCES = Path(__file__).parent / "sentences"
TUNED_ON = ("plain.toml", "curt.toml", "tricky.toml", "rambling.toml", "later.toml")
# Messages of a chat group: each file was heard once before it was tuned on (its head says how
# well) and then served to find classes of error. Of the last one nothing was ever tuned.
CHATS = (
    *("chat.toml", "chat_later.toml", "chat_third.toml", "chat_fourth.toml"),
    *("chat_fifth.toml", "chat_sixth.toml", "chat_seventh.toml"),
)
HELD_ASIDE = ("held_aside.toml", "chat_held_aside.toml")

UNITS = {"degF": "F", "degC": "C", "month": "months"}
SI = {
    Dimension.LENGTH: "m",
    Dimension.TEMPERATURE: "degC",
    Dimension.POWER: "W",
    Dimension.DURATION: "s",
    Dimension.VOLUME: "meter ** 3",
}


@dataclass
class Score:
    """Facts heard rightly, heard wrongly and missed, by name, and what went wrong."""

    right: Counter[str] = field(default_factory=Counter)
    wrong: Counter[str] = field(default_factory=Counter)
    missed: Counter[str] = field(default_factory=Counter)
    slips: list[str] = field(default_factory=list)

    @property
    def precision(self) -> float:
        return self.right.total() / max(1, self.right.total() + self.wrong.total())

    @property
    def recall(self) -> float:
        return self.right.total() / max(1, self.right.total() + self.missed.total())

    def table(self) -> str:
        """Return one line a fact name: right, wrong, missed, precision and recall."""
        lines = [f"{'fact':18}{'right':>6}{'wrong':>6}{'missed':>7}{'precision':>10}{'recall':>8}"]
        for name in sorted(self.right | self.wrong | self.missed):
            right, wrong, missed = self.right[name], self.wrong[name], self.missed[name]
            shares = right / max(1, right + wrong), right / max(1, right + missed)
            lines.append(f"{name:18}{right:6}{wrong:6}{missed:7}{shares[0]:10.1%}{shares[1]:8.1%}")
        total = self.right.total(), self.wrong.total(), self.missed.total()
        lines.append(
            f"{'all':18}{total[0]:6}{total[1]:6}{total[2]:7}{self.precision:10.1%}{self.recall:8.1%}"
        )
        return "\n".join(lines)


def sentences(names: tuple[str, ...]) -> Iterator[dict[str, Any]]:
    """Return the rows of the named files."""
    for name in names:
        yield from tomllib.loads((SENTENCES / name).read_text(encoding="utf-8"))["sentence"]


def number(value: float) -> str:
    return f"{value:.6g}"


def told(fact: Fact) -> str:
    """Return a fact's value as the sentence files write it, in the unit that was read."""
    value = fact.value
    if isinstance(value, Measure):
        ends = [convert(end, SI[value.dimension], value.unit) for end in (value.low, value.high)]
        if value.unit == "ft" and ends[0] % 1:
            return value.text
        span = number(ends[0]) if ends[0] == ends[1] else "-".join(map(number, ends))
        unit = UNITS.get(value.unit, value.unit)
        plural = "s" if unit == "year" and ends[0] > 1 else ""
        return f"{span} {unit}{plural}"
    if isinstance(value, TubeStrength):
        return number(value.percent) + (" older" if value.older_scale else "")
    if isinstance(value, Size):
        sides = (value.length_m, value.depth_m, value.height_m)
        return "x".join(number(convert(side, "m", value.unit)) for side in sides) + f" {value.unit}"
    if isinstance(value, NoScreen):
        return "none"
    if isinstance(value, Blocks):
        return f"{number(value.fraction * 100)}%"
    if isinstance(value, Passes):
        return f"passes {number(value.fraction * 100)}%"
    if isinstance(value, Weave | PlacedReading):
        return value.text
    if isinstance(value, tuple):
        return "-".join(number(end) for end in sorted(set(value)))
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, float):
        return f"{number(value * 100)}%"
    return str(value)


def heard_in(text: str) -> Heard:
    return hear(text, kept_names())


def asked_among(heard: Heard) -> Counter[tuple[str, str]]:
    """Return the values that a question lists: a kin was named, and which of it is asked."""
    return Counter((ask.name.value, name) for ask in heard.questions for name in ask.among)


def score(names: tuple[str, ...]) -> Score:
    """Return how the sentences of the named files were heard; nothing may be heard beside."""
    result = Score()
    for row in sentences(names):
        heard = heard_in(row["text"])
        got = Counter((fact.name.value, told(fact)) for fact in heard.facts)
        wanted = Counter((name, value) for name, values in row["hear"].items() for value in values)
        got.update(asked_among(heard) & wanted - got)
        result.right.update(name for name, _ in (got & wanted).elements())
        result.wrong.update(name for name, _ in (got - wanted).elements())
        result.missed.update(name for name, _ in (wanted - got).elements())
        wrong = [f"heard {name} {value}" for name, value in (got - wanted).elements()]
        missed = [f"missed {name} {value}" for name, value in (wanted - got).elements()]
        asked = {question.name.value for question in heard.questions}
        missed += [f"did not ask {name}" for name in row.get("asks", []) if name not in asked]
        hedged = {fact.name.value for fact in heard.facts if fact.hedged}
        missed += [f"not hedged {name}" for name in row.get("hedged", []) if name not in hedged]
        if wrong or missed:
            result.slips.append(f"{row['text'][:110]!r}: {'; '.join(wrong + missed)}")
    return result
