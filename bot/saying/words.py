"""The words of one language, read from ``bot/words/<language>``: each message when first needed.

The id tells the file: ``night-title`` stands in ``night.ftl``, and what fits no file in
``shared.ftl``. A file is cut into its messages where it is opened, and a message is parsed where
it is said, so that a cold question pays for its own words alone. What was parsed is kept beside the
bytecode.
"""

import pickle
import re
from collections.abc import Iterator
from contextlib import suppress
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from itertools import takewhile, zip_longest
from pathlib import Path
from typing import Any

from fluent.syntax import FluentParser, ast

from bot.facts import Say
from bot.saying.compile import Speaker, Spoken, Used, WordsError, compiled
from calc.tables import can_keep, made_once, stamp_of

__all__ = ["SHARED", "Words", "words"]

SHARED = "shared"

# An entry begins at the margin; a comment just above it belongs to it.
_ENTRY = re.compile(r"^(-?[a-zA-Z][\w-]*)[ ]*=", re.M)
_COMMENTED = re.compile(r"^#[^\n]*\n?", re.M)


@dataclass(frozen=True, slots=True)
class _Entry:
    """One message as it stands in its file."""

    where: str
    text: str
    line: int


class Words:
    """Every message of one language."""

    def __init__(self, language: str, texts: dict[str, str] | None = None) -> None:
        self.language = language
        self._texts = texts
        self._stems = dict.fromkeys(self._all_stems())
        self._entries: dict[str, dict[str, _Entry]] = {}
        self._kept: dict[str, dict[str, Any]] = {}
        self._spoken: dict[str, Spoken] = {}
        self._parsed: set[str] = set()
        self.used: dict[str, Used] = {}

    def _all_stems(self) -> tuple[str, ...]:
        if self._texts is not None:
            return tuple(self._texts)
        folder = files("bot.words") / self.language
        names = (path.name for path in folder.iterdir() if path.name.endswith(".ftl"))
        return tuple(sorted(name.removesuffix(".ftl") for name in names))

    @property
    def stems(self) -> tuple[str, ...]:
        """Return the names of the files."""
        return tuple(self._stems)

    def text(self, stem: str) -> str:
        """Return a file as it is."""
        if self._texts is not None:
            return self._texts[stem]
        return (files("bot.words") / self.language / f"{stem}.ftl").read_text(encoding="utf-8")

    def stem_of(self, key: str) -> str:
        """Return the file in which a message must stand."""
        stem = key.lstrip("-").partition(".")[0]
        while stem and stem not in self._stems:
            stem = stem.rpartition("-")[0]
        return stem or SHARED

    def entries(self, stem: str) -> dict[str, _Entry]:
        """Return the messages of a file by id."""
        if stem not in self._entries:
            self._entries[stem] = self._cut(stem) if stem in self._stems else {}
        return self._entries[stem]

    def _cut(self, stem: str) -> dict[str, _Entry]:
        text, found = self.text(stem), dict[str, _Entry]()
        marks = list(_ENTRY.finditer(text))
        for mark, after in zip_longest(marks, marks[1:]):
            key = mark[1]
            line = text.count("\n", 0, mark.start())
            where = f"{self.language}/{stem}.ftl:{line + 1}"
            if key in found:
                raise WordsError(f"{where}: {key} is said twice")
            body = text[mark.start() : after.start() if after else len(text)]
            # The comment of the next entry is not part of this one.
            found[key] = _Entry(where, _COMMENTED.sub("", body), line)
        return found

    def keys(self) -> Iterator[str]:
        """Return the id of every message."""
        for stem in self._stems:
            yield from self.entries(stem)

    def comment(self, key: str) -> str:
        """Return the comment above a message."""
        base = key.partition(".")[0]
        stem = self.stem_of(base)
        above = reversed(self.text(stem).split("\n")[: self.entries(stem)[base].line])
        return "\n".join(reversed(list(takewhile(lambda line: line.startswith("# "), above))))

    def __contains__(self, key: str) -> bool:
        base = key.partition(".")[0]
        if base not in self.entries(self.stem_of(base)):
            return False
        self._parse(base)
        return key in self._spoken

    def spoken(self, key: str) -> Spoken:
        """Return the function that says a message; a missing one is an error."""
        spoken = self._spoken.get(key)
        if spoken is not None:
            return spoken
        if key not in self:
            raise WordsError(f"{self.language}: there is no message {key}")
        return self._spoken[key]

    def say(self, say: Say, speaker: Speaker) -> str:
        """Return a message in words."""
        try:
            return self.spoken(say.id)(say.facts, speaker)
        except AttributeError as error:
            raise WordsError(f"{self.language}: {say.id}: {error}") from error

    def _parse(self, base: str) -> None:
        if base in self._parsed:
            return
        stem = self.stem_of(base)
        entry, kept = self.entries(stem)[base], self._read_before(stem).get(base)
        read = pickle.loads(kept) if kept else _read(base, entry)
        self._parsed.add(base)
        patterns: list[tuple[str, Any]] = [(base, read.value)]
        patterns += [(f"{base}.{a.id.name}", a.value) for a in read.attributes]
        for key, pattern in patterns:
            if key in self._spoken:
                raise WordsError(f"{entry.where}: {key} is said twice")
            if pattern is not None:
                self.used[key] = Used(entry.where)
                self._spoken[key] = compiled(key, pattern, self.used[key])

    def _read_before(self, stem: str) -> dict[str, Any]:
        """Return the messages of a file as they were parsed before, all that could be."""
        if self._texts is not None:
            return {}
        if stem not in self._kept:
            file = files("bot.words") / self.language / f"{stem}.ftl"
            self._kept[stem] = (
                made_once(file, stamp_of(file), lambda: self._all_read(stem))
                if isinstance(file, Path) and can_keep(file)
                else {}
            )
        return self._kept[stem]

    def _all_read(self, stem: str) -> dict[str, Any]:
        found = {}
        for base, entry in self.entries(stem).items():
            # What is wrong is told where it is said.
            with suppress(WordsError):
                found[base] = pickle.dumps(_read(base, entry))
        return found

    def check(self) -> None:
        """Compile every message: no message missing that another one says, and no circle."""
        for key in list(self.keys()):
            self._parse(key)
        for key in list(self.used):
            self._follow(key, ())

    def _follow(self, key: str, within: tuple[str, ...]) -> None:
        if key in within:
            raise WordsError(f"{self.used[key].where}: {key} says itself")
        for other in self.used[key].messages:
            if other not in self:
                raise WordsError(f"{self.used[key].where}: {key}: there is no {other}")
            self._follow(other, (*within, key))


def _read(base: str, entry: _Entry) -> ast.Message | ast.Term:
    """Return a message as the parser reads it."""
    read = FluentParser(with_spans=False).parse(entry.text).body
    if len(read) == 1 and isinstance(read[0], ast.Message | ast.Term):
        return read[0]
    junk = next((r for r in read if isinstance(r, ast.Junk)), None)
    told = junk.annotations[0].message if junk and junk.annotations else "cannot be read"
    raise WordsError(f"{entry.where}: {base}: {told}")


@cache
def words(language: str) -> Words:
    """Return the words of a language."""
    return Words(language)
