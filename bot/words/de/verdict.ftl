### Wie eine Zahl beurteilt wird, in ein, zwei Wörtern.

verdict-far_too_low = viel zu niedrig
verdict-low = zu niedrig
verdict-probably_low = wohl zu niedrig
verdict-fine = gut
verdict-cannot_tell = nicht zu sagen
verdict-probably_high = wohl zu hoch
verdict-high = zu hoch
verdict-dangerous = gefährlich
