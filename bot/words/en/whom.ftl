### Facts: VetsSet, HelpersSet
### Whom a group calls, and where its helpers are asked.

whom-vets-title = Whom this group calls
whom-vets = { $line ->
    [none] Gone. I show no line with a call to a vet.
   *[some] Kept. I show it with every call to a vet: { $line }
  }
whom-vets-step-none = Take it away with none: server vets line:none
whom-helpers-title = Where helpers are asked
whom-helpers = { $here ->
    [yes] Kept. Helpers are asked in this channel.
   *[no] Kept. No helper is asked any more.
  }
whom-helpers-how = Whoever asks sees first what is posted.
whom-helpers-step-none = Stop it: server helpers ask:nowhere
