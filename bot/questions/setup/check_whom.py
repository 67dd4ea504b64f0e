"""Whom a set-up is for; where that is not known, only what holds for any animal is judged."""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum, auto

from bot.facts import Name
from bot.language.errors import NotUnderstoodError
from bot.language.hearing import FactName
from bot.language.shown import shown
from bot.preferences import Context
from bot.questions.animals import AnimalNotNamedError, WithoutFiguresError, animal_asked
from bot.questions.setup.told import SetUpTold
from bot.questions.shared import animal_name
from calc.animal import Animal
from calc.animals import ANY, any_animal
from calc.naming import Known, Several, named

__all__ = ["Named", "Whom", "whom_asked"]


class Named(Enum):
    """How the animal is known."""

    ONE = auto()
    FIRST_OF_SEVERAL = auto()
    NOBODY = auto()
    MAY_BE_SEVERAL = auto()
    NO_FIGURES = auto()
    UNKNOWN = auto()


@dataclass(frozen=True, slots=True)
class Whom:
    """The animal of a set-up; ``kept`` is the engine's, one of which nothing is known if unsure.

    ``words`` are the asker's for it; ``among`` the animals it may be, ``bare`` those of them that
    have no figures here.
    """

    kept: Animal
    animal: Name
    named: Named
    words: str = ""
    among: tuple[Name, ...] = ()
    bare: tuple[Name, ...] = ()

    @property
    def is_known(self) -> bool:
        """Say whether there are figures to judge by."""
        return self.kept.slug != ANY

    @property
    def called(self) -> str | None:
        """Return the name of an animal that has no figures here."""
        return self.words if self.named is Named.NO_FIGURES else None

    @property
    def some_bare(self) -> bool:
        """Say whether one of the animals it may be has no figures here."""
        return bool(self.bare)

    @property
    def some_known(self) -> bool:
        """Say whether one of the animals it may be has figures here."""
        return bool(self.among)


def whom_asked(told: SetUpTold, context: Context) -> Whom:
    """Return the animal of a set-up; one of which nothing is known where none is sure.

    What is dangerous in a set-up must be told even to somebody who forgot to name the animal.
    """
    asks = [ask for ask in told.unclear if ask.name is FactName.ANIMAL]
    if not told.animal and asks:
        return _several(asks[0].words, asks[0].among)
    try:
        kept = animal_asked(told.animal, context)
    except AnimalNotNamedError:
        return _nobody(Named.NOBODY)
    except WithoutFiguresError as error:
        return _nobody(Named.NO_FIGURES, error.name)
    except NotUnderstoodError:
        what = named(told.animal).what
        maybe = what.candidates if isinstance(what, Several) else ()
        return _several(told.animal, [one.name for one in maybe])
    if asks:
        among = tuple(_name(name) for name in asks[0].among)
        return Whom(kept, animal_name(kept), Named.FIRST_OF_SEVERAL, among=among)
    return Whom(kept, animal_name(kept), Named.ONE)


def _nobody(how: Named, words: str = "") -> Whom:
    kept = any_animal(words) if words else any_animal()
    return Whom(kept, Name("animal-any"), how, words)


def _several(typed: str, among: Sequence[str]) -> Whom:
    words = shown(typed)
    if not among:
        # Of what cannot be shown nothing was named.
        return _nobody(Named.UNKNOWN if words else Named.NOBODY, words)
    names = [_name(name) for name in among]
    known = tuple(name for name in names if name.key)
    bare = tuple(name for name in names if not name.key)
    return Whom(any_animal(), Name("animal-any"), Named.MAY_BE_SEVERAL, words, known, bare)


def _name(name: str) -> Name:
    what = named(name).what
    return Name(f"animal-{what.slug}") if isinstance(what, Known) else Name("", name)
