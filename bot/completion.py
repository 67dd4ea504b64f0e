"""What could be typed next: values of an option, and the rest of a console line."""

import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from types import MappingProxyType

from bot import guide
from bot.commands import ALL_COMMANDS, command_at, command_named
from bot.language.names import ranked
from bot.language.uv_lamps import UvLamp
from bot.language.zones import zone_names
from bot.menu import STORED_GROUPS
from bot.preferences import LANGUAGES
from bot.queries.query import QueryOption
from calc.animals import animals
from calc.heat.sources_of_heat import heat_source_names

__all__ = ["complete", "complete_line", "values_of"]

_MOST = 25
# What of a list is told already, and the last of it.
_LAST = re.compile(r"(.*[;,])\s*(.*)", re.S)
_USUAL_TUBES = ("12%", "6%", "14%", "10%", "8%", "4%", "2%", "10", "5")
# The usual ones first, then every other that is read.
_TUBES = tuple(dict.fromkeys((*_USUAL_TUBES, *(f"{strength}%" for strength in range(1, 16)))))
_SCREENS = (
    "none",
    "blocks 45%",
    "blocks 30%",
    "passes 55%",
    "18x16 0.011in",
    "18 mesh 0.009in",
    "8 mesh 0.017in",
)
_THERMOMETERS = (
    "infrared gun and digital probe",
    "infrared gun",
    "digital probe",
    "dial or strip",
)
_LATITUDES = ("home", "30S", "0", "30N", "40N", "50N")

_NOTHING: Mapping[str, Sequence[str]] = MappingProxyType({})
_LISTS: dict[str, Callable[[], tuple[str, ...]]] = {
    "animal": lambda: tuple(animal.name for animal in animals().values()),
    "tube": lambda: _TUBES,
    "uv_lamp": lambda: tuple(kind.value for kind in UvLamp),
    "screen": lambda: _SCREENS,
    "heat_source": heat_source_names,
    "thermometer": lambda: _THERMOMETERS,
    "latitude": lambda: _LATITUDES,
    "zone": zone_names,
    "page": lambda: tuple(page.slug for page in guide.pages()),
    "command": lambda: (*ALL_COMMANDS.names, *STORED_GROUPS),
}


_NO_NAMES: Mapping[str, str] = MappingProxyType({})
# Other names by which a value is found: name → value.
_ALSO: dict[str, Callable[[], Mapping[str, str]]] = {
    "page": lambda: {
        worry: slug for language in LANGUAGES for worry, slug in guide.worries(language).items()
    },
}


def complete(
    command: str, option: str, typed: str, offers: Mapping[str, Sequence[str]] = _NOTHING
) -> list[str]:
    """Return up to 25 values that could complete an option; an empty list when none is known.

    ``offers`` are the asker's and the group's own values by kind, which come first.
    """
    found = command_named(command)
    facts = next((o for o in found.query.options() if o.name == option), None) if found else None
    return _offered(typed, facts, offers) if facts else []


def values_of(command: str, option: str) -> tuple[str, ...]:
    """Return every value that is listed for an option; none where it takes a figure or words."""
    found = command_named(command)
    facts = next((o for o in found.query.options() if o.name == option), None) if found else None
    return _values(facts, _NOTHING) if facts else ()


def complete_line(
    line: str, offers: Mapping[str, Sequence[str]] = _NOTHING
) -> tuple[int, list[str]]:
    """Return where the unfinished part of a console line starts, and what could stand there."""
    bare = line.removeprefix("/")
    found = command_at(bare)
    if found is None or not bare.lower().startswith(f"{found[0].name} "):
        known = [name for name in ALL_COMMANDS.names if name.startswith(bare.lower())]
        return len(line) - len(bare), known
    command = found[0]
    rest = bare[len(command.name) + 1 :]
    options = {option.name: option for option in command.query.options()}
    word = re.split(r"\s", line)[-1]
    named = list(re.finditer(rf"(?<!\S)({'|'.join(options) or '(?!)'})[:=]", rest))
    used = {match[1] for match in named}
    names = [f"{name}:" for name in options if name not in used and name.startswith(word)]
    if named and not line.endswith(" "):
        typed = rest[named[-1].end() :]
        values = _offered(typed, options[named[-1][1]], offers)
        if values and not (names and " " in typed):
            return len(line) - len(typed), values
    free = options.get(command.positional)
    if free is not None and not named:
        names = _offered(rest, free, offers) or names
        word = rest
    return len(line) - len(word), names


def _offered(typed: str, facts: QueryOption, offers: Mapping[str, Sequence[str]]) -> list[str]:
    """Return the values that what is typed may mean, also by another name of theirs."""
    if facts.several and (parted := _LAST.match(typed)):
        told, last = parted.groups()
        found = _offered(last, replace(facts, several=False), offers)
        return [f"{told} {name}" for name in found]
    also = _ALSO.get(facts.completes, dict)() if typed.strip() else _NO_NAMES
    found = ranked(typed, (*_values(facts, offers), *also), _MOST)
    return list(dict.fromkeys(also.get(name, name) for name in found))


def _values(facts: QueryOption, offers: Mapping[str, Sequence[str]]) -> tuple[str, ...]:
    if facts.choices:
        return facts.choices
    listed = _LISTS.get(facts.completes, tuple)()
    return (*offers.get(facts.completes, ()), *listed)
