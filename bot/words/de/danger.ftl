### Was nicht warten kann: was jetzt zu tun ist, was folgt, die ruhige Regel, wenn nur gefragt wird, und warum.

## fire
danger-fire-title = Zuerst den Stecker ziehen
danger-fire-do-now-1 = Zieh jetzt den Stecker oder schalte die Sicherung aus.
danger-fire-do-now-2 = Fass nichts Heißes an, nimm kein Wasser, hol einen Erwachsenen.
danger-fire-do-now-3 = Raucht es weiter, gehen alle hinaus.
danger-fire-then-1 = Diese Lampe, Heizung, Fassung oder Leitung wird nie wieder benutzt.
danger-fire-then-2 = Hol das Tier heraus, wenn das gefahrlos geht, und halte es in einem warmen Zimmer.
danger-fire-then-3 = Eine verschmorte oder funkende Steckdose prüft eine Elektrofachkraft, bevor sie wieder benutzt wird.
danger-fire-asked = Eine heile Lampe oder Heizung raucht nie, funkt nie, schmilzt nichts an. Passiert es doch, kommt zuerst der Stecker heraus.
danger-fire-why = Hitze, die etwas schmelzen oder rauchen lässt, reicht schon, um etwas zu entzünden.

## shock
danger-shock-title = Hände weg, Strom aus
danger-shock-do-now-1 = Lass los und schalte den Strom an der Sicherung aus.
danger-shock-do-now-2 = Vorher berührt niemand die Lampe, das Terrarium oder die Person.
danger-shock-do-now-3 = Wer sonst einen Schlag bekam, geht heute zum Arzt, auch ohne Beschwerden.
danger-shock-then-1 = Die Lampe bleibt für immer ausgesteckt.
danger-shock-then-2 = Eine Elektrofachkraft prüft die Steckdose und den FI-Schalter.
danger-shock-then-3 = Ein FI-Schalter, der immer wieder auslöst, tut seine Arbeit: Drück ihn nicht immer wieder hinein.
danger-shock-asked = Arbeite nur mit gezogenem Stecker und trockenen Händen. Nimm eine Steckdose mit FI-Schalter, der bei Fehlerstrom abschaltet.
danger-shock-why = Ein Kribbeln ist Strom, der durch dich fließt; die nächste Berührung mit nassen Händen kann die schlimme sein.

## water_mains
danger-water_mains-title = Zuerst Strom an der Sicherung aus
danger-water_mains-do-now-1 = Schalte den Strom an der Sicherung aus, bevor du etwas anfasst.
danger-water_mains-do-now-2 = Greif nicht ins Wasser und fass nichts Nasses an.
danger-water_mains-do-now-3 = Zieh dann mit trockenen Händen den Stecker.
danger-water_mains-do-now-4 = Hol erst danach die Lampe und das Tier heraus.
danger-water_mains-then-1 = Eine Lampe, eine Heizung, eine Steckdosenleiste oder ein Stecker, die unter Wasser waren, werden nie wieder benutzt.
danger-water_mains-then-2 = Eine heiße Lampe, die bespritzt wurde und gesprungen ist, fasst niemand an, bis sie aus, ausgesteckt und kalt ist.
danger-water_mains-then-3 = Lass jedes Kabel in einer Schlaufe unter seiner Steckdose hängen.
danger-water_mains-asked = Nein: Wasser und Strom kommen nie zusammen. Stecker heraus, Lampe kalt, Hände trocken, dann arbeiten.
danger-water_mains-why = Wasser leitet den Strom zu dem, der hineingreift, und kaltes Wasser lässt heißes Glas springen.

## person_burn
danger-person_burn-title = Verbrennung unter Wasser kühlen
danger-person_burn-do-now-1 = Halte die Verbrennung jetzt 20 Minuten unter kühles, fließendes Wasser.
danger-person_burn-do-now-2 = Nimm kein Eis und keine Creme.
danger-person_burn-do-now-3 = Ein Schnitt blutet: Drück ein sauberes Tuch darauf.
danger-person_burn-then-1 = Die Lampe bleibt aus und ausgesteckt, bis sie kalt ist. Geschnitten an einer Lampe mit Pulver? Geh heute noch in eine Arztpraxis.
danger-person_burn-asked = Lampen sind aus und kalt, bevor jemand sie anfasst. Ein Schutzkorb hält Kinderhände fern.
danger-person_burn-why = 20 Minuten Kühlen helfen noch bis zu drei Stunden nach der Verbrennung.

