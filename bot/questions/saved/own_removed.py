"""What is taken away of a group's own figures, of any kind. Words: ``kept.ftl``."""

from dataclasses import dataclass
from enum import Enum, auto

from bot.command import Command
from bot.desk import Desk
from bot.facts import Name, Say, Says
from bot.language.shown import shown
from bot.layered import Brief, Care, Layered
from bot.preferences import Context
from bot.queries.server import DropQuery
from bot.questions.animals import animal_asked
from bot.questions.saved.own_targets import SUBJECTS
from bot.questions.saved.own_uv import KEPT_NEXT
from bot.questions.saved.unable import server_of, unable
from bot.questions.shared import animal_name, name_of
from bot.saved.boards import Topic
from bot.saved.group import Figure, Own, OwnAnimal, OwnTarget
from calc.animal import Subject
from calc.animals import own_slug

__all__ = ["SERVER_REMOVE", "remove", "tell_removed"]

_REMOVE = "server remove"
_MOST_KNOWN = 5


class OwnKind(Enum):
    """Of what kind a figure of the group's own is."""

    LAMP = auto()
    SCREEN = auto()
    ANIMAL = auto()
    TARGET = auto()


@dataclass(frozen=True, slots=True)
class OwnThing:
    """A lamp, a screen or an animal of the group's own by its name."""

    kind: OwnKind
    name: str


@dataclass(frozen=True, slots=True)
class OwnAim:
    """A target of the group's own: of which animal, and of what."""

    animal: Name
    of: Subject


@dataclass(frozen=True, slots=True)
class OwnGone:
    """A figure that was taken away, and the boards that still show it."""

    what: Say
    kind: OwnKind
    boards: tuple[Topic, ...]


@dataclass(frozen=True, slots=True)
class BoardLeft:
    """A board that shows an animal that is gone."""

    topic: Topic

    @property
    def typed(self) -> str:
        """Return the topic as it is typed."""
        return self.topic.value


@dataclass(frozen=True, slots=True)
class OwnKnown:
    """What of the group's own there is."""

    known: tuple[Say, ...]


async def remove(query: DropQuery, context: Context, desk: Desk) -> OwnGone:
    """Take a figure of the group's own away."""
    server = server_of(desk, _REMOVE)
    own = await desk.store.figures.own(server)
    kind, found, asked = _asked(query, own, context)
    if found is None or not await desk.store.figures.remove(server, found, desk.by):
        figures: tuple[Figure, ...] = (*own.lamps, *own.screens, *own.animals, *own.targets)
        known = tuple(map(_named, figures))
        told = OwnKnown(known[:_MOST_KNOWN])
        there = Say("kept-known", told) if known else Say("kept-known-none")
        raise unable(_REMOVE, Say("kept-no-such"), there, example="server show")
    await desk.store.boards.look_again(desk.now, server)
    gone = own_slug(found.name) if isinstance(found, OwnAnimal) else ""
    boards = [b for b in await desk.store.boards.all(server) if gone in b.animals]
    return OwnGone(asked, kind, tuple(board.topic for board in boards))


def _named(figure: Figure) -> Say:
    if isinstance(figure, OwnTarget):
        return Say("kept-aim", OwnAim(name_of(figure.animal), figure.subject))
    return Say("kept-name", OwnThing(OwnKind.LAMP, figure.name))


def _asked(query: DropQuery, own: Own, context: Context) -> tuple[OwnKind, Figure | None, Say]:
    """Return the figure that is asked for, if the group has it, and what it is."""
    if query.lamp:
        return OwnKind.LAMP, own.lamp(query.lamp), _thing(OwnKind.LAMP, query.lamp)
    if query.screen:
        return OwnKind.SCREEN, own.screen(query.screen), _thing(OwnKind.SCREEN, query.screen)
    if query.animal and not query.of:
        return OwnKind.ANIMAL, own.animal(query.animal), _thing(OwnKind.ANIMAL, query.animal)
    if query.animal and query.of:
        animal, subject = animal_asked(query.animal, context), SUBJECTS[query.of]
        ours = (x for x in own.targets_of(animal.slug) if x.subject is subject)
        return (
            OwnKind.TARGET,
            next(ours, None),
            Say("kept-aim", OwnAim(animal_name(animal), subject)),
        )
    example = "server remove lamp:Hood by the door"
    raise unable(_REMOVE, Say("kept-no-thing"), Say("kept-no-thing-how"), example=example)


def _thing(kind: OwnKind, name: str) -> Say:
    return Say("kept-thing", OwnThing(kind, shown(name)))


def tell_removed(facts: OwnGone) -> Layered:
    """Tell what is gone, and which boards still show it."""
    say = Says("kept", facts)
    boards = tuple(Care(Say("kept-care-board", BoardLeft(topic))) for topic in facts.boards)
    ours = (say("ours-again"),) if facts.kind is OwnKind.TARGET else ()
    return Layered(
        command=_REMOVE,
        title=say("gone-title"),
        brief=Brief(head=say("gone"), range=ours),
        steps=KEPT_NEXT,
        care=boards,
    )


SERVER_REMOVE = Command(
    name="server remove",
    form=True,
    deletes=True,
    query=DropQuery,
    stored=remove,
    tell=tell_removed,
    examples=(
        "server remove screen:Fine mesh",
        "server remove animal:bearded dragon of:uvi",
        "server remove animal:Moss lizard",
    ),
    who="moderator",
)
