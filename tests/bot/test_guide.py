"""The guide's pages: whole, linked, short, easy to read, in both units, with their cautions."""

import re
from importlib.resources import files
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st
from markdown_it import MarkdownIt

from bot import guide
from bot.guide.loader import MOST_WORDS, GuideError, arrange, read_page
from bot.linking import page_links

PAGES = pytest.mark.parametrize("page", guide.pages(), ids=lambda page: page.slug)
FRONT = """---
title: A page
summary: What it says.
order: 1
topic: uv
example: about
related: [other]
sources: [common_practice]
---
"""


def _with_figure(*figures: str) -> str:
    front = FRONT.replace("topic: uv", f"topic: uv\nfigures: [{', '.join(figures)}]")
    return front + "Text.\n\n## One\n\nMore."


def _answering(*answers: str) -> str:
    return _with_figure().replace("figures: []", f"answers: [{', '.join(answers)}]")


OTHER = FRONT.replace("order: 1", "order: 2").replace("[other]", "[first]")


def test_the_pages_come_in_reading_order_and_part_by_part() -> None:
    orders = [page.order for page in guide.pages()]
    assert orders == sorted(orders)
    parts = [page.topic for page in guide.pages()]
    changes = [a for a, b in pairwise(parts) if a != b]
    assert len(changes) == len(set(parts)) - 1
    assert list(dict.fromkeys(parts)) == [topic for topic in guide.Topic if topic in parts]


def test_german_has_a_page_of_its_own_for_each() -> None:
    first = files("bot.guide")
    names = [{p.name for p in folder.iterdir() if p.name.endswith(".md")}
             for folder in (first, first / "de")]  # fmt: skip
    assert names[0] == names[1]


def test_a_page_is_found_by_its_slug_and_an_unknown_one_raises() -> None:
    assert guide.page("screens").title == "What a screen does"
    with pytest.raises(KeyError):
        guide.page("no-such-page")


@PAGES
def test_a_page_is_markdown_without_html_images_or_outside_links(page: guide.Page) -> None:
    tokens = MarkdownIt().parse(page.body)
    kinds = {token.type for token in tokens}
    kinds |= {child.type for token in tokens for child in token.children or ()}
    blocks = ("heading", "paragraph", "bullet_list", "ordered_list", "list_item")
    allowed = {f"{block}_{end}" for block in blocks for end in ("open", "close")}
    allowed |= {"inline", "text", "strong_open", "strong_close", "code_inline", "softbreak"}
    assert kinds <= allowed
    assert "<" not in page.body
    assert "://" not in page.body


@PAGES
def test_a_page_ends_with_one_thing_to_do_next(page: guide.Page) -> None:
    heading, text = guide.sections(page)[-1]
    assert heading == "One thing to do next"
    assert len(text.split()) < 50


@PAGES
def test_the_plain_text_of_a_page_keeps_every_word_and_no_mark(page: guide.Page) -> None:
    plain = " ".join(f"{heading} {text}" for heading, text in guide.sections(page))
    assert not re.search(r"\*\*|`|^#|\n#", plain)
    body = re.sub(r"^#+ |\*\*", "", page.body, flags=re.M)
    body = re.sub(r"`([^`]*)`", r"“\1”", body)
    assert plain.removeprefix(guide.sections(page)[0][0]).split() == body.split()


def test_numbered_and_nested_lists_read_as_lists() -> None:
    entry = read_page("first", FRONT + "One.\n\n1. a **b**\n2. c\n\n- d\n  e\n\n## Two\n\n- `f`\n")
    assert guide.sections(entry) == (
        ("To begin with", "One.\n\n1. a b\n2. c\n\n- d e"),
        ("Two", "- “f”"),
    )


# --- units ---------------------------------------------------------------------------------

QUOTED = re.compile(r'"[^"]*"|`[^`]*`')
NUMBER = r"(\d+(?:\.\d+)?)(?: to (\d+(?:\.\d+)?))?"
INCHES = re.compile(NUMBER + r" in\b(?: \(" + NUMBER + r" cm\))?")
FEET = re.compile(NUMBER + r" ft\b(?: \(" + NUMBER + r" c?m\))?")
FAHRENHEIT = re.compile(NUMBER + r" °F(?: \(" + NUMBER + r" °C\))?")
DIFFERENCES = {
    "the-basking-spot": {"12", "23"},
    "measuring-temperatures": {"2", "8"},
    "too-hot-or-too-cold": {"36"},
}


