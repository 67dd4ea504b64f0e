### Facts: PublicSet, PostsShown, PostLine
### Who may show answers to everybody and how often, and what was shown.

public-title = What becomes public
public-who = { $who ->
    [everybody] Kept. Everybody may show answers to all { public-place }.
    [helpers] Kept. Helpers and moderators may show answers to all { public-place }.
   *[moderators] Kept. Only moderators may show answers to all { public-place }.
  }
public-place = { $place ->
    [here] here
    [parent] in the channel around this one
   *[everywhere] in every channel without a rule of its own
  }
public-most = An hour: at most { $most } from one person, { $in_channel } in one channel.
public-where = A thread and a forum's post take the rule of their channel, until they get one of their own.
public-over = This is about “Share”, “Reply in the channel”, asking a writer for more, and “for”. Beyond it an answer stays with the one who asked, and nothing of it is lost.
public-mention = Whoever mentions me shows the answer to all too. A mention does not tell me who is a moderator, so where only they may post, I answer it alone, by a button.
public-step-thread = For a whole forum, ask in one of its posts: server public who:moderators where:parent
public-step-posts = See what was posted: server posts
public-step-usual = Back to what is usual: server public who:usual most:none

## What was posted
public-posts-title = What was posted publicly
public-posts = { $count ->
    [0] Nothing was posted yet.
    [one] One post so far.
   *[other] The newest { $count } posts.
  }
public-no-text = I keep no text of them, and each line for 90 days.
public-step-fewer = Too many? Lower it: server public most:10
public-column-when = When (UTC)
public-column-poster = By
public-column-channel = Channel
public-column-command = Question
public-column-pings = Pings
public-when = { DAY($day) }, { CLOCK($clock) }
public-channel = { $channel }
public-command = { $command }
public-pings = { $pings }

## Why not
public-nothing = Name what to change: who may post, how often at most, or the role of your helpers.
public-no-role = I do not know your helpers' role. Name it with “role”, or let moderators alone post.
public-no-parent = There is no channel around this one: ask in a thread or in a post of a forum, or take “here”.
