"""The questions: what each works out and tells, in rooms by topic."""
