"""What every kept value is made of: a frozen model, and a name that is safe to show anywhere."""

import unicodedata
from enum import StrEnum
from typing import Annotated
from urllib.parse import urlsplit
from zoneinfo import ZoneInfo

from pydantic import AfterValidator, BaseModel, ConfigDict, Field

from calc.animal import BACK_BOUNDS_M

__all__ = [
    "LONGEST_LINE",
    "LONGEST_NAME",
    "Kept",
    "Line",
    "Name",
    "OwnBack",
    "OwnLife",
    "ScientificName",
    "Zone",
    "line_of",
    "name_key",
    "name_of",
    "scientific_of",
    "url_of",
    "zone_of",
]

LONGEST_NAME = 40
LONGEST_LINE = 50
_LONGEST_URL = 200
_IN_LINE = frozenset(" #+-/.,:()'’&")
_BESIDE_LETTERS = frozenset(" '’-.")


class Kept(BaseModel):
    """A value that is kept: frozen, with no field beside its own, every number finite."""

    model_config = ConfigDict(frozen=True, extra="forbid", allow_inf_nan=False, defer_build=True)


class OwnLife(StrEnum):
    """In what way an animal of a group's own lives; the values are those of ``Life``."""

    CLIMBS = "climbs"
    WATER = "water"
    DIGS = "digs"
    NIGHT = "night"


def name_of(text: str) -> str:
    """Return a name with single spaces, or raise ValueError with what a name may be.

    >>> name_of("  Pebble's   box ")
    "Pebble's box"
    """
    name = " ".join(unicodedata.normalize("NFC", text).split())
    letters = bool(name) and unicodedata.category(name[0])[0] == "L"
    plain = all(unicodedata.category(c)[0] in "LMN" or c in _BESIDE_LETTERS for c in name)
    if not (letters and plain and len(name) <= LONGEST_NAME):
        raise ValueError(
            f"a name of 1 to {LONGEST_NAME} characters: a letter first, "
            "then letters, digits, spaces, hyphens, dots or apostrophes"
        )
    return name


def line_of(text: str) -> str:
    """Return a line that is safe to show anywhere, or raise ValueError."""
    line = " ".join(text.split())
    plain = all(c.isalnum() or c in _IN_LINE for c in line)
    if not (plain and any(c.isalnum() for c in line) and len(line) <= LONGEST_LINE):
        raise ValueError(f"a line has at most {LONGEST_LINE} letters, digits and plain signs")
    return line


def name_key(name: str) -> str:
    """Return the form under which two spellings of a name are one.

    >>> name_key("Pebble’s Box") == name_key("pebble's  box")
    True
    """
    folded = unicodedata.normalize("NFKC", name.replace("’", "'")).casefold()
    return " ".join(folded.split())


def url_of(text: str) -> str:
    """Return the address of a site, or raise ValueError."""
    address = text.strip()
    parts = urlsplit(address) if len(address) <= _LONGEST_URL else urlsplit("")
    plain = address.isascii() and address.isprintable() and not set(address) & set(' <>()[]"`\\')
    if not (plain and parts.scheme in ("http", "https") and parts.hostname and not parts.username):
        raise ValueError(
            f"an address starts with https:// and has at most {_LONGEST_URL} characters"
        )
    return address.rstrip("/")


def zone_of(text: str) -> str:
    """Return the name of a time zone, or raise ValueError."""
    name = text.strip().replace(" ", "_")
    try:
        # A path or a NUL would make zoneinfo look at files that are not zones.
        if not all(c.isalnum() or c in "/_+-" for c in name) or not name.isascii():
            raise ValueError
        ZoneInfo(name)
    except (ValueError, OSError, KeyError) as error:
        raise ValueError("a time zone is a name such as Europe/Berlin or UTC") from error
    return name


def scientific_of(text: str) -> str:
    """Return a scientific name, which may be empty, or raise ValueError.

    >>> scientific_of(" Pogona  vitticeps")
    'Pogona vitticeps'
    """
    name = " ".join(text.split())
    if name and not (name.isascii() and name.replace(" ", "").isalpha() and name[0].isupper()):
        raise ValueError("a scientific name is of plain letters, such as Pogona vitticeps")
    return name_of(name) if name else ""


Name = Annotated[str, AfterValidator(name_of)]
Line = Annotated[str, AfterValidator(line_of)]
ScientificName = Annotated[str, AfterValidator(scientific_of)]
Zone = Annotated[str, AfterValidator(zone_of)]
OwnBack = Annotated[float, Field(ge=BACK_BOUNDS_M[0], le=BACK_BOUNDS_M[1])]
