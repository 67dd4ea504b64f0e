"""From a newcomer's own sentences to facts, each with the words that gave it."""

from bot.language.hearing.facts import Ask, Fact, FactName, Heard
from bot.language.hearing.listening import hear

__all__ = ["Ask", "Fact", "FactName", "Heard", "hear"]
