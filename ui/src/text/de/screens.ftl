# Words of the screens themselves that the first picture needs. What the app says of trays, jobs and crops is in core.ftl; the rest is in later/.

## Everywhere

screen-range = { $low } bis { $high }
screen-close = Schließen
screen-again = Noch einmal
screen-not-done = Nicht erledigt:
screen-unexpected = In der App ging etwas schief ({ $what }). Nichts wurde geschrieben; versuche es noch einmal.
screen-fewer = { $label }: eins weniger
screen-more = { $label }: eins mehr

nav-screens = Ansichten
nav-skip = Direkt zur Seite
nav-round = Runde
nav-sow = Säen
nav-trays = Schalen
nav-seed = Saatgut
nav-year = Jahre
nav-search = Suche
nav-settings = Einstellungen

toast-undo = Rückgängig
toast-bring-back = Zurückholen
toast-undone = Rückgängig: { $what }
toast-put-away = Diese Zeile schließen

asked-title = Stimmt das?
asked-yes = Ja, eintragen
asked-no = Nein, zurück

## First start

start-title = Plumule
start-what = Ein Aussaat-Tagebuch, das erinnert: was zu fühlen, anzusehen und weiterzubringen ist, Schale für Schale.
start-own = Dein eigenes Tagebuch
start-own-what = Es beginnt leer, heute ist der erste Tag. Standorte und Tüten kommen dazu, wenn du sie brauchst.
start-own-do = Tagebuch beginnen
start-demo = Ein Demo-Tagebuch
start-demo-what = Zwei erfundene Saisons, um alles auszuprobieren. Getrennt von deinem Tagebuch, und ganz verworfen, wenn du die Demo verlässt.
start-demo-do = Demo öffnen
start-file = Aus einer Datei oder von einem anderen Handy
start-file-what = Holt ein Tagebuch zurück, das in eine Datei gespeichert wurde.
start-file-do = Ich habe eine Datei
start-damaged = Das Tagebuch ist beschädigt
start-quit = Dieses schließen
start-read-only = Dieses Tagebuch hat eine neuere Version der App geschrieben. Du kannst alles lesen; zum Schreiben die App aktualisieren.
start-offline = Alles bleibt auf diesem Gerät. Es wird kein Netz benutzt.

## Round

round-title = Runde
round-morning = { $day }
round-evening = Abendrunde, { $day }
round-away = Du bist bis { $day } fort. Solange ruft nichts nach dir.
round-notices-off = Mitteilungen erreichen dich hier nicht.
round-notices-why = Warum, und was hilft
round-nothing-due = Nichts ist fällig
round-next = Als Nächstes: { $what }, { $moment }.
round-empty-title = Noch keine Schalen
round-empty-what = Die Runde füllt sich von selbst, sobald etwas gesät ist. Sag zuerst, wo Schalen stehen und welches Saatgut du hast.
round-empty-places = Standort anlegen
round-empty-packets = Tüte anlegen
round-empty-sow = Schale säen

place-reading = { $days ->
    [0] Heute abgelesen: { $range }, { $of }.
    [1] Gestern abgelesen: { $range }, { $of }.
   *[other] Vor { $days } Tagen abgelesen: { $range }, { $of }.
}
place-never-read = Noch nicht abgelesen; gerechnet wird mit der üblichen Wärme.
place-heat-off = Die Heizung ist aus.
place-read = Ablesen
place-heat-off-open = Heizung aus
place-all-moist = Alle feucht ({ $trays })
place-quiet = { $trays ->
    [one] Eine weitere Schale hier braucht heute nichts.
   *[other] { $trays } weitere Schalen hier brauchen heute nichts.
}

read-title = Thermometer: { $place }
read-way = Was abgelesen wurde
read-range = Tiefster und höchster Wert
read-now = Jetzt
read-lowest = Tiefster
read-highest = Höchster
read-temperature = Temperatur
read-of = Wo gemessen
read-of-air = In der Luft
read-of-compost = In der Erde
read-save = Ablesung eintragen
read-not-a-number = Eine Temperatur muss eine Zahl sein, etwa 18 oder 18,5.

heat-title = Heizung aus: { $place }
heat-from = Aus seit
heat-to = Bis
heat-to-hint = Leer lassen, wenn sie noch aus ist.
heat-low = Tiefster Wert inzwischen
heat-low-hint = Beide leer lassen, wenn du es nicht weißt.
heat-high = Höchster Wert inzwischen
heat-caution = Strom und Feuchtigkeit vertragen sich nicht: Stecker ziehen, bevor du nach Heizung oder Kabel siehst, und Reparaturen nach den örtlichen Vorschriften einer Elektrofachkraft überlassen.
heat-save = Eintragen

job-for-today = Heute
do-lamp = Lampe hängt darüber
do-leggy = Lang und dünn
do-sturdy = Kurz und gedrungen
do-feed = Gedüngt
round-nowhere = Schalen ohne Standort
do-cut-apart = Schale teilen
do-cover-off = Haube ist ab
do-brought-in = Hereingeholt
do-fleece = Vlies darüber
do-open-the-lid = Deckel offen
do-done = Erledigt
do-sitter-sheet = Zettel für die Vertretung
do-sow-again = Neu säen
do-sow-on = In Erde legen…
feel-one-by-one = Einzeln ({ $trays })
place-low = Heute Nacht hier bis { $low }.
place-low-open = Tiefstwert der Nacht
place-heat-off-since = Die Heizung ist aus seit { $moment }.
place-heat-back-open = Heizung wieder an
heat-back-title = { $place }: Heizung wieder an
heat-back-save = Heizung ist wieder an
night-title = Tiefstwert der Nacht
night-low = Tiefster Wert heute Nacht
night-where = Wo
night-outdoors = Draußen
night-here = Hier: { $place }
night-what = Nach der Wettervorhersage. Was das nicht verträgt, wird sofort genannt, Standort für Standort.
night-save = Speichern
round-on-paper = Die Runde auf Papier
round-back = Ich bin zurück
do-prick-out = Pikieren
do-pot-on = Umtopfen
do-harden-off = Heute draußen

