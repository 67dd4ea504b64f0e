"""Boards shown: posted, pinned, changed in place, taken down, and put right when something is off.

What is wanted lies in the store; a round makes the channel so. A board carries its number in the
id of its button, by which a message is found again whose sending was not noted.
"""

import asyncio
import logging
import re
from datetime import timedelta
from typing import TYPE_CHECKING, Any, Final, Self

import aiohttp
import discord

from bot.asker import merged
from bot.facts import Say
from bot.fronts.discord.limits import Limited
from bot.fronts.discord.sending import Message, guarded, send
from bot.fronts.discord.welcome import welcome_buttons
from bot.language.errors import NotUnderstoodError
from bot.language.units import Units
from bot.preferences import Context
from bot.render.post import MOST_TEXT, render_post
from bot.reply import Reply
from bot.saved.boards import Board, BoardState, Look, Topic
from bot.saved.keeper import KeeperSettings
from bot.saved.reminders import Trouble
from bot.saying.voice import voice
from bot.serving.boards import board_reply, fingerprint, with_targets
from bot.serving.hands import EACH_WITHIN_S, Hands

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone
    from bot.serving.memory import Memory

__all__ = ["BoardButton", "show_boards"]

_log = logging.getLogger(__name__)

_LONGEST_WAIT_S: Final = 60.0
_ALL_WELL: Final = timedelta(days=1)
_TROUBLED: Final = timedelta(hours=1)
_SOON: Final = timedelta(minutes=5)
_TOO_MANY_REQUESTS: Final = 429
_LOOKED_AT: Final = 50
_UNKNOWN_CHANNEL, _UNKNOWN_MESSAGE, _PINS_FULL, _TOO_MANY_EDITS = 10003, 10008, 30003, 30046
_PINNED_BY: Final = "Noonstone board"


async def show_boards(client: "Noonstone", memory: "Memory", hands: Hands) -> float:
    """Look at the boards that are to be looked at; return how long the next round may wait."""
    boards = memory.store.boards
    await hands.work_off(
        lambda most: boards.claim(hands.by, memory.clock(), most),
        lambda look: _look(client, memory, hands, look),
    )
    following = await boards.next_look()
    if following is None:
        return _LONGEST_WAIT_S
    wait_s = (following - memory.clock()).total_seconds()
    return min(max(wait_s, 0.5), _LONGEST_WAIT_S)


async def _look(client: "Noonstone", memory: "Memory", hands: Hands, look: Look) -> None:
    board, boards, by = look.board, memory.store.boards, hands.by
    now = memory.clock()
    try:
        outcome = await _put_right(client, memory, hands, look)
    except discord.NotFound as error:
        # Also what was only hidden is told as missing; then it is looked for again for a while.
        outcome = "lost"
        _log.info("a board's channel is gone (%s)", error.code)
        await boards.lost(board, by)
    except discord.Forbidden as error:
        outcome = "troubled"
        hands.pace.refused()
        _log.info("a board may not be shown (%s)", error.code)
        troubled = board.model_copy(update={"trouble": Trouble.NO_RIGHT})
        await boards.shown(troubled, by, now, now + _TROUBLED)
    except discord.RateLimited as error:
        outcome = "put off"
        await boards.shown(board, by, now, now + timedelta(seconds=error.retry_after))
    except (discord.DiscordServerError, aiohttp.ClientError, TimeoutError) as error:
        outcome = "unsure"
        _log.warning("not sure how a board stands: %s", type(error).__name__)
    except discord.HTTPException as error:
        outcome = "put off"
        _log.warning("a board was refused (%s %s)", error.status, error.code)
        if error.status == _TOO_MANY_REQUESTS:
            await boards.shown(board, by, now, now + _SOON)
        else:
            refused = board.model_copy(update={"trouble": Trouble.REFUSED})
            await boards.shown(refused, by, now, now + _TROUBLED)
    except NotUnderstoodError as error:
        outcome = "put off"
        _log.warning("a board cannot be shown: %s", error)
        await boards.shown(board, by, now, now + _TROUBLED)
    client.metrics.boards.labels(outcome).inc()


async def _put_right(client: "Noonstone", memory: "Memory", hands: Hands, look: Look) -> str:
    """Make the channel so as the board is wanted, and say how it stands."""
    board, boards, now = look.board, memory.store.boards, memory.clock()
    if board.state is BoardState.SHOWN:
        _, own = await memory.group(board.server)
        board = with_targets(board, own, now.date())
    channel = client.get_partial_messageable(board.channel)
    shown: Board | None = None
    try:
        await hands.pace.turn()
        content = (
            None if board.state is BoardState.LEAVING else await _content(client, memory, board)
        )
        async with asyncio.timeout(EACH_WITHIN_S):
            if content is None:
                await _take_down(channel, board)
            else:
                shown = await _shown(channel, board, content, unsure=look.unsure)
    except asyncio.CancelledError:
        if hands.resting:
            await boards.released(board, hands.by, now)
        raise
    if shown is not None:
        again = _ALL_WELL if shown.trouble is Trouble.NONE else _TROUBLED
        await boards.shown(shown, hands.by, now, now + again)
        return "shown" if shown.trouble is Trouble.NONE else "troubled"
    if not await boards.gone(board, hands.by):
        bare = board.model_copy(update={"message": None, "pinned": False})
        await boards.shown(bare, hands.by, now, now)
    return "removed"


