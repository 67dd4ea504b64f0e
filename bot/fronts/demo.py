"""An invented newcomer's morning, and every example of every question after it."""

from collections.abc import Callable, Iterator
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Final

from bot.ask import ask
from bot.commands import ALL_COMMANDS
from bot.fronts.gallery import keep_picture
from bot.fronts.listed import said
from bot.fronts.local import LocalDesk
from bot.menu import about_question
from bot.preferences import Preferences
from bot.render.text import render_brief, render_text
from bot.reply import Reply

__all__ = ["MORNING", "Scene", "play", "sample_session"]

_THE_REST = (
    "That was a morning. Where the rest is:\n"
    "  python -m bot demo --all               every question with its examples\n"
    '  python -m bot ask --full "night room:58F animal:corn snake"   all of one answer\n'
    "  python -m bot console                  ask your own\n"
)


@dataclass(frozen=True, slots=True)
class Scene:
    """One moment of the scenario: who says what, and the question that is typed for it."""

    speaker: str
    words: str
    line: str


MORNING: Final = (
    Scene(
        "Odalys",
        "I have a 12 % tube in a polished hood, hung inside, nothing in between. How high?",
        "distance tube:12% reflector:polished screen:none animal:bearded dragon",
    ),
    Scene(
        "Odalys",
        "Two hours in. The stone reads 98 and the far end 75. Is that all right?",
        "temps basking:98F cool:75F lamp_on:3 hours animal:bearded dragon",
    ),
    Scene(
        "Odalys",
        "It is 58 in here before sunrise. Do I have to heat all night?",
        "night room:58F enclosure:48x24x24in material:wood lid:solid animal:bearded dragon",
    ),
    Scene(
        "Ines",
        "I do not know what to ask. I just tell you what I have.",
        (
            "check hi my beardie has a 12% in a shiny hood on top of the mesh, its 14 inches to "
            "the log, basking 98, other side 75, what am i doing wrong"
        ),
    ),
    Scene("Wren", "What is 14 and a half inches in centimetres?", "convert 14 1/2 in"),
)
"""A newcomer's morning: where it hangs, whether it is right."""


def play(
    write: Callable[[str], object],
    preferences: Preferences,
    out: Path | None,
    *,
    every: bool = False,
) -> None:
    """Play the morning, or every example of every question; keep the answers in a folder."""
    if out is not None:
        out.mkdir(parents=True, exist_ok=True)
    with TemporaryDirectory() as kept, closing(LocalDesk("", Path(kept))) as desk:
        for number, (told, line) in enumerate(_examples() if every else _morning(), 1):
            reply = desk.ask(line, preferences)
            write(f"{told}> {line}\n\n")
            write(f"{render_brief(reply)}\n")
            if out is not None:
                _keep(reply, out, f"{number:02d}-{reply.command.replace(' ', '-')}")
    if not every:
        write(_THE_REST)


def _morning() -> Iterator[tuple[str, str]]:
    for scene in MORNING:
        yield f"{scene.speaker}: {scene.words}\n", scene.line


def _examples() -> Iterator[tuple[str, str]]:
    """Yield what every question answers, with its examples: each works after those before it."""
    for command in ALL_COMMANDS:
        told = f"{said(about_question(command.name))}:\n"
        yield from ((told, line) for line in command.examples)


def _keep(reply: Reply, out: Path, name: str) -> None:
    """Keep all of an answer as text, JSON and picture."""
    stem = out / name
    stem.with_suffix(".txt").write_text(render_text(reply), encoding="utf-8")
    stem.with_suffix(".json").write_text(reply.model_dump_json(indent=2), encoding="utf-8")
    keep_picture(reply, out, stem.name)


_SAMPLE = (
    (
        "hi my beardie has a 12% in a shiny hood over a mesh that blocks 45%, its 12 inches to "
        "the log, basking 98, other side 75, what am i doing wrong"
    ),
    "distance tube:12% reflector:plain screen:blocks 45% animal:bearded dragon",
)


def sample_session() -> str:
    """Return a short session as Markdown, as the README shows it."""
    blocks = [f"> {line}\n\n{render_brief(ask(line, Preferences()))}" for line in _SAMPLE]
    return "```text\n" + "\n".join(blocks) + "```\n"
