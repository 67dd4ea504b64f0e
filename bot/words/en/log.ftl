### Facts: GroupLog, LogLine, LogNamed, LogSetting, LogBoard, LogPublic, LogRule, LogAnimal, LogAnimals, LogText, Doer
### Who changed what for a group.

log-title = Who changed what
log-head = { $count ->
    [0] Nothing has been changed yet.
    [one] One change so far.
   *[other] The newest { $count } changes.
  }
log-column-when = When (UTC)
log-column-what = What
log-column-before = From
log-column-after = To
log-column-who = By
log-when = { DAY($day) }, { CLOCK($clock) }

## What
log-named = { $kind ->
    [channel] channel
    [screen] screen
    [animal] animal
   *[lamp] lamp
  } { $name }
log-setting = { $setting ->
    [units] shown first
    [animal] usual animal
    [site] address of the guide
    [zone] time zone
    [language] language
    [vets] whom to call
   [helper_role] role of the helpers
   *[helpers] channel of the helpers
  }
log-target = target { NAME($animal) }
log-posts = public posts, { $channel ->
    [none] everywhere
   *[some] channel { $channel }
  }
log-board = board { $topic ->
    [distances] distances
    [temperatures] temperatures
    [first_day] first day
    [welcome] welcome
   *[guide] guide
  }, channel { $channel }

## Values
log-nothing = nothing
log-animal = { NAME($animal) }
log-animals = { LIST($animals) }
log-text = { $text }
log-public = for everybody
log-private = for the asker alone
log-shown = posted
log-rule = { $poster ->
    [everybody] everybody
    [helpers] helpers
    [moderators] moderators
   *[none] as usual
  }{ $most ->
    [none] {""}
   *[other] , { $most } an hour
  }

## Who
log-person = { $person }
log-forgotten = forgotten
log-local = this computer
