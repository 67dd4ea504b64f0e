### Der eine nächste Schritt: erst Gefahr, dann was falsch oder offen ist, dann der Weg nach oben.

next-title = Dein nächster Schritt

## Die Antwort in Kürze
next-head-hides = Als Nächstes: zwei Verstecke.
next-head-together = Als Nächstes: Lampe neben die Röhre.
next-head-meter = Als Nächstes: UV-Index messen.
next-head-white_light = Als Nächstes: eine weiße LED-Leiste.
next-head-wide_uv = Als Nächstes: eine zweite Röhre.
next-head-two_heat_lamps = Als Nächstes: zwei kleinere Strahler.
next-head-seasons = Als Nächstes: Stunden nach Jahreszeit.
next-head-plants = Als Nächstes: echte Pflanzen.
next-head-nothing = Nichts. Mir fällt kein Schritt mehr ein.
next-adds-hides = Es ruht im Dunkeln, warm oder kühl.
next-adds-together = Wo es warm ist, sind UV und Licht.
next-adds-meter = Du siehst, was deine Lampe gibt.
next-adds-white_light = Hellere Tage und echte Farben.
next-adds-wide_uv = Der ganze Körper bekommt UV.
next-adds-two_heat_lamps = Ein breiter warmer Fleck.
next-adds-seasons = Ein Jahr wie in seiner Heimat.
next-adds-plants = Deckung, Schatten, feuchtere Luft.
next-adds-nothing = Miss ab und zu nach, und freu dich.
next-rise = { WATTS($power) } wärmen die kühle Seite um { DIFF($rise) }.
next-two = Zwei geben darunter { UVI($two, form: "range") }.
next-patch = UV/Wärme/Licht: { SHARE($now) }, dann { SHARE($then) }.
next-do-hides = Eines an jede Seite, groß genug.
next-do-together = Wärmelampe neben die Röhrenmitte.
next-do-meter = Leih dir ein UV-Messgerät: 3 Plätze.
next-do-white_light = Über die helle Hälfte, an den Timer.
next-do-wide_uv = Neben die erste. Dann UV-Index messen.
next-do-two_heat_lamps = Nebeneinander, je halb so viel Watt.
next-do-seasons = Frag hours mit latitude:home.
next-do-plants = Nur Pflanzen, die ungiftig sind.
next-do-nothing = Schreib deine Messwerte auf.

## Was davor kommt
next-wait-danger = Das kommt vor jedem Schritt nach oben.
next-wait-wrong = Zuerst das. Dann frag mich wieder.
next-wait-open = Finde zuerst heraus, was offen ist.
next-wait-up = Davor steht nichts mehr an.

## Schritte
next-step-hides = Stell ein Versteck an die warme und eines an die kühle Seite, gerade groß genug zum Umdrehen. Eine Korkröhre oder ein halber Blumentopf reicht.
next-step-together = Häng die Wärmelampe gleich neben die Mitte der Röhre, über den Sonnenplatz, beide aus und kalt. Frag arrange, was sich in deinem Terrarium trifft.
next-step-meter = Leih dir ein UV-Messgerät oder frag in deiner Gruppe. Miss auf Höhe des Rückens: am Sonnenplatz, in der Mitte, im Schatten. Frag dann meter mit den Werten.
next-step-white_light = Häng eine weiße LED-Leiste über die helle Hälfte, neben die UV-Röhre. Fang mit 2000 bis 4000 Lumen an. Die Verstecke bleiben dunkel, und sie geht mit den anderen Lampen aus.
next-step-wide_uv = Häng eine zweite, gleiche Röhre neben die erste, eine Handbreit daneben, damit der Fleck breiter wird. Oder nimm eine längere. Es geht um einen breiteren Fleck, nie um mehr Stärke.
next-step-two_heat_lamps = Nimm statt einer Wärmelampe zwei Strahler mit etwa der halben Leistung nebeneinander, damit der Fleck so lang ist wie das Tier. Beide an einen Thermostat oder Dimmer für Lampen.
next-step-seasons = Frag hours latitude:home, mit deiner Zeitzone. Stell die Zeitschaltuhr einmal im Monat um. Wenn du bei Zucht oder Winterruhe unsicher bist, bleib bei 12 Stunden.
next-step-plants = Nimm Pflanzen, die für dein Tier ungiftig sind, und frag bright, welches Licht sie bekommen. Häng nie eine Lampe für eine Pflanze näher.
next-step-nothing = Lass, was da ist. Miss UV, Sonnenplatz und kühle Seite nach jedem Lampenwechsel neu, und jedes halbe Jahr.

