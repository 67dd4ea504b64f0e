### Facts: Unkept
### Why a question about saved data is not answered, and what works.

saved-no-no_enclosure = You keep no enclosure yet.
saved-no-other_enclosure = You keep no enclosure called “{ $read }”.
saved-no-which_enclosure = Which enclosure do you mean?
saved-known = You keep: { LIST($known, join: "list-and") }.
saved-step = Try: { $example }
