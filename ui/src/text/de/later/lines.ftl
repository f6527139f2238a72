## Of trays: what was done, the forecast, what is odd

forecast-due = Die ersten etwa { $first }, die Hälfte bis { $half }, fast alle bis { $most }: am Ende { $spread ->
        [0] { $high }
       *[other] { $low } bis { $high }
    }. Stand: { $way }; { $place } hatte { $temperature }.
forecast-due-today = Fast alle bis { $most }: am Ende { $spread ->
        [0] { $high }
       *[other] { $low } bis { $high }
    }. Heute gesät, bei { $temperature }: { $place }.
forecast-half-up = Die Hälfte war bis { $half } fällig, fast alle bis { $most }: am Ende { $spread ->
        [0] { $high }
       *[other] { $low } bis { $high }
    }. Stand: { $way }; { $place } hatte { $temperature }.
forecast-past = Fast alle sollten bis { $most } da sein; erwartet: { $spread ->
        [0] { $high }
       *[other] { $low } bis { $high }
    }. Stand: { $way }; { $place } hatte { $temperature }.
forecast-none = Bei { $temperature } geht binnen eines Jahres nichts auf.
forecast-winter = Wartet den Winter ab: ab { $until } wird wieder nachgesehen.
forecast-cold-until = In den Kältewochen bis { $until }: dann beginnt es.
forecast-cold-fridge-until = In den Kältewochen: ab { $until } darf es aus dem Kühlschrank, dann beginnt es.
forecast-cold-weeks = In den Kältewochen: es beginnt, wenn es aus dem Kühlschrank kommt.
line-garden-described = Angaben zum Garten eingetragen
line-away = Fort von { $from } bis { $to }
line-place-described = Standort eingetragen: { $place }
line-packet-described = Tüte eingetragen: { $crop }{ $variety }
line-test-counted = Keimprobe { $crop }{ $variety }: bisher { $sprouted } von { $seeds } gekeimt
line-test-closed = Keimprobe { $crop }{ $variety } abgeschlossen: { $sprouted } von { $seeds } gekeimt
line-tray-described = Schale { $tray } beschriftet
line-moved = { $tray } umgestellt: { $place }
line-moved-many =
    { $trays ->
        [one] { $trays } Schale umgestellt: { $place }
       *[other] { $trays } Schalen umgestellt: { $place }
    }
line-covered = { $tray } abgedeckt
line-uncovered = Haube ab: { $tray }
line-emptied = { $tray } geleert
line-away-open = Fort ab { $from } bis auf Weiteres
line-came-back = Zurück am { $day }
line-frost-reckoned = Frostrisiko berechnet aus Tiefstwerten von { $from } bis { $to }
line-night = Tiefstwert der Nacht draußen, { $day }: { $temperature }
line-night-in = Tiefstwert der Nacht, { $place }, { $day }: { $temperature }
line-sheltered-brought-in = { $tray } zur Nacht hereingeholt
line-sheltered-brought-in-many = { $trays } Schalen zur Nacht hereingeholt
line-sheltered-fleece = Vlies zur Nacht über { $tray }
line-sheltered-fleece-many = Vlies zur Nacht über { $trays } Schalen
line-aired = Deckel geöffnet: { $place }
line-heat-back = { $place }: Heizung wieder an, { $at }
line-sown =
    { $seeds ->
        [one] Gesät in { $tray }: { $seeds } Samen { $crop }{ $variety }
       *[other] Gesät in { $tray }: { $seeds } Samen { $crop }{ $variety }
    }
line-sown-about = Gesät in { $tray }: etwa { $seeds } Samen { $crop }{ $variety }
line-sown-pinch = Gesät in { $tray }: eine Prise { $crop }{ $variety }
line-started-cuttings =
    { $number ->
        [one] Eingesetzt in { $tray }: { $number } Steckling { $crop }{ $variety }
       *[other] Eingesetzt in { $tray }: { $number } Stecklinge { $crop }{ $variety }
    }
line-started-tubers =
    { $number ->
        [one] Eingesetzt in { $tray }: { $number } Knolle { $crop }{ $variety }
       *[other] Eingesetzt in { $tray }: { $number } Knollen { $crop }{ $variety }
    }
line-started-bulbs =
    { $number ->
        [one] Eingesetzt in { $tray }: { $number } Blumenzwiebel { $crop }{ $variety }
       *[other] Eingesetzt in { $tray }: { $number } Blumenzwiebeln { $crop }{ $variety }
    }
