"""The rules of the house, held by reading the code itself.

Who trips here: the arrows of DEVELOPERS.md say which room may import which; a module that has
grown past the size is a room to redesign, not a limit to raise.
"""

import ast
import re
import subprocess
import sys
from collections.abc import Iterator
from functools import cache
from graphlib import TopologicalSorter
from html import unescape
from pathlib import Path

import pytest

from bot.ask import ask
from bot.command import Command
from bot.commands import ALL_COMMANDS, COMMANDS
from bot.preferences import Preferences
from bot.render.html import render_html
from bot.render.terminal import render_terminal
from bot.render.text import render_text
from bot.reply import Reply, Role
from calc.sources import Kind, bibliography
from tests.arrows import ARROWS, KEEPERS

ROOT = Path(__file__).parent.parent
TOP = {"README.md", "DEVELOPERS.md", "pyproject.toml", "bot", "calc", "tests"}
MOST_LINES = 320
MOST_FUNCTION_LINES = 45


def modules() -> Iterator[tuple[str, Path]]:
    for room in ("bot", "calc"):
        for path in sorted((ROOT / room).rglob("*.py")):
            parts = path.relative_to(ROOT).with_suffix("").parts
            yield ".".join(parts[:-1] if parts[-1] == "__init__" else parts), path


def imported(tree: ast.AST) -> Iterator[str]:
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module:
            yield from (f"{node.module}.{alias.name}" for alias in node.names)


def within(name: str, prefix: str) -> bool:
    return name == prefix or name.startswith(prefix + ".")


def longest(name: str, prefixes: dict[str, tuple[str, ...]]) -> str | None:
    fitting = [prefix for prefix in prefixes if within(name, prefix)]
    return max(fitting, key=len, default=None)


MODULES = dict(modules())


@cache
def parsed(path: Path) -> ast.Module:
    return ast.parse(path.read_text(encoding="utf-8"))


def test_every_room_has_its_arrows() -> None:
    assert [name for name in MODULES if longest(name, ARROWS) is None] == ["bot"]


def test_a_room_imports_only_along_the_arrows() -> None:
    assert [f"{name} may not import {wanted}" for name in MODULES for wanted in astray(name)] == []


def astray(name: str) -> Iterator[str]:
    """Yield what a module imports although its room may not."""
    allowed = ARROWS.get(longest(name, ARROWS) or "", ())
    for wanted in imported(parsed(MODULES[name])):
        if within(wanted, "bot") or within(wanted, "calc"):
            if not any(within(wanted, a) for a in allowed):
                yield wanted
        elif not any(within(name, k) for k in KEEPERS.get(wanted.split(".")[0], (name,))):
            yield wanted


def depends(name: str) -> set[str]:
    """Return the modules of the project that a module imports, wherever it does so when it runs."""
    found = set()
    for wanted in imported(running(parsed(MODULES[name]))):
        while wanted and wanted not in MODULES:
            wanted = wanted.rpartition(".")[0]
        found.add(wanted)
    return found - {name, ""}


def running(tree: ast.Module) -> ast.Module:
    """Return a module without what is only looked at for types."""
    body = [n for n in tree.body if not (isinstance(n, ast.If) and "TYPE_CHECKING" in ast.dump(n))]
    return ast.Module(body, [])


def test_no_module_imports_itself_by_way_of_others() -> None:
    order = TopologicalSorter({name: depends(name) for name in MODULES})
    order.prepare()


def files_of_size() -> list[Path]:
    tests = sorted((ROOT / "tests").rglob("*.py"))
    return [*MODULES.values(), *tests]


def test_no_module_and_no_function_is_too_long() -> None:
    assert [
        f"{path.relative_to(ROOT)}: {one}" for path in files_of_size() for one in long(path)
    ] == []


def long(path: Path) -> Iterator[str]:
    """Yield what is too long in a file, with its lines."""
    text = path.read_text(encoding="utf-8")
    if len(text.splitlines()) > MOST_LINES:
        yield f"{len(text.splitlines())} lines"
    for node in ast.walk(ast.parse(text)):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
            behind = node.body[1:] if ast.get_docstring(node) else []
            start = behind[0].lineno if behind else node.lineno
            length = (node.end_lineno or start) - start + 1
            if length > MOST_FUNCTION_LINES:
                yield f"{node.name} has {length} lines"


def test_the_top_level_is_as_designed() -> None:
    listed = subprocess.run(
        ["git", "ls-files"], cwd=ROOT, capture_output=True, text=True, check=True
    ).stdout
    tops = {line.split("/")[0] for line in listed.splitlines()}
    assert {top for top in tops if not top.startswith(".")} == TOP


def test_nothing_heavy_is_imported_by_the_door() -> None:
    heavy = ("discord", "matplotlib", "scipy", "sqlalchemy", "prompt_toolkit", "rich", "aiohttp")
    code = f"import sys, bot.ask; print([m for m in {heavy!r} if m in sys.modules])"
    done = subprocess.run(
        [sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=True
    )
    assert done.stdout.strip() == "[]"


def test_question_names_are_unique_and_documented() -> None:
    names = [command.name for command in ALL_COMMANDS]
    assert len(set(names)) == len(names)
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    for name in names:
        assert f"`{name}`" in readme, f"README.md does not tell of {name}"


@pytest.mark.parametrize("command", ALL_COMMANDS, ids=lambda c: c.name)
def test_every_question_and_what_it_needs_has_an_example(command: Command) -> None:
    assert command.examples
    for option in command.query.options():
        assert option.example or not option.required, option.name


def digits(text: str) -> list[str]:
    return sorted(re.findall(r"\d+(?:[.,]\d+)?", text))


def terminal_text(reply: Reply) -> str:
    from rich.console import Console

    console = Console(width=500, no_color=True)
    with console.capture() as capture:
        console.print(render_terminal(reply))
    return capture.get()


def html_text(reply: Reply) -> str:
    """Return what a browser shows: the text, and the numbers it puts before the steps."""
    steps = [line for line in reply.brief if line.role is Role.STEP]
    text = unescape(re.sub(r"<[^>]*>", " ", render_html(reply)))
    return " ".join(
        [text, *(str(n) for some in (steps, reply.steps) for n, _ in enumerate(some, 1))]
    )


EXAMPLES = [example for command in COMMANDS for example in command.examples]


@pytest.mark.parametrize("line", EXAMPLES)
def test_every_example_is_answered_with_the_same_digits_by_every_renderer(line: str) -> None:
    reply = ask(line, Preferences())
    assert reply.status == "ok", reply.answer
    assert line.startswith("ask ") or reply.command == line.split()[0]
    plain = digits(render_text(reply, width=10_000))
    assert digits(terminal_text(reply)) == plain
    assert digits(html_text(reply)) == plain


def test_every_source_is_told_in_full() -> None:
    for entry in bibliography().values():
        assert len(entry.citation) > 10, entry.key
        assert entry.kind in Kind
