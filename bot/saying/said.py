"""A layered answer in words: messages become sentences, nothing is decided any more."""

from collections.abc import Callable, Iterator

from bot import layered as layers
from bot.facts import Say
from bot.layered import Care, Layered, Weight
from bot.linking import page_links, source_lines
from bot.reply import Reply, Row, Table, Value
from bot.saying.voice import Voice

__all__ = ["said"]

_NO_BREAK = "\u00a0"


def said(layered: Layered, voice: Voice, guide_url: str = "") -> Reply:
    """Return the reply that a layered answer is in one language, with one unit first."""

    def say(message: Say) -> str:
        return voice.say(message).replace(_NO_BREAK, " ")

    brief = layered.brief
    return Reply(
        command=layered.command,
        status=layered.status,
        title=say(layered.title),
        answer=" ".join(say(x) for x in (brief.head, *brief.range)),
        values=tuple(_values(layered)),
        rows=(
            *(Row(label=say(row.label), text=say(row.say)) for row in layered.numbers),
            *(Row(label=say(Say("part-why")), text=say(why)) for why in layered.why),
        ),
        table=_table(layered.table, say),
        steps=tuple(map(say, layered.steps)),
        cautions=tuple(say(care.say) for care in _heaviest_first(layered.care)),
        guide=page_links(layered.guide, guide_url),
        sources=source_lines(layered.sources),
        picture=layered.picture and layered.picture(voice),
        alarms=layered.alarms,
        units=voice.units.value,
    )


def _table(table: layers.Table | None, say: Callable[[Say], str]) -> Table | None:
    if table is None:
        return None
    rows = tuple(tuple(map(say, row)) for row in table.rows)
    return Table(columns=tuple(map(say, table.columns)), rows=rows)


def _values(layered: Layered) -> Iterator[Value]:
    for name, figure in layered.values:
        if figure is not None:
            yield Value(
                name=name,
                low=figure.low,
                best=figure.best,
                high=figure.high,
                unit=figure.kind.unit,
            )


def _heaviest_first(care: tuple[Care, ...]) -> list[Care]:
    return sorted(care, key=lambda one: one.weight is Weight.ALWAYS)
