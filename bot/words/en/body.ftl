### Facts: BodyTold
### What is published on bodies, as the animal's own table has it.

body-label = Body, not surface
body-told = { $taxon }{ $is_relative ->
    [yes] , a relative
   *[no] {""}
  }, { $what ->
    [field] active in nature: { body-span } (published).
    [chosen] where it could choose: { body-span } (published).
    [brooding] on eggs: about { body-span } (published).
    [daily_high] the highest of the day: about { body-span } (published).
    [critical_high] too hot to right itself: { body-span } (published). A limit of life, never an aim.
   *[critical_low] too cold to right itself: { body-span } (published). A limit of life, never an aim.
  }
body-span = { TEMP($range, form: "range") }