## broken_mercury
danger-broken_mercury-title = Raus aus dem Zimmer und lüften
danger-broken_mercury-do-now-1 = Lampe aus, jetzt alle hinaus, auch Tiere.
danger-broken_mercury-do-now-2 = Tritt nicht hinein und öffne ein Fenster.
danger-broken_mercury-do-now-3 = Bleib 15 Minuten draußen.
danger-broken_mercury-do-now-4 = Nimm keinen Staubsauger und keinen Besen.
danger-broken_mercury-do-now-5 = Nimm es dann mit steifer Pappe, Klebeband und feuchtem Papier auf.
danger-broken_mercury-do-now-6 = Füll es in ein Glas mit Deckel und stell das nach draußen.
danger-broken_mercury-then-1 = Ist Quecksilber in der Lampe? Leuchtstofflampen jeder Form, Quecksilberdampf- und Halogen-Metalldampflampen: ja. Halogenglühlampe, Glühlampe, Keramikstrahler, LED: nein; dann sind es Scherben und eine Fassung unter Strom: Stecker heraus, kalt, Handschuhe.
danger-broken_mercury-then-2 = Eine Quecksilberdampf- oder Halogen-Metalldampflampe, deren äußeres Glas gesprungen ist und die noch brennt, gibt hartes UV ab: zuerst den Strom aus, und niemand schaut hin.
danger-broken_mercury-then-3 = Lüfte mehrere Stunden weiter, mit abgestellter Heizung oder Klimaanlage.
danger-broken_mercury-then-4 = Einstreu, Sand oder Erde mit Splittern oder weißem Pulver kommt mit in das dichte Glas oder in einen dichten Beutel; wasch sie nicht.
danger-broken_mercury-then-5 = Das Tier kommt in eine saubere Box in einem anderen Zimmer.
danger-broken_mercury-then-6 = Bring das Glas dorthin, wo deine Gemeinde Schadstoffe annimmt; es kommt nicht in den Müll.
danger-broken_mercury-asked = Trag Röhren mit beiden Händen; alte kommen zur Sammelstelle. Zerbricht doch eine: Menschen und Tiere hinaus, lüften, kein Staubsauger.
danger-broken_mercury-why = UV-Röhren, UV-Kompaktlampen und Quecksilberdampflampen enthalten einige Tausendstel Gramm Quecksilber; ein Staubsauger bläst es durchs Zimmer.

## open_flame
danger-open_flame-title = Flamme aus, an die frische Luft
danger-open_flame-do-now-1 = Lösch jede Flamme und stell jeden Motor im Haus ab.
danger-open_flame-do-now-2 = Geh an die frische Luft.
danger-open_flame-do-now-3 = Keine Kerzen, kein Gas, keine Holzkohle, kein Generator in Haus oder Garage.
danger-open_flame-then-1 = Halte das Terrarium mit Decken um die Seiten und umwickelten Flaschen mit warmem Wasser warm.
danger-open_flame-asked = Nein: nie Kerzen, Kocher, Holzkohle, Gas oder Generator im Haus. Kohlenmonoxid riecht man nicht. Nimm Decken und Flaschen mit warmem Wasser.
danger-open_flame-why = Sie lösen Brände aus, und Kohlenmonoxid riecht man nicht; es tötet Menschen und Tiere.

## uvc
danger-uvc-title = Diese Lampe aus, und zwar für immer
danger-uvc-do-now-1 = Schalte diese Lampe jetzt aus und schau nicht hinein.
danger-uvc-do-now-2 = Benutz sie bei keinem Tier und bei keinem Menschen.
danger-uvc-then-1 = An ihre Stelle kommt eine Röhre, die für Reptilien verkauft wird; frag, welche in dein Terrarium passt.
danger-uvc-asked = Niemals: Entkeimungs- (UVC), Teichfilter- und Solariumlampen sind nicht für Tiere. Sie verletzen Augen und Haut in Sekunden bis Minuten.
danger-uvc-why = Eine Entkeimungslampe (UVC) verletzt Augen und Haut in Sekunden bis Minuten: 254 nm liegt fast genau dort, wo UV den Augen am meisten schadet.

## person_uv
danger-person_uv-title = UV aus, Augen schonen
danger-person_uv-do-now-1 = Schalte die UV-Lampe aus und bleib aus ihrem Licht.
danger-person_uv-do-now-2 = Reib wunde Augen nicht und nimm Kontaktlinsen heraus.
danger-person_uv-do-now-3 = Es beginnt 6 bis 12 Stunden danach.
danger-person_uv-do-now-4 = Meist ist es nach ein bis drei Tagen vorbei.
danger-person_uv-asked = Schalte die Röhre zum Arbeiten aus und schau nie hinein. Häng sie so, dass man von Bett oder Stuhl nie die nackte Röhre sieht.
danger-person_uv-why = Im strengsten Fall ist die Tagesgrenze für Augen am Arbeitsplatz nach etwa 8 Minuten bei UVI 4 erreicht; die Schmerzen kommen Stunden später.

## child
danger-child-title = Lampe aus, bis sie gesichert ist
danger-child-do-now-1 = Schalte die Lampe aus, bis ein Schutzkorb oder Schloss dran ist.
danger-child-do-now-2 = Kleine Hände, Katzen und Hunde dürfen Lampe und Kabel nicht erreichen.
danger-child-do-now-3 = Häng sie dann an eine Kette, mit einer zweiten Halterung.
danger-child-asked = Nur mit Schutzkorb, verschlossener Tür und Kabeln außer Reichweite. Und ohne nackte Röhre in Sicht des Betts.
danger-child-why = Wärmelampen sind viel heißer als das, was eine Kinderhand bei einer Berührung verbrennt.

## touching
danger-touching-title = Schalte die Lampe jetzt aus
danger-touching-do-now-1 = Schalte die Lampe jetzt aus und lass sie abkühlen.
danger-touching-do-now-2 = Was brennen oder schmelzen kann, darf sie nicht berühren oder nahe liegen.
danger-touching-do-now-3 = Halte den Abstand ein, der auf der Lampe steht.
danger-touching-do-now-4 = Miss das nächste Holz mit einem Infrarot-Thermometer.
danger-touching-do-now-5 = Es muss unter { TEMP($wood) } bleiben, besser weit darunter.
danger-touching-asked = Nein: Halte den Abstand ein, der auf der Lampe steht. Lampe oder Schirm berühren nie Holz, Kunststoff, Stoff oder ein Gitter ohne Metall.
danger-touching-later-title = Gib dem Holz heute mehr Abstand
danger-touching-later-do-now-1 = Gib dem Holz heute mehr Abstand zur Lampe.
danger-touching-later-do-now-2 = Es ist knapp: { TEMP($wood) } sind zu viel für Holz.
danger-touching-later-do-now-3 = Miss es noch einmal mit einem Infrarot-Thermometer.
danger-touching-why = Holz neben einer Fläche von { TEMP($wood) } oder mehr kann nach Monaten Feuer fangen; Kunststoff wird viel früher weich.

