"""Reply → rich renderables for a person at a terminal; the same words as the plain text."""

from rich.console import Group, RenderableType
from rich.padding import Padding
from rich.panel import Panel
from rich.table import Table as Grid
from rich.text import Text

from bot.reply import Reply, Table

__all__ = ["render_terminal"]


def render_terminal(reply: Reply) -> RenderableType:
    """Return the reply laid out for a terminal: the answer in a frame, the rest below."""
    tone = "yellow" if reply.status == "problem" else "default"
    parts: list[RenderableType] = [
        Panel(Text(reply.answer, style="bold"), title=Text(reply.title), border_style=tone)
    ]
    acts = _list("Do this", [f"{n}. {step}" for n, step in enumerate(reply.steps, 1)])
    # In danger nobody reads figures before what is to be done.
    parts += [*acts, *_told(reply)] if reply.dangers else [*_told(reply), *acts]
    parts += _list("Take care", list(reply.cautions))
    parts += _list("Read more", [f"{p.title}: {p.url or f'guide {p.slug}'}" for p in reply.guide])
    parts += _list("Sources", [f"{s.citation} [{s.kind}]" for s in reply.sources], "dim")
    if reply.document:
        parts += [Text(reply.document.name, style="bold underline"), Text(reply.document.text)]
    return Group(*parts)


def _told(reply: Reply) -> list[RenderableType]:
    parts: list[RenderableType] = []
    if reply.rows:
        grid = Grid.grid(padding=(0, 2))
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


def _list(heading: str, lines: list[str], style: str = "") -> list[RenderableType]:
    if not lines:
        return []
    body = Text("\n").join(Text(line, style=style) for line in lines)
    return [Text(heading, style="bold underline"), Padding(body, (0, 0, 1, 2))]
