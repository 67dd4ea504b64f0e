"""Reply → rich renderables for a person at a terminal; the same words as the plain text."""

from collections.abc import Iterable

from rich.console import Group, RenderableType
from rich.padding import Padding
from rich.panel import Panel
from rich.table import Table as Grid
from rich.text import Text

from bot.brief import brief_of, held_labels
from bot.reply import Line, Part, PartName, Reply, Role, Table

__all__ = ["render_terminal", "render_terminal_brief", "render_terminal_part"]

_WIDEST_LABEL = 36
_STYLES = {
    Role.DANGER: "bold red",
    Role.CALL: "bold red",
    Role.HEAD: "bold",
    Role.ASSUMED: "dim",
    Role.CAUTION: "yellow",
}


def render_terminal(reply: Reply) -> RenderableType:
    """Return all of the reply: the brief in a frame, every part below."""
    return Group(_framed(reply), *_parts(reply, reply.parts), *_document(reply))


def render_terminal_brief(
    reply: Reply, more: str = "More", *, sheet: bool = False
) -> RenderableType:
    """Return what is shown unasked, and a last line that says what more there is.

    ``sheet``: a care sheet opens at a word too.
    """
    opened = (part for part in reply.parts if part.name in reply.opened)
    held = held_labels(reply)
    also = f", {reply.sheet_label.lower()}" if sheet and reply.sheet else ""
    last = [Text(f"{more}: {held}{also}", style="dim")] if held else []
    return Group(_framed(reply), *_parts(reply, opened), *_document(reply), *last)


def render_terminal_part(reply: Reply, name: PartName) -> RenderableType:
    """Return one part of the reply."""
    return Group(*_parts(reply, (part for part in reply.parts if part.name is name)))


def _framed(reply: Reply) -> RenderableType:
    tone = "yellow" if reply.status == "problem" else "default"
    lines = brief_of(reply)
    steps = [line for line in lines if line.role is Role.STEP]
    body = Text("\n").join(
        Text(_lead(line, steps) + line.text, style=_STYLES.get(line.role, "")) for line in lines
    )
    return Panel(body, title=Text(reply.title), border_style=tone)


def _lead(line: Line, steps: list[Line]) -> str:
    if line.role is Role.STEP:
        return f"{steps.index(line) + 1}. "
    return "! " if line.role is Role.CAUTION else ""


def _parts(reply: Reply, parts: Iterable[Part]) -> list[RenderableType]:
    laid: list[RenderableType] = []
    for part in parts:
        # What is the answer itself needs no heading.
        if part.name not in reply.opened:
            laid.append(Text(part.label, style="bold underline"))
        if part.name is PartName.NUMBERS:
            laid += _numbers(reply)
        else:
            laid.append(_list(part))
    return laid


def _numbers(reply: Reply) -> list[RenderableType]:
    parts: list[RenderableType] = []
    if reply.rows:
        grid = Grid.grid(padding=(0, 2))
        grid.add_column(max_width=_WIDEST_LABEL)
        grid.add_column()
        for row in reply.rows:
            grid.add_row(Text(row.label, style="bold"), Text(row.text))
        parts.append(Padding(grid, (0, 1)))
    if reply.table:
        parts.append(_table(reply.table))
    return parts


def _table(table: Table) -> RenderableType:
    grid = Grid()
    for column in table.columns:
        grid.add_column(Text(column))
    for row in table.rows:
        grid.add_row(*(Text(cell) for cell in row))
    return grid


def _list(part: Part) -> RenderableType:
    numbered = part.name is PartName.STEPS
    style = "dim" if part.name is PartName.SOURCES else ""
    items = [f"{n}. {item}" if numbered else item for n, item in enumerate(part.items, 1)]
    return Padding(Text("\n").join(Text(item, style=style) for item in items), (0, 0, 1, 2))


def _document(reply: Reply) -> list[RenderableType]:
    if reply.document is None:
        return []
    return [Text(reply.document.name, style="bold underline"), Text(reply.document.text)]
