### Everything that is kept of a person, as a file.

mine-export-title = All that I keep for you
mine-export-head = Here is your file.
mine-export-alone = Keep it where only you can read it.
mine-export-step = Take it back with: mine import file:mine.json
