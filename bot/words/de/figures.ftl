### Wie Zahlen zusammengesetzt werden. $first, $second und $third stehen für Zahlen.

figures-decimal = ,
figures-span = { $first } bis { $second }
figures-both = { $first } ({ $second })
figures-doubt = { $first } ({ $second } bis { $third })
# Der Tag, der Name des Monats, das Jahr.
figures-day = { $first }. { $second } { $third }
figures-moment = { $first } um { $second } Uhr ({ $third })
figures-month-1 = Januar
figures-month-2 = Februar
figures-month-3 = März
figures-month-4 = April
figures-month-5 = Mai
figures-month-6 = Juni
figures-month-7 = Juli
figures-month-8 = August
figures-month-9 = September
figures-month-10 = Oktober
figures-month-11 = November
figures-month-12 = Dezember
figures-short-1 = Jan
figures-short-2 = Feb
figures-short-3 = März
figures-short-4 = Apr
figures-short-5 = Mai
figures-short-6 = Juni
figures-short-7 = Juli
figures-short-8 = Aug
figures-short-9 = Sep
figures-short-10 = Okt
figures-short-11 = Nov
figures-short-12 = Dez
