### The parts of an answer, as buttons and headings show them.

part-steps = Steps
part-numbers = Numbers
part-why = Why
part-care = Care
part-sheet = Care sheet
part-sources = Sources
