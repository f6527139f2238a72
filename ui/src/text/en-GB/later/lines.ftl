## Of trays: what was done, the forecast, what is odd

forecast-due = The first about { $first }, half by { $half }, nearly all by { $most }: { $spread ->
        [0] { $high }
       *[other] { $low } to { $high }
    } in the end. It is { $way }: { $place } has been at { $temperature }.
forecast-due-today = Nearly all by { $most }: { $spread ->
        [0] { $high }
       *[other] { $low } to { $high }
    } in the end. Sown today, into { $temperature } in { $place }.
forecast-half-up = Half were due by { $half }, nearly all are by { $most }: { $spread ->
        [0] { $high }
       *[other] { $low } to { $high }
    } in the end. It is { $way }: { $place } has been at { $temperature }.
forecast-past = Nearly all should have been up by { $most }; { $spread ->
        [0] { $high }
       *[other] { $low } to { $high }
    } were expected. It is { $way }: { $place } has been at { $temperature }.
forecast-none = None comes up within a year at { $temperature }.
forecast-winter = Waiting out the winter: it is looked for again from { $until }.
forecast-cold-until = In its cold weeks until { $until }: it starts then.
forecast-cold-fridge-until = In its cold weeks: it may leave the fridge on { $until }, and starts then.
forecast-cold-weeks = In its cold weeks: it starts when it leaves the fridge.
line-garden-described = Garden settings noted
line-away = Away from { $from } to { $to }
line-place-described = Place noted: { $place }
line-packet-described = Packet noted: { $crop }{ $variety }
line-test-counted = Germination test of { $crop }{ $variety }: { $sprouted } of { $seeds } sprouted so far
line-test-closed = Germination test of { $crop }{ $variety } closed: { $sprouted } of { $seeds } sprouted
line-tray-described = Tray { $tray } labelled
line-moved = { $tray } moved to { $place }
line-moved-many =
    { $trays ->
        [one] { $trays } tray moved to { $place }
       *[other] { $trays } trays moved to { $place }
    }
line-covered = { $tray } covered
line-uncovered = Cover off { $tray }
line-emptied = { $tray } emptied
line-away-open = Away from { $from } until further notice
line-came-back = Back on { $day }
line-frost-reckoned = Frost odds reckoned from minima of { $from } to { $to }
line-night = Tonight’s low outdoors on { $day }: { $temperature }
line-night-in = Tonight’s low in { $place } on { $day }: { $temperature }
line-sheltered-brought-in = Brought { $tray } in for the night
line-sheltered-brought-in-many = Brought { $trays } trays in for the night
line-sheltered-fleece = Fleece over { $tray } for the night
line-sheltered-fleece-many = Fleece over { $trays } trays for the night
line-aired = Opened the lid: { $place }
line-heat-back = Heat back on in { $place }: { $at }
line-sown =
    { $seeds ->
        [one] Sown in { $tray }: { $seeds } seed of { $crop }{ $variety }
       *[other] Sown in { $tray }: { $seeds } seeds of { $crop }{ $variety }
    }
line-sown-about = Sown in { $tray }: about { $seeds } seeds of { $crop }{ $variety }
line-sown-pinch = Sown in { $tray }: a pinch of { $crop }{ $variety }
line-started-cuttings =
    { $number ->
        [one] Set in { $tray }: { $number } cutting of { $crop }{ $variety }
       *[other] Set in { $tray }: { $number } cuttings of { $crop }{ $variety }
    }
line-started-tubers =
    { $number ->
        [one] Set in { $tray }: { $number } tuber of { $crop }{ $variety }
       *[other] Set in { $tray }: { $number } tubers of { $crop }{ $variety }
    }
line-started-bulbs =
    { $number ->
        [one] Set in { $tray }: { $number } bulb of { $crop }{ $variety }
       *[other] Set in { $tray }: { $number } bulbs of { $crop }{ $variety }
    }
line-started-plugs =
    { $number ->
        [one] Set in { $tray }: { $number } plug of { $crop }{ $variety }
       *[other] Set in { $tray }: { $number } plugs of { $crop }{ $variety }
    }
line-felt = { $tray } felt { $feel }
line-felt-and-watered = { $tray } felt { $feel }, watered { $water }
line-watered = { $tray } watered { $water }
line-felt-many =
    { $trays ->
        [one] { $trays } tray felt { $feel }
       *[other] { $trays } trays felt { $feel }
    }
line-felt-and-watered-many =
    { $trays ->
        [one] { $trays } tray felt { $feel }, watered { $water }
       *[other] { $trays } trays felt { $feel }, watered { $water }
    }
line-watered-many =
    { $trays ->
        [one] { $trays } tray watered { $water }
       *[other] { $trays } trays watered { $water }
    }
line-fed = { $tray } fed
line-hardened-off = { $tray } put out for the day
line-reading = { $place }: { $low } to { $high } ({ $of })
line-reading-now = { $place }: { $temperature } now ({ $of })
line-heat-off = { $place }: heat off from { $from } to { $to }
line-heat-off-still = { $place }: heat off from { $from }
line-counted =
    { $number ->
        [0] Looked in { $tray }: no { $crop }{ $variety } up
       *[other] Counted in { $tray }: { $number } { $crop }{ $variety } up
    }
line-counted-batch = Counted in { $tray }: { $number } { $crop }{ $variety } alive
line-counted-few = Looked in { $tray }: a few { $crop }{ $variety } up
line-counted-half = Looked in { $tray }: half of the { $crop }{ $variety } up
line-counted-nearly-all = Looked in { $tray }: nearly all of the { $crop }{ $variety } up
line-went-on-cut-apart = Cut apart from { $tray }: { $number } { $crop }{ $variety } into { $into }
line-went-on-sown-on = Sown on from { $tray }: { $number } { $crop }{ $variety } into { $into }
line-went-on-pricked-out = Pricked out from { $tray }: { $number } { $crop }{ $variety } into { $into }
line-went-on-potted-on = Potted on from { $tray }: { $number } { $crop }{ $variety } into { $into }
line-left-thinned = Thinned in { $tray }: { $number } { $crop }{ $variety } taken out
line-left-planted-out = Planted out from { $tray }: { $number } { $crop }{ $variety }
line-left-sold = Sold from { $tray }: { $number } { $crop }{ $variety }
line-left-given-away = Given away from { $tray }: { $number } { $crop }{ $variety }
line-left-lost = Lost in { $tray }: { $number } { $crop }{ $variety } ({ $cause })
line-ready = Ready in { $tray }: { $crop }{ $variety }
line-dug-up = Dug up in { $tray }: { $firm } firm and { $soft } soft seeds of { $crop }{ $variety }
line-nothing-came-up = Nothing came up in { $tray }: { $crop }{ $variety }
line-finished = Done with in { $tray }: { $crop }{ $variety }
line-noted = Note: { $text }
line-photo-taken = Photo taken
line-photo-named = Photo given its name
line-job-put-off = Put off until { $until }: { $job }
line-job-dismissed = Not again: { $job }
line-withdrawn = An entry was withdrawn
line-corrected = An entry was corrected
line-undone = Undone
line-unknown = Written by a newer version: { $kind }
problem-more-left-than-there = More plants left than were there: look at the lines below and correct one.
problem-cells-twice = Some cells hold two things at once or lie outside the tray.
problem-never-described = Its first entry is missing or withdrawn.
problem-after-the-end = Something was written about it after it was done with.