## hot_lead
danger-hot_lead-title = Zieh jetzt den Stecker
danger-hot_lead-do-now-1 = Zieh jetzt den Stecker.
danger-hot_lead-do-now-2 = Leitung, Stecker, Zeitschaltuhr, Dimmer: Was heiß ist oder brummt, kommt weg.
danger-hot_lead-do-now-3 = Heizgeräte kommen direkt in die Wand, an jede Steckdose nur eines.
danger-hot_lead-asked = Nein: Zähl alle Watt zusammen und bleib unter der Angabe. Steck nie eine Verlängerung in die andere; Heizgeräte kommen direkt in die Wand.
danger-hot_lead-why = Eine heiße Leitung ist überlastet oder hat einen schlechten Kontakt; beides endet mit Feuer.

## wrong_holder
danger-wrong_holder-title = Lampe heraus, sobald sie kalt ist
danger-wrong_holder-do-now-1 = Schalte die Lampe jetzt aus und dreh sie kalt heraus.
danger-wrong_holder-do-now-2 = Die Watt der Lampe dürfen nicht über der Angabe der Fassung liegen.
danger-wrong_holder-do-now-3 = Wärmelampen und Keramikstrahler brauchen eine Fassung aus Keramik (Porzellan).
danger-wrong_holder-do-now-4 = Eine braune, gesprungene, lose oder spröde Fassung wird nicht mehr benutzt.
danger-wrong_holder-asked = Nein: nie mehr Watt, als auf der Fassung steht. Wärmelampen und Keramikstrahler nur in einer Fassung aus Keramik (Porzellan).
danger-wrong_holder-why = Zu viele Watt überhitzen die Fassung und ihre Drähte, und der Schaden bleibt, auch wenn die Lampe gewechselt wird.

## falling_lamp
danger-falling_lamp-title = Stecker ziehen, abkühlen lassen
danger-falling_lamp-do-now-1 = Zieh jetzt den Stecker und lass die Lampe abkühlen.
danger-falling_lamp-do-now-2 = Such nach versengter Einstreu oder versengtem Teppich.
danger-falling_lamp-do-now-3 = Behalte die Stelle eine Stunde lang im Auge.
danger-falling_lamp-do-now-4 = Häng sie an Kette oder Haken, mit einer zweiten Halterung.
danger-falling_lamp-do-now-5 = Nie nur an eine Klemme.
danger-falling_lamp-asked = Nein: Eine Klemme allein reicht nie. Häng sie an Kette oder Haken, mit einer zweiten Halterung, die sie allein hielte.
danger-falling_lamp-why = Eine heruntergefallene Lampe liegt mit der heißen Seite auf Dingen, die brennen.

## no_guard
danger-no_guard-title = Lampe aus, bis ein Schutzkorb da ist
danger-no_guard-do-now-1 = Schalte die Lampe aus, bis ein Schutzkorb aus Draht dran ist.
danger-no_guard-do-now-2 = Oder häng sie dorthin, wo das Tier nicht hinkommt.
danger-no_guard-do-now-3 = Schau dir seine Haut an: Eine Verbrennung kann klein sein.
danger-no_guard-asked = Nein: Im Terrarium braucht jede Wärmelampe einen Schutzkorb. In keine Lücke passt ein Fuß oder Kopf. Oder sie bleibt draußen.
danger-no_guard-why = Reptilien klettern auf heiße Lampen, wickeln sich darum und lassen nicht los, auch wenn sie sich verbrennen.

## no_thermostat
danger-no_thermostat-title = Zuerst den Stecker der Heizung ziehen
danger-no_thermostat-do-now-1 = Zieh jetzt den Stecker der Heizung, bis ihr Thermostat funktioniert.
danger-no_thermostat-do-now-2 = Mach den Fühler dort fest, wo das Tier liegt.
danger-no_thermostat-do-now-3 = Matte, Stein, Kabel, Keramikstrahler und Paneel laufen nie ohne Thermostat.
danger-no_thermostat-do-now-4 = Prüf es nicht mit der Hand.
danger-no_thermostat-do-now-5 = Miss die warme Stelle mit dem Thermometer, bevor das Tier zurückkommt.
danger-no_thermostat-asked = Nein: Jede Heizung ohne Licht braucht einen eigenen Thermostat. Mach den Fühler fest und leg ein zweites Thermometer daneben.
danger-no_thermostat-why = Ohne Thermostat, oder mit seinem Fühler in kühler Luft, heizt eine Heizung ohne Ende weiter.

