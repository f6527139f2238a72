# Photos: taking them in, looking at them, naming them later.

error-photo-empty = Die Datei ist leer. Mach das Foto noch einmal oder wähle ein anderes.
error-photo-too-large = Die Datei hat mehr als { $megabytes } MB. Wähle ein kleineres Foto oder mach es noch einmal in kleinerer Größe.
error-photo-not-a-picture = Die Datei ist kein Foto. Wähle ein Bild als JPEG, PNG oder WebP.
error-photo-other-format = Fotos dieser Art lassen sich hier nicht lesen. Stelle die Kamera auf JPEG oder wähle ein Bild als JPEG, PNG oder WebP.
error-photo-truncated = Das Foto ist abgeschnitten: ein Teil der Datei fehlt. Kopiere es noch einmal oder mach es noch einmal.
error-photo-animated = Das Bild bewegt sich. Wähle eines, das stillsteht.
error-photo-too-many-pixels = Das Foto hat mehr als { $megapixels } Megapixel. Mach es noch einmal in kleinerer Größe oder wähle ein anderes.
error-photo-damaged = Das Foto ist beschädigt und nicht lesbar. Mach es noch einmal oder wähle ein anderes.

photo-take = Foto machen
photo-choose = Foto wählen
photo-taking = Foto wird übernommen …
photo-again = Mit einem anderen Foto versuchen
photo-strip = Fotos: { $name }
photo-add-of = Fotografieren: { $name }
photo-none = Noch keine Fotos.
photo-open = Foto vom { $at }
photo-at = { $at }
photo-camera = Nach der Uhr der Kamera: { $taken }
photo-hand = Von { $hand }
photo-missing = Die Datei dieses Fotos ist nicht auf diesem Gerät.
photo-missing-what = Sein Platz im Tagebuch bleibt. Die Datei ist vielleicht noch auf einem anderen Gerät oder in einem Archiv des Tagebuchs.
photo-larger = Größer
photo-smaller = Kleiner
photo-whole = Ganzes Foto
photo-next = Nächstes Foto
photo-before = Voriges Foto
photo-delete = Löschen
photo-zoom = Größe { $percent } %
photo-view = Das Foto; ziehen oder mit den Pfeiltasten verschieben

photo-unnamed = { $photos ->
    [one] Ein Foto zu benennen
   *[other] { $photos } Fotos zu benennen
}
photo-unnamed-what = Beim Arbeiten gemacht, und noch nicht gesagt, was darauf ist.
photo-later = Jetzt fotografieren, später benennen
photo-later-what = Mach das Foto, solange die Hände in der Erde sind. Es wartet hier und auf der Seite „Schalen“, bis du sagst, was darauf ist.
photo-name = Benennen
photo-name-this = Benennen: das Foto vom { $at }
photo-name-title = Was ist darauf?
photo-name-what = Schale, Pflanzen, Tüte oder Standort
photo-name-find = Nach Code oder Namen suchen
photo-name-none = Nichts dieses Namens. Versuche den Code vom Etikett, die Pflanze oder den Standort.
photo-name-tray = Schale
photo-name-plants = Pflanzen
photo-name-packet = Tüte
photo-name-place = Standort
