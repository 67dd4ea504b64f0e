### Facts: Preferred
### How a keeper wants to be answered.

mine-prefer-title = How you want to be answered
mine-prefer-kept = Kept. It goes before what a server has set.
mine-prefer-now = This is how it is set now.
mine-prefer-label-units = First unit
mine-prefer-units = { $units ->
    [in] inches and °F
    [cm] centimetres and °C
   *[none] not set
  }
mine-prefer-label-language = Language
mine-prefer-language = { $language ->
    [english] English
    [german] Deutsch
   *[none] as your Discord is set
  }
mine-prefer-label-zone = Time zone
mine-prefer-zone = { $zone ->
    [none] not set, so I tell moments in UTC
   *[some] { $zone }
  }
mine-prefer-step = Change it: mine prefer units:cm language:de zone:Europe/Berlin
