"""An animal that a group added: named, checked, asked about everywhere, taken away."""

import json

import pytest

from bot.ask import ask as at_the_door
from bot.asker import names_of
from bot.commands import COMMANDS
from bot.completion import complete
from bot.database.store import Store
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.routes.examples import examples_for
from bot.saved.group_file import ServerExport
from tests.bot.keeping.conftest import Ask
from tests.bot.keeping.people import GARDEN, row, whole

BURROW = GARDEN + 1
MOSS = "server animal name:Moss lizard uvi:2-3 basking:88-93F cool:70-76F night:58-64F hours:12-14h"
SET_UP = "12% in a shiny hood, no mesh, 16in to its back, basking 98F, cool 75F"
QUESTIONS = (
    "needs moss lizard",
    f"check my moss lizard, {SET_UP}",
    f"check animal:Moss Lizards setup:{SET_UP}",
    "distance tube:12% reflector:polished screen:none length:34in animal:moss lizard",
    "how far should a 12% tube be with a polished reflector and no screen for my moss lizard",
    "temps basking:90F cool:73F animal:moss lizard",
    "night room:60F animal:moss lizard",
    "plan animal:moss lizard enclosure:48x24x24in lid:full mesh room:70F night:62F back:2in",
    "card animal:moss lizard",
    "uvi distance:14in tube:12% reflector:polished screen:none animal:moss lizard",
    "moss lizard temps",
)


@pytest.mark.parametrize("question", QUESTIONS)
async def test_it_can_be_asked_about_and_the_answer_says_whose_figures_it_has(
    ok: Ask, ask: Ask, question: str
) -> None:
    before = await ask(question)
    assert "UV index 2 to 3" not in whole(before)
    await ok(MOSS)
    reply = await ok(question)
    assert "Moss lizard" in whole(reply)
    assert "set by this group, on 4 May 2026" in row(reply, "The group's own")
    elsewhere = await ask(question, server=BURROW)
    assert "this group" not in whole(elsewhere)


async def test_its_figures_are_the_ones_that_were_set(ok: Ask) -> None:
    await ok(MOSS)
    reply = await ok("needs moss lizard")
    values = {v.name: (round(v.low, 3), round(v.high, 3)) for v in reply.values}
    assert values["uvi"] == (2.0, 3.0)
    assert values["basking_surface"] == (31.111, 33.889)
    assert values["cool_air"] == (21.111, 24.444)
    assert values["light"] == (12.0, 14.0)
    assert "the group's own figure, set on 4 May 2026" in row(reply, "Basking surface")
    assert "groups_own" in {source.key for source in reply.sources}
    assert "not known here" in row(reply, "Warm-end air")


@pytest.mark.parametrize(
    "told",
    [
        "name:Bearded dragon basking:88-93F",
        "name:beardie basking:88-93F",
        "name:Hypo bearded dragon basking:88-93F",
        "name:Ball python basking:88-93F",
        "name:boa basking:88-93F",
        "name:gecko basking:88-93F",
        "name:the lamp basking:88-93F",
        "name:Lizard 7 basking:88-93F",
        "name:Moss <b> basking:88-93F",
        "name:Moss lizard",
        "name:Moss lizard surface_limit:104F",
        "name:Moss lizard basking:88-93",
        "name:Moss lizard basking:88-93F scientific:*moss*",
        "name:Moss lizard uvi:0",
        # Past a limit that holds for any animal.
        "name:Moss lizard basking:110-120F",
        "name:Moss lizard warm:110-120F",
        "name:Moss lizard cool:90-95F",
        "name:Moss lizard night:40-45F",
        "name:Moss lizard uvi:8-9",
        "name:Moss lizard hours:20-22h",
        # Past a limit of its own, or one that no animal here could have.
        "name:Moss lizard basking:88-93F surface_limit:90F",
        "name:Moss lizard cool:70-76F cool_limit:72F",
        "name:Moss lizard night:58-64F night_limit:60F",
        "name:Moss lizard uvi:2-3 uvi_limit:3",
        "name:Moss lizard basking:88-93F surface_limit:200F",
        "name:Moss lizard basking:88-93F cool_limit:104F",
        "name:Moss lizard basking:88-93F night_limit:20F",
        "name:Moss lizard uvi:2-3 uvi_limit:15",
        "name:Moss lizard cool:70-76F cool_limit:86F night_limit:88F",
    ],
)
async def test_what_cannot_be_is_refused_in_one_sentence(ask: Ask, told: str) -> None:
    before = whole(await ask("server export"))
    reply = await ask(f"server animal {told}")
    assert reply.status == "problem"
    assert reply.answer
    assert reply.steps
    assert whole(await ask("server export")) == before


