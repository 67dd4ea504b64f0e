### Wer angerufen wird und wie bald. Was zu tun ist, steht hier klein und kann hinter einer Bedingung stehen.

## Wer, und wie bald
call-act-emergency-now = ruf jetzt den Notruf 112
call-act-doctor-today = geh heute noch in eine Arztpraxis
call-act-poison_line-today = ruf heute den Giftnotruf an
call-act-electrician-this_week = frag diese Woche eine Elektrofachkraft
call-act-electrician-before_use = frag eine Elektrofachkraft, bevor du es wieder benutzt
call-act-vet-now = ruf jetzt eine reptilienkundige Tierarztpraxis an
call-act-vet-today = ruf heute eine reptilienkundige Tierarztpraxis an
call-act-vet-this_week = ruf diese Woche eine reptilienkundige Tierarztpraxis an

## Der Satz
call-plain = { CAP($act) }.
# Only with: $note
call-noted = { CAP($act) }, { $note }.
# Only with: $condition
call-when = { CAP($condition) }: { CAP($act) }.
# Only with: $condition, $note
call-when-note = { CAP($condition) }: { CAP($act) }, { $note }.
# Only with: $condition
call-enough-today = { CAP($condition) }: Dann reicht es heute.
# Only with: $condition
call-enough-this_week = { CAP($condition) }: Dann reicht es diese Woche.

## Wovon es abhängt
call-if-smoke_stays = Flammen oder Rauch, der nicht aufhört
call-if-shocked_badly = verbrannt, schwindlig, ohnmächtig, Herzstolpern, Atemnot, schwanger oder ein Kind
call-if-burn_needs_doctor = Kind, Gesicht, Hände, Blasen, weiße Haut oder größer als die Handfläche
call-if-burn_grave = groß, tief, durch Strom oder blutet weiter
call-if-mercury_breathed = unwohl, kleines Kind oder schwanger
call-if-eyes_near_cracked = Augen schmerzen vom Licht der Lampe
call-if-splinters_on_animal = Glas oder Pulver auf dem Tier
call-if-gas_breathed = Kopfschmerzen, schwindlig, übel oder verwirrt
call-if-animal_under_it = ein Tier war darunter
call-if-person_hurts = einem Menschen tun Augen oder Haut weh
call-if-eyes_or_skin_hurt = Augen oder Haut tun weh, oder du siehst verschwommen
call-if-child_hurt = ein Kind ist verbrannt, geschnitten oder hatte einen Stromschlag
call-if-smoke = Rauch oder Flammen
call-if-socket_bad = eine warme, braune oder lose Steckdose
call-if-holder_wired = eine fest angeschlossene Fassung oder braune Drähte
call-if-fell_on_animal = sie fiel auf das Tier
call-if-skin_mark = irgendeine Spur auf der Haut
call-if-lay_on_heater = das Tier lag darauf oder hat eine wunde Stelle
call-if-skin_patch = eine rote, braune, nasse Stelle oder Blasen
call-if-dimmer_bad = ein heißer oder fest eingebauter Dimmer
call-if-sun_hurt = Maul offen, schlaff, zuckt oder reagiert nicht
call-if-locked_hurt = Maul offen, schlaff oder ohne Reaktion
call-if-hot_hurt = Maul offen am kühlsten Platz, schlaff, zuckt oder reagiert nicht
call-if-water_hurt = schlaff, auf dem Rücken, schnappt nach Luft oder reagiert nicht
call-if-uv_hurt = Augen zu oder geschwollen, wunde oder sich schälende Haut, versteckt sich, frisst nicht
call-if-strong_uv_hurt = seither Augen zu, wunde Haut oder versteckt
call-if-cold_stays = bewegt sich nach ein bis zwei Stunden nicht normal, oder ist starr vor Kälte
call-if-gasps = ringt nach Luft, Maul blau oder grau, oder Hals nach oben gestreckt
call-if-animal_burn_grave = groß, tief, im Gesicht, oder das Tier ist schlaff
call-if-wound_grave = eine Blutung, die nicht aufhört, Knochen oder Gewebe ist zu sehen, oder eine Lampe oder ein Becken fiel auf das Tier
call-if-eggs_calm = munter, frisst wenig, gräbt und presst nicht
call-if-eyes_grave = zugeschwollen, tränend, oder frisst auch nicht
call-if-bones_grave = zuckt, kann nicht laufen, ein Knochen gebrochen, oder frisst nicht
call-if-ill_grave = schlaff, sehr dünn, trinkt nicht, oder jeden Tag schlechter
call-if-cold_limp = kalt und schlaff
call-if-heat_hurt = Maul offen, schlaff oder zuckt
call-if-night_hurt = schlaff, steif oder ohne Reaktion
call-if-no_uvb_long = seit Monaten kein UVB, und schwach, zittrig oder krumm

