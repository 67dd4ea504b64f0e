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
figures-short-1 = Jan
figures-short-2 = Feb
figures-short-3 = Mar
figures-short-4 = Apr
figures-short-5 = May
figures-short-6 = Jun
figures-short-7 = Jul
figures-short-8 = Aug
figures-short-9 = Sep
figures-short-10 = Oct
figures-short-11 = Nov
figures-short-12 = Dec
