"""What is taken away of a group's own figures, of any kind."""

from bot.answers.animals import animal_asked
from bot.desk import Desk
from bot.keeping.places import server_of
from bot.keeping.targets import NEXT, SUBJECTS, WORDS
from bot.kept.group import Figure, Own, OwnAnimal
from bot.language.errors import NotUnderstoodError
from bot.preferences import Context
from bot.queries.server import DropQuery
from bot.reply import Reply
from calc.animals import animal_name, own_slug

__all__ = ["drop"]


async def drop(query: DropQuery, context: Context, desk: Desk) -> Reply:
    """Take a figure of the group's own away."""
    server = server_of(desk)
    own = await desk.store.figures.own(server)
    found, name = _asked(query, own, context)
    if found is None or not await desk.store.figures.remove(server, found, desk.by):
        known = [*(x.name for x in own.lamps), *(x.name for x in own.screens)]
        known += own.names
        known += [f"{animal_name(x.animal)} {WORDS[x.subject]}" for x in own.targets]
        raise NotUnderstoodError(
            name,
            f"a figure that the group has ({', '.join(known) or 'none so far'})",
            "server show",
        )
    await desk.store.boards.look_again(desk.now, server)
    gone = own_slug(found.name) if isinstance(found, OwnAnimal) else ""
    boards = [b for b in await desk.store.boards.all(server) if gone and b.animal == gone]
    return Reply(
        command="server remove",
        status="ok",
        title="Taken away",
        answer=f"The group's own {name} is gone; answers here go by ours again.",
        steps=NEXT,
        cautions=tuple(
            f"The board about {board.topic.value} still shows it: take it down, in its channel, "
            f"with board remove topic:{board.topic.value}"
            for board in boards
        ),
    )


def _asked(query: DropQuery, own: Own, context: Context) -> tuple[Figure | None, str]:
    """Return the figure that is asked for, if the group has it, and its name in words."""
    if query.lamp:
        return own.lamp(query.lamp), f"lamp “{query.lamp}”"
    if query.screen:
        return own.screen(query.screen), f"screen “{query.screen}”"
    if query.animal and not query.of:
        return own.animal(query.animal), f"animal “{query.animal}”"
    if query.animal and query.of:
        animal = animal_asked(query.animal, context)
        subject, name = SUBJECTS[query.of], f"target for {animal.name}, {query.of}"
        ours = own.targets_of(animal.slug)
        return next((x for x in ours if x.subject is subject), None), name
    raise NotUnderstoodError(
        "nothing to take away",
        "a lamp, a screen, an animal of the group's own, or an animal and which of its targets",
        "server remove lamp:Hood by the door",
    )
