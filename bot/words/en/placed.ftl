### Why a tube has no place, and what to do about it, in a few words.

placed-fits = fits
placed-too_weak = too weak: do not use
placed-too_close = too close: do not use
placed-out_of_range = too strong: do not use
placed-by_length = by its length: tell it
