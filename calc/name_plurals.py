"""The plurals that people make of a name, in English, German, French and Spanish."""

from collections.abc import Iterator

__all__ = ["plurals_of"]

# What people cut short in a name.
_SHORT = {"tortoise": "tort", "chameleon": "cham"}
# Shorter words would become others: tort and torte.
_SHORTEST_GERMAN = 5


def plurals_of(words: tuple[str, ...]) -> Iterator[tuple[str, ...]]:
    """Yield a folded name with every plural that people make of it."""
    head, last = words[:-1], words[-1]
    for end in _ends(last):
        yield (*head, end)
    if not head:
        return
    if last in _SHORT:
        yield (*head, _SHORT[last])
        yield (*head, f"{_SHORT[last]}s")
    # French and Spanish change the first word, or all of them: geckos à crête, iguanas verdes.
    for one in ("s", "es"):
        yield (f"{head[0]}{one}", *words[1:])
        if len(words) == 2:
            yield f"{head[0]}{one}", f"{last}s"
            yield f"{head[0]}{one}", f"{last}es"


def _ends(word: str) -> Iterator[str]:
    """Yield the plurals of a word in English, German, French and Spanish."""
    yield from (f"{word}s", f"{word}es")
    if len(word) < _SHORTEST_GERMAN:
        return
    yield from (f"{word}n", f"{word}en", f"{word}e")
    if word.endswith("y"):
        yield f"{word[:-1]}ies"
    if word.endswith(("u", "l")):
        yield f"{word}x"
