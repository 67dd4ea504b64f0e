"""What a message that was sent says, read back where a button of it is pressed.

A card is told by the numbers of its texts, a plain message by its lines, and one of an earlier
version by its embeds. No word decides: our own words above an answer begin with a person.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any, Final

import discord

from bot.render.escaping import escape
from bot.render.post import Post, asked_of

__all__ = [
    "ASKED_ID",
    "BRIEF_ID",
    "PART_ID",
    "WORDS_ID",
    "Drawn",
    "Row",
    "Seen",
    "custom_ids",
    "pictures_in",
    "seen",
]

Row = dict[str, Any]
"""A row of buttons, or a list, as it is sent."""

WORDS_ID, BRIEF_ID, PART_ID, ASKED_ID = 897, 898, 899, 900
"""The numbers of a card's texts."""

_PERSON: Final = "<@"
_ASKED: Final = "-# /"
_FOOTER: Final = "Asked: "


@dataclass(frozen=True, slots=True)
class Drawn:
    """The picture in a card: where it lies, and its words."""

    address: str
    words: str


@dataclass(frozen=True, slots=True)
class Seen:
    """A message: our own words above it, what it tells, its rows of buttons, its picture."""

    words: str
    post: Post
    rows: tuple[Row, ...]
    colour: int | None = None
    drawn: Drawn | None = None

    @property
    def asked(self) -> str:
        """Return the question as it was understood, or nothing."""
        return asked_of(self.post.asked)


def seen(message: discord.Message) -> Seen:
    """Return what a message says."""
    rows: tuple[Row, ...] = tuple(
        dict(row.to_dict()) for row in _parts(message) if isinstance(row, discord.ActionRow)
    )
    if message.flags.components_v2:
        parts = _parts(message)
        texts = {part.id: part.content for part in parts if isinstance(part, discord.TextDisplay)}
        told = (texts.get(number, "") for number in (BRIEF_ID, PART_ID, ASKED_ID))
        boxes = (part for part in message.components if isinstance(part, discord.Container))
        colour = next((box.accent_colour.value for box in boxes if box.accent_colour), None)
        return Seen(texts.get(WORDS_ID, ""), Post(*told), rows, colour, _drawn(message))
    if message.embeds:
        return Seen(message.content, _of_embeds(message.embeds), rows)
    lines = message.content.split("\n")
    asked = lines.pop() if lines[-1].startswith(_ASKED) else ""
    words = lines.pop(0) if lines and lines[0].startswith(_PERSON) else ""
    return Seen(words, Post("\n".join(lines), "", asked), rows)


def _parts(message: discord.Message) -> Iterator[Any]:
    for part in message.components:
        yield part
        if isinstance(part, discord.Container):
            yield from part.children


def _drawn(message: discord.Message) -> Drawn | None:
    items = pictures_in(message)
    return next((Drawn(item.media.url, item.description or "") for item in items), None)


def pictures_in(message: discord.Message) -> Iterator[discord.MediaGalleryItem]:
    """Yield the pictures that lie in a card, which are none of its attachments."""
    for part in _parts(message):
        if isinstance(part, discord.MediaGalleryComponent):
            yield from part.items


def _of_embeds(embeds: list[discord.Embed]) -> Post:
    told = [text for each in embeds for text in (each.title, each.description) if text]
    footer = embeds[-1].footer.text or ""
    asked = footer.removeprefix(_FOOTER) if footer.startswith(_FOOTER) else ""
    return Post("\n".join(told), "", f"{_ASKED}{escape(asked)}" if asked else "")


def custom_ids(rows: tuple[Row, ...]) -> Iterator[str]:
    """Yield the custom ids of buttons and lists."""
    for row in rows:
        yield from (part["custom_id"] for part in row["components"] if part.get("custom_id"))
