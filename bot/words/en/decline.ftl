### Facts: GroupPace, Fading, OddTold, DatedRead, ByAge, OtherAge

decline-title = { $animal ->
    [none] How the tube fades, for UV index { UVI($wanted, form: "range") }
   *[some] How the tube fades, for { NAME($animal, form: "a") }
  }

## The answer in brief, by readings
decline-head-unsound = These readings cannot all be right.
decline-head-above = Too strong: UV index { UVI($now, form: "doubt") }.
decline-head-below = Too weak: UV index { UVI($now, form: "doubt") }.
# Only with: $month
decline-head-fading = It fades by about { SHARE($month) } a month.
decline-head-steady = I can tell no fading yet.
decline-head-few = I cannot tell yet: too few readings.
decline-aim = Aim for { UVI($wanted, form: "range") }.
# Only with: $falls
decline-leaves-already = Below { UVI($low, form: "given") } since about { DAY($falls) }.
# Only with: $falls
decline-leaves-maybe = Maybe below { UVI($low, form: "given") } since { DAY($falls) }.
decline-leaves-unknown_today = The readings say nothing of today.
# Only with: $falls
decline-leaves-on = Below { UVI($low, form: "given") } about { DAY($falls) }.
decline-leaves-stays = Above { UVI($low, form: "given") } until { DAY($horizon) } at least.
# Only with: $earliest, $latest
decline-window-days = It can be from { DAY($earliest) } to { DAY($latest) }.
# Only with: $latest
decline-window-now_to = It can be from now to { DAY($latest) }.
decline-window-now = It can be so now.
# Only with: $earliest
decline-window-earliest = { DAY($earliest) } at the earliest.
# Only with: $old_days
decline-old = The last reading is { $old_days } days old.
decline-change-short-one_day = Only one day was read.
decline-change-short-real = The last is { SHARE($changed) } { decline-less }: a real change.
decline-change-short-noise = The last is { SHARE($changed) } { decline-less }: no real change.
decline-less = { $less ->
    [yes] less
   *[no] more
  }
decline-do-wipe = Wipe the sensor. Read again today.
decline-do-farther = Hang it farther away first.
decline-do-sure = Read it once more to be sure.
decline-do-below = Still low? Closer if safe, or a new one.
decline-do-again = { $again ->
    [none] Read it again today.
   *[some] Read it again on { DAY($again) }.
  }

## What no tube does
decline-odd-apart = UVI { UVI($one, form: "given") } and UVI { UVI($other, form: "given") } are ten times apart. Did one lose its point?
decline-odd-ten_times = UVI { UVI($one, form: "given") } on { DAY($day) } is ten times the others. Was it { UVI($meant, form: "given") }?{ $left_out ->
    [yes] {" "}I left it out.
   *[no] {""}
  }
decline-odd-a_tenth = UVI { UVI($one, form: "given") } on { DAY($day) } is a tenth of the others. Was it { UVI($meant, form: "given") }?{ $left_out ->
    [yes] {" "}I left it out.
   *[no] {""}
  }
decline-odd-same_day = You read both UVI { UVI($one, form: "given") } and UVI { UVI($other, form: "given") } on { DAY($day) }. One of them is off.
decline-odd-stray = UVI { UVI($one, form: "given") } on { DAY($day) } does not fit the others.{ $left_out ->
    [yes] {" "}I left it out.
   *[no] {""}
  }
decline-odd-rise = It rose from UVI { UVI($one, form: "given") } to UVI { UVI($other, form: "given") } in { $days } days. No tube does that.
decline-odd-fade = UVI { UVI($one, form: "given") } to { UVI($other, form: "given") } in { $days } days is too fast to be fading.
decline-odd-why-apart = A lost point makes a reading ten times too high or too low. Read again at the same place before you change anything.
decline-odd-why-ten_times = A lost point makes a reading ten times too high. Read again at the same place before you change anything.
decline-odd-why-a_tenth = A point too many makes a reading ten times too low. Read again at the same place before you change anything.
decline-odd-why-same_day = Two readings of one day at one place should agree. Read again at the same place before you change anything.
decline-odd-why-stray = One reading is far from all the others. Read again at the same place before you change anything.
decline-odd-why-rise = After its first 100 hours a tube does not get stronger. The place, the meter or the tube was not the same each time. Read again at the same place before you change anything.
decline-odd-why-fade = Is the sensor or the tube dirty, or was the place or the meter another? If you read the same once more, the tube is failing. Read again at the same place before you change anything.

## Why
decline-why-few = Three or more readings on different days make a trend.
decline-why-steady = The change is no more than readings vary by themselves.

## Steps
decline-step-wipe = Wipe the sensor, and the tube while it is cold and unplugged. Then read today, at the same place.
decline-step-below = Read once more to be sure. Then ask distance with readings: to see whether closer is still safe, or fit a new tube.
decline-step-farther = Ask distance with readings: to see how far away it should hang.
decline-step-place = Measure the place again and note it, so that you take every reading there.
decline-step-mark = Take every reading at one marked place, under the middle of the tube, sensor facing it, 30 minutes after switching on, other lamps off.
decline-step-new = A new tube: wait for its first 100 hours, then read, and start a new list. { UVI($wanted, form: "range") } is right.

