### How a figure is judged, in a word or two.

verdict-far_too_low = far too low
verdict-low = low
verdict-probably_low = probably low
verdict-fine = fine
verdict-cannot_tell = cannot tell
verdict-probably_high = probably high
verdict-high = high
verdict-dangerous = dangerous
