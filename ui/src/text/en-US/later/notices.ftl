# American English: only what is said otherwise than in en-GB.

notice-cover-off = dome off { $crops }
notice-pot-on = pot up { $crops }
notice-stocktake = inventory before ordering
