# The season's report, to print.

report-title = Saison
report-crops = Nach Pflanzen
report-sowings = Aussaaten
report-sown = Gesät
report-crop = Pflanze
report-variety = Sorte
report-tray = Schale
report-place = Standort
report-number = Aussaaten
report-seeds = Samen
report-up = Aufgegangen
report-planted = Ausgepflanzt
report-gone = Verkauft oder verschenkt
report-pinch = eine Prise
