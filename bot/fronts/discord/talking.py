"""Messages that talk to the bot: with its mention, as a reply to it, or in direct messages.

Discord sends the text of these alone without a privileged intent. What was asked before stands in
the bot's own message that is replied to, so nothing typed is kept; in direct messages the last
question of each person is remembered for half an hour.
"""

import logging
import re
import time
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any, Final

import aiohttp
import discord
from cachetools import TTLCache

from bot.dialogue import START, Dialogue, Next, next_line, said_in, told_before
from bot.facts import Say
from bot.fronts.discord.answering import Way
from bot.fronts.discord.missing import rows_of_plain
from bot.fronts.discord.public import too_many
from bot.fronts.discord.question import Question
from bot.fronts.discord.sending import Message, view_of
from bot.fronts.discord.show import ShowButton
from bot.language.units import Units
from bot.layered import Layered
from bot.preferences import Preferences
from bot.queries.question import Question as Asked
from bot.render.post import asked_of
from bot.reply import PartName
from bot.saved.group import Shown
from bot.saying.voice import voice
from bot.serving.failures import note_failure
from bot.serving.memory import Asker

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = ["Addressed", "Talk", "talks_to"]

_log = logging.getLogger(__name__)

_MENTION: Final = re.compile(r"<@!?\d+>")
_REMEMBERED_S: Final = 1800.0
_MOST_REMEMBERED: Final = 5_000
_LONGEST: Final = 2000
_THREADS: Final = frozenset(range(10, 13))


@dataclass(frozen=True, slots=True)
class Addressed:
    """A message that talks to the bot; ``before`` is the last question, where it replies to one.

    ``photo``: a picture is attached, which the bot cannot see.
    """

    id: int
    channel_id: int
    guild_id: int | None
    user: discord.Object
    words: str
    before: str = ""
    photo: bool = False
    roles: frozenset[int] = frozenset()
    parent_id: int | None = None

    @property
    def asker(self) -> Asker:
        """Return who writes, and where."""
        return Asker(self.user.id, self.guild_id, self.channel_id, self.parent_id)


def talks_to(data: Mapping[str, Any], me: int) -> Addressed | None:
    """Return a message that talks to the bot out of what Discord tells of any; None: not one."""
    author = data.get("author", {})
    if author.get("bot") or data.get("webhook_id") or data.get("type", 0) not in (0, 19):
        return None
    named = any(int(user["id"]) == me for user in data.get("mentions", ()))
    if not named and data.get("guild_id") is not None:
        return None
    words = _MENTION.sub(" ", data.get("content", ""))[:_LONGEST].strip()
    guild = data.get("guild_id")
    return Addressed(
        id=int(data["id"]),
        channel_id=int(data["channel_id"]),
        guild_id=None if guild is None else int(guild),
        user=discord.Object(int(author["id"])),
        words=words,
        before=_asked_in(data.get("referenced_message"), me),
        roles=frozenset(map(int, data.get("member", {}).get("roles", ()))),
        photo=any(_is_photo(file) for file in data.get("attachments", ())),
    )


def _is_photo(file: Mapping[str, Any]) -> bool:
    return str(file.get("content_type") or "").startswith("image/")


def _asked_in(referenced: Mapping[str, Any] | None, me: int) -> str:
    """Return the question that a message of the bot's own answers, or nothing."""
    if not referenced or int(referenced.get("author", {}).get("id", 0)) != me:
        return ""
    return asked_of(referenced.get("content", "").rpartition("\n")[2])


