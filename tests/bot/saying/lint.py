"""What messages use, against the type hints of the facts; and which messages the code says."""

import ast
import importlib
import re
from collections.abc import Iterator
from datetime import date, time
from enum import Enum
from functools import cache
from pathlib import Path
from types import ModuleType, UnionType
from typing import Annotated, Any, Union, get_args, get_origin, get_type_hints

from bot.facts import Digits, Moment, Name, Say
from bot.preferences import FIRST
from bot.saying.compile import KINDS, Used
from bot.saying.words import Words
from bot.saying.words import words as words_of

ROOT = Path(__file__).parent.parent.parent.parent
PLURALS = {"one", "other"}
# The rooms that say messages.
SAYING = (
    "bot/command_line.py",
    "bot/questions",
    "bot/saying",
    "bot/said_first.py",
    "bot/dangers",
    "bot/dialogue",
    "bot/problems.py",
    "bot/operating/checkup.py",
    "bot/operating/settings_told.py",
    "bot/language",
    "bot/queries",
    "bot/command_asked.py",
    "bot/ask.py",
    "bot/each_animal.py",
    "bot/refusal.py",
    "bot/understood.py",
    "bot/outside.py",
    "bot/around.py",
    "bot/unread.py",
    "bot/routes",
    "bot/linking.py",
    "bot/menu.py",
    "bot/fronts",
)
# Their templates say messages too: say("page-all").
TEMPLATES = ("bot/fronts/pages/templates", "bot/render/templates")
SAID = re.compile(r'say\("([\w-]+)"\)')
# They say messages, and what they keep are no facts of theirs.
WITHOUT_FACTS = ("bot.language.", "bot.queries.")
FACTS_OF_LANGUAGE = "bot.language.wanted"
HEADED = re.compile(r"^### Facts: (.*)$", re.M)
ONLY = re.compile(r"Only with: (.*)")


def modules() -> Iterator[tuple[Path, ModuleType]]:
    for room in SAYING:
        path = ROOT / room
        for file in sorted(path.rglob("*.py")) if path.is_dir() else [path] * path.exists():
            parts = file.relative_to(ROOT).with_suffix("").parts
            name = ".".join(parts[:-1] if parts[-1] == "__init__" else parts)
            yield file, importlib.import_module(name)


@cache
def facts_classes() -> dict[str, list[type]]:
    """Return every dataclass of the rooms that say messages by its name."""
    found: dict[str, list[type]] = {}
    for _, module in modules():
        if module.__name__.startswith(WITHOUT_FACTS) and module.__name__ != FACTS_OF_LANGUAGE:
            continue
        for name, thing in vars(module).items():
            if not isinstance(thing, type) or thing.__module__ != module.__name__:
                continue
            if hasattr(thing, "__dataclass_fields__"):
                found.setdefault(name, []).append(thing)
    return found


@cache
def hints(facts: type) -> dict[str, Any]:
    found = get_type_hints(facts, include_extras=True)
    for name in dir(facts):
        told = getattr(facts, name)
        if isinstance(told, property) and told.fget:
            found[name] = get_type_hints(told.fget, include_extras=True)["return"]
    return found


def split(hint: Any) -> tuple[Any, bool]:
    """Return the type of a fact that is known, and whether it may be unknown."""
    if get_origin(hint) in (Union, UnionType):
        kept = tuple(h for h in get_args(hint) if h is not type(None))
        return kept[0] if len(kept) == 1 else Union[kept], len(kept) < len(get_args(hint))  # noqa: UP007
    return hint, False


def classes_of(words: Words, stem: str) -> list[type]:
    """Return the facts that a file says its messages are about."""

    head = HEADED.search(words_of(FIRST).text(stem))
    found = [facts_classes()[name.strip()] for name in head[1].split(",")] if head else []
    twice = [classes[0].__name__ for classes in found if len(classes) > 1]
    assert not twice, f"{stem}: two classes of facts have the same name: {twice}"
    return [only for (only,) in found]


def needed(words: Words, key: str) -> dict[str, set[tuple[str, bool]]]:
    """Return the facts that a message needs, those of the messages it says included."""
    used: Used = words.used[key]
    found = {name: set(ways) for name, ways in used.facts.items()}
    for other, known in used.messages.items():
        if other.startswith("list-"):
            continue
        for name, ways in needed(words, other).items():
            more = {(way, guarded or name in known) for way, guarded in ways}
            found.setdefault(name, set()).update(more)
    return found


def fitting(words: Words, key: str) -> list[type]:
    """Return the facts that have all that a message needs."""
    stem = words.stem_of(key)
    wanted = needed(words, key).keys()
    return [c for c in classes_of(words, stem) if wanted <= hints(c).keys()]


MACHINERY = ("figures", "list", "own")


def faults(words: Words) -> list[str]:
    """Return a line for every message that could be said wrongly."""
    out: list[str] = []
    for key, used in words.used.items():
        if words.stem_of(key) in MACHINERY or not needed(words, key):
            continue
        fit = fitting(words, key)
        if not fit:
            known = [c.__name__ for c in classes_of(words, words.stem_of(key))]
            out.append(f"{used.where}: {key}: {sorted(needed(words, key))} is not in {known}")
            continue
        told = ONLY.search(words.comment(key))
        only = set(re.findall(r"\$(\w+)", told[1])) if told else set[str]()
        told_of = sorted((list(_against(words, key, hints(c), only)) for c in fit), key=len)
        out += told_of[0]
    return out


