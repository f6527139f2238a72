# American English: only what is said otherwise than in en-GB.

read-of-compost = Of the mix
heat-caution = Electricity and damp do not mix: unplug before you look at a heater or its cord, and leave repairs to a licensed electrician under your local rules.
do-cover-off = Dome is off
do-fleece = Row cover over it
do-pot-on = Pot up
plants-potted_on = Pot up
tray-compost = Potting mix
round-open-stocktake = To the inventory
