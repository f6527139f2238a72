## Sow

sow-title = Säen
sow-from = Womit du beginnst
sow-from-seed = Mit Samen
sow-from-other = Ohne Samen
sow-packet = Welche Tüte?
sow-find-packet = Tüte suchen
sow-found = { $found ->
    [one] Eine Tüte gefunden
   *[other] { $found } Tüten gefunden
}
sow-no-packet = Keine solche Tüte.
sow-all-packets = Alle { $packets } Tüten
sow-add-packet = Tüte anlegen
sow-change = Andere Tüte
sow-how-many = Wie viele
sow-wanted = Gewünschte Pflanzen
sow-seeds = Gesäte Samen
sow-exact = Gezählt
sow-about = Etwa
sow-pinch = Eine Prise
sow-seeds-number = Samen
sow-odds = Wie sicher
sow-odds-80 = 8 von 10
sow-odds-90 = 9 von 10
sow-odds-95 = 19 von 20
sow-each = Samen je Zelle
sow-follow = So viele, wie genügen
sow-too-few-cells = Nur { $free } Zellen sind frei. Nimm eine größere Schale oder mehr Samen je Zelle.
sow-more-than-left = In der Tüte sollten nur noch { $left } sein.
sow-seeds-count =
    { $seeds ->
        [one] Ein Samen
       *[other] { $seeds } Samen
    }
sow-summary =
    { $seeds }, { $cells ->
        [one] eine Zelle
       *[other] { $cells } Zellen
    } von { $code }, { $place }
sow-now = Jetzt
sow-when = Wann
sow-another-day = Anderer Tag
sow-best = Passt am besten
sow-due = Geht auf in { $days } ({ $from } bis { $to })
sow-last = Zuletzt: { $what }, { $how }.
sow-no-packets = Noch keine Tüten. Lege die erste an.
sow-more-packets = Und { $more } weitere: tippe etwas mehr vom Namen.
sow-where = Wo es stehen soll
sow-where-stands = Standort von { $code }: { $place }.
sow-no-place = Noch kein Standort.
sow-tray = Worin
sow-depth = Wie tief
sow-depth-advised = Üblich: { $low } bis { $high }.
sow-depth-about = Üblich: { $depth }.
sow-depth-surface = Es wird auf die Oberfläche gedrückt, nicht bedeckt.
sow-on-top = Obenauf
sow-deeper = Tiefer
sow-shallower = Flacher
sow-save = Aussaat speichern

before-sowing = Vor dem Säen
before-none-wanted = Nichts ist nötig; sag es, wenn du etwas getan hast
before-soaked = In Wasser eingeweicht
before-soaked-hours = Stunden in Wasser
before-chipped = Samenschale angeritzt oder angeraut
before-cold = Zuerst in die Kälte, von jetzt an
before-cold-weeks = Wochen in der Kälte
before-cold-how = Feucht bei { $low } bis { $high }: im Kühlschrank oder, im Winter, draußen. Du erfährst, wann sie vorbei sind; bis dahin ist nichts überfällig.
before-paper = Zum Vorkeimen feuchtes Papier als Art wählen: du erfährst, wann nachzusehen ist und wann die Samen in Erde kommen.

depth-drawing = Maßstäblich: Samen { $length } lang und { $thick } dick, { $depth } tief.
depth-drawing-bare = { $depth } tief; die Größe dieses Samens ist nicht bekannt.

batch-origin = Begonnen aus
batch-number = Wie viele
batch-summary =
    { $number ->
        [one] 1
       *[other] { $number }
    } in { $code }
batch-save = Speichern
batch-how-cuttings = Mit sauberer, scharfer Klinge knapp unter einem Blattknoten schneiden, die unteren Blätter abnehmen, stecken, bevor sie welken, und abdecken.
batch-how-tubers = Augen oder vorjährigen Stängel nach oben; geteilte Stücke erst legen, wenn der Schnitt trocken ist.
batch-how-bulbs = Die Spitze nach oben; weiche und schimmlige aussortieren.
batch-how-plugs = Gießen, bevor sie aus den Zellen kommen; am Blatt halten, nie am Stängel.

saved-title = Es steht im Tagebuch
saved-copy = Dies mit Bleistift auf das Etikett schreiben; Tinte verblasst.
saved-same-again = Noch einmal dasselbe
saved-beside = Nächste Tüte auch in { $code }
saved-undone = Es wurde zurückgenommen
saved-another = Etwas anderes säen
saved-see = Schale { $code } ansehen
label-title = Das Etikett

## The order of work at the bench

bench-order = Die Reihenfolge der Arbeit
bench-order-damp = Handschuhe tragen, den Raum lüften, und Erde und Arbeitstisch anfeuchten, bevor du Staub aufwirbelst.
bench-order-fill = Feine Erde bis zum Rand einfüllen und glatt abstreichen: Brocken obenauf aussieben.
bench-order-firm = Mit einem Brett oder einer anderen Schale leicht andrücken, damit sie später nicht absackt.
bench-order-water = Jetzt gießen, vor dem Säen: von unten oder mit feiner Brause, die neben der Schale beginnt und endet.
bench-order-sow = Dünn und gleichmäßig säen; große Samen einzeln.
bench-order-cover = In der gezeigten Tiefe mit gesiebter Erde oder Vermiculit bedecken. Danach nur von unten oder mit Sprüher gießen: eine Kanne schwemmt die Samen zusammen.
bench-order-label = Das Etikett schreiben, bevor du die nächste Tüte öffnest.
bench-order-stand = An ihren Standort stellen und die Hände waschen.
