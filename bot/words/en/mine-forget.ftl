### Facts: Forgetting, Forgotten
### Everything of a person deleted, once that person is sure.

mine-forget-ask-title = Delete everything I keep for you?
mine-forget-ask = Nothing is deleted yet.
mine-forget-would = Saying yes deletes { $enclosures ->
    [0] no enclosures
    [one] { $enclosures } enclosure with its readings
   *[other] { $enclosures } enclosures with their readings
  }, { $reminders ->
    [0] no reminders
    [one] { $reminders } reminder
   *[other] { $reminders } reminders
  }{ $spares ->
    [0] {""}
    [one] , { $spares } spare lamp
   *[other] , { $spares } spare lamps
  }{ $cases ->
    [0] {""}
    [one] , { $cases } case shared with helpers
   *[other] , { $cases } cases shared with helpers
  } and your settings, for good.
mine-forget-would-given = It also takes back { $given ->
    [one] the reading that you gave to a group
   *[other] the { $given } readings that you gave to groups
  }.
mine-forget-step-export = Keep a copy first: mine export
mine-forget-step-sure = Then delete: mine forget sure:yes
mine-forget-title = Everything of yours is deleted
mine-forget-head = Deleted for good on { DAY($day) }.
mine-forget-backups = Backups that the people who run this bot made before still hold it, until they are thrown away.
mine-forget-label-enclosures = Enclosures
mine-forget-enclosures = { $enclosures }
mine-forget-label-readings = Readings
mine-forget-readings = { $readings }
mine-forget-label-reminders = Reminders
mine-forget-reminders = { $reminders }
mine-forget-label-spares = Spare lamps
mine-forget-spares = { $spares }
mine-forget-label-cases = Cases with helpers
mine-forget-cases = { $cases }
mine-forget-label-settings = Settings
mine-forget-settings = { $settings ->
    [yes] deleted
   *[no] there were none
  }
mine-forget-label-given = Readings given to groups
mine-forget-given = { $given }
mine-forget-label-logs = Logs of servers
mine-forget-logs = { $log_lines ->
    [one] your number was taken out of { $log_lines } line
   *[other] your number was taken out of { $log_lines } lines
  }; what was changed stays
mine-forget-label-posts = Public posts
mine-forget-posts = { $posts ->
    [one] your number was taken out of { $posts } line
   *[other] your number was taken out of { $posts } lines
  }; the messages stay in their channels
mine-forget-label-advice = Advice to others
mine-forget-advice = { $advice ->
    [one] your number was taken out of { $advice } piece of advice
   *[other] your number was taken out of { $advice } pieces of advice
  }; the advice stays
