"""The questions that need no engine: conversion, guide, help and about."""

from pydantic import Field

from bot.queries.options import CommandName, Convertible, PageName, Query

__all__ = ["AboutQuery", "ConvertQuery", "GuideQuery", "HelpQuery"]


class ConvertQuery(Query):
    """A length, a temperature or a temperature difference the other way."""

    value: Convertible = Field(
        description="a length, a temperature, or a difference: 14in, 35 C, difference 10F",
        examples=["14in"],
    )


class GuideQuery(Query):
    """A page of the beginner guide, or the list of pages."""

    page: PageName = Field(
        "", description="the page to open; nothing lists them all", examples=[""]
    )


class HelpQuery(Query):
    """What can be asked, with examples."""

    command: CommandName = Field(
        "",
        description="the question you want explained; nothing lists them all",
        examples=["distance"],
    )


class AboutQuery(Query):
    """What this bot is, what it stores and where its numbers come from."""
