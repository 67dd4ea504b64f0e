### What a group named itself: the name is said as it was given. $own is that name.

-own = { $own }
    .a = your { $own }
    .your = your { $own }
    .many = your { $own }
