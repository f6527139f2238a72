## Sheets of paper: for whoever looks after the trays, and the round to tick

sitter-water = Trocken und leicht: die Schale zwanzig Minuten in zwei Finger hoch lauwarmes Wasser stellen, dann abtropfen lassen. Feucht oder nass: stehen lassen. Nie mit einer Kanne ohne feine Brause gießen.
sitter-no-more = Zu wenig lässt sich beheben; zu nass, und es fault. Im Zweifel bis morgen lassen.
sitter-fridge = Diese im Kühlschrank lassen, geschlossen. Sie brauchen nichts.
sitter-feel =
    { $days ->
        [one] Jeden Tag mit dem Finger die Erde fühlen: { $trays ->
            [one] die Schale
           *[other] die { $trays } Schalen
        }.
       *[other] Alle { $days } Tage mit dem Finger die Erde fühlen: { $trays ->
            [one] die Schale
           *[other] die { $trays } Schalen
        }.
    }
sitter-lid = An einem sonnigen Morgen den Deckel eine Handbreit öffnen; vor der Dämmerung schließen.
sitter-frost = Wenn Frost angesagt ist, diese zur Nacht ins Haus holen: { $trays }.
sitter-what = { $crops }
sitter-up = Ab { $first } nachsehen: { $crops }. Wenn etwas aufgegangen ist, Tag und Anzahl aufschreiben.
sitter-up-uncover = Ab { $first } nachsehen: { $crops }. Wenn etwas aufgegangen ist, die Haube abnehmen.
sitter-up-move = Ab { $first } nachsehen: { $crops }. Wenn etwas aufgegangen ist, die Schale noch am selben Tag umstellen, sie braucht Licht: { $to }.
sitter-up-move-uncover = Ab { $first } nachsehen: { $crops }. Wenn etwas aufgegangen ist, die Haube abnehmen und die Schale noch am selben Tag umstellen, sie braucht Licht: { $to }.
sitter-sprouts = Ab { $first } nach Wurzeln sehen: { $crops }. Wenn welche da sind, diese Samen auf Erde legen, dünn bedecken und mit dem Sprüher gießen.

paper-title-away = Während ich fort bin
paper-title-round = Die Runde auf Papier
paper-away-what = { $to ->
        [none] Von { $from } bis auf Weiteres.
       *[other] Von { $from } bis { $to }.
    }
paper-away-none = In den Einstellungen ist keine Abwesenheit eingetragen: so steht es heute.
paper-print = Drucken
paper-share = Als Text senden
paper-copied = Der Text ist kopiert: füge ihn dort ein, wo du der Vertretung schreibst.
paper-empty = Nichts lebt in einer Schale: es gibt nichts zu versorgen.
paper-round-none = Nichts ist jetzt fällig.
paper-round-what = Mit Bleistift abhaken. Zum späteren Eintragen die Runde öffnen und „Etwas von früher eintragen“ wählen.
paper-moist = trocken / feucht / nass
paper-count = aufgegangen: ____
paper-done = erledigt
paper-back = Zurück zur Runde
paper-place-reading = tiefster ____ höchster ____
