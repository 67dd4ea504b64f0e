"""Names of animals that a group adds: none that means something already. Words: ``kept.ftl``."""

from dataclasses import dataclass

from bot.facts import Name, Say
from bot.language.hearing import FactName
from bot.language.hearing.lexicon import known_phrases
from bot.questions.saved.unable import unable
from bot.questions.setup.told import heard_in
from bot.questions.shared import name_of
from bot.refusal import RefusedError
from calc.name_index import folded, words_around
from calc.naming import Known, Several, named, names_in

__all__ = ["check_name"]

# What a keeper may write before it.
_AROUND = ("a", "12%", "tube", "14", "inches", "over", "my")


@dataclass(frozen=True, slots=True)
class NameTaken:
    """The animal that a name means already."""

    ours: Name


def check_name(name: str) -> None:
    """Refuse a name that already means something, or that no sentence would be heard by."""
    what = named(name).what
    inside = [one.what for one in names_in(name)]
    ours = next((one.slug for one in (what, *inside) if isinstance(one, Known)), "")
    if ours:
        raise _refused(Say("kept-no-new-name", NameTaken(name_of(ours))))
    if isinstance(what, Several) and (not what.candidates or any(x.slug for x in what.candidates)):
        raise _refused(Say("kept-no-one-animal"))
    usual = known_phrases().words | words_around().in_front
    words = [folded(word) for word in name.replace("-", " ").split()]
    heard = heard_in(" ".join((*_AROUND, name)), (name,))
    found = [fact.value for fact in heard.facts if fact.name is FactName.ANIMAL]
    others = {FactName.TUBE} <= {fact.name for fact in heard.facts}
    if all(word in usual for word in words) or found != [name] or not others:
        raise _refused(Say("kept-no-plain-name"))


def _refused(why: Say) -> RefusedError:
    return unable("server animal", why, example="name:Moss lizard", option="name")
