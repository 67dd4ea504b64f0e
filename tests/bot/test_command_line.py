"""What the command line says to whoever runs the program, in the language that is set."""

from pathlib import Path

import pytest

from bot.__main__ import main
from bot.fronts.backups import back_up_now, restore_now
from bot.preferences import LANGUAGES, Language
from bot.saying.words import words

DOORS = ["ask", "console", "demo", "commands", "discord", "pages", "deploy", "doctor", "backup"]


@pytest.mark.parametrize("door", ["", *DOORS, "restore"])
def test_the_help_of_every_door_is_in_the_language_that_is_set(
    door: str, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    told = []
    for language in LANGUAGES:
        monkeypatch.setenv("NOONSTONE_LANGUAGE", language)
        with pytest.raises(SystemExit) as left:
            main([door, "--help"] if door else ["--help"])
        assert left.value.code == 0
        told.append(capsys.readouterr().out)
    assert len(set(told)) == 2


@pytest.mark.parametrize(
    ("line", "german"),
    [
        ("", "es fehlt noch: command"),
        ("foo", "'foo' gibt es hier nicht (es gibt: 'ask'"),
        ("ask x --units ft", "--units: 'ft' gibt es hier nicht"),
        ("ask x --units", "dahinter fehlt noch etwas"),
        ("pages", "es fehlt eines von: --out --serve"),
        ("pages --serve --port x", "--port: 'x' passt hier nicht"),
        ("pages --serve --out x", "das geht nicht zusammen mit"),
        ("doctor --loud", "damit kann ich nichts anfangen: --loud"),
    ],
)
def test_a_line_that_cannot_be_run_is_refused_in_the_language_that_is_set(
    line: str, german: str, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("NOONSTONE_LANGUAGE", "de")
    with pytest.raises(SystemExit) as left:
        main(line.split())
    told = capsys.readouterr().err
    assert left.value.code == 2
    assert "Aufruf: noonstone" in told
    assert "Fehler: " in told
    assert german in told


def test_a_language_that_is_not_there_leaves_the_help_in_english(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("NOONSTONE_LANGUAGE", "tlh")
    with pytest.raises(SystemExit):
        main(["--help"])
    assert "answer one question and leave" in capsys.readouterr().out


@pytest.mark.parametrize(
    ("language", "kept", "there", "lost"),
    [
        ("en", "only you can read", "is there already", "would be lost"),
        ("de", "nur du sie lesen", "gibt es schon", "gingen verloren"),
    ],
)
def test_a_backup_says_what_was_done_or_why_not(
    language: Language,
    kept: str,
    there: str,
    lost: str,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
) -> None:
    file = tmp_path / "kept"
    assert back_up_now("", tmp_path / "data", file, language) == 0
    assert kept in capsys.readouterr().out
    assert back_up_now("", tmp_path / "data", file, language) == 2
    assert there in capsys.readouterr().err
    assert restore_now("", tmp_path / "data", file, language, replace=True) == 0
    capsys.readouterr()
    assert restore_now("", tmp_path / "data", Path(__file__), language, replace=True) == 2
    assert str(Path(__file__)) in capsys.readouterr().err
    assert lost in words(language).text("run")
