"""Pictures of what a group usually asks, drawn before anybody asks: then they lie in the card."""

from datetime import timedelta
from typing import TYPE_CHECKING, Final

from bot.ask import ask
from bot.saved.counts import Asked, Count
from bot.serving.memory import Asker, Memory

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = ["draw_ahead", "usual_of"]

_LOOKED_BACK: Final = timedelta(weeks=4)
_ANIMALS, _MOST_GROUPS = 2, 12
# What is told of an animal by its name alone.
_QUESTIONS: Final = ("needs", "card")
_AGAIN_S, _SOON_S = 6 * 3600.0, 60.0
_NOBODY: Final = 0


async def draw_ahead(client: "Noonstone", memory: Memory) -> float:
    """Draw one after the other, and return when to look again [s]."""
    studio, guilds = client.studio, client.guilds[:_MOST_GROUPS]
    if studio is None or not guilds:
        return _SOON_S
    since = (memory.clock() - _LOOKED_BACK).date()
    for guild in guilds:
        counts = await memory.store.counts.since(guild.id, since)
        preferences = await memory.preferences(Asker(_NOBODY, guild.id), client.preferences())
        for line in usual_of(counts):
            picture = ask(line, preferences).picture
            if picture is not None and picture.drawing is not None:
                await studio.png(picture.drawing)
    return _AGAIN_S


def usual_of(counts: tuple[Count, ...]) -> list[str]:
    """Return the questions of the animals that were asked for most, as they are typed."""
    times: dict[str, int] = {}
    for count in counts:
        if count.kind is Asked.ANIMAL:
            times[count.name] = times.get(count.name, 0) + count.times
    most = sorted(times, key=lambda name: (-times[name], name))[:_ANIMALS]
    return [f"{question} animal:{name}" for name in most for question in _QUESTIONS]
