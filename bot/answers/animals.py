"""The animal a question is about: found by name, or asked for."""

from bot.language.errors import NotUnderstoodError
from bot.language.names import closest
from bot.language.shown import shown
from bot.preferences import Context
from calc.animals import Animal, Subject, Target, animals, common_names, find
from calc.sources import source

__all__ = ["animal_asked", "doubtful_rows", "known_by", "of_animal"]


def animal_asked(name: str, context: Context) -> Animal:
    """Return the animal with this name, or the group's default where none was named."""
    wish = name.strip() or context.default_animal
    if not wish:
        raise NotUnderstoodError("no animal", "the animal", "animal:bearded dragon", "animal")
    found = find(wish)
    if found is None:
        near = closest(wish.lower(), common_names())
        known = ", ".join(animal.name for animal in animals().values())
        raise NotUnderstoodError(
            shown(wish),
            f"an animal I know ({f'perhaps {near}; ' if near else ''}{known})",
            f"animal:{near or 'bearded dragon'}",
            "animal",
        )
    return found


def of_animal(animal: Animal) -> str:
    """Return the animal as a sentence needs it, such as ``a bearded dragon``."""
    article = "an" if animal.name[0].lower() in "aeiou" else "a"
    return f"{article} {animal.name}"


def known_by(target: Target) -> str:
    """Return how a target is known, in words for a reply."""
    entry = source(target.source)
    kind = entry.kind.value
    told = {"common practice": "common practice, no source", "memory": "from memory"}
    text = told.get(kind, f"published: {entry.citation}")
    return f"{text}; {target.note}" if target.note else text


def doubtful_rows(animal: Animal, *subjects: Subject) -> tuple[str, ...]:
    """Return what other sources say against a target, a sentence each."""
    return tuple(d.text for d in animal.disagreements_about(*subjects))
