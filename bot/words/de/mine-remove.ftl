### Ein Terrarium, das gelöscht ist.

mine-remove-title = „{ $name }“ ist weg
mine-remove-head = „{ $name }“ ist gelöscht.
mine-remove-with = { $readings ->
    [0] Messwerte hatte es keine. Seine Erinnerungen sind auch weg.
    [one] Sein Messwert und seine Erinnerungen sind auch weg.
   *[other] Seine { $readings } Messwerte und seine Erinnerungen sind auch weg.
  }
mine-remove-step = Was noch da ist: mine list
