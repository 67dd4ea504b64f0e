"""Boards shown: posted, pinned, changed in place, taken down, and put right when something is off.

What is wanted lies in the store; a round makes the channel so. A board carries its number in the
id of its button, by which a message is found again whose sending was not noted.
"""

import asyncio
import logging
from collections.abc import Sequence
from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING, Final

import aiohttp
import discord
from discord.abc import PrivateChannel

from bot.fronts.discord.board_message import board_text, board_view, content_of, drawn
from bot.fronts.discord.sending import Attached
from bot.language.errors import NotUnderstoodError
from bot.saved.boards import Board, BoardState, Look
from bot.saved.reminders import Trouble
from bot.serving.boards import BoardShown, with_targets
from bot.serving.hands import EACH_WITHIN_S, Hands

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone
    from bot.serving.memory import Memory

__all__ = ["show_boards"]

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
    shown: tuple[Board, timedelta] | None = None
    try:
        await hands.pace.turn()
        leaving = board.state is BoardState.LEAVING
        content = None if leaving else await content_of(client, memory, board)
        async with asyncio.timeout(EACH_WITHIN_S):
            if content is None:
                await _take_down(channel, board)
            elif board.message is None and await _is_elsewhere(client, board):
                await boards.lost(board, hands.by)
                return "lost"
            else:
                shown = await _shown(client, channel, board, content, unsure=look.unsure)
    except asyncio.CancelledError:
        if hands.resting:
            await boards.released(board, hands.by, now)
        raise
    if shown is not None:
        stands, again = shown
        await boards.shown(stands, hands.by, now, now + again)
        return "shown" if stands.trouble is Trouble.NONE else "troubled"
    if not await boards.gone(board, hands.by):
        bare = board.model_copy(update={"message": None, "pinned": False})
        await boards.shown(bare, hands.by, now, now)
    return "removed"


async def _is_elsewhere(client: "Noonstone", board: Board) -> bool:
    """Say whether the channel is of another group: a file that was taken back may name any."""
    try:
        channel = await client.fetch_channel(board.channel)
    except discord.InvalidData:
        return True
    return isinstance(channel, PrivateChannel) or channel.guild.id != board.server


async def _shown(
    client: "Noonstone",
    channel: discord.PartialMessageable,
    board: Board,
    content: BoardShown,
    *,
    unsure: bool,
) -> tuple[Board, timedelta]:
    """Make the channel show a board; return how it stands, and when to look again."""
    message = await _present(channel, board, unsure=unsure)
    fresh, mark, trouble, again = message is None, board.fingerprint, Trouble.NONE, _ALL_WELL
    if message is None or mark != content.fingerprint:
        pictures = await drawn(client, content)
        plain = replace(content, pictures=())
        if len(pictures) < len(content.pictures):
            again = _SOON
        else:
            try:
                message = await _written(channel, message, board, content, pictures)
                mark = content.fingerprint
            except discord.Forbidden:
                if not pictures:
                    raise
                trouble = Trouble.NO_FILE_RIGHT
        # What may not or cannot be drawn just now is told by its words, once.
        if message is None or mark not in (content.fingerprint, plain.fingerprint):
            message = await _written(channel, message, board, plain, ())
            mark = plain.fingerprint
    pinned = message.pinned
    # What people unpinned stays so; what could not be pinned is tried again.
    if not pinned and (fresh or message.id != board.message or not board.pinned):
        pinned, unpinned = await _pinned(message)
        trouble = trouble if unpinned is Trouble.NONE else unpinned
    if trouble is not Trouble.NONE:
        again = _TROUBLED
    stands = {"message": message.id, "pinned": pinned or board.pinned}
    told = {"fingerprint": mark, "trouble": trouble}
    return board.model_copy(update=stands | told), again


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


async def _written(
    channel: discord.PartialMessageable,
    message: discord.Message | None,
    board: Board,
    content: BoardShown,
    pictures: Sequence[Attached],
) -> discord.Message:
    """Change a message in place, or post one where there is none or another takes its place."""
    told, view = board_text(content), board_view(board, content.reply)
    files = [picture.file() for picture in pictures]
    if message is not None:
        try:
            return await message.edit(content=told, embeds=[], attachments=files, view=view)
        except discord.HTTPException as error:
            if error.code not in (_TOO_MANY_EDITS, _UNKNOWN_MESSAGE):
                raise
            await _removed(message)
            files = [picture.file() for picture in pictures]
    return await channel.send(
        content=told,
        view=view,
        files=files,
        nonce=f"b{board.id}.{board.wish}",
        allowed_mentions=discord.AllowedMentions.none(),
    )


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