## heat_rock
danger-heat_rock-title = Stecker ziehen und herausnehmen
danger-heat_rock-do-now-1 = Zieh jetzt den Stecker und nimm das Gerät aus dem Terrarium.
danger-heat_rock-do-now-2 = Schau dir dann den Bauch des Tieres an.
danger-heat_rock-do-now-3 = Halte das Tier in einem warmen Zimmer oder unter einer Lampe warm.
danger-heat_rock-asked = Nein: kein Heizstein, kein Heizkissen für Menschen. Wärm von oben oder mit Matte und Thermostat von außen.
danger-heat_rock-why = Ein Reptil liegt auf einem heißen Stein oder Kissen, bis es verbrannt ist, und eine Verbrennung zeigt sich manchmal erst nach Tagen.

## covered
danger-covered-title = Runter vom Deckel, oder Lampe aus
danger-covered-do-now-1 = Schalte die Lampe jetzt aus und nimm die Abdeckung weg.
danger-covered-do-now-2 = Auf einem Deckel mit Lampe liegt nichts, was brennen kann.
danger-covered-do-now-3 = Schließ einen Teil des Gitters nur mit etwas, das nicht brennt.
danger-covered-asked = Nein: Auf einem Deckel mit Lampe liegt nichts, was brennen kann. Kein Handtuch, keine Pappe. Schließ einen Teil mit etwas, das nicht brennt.
danger-covered-why = Stoff hält die Hitze in der Lampe und fängt dann Feuer.

## dimmer_mismatch
danger-dimmer_mismatch-title = Nimm diese Lampe vom Dimmer
danger-dimmer_mismatch-do-now-1 = Schalte diese Lampe aus und nimm sie heute vom Dimmer.
danger-dimmer_mismatch-do-now-2 = UV-Röhren, UV-Kompaktlampen und Quecksilberdampflampen werden nie gedimmt.
danger-dimmer_mismatch-do-now-3 = Sie laufen an einem einfachen Schalter oder einer Zeitschaltuhr.
danger-dimmer_mismatch-do-now-4 = Ein Dimmer, der brummt, flackert oder heiß wird, kommt weg.
danger-dimmer_mismatch-asked = Nein: Nur Wärmelampen, die glühen, und Keramikstrahler kann man dimmen. Der Dimmer passt zu Art und Watt; UV kommt an eine Zeitschaltuhr.
danger-dimmer_mismatch-why = Eine gedimmte Entladungslampe flackert, überhitzt ihr Vorschaltgerät oder geht aus; wie viel UV sie gibt, weiß dann niemand mehr.

## sun_on_glass
danger-sun_on_glass-title = Nimm das Terrarium aus der Sonne
danger-sun_on_glass-do-now-1 = Stell das Terrarium jetzt aus der Sonne und öffne es.
danger-sun_on_glass-do-now-2 = Schalte die Lampen aus.
danger-sun_on_glass-do-now-3 = Sperrt das Tier das Maul auf oder ist schlaff: Kühl es langsam.
danger-sun_on_glass-asked = Niemals: kein Terrarium aus Glas oder Kunststoff in die Sonne. Auch nicht kurz oder hinter einem Fenster, das kein UVB durchlässt.
danger-sun_on_glass-why = In einem geschlossenen Glaskasten wird es in einer halben Stunde um etwa { DIFF($sun_gain) } wärmer; Echsen verlieren bei { TEMP($too_hot, form: "range") } die Kontrolle über ihren Körper.

## locked_in_heat
danger-locked_in_heat-title = Stecker ziehen, Terrarium öffnen
danger-locked_in_heat-do-now-1 = Zieh jetzt den Stecker von allem, was heizt.
danger-locked_in_heat-do-now-2 = Öffne das Terrarium oder brich das Schloss auf.
danger-locked_in_heat-do-now-3 = Geht es nicht auf, trag es in ein kühles Zimmer.
danger-locked_in_heat-asked = Nur mit einem Thermostat und einem Thermometer mit Alarm. Und mit einem Schlüssel, den alle zu Hause finden.
danger-locked_in_heat-why = Es zählen Minuten: Mit einer Lampe an und ohne Ausweg wird es im Terrarium heißer als { TEMP($deadly) }.

## box_too_hot
danger-box_too_hot-title = Alles aus, was heizt, Terrarium auf
danger-box_too_hot-do-now-1 = Schalte jetzt alles aus, was heizt, und öffne das Terrarium.
danger-box_too_hot-do-now-2 = Bring das Tier in ein kühleres Zimmer oder gib ihm Schatten.
danger-box_too_hot-do-now-3 = Warte nicht, bis die Lampe neu eingestellt ist.
danger-box_too_hot-asked = Lass immer einen Platz so warm wie die kühle Seite. Sichere alles, was das Terrarium überhitzen kann, mit Thermostat oder Alarm.
danger-box_too_hot-later-title = Mach es heute kühler
danger-box_too_hot-later-do-now-1 = Mach es heute kühler: Häng die Lampe höher oder nimm eine kleinere.
danger-box_too_hot-later-do-now-2 = Lass dem Tier immer einen kühlen, schattigen Platz.
danger-box_too_hot-why = Ohne kühlen Platz kann sich ein Tier nicht retten; Echsen verlieren bei { TEMP($too_hot, form: "range") } die Kontrolle über ihren Körper.

