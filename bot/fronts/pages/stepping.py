"""The page of the form that asks one thing at a time, in the language of its folder."""

from bot.facts import Say
from bot.fronts.pages.edition import Edition
from bot.fronts.pages.pictures import inline
from bot.fronts.pages.steps import Form
from bot.fronts.pages.trail import Trail
from bot.fronts.pages.trying import TryPage
from bot.render.html import render_html

__all__ = ["steps_page"]


def steps_page(edition: Edition, trail: Trail) -> str:
    """Return the page of a step: a question with its choices, or the answer."""
    form = Form(edition, trail)
    step, reply = form.step(), None
    values: dict[str, object] = {"picture": None, "answer": None, "line": "", "line_link": ""}
    if (reply := step.reply) is not None:
        asked = TryPage(edition, reply.asked, form.units.value)
        drawn = inline(reply.picture)
        values["answer"] = render_html(reply, 1, drawn, asked.sheet_of(reply))
        values |= {"line": reply.asked, "line_link": asked.address}
        if drawn is None:
            values["picture"] = inline(form.picture(step))
    else:
        values["picture"] = inline(form.picture(step))
    label = Say("form-type") if step.choices else Say.of("form", "name", step.field)
    return edition.page(
        "steps.html",
        trail.address,
        form=form,
        step=step,
        label=edition.say(label) if step.field else "",
        **values,
    )
