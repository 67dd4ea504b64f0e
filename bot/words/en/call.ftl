### Facts: AnyHarm, Called
### Whom to call and how soon. What is called begins small here and stands behind a condition.

## Who, and how soon
call-act-emergency-now = call your emergency number now
call-act-doctor-today = see a doctor today
call-act-poison_line-today = call a poison line today
call-act-electrician-this_week = ask an electrician this week
call-act-electrician-before_use = ask an electrician before it is used again
call-act-vet-now = call a reptile vet now
call-act-vet-today = call a reptile vet today
call-act-vet-this_week = call a reptile vet this week

## The sentence
call-plain = { CAP($act) }.
# Only with: $note
call-noted = { CAP($act) }, { $note }.
# Only with: $condition
call-when = { CAP($condition) }: { $act }.
# Only with: $condition, $note
call-when-note = { CAP($condition) }: { $act }, { $note }.
# Only with: $condition
call-enough-today = { CAP($condition) }: today is soon enough.
# Only with: $condition
call-enough-this_week = { CAP($condition) }: this week is soon enough.

## On what it depends
call-if-smoke_stays = flames, or smoke that does not stop
call-if-shocked_badly = burnt, dizzy, fainted, odd heartbeat, short of breath, pregnant, or a child
call-if-burn_needs_doctor = a child, burnt face or hands, blisters, white skin, or bigger than a palm
call-if-burn_grave = large, deep, electric, or bleeds on
call-if-mercury_breathed = unwell, a small child, or pregnant
call-if-eyes_near_cracked = sore eyes from its light
call-if-splinters_on_animal = glass or powder on the animal
call-if-gas_breathed = headache, dizzy, sick or confused
call-if-animal_under_it = an animal was under it
call-if-person_hurts = a person's eyes or skin hurt
call-if-eyes_or_skin_hurt = eyes or skin hurt, or sight is blurred
call-if-child_hurt = a child is burnt, cut or shocked
call-if-smoke = smoke or flames
call-if-socket_bad = a warm, brown or loose socket
call-if-holder_wired = a holder that is wired in, or brown wires
call-if-fell_on_animal = it fell on the animal
call-if-skin_mark = any mark on the skin
call-if-lay_on_heater = it lay on the heater, or has a mark
call-if-skin_patch = any red, brown, wet or blistered patch
call-if-dimmer_bad = a hot or wired-in dimmer
call-if-sun_hurt = gaping, limp, twitching or not reacting
call-if-locked_hurt = gaping, limp or not reacting
call-if-hot_hurt = gaping in the coolest place, limp, twitching or not reacting
call-if-water_hurt = limp, upside down, gulping air or not reacting
call-if-uv_hurt = eyes closed or swollen, sore or peeling skin, hiding, not eating
call-if-strong_uv_hurt = eyes closed, sore skin or hiding since
call-if-cold_stays = no normal moves after an hour or two, or frozen stiff
call-if-gasps = gasping, blue or grey mouth, or neck stretched up for air
call-if-animal_burn_grave = large, deep, on the face, or limp
call-if-wound_grave = bleeding that does not stop, bone or tissue that shows, or a lamp or tank that fell on it
call-if-eggs_calm = bright, eating little, digging, and no straining
call-if-eyes_grave = swollen shut, weeping, or not eating as well
call-if-bones_grave = twitching, cannot walk, a broken bone, or not eating
call-if-ill_grave = limp, very thin, not drinking, or worse by the day
call-if-cold_limp = cold and limp
call-if-heat_hurt = gaping, limp or twitching
call-if-night_hurt = limp, stiff or not reacting
call-if-no_uvb_long = no UVB for months, and weak, shaky or bent

## What is noted
call-note-seems_better = also if it seems better
call-note-looks_fine = even if the skin looks fine

## At a glance: the short form that a brief shows; the whole sentence stands in the steps
call-brief-act-emergency-now = emergency number now
call-brief-act-doctor-today = doctor today
call-brief-act-poison_line-today = poison line today
call-brief-act-electrician-this_week = electrician this week
call-brief-act-electrician-before_use = electrician before it is used
call-brief-act-vet-now = reptile vet now
call-brief-act-vet-today = reptile vet today
call-brief-act-vet-this_week = reptile vet this week
call-brief-plain = { CAP($act) }.
# Only with: $note
call-brief-noted = { CAP($act) }, { $note }.
# Only with: $condition
call-brief-when = { CAP($condition) }? { CAP($act) }.
# Only with: $condition, $note
call-brief-when-note = { CAP($condition) }? { CAP($act) }, { $note }.
# Only with: $condition
call-brief-enough-today = { CAP($condition) }? Today is enough.
# Only with: $condition
call-brief-enough-this_week = { CAP($condition) }? This week is enough.
call-brief-any = Any sign of harm: { LIST($acts, join: "list-and") }.
call-brief-if-smoke_stays = flames, or smoke that goes on
call-brief-if-shocked_badly = unwell, burnt, pregnant, or a child
call-brief-if-burn_needs_doctor = a child, face, hands, blisters, or big
call-brief-if-burn_grave = large, deep, electric, or bleeds on
call-brief-if-mercury_breathed = unwell, pregnant, a small child
call-brief-if-eyes_near_cracked = sore eyes
call-brief-if-splinters_on_animal = glass or powder on it
call-brief-if-gas_breathed = headache, dizzy, sick or confused
call-brief-if-animal_under_it = an animal was under it
call-brief-if-person_hurts = your eyes or skin hurt
call-brief-if-eyes_or_skin_hurt = eyes or skin hurt, sight blurred
call-brief-if-child_hurt = a child is hurt
call-brief-if-smoke = smoke or flames
call-brief-if-socket_bad = a warm, brown or loose socket
call-brief-if-holder_wired = a wired-in holder or brown wires
call-brief-if-fell_on_animal = it fell on the animal
call-brief-if-skin_mark = any mark on the skin
call-brief-if-lay_on_heater = it lay on it, or has a mark
call-brief-if-skin_patch = a red, brown or wet patch, a blister
call-brief-if-dimmer_bad = a hot or wired-in dimmer
call-brief-if-sun_hurt = gaping, limp, twitching, no reaction
call-brief-if-locked_hurt = gaping, limp or not reacting
call-brief-if-hot_hurt = gaping where it is coolest, limp, twitching, no reaction
call-brief-if-water_hurt = limp, upside down, gulping air, no reaction
call-brief-if-uv_hurt = eyes shut or swollen, sore skin, hiding, not eating
call-brief-if-strong_uv_hurt = eyes closed, sore skin or hiding since
call-brief-if-cold_stays = frozen stiff, or not moving well in two hours
call-brief-if-gasps = gasping, blue mouth, neck stretched up
call-brief-if-animal_burn_grave = large, deep, on the face, or limp
call-brief-if-wound_grave = bleeding on, bone or tissue shows, a lamp fell on it
call-brief-if-eggs_calm = bright, digging and not straining
call-brief-if-eyes_grave = swollen shut, weeping, or not eating
call-brief-if-bones_grave = twitching, a broken bone, cannot walk or eat
call-brief-if-ill_grave = limp, very thin, not drinking, getting worse
call-brief-if-cold_limp = cold and limp
call-brief-if-heat_hurt = gaping, limp or twitching
call-brief-if-night_hurt = limp, stiff or not reacting
call-brief-if-no_uvb_long = no UVB for months, and weak or bent