class Talk:
    """Answers what is written to the bot."""

    def __init__(self, clock: Callable[[], float] = time.monotonic) -> None:
        self._parents: TTLCache[int, int | None] = TTLCache(_MOST_REMEMBERED, _REMEMBERED_S, clock)
        self._last: TTLCache[int, Dialogue] = TTLCache(_MOST_REMEMBERED, _REMEMBERED_S, clock)

    async def answer(self, client: "Noonstone", written: Addressed) -> None:
        """Answer a message where it stands, without a ping."""
        wait = client.limits.take(written.user.id, written.guild_id) if client.limits else 0.0
        if wait or client.in_flight.leaving:
            return
        with client.in_flight.one():
            try:
                await self._answer(client, written)
            except discord.Forbidden:
                _log.info("may not answer in a channel")
            except (discord.DiscordException, aiohttp.ClientError) as error:
                _log.warning("a message could not be answered: %s", type(error).__name__)
            except Exception as error:
                note_failure(error, "answering a message")

    async def _answer(self, client: "Noonstone", written: Addressed) -> None:
        written = await self._placed(client, written)
        preferences, shown = await _wishes(client, written)
        alone = written.guild_id is None
        before = self._before(written)
        if not written.words:
            say = Say("door-photo") if written.photo else Say("door-no-words")
            await self._say(client, written, preferences, say)
            return
        what, meant, dialogue = next_line(before, written.words, preferences)
        if what is Next.THANKS:
            await self._say(client, written, preferences, Say("door-thanks"))
            return
        if isinstance(meant, Layered):
            await self._say(client, written, preferences, *said_in(meant))
            self._remember(written, dialogue)
            return
        question = _question_of(meant)
        why = None if alone else await _kept_private(client, written, question, shown)
        if why is not None:
            label = ShowButton.of(question, preferences.speaking(written.words).spoken)
            view = discord.ui.View(timeout=None).add_item(label)
            rows = tuple(view.to_components())
            await self._say(client, written, preferences, why, rows=rows)
            return
        wishes = dialogue.preferring(preferences)
        with client.noted("ask") as note:
            way = Way(not alone, alone, pictures=False)
            part = PartName.WHY if what is Next.WHY else None
            finished = await client.answers.finished(
                question, wishes, way, part=part, beside=dialogue.beside
            )
            note(finished.status)
            fewer = rows_of_plain(finished.message.rows)
            await _post(client, written, replace(finished.message, card=False, rows=fewer))
        perhaps = None if dialogue.asked else finished.perhaps
        self._remember(written, told_before(perhaps or finished.meant, dialogue))

    async def _placed(self, client: "Noonstone", written: Addressed) -> Addressed:
        """Return a message with the channel of its thread, where the group has rules of channels.

        Discord's message does not tell it, and no channel is kept here.
        """
        number, memory = written.channel_id, client.memory
        if memory is None or written.guild_id is None or not await memory.has_places(written.asker):
            return written
        if number not in self._parents:
            try:
                told = await client.http.get_channel(number)
            except discord.HTTPException as error:
                _log.info("a channel could not be looked at (%s)", error.code)
                return written
            parent = told.get("parent_id") if told["type"] in _THREADS else None
            self._parents[number] = None if parent is None else int(str(parent))
        return replace(written, parent_id=self._parents[number])

    def _before(self, written: Addressed) -> Dialogue:
        if written.before:
            return told_before(written.before, START)
        return START if written.guild_id is not None else self._last.get(written.user.id, START)

    def _remember(self, written: Addressed, dialogue: Dialogue) -> None:
        if written.guild_id is None:
            self._last[written.user.id] = dialogue

    async def _say(
        self,
        client: "Noonstone",
        written: Addressed,
        preferences: Preferences,
        *says: Say,
        rows: tuple[dict[str, Any], ...] = (),
    ) -> None:
        speak = voice(preferences.speaking(written.words).spoken, Units.CM).text
        await _post(client, written, Message("\n".join(map(speak, says)), rows=rows))


def _question_of(meant: Asked | str) -> Question:
    """Return what is meant as a question; a line that is none by its name is free words."""
    if isinstance(meant, str):
        return Question.read(meant) or Question("ask", {"question": meant.removeprefix("ask ")})
    return Question(meant.command, meant.values)


async def _wishes(client: "Noonstone", written: Addressed) -> tuple[Preferences, Shown | None]:
    """Return how the writer of a message is answered, and who may see it there."""
    base = client.preferences()
    if client.memory is None:
        return base, None
    preferences = await client.memory.preferences(written.asker, base)
    return preferences, await client.memory.shown(written.asker)


async def _kept_private(
    client: "Noonstone", written: Addressed, question: Question, shown: Shown | None
) -> Say | None:
    """Note an answer for all; where there may be none, return what is said in its place.

    Where answers are for all anyway, nothing is noted.
    """
    if shown is Shown.PRIVATE:
        return Say("door-alone")
    if shown is Shown.PUBLIC or client.memory is None:
        return None
    allowed = await client.memory.public(written.asker)
    # A message does not tell who is a moderator.
    if not allowed.has(written.roles, moderator=False):
        return Say("door-alone")
    noted = client.memory.note_post(written.asker, question.command, 0, allowed.most)
    return too_many(await noted)


async def _post(client: "Noonstone", written: Addressed, message: Message) -> None:
    channel = client.get_partial_messageable(written.channel_id, guild_id=written.guild_id)
    reference = discord.MessageReference(
        message_id=written.id, channel_id=written.channel_id, fail_if_not_exists=False
    )
    plain = message.is_plain
    await channel.send(
        content=(message.content if plain else "") or None,
        view=view_of(message, plain=plain) or discord.utils.MISSING,
        reference=reference,
        allowed_mentions=discord.AllowedMentions.none(),
    )
