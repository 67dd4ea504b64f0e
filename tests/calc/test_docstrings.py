"""What the docstrings of the science promise: parameters that exist, units, and known sources."""

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import calc
from calc.sources import bibliography

ROOM = Path(calc.__file__).parent
_PARAMETER = re.compile(r"^(?P<names>\w+(?:, \w+)*) : (?P<told>.*(?:\n {4,}.*)*)", re.M)


def public_functions() -> Iterator[tuple[Path, ast.FunctionDef]]:
    for path in sorted(ROOM.rglob("*.py")):
        for node in ast.parse(path.read_text(encoding="utf-8")).body:
            if isinstance(node, ast.FunctionDef) and not node.name.startswith("_"):
                yield path, node


FUNCTIONS = {
    f"{path.relative_to(ROOM).with_suffix('')}.{node.name}": node
    for path, node in public_functions()
}


def docstring(node: ast.FunctionDef) -> str:
    return ast.get_docstring(node) or ""


def section(text: str, title: str) -> str:
    found = re.search(rf"(?:^|\n){title}\n-+\n(.*?)(?=\n[A-Z][a-z]+\n-{{3,}}\n|\Z)", text, re.S)
    return found[1] if found else ""


def test_a_public_function_opens_with_one_sentence() -> None:
    firsts = {name: docstring(node).partition("\n\n")[0] for name, node in FUNCTIONS.items()}
    assert {n: first for n, first in firsts.items() if not first.endswith((".", ":"))} == {}


def test_every_parameter_told_exists_and_every_one_is_told() -> None:
    wrong = {}
    for name, node in FUNCTIONS.items():
        told = section(docstring(node), "Parameters")
        names = {one for match in _PARAMETER.finditer(told) for one in match["names"].split(", ")}
        given = {a.arg for a in (*node.args.posonlyargs, *node.args.args, *node.args.kwonlyargs)}
        if told and names != given:
            wrong[name] = names ^ given
    assert wrong == {}


def test_every_number_told_has_its_unit() -> None:
    assert {n: found for n, node in FUNCTIONS.items() if (found := list(without_unit(node)))} == {}


def without_unit(node: ast.FunctionDef) -> Iterator[str]:
    """Yield what is told of a number without its unit."""
    numbers = {
        a.arg
        for a in (*node.args.args, *node.args.kwonlyargs)
        if a.annotation and re.match(r"(?:Real|float)\b", ast.unparse(a.annotation))
    }
    for match in _PARAMETER.finditer(section(docstring(node), "Parameters")):
        is_number = numbers & set(match["names"].split(", "))
        if is_number and not re.search(r"\[[^\]]+\]", match["told"]):
            yield match[0]


def test_what_tells_parameters_tells_what_it_returns_and_its_source() -> None:
    texts = {name: docstring(node) for name, node in FUNCTIONS.items()}
    telling = {name: text for name, text in texts.items() if section(text, "Parameters")}
    assert telling
    assert [name for name, text in telling.items() if not section(text, "Returns")] == []
    assert [name for name, text in telling.items() if "Source" not in text] == []


def test_every_source_named_is_in_the_bibliography() -> None:
    known = set(bibliography())
    named = {(name, key) for name, node in FUNCTIONS.items() for key in keys_in(docstring(node))}
    assert len(named) > 100
    assert {(name, key) for name, key in named if key not in known} == set()


def keys_in(text: str) -> Iterator[str]:
    """Yield the keys of sources that a docstring names."""
    for told in re.findall(r"Sources?: (.*?)(?:\.\s|\.$|\n\n)", text + "\n\n", re.S):
        for part in re.split(r"[;,]| for | and ", told):
            word = part.strip().split(" ")[0].rstrip(".")
            if "_" in word or re.search(r"\d{4}", word):
                yield word
