"""A page of the guide with the figures of its animal in their places, as the site shows it."""

from dataclasses import replace

from bot import guide
from bot.preferences import Context
from bot.questions.general.guide import filled
from bot.saying.voice import Voice

__all__ = ["filled_page"]


def filled_page(page: guide.Page, voice: Voice) -> guide.Page:
    """Return the page as the voice says it; one without an animal is as it is."""
    if page.animal is None:
        return page
    return replace(page, body=voice.text(filled(page.body, page, Context(voice.units))))
