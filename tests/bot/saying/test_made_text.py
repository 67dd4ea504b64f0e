"""Nothing decides by reading text made for people: none is compared, cut or searched.

Text is made in ``bot/saying`` and laid out in ``bot/render``; whoever wants to know what an answer
says looks at its facts, its message ids, its roles and its values.
"""

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).parent.parent.parent.parent
# Where text is read that people typed, and where text for people is made or laid out.
MAY_READ = ("bot/language", "bot/words", "bot/saying", "bot/render", "bot/guide")
FILES = sorted(
    path
    for path in (ROOT / "bot").rglob("*.py")
    if not str(path.relative_to(ROOT)).startswith(MAY_READ)
)
# The fields of a reply that hold text made for people.
MADE = {"answer", "title", "label", "labels", "steps", "cautions", "why", "citation", "items"}
# The text of one line of a reply; what an asker typed has a text too.
LINES = {"row", "line", "caution", "part"}
CUTS = {
    *("split", "rsplit", "partition", "rpartition", "splitlines", "startswith", "endswith"),
    *("find", "rfind", "index", "count", "removeprefix", "removesuffix", "replace"),
}
SEARCHES = {"search", "match", "fullmatch", "findall", "finditer", "sub", "split"}


def of_made_text(node: ast.AST) -> bool:
    """Say whether an expression is text made for people, or says a message."""
    if isinstance(node, ast.Attribute):
        owner = node.value.id if isinstance(node.value, ast.Name) else ""
        return node.attr in MADE or (node.attr == "text" and owner in LINES)
    if isinstance(node, ast.Subscript):
        return of_made_text(node.value)
    if isinstance(node, ast.Call):
        func = node.func
        called = func.attr if isinstance(func, ast.Attribute) else getattr(func, "id", "")
        return called == "text" and isinstance(func, ast.Attribute)
    return isinstance(node, ast.JoinedStr) and any(
        of_made_text(part.value) for part in node.values if isinstance(part, ast.FormattedValue)
    )


def readings(tree: ast.AST) -> Iterator[str]:
    """Yield what compares, cuts or searches text made for people."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Compare):
            sides = (node.left, *node.comparators)
            # A member of an enum is no text, nor is what it is looked for in.
            typed = any(isinstance(side, ast.Attribute) and side.attr.isupper() for side in sides)
            known = any(isinstance(op, ast.Is | ast.IsNot) for op in node.ops)
            if any(map(of_made_text, sides)) and not (typed or known):
                yield ast.unparse(node)
        elif isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute):
            cut = node.func.attr in CUTS and of_made_text(node.func.value)
            searched = node.func.attr in SEARCHES and any(map(of_made_text, node.args))
            if cut or searched:
                yield ast.unparse(node)


@pytest.mark.parametrize("path", FILES, ids=lambda path: str(path.relative_to(ROOT)))
def test_no_text_made_for_people_is_read(path: Path) -> None:
    assert list(readings(ast.parse(path.read_text(encoding="utf-8")))) == []


@pytest.mark.parametrize(
    "line",
    [
        "'6 %' in reply.answer",
        "reply.title == 'Night'",
        "row.label.partition(':')[0]",
        "'vet' in line.text",
        "reply.steps[0].startswith('Call')",
        "re.search('vet', reply.answer)",
        "voice.text(say).split('. ')",
        "f'{reply.title} {reply.answer}'.count('x')",
    ],
)
def test_a_reading_of_text_is_found(line: str) -> None:
    assert list(readings(ast.parse(line)))


@pytest.mark.parametrize(
    "line", ["reply.status == 'ok'", "query.tube.text.split()", "reply.answer is None"]
)
def test_what_is_no_text_for_people_may_be_read(line: str) -> None:
    assert not list(readings(ast.parse(line)))
