"""Plain text made safe for Discord: it shows as typed, formats nothing, pings and links nothing."""

import re
from functools import lru_cache

__all__ = ["escape", "escape_code", "units_long"]

_ANYWHERE = str.maketrans({sign: f"\\{sign}" for sign in "\\*_~`|[]<"})
# A heading, small text or a quote, which Discord sees only at the start of a line.
_LINE_START = re.compile(r"^(\s*)(-?#|>)", re.MULTILINE)
_EVERYBODY = re.compile(r"@(everyone|here)", re.IGNORECASE)


# Most of an answer's forty texts (labels, cautions, sources) are the same in every answer.
@lru_cache(maxsize=4096)
def escape(text: str) -> str:
    r"""Return text in which Discord sees no markup, no mention and no address.

    >>> print(escape("**bold** <@1> @here http://x.invalid"))
    \*\*bold\*\* \<@1> \@here http\://x.invalid
    """
    safe = text.translate(_ANYWHERE)
    # An answer is some forty texts, of which hardly any needs more than this.
    if "#" in safe or ">" in safe:
        safe = _LINE_START.sub(r"\1\\\2", safe)
    if "@" in safe:
        safe = _EVERYBODY.sub(r"\\@\1", safe)
    return safe.replace("://", "\\://")


def escape_code(text: str) -> str:
    """Return text that cannot end a block of code."""
    return text.replace("`", "ˋ")


def units_long(text: str) -> int:
    """Return the length in UTF-16 units, which is never less than the count Discord makes."""
    return len(text) if text.isascii() else len(text.encode("utf-16-le", "surrogatepass")) // 2
