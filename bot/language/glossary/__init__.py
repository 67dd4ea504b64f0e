"""Text of another language brought to the words that hearing has: one table a language."""

from bot.language.glossary.chosen import chosen
from bot.language.glossary.reading import glossed

__all__ = ["chosen", "glossed"]
