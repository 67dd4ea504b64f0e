"""The one error of the language: what was read, what is accepted, an example that works."""

from bot.language.shown import shown

__all__ = ["NotUnderstoodError"]


class NotUnderstoodError(ValueError):
    """A text could not be read as what was wanted.

    ``read`` is the asker's own text, made short and harmless here, ``accepted`` says what would
    do, ``example`` works as typed, ``option`` is the option's name where it is known.
    """

    def __init__(self, read: str, accepted: str, example: str, option: str = "") -> None:
        self.read = shown(read) or "nothing"
        self.accepted = accepted
        self.example = example
        self.option = option
        super().__init__(self.sentence())

    def sentence(self) -> str:
        """Return the one plain sentence for the asker."""
        where = f" for {self.option}" if self.option else ""
        read = self.read if self.read == "nothing" else f"“{self.read}”"
        return f"I read {read}{where}, but I need {self.accepted}, for example {self.example}."
