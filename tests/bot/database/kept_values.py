"""Strategies for everything that is kept, for the property tests."""

from datetime import UTC, date, datetime

from hypothesis import strategies as st

from bot.language.quantities import Units
from bot.language.tongue import Tongue
from bot.language.uv_lamps import TUBES, UvLamp
from bot.saved.boards import MOST_ON_BOARD, BoardExport, Topic
from bot.saved.group import (
    OwnAnimal,
    OwnLamp,
    OwnRange,
    OwnScreen,
    OwnSubject,
    OwnTarget,
    ServerSettings,
    Shown,
)
from bot.saved.group_file import ServerExport
from bot.saved.keeper import Enclosure, KeeperSettings, KeptScreen, Reading, Spare
from bot.saved.keeper import Setup as KeptSetup
from bot.saved.keeper_file import KeeperExport
from bot.saved.own_lamps import OwnPoint
from bot.saved.public import PublicRule, Who
from bot.saved.reminders import ASKED_FOR, MOST_DAYS, ReminderExport
from bot.saved.values import OwnLife, name_key
from calc.animal import Subject
from calc.animals import animals
from calc.quantities import Quantity

__all__ = ["keeper_exports", "server_exports"]

NOW = datetime(2026, 5, 4, 12, 0, tzinfo=UTC)
days = st.dates(date(2020, 1, 1), date(2030, 12, 31))
slugs = st.sampled_from(sorted(animals()))
zones = st.sampled_from(["UTC", "Europe/Berlin", "America/St_Johns", "Australia/Lord_Howe"])
names = st.from_regex(r"[A-Za-zÀ-ÿĀ-ž一-鿿][A-Za-z0-9à-ÿ '’.\-]{0,30}", fullmatch=True).filter(
    lambda text: bool(text.split()) and "×" not in text and "÷" not in text
)


def exact(low: float, high: float) -> st.SearchStrategy[float]:
    # Minus zero and zero are one value, and SQLite keeps them as one.
    return st.floats(low, high, allow_nan=False).map(lambda x: x + 0.0)


tubes = st.builds(
    OwnLamp,
    name=names,
    kind=st.sampled_from(sorted(TUBES)),
    constant_uvi_m=exact(0.02, 19.0),
    doubt_factor=exact(1.0, 3.0),
    readings=st.integers(1, 50),
    lit_length_m=exact(0.1, 1.6),
    set_on=days,
)
points = st.builds(
    OwnPoint,
    strength_uvi_m2=exact(0.01, 99.0),
    behind_m=exact(0.0, 0.3),
    around_m=exact(0.05, 3.0),
    variance=exact(0.01, 1.0),
    depth_variance_m2=exact(0.01, 1.0),
    covariance_m=exact(-0.01, 0.01),
)
small_lamps = st.builds(
    OwnLamp,
    name=names,
    kind=st.sampled_from(sorted(set(UvLamp) - TUBES - {UvLamp.UNKNOWN})),
    point=points,
    doubt_factor=exact(1.0, 3.0),
    readings=st.integers(2, 50),
    set_on=days,
)
lamps = tubes | small_lamps
screens = st.builds(OwnScreen, name=names, passes=exact(0.01, 1.0), set_on=days)


@st.composite
def targets(draw: st.DrawFn) -> OwnTarget:
    """Draw a target whose ends are in order."""
    low, best, high = sorted(draw(st.lists(exact(10.0, 20.0), min_size=3, max_size=3)))
    subjects = (Subject.UVI, Subject.WARM_AIR, Subject.BASKING_SURFACE, Subject.LIGHT_HOURS)
    return OwnTarget(
        animal=draw(slugs),
        subject=draw(st.sampled_from(subjects)),
        low=low,
        best=draw(st.sampled_from([None, best])),
        high=high,
        set_on=draw(days),
    )


@st.composite
def own_animals(draw: st.DrawFn) -> OwnAnimal:
    """Draw an animal of a group's own."""
    low, high = sorted(draw(st.lists(exact(10.0, 20.0), min_size=2, max_size=2)))
    subjects: tuple[OwnSubject, ...] = (Subject.UVI, Subject.WARM_AIR, Subject.LIGHT_HOURS)
    wants = draw(st.lists(st.sampled_from(subjects), unique=True))
    return OwnAnimal(
        name=draw(names),
        scientific=draw(st.sampled_from(["", "Lacerta muscosa"])),
        wants={subject: OwnRange(low=low, high=high) for subject in wants},
        surface_limit_c=draw(st.none() | exact(40.0, 60.0)),
        coolest_limit_c=draw(st.none() | exact(25.0, 38.0)),
        night_limit_c=draw(st.none() | exact(2.0, 20.0)),
        uvi_limit=draw(st.none() | exact(0.5, 11.0)),
        set_on=draw(days),
        back_m=draw(st.none() | exact(0.01, 0.3)),
        life=draw(st.none() | st.sampled_from(OwnLife)),
    )


