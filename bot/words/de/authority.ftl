### Was Gesetze, Tierärzte und Tierschutz verlangen.

# Only with: $warmth
authority-warmth = { $about ->
    [basking_surface] Fläche am Sonnenplatz { authority-span }: { $citation }.
    [warm_air] Luft am Tag { authority-span }: { $citation }.
    [night_floor] Nacht { authority-span }: { $citation }.
    [water] Wasser { authority-span }: { $citation }.
   *[gradient] Kühlster bis wärmster Platz { authority-span }: { $citation }.
  }
# Only with: $warmth
authority-span = { TEMP($warmth, form: "range") }
# Only with: $light
authority-light = Licht { HOURS($light, form: "range") } am Tag: { $citation }.
