"""What an animal is drawn as, and how long: by its group and genus, to its adult length."""

from bot.drawing import Figure
from calc.animal import Group
from calc.animals import animals

__all__ = ["drawn_animal"]

_OF_GROUP = {
    Group.LIZARD: Figure.LIZARD,
    Group.SNAKE: Figure.SNAKE,
    Group.TORTOISE: Figure.TORTOISE,
    Group.TURTLE: Figure.TORTOISE,
    Group.AMPHIBIAN: Figure.FROG,
}
_OF_GENUS = {
    **dict.fromkeys(("Chamaeleo", "Furcifer", "Trioceros"), Figure.CHAMELEON),
    **dict.fromkeys(
        (
            *("Correlophus", "Eublepharis", "Gekko", "Hemitheconyx", "Lepidodactylus"),
            *("Mniarogekko", "Phelsuma", "Rhacodactylus"),
        ),
        Figure.GECKO,
    ),
}
_ANY_M = 0.45
# A snake lies coiled.
_COILED = 0.3


def drawn_animal(slug: str) -> tuple[Figure, float]:
    """Return what an animal is drawn as and how long [m]; of one not known an ordinary lizard."""
    animal = animals().get(slug)
    if animal is None:
        return Figure.LIZARD, _ANY_M
    figure = _OF_GROUP[animal.group] if animal.group else Figure.LIZARD
    figure = _OF_GENUS.get(animal.scientific.split()[0], figure)
    target = animal.adult_length_m
    long_m = (target.low + target.high) / 2.0 if target else _ANY_M
    return figure, long_m * (_COILED if figure is Figure.SNAKE else 1.0)
