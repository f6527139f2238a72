# What was seen of plants and thought of sowings; what trays and packets taught.

line-seeds-lost = { $number ->
        [one] Ein Samen
       *[other] { $number } Samen
    } vor dem Aufgehen verloren in { $tray }: { $crop }{ $variety } ({ $cause })
line-explained = { $crop }{ $variety } in { $tray } lief schlecht; deine Erklärung: { $causes }
line-explained-both = { $crop }{ $variety } in { $tray } lief schlecht; deine Erklärung: { $causes }. { $text }
line-explained-words = { $crop }{ $variety } in { $tray } lief schlecht; deine Erklärung: { $text }
line-explained-taken-back = Deine Erklärung zu { $crop }{ $variety } in { $tray } wurde zurückgenommen
line-noticed-leggy = { $crop }{ $variety } in { $tray } wirkt vergeilt
line-noticed-sturdy = { $crop }{ $variety } in { $tray } wirkt gedrungen
line-noticed-pale-leaves = { $crop }{ $variety } in { $tray } hat blasse Blätter
line-noticed-true-leaves = { $crop }{ $variety } in { $tray } hat Laubblätter

reason-cause-spilt = verschüttet oder umgestoßen
reason-cause-other = etwas anderes

stated-pace-usual = Die Tage auf der Tüte sind die üblichen für { $crop }.
stated-pace-slower = Nach den Tagen auf der Tüte dauert es { $share } länger als üblich für { $crop }; damit wird gerechnet.
stated-pace-quicker = Nach den Tagen auf der Tüte dauert es { $share } weniger Zeit als üblich für { $crop }; damit wird gerechnet.
stated-pace-none = Nach dem Pflanzenbuch geht { $crop } bei der Temperatur auf der Tüte nicht auf: mit den Tagen darauf wird nicht gerechnet.
learnt-pace-usual = { $others ->
        [1] Andere Tüten ({ $crop })
       *[0] Sie
    } gingen so schnell auf wie üblich.
learnt-pace-slower = { $others ->
        [1] Andere Tüten ({ $crop })
       *[0] Sie
    } brauchten { $share } länger als üblich; damit wird gerechnet.
learnt-pace-quicker = { $others ->
        [1] Andere Tüten ({ $crop })
       *[0] Sie
    } brauchten { $share } weniger Zeit als üblich; damit wird gerechnet.

own-reason-title = Deine Erklärung, { $day }
own-reason-say = Selbst sagen, warum
own-reason-change = Erklärung ändern
own-reason-how = Was du gesehen hast, zählt neben dem Berechneten. Wo es keine faire Chance hatte (gefressen, verschüttet, überhitzt, erfroren, ausgetrocknet, fortgeschwemmt), wird es der Tüte nicht angelastet.
own-reason-causes = Was schuld war
own-reason-words = In deinen Worten

dig-other = Oder sonst:

relative-again-of = Neu oder dazu gesät zur Aussaat in { $code } am { $day }
relative-sown-again = Neu oder dazu gesät in { $code } am { $day }{ $number ->
        [0] {""}
       *[other] : { $number }
    }

plants-seeds_lost = Samen verloren
plants-pale-leaves = Blasse Blätter
plants-leggy = Vergeilt
leave-seeds_lost = Samen vor dem Aufgehen verloren: { $what }
leave-seeds =
    { $seeds ->
        [one] Ein Samen ist noch nicht aufgegangen.
       *[other] { $seeds } Samen sind noch nicht aufgegangen.
    }

## Why it did badly

reason = { $likely ->
        [1] Wahrscheinlich
       *[0] Möglicherweise
    } { $cause }: das kann etwa { $seedlings ->
        [one] einen Sämling
       *[other] { $seedlings } Sämlinge
    } gekostet haben.
