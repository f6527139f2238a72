## All trays

trays-title = Schalen
trays-empty-title = Noch keine Schalen
trays-free = { $cells ->
    [one] eine Zelle frei
   *[other] { $cells } Zellen frei
}
trays-due = { $jobs ->
    [one] · eine Aufgabe fällig
   *[other] · { $jobs } Aufgaben fällig
}
trays-aside = Beiseitegestellt ({ $trays })
trays-aside-what = Von diesen war 120 Tage keine Rede. Jede Antwort holt eine zurück.
trays-past = Frühere Schalen ({ $trays })
