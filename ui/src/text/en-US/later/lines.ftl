# American English: only what is said otherwise than in en-GB.

line-tray-described = Tray { $tray } labeled
line-uncovered = Dome off { $tray }
line-sheltered-fleece = Row cover over { $tray } for the night
line-sheltered-fleece-many = Row cover over { $trays } trays for the night
line-went-on-potted-on = Potted up from { $tray }: { $number } { $crop }{ $variety } into { $into }
