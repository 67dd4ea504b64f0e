### Wie jemand seine Antworten will.

mine-prefer-title = Wie du deine Antworten willst
mine-prefer-kept = Gemerkt. Das gilt vor dem, was ein Server eingestellt hat.
mine-prefer-now = So ist es gerade eingestellt.
mine-prefer-label-units = Erste Einheit
mine-prefer-units = { $units ->
    [in] Zoll und °F
    [cm] Zentimeter und °C
   *[none] nicht eingestellt
  }
mine-prefer-label-language = Sprache
mine-prefer-language = { $language ->
    [english] English
    [german] Deutsch
   *[none] wie in deinem Discord
  }
mine-prefer-label-zone = Zeitzone
mine-prefer-zone = { $zone ->
    [none] nicht eingestellt, Zeiten nenne ich in UTC
   *[some] { $zone }
  }
mine-prefer-step = Ändern: mine prefer units:cm language:de zone:Europe/Berlin
