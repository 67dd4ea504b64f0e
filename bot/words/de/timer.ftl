### Ein Zeitplan für alle Terrarien.

timer-title = Ein Zeitplan für alle
timer-same = { $count ->
    [one] Ein Terrarium, eine Zeitschaltuhr.
   *[other] Eine Zeitschaltuhr reicht für alle { $count }.
  }
timer-differ = Sie brauchen verschiedene Zeiten: je eine Uhr.
timer-times = { $same ->
    [yes] An um { CLOCK($on) }, aus um { CLOCK($off) }: { HOURS($lit) }.
   *[no] Das erste geht um { CLOCK($on) } an, das letzte um { CLOCK($off) } aus.
  }
timer-unknown = { $unknown ->
    [one] Bei { $unknown } davon kenne ich keine Zeiten und nahm 12 Stunden.
   *[other] Bei { $unknown } davon kenne ich keine Zeiten und nahm 12 Stunden.
  }
timer-do = UV, Wärme und Licht gehen zusammen an und aus.
timer-step-lamps = Häng alle Lampen eines Terrariums an seine Zeitschaltuhr, und lass nachts keine an. Ein Thermostat für die Nacht behält seine eigene Steckdose.
timer-step-season = Für Jahreszeiten frag nach einem Tier: hours latitude:home
timer-column-box = Terrarium
timer-column-on = An
timer-column-off = Aus
timer-column-lamps = An dieser Uhr
timer-box = { $name }{ $animal ->
    [none] {""}
   *[some] , { NAME($animal) }
  }
timer-on = { CLOCK($on) }
timer-off = { CLOCK($off) }
timer-lamps = { $uv ->
    [yes] UV-Lampe, { $warm ->
        [yes] Spotlampe, Licht
       *[no] Licht
      }
   *[no] { $warm ->
        [yes] Spotlampe, Licht
       *[no] Licht
      }
  }
timer-why = Wo sich die Zeiten aller Tiere treffen, bekommen alle dieselben, so nah an 12 Stunden, wie sie es zulassen. Sonst bekommt jedes seine eigenen um denselben Mittag. Sieh nach einem Stromausfall nach der Uhr.
timer-night = Dann angeschaltet brennen Lampen in der Nacht.
