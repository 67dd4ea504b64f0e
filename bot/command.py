"""What a question is to the fronts: its name, its model, its answer, its examples."""

from collections.abc import Awaitable, Callable, Collection, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any, Literal

from bot.desk import Desk
from bot.layered import Layered
from bot.preferences import Context, Preferences
from bot.queries.query import Query
from bot.queries.question import Question
from bot.reply import PartName

__all__ = ["Command", "Routed"]


@dataclass(frozen=True, slots=True, eq=False)
class Routed(Question):
    """Another question that was meant.

    ``animal_unclear``: an animal was named that could not be told, so none may be taken for it.
    """

    animal_unclear: bool = False

    def heeding(self, preferences: Preferences, context: Context) -> Preferences:
        """Return preferences as the words have it: whose the usual animal is not, and its state."""
        usual = "" if self.animal_unclear else preferences.default_animal
        return replace(preferences, default_animal=usual, states=context.states)

    def in_states(self, query: type[Query], context: Context) -> "Routed":
        """Return it with the states that the words told, where the question has that option."""
        has_it = any(option.name == "state" for option in query.options())
        if not has_it or not context.states or "state" in self.values:
            return self
        return replace(self, values={**self.values, "state": context.states})


@dataclass(frozen=True, slots=True)
class Command:
    """One question as data.

    ``facts`` works out what is to be told, in SI and without a word; ``tell`` picks the messages.

    ``positional`` names the option that takes the words before the first ``name:``, so that
    ``convert 14in`` and ``guide screens`` work as people type them. A question about saved data
    has ``stored`` in place of ``facts``, which works out facts at a desk, and a name of two words;
    one in free words has ``route``, which says what question was meant or replies at once, and
    ``lacks``, which asks for what that question still needs. ``form``: where a front has forms,
    the question asked with nothing opens one. ``deletes``: where a front has buttons, it asks
    once more before this is done. ``opens`` are the parts that are the answer itself, but where
    the option ``one_part`` asks for less.
    """

    name: str
    query: type[Query]
    examples: tuple[str, ...]
    facts: Callable[[Any, Context], Any] | None = None
    tell: Callable[[Any], Layered] | None = None
    route: Callable[[Any, Context], Routed | Layered] | None = None
    lacks: Callable[[Any, Routed, Sequence[str], Context], Layered] | None = None
    stored: Callable[[Any, Context, Desk], Awaitable[Any]] | None = None
    guide: tuple[str, ...] = ()
    who: Literal["anyone", "moderator"] = "anyone"
    positional: str = ""
    form: bool = False
    deletes: bool = False
    opens: tuple[PartName, ...] = ()
    one_part: str = ""

    def asking(self, values: Mapping[str, object]) -> Question:
        """Return this question as it can be asked again: in its own order, without files."""
        names = [o.name for o in self.query.options() if o.name in values and not o.document]
        return Question(self.name, {name: values[name] for name in names})

    def shown_open(self, given: Collection[str]) -> tuple[PartName, ...]:
        """Return the parts that are the answer itself: all of one about saved data.

        Such an answer is short, and no button may ask the question again, which would save twice.
        """
        if self.one_part and self.one_part in given:
            return ()
        return self.opens or (tuple(PartName) if self.stored else ())
