"""The search index: each part of each page as a few words and an address, as a script's data.

A script and not a data file, so that the search also works from a folder without a server.
"""

import json
from collections.abc import Iterator

from bot import guide
from bot.commands import ALL_COMMANDS
from bot.fronts.pages.animals import sheet
from bot.fronts.pages.filled import filled_page
from bot.language.units import Units
from bot.render.html import heading_id
from bot.saying.voice import voice
from calc.animals import animals
from calc.name_index import names_with_targets

__all__ = ["search_entries", "search_script"]

Entry = dict[str, str]


def search_entries() -> tuple[Entry, ...]:
    """Return what can be found: page, part, address and text."""
    return (*_guide(), *_terms(), *_animals(), *_questions())


def search_script() -> str:
    """Return the index as a script that the search page reads."""
    data = json.dumps(search_entries(), ensure_ascii=False, separators=(",", ":"))
    return f"window.noonstoneIndex = {data};\n"


def _guide() -> Iterator[Entry]:
    for page in guide.pages():
        address = f"{page.slug}.html"
        for heading, text in guide.sections(filled_page(page, voice(guide.FIRST, Units.IN))):
            if heading == guide.INTRODUCTION:
                yield _entry(page.title, "", address, f"{page.summary} {text}")
            else:
                yield _entry(page.title, heading, f"{address}#{heading_id(heading)}", text)


def _terms() -> Iterator[Entry]:
    for term in guide.glossary():
        text = f"{term.meaning} {' '.join(term.also)}"
        yield _entry(term.name, "Glossary", f"glossary.html#{heading_id(term.name)}", text)


def _animals() -> Iterator[Entry]:
    known = names_with_targets()
    for animal in animals().values():
        entry = sheet(animal)
        rows = "; ".join(f"{row.label}: {row.text}" for row in entry.targets)
        names = ", ".join(name for name, slug in known.items() if slug == animal.slug)
        text = f"{names}. {rows}"
        yield _entry(entry.name, "Animal", f"animal-{animal.slug}.html", text)


def _questions() -> Iterator[Entry]:
    for command in ALL_COMMANDS:
        options = ", ".join(option.name for option in command.query.options())
        text = f"{command.summary}. {options}"
        yield _entry(command.name, "Question", f"questions.html#{heading_id(command.name)}", text)


def _entry(title: str, part: str, address: str, text: str) -> Entry:
    return {"title": title, "part": part, "url": address, "text": " ".join(text.split())}
