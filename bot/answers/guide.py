"""A page of the guide as a reply, or the list of pages."""

from bot import guide
from bot.answers.linking import page_links, source_lines
from bot.language.errors import NotUnderstoodError
from bot.language.names import closest
from bot.language.shown import shown
from bot.preferences import Context
from bot.queries.general import GuideQuery
from bot.reply import Reply, Row, Table

__all__ = ["answer_guide"]


def answer_guide(query: GuideQuery, context: Context) -> Reply:
    """Answer with a page, found by its name or its title, or with the list."""
    if not query.page.strip():
        return _list()
    page = _page(query.page)
    parts = guide.sections(page)
    first = _part(query.part, page) if query.part.strip() else ""
    begun = [text for heading, text in parts if heading == first]
    rest = [(heading, text) for heading, text in parts if heading != first]
    return Reply(
        command="guide",
        status="ok",
        title=f"{page.title}: {first}" if first else page.title,
        answer="\n".join(begun) or page.summary,
        rows=tuple(Row(label=heading, text=text) for heading, text in rest),
        steps=(f"Try it: {page.example}",),
        guide=page_links((page.slug, *page.related), context.guide_url),
        sources=source_lines(page.sources),
    )


def _list() -> Reply:
    pages = guide.pages()
    return Reply(
        command="guide",
        status="ok",
        title="The beginner guide",
        answer=f"There are {len(pages)} pages; start with “{pages[0].title}”.",
        table=Table(
            columns=("Page", "What it explains"),
            rows=tuple((page.slug, page.title) for page in pages),
        ),
        steps=(f"Open one: guide {pages[0].slug}",),
    )


def _part(wish: str, page: guide.Page) -> str:
    """Return the heading of a part of the page."""
    headings = {heading.lower(): heading for heading, _ in guide.sections(page)}
    name = " ".join(wish.lower().split())
    found = headings.get(name) or headings.get(closest(name, headings) or "")
    if found is None:
        raise NotUnderstoodError(
            shown(wish),
            f"a heading of that page ({'; '.join(headings.values())})",
            f"guide page:{page.slug}",
            "part",
        )
    return found


def _page(wish: str) -> guide.Page:
    name = "-".join(wish.lower().split())
    by_name = {page.slug: page for page in guide.pages()}
    by_name |= {"-".join(page.title.lower().split()): page for page in guide.pages()}
    if name in by_name:
        return by_name[name]
    within = [page for page in guide.pages() if name in page.slug]
    if len(within) == 1:
        return within[0]
    near = closest(name, by_name)
    raise NotUnderstoodError(
        shown(wish),
        f"the name of a guide page{f', perhaps {by_name[near].slug}' if near else ''}",
        f"guide {by_name[near].slug if near else guide.pages()[0].slug}",
        "page",
    )
