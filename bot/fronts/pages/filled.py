"""A page of the guide with its figures in their places, as the site shows it."""

from dataclasses import replace

from bot import guide
from bot.preferences import Context
from bot.questions.general.guide import filled
from bot.saying.voice import Voice

__all__ = ["filled_page"]


def filled_page(page: guide.Page, voice: Voice) -> guide.Page:
    """Return the page as the voice says it."""
    return replace(page, body=voice.text(filled(page.body, page, Context(voice.units))))
