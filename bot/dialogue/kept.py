"""What a conversation keeps: the question before, the lines offered, and what was told."""

import json
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import Self

from bot.commands import command_named
from bot.dialogue.asking import question_kept
from bot.language.units import Units
from bot.language.unsure import NOT_SURE
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.queries.typed import typed, typed_all
from bot.question_context import read_alone
from bot.reply import Reply

__all__ = ["START", "STAYS", "Dialogue", "after", "told_before"]

STAYS = frozenset(
    (
        *("animal", "tube", "reflector", "screen", "length", "age", "tubes", "gap", "lamp"),
        *("enclosure", "material", "lid", "room"),
    )
)
"""What is so of the keeper's set-up, whatever is asked next."""


@dataclass(frozen=True, slots=True)
class Dialogue:
    """The question before, and the lines that were offered.

    ``known`` are the parts of the set-up that were told on the way, by the option they fill.
    """

    asked: Question | None = None
    offers: tuple[str, ...] = ()
    known: Mapping[str, object] = field(default_factory=dict)
    units: Units | None = None

    def packed(self) -> str:
        """Return the dialogue as one word of text that ``unpacked`` reads again."""
        asked = self.asked.line() if self.asked else ""
        told = {"asked": asked, "offers": self.offers, "known": typed_all(self.known)}
        units = {"units": self.units.value} if self.units else {}
        return json.dumps(told | units, ensure_ascii=False, separators=(",", ":"))

    @classmethod
    def unpacked(cls, text: str) -> Self:
        """Return the dialogue that was packed; a ValueError says that it was none."""
        try:
            told = json.loads(text)
            asked, offers, known = told["asked"], told["offers"], told["known"]
            units = Units(told["units"]) if "units" in told else None
        except (KeyError, TypeError, RecursionError) as error:
            raise ValueError(text) from error
        texts = (asked, *offers, *known, *known.values()) if isinstance(known, dict) else (None,)
        if not all(isinstance(each, str) for each in texts):
            raise ValueError(text)
        return cls(question_kept(asked), tuple(offers), known, units)

    def preferring(self, preferences: Preferences) -> Preferences:
        """Return the asker's preferences with the unit that was wished for on the way."""
        return replace(preferences, forced_units=self.units) if self.units else preferences


START = Dialogue()
"""A conversation in which nothing was asked yet."""


def after(dialogue: Dialogue, reply: Reply) -> Dialogue:
    """Return the dialogue after an answer; what was not understood changes nothing."""
    # What is only perhaps meant does not take the place of what was surely asked.
    perhaps = None if dialogue.asked else reply.perhaps
    meant = perhaps or reply.meant
    if dialogue.asked and meant and reply.status == "problem" and not _is_read(meant):
        return replace(dialogue, offers=reply.offers)
    return replace(told_before(meant, dialogue), offers=reply.offers)


def _is_read(question: Question) -> bool:
    """Whether all that was told for a question can be read."""
    command, anyone = command_named(question.command), Preferences()
    told = question.values.items()
    return command is not None and all(
        read_alone(command.query, option, value, anyone) is not None for option, value in told
    )


def told_before(asked: Question | str | None, dialogue: Dialogue) -> Dialogue:
    """Return the dialogue after a question, also one that is known as a line alone."""
    kept = question_kept(asked)
    if kept is None:
        return dialogue
    stays = {n: v for n, v in kept.values.items() if n in STAYS and typed(v) != NOT_SURE}
    return replace(dialogue, asked=kept, offers=(), known={**dialogue.known, **stays})
