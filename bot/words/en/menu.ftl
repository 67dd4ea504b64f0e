### What each group in the menu is about, at most 100 characters.

menu-uv = More about UV: at a distance, which tube, your meter, a map, a day, a table, real sun
menu-heat = More about heat and light: watts, air, surfaces, kinds of lamps, brightness, hours
menu-noonstone = About this bot and your set-up: what to ask, a next step, how lamps hang, a conversion
menu-mine = Your own enclosures and readings, kept for you alone
menu-remind = Reminders to read, replace or re-check
menu-cases = For helpers: enclosures that keepers share here, and what was advised
menu-server = For moderators: the group's settings and its own figures
menu-board = For moderators: pinned boards, kept up to date
menu-for = a member to answer: posted in the channel, and only they are told
menu-message-ask = Answer this
menu-message-check = Check this set-up
menu-message-add = Add to the last one
