"""Where the minutes begin: for each target, inputs that go deep before anything is changed."""

from collections.abc import Iterator, Sequence

from bot.command import Command
from bot.commands import ALL_COMMANDS, COMMANDS
from bot.fronts.discord.question import Question
from tests.fuzz.files import FILES
from tests.fuzz.pool import FREE, examples_of, packed
from tests.fuzz.test_strangers import WORDS

__all__ = ["dictionary", "seeds_of"]

Seed = tuple[int, str]


def seeds_of(target: str) -> Iterator[Seed]:
    """Yield the inputs that a target begins with."""
    yield from enumerate([*FILES, *WORDS])
    match target:
        case "ask" | "page" | "hearing" | "dangers":
            yield from ((0, text) for text in FREE)
        case "options" | "button":
            yield from _filled(COMMANDS)
        case "desk":
            yield from _filled([command for command in ALL_COMMANDS if command.stored])
        case "pool":
            yield from ((number, "-" * 20) for number in range(4 * len(ALL_COMMANDS)))
        case "file" | "import":
            yield from ((2 + 4 * place, word) for place in range(0, 600, 5) for word in ("", "-1"))
        case "press":
            yield from ((0, custom_id) for custom_id in _custom_ids())


def _filled(commands: Sequence[Command]) -> Iterator[Seed]:
    for number, command in enumerate(commands):
        yield from ((number, packed(command, given)) for given in examples_of(command))


def _custom_ids() -> Iterator[str]:
    for command in COMMANDS:
        for given in examples_of(command):
            question = Question(command.name, given)
            yield from (question.custom_id(prefix) for prefix in ("e:", "u:in:", "u:cm:", "f:"))


def dictionary() -> str:
    """Return the words that are put in while fuzzing, in the form that libFuzzer reads."""
    words = {*WORDS, *(option.name for c in ALL_COMMANDS for option in c.query.options())}
    told = (word.encode("utf-8", "replace") for word in words)
    return "\n".join(_quoted(word) for word in sorted(told) if 0 < len(word) <= 60)


def _quoted(word: bytes) -> str:
    return '"' + "".join(f"\\x{byte:02x}" for byte in word) + '"'
