"""An answer ready to be sent: worked out, laid out, with its buttons, and kept for the next asker.

The same few questions are asked all day. What is kept holds for one day, since an answer may tell
of dates, and never an answer from saved data.
"""

from collections.abc import Callable, Hashable
from dataclasses import dataclass
from datetime import UTC, date, datetime
from functools import cache
from typing import Final, Literal

from cachetools import LRUCache

from bot.ask import ask
from bot.commands import COMMANDS, command_named
from bot.completion import complete
from bot.dialogue import said_beside
from bot.facts import Say
from bot.fronts.discord.buttons import rows_for
from bot.fronts.discord.in_card import CardPicture
from bot.fronts.discord.question import Question
from bot.fronts.discord.sending import Message, colour_of
from bot.fronts.discord.sharing import Target
from bot.language.quantities import Units
from bot.preferences import Preferences
from bot.render.mentions import Mention, unnumbered
from bot.render.post import render_post
from bot.reply import PartName, Reply
from bot.serving.failures import note_failure
from bot.serving.flight import Turns

__all__ = ["Answers", "Finished", "Way", "has_two_faces", "laid_out", "warm_up"]

# About 15 kB each.
_MOST_KEPT: Final = 1024


@dataclass(frozen=True, slots=True)
class Way:
    """How an answer will be seen.

    ``public``: by everybody, if it is one. ``alone``: nobody else is there. ``pictures``: there
    is somebody to draw them. ``shareable``: the asker may show it to everybody.
    ``group``: it has moderators. ``helped``: it has helpers that can be asked.
    """

    public: bool
    alone: bool
    pictures: bool
    shareable: bool = True
    group: bool = False
    helped: bool = False


@dataclass(frozen=True, slots=True)
class Finished:
    """An answer as it is sent, and whether everybody may see it.

    ``meant`` is the question that was answered: of free words, the one that they meant, and
    ``perhaps`` that where a danger in them is answered first. ``picture`` goes into a card.
    """

    status: Literal["ok", "problem"]
    public: bool
    message: Message
    meant: Question
    perhaps: Question | None = None
    picture: CardPicture | None = None


def _today() -> date:
    return datetime.now(UTC).date()


class Answers:
    """Answers questions that need no saved data, and keeps the latest answers."""

    def __init__(
        self,
        mention: Mention = unnumbered,
        most: int = _MOST_KEPT,
        today: Callable[[], date] = _today,
    ) -> None:
        self._mention, self._today = mention, today
        self._turns = Turns()
        self._kept: LRUCache[Hashable, Finished] = LRUCache(most)

    async def finished(
        self,
        question: Question,
        preferences: Preferences,
        way: Way,
        about: Target | None = None,
        part: PartName | None = None,
        beside: tuple[Say, ...] = (),
    ) -> Finished:
        """Return the answer; what fails is raised and not kept.

        ``about`` is the message that the question was taken from, whose writer can be answered;
        ``part`` is the part that is open, ``beside`` what the answer says of the line itself.
        """
        given = tuple(question.given.items())
        key = question.command, given, preferences, way, about, part, beside, self._today()
        kept = self._kept.get(key)
        if kept is not None:
            return kept
        # A crowd's first answer leaves before its last is begun.
        async with self._turns:
            reply = said_beside(question.answered(preferences), beside, preferences)
            finished = laid_out(reply, question, way, about, part, self._mention)
        self._kept[key] = finished
        return finished


def laid_out(
    reply: Reply,
    question: Question,
    way: Way,
    about: Target | None = None,
    part: PartName | None = None,
    mention: Mention = unnumbered,
) -> Finished:
    """Return the reply to a question as it is sent."""
    public = way.public and reply.status == "ok"
    meant = Question.of(reply.meant) or question
    rows = rows_for(
        reply,
        meant,
        private=way.shareable and not (public or way.alone),
        own=not public,
        swap_to=_swap(reply),
        about=about,
        pictures=way.pictures,
        part=part,
        group=way.group,
        helped=way.helped,
    )
    post, colour = render_post(reply, part, mention=mention), colour_of(reply)
    message = Message(post=post, rows=rows, card=not public, colour=colour)
    perhaps = Question.of(reply.perhaps)
    # What is urgent waits for no picture.
    drawn = way.pictures and not (public or reply.dangers) and reply.picture
    picture = CardPicture(drawn, reply.command) if drawn else None
    return Finished(reply.status, public, message, meant, perhaps, picture)


def _swap(reply: Reply) -> Units | None:
    """Return the unit that could stand first instead, if that changes such answers."""
    if reply.status != "ok" or not reply.units:
        return None
    try:
        two_faces = has_two_faces(reply.command)
    except Exception as error:
        # An answer must not be lost because the example beside it is broken.
        note_failure(error, f"trying the examples of {reply.command}")
        return None
    other = Units.CM if Units(reply.units) is Units.IN else Units.IN
    return other if two_faces else None


@cache
def has_two_faces(name: str) -> bool:
    """Say whether a question's answers differ by the unit shown first, told by its examples."""
    command = command_named(name)
    for example in command.examples if command else ():
        inches, centimetres = (ask(example, Preferences(forced_units=u)) for u in Units)
        if inches.model_copy(update={"units": centimetres.units}) != centimetres:
            return True
    return False


@cache
def warm_up() -> None:
    """Load what the first question would otherwise wait for while the heart beats, once."""
    for command in COMMANDS:
        try:
            render_post(ask(command.examples[0], Preferences()))
            for option in command.query.options():
                complete(command.name, option.name, "")
        except Exception as error:
            # One broken question must not keep the others from being answered.
            note_failure(error, f"warming up {command.name}")
