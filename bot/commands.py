"""Every question Noonstone answers: the one list that the fronts, the help and the tests read."""

from bot.answers.about import answer_about
from bot.answers.card import answer_card
from bot.answers.convert import answer_convert
from bot.answers.distance import answer_distance
from bot.answers.guide import answer_guide
from bot.answers.help import answer_help
from bot.answers.tube import answer_tube
from bot.answers.uvi import answer_uvi
from bot.command import Command
from bot.preferences import Context
from bot.queries.card import CardQuery
from bot.queries.general import AboutQuery, ConvertQuery, GuideQuery, HelpQuery
from bot.queries.uv import DistanceQuery, TubeQuery, UviQuery
from bot.reply import Reply

__all__ = ["COMMANDS", "command_named", "described"]


def _answer_help(query: HelpQuery, context: Context) -> Reply:
    return answer_help(query, context, COMMANDS)


COMMANDS: tuple[Command, ...] = (
    Command(
        name="distance",
        summary="How far the UV tube should hang above the animal's back",
        query=DistanceQuery,
        answer=answer_distance,
        examples=(
            "distance tube:12% reflector:polished screen:none animal:bearded dragon",
            "distance tube:12% reflector:plain screen:blocks 45% animal:bearded dragon",
            "distance tube:6% reflector:polished screen:18x16 0.011in uvi:1-2 length:85cm",
        ),
        guide=("measuring-the-distance", "screens", "reflectors"),
    ),
    Command(
        name="uvi",
        summary="The UV index to expect at a distance, and which way to move",
        query=UviQuery,
        answer=answer_uvi,
        examples=(
            "uvi distance:14in tube:12% reflector:polished screen:45% animal:bearded dragon",
            "uvi distance:35cm tube:6% reflector:plain screen:none animal:leopard gecko",
        ),
        guide=("reading-a-uv-meter", "measuring-the-distance"),
    ),
    Command(
        name="tube",
        summary="Which tube strength and length suit a fixed distance and enclosure",
        query=TubeQuery,
        answer=answer_tube,
        examples=(
            "tube distance:14in screen:none animal:bearded dragon enclosure:4ft",
            "tube distance:30cm screen:passes 55% animal:bearded dragon enclosure:120cm",
        ),
        guide=("uv-and-heat-together", "screens"),
    ),
    Command(
        name="card",
        summary="A table of distances for every usual tube and screen, to pin in the group",
        query=CardQuery,
        answer=answer_card,
        examples=(
            "card animal:bearded dragon",
            "card animal:leopard gecko screens:none; 45% tubes:2%; 6%",
        ),
        guide=("measuring-the-distance", "screens"),
    ),
    Command(
        name="convert",
        summary="Inches to centimetres, °F to °C, and back; differences kept apart",
        query=ConvertQuery,
        answer=answer_convert,
        examples=("convert 14in", "convert 39,5 C", "convert difference 10F"),
        guide=(),
        positional="value",
    ),
    Command(
        name="guide",
        summary="Open a page of the beginner guide",
        query=GuideQuery,
        answer=answer_guide,
        examples=("guide", "guide screens"),
        positional="page",
    ),
    Command(
        name="help",
        summary="What you can ask, with examples that work",
        query=HelpQuery,
        answer=_answer_help,
        examples=("help", "help distance"),
        positional="command",
    ),
    Command(
        name="about",
        summary="What is stored, where the numbers come from, and the cautions",
        query=AboutQuery,
        answer=answer_about,
        examples=("about",),
    ),
)


def command_named(name: str) -> Command | None:
    """Return the question with this name, if there is one."""
    return next((command for command in COMMANDS if command.name == name), None)


def described(command: Command) -> dict[str, object]:
    """Return a question as plain data for the outside."""
    options: list[dict[str, object]] = []
    for option in command.query.options():
        entry: dict[str, object] = {
            "name": option.name,
            "description": option.description,
            "required": option.required,
            "example": option.example,
        }
        if option.choices:
            entry["choices"] = list(option.choices)
        options.append(entry)
    return {
        "name": command.name,
        "summary": command.summary,
        "who": command.who,
        "options": options,
        "examples": list(command.examples),
    }
