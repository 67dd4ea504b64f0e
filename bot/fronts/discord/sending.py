"""How words reach the asker through an interaction, and what happens when they cannot.

Every path ends in a message or a log line: never a traceback to the asker, never silence in the
log. The rules are Discord's: one callback, within three seconds, then edits for fifteen minutes.
"""

import logging
import time
from collections.abc import AsyncIterator, Awaitable, Callable, Sequence
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from io import BytesIO
from typing import Any, Final

import aiohttp
import discord

from bot.facts import Say
from bot.fronts.discord.labels import cut
from bot.fronts.discord.said import Failure, said
from bot.fronts.discord.seen import ASKED_ID, BRIEF_ID, PART_ID, WORDS_ID, Drawn, Row
from bot.render.escaping import units_long
from bot.render.post import MOST_TEXT, Post
from bot.reply import Reply
from bot.serving.failures import note_failure

__all__ = [
    "LONGEST_WORDS",
    "Attached",
    "Message",
    "answered_as",
    "colour_of",
    "edit_in_place",
    "guarded",
    "in_direct_messages",
    "is_own",
    "note_arrival",
    "send",
    "sent",
    "tell",
    "think",
    "view_of",
]

_log = logging.getLogger(__name__)

_UNKNOWN_INTERACTION: Final = 10062
_ALREADY_ACKNOWLEDGED: Final = 40060
# An unknown webhook, message or interaction, or a token past its fifteen minutes.
_TOO_LATE: Final = frozenset({_UNKNOWN_INTERACTION, 10008, 10015, 50027})
_TEXT, _BOX = discord.ComponentType.text_display.value, discord.ComponentType.container.value
_GALLERY: Final = discord.ComponentType.media_gallery.value
_ANSWER, _PROBLEM, _DANGER = 0x2E7D32, 0xB26A00, 0xB3261E
_ARRIVED: Final = "arrived"
_ANSWERED: Final = "answered"

LONGEST_WORDS: Final = 1024
"""How much a picture is told in at most."""

_Any = discord.Interaction[Any]
_Kind = discord.InteractionResponseType


@dataclass(frozen=True, slots=True)
class Attached:
    """A picture to send, with the words for those who do not see it."""

    name: str
    content: bytes
    words: str

    def file(self) -> discord.File:
        """Return it as a file, a new one for every try, since sending one closes it."""
        told = cut(self.words, LONGEST_WORDS)
        return discord.File(BytesIO(self.content), self.name, description=told)


@dataclass(frozen=True, slots=True)
class Message:
    """What is sent: our own words, an answer, its buttons; only whom ``pings`` tells is pinged.

    ``card``: one person sees it, and it is laid out as a card, in ``colour``. What everybody sees
    is plain text, which rings, is found, quoted and pinned, where it is not too long for that.
    ``drawn`` is the picture that a card has already.
    """

    words: str = ""
    post: Post | None = None
    rows: Sequence[Row] = ()
    attached: Sequence[Attached] = ()
    card: bool = False
    colour: int | None = None
    pings: discord.AllowedMentions = field(default_factory=discord.AllowedMentions.none)
    drawn: Drawn | None = None

    @property
    def content(self) -> str:
        """Return all of it as plain text."""
        told = (self.words, self.post.text if self.post else "")
        return "\n".join(text for text in told if text)

    @property
    def is_plain(self) -> bool:
        """Say whether it is sent as plain text: files stand beside nothing else."""
        return self.post is None or (not self.card and units_long(self.content) <= MOST_TEXT)


class _Rows(discord.ui.View):
    """Buttons that do not change any more: laid out once, and found by their custom ids."""

    def __init__(self, rows: Sequence[Row]) -> None:
        super().__init__(timeout=None)
        self._rows = list(rows)
        self.stop()

    def to_components(self) -> list[dict[str, Any]]:
        """Return the buttons as they are sent."""
        return self._rows


class _Card(discord.ui.LayoutView):
    """A card: one box with our words, the answer, the part that is open, the buttons."""

    def __init__(self, message: Message) -> None:
        super().__init__(timeout=None)
        self._parts = [_box(message)]
        self.stop()

    def has_components_v2(self) -> bool:
        """Say that it is a card although nothing was added by hand."""
        return True

    def to_components(self) -> list[dict[str, Any]]:
        """Return the card as it is sent."""
        return self._parts


def _box(message: Message) -> Row:
    post = message.post or Post("")
    texts = ((WORDS_ID, message.words), (BRIEF_ID, post.brief), (PART_ID, post.part))
    told = [{"type": _TEXT, "id": number, "content": text} for number, text in texts if text]
    asked = [{"type": _TEXT, "id": ASKED_ID, "content": post.asked}] if post.asked else []
    # The picture stands between the answer and the part that is open.
    opened = told[len(told) - 1 :] if post.part else []
    brief = told[: len(told) - len(opened)]
    parts = [*brief, *_gallery(message), *opened, *message.rows, *asked]
    box: Row = {"type": _BOX, "components": parts}
    return box if message.colour is None else {**box, "accent_color": message.colour}


def _gallery(message: Message) -> list[Row]:
    new = [Drawn(f"attachment://{one.name}", one.words) for one in message.attached]
    drawn = new or ([message.drawn] if message.drawn else [])
    items = [{"media": {"url": one.address}, "description": one.words} for one in drawn]
    return [{"type": _GALLERY, "items": items}] if items else []


