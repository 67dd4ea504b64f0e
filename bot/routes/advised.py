"""What somebody else says, where the asker wants to know whether it is right."""

import re

__all__ = ["advised"]

_SAYS = re.compile(
    r"^(?:so |ok |hi |hey |is it true )?(?:that )?"
    r"(?:(?:some(?:one|body)|people|everyone|they|he|she|a friend|my friend|the (?:guy|lady|seller"
    r"|breeder|shop|store)|a (?:guy|seller|breeder|shop|store|vet|care ?sheet|video|website)"
    r"|my (?:vet|breeder)|the internet|a book|jemand|man|mein freund|der züchter|der verkäufer)"
    r"(?: (?:at|in|from|im|aus) (?:the |my |dem |der )?\w+)? "
    r"(?:says?|said|told me|tells me|claims?|recommends?|recommended|swears?|sagt|sagte|meint)"
    r"|i (?:was told|read|heard|saw)|is it true|stimmt es)[,:]? (?:that |dass )?",
    re.I,
)
# Who tells of his own too does not ask about the advice alone.
_OWN = re.compile(
    r"\b(?:i have|i've|ive|mine|my \w+ (?:is|sits|hangs|reads)|ich habe|mein\w*)\b", re.I
)


def advised(said: str) -> str:
    """Return what was advised, as if it were so; all that was said where it is no advice.

    >>> advised("someone says 6 in is fine for a 12% tube")
    '6 in is fine for a 12% tube'
    """
    found = _SAYS.match(said)
    if found is None or _OWN.search(said, found.end()):
        return said
    return said[found.end() :]