## water_too_hot
danger-water_too_hot-title = Wasserheizung aus, langsam kühlen
danger-water_too_hot-do-now-1 = Schalte jetzt die Wasserheizung und die Lampen aus.
danger-water_too_hot-do-now-2 = Gib ihm Schatten, und lass einen Ventilator über das Wasser blasen.
danger-water_too_hot-do-now-3 = Kühle langsam, über Stunden. Kein Eis.
danger-water_too_hot-asked = Lass immer ein Thermometer im Wasser. Seine Heizung hat einen eigenen Thermostat. Halte für heiße Tage Ventilator oder kühles Zimmer bereit.
danger-water_too_hot-later-title = Kühle heute das Wasser
danger-water_too_hot-later-do-now-1 = Kühle heute das Wasser: Wasserheizung aus, Schatten, Ventilator darüber.
danger-water_too_hot-later-do-now-2 = Kühle langsam, über Stunden. Kein Eis.
danger-water_too_hot-why = Was im Wasser lebt, kann es nicht verlassen, und warmes Wasser hält weniger Sauerstoff.

## uv_too_strong
danger-uv_too_strong-title = Schalte die UV-Röhre jetzt aus
danger-uv_too_strong-do-now-1 = Schalte die UV-Röhre jetzt aus, bis sie richtig hängt.
danger-uv_too_strong-do-now-2 = Lass die Wärme an.
danger-uv_too_strong-asked = Halte jede Röhre mindestens { LENGTH($nearest) } vom Rücken weg.
danger-uv_too_strong-later-title = Gib dem UV heute mehr Abstand
danger-uv_too_strong-later-do-now-1 = Gib der UV-Röhre heute mehr Abstand, oder nimm eine schwächere.
danger-uv_too_strong-later-do-now-2 = Lass die Wärme an.
danger-uv_too_strong-one-lamp-title = Schalte diese Lampe jetzt aus
danger-uv_too_strong-one-lamp-do-now-1 = Schalte diese Lampe jetzt aus, bis sie richtig hängt.
danger-uv_too_strong-one-lamp-do-now-2 = Halte das Tier ohne sie warm.
danger-uv_too_strong-one-lamp-do-now-3 = Nimm Wärme ohne Licht mit Thermostat, oder ein warmes Zimmer.
danger-uv_too_strong-one-lamp-do-now-4 = Ihr UV und ihre Wärme kommen aus einer Lampe.
danger-uv_too_strong-one-lamp-later-title = Gib dieser Lampe heute mehr Abstand
danger-uv_too_strong-one-lamp-later-do-now-1 = Gib dieser Lampe heute mehr Abstand.
danger-uv_too_strong-one-lamp-later-do-now-2 = Das nimmt auch Wärme weg: Miss die Fläche am Sonnenplatz neu.
danger-uv_too_strong-why = Zu nah oder zu stark, und bei zu kurzer Wellenlänge, verbrennt UV Augen und Haut von Reptilien innerhalb von Tagen.

## uv_wrong_animal
danger-uv_wrong_animal-title = Schalte die starke Röhre heute aus
danger-uv_wrong_animal-do-now-1 = Schalte die starke Röhre heute aus.
danger-uv_wrong_animal-do-now-2 = Häng eine schwächere auf, oder diese viel weiter weg.
danger-uv_wrong_animal-do-now-3 = Gib ihm tiefen Schatten zur Wahl.
danger-uv_wrong_animal-do-now-4 = Nachtaktive, albinotische, sehr junge und frisch gehäutete Tiere bekommen am wenigsten UV.
danger-uv_wrong_animal-asked = Nur eine schwache, weit weg, über einem Teil des Terrariums. Tiefer Schatten ist in Reichweite. Fang niedrig an und miss nach.
danger-uv_wrong_animal-why = Haut und Augen ohne Pigment lassen viel mehr UV hinein.

## overheated
danger-overheated-title = Alles aus, was heizt, langsam kühlen
danger-overheated-do-now-1 = Schalte jetzt alles aus, was heizt, und kühl das Tier langsam.
danger-overheated-do-now-2 = Bring es in ein kühleres Zimmer.
danger-overheated-do-now-3 = Leg nasse, lauwarme (nicht kalte) Tücher locker um das Tier.
danger-overheated-do-now-4 = Nimm kein Eis und kein kaltes Wasser.
danger-overheated-asked = Ein offenes Maul unter der Lampe kühlt. Ein offenes Maul am kühlsten Platz ist ein Notfall.
danger-overheated-why = Ein offenes Maul am kühlsten Platz heißt, dass es die Hitze nicht loswird. Schäden an Organen zeigen sich später.

## too_cold
danger-too_cold-title = Wärm es langsam auf
danger-too_cold-do-now-1 = Wärm das Tier jetzt langsam auf, über einige Stunden.
danger-too_cold-do-now-2 = Zuerst ein warmes Zimmer, dann die Wärme seiner kühlen Seite.
danger-too_cold-do-now-3 = Nie direkt unter eine Lampe, auf eine Matte oder in heißes Wasser.
danger-too_cold-asked = Gib in zu kalten Nächten Wärme ohne Licht. Nimm ein Thermometer, das sich den tiefsten Wert merkt.
danger-too_cold-later-title = Bring es heute in ein wärmeres Zimmer
danger-too_cold-later-do-now-1 = Bring es heute in ein wärmeres Zimmer, noch vor der Nacht.
danger-too_cold-later-do-now-2 = Ist es schlaff oder steif, wärm es langsam auf.
danger-too_cold-why = Bei { TEMP($stiff, form: "range") } können sich Echsen nicht mehr umdrehen; schnelle Hitze verbrennt kalte Haut.

