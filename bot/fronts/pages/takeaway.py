"""The site to take away: one archive to open from a folder, and what keeps its pages on a phone."""

import json
from collections.abc import Iterable, Mapping
from importlib.resources import files
from io import BytesIO
from zipfile import ZIP_DEFLATED, ZipFile, ZipInfo

from bot.facts import Say
from bot.fronts.pages.edition import Edition, editions

__all__ = [
    "ARCHIVE",
    "ICON",
    "MANIFEST",
    "OFFLINE",
    "WORKER",
    "archive",
    "icon",
    "manifest",
    "worker",
]

OFFLINE = "offline.html"
ARCHIVE = "noonstone-guide.zip"
MANIFEST = "app.webmanifest"
WORKER = "worker.js"
ICON = "icon.png"
_FOLDER = "noonstone-guide"
_ICON_SIZE = 1200
_PAPER, _WARM = "#fbf7ef", "#9c4410"
# What every page needs, and those that lead on from any other.
_FIRST_PAGES = ("index.html", "search.html", "search-index.js", OFFLINE)
# Stands in the script for the names of the files.
_NAMES = '"names"'


def archive(site: Mapping[str, bytes]) -> bytes:
    """Return every file of a site in one archive, the same bytes for the same files."""
    written = BytesIO()
    with ZipFile(written, "w", ZIP_DEFLATED) as made:
        for name, content in site.items():
            entry = ZipInfo(f"{_FOLDER}/{name}")
            entry.compress_type = ZIP_DEFLATED
            entry.external_attr = 0o644 << 16
            made.writestr(entry, content)
    return written.getvalue()


def manifest(edition: Edition) -> str:
    """Return what a phone reads to install the site (W3C, Web Application Manifest)."""
    up = "../" if edition.folder else ""
    icons = [
        {"src": f"{up}square.svg", "sizes": "any", "type": "image/svg+xml"},
        {"src": f"{up}{ICON}", "sizes": f"{_ICON_SIZE}x{_ICON_SIZE}", "type": "image/png"},
    ]
    told = {
        "name": edition.say(Say("page-index-title")),
        "short_name": "Noonstone",
        "lang": edition.language,
        "start_url": "index.html",
        "scope": up or "./",
        "display": "minimal-ui",
        "background_color": _PAPER,
        "theme_color": _WARM,
        "icons": icons,
    }
    return json.dumps(told, ensure_ascii=False, indent=1)


def worker(names: Iterable[str]) -> str:
    """Return the script that keeps pages, with the names of those to keep at first and of all."""
    kept = [
        n
        for n in names
        if n not in (ARCHIVE, WORKER) and not n.rpartition("/")[2].startswith("share")
    ]
    pages = {f"{edition.folder}{name}" for edition in editions() for name in _FIRST_PAGES}
    first = [n for n in kept if n in pages or n.endswith((".css", ".js", ".svg", ".ttf"))]
    data = json.dumps({"first": first, "all": kept}, separators=(",", ":"))
    return _asset(WORKER).replace(_NAMES, data)


def icon() -> bytes:
    """Return the sign of the site as phones want it: a square picture of points."""
    from bot.render.picture import png_of

    return png_of(_asset("square.svg"))


def _asset(name: str) -> str:
    return (files("bot.fronts.pages") / "assets" / name).read_text("utf-8")
