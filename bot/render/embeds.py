"""Reply → Discord embeds: the brief, and one part where it is open, within every limit.

No line of the brief is ever left out. What does not fit of a part is left out line by line, the
least needed first (sources, then pages, table, rows, steps), and the reader is told how much. The
query as understood stands in the footer.
"""

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from itertools import count

import discord

from bot.brief import brief_of
from bot.render.escaping import escape, escape_code, units_long
from bot.reply import Line, PartName, Reply, Role, Row, SourceLine, Table

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
_URGENT = (Role.DANGER, Role.CALL)


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
            block = "\n".join(("```", *self.lines, "```"))
            return (f"**{self.heading}**\n{block}" if self.heading else block,)
        first, *others = self.lines
        return (f"**{self.heading}**\n{first}" if self.heading else first, *others)

    def text(self) -> str:
        return "\n".join(self.pieces())


def render_embeds(reply: Reply, part: PartName | None = None) -> list[discord.Embed]:
    """Return the brief as embeds of one message, with the part that is open, if any.

    Fails with ValueError where the brief and the cautions shown are more than one message holds.
    """
    title = _cut(escape(reply.title), _TITLE)
    footer = _footer(reply.asked)
    room = _TOTAL - units_long(title) - units_long(footer)
    sections = _fitted([*_brief(reply), *_parts_shown(reply, part)], room)
    embeds = [discord.Embed(description=text) for text in _parts(s for s in sections if s.lines)]
    embeds[0].title = title
    if footer:
        embeds[-1].set_footer(text=footer)
    return embeds


def _brief(reply: Reply) -> Iterator[_Section]:
    """Return what is urgent, then the answer."""
    lines = brief_of(reply)
    numbers = count(1)
    urgent = tuple(f"**{_line(line.text)}**" for line in lines if line.role in _URGENT)
    rest = tuple(_told(line, numbers) for line in lines if line.role not in _URGENT)
    yield _Section(0, "", urgent)
    yield _Section(0, "", rest)


def _told(line: Line, numbers: Iterator[int]) -> str:
    text = _cut(escape(line.text), 2 * _LINE if line.role is Role.HEAD else _LINE)
    match line.role:
        case Role.STEP:
            return f"{next(numbers)}. {text}"
        case Role.CAUTION:
            return f"**!** {text}"
        case Role.ASSUMED:
            return f"-# {text}"
        case _:
            return text


def _parts_shown(reply: Reply, part: PartName | None) -> Iterator[_Section]:
    for told in reply.parts:
        if told.name is part or told.name in reply.opened:
            heading = told.label if told.name is part else ""
            yield from _PARTS[told.name](reply, heading)


def _steps(reply: Reply, heading: str) -> Iterator[_Section]:
    steps = (f"{n}. {_line(step)}" for n, step in enumerate(reply.steps, 1))
    yield _Section(1, heading, tuple(steps))


def _numbers(reply: Reply, heading: str) -> Iterator[_Section]:
    rows = tuple(_rows(reply.rows))
    yield _Section(2, heading, rows)
    if reply.table:
        yield _table(reply.table, "" if rows else heading)


def _why(reply: Reply, heading: str) -> Iterator[_Section]:
    yield _Section(2, heading, tuple(f"- {_line(reason)}" for reason in reply.why))


def _care(reply: Reply, heading: str) -> Iterator[_Section]:
    yield _Section(0, heading, tuple(f"- {escape(caution)}" for caution in reply.cautions))


def _sources(reply: Reply, heading: str) -> Iterator[_Section]:
    pages = tuple(f"- {_page(page.title, page.url)}" for page in reply.guide)
    yield _Section(4, heading, pages)
    lines = tuple(f"-# {_line(s.citation)}{_kind(s)}" for s in reply.sources)
    yield _Section(5, "" if pages else heading, lines)


_PARTS: Mapping[PartName, Callable[[Reply, str], Iterator[_Section]]] = {
    PartName.STEPS: _steps,
    PartName.NUMBERS: _numbers,
    PartName.WHY: _why,
    PartName.CARE: _care,
    PartName.SOURCES: _sources,
}


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


def _table(table: Table, heading: str) -> _Section:
    lines = [table.columns, *table.rows]
    widths = [max(len(line[i]) for line in lines) for i in range(len(table.columns))]
    if sum(widths) + 2 * (len(widths) - 1) <= _PHONE:
        laid = (
            "  ".join(cell.ljust(w) for cell, w in zip(line, widths, strict=True)).rstrip()
            for line in lines
        )
        return _Section(3, heading, tuple(escape_code(line) for line in laid), code=True)
    head = " · ".join(f"**{escape(name)}**" for name in table.columns)
    rows = (_cut(" · ".join(escape(cell) for cell in row), _LINE) for row in table.rows)
    return _Section(3, heading, (head, *(f"- {row}" for row in rows)))


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
            raise ValueError("the brief and its cautions are more than one message holds")
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
