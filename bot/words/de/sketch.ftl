### Die Skizzen der Anleitung: wie man aufbaut und wo man misst.

sketch-tube = UV-Röhre
sketch-lamp = Wärmelampe
sketch-stone = Stein
sketch-hide = Versteck
sketch-warm = warme Seite
sketch-cool = kühle Seite

## UV und Wärme auf derselben Seite
sketch-layout = UV und Wärme auf derselben Seite
sketch-layout-below = ein Terrarium von vorn
sketch-layout-share = die Hälfte bis zwei Drittel
sketch-layout-warm = heiß und hell
sketch-layout-cool = kühl und schattig
sketch-layout-alt = Skizze eines Terrariums von vorn. Die Wärmelampe hängt auf der warmen Seite über einem Stein. Die UV-Röhre beginnt auf derselben Seite und reicht über die Hälfte bis zwei Drittel der Länge. Auf der kühlen Seite ist keine Röhre, aber ein Versteck.

## Von der Röhre bis zum Rücken
sketch-distance = Von der Röhre bis zum Rücken
sketch-distance-below = nicht bis zum Boden und nicht bis zum Stein
sketch-distance-right = { LENGTH($right) }: ja
sketch-distance-wrong = { LENGTH($wrong) }: nein
sketch-distance-alt = Skizze: eine Röhre über einem Stein, auf dem ein Tier liegt. Von der Röhre bis zum Rücken des Tieres sind es { sketch-distance-right }, das ist der Abstand. Von der Röhre bis zum Boden sind es { sketch-distance-wrong }, das ist er nicht.

## Nummerierte Stellen
sketch-numbered-alt = Skizze eines Terrariums von vorn, die Wärmelampe über einem Stein auf der warmen Seite, ein Versteck auf der kühlen Seite. { $title }, { $below }: { LIST($places, join: "list-semi") }.
sketch-place = { $number }, { $text }
sketch-places = Drei Stellen, drei Zahlen
sketch-places-below = für { NAME($animal, form: "acc") }; übliche Praxis
sketch-places-surface = Fläche am Sonnenplatz: { TEMP($warmth, form: "range") }
sketch-places-warm = Luft, warme Seite: { TEMP($warmth, form: "range") }
sketch-places-cool = Luft, kühle Seite: { TEMP($warmth, form: "range") }
sketch-thermometers = Wohin welches Thermometer kommt
sketch-thermometers-below = nach zwei bis drei Stunden Licht
sketch-thermometers-surface = Infrarot-Thermometer: wo das Tier liegt, aus etwa { LENGTH($gun) } Abstand
sketch-thermometers-cool = digitaler Fühler: das andere Ende, im Schatten, auf Höhe des Tieres
sketch-thermometers-warm = digitaler Fühler: die Luft neben dem Sonnenplatz, nicht im Licht der Lampe
