### Facts: Unkept, Unable
### Why a question about saved data is not answered, and what works.

saved-no-no_enclosure = You keep no enclosure yet.
saved-no-other_enclosure = You keep no enclosure called “{ $read }”.
saved-no-which_enclosure = Which enclosure do you mean?
saved-known = You have: { LIST($known, join: "list-and") }.
saved-step = Try: { $example }
saved-no-server = Ask this in a server, not in a message.

## Readings
saved-no-no_reading = There is no reading in your question.
saved-no-cannot_be = “{ $read }” cannot be right for { $option }.
saved-no-to_come = “{ $read }” is still to come.
saved-no-few_days = Comparing needs readings on two days.
saved-no-other_day = You have no readings of “{ $read }”.
saved-no-other_lamp = Which lamp do you mean?
saved-no-no_strength = I do not know how strong “{ $read }” is.

## Reminders
saved-no-no_reminder = You have no reminders.
saved-no-other_reminder = You have no reminder { $read }.
saved-no-no_channel = I cannot remind you here: this is no channel of a server.
saved-no-no_right = I cannot remind you here: I may not write in this channel.
