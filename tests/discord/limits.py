"""The documented limits of Discord's API, and how a breach of one is told.

The numbers are in limits.toml, each with its source; the rules that use them are in
command_limits.py and message_limits.py.
"""

import tomllib
from collections.abc import Sized
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path
from typing import Any

__all__ = ["Breach", "Check", "Json", "Limit", "autocomplete_breaches", "form_errors", "limits"]

Json = dict[str, Any]
Path_ = tuple[str | int, ...]


@dataclass(frozen=True)
class Limit:
    """One documented limit; both ends are allowed."""

    name: str
    most: int
    source: str
    least: int = 0


@cache
def limits() -> dict[str, Limit]:
    """Return the table by name."""
    table = tomllib.loads(Path(__file__).with_name("limits.toml").read_text(encoding="utf-8"))
    rows = [Limit(**row) for row in table["limit"]]
    return {row.name: row for row in rows}


@dataclass(frozen=True)
class Breach:
    """A payload breaks a rule at a place; ``rule`` is the limit's name or a rule in words."""

    path: Path_
    rule: str
    sentence: str


@dataclass
class Check:
    """Collects the breaches found on a walk through one payload."""

    breaches: list[Breach] = field(default_factory=list)

    def size(self, path: Path_, value: Sized | None, name: str) -> None:
        """Check the length of a text or list; a missing one has length 0."""
        self.number(path, 0 if value is None else len(value), name)

    def number(self, path: Path_, value: int, name: str) -> None:
        """Check a number against a limit's two ends."""
        limit = limits()[name]
        if not limit.least <= value <= limit.most:
            sentence = f"Must be between {limit.least} and {limit.most} in length, is {value}."
            self.breaches.append(Breach(path, name, sentence))

    def rule(self, path: Path_, kept: bool, rule: str) -> None:
        """Check a rule that is not a number."""
        if not kept:
            self.breaches.append(Breach(path, rule, f"Breaks the rule: {rule}."))


def autocomplete_breaches(choices: list[Json]) -> list[Breach]:
    """Return what is wrong with the answer to an autocomplete."""
    check = Check()
    check.size(("choices",), choices, "autocomplete choices")
    choice_rules(check, ("choices",), choices)
    return check.breaches


def choice_rules(check: Check, path: Path_, choices: list[Json]) -> None:
    """Check the names and values of choices."""
    for index, choice in enumerate(choices):
        here = (*path, index)
        check.size((*here, "name"), choice["name"], "choice name")
        for tongue, name in (choice.get("name_localizations") or {}).items():
            check.size((*here, "name_localizations", tongue), name, "choice name")
        if isinstance(choice["value"], str):
            check.size((*here, "value"), choice["value"], "choice value")
    names = [choice["name"] for choice in choices]
    check.rule(path, len(set(names)) == len(names), "choice names are unique")


def form_errors(breaches: list[Breach]) -> Json:
    """Return the body that Discord answers an invalid form with (code 50035)."""
    tree: Json = {}
    for breach in breaches:
        node = tree
        for step in breach.path:
            node = node.setdefault(str(step), {})
        error = {"code": "LIMIT", "message": breach.sentence}
        node.setdefault("_errors", []).append(error)
    return {"code": 50035, "message": "Invalid Form Body", "errors": tree}
