### Facts: Misread, Missing, NoOption, OutOfRange, Quoted, Way
### Why there is no answer, and what works.

refused-title = That did not work
refused-step-all = All questions: help
refused-step-more = More about this question: help { $name }

## What was read
refused-nothing = nothing
refused-misread = { $option ->
    [none] I read { $what }, but I need { $accepted }, for example { $example }.
   *[some] I read { $what } for { $option }, but I need { $accepted }, for example { $example }.
  }
# Only with: $option
refused-not-heard = I read { $what } for { $option }, but I need { $accepted }, for example { $example }.

## What is missing
refused-told = { $text }
refused-nothing-after = nothing after { $name }
refused-missing = I read { $told }, but I still need { $wanted }. For example: { $example }

## An option that a question does not have
refused-option = { $what } is not an option of { $name }: { $near ->
    [none] it takes { LIST($known, join: "list-and") }.
   *[some] did you mean { $near }? It takes { LIST($known, join: "list-and") }.
  }

## A figure that the model does not reach
# Only with: $low, $high
refused-outside = I cannot answer that: { $name } is { $value }, and I can only be trusted { $ends ->
    [from] from { $low }
    [above] above { $low }
    [up_to] up to { $high }
    [above_to] above { $low } up to { $high }
   *[both] from { $low } up to { $high }
  }. Check the figure and ask again, for example: { $example }
