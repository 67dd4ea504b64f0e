"""What the words of every language may say, held against the facts that they are said with."""

import re
import tomllib
from importlib.resources import files

import pytest
from fluent.syntax import FluentParser, ast

from bot.commands import ALL_COMMANDS
from bot.language.units import Units
from bot.preferences import FIRST, LANGUAGES
from bot.questions.animals import wanted_of
from bot.questions.shared import others_say
from bot.saying.voice import voice
from bot.saying.words import Words, words
from calc.animal import Group, Particular, Subject
from calc.animals import animals
from calc.heat.sources_of_heat import heat_sources
from tests.bot.saying import lint, samples

OTHERS = [language for language in LANGUAGES if language != FIRST]
# Said by the machinery itself: how figures, lists and names are put together, and labels.
# What an animal has a target for; of a zone and a home there is no figure to note anything of.
TARGETS = [s for s in Subject if s not in (Subject.ZONE, Subject.HOME_LATITUDE, Subject.GRADIENT)]
MACHINERY = ("figures", "list", "part", "button", "only-english", "only-english-rest")


# A hole, a value of Python's own, or what a clause that was left out leaves behind.
BROKEN = re.compile(r"[{}]|None|Enum|  | [.,;:](?!\d)|\.\.")


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_is_kept_of_the_words_says_what_their_files_say(language: str) -> None:
    kept = words(language)
    fresh = Words(language, {stem: kept.text(stem) for stem in ("night", "shared")})
    for key in list(fresh.keys()):
        assert key in kept
        assert key in fresh
        assert kept.used[key].facts == fresh.used[key].facts
        assert kept.used[key].messages == fresh.used[key].messages


@pytest.mark.slow
@pytest.mark.parametrize("language", LANGUAGES)
def test_every_file_is_whole_and_every_message_compiles(language: str) -> None:
    told = words(language)
    told.check()
    for stem in told.stems:
        body = FluentParser().parse(told.text(stem)).body
        read = [f"-{e.id.name}" if isinstance(e, ast.Term) else e.id.name for e in body
                if isinstance(e, ast.Message | ast.Term)]  # fmt: skip
        assert not [e.content for e in body if isinstance(e, ast.Junk)], stem
        assert read == list(told.entries(stem)), stem


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_message_stands_in_the_file_that_its_id_names(language: str) -> None:
    told = words(language)
    for stem in told.stems:
        for key in told.entries(stem):
            assert told.stem_of(key) == stem, f"{key} belongs into {told.stem_of(key)}.ftl"


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_animal_and_every_lamp_has_a_name_in_every_form(language: str) -> None:
    told = words(language)
    # What was said before is read already; all of it is looked at here.
    told.check()
    for family, like, keys in (
        ("animal", "any", animals()),
        ("lamp", "t8-tube", heat_sources()),
    ):
        forms = {k.partition(".")[2] for k in told.used if k.startswith(f"-{family}-{like}.")}
        forms |= {"a", "many"}
        for key in keys:
            for form in forms:
                assert f"-{family}-{key}.{form}" in told, f"{key}.{form}"
    assert {k.partition(".")[2] for k in told.used if k.startswith("-animal-any.")} == {
        k.partition(".")[2] for k in told.used if k.startswith("-own.")
    }


def test_what_is_noted_of_a_target_and_said_against_it_has_its_words() -> None:
    notes = set[str]()
    others = set[str]()
    for animal in animals().values():
        for subject in TARGETS:
            target = wanted_of(animal, subject)
            if target is not None and target.note:
                notes.add(f"note-{animal.slug}-{subject.value}")
        others |= {say.id for say in others_say(animal, *Subject)}
    assert notes == set(words(FIRST).entries("note"))
    assert others == set(words(FIRST).entries("others"))


def test_what_is_particular_of_an_animal_has_its_words_and_none_is_idle() -> None:
    wanted = {f"kind-young-{group.value}" for group in Group}
    for animal in animals().values():
        if Particular.KIND in animal.particular:
            wanted.add(f"kind-{animal.slug}")
        if Particular.BROOD in animal.particular:
            wanted.add(f"kind-brood-{animal.slug}")
    assert wanted == set(words(FIRST).entries("kind"))


@pytest.mark.parametrize("language", OTHERS)
def test_a_file_of_another_language_has_the_same_messages_and_no_other(language: str) -> None:
    here, first = words(language), words(FIRST)
    assert set(here.stems) <= set(first.stems)
    for stem in here.stems:
        assert set(here.entries(stem)) == set(first.entries(stem)), stem


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_message_fits_the_facts_that_it_is_said_with(language: str) -> None:
    told = words(language)
    told.check()
    assert lint.faults(told) == []


@pytest.mark.slow
def test_every_message_is_said_and_none_is_missing() -> None:
    told = words(FIRST)
    told.check()
    asked, families = lint.said_ids()
    missing = {key for key in asked if key not in told}
    assert not missing, f"said and not written: {sorted(missing)}"
    members = {f"{family}-{name}" for family, names in families.items() for name in names}
    assert not {key for key in members if key not in told}, "a family lacks a member"
    used = asked | {other for u in told.used.values() for other in u.messages}
    prefixes = tuple(f"{family}-" for family in families)
    idle = [
        key
        for stem in told.stems
        for key in told.entries(stem)
        if not key.startswith("-") and stem not in MACHINERY and key not in MACHINERY
        and key not in used and not key.startswith(prefixes or ("\0",))
    ]  # fmt: skip
    assert not idle, f"written and never said: {idle}"


@pytest.mark.slow
@pytest.mark.parametrize("language", LANGUAGES)
def test_every_message_is_rendered_with_sample_facts(language: str) -> None:
    told = words(language)
    told.check()
    speaker = voice(language, Units.CM)
    tried = 0
    for stem in told.stems:
        for key in told.entries(stem):
            if key.startswith("-") or stem in MACHINERY:
                continue
            for facts in samples.facts_for(told, key):
                text = told.spoken(key)(facts, speaker)
                tried += 1
                assert text == text.strip(), key
                assert text, key
                assert not re.search(r"[{}]|None|  | [.,;:](?!\d)|\.\.|Enum", text), (
                    f"{key}: {text}"
                )
    assert tried > 0 or told.stems


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_word_is_used_that_nobody_says(language: str) -> None:
    path = files("bot.words") / language / "avoid.toml"
    better = tomllib.loads(path.read_text(encoding="utf-8"))
    pattern = re.compile(rf"(?<!\w)(?:{'|'.join(map(re.escape, better))})(?!\w)", re.I)
    told = words(language)
    for stem in told.stems:
        text = "\n".join(line for line in told.text(stem).splitlines() if not line.startswith("#"))
        spoken = re.sub(r"^-?[\w-]+ =|\[\w+\]|\{[^{}]*\}|\$\w+", " ", text, flags=re.M)
        found = pattern.findall(spoken)
        assert not found, f"{language}/{stem}.ftl: {found}"


def test_every_language_has_all_files_but_those_of_questions() -> None:
    own = {command.name.replace(" ", "-") for command in ALL_COMMANDS}
    for language in OTHERS:
        lacking = set(words(FIRST).stems) - own - set(words(language).stems)
        assert not lacking, f"copy from bot/words/{FIRST} and translate: {sorted(lacking)}"
