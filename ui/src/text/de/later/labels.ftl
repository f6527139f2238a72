# Labels: printing them, and finding the tray of one.

label-name = { $crop }{ $variety }
error-too-many-labels = Das sind mehr als 500 Etiketten. Wähle weniger und drucke den Rest danach.
error-label-off-the-paper = Auf das Papier passt kein Etikett dieser Größe. Prüfe die Maße.
error-label-too-small = Das Etikett ist zu klein für einen lesbaren Code. Es braucht mindestens 25 mal 10 mm.
error-label-not-read = In dem Foto ließ sich kein quadratischer Code lesen. Halte das Etikett flach, fülle das Bild damit und versuche es noch einmal; oder tippe den Code.

labels-title = Etiketten drucken
labels-what = Der Code, was wann gesät wurde, groß genug zum Lesen, und ein quadratischer Code, den diese App liest.
labels-none = Keine Schalen für Etiketten
labels-none-what = Eine Schale bekommt ihren Code, wenn etwas hineingesät wird.
labels-trays = Welche Schalen
labels-all = Alle
labels-clear = Keine
labels-chosen = { $labels ->
    [one] 1 Etikett
   *[other] { $labels } Etiketten
}
labels-paper = Papier
labels-a4 = A4
labels-letter = Letter
labels-size = Größe eines Etiketts
labels-size-of = { $width } mal { $height }, { $count } je Bogen
labels-own = Andere Größe
labels-width = Breite
labels-height = Höhe
labels-left = Rand links und rechts
labels-top = Rand oben und unten
labels-across = Abstand quer
labels-down = Abstand längs
labels-first = Beginnen bei Etikett
labels-first-hint = Für einen angebrochenen Bogen: gezählt von oben links, Reihe für Reihe.
labels-cut = Schnittlinien
labels-sheet = Der erste Bogen: { $first } bis { $last } von { $count } bedruckt
labels-save = Als PDF speichern
labels-saving = Etiketten werden gezeichnet …
labels-saved = Gespeichert. In voller Größe drucken, nicht an die Seite angepasst.
labels-not-saved = Nicht gespeichert.

find-title = Schale am Etikett finden
find-code = Code auf dem Etikett
find-code-hint = Großbuchstaben, Akzente, O statt 0 und I statt 1 machen keinen Unterschied.
find-go = Suchen
find-snap = Etikett fotografieren
find-photo = Foto davon wählen
find-reading = Etikett wird gelesen …
find-unknown = Keine Schale hier hat den Code { $code }.
find-unknown-photo = Das Etikett gehört zu einer Schale, die nicht in diesem Tagebuch steht.
find-unknown-what = Vielleicht wurde es auf einem anderen Gerät geschrieben, dessen Tagebuch noch nicht übernommen ist. Oder suche die Schale unten nach dem, was du von ihr weißt.
find-several = { $trays } Schalen hatten diesen Code
find-lost = Etikett verloren oder nicht lesbar
find-lost-what = Sag, was du von der Schale weißt; was am besten passt, kommt zuerst.
find-place = Wo sie steht
find-container = Was es ist
find-cells = Anzahl Zellen
find-sown = Gesät etwa
find-any = Nicht bekannt
find-candidates = { $trays ->
    [one] Vielleicht ist es diese
   *[other] Vielleicht ist es eine von diesen { $trays }
}
find-no-candidates = Keine Schale in Gebrauch passt. Lass weg, was weniger sicher ist.
find-fits = Passt: { $what }
find-fits-place = Standort
find-fits-container = Art
find-fits-cells = Zellen
find-fits-sown = Tag
find-sown-on = Gesät { $day }
find-print = Neues Etikett drucken
trays-labels = Etiketten drucken
trays-find-label = Am Etikett finden
tray-print-label = Etikett drucken
