"""What a conversation keeps: the question before, the lines offered, and what was told."""

import json
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from enum import Enum, auto
from typing import Self

from bot.commands import command_named, question_at
from bot.dialogue.another import STAYS
from bot.dialogue.asking import question_kept
from bot.dialogue.remembered import kept_readings
from bot.facts import Say
from bot.language.units import Units
from bot.language.unsure import NOT_SURE
from bot.preferences import LANGUAGES, Language, Preferences
from bot.queries.question import Question
from bot.queries.typed import typed, typed_all
from bot.question_context import read_alone
from bot.reply import Reply

__all__ = ["START", "Dialogue", "Next", "after", "still_wanted", "told_before"]


@dataclass(frozen=True, slots=True)
class Dialogue:
    """The question before, and the questions that were offered.

    ``known`` are the parts of the set-up that were told on the way, by the option they fill;
    ``wanted`` are the options that were asked for since the question was asked, the last one last;
    ``page`` is the page of the guide that was answered last; ``beside`` is what the next answer
    says of the line itself, ``spoken`` the language that was written last, which holds for a line
    that tells none.
    """

    asked: Question | None = None
    offers: tuple[Question, ...] = ()
    known: Mapping[str, object] = field(default_factory=dict)
    units: Units | None = None
    wanted: tuple[str, ...] = ()
    beside: tuple[Say, ...] = ()
    spoken: Language | None = None
    page: str = ""

    def packed(self) -> str:
        """Return the dialogue as one word of text that ``unpacked`` reads again."""
        asked = self.asked.line() if self.asked else ""
        offers = [offer.line() for offer in self.offers]
        told = {"asked": asked, "offers": offers, "known": typed_all(self.known)}
        units = {"units": self.units.value} if self.units else {}
        wanted = {"wanted": self.wanted} if self.wanted else {}
        spoken = {"spoken": self.spoken} if self.spoken else {}
        page = {"page": self.page} if self.page else {}
        whole = told | units | wanted | spoken | page
        return json.dumps(whole, ensure_ascii=False, separators=(",", ":"))

    @classmethod
    def unpacked(cls, text: str) -> Self:
        """Return the dialogue that was packed; a ValueError says that it was none."""
        try:
            told = json.loads(text)
            asked, offers, known = told["asked"], told["offers"], told["known"]
            units = Units(told["units"]) if "units" in told else None
            wanted = tuple(told.get("wanted", ()))
            spoken = next((one for one in LANGUAGES if one == told.get("spoken")), None)
            page = told.get("page", "")
        except (KeyError, TypeError, AttributeError, RecursionError) as error:
            raise ValueError(text) from error
        of_known = (*known, *known.values()) if isinstance(known, dict) else (None,)
        if not all(isinstance(each, str) for each in (asked, page, *offers, *of_known, *wanted)):
            raise ValueError(text)
        asked, offers = question_kept(asked), tuple(map(_offered, offers))
        return cls(asked, offers, known, units, wanted, spoken=spoken, page=page)

    def preferring(self, preferences: Preferences) -> Preferences:
        """Return the asker's preferences with the unit and the language of the conversation."""
        units = self.units or preferences.forced_units
        language = preferences.language or self.spoken
        return replace(preferences, forced_units=units, language=language)

    def spoken_in(self, line: str, preferences: Preferences) -> Self:
        """Return the dialogue with the language of a line, if it tells one."""
        told = preferences.speaking(line).language
        return replace(self, spoken=told) if told and preferences.language is None else self


class Next(Enum):
    """What a line is after the answer before it; ``SAID`` has its answer already."""

    QUESTION = auto()
    THANKS = auto()
    WHY = auto()
    SAID = auto()


_A_PAGE = "guide"
START = Dialogue()
"""A conversation in which nothing was asked yet."""


def after(dialogue: Dialogue, reply: Reply) -> Dialogue:
    """Return the dialogue after an answer; what was not understood changes nothing."""
    # What is only perhaps meant does not take the place of what was surely asked.
    perhaps = None if dialogue.asked else reply.perhaps
    meant = perhaps or reply.meant
    lost = meant is not None and reply.status == "problem" and not _is_read(meant)
    if dialogue.asked and meant and lost and not _lacks_a_unit(meant):
        return replace(dialogue, offers=reply.offers, beside=())
    found = told_before(meant, dialogue)
    old, new = dialogue.asked, found.asked
    same = old is not None and new is not None and old.command == new.command
    lacking = reply.lacking[:1]
    before = tuple(name for name in still_wanted(dialogue, same=same) if name not in lacking)
    return replace(found, offers=reply.offers, wanted=(*before, *lacking), beside=())


def _offered(line: str) -> Question:
    """Return the question of a line that was kept; one that nobody knows any more, in its words."""
    return question_at(line) or Question("ask", {"question": line})


def _is_read(question: Question) -> bool:
    """Whether all that was told for a question can be read."""
    command, anyone = command_named(question.command), Preferences()
    told = question.values.items()
    return command is not None and all(
        read_alone(command.query, option, value, anyone) is not None for option, value in told
    )


def _lacks_a_unit(question: Question) -> bool:
    """Whether what cannot be read are bare numbers alone, which a unit told later makes whole."""
    command, anyone = command_named(question.command), Preferences()
    unread = [
        typed(value)
        for option, value in question.values.items()
        if command and read_alone(command.query, option, value, anyone) is None
    ]
    return all(text.replace(".", "", 1).isdecimal() for text in unread)


def still_wanted(dialogue: Dialogue, *, same: bool) -> tuple[str, ...]:
    """Return the options that were asked for: of another question the animal alone."""
    return tuple(name for name in dialogue.wanted if same or name == "animal")


def told_before(asked: Question | str | None, dialogue: Dialogue) -> Dialogue:
    """Return the dialogue after a question, also one that is known as a line alone."""
    kept = question_kept(asked)
    page = typed(kept.values.get("page", "")) if kept and kept.command == _A_PAGE else ""
    dialogue = replace(dialogue, page=page)
    if kept is None or (page and dialogue.asked):
        # A page in between leaves what is spoken of as it is.
        return dialogue
    if kept.command == "lamp":
        # The kind that is spoken of now is no longer the one that was named before.
        others = {n: v for n, v in dialogue.known.items() if n != "lamp"}
        dialogue = replace(dialogue, known=others)
    stays = {n: v for n, v in kept.values.items() if n in STAYS and typed(v) not in ("", NOT_SURE)}
    known = kept_readings(kept, dialogue.known)
    return replace(dialogue, asked=kept, offers=(), known={**known, **stays})
