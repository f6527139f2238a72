# American English: only what is said otherwise than in en-GB.

seed-part-stocktake = Inventory
test-how = Lay the seeds apart on a damp paper towel, roll it up, put it into an open bag with a label and keep it where this crop likes to come up. Keep it damp, never wet. Treated seed: gloves, and no kitchenware that is eaten from.
stocktake-progress = How far the inventory is
