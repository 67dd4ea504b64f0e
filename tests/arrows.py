"""Which room may import which, and which package belongs to which room: DEVELOPERS.md draws it."""

# room → what it may import of the project; a longer prefix wins over a shorter one.
_ARROWS = {
    "calc": "calc",
    "bot.language": "bot.language bot.facts calc.tables",
    "bot.language.states": "bot.language bot.facts calc.animal calc.tables",
    "bot.brief": "bot.reply",
    "bot.dangers": "bot.brief bot.dangers bot.facts bot.language bot.reply calc",
    "bot.drawing": "bot.drawing",
    "bot.parts": "",
    "bot.picture": "bot.drawing",
    "bot.reply": "bot.parts bot.picture bot.queries.question calc.setup.set_up calc.uncertainty",
    "bot.preferences": "bot.language bot.saved calc.animal",
    "bot.settings": "bot.language bot.preferences",
    "bot.facts": "calc.uncertainty",
    "bot.layered": "bot.facts bot.language bot.queries.question bot.reply calc.setup.set_up",
    "bot.refusal": "bot.facts bot.language bot.layered bot.reply",
    "bot.linking": "bot.facts bot.preferences bot.reply calc.sources calc.tables",
    "bot.words": "",
    "bot.saying": (
        "bot.saying bot.brief bot.facts bot.language bot.layered bot.linking bot.preferences "
        "bot.reply calc.tables"
    ),
    # What a question works out and tells: no sentence, so nothing to look into.
    "bot.questions": (
        "bot.questions bot.menu bot.guide bot.facts bot.layered bot.queries bot.language "
        "bot.preferences bot.command bot.drawing bot.saved bot.refusal bot.reply calc "
        "bot.dangers.first_change bot.dangers.past_limits"
    ),
    # What can be asked is itself asked about.
    "bot.questions.general.help": (
        "bot.command bot.commands bot.facts bot.language bot.layered bot.menu bot.preferences "
        "bot.queries bot.refusal bot.reply"
    ),
    # The same, at a desk that has the store.
    "bot.questions.saved": (
        "bot.questions bot.command bot.desk bot.drawing bot.guide bot.facts bot.asker "
        "bot.saved bot.language bot.layered bot.pooled bot.preferences bot.queries bot.refusal "
        "bot.reply bot.database.errors bot.dangers.past_limits calc"
    ),
    "bot.queries": "bot.facts bot.language bot.queries bot.saved calc.animal calc.animals",
    "bot.saved": "bot.saved bot.language calc.animal calc.animals calc.quantities",
    "bot.database": "bot.database bot.saved",
    "bot.guide": "bot.guide calc.sources calc.tables",
    "bot.desk": "bot.saved bot.database",
    "bot.command": "bot.desk bot.layered bot.queries bot.preferences bot.reply",
    "bot.routes": (
        "bot.routes bot.dangers bot.menu bot.command bot.facts bot.guide bot.saved bot.language "
        "bot.layered bot.preferences bot.queries bot.questions calc"
    ),
    # What a line means after the answer before it: a whole question again.
    "bot.dialogue": (
        "bot.dialogue bot.answering bot.brief bot.command bot.commands bot.dangers bot.facts "
        "bot.language bot.layered bot.preferences bot.queries bot.question_context "
        "bot.questions.animals bot.refusal bot.reply bot.routes bot.saying.voice calc.animal "
        "calc.animals calc.naming calc.validity"
    ),
    "bot.answering": (
        "bot.questions bot.command bot.language.states bot.layered bot.preferences "
        "bot.queries bot.refusal bot.reply bot.saying"
    ),
    "bot.commands": "bot.menu bot.command bot.language.errors bot.queries.question",
    "bot.asker": (
        "bot.database bot.desk bot.saved bot.language bot.pooled bot.preferences calc.animals"
    ),
    "bot.pooled": "bot.language bot.saved calc.uv",
    "bot.command_asked": "bot.facts bot.command bot.commands bot.language bot.questions",
    "bot.question_context": "bot.language bot.preferences bot.queries calc.animal calc.naming",
    "bot.way_on": (
        "bot.unread bot.questions bot.answering bot.command bot.commands bot.language "
        "bot.layered bot.preferences bot.question_context bot.refusal calc.validity"
    ),
    "bot.said_first": (
        "bot.linking calc.naming bot.saying bot.facts bot.language bot.brief bot.command "
        "bot.dangers bot.guide bot.preferences bot.reply"
    ),
    "bot.offering": (
        "bot.facts bot.guide bot.language bot.menu bot.queries.question bot.questions.animals "
        "bot.questions.record bot.saying.voice"
    ),
    "bot.completion": (
        "bot.commands bot.menu bot.guide bot.language bot.preferences bot.queries "
        "calc.animals calc.heat.sources_of_heat"
    ),
    "bot.problems": (
        "bot.unread bot.layered bot.database.errors bot.commands bot.facts bot.preferences "
        "bot.queries.question bot.reply bot.saying"
    ),
    "bot.limits_told": (
        "bot.command bot.dangers.past_limits bot.language bot.preferences bot.queries "
        "bot.question_context bot.questions bot.reply calc"
    ),
    "bot.outside": "bot.facts bot.language bot.saying.figures calc.validity",
    "bot.unread": (
        "bot.outside bot.command bot.dangers.first bot.facts bot.language bot.preferences "
        "bot.questions bot.routes.examples bot.saved"
    ),
    "bot.around": (
        "bot.command bot.facts bot.saved bot.language bot.layered bot.preferences bot.queries "
        "bot.questions calc.naming"
    ),
    "bot.heard_told": "bot.language bot.questions bot.reply",
    "bot.free_words": (
        "bot.answering bot.command bot.commands bot.preferences bot.queries bot.question_context "
        "bot.reply"
    ),
    "bot.understood": (
        "bot.free_words bot.heard_told "
        "bot.limits_told bot.outside bot.questions bot.unread bot.around bot.facts "
        "bot.layered bot.saying.voice bot.problems bot.answering bot.dangers bot.command "
        "bot.command_asked bot.said_first bot.commands bot.language bot.preferences "
        "bot.queries bot.question_context bot.refusal bot.reply bot.way_on calc.validity"
    ),
    "bot.each_animal": (
        "bot.brief bot.facts bot.queries.question bot.questions.animals bot.reply "
        "bot.saying.voice bot.understood"
    ),
    "bot.ask": (
        "bot.each_animal bot.understood bot.answering bot.asker bot.commands "
        "bot.database.errors bot.desk "
        "bot.facts bot.language bot.preferences bot.problems bot.queries bot.questions "
        "bot.refusal bot.reply bot.unread bot.way_on calc.validity"
    ),
    "bot.menu": "bot.facts",
    "bot.render": "bot.brief bot.menu bot.render bot.reply bot.drawing",
    # The few words that stand around an answer on a page.
    "bot.render.html": (
        "bot.brief bot.facts bot.language.units bot.render bot.reply bot.saying.voice"
    ),
    "bot.operating": "bot.facts bot.language.shown bot.operating bot.settings",
    # What every front that runs for many askers needs, whatever the chat.
    "bot.serving": (
        "bot.serving bot.answering bot.asker bot.desk bot.drawing bot.saved bot.preferences "
        "bot.questions.saved bot.render.picture bot.reply bot.database"
    ),
    "bot.fronts": "bot calc.sources calc.animal calc.animals calc.name_index calc.setup.bodies",
    "bot.fronts.pages": (
        "bot.fronts.pages bot.ask bot.brief bot.command bot.commands bot.completion bot.dialogue "
        "bot.offering "
        "bot.drawing bot.facts bot.guide bot.language bot.menu bot.picture bot.preferences "
        "bot.queries bot.question_context bot.questions bot.render bot.reply bot.routes.examples "
        "bot.saying bot.serving bot.linking bot.understood bot.unread calc"
    ),
    "bot.fronts.discord": (
        "bot.fronts.discord bot.ask bot.asker bot.brief bot.command bot.commands bot.completion "
        "bot.offering "
        "bot.desk bot.dialogue bot.facts bot.guide bot.layered bot.saved bot.language bot.menu "
        "bot.operating "
        "bot.preferences bot.problems bot.queries bot.question_context bot.questions.animals "
        "bot.questions.saved bot.render bot.reply bot.saying bot.serving bot.settings bot.database"
    ),
    "bot.__main__": "bot.operating.lightly bot.command_line",
    "bot.command_line": "bot",
}
ARROWS = {room: tuple(rooms.split()) for room, rooms in _ARROWS.items()}
# third-party package → the rooms that may import it.
KEEPERS: dict[str, tuple[str, ...]] = {
    "cachetools": ("bot.serving", "bot.fronts"),
    "discord": ("bot.fronts.discord",),
    "fluent": ("bot.saying",),
    "jinja2": ("bot.render.html", "bot.fronts.pages"),
    "markupsafe": ("bot.render.html", "bot.fronts.pages"),
    "pint": ("bot.language",),
    "pydantic": ("bot",),
    "contourpy": ("bot.render.picture",),
    "resvg_py": ("bot.render.picture",),
    "PIL": ("bot.render.picture",),
    # Only the tests check against it.
    "scipy": (),
    "sqlalchemy": ("bot.database",),
    "alembic": ("bot.database",),
}
