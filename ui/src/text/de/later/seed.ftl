## Seed

seed-title = Saatgut
seed-add = Tüten anlegen
seed-empty-title = Noch keine Tüten
seed-empty-what = Lege die an, die du zur Hand hast; der Rest kann warten, bis du ihn säst.
seed-packed = Abgefüllt { $year }, { $age ->
    [0] von diesem Jahr
    [one] ein Jahr alt
   *[other] { $age } Jahre alt
}
seed-harvested = Geerntet { $year }, { $age ->
    [0] von diesem Jahr
    [one] ein Jahr alt
   *[other] { $age } Jahre alt
}
seed-treated = gebeiztes Saatgut
seed-sow-it = Säen
seed-sow-this = Säen: { $name }
seed-parts = Teile der Saatgutkiste
seed-part-box = Tüten
seed-part-now = Jetzt säen
seed-part-buy = Einkauf
seed-part-stocktake = Inventur
seed-part-import = Aus Tabelle
seed-show = Zeigen
seed-show-in-use = In Gebrauch
seed-show-testing = Keimprobe nötig oder im Gange
seed-show-saved = Selbst gewonnen
seed-show-retired = Nicht mehr benutzt
seed-sort = Reihenfolge
seed-sort-recent = Zuletzt benutzt
seed-sort-name = Nach Namen
seed-sort-worth = Fragliche zuerst
seed-sort-age = Älteste zuerst
seed-found = { $found } von { $of } Tüten
seed-first-cross = F1
seed-testing = In der Keimprobe
seed-to-test = Keimprobe vorgemerkt
seed-retired = Nicht mehr benutzt
seed-edit = Ändern

packet-crop = Pflanze
packet-crop-hint = Wie sie heißt, etwa Tomate.
packet-crop-unknown = Nicht im Pflanzenbuch: unter deinem Wort geführt, ohne Vorhersage.
packet-variety = Sorte
packet-year-of = Das Jahr steht für
packet-packed = Abfüllung
packet-harvested = Eigene Ernte
packet-year = Jahr
packet-year-unknown = Jahr unbekannt
packet-storage = Lagerung
packet-more = Mehr von der Tüte
packet-seeds = Samen darin
packet-stated = Angegebene Keimfähigkeit
packet-stated-days = Angegebene Keimdauer
packet-days-from = Mindestens
packet-days-to = Höchstens
packet-days-unit = Tage
packet-days-low = Bei nicht unter
packet-days-high = Bei nicht über
packet-days-said = { $spread ->
        [0] { $to }
       *[other] { $from } bis { $to }
    } { $to ->
        [one] Tag
       *[other] Tage
    }
packet-days-said-at = { $days } bei { $range }
packet-treated = Gebeiztes Saatgut
packet-treated-caution = Gebeiztes Saatgut: Handschuhe tragen, von Lebensmitteln, Kindern und Tieren fernhalten, und die Angaben auf der Tüte und die örtlichen Vorschriften befolgen.
packet-source = Bezugsquelle
packet-note = Notiz
packet-add = Tüte anlegen
packet-saved = { $name } ist drin. Die nächste?
packet-save = Speichern
packet-retire = Nicht mehr benutzen
packet-bring-back = Wieder benutzen
packet-is-retired = Nicht mehr benutzt. Sie bleibt hier mit allem, was aus ihr wurde.
packet-all = Alle Tüten
packet-first-cross = F1
packet-first-cross-what = Eine erste Kreuzung: was aus davon gewonnenem Samen wächst, gleicht den Eltern nicht.
packet-sow-by = Säen bis
packet-price = Preis
packet-price-hint = Wie auf der Tüte, etwa 2,95.
packet-count = Übrige Samen zählen
packet-count-what = Was von jetzt an gesät und geprüft wird, geht von dieser Zahl ab.
packet-left = Übrige Samen
packet-defer = Die Angaben auf der Tüte und die örtlichen Vorschriften gehen vor.
packet-photos = Fotos der Tüte
packet-tests = Keimproben
packet-no-tests = Noch keine Keimprobe.
packet-sowings = Daraus gesät
packet-no-sowings = Noch nichts daraus gesät.
packet-sowing = { $day } in { $tray }
packet-gave = { $up } von { $seeds } aufgegangen
packet-gave-pinch = eine Prise; { $up } aufgegangen
packet-still-growing = , wächst noch
packet-timeline = Was eingetragen wurde
packet-perhaps = vielleicht gehen { $low } bis { $high } von 10 auf
packet-perhaps-one = vielleicht gehen { $high } von 10 auf
packet-seeds-left = { $seeds ->
    [one] noch ein Samen
   *[other] noch { $seeds } Samen
}

## Germination tests, saved seed, stocktake, to buy

