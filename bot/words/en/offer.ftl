### Facts: Offering, ReadingsGiven, PooledTold, NumberedReading, GivenShown, Withdrawn
### A reading given to the group, and taken back.

## What was read
# Only with: $strength, $long
offer-lamp = T5 HO, { SHARE($strength, form: "given") }, { $fixture ->
    [polished] polished reflector
   *[plain] plain fixture
  }, { LENGTH($long) } long
# Only with: $own
offer-lamp-own = your group's lamp “{ $own }”
offer-read = UV index { UVI($read) } at { LENGTH($at) }, { DAY($day) }
offer-between = { CAP($between) }
offer-age = { $months ->
    [none] not told
   *[some] about { NUMBER($months) } months
  }
offer-label-read = Read
offer-label-lamp = Lamp
offer-label-between = Screen
offer-label-age = Age of the lamp
offer-line = { $lamp }, { $between }: UV index { UVI($read) } at { LENGTH($at) }, { DAY($day) }

## Asked first
offer-title = May your group have this reading?
offer-ask = { $count ->
    [one] Nothing is given yet. It is yours.
   *[other] Nothing is given yet. They are yours.
  }
offer-what = It gets the figures alone: no name, no text.
offer-back = You can take it back at any time.
offer-step-yes = Yes, give it: { $again }
offer-step-no = No? Then do nothing. Nothing is kept.
offer-why = Readings of many keepers tell how strong a kind of lamp really is. Your group's answers go by them once enough keepers gave theirs.

## Given
offer-given-title = Thank you
offer-given = { $new ->
    [0] Your group has this already.
    [one] Your group has it now.
   *[other] Your group has { $new } readings more.
  }
offer-step-group = See what they show: mine group
offer-step-withdraw = Take it back: mine withdraw

## Taken back
offer-list-title = What you gave to this group
offer-list = { $count ->
    [0] You gave nothing to this group.
    [one] You gave one reading to this group.
   *[other] You gave { $count } readings to this group.
  }
offer-number = Reading { $number }
offer-step-one = Take one back: mine withdraw reading:NUMBER, with its number
offer-step-all = Take all back: mine withdraw reading:all
offer-step-first = Give one: mine offer
offer-gone-title = Taken back
offer-gone = { $gone ->
    [0] There was nothing to take back.
    [one] One reading is deleted for good.
   *[other] { $gone } readings are deleted for good.
  }
offer-step-list = See what is left: mine withdraw
offer-backups = Backups that the people who run this bot made before still hold it, until they are thrown away.
offer-no-such = You gave no reading with that number here.

## Why not
offer-no-pane = Glass and plastic let no useful UV through. Such a reading says nothing of the lamp.
offer-no-several = Under several lamps at once it cannot be told which gives what. Read under one.
offer-lacks-tube = Tell me which tube it is, by its label.
offer-lacks-reflector = Tell me what is behind the tube: polished or plain.
offer-lacks-screen = Tell me what was between meter and lamp, or none.
offer-lacks-length = Tell me how long the tube is.
offer-lacks-reading = There is no UV reading to give.
offer-lacks-place = Tell me how far from the lamp you read.