@PAGES
def test_every_length_is_given_in_inches_and_in_centimetres(page: guide.Page) -> None:
    # The distances of an answer are rounded to the safe side in either unit, and held by its words.
    body = "\n".join(line for line in page.body.splitlines() if ", start at " not in line)
    body = QUOTED.sub("", body)
    for match in INCHES.finditer(body):
        low, high, low_cm, high_cm = match.groups()
        assert low_cm, f"{page.slug}: {match[0]} without centimetres"
        assert float(low_cm) == pytest.approx(float(low) * 2.54, abs=slack(low))
        if high:
            assert float(high_cm) == pytest.approx(float(high) * 2.54, abs=slack(high))
    for match in FEET.finditer(body):
        feet, metric = float(match[1]), float(match[3])
        expected = feet * 0.3048 * (100 if match[0].endswith(" cm)") else 1)
        assert metric == pytest.approx(expected, rel=0.1), match[0]


def slack(inches: str) -> float:
    """Return how far [cm] the two units may be apart: an answer rounds each by itself."""
    return 0.51 + (0.25 * 2.54 if "." in inches else 0.0)


@PAGES
def test_every_temperature_is_given_in_fahrenheit_and_in_celsius(page: guide.Page) -> None:
    body = QUOTED.sub("", page.body)
    first = {match[1] for match in FAHRENHEIT.finditer(body) if match[3]}
    for match in FAHRENHEIT.finditer(body):
        low, high, low_c, high_c = match.groups()
        if low_c is None:
            assert low in first, f"{page.slug}: {match[0]} is never given in °C"
            continue
        offset = 0 if match[0].split(" °F")[0] in DIFFERENCES.get(page.slug, ()) else 32
        assert float(low_c) == pytest.approx((float(low) - offset) / 1.8, abs=0.51), match[0]
        if high:
            assert float(high_c) == pytest.approx((float(high) - offset) / 1.8, abs=0.51)


# --- cautions and labels -------------------------------------------------------------------


@PAGES
def test_a_page_about_uv_says_never_to_look_into_the_tube(page: guide.Page) -> None:
    if page.topic is guide.Topic.UV:
        assert "never look into" in page.body.lower()


@PAGES
def test_a_page_about_heat_says_that_things_burn_or_overheat(page: guide.Page) -> None:
    if page.topic is guide.Topic.HEAT:
        assert re.search(r"burn|overheat|too hot", page.body)


@PAGES
def test_a_page_that_rests_on_common_practice_says_so(page: guide.Page) -> None:
    figures = re.search(r"\d+ to \d+ (in|°F)", page.body)
    if figures:
        assert "common practice" in page.body.lower()


# --- reading age ---------------------------------------------------------------------------

# Kincaid, Fishburne, Rogers, Chissom (1975), Derivation of new readability formulas for Navy
# enlisted personnel: grade = 0.39 words/sentence + 11.8 syllables/word - 15.59. A twelve-year-old
# is in grade 6 or 7. Counting vowel groups instead of looking words up in a pronouncing
# dictionary moved the grade of these pages by up to 0.45, hence half a grade of tolerance.
HIGHEST_GRADE = 7.0
COUNTING_TOLERANCE = 0.5


def _syllables(word: str) -> int:
    word = re.sub(r"[^a-z]", "", word.lower())
    count = len(re.findall(r"[aeiouy]+", word))
    silent_e = word.endswith("e") and not re.search(r"[^aeiou]le$", word)
    silent_ed = word.endswith("ed") and not word.endswith(("ted", "ded"))
    silent_es = word.endswith("es") and not re.search(r"(s|z|x|ch|sh|g|c)es$", word)
    return max(1, count - (len(word) > 3 and (silent_e or silent_ed or silent_es)))


def grade(text: str) -> float:
    """Return the Flesch-Kincaid grade of a plain text; each line ends a sentence."""
    lines = [re.sub(r"^(-|\d+\.) ", "", line) for line in text.splitlines()]
    sentences = [s for line in lines for s in re.split(r"(?<=[.?!:])\s+", line)]
    sentences = [s for s in sentences if re.search("[A-Za-z]", s)]
    words = re.findall(r"[A-Za-z][A-Za-z'’-]*", " ".join(sentences))
    syllables = sum(map(_syllables, words))
    return 0.39 * len(words) / len(sentences) + 11.8 * syllables / len(words) - 15.59


@PAGES
def test_a_twelve_year_old_can_read_the_page(page: guide.Page) -> None:
    text = "\n".join(f"{heading}\n{text}" for heading, text in guide.sections(page))
    assert grade(text) <= HIGHEST_GRADE - COUNTING_TOLERANCE


def test_the_reading_grade_tells_a_hard_text_from_an_easy_one() -> None:
    hard = (
        "Photobiological considerations notwithstanding, erythemally weighted irradiance "
        "constitutes an insufficient surrogate for previtamin photosynthesis in ectotherms."
    )
    assert grade(hard) > 15
    assert grade("The cat sat on the mat. It was warm.") < 2


# --- the glossary --------------------------------------------------------------------------


