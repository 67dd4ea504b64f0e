"""The console and the command line, run as a person runs them."""

import json
import os
import subprocess
import sys
from collections.abc import Sequence
from pathlib import Path

import pytest

from bot.command import Command
from bot.commands import ALL_COMMANDS
from bot.completion import complete, complete_line
from bot.fronts.console import converse
from bot.fronts.demo import play
from bot.preferences import Preferences
from tests.bot.program import run, started

DISTANCE = "distance tube:12% reflector:polished screen:none animal:bearded dragon"
KEYS = [
    "command",
    "status",
    "title",
    "answer",
    "brief",
    "values",
    "rows",
    "table",
    "steps",
    "cautions",
    "guide",
    "sources",
    "picture",
    "dangers",
    "assumed",
    "heard",
    "language",
    "parts",
    "dialogue",
]


def test_a_question_is_answered_and_the_exit_code_is_0() -> None:
    done = started("ask", DISTANCE)
    assert done.returncode == 0
    assert "Hang it 20 in (51 cm) above its back." in done.stdout
    assert done.stderr == ""


def test_a_refused_question_goes_to_stderr_with_exit_code_2() -> None:
    done = run("ask", "distance tube:banana")
    assert done.returncode == 2
    assert done.stdout == ""
    assert "banana" in done.stderr


def test_json_is_the_reply_with_the_agreed_keys() -> None:
    done = run("ask", "--json", DISTANCE)
    reply = json.loads(done.stdout)
    assert list(reply) == KEYS
    assert reply["status"] == "ok"
    assert {"name", "low", "best", "high", "unit"} == set(reply["values"][0])
    assert {"slug", "title", "url"} == set(reply["guide"][0])
    assert {"key", "citation", "kind"} == set(reply["sources"][0])


def test_a_conversation_goes_on_from_the_dialogue_of_the_answer_before() -> None:
    first = json.loads(run("ask", "--json", DISTANCE).stdout)
    done = run("ask", "--with", first["dialogue"], "and", "with", "a", "6%", "tube?")
    assert done.returncode == 0
    again = json.loads(run("ask", "--json", "--with", first["dialogue"], "12 inches").stdout)
    assert again["command"] == "uvi"
    assert run("ask", "--with", "nonsense", "12 inches").returncode == 2


def test_json_of_a_refused_question_is_a_problem_on_stdout() -> None:
    done = run("ask", "--json", "distance")
    assert done.returncode == 2
    assert json.loads(done.stdout)["status"] == "problem"


def test_units_asked_for_come_first() -> None:
    assert "cm (" in run("ask", "--units", "cm", DISTANCE).stdout
    assert "cm (" in run("ask", DISTANCE, NOONSTONE_UNITS="cm").stdout


def test_a_bad_setting_is_one_sentence() -> None:
    done = run("ask", DISTANCE, NOONSTONE_UNITS="furlongs")
    assert done.returncode == 2
    assert "NOONSTONE_UNITS" in done.stderr
    assert "Traceback" not in done.stderr


def test_a_piped_console_answers_line_by_line() -> None:
    done = run("console", typed=f"{DISTANCE}\n\nconvert 14in\nquit\nconvert 15in\n")
    assert done.returncode == 0
    assert "35.56 cm" in done.stdout
    assert "38.1 cm" not in done.stdout


def test_the_commands_are_told_as_data() -> None:
    entries = json.loads(run("commands", "--json").stdout)
    distance = next(entry for entry in entries if entry["name"] == "distance")
    assert {"name", "summary", "who", "options", "examples"} == set(distance)
    uvi = next(entry for entry in entries if entry["name"] == "uvi")
    options = {option["name"]: option for option in uvi["options"]}
    assert options["distance"]["required"] is True
    assert options["reflector"]["choices"] == ["polished", "plain", "not sure"]


def test_the_bot_without_a_token_says_what_is_missing() -> None:
    done = run("discord")
    assert done.returncode == 2
    assert "NOONSTONE_TOKEN" in done.stderr


def test_conversing_needs_only_lines_and_a_writer(anyone: Preferences) -> None:
    written: list[str] = []
    converse(["convert 14in", "  ", "QUIT", "convert 1in"], written.append, anyone)
    assert len(written) == 1
    assert "35.56 cm" in written[0]


def test_one_word_opens_a_part_of_the_last_answer(anyone: Preferences) -> None:
    written: list[str] = []
    converse(["steps", DISTANCE, "Care", "all", "sources"], written.append, anyone)
    unread, brief, care, whole, sources = written
    assert "I read “steps”" in unread
    assert brief.endswith("More (type a word, or all): steps, numbers, why, care, sources\n\n")
    assert care.startswith("Care:\n- ")
    assert sources.startswith("Sources:\n- ")
    assert "Sources:" not in brief
    assert whole.startswith("Distance")
    assert care.strip() in whole
    assert sources.strip() in whole


