"""The buttons under a reminder: to put it off, to end it, to open the case that it tells of."""

import re
from datetime import timedelta
from typing import TYPE_CHECKING, Any, Final, Self

import discord

from bot.commands import command_named
from bot.database.errors import StoreError
from bot.facts import Moment, Say
from bot.fronts.discord.limits import Limited
from bot.fronts.discord.sending import Message, edit_in_place, guarded, send
from bot.fronts.discord.their_clock import OnTheirClock
from bot.questions.saved.reminder import PutOff
from bot.saved.reminders import About, Reminder

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = ["CaseButton", "DoneButton", "SnoozeButton", "buttons_of"]

_SNOOZES: Final = {
    "1": Say("remind-button-day"),
    "7": Say("remind-button-week"),
    "30": Say("remind-button-month"),
}
_NO_MORE: Final = Say("remind-button-off")


def buttons_of(reminder: Reminder, told: OnTheirClock) -> discord.ui.View:
    """Return the buttons under a reminder, by which it is also known again."""
    view = discord.ui.View(timeout=None)
    if reminder.about is About.SHARED:
        view.add_item(CaseButton.of(reminder, told))
    else:
        for days in _SNOOZES:
            view.add_item(SnoozeButton.of(reminder, days, told))
        view.add_item(DoneButton.of(reminder, told))
    view.stop()
    return view


class _ReminderButton(Limited):
    """What the buttons of a reminder share: it is the keeper's alone."""

    @staticmethod
    async def told(interaction: discord.Interaction[Any], words: str) -> None:
        """Change the reminder's message, which loses its buttons."""
        content = interaction.message.content if interaction.message else ""
        await edit_in_place(interaction, Message(f"{content}\n{words}"))


class SnoozeButton(
    _ReminderButton,
    discord.ui.DynamicItem[discord.ui.Button[Any]],
    template=r"rem:(?P<number>\d{1,18}):(?P<occurrence>\d{1,18}):s(?P<days>\d{1,3})",
):
    """Puts a reminder off."""

    def __init__(self, number: int, days: str, custom_id: str, label: str = "…") -> None:
        super().__init__(discord.ui.Button(label=label, custom_id=custom_id))
        self.number, self.days = number, int(days)

    @classmethod
    def of(cls, reminder: Reminder, days: str, told: OnTheirClock) -> Self:
        """Return the button that puts a reminder off by so many days."""
        label = told.text(_SNOOZES[days])
        return cls(reminder.id, days, f"rem:{reminder.id}:{reminder.occurrence}:s{days}", label)

    @classmethod
    async def from_custom_id(
        cls, interaction: discord.Interaction[Any], item: Any, match: re.Match[str], /
    ) -> Self:
        """Return the pressed button."""
        return cls(int(match["number"]), match["days"], match[0])

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Put it off, if it is the presser's own."""
        async with guarded(interaction, "putting a reminder off"):
            client: Noonstone = interaction.client
            memory = client.memory
            if memory is None:
                return
            until = memory.clock() + timedelta(days=self.days)
            try:
                kept = await memory.store.reminders.snooze(interaction.user.id, self.number, until)
            except StoreError as error:
                await send(interaction, Message(str(error)), private=True)
                return
            told = OnTheirClock(await client.preferences_of(interaction))
            if kept is None:
                await send(interaction, _not_yours(client, told), private=True)
                return
            client.metrics.reminders.labels("snoozed").inc()
            client.wake()
            put_off = PutOff(Moment(until, kept.zone))
            await self.told(interaction, told.text(Say("remind-put-off", put_off)))


class CaseButton(
    Limited,
    discord.ui.DynamicItem[discord.ui.Button[Any]],
    template=r"rem:(?P<number>\d{1,18}):(?P<occurrence>\d{1,18}):c(?P<case>\d{1,18})",
):
    """Opens a case that was shared, for whoever presses it and is a helper."""

    def __init__(self, case: str, custom_id: str, label: str = "…") -> None:
        super().__init__(discord.ui.Button(label=label, custom_id=custom_id))
        self.case = case

    @classmethod
    def of(cls, reminder: Reminder, told: OnTheirClock) -> Self:
        """Return the button that opens the case of a reminder."""
        case, label = str(reminder.case or 0), told.text(Say("button-case"))
        return cls(case, f"rem:{reminder.id}:{reminder.occurrence}:c{case}", label)

    @classmethod
    async def from_custom_id(
        cls, interaction: discord.Interaction[Any], item: Any, match: re.Match[str], /
    ) -> Self:
        """Return the pressed button."""
        return cls(match["case"], match[0])

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Show it to the presser alone."""
        command = command_named("cases show")
        assert command is not None
        await interaction.client.answer_saved(interaction, command, {"number": self.case})


class DoneButton(
    _ReminderButton,
    discord.ui.DynamicItem[discord.ui.Button[Any]],
    template=r"rem:(?P<number>\d{1,18}):(?P<occurrence>\d{1,18}):off",
):
    """Ends a reminder for good."""

    def __init__(self, number: int, custom_id: str, label: str = "…") -> None:
        super().__init__(discord.ui.Button(label=label, custom_id=custom_id))
        self.number = number

    @classmethod
    def of(cls, reminder: Reminder, told: OnTheirClock) -> Self:
        """Return the button that ends a reminder."""
        label = told.text(_NO_MORE)
        return cls(reminder.id, f"rem:{reminder.id}:{reminder.occurrence}:off", label)

    @classmethod
    async def from_custom_id(
        cls, interaction: discord.Interaction[Any], item: Any, match: re.Match[str], /
    ) -> Self:
        """Return the pressed button."""
        return cls(int(match["number"]), match[0])

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """End it, if it is the presser's own."""
        async with guarded(interaction, "ending a reminder"):
            client: Noonstone = interaction.client
            memory = client.memory
            if memory is None:
                return
            try:
                gone = await memory.store.reminders.off(interaction.user.id, self.number)
            except StoreError as error:
                await send(interaction, Message(str(error)), private=True)
                return
            told = OnTheirClock(await client.preferences_of(interaction))
            if not gone:
                await send(interaction, _not_yours(client, told), private=True)
                return
            client.metrics.reminders.labels("off").inc()
            await self.told(interaction, told.text(Say("remind-gone")))


def _not_yours(client: "Noonstone", told: OnTheirClock) -> Message:
    return Message(client.clickable(told.text(Say("remind-not-yours"))))