## not_moving
danger-not_moving-title = Ruf jetzt die Tierarztpraxis an
danger-not_moving-do-now-1 = Ruf jetzt eine reptilienkundige Tierarztpraxis an.
danger-not_moving-do-now-2 = Miss auf dem Weg, wie warm es im Terrarium ist.
danger-not_moving-do-now-3 = Zu heiß? Kühl es. Kalt? Wärm es langsam.
danger-not_moving-do-now-4 = Fass das Tier so wenig wie möglich an.
danger-not_moving-asked = Schlaff oder ohne Reaktion: immer ein Fall für die Tierarztpraxis. In derselben Stunde.
danger-not_moving-why = Hitze, Kälte, Kalziummangel und Krankheit sehen von außen gleich aus.

## breathing
danger-breathing-title = Ruf heute die Tierarztpraxis an
danger-breathing-do-now-1 = Ruf heute eine reptilienkundige Tierarztpraxis an.
danger-breathing-do-now-2 = Lass es in Ruhe, bei seiner gewohnten Wärme.
danger-breathing-do-now-3 = Bade es nicht.
danger-breathing-asked = Pfeifen, Bläschen oder ein offenes Maul am kühlen Platz: Tierarztpraxis. Noch am selben Tag.
danger-breathing-why = Atmen mit offenem Maul ist bei Reptilien ein spätes Zeichen; wer wartet, verschlechtert die Aussichten.

## prolapse
danger-prolapse-title = Tierarztpraxis anrufen, nass halten
danger-prolapse-do-now-1 = Ruf jetzt eine reptilienkundige Tierarztpraxis an; halte nass, was heraushängt.
danger-prolapse-do-now-2 = Nimm sauberes, lauwarmes Wasser oder ein feuchtes, sauberes Tuch.
danger-prolapse-do-now-3 = Drück es nicht zurück, zieh nicht daran, schneid nichts ab.
danger-prolapse-do-now-4 = Setz das Tier auf nasses Küchenpapier.
danger-prolapse-asked = Hängt etwas aus der Kloake und geht nicht zurück: ein Notfall. Hilfe in derselben Stunde.
danger-prolapse-why = Gewebe außerhalb des Körpers trocknet aus und stirbt in Stunden ab.

## tremor
danger-tremor-title = Ruf jetzt die Tierarztpraxis an
danger-tremor-do-now-1 = Ruf jetzt eine reptilienkundige Tierarztpraxis an.
danger-tremor-do-now-2 = Halte es warm, niedrig und ruhig, und lass es nicht klettern.
danger-tremor-do-now-3 = Gib ihm nichts ohne die Tierarztpraxis.
danger-tremor-asked = Zuckende Zehen oder Beine sind ein Fall für die Tierarztpraxis. Noch am selben Tag.
danger-tremor-why = Zittern, Zucken oder nachgezogene Beine können heißen, dass es viel zu wenig Kalzium im Blut hat.

## animal_burn
danger-animal_burn-title = Weg von der Hitze, Praxis anrufen
danger-animal_burn-do-now-1 = Nimm das Tier jetzt von der Hitze weg und schalte sie aus.
danger-animal_burn-do-now-2 = Kühl eine frische Verbrennung mit kühlem (nicht kaltem), sauberem Wasser.
danger-animal_burn-do-now-3 = Danach sauberes Küchenpapier als Einstreu; keine Creme, kein Eis.
danger-animal_burn-asked = Jede Verbrennung gehört in die Tierarztpraxis. Es kann Tage dauern, bis man sieht, wie tief sie ist.
danger-animal_burn-why = Verbrennungen bei Reptilien zeigen sich manchmal erst nach mehreren Tagen und infizieren sich leicht.

## trauma
danger-trauma-title = Ruf heute die Tierarztpraxis an
danger-trauma-do-now-1 = Ruf heute eine reptilienkundige Tierarztpraxis an.
danger-trauma-do-now-2 = Es blutet? Drück ein sauberes Tuch darauf.
danger-trauma-do-now-3 = Setz das Tier in eine kleine dunkle Box und halte es ruhig.
danger-trauma-do-now-4 = Lampe aus, wenn eine Lampe oder Glas es war.
danger-trauma-asked = Wunden, Bisse und gebrochene Beine gehören am selben Tag in die Tierarztpraxis.
danger-trauma-why = Weiche Knochen brechen leicht, wo Licht oder Kalzium fehlt; Wunden infizieren sich.

## egg_bound
danger-egg_bound-title = Ruf heute die Tierarztpraxis an
danger-egg_bound-do-now-1 = Ruf heute eine reptilienkundige Tierarztpraxis an.
danger-egg_bound-do-now-2 = Lass sie in Ruhe, mit einem warmen, feuchten Platz zum Graben.
danger-egg_bound-do-now-3 = Drück nicht auf ihren Bauch.
danger-egg_bound-asked = Gib ihr einen Platz zum Graben, bevor sie ihn braucht. Pressen oder Schwäche gehört in die Tierarztpraxis.
danger-egg_bound-why = Eier können wochenlang ohne Zeichen im Bauch bleiben, aber mit Pressen, mit Schwäche oder wenn sie nach einigen Eiern aufhört, muss sie in die Tierarztpraxis.

