### Warum eine Röhre keinen Platz hat, und was dann, in wenigen Worten.

placed-fits = passt
placed-too_weak = zu schwach: nicht nehmen
placed-too_close = zu nah: nicht nehmen
placed-out_of_range = zu stark: nicht nehmen
placed-by_length = je nach Länge: sag sie mir
