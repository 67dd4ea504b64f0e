"""Visible light: what lamps give where, beside what the sky gives, and what plants make of it."""