## eyes_after_uv
danger-eyes_after_uv-title = UV aus, heute zur Tierarztpraxis
danger-eyes_after_uv-do-now-1 = Schalte die UV-Lampe jetzt aus und lass die Wärme an.
danger-eyes_after_uv-do-now-2 = Gib keine Tropfen in die Augen.
danger-eyes_after_uv-do-now-3 = Schreib auf: Lampe, Abstand und den Tag, an dem sie gewechselt wurde.
danger-eyes_after_uv-asked = Augen, die nach einer neuen Lampe zugehen: zuerst Lampe aus. Dann in die Tierarztpraxis.
danger-eyes_after_uv-one-lamp-title = Lampe jetzt aus, heute zur Praxis
danger-eyes_after_uv-one-lamp-do-now-1 = Schalte diese Lampe jetzt aus.
danger-eyes_after_uv-one-lamp-do-now-2 = Halte das Tier ohne sie warm.
danger-eyes_after_uv-one-lamp-do-now-3 = Nimm Wärme ohne Licht mit Thermostat, oder ein warmes Zimmer.
danger-eyes_after_uv-one-lamp-do-now-4 = Gib keine Tropfen in die Augen.
danger-eyes_after_uv-one-lamp-do-now-5 = Schreib auf: Lampe, Abstand und den Tag, an dem sie gewechselt wurde.
danger-eyes_after_uv-one-lamp-do-now-6 = Ihr UV und ihre Wärme kommen aus einer Lampe.
danger-eyes_after_uv-why = Zu viel oder zu kurzwelliges UV entzündet Augen und Haut; in einem veröffentlichten Fall verschwanden die Zeichen, als die neuen Lampen weg waren.

## eyes
danger-eyes-title = Ruf diese Woche die Tierarztpraxis an
danger-eyes-do-now-1 = Ruf diese Woche eine reptilienkundige Tierarztpraxis an.
danger-eyes-do-now-2 = Ist die UV-Lampe neu, näher oder stärker als vorher?
danger-eyes-do-now-3 = Dann schalte sie aus, bis die Tierarztpraxis nachgesehen hat.
danger-eyes-then-1 = Bis dahin: Halte es so warm wie sonst, und zwing ihm weder Futter noch Wasser auf.
danger-eyes-asked = Am Tag geschlossene oder geschwollene Augen gehören in die Tierarztpraxis. Innerhalb von Tagen.
danger-eyes-why = UV ist eine Ursache von vielen: Häutung, Infektion, Vitamin A, trockene Luft.

## soft_bones
danger-soft_bones-title = Ruf diese Woche die Tierarztpraxis an
danger-soft_bones-do-now-1 = Ruf diese Woche eine reptilienkundige Tierarztpraxis an.
danger-soft_bones-do-now-2 = Fass es sanft an und nah am Boden.
danger-soft_bones-do-now-3 = Richtiges UV hilft ab jetzt, heilt aber nicht, was weich ist.
danger-soft_bones-asked = Richtiges UV im richtigen Abstand, Wärme und Kalzium beugen vor. Ein weicher Kiefer oder krumme Beine gehören in die Tierarztpraxis.
danger-soft_bones-why = Ein weicher Kiefer, krumme oder geschwollene Beine und Schwäche sind die klaren Zeichen der metabolischen Knochenerkrankung.

## ill
danger-ill-title = Ruf diese Woche die Tierarztpraxis an
danger-ill-do-now-1 = Ruf diese Woche eine reptilienkundige Tierarztpraxis an.
danger-ill-do-now-2 = Miss inzwischen Sonnenplatz und kühle Seite.
danger-ill-then-1 = Bis dahin: Halte es so warm wie sonst, und zwing ihm weder Futter noch Wasser auf.
danger-ill-asked = Nicht fressen, abnehmen oder tagelang herumliegen gehört in die Tierarztpraxis.
danger-ill-why = Reptilien verbergen Krankheit, und falsche Wärme ist oft mit schuld.

## power_cut_cold
danger-power_cut_cold-title = Alles ausstecken, Terrarium einpacken
danger-power_cut_cold-do-now-1 = Zieh jetzt den Stecker jeder Lampe und jeder Heizung.
danger-power_cut_cold-do-now-2 = Schließ die Lüftung und leg Decken um die Seiten.
danger-power_cut_cold-do-now-3 = Nimm keine Kerzen und keinen Kocher.
danger-power_cut_cold-do-now-4 = Kleine, junge und tropische Tiere kommen ins wärmste Zimmer.
danger-power_cut_cold-do-now-5 = Oder trag sie in einem Stoffbeutel nah am Körper.
danger-power_cut_cold-then-1 = Ein gesundes erwachsenes Tier übersteht eine kühle Nacht.
danger-power_cut_cold-then-2 = Flaschen mit warmem (nicht heißem) Wasser, in ein Handtuch gewickelt, kommen neben das Tier und nie darunter.
danger-power_cut_cold-then-3 = Ist der Strom wieder da: Schalte die Lampen eine nach der anderen ein und beobachte jede eine Stunde lang.
danger-power_cut_cold-asked = Halte Decken, Flaschen für warmes Wasser und eine Box mit Deckel bereit. Frag, welche Nacht für dein Tier zu kalt ist.
danger-power_cut_cold-why = Terrarien verlieren ihre Wärme in einer bis wenigen Stunden; Lampen, die unter einer Decke wieder angehen, lösen Brände aus.