## Numbers
decline-label-odd = Odd
decline-label-now = Now
decline-label-last = Last read
decline-read = UV index { UVI($now, form: "doubt") } on { DAY($last_day) }{ $read_today ->
    [yes] , which is today
   *[no] {""}
  }: { $judged }
decline-read-unsound = UV index { UVI($now) } read on { DAY($last_day) }{ $read_today ->
    [yes] , which is today
   *[no] {""}
  }
decline-label-today = Today
# Only with: $today
decline-today = about UV index { UVI($today, form: "doubt") } by the trend
decline-label-change = Change
decline-change-one_day = Only one day was read, so nothing can be said of a change.
decline-change-real = The last reading is { SHARE($changed) } { decline-less } than the first, { $days } days before. That is more than readings vary.
decline-change-noise = The last reading is { SHARE($changed) } { decline-less } than the first, { $days } days before. Readings vary as much by themselves.
decline-label-month = In a month
# Only with: $month_factor
decline-month = UV index times { NUMBER($month_factor, form: "doubt") }
decline-label-below = Below UV index { UVI($low, form: "given") }
# Only with: $falls
decline-falls = about { DAY($falls) }
decline-label-window = Between when
decline-label-again = Read again
decline-again = { $again ->
    [none] today
   *[some] on { DAY($again) }
  }, at the same place, after 30 minutes on
decline-column-day = Day
decline-column-read = UV index read
decline-day = { DAY($day) }
decline-uvi = { UVI($read, form: "given") }

## The picture
decline-picture-axis = UV index
decline-picture-line = Rings: what you read. Line: straight through them on a logarithm. Broken: not read yet. Pale: where it can really lie.
decline-picture-no-line = No line: these readings do not tell a trend yet.
decline-picture-alt = Chart of the UV index against the day.
decline-picture-day = { UVI($read, form: "given") } on { DAY($day) }.
decline-picture-read = UV index { UVI($now) } when last read: { $judged }.
decline-picture-today = today
decline-picture-months = age in months
decline-picture-alt-age = Bar of the ages at which such lamps are replaced. Its end is open.
# Only with: $months
decline-picture-age = Age today in months: about { NUMBER($months) }.

## By its age alone
decline-age-title = { $kind ->
    [t5_ho] When to replace the tube, by its age
   *[other] When to replace the lamp, by its age
  }
decline-aged-untold = Tell me its age, and I tell you more.
decline-aged-new = No: it is new. Its first 100 hours can be stronger.
decline-aged-settled = No: it need not be replaced yet.
decline-aged-ageing = Maybe: many keepers replace it at this age.
decline-aged-old = Yes: it is past its age. Replace it, or read it.
decline-aged-unknown = The age of { decline-kind-dat } tells nothing. Only a UV meter can.
decline-usual = Keepers replace { decline-kind } after { decline-months }.
decline-kind = { $kind ->
    [t5_ho] a T5 HO tube
    [other_tube] a T8 or other tube
    [compact] a compact lamp
    [metal_halide] a metal halide lamp
    [mercury] a mercury vapour lamp
    [led] an LED bar
   *[unknown] a lamp nobody can name
  }
decline-kind-dat = { $kind ->
    [led] an LED bar
   *[unknown] a lamp nobody can name
  }
decline-months = { $one ->
    [yes] about { $late } months
   *[no] { $soon } to { $late } months
  }
decline-do-meter = Borrow a UV meter: only it can tell.
decline-do-other = No UV meter? Use a T5 HO tube.
decline-do-note = Note on its base when you fitted it.
decline-step-note = Write the day it was fitted on its end cap or base.
decline-step-borrow = Borrow a UV meter. Read it now, and again in { $again_months } months at the same place. Then ask decline with both.
decline-why-meter = The age is common practice. Only a UV meter can tell how yours does.
decline-why-ages = Nobody has published how these lamps fade. Other UV lamps lasted for hundreds of hours in one study, and differed two- to threefold by age in another.
decline-label-age = Age
decline-age = { $months ->
    [none] You did not tell me. With it (age:8 months) or with dated readings the answer is yours.
   *[some] about { NUMBER($months) } months, as you told me
  }
decline-label-others = Other lamps
decline-others = { LIST($others, join: "list-and") }: all from memory, no source. Of LED bars nothing is known. Ask with lamp: and its kind.
decline-other-age = { decline-kind } { decline-months }

## By the group
decline-label-group = In your group
decline-group = Tubes lose about { SHARE($loss) } in 30 days (one tube { SHARE($loss, form: "range") }), by { $tubes } tubes of { $keepers } keepers, the last read on { DAY($newest) }.
decline-label-group-below = At that pace
# Only with: $below
decline-group-below = It would be too weak about { DAY($below) }. Only your own readings tell.
