### Facts: AuthorityTold
### What laws, vets and welfare bodies ask for.

# Only with: $warmth
authority-warmth = { $about ->
    [basking_surface] Basking surface { authority-span }: { $citation }.
    [warm_air] Air by day { authority-span }: { $citation }.
    [night_floor] Night { authority-span }: { $citation }.
    [water] Water { authority-span }: { $citation }.
   *[gradient] Coolest to warmest place { authority-span }: { $citation }.
  }
# Only with: $warmth
authority-span = { TEMP($warmth, form: "range") }
# Only with: $light
authority-light = Light { HOURS($light, form: "range") } a day: { $citation }.
