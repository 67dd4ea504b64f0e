"""What Discord accepts as an application command."""

import unicodedata
from collections import Counter
from collections.abc import Iterable

from tests.discord.limits import Breach, Check, Json, Path_, choice_rules

__all__ = ["command_breaches", "command_characters"]

CHAT_INPUT, USER, MESSAGE = 1, 2, 3
SUB_COMMAND, SUB_COMMAND_GROUP = 1, 2
KINDS = {CHAT_INPUT: "slash commands", USER: "user commands", MESSAGE: "message commands"}


def command_breaches(commands: list[Json]) -> list[Breach]:
    """Return what is wrong with a bulk overwrite of commands."""
    check = Check()
    kinds = Counter(command.get("type", CHAT_INPUT) for command in commands)
    for kind, limit in KINDS.items():
        check.number((), kinds[kind], limit)
    names = [(command.get("type", CHAT_INPUT), command["name"]) for command in commands]
    check.rule((), len(set(names)) == len(names), "command names are unique")
    for index, command in enumerate(commands):
        _command(check, (index,), command)
    return check.breaches


def _command(check: Check, path: Path_, command: Json) -> None:
    chat = command.get("type", CHAT_INPUT) == CHAT_INPUT
    for where, name in _tongues(command, "name"):
        check.size((*path, *where), name, "command name")
        check.rule((*path, *where), not chat or _is_slash_name(name), "slash name characters")
    if chat:
        for where, text in _tongues(command, "description"):
            check.size((*path, *where), text, "command description")
    else:
        check.rule((*path, "description"), not command.get("description"), "menus say nothing")
        check.rule((*path, "options"), not command.get("options"), "menus have no options")
    check.number(path, command_characters(command), "command characters")
    _options(check, (*path, "options"), command.get("options") or [])


def _options(check: Check, path: Path_, options: list[Json]) -> None:
    check.size(path, options, "options")
    names = [option["name"] for option in options]
    check.rule(path, len(set(names)) == len(names), "option names are unique")
    required = [bool(option.get("required")) for option in options]
    check.rule(path, required == sorted(required, reverse=True), "required options come first")
    for index, option in enumerate(options):
        _option(check, (*path, index), option)


def _option(check: Check, path: Path_, option: Json) -> None:
    for where, name in _tongues(option, "name"):
        check.size((*path, *where), name, "option name")
        check.rule((*path, *where), _is_slash_name(name), "slash name characters")
    for where, text in _tongues(option, "description"):
        check.size((*path, *where), text, "option description")
    if option["type"] in (SUB_COMMAND, SUB_COMMAND_GROUP):
        _options(check, (*path, "options"), option.get("options") or [])
        return
    choices = option.get("choices") or []
    check.size((*path, "choices"), choices, "choices")
    choice_rules(check, (*path, "choices"), choices)
    both = bool(choices) and bool(option.get("autocomplete"))
    check.rule(path, not both, "choices and autocomplete exclude each other")
    if option.get("max_length") is not None:
        check.number((*path, "max_length"), option["max_length"], "option max_length")


def command_characters(part: Json) -> int:
    """Return the characters that count towards a command's 8000."""
    own = sum(
        max((len(text) for _, text in _tongues(part, key)), default=0)
        for key in ("name", "description")
    )
    options = sum(command_characters(option) for option in part.get("options") or [])
    choices = sum(
        max(len(text) for _, text in _tongues(choice, "name")) + len(str(choice["value"]))
        for choice in part.get("choices") or []
    )
    return own + options + choices


def _tongues(part: Json, key: str) -> Iterable[tuple[Path_, str]]:
    """Yield a text and its translations with their places."""
    if key in part:
        yield (key,), part[key]
    for tongue, text in (part.get(f"{key}_localizations") or {}).items():
        yield (f"{key}_localizations", tongue), text


def _is_slash_name(name: str) -> bool:
    r"""Say whether a name fits ``^[-_'\p{L}\p{N}\p{sc=Deva}\p{sc=Thai}]+$`` in lower case."""
    return name == name.lower() and all(_is_name_character(letter) for letter in name)


def _is_name_character(letter: str) -> bool:
    if letter in "-_'" or unicodedata.category(letter)[0] in "LN":
        return True
    return unicodedata.name(letter, "").startswith(("DEVANAGARI", "THAI"))
