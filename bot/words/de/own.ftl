### Was eine Gruppe selbst benannt hat: der Name bleibt, wie er ist. $own ist dieser Name.

-own = { $own }
    .a = dein Tier „{ $own }“
    .acc = dein Tier „{ $own }“
    .dat = deinem Tier „{ $own }“
    .your = dein Tier „{ $own }“
    .your-acc = dein Tier „{ $own }“
    .your-dat = deinem Tier „{ $own }“
    .your-gen = deines Tieres „{ $own }“
    .many = dein Tier „{ $own }“
