### Facts: Saved, BeyondKept
### An enclosure that is kept.

mine-save-title = “{ $name }” is { $known ->
    [yes] changed
   *[no] kept
  }
mine-save-head = { $known ->
    [yes] Changed. The rest stays as it was.
   *[no] Kept. Only you can see it.
  }
mine-save-unclear = Not kept

## Steps
# Only with: $question
mine-save-step-ask = Ask about it: { $question }
mine-save-step-read = Write a reading down: mine reading name:{ $name } uvi:4.2 basking:103F
mine-save-step-remind = Be reminded to read again: remind me about:meter name:{ $name }

## What cannot be kept
mine-save-beyond = I cannot keep “{ $read }” for { $option }.
# Only with: $high
mine-save-ends-length = { $low ->
    [none] It may be up to { LENGTH($high) }.
   *[some] It may be from { LENGTH($low) } up to { LENGTH($high) }.
  }
# Only with: $least, $most
mine-save-ends-tube = It may be from { SHARE($least, form: "given") } to { SHARE($most, form: "given") }.
mine-save-ends-screen = A screen lets something through.
mine-save-step-try = Try: { $example }
