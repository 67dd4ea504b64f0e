"""The verdict of a picture is the verdict of its reply, and its words stand out from their ground.

Read from what is drawn: the head and its sign, plates, bars and cells against rows and tables.
"""

from io import BytesIO
from random import Random
from xml.etree import ElementTree

import numpy as np
import pytest
import resvg_py
from PIL import Image

from bot.ask import ask
from bot.drawing import Behind, Card, Drop, Ladder, Side, Timeline, Tone
from bot.preferences import LANGUAGES, Language, Preferences
from bot.render.picture import Theme, page_of
from bot.render.picture.inks import TONE_SIGN, Sign
from bot.render.picture.lettering import font_files
from bot.render.picture.things import tube_across, tube_along
from tests.bot.svg_read import SVG
from tests.bot.test_picture_colours import contrast
from tests.bot.test_picture_golden import QUESTIONS, TODAY, drawing_of

WORDS = {
    Tone.GOOD: {"fine"},
    Tone.BAD: {"low", "far too low", "high", "dangerous", "too close"},
    Tone.DOUBTFUL: {
        "probably low",
        "probably high",
        "cannot tell",
        "keepers differ",
        "not read yet",
    },
}
LEAST = 4.5


def plain(words: str) -> str:
    return words.replace("\u00a0", " ")


def test_the_head_of_readings_has_the_sign_of_what_it_says() -> None:
    random, seen = Random(18), set()
    for _ in range(60):
        told = (
            f"temps basking:{random.randint(70, 140)}F cool:{random.randint(60, 95)}F "
            f"night:{random.randint(50, 80)}F lamp_on:3h animal:bearded dragon"
        )
        reply = ask(told, Preferences(language="en", today=TODAY))
        assert reply.picture is not None
        drawing = reply.picture.drawing
        assert isinstance(drawing, Side)
        head = plain(drawing.title)
        assert head in reply.answer
        unsure = any(word in head for word in ("probably", "may be", "differ", "each other"))
        fine = "All your readings are right" in head or head.startswith("Fine.")
        wanted = Tone.DOUBTFUL if unsure else Tone.GOOD if fine else Tone.BAD
        assert drawing.tone is wanted, head
        seen.add(wanted)
        for place in drawing.places:
            assert place.gauge is not None
            assert place.gauge.verdict in WORDS[place.tone], place
    assert seen == {Tone.GOOD, Tone.DOUBTFUL, Tone.BAD}


@pytest.mark.parametrize("distance", [5, 10, 16, 24, 40])
def test_the_bars_of_tubes_have_the_verdicts_of_the_table(distance: int) -> None:
    line = f"tube distance:{distance}in screen:none animal:bearded dragon readings:4 at 12in"
    reply = ask(line, Preferences(language="en", today=TODAY))
    assert reply.picture is not None
    assert reply.table is not None
    drawing = reply.picture.drawing
    assert isinstance(drawing, Ladder)
    rows = [tuple(map(plain, row)) for row in reply.table.rows]
    for rung in drawing.rungs:
        label = plain(rung.label)
        name, _, kind = label.rpartition(" ")
        row = next(r for r in rows if r[0] == label or (r[0] == name and r[1].startswith(kind)))
        assert row[3].startswith(rung.verdict), (rung, row)
        assert rung.verdict in WORDS[rung.tone]


def test_a_cell_of_a_card_is_drawn_bad_only_where_no_distance_stands_in_it() -> None:
    drawing = ask("card animal:bearded dragon", Preferences(language="en")).picture
    assert drawing is not None
    assert isinstance(drawing.drawing, Card)
    for row in drawing.drawing.rows:
        for cell in row.cells:
            assert (cell.tone is Tone.BAD) == (not any(c.isdigit() for c in cell.first)), cell


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("lamp", ["T5 HO", "compact lamp", "metal halide", "mercury vapour"])
def test_the_bar_of_an_age_has_the_verdict_of_the_reply_and_today_lies_where_it_says(
    lamp: str, language: Language
) -> None:
    seen = set()
    for days in (2, 100, 182, 190, 270, 365, 366, 700, 4000):
        reply = ask(f"decline age:{days} days lamp:{lamp}", Preferences(language=language))
        assert reply.picture is not None
        drawing = reply.picture.drawing
        assert isinstance(drawing, Timeline)
        assert plain(drawing.title) == reply.brief[0].text
        assert plain(drawing.title) in plain(reply.picture.alt)
        [due], [today] = drawing.rows[0].stretches, drawing.marks
        assert today.is_now
        assert today.x == pytest.approx(24.0 * days)
        late = Tone.BAD if today.x > due.high else Tone.DOUBTFUL
        assert drawing.tone is (Tone.GOOD if today.x <= due.low else late), days
        seen.add(drawing.tone)
    assert {Tone.GOOD, Tone.BAD} <= seen


def test_an_age_that_was_not_told_has_no_mark_and_no_sign_and_what_nobody_knows_no_picture() -> (
    None
):
    untold = ask("decline lamp:T8", Preferences(language="en")).picture
    assert untold is not None
    assert isinstance(untold.drawing, Timeline)
    assert not untold.drawing.marks
    assert untold.drawing.tone is Tone.PLAIN
    assert ask("decline age:8 months lamp:LED bar", Preferences(language="en")).picture is None


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize(
    ("times", "tone", "lit", "dark"),
    [
        ("", Tone.PLAIN, [(8, 20)], [(0, 8), (20, 24)]),
        ("on:07:30 off:19:30", Tone.GOOD, [(7.5, 19.5)], [(0, 7.5), (19.5, 24)]),
        ("on:06:00 off:22:30", Tone.BAD, [(6, 22.5)], [(0, 6), (22.5, 24)]),
        ("on:12:00 off:00:00", Tone.GOOD, [(12, 24)], [(0, 12)]),
        ("on:21:00 off:09:00", Tone.DOUBTFUL, [(0, 9), (21, 24)], [(9, 21)]),
        ("on:08:00 off:08:00", Tone.BAD, [(0, 24)], []),
    ],
)
def test_a_day_is_lit_and_dark_when_the_reply_says_so(
    times: str,
    tone: Tone,
    lit: list[tuple[float, float]],
    dark: list[tuple[float, float]],
    language: Language,
) -> None:
    reply = ask(f"hours animal:bearded dragon {times}", Preferences(language=language))
    assert reply.picture is not None
    drawing = reply.picture.drawing
    assert isinstance(drawing, Timeline)
    assert plain(drawing.title) in [line.text for line in reply.brief]
    assert plain(drawing.title) in plain(reply.picture.alt)
    assert drawing.tone is tone
    for row in drawing.rows:
        assert [(one.low, one.high) for one in row.stretches] == lit
    assert [(night.low, night.high) for night in drawing.nights] == dark
    assert len(drawing.rows) == 2


def test_an_animal_that_does_not_bask_is_shown_no_basking_lamp() -> None:
    picture = ask("hours animal:axolotl", Preferences(language="en")).picture
    assert picture is not None
    assert isinstance(picture.drawing, Timeline)
    assert len(picture.drawing.rows) == 1


@pytest.mark.parametrize(
    ("line", "behind"),
    [
        ("distance tube:12% screen:none reflector:polished", Behind.POLISHED),
        ("distance tube:12% screen:none reflector:plain", Behind.PLAIN),
        ("distance tube:12% readings:4 at 14in", None),
        ("uvi distance:14in tube:12% screen:none reflector:plain", Behind.PLAIN),
        ("meter readings:5.6 at 30cm, 4.3 at 36cm reflector:polished", Behind.POLISHED),
        ("meter readings:5.6 at 30cm, 4.3 at 36cm", None),
        ("section tube:12% screen:none distance:16in reflector:plain enclosure:48x24x24in",
         Behind.PLAIN),
        ("plan enclosure:48x24x24in lid:solid material:wood room:70F night:62F reflector:polished",
         Behind.POLISHED),
        ("check 12% t5 34in, polished reflector, no mesh, 20in to back", Behind.POLISHED),
        ("check 12% t5 34in, plain reflector, no mesh, 20in to back", Behind.PLAIN),
        ("check 12% t5 34in, no mesh, 20in to back", None),
    ],
)  # fmt: skip
def test_a_mirror_is_drawn_where_it_was_told_and_nothing_where_nobody_told_it(
    line: str, behind: Behind | None
) -> None:
    picture = ask(f"{line} animal:bearded dragon", Preferences(language="en")).picture
    assert picture is not None
    drawing = picture.drawing
    assert isinstance(drawing, Drop | Side)
    if isinstance(drawing, Drop):
        assert drawing.behind is behind
        return
    views = [drawing, drawing.end] if drawing.end else [drawing]
    assert {tube.behind for view in views for tube in view.tubes} == {behind}


def test_a_mirror_a_plain_fixture_and_an_untold_one_look_different() -> None:
    ways = (None, *Behind)
    for drawn in (
        [tube_along(10.0, 200.0, 50.0, behind) for behind in ways],
        [tube_across(50.0, 50.0, behind) for behind in ways],
    ):
        assert len({repr(shapes) for shapes, _ in drawn}) == len(ways)
        # Words keep as far off them.
        assert len({where for _, where in drawn}) == 1


def test_every_sign_that_is_drawn_is_one_of_three() -> None:
    assert {sign for sign in TONE_SIGN.values() if sign} == set(Sign)


@pytest.mark.parametrize("name", list(QUESTIONS))
@pytest.mark.parametrize("theme", [Theme.LIGHT, Theme.DARK])
def test_words_stand_out_from_what_is_drawn_under_them(name: str, theme: Theme) -> None:
    """Measured in the picture itself: its ground is drawn alone, and read under each word."""
    page = page_of(drawing_of(name, "en"))
    root = ElementTree.fromstring(page.svg(theme))
    words = [one for one in root.iter(f"{SVG}text") if not (one.text or "").isdigit()]
    ink = {one.text: (one.get("fill") or "", one.get("stroke")) for one in words}
    for above in list(root.iter()):
        for one in [inner for inner in above if inner.tag == f"{SVG}text"]:
            above.remove(one)
    png = resvg_py.svg_to_bytes(
        svg_string=ElementTree.tostring(root, encoding="unicode"),
        width=720,
        skip_system_fonts=True,
        font_files=font_files(),
    )
    ground = np.asarray(Image.open(BytesIO(bytes(png))).convert("RGB"))
    for told, box in page.words:
        if told not in ink:
            continue
        fill, halo = ink[told]
        under = ground[int(box.y0) : int(box.y1), int(box.x0) : int(box.x1)].reshape(-1, 3)
        # A word with a halo stands on that.
        lies = (
            [halo]
            if halo
            else ["#{:02X}{:02X}{:02X}".format(*np.median(under, axis=0).astype(int))]
        )
        for colour in lies:
            assert contrast(fill, colour) >= LEAST, (told, fill, colour)
