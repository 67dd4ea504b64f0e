### Was auf eine Frage in eigenen Worten gesagt wird, die nicht gleich beantwortet wird.

ask-title-which = Was davon meinst du?
ask-for-one = Für { NAME($animal, form: "acc") }: { $told }
ask-only-for = Das gilt nur für { NAME($animal, form: "acc") }.
ask-title-this = Meinst du das?
ask-title-beyond = Keine Frage für mich

## Mehrere Fragen können gemeint sein
ask-unsure = Ich bin nicht sicher, was du meinst. Was davon ist es?
ask-unsure-this = Ich bin nicht sicher, was du meinst. Ist es das?
ask-offer = { $purpose }: { $example }
ask-where = Wo liest du das ab? Jeder Platz hat seinen eigenen Bereich.
ask-where-basking = Am Sonnenplatz: { $example }
ask-where-cool = In der Luft der kühlen Seite: { $example }
ask-where-room = Nachts im Zimmer: { $example }
ask-read = Mehr dazu: { $example }
ask-read-of = Lies: { $title }
ask-about-lamp = Zu { NAME($lamp, form: "dat") }: { $example }

## Etwas fehlt
ask-missing = { $count ->
    [1] Eins fehlt mir noch. Sag mir: { LIST($things, join: "list-semi") }.
    [2] Zweierlei fehlt mir noch. Sag mir: { LIST($things, join: "list-semi") }.
    [3] Dreierlei fehlt mir noch. Sag mir: { LIST($things, join: "list-semi") }.
   *[other] Einiges fehlt mir noch. Sag mir: { LIST($things, join: "list-semi") }.
  }
ask-which = welches es ist: { LIST($here, join: "list-or") }{ $more ->
    [yes] , oder ein anderes mit eigenem Namen
   *[no] {""}
  }
ask-which-both = welches es ist: { LIST($here, join: "list-or") } (zu den anderen fehlen mir Zahlen)
ask-example = Zum Beispiel: { $example }
ask-or = Oder meintest du: { $example }
ask-line = { $example }

## Etwas ist angenommen

## Was nichts für mich ist
ask-beyond = Dabei kann ich nicht helfen. Ich rechne nur UV-Licht, Wärme, Nächte und Lichtstunden aus. Frag damit die Leute in deiner Gruppe.
ask-what-i-can = Was ich dir sagen kann: { $example }
ask-all-of-mine = Alle meine Fragen: help

## Wofür jede Frage ist
ask-purpose-air = Wie viel Watt das ganze Terrarium warm halten
ask-purpose-arrange = Wie die Lampen hängen sollen
ask-purpose-basking = Wie der Sonnenplatz wärmer oder kühler wird
ask-purpose-bright = Wie hell der Sonnenplatz ist
ask-purpose-check = Ein ganzes Terrarium prüfen lassen
ask-purpose-compare = Welche von zwei Röhren richtig ist
ask-purpose-convert = Zoll in cm, °F in °C
ask-purpose-decline = Ob eine Röhre zu alt ist
ask-purpose-distance = Wie weit weg die UV-Röhre gehört
ask-purpose-hours = Wie viele Stunden Licht am Tag
ask-purpose-lamp = Wofür eine Art Lampe gut ist
ask-purpose-meter = Was deine UV-Messwerte sagen
ask-purpose-needs = Was dein Tier braucht, UV und Wärme
ask-purpose-next = Was dein nächster Schritt ist
ask-purpose-night = Ob die Nacht zu kalt ist
ask-purpose-outdoors = Was echte Sonne an deinem Ort gibt
ask-purpose-plan = Ein ganzes Terrarium planen
ask-purpose-surface = Wie heiß eine Fläche wirklich ist
ask-purpose-temps = Was deine Temperaturen bedeuten
ask-purpose-tube = Welche Röhre du nimmst, und wo sie hängt
ask-purpose-uvi = Wie stark das UV in einem Abstand ist
ask-purpose-watts = Wie viel Watt die Wärmelampe braucht
ask-purpose-section = Wo das UV im Terrarium hinkommt und wo Schatten ist
ask-purpose-dose = Wie viel UV ein Tag unter der Röhre gibt
ask-purpose-card = Eine Tabelle der Abstände für dein Tier
