### Facts: LampKept, ScreenKept, TargetKept, AnimalKept, Harmful, HarmfulOwn, NoWater, OutOfOrder, OwnWhole, NameTaken, OwnThing, OwnAim, OwnGone, BoardLeft, OwnKnown
### A group's own figures: kept, refused, taken away.

## Lamps
kept-lamp-title = { $replaced ->
    [yes] The lamp “{ $name }” is changed
   *[no] The lamp “{ $name }” is kept
  }
kept-lamp = Everybody here can now ask with tube:{ $name }
kept-label-lamp = By its readings
kept-step-lamp = Try it: distance tube:{ $name } screen:none
kept-step-all = See all of them: server show

## Screens
kept-screen-title = { $replaced ->
    [yes] The screen “{ $name }” is changed
   *[no] The screen “{ $name }” is kept
  }
kept-screen = Everybody here can now ask with screen:{ $name }
kept-label-screen = Your screen
kept-step-screen = Try it: distance tube:12% reflector:polished screen:{ $name }

## Targets
kept-target-title = { $replaced ->
    [yes] Your group's target for { NAME($animal, form: "many") } is changed
   *[no] Your group's target for { NAME($animal, form: "many") } is kept
  }
kept-target = Kept. Every answer here now goes by it.
kept-target-told = { CAP($told) }.
kept-step-target = Take it away again: server remove animal:{ $called } of:{ $of }
kept-care-target = Your target replaces the one with a source. Answers say that it is yours.

## Animals
kept-animal-title = { $replaced ->
    [yes] The animal “{ $name }” is changed
   *[no] The animal “{ $name }” is kept
  }
kept-animal = Everybody here can now ask for { $name }.
kept-animal-by = Answers say that your group set its figures.
kept-label-scientific = Scientific name
# Only with: $scientific
kept-scientific = { $scientific }
kept-label-target = Target
kept-label-limit = Limit
kept-label-back = Back
# Only with: $back
kept-back = { LENGTH($back) } over what it lies on
kept-label-life = Way of life
kept-life-climbs = climbs: heat and UV are measured at its highest branch
kept-life-water = lives in and at water: its dock is the basking place
kept-life-digs = digs: its burrow is its coolest place
kept-life-night = awake at night: shade comes first
kept-step-needs = See what it needs: needs { $name }
kept-step-animal = Take it away again: server remove animal:{ $name }
kept-care-vouch = You vouch for these figures. Have a reptile vet look at them, or a keeper with years of experience with just this animal.

## Taken away
kept-gone-title = Taken away
kept-gone = { CAP($what) } is gone.
kept-ours-again = Answers here go by my figures again.
kept-thing = { $kind ->
    [screen] your screen “{ $name }”
    [animal] your animal “{ $name }”
   *[lamp] your lamp “{ $name }”
  }
kept-aim = your target for { NAME($animal, form: "many") } ({ owned-of })
kept-name = “{ $name }”
kept-care-board = The board about { $topic ->
    [distances] distances
   *[temperatures] temperatures
  } still shows it. Take it down in its channel: board remove topic:{ $typed }

## Why not
kept-no-length = Tell me how long the tube is, too. How much UV there is farther away depends on it.
kept-no-tube = No: no tube gives these readings.
kept-no-tube-own = They fall as in front of a small lamp. Tell me which kind it is, with lamp.
kept-no-small = No: no small lamp gives these readings.
kept-no-small-own = They fall as under a tube. If it is one, tell me its length and leave out the kind.
kept-no-kind = First find out which kind of lamp it is: everybody here will ask with it.
kept-no-two-places = Of such a lamp one place tells too little. Read it at two distances, or more.
kept-no-share = How much does the screen let through? Tell me, or give readings with it and without it.
kept-no-free-name = That name already means a tube or a screen.
kept-no-order = That range cannot be. From low to high it must stay within: { $within }.
kept-no-limit = That limit cannot be. It must be { $within }.
kept-no-harm = No: that would harm { NAME($animal, form: "a") }.
kept-no-harm-limit = Its limit is { $limit }, whatever the target. I know it from memory: a reptile vet's word is better.
kept-no-harm-law = Its limit is { $limit }, whatever the target: no public code that I know of lets the water be shallower.
kept-no-water = I know of no water that { NAME($animal, form: "a") } lives in.
kept-no-harm-own = Its limit is { $limit }.{ $careful ->
    [none] {""}
   *[some] {" "}That is a careful one of mine. Do you know its own? Tell it with { $careful }:
  }
kept-no-whole = “{ $name }” is your group's own animal: change it as a whole.
kept-no-target = Tell me one thing that it needs. It is one of uvi, basking, warm, cool, night, night_off, water, depth and hours.
kept-no-zero = A UV index to aim for is above 0. Leave it out where none is needed.
kept-no-limit-order = Those limits do not fit together. The night is below the coolest place, and both are below the surface.
kept-no-new-name = I know that animal already: { NAME($ours) }. Set its targets with server target.
kept-no-one-animal = That name can mean several animals. Take the name of one.
kept-no-plain-name = That name does not work. Take one to five words without digits, and no everyday word.
kept-no-such = Your group has no such figure.
kept-known = It has { LIST($known) }.
kept-known-none = It has no figures of its own yet.
kept-no-thing = Tell me what to take away.
kept-no-thing-how = A lamp, a screen or an animal of your own, or an animal and which of its targets.
