### Facts: Section, SectionLife, SectionPlace, SectionLong, SectionTaken, SectionMove, SectionMoves, SectionMend, SectionNoFit, At
### The map of the UV in an enclosure.

section-title = { $animal ->
    [none] Where the UV goes
   *[some] Where the UV goes, for { NAME($animal, form: "a") }
  }

## The answer in brief
section-head-too_close = No: the UV lamp is too close.
section-head-too_strong = No: too strong on the platform.
section-head-maybe_strong = It may be too strong on the platform.
section-head-too_weak = No: too weak on the platform.
section-head-maybe_weak = It may be too weak on the platform.
section-head-hardly = Hardly any of the platform is right.
section-head-uneven = Only { SHARE($in_range) } of the platform is right.
section-head-cannot_tell = Probably right. A UV meter can tell.
section-head-fine = Yes: the platform has its UV.
section-most = UV index up to { UVI($most, form: "doubt") }. Aim for { UVI($wanted, form: "range") }.
section-shade-there = There is shade to go to.
section-shade-probably = There is probably shade to go to.
section-shade-cannot_tell = Shade? I cannot tell: add a hide.
section-shade-probably_none = Probably no shade: add a hide.
section-shade-none = There is no shade: add a hide.
section-assumed-nothing = You told me all of the tube.
section-assumed-kind = I assumed a T5 HO tube.
section-assumed-length = I assumed it is { LENGTH($long) } long.
section-assumed-both = I assumed T5 HO, { LENGTH($long) }.
section-do-platform_lower = Make the platform { LENGTH($by) } lower.
section-do-platform_higher = Make the platform { LENGTH($by) } higher.
section-do-platform_sideways = Put the platform under the UV lamp.
section-do-fewer_tubes = { section-use-tubes }
section-do-more_tubes = { section-use-tubes }
section-do-other_tube = Use { $lamp }.
section-do-other_length = Use a tube { LENGTH($long) } long.
section-do-tube_to_warm_end = Start the UV lamp at the warm end wall.
section-do-hide = Put a hide at the cool end.
section-do-heat_lamp = Hang the heat lamp over the platform.
section-do-then = { $last } { $warmth ->
    [none] Then UV index up to { UVI($uvi) }.
   *[some] Then { SHARE($warmth) } of the warm patch has UV.
  }
section-do-plan = No change here does it: ask plan.
section-do-meter = Check with a UV meter: { UVI($wanted, form: "range") }.
section-use-tubes = { $count ->
    [one] Use one tube.
   *[other] Use { $count } tubes.
  }

## Steps
section-moves = { $then ->
    [none] { $move }
   *[some] { $move } { $then }
  }
section-move-platform_lower = Make the platform { LENGTH($by) } lower: then UV lamp and back are { LENGTH($away) } apart.
section-move-platform_higher = Make the platform { LENGTH($by) } higher: then UV lamp and back are { LENGTH($away) } apart.
section-move-platform_sideways = Put the platform under the middle of the UV lamp: { LENGTH($along) } from the warm end, { LENGTH($across) } from the back wall. A heat lamp goes along, beside it.
section-move-fewer_tubes = { section-use-tubes }
section-move-more_tubes = { section-use-tubes }
section-move-other_tube = Use this tube instead: { $lamp }.
section-move-other_length = Use a tube { LENGTH($long) } long.
section-move-tube_to_warm_end = Start the UV lamp at the warm end wall.
section-move-hide = Put a hide at the cool end.
section-move-heat_lamp = Move the heat lamp over the middle of the platform.
section-step-mend = { $instead ->
    [yes] Or: { $all_moves } { section-then }
   *[no] { $all_moves } { section-then }
  }
section-then = { $warmth ->
    [none] Then the strongest place has UV index { UVI($uvi, form: "doubt") }, and { SHARE($in_range) } of the platform is inside { UVI($wanted, form: "range") }.{ $shade ->
        [none] {""}
       *[some] {" "}{ SHARE($shade) } of the floor is in shade.
      }
   *[some] Then { SHARE($warmth) } of the warm patch has the UV.
  }
# Only with: $hide
section-step-hide = Put a hide or thick leaves at the cool end, { LENGTH($hide) } from the warm end wall. Under them there is no UV.
section-life-water = Its platform is the dock: put its dry top at this height, and measure on it. Keep every lamp, cable and plug out of reach of the water. Of the UV in the water I know nothing.
section-life-climbs = It climbs, so its platform is the branch or shelf under the lamp{ $branch ->
    [none] . Measure at the highest place that it can reach, not only at this one.
   *[some] . No branch there may be higher than { LENGTH($branch) } over the floor: above it the UV index is likely over { UVI($most) }. Measure at the highest place that it can reach.
  }
section-life-digs = It digs, and leaves the light when it wants to.
section-life-night = It is awake at night and rests by day. Let most of the box be shade, with a dark hide, so that it meets this light only when it chooses to.
section-life-giant = It grows huge, so measure again when it has grown.
section-step-warmth = Two hours later read the basking surface again: the heat lamp is no longer as far away.
section-step-plan = Nothing that I tried in this box gives the platform its UV. Ask plan, with the box and the animal, for a set-up that does.
section-step-meter = Walk the places of the table with a UV meter at back height, facing up, and trust the meter: { UVI($wanted, form: "range") } where it basks, and in the shade under { UVI($shade_uvi) }.

