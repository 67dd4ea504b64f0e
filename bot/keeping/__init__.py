"""What the questions about saved data share: who asks, where, and the words of what is kept."""
