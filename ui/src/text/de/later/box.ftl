## Seed: what was done

line-packets-described =
    { $packets ->
        [one] Eine Tüte eingetragen
       *[other] { $packets } Tüten eingetragen
    }
line-packet-described-days = Tüte eingetragen: { $crop }{ $variety }, Keimdauer laut Tüte { $spread ->
        [0] { $to }
       *[other] { $from } bis { $to }
    } { $to ->
        [one] Tag
       *[other] Tage
    }
line-seeds-counted = { $crop }{ $variety }: { $left ->
        [one] noch ein Samen
       *[other] noch { $left } Samen
    }
line-stock-keep = Inventur: { $crop }{ $variety } bleibt
line-stock-test = Inventur: Keimprobe für { $crop }{ $variety } vorgemerkt
line-stock-used-up = { $crop }{ $variety } aufgebraucht
line-stock-given-away = { $crop }{ $variety } verschenkt
line-test-started = Keimprobe { $crop }{ $variety } begonnen: { $seeds ->
        [one] ein Samen
       *[other] { $seeds } Samen
    }
line-to-buy-wanted = Einzukaufen: { $crop }{ $variety }
line-to-buy-bought = Gekauft: { $crop }{ $variety }
line-to-buy-dropped = Von der Liste: { $crop }{ $variety }

## Seed: refused and asked

refused-test-unknown = Diese Keimprobe steht nicht im Tagebuch. Geh zurück und wähle noch einmal.
refused-item-unknown = Das steht nicht mehr auf der Liste. Sieh die Liste noch einmal an.
refused-saved-from-f1 = Diese Pflanzen sind F1: was aus ihrem Samen wächst, gleicht ihnen nicht. Lass offen, wovon gewonnen wurde, oder wähle andere Pflanzen.
refused-test-closed = Diese Keimprobe ist abgeschlossen. Mache erst den Abschluss rückgängig.
refused-more-than-tested =
    { $seeds ->
        [one] In dieser Probe war nur ein Samen. Zähle noch einmal.
       *[other] In dieser Probe waren nur { $seeds } Samen. Zähle noch einmal.
    }
refused-before-the-test = Diese Probe begann am { $day }. Gib einen späteren Tag an.
asks-test-count-falls = Vorher waren { $before } gekeimt; { $now } ist weniger. Zähle auch die abgenommenen mit. Stimmt es trotzdem?

## Seed: germination tests

outlook-tested = Deine Keimprobe vom { $day }: { $sprouted } von { $seeds } gekeimt
test-not-counted = Noch nicht gezählt
test-so-far = { $sprouted } von { $seeds } gekeimt bis { $day }
test-closed-at = { $sprouted } von { $seeds } gekeimt: von der ganzen Tüte zwischen { $low } und { $high }, mit einer Sicherheit von 19 von 20

## Seed: saved, sown now, stocktake, to buy

saved-from = Gewonnen von { $crop }{ $variety } in { $tray }
saving-not-f1 = F1: davon keinen Samen nehmen. Was daraus wächst, gleicht den Eltern nicht.
now-until = Säen bis { $last }
now-late = Spät, aber sinnvoll bis { $last }
now-book-before = { $first } bis { $last } Wochen vor dem letzten Frost
now-book-around = Von { $first } Wochen vor bis { $last } nach dem letzten Frost
now-book-after = { $first } bis { $last } Wochen nach dem letzten Frost
stock-empty = Es sollte nichts mehr da sein. Sieh in die Tüte.
stock-unknown = Nicht im Pflanzenbuch: eine Keimprobe sagt, was es taugt.
stock-good = Gut genug zum Aufheben.
stock-few = Fraglich, und zu wenig für eine Probe: alles aussäen, dicht.
stock-test = Fraglich: eine Keimprobe mit 20 Samen sagt mehr als das Alter.
buy-out = Nichts mehr da; zuletzt gesät { $day }
buy-doubtful = Was noch da ist, geht vielleicht kaum auf
buy-short = Noch { $left }; { $sown } gesät im letzten Jahr damit

## Seed: a table taken in

import-field-crop = Pflanze
import-field-variety = Sorte
import-field-packed = Jahr der Abfüllung
import-field-harvested = Jahr der eigenen Ernte
import-field-sow-by = Säen bis
import-field-stated-germination = Angegebene Keimfähigkeit
import-field-stated-days = Angegebene Keimdauer in Tagen
import-field-stated-at-c = Temperatur dazu, °C
import-field-seeds = Samen darin
import-field-storage = Lagerung
import-field-treated = Gebeizt
import-field-f1 = F1
import-field-source = Bezugsquelle
import-field-price = Preis
import-field-note = Notiz
import-field-in-use = In Gebrauch
import-line-no-crop = Keine Pflanze genannt.
import-line-no-year = „{ $text }“ ist kein Jahr. Schreibe es wie 2025.
import-line-no-day = „{ $text }“ ist kein Tag. Schreibe ihn wie 31.12.2027.
import-line-no-number = „{ $text }“ ist keine Zahl.
import-line-no-days = „{ $text }“ ist keine Anzahl Tage. Schreibe sie wie 7 bis 14.
import-line-no-range = „{ $text }“ ist keine Temperatur in °C. Schreibe sie wie 18 bis 21.
import-line-no-storage = „{ $text }“ ist keine der Lagerungen, die es hier gibt. Schreibe fridge_sealed, cool_cupboard, warm_room oder damp_shed.
import-line-no-yes = „{ $text }“ ist weder ja noch nein.
import-line-not-text = Darin sind Bytes, die kein Text sind. Speichere die Tabelle als UTF-8.
import-line-too-long = Eine Zelle hat mehr als 10.000 Zeichen.
import-line-too-many-columns = Sie hat mehr als 60 Spalten.
error-import-too-large = Die Datei ist größer als 5 MB. Lass weg, was keine Liste von Tüten ist, oder teile sie.
error-import-too-many = Die Tabelle hat mehr als 5.000 Zeilen. Teile sie in zwei.
error-import-not-text = Das ist keine Tabelle in Textform. Speichere sie als CSV in UTF-8 und wähle sie noch einmal.
error-import-empty = In der Datei ist keine Tüte: es braucht eine Zeile mit den Namen der Spalten und darunter eine Zeile je Tüte.
