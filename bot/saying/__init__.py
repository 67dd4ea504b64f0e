"""The words of an answer: its language and its unit are chosen here, and nowhere before."""
