"""What would do in place of a text that could not be read: facts of messages in ``wanted.ftl``."""

from dataclasses import dataclass

from bot.facts import Say

__all__ = ["Choice", "Closest", "EitherOf", "SecondWord", "Spelled", "UpTo", "Whole", "number_told"]


@dataclass(frozen=True, slots=True)
class Choice:
    """One of a few words; ``near`` is the one that was probably meant."""

    names: tuple[str | Say, ...]
    near: str | Say | None = None


@dataclass(frozen=True, slots=True)
class Closest:
    """What was probably meant, if anything known is near."""

    near: str | None


@dataclass(frozen=True, slots=True)
class EitherOf:
    """The two ways in which a text may be read."""

    one: str
    other: str


@dataclass(frozen=True, slots=True)
class SecondWord:
    """The words that may stand behind the first one of a question."""

    first: str
    seconds: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Spelled:
    """A name or a number as it is typed."""

    text: str


@dataclass(frozen=True, slots=True)
class UpTo:
    """The most of something that is taken."""

    most: int


@dataclass(frozen=True, slots=True)
class Whole:
    """What is accepted, of which not every one will do."""

    what: Say


def number_told(number: float) -> Spelled:
    """Return a number as people type it, such as ``98`` or ``37.5``."""
    return Spelled(f"{number:g}")