line-started-plugs =
    { $number ->
        [one] Eingesetzt in { $tray }: { $number } Jungpflanze { $crop }{ $variety }
       *[other] Eingesetzt in { $tray }: { $number } Jungpflanzen { $crop }{ $variety }
    }
line-felt = { $tray } fühlte sich { $feel } an
line-felt-and-watered = { $tray } fühlte sich { $feel } an, { $water } gegossen
line-watered = { $tray } { $water } gegossen
line-felt-many =
    { $trays ->
        [one] { $trays } Schale fühlte sich { $feel } an
       *[other] { $trays } Schalen fühlten sich { $feel } an
    }
line-felt-and-watered-many =
    { $trays ->
        [one] { $trays } Schale fühlte sich { $feel } an, { $water } gegossen
       *[other] { $trays } Schalen fühlten sich { $feel } an, { $water } gegossen
    }
line-watered-many =
    { $trays ->
        [one] { $trays } Schale { $water } gegossen
       *[other] { $trays } Schalen { $water } gegossen
    }
line-fed = { $tray } gedüngt
line-hardened-off = { $tray } tagsüber hinausgestellt
line-reading = { $place }: { $low } bis { $high } ({ $of })
line-reading-now = { $place }: jetzt { $temperature } ({ $of })
line-heat-off = { $place }: Heizung aus von { $from } bis { $to }
line-heat-off-still = { $place }: Heizung aus seit { $from }
line-counted =
    { $number ->
        [0] Nachgesehen in { $tray }: { $crop }{ $variety } noch nicht aufgegangen
       *[other] Gezählt in { $tray }: { $number } × { $crop }{ $variety } aufgegangen
    }
line-counted-batch = Gezählt in { $tray }: { $number } × { $crop }{ $variety } am Leben
line-counted-few = Nachgesehen in { $tray }: { $crop }{ $variety }, einige aufgegangen
line-counted-half = Nachgesehen in { $tray }: { $crop }{ $variety }, die Hälfte aufgegangen
line-counted-nearly-all = Nachgesehen in { $tray }: { $crop }{ $variety }, fast alle aufgegangen
line-went-on-cut-apart = Abgeteilt von { $tray }: { $number } × { $crop }{ $variety } in { $into }
line-went-on-sown-on = Aus { $tray } in Erde gelegt: { $number } × { $crop }{ $variety } in { $into }
line-went-on-pricked-out = Pikiert aus { $tray }: { $number } × { $crop }{ $variety } in { $into }
line-went-on-potted-on = Umgetopft aus { $tray }: { $number } × { $crop }{ $variety } in { $into }
line-left-thinned = Vereinzelt in { $tray }: { $number } × { $crop }{ $variety } herausgenommen
line-left-planted-out = Ausgepflanzt aus { $tray }: { $number } × { $crop }{ $variety }
line-left-sold = Verkauft aus { $tray }: { $number } × { $crop }{ $variety }
line-left-given-away = Verschenkt aus { $tray }: { $number } × { $crop }{ $variety }
line-left-lost = Verloren in { $tray }: { $number } × { $crop }{ $variety } ({ $cause })
line-ready = Fertig in { $tray }: { $crop }{ $variety }
line-dug-up = Ausgegraben in { $tray }: { $crop }{ $variety }, { $firm } fest und { $soft } weich
line-nothing-came-up = Nichts aufgegangen in { $tray }: { $crop }{ $variety }
line-finished = Abgeschlossen in { $tray }: { $crop }{ $variety }
line-noted = Notiz: { $text }
line-photo-taken = Foto gemacht
line-photo-named = Foto benannt
line-job-put-off = Verschoben auf { $until }: { $job }
line-job-dismissed = Nicht mehr: { $job }
line-withdrawn = Ein Eintrag wurde gestrichen
line-corrected = Ein Eintrag wurde berichtigt
line-undone = Rückgängig gemacht
line-unknown = Von einer neueren Version geschrieben: { $kind }
problem-more-left-than-there = Es gingen mehr Pflanzen fort, als da waren: sieh die Einträge unten an und berichtige einen.
problem-cells-twice = Einige Zellen enthalten zweierlei zugleich oder liegen außerhalb der Schale.
problem-never-described = Der erste Eintrag fehlt oder ist gestrichen.
problem-after-the-end = Nach dem Abschluss wurde noch etwas eingetragen.
