### Was die Prüfung vor dem Start sagt.

doctor-state-fine = gut
doctor-state-to_do = zu tun
doctor-state-unknown = nicht geprüft
doctor-part-python = Python
doctor-part-packages = Pakete
doctor-part-folder = Datenordner
doctor-part-clock = Uhr
doctor-part-database = Datenbank
doctor-part-pictures = Bilder
doctor-part-token = Token
doctor-part-rights = Rechte
doctor-end = { $count ->
    [0] Nichts zu tun.
   *[other] { $count } zu tun.
  }

## Der Rechner
doctor-python = { $here }
doctor-python-old = { $here } ist zu alt: Installiere { $wanted } oder neuer.
doctor-not-installed = { $here } ist hier nicht installiert: Installiere es, wie README.md es sagt.
doctor-packages = { $count } nötig, alle da
doctor-packages-wrong = neu installieren: { $here }.
doctor-folder = { $here }; { $count } MB frei
doctor-folder-new = { $here }, beim ersten Start angelegt; { $count } MB frei
doctor-folder-full = nur { $count } MB sind in { $here } frei: Mach Platz.
doctor-folder-unwritable = { $here } lässt sich nicht schreiben: Gib ihn diesem Benutzer, oder setze NOONSTONE_DATA_DIR.
doctor-clock = { $here }; Zeitzonen bekannt
doctor-clock-behind = sie zeigt { $here }, da gab es dieses Programm noch nicht: Stell sie.
doctor-zones-unknown = Zeitzonen sind hier nicht bekannt: pip install tzdata.
doctor-zones-wrong = Zeitzonen sind hier falsch: pip install tzdata.
doctor-database = { $here }
doctor-database-new = { $here }, neu; wird beim ersten Start angelegt
doctor-database-old = { $here }; der nächste Start bringt sie auf { $wanted }: Mach vorher eine Sicherung
doctor-database-away = sie ist nicht zu erreichen oder zu schreiben: Prüf, ob sie läuft, und Adresse und Passwort in NOONSTONE_DATABASE_URL.
doctor-database-starting = { $here } startet gerade: Sieh in einer Minute noch einmal nach.
doctor-database-busy = { $here } ist von anderen belegt: Sieh in einer Minute noch einmal nach, und wer sie noch festhält.
doctor-database-full = die Platte von { $here } ist voll: Schaff Platz. Was gespeichert war, ist noch da.
doctor-database-read_only = { $here } lässt sich nur lesen: Gib diesem Benutzer das Recht zu schreiben. Was gespeichert war, ist noch da.
doctor-database-refused = { $here } lehnt diese Anmeldung ab, oder die Tabellen gehören jemand anderem: Prüf die Rechte und Name und Passwort in NOONSTONE_DATABASE_URL.
doctor-database-damaged = { $here } ist beschädigt. Halt den Bot an, leg diese Datei beiseite, aber behalte sie, und spiel die neueste Sicherung zurück: noonstone restore SICHERUNG.
doctor-pictures = gezeichnet, mit Buchstaben in { $count } Stärken ({ $here } Bytes)
doctor-pictures-none = es lässt sich keines zeichnen ({ $here }): neu installieren.

## Discord
doctor-token = Discord kennt den Bot als { $here }
doctor-token-none = NOONSTONE_TOKEN ist nicht gesetzt; Discord braucht ihn, Konsole und Seiten nicht.
doctor-token-refused = Discord lehnt den Token ab: Trag einen neuen in NOONSTONE_TOKEN ein.
doctor-token-away = er ist gesetzt, aber Discord ist von hier nicht zu erreichen ({ $here })
doctor-invite = lade den Bot ein mit { $here }
doctor-link = der Installationslink im Portal hat { $here }
doctor-link-lacks = dem Installationslink im Portal fehlt { $here }: Stell dort { $wanted } ein.
