### Facts: Other
### What to use in place of a tube that will not do.

instead-fixture = { $fixture ->
    [polished] polished reflector
   *[plain] plain fixture
  }
instead-tube = T5 HO, up to { SHARE($strength) }, { instead-fixture }
instead-full = { $keepers ->
    [none] { instead-tube }, { $screen }, { LENGTH($away, form: "range") } from the back.
   *[other] { instead-tube }, { $screen }, { LENGTH($away, form: "range") } from the back (by { $keepers } keepers of your group).
  }
instead-use = Use this instead: { instead-full }
instead-better = Better for a beginner: a stronger tube, up to { SHARE($strength) }, { instead-fixture }, { $screen }, { LENGTH($away, form: "range") } from the back. A weak tube over a screen hangs so close that an inch matters.
instead-short = Use { instead-tube }{ $bare ->
    [yes] , no screen
   *[no] {""}
  }: { LENGTH($away, form: "range") }.
instead-keeper = Ask a keeper with a UV meter: no tube from 6 to 12 % fits here.
instead-keeper-short = Ask a keeper with a UV meter.
instead-weaker = Use a weaker tube. This one would hang farther away than most boxes allow.
