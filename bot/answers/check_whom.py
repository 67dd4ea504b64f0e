"""Whom a set-up is for; where that is not known, only what holds for any animal is judged."""

from bot.answers.animals import AnimalNotNamedError, WithoutFiguresError
from bot.answers.heat_parts import Kept, kept_named
from bot.answers.setup_told import Told
from bot.answers.unfigured import among, no_figures, which_animal
from bot.language.errors import NotUnderstoodError
from bot.language.hearing import FactName
from bot.preferences import Context
from bot.reply import Row
from calc.animals import any_animal

__all__ = ["kept_told"]


def kept_told(told: Told, context: Context) -> Kept:
    """Return the animal of a set-up; one of which nothing is known where none is sure.

    What is dangerous in a set-up must be told even to somebody who forgot to name the animal.
    """
    asks = [ask for ask in told.unclear if ask.name is FactName.ANIMAL]
    if not told.animal and asks:
        return _nobody(which_animal(asks[0].words, asks[0].among))
    try:
        kept = kept_named(told.animal, context)
    except AnimalNotNamedError:
        return _nobody("You named no animal.")
    except WithoutFiguresError as error:
        return _nobody(f"{no_figures(error.name)}.", error.name)
    except NotUnderstoodError:
        return _nobody(which_animal(told.animal, among(told.animal)))
    if asks:
        others = " and ".join(asks[0].among)
        return Kept(kept.animal, (_row(f"You named {others}: this goes by {kept.whom}."),))
    return kept


def _nobody(why: str, name: str = "animal") -> Kept:
    judged = "so only what holds for any animal is judged"
    ask_again = "" if name != "animal" else ": name it with animal: for the rest"
    return Kept(any_animal(name), (_row(f"{why.rstrip('.')}, {judged}{ask_again}."),))


def _row(text: str) -> Row:
    return Row(label="Animal", text=text)