boards = st.builds(
    BoardExport,
    channel=st.integers(0, 2**63 - 1),
    topic=st.sampled_from(Topic),
    animals=st.lists(slugs, max_size=MOST_ON_BOARD, unique=True).map(tuple),
)
server_exports = st.builds(
    ServerExport,
    settings=st.builds(
        ServerSettings,
        units=st.none() | st.sampled_from(Units),
        animal=st.none() | slugs,
        guide_url=st.sampled_from([None, "https://guide.invalid/pages"]),
        zone=st.none() | zones,
        language=st.none() | st.sampled_from(Tongue),
        vets=st.sampled_from([None, "the channel #reptile-vets"]),
        helpers=st.none() | st.integers(0, 2**63 - 1),
        helper_role=st.none() | st.integers(0, 2**63 - 1),
    ),
    channels=st.dictionaries(st.integers(0, 2**63 - 1), st.sampled_from(Shown), max_size=4),
    public=st.dictionaries(
        st.integers(0, 2**63 - 1),
        st.builds(PublicRule, who=st.sampled_from(Who), most=st.none() | st.integers(1, 100)),
        max_size=3,
    ),
    lamps=st.lists(lamps, max_size=4, unique_by=lambda x: name_key(x.name)).map(tuple),
    screens=st.lists(screens, max_size=4, unique_by=lambda x: name_key(x.name)).map(tuple),
    targets=st.lists(targets(), max_size=4, unique_by=lambda x: (x.animal, x.subject)).map(tuple),
    animals=st.lists(own_animals(), max_size=3, unique_by=lambda x: name_key(x.name)).map(tuple),
    boards=st.lists(boards, max_size=3, unique_by=lambda x: (x.channel, x.topic)).map(tuple),
)

kept_screens = st.builds(KeptScreen, passes=st.none() | exact(0.01, 1.0)) | st.builds(
    KeptScreen,
    mesh_x_per_m=exact(100.0, 1000.0),
    mesh_y_per_m=exact(100.0, 1000.0),
    wire_m=exact(1e-4, 1e-3),
)
kept_panes = st.builds(KeptScreen, pane=st.sampled_from(["glass", "plastic"]))
setups = st.builds(
    KeptSetup,
    animal=st.none() | slugs,
    tube_percent=st.none() | exact(1.0, 20.0),
    reflector=st.sampled_from([None, "polished", "plain"]),
    lamp=st.none() | st.sampled_from(UvLamp),
    screen=st.none() | kept_screens | kept_panes,
    tubes=st.none() | st.integers(1, 4),
    gap_m=st.none() | exact(0.01, 1.0),
    lid=st.sampled_from([None, "glass", "plastic"]),
    distance_m=st.none() | exact(0.05, 3.0),
    tube_since=st.none() | days,
)
readings = st.builds(
    Reading,
    day=days,
    of=st.just(Quantity.UVI),
    value=exact(0.0, 100.0),
    distance_m=st.none() | exact(0.05, 3.0),
) | st.builds(
    Reading,
    day=days,
    of=st.sampled_from([Quantity.BASKING_SURFACE, Quantity.NIGHT_AIR]),
    value=exact(-20.0, 60.0),
)
enclosures = st.builds(
    Enclosure,
    name=names,
    setup=setups,
    readings=st.lists(readings, max_size=5, unique_by=lambda r: (r.day, r.of)).map(tuple),
)


spares = st.builds(
    Spare,
    name=names,
    lamp=st.sampled_from(UvLamp),
    tube_percent=st.none() | exact(1.0, 20.0),
    tube_length_m=st.none() | exact(0.1, 2.0),
    bought_on=st.none() | days,
)


@st.composite
def keeper_exports(draw: st.DrawFn) -> KeeperExport:
    """Draw a keeper's file, whose reminders are ahead of NOW and about its enclosures."""
    kept = draw(st.lists(enclosures, max_size=3, unique_by=lambda e: name_key(e.name)))
    about = st.none() | (st.sampled_from([e.name for e in kept]) if kept else st.none())
    reminder = st.builds(
        ReminderExport,
        about=st.sampled_from(ASKED_FOR),
        enclosure=about,
        due=st.datetimes(
            NOW.replace(tzinfo=None), datetime(2031, 1, 1), timezones=st.just(UTC)
        ).filter(lambda due: due > NOW),
        zone=zones,
        every_days=st.none() | st.integers(1, MOST_DAYS),
    )
    reminders = st.lists(reminder, max_size=3, unique_by=lambda r: (r.about, r.enclosure, r.due))
    settings = KeeperSettings(
        units=draw(st.none() | st.sampled_from(Units)),
        zone=draw(st.none() | zones),
        language=draw(st.none() | st.sampled_from(Tongue)),
    )
    stock = st.lists(spares, max_size=2, unique_by=lambda spare: name_key(spare.name))
    return KeeperExport(
        settings=settings,
        enclosures=tuple(kept),
        reminders=tuple(draw(reminders)),
        spares=tuple(draw(stock)),
    )
