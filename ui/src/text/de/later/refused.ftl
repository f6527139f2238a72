## What cannot be done, what is asked first, what went wrong

refused-nothing-to-write = Es gibt nichts einzutragen. Wähle, was geschehen ist.
refused-nothing-to-undo = Es gibt nichts rückgängig zu machen: das ist schon geschehen.
refused-amendment-by-hand = Das geht nur, indem ein Eintrag berichtigt oder gestrichen wird.
refused-entry-too-large = Das ist zu viel für einen Eintrag. Kürze ihn oder mache zwei daraus.
refused-reading-out-of-range = { $temperature } kann nicht stimmen: möglich ist { $lowest } bis { $highest }. Sieh noch einmal auf das Thermometer.
refused-min-above-max = Der tiefste Wert, { $lowest }, liegt über dem höchsten, { $highest }. Tausche sie oder lies noch einmal ab.
refused-before-the-sowing = Es begann erst am { $day }. Wähle eine spätere Zeit oder berichtige den Beginn.
refused-in-the-future = { $day } ist noch nicht gekommen. Wähle jetzt oder früher.
refused-zone-unknown = „{ $zone }“ ist keine Zeitzone. Wähle eine aus der Liste.
refused-name-empty = Ein Name fehlt. Gib einen ein.
refused-name-too-long = Der Name ist zu lang. Höchstens { $most } Zeichen.
refused-text-empty = Die Notiz ist leer. Schreibe etwas oder lass sie.
refused-text-too-long = Der Text ist zu lang. Höchstens { $most } Zeichen, oder mache zwei daraus.
refused-tray-without-cells = Eine Schale braucht mindestens eine Reihe und eine Spalte.
refused-tray-too-large = Das sind mehr als { $most } Zellen. Nimm weniger Reihen oder Spalten.
refused-tray-would-lose-cells = In Zellen, die { $code } dann nicht mehr hätte, stehen Pflanzen. Setze sie erst um.
refused-cells-none = Dafür ist keine Zelle frei. Wähle Zellen oder nimm eine andere Schale.
refused-cells-outside = Diese Zellen liegen außerhalb von { $code } mit { $cells }. Wähle andere.
refused-cells-taken = Einige dieser Zellen sind belegt ({ $cells }). Wähle freie.
refused-code-taken = Eine andere Schale in Gebrauch heißt { $code }. Gib dieser einen anderen Code.
refused-place-unknown = Dieser Standort steht nicht im Tagebuch. Wähle einen anderen.
refused-packet-unknown = Diese Tüte steht nicht im Tagebuch. Wähle eine andere.
refused-tray-unknown = Diese Schale steht nicht im Tagebuch. Wähle eine andere.
refused-sowing-unknown = Diese Aussaat steht nicht im Tagebuch. Geh zurück und wähle noch einmal.
refused-batch-unknown = Diese Pflanzen stehen nicht im Tagebuch. Geh zurück und wähle noch einmal.
refused-entry-unknown = Dieser Eintrag steht nicht im Tagebuch. Geh zurück und wähle noch einmal.
refused-entry-not-understood = Diesen Eintrag hat eine neuere Version geschrieben; hier lässt er sich nicht ändern. Aktualisiere zuerst.
refused-id-taken = Das ist schon eingetragen.
refused-place-retired = { $name } wird nicht mehr benutzt. Wähle einen anderen Standort, oder nimm ihn in den Einstellungen wieder in Gebrauch.
refused-tray-emptied = { $code } wurde geleert. Nimm eine andere Schale, oder mache das Leeren rückgängig.
refused-tray-occupied = In { $code } lebt noch etwas. Sag erst, was daraus wurde.
refused-already-ended = Das ist schon abgeschlossen. Mache erst den Abschluss rückgängig, falls es lebt.
refused-something-came-up =
    { $up ->
        [one] { $up } ging auf, also kann es nicht sein, dass nichts aufging. Sag stattdessen, was daraus wurde.
       *[other] { $up } gingen auf, also kann es nicht sein, dass nichts aufging. Sag stattdessen, was daraus wurde.
    }
refused-number-zero = Die Zahl muss mindestens 1 sein.
refused-number-too-large = Das ist zu viel, um zu stimmen: höchstens { $most }. Gib die Zahl noch einmal ein.
refused-parts-none = Sag, in welche Schalen sie kamen.
refused-more-than-there =
    { $there ->
        [one] Nur { $there } ist da. Zähle noch einmal oder gib eine kleinere Zahl an.
       *[other] Nur { $there } sind da. Zähle noch einmal oder gib eine kleinere Zahl an.
    }
refused-more-than-seeds =
    { $seeds ->
        [one] Nur { $seeds } Samen ist nicht aufgegangen. Gib kleinere Zahlen an.
       *[other] Nur { $seeds } Samen sind nicht aufgegangen. Gib kleinere Zahlen an.
    }
