"""The form that asks one thing at a time, with choices: what is asked next, and the answer.

What a question takes and what it still lacks is read from its query, what is asked for beside that
from its first example for an animal; how an option is asked for and where to find it out is said
where a conversation has it.
"""

from collections.abc import Iterator
from functools import cache

from bot import guide
from bot.ask import ask
from bot.command import Command
from bot.commands import COMMANDS, question_at
from bot.dialogue.asking import asked_for, asked_next
from bot.dialogue.in_options import set_up_in_options
from bot.facts import Say
from bot.fronts.pages.asking import by_topic
from bot.fronts.pages.edition import Edition
from bot.fronts.pages.kinds import Kind, kinds
from bot.fronts.pages.sketches import sketch
from bot.fronts.pages.step import Given, Step, WayOn
from bot.fronts.pages.step_values import Values
from bot.fronts.pages.trail import (
    ASKED,
    FIRST_UNIT,
    KIND,
    NOW,
    QUESTION,
    TOPIC,
    UNKNOWN,
    Trail,
)
from bot.guide import Sketch
from bot.language.units import Units
from bot.language.unsure import NOT_SURE
from bot.menu import about_option, about_question
from bot.preferences import Context, Preferences
from bot.queries.query import QueryOption
from bot.queries.question import Question
from bot.question_context import read_alone
from bot.questions.animals import name_said
from bot.questions.record import record_of
from bot.reply import Picture, Reply
from bot.saying.voice import voice

__all__ = ["Form", "questions_of_an_animal"]

_ANIMAL, _WORDS = "animal", "setup"
_SKETCHES = {
    "distance": Sketch.DISTANCE,
    "readings": Sketch.DISTANCE,
    "basking": Sketch.THERMOMETERS,
    "surface": Sketch.THERMOMETERS,
    "cool": Sketch.PLACES,
    "warm": Sketch.PLACES,
    "air": Sketch.PLACES,
}


@cache
def questions_of_an_animal() -> dict[str, tuple[Command, ...]]:
    """Return the questions that may be asked about an animal, by what they are about."""
    return by_topic(c for c in COMMANDS if c.who == "anyone" and _ANIMAL in _options(c))


def _options(command: Command) -> dict[str, QueryOption]:
    return {option.name: option for option in command.query.options()}


