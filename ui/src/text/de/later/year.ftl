## What the years gave

year-title = Die Jahre
year-results = Was die Jahre brachten
year-by = Zusammengefasst nach
by-crop = Pflanze
by-packet = Tüte
by-place = Standort
by-compost = Erde
by-storage = Lagerung
by-depth = Tiefe
by-year = Jahr
year-of = Jahr
year-all = alle Jahre
year-crop = Pflanze
year-all-crops = alle Pflanzen
year-none = Noch nichts gesät
year-none-what = Sobald Aussaaten gezählt sind, steht hier, was jede Tüte, jeder Standort und jede Erde brachte, Jahr für Jahr.
year-none-here = In dieser Auswahl ist keine Aussaat, die zu Ende gezählt wurde.
year-left-out = { $number ->
    [one] Eine Aussaat ist weggelassen:
   *[other] { $number } Aussaaten sind weggelassen:
} als Prise oder in Horsten gesät, nicht gezählt oder noch am Aufgehen.
year-share = { $up } von { $seeds } aufgegangen: { $share }
year-interval = zwischen { $low } und { $high }, mit einer Sicherheit von 95 von 100
year-sowings = { $number ->
    [one] eine Aussaat
   *[other] { $number } Aussaaten
}
year-small = Wenige Samen oder eine Aussaat: das sagt noch wenig.
year-half = die Hälfte da nach { $days } { $days ->
    [one] Tag
   *[other] Tagen
}
year-spread = verteilt über etwa { $days } { $days ->
    [one] Tag
   *[other] Tage
}
year-lost = Später verloren: { $causes }
year-lost-part = { $number } × { $cause }
year-chart = Anteil aufgegangen, je mit 95-%-Intervall
year-table = Dasselbe als Tabelle
year-column-share = aufgegangen
year-column-interval = 95-%-Intervall
year-column-half = Tage bis zur Hälfte
year-compare = Zwei vergleichen
year-compare-first = Erste
year-compare-second = Zweite
year-numbers = Was aus den Pflanzen wurde
year-growing = wachsen
year-ready = fertig
year-planted-out = ausgepflanzt
year-sold = verkauft
year-given = verschenkt
year-no-numbers = Noch keine Pflanzen.

results-name = { $name }{ $variety }{ $year }
depth-advised = in der empfohlenen Tiefe
depth-deep = tiefer als empfohlen
depth-shallow = flacher als empfohlen
results-almost-surely = { $better }{ $better_variety }{ $better_year } vor { $worse }{ $worse_variety }{ $worse_year }: { $share } gegen { $other }, so gut wie sicher besser.{ $small ->
    [1] {" "}Die Zahlen sind klein.
   *[0] {""}
}
results-very-likely = { $better }{ $better_variety }{ $better_year } vor { $worse }{ $worse_variety }{ $worse_year }: { $share } gegen { $other }, sehr wahrscheinlich besser.{ $small ->
    [1] {" "}Die Zahlen sind klein.
   *[0] {""}
}
results-perhaps = { $better }{ $better_variety }{ $better_year } vor { $worse }{ $worse_variety }{ $worse_year }: { $share } gegen { $other }, vielleicht besser; ein weiteres Jahr wird es zeigen.{ $small ->
    [1] {" "}Die Zahlen sind klein.
   *[0] {""}
}
results-no-telling = { $better }{ $better_variety }{ $better_year } { $share }, { $worse }{ $worse_variety }{ $worse_year } { $other }: nicht zu sagen, was besser ist.{ $small ->
    [1] {" "}Die Zahlen sind klein.
   *[0] {""}
}
