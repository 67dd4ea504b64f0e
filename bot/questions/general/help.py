"""What can be asked: everyday questions and the groups of the rest, or one with its options.

Words: ``help.ftl``; what a question answers and what its options are for: ``summary.ftl`` and
``option.ftl``.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

from bot.command import Command
from bot.commands import ALL_COMMANDS, COMMANDS, command_named
from bot.facts import Say, Says
from bot.language.choices import choice_said
from bot.language.names import closest
from bot.language.shown import shown
from bot.layered import Brief, Care, Layered, Row, Table, Weight
from bot.menu import STORED_GROUPS, about_option, about_question, topic_of
from bot.preferences import Context
from bot.queries.general import HelpQuery
from bot.queries.query import QueryOption
from bot.refusal import RefusedError
from bot.reply import PartName

__all__ = ["EVERYDAY", "HELP", "TOPICS", "Topic"]

EVERYDAY = ("check", "plan", "distance", "temps", "night", "needs")
"""What is asked most; all the rest stands by its topic or group."""


class Topic(Enum):
    """What the questions without a first word of their own are about."""

    UV = "uv"
    WARMTH = "warmth"
    ALL = "all"


_NAMED = {"uv": Topic.UV, "heat": Topic.WARMTH}
TOPICS = {
    topic: tuple(n for n in COMMANDS.names if _NAMED.get(topic_of(n), Topic.ALL) is topic)
    for topic in Topic
}
# Typed for a topic; the name of a question is that question.
_WISHES = {"uv": Topic.UV, "heat": Topic.WARMTH, "warmth": Topic.WARMTH, "all": Topic.ALL}
_FEW = 4


@dataclass(frozen=True, slots=True)
class HelpQuestion:
    """A question by its name, and what it answers."""

    name: str
    what: Say


@dataclass(frozen=True, slots=True)
class HelpNames:
    """The names of the questions of a topic."""

    names: tuple[str, ...]
    wish: str


@dataclass(frozen=True, slots=True)
class HelpAll:
    """What is asked most, and the rest by topic and group."""

    everyday: tuple[HelpQuestion, ...]
    topics: tuple[tuple[Say, HelpNames], ...]
    groups: tuple[HelpQuestion, ...]
    first: str


@dataclass(frozen=True, slots=True)
class HelpGroup:
    """The questions of a topic or group; ``about`` says what they are for."""

    about: Say
    questions: tuple[HelpQuestion, ...]
    example: str
    first: str


@dataclass(frozen=True, slots=True)
class HelpOption:
    """An option as it is typed, what it is for and whether it is needed."""

    typed: str
    what: Say
    needed: bool
    choices: tuple[str | Say, ...]

    @property
    def choose(self) -> tuple[str | Say, ...] | None:
        """Return what there is to choose from, where that is more than is said of it."""
        return self.choices if len(self.choices) > _FEW else None


@dataclass(frozen=True, slots=True)
class HelpExample:
    """A question that works."""

    example: str


@dataclass(frozen=True, slots=True)
class HelpOne:
    """One question with its options and examples."""

    name: str
    what: Say
    options: tuple[HelpOption, ...]
    examples: tuple[HelpExample, ...]
    guide: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class HelpUnread:
    """A name that no question has; ``near`` is a like one."""

    wish: str
    near: str | None
    example: str


Facts = HelpAll | HelpGroup | HelpOne


def asked(query: HelpQuery, context: Context) -> Facts:
    """Find what is asked for help on: all questions, a topic, a group or one question."""
    wish = " ".join(query.command.lower().removeprefix("/").split())
    if not wish:
        return _all()
    if command := command_named(wish):
        return _one(command)
    if wish in _WISHES:
        topic = _WISHES[wish]
        return _group(Say.by("help-topic", topic), TOPICS[topic])
    if wish in STORED_GROUPS:
        within = [name for name in ALL_COMMANDS.names if name.startswith(f"{wish} ")]
        return _group(Say.of("help-group", wish), within)
    near = closest(wish, (*ALL_COMMANDS.names, *STORED_GROUPS, *_WISHES)) or None
    unread = HelpUnread(shown(wish), near, near or ALL_COMMANDS.names[0])
    raise RefusedError(unread, _unread, "command")


def _all() -> HelpAll:
    return HelpAll(
        everyday=tuple(_question(name) for name in EVERYDAY),
        topics=tuple(_names(topic) for topic in TOPICS),
        groups=tuple(HelpQuestion(name, Say.of("help-group", name)) for name in STORED_GROUPS),
        first=EVERYDAY[0],
    )


def _names(topic: Topic) -> tuple[Say, HelpNames]:
    names = tuple(name for name in TOPICS[topic] if name not in EVERYDAY)
    return Say.by("help-label", topic), HelpNames(names, topic.value)


def _question(name: str) -> HelpQuestion:
    return HelpQuestion(name, about_question(name))


def _group(about: Say, within: Sequence[str]) -> HelpGroup:
    questions = tuple(_question(name) for name in within)
    first = command_named(within[0])
    assert first is not None
    return HelpGroup(about, questions, first.examples[0], first.name)


def _one(command: Command) -> HelpOne:
    return HelpOne(
        name=command.name,
        what=about_question(command.name),
        options=tuple(_option(command, option) for option in command.query.options()),
        examples=tuple(HelpExample(example) for example in command.examples),
        guide=command.guide,
    )


def _option(command: Command, option: QueryOption) -> HelpOption:
    typed = f"{option.name}:{option.example}" if option.example else option.name
    what = about_option(command.name, option.name)
    return HelpOption(typed, what, option.required, tuple(map(choice_said, option.choices)))


def tell(facts: Facts) -> Layered:
    """Tell the questions, those of a group, or one of them."""
    match facts:
        case HelpAll():
            return _tell_all(facts)
        case HelpGroup():
            return _tell_group(facts)
        case HelpOne():
            return _tell_one(facts)


def _tell_all(facts: HelpAll) -> Layered:
    say = Says("help", facts)
    return Layered(
        command="help",
        title=say("title"),
        brief=Brief(head=say("head"), range=(say("units"),), steps=(say("do-free"),)),
        steps=(say("step-free"), say("step-more")),
        numbers=(
            *(Row(Say("help-name", one), Say("help-what", one)) for one in facts.everyday),
            *(Row(label, Say("help-names", names)) for label, names in facts.topics),
            *(Row(Say("help-name-group", one), Say("help-what", one)) for one in facts.groups),
        ),
        care=(Care(say("care"), say("care-short"), Weight.STEP),),
        lines=(Say("help-free"),),
    )


def _tell_group(facts: HelpGroup) -> Layered:
    say = Says("help", facts)
    return Layered(
        command="help",
        title=say("title-group"),
        brief=Brief(head=say("about"), steps=(say("do-example"), say("do-first"))),
        steps=(say("do-example"), say("do-first")),
        table=Table(
            (say("column-question"), say("column-what")),
            tuple((Say("help-name", one), Say("help-what", one)) for one in facts.questions),
        ),
    )


def _tell_one(facts: HelpOne) -> Layered:
    say = Says("help", facts)
    steps = tuple(Say("help-example", one) for one in facts.examples)
    return Layered(
        command="help",
        title=say("title-one"),
        brief=Brief(head=say("is"), steps=steps[:1]),
        steps=steps,
        numbers=tuple(Row(Say("help-typed", one), Say("help-for", one)) for one in facts.options),
        lines=tuple(one.example for one in facts.examples),
        guide=facts.guide,
    )


def _unread(facts: HelpUnread) -> Layered:
    say = Says("help", facts)
    return Layered(
        command="help",
        status="problem",
        title=say("unread"),
        brief=Brief(
            head=say("no-question"),
            range=(say("near"),) if facts.near else (),
            steps=(say("do-other"), say("do-all")),
        ),
        steps=(say("do-other"), say("do-all")),
    )


HELP = Command(
    name="help",
    query=HelpQuery,
    facts=asked,
    tell=tell,
    examples=("help", "help distance"),
    positional="command",
    opens=(PartName.NUMBERS,),
)
