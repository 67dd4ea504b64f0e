"""The command line, and the only place where settings are read and fronts are put together."""

import argparse
import gc
import json
import logging
import os
import sys
from collections.abc import Callable, Sequence
from contextlib import AbstractContextManager, closing
from pathlib import Path
from typing import TYPE_CHECKING

from pydantic import ValidationError

from bot import __version__
from bot.facts import Say
from bot.language.quantities import Units
from bot.operating.argument_words import speak
from bot.operating.deploy import Kind, deployment
from bot.operating.logs import start_logging
from bot.operating.settings_told import setting_refused
from bot.preferences import FIRST, LANGUAGES, Language, Preferences
from bot.reply import Reply
from bot.settings import Settings, settings_of

if TYPE_CHECKING:
    from bot.dialogue.asking import Answer
    from bot.fronts.local import LocalDesk

__all__ = ["run"]

_REFUSED = 2


def run(arguments: Sequence[str] | None = None) -> int:
    """Run one command of the command line and return its exit code."""
    parsed = _parser(_language()).parse_args(arguments)
    try:
        settings = settings_of(os.environ)
    except ValidationError as error:
        print(_told(setting_refused(error), _language()), file=sys.stderr)
        return _REFUSED
    serves = parsed.run is _discord or getattr(parsed, "serve", False)
    start_logging(settings.log, settings.secrets(), for_a_person=not serves)
    door: Callable[[argparse.Namespace, Settings], int] = parsed.run
    if door not in (_ask, _discord):
        gc.enable()
    return door(parsed, settings)


def _language() -> Language:
    """Return the language of the help: it is told before the settings are read."""
    wished = os.environ.get("NOONSTONE_LANGUAGE")
    return next((language for language in LANGUAGES if language == wished), FIRST)


def _told(say: Say, language: Language) -> str:
    from bot.saying.voice import voice

    return voice(language, Units.CM).text(say)


def _parser(language: Language) -> argparse.ArgumentParser:
    def told(*what: str) -> str:
        return _told(Say.of("run", *what), language)

    speak(told)
    parser = argparse.ArgumentParser(prog="noonstone", description=told("about"))
    parser.add_argument(
        "--version",
        action="version",
        version=f"noonstone {__version__}",
        help=told("argparse-version"),
    )
    doors = parser.add_subparsers(required=True, metavar="command")
    asking = doors.add_parser("ask", help=told("ask"))
    asking.add_argument("question", nargs="+", help=told("ask-question"))
    asking.add_argument("--json", action="store_true", help=told("ask-json"))
    asking.add_argument("--with", dest="before", help=told("ask-with"))
    asking.add_argument("--full", action="store_true", help=told("ask-full"))
    asking.add_argument("--out", type=Path, help=told("ask-out"))
    asking.set_defaults(run=_ask)
    console = doors.add_parser("console", help=told("console"))
    console.add_argument("--out", type=Path, help=told("console-out"))
    console.set_defaults(run=_console)
    demo = doors.add_parser("demo", help=told("demo"))
    demo.add_argument("--all", action="store_true", help=told("demo-all"))
    demo.add_argument("--out", type=Path, help=told("demo-out"))
    demo.add_argument("--sample", action="store_true", help=told("demo-sample"))
    demo.set_defaults(run=_demo)
    commands = doors.add_parser("commands", help=told("commands"))
    commands.add_argument("--json", action="store_true", help=told("commands-json"))
    commands.add_argument("--table", action="store_true", help=told("commands-table"))
    commands.set_defaults(run=_commands)
    discord = doors.add_parser("discord", help=told("discord"))
    discord.set_defaults(run=_discord)
    _operating_doors(doors, told)
    for door in (asking, console, demo):
        door.add_argument("--language", choices=LANGUAGES, help=told("language"))
        door.add_argument("--units", choices=[u.value for u in Units], help=told("units"))
    return parser


