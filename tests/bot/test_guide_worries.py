"""A page is found by what somebody worries about, in both languages, with one slip."""

import pytest

from bot import guide
from bot.ask import ask
from bot.completion import complete, complete_line
from bot.guide.loader import GuideError, arrange, read_page
from bot.preferences import LANGUAGES, Preferences
from bot.reply import Reply

FRONT = (
    "---\ntitle: A\nsummary: B.\norder: {0}\ntopic: start\nexample: about\nrelated: []\n"
    "sources: [memory]\nworries: [{1}]\n---\n\nText.\n"
)


def _opened(reply: Reply) -> str | None:
    return reply.guide[0].slug if reply.status == "ok" and reply.guide else None


@pytest.mark.parametrize(
    ("wish", "slug"),
    [
        ("too cold", "too-hot-or-too-cold"),
        ("too clod", "too-hot-or-too-cold"),
        ("zu kalt", "too-hot-or-too-cold"),
        ("gradient", "warm-end-and-cool-end"),
        ("gradiant", "warm-end-and-cool-end"),
        ("Gefälle", "warm-end-and-cool-end"),
        ("MBD", "when-to-call-a-vet"),
        ("metabolic bone disease", "why-uv-matters"),
        ("rachitis", "why-uv-matters"),
        ("stuck shed", "water-and-humidity"),
        ("humidty", "water-and-humidity"),
        ("Luftfeuchtigkeit", "water-and-humidity"),
        ("my new gecko hides all day", "the-first-weeks"),
        ("winterschlaf", "winter-rest"),
        ("beardie", "bearded-dragon"),
        ("my beardie is too cold", "too-hot-or-too-cold"),
        ("Hermann's tortoise", "hermanns-tortoise"),
        ("Vierzehenschildkröte", "horsfields-tortoise"),
    ],
)
def test_a_worry_opens_its_page(wish: str, slug: str) -> None:
    reply = ask(f"guide page:{wish}", Preferences())
    assert slug in [page.slug for page in reply.guide], reply.guide
    assert reply.status == "ok"


@pytest.mark.parametrize(
    "wish", ["eyes shut", "his eyes are shut", "shut eyes", "eyse shut", "Augen zu", "augne zu"]
)
def test_shut_eyes_lead_to_the_vet_first(wish: str) -> None:
    assert guide.of_worry(wish) == "when-to-call-a-vet"


@pytest.mark.parametrize("wish", ["", "qqqq", "rabbit", "mdb", "to", "cold", "x" * 5000])
def test_what_is_no_worry_finds_no_page(wish: str) -> None:
    assert guide.of_worry(wish) is None


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_worry_opens_a_page_and_is_completed(language: str) -> None:
    slugs = {page.slug for page in guide.pages()}
    for worry, slug in guide.worries(language).items():
        assert guide.of_worry(worry) in slugs
        assert slug in complete("guide", "page", worry)


def test_completion_offers_pages_by_name_and_worry_each_once() -> None:
    assert complete("guide", "page", "augen zu")[0] == "when-to-call-a-vet"
    assert "too-hot-or-too-cold" in complete("guide", "page", "too c")
    offered = complete("guide", "page", "eyes")
    assert len(offered) == len(set(offered))
    assert set(offered) <= {page.slug for page in guide.pages()}
    assert "when-to-call-a-vet" in complete_line("guide eyes shut")[1]


def test_a_worry_belongs_to_one_page() -> None:
    first, other = (read_page(slug, FRONT.format(n, "cold")) for n, slug in ((1, "a"), (2, "b")))
    with pytest.raises(GuideError, match="the worry 'cold' is a's"):
        arrange([first, other])
