## Seasons, frost dates from a record, days away

season-sow-early = { $crop } säen: { $from } bis { $to }, { $days ->
        [one] noch { $days } Tag.
       *[other] noch { $days } Tage.
    }
season-sow-early-until = { $crop } säen: { $from } bis { $to }, { $days ->
        [one] noch { $days } Tag.
       *[other] noch { $days } Tage.
    } Sinnvoll bis { $last }.
season-sow-now = Jetzt ist die Zeit, { $crop } zu säen: { $from } bis { $to }.
season-sow-now-until = Jetzt ist die Zeit, { $crop } zu säen: { $from } bis { $to }. Sinnvoll bis { $last }.
season-sow-late = Die Zeit, { $crop } zu säen, war { $from } bis { $to }. Der letzte sinnvolle Tag ist { $last }.
season-set-out = Hinaus geht es von { $from } bis { $to }.
season-set-out-odds = Hinaus geht es von { $from } bis { $to }. Frostrisiko nach { $from }: { $chance }.
bench-growing-on = Nach dem Aufgehen wächst es weiter bei { $day } am Tag und { $night } in der Nacht.
bench-growing-on-sown = Nach dem Aufgehen wächst es weiter bei { $day } am Tag und { $night } in der Nacht; erste Ernte { $from } bis { $to } Tage nach der Aussaat.
bench-growing-on-planted = Nach dem Aufgehen wächst es weiter bei { $day } am Tag und { $night } in der Nacht; erste Ernte { $from } bis { $to } Tage nach dem Auspflanzen.

frost-kept = Aus einer Messreihe von { $from } bis { $to }: { $spring ->
        [0] kein Frühjahr
        [one] { $spring } Frühjahr
       *[other] { $spring } Frühjahre
    } und { $autumn ->
        [0] kein Herbst
        [one] { $autumn } Herbst
       *[other] { $autumn } Herbste
    } mit Frost. Frost wird als Risiko genannt, solange die Termine oben die der Messreihe sind.
frost-years-spring = Letzter Frost im Frühjahr, aus { $years } von { $full } vollen Jahren:
frost-years-autumn = Erster Frost im Herbst, aus { $years } von { $full } vollen Jahren:
frost-too-few-spring = Letzter Frost im Frühjahr: nur { $years ->
        [one] { $years } Jahr hat
       *[other] { $years } Jahre haben
    } einen Frost und neun von zehn Tagen gemessen. Nötig sind 5.
frost-too-few-autumn = Erster Frost im Herbst: nur { $years ->
        [one] { $years } Jahr hat
       *[other] { $years } Jahre haben
    } einen Frost und neun von zehn Tagen gemessen. Nötig sind 5.
frost-line-no-csv = Der Rest lässt sich nicht als Zeilen mit Spalten lesen.
frost-line-too-long = Die Zeile ist zu lang: vielleicht fehlt ein schließendes Anführungszeichen.
frost-line-too-many-columns = Die Zeile hat mehr Spalten als eine Reihe von Tiefstwerten.
frost-line-not-text = Die Zeile ist kein Text (UTF-8).
frost-line-too-few-columns = Die Zeile hat zu wenige Spalten.
frost-line-no-day = Kein Tag: { $text }
frost-line-no-number = Keine Zahl: { $text }
frost-line-beyond-belief = Das zeigt kein Thermometer: { $text }
error-frost-csv-too-large = Die Datei ist zu groß für eine Reihe von Tiefstwerten: höchstens 8 MB. Nimm eine nur mit Tag und Tiefstwert.
error-frost-csv-empty = In der Datei ist keine lesbare Zeile. Wähle eine Textdatei mit Tag und Tiefstwert in jeder Zeile (CSV).
error-frost-csv-no-days = Keine Spalte enthält Tage. Wähle, welche es ist, oder nimm eine Datei mit Tagen wie 2026-03-09.
error-frost-csv-no-minima = Keine Spalte enthält Tiefstwerte. Wähle, welche es ist.
error-frost-threshold-out-of-range = Frost ist ein Tiefstwert nahe 0 °C: gib eine Temperatur an, die ein Thermometer zeigt.
