### Facts: GroupShown, AnswersShown, OwnLampTold, OwnScreenTold, OwnTargetTold, OwnAnimalTold
### What a group has set, for its moderators.

group-title = What this group has set
group-head = { $settings ->
    [0] { $figures ->
        [0] Nothing is set here yet.
        [one] 1 figure of your own.
       *[other] { $figures } figures of your own.
      }
    [one] 1 setting, { group-figures }.
   *[other] { $settings } settings, { group-figures }.
  }
group-figures = { $figures ->
    [0] no figures of your own
    [one] 1 figure of your own
   *[other] { $figures } figures of your own
  }

## Settings
group-label-units = Shown first
# Only with: $units
group-units = { $units ->
    [in] inches and °F
   *[cm] centimetres and °C
  }
group-label-animal = Animal
# Only with: $animal
group-animal = { NAME($animal) }
group-label-site = Guide
# Only with: $site
group-site = { $site }
group-label-zone = Time zone
# Only with: $zone
group-zone = { $zone }
group-label-language = Language
# Only with: $language
group-language = { $language ->
    [german] Deutsch
   *[english] English
  }
group-label-vets = Vets
# Only with: $vets
group-vets = { $vets }
group-label-helpers = Helpers
# Only with: $helpers
group-helpers = channel { $helpers }
group-label-role = Helpers' role
# Only with: $role
group-role = role { $role }
group-label-posting = Public posts
group-posting = { $posting ->
    [everybody] by everybody
    [helpers] by helpers and moderators
    [moderators] by moderators
   *[none] as usual
  }{ $most ->
    [none] {""}
   *[other] , { $most } an hour each
  }{ $places ->
    [0] {""}
    [one] ; 1 channel has its own rule
   *[other] ; { $places } channels have their own rule
  }
group-label-channels = Channels
group-channels = { $public } for everybody, { $private } for the asker alone

## Figures of its own
group-label-lamp = Lamp { $name }
group-label-screen = Screen { $name }
group-label-target = Target { NAME($species) }
group-label-own-animal = Own animal { $name }

## Changed
group-set-title = Your group's settings
group-set = { $settings ->
    [0] Kept. Nothing is set any more.
   *[other] Kept. Answers here follow it from now on.
  }
group-answers-title = Who sees the answers here
group-answers = { $audience ->
    [private] From now on only the asker sees the answers here.
    [public] From now on everybody here sees the answers.
   *[usual] From now on only the asker sees the answers here. They can share them.
  }

## Steps
group-step-change = Change a setting: server set units:cm
group-step-changes = See who changed what: server changes
group-step-none = Take one away with none: server set units:none
group-step-usual = Back to what is usual: server answers show:usual

## Why not
group-no-channel = Ask this in a channel of a Discord server.
group-no-setting = Name what to change: units, animal, site, zone or language.
