"""One frozen model a question: what was asked, read and checked, in SI units."""
