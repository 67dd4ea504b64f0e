### Facts: About, AboutSources
### What this bot is.

about-title = About Noonstone
about-head = I am a bot. I work out reptile light and warmth.
about-ranges = I give ranges. Trust your meter more.
about-kept = What you ask is not kept.
about-known = { $count } sources, each with its kind.
about-do-delete = See or delete what I keep for you: mine export, mine forget.
about-step-export = Take all that is kept for you: mine export
about-step-forget = Delete all of it at once: mine forget
about-step-server = A server deletes what it set at once: server forget. Else it goes 30 days after the server removes me.
about-label-not-kept = Not kept
about-not-kept = What you type. A question is answered and forgotten. A button carries its own question.
about-label-kept = Kept
about-is-kept = What you ask me to keep: enclosures, readings, reminders, your unit, language and time zone. And what moderators set, with the number of who changed it.
about-label-counts = Counted
about-counts = How often something is asked. No text and no person is in it.
about-label-sources = Where numbers come from
about-sources = { $count } sources, each named beside its figure: { LIST($kinds, join: "list-and") }. “Common practice” and “from memory” mean that I read no published source.
about-kind-paper = { $count } papers
about-kind-standard = { $count } standards
about-kind-handbook = { $count } handbooks
about-kind-dataset = { $count } data sets
about-kind-derivation = { $count } derivations
about-kind-common_practice = { $count } of common practice
about-kind-memory = { $count } from memory
about-label-will-not = I will not
about-will-not = name products, judge a sick animal, or replace a meter, a thermometer or a vet

## Care
about-care-vet = Is your animal weak, shaking, swollen, burnt or not eating? Call a reptile vet now.
about-care-vet-short = A sick animal? Call a reptile vet.
about-care-mercury = A lamp with mercury broke? People and pets out, air the room, no vacuum cleaner.
