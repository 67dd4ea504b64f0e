"""The question in the asker's own words: any question."""

from bot.command import Command
from bot.queries.setup import AskQuery
from bot.routes.routing import lacking_reply, route

__all__ = ["ASK"]

ASK = Command(
    name="ask",
    query=AskQuery,
    route=route,
    lacks=lacking_reply,
    examples=(
        "ask does my leopard gecko need uvb",
        "ask how far should a 6% tube be with a shiny hood and no screen, leopard gecko",
        "ask do i need heat at night for my corn snake if the room drops to 61F",
    ),
    guide=("how-to-ask",),
    positional="question",
)