## Was dazu gesagt wird
call-note-seems_better = auch wenn es besser scheint
call-note-looks_fine = auch wenn die Haut gut aussieht

## Auf einen Blick: die kurze Form für die ersten Zeilen; der ganze Satz steht in den Schritten
call-brief-act-emergency-now = jetzt Notruf 112
call-brief-act-doctor-today = heute zur Arztpraxis
call-brief-act-poison_line-today = heute Giftnotruf
call-brief-act-electrician-this_week = diese Woche Elektrofachkraft
call-brief-act-electrician-before_use = zuerst Elektrofachkraft
call-brief-act-vet-now = jetzt zur Tierarztpraxis
call-brief-act-vet-today = heute zur Tierarztpraxis
call-brief-act-vet-this_week = diese Woche zur Tierarztpraxis
call-brief-plain = { CAP($act) }.
# Only with: $note
call-brief-noted = { CAP($act) }, { $note }.
# Only with: $condition
call-brief-when = { CAP($condition) }? { CAP($act) }.
# Only with: $condition, $note
call-brief-when-note = { CAP($condition) }? { CAP($act) }, { $note }.
# Only with: $condition
call-brief-enough-today = { CAP($condition) }? Heute reicht.
# Only with: $condition
call-brief-enough-this_week = { CAP($condition) }? Diese Woche reicht.
call-brief-any = Bei Schaden: { LIST($acts, join: "list-and") }.
call-brief-if-smoke_stays = Flammen, oder es raucht weiter
call-brief-if-shocked_badly = unwohl, verbrannt, schwanger, ein Kind
call-brief-if-burn_needs_doctor = Kind, Gesicht, Hände, Blasen oder groß
call-brief-if-burn_grave = groß, tief, durch Strom, blutet weiter
call-brief-if-mercury_breathed = unwohl, schwanger, Kleinkind
call-brief-if-eyes_near_cracked = Augen schmerzen
call-brief-if-splinters_on_animal = Glas oder Pulver auf dem Tier
call-brief-if-gas_breathed = Kopfschmerz, schwindlig, übel, verwirrt
call-brief-if-animal_under_it = ein Tier war darunter
call-brief-if-person_hurts = Augen oder Haut tun dir weh
call-brief-if-eyes_or_skin_hurt = Schmerz an Augen oder Haut, Sicht trüb
call-brief-if-child_hurt = ein Kind ist verletzt
call-brief-if-smoke = Rauch oder Flammen
call-brief-if-socket_bad = Steckdose warm, braun oder lose
call-brief-if-holder_wired = Fassung fest verdrahtet, Drähte braun
call-brief-if-fell_on_animal = sie fiel auf das Tier
call-brief-if-skin_mark = irgendeine Spur auf der Haut
call-brief-if-lay_on_heater = es lag darauf, oder ist wund
call-brief-if-skin_patch = rote, braune, nasse Stelle, Blase
call-brief-if-dimmer_bad = Dimmer heiß oder fest eingebaut
call-brief-if-sun_hurt = Maul offen, schlaff, zuckt, reagiert nicht
call-brief-if-locked_hurt = Maul offen, schlaff, reagiert nicht
call-brief-if-hot_hurt = Maul am kühlsten Platz offen, schlaff, zuckt, reagiert nicht
call-brief-if-water_hurt = schlaff, auf dem Rücken, schnappt nach Luft
call-brief-if-uv_hurt = Augen zu oder dick, Haut wund, versteckt sich, frisst nicht
call-brief-if-strong_uv_hurt = seither Augen zu, Haut wund, versteckt
call-brief-if-cold_stays = starr, oder nach zwei Stunden nicht besser
call-brief-if-gasps = ringt nach Luft, Maul blau, Hals gestreckt
call-brief-if-animal_burn_grave = groß, tief, im Gesicht, oder schlaff
call-brief-if-wound_grave = blutet weiter, Knochen zu sehen, Lampe fiel darauf
call-brief-if-eggs_calm = munter, gräbt und presst nicht
call-brief-if-eyes_grave = zugeschwollen, tränend, frisst nicht
call-brief-if-bones_grave = zuckt, Bruch, läuft nicht, frisst nicht
call-brief-if-ill_grave = schlaff, dünn, trinkt nicht, wird schlechter
call-brief-if-cold_limp = kalt und schlaff
call-brief-if-heat_hurt = Maul offen, schlaff oder zuckt
call-brief-if-night_hurt = schlaff, steif oder ohne Reaktion
call-brief-if-no_uvb_long = seit Monaten kein UVB, schwach oder krumm