## Numbers
section-label-placed = Where it hangs
section-placed = The { $count ->
    [one] UV lamp hangs
   *[other] UV lamps hang
  } level with the lid, { $point ->
    [yes] { LENGTH($tube_across) } from the back wall, and shines straight down.
   *[no] along the box, { LENGTH($tube_across) } from the back wall. I drew { $count ->
        [one] it
       *[other] them
      } { LENGTH($long) } long.
  } With the platform's top { LENGTH($top) } over the floor, the back is at your distance.
section-label-platform = On the platform
section-in-range = About { SHARE($in_range) } has UV index { UVI($wanted, form: "range") }. With the doubt of the lamp: { SHARE($in_range, form: "range") }.
section-label-strongest = Strongest place
section-label-weakest = Weakest place
section-place = UV index { UVI($uvi, form: "doubt") }, { LENGTH($along) } from the warm end, { LENGTH($across) } from the back wall, the back { LENGTH($high) } over the floor
section-label-shade = Shade
section-shaded = { SHARE($shade_share) } of floor and platform is under UV index { UVI($shade_uvi) }. With the doubt: { SHARE($shade_share, form: "range") }.
section-label-heat = Heat and UV
section-no-lamp = No heat lamp: it needs no basking spot. Warm the air, if at all.
# Only with: $overlap, $heat_in_range
section-heat = { $overlap ->
    [together] They lie together
    [partly] They lie together only in part
   *[apart] They lie apart
  }: { SHARE($heat_in_range) } of the warm patch has UV index { UVI($wanted, form: "range") }. With the doubt: { SHARE($heat_in_range, form: "range") }.
section-label-end = Across the platform
section-end = From the back wall, at the back's height: { section-across }.
section-across = UV index { LIST($end_view, join: "list-with") }
section-end-at = { UVI($uvi) } at { LENGTH($at) }
section-label-taken = I assumed
section-taken = { LIST($all_taken, join: "list-with") }
section-taken-back = a back { LENGTH($long) } over what it lies on
section-taken-over = the UV lamp over the middle of the platform
section-taken-start = a UV lamp that begins { LENGTH($long) } from the warm end wall
section-taken-length = a tube of { LENGTH($long) }, as suits the box
section-taken-platform = a platform { LENGTH($long) } long at the warm end, over half the depth
section-taken-heat = the heat lamp's middle { LENGTH($long) } from the warm end wall
section-taken-patch = a warm patch { LENGTH($long) } wide
section-taken-across = the UV lamp's middle { LENGTH($long) } from the back wall
section-column-height = Over the floor
section-height = { LENGTH($at) }
section-long = { LENGTH($long) }
section-cell = { UVI($uvi) }

## Care
section-care-walls = Walls, branches and hides are not in this map: behind them it is darker.

## The picture
section-picture-below = { $lamp }, { $through }
section-picture-tube = { section-picture-tubes }, { $lamp }
section-picture-tubes = { $count ->
    [one] UV lamp
   *[other] { $count } UV lamps
  }
section-picture-stand = { $stand ->
    [dock] dock
    [branch] branch or shelf
   *[platform] platform
  }
section-picture-across = Seen from the warm end, cut { LENGTH($middle) } from it
section-picture-note = The maps are for a level back; above, under the middle of the depth. Hides are not in them.
section-picture-warm-is = UV index { UVI($wanted, form: "range") } to bask in
section-picture-strongest = strongest: UV index { UVI($uvi, form: "doubt") }
section-picture-weakest = weakest: UV index { UVI($uvi, form: "doubt") }
section-shade-here-there = shade, under UV index { UVI($shade_uvi) }
section-shade-here-probably = probably shade, under UV index { UVI($shade_uvi) }
section-shade-here-cannot_tell = perhaps shade: add a hide
section-shade-here-probably_none = probably no shade: add a hide
section-shade-here-none = no shade: add a hide
section-alt = Map of the UV index, seen from the side.
section-alt-end = Below it the end view. From the back wall, across the platform: { section-across }.
section-alt-height = { LENGTH($at) } over the floor, from the warm end on:
section-alt-uvi = { UVI($uvi) }

## What does not fit
section-no-title = That does not fit in
section-no-head = That does not fit into this box.
section-no-back = I read “{ $read }” for back, but only up to { LENGTH($most) } is inside it.
section-no-platform = I read “{ $read }” for platform, but it must be { LENGTH($least) } to { LENGTH($most) } long.
section-no-heat = I read “{ $read }” for heat, but only up to { LENGTH($most) } is inside it.
section-no-patch = I read “{ $read }” for patch, but it must be { LENGTH($least) } to { LENGTH($most) } wide.
section-no-distance = I read “{ $read }” for distance, but there is room for at most { LENGTH($most) } under the lid.
# Only with: $tube_long
section-no-start = I read “{ $read }” for start, but a UV lamp { LENGTH($tube_long) } long leaves room for at most { LENGTH($most) }.
# Only with: $tube_long
section-no-length = With its start, a tube of { LENGTH($tube_long) } does not fit into { LENGTH($most) }.
# Only with: $tube_long
section-no-box = I read “{ $read }” for enclosure, but the shortest usual T5 HO tube is { LENGTH($tube_long) } long. Is yours shorter? Tell me its length.
section-no-across = I read “{ $read }” for across, but the UV lamps must hang inside its depth of { LENGTH($most) }.
section-do-again = Ask with { $example }.
