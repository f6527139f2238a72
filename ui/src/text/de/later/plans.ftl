## Plans, sowing windows, plants kept for somebody

plan-packet = { $crop }{ $variety } { $year }
plan-by = { $wanted ->
    [one] Eine Pflanze
   *[other] { $wanted } Pflanzen
}, fertig bis { $day }
plan-sale = { $wanted ->
    [one] Eine Pflanze
   *[other] { $wanted } Pflanzen
} für den Verkauf am { $day }; mit Reserve { $raise } aufziehen
plan-every = { $wanted ->
    [one] Eine Pflanze
   *[other] { $wanted } Pflanzen
} { $weeks ->
    [one] jede Woche
   *[other] alle { $weeks } Wochen
}, von { $from } bis { $day }
plan-leaves = { $wanted ->
    [one] Eine Pflanze
   *[other] { $wanted } Pflanzen
}, immer wenn die letzte Aussaat Laubblätter hat, von { $from } bis { $day }
plan-stands = { $sowings ->
    [one] Einmal gesät
   *[other] { $sowings }-mal gesät
}: { $there } vorhanden, etwa { $coming } kommen noch, { $gone } abgegeben oder ausgepflanzt, von { $wanted }.
plan-stands-each = { $sowings ->
    [one] Einmal gesät
   *[other] { $sowings }-mal gesät
}: { $there } vorhanden, { $gone } abgegeben oder ausgepflanzt.
plan-next-by = Säen von { $from } bis { $last }: bis zu { $longest } Tage bis fertig, davon { $up } bis zum Aufgehen. { $seeds ->
    [0] {""}
   *[other] { $seeds } Samen reichen in neun von zehn Fällen für { $plants }.
}
plan-next-by-now = Jetzt säen, bis { $last }: bis zu { $longest } Tage bis fertig, davon { $up } bis zum Aufgehen. { $seeds ->
    [0] {""}
   *[other] { $seeds } Samen reichen in neun von zehn Fällen für { $plants }.
}
plan-next = Säen am { $from }. { $seeds ->
    [0] {""}
   *[other] { $seeds } Samen reichen in neun von zehn Fällen für { $plants }.
}
plan-next-now = Jetzt säen. { $seeds ->
    [0] {""}
   *[other] { $seeds } Samen reichen in neun von zehn Fällen für { $plants }.
}
plan-over = { $day } ist vorbei. Beende den Plan, oder gib ihm einen anderen Tag.
plan-sown-in-place = Das wird an Ort und Stelle gesät; im Pflanzenbuch steht nicht, wie lange es aufgezogen wird. Sag selbst, wie viele Wochen es braucht.
plan-crop-unknown = Das steht nicht im Pflanzenbuch. Sag selbst, wie viele Wochen es von der Aussaat bis fertig braucht.
plan-too-late = Zu spät für { $plants ->
    [one] eine weitere Pflanze
   *[other] { $plants } weitere Pflanzen
}: der letzte sinnvolle Tag zum Säen war { $last }. Wähle einen späteren Tag, oder kaufe Pflanzen.
plan-no-packet = Dafür gibt es keine Tüte mit Samen. Trage eine ein, oder kaufe Saatgut vor { $from }.
plan-too-few-seeds = { $seeds } Samen sind nötig, und in der besten Tüte sind { $left }. Besorge mehr vor { $from }.

notice-sow = { $crops } säen
line-plan-by = Geplant: { $wanted } { $crop }{ $variety } bis { $day }
line-plan-sale = Geplant: { $wanted } { $crop }{ $variety } für einen Verkauf am { $day }
line-plan-every = Geplant: { $wanted } { $crop }{ $variety } { $weeks ->
    [one] jede Woche
   *[other] alle { $weeks } Wochen
} bis { $day }
line-plan-true-leaves = Geplant: { $wanted } { $crop }{ $variety } immer wieder bis { $day }
line-plan-ended = Plan beendet: { $crop }{ $variety }
line-reserved = Zurückgelegt: { $number } { $crop }{ $variety }{ $named ->
    [1] { " " }für { $note }
   *[other] {""}
}
line-released = Nicht mehr zurückgelegt: { $number } { $crop }{ $variety }{ $named ->
    [1] { " " }für { $note }
   *[other] {""}
}

