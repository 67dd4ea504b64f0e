"""Ranges that are said to hold nine in ten, asked of a world that the engine does not know."""
