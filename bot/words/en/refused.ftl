### Facts: Behind, Lack, Misread, NotHeard, Missing, NoOption, OutOfRange, Quoted, Way
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
refused-unread = { refused-misread }
refused-not-heard = I did not understand that question. Ask about UV, heat, nights or a whole set-up, for example: { $example }
refused-behind = { $before } { $refusal }

## What is missing
refused-told = { $text }
refused-lack = { $name }: { $what }
refused-missing = I still need { LIST($wanted, join: "list-semi") }. For example: { $example }

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
