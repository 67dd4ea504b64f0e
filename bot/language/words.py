"""A line of text taken apart: the command, and its options as name:value or name=value.

Only a known name directly before the colon starts an option, so 1:2 and an address stay inside
a value. Nothing is lost: what belongs to no option is named in the error.
"""

import re
from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.names import closest
from bot.language.wanted import Choice, Spelled, UpTo

__all__ = ["join_line", "split_line"]

_LONGEST_LINE = 2000
_CLOSING = {'"': '"”“', "“": '"”“', "”": '"”', "„": "“”", "'": "'’", "‘": "'’", "«": "»"}
_NAMED = re.compile(r"(?<!\S)([A-Za-z][A-Za-z0-9_-]{1,31})[:=](?!//)")


@dataclass(frozen=True, slots=True)
class _Piece:
    """The text of one option; ``name`` is empty for what stands before the first one."""

    name: str
    text: str
    quoted: bool = False
    after_quotes: str = ""


def split_line(line: str, options: Collection[str], free: str = "") -> tuple[str, dict[str, str]]:
    """Return the command and the text of each option.

    ``options`` are the known names; as a mapping, each with an example value for the errors.
    ``free`` names the option that takes the words before the first name, if there is one;
    an unknown name with a colon is then a word like any other, and so is a known one that is
    followed by a space, because people write "Tube: 12%" in their own words.

    >>> split_line("/distance tube:12% animal:bearded dragon", ["tube", "animal"])
    ('distance', {'tube': '12%', 'animal': 'bearded dragon'})
    """
    examples = _examples(options)
    if len(line) > _LONGEST_LINE:
        raise NotUnderstoodError(
            line, Say("wanted-short-line", UpTo(_LONGEST_LINE)), _usage(examples)
        )
    words = line.strip().removeprefix("/").split(maxsplit=1)
    if not words:
        raise NotUnderstoodError("", Say("wanted-question"), _usage(examples))
    given: dict[str, str] = {}
    for piece in _pieces(words[1] if len(words) > 1 else "", examples, free):
        _check(piece, examples, free)
        name = piece.name or free
        if name in given:
            wanted = Say("wanted-once", Spelled(name))
            raise NotUnderstoodError(piece.text, wanted, _usage(examples, name), name)
        if name:
            given[name] = piece.text
    return words[0].lower(), given


def join_line(command: str, given: Mapping[str, str]) -> str:
    """Return the line that ``split_line`` takes apart into this command and these options.

    >>> join_line("check", {"setup": "tube: 12% over mesh", "distance": "16in"})
    'check setup:“tube: 12% over mesh” distance:16in'
    """
    return " ".join([command, *(f"{name}:{_in_quotes(text)}" for name, text in given.items())])


def _in_quotes(text: str) -> str:
    """Return a value in quotes if anything in it could be taken for another option."""
    if not re.search(r"[:=\n]", text) and text[:1] not in _CLOSING:
        return text
    for opening, closing in (("“", "”"), ("«", "»"), ("‘", "’")):
        if not re.search(f"[{_CLOSING[opening]}](?!\\S)", text):
            return f"{opening}{text}{closing}"
    return text


def _check(piece: _Piece, examples: Mapping[str, str], free: str) -> None:
    """Refuse what no option owns, and an option without a value."""
    loose = piece.quoted or (free and not piece.name)
    unknown = None if loose else _NAMED.search(piece.text)
    lost = piece.after_quotes or (piece.text if not piece.name and not free else "")
    unknown = unknown or _NAMED.match(piece.after_quotes)
    if unknown:
        raise NotUnderstoodError(unknown[0], *_known_names(unknown[1], examples))
    if lost:
        raise NotUnderstoodError(lost, *_known_names(lost, examples))
    if not piece.text:
        name = piece.name or free
        wanted = Say("wanted-value", Spelled(name))
        raise NotUnderstoodError("", wanted, _usage(examples, name), name)


def _pieces(rest: str, examples: Mapping[str, str], free: str) -> Iterator[_Piece]:
    told_freely = bool(free) and not rest.lower().startswith((f"{free}:", f"{free}="))
    starts = _starts(examples, r"(?=\S)" if told_freely else "")
    name, at = "", 0
    while True:
        inside, after = _quoted(rest, at)
        following = starts.search(rest, after)
        end = following.start() if following else len(rest)
        beyond = rest[after:end].strip()
        if inside is not None:
            yield _Piece(name, inside.strip(), True, beyond)
        elif name or beyond:
            yield _Piece(name, beyond)
        if following is None:
            return
        name, at = _canonical(following[1], examples), following.end()


def _quoted(rest: str, at: int) -> tuple[str | None, int]:
    """Return what stands in quotes right at ``at`` and the place after it."""
    start = at + len(rest[at:]) - len(rest[at:].lstrip())
    closing = _CLOSING.get(rest[start : start + 1])
    if closing is None or at == 0:
        return None, at
    end = re.compile(f"[{closing}](?!\\S)").search(rest, start + 1)
    return (rest[start + 1 : end.start()], end.end()) if end else (None, at)


def _starts(examples: Mapping[str, str], followed: str) -> re.Pattern[str]:
    if not examples:
        return re.compile(r"(?!)")
    longest_first = sorted(examples, key=len, reverse=True)
    names = "|".join(re.escape(name).replace("_", "[_ -]?") for name in longest_first)
    return re.compile(rf"(?<!\S)({names})[:=]{followed}", re.I)


def _canonical(name: str, examples: Mapping[str, str]) -> str:
    bare = re.sub(r"[_ -]", "", name.lower())
    return next(known for known in examples if known.replace("_", "").lower() == bare)


def _examples(options: Collection[str]) -> Mapping[str, str]:
    return options if isinstance(options, Mapping) else dict.fromkeys(options, "")


def _usage(examples: Mapping[str, str], name: str = "") -> str:
    shown = name or next(iter(examples), "")
    return f"{shown}:{examples.get(shown) or '…'}" if shown else "help"


def _known_names(word: str, examples: Mapping[str, str]) -> tuple[Say, str]:
    if not examples:
        return Say("wanted-nothing-more"), "help"
    near = closest(word, examples)
    return Say("wanted-options", Choice(tuple(examples), near)), _usage(examples, near or "")