def _operating_doors(
    doors: "argparse._SubParsersAction[argparse.ArgumentParser]", told: Callable[..., str]
) -> None:
    pages = doors.add_parser("pages", help=told("pages"))
    target = pages.add_mutually_exclusive_group(required=True)
    target.add_argument("--out", type=Path, help=told("pages-out"))
    target.add_argument("--serve", action="store_true", help=told("pages-serve"))
    pages.add_argument("--port", type=int, default=8040, help=told("pages-port"))
    pages.add_argument("--address", default="", help=told("pages-address"))
    pages.set_defaults(run=_pages)
    deploy = doors.add_parser("deploy", help=told("deploy"))
    deploy.add_argument("kind", choices=[kind.value for kind in Kind])
    deploy.set_defaults(run=_deploy)
    doctor = doors.add_parser("doctor", help=told("doctor"))
    doctor.set_defaults(run=_doctor)
    backup = doors.add_parser("backup", help=told("backup"))
    backup.add_argument("file", type=Path)
    backup.set_defaults(run=_backup)
    restore = doors.add_parser("restore", help=told("restore"))
    restore.add_argument("file", type=Path)
    restore.add_argument("--replace", action="store_true", help=told("restore-replace"))
    restore.set_defaults(run=_restore)


def _preferences(parsed: argparse.Namespace, settings: Settings) -> Preferences:
    forced = Units(parsed.units) if parsed.units else None
    return Preferences(
        units=forced or settings.units,
        forced_units=forced,
        guide_url=settings.guide_url,
        language=parsed.language or settings.language,
    )


def _ask(parsed: argparse.Namespace, settings: Settings) -> int:
    from bot.fronts.printing import MORE_FULL, around, show
    from bot.render.text import render_brief, render_text

    preferences = _preferences(parsed, settings)
    line = " ".join(parsed.question)
    with _desk(settings) as desk:
        if not (parsed.before or parsed.json):
            gone_on: tuple[Reply | None, str] | None = (desk.ask(line, preferences), "")
        else:
            gone_on = _gone_on(line, parsed.before, preferences, desk.ask)
    reply, packed = gone_on or (None, "")
    if reply is None:
        return 0 if gone_on else _REFUSED
    refused = reply.status == "problem"
    if parsed.json:
        told = reply.model_dump(mode="json") | {"dialogue": packed}
        print(json.dumps(told, indent=2, ensure_ascii=False))
    elif not refused and sys.stdout.isatty():
        show(reply, more=MORE_FULL, full=parsed.full)
    else:
        text = (
            render_text(reply)
            if parsed.full
            else render_brief(reply, more=around(reply, MORE_FULL))
        )
        print(text, end="", file=sys.stderr if refused else sys.stdout)
    if parsed.out is not None:
        _keep_picture(reply, parsed.out)
    return _REFUSED if refused else 0


def _gone_on(
    line: str, before: str | None, preferences: Preferences, answer: "Answer"
) -> tuple[Reply | None, str] | None:
    """Return the answer to a line, and the dialogue after it, packed; what is none is said here.

    None as answer: the line only says thanks, which is answered here too.
    """
    from bot.dialogue import START, Dialogue, after, next_line, turn
    from bot.saying.voice import voice

    try:
        dialogue = Dialogue.unpacked(before) if before else START
    except ValueError:
        speak = voice(preferences.spoken, preferences.shown).text
        print(speak(Say("console-with")), file=sys.stderr)
        return None
    if not before:
        _, _, dialogue = next_line(dialogue, line, preferences)
        reply = answer(line, preferences)
        return reply, after(dialogue, reply).packed()
    told, dialogue = turn(dialogue, line, preferences, answer)
    if told is None:
        speak = voice(preferences.speaking(line).spoken, preferences.shown).text
        print(speak(Say("door-thanks")))
    return told, dialogue.packed()


