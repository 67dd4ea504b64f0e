### Facts: Between
### What is between the tube and the animal.

between-label = Screen
between-name = { $net ->
    [none] no screen
    [flat] a screen that blocks { SHARE($blocks) }
    [weave] { $open ->
        [none] a mesh
       *[some] a mesh that is { SHARE($open) } open
      }
   *[as_read] the screen that is there now
  }
between-row-none = No screen, so no UV is lost.
between-row-flat = It blocks { SHARE($blocks) } of the UV, as you told me, give or take 15 %.
# Only with: $wire
between-row-weave = It blocks about { SHARE($blocks) } of the UV here, give or take 15 % of what passes. { SHARE($wire) } is wire seen straight on. The rest is lost because most light comes at a slant.
between-row-as_read = You did not tell me. I assumed that what is there now was there when you read, and stays. Add or remove a screen? Then read again.
between-assumed = I assumed the screen has not changed.