test-start = Keimprobe beginnen
test-how = Die Samen mit Abstand auf feuchtes Küchenpapier legen, aufrollen, mit Etikett in einen offenen Beutel stecken und dort aufbewahren, wo diese Pflanze gern aufgeht. Feucht halten, nie nass. Gebeiztes Saatgut: Handschuhe, und kein Küchengeschirr, von dem gegessen wird.
test-seeds = Samen auf dem Papier
test-do-start = Beginnen
test-of = Probe vom { $day }
test-counts = Gezählt:
test-count = { $day }: { $sprouted }
test-looks = Erstes Nachsehen { $first }, letztes { $last }.
test-sprouted = Insgesamt gekeimt, von { $seeds }
test-do-count = Zählen
test-do-close = Probe abschließen

save-seed = Samen davon gewinnen
save-seed-what = Ausreifen und trocknen lassen, dann hier als eigene Tüte anlegen.
save-seed-from = Gewonnen von
save-seed-some = Nicht notiert

now-no-season = Ohne letzten Frost kann das Pflanzenbuch nur von Wochen sprechen.
now-set-season = Frosttermine eintragen
now-none-title = Jetzt ist nichts zu säen
now-none-what = Für keine Tüte in der Kiste ist heute die Zeit.

stocktake-what = Einmal im Jahr, bevor Saatgut bestellt wird: jede Tüte in die Hand nehmen. Alter allein ist kein Grund, Saatgut wegzuwerfen; das sagt eine Keimprobe.
stocktake-done = { $done } von { $all } durchgesehen
stocktake-progress = Wie weit die Inventur ist
stocktake-answers = Was daraus wird
stocktake-keep = Behalten
stocktake-test = Keimprobe
stocktake-used-up = Aufgebraucht
stocktake-given-away = Verschenkt
stocktake-open = Diese Tüte ansehen
stocktake-resume = Du kannst jederzeit aufhören: es geht dort weiter, wo es war.
stocktake-none-title = Alle Tüten durchgesehen
stocktake-none-what = Jede Tüte in Gebrauch war seit { $day } in deiner Hand.

buy-title = Saatgut einkaufen
buy-empty-title = Nichts auf der Liste
buy-empty-what = Was ausgeht, wird unten vorgeschlagen; setze selbst dazu, was du magst.
buy-bought = gekauft
buy-drop = Streichen
buy-drop-this = Von der Liste streichen: { $name }
buy-share = Liste teilen
buy-copied = Die Liste ist in der Zwischenablage: füge sie ein, wo du magst.
buy-not-shared = Die Liste ließ sich nicht teilen. Versuche es noch einmal oder schreibe sie von Hand ab.
buy-suggested = Vielleicht nötig
buy-suggested-what = In den letzten zwei Jahren gesät, und jetzt aus, knapp oder fraglich.
buy-add = Auf die Liste
buy-add-this = Auf die Liste: { $name }
buy-by-hand = Selbst dazusetzen
buy-note = Wie viel, woher
buy-put-on = Auf die Liste setzen

import-what = Eine anderswo geführte Liste von Tüten kommt als CSV-Tabelle herein: eine Zeile mit den Namen der Spalten und eine Zeile je Tüte. Nichts wird angelegt, bevor du es gesehen hast.
import-choose = Tabelle wählen
import-reading = Wird gelesen …
import-taking = Tüten werden angelegt …
import-done = Die Tüten sind in der Kiste. Einmal „Rückgängig“ nimmt alle zurück.
import-counts = { $packets ->
    [0] Keine Tüte anzulegen
    [one] Eine Tüte anzulegen
   *[other] { $packets } Tüten anzulegen
}{ $bad ->
    [0] .
    [one] ; eine Zeile ist nicht lesbar.
   *[other] ; { $bad } Zeilen sind nicht lesbar.
}
import-columns = Was die Spalten sind
import-columns-what = Was vermutet wird, ist gewählt; ändere, was falsch ist. Darunter steht jeweils das Erste darin.
import-column = Spalte { $number }
import-leave-out = Weglassen
import-bad = Zeilen, die nicht lesbar sind
import-bad-line = Zeile { $line }:
import-bad-more = und { $lines } weitere. Bessere die Tabelle aus und wähle sie noch einmal.
import-duplicates = { $packets ->
    [one] Eine Tüte ist schon hier und wird weggelassen.
   *[other] { $packets } Tüten sind schon hier und werden weggelassen.
}
import-take-duplicates = Trotzdem noch einmal anlegen
import-first = Die ersten davon
import-duplicate = Schon hier
import-seeds = { $seeds ->
    [one] ein Samen
   *[other] { $seeds } Samen
}
import-take = { $packets ->
    [0] Anlegen
    [one] Eine Tüte anlegen
   *[other] { $packets } Tüten anlegen
}
import-undo = Alles ist ein Schritt: einmal „Rückgängig“ nimmt es zurück.
