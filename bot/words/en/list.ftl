### How lists are put together: the last join, and what stands between the others.

list-and = { $first } and { $second }
list-or = { $first } or { $second }
list-semi = { $first }; { $second }
list-with = { $first }, { $second }
list-joined = { $first }{ $second }
list-joined-between = {""}
list-comma = {", "}
list-semi-between = {"; "}
