"""The versions of the database, each a step from the one before."""
