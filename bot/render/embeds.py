"""Reply → Discord embeds: the answer first, within every limit, no caution ever cut.

What does not fit is left out line by line, the least needed first (sources, then pages, table,
rows, steps), and the reader is told how much. The query as understood stands in the footer.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace

import discord

from bot.render.escaping import escape, escape_code, units_long
from bot.reply import Reply, Row, SourceLine, Table

__all__ = ["ASKED", "render_embeds"]

ASKED = "Asked: "

_TITLE, _DESCRIPTION, _TOTAL = 256, 4096, 6000
_FOOTER = 1000
_LINE = 1024
# A phone shows about this many monospaced characters in an embed.
_PHONE = 32
# Room for the table as a block: it must not be split over two embeds.
_CODE = 3000
_GAP = "\n\n"


@dataclass(frozen=True, slots=True)
class _Section:
    """A headed run of lines; a lower rank is kept longer."""

    rank: int
    heading: str
    lines: tuple[str, ...]
    code: bool = False

    def pieces(self) -> tuple[str, ...]:
        """Return what must stay together: a block of code, a heading with its first line."""
        if self.code:
            return ("\n".join(("```", *self.lines, "```")),)
        first, *others = self.lines
        return (f"**{self.heading}**\n{first}" if self.heading else first, *others)

    def text(self) -> str:
        return "\n".join(self.pieces())


def render_embeds(reply: Reply) -> list[discord.Embed]:
    """Return the reply as embeds of one message.

    Fails with ValueError where the answer and its cautions alone are more than one message holds.
    """
    title = _cut(escape(reply.title), _TITLE)
    footer = _footer(reply.asked)
    room = _TOTAL - units_long(title) - units_long(footer)
    sections = _fitted(_sections(reply), room)
    embeds = [discord.Embed(description=part) for part in _parts(s for s in sections if s.lines)]
    embeds[0].title = title
    if footer:
        embeds[-1].set_footer(text=footer)
    return embeds


def _sections(reply: Reply) -> list[_Section]:
    """Return every part of the reply in the order it is read."""
    steps = [f"{n}. {_line(step)}" for n, step in enumerate(reply.steps, 1)]
    cautions = [f"- {escape(caution)}" for caution in reply.cautions]
    sources = [f"-# {_line(s.citation)}{_kind(s)}" for s in reply.sources]
    pages = [f"- {_page(page.title, page.url)}" for page in reply.guide]
    told = [
        _Section(2, "", tuple(_rows(reply.rows))),
        *([_table(reply.table)] if reply.table else []),
    ]
    acts = _Section(1, "Do this", tuple(steps))
    return [
        _Section(0, "", (_cut(escape(reply.answer), 2 * _LINE),)),
        # In danger nobody reads figures before what is to be done.
        *([acts, *told] if reply.dangers else [*told, acts]),
        _Section(2, "Why", tuple(_line(reason) for reason in reply.why)),
        _Section(0, "Take care", tuple(cautions)),
        _Section(4, "Read more", tuple(pages)),
        _Section(5, "Sources", tuple(sources)),
    ]


def _kind(source: SourceLine) -> str:
    """Return the kind of a source, where its own words do not tell it: there is little room."""
    return "" if source.kind in source.citation else f" ({escape(source.kind)})"


def _rows(rows: tuple[Row, ...]) -> Iterator[str]:
    if not any("\n" in row.text for row in rows):
        yield from (f"**{escape(row.label)}:** {_line(row.text)}" for row in rows)
        return
    for index, row in enumerate(rows):
        heading = f"**{_line(row.label)}**"
        yield f"\n{heading}" if index else heading
        yield from (_line(line) for line in row.text.splitlines())


def _table(table: Table) -> _Section:
    lines = [table.columns, *table.rows]
    widths = [max(len(line[i]) for line in lines) for i in range(len(table.columns))]
    if sum(widths) + 2 * (len(widths) - 1) <= _PHONE:
        laid = (
            "  ".join(cell.ljust(w) for cell, w in zip(line, widths, strict=True)).rstrip()
            for line in lines
        )
        return _Section(3, "", tuple(escape_code(line) for line in laid), code=True)
    head = " · ".join(f"**{escape(name)}**" for name in table.columns)
    rows = (_cut(" · ".join(escape(cell) for cell in row), _LINE) for row in table.rows)
    return _Section(3, "", (head, *(f"- {row}" for row in rows)))


def _page(title: str, url: str) -> str:
    return f"[{escape(title)}]({url})" if url else escape(title)


def _line(text: str) -> str:
    return _cut(escape(text), _LINE)


def _footer(asked: str) -> str:
    flat = " ".join(asked.split())
    return _cut(ASKED + flat, _FOOTER) if flat else ""


def _cut(text: str, most: int) -> str:
    """Return the text, or its beginning up to a word with an ellipsis."""
    if units_long(text) <= most:
        return text
    kept = text[: most - 2]
    while units_long(kept) > most - 2:
        kept = kept[:-1]
    head, space, _ = kept.rpartition(" ")
    kept = head if space and len(head) > most // 2 else kept
    # A backslash left alone at the end would escape the ellipsis.
    return kept.rstrip("\\ ") + " …"


def _fitted(sections: list[_Section], room: int) -> list[_Section]:
    """Return the sections shortened, the least needed first, so that all fit the room."""
    fitted = dict(enumerate(sections))
    for index, section in sorted(fitted.items(), key=lambda item: item[1].rank):
        if not section.lines:
            continue
        kept = _shortened(section, min(room, _CODE) if section.code else room)
        if section.rank == 0 and kept != section:
            raise ValueError("the answer and its cautions are more than one message holds")
        fitted[index] = kept
        room -= units_long(kept.text()) + len(_GAP) if kept.lines else 0
    return list(fitted.values())


def _shortened(section: _Section, room: int) -> _Section:
    """Return the section with as many lines as fit, and a line that says how many do not."""
    lines = section.lines
    kept = len(lines)
    while True:
        left_out = len(lines) - kept
        note = (f"… {left_out} more do not fit here",) if left_out else ()
        shown = replace(section, lines=(*lines[:kept], *note))
        if units_long(shown.text()) + len(_GAP) <= room:
            return shown
        if kept == 0:
            return replace(section, lines=())
        kept -= 1


def _parts(sections: Iterable[_Section]) -> list[str]:
    """Return the descriptions: one, or more where one is not enough."""
    parts = [""]
    for section in sections:
        gap = _GAP
        for piece in section.pieces():
            joined = f"{parts[-1]}{gap}{piece}" if parts[-1] else piece
            if units_long(joined) <= _DESCRIPTION:
                parts[-1] = joined
            else:
                parts.append(piece)
            gap = "\n"
    return parts
