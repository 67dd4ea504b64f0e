"""Who is spoken to: a language and the unit that stands first. Made last, by the door."""

from datetime import date, time
from functools import cache
from typing import Any
from zoneinfo import ZoneInfo

from bot.facts import Digits, Figure, Moment, Name, Say
from bot.language.units import Units
from bot.saying.compile import WordsError
from bot.saying.figures import Manners, other_than, said_figure
from bot.saying.words import Words, words

__all__ = ["Voice", "voice"]

_NO_BREAK = "\u00a0"


class _Holes:
    """Stands for the facts of a message that says how figures or lists are put together."""

    first, second, third = "{0}", "{1}", "{2}"


class _Slots:
    """Says the places of a template as they are."""

    def plain(self, value: Any, name: str) -> str:
        """Return the place."""
        return str(value)


class Voice:
    """Says messages in one language, with one system of units first."""

    def __init__(self, told: Words, units: Units) -> None:
        self.words, self.units = told, units
        parts = ("decimal", "span", "both", "doubt")
        self._manners = Manners(*(self._template(f"figures-{part}") for part in parts))

    @property
    def language(self) -> str:
        """Return the language that is spoken."""
        return self.words.language

    def _template(self, key: str) -> str:
        slots: Any = _Slots()
        return self.words.spoken(key)(_Holes, slots)

    def say(self, say: Say) -> str:
        """Return a message in words."""
        return self.words.say(say, self)

    def text(self, say: Say) -> str:
        """Return a message as a reply holds it: with no space that must not break."""
        return self.say(say).replace(_NO_BREAK, " ")

    def plain(self, value: Any, name: str) -> str:
        """Return a text, a count or another message."""
        if type(value) is Say:
            return self.say(value)
        if isinstance(value, str) or type(value) is int:
            return str(value)
        raise WordsError(f"${name} cannot be said plainly: {value!r}")

    def figure(self, value: Figure, form: str, alone: bool) -> str:
        """Return a figure in a form, in one unit or both."""
        return said_figure(value, form, self.units, self._manners, alone=alone)

    def second(self, value: Figure, form: str) -> str:
        """Return a figure in a form, in the unit that stands in brackets alone."""
        return said_figure(value, form, other_than(self.units), self._manners, alone=True)

    def name(self, value: Name, form: str) -> str:
        """Return the name of a thing in a form."""
        suffix = f".{form}" if form else ""
        if value.own:
            return self.words.spoken(f"-own{suffix}")(value, self)
        return self.words.spoken(f"-{value.key}{suffix}")(None, self)

    def day(self, value: date) -> str:
        """Return a day of the calendar."""
        month = self.words.spoken(f"figures-month-{value.month}")(None, self)
        return self._template("figures-day").format(value.day, month, value.year)

    def clock(self, value: time) -> str:
        """Return a time of day, such as ``08:00``: English and German share it."""
        return f"{value:%H:%M}"

    def moment(self, value: Moment) -> str:
        """Return a moment on the clock of its zone."""
        local = value.at.astimezone(ZoneInfo(value.zone))
        told = self.day(local.date()), self.clock(local.time()), value.zone
        return self._template("figures-moment").format(*told)

    def digits(self, value: Digits) -> str:
        """Return a plain number, without a minus before zero."""
        text = f"{value.value:.{value.decimals}f}"
        text = text.rstrip("0").rstrip(".") if "." in text else text
        return "0" if text == "-0" else text.replace(".", self._manners.decimal)

    def listed(self, texts: list[str], join: str) -> str:
        """Return texts as a list."""
        if len(texts) < 2:
            return "".join(texts)
        between = f"{join}-between"
        comma = self._template(between if between in self.words else "list-comma")
        return self._template(join).format(comma.join(texts[:-1]), texts[-1])

    def referred(self, key: str, facts: Any) -> str:
        """Return another message about the same facts."""
        return self.words.spoken(key)(facts, self)

    def plural(self, count: int) -> str:
        """Return the plural form that a count takes: English and German share their rule."""
        return "one" if count == 1 else "other"


@cache
def voice(language: str, units: Units) -> Voice:
    """Return the voice of a language and a unit."""
    return Voice(words(language), units)
