### Facts: Move
### Whether a tube is moved, and how far.

# Only with: $mild
move-step-until_mild = Measure how long the tube is, from end to end. Until then hang it { LENGTH($mild) } from the back, where even the longest is not too strong.
move-step-by_length = Measure how long the tube is, from end to end: no one distance is right for every length.
# Only with: $begin
move-step-until_known = Until you know how long the tube is, hang it { LENGTH($by) } farther from the back, at { LENGTH($begin) }.
# Only with: $begin
move-step-leave = Leave it. The middle of the range would be at { LENGTH($begin) }.
# Only with: $begin
move-step-until_read = Leave it until a UV meter has told: { LENGTH($begin) } would be the middle.
# Only with: $begin
move-step-farther = Move the tube { LENGTH($by) } farther from the back, to { LENGTH($begin) }. Lowering the platform does the same.
# Only with: $begin
move-step-closer = Move the tube { LENGTH($by) } closer to the back, to { LENGTH($begin) }. Raising the platform does the same.
move-step-other_tube = Ask tube for that distance, to see which tube would suit.

## In brief
# Only with: $mild
move-do-until_mild = Until you know its length: { LENGTH($mild) }.
move-do-by_length = Measure the tube from end to end.
# Only with: $begin
move-do-until_known = Length unknown: hang it at { LENGTH($begin) }.
move-do-leave = It is fine there: leave it.
move-do-until_read = Leave it until you have read again.
move-do-farther = Move it { LENGTH($by) } farther away.
move-do-closer = Move it { LENGTH($by) } closer.
move-do-other_tube = Ask tube which one would suit.
