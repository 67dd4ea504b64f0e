"""The one error of the language: what was read, what is accepted, an example that works."""

__all__ = ["NotUnderstoodError"]


class NotUnderstoodError(ValueError):
    """A text could not be read as what was wanted.

    ``read`` is the asker's own text (shortened), ``accepted`` says what would do, ``example``
    works as typed, ``option`` is the option's name where it is known.
    """

    def __init__(self, read: str, accepted: str, example: str, option: str = "") -> None:
        self.read = read
        self.accepted = accepted
        self.example = example
        self.option = option
        super().__init__(self.sentence())

    def sentence(self) -> str:
        """Return the one plain sentence for the asker."""
        where = f" for {self.option}" if self.option else ""
        return (
            f"I read “{self.read}”{where}, but I need {self.accepted}, for example {self.example}."
        )
