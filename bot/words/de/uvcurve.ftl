### Das Bild einer Lampe: ihr UV-Index über dem Abstand.

uvcurve-distance = Von der Röhre zum Rücken des Tieres
uvcurve-uvi = UV-Index (UVI)
uvcurve-too-near = zu nah
uvcurve-wanted = Ziel { UVI($wanted, form: "range") }
# Only with: $advised
uvcurve-keep = { LENGTH($advised, form: "range") } Abstand
uvcurve-below = { LIST($below, join: "list-with") }
uvcurve-note = Linie: wahrscheinlichster Wert. Blasses Band: so kann es wirklich sein. Ein UV-Messgerät macht es enger.
uvcurve-alt = Von der Seite: { $title }, { uvcurve-below }.
uvcurve-alt-falls = Der UV-Index fällt steil mit dem Abstand, von { UVI($first, form: "doubt") } bei { LENGTH($first_at) } auf { UVI($last, form: "doubt") } bei { LENGTH($last_at) }. Ziel ist { UVI($wanted, form: "range") }.
# Only with: $advised
uvcurve-alt-keep = Halte { LENGTH($advised, form: "range") } Abstand.
uvcurve-alt-point = Punkt bei { LENGTH($at) }, UV-Index { UVI($uvi) }: { $label }.
uvcurve-alt-near = Näher als { LENGTH($nearest) } ist schraffiert: zu nah.
uvcurve-zone-too_near = zu nah
uvcurve-zone-stronger = stärker
uvcurve-zone-right = richtig
uvcurve-zone-weaker = schwächer
uvcurve-zone-shade = Schatten
uvcurve-away = { LENGTH($at) }
uvcurve-note-read = Ringe: deine Messwerte. Linie: beste Schätzung, blass: wo es wirklich liegen kann.
