"""An invented scenario: a newcomer's morning, and a whole day through every question."""

from collections.abc import Callable
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory

from bot.ask import ask
from bot.fronts.gallery import keep_picture
from bot.fronts.local import LocalDesk
from bot.preferences import Preferences
from bot.render.text import render_brief, render_text
from bot.reply import Reply

__all__ = ["MORNING", "SCENES", "Scene", "play", "sample_session"]

_THE_REST = (
    "That was a morning. Where the rest is:\n"
    "  python -m bot demo --all               every question, a whole day\n"
    '  python -m bot ask --full "night room:58F animal:corn snake"   all of one answer\n'
    "  python -m bot console                  ask your own\n"
)


@dataclass(frozen=True, slots=True)
class Scene:
    """One moment of the scenario: who says what, and the question that is typed for it."""

    speaker: str
    words: str
    line: str


SCENES: tuple[Scene, ...] = (
    Scene("Odalys", "New here. My dragon Pebble arrives on Saturday. What can I ask?", "help"),
    Scene("Odalys", "What does a bearded dragon need at all?", "needs bearded dragon"),
    Scene(
        "Odalys",
        "I have a 12 % tube in a polished hood, hung inside, nothing in between. How high?",
        "distance tube:12% reflector:polished screen:none animal:bearded dragon",
    ),
    Scene(
        "Tibor",
        "Mine lies on a mesh lid, the shop said it blocks 45 %. I measure in centimetres.",
        "uvi distance:35cm tube:12% reflector:polished screen:blocks 45% animal:bearded dragon",
    ),
    Scene(
        "Tibor",
        "And a 6 % in a plain fixture over the same lid, would that do?",
        "distance tube:6% reflector:plain screen:blocks 45% animal:bearded dragon",
    ),
    Scene(
        "Wren",
        "My shelf fixes the tube at 14 inches, four-foot enclosure. Which tube do I buy?",
        "tube distance:14in screen:none animal:bearded dragon enclosure:4ft",
    ),
    Scene(
        "Wren",
        "I borrowed a UV meter. What does it say of my own tube?",
        "meter readings:4.2 at 12 in, 3.4 at 13.5 in, 2.9 at 15 in animal:bearded dragon",
    ),
    Scene(
        "Wren",
        "Here is what I wrote down since spring, always at the same place.",
        "decline readings:2026-03-07 4.6, 2026-06-06 4.2, 2026-09-05 3.7 animal:bearded dragon",
    ),
    Scene(
        "Tibor",
        "Where in my box is the UV, and where is shade?",
        (
            "section tube:12% reflector:polished screen:none distance:40cm "
            "enclosure:120x60x60cm animal:bearded dragon"
        ),
    ),
    Scene(
        "Tibor",
        "Is that too much for her, and for me when I clean?",
        "dose uvi:4 hours:4 latitude:27S month:December",
    ),
    Scene(
        "Odalys",
        "My cousin starts from an empty wooden box. What does he buy, and where does it all go?",
        (
            "plan animal:bearded dragon enclosure:48x24x24in lid:solid material:wood room:70F "
            "night:58F"
        ),
    ),
    Scene(
        "Tibor",
        "Mine is only 25 cm high, with a mesh lid. Can that be done at all?",
        "plan animal:bearded dragon enclosure:120x60x25cm lid:full mesh room:21C",
    ),
    Scene(
        "Tibor",
        "People ask that every day. Is there one table for the group?",
        "card animal:bearded dragon",
    ),
    Scene(
        "Odalys",
        "Two hours in. The stone reads 98 and the far end 75. Is that all right?",
        "temps basking:98F cool:75F lamp_on:3 hours animal:bearded dragon",
    ),
    Scene(
        "Tibor",
        "My stone is at 47 °C, the air beside it at 27, the 75 W lamp hangs 25 cm above. Too hot?",
        "basking surface:44C air:27C distance:25cm watts:75W animal:bearded dragon",
    ),
    Scene(
        "Wren",
        "I have no lamp yet. Room at 70, lamp ten inches up. How many watts?",
        "watts room:70F distance:10in lamp:flood animal:bearded dragon",
    ),
    Scene(
        "Wren",
        "Will one 75 W lamp warm a wooden four-by-two-by-two in a cool room?",
        "air enclosure:48x24x24in material:wood lid:solid room:68F watts:75W animal:bearded dragon",
    ),
    Scene(
        "Odalys",
        "It is 58 in here before sunrise. Do I have to heat all night?",
        "night room:58F enclosure:48x24x24in material:wood lid:solid animal:bearded dragon",
    ),
    Scene(
        "Tibor",
        "My gun says 37 °C on slate. Can I believe it?",
        "surface reading:37C material:slate",
    ),
    Scene("Odalys", "Somebody gave me a red lamp. Any use?", "lamp red lamp"),
    Scene(
        "Ines",
        "I do not know what to ask. I just tell you what I have.",
        (
            "check hi my beardie has a 12% in a shiny hood on top of the mesh, its 14 inches to "
            "the log, basking 98, other side 75, what am i doing wrong"
        ),
    ),
    Scene(
        "Ines",
        "The mesh blocks 45 %, I looked it up, and it is 13 inches to his back.",
        (
            "check hi my beardie has a 12% in a shiny hood on top of the mesh, basking 98, other "
            "side 75, what am i doing wrong screen:45% distance:13in"
        ),
    ),
    Scene(
        "Ines",
        "And my corn snake?",
        "do i need heat at night for my corn snake if the room drops to 61F",
    ),
    Scene("Odalys", "And when do the lights go on?", "hours on:7:30 animal:bearded dragon"),
    Scene(
        "Wren",
        "I would like its own seasons, in my time.",
        "hours latitude:home months:turned zone:America/Chicago year:2026 animal:bearded dragon",
    ),
    Scene("Wren", "What is 14 and a half inches in centimetres?", "convert 14 1/2 in"),
    Scene("Tibor", "And if it should be 10 °F warmer?", "convert difference 10F"),
    Scene("Odalys", "From where to where do I measure?", "guide measuring-the-distance"),
    Scene("Wren", "fourteen something, no unit", "convert 14"),
    Scene(
        "Wren",
        "I look after this group. Our workshop hood was read twice, so keep it for everybody.",
        "server lamp name:Workshop hood readings:4.2 at 12 in, 2.9 at 15 in length:34in",
    ),
    Scene(
        "Tibor",
        "Good, mine is one of those.",
        "distance tube:workshop hood reflector:plain screen:none animal:bearded dragon",
    ),
    Scene(
        "Odalys",
        "I would like to keep notes from now on.",
        "mine save name:Pebble's box animal:bearded dragon tube:12% reflector:polished "
        "screen:none distance:16in",
    ),
    Scene("Odalys", "Today's numbers.", "mine reading uvi:4.3 basking:102F cool:79F"),
    Scene("Odalys", "And how is it doing?", "mine show"),
    Scene("Odalys", "Wake me when I should read again.", "remind me about:meter"),
    Scene(
        "Wren",
        "What would a pinned board say?",
        "board preview topic:temperatures animal:bearded dragon",
    ),
    Scene("Wren", "What is asked here, and which page does nobody open?", "server stats"),
    Scene("Odalys", "Give me all you keep of mine.", "mine export"),
    Scene("Odalys", "Who keeps what I type?", "about"),
)


# Where a newcomer's morning goes: what to buy, where it hangs, whether it is right.
_OF_THE_MORNING = ("distance", "temps", "night", "check", "convert")
MORNING: tuple[Scene, ...] = tuple(
    next(scene for scene in SCENES if scene.line.split()[0] == name) for name in _OF_THE_MORNING
)
"""The scenes that are shown first."""


def play(
    write: Callable[[str], object],
    preferences: Preferences,
    out: Path | None,
    *,
    every: bool = False,
) -> None:
    """Play the morning, or every scene; with a folder, keep each answer there as files."""
    if out is not None:
        out.mkdir(parents=True, exist_ok=True)
    with TemporaryDirectory() as kept, closing(LocalDesk("", Path(kept))) as desk:
        for number, scene in enumerate(SCENES if every else MORNING, 1):
            reply = desk.ask(scene.line, preferences)
            write(f"{scene.speaker}: {scene.words}\n> {scene.line}\n\n")
            write(f"{render_brief(reply)}\n")
            if out is not None:
                _keep(reply, out, f"{number:02d}-{reply.command.replace(' ', '-')}")
    if not every:
        write(_THE_REST)


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