reason-cause-too-cold = zu kalt
reason-cause-too-hot = zu heiß
reason-cause-old-seed = altes Saatgut
reason-cause-too-deep = zu tief gesät
reason-cause-too-shallow = zu flach gesät
reason-cause-buried-from-light = trotz Lichtbedarf bedeckt
reason-cause-dried-out = ausgetrocknet
reason-cause-wet-and-cool = nass und kühl gehalten
reason-cause-wrong-compost = die falsche Erde
reason-cause-washed-out = mit der Kanne fortgeschwemmt
reason-cause-eaten = gefressen
reason-cause-damped-off = Umfallkrankheit
reason-cause-frosted = erfroren
reason-cause-baked = überhitzt
reason-cause-want-of-light = vergeilt aus Lichtmangel
reason-cause-long-in-the-heat = zu lange in der Wärme
reason-fact-days = { $days ->
        [one] Ein Tag
       *[other] { $days } Tage
    } bei im Mittel { $temperature }; nötig sind { $from } bis { $to }.
reason-fact-germination = Beim Abfüllen gingen davon vielleicht { $packed } von 10 auf, jetzt { $now ->
        [0] weniger als 1
       *[other] { $now }
    } von 10.
reason-fact-germination-year = Von { $year }: damals gingen davon vielleicht { $packed } von 10 auf, jetzt { $now ->
        [0] weniger als 1
       *[other] { $now }
    } von 10.
reason-fact-depth-most = { $depth } tief gesät; { $right } ist das Höchste.
reason-fact-depth-least = { $depth } tief gesät; { $right } ist das Mindeste.
reason-fact-dry = Trocken und an dem Tag nicht gegossen: { $felt ->
        [one] einmal
        [2] zweimal
       *[other] { $felt }-mal
    } vor dem Aufgehen.
reason-fact-gap = Einmal { $days } Tage lang nicht gefühlt.
reason-fact-wet = { $felt ->
        [2] Zweimal
       *[other] { $felt }-mal
    } nass, bei im Mittel { $temperature }; nötig sind { $from } bis { $to }.
reason-fact-sown-in = Gesät in: { $compost }.
reason-fact-can = { $times ->
        [one] Einmal
       *[other] { $times }-mal
    } mit einer Kanne ohne Brause gegossen.
reason-fact-saw = Du hast { $number } als dadurch verloren eingetragen.
reason-fact-saw-it = Du hast es eingetragen.
reason-fact-light = Es stand nach dem Aufgehen nicht hell.
reason-fact-heat = { $days } Tage über der Heizung, nachdem es aufging.
remedy-too-cold = Nächstes Mal bis zum Aufgehen bei { $from } bis { $to } aufstellen.
remedy-too-hot = Nächstes Mal bei { $from } bis { $to } aufstellen: bis zum Aufgehen nicht in die Sonne und nicht auf die Heizung.
remedy-old-seed = Neues Saatgut kaufen oder gewinnen, oder zur Hälfte dieses und zur Hälfte aus einer neuen Tüte säen: ein fairer Versuch.
remedy-too-deep = Nächstes Mal { $least } bis { $most } tief säen; halb und halb ist ein fairer Versuch.
remedy-too-shallow = Nächstes Mal { $least } bis { $most } hoch bedecken; halb und halb ist ein fairer Versuch.
remedy-buried-from-light = Andrücken und offen lassen, oder höchstens { $most } bedecken; halb und halb ist ein fairer Versuch.
remedy-dried-out = Alle paar Tage fühlen und bis zum Aufgehen abdecken.
remedy-wet-and-cool = Nur gießen, wenn es sich trocken anfühlt, und wärmer stellen.
remedy-wrong-compost = Nächstes Mal Aussaaterde nehmen, vor dem Schütten angefeuchtet; halb und halb ist ein fairer Versuch.
remedy-washed-out = Feine Saat von unten oder mit Sprüher gießen.
remedy-eaten = Nächstes Mal außer Reichweite stellen, unter Deckel oder feines Netz.
remedy-damped-off = Dünner säen, in saubere Schalen und frische Erde; Haube ab, sobald es aufgeht.
remedy-frosted = Nächstes Mal hereinholen oder abdecken, wenn die Nacht Frost bringen kann.
remedy-baked = Nächstes Mal schattieren und an sonnigen Morgen den Deckel öffnen.
remedy-want-of-light = Nächstes Mal am Tag des Aufgehens ins Helle stellen.
remedy-long-in-the-heat = Nächstes Mal am Tag des Aufgehens von der Heizung nehmen.
reasons-title = Warum es schlecht lief: { $name }
