## Settings

settings-title = Einstel{ "\u00AD" }lungen
settings-demo = Demo-Tagebuch
settings-demo-what = Du bist in der Demo. Nichts hier berührt ein eigenes Tagebuch.
settings-demo-leave = Demo verlassen
settings-demo-leave-what = Das Demo-Tagebuch wird ganz verworfen, mit allem, was du hineingeschrieben hast.
settings-demo-stay = Bleiben
settings-demo-throw-away = Verwerfen
settings-places = Standorte
settings-places-what = In der Reihenfolge deines Rundgangs.
settings-garden = Runden und Garten
settings-away = Abwesenheit
settings-away-what = Während du fort bist, ruft nichts nach dir.
settings-device = Dieses Gerät
settings-entries = { $entries ->
    [one] Ein Eintrag im Tagebuch.
   *[other] { $entries } Einträge im Tagebuch.
}

place-add = Standort anlegen
place-kind = Art des Standorts
place-name = Name
place-name-hint = Wie du ihn nennst, etwa Küchenfenster.
place-usual = Übliche Temperaturen, bis ein Thermometer es besser weiß:
place-coldest = Am kältesten
place-warmest = Am wärmsten
place-unheated = Mit ausgeschalteter Heizung, falls bekannt:
place-coldest-unheated = Am kältesten, ungeheizt
place-warmest-unheated = Am wärmsten, ungeheizt
place-light = Licht für Sämlinge
place-covered = Geschlossen oder abgedeckt, trocknet also langsam
place-save = Standort speichern
place-retire = Nicht mehr benutzen
place-use-again = Wieder benutzen
place-earlier = { $place }: früher in der Runde
place-later = { $place }: später in der Runde
place-change = Ändern
place-change-this = Ändern: { $place }
place-none = Noch keine Standorte.
place-retired = Nicht mehr benutzt ({ $places })

garden-morning = Morgenrunde
garden-evening = Abendrunde
garden-last-frost = Letzter Frost im Frühjahr
garden-first-frost = Erster Frost im Herbst
garden-frost-hint = Der Tag, nach dem einer selten ist. Das Jahr zählt nicht.
garden-latitude = Geografische Breite
garden-latitude-hint = Grad Nord; südlich des Äquators mit Minus.
garden-zone = Zeitzone
garden-zone-hint = Mit ihrem Namen, etwa Europe/Berlin.
garden-save = Speichern

settings-frost = Frosttermine aus einer Messreihe
frost-record-what = Tägliche Tiefstwerte eines Wetterdienstes oder deines Thermometers: eine CSV-Datei mit Tag und Tiefstwert in jeder Zeile. Mindestens fünf Jahre mit Frost.
frost-file = Reihe täglicher Tiefstwerte
frost-unit = Die Tiefstwerte sind in
frost-unit-celsius = Grad Celsius
frost-unit-fahrenheit = Grad Fahrenheit
frost-threshold = Als Frost gilt eine Nacht bei oder unter
frost-threshold-hint = 0 °C (32 °F) in der Wetterhütte einer Station.
frost-reading = Messreihe wird gelesen…
frost-was-kept = Die Frosttermine sind gespeichert.
frost-days = { $days ->
        [one] { $days } Tag gelesen
       *[other] { $days } Tage gelesen
    }{ $missing ->
        [0] .
       *[other] , { $missing } ohne Tiefstwert weggelassen.
    }
frost-span = { $from } bis { $to }.
frost-column = { $number }: { $name }
frost-day-column = Spalte des Tages
frost-low-column = Spalte des Tiefstwerts
frost-day-order = Tage sind geschrieben
frost-day-order-ymd = Jahr, Monat, Tag
frost-day-order-dmy = Tag, Monat, Jahr
frost-day-order-mdy = Monat, Tag, Jahr
frost-bad = { $lines ->
        [one] Eine Zeile war nicht lesbar
       *[other] { $lines } Zeilen waren nicht lesbar
    }
frost-bad-line = Zeile { $line }: { $what }
frost-bad-more = und { $lines } weitere
frost-odds-later = Der Tag, nach dem Frost diese Chance hat
frost-odds-earlier = Der Tag, vor dem Frost diese Chance hat
frost-never = kein Tag
frost-keep-what = Beim Speichern werden die beiden Frosttermine auf die Mittelwerte gesetzt, und Frost wird als Risiko genannt.
frost-keep = Diese Frosttermine speichern

away-from-to = Fort von { $from } bis { $to }.
away-open = Fort ab { $from }, bis du sagst, dass du zurück bist.
away-now = Ab jetzt fort
away-back = Ich bin zurück
away-sheet = Zettel für die Vertretung
away-from = Erster Tag
away-to = Letzter Tag
away-save = Ich werde fort sein

device-language = Sprache
device-language-system = Wie das Gerät
device-clock = Uhr
device-clock-h24 = 24 Stunden
device-clock-h12 = 12 Stunden
device-temperature = Temperaturen
device-temperature-celsius = °C
device-temperature-fahrenheit = °F
device-length = Längen
device-length-mm = mm
device-length-inch = Zoll
device-theme = Farben
device-theme-system = Wie das Gerät
device-theme-light = Hell
device-theme-dark = Dunkel
device-theme-bright = Grelle Sonne
device-hand = Welche Hand hält
device-hand-right = Rechte Hand
device-hand-left = Linke Hand
device-notices = Mitteilungen zu den Rundenzeiten
device-stay = Weiterlaufen, wenn das Fenster geschlossen ist
device-stay-hint = Damit Mitteilungen kommen. Um das Fenster wieder zu öffnen, starte Plumule oder klicke auf sein Symbol in der Leiste des Desktops. Zum Beenden dort „Beenden“ wählen, oder dies ausschalten und das Fenster schließen.
device-at-login = Beim Anmelden starten, ohne Fenster
device-quiet-from = Ruhe ab
device-quiet-to = Ruhe bis
device-quiet-hint = Keine Mitteilung in diesen Stunden. Zweimal dieselbe Zeit heißt keine Ruhe.
device-initials = Kürzel
device-initials-hint = Steht neben dem, was hier eingetragen wird, wo sich mehrere die Arbeit teilen.