def _keep_picture(reply: Reply, folder: Path) -> None:
    from bot.fronts.gallery import keep_picture, keep_sheet
    from bot.fronts.printing import around, kept_told

    print(around(reply, kept_told(keep_picture(reply, folder))), file=sys.stderr)
    if sheet := keep_sheet(reply, folder):
        print(around(reply, kept_told(sheet)), file=sys.stderr)


def _console(parsed: argparse.Namespace, settings: Settings) -> int:
    from bot.fronts.console import converse, converse_on_terminal

    preferences = _preferences(parsed, settings)
    with _desk(settings) as desk:
        if sys.stdin.isatty() and sys.stdout.isatty():
            history = settings.data_folder() / "history"
            converse_on_terminal(preferences, history, parsed.out, desk.ask, desk.offers)
        else:
            converse(sys.stdin, sys.stdout.write, preferences, parsed.out, desk.ask)
    return 0


def _desk(settings: Settings) -> AbstractContextManager["LocalDesk"]:
    from bot.fronts.local import LocalDesk

    address = settings.database_url.get_secret_value()
    return closing(LocalDesk(address, settings.data_folder()))


def _backup(parsed: argparse.Namespace, settings: Settings) -> int:
    from bot.fronts.backups import back_up_now

    address, folder = settings.database_url.get_secret_value(), settings.data_folder()
    return back_up_now(address, folder, parsed.file, settings.language or FIRST)


def _restore(parsed: argparse.Namespace, settings: Settings) -> int:
    from bot.fronts.backups import restore_now

    address, folder = settings.database_url.get_secret_value(), settings.data_folder()
    language = settings.language or FIRST
    return restore_now(address, folder, parsed.file, language, replace=parsed.replace)


def _demo(parsed: argparse.Namespace, settings: Settings) -> int:
    from bot.fronts.demo import play, sample_session

    if parsed.sample:
        print(sample_session(), end="")
        return 0
    play(sys.stdout.write, _preferences(parsed, settings), parsed.out, every=parsed.all)
    return 0


def _commands(parsed: argparse.Namespace, _: Settings) -> int:
    from bot.commands import ALL_COMMANDS
    from bot.fronts.listed import described, said, table
    from bot.menu import about_question

    if parsed.table:
        print(table(), end="")
    elif parsed.json:
        print(json.dumps([described(c) for c in ALL_COMMANDS], indent=2, ensure_ascii=False))
    else:
        width = max(len(command.name) for command in ALL_COMMANDS)
        for command in ALL_COMMANDS:
            print(f"{command.name:<{width}}  {said(about_question(command.name))}")
    return 0


def _pages(parsed: argparse.Namespace, _: Settings) -> int:
    if parsed.serve:
        from bot.fronts.pages.server import serve

        serve(parsed.port)
        return 0
    from bot.fronts.pages.site import build

    address = parsed.address and f"{parsed.address.rstrip('/')}/"
    print(f"{build(parsed.out, address)} files written to {parsed.out}")
    return 0


def _deploy(parsed: argparse.Namespace, _: Settings) -> int:
    folder = Path(__file__).resolve().parent.parent
    print(deployment(Kind(parsed.kind), Path(sys.executable), folder), end="")
    return 0


def _doctor(_: argparse.Namespace, settings: Settings) -> int:
    from bot.fronts.doctor import examined, report
    from bot.operating.checkup import State

    # What libraries tell of themselves would stand between the findings.
    logging.getLogger().setLevel(logging.WARNING)
    findings = examined(settings)
    print("\n".join(report(findings, settings.language or FIRST)))
    return _REFUSED if any(finding.state is State.TO_DO for finding in findings) else 0


def _discord(_: argparse.Namespace, settings: Settings) -> int:
    from bot.fronts.discord.running import run

    if settings.token is None:
        print(_told(Say("run-no-token"), settings.language or FIRST), file=sys.stderr)
        return _REFUSED
    return run(settings)
