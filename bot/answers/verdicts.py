"""The verdicts in words, for the answers that still make their own sentences."""

from calc.judgement import Judged, Verdict

__all__ = ["verdict_word"]

_WORDS = {
    Verdict.FAR_TOO_LOW: "far too low",
    Verdict.LOW: "low",
    Verdict.PROBABLY_LOW: "probably low",
    Verdict.FINE: "fine",
    Verdict.CANNOT_TELL: "cannot tell",
    Verdict.PROBABLY_HIGH: "probably high",
    Verdict.HIGH: "high",
    Verdict.DANGEROUS: "dangerous",
}


def verdict_word(judged: Judged) -> str:
    """Return a verdict as every answer says it."""
    return _WORDS[judged.verdict]