refused-latitude-out-of-range = Die Breite muss zwischen { $most } Süd und { $most } Nord liegen. Gib sie noch einmal an.
refused-month-day-unknown = Den Tag gibt es nicht. Gib Monat und Tag an, wie 05-14.
refused-days-out-of-range = Keimdauer in Tagen: von 1 bis { $most }, die kleinere Zahl zuerst.
refused-germination-out-of-range = Die Keimfähigkeit muss zwischen 0 und 100 % liegen.
refused-year-out-of-range = Das Jahr kann nicht stimmen. Sieh noch einmal auf die Tüte.
refused-night-out-of-range = { $day } ist keine Nacht, für die das gesagt werden kann: wähle eine von der letzten Nacht bis in zwei Wochen.
refused-night-temperature-out-of-range = Das ist keine Temperatur einer Nacht: gib eine von { $least } bis { $most } an.
refused-frost-nothing-reckoned = Es gibt nichts zu behalten: weder Frühjahr noch Herbst hatten genug Jahre mit Frost. Nimm eine längere Messreihe.
refused-frost-out-of-range = Diese Frosttermine können nicht stimmen. Lies die Messreihe noch einmal ein.
refused-not-away = Für dann ist keine Abwesenheit eingetragen, also gibt es nichts zu beenden.
refused-heat-not-off = Für dann ist keine Heizung als aus eingetragen: { $name }. Trage erst ein, seit wann sie aus war.
refused-soak-out-of-range = So viel Wasser verträgt Saatgut nicht: mehr als 0 und höchstens { $most } Stunden einweichen.
refused-depth-out-of-range = Das ist zu tief, um zu stimmen: höchstens { $most }. Gib die Tiefe noch einmal an.
refused-photo-malformed = Das Foto ließ sich nicht übernehmen. Nimm es noch einmal auf.
refused-felt-nothing = Sag, wie sie sich anfühlte, wie gegossen wurde, oder beides.
refused-ends-before-it-starts = Es endet vor dem Anfang. Tausche die beiden.
refused-job-malformed = Diese Aufgabe gibt es nicht mehr. Sieh die Runde noch einmal an.
refused-correction-of-another-kind = Ein Eintrag lässt sich nur zu einem derselben Art berichtigen. Streiche ihn und schreibe einen neuen.
refused-correction-does-not-add-up = Damit gehen die Zahlen nicht mehr auf. Berichtige erst, was danach kam.
asks-above-the-seeds = { $up } aufgegangen ist mehr als die { $seeds } Samen, die gesät wurden. Trotzdem eintragen?
asks-far-back = { $day } liegt { $days } Tage zurück. Stimmt das Datum?
asks-above-the-batch = { $up } ist mehr als die { $before }, die eingesetzt wurden. Trotzdem eintragen?
asks-count-falls = Das sind { $lost } weniger als vorher: sie zählen als verloren, und { $there } als vorhanden. Ist das so?
asks-reading-differs = { $place }: { $temperature } ist weit weg von den { $before } zuvor. Stimmt das?
asks-others-build-on-it = Andere Einträge bauen auf diesem auf und fielen mit ihm weg. Einmal „Rückgängig“ holt alle zurück. Weiter?
asks-after-the-end = Es wurde am { $day } abgeschlossen. Trotzdem eintragen?
error-save-failed = Die Datei ließ sich dort nicht speichern. Wähle einen anderen Ordner oder schaffe Platz, und versuche es noch einmal.
error-bad-time = „{ $text }“ ist keine Uhrzeit. Gib Stunden und Minuten an, wie 08:00.
error-bad-day = „{ $text }“ ist kein Tag des Jahres. Gib Monat und Tag an, wie 05-14.
error-bad-zone = „{ $text }“ ist keine Zeitzone. Wähle eine aus der Liste.
error-draft-too-long = Das ist zu lang, um es beim Tippen zu behalten. Trage es in zwei Notizen ein.
error-no-folder = Der gemeinsame Ordner ist nicht da. Verbinde ihn oder wähle einen anderen.
error-no-folder-here = Auf diesem Gerät lässt sich kein Ordner teilen. Speichere alles in eine Datei und übernimm sie auf dem anderen.
error-work-busy = Etwas anderes läuft noch. Warte, bis es fertig ist, oder brich es ab.
error-no-file-chosen = Keine Datei gewählt. Wähle erst eine.
error-leave-demo-first = Die Demo ist offen. Verlasse sie erst, in den Einstellungen.
error-bad-habit = „{ $text }“ lässt sich hier nicht einstellen. Wähle etwas von dem, was gezeigt wird.
error-initials-too-long = „{ $text }“ ist zu lang für ein Kürzel. Höchstens 12 Zeichen.
error-nothing-chosen = Nichts gewählt. Wähle mindestens eine Schale.
error-cancelled = Es wurde abgebrochen. Nichts wurde geändert.
error-backup-unknown = Diese Sicherung ist nicht mehr da. Wähle eine andere.
