"""What argparse itself says, by its own gettext, in the language that is set."""

import argparse
from collections.abc import Callable
from functools import partial

__all__ = ["speak"]

# Each text of argparse that a caller may meet, and the message that says it.
_MESSAGES = {
    "usage: ": "usage",
    "options": "options",
    "positional arguments": "arguments",
    "show this help message and exit": "help",
    "show program's version number and exit": "version",
    "%(prog)s: error: %(message)s\n": "error",
    "argument %(argument_name)s: %(message)s": "argument",
    "the following arguments are required: %s": "required",
    "one of the arguments %s is required": "one-required",
    "unrecognized arguments: %s": "unknown",
    "invalid choice: %(value)r (choose from %(choices)s)": "choice",
    "invalid %(type)s value: %(value)r": "value",
    "expected one argument": "one",
    "not allowed with argument %s": "beside",
    "ignored explicit argument %r": "ignored",
    "ambiguous option: %(option)s could match %(matches)s": "ambiguous",
}
_LINE = {"usage: ": "{} ", "%(prog)s: error: %(message)s\n": "{}\n"}


def speak(told: Callable[..., str]) -> None:
    """Let argparse say its own words by ``told``, which takes the parts of a message's id.

    What stands in no message stays English. argparse looks its ``_`` up whenever it speaks.
    """
    setattr(argparse, "_", partial(_said, told))  # noqa: B010 (its stub does not name it)


def _said(told: Callable[..., str], text: str) -> str:
    message = _MESSAGES.get(text)
    return _LINE.get(text, "{}").format(told("argparse", message)) if message else text