## Was danach gemessen wird
next-measure-hides = Danach: wie warm es in beiden Verstecken ist. Das kühle muss so kühl bleiben wie die kühle Seite.
next-measure-together = Danach: die Fläche am Sonnenplatz an fünf Stellen, und dort den UV-Index.
next-measure-meter = Danach: nichts weiter. Heb die Werte auf: Das macht mine reading.
next-measure-white_light = Danach: die kühle Seite nach zwei Stunden, und Lux am Sonnenplatz, in der hellen Hälfte und im Versteck.
next-measure-wide_uv = Danach: den UV-Index am höchsten Platz, den es erklettern kann, am Sonnenplatz und im Schatten.
next-measure-two_heat_lamps = Danach: die Fläche am Sonnenplatz an fünf Stellen, und die kühle Seite nach zwei Stunden.
next-measure-seasons = Danach: die kälteste Stunde der Nacht im kürzesten Monat.
next-measure-plants = Danach: die Luft an der kühlen Seite, und ob ein offener Platz zum Sonnen bleibt.
next-measure-nothing = Nach einer Änderung: was sie verschieben kann.

## Zahlen
next-label-fine = Was schon stimmt
next-fine = nichts von dem, was du genannt hast, ist falsch oder offen
next-label-harm = Was nicht leiden darf
next-harm-hides = die kühle Seite bleibt kühl, der Sonnenplatz bleibt frei
next-harm-together = die Fläche am Sonnenplatz und der UV-Index dort bleiben in ihren Bereichen
next-harm-meter = nichts: Es ändert nichts
next-harm-white_light = die kühle Seite wird { $is_worked_out ->
   *[no] höchstens etwa 1 °C (2 °F) wärmer
    [yes] so viel wärmer wie oben gesagt
  }, Verstecke und Nacht bleiben dunkel
next-harm-wide_uv = der UV-Index bleibt am nächsten Platz im Bereich, und es gibt Schatten
next-harm-two_heat_lamps = der heißeste Punkt bleibt unter der Grenze, die kühle Seite bleibt kühl, und keine Fassung bekommt mehr Watt, als auf ihr steht
next-harm-seasons = nicht unter 10 und nicht über 14 Stunden Licht
next-harm-plants = Schatten und Sonnenplatz bleiben, wie sie sind
next-harm-nothing = nichts
next-label-there = Hast du es schon?
next-there = sag es: there:hides, uv meter

## Warum
next-why-hides = Eine Einrichtung ist nur so gut wie ihr Ausweg. Schatten auf beiden Seiten lässt es Wärme und Licht einzeln wählen.
next-why-together = UV, Wärme und Licht sind die drei Teile der Sonne, und sie zählen da, wo sie sich treffen.
next-why-meter = Alle UV-Zahlen von mir gelten für Lampen einer Klasse. Deine gibt vielleicht ein Drittel mehr oder weniger. Eine Messung zeigt es.
next-why-white_light = UV, Wärme und Licht sind die drei Teile der Sonne. Röhre und Strahler lassen die helle Hälfte so dunkel wie ein Zimmer. Wie viel Lux dein Tier braucht, weiß niemand: Es ist keine Pflicht.
next-why-wide_uv = Unter einer Röhre nimmt das UV zur Seite hin ab. Zwei nebeneinander beleuchten einen Fleck, so breit wie das Tier.
next-why-two_heat_lamps = Eine starke Lampe macht einen heißen Punkt, und ein langer Körper wärmt sich nur an einer Stelle. Zwei schwächere teilen es.
next-why-seasons = In seiner Heimat werden die Tage länger und kürzer. Manche Halter folgen dem, ein gleichmäßiger Tag ist auch gut.
next-why-plants = Pflanzen geben Deckung und brechen das Licht. Ein Versteck ersetzen sie nicht.
next-why-nothing = Ab hier geht es darum, dein Tier zu beobachten, und das kann ich nicht.
next-bar-out = Eine helle Leiste habe ich ausgelassen: { WATTS($power) } würden die kühle Seite um { DIFF($rise) } wärmen, über ihren Bereich. Zuerst muss der Raum kühler werden.
next-uv-out = Eine zweite Röhre habe ich ausgelassen: Direkt darunter gäben zwei einen UV-Index von { UVI($two, form: "range") }, über dem Bereich.
next-why-one = Eine Änderung auf einmal: Dann weißt du, was sie bewirkt hat.
next-why-order = Zuerst kommt die Gefahr, dann Wärme, UV, Schatten und die dunkle Nacht. Helligkeit und alles andere warten, bis das stimmt.

## Vorsicht
next-care-led = Eine weiße LED gibt kein UV, auch keine mit Vollspektrum. Sie ersetzt nie die UV-Röhre.
next-care-led-short = Weiße LED ersetzt nie die UV-Röhre.

## Nichts wurde genannt
next-nothing = Erzähl mir zuerst deine Einrichtung.
next-nothing-needs = Tier, Röhre, Abstand, Temperaturen.
next-nothing-do = Zum Beispiel: next Bartagame, 12% Röhre, kein Gitter, 40cm bis zum Rücken, Sonnenplatz 39C, kühl 26C, Nacht 20C, 12 Stunden.
