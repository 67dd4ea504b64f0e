"""An invented newcomer's morning, and every example of every question after it."""

from collections.abc import Callable, Iterator
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Final

from bot.ask import ask
from bot.commands import ALL_COMMANDS
from bot.facts import Say
from bot.fronts.gallery import keep_picture
from bot.fronts.local import LocalDesk
from bot.fronts.printing import MORE_FULL, around
from bot.menu import about_question
from bot.preferences import Preferences
from bot.render.text import render_brief, render_text
from bot.reply import Reply
from bot.saying.voice import voice

__all__ = ["MORNING", "Scene", "play", "sample_session"]


@dataclass(frozen=True, slots=True)
class Scene:
    """One moment of the scenario: who says what, and the question that is typed for it.

    What is typed in the speaker's own words is a message too.
    """

    speaker: str
    words: Say
    line: str | Say


MORNING: Final = (
    Scene(
        "Odalys",
        Say("demo-distance"),
        "distance tube:12% reflector:polished screen:none animal:bearded dragon",
    ),
    Scene(
        "Odalys",
        Say("demo-temps"),
        "temps basking:98F cool:75F lamp_on:3 hours animal:bearded dragon",
    ),
    Scene(
        "Odalys",
        Say("demo-night"),
        "night room:58F enclosure:48x24x24in material:wood lid:solid animal:bearded dragon",
    ),
    Scene("Ines", Say("demo-check"), Say("demo-typed-check")),
    Scene("Wren", Say("demo-convert"), "convert 14 1/2 in"),
)
"""A newcomer's morning: where it hangs, whether it is right."""
_THE_REST: Final = {
    "python -m bot demo --all": Say("demo-rest-all"),
    'python -m bot ask --full "night room:58F animal:corn snake"': Say("demo-rest-full"),
    "python -m bot console": Say("demo-rest-console"),
}


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
        speak = voice(preferences.spoken, preferences.shown).text
        played = _examples(speak) if every else _morning(speak)
        for number, (told, line) in enumerate(played, 1):
            reply = desk.ask(line, preferences)
            write(f"{told}> {line}\n\n")
            write(f"{render_brief(reply, more=around(reply, MORE_FULL))}\n")
            if out is not None:
                _keep(reply, out, f"{number:02d}-{reply.command.replace(' ', '-')}")
    if not every:
        write("\n".join((speak(Say("demo-rest")), *_rest(speak), "")))


def _morning(speak: Callable[[Say], str]) -> Iterator[tuple[str, str]]:
    for scene in MORNING:
        line = speak(scene.line) if isinstance(scene.line, Say) else scene.line
        yield f"{scene.speaker}: {speak(scene.words)}\n", line


def _rest(speak: Callable[[Say], str]) -> Iterator[str]:
    width = max(map(len, _THE_REST))
    for command, about in _THE_REST.items():
        yield f"  {command:<{width}}  {speak(about)}"


def _examples(speak: Callable[[Say], str]) -> Iterator[tuple[str, str]]:
    """Yield what every question answers, with its examples: each works after those before it."""
    for command in ALL_COMMANDS:
        told = f"{speak(about_question(command.name))}:\n"
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
