"""A voice that tells moments as Discord does: on the clock and in the words of whoever reads."""

from bot.facts import Moment
from bot.preferences import Preferences
from bot.saying.voice import Voice
from bot.saying.words import words

__all__ = ["OnTheirClock"]


class OnTheirClock(Voice):
    """Says messages that go out as they are, moments as Discord's own marks."""

    def __init__(self, asker: Preferences) -> None:
        super().__init__(words(asker.spoken), asker.shown)

    def moment(self, value: Moment) -> str:
        """Return a moment as a mark that each reader sees on the own clock."""
        return f"<t:{int(value.at.timestamp())}:F>"