feel-dry-watered = Trocken, und gegossen:

count-up = Jetzt da
count-count = Zählen
count-roughly = Ungefähr
count-few = Einige
count-half = Die Hälfte
count-nearly_all = Fast alle

answer-number-thinned = Herausgenommen
answer-thinned = Vereinzelt
answer-number-planted_out = Ausgepflanzt
answer-planted_out = Ausgepflanzt

verdict-choices = Was sich tun lässt: { $name }

dig-how = Zwei Samen vorsichtig herausnehmen und drücken: ein fester kann noch kommen, ein weicher ist verfault.
dig-firm = Fest
dig-soft = Weich
dig-save = Eintragen

move-to = { $place } ({ $light })
move-none = Es gibt keinen anderen Standort mit Licht.
move-add-place = Standort in den Einstellungen anlegen

later-open = Später
later-open-for = Später: { $job }
later-title = Später: { $job }
later-next-round = Nächste Runde
later-tomorrow = Morgen
later-day = An einem Tag
later-on-day = Später, an dem Tag
later-dismiss-what = Wenn es hier nicht zutrifft, wird nicht mehr danach gefragt, bis sich etwas ändert.
later-dismiss = Diese nicht

earlier-open = Etwas von früher eintragen?
earlier-title = Wann war es?
earlier-what = Was du als Nächstes antwortest, wird für diese Zeit eingetragen, bis du zu jetzt zurückkehrst.
earlier-morning = Heute Morgen
earlier-yesterday = Gestern Abend
earlier-day = Tag
earlier-time = Uhrzeit
earlier-set = Rückwirkend eintragen
earlier-now-writing = Du trägst rückwirkend ein: { $moment }.
earlier-back = Zurück zu jetzt

way-share = { $share } des Weges, bis die Hälfte da ist
way-there = Die Hälfte sollte jetzt da sein

## Plants

plants-sown = { $stage }, Tag { $day }: { $seeds ->
    [one] ein Samen
   *[other] { $seeds } Samen
}
plants-sown-pinch = { $stage }, Tag { $day }: eine Prise Samen
plants-standing = { $stage }, Tag { $day }: { $there } da
plants-sown-on-day = Gesät am { $day }.
plants-began-on-day = Begonnen am { $day }.
plants-depth = Tiefe { $depth }.
plants-wanted = { $wanted ->
    [one] Eine Pflanze gewünscht.
   *[other] { $wanted } Pflanzen gewünscht.
}
plants-actions = Was zu tun ist: { $name }
plants-count = Zählen
plants-count-title = Zählen: { $name }
plants-sown_on = In Erde legen
plants-pricked_out = Pikieren
plants-potted_on = Umtopfen
plants-cut_apart = Teilen
plants-thinned = Vereinzeln
plants-lost = Verluste
plants-planted_out = Auspflanzen
plants-sold = Verkaufen
plants-given_away = Verschenken
plants-ready = Fertig
plants-dig-up = Ausgraben
plants-dig-title = Ausgraben: { $name }
plants-nothing = Nichts ging auf
plants-sow-again = Neu säen
plants-finish = Abschließen

go-on-title = { $step }: { $what }
go-on-part = Teil { $part }
go-on-number = Pflanzen in diese
go-on-add-part = In noch eine Schale
go-on-remove-part = Nicht in diese
go-on-sum = { $moved } kommen weiter, { $rest } bleiben.
go-on-rest-finished = Der Rest ist abgeschlossen
go-on-save = Eintragen

## Trays

tray-which = Schale
tray-new = Eine neue, { $code }
tray-with-room = { $code }, { $container }, { $free } frei, { $place }
tray-nowhere = Kein Standort
tray-kind = Art
tray-size-cells = { $cells } Zellen
tray-pots = Töpfe
tray-strips = Streifen quer
tray-place = Standort
tray-compost = Erde
tray-covered = Abgedeckt
tray-code = Code auf dem Etikett
tray-code-hint = Leer gelassen, wird es { $code }.
tray-nothing-in-it = Nichts darin
tray-is-covered = {", abgedeckt"}
tray-empty-do = Leeren

cells-legend = Zellen
cells-all = Alle
cells-none = Keine
cells-all-free = alle freien
cells-count = { $cells } gewählt
cells-chosen = { $chosen } von { $free } freien Zellen gewählt; keine gewählt heißt alle.
cells-row = Reihe { $row }, alle Zellen
cells-column = Spalte { $column }, alle Zellen
cells-draw = Durch Ziehen wählen
cells-larger = Größere Zellen
cells-smaller = Kleinere Zellen
cells-cell = Reihe { $row }, Zelle { $cell }
cells-cell-taken = Reihe { $row }, Zelle { $cell }, belegt
cells-drawing = Die Schale von oben, { $rows } Reihen zu { $columns } Zellen.
cells-of = { $what }, { $cells ->
    [one] eine Zelle
   *[other] { $cells } Zellen
}

## Round: seed

round-seed = Saatgut
round-sprouted = Gekeimt, von { $seeds }
round-open-packet = Zur Tüte
round-sow = Jetzt säen
round-open-plan = Zum Plan
round-open-stocktake = Zur Inventur
