### What stands on buttons.

button-picture = Picture
button-change = Change
button-share = Share
button-all = Show all
