"""What an answered question counts as: names of ours alone, no text and no person."""

from collections.abc import Mapping

from bot.saved.counts import Asked

__all__ = ["asked_for"]

_FORGETTING = "server forget"


def asked_for(command: str, given: Mapping[str, str]) -> tuple[tuple[Asked, str], ...]:
    """Return what an answered question counts as: itself, its animal, its page.

    Only names of ours are counted, never what was typed.
    """
    if command == _FORGETTING:
        # Else the counts would begin anew with the question that deleted them.
        return ()
    found = [(Asked.QUESTION, command)]
    if named := given.get("animal", ""):
        from calc.naming import find

        animal = find(named)
        found += [(Asked.ANIMAL, animal.slug)] if animal is not None else []
    if command == "guide":
        from bot import guide

        wish = "-".join(given.get("page", "").lower().split())
        pages = (p.slug for p in guide.pages() if wish in (p.slug, _dashed(p.title)))
        found += [(Asked.PAGE, slug) for slug in pages]
    return tuple(found)


def _dashed(title: str) -> str:
    return "-".join(title.lower().split())