async def _content(client: "Noonstone", memory: "Memory", board: Board) -> Reply:
    """Return what a board says, in the language and unit of its group."""
    settings, own = await memory.group(board.server)
    spoken = merged(client.preferences(), KeeperSettings(), settings, own)
    context = Context(spoken.shown, spoken.guide_url, "", own, language=spoken.spoken)
    return board_reply(board.topic, board.animal, context, board.news)


async def _shown(
    channel: discord.PartialMessageable, board: Board, content: Reply, *, unsure: bool
) -> Board:
    """Make the channel show a board, and return how it stands."""
    mark = fingerprint(content)
    message = await _present(channel, board, unsure=unsure)
    if message is not None and mark != board.fingerprint:
        message = await _changed(message, content, board)
    fresh = message is None
    if message is None:
        message = await _posted(channel, board, content)
    pinned, trouble = message.pinned, Trouble.NONE
    # What people unpinned stays so; what could not be pinned is tried again.
    if not pinned and (fresh or not board.pinned):
        pinned, trouble = await _pinned(message)
    return board.model_copy(
        update={
            "message": message.id,
            "pinned": pinned or board.pinned,
            "fingerprint": mark,
            "trouble": trouble,
        }
    )


async def _present(
    channel: discord.PartialMessageable, board: Board, *, unsure: bool
) -> discord.Message | None:
    """Return the message of a board, if it is still there."""
    if board.message is not None:
        try:
            return await channel.fetch_message(board.message)
        except discord.NotFound as error:
            if error.code != _UNKNOWN_MESSAGE:
                raise
            return None
    if unsure:
        async for message in channel.history(limit=_LOOKED_AT):
            if _carries(message, board):
                return message
    return None


def _carries(message: discord.Message, board: Board) -> bool:
    parts = (part for row in message.components for part in getattr(row, "children", ()))
    return any(getattr(part, "custom_id", None) == f"board:{board.id}" for part in parts)


async def _changed(
    message: discord.Message, content: Reply, board: Board
) -> discord.Message | None:
    """Change a message in place; None where another has to take its place."""
    try:
        return await message.edit(content=_told(content), embeds=[], view=_view(board, content))
    except discord.HTTPException as error:
        if error.code not in (_TOO_MANY_EDITS, _UNKNOWN_MESSAGE):
            raise
        await _removed(message)
        return None


async def _posted(
    channel: discord.PartialMessageable, board: Board, content: Reply
) -> discord.Message:
    return await channel.send(
        content=_told(content),
        view=_view(board, content),
        nonce=f"b{board.id}.{board.wish}",
        allowed_mentions=discord.AllowedMentions.none(),
    )


def _told(content: Reply) -> str:
    return render_post(content, most=MOST_TEXT).text


async def _pinned(message: discord.Message) -> tuple[bool, Trouble]:
    try:
        await message.pin(reason=_PINNED_BY)
    except discord.Forbidden:
        return False, Trouble.NO_PIN_RIGHT
    except discord.HTTPException as error:
        if error.code != _PINS_FULL:
            raise
        return False, Trouble.PINS_FULL
    return True, Trouble.NONE


async def _take_down(channel: discord.PartialMessageable, board: Board) -> None:
    if board.message is not None:
        await _removed(channel.get_partial_message(board.message))


async def _removed(message: discord.PartialMessage | discord.Message) -> None:
    """Unpin and delete a message as far as that can be done; deleting unpins it too."""
    try:
        await message.delete()
    except discord.NotFound:
        return
    except discord.Forbidden as error:
        _log.info("a board could not be deleted (%s)", error.code)


def _view(board: Board, content: Reply) -> discord.ui.View:
    view = discord.ui.View(timeout=None)
    if board.topic is Topic.WELCOME:
        for button in welcome_buttons(content.language):
            view.add_item(button)
    view.add_item(BoardButton.of(board, content.language))
    for page in content.guide[:4]:
        if page.url:
            link = discord.ButtonStyle.link
            view.add_item(discord.ui.Button(style=link, label=page.title[:80], url=page.url))
    view.stop()
    return view


class BoardButton(
    Limited,
    discord.ui.DynamicItem[discord.ui.Button[Any]],
    template=r"board:(?P<number>\d{1,18})",
):
    """Says what a board is; its id is how the bot knows its own board again."""

    def __init__(self, number: int, label: str = "") -> None:
        button: discord.ui.Button[Any] = discord.ui.Button(
            label=label or None, custom_id=f"board:{number}"
        )
        super().__init__(button)

    @classmethod
    def of(cls, board: Board, language: str) -> Self:
        """Return the button of a board, in the language of its content."""
        return cls(board.id, _said(Say("board-button"), language))

    @classmethod
    async def from_custom_id(
        cls, interaction: discord.Interaction[Any], item: Any, match: re.Match[str], /
    ) -> Self:
        """Return the pressed button."""
        return cls(int(match["number"]))

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Say how up to date it is."""
        async with guarded(interaction, "telling of a board"):
            asker = await interaction.client.preferences_of(interaction)
            words = _said(Say("board-about"), asker.spoken)
            await send(interaction, Message(words), private=True)


def _said(say: Say, language: str) -> str:
    return voice(language, Units.IN).text(say)
