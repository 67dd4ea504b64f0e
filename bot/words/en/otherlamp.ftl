### Facts: OtherLamp, ReadThere
### A UV lamp of which there are no figures.

otherlamp-title-t5_ho = T5 HO tube: go by a UV meter
otherlamp-title-other_tube = T8 or other tube: go by a UV meter
otherlamp-title-compact = Compact lamp: go by a UV meter
otherlamp-title-metal_halide = Metal halide lamp: go by a UV meter
otherlamp-title-mercury = Mercury vapour lamp: go by a UV meter
otherlamp-title-led = LED bar: go by a UV meter
otherlamp-title-unknown = A lamp nobody can name: go by a UV meter

## The answer in brief
otherlamp-head = Only a UV meter can tell here.
otherlamp-why-short-t5_ho = I have no figures for it.
otherlamp-why-short-other_tube = I have no figures for such tubes.
otherlamp-why-short-compact = I have no figures for compact lamps.
otherlamp-why-short-metal_halide = I have no figures for metal halide.
otherlamp-why-short-mercury = I have no figures for mercury vapour.
otherlamp-why-short-led = I have no figures for UV LEDs.
otherlamp-why-short-unknown = I have no figures for an unknown lamp.
otherlamp-do-start = Start { LENGTH($start) } from its back.
otherlamp-do-nearer = { $wanted ->
    [none] Closer with the meter, never past { LENGTH($nearest) }.
   *[some] Closer until a meter shows { UVI($wanted, form: "range") }, never past { LENGTH($nearest) }.
  }

## Why
otherlamp-why-t5_ho = I have no figures for this lamp.
otherlamp-why-other_tube = It gives less UV than a T5 HO tube with the same label, and how much less is different for each.
otherlamp-why-compact = Its UV is strong close by and weak a little farther on.
otherlamp-why-metal_halide = It is strong, and its UV and its heat come out of one small place.
otherlamp-why-mercury = It is strong, and its UV and its heat come out of one small place. Never dim it.
otherlamp-why-led = These are new, and one gives quite different UV from the next.
otherlamp-why-unknown = Without its kind and its strength I cannot work out anything.
otherlamp-why-t5 = The distances that I know are those of T5 HO tubes. They hold for no other lamp.

## Steps
otherlamp-step-warm-up = Take your animal out of its light. Leave the lamp on for 30 minutes, and switch other lamps off.
otherlamp-step-hold = Hold the sensor at back height, facing the lamp, { LENGTH($start) } away. Come closer a hand's width at a time until it shows { $wanted ->
    [none] what your animal needs
   *[some] UV index { UVI($wanted, form: "range") }
  }. Stop at { LENGTH($nearest) }, whatever it shows. More than that already at { LENGTH($start) }? Switch it off: it is too strong for here.
otherlamp-step-heat = Read the basking surface with an infrared gun as well. Of UV and heat, the one that needs more distance decides.
otherlamp-step-write = Write down three readings with their distances, then ask, such as: meter readings:4.2 at { LENGTH($first_place, units: "first") }, 2.8 at { LENGTH($second_place, units: "first") }, 2.0 at { LENGTH($third_place, units: "first") } lamp:{ $typed } animal:{ $asked_for }
otherlamp-step-no-meter = No meter to borrow? Use a T5 HO tube instead: for those I know distances (ask tube). Until then leave this lamp off.

## Numbers
otherlamp-label-read = You read
otherlamp-read = UV index { UVI($read, form: "given") } at { LENGTH($at) }{ $judged ->
    [none] .
   *[some] { $wanted ->
        [none] : { $judged }.
       *[some] : { $judged }, aim for { UVI($wanted, form: "range") }.
      }
  } That holds for that place and no other. Read at two more distances, and I can say where it may hang.
otherlamp-label-printed = Its label
# Only with: $label
otherlamp-printed = I read { NUMBER($label) } on it. On this kind of lamp the number tells no UV index, so I work out nothing from it.