refused-plan-unknown = Diesen Plan gibt es im Tagebuch nicht. Sieh die Pläne noch einmal an.
refused-reservation-unknown = Diese Pflanzen sind für niemanden mehr zurückgelegt. Sieh die Liste noch einmal an.
refused-plan-too-far-ahead = { $day } ist mehr als zwei Jahre hin. Plane es später.
refused-plan-day-is-past = { $day } ist vorbei. Wähle einen Tag, der noch kommt.
asks-more-reserved-than-raised = { $reserved } wären zurückgelegt, und { $raised } sind vorhanden oder können noch aufgehen. Trotzdem zurücklegen?
asks-others-were-promised = { $reserved } davon sind für jemanden zurückgelegt, und { $rest } blieben übrig. Trotzdem abgeben?
error-too-few-ready = Nur { $ready } gelten als fertig. Melde mehr als fertig, oder gib weniger ab.

windows-frost-record = Die Linie zeigt, wie wahrscheinlich Frost ist, nach deinen Aufzeichnungen: im Frühling ein späterer, im Herbst ein früherer.
windows-frost-usual = Der letzte Frost ist meist um { $last }, der erste um { $first }.
windows-frost-spring = Der letzte Frost ist meist um { $last }. Der erste Frost im Herbst ist nicht angegeben.

windows-title = Wann säen
windows-no-frost = Wann gesät wird, hängt am letzten Frost. Sag, wann er meist ist, oder bringe Aufzeichnungen der Tagestiefstwerte.
windows-give-frost = Frosttage angeben
windows-none = Trage eine Tüte ein, säe etwas oder mache einen Plan: dann stehen hier die Tage zum Säen.
windows-chart = Die Tage zum Säen als Bild
windows-days = { $from } bis { $to }
windows-sow = säen
windows-out = auspflanzen
windows-last = letzter sinnvoller Tag zum Säen
windows-frost = Frost, nach den üblichen Tagen
windows-frost-odds = Wahrscheinlichkeit von Frost
windows-today = heute
windows-in-place = an Ort und Stelle gesät
windows-not-known = nicht bekannt
windows-without = Nicht im Bild, weil Angaben fehlen: { $crops }.

plans-title = Pläne
plans-none = So viele Pflanzen bis zu einem Tag, für einen Verkauf, oder alle paar Wochen eine Aussaat: ein Plan sagt, wann gesät wird, und die Runde erinnert daran.
plan-add = Einen Plan machen
plan-change = Ändern
plan-end = Beenden
plan-enough = Es ist genug gesät.
plan-new-title = Ein neuer Plan
plan-change-title = Den Plan ändern
plan-variety = Sorte
plan-variety-hint = Leer: jede Sorte.
plan-from-packet = Aus welcher Tüte
plan-best-packet = Die beste, wenn es so weit ist
plan-when = Wann
plan-as-by = Bis zu einem Tag
plan-as-sale = Für einen Verkauf
plan-as-every = Alle paar Wochen
plan-as-true-leaves = Sobald Laubblätter da sind
plan-wanted = Gewünschte Pflanzen
plan-wanted-each = Gewünschte Pflanzen je Aussaat
plan-day = Fertig zum Auspflanzen bis
plan-sale-day = Tag des Verkaufs
plan-over-label = Reserve in Prozent
plan-raise = Wochen von der Aussaat bis fertig
plan-raise-hint = Leer: wie im Pflanzenbuch.
plan-weeks = Wochen von einer Aussaat zur nächsten
plan-from = Von
plan-to = Bis
plan-save = Plan speichern
sow-for-plan = Das ist für deinen Plan von { $wanted ->
    [one] einer Pflanze
   *[other] { $wanted } Pflanzen
}.
sow-not-for-plan = Nicht für den Plan

goods-ready = fertig
goods-reserved = zurückgelegt
goods-free = frei
goods-growing = im Wachsen
goods-planted-out = ausgepflanzt
goods-sold = verkauft
goods-given-away = verschenkt
goods-table = Die Pflanzen als Tabelle
goods-act = Was zu tun ist
goods-sell = Verkaufen
kept-title = Für jemanden zurückgelegt
kept-none = Für niemanden ist etwas zurückgelegt.
kept-add = Pflanzen für jemanden zurücklegen
kept-line = { $number } { $what }{ $named ->
    [1] { " " }für { $note }
   *[other] {""}
}
kept-tray = Schale { $tray }
kept-ready = { $ready ->
    [0] noch keine fertig
   *[other] { $ready } fertig
}
kept-hand-over = Übergeben
kept-release = Nicht mehr zurückgelegt
kept-number = Wie viele
kept-for = Für wen
kept-for-hint = Ein Kürzel oder ein Wort; es darf leer bleiben.
kept-save = Zurücklegen
keep-these = Für jemanden zurücklegen
keep-these-title = { $what } zurücklegen
hand-over-title = { $name } gehen weg
hand-over-how = Wie
hand-over-number = Wie viele gehen weg
hand-over-save = Eintragen
