"""What the docstrings of the science promise: parameters that exist, units, and known sources."""

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

import calc
from calc.sources import bibliography

ROOM = Path(calc.__file__).parent
_PARAMETER = re.compile(r"^(?P<names>\w+(?:, \w+)*) : (?P<told>.*(?:\n {4,}.*)*)", re.M)


def public_functions() -> Iterator[tuple[Path, ast.FunctionDef]]:
    for path in sorted(ROOM.rglob("*.py")):
        for node in ast.parse(path.read_text(encoding="utf-8")).body:
            if isinstance(node, ast.FunctionDef) and not node.name.startswith("_"):
                yield path, node


FUNCTIONS = [
    pytest.param(node, id=f"{path.relative_to(ROOM).with_suffix('')}.{node.name}")
    for path, node in public_functions()
]


def docstring(node: ast.FunctionDef) -> str:
    return ast.get_docstring(node) or ""


def section(text: str, title: str) -> str:
    found = re.search(rf"(?:^|\n){title}\n-+\n(.*?)(?=\n[A-Z][a-z]+\n-{{3,}}\n|\Z)", text, re.S)
    return found[1] if found else ""


@pytest.mark.parametrize("node", FUNCTIONS)
def test_a_public_function_opens_with_one_sentence(node: ast.FunctionDef) -> None:
    first = docstring(node).partition("\n\n")[0]
    assert first.endswith((".", ":")), first


@pytest.mark.parametrize("node", FUNCTIONS)
def test_every_parameter_told_exists_and_every_one_is_told(node: ast.FunctionDef) -> None:
    told = section(docstring(node), "Parameters")
    if not told:
        return
    names = {name for match in _PARAMETER.finditer(told) for name in match["names"].split(", ")}
    given = {a.arg for a in (*node.args.posonlyargs, *node.args.args, *node.args.kwonlyargs)}
    assert names == given


@pytest.mark.parametrize("node", FUNCTIONS)
def test_every_number_told_has_its_unit(node: ast.FunctionDef) -> None:
    numbers = {
        a.arg
        for a in (*node.args.args, *node.args.kwonlyargs)
        if a.annotation and re.match(r"(?:Real|float)\b", ast.unparse(a.annotation))
    }
    for match in _PARAMETER.finditer(section(docstring(node), "Parameters")):
        if numbers & set(match["names"].split(", ")):
            assert re.search(r"\[[^\]]+\]", match["told"]), match[0]


@pytest.mark.parametrize("node", FUNCTIONS)
def test_what_tells_parameters_tells_what_it_returns_and_its_source(node: ast.FunctionDef) -> None:
    text = docstring(node)
    if not section(text, "Parameters"):
        return
    assert section(text, "Returns")
    assert "Source" in text


@pytest.mark.parametrize("node", FUNCTIONS)
def test_every_source_named_is_in_the_bibliography(node: ast.FunctionDef) -> None:
    known = set(bibliography())
    for told in re.findall(r"Sources?: (.*?)(?:\.\s|\.$|\n\n)", docstring(node) + "\n\n", re.S):
        for part in re.split(r"[;,]| for | and ", told):
            word = part.strip().split(" ")[0].rstrip(".")
            if "_" in word or re.search(r"\d{4}", word):
                assert word in known, word