@pytest.mark.parametrize(
    "told",
    [
        "name:Sun lizard basking:115-125F cool:84-93F surface_limit:140F cool_limit:100F",
        "name:Moss lizard night:40-45F night_limit:38F",
        "name:Moss lizard uvi:8-9 uvi_limit:10.5",
        "name:Emerald tree boa scientific:Corallus caninus basking:82-86F cool:72-76F",
    ],
)
async def test_own_limits_and_names_known_without_figures_are_taken(ok: Ask, told: str) -> None:
    reply = await ok(f"server animal {told}")
    assert "set by this group" in whole(reply) or "Emerald" in told


async def test_readings_past_its_own_limit_are_said_first(ok: Ask) -> None:
    await ok(f"{MOSS} surface_limit:100F cool_limit:84F")
    hot = await ok("temps basking:108F cool:75F animal:moss lizard")
    assert [danger.key for danger in hot.dangers][:1] == ["box_too_hot"]
    assert [d.key for d in (await ok("temps basking:90F cool:85F animal:moss lizard")).dangers]
    assert (await ok("temps basking:90F cool:73F animal:moss lizard")).dangers == ()


async def test_it_can_be_the_groups_usual_animal_and_on_a_board(ok: Ask, ask: Ask) -> None:
    await ok(MOSS)
    await ok("server set animal:moss lizard")
    assert row(await ok("server show"), "Animal") == "Moss lizard"
    usual = await ok("distance tube:12% reflector:polished screen:none length:34in")
    assert "Moss lizard" in usual.title
    for topic in ("distances", "temperatures"):
        board = await ok(f"board preview topic:{topic} animal:moss lizard")
        assert "group's own figure" in whole(board)
    await ok("board post topic:temperatures animal:moss lizard")
    assert "Moss lizard" in whole(await ok("board list"))
    gone = await ok("server remove animal:moss lizard")
    assert "board remove topic:temperatures" in gone.cautions[0]
    # Its name means nothing now, and stands for no other animal.
    assert (await ask("needs moss lizard")).status == "problem"
    assert (await ask("distance tube:12% reflector:polished screen:none")).status == "problem"


async def test_it_is_listed_changed_and_logged(ok: Ask, ask: Ask) -> None:
    await ok(f"{MOSS} scientific:Lacerta muscosa uvi_limit:5")
    shown = row(await ok("server show"), "Own animal Moss lizard")
    assert shown.startswith("Lacerta muscosa, UV index 2 to 3, basking surface 88 to 93 °F")
    assert "UV index under 5;" in shown
    changed = await ok("server animal name:moss lizard cool:70-76F")
    assert changed.title == "The animal “moss lizard” is changed"
    assert "basking" not in row(await ok("server show"), "Own animal moss lizard")
    target = await ask("server target animal:moss lizard of:basking range:88-93F")
    assert "change it as a whole" in target.answer
    await ok("server remove animal:moss lizard")
    table = (await ok("server changes")).table
    assert table is not None
    assert [line[1] for line in table.rows] == [
        "animal moss lizard",
        "animal moss lizard",
        "animal Moss lizard",
    ]
    assert table.rows[0][3] == "nothing"
    assert table.rows[2][3].startswith("Lacerta muscosa, UV index 2 to 3")


async def test_it_goes_out_as_a_file_and_comes_back(ok: Ask) -> None:
    await ok(f"{MOSS} cool_limit:86F")
    document = (await ok("server export")).document
    assert document is not None
    kept = ServerExport.model_validate_json(document.text)
    assert [x.name for x in kept.animals] == ["Moss lizard"]
    await ok("server forget sure:yes")
    await ok(f"server import file:{json.dumps(json.loads(document.text))}")
    back = (await ok("server export")).document
    assert back is not None
    assert ServerExport.model_validate_json(back.text) == kept


