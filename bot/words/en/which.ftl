### Facts: IfItIs, WhichOf
### Which animal is meant.

which-title = Which animal is it?
which-unknown = I do not know the animal “{ $words }”.
which-of = “{ $words }” can be several animals. Say which: { LIST($here, join: "list-or") }{ $more ->
    [yes] , or another by its own name
   *[no] {""}
  }.
which-of-both = “{ $words }” can be several animals. Say which: { LIST($here, join: "list-or") } (I have no figures for the others).
which-of-others = “{ $words }” can be several animals. I have figures for none of them: { LIST($others, join: "list-or") }.
which-step = If it is { NAME($animal, form: "a") }: needs { $typed }
which-step-again = Ask again with its whole name: each animal needs its own light and warmth.
