"""Reminders delivered: once each, by direct message or in a channel, with buttons to answer them.

A message carries its reminder and which delivery it is in the ids of its buttons. Where a claim
was left by another process, those ids are looked for before anything is sent; and Discord takes
one number (nonce) once.
"""

import asyncio
import logging
from datetime import datetime, timedelta
from typing import TYPE_CHECKING, Final

import aiohttp
import discord

from bot.asker import preferred
from bot.desk import Desk
from bot.fronts.discord.reminder_buttons import buttons_of
from bot.fronts.discord.their_clock import OnTheirClock
from bot.questions.saved.reminder import due_said, remembered
from bot.render.escaping import escape
from bot.saved.reminders import About, Due, Reminder, Trouble
from bot.serving.hands import EACH_WITHIN_S, Hands

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone
    from bot.serving.memory import Memory

__all__ = ["deliver_due"]

_log = logging.getLogger(__name__)

_LONGEST_WAIT_S: Final = 60.0
_LATE: Final = timedelta(minutes=10)
_RETRY: Final = timedelta(minutes=5)
_TRIES: Final = 12
_LOOKED_AT: Final = 50
_DM_CLOSED: Final = 50007


async def deliver_due(client: "Noonstone", memory: "Memory", hands: Hands) -> float:
    """Deliver what is due, and return how many seconds the next round may wait."""
    reminders = memory.store.reminders
    await hands.work_off(
        lambda most: reminders.claim(hands.by, memory.clock(), most),
        lambda due: _deliver(client, memory, hands, due),
    )
    following = await reminders.next_try()
    if following is None:
        return _LONGEST_WAIT_S
    wait_s = (following - memory.clock()).total_seconds()
    return min(max(wait_s, 0.5), _LONGEST_WAIT_S)


async def _deliver(client: "Noonstone", memory: "Memory", hands: Hands, due: Due) -> None:
    reminder, reminders, by = due.reminder, memory.store.reminders, hands.by
    now = memory.clock()
    outcome = "late" if now - reminder.due > _LATE else "delivered"
    try:
        async with asyncio.timeout(EACH_WITHIN_S):
            channel = await _where_to(client, memory, hands, due)
            if channel is not None:
                told = await _voice_for(client, memory, reminder)
                await _send(client, channel, reminder, now, told)
        if not await reminders.delivered(reminder, by, now):
            return
    except (discord.NotFound, discord.Forbidden) as error:
        hands.pace.refused()
        outcome = await _closed(memory, hands, reminder, error)
    except discord.RateLimited as error:
        outcome = "put off"
        await reminders.failed(reminder, by, now + timedelta(seconds=error.retry_after))
    except (discord.DiscordServerError, aiohttp.ClientError, TimeoutError) as error:
        # It may have arrived: the claim runs out, and the next one looks first.
        outcome = "unsure"
        _log.warning("not sure whether a reminder arrived: %s", type(error).__name__)
    except discord.HTTPException as error:
        _log.warning("a reminder was refused (%s %s)", error.status, error.code)
        outcome = await _refused(memory, hands, due)
    client.metrics.reminders.labels(outcome).inc()


async def _closed(
    memory: "Memory", hands: Hands, reminder: Reminder, error: discord.HTTPException
) -> str:
    """Turn a reminder whose channel is closed to a direct message, or give up; say which."""
    if reminder.channel is not None:
        _log.info("a channel takes no reminder any more (%s)", error.code)
        await memory.store.reminders.by_message(reminder, hands.by, memory.clock())
        return "put off"
    trouble = Trouble.DM_CLOSED if error.code == _DM_CLOSED else Trouble.NO_RIGHT
    _log.info("a person takes no direct message (%s)", error.code)
    await memory.store.reminders.stop(reminder, hands.by, trouble)
    return "undeliverable"


async def _refused(memory: "Memory", hands: Hands, due: Due) -> str:
    """Try again later what Discord did not take; what it never takes goes another way, or ends."""
    reminder, reminders, now = due.reminder, memory.store.reminders, memory.clock()
    if due.failures + 1 < _TRIES:
        await reminders.failed(reminder, hands.by, now + _RETRY)
        return "put off"
    if reminder.channel is not None:
        await reminders.by_message(reminder, hands.by, now)
        return "put off"
    await reminders.stop(reminder, hands.by, Trouble.REFUSED)
    return "undeliverable"


async def _where_to(
    client: "Noonstone", memory: "Memory", hands: Hands, due: Due
) -> discord.abc.Messageable | None:
    """Return where a reminder is to be sent, or None where it was sent already."""
    try:
        await hands.pace.turn()
        channel = await _channel(client, due.reminder)
        sent = due.unsure and await _was_sent(channel, due.reminder)
    except asyncio.CancelledError:
        if hands.resting:
            # Nothing was sent yet, so the next process need not wait until the claim runs out.
            await memory.store.reminders.released(due, hands.by, memory.clock())
        raise
    return None if sent else channel


async def _channel(client: "Noonstone", reminder: Reminder) -> discord.abc.Messageable:
    if reminder.channel is not None:
        return client.get_partial_messageable(reminder.channel)
    return await client.create_dm(discord.Object(reminder.keeper))


async def _was_sent(channel: discord.abc.Messageable, reminder: Reminder) -> bool:
    wanted = f"rem:{reminder.id}:{reminder.occurrence}:"
    async for message in channel.history(limit=_LOOKED_AT):
        for row in message.components:
            for part in getattr(row, "children", ()):
                if (getattr(part, "custom_id", None) or "").startswith(wanted):
                    return True
    return False


async def _voice_for(client: "Noonstone", memory: "Memory", reminder: Reminder) -> OnTheirClock:
    """Return who speaks to a keeper as that keeper wants to be spoken to."""
    where = reminder.server, reminder.channel
    desk = Desk(memory.store, reminder.keeper, *where, moderator=False, now=memory.clock())
    return OnTheirClock(await preferred(client.preferences(), desk))


async def _send(
    client: "Noonstone",
    channel: discord.abc.Messageable,
    reminder: Reminder,
    now: datetime,
    told: OnTheirClock,
) -> None:
    keeper = discord.Object(reminder.keeper, type=discord.User)
    to_channel = reminder.channel is not None
    # Whoever shares a case with helpers is not named.
    named = to_channel and reminder.about is not About.SHARED
    lead = f"<@{reminder.keeper}>, " if named else ""
    await channel.send(
        lead + client.clickable(_words(reminder, now, told)),
        view=buttons_of(reminder, told),
        nonce=f"r{reminder.id}.{reminder.occurrence}",
        allowed_mentions=discord.AllowedMentions(
            everyone=False, roles=False, users=[keeper] if named else False
        ),
    )


def _words(reminder: Reminder, now: datetime, told: OnTheirClock) -> str:
    facts = remembered(
        reminder,
        name=reminder.enclosure and escape(reminder.enclosure),
        late=now - reminder.due > _LATE,
    )
    return "\n".join(map(told.text, due_said(facts)))
