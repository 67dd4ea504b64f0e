"""Messages of dangers in words, as the tests look for them."""

from bot.facts import Say
from bot.language.units import Units
from bot.saying.voice import voice

__all__ = ["english"]


def english(say: Say) -> str:
    """Return a message in English, inches first."""
    return voice("en", Units.IN).text(say)
