"""The questions in the asker's own words: any question, and a set-up to check."""

from bot.answers.check import answer_check
from bot.answers.routing import lacking_reply, route
from bot.command import Command
from bot.queries.setup import AskQuery, CheckQuery

__all__ = ["SETUP_COMMANDS"]

SETUP_COMMANDS: tuple[Command, ...] = (
    Command(
        name="ask",
        summary="Any question in your own words; I tell what I still need, in plain words",
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
    ),
    Command(
        name="check",
        summary="Your whole set-up in your own words: what is fine, what to change first",
        query=CheckQuery,
        answer=answer_check,
        examples=(
            "check beardie, 12% in a shiny hood, no mesh, 16in to his back, basking 98, cool 75",
            (
                "check leopard gecko, 6% tube over the mesh, warm side 32C, cool side 24C, "
                "nights 20C distance:30cm screen:45%"
            ),
        ),
        guide=("how-to-ask", "uv-and-heat-together", "measuring-temperatures"),
        positional="setup",
    ),
)
