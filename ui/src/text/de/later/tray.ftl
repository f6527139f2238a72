## A tray

numbers-caption = { $name }: wie viele wo sind
numbers-up = Aufgegangen oder eingesetzt
numbers-gone_on = Weiter in andere Schalen
numbers-thinned = Vereinzelt
numbers-lost = Verloren
numbers-planted_out = Ausgepflanzt
numbers-sold = Verkauft
numbers-given_away = Verschenkt
numbers-there = Noch da
relative-from = { $step } aus { $code } am { $day }: { $number }
relative-to = { $step } in { $code } am { $day }: { $number }
leave-thinned = Vereinzeln: { $what }
leave-lost = Verluste: { $what }
leave-planted_out = Auspflanzen: { $what }
leave-sold = Verkaufen: { $what }
leave-given_away = Verschenken: { $what }
leave-there = { $there ->
    [one] Eine Pflanze ist da.
   *[other] { $there } Pflanzen sind da.
}
leave-number = Wie viele
leave-cause = Was geschah
leave-save = Eintragen
tray-title = Schale { $code }
tray-all = Alle Schalen
tray-emptied = Geleert
tray-stands = { $place }, seit { $since }
tray-due = Fällig
tray-in-it = Darin
tray-was-in-it = War darin
tray-do = Die Schale
tray-timeline = Tagebuch
tray-water-only = Von unten gegossen
tray-move = Umstellen
tray-move-title = { $code } umstellen
tray-cover-off = Haube ab
tray-cover-on = Haube auf
tray-feed = Düngen
tray-harden-off = Heute draußen
tray-note = Notiz
tray-empty = Leeren
tray-empty-what = Alles, was noch in { $code } ist, gilt dann als abgeschlossen.
note-words = Notiz
note-save = Eintragen
chart-title = Wie es aufgeht: { $name }
chart-today = heute
chart-key-band = erwartet, mit Streuung
chart-key-count = gezählt
chart-as-table = Dasselbe als Tabelle
chart-day = Tag
chart-low = Wenigste
chart-mid = Erwartet
chart-high = Meiste
chart-counted = Gezählt
timeline-hand = {" "}von { $hand }
timeline-withdrawn = Gestrichen:
timeline-unknown = (von einer neueren Version; bleibt, wie es ist)
timeline-withdraw = Streichen
timeline-withdraw-this = Streichen: { $what }
timeline-withdraw-title = Diesen Eintrag streichen?
timeline-withdraw-what = Er bleibt durchgestrichen im Tagebuch und zählt nicht mehr. „Rückgängig“ holt ihn zurück.
timeline-keep = Behalten

## Groups of what can be done with plants

plants-do-next = Nächster Schritt
plants-do-seen = Was du siehst
plants-do-seeds = Das Saatgut
plants-do-gone = Was weggeht
