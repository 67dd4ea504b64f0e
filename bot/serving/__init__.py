"""The half of a running bot that knows no chat: askers, limits, leased work, memory, pictures."""