async def test_a_file_with_a_harmful_target_comes_to_nothing(ok: Ask) -> None:
    await ok(MOSS)
    document = (await ok("server export")).document
    assert document is not None
    file = json.loads(document.text)
    file["animals"][0]["wants"]["basking_surface"] = {"low": 50.0, "high": 60.0}
    await ok(f"server import file:{json.dumps(file)}")
    reply = await ok("needs moss lizard")
    assert "basking_surface" not in {value.name for value in reply.values}


async def test_it_completes_options_and_fills_a_keepers_set_up(ok: Ask, store: Store) -> None:
    await ok(MOSS)
    own = (await store.exchange.server(GARDEN)).own
    assert complete("needs", "animal", "mo", names_of(own))[0] == "Moss lizard"
    await ok(f"mine save name:Box words:moss lizard, {SET_UP}")
    assert row(await ok("mine show name:Box"), "Animal") == "Moss lizard"
    await ok("server remove animal:moss lizard")
    assert row(await ok("mine show name:Box"), "Animal") == "Moss lizard"


@pytest.mark.parametrize(
    "told",
    [
        "uvi:1-2",
        "warm:75-79F",
        "hours:10-12h",
        "night:58-64F",
        "cool:59-64F cool_limit:68F surface_limit:77F night_limit:36F",
        "basking:115-125F cool:84-93F surface_limit:140F cool_limit:100F night_limit:72F",
    ],
)
async def test_every_question_answers_or_asks_and_no_example_is_faulted(
    ok: Ask, store: Store, told: str
) -> None:
    await ok(f"server animal name:Moss lizard {told}")
    own = (await store.exchange.server(GARDEN)).own
    asker = Preferences(own=own)
    for command in COMMANDS:
        names = {option.name for option in command.query.options()}
        if "animal" not in names:
            continue
        whole_question = {o.name: o.example for o in command.query.options() if o.required}
        fitting = examples_for(command.name, "moss lizard", own)
        whole_question |= {k: v for k, v in fitting.items() if k in names}
        reply = at_the_door(
            Question(command.name, whole_question | {"animal": "moss lizard"}), asker
        )
        if fitting and "readings" not in fitting:
            assert reply.dangers == (), (command.name, whole_question)
        assert reply.status == "ok" or "need" in reply.answer, reply.answer
    needs = at_the_door("needs moss lizard", asker)
    lines = [step.rpartition(": ")[2] for step in needs.steps if "Moss" in step]
    assert [at_the_door(line, asker).status for line in lines] == ["ok"] * len(lines)


LIVING = f"{MOSS} back:2in life:climbs"


async def test_what_was_told_of_its_back_and_its_life_stands_in_every_room(ok: Ask) -> None:
    kept = await ok(LIVING)
    assert "2 in" in row(kept, "Back")
    assert "climbs" in row(kept, "Way of life")
    planned = await ok("plan animal:moss lizard enclosure:48x24x36in lid:full mesh")
    assert "branch or shelf" in whole(planned)
    drawn = await ok(
        "section tube:6% reflector:plain screen:none distance:16in enclosure:48x24x36in "
        "length:22in animal:moss lizard"
    )
    assert "It climbs, so its platform is the branch" in whole(drawn)
    assert "highest perch under the lamp" in whole(await ok("needs moss lizard"))


@pytest.mark.parametrize(
    ("life", "told"),
    [
        ("water", "water to swim in"),
        ("digs", "It digs"),
        ("nocturnal", "It rests by day"),
    ],
)
async def test_a_way_of_life_is_told_by_needs(ok: Ask, life: str, told: str) -> None:
    await ok(f"{MOSS} life:{life}")
    assert told in whole(await ok("needs moss lizard"))


async def test_a_back_that_cannot_be_is_refused(ask: Ask) -> None:
    reply = await ask(f"{MOSS} back:9ft")
    assert reply.status == "problem"
