"""The one error of the language: what was read, what is accepted, an example that works."""

from bot.facts import Say
from bot.language.shown import shown

__all__ = ["NotUnderstoodError"]


class NotUnderstoodError(ValueError):
    """A text could not be read as what was wanted.

    ``read`` is the asker's own text, made short and harmless here, and empty where there was none;
    a message stands where it was no text. ``accepted`` is a message that says what would do,
    ``example`` works as typed, ``option`` is the option's name where it is known.
    """

    def __init__(self, read: str | Say, accepted: Say, example: str, option: str = "") -> None:
        self.read = shown(read) if isinstance(read, str) else read
        self.accepted = accepted
        self.example = example
        self.option = option
        super().__init__(option, self.read, accepted, example)
