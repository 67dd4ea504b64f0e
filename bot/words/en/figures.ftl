### How figures are put together. $first, $second and $third stand for figures.

figures-decimal = .
figures-span = { $first } to { $second }
figures-both = { $first } ({ $second })
figures-doubt = { $first } ({ $second } to { $third })
# The day, the name of the month, the year.
figures-day = { $first } { $second } { $third }
figures-moment = { $first } at { $second } ({ $third })
figures-month-1 = January
figures-month-2 = February
figures-month-3 = March
figures-month-4 = April
figures-month-5 = May
figures-month-6 = June
figures-month-7 = July
figures-month-8 = August
figures-month-9 = September
figures-month-10 = October
figures-month-11 = November
figures-month-12 = December
