### Facts: Failure, TryAgain, AskedBy, FormOf, BoardBeside
### Our own sentences around an answer on Discord.

front-ask-again = I no longer know which question this was. Ask it again.
front-failed = Something went wrong on my side; it is noted as { $number }. Try again, or tell that number to the people who run this bot.
front-leaving = I am being restarted. Ask again in a minute.
front-too-many = Many questions came at once. Try again { $when }.
front-no-words = I can only read words, and this message has none.
front-no-message-before = There is no message of this writer from the last quarter of an hour. Use “Answer this” on the first one.
front-nothing-to-add = I found nothing about light or heat to add in that message.
front-stays-private = In this channel each answer is for the one who asks, so it is not shown to others.
front-public-helpers = Here only helpers and moderators show an answer to others. Yours is whole, for you alone.
front-public-moderators = Here only moderators show an answer to others. Yours is whole, for you alone.
front-public-person = You have posted as often as this group allows in an hour, so this answer stays with you alone. Post it { $when }.
front-public-channel = This channel has as many posts as its group allows in an hour, so this answer stays with you alone. Post it { $when }.
front-unsure-posted = I lost the connection while I posted this. Look whether it is there; if not, ask again.
front-needs-right = This is for moderators: you need the right Manage Messages in this channel, which an administrator of the server can give you.
front-changed = This question has changed. Restart Discord, then ask it again.

## Pictures
front-no-picture = There is no picture of this answer.
front-picture-busy = There is no picture just now: too many were asked for at once. The answer holds without it.
front-picture-failed = There is no picture just now: it could not be drawn. The answer holds without it.

## Who asked
front-asked = { $asker } asked:
front-asked-for = { $reader }, { $asker } asked this for you:
front-asked-missing = { $reader }, { $asker } would like to help you and needs to know more. Pick below:
front-asked-about = { $reader }, { $asker } asked me about { $link }:

## Forms
front-form = Ask: { $command }
front-form-again = Ask again: { $command }
front-delete = Delete this for good? Nothing brings it back.

## Where a person is better
front-wrong-kept = Thank you. The moderators see the figures of this question, no words and no name.
front-wrong-lost = I could not keep that. Tell a moderator.
front-helper-sure = This is posted in { $link }, with your name:
front-helper-posted = Posted. Somebody will answer there: { $link }
front-helper-cannot = I may not write in that channel. Ask a moderator.
front-helper-none = This group has no channel for helpers any more.
front-helper-asks = { $asker } asks for a helper. What I have said so far:

## A board before it is posted
front-board-new = This channel has no board of this topic yet. This would be posted and pinned:
front-board-same = This board is here just so. Nothing would change.
front-board-unseen = This channel has a board of this topic, but I cannot read it now. This would take its place:
front-board-other = This channel has a board of this topic. { $gone ->
    [one] 1 line of it goes
   *[other] { $gone } lines of it go
  }, { $come ->
    [one] 1 comes
   *[other] { $come } come
  }.
front-board-stands = Now (struck through: goes)
front-board-would = Then (underlined: comes)
front-board-pictures = Its pictures:
