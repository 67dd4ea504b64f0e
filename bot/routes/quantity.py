"""Which quantity free words ask for: what the first sentence of the answer tells."""

import re

from bot.routes.asked import Asked

__all__ = ["asks_if_right", "gives_asked", "need_asked"]

# The quantity, words that ask for it, and words that ask for something else then.
_NEEDS = (
    (
        "uvi",
        r"\b(?:uvi|uv index)\b|\b(?:what|which|how (?:much|strong|high))\b.{0,12}\buv\w*",
        "",
    ),
    ("uv", r"\buv\w*", ""),
    ("water", r"\bwater\b(?! dragons?| monitors?| snakes?| pythons?)", ""),
    ("night", r"\bnight|\bovernight|\bhow cold\b|\blowest temp", ""),
    ("hours", r"\bhours?\b|\blights? on\b", ""),
    ("cool", r"\b(?:cool|cold)(?:er|est)? (?:side|end|spot)s?\b", ""),
    (
        "basking",
        (
            r"\bbask\w*|\bhot(?:test)? ?(?:spot|side|end)\b|\bhow (?:hot|warm)\b"
            r"|\bwarm (?:side|end|spot)\b"
        ),
        r"\bwater\b(?! dragons?| monitors?| snakes?| pythons?)",
    ),
)
# Who asks for several wants them all.
_ALL = r"\b(?:temp\w* and|care|requirements|parameters|everything|setup|set-up)\b"
# Whether a lamp is strong enough is not whether the animal needs one: that gets no yes.
_JUDGES_A_LAMP = (
    r"\b(?:strong|weak|too|much|enough)\b"
    r"|\b(?:lamp|bulb|tube|light|panel|strip|coil)s?\b.*\b(?:ok\w*|right|fine|good|safe|correct|work\w*)\b"
)
_GIVES = (
    ("uv", r"\buv\w*", r"\bcompact|\bmercury|\bmetal halide"),
    ("light", r"\b(?:any|give\w*|make\w*|emit\w*|produce\w*) (?:\w+ )?light\b", ""),
    ("night", r"\bnights?\b|\bovernight\b", ""),
)
_FOR_USE = (
    r"\bwhat\b.{0,24}\b(?:do|does|is|are)\b.*\b(?:for|do|good for|used for)\W*$"
    r"|\b(?:do|does|good for|for what|used for)\W*$|\bwhat (?:do|does)\b.*\bdo\b"
    r"|\bwhen (?:do|would|should|to) \w* ?(?:use|need)\b"
)
_FOR_USE_DE = re.compile(r"\b(?:wofür|wozu|was (?:macht|bringt|kann|tut))\b")
_YES_OR_NO = r"\b(?:does|do|will|can|could|is|are)\b|\binstead of\b|\bwithout\b"
_IS_RIGHT = (
    r"\b(?:is|are|would|will)\b.*"
    r"\b(?:ok\w*|right|fine|good|safe|enough|correct|true|too \w+|alright)\b"
    r"|\b(?:someone|somebody|people|he|she|they|guy|friend|breeder|shop|store|seller|vet|website"
    r"|book|internet|forum|care ?sheet|everyone)\b.{0,24}"
    r"\b(?:says?|said|told|tells?|claims?|wrote|thinks?|recommends?)\b"
    r"|\b(?:i was told|i read|i heard|advice)\b"
)


def need_asked(asked: Asked) -> str:
    """Return the need that the words ask for, as the question takes it; nothing where several."""
    if asked.says(_ALL):
        return ""
    found = [name for name, said, other in _NEEDS if asked.says(said) and not _says(asked, other)]
    if found[:2] == ["uvi", "uv"]:
        found.remove("uv")
    if found == ["uv"] and asked.says(_JUDGES_A_LAMP):
        return "uvi"
    return found[0] if len(found) == 1 else ""


def gives_asked(asked: Asked) -> str:
    """Return what is asked of a kind of lamp; nothing where it is whether it is any good."""
    if asked.says(_FOR_USE) or _FOR_USE_DE.search(asked.typed):
        return "use"
    if not asked.says(_YES_OR_NO):
        return ""
    found = (name for name, said, other in _GIVES if asked.says(said) and not _says(asked, other))
    return next(found, "")


def asks_if_right(asked: Asked) -> bool:
    """Say whether the words ask if a figure is right that was told by somebody or is planned."""
    return asked.says(_IS_RIGHT)


def _says(asked: Asked, words: str) -> bool:
    return bool(words) and asked.says(words)
