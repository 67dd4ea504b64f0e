### Was die Tür um jede Antwort herum sagt.

door-title-asked = Das vorab
door-short = { $title }.
door-lacks = Mir fehlt noch: { LIST($names, join: "list-and") }.
door-quoted = „{ $text }“
door-read = In deinen Worten las ich { LIST($words, join: "list-and") }.
door-label-read-on = Mehr dazu
door-read-on = { $page }, Abschnitt „{ $part }“
door-label-question = Deine Frage
door-more-full = Mehr mit --full
door-more-word = Mehr (tipp ein Wort, oder all)
door-label-taken = Angenommen
door-taken = { $name } { $text } hat keine Einheit, also nahm ich { $unit } an
door-label-understood = Verstanden als
door-line = { $line }
door-label-own = Von der Gruppe
door-own-tube = Röhre „{ $name }“: { $told }
door-own-screen = Gitter „{ $name }“: { $told }
door-own-animal = Tier „{ $name }“: Seine Zahlen hat diese Gruppe am { DAY($set_on) } eingetragen; wo sie keine Grenze setzte, gilt eine vorsichtige von mir
door-own-usual = Kein Tier genannt, also nahm ich das der Gruppe: { NAME($animal) }
door-thanks = Gern geschehen.
door-anew = Gut. Frag etwas Neues.
door-no-words = Frag mich nach Licht oder Wärme, in deinen Worten.
door-vets = Tierärzte eurer Gruppe: { $text }.
door-label-vets = Tierärzte eurer Gruppe
door-photo = Ich kann keine Bilder sehen. Sag mir: welches Tier, welche Lampe und wie weit weg, und was du misst oder siehst.
door-alone = Hier antworte ich nur dir allein.
