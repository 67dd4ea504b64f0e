### Wie Aufzählungen zusammengesetzt werden: die letzte Verbindung, und was davor steht.

list-and = { $first } und { $second }
list-or = { $first } oder { $second }
list-semi = { $first }; { $second }
list-with = { $first }, { $second }
list-joined = { $first }{ $second }
list-joined-between = {""}
list-comma = {", "}
list-semi-between = {"; "}
