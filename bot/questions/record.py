"""What a question says of itself beside its module, without importing what it reckons with.

``night.toml`` stands by ``night.py``: what heard in free words fills which option, what is asked
for where an option is missing, which figures of an animal suit as examples, and the guide page.
What an option is asked for with in every question stands in ``options.toml``.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cache
from importlib import import_module
from typing import Any

from bot.facts import Say
from bot.language.units import Units
from bot.menu import MODULES
from bot.preferences import Language
from bot.queries.query import Query
from calc.tables import ROOT, read_table

__all__ = ["AskedFor", "Record", "Sample", "record_of"]


@dataclass(frozen=True, slots=True)
class Sample:
    """Free words that ask a question, and all the options that must be heard in them."""

    say: str
    given: Mapping[str, str] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class AskedFor:
    """How an option is asked for: as what, where to find it out, and words that tell it."""

    what: str
    page: str = ""
    inches: str = ""
    cm: str = ""
    de: str = ""

    @property
    def say(self) -> Say:
        """Return what is asked for, as a clause."""
        return Say.of("lack", self.what)

    def words(self, language: Language, units: Units) -> str:
        """Return words that tell it, in the asker's language and unit."""
        if language == "de":
            return self.de
        return (self.cm if units is Units.CM else "") or self.inches


@dataclass(frozen=True, slots=True)
class Record:
    """One question.

    ``fills`` names for each option what may be heard of it, the surest first; None where nobody
    asks the question in free words. ``other_lamp`` are the options that count for a UV lamp
    that is no T5 HO tube, ``least`` those without which there is nothing to answer though none
    is required, ``least_in`` those of them that are words, by language, ``suits`` the figures
    of an animal that its examples are made from.
    ``needs_animal``: its answer is another for each animal, though it reads without one.
    ``page_first``: a guide page answers better where it is asked why.
    """

    query: str = ""
    page: str = ""
    fills: Mapping[str, tuple[str, ...]] | None = None
    other_lamp: tuple[str, ...] = ()
    least: Mapping[str, str] = field(default_factory=dict)
    least_in: Mapping[str, Mapping[str, str]] = field(default_factory=dict)
    suits: Mapping[str, str] = field(default_factory=dict)
    lacks: Mapping[str, AskedFor] = field(default_factory=dict)
    samples: tuple[Sample, ...] = ()
    needs_animal: bool = False
    page_first: bool = False

    @property
    def model(self) -> type[Query]:
        """Return the model of the question."""
        module, _, name = self.query.partition(".")
        model: type[Query] = getattr(import_module(f"bot.queries.{module}"), name)
        return model

    def lack(self, option: str) -> AskedFor:
        """Return how an option is asked for."""
        return self.lacks.get(option) or _options().get(option) or AskedFor(option)


@cache
def record_of(name: str) -> Record:
    """Return what a question says of itself; nothing where it has no file."""
    told = _read(*MODULES[name].split(".")[1:-1], f"{name}.toml")
    told["fills"] = _heard(told["fills"]) if "fills" in told else None
    told["other_lamp"] = tuple(told.get("other_lamp", ()))
    told["samples"] = tuple(Sample(**row) for row in told.get("samples", ()))
    return Record(**(told | {"lacks": _lacks(told.get("lacks", {}))}))


@cache
def _options() -> Mapping[str, AskedFor]:
    return _lacks(_read("questions", "options.toml"))


def _heard(fills: Mapping[str, Any]) -> dict[str, tuple[str, ...]]:
    return {o: (one,) if isinstance(one, str) else tuple(one) for o, one in fills.items()}


def _lacks(rows: Mapping[str, Any]) -> dict[str, AskedFor]:
    return {option: AskedFor(**({"what": option} | row)) for option, row in rows.items()}


def _read(*path: str) -> dict[str, Any]:
    found = ROOT.joinpath("bot", *path)
    return read_table(found) if found.is_file() else {}
