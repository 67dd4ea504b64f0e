"""Questions about what is kept: each works out its facts at a desk, which has the store."""
