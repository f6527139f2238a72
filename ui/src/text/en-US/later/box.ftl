# American English: only what is said otherwise than in en-GB.

line-stock-keep = Inventory: { $crop }{ $variety } stays
line-stock-test = Inventory: { $crop }{ $variety } to be tested
