### Our own sentences around an answer on Discord.

front-ask-again = Ich weiß nicht mehr, welche Frage das war. Stell sie noch einmal.
front-failed = Bei mir ging etwas schief; es ist als { $number } vermerkt. Versuch es noch einmal, oder nenn diese Nummer denen, die den Bot betreiben.
front-leaving = Ich werde gerade neu gestartet. Frag in einer Minute noch einmal.
front-too-many = Es kamen viele Fragen auf einmal. Versuch es { $when } noch einmal.
front-no-words = Ich kann nur Worte lesen, und in dieser Nachricht stehen keine.
front-no-message-before = In der letzten Viertelstunde gab es keine Nachricht dieser Person. Nimm bei der ersten „Das beantworten“.
front-nothing-to-add = In dieser Nachricht habe ich nichts über Licht oder Wärme gefunden.
front-stays-private = In diesem Kanal ist jede Antwort nur für den, der fragt. Andere sehen sie nicht.
front-public-helpers = Hier zeigen nur Helfer und die Moderation anderen eine Antwort. Du hast sie ganz, nur für dich.
front-public-moderators = Hier zeigt nur die Moderation anderen eine Antwort. Du hast sie ganz, nur für dich.
front-public-person = Du hast so oft gepostet, wie es diese Gruppe in einer Stunde erlaubt. Diese Antwort bleibt deshalb bei dir. Posten kannst du sie { $when }.
front-public-channel = In diesem Kanal ist so viel gepostet, wie es die Gruppe in einer Stunde erlaubt. Diese Antwort bleibt deshalb bei dir. Posten kannst du sie { $when }.
front-unsure-posted = Beim Schreiben riss die Verbindung ab. Schau, ob es da steht; wenn nicht, frag noch einmal.
front-needs-right = Das ist für Moderatoren: Du brauchst in diesem Kanal das Recht „Nachrichten verwalten“. Ein Administrator des Servers kann es dir geben.
front-changed = Diese Frage hat sich geändert. Starte Discord neu, dann frag noch einmal.

## Pictures
front-no-picture = Zu dieser Antwort gibt es kein Bild.
front-picture-busy = Gerade gibt es kein Bild: Es waren zu viele auf einmal. Die Antwort gilt auch ohne.
front-picture-failed = Gerade gibt es kein Bild: Es ließ sich nicht zeichnen. Die Antwort gilt auch ohne.

## Who asked
front-asked = { $asker } hat gefragt:
front-asked-for = { $reader }, { $asker } hat das für dich gefragt:
front-asked-missing = { $reader }, { $asker } möchte dir helfen und braucht noch mehr. Wähle unten:
front-asked-about = { $reader }, { $asker } hat mich nach { $link } gefragt:

## Forms
front-form = Fragen: { $command }
front-form-again = Noch einmal fragen: { $command }
front-delete = Für immer löschen? Nichts bringt es zurück.

## Wo ein Mensch besser ist
front-wrong-kept = Danke. Die Moderation sieht die Zahlen dieser Frage, keinen Text und keinen Namen.
front-wrong-lost = Ich konnte mir das nicht merken. Sag es der Moderation.
front-helper-sure = Das steht dann mit deinem Namen in { $link }:
front-helper-posted = Gepostet. Dort antwortet dir jemand: { $link }
front-helper-cannot = In diesem Kanal darf ich nicht schreiben. Frag die Moderation.
front-helper-none = Diese Gruppe hat keinen Kanal für Helfer mehr.
front-helper-asks = { $asker } sucht Hilfe. Das habe ich bisher gesagt:

## Ein Aushang, bevor er hängt
front-board-new = Zu diesem Thema hängt hier nichts. Das käme hierher und würde angeheftet:
front-board-same = Dieser Aushang hängt hier genau so. Nichts würde sich ändern.
front-board-unseen = Zu diesem Thema hängt hier etwas, aber ich kann es gerade nicht lesen. Das träte an seine Stelle:
front-board-other = Zu diesem Thema hängt hier schon ein Aushang. { $gone ->
    [one] 1 Zeile fällt weg
   *[other] { $gone } Zeilen fallen weg
  }, { $come ->
    [one] 1 kommt dazu
   *[other] { $come } kommen dazu
  }.
front-board-stands = So hängt er jetzt (durchgestrichen: fällt weg)
front-board-would = So hinge er dann (unterstrichen: kommt dazu)
front-board-pictures = Seine Bilder:
