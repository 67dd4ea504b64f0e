### Wer Antworten allen zeigen darf und wie oft, und was gezeigt wurde.

public-title = Was öffentlich wird
public-who = { $who ->
    [everybody] Gemerkt. { public-place } dürfen alle Antworten öffentlich zeigen.
    [helpers] Gemerkt. { public-place } dürfen Helfer und die Moderation Antworten öffentlich zeigen.
   *[moderators] Gemerkt. { public-place } darf nur die Moderation Antworten öffentlich zeigen.
  }
public-place = { $place ->
    [here] Hier
    [parent] Im Kanal um diesen herum
   *[everywhere] In jedem Kanal ohne eigene Regel
  }
public-most = In der Stunde: höchstens { $most } von einer Person, { $in_channel } in einem Kanal.
public-where = Ein Thread und ein Beitrag im Forum übernehmen die Regel des Kanals, in dem sie stehen, bis sie eine eigene bekommen.
public-over = Es geht um „Teilen“, „Im Kanal antworten“, die Rückfrage an andere und „for“. Was darüber hinausgeht, bleibt bei dem, der fragt, und nichts davon geht verloren.
public-mention = Auch wer mich erwähnt, zeigt die Antwort allen. Eine Erwähnung verrät mir nicht, wer zur Moderation gehört. Wo nur sie posten darf, antworte ich darauf nur dem, der fragt, über einen Knopf.
public-step-thread = Für ein ganzes Forum frag in einem seiner Beiträge: server public who:moderators where:parent
public-step-posts = Sieh nach, was gepostet wurde: server posts
public-step-usual = Zurück zum Üblichen: server public who:usual most:none

## Was gepostet wurde
public-posts-title = Was öffentlich gepostet wurde
public-posts = { $count ->
    [0] Es wurde noch nichts gepostet.
    [one] Bisher ein Post.
   *[other] Die neuesten { $count } Posts.
  }
public-no-text = Ich behalte keinen Text davon, und jede Zeile 90 Tage.
public-step-fewer = Zu viele? Dann weniger: server public most:10
public-column-when = Wann (UTC)
public-column-poster = Von
public-column-channel = Kanal
public-column-command = Frage
public-column-pings = Pings
public-when = { DAY($day) }, { CLOCK($clock) }
public-channel = { $channel }
public-command = { $command }
public-pings = { $pings }

## Warum nicht
public-nothing = Sag, was du ändern willst: wer posten darf, wie oft höchstens, oder die Rolle eurer Helfer.
public-no-role = Ich kenne die Rolle eurer Helfer nicht. Nenn sie mit „role“, oder lass nur die Moderation posten.
public-no-parent = Um diesen Kanal herum ist nichts: frag in einem Thread oder in einem Beitrag eines Forums, oder nimm „here“.