def test_every_term_is_explained_on_a_page_that_exists() -> None:
    slugs = {page.slug for page in guide.pages()}
    terms = guide.glossary()
    assert {term.page for term in terms} <= slugs
    assert [t.name.casefold() for t in terms] == sorted(t.name.casefold() for t in terms)


def test_a_word_in_the_glossary_names_one_thing() -> None:
    words = [w.casefold() for term in guide.glossary() for w in (term.name, *term.also)]
    assert sorted(words) == sorted(set(words))


@PAGES
def test_a_page_uses_the_name_of_the_glossary_and_no_other(page: guide.Page) -> None:
    for term in guide.glossary():
        for other in term.also:
            assert not re.search(rf"\b{re.escape(other)}s?\b", page.body), (other, term.name)


# --- what the loader refuses ---------------------------------------------------------------


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("no front matter", "title: field required"),
        ("---\n: [\n---\n", "not YAML"),
        (FRONT.replace("A page", "7") + "Text.", "title: input should be a valid string"),
        (FRONT.replace("order: 1", "order: '1'") + "Text.", "order: input should be a valid int"),
        (FRONT.replace("topic: uv", "topic: cats") + "Text.", "topic: input should be 'start'"),
        (FRONT.replace("topic: uv", "topic: uv\nmood: good") + "Text.", "mood: extra inputs"),
        (FRONT.replace("[common_practice]", "[]") + "Text.", "sources: names no source"),
        (FRONT.replace("common_practice", "hearsay") + "Text.", "'hearsay' is not in the bib"),
        (FRONT, "0 words, not 1 to"),
        (FRONT + "word " * (MOST_WORDS + 1), f"{MOST_WORDS + 1} words, not 1 to {MOST_WORDS}"),
        (FRONT + "# Too high\n\nText.", "headings start at ##"),
        (_with_figure("{under: Two, caption: C, ask: about}"), "no heading 'Two' for its figure"),
        (_with_figure(*["{under: One, caption: C, ask: about}"] * 2), "two figures under 'One'"),
        (_with_figure("{under: One, caption: C}"), "either a question to ask or a sketch"),
        (_with_figure("{under: One, caption: C, ask: a, sketch: layout}"), "or a sketch"),
        (_with_figure("{under: One, caption: C, sketch: cats}"), "sketch: input should be"),
        (_with_figure("{under: One, ask: about}"), "caption: field required"),
        (_answering("{part: Two, asked: [[a]]}"), "no heading 'Two' that answers"),
        (_answering("{part: One, asked: [[]]}"), "names patterns of its questions"),
        (_answering("{part: One, asked: [['a(']]}"), "not a pattern: a("),
    ],
)
def test_a_page_that_is_not_whole_is_refused_in_one_sentence(text: str, told: str) -> None:
    with pytest.raises(GuideError) as caught:
        read_page("first", text)
    sentence = str(caught.value)
    assert sentence.startswith("guide page first: ")
    assert told in sentence
    assert "\n" not in sentence


def test_a_page_of_the_most_words_is_taken() -> None:
    assert read_page("first", FRONT + "word " * MOST_WORDS).slug == "first"


def test_a_page_names_its_figures_with_the_part_that_they_close() -> None:
    entry = read_page("first", _with_figure("{under: One, caption: C, sketch: layout}"))
    assert entry.figures == (guide.Figure(under="One", caption="C", sketch=guide.Sketch.LAYOUT),)


def test_pages_that_clash_or_point_nowhere_are_refused() -> None:
    first, other = read_page("first", FRONT + "One."), read_page("other", OTHER + "Two.")
    assert [page.slug for page in arrange([other, first])] == ["first", "other"]
    with pytest.raises(GuideError, match="'other' does not exist"):
        arrange([first])
    with pytest.raises(GuideError, match="two pages of this name"):
        arrange([first, other, read_page("first", OTHER.replace("2", "3") + "Three.")])
    with pytest.raises(GuideError, match="order 1 is taken by first"):
        arrange([first, read_page("other", FRONT.replace("[other]", "[first]") + "Two.")])
    with pytest.raises(GuideError, match="'first' does not exist"):
        arrange([read_page("first", FRONT.replace("[other]", "[first]") + "Itself.")])


@pytest.mark.slow
@given(st.text(max_size=400))
def test_any_text_without_front_matter_is_one_plain_error(text: str) -> None:
    with pytest.raises(GuideError, match=r"^guide page any: "):
        read_page("any", text)


def test_what_a_language_lacks_is_told_by_the_pages_of_the_first() -> None:
    assert guide.pages("xx") == guide.pages()
    assert guide.glossary("xx") == guide.glossary()
    [link] = page_links(("nights",), "https://example.org", "xx")
    [first] = page_links(("nights",), "https://example.org")
    assert (link.title, link.url) == (first.title, "https://example.org/xx/nights.html")
    assert guide.sections(guide.page("nights"), "xx") == guide.sections(guide.page("nights"))
