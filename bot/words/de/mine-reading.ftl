### Messwerte, die aufgeschrieben sind.

mine-reading-title = Messwerte von „{ $name }“ am { DAY($day) }
mine-reading-head = { $count ->
    [one] { $count } Messwert ist aufgeschrieben.
   *[other] { $count } Messwerte sind aufgeschrieben.
  }
mine-reading-replaced = Ersetzt
mine-reading-step-show = Sieh den Verlauf an: mine show name:{ $name }
mine-reading-step-unread = Nimm sie wieder weg: mine unread name:{ $name } day:{ $typed_day }
mine-reading-step-offer = Darf deine Gruppe den UV-Index auch haben, ohne deinen Namen? Sieh zuerst, was sie bekäme: mine offer name:{ $name }
