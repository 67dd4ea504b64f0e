### Messwerte, die weggenommen sind.

mine-unread-title = Messwerte von „{ $name }“ am { DAY($day) }
mine-unread-head = { $gone ->
    [0] An dem Tag gab es keine.
    [one] { $gone } Messwert ist weg.
   *[other] { $gone } Messwerte sind weg.
  }
mine-unread-step = Sieh den Verlauf an: mine show name:{ $name }
