"""A setting that cannot be, and what it takes, for whoever runs the program."""

from dataclasses import dataclass

from pydantic import ValidationError

from bot.facts import Say
from bot.language.shown import shown
from bot.settings import PREFIX, ShardsError

__all__ = ["setting_refused"]


@dataclass(frozen=True, slots=True)
class Unset:
    """A setting that cannot be what it is, and what it takes."""

    name: str
    text: str
    takes: Say


@dataclass(frozen=True, slots=True)
class ShardCount:
    """How many shards there are, or may be at most."""

    count: int

    @property
    def last(self) -> int:
        """Return the number of the last shard."""
        return self.count - 1


def setting_refused(error: ValidationError) -> Say:
    """Return what the first setting that cannot be is, and what it takes."""
    first = error.errors()[0]
    name = str(first["loc"][0])
    cause = first.get("ctx", {}).get("error")
    takes = Say.of("run-takes", name)
    if isinstance(cause, ShardsError):
        takes = Say.by("run-takes-shards", cause.fault, ShardCount(cause.count))
    text = shown(str(first["input"]))
    return Say("run-setting", Unset(PREFIX + name.upper(), text, takes))
