"""Names of animals that a group adds: none that means something already. Words: ``kept.ftl``."""

from dataclasses import dataclass

from bot.facts import Say
from bot.language.hearing import FactName
from bot.language.hearing.lexicon import known_phrases
from bot.questions.saved.unable import unable
from bot.questions.setup.told import heard_in
from bot.refusal import RefusedError
from calc.name_index import folded, words_around
from calc.naming import Known, Several, named, names_in

__all__ = ["check_name"]


@dataclass(frozen=True, slots=True)
class NameTaken:
    """The animal that a name means already."""

    ours: str


def check_name(name: str) -> None:
    """Refuse a name that already means something, or that no sentence would be heard by."""
    what = named(name).what
    inside = [one.what for one in names_in(name)]
    ours = next((one.name for one in (what, *inside) if isinstance(one, Known)), "")
    if ours:
        raise _refused(Say("kept-no-new-name", NameTaken(ours)))
    if isinstance(what, Several) and (not what.candidates or any(x.slug for x in what.candidates)):
        raise _refused(Say("kept-no-one-animal"))
    usual = known_phrases().words | words_around().in_front
    words = [folded(word) for word in name.replace("-", " ").split()]
    heard = heard_in(f"a 12% tube 14 inches over my {name}", (name,))
    found = [fact.value for fact in heard.facts if fact.name is FactName.ANIMAL]
    others = {FactName.TUBE} <= {fact.name for fact in heard.facts}
    if all(word in usual for word in words) or found != [name] or not others:
        raise _refused(Say("kept-no-plain-name"))


def _refused(why: Say) -> RefusedError:
    return unable("server animal", why, example="Moss lizard", option="name")
