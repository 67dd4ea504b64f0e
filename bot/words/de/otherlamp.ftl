### Eine UV-Lampe, zu der es keine Zahlen gibt.

otherlamp-title-t5_ho = T5-HO-Röhre: nur mit UV-Messgerät
otherlamp-title-other_tube = T8 oder andere Röhre: nur mit UV-Messgerät
otherlamp-title-compact = Kompaktlampe: nur mit UV-Messgerät
otherlamp-title-metal_halide = Metalldampflampe: nur mit UV-Messgerät
otherlamp-title-mercury = Quecksilberdampflampe: nur mit UV-Messgerät
otherlamp-title-led = LED-Leiste: nur mit UV-Messgerät
otherlamp-title-unknown = Unbekannte Lampe: nur mit UV-Messgerät

## Die Antwort in Kürze
otherlamp-head = Hier hilft nur ein UV-Messgerät.
otherlamp-why-short-t5_ho = Dazu habe ich keine Zahlen.
otherlamp-why-short-other_tube = Zahlen habe ich nur zu T5-HO-Röhren.
otherlamp-why-short-compact = Zu Kompaktlampen fehlen mir Zahlen.
otherlamp-why-short-metal_halide = Zu Metalldampf fehlen mir Zahlen.
otherlamp-why-short-mercury = Zu Quecksilberdampf fehlen mir Zahlen.
otherlamp-why-short-led = Zu UV-LEDs fehlen mir Zahlen.
otherlamp-why-short-unknown = Ich weiß nicht, was für eine es ist.
otherlamp-do-start = Fang bei { LENGTH($start) } an.
otherlamp-do-nearer = { $wanted ->
    [none] Näher nur mit Messgerät, nie unter { LENGTH($nearest) }.
   *[some] Näher, bis das Messgerät { UVI($wanted, form: "range") } zeigt, nie unter { LENGTH($nearest) }.
  }

## Warum
otherlamp-why-t5_ho = Zu dieser Lampe habe ich keine Zahlen.
otherlamp-why-other_tube = Sie gibt weniger UV als eine T5-HO-Röhre mit demselben Aufdruck, und wie viel weniger, ist bei jeder anders.
otherlamp-why-compact = Ihr UV ist ganz nah stark und ein wenig weiter weg schwach.
otherlamp-why-metal_halide = Sie ist stark, und ihr UV und ihre Wärme kommen aus einer kleinen Stelle.
otherlamp-why-mercury = Sie ist stark, und ihr UV und ihre Wärme kommen aus einer kleinen Stelle. Dimm sie nie.
otherlamp-why-led = Sie sind neu, und jede gibt ganz anderes UV als die nächste.
otherlamp-why-unknown = Ohne ihre Art und Stärke kann ich nichts ausrechnen.
otherlamp-why-t5 = Die Abstände, die ich kenne, sind die von T5-HO-Röhren. Sie gelten für keine andere Lampe.

## Schritte
otherlamp-step-warm-up = Nimm dein Tier aus ihrem Licht. Lass die Lampe 30 Minuten an und mach andere Lampen aus.
otherlamp-step-hold = Halt den Sensor auf Rückenhöhe zur Lampe hin, { LENGTH($start) } entfernt. Geh Handbreite um Handbreite näher, bis er { $wanted ->
    [none] zeigt, was dein Tier braucht
   *[some] UV-Index { UVI($wanted, form: "range") } zeigt
  }. Hör bei { LENGTH($nearest) } auf, egal was er zeigt. Schon bei { LENGTH($start) } mehr? Mach sie aus: Hier ist sie zu stark.
otherlamp-step-heat = Miss auch die Oberfläche am Sonnenplatz mit einem Infrarot-Thermometer. Von UV und Wärme entscheidet, was mehr Abstand braucht.
otherlamp-step-write = Schreib drei Messwerte mit ihren Abständen auf und frag dann, etwa: meter readings:4.2 at { LENGTH($first_place, units: "first") }, 2.8 at { LENGTH($second_place, units: "first") }, 2.0 at { LENGTH($third_place, units: "first") } lamp:{ $typed } animal:{ $asked_for }
otherlamp-step-no-meter = Kein Messgerät zu leihen? Nimm stattdessen eine T5-HO-Röhre: Zu denen kenne ich Abstände (frag tube). Bis dahin lass diese Lampe aus.

## Zahlen
otherlamp-label-read = Dein Messwert
otherlamp-read = UV-Index { UVI($read, form: "given") } bei { LENGTH($at) }{ $judged ->
    [none] .
   *[some] { $wanted ->
        [none] : { $judged }.
       *[some] : { $judged }, Ziel { UVI($wanted, form: "range") }.
      }
  } Das gilt für diese Stelle und keine andere. Miss an zwei weiteren Stellen, dann kann ich sagen, wo sie hängen darf.
otherlamp-label-printed = Aufdruck
# Only with: $label
otherlamp-printed = Ich lese { NUMBER($label) } darauf. Bei dieser Art von Lampe sagt die Zahl keinen UV-Index, also rechne ich nichts daraus.
