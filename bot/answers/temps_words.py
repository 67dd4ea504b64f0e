"""The verdict on a reading of a place, in words."""

from bot.answers.figures import difference, temperature
from bot.answers.verdicts import verdict_word
from bot.language.quantities import Units
from calc.heat.readings import Finding
from calc.quantities import Quantity

__all__ = ["finding_clause"]

_PLACES = {
    Quantity.BASKING_SURFACE: "basking surface",
    Quantity.COOL_AIR: "cool end",
    Quantity.WARM_AIR: "warm end",
    Quantity.NIGHT_AIR: "night",
}


def finding_clause(finding: Finding, units: Units) -> str:
    """Return the verdict on one reading as a clause."""
    what, shown = _PLACES[finding.place], temperature(finding.reading_c, units)
    off = difference(finding.judged.off_by if finding.judged else 0.0, units)
    if finding.judged is None:
        return f"the {what} is {shown}, for which I know no target"
    if finding.keepers_differ:
        return f"keepers differ about a {what} of {shown}"
    if finding.is_fine:
        return f"the {what} is right at {shown}"
    if finding.is_unsure:
        word = verdict_word(finding.judged)
        return f"the {what} at {shown}: {word} ({off} off, and a thermometer may be as much)"
    hot = "hot" if finding.place is Quantity.BASKING_SURFACE else "warm"
    return f"the {what} is {off} too {'cool' if finding.is_low else hot} at {shown}"
