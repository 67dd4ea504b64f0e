### Welches Tier gemeint ist.

which-title = Welches Tier ist es?
which-unknown = Das Tier „{ $words }“ kenne ich nicht.
which-of = „{ $words }“ kann mehreres heißen. Sag welches: { LIST($here, join: "list-or") }{ $more ->
    [yes] , oder ein anderes mit eigenem Namen
   *[no] {""}
  }.
which-of-both = „{ $words }“ kann mehreres heißen. Sag welches: { LIST($here, join: "list-or") } (zu den anderen fehlen mir Zahlen).
which-of-others = „{ $words }“ kann mehreres heißen. Zu keinem habe ich Zahlen: { LIST($others, join: "list-or") }.
which-step = Wenn es { NAME($animal, form: "a") } ist: needs { $typed }
which-step-again = Frag noch einmal mit dem ganzen Namen: Jedes Tier braucht sein eigenes Licht und seine eigene Wärme.
