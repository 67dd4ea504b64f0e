### Die Teile einer Antwort, wie Knöpfe und Überschriften sie zeigen.

part-steps = Schritte
part-numbers = Zahlen
part-why = Warum
part-care = Vorsicht
part-sheet = Pflegeblatt
part-sources = Quellen
