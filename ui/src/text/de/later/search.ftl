## Suche, und worauf eine Liste eingeengt ist

search-title = Suche
search-field = Was suchst du?
search-hint = Jedes Wort zählt; seine ersten Buchstaben genügen.
search-examples = Zum Beispiel
search-example-plant = Tomate
search-example-label = K12
search-example-place = Fensterbank
search-example-day = 14.5.
search-example-month = 2024-05
search-example-several = Lauch Gewächshaus
search-where = Pflanzen und Sorten, Bezugsquellen, Etiketten, Standorte, Tage, Pläne, Einkäufe und die Wörter deiner Notizen, über alle Jahre.
search-found = Gefunden: { $what }.
search-none = Nichts passt zu „{ $typed }“.
search-none-what = Versuch es mit weniger Wörtern oder nur den ersten Buchstaben.
search-group-trays = Schalen
search-group-sowings = Aussaaten
search-group-packets = Tüten
search-group-plans = Pläne
search-group-items = Einkauf
search-group-notes = Notizen
search-count-trays = { $number ->
    [one] eine Schale
   *[other] { $number } Schalen
}
search-count-sowings = { $number ->
    [one] eine Aussaat
   *[other] { $number } Aussaaten
}
search-count-packets = { $number ->
    [one] eine Tüte
   *[other] { $number } Tüten
}
search-count-plans = { $number ->
    [one] ein Plan
   *[other] { $number } Pläne
}
search-count-items = { $number ->
    [one] ein Einkauf
   *[other] { $number } Einkäufe
}
search-count-notes = { $number ->
    [one] eine Notiz
   *[other] { $number } Notizen
}
search-more-trays = mehr als { $number } Schalen
search-more-sowings = mehr als { $number } Aussaaten
search-more-packets = mehr als { $number } Tüten
search-more-plans = mehr als { $number } Pläne
search-more-items = mehr als { $number } Einkäufe
search-more-notes = mehr als { $number } Notizen
search-show-all = Alle { $found } zeigen
search-there-are-more = Das sind die neuesten { $found }. Ein Wort mehr findet ältere.
search-sown = gesät { $day } in { $code }
search-sown-past = gesät { $day } in { $code }, abgeschlossen
## Ein Wort, mit dem Pläne für einen Verkauf gefunden werden.
search-plan-sale = Verkauf
search-plan-past = { $plan }, abgeschlossen
search-since = seit { $from }
search-from-to = { $from } bis { $to }
search-all = Alles durchsuchen
error-search-too-long = Das ist zu viel auf einmal. Gib wenige Wörter ein.

shown-of = { $shown } von { $of } gezeigt
shown-only = Nur { $what } gezeigt
shown-all = Alle zeigen

tray-earlier = Früher mit diesem Code

trays-which-place = Standort
trays-which-crop = Pflanze
trays-every-place = Alle Standorte
trays-every-crop = Alle Pflanzen
trays-which-due = Nur was etwas braucht
trays-none-such = Keine Schale ist so.
trays-past-year = { $year } ({ $trays })
trays-past-older = Das sind die letzten { $trays }. Die Suche findet ältere.
