### Was eine Gruppe festgelegt hat, für alle, die sie betreuen.

group-title = Was diese Gruppe festgelegt hat
group-head = { $settings ->
    [0] { $figures ->
        [0] Hier ist noch nichts festgelegt.
        [one] 1 eigene Zahl.
       *[other] { $figures } eigene Zahlen.
      }
    [one] 1 Einstellung, { group-figures }.
   *[other] { $settings } Einstellungen, { group-figures }.
  }
group-figures = { $figures ->
    [0] keine eigenen Zahlen
    [one] 1 eigene Zahl
   *[other] { $figures } eigene Zahlen
  }

## Einstellungen
group-label-units = Zuerst steht
# Only with: $units
group-units = { $units ->
    [in] Zoll und °F
   *[cm] Zentimeter und °C
  }
group-label-animal = Tier
# Only with: $animal
group-animal = { NAME($animal) }
group-label-site = Leitfaden
# Only with: $site
group-site = { $site }
group-label-zone = Zeitzone
# Only with: $zone
group-zone = { $zone }
group-label-language = Sprache
# Only with: $language
group-language = { $language ->
    [german] Deutsch
   *[english] English
  }
group-label-vets = Tierärzte
# Only with: $vets
group-vets = { $vets }
group-label-helpers = Helfer
# Only with: $helpers
group-helpers = Kanal { $helpers }
group-label-role = Rolle der Helfer
# Only with: $role
group-role = Rolle { $role }
group-label-posting = Öffentlich
group-posting = { $posting ->
    [everybody] von allen
    [helpers] von Helfern und Moderation
    [moderators] von der Moderation
   *[none] wie üblich
  }{ $most ->
    [none] {""}
   *[other] , je { $most } in der Stunde
  }{ $places ->
    [0] {""}
    [one] ; 1 Kanal hat eine eigene Regel
   *[other] ; { $places } Kanäle haben eine eigene Regel
  }
group-label-channels = Kanäle
group-channels = { $public } für alle, { $private } nur für die Person, die fragt

## Eigene Zahlen
group-label-lamp = Lampe { $name }
group-label-screen = Gitter { $name }
group-label-target = Zielwert { NAME($species) }
group-label-own-animal = Eigenes Tier { $name }

## Geändert
group-set-title = Die Einstellungen deiner Gruppe
group-set = { $settings ->
    [0] Gemerkt. Jetzt ist nichts mehr festgelegt.
   *[other] Gemerkt. Ab jetzt richten sich die Antworten hier danach.
  }
group-answers-title = Wer die Antworten hier sieht
group-answers = { $audience ->
    [private] Ab jetzt sieht hier nur die Antwort, wer gefragt hat.
    [public] Ab jetzt sehen hier alle die Antworten.
   *[usual] Ab jetzt sieht hier nur die Antwort, wer gefragt hat. Teilen geht auch.
  }

## Schritte
group-step-change = Ändere etwas: server set units:cm
group-step-changes = Sieh nach, wer was geändert hat: server changes
group-step-none = Lösch eine Einstellung mit none: server set units:none
group-step-usual = Zurück zum Üblichen: server answers show:usual

## Warum nicht
group-no-channel = Frag das in einem Kanal auf Discord.
group-no-setting = Sag, was du ändern willst: units, animal, site, zone oder language.
