"""A file that cannot be taken back: where it is wrong and why, in plain words."""

import json
from typing import Any

import pytest

from bot.language.units import Units
from bot.preferences import LANGUAGES
from bot.questions.saved.files import MOST_IMPORT, document_of, read_file
from bot.refusal import RefusedError
from bot.saved.group_file import ServerExport
from bot.saved.keeper_file import KeeperExport
from bot.saying.voice import voice
from tests.bot.database.large import FULL_KEEPER, FULL_SERVER
from tests.fuzz.files import FILES
from tests.fuzz.harmless import assert_plain


def changed(text: str, path: list[Any], value: Any) -> str:
    file = json.loads(text)
    place = file
    for step in path[:-1]:
        place = place[step]
    place[path[-1]] = value
    return json.dumps(file)


@pytest.mark.parametrize(
    ("file", "where", "why"),
    [
        ("", "", "It is no JSON, or its end is missing"),
        (FILES[1][:-3], "", "It is no JSON, or its end is missing"),
        (changed(FILES[1], ["targets", 0, "subject"], "bask"), "targets → 0 → subject", "words"),
        (changed(FILES[1], ["noonstone"], "keeper"), "noonstone", "none of the words"),
        (changed(FILES[1], ["<@5>"], 1), "5", "I do not know what 5 is"),
        (changed(FILES[1], ["lamps", 0], {"name": "A"}), "lamps → 0 → doubt factor", "missing"),
        (changed(FILES[1], ["lamps", 0, "set_on"], "1*1"), "lamps → 0 → set on", "valid date"),
        (changed(FILES[1], ["lamps", 0, "name"], "[x]"), "lamps → 0 → name", "a letter first"),
        (changed(FILES[1], ["lamps", 0, "readings"], 99), "lamps → 0 → readings", "50"),
    ],
)
def test_a_server_file_is_refused_in_plain_words(file: str, where: str, why: str) -> None:
    with pytest.raises(RefusedError) as caught:
        read_file(ServerExport, file, "server import")
    refused = caught.value
    brief = refused.told(refused.example).brief
    assert brief.head.id == "file-head"
    for language in LANGUAGES:
        told = voice(language, Units.IN).text(brief.range[0])
        assert where in told
        assert_plain(told)
    assert why in voice("en", Units.IN).text(brief.range[0])


def test_a_whole_file_is_taken() -> None:
    assert read_file(ServerExport, FILES[1], "server import").lamps
    assert read_file(KeeperExport, FILES[0], "mine import").enclosures


@pytest.mark.parametrize(
    ("command", "full"), [("mine import", FULL_KEEPER), ("server import", FULL_SERVER)]
)
def test_no_export_is_too_large_to_be_taken_back(
    command: str, full: KeeperExport | ServerExport
) -> None:
    document = document_of("all.json", full)
    # The door that reads a file counts its bytes.
    assert len(document.text.encode()) <= MOST_IMPORT
    assert read_file(type(full), document.text, command) == full
    assert max(map(len, document.text.splitlines())) < 240
