"""The questions that need no engine: conversion, guide, help and about."""

import re

from pydantic import Field, field_validator

from bot.queries.options import CommandName, Convertible, PageName, Text
from bot.queries.query import Query

_WHERE_TO = re.compile(
    r"\s+(?:to|into)\s+(?:in|inch(?:es)?|ft|feet|cm|mm|m|met(?:er|re)s?|°?\s?[CF]|celsius|fahrenheit)"
    r"\.?\s*$",
    re.I,
)

__all__ = ["AboutQuery", "ConvertQuery", "GuideQuery", "HelpQuery"]


class ConvertQuery(Query):
    """A length, a temperature or a temperature difference the other way."""

    value: Convertible = Field(examples=["14in"])

    @field_validator("value", mode="before")
    @classmethod
    def _without_where_to(cls, value: object) -> object:
        """Take off where it should go, as in ``30cm to inches``: the answer gives it anyway."""
        return _WHERE_TO.sub("", value) if isinstance(value, str) else value


class GuideQuery(Query):
    """A page of the beginner guide, or the list of pages."""

    page: PageName = Field("", examples=[""])
    part: Text = Field("", examples=["Glass and plastic"])


class HelpQuery(Query):
    """What can be asked, with examples."""

    command: CommandName = Field("", examples=["distance"])


class AboutQuery(Query):
    """What this bot is, what it stores and where its numbers come from."""
