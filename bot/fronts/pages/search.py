"""The search index: each part of each page as a few words and an address, as a script's data.

A script and not a data file, so that the search also works from a folder without a server.
"""

import json
from collections.abc import Iterator

from bot import guide
from bot.commands import ALL_COMMANDS
from bot.facts import Say
from bot.fronts.pages.animals import sheets
from bot.fronts.pages.asking import questions_of
from bot.fronts.pages.edition import Edition
from bot.fronts.pages.filled import filled_page
from bot.render.html import heading_id
from calc.name_index import names_with_targets

__all__ = ["Entry", "search_entries", "search_script"]

Entry = dict[str, str]
_LONGEST = 230


def search_entries(edition: Edition) -> tuple[Entry, ...]:
    """Return what can be found: page, part, address and text."""
    return (*_guide(edition), *_terms(edition), *_animals(edition), *_questions(edition))


def search_script(edition: Edition) -> str:
    """Return the index as a script that the search page reads."""
    entries = [entry | {"text": _cut(entry["text"])} for entry in search_entries(edition)]
    data = json.dumps(entries, ensure_ascii=False, separators=(",", ":"))
    return f"window.noonstoneIndex = {data};\n"


def _cut(text: str) -> str:
    """Return the beginning of a text: a page and its index weigh less than a photograph."""
    return text if len(text) <= _LONGEST else text[:_LONGEST].rpartition(" ")[0] + " …"


def _guide(edition: Edition) -> Iterator[Entry]:
    for page in guide.pages(edition.language):
        address = f"{page.slug}.html"
        first, *others = guide.sections(filled_page(page, edition.voice), edition.language)
        worries = ", ".join(page.worries)
        yield _entry(page.title, "", address, f"{page.summary} {first[1]}", worries)
        for heading, text in others:
            yield _entry(page.title, heading, f"{address}#{heading_id(heading)}", text)


def _terms(edition: Edition) -> Iterator[Entry]:
    part = edition.say(Say("page-entry-term"))
    for term in guide.glossary(edition.language):
        address = f"glossary.html#{heading_id(term.name)}"
        yield _entry(term.name, part, address, term.meaning, ", ".join(term.also))


def _animals(edition: Edition) -> Iterator[Entry]:
    part = edition.say(Say("page-entry-animal"))
    known = (*names_with_targets().items(), *names_with_targets(slang=True).items())
    for entry in sheets(edition.language):
        slug = entry.animal.slug
        rows = "; ".join(f"{row.label}: {row.text}" for row in entry.reply.rows)
        names = ", ".join(name for name, of in known if of == slug)
        yield _entry(entry.name, part, f"animal-{slug}.html", rows, names)


def _questions(edition: Edition) -> Iterator[Entry]:
    part = edition.say(Say("page-entry-question"))
    for asked in questions_of(ALL_COMMANDS, edition):
        options = ", ".join(option.name for option, _ in asked.options)
        address = f"questions.html#{heading_id(asked.command.name)}"
        yield _entry(asked.command.name, part, address, f"{asked.summary}. {options}")


def _entry(title: str, part: str, address: str, text: str, also: str = "") -> Entry:
    """Return an entry; ``also`` are other words by which people look for it."""
    told = {"title": title, "part": part, "url": address, "text": " ".join(text.split())}
    return told | ({"also": also} if also else {})
