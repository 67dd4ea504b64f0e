### Ein Terrarium, das gespeichert ist.

mine-save-title = „{ $name }“ ist { $known ->
    [yes] geändert
   *[no] gespeichert
  }
mine-save-head = { $known ->
    [yes] Geändert. Der Rest bleibt, wie er war.
   *[no] Gespeichert. Nur du kannst es sehen.
  }
mine-save-unclear = Nicht gespeichert

## Schritte
# Only with: $question
mine-save-step-ask = Frag danach: { $question }
mine-save-step-read = Schreib einen Messwert auf: mine reading name:{ $name } uvi:4.2 basking:39C
mine-save-step-remind = Lass dich ans Messen erinnern: remind me about:meter name:{ $name }

## Was nicht gespeichert werden kann
mine-save-beyond = „{ $read }“ kann ich bei { $option } nicht speichern.
# Only with: $high
mine-save-ends-length = { $low ->
    [none] Es geht bis { LENGTH($high) }.
   *[some] Es geht von { LENGTH($low) } bis { LENGTH($high) }.
  }
# Only with: $least, $most
mine-save-ends-tube = Es geht von { SHARE($least, form: "given") } bis { SHARE($most, form: "given") }.
mine-save-ends-screen = Ein Gitter lässt etwas durch.
mine-save-step-try = Versuch: { $example }