class Form:
    """The form at one of its steps, in a language and with a unit first."""

    def __init__(self, edition: Edition, trail: Trail) -> None:
        chosen = trail.get(FIRST_UNIT)
        self.units = Units(chosen) if chosen in set(Units) else edition.voice.units
        self.trail, self._edition = trail, edition
        self._voice = voice(edition.language, self.units)
        self.preferences = Preferences(
            language=edition.language, units=self.units, forced_units=self.units
        )
        self._values = Values(self._voice, self.preferences)

    def step(self) -> Step:
        """Return what is asked next, or the answer."""
        animal = self.trail.get(_ANIMAL)
        if not animal or self.trail.get(ASKED) == _ANIMAL:
            return self._animal()
        needs = self.needs
        if needs is not None and needs.status == "problem":
            return self._animal(needs)
        command = self._command
        return self._question() if command is None else self._of(command)

    @property
    def needs(self) -> Reply | None:
        """Return what the animal needs; None while none is known."""
        animal = self.trail.get(_ANIMAL)
        if animal in ("", UNKNOWN):
            return None
        asked = Question("needs", {_ANIMAL: animal})
        return asked_next(ask(asked, self.preferences), self.preferences, (), ask)

    @property
    def known(self) -> tuple[Given, ...]:
        """Return what was told, each with the way to change it."""
        return tuple(self._known())

    @property
    def hidden(self) -> tuple[tuple[str, str], ...]:
        """Return what a typed value is sent beside."""
        return self.trail.without(ASKED).items

    @property
    def units_links(self) -> tuple[WayOn, ...]:
        """Return the ways to see the other unit first; the one that is shown leads nowhere."""
        links = {units: self.trail.put(FIRST_UNIT, units.value).address for units in Units}
        return tuple(
            WayOn(self._say(Say.of("form", "first", units.value)), link * (units != self.units))
            for units, link in links.items()
        )

    def picture(self, step: Step) -> Picture | None:
        """Return what is shown beside a question: where to look, else what is known so far."""
        if step.shown is not None:
            return step.shown
        needs = self.needs
        if needs is None:
            return sketch(Sketch.LAYOUT, self._voice)
        values = {name: value for name, value in self._given.items() if name in _of_a_set_up()}
        told = ask(Question("check", values), self.preferences) if len(values) > 1 else needs
        return told.picture or needs.picture

    def _say(self, say: Say) -> str:
        return self._voice.text(say)

    @property
    def _command(self) -> Command | None:
        asked = (command for some in questions_of_an_animal().values() for command in some)
        return next((c for c in asked if c.name == self.trail.get(QUESTION)), None)

    @property
    def _given(self) -> dict[str, str]:
        return {name: value for name, value in self.trail.items if value != UNKNOWN}

    def _put(self, name: str, value: str) -> str:
        return self.trail.without(ASKED).put(name, value).address

    def _animal(self, problem: Reply | None = None) -> Step:
        """Return the step that asks for the animal: first by its kind."""
        found = next(
            (k for k in kinds(self._edition) if k.figure.value == self.trail.get(KIND)), None
        )
        if problem is not None and problem.offers:
            names = [offer.given[_ANIMAL] for offer in problem.offers]
            choices = [WayOn(self._name(name), self._put(_ANIMAL, name)) for name in names]
        elif found is not None:
            choices = [WayOn(s.name, self._put(_ANIMAL, s.animal.name)) for s in found.sheets]
        else:
            choices = [self._kind(kind) for kind in kinds(self._edition)]
        told = "" if problem is None else problem.answer
        return Step(
            heading=self._say(Say("form-animal" if found else "form-kind")),
            hint="" if self.trail.items else self._say(Say("form-lead")),
            told=told,
            choices=tuple(choices),
            field=_ANIMAL,
            typed=self.trail.get(_ANIMAL) if problem else "",
            unknown=self._put(_ANIMAL, UNKNOWN),
        )

    def _kind(self, kind: Kind) -> WayOn:
        return WayOn(kind.name, self._put(KIND, kind.figure.value), kind.drawn)

    def _name(self, animal: str) -> str:
        name = self._voice.name(name_said(animal), "")
        return name[:1].upper() + name[1:]

    def _question(self) -> Step:
        """Return the step that asks what somebody wants to know: first about what."""
        asked = questions_of_an_animal()
        some = asked.get(self.trail.get(TOPIC))
        if some is not None:
            choices = [
                WayOn(self._say(about_question(c.name)), self._put(QUESTION, c.name)) for c in some
            ]
            return Step(heading=self._say(Say("form-question")), choices=tuple(choices))
        topics = [
            WayOn(
                self._say(Say.of("form", "topic", topic)),
                self._put(QUESTION, some[0].name) if len(some) == 1 else self._put(TOPIC, topic),
            )
            for topic, some in asked.items()
        ]
        return Step(heading=self._say(Say("form-topic")), choices=tuple(topics))

    def _of(self, command: Command) -> Step:
        """Return the next step of a question, or its answer."""
        options, preferences = _options(command), self.preferences
        given = {name: value for name, value in self._given.items() if name in options}
        unknown = tuple(n for n in options if self.trail.get(n) == UNKNOWN)
        query = command.query
        unread = [n for n, v in given.items() if read_alone(query, n, v, preferences) is None]
        asked = self.trail.get(ASKED)
        reply = ask(Question(command.name, given), preferences)
        if unread:
            return self._ask(command, unread[0], reply, unread=True)
        if asked in options:
            return self._ask(command, asked, reply)
        urgent = bool(reply.dangers or reply.alarms)
        wanted = [n for n in _wanted(command, given) if n not in given and n not in unknown]
        if wanted and not urgent and not self.trail.get(NOW):
            return self._ask(command, wanted[0], reply)
        reply = asked_next(reply, preferences, unknown, ask)
        if _ANIMAL in reply.lacking and not urgent:
            return self._animal(reply)
        lacking = [n for n in reply.lacking if n in options and n not in (*given, *unknown)]
        if lacking and reply.status == "problem" and not urgent:
            return self._ask(command, lacking[0], reply)
        return self._answer(command, reply)

    def _ask(self, command: Command, name: str, reply: Reply, unread: bool = False) -> Step:
        option, typed = _options(command)[name], self._given.get(name, "")
        example = self._values.example(command, option, self._given.get(_ANIMAL, ""))
        listed = [
            WayOn(label, self._put(name, value))
            for value, label in self._values.listed(command, option)
        ]
        say = asked_for(name, command.name)
        has_sentence = say.id in self._voice.words
        about = self._say(about_option(command.name, name))
        page = record_of(command.name).lack(name).page
        can_be_unsure = read_alone(command.query, name, NOT_SURE, self.preferences) is not None
        is_of_a_lamp = say.id.endswith("-lamp")
        sketched = None if is_of_a_lamp else _SKETCHES.get(name)
        ready = reply.status == "ok" and len(self._known_names(command)) > 1
        return Step(
            heading=self._say(say if has_sentence else Say.of("form", "name", name)),
            hint="" if has_sentence else f"{about[:1].upper()}{about[1:]}.",
            told=self._values.unread(command, option, typed, example) if unread else "",
            choices=tuple(listed),
            field="" if option.choices else name,
            typed=typed,
            example=example,
            page=guide.page(page, self._edition.language) if page else None,
            unknown=self._put(name, NOT_SURE if can_be_unsure else UNKNOWN),
            now=self.trail.without(ASKED).put(NOW, "1").address if ready and not unread else "",
            shown=None if sketched is None else sketch(sketched, self._voice),
        )

    def _answer(self, command: Command, reply: Reply) -> Step:
        asked = self.trail.without(ASKED).put(NOW, "1")
        untold = [n for n in _options(command) if n != _WORDS and not self.trail.get(n)]
        more = [
            WayOn(self._say(Say.of("form", "name", name)), asked.put(ASKED, name).address)
            for name in untold
        ]
        other = self.trail.without(QUESTION, TOPIC, NOW, ASKED)
        return Step(heading=reply.title, reply=reply, more=tuple(more), other=other.address)

    def _known_names(self, command: Command) -> list[str]:
        return [name for name in self._given if name in _options(command)]

    def _known(self) -> Iterator[Given]:
        command = self._command
        animal, needs = self.trail.get(_ANIMAL), self.needs
        if animal and (needs is None or needs.status == "ok"):
            name = self._say(Say("form-not-known")) if animal == UNKNOWN else self._name(animal)
            anew = self.trail.without(_ANIMAL, KIND, ASKED).address
            yield Given(self._say(Say("form-name-animal")), name, anew)
        options = {} if command is None else _options(command)
        for name, value in self.trail.items:
            if name == _ANIMAL or name not in options or command is None:
                continue
            is_told = value != UNKNOWN
            told = self._values.worded(command, options[name], value) if is_told else ""
            told = told or self._say(Say("form-not-known"))
            change = self.trail.without(ASKED).put(ASKED, name).address
            yield Given(self._say(Say.of("form", "name", name)), told, change)


@cache
def _of_a_set_up() -> frozenset[str]:
    """Return the options of a check that are not words."""
    check = next(command for command in COMMANDS if command.name == "check")
    return frozenset(_options(check)) - {_WORDS}


def _wanted(command: Command, given: dict[str, str]) -> tuple[str, ...]:
    """Return the options that are asked for, told or not: what it lacks, then what is usual."""
    lacking = command.query.lacking(given)
    always = command.query.lacking({})
    usual = [name for name in _usual(command) if name not in always]
    return tuple(name for name in (*lacking, *usual) if name != _ANIMAL)


@cache
def _usual(command: Command) -> tuple[str, ...]:
    """Return the options of the first example for an animal, in the order of the query."""
    asked = [found for line in command.examples if (found := question_at(line))]
    found = next((each for each in asked if _ANIMAL in each.values), asked[0])
    told = set(found.given)
    if _WORDS in told:
        heard = set_up_in_options(found.given[_WORDS], Context(Units.CM))
        told |= set(heard.given) if heard else set()
    return tuple(name for name in _options(command) if name in told and name != _WORDS)