## power_cut_hot
danger-power_cut_hot-title = Terrarium ins kühlste Zimmer
danger-power_cut_hot-do-now-1 = Bring das Terrarium jetzt ins kühlste Zimmer und öffne es.
danger-power_cut_hot-do-now-2 = Halte es aus der Sonne und steck jede Lampe aus.
danger-power_cut_hot-do-now-3 = Leg ein feuchtes Tuch über einen Teil des Gitters.
danger-power_cut_hot-do-now-4 = Lass bewegte Luft hinein.
danger-power_cut_hot-asked = Such vorher das kühlste Zimmer im Haus. Lass Lampen ausgesteckt, bis das Zimmer wieder kühl ist.
danger-power_cut_hot-later-title = Kühl heute das Zimmer
danger-power_cut_hot-later-do-now-1 = Kühl heute das Zimmer, oder stell das Terrarium in ein kühleres.
danger-power_cut_hot-later-do-now-2 = Halte es aus der Sonne und lass bewegte Luft hinein.
danger-power_cut_hot-why = Das Terrarium kann nicht kühler sein als das Zimmer; nur ein anderes Zimmer, Schatten und feuchte Tücher helfen.

## night_too_cold
danger-night_too_cold-title = Heute Nacht in ein wärmeres Zimmer
danger-night_too_cold-do-now-1 = Bring das Tier heute Nacht in ein wärmeres Zimmer.
danger-night_too_cold-do-now-2 = Eine so kalte Nacht kann es töten.
danger-night_too_cold-do-now-3 = Eine Heizung im Terrarium reicht vielleicht nicht.
danger-night_too_cold-asked = Wärme ohne Licht, mit Thermostat, hält die Nacht über der Grenze. Unter etwa { TEMP($cold_room) } im Zimmer hilft nur ein wärmeres Zimmer.
danger-night_too_cold-why = Reptilien aus warmen Ländern verlieren bei { TEMP($stiff, form: "range") } die Kontrolle über ihren Körper.

## no_shade
danger-no_shade-title = Gib ihm heute Schatten
danger-no_shade-do-now-1 = Gib dem Tier heute Schatten: ein Versteck an der kühlen Seite.
danger-no_shade-do-now-2 = Und dichte Deckung unter der Hälfte der Röhre.
danger-no_shade-do-now-3 = Bis dahin: Lampe kürzer an, oder die Wärme dimmen, nicht das UV.
danger-no_shade-asked = Nein: kein Terrarium ohne einen Platz fern von Licht und Hitze.
danger-no_shade-why = Ein Tier bestimmt seine Dosis selbst, indem es hinein- und hinausgeht; ohne Schatten kann es das nicht.

## light_all_day
danger-light_all_day-title = Heute Nacht alle Lichter aus
danger-light_all_day-do-now-1 = Schalte heute Nacht jedes Licht aus.
danger-light_all_day-do-now-2 = Eine Zeitschaltuhr macht das: etwa 12 Stunden an, 12 Stunden dunkel.
danger-light_all_day-do-now-3 = Ist das Zimmer zu kalt, nimm eine Heizung ohne Licht.
danger-light_all_day-asked = Nein: Kein Tier bekommt rund um die Uhr Licht. Gegen kalte Nächte hilft Wärme ohne Licht.
danger-light_all_day-why = Bei Dauerlicht war das nächtliche Melatonin einer Echse fast weg; so kann sie nicht schlafen.

## colour_at_night
danger-colour_at_night-title = Lass die Lampe heute Nacht aus
danger-colour_at_night-do-now-1 = Lass diese Lampe heute Nacht aus.
danger-colour_at_night-do-now-2 = Auch rote, blaue, violette und Mondlicht-Lampen sind Licht.
danger-colour_at_night-do-now-3 = Wird das Zimmer zu kalt, nimm Wärme ohne Licht mit Thermostat.
danger-colour_at_night-asked = Nein: Es sieht dieses Licht. Nimm Wärme ohne Licht mit Thermostat, wenn das Zimmer zu kalt ist.
danger-colour_at_night-why = Reptilien sehen rotes und blaues Licht; Licht in der Nacht stört den Schlaf.

## no_uv_through_glass
danger-no_uv_through_glass-title = Nimm das Glas aus dem Weg
danger-no_uv_through_glass-do-now-1 = Nimm Glas und klaren Kunststoff unter der UV-Röhre weg.
danger-no_uv_through_glass-do-now-2 = Sie halten UVB auf: Nichts Nützliches erreicht das Tier.
danger-no_uv_through_glass-do-now-3 = Häng die Röhre ins Terrarium oder über offenes Metallgitter.
danger-no_uv_through_glass-do-now-4 = Ermittle den Abstand neu und beginn am weiten Ende.
danger-no_uv_through_glass-asked = Nein: Glas oder Kunststoff unter der Röhre hält alles UVB auf. Häng sie über offenes Gitter oder hinein.
danger-no_uv_through_glass-why = In Messungen hielt jede Scheibe alles UVB auf.

## too_hot_wish
danger-too_hot_wish-title = Stell den Platz auf sein Maß ein
danger-too_hot_wish-do-now-1 = Nein: Das ist zu heiß für dieses Tier und würde es verbrennen.
danger-too_hot_wish-do-now-2 = Stell den Sonnenplatz auf seinen eigenen Bereich ein.
danger-too_hot_wish-do-now-3 = Miss nach zwei Stunden noch einmal.
danger-too_hot_wish-asked = Nein: Das ist zu heiß und würde dieses Tier verbrennen. Stell den Sonnenplatz auf seinen eigenen Bereich und miss nach zwei Stunden.
danger-too_hot_wish-why = Ich rechne nicht aus, wie man einen Platz macht, den ich dich abschalten ließe.
