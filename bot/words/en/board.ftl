### Facts: BoardSeen, BoardWanted, BoardLine, BoardChange, BoardList, BoardsAgain, BoardGone, ManyCards, ManyNeeds, BoardLamp, BoardNeed, Card, Needs
### Boards: pinned summaries that keep themselves up to date.

board-title = Board: { board-topic }
board-topic = { $topic ->
    [distances] distances
    [temperatures] temperatures
    [first_day] the first day
    [welcome] the welcome
   *[guide] the guide
  }

## Wanted in a channel
board-will-changed = It changes in place in a moment.
board-will-unpinned = It is posted here in a moment, but I may not pin it.
board-will-noted = It is noted, but I may not post it here yet.
board-will-posted = It is posted and pinned here in a moment.
board-kept-up = { $promise ->
    [changed] A channel has one board for each topic.
   *[other] I keep it up to date from then on.
  }
board-lacking = I lack rights in this channel: { LIST($lacking, join: "list-and") }.
board-step-rights = Have an administrator give me what I lack here, then: board refresh
board-step-list = See whether it is up: board list
board-step-remove = Take it down: board remove topic:{ $typed }
board-step-pin = Pin this board in this channel: { $line }

## The list
board-list-title = Your group's boards
board-list = { $count ->
    [0] Your group has no boards yet.
    [one] 1 board.
   *[other] { $count } boards.
  }
board-column-topic = Topic
board-column-animal = Animals
board-column-channel = Channel
board-column-standing = State
board-column-change = Changed last, by whom (UTC)
board-animals = { $any_animal ->
    [no] none
   *[yes] { LIST($animals) }
  }
board-channel = { $channel }
board-stands-leaving = is being taken down
board-stands-pinned = pinned
board-stands-waiting = waiting to be posted
board-stands-troubled = { $trouble ->
    [channel_gone] the channel is gone
    [no_right] I may not see or write in that channel: give me View Channel, Send Messages, Embed Links and Read Message History there
    [no_pin_right] posted, not pinned: I need the right Pin Messages there
    [pins_full] posted, not pinned: the channel has 250 pins, unpin one first
    [no_file_right] posted without its picture: I need the right Attach Files there
   *[refused] Discord refuses it (an archived thread must be opened again); I try again every hour
  }
board-change = { DAY($day) }, { CLOCK($clock) }, by { $who }: from { $before } to { $after }
board-unlogged = not in the log any more
board-step-preview = See one first: board preview topic:distances
board-step-log = See older changes: server changes

## Looked at again, taken down
board-refresh-title = The boards are looked at again
board-refresh = { $count ->
    [0] Your group has no boards yet.
    [one] I look at 1 board again.
   *[other] I look at { $count } boards again.
  }
board-refresh-how = I post, pin or change it where that is needed.
board-step-stand = See how they are: board list
board-removed = It is unpinned and deleted in a moment.
board-step-left = See what is left: board list

## Under it
board-button = About this board
board-about = This board keeps itself up to date: when the figures of this group or of the bot change, so does it. Moderators manage it with /board.

## Why not
board-no-animal = Which animal is the board for? Name it, or set the group's animal first.
board-no-such = This channel has no board of that topic.

## Several animals
board-distances-title = Tube distances
board-distances-head = From the lit tube to the back, in a fixture with a polished reflector.
board-label-distances = { $animal ->
    [none] UV index { UVI($wanted, form: "range") }
   *[some] { CAP($animal) }, UV index { UVI($wanted, form: "range") }
  }
board-lamp = { $own ->
    [none] { SHARE($strength, form: "given") }: { LIST($cells, join: "list-semi") }
   *[some] { $own }: { LIST($cells, join: "list-semi") }
  }
board-step-distance = Another tube or fixture? Ask: distance
board-needs-title = What to aim for
board-needs-head = Each animal has its own figures.
board-needs-star = * from memory, unchecked
# Only with: $animal
board-label-needs = { CAP($animal) }
board-need = { $aim ->
    [none] { $label }: not known here
   *[some] { $is_unchecked ->
        [yes] { $label }: { $aim } *
       *[no] { $label }: { $aim }
      }
  }
board-step-needs = Who says each figure, and what else one needs? Ask: needs

## What an animal needs
board-needs = This is what to aim for, and how I know it.
board-column-what = What
board-column-aim = Aim for
board-column-known = How it is known
board-step-order = Read the basking surface first, then the cool end, then the warm end.
board-care-start = These are starting values: your own readings beat them, and a reptile vet beats both.

## The first day
board-day-title = The first day: what to measure, in order
board-day-head = Nine things. Take a tape measure, an infrared gun and a digital probe.
board-day-before = Before the animal moves in, run lamps and heat for a day and measure. It is far easier now.
board-day-tube = Measure from the tube to the back with a tape: from the underside of the lit tube straight down.
board-day-basking = After two to three hours with the lamps on, read the basking surface with an infrared gun.
board-day-cool = Read the air at the cool end with a digital probe, at the animal's height at the far end.
board-day-warm = Only then read the air at the warm end, with the probe out of the beam.
board-day-night = Note how cold it gets at night. A drop at night is good.
board-day-lights = Lights on for 12 hours, off for 12 hours, by a timer.
board-day-shade = Check that there is shade to leave the UV, and a hide at each end.
board-day-again = Read everything again after a week, and after every change.

## Welcome
board-welcome-title = New here? Ask me about light and heat
board-welcome-head = I tell how far a UV lamp goes, how warm each place may be, and what to measure first.
board-welcome-alone = Press a button. What I answer, you alone see.
board-welcome-animal = “I have a new animal”: tell which one and how large its enclosure is, and I plan a start.
board-welcome-check = “Check my set-up”: tell what hangs where, and I say what to change first.
board-welcome-reading = “Is this reading right?”: tell what your UV meter shows, and how far away.
board-welcome-wrong = “Something is wrong”: tell it in your own words.
board-welcome-urgent = Smoke or sparks: off at the fuse, hands away. A limp, burnt or gasping animal: a reptile vet at once, before any question here.
