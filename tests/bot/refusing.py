"""A refusal in English, as the door tells it, and the lines that it gives to be copied."""

import re
from collections.abc import Iterator
from contextlib import contextmanager

import pytest

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.units import Units
from bot.reply import Reply
from bot.saying.voice import voice
from bot.unread import misread

__all__ = ["accepted", "copied", "refused", "said", "sentence"]


def said(say: Say) -> str:
    """Return a message in English."""
    return voice("en", Units.IN).text(say)


def sentence(error: NotUnderstoodError) -> str:
    """Return the whole refusal."""
    return said(misread(error))


def accepted(error: NotUnderstoodError) -> str:
    """Return what would do."""
    return said(error.accepted)


def copied(reply: Reply) -> list[str]:
    """Return the lines that a reply gives to be copied."""
    return [step.partition(": ")[2] for step in reply.steps if step.partition(": ")[2]]


@contextmanager
def refused(pattern: str) -> Iterator[None]:
    """Expect a refusal whose sentence has the pattern in it."""
    with pytest.raises(NotUnderstoodError) as caught:
        yield
    assert re.search(pattern, sentence(caught.value)), sentence(caught.value)