def colour_of(reply: Reply) -> int:
    """Return the colour at the edge of a card: one more sign, and never the only one."""
    if reply.dangers:
        return _DANGER
    return _PROBLEM if reply.status == "problem" else _ANSWER


def in_direct_messages(interaction: _Any) -> bool:
    """Say whether only the asker and the bot are there."""
    return interaction.context.dm_channel


def is_own(interaction: _Any) -> bool:
    """Say whether the pressed message is the presser's alone, so that it may be changed."""
    message = interaction.message
    seen_by_one = message is not None and message.flags.ephemeral
    return seen_by_one or in_direct_messages(interaction)


async def send(interaction: _Any, message: Message, *, private: bool) -> None:
    """Answer with a new message, or fill in the one that was promised by ``think``."""
    if answered_as(interaction) is _Kind.deferred_channel_message:
        await _arrive(interaction, lambda: _filled_in(interaction, message))
        return
    await _arrive(
        interaction,
        lambda: sent(interaction, message, private=private),
        _Kind.channel_message,
    )


async def tell(interaction: _Any, say: Say) -> None:
    """Tell the asker alone a sentence of our own."""
    await send(interaction, Message(await said(interaction, say)), private=True)


async def sent(interaction: _Any, message: Message, *, private: bool) -> None:
    """Send a new message, and once only: who loses the connection does not know what arrived."""
    first = answered_as(interaction) is None
    how = interaction.response.send_message if first else interaction.followup.send
    plain = message.is_plain
    await how(
        content=(message.content if plain else "") or discord.utils.MISSING,
        files=[attached.file() for attached in message.attached],
        view=view_of(message, plain=plain) or discord.utils.MISSING,
        ephemeral=private,
        allowed_mentions=message.pings,
    )


async def _filled_in(interaction: _Any, message: Message) -> None:
    # A follow-up would do the same once, but twice it would be two messages.
    plain = message.is_plain
    await interaction.edit_original_response(
        content=message.content if plain else None,
        attachments=[attached.file() for attached in message.attached],
        view=view_of(message, plain=plain),
        allowed_mentions=message.pings,
    )


async def edit_in_place(interaction: _Any, message: Message) -> None:
    """Answer by changing the message whose button was pressed: once a card, always a card."""
    pressed = interaction.message
    plain = message.is_plain and not (pressed is not None and pressed.flags.components_v2)
    await _arrive(
        interaction,
        lambda: interaction.response.edit_message(
            content=message.content if plain else None,
            embeds=[],
            view=view_of(message, plain=plain),
            allowed_mentions=message.pings,
        ),
        _Kind.message_update,
    )


def view_of(message: Message, *, plain: bool) -> Any:
    """Return the buttons of a plain message, or all of a card, as the library sends them."""
    if plain:
        return _Rows(message.rows) if message.rows else None
    return _Card(message)


async def think(interaction: _Any, *, private: bool) -> None:
    """Tell the asker that an answer is coming; what is sent next takes its place."""
    await _arrive(
        interaction,
        lambda: interaction.response.defer(ephemeral=private, thinking=True),
        _Kind.deferred_channel_message,
    )


def note_arrival(interaction: _Any) -> None:
    """Remember when the interaction came, for the time to its first response."""
    interaction.extras[_ARRIVED] = time.perf_counter()


def answered_as(interaction: _Any) -> discord.InteractionResponseType | None:
    """Return how the interaction was answered, also where Discord's word for it was lost."""
    return interaction.response.type or interaction.extras.get(_ANSWERED)


async def _arrive(
    interaction: _Any, request: Callable[[], Awaitable[Any]], kind: _Kind | None = None
) -> None:
    """Make a request, once more after a lost connection; it may have arrived the first time.

    ``kind`` is how it answers the interaction, if it is the first to do so.
    """
    try:
        await request()
    except aiohttp.ClientConnectionError:
        _log.info("the connection was lost while answering; trying once more")
        try:
            await request()
        except discord.HTTPException as error:
            if error.code != _ALREADY_ACKNOWLEDGED:
                raise
            interaction.extras[_ANSWERED] = kind
    arrived = interaction.extras.pop(_ARRIVED, None)
    if arrived is not None:
        interaction.client.metrics.acknowledged.observe(time.perf_counter() - arrived)


@asynccontextmanager
async def guarded(interaction: _Any, doing: str) -> AsyncIterator[None]:
    """Turn whatever goes wrong inside into a plain sentence for the asker and a log line."""
    with interaction.client.in_flight.one():
        try:
            yield
        except discord.HTTPException as error:
            if error.code in _TOO_LATE:
                _log.warning("too late to answer while %s (%s)", doing, error.code)
            elif error.code == _ALREADY_ACKNOWLEDGED:
                _log.info("answered already while %s", doing)
            else:
                await _apologise(interaction, note_failure(error, doing))
        except Exception as error:
            await _apologise(interaction, note_failure(error, doing))


async def _apologise(interaction: _Any, number: str) -> None:
    sentence = await said(interaction, Say("front-failed", Failure(number)))
    try:
        await send(interaction, Message(sentence), private=not in_direct_messages(interaction))
    except (discord.DiscordException, aiohttp.ClientError) as error:
        _log.warning("could not tell the asker of failure %s: %s", number, error)
