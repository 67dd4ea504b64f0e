"""A question as a value: its name and the values of its options."""

from collections.abc import Mapping
from dataclasses import dataclass

from bot.language.normal import encodable
from bot.language.words import join_line
from bot.queries.typed import typed_all

__all__ = ["Question"]


@dataclass(frozen=True, slots=True, eq=False)
class Question:
    """A question's name and the values of its options.

    A value is what its option holds once it is read, or the text that was typed for it. Two are
    the same that are typed the same.
    """

    command: str
    values: Mapping[str, object]

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, Question):
            return NotImplemented
        return (self.command, self.given) == (other.command, other.given)

    def __hash__(self) -> int:
        return hash((self.command, *self.given.items()))

    @property
    def given(self) -> dict[str, str]:
        """The options as somebody would type them."""
        return typed_all(self.values)

    def encodable(self) -> "Question":
        """Return the question with texts that can be written: see :func:`encodable`."""
        values = self.values.items()
        plain = {name: encodable(v) if isinstance(v, str) else v for name, v in values}
        return Question(self.command, plain)

    def line(self) -> str:
        """Return the question as a line that can be asked again."""
        return join_line(self.command, self.given)