def _against(words: Words, key: str, types: dict[str, Any], only: set[str]) -> Iterator[str]:
    where = f"{words.used[key].where}: {key}"
    for name, ways in needed(words, key).items():
        hint, optional = split(types[name])
        for way, guarded in ways:
            if way.startswith("select:"):
                never = _never(set(way[7:].split(",")), hint, optional)
                if never:
                    yield f"{where}: ${name} is never {sorted(never)}"
                continue
            if optional and not guarded and name not in only:
                yield f"{where}: ${name} may be unknown: ask it, or write 'Only with: ${name}'"
            if not _tellable(way, hint):
                yield f"{where}: {way}(${name}) but ${name} is {hint}"


def _tellable(way: str, hint: Any) -> bool:
    if way in KINDS:
        return get_origin(hint) is Annotated and get_args(hint)[1] is KINDS[way]
    if way == "LIST":
        return get_origin(hint) is tuple and get_args(hint)[0] in (str, Say, str | Say, Name)
    return (
        hint
        in {
            "plain": (str, Say, str | Say, int),
            "CAP": (str, Say, Name),
            "NAME": (Name,),
            "DAY": (date,),
            "CLOCK": (time,),
            "DIGITS": (Digits,),
            "MOMENT": (Moment,),
        }[way]
    )


def _never(asked: set[str], hint: Any, optional: bool) -> set[str]:
    """Return the variants that a fact can never choose."""
    if hint is int:
        can = PLURALS | {a for a in asked if a.isdigit()}
    elif hint is bool:
        can = {"yes", "no"}
    elif isinstance(hint, type) and issubclass(hint, Enum):
        # ``other`` is how a file says "whatever else".
        can = {member.name.lower() for member in hint} | {"other"}
    else:
        can = {"some"}
    return asked - can - ({"none"} if optional else set())


def said_ids() -> tuple[set[str], dict[str, set[str]]]:
    """Return the ids that the code says, and its families with the members of their enums."""
    ids: set[str] = set()
    families: dict[str, set[str]] = {}
    for path, module in modules():
        tree = ast.parse(path.read_text(encoding="utf-8"))
        for scope in ast.walk(tree):
            if isinstance(scope, ast.FunctionDef | ast.AsyncFunctionDef | ast.Module):
                _read_scope(scope, module, ids, families)
    for room in TEMPLATES:
        for path in sorted((ROOT / room).glob("*.html")):
            ids |= set(SAID.findall(path.read_text(encoding="utf-8")))
    return ids, families


def _read_scope(
    scope: ast.FunctionDef | ast.AsyncFunctionDef | ast.Module,
    module: ModuleType,
    ids: set[str],
    families: dict[str, set[str]],
) -> None:
    # One question of several in a module must not lend its name to the functions of another.
    assigned = scope.body if isinstance(scope, ast.Module) else ast.walk(scope)
    prefixes = {
        node.targets[0].id: f"{_literal(node.value.args[0])}-"
        for node in assigned
        if isinstance(node, ast.Assign)
        and isinstance(node.targets[0], ast.Name)
        and isinstance(node.value, ast.Call)
        and isinstance(node.value.func, ast.Name)
        and node.value.func.id == "Says"
    }
    given = [] if isinstance(scope, ast.Module) else [*scope.args.args, *scope.args.kwonlyargs]
    arguments = {a.arg: a.annotation for a in given}
    prefixes |= {
        name: f"{_prefix_of(module)}-"
        for name, hint in arguments.items()
        if isinstance(hint, ast.Name) and hint.id == "Says"
    }
    for node in ast.walk(scope):
        if not isinstance(node, ast.Call):
            continue
        func = node.func
        if isinstance(func, ast.Name) and func.id == "Say":
            ids |= _literals(node.args[0])
        elif isinstance(func, ast.Name) and func.id in prefixes:
            ids |= {prefixes[func.id] + text for text in _literals(node.args[0])}
        elif isinstance(func, ast.Attribute) and func.attr == "of":
            if isinstance(func.value, ast.Name) and func.value.id == "Say":
                families.setdefault(_literal(node.args[0]), set())
        elif isinstance(func, ast.Attribute) and func.attr == "by":
            if not isinstance(func.value, ast.Name):
                continue
            if func.value.id == "Say" or func.value.id in prefixes:
                family = prefixes.get(func.value.id, "") + _literal(node.args[0])
                members = _members(node.args[1], arguments, module)
                families.setdefault(family, set()).update(members)


def _prefix_of(module: ModuleType) -> str:
    """Return the question that a module's helpers say messages of: its ``Says`` literal."""
    tree = ast.parse(Path(str(module.__file__)).read_text(encoding="utf-8"))
    made = {
        _literal(node.args[0])
        for node in ast.walk(tree)
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "Says"
    }
    assert len(made) == 1, f"{module.__name__}: a Says that is passed on belongs to one question"
    return made.pop()


def _literal(node: ast.AST) -> str:
    assert isinstance(node, ast.Constant), f"an id is written out: {ast.unparse(node)}"
    assert isinstance(node.value, str)
    return node.value


def _literals(node: ast.AST) -> set[str]:
    """Return the ids of a literal, or of a choice between literals."""
    if isinstance(node, ast.IfExp):
        return _literals(node.body) | _literals(node.orelse)
    return {_literal(node)}


def _members(node: ast.AST, arguments: dict[str, ast.expr | None], module: ModuleType) -> set[str]:
    """Return the members of the enum that a family is chosen by, where the hints tell it."""
    if not (isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name)):
        return set()
    annotation = arguments.get(node.value.id)
    owner = vars(module).get(annotation.id) if isinstance(annotation, ast.Name) else None
    if owner is None or node.attr not in hints(owner):
        return set()
    hint, _ = split(hints(owner)[node.attr])
    assert isinstance(hint, type), node.attr
    assert issubclass(hint, Enum), f"a family is chosen by an enum, not by {hint}"
    return {member.name.lower() for member in hint}