def test_ask_prints_the_brief_and_all_of_it_when_asked() -> None:
    brief, whole = run("ask", DISTANCE).stdout, run("ask", "--full", DISTANCE).stdout
    assert brief.endswith("\nMore with --full: steps, numbers, why, care, sources\n")
    assert "Sources:" not in brief
    assert brief.rpartition("\n\n")[0] in whole
    assert "Sources:" in whole


def test_the_demo_is_a_morning_on_one_screen_or_two(anyone: Preferences) -> None:
    written: list[str] = []
    play(written.append, anyone, None)
    assert len("".join(written).splitlines()) <= 65
    assert "demo --all" in written[-1]


@pytest.mark.slow
def test_pictures_are_kept_where_the_asker_wants_them(tmp_path: Path) -> None:
    out = str(tmp_path / "pictures")
    assert "Picture: " in run("ask", "--out", out, DISTANCE).stderr
    done = run("ask", "--json", "--out", out, DISTANCE)
    assert json.loads(done.stdout)["picture"]["alt"]
    typed = f"{DISTANCE.replace('polished', 'plain')}\nconvert 14in\n"
    assert run("console", "--out", out, typed=typed).stdout.count("Picture: ") == 1
    assert len(list((tmp_path / "pictures").glob("distance-*.png"))) == 2
    assert "no picture" in run("ask", "--out", out, "convert 14in").stderr


@pytest.mark.slow
@pytest.mark.parametrize("door", ["ask", "console"])
@pytest.mark.parametrize("home", ["empty", "none to write in"])
def test_the_first_picture_of_a_fresh_machine_brings_no_word_of_a_library(
    tmp_path: Path, door: str, home: str
) -> None:
    out, place = tmp_path / "pictures", tmp_path / "home"
    place.mkdir() if home == "empty" else place.write_text("not a folder")
    card = "card animal:bearded dragon"
    asked = [card] if door == "ask" else []
    done = started(door, "--out", str(out), *asked, typed=f"{card}\n", HOME=str(place))
    (kept,) = out.glob("card-*.png")
    told = f"Picture: {kept}\n"
    assert done.returncode == 0
    assert done.stderr == (told if door == "ask" else "")
    assert told in done.stderr + done.stdout


@pytest.mark.slow
@pytest.mark.parametrize(
    "commands",
    [
        [c for c in ALL_COMMANDS if c.name == "distance" or c.stored] + list(ALL_COMMANDS[::6]),
        pytest.param(ALL_COMMANDS, marks=pytest.mark.full),
    ],
    ids=["some", "all"],
)
def test_the_demo_plays_every_example_and_keeps_the_answers(
    commands: Sequence[Command],
    tmp_path: Path,
    anyone: Preferences,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    # To draw an example's picture takes longer than all else of it.
    monkeypatch.setattr("bot.fronts.demo.ALL_COMMANDS", commands)
    written: list[str] = []
    play(written.append, anyone, tmp_path / "out", every=True)
    examples = sum(len(command.examples) for command in commands)
    assert len(written) == 2 * examples
    assert len(list((tmp_path / "out").glob("*.json"))) == examples
    assert list((tmp_path / "out").glob("*-distance.png"))


@pytest.mark.parametrize(
    ("line", "start", "choice"),
    [
        ("dis", 0, "distance"),
        ("distance ", 9, "tube:"),
        ("distance tube:12% re", 18, "reflector:"),
        ("distance reflector:po", 19, "polished"),
        ("distance animal:bearded d", 16, "bearded dragon"),
        ("/distance animal:leop", 17, "leopard gecko"),
        ("guide scr", 6, "screens"),
    ],
)
def test_a_line_is_completed_where_it_stops(line: str, start: int, choice: str) -> None:
    at, choices = complete_line(line)
    assert at == start
    assert choice in choices


def test_completion_never_gives_more_than_25_and_knows_nothing_of_strangers() -> None:
    assert 0 < len(complete("distance", "animal", "")) <= 25
    assert complete("distance", "animal", "beard")[0] == "bearded dragon"
    assert complete("nonsense", "animal", "") == []
    assert complete("distance", "uvi", "3") == []


@pytest.mark.slow
def test_a_reader_that_has_seen_enough_is_no_failure(tmp_path: Path) -> None:
    with subprocess.Popen(
        [sys.executable, "-m", "bot", "commands", "--json"],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        env={**os.environ, "NOONSTONE_DATA_DIR": str(tmp_path)},
    ) as process:
        assert process.stdout is not None
        assert process.stderr is not None
        process.stdout.close()
        told = process.stderr.read()
    assert (process.returncode, told) == (0, b"")
