### Facts: Tripped
### Reasons to stop before a lamp is changed.

guard-stop-nearer_than_safe_distance = Stop: it would be closer than the lamp's label allows.
guard-stop-above_holder_mark = Stop: the lamp has more watts than its holder is marked for. Never exceed the mark.
guard-stop-wood_too_hot = Stop: wood that stays at { TEMP($wood) } or more can catch fire in time. Switch off and give it more distance.
guard-stop-lamp_within_reach = Stop: an animal that can touch a lamp will be burnt one day. Guard it or hang it out of reach first.
guard-short-nearer_than_safe_distance = Never closer than its label allows.
guard-short-above_holder_mark = Never go above the holder's mark.
guard-short-wood_too_hot = Hot wood near a lamp can catch fire.
guard-short-lamp_within_reach = A lamp within reach burns the animal.
guard-first-nearer_than_safe_distance = Leave the lamp off until it hangs as far away as its label asks.
guard-first-above_holder_mark = Switch the lamp off, let it cool, and fit one of no more watts than the mark on its holder; or a holder marked for it.
guard-first-wood_too_hot = Switch the lamp off, and put lamp and wood so far apart that no wood gets near { TEMP($wood) }.
guard-first-lamp_within_reach = Leave the lamp off until a guard is round it or the animal can no longer reach it.
