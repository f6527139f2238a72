# A journal as one file: what can be wrong with it.

error-not-an-archive = Diese Datei ist kein von dieser App gespeichertes Tagebuch. Wähle eine, deren Name auf .zip oder .age endet.
error-archive-newer = Diese Datei hat eine neuere Version der App gespeichert. Aktualisiere diese hier und versuche es dann noch einmal.
error-archive-damaged = Diese Datei ist beschädigt: sie ist nicht, was gespeichert wurde. Hier wurde nichts geändert. Kopiere sie noch einmal von ihrer Quelle oder speichere eine neue.
error-archive-too-large = Diese Datei enthält mehr, als ein Tagebuch fassen kann. Hier wurde nichts geändert.
error-passphrase-wanted = Diese Datei ist durch ein Kennwort geschützt. Gib das ein, mit dem sie gespeichert wurde.
error-passphrase-wrong = Mit diesem Kennwort wurde die Datei nicht gespeichert. Versuche es noch einmal; Großbuchstaben und Leerzeichen zählen.
error-passphrase-empty = Ein Kennwort braucht mindestens ein Zeichen. Gib eines ein oder speichere ohne.

## Checking the journal

finding-file-damaged = Die Datei des Tagebuchs ist beschädigt ({ $fault }). Stelle das Tagebuch wieder her: sie wird beiseitegelegt, und was noch gut ist, wird übernommen.
finding-entries-unread = Die Einträge { $first } bis { $last } der Datei sind nicht lesbar. Stelle das Tagebuch wieder her, um den Rest zu übernehmen.
finding-entry-unreadable = Eintrag { $entry } der Datei ist beschädigt und nicht lesbar. Stelle das Tagebuch wieder her, um den Rest zu übernehmen.
finding-entry-altered = Eintrag { $entry } der Datei ist nicht so, wie er geschrieben wurde. Stelle das Tagebuch wieder her, um den Rest zu übernehmen.
finding-entry-misfiled = Eintrag { $entry } der Datei ist gut, aber falsch eingeordnet ({ $columns }). Stelle das Tagebuch wieder her, um das zu richten.
finding-entries-missing = Die Einträge { $first } bis { $last } eines Geräts ({ $device }) fehlen hier. Eine ältere Sicherung oder das andere Gerät hat sie vielleicht noch.
finding-projection-differs = Was das Tagebuch zusammengerechnet ergibt, ist an { $rows } Stellen veraltet ({ $table }). Alle Einträge sind da; lass neu zusammenrechnen.
finding-photo-missing = Ein Foto fehlt ({ $photo }). Eine Sicherung oder ein anderes Gerät, das es hat, bringt es beim Übernehmen zurück.
finding-photo-altered = Ein Foto ist beschädigt ({ $photo }). Eine Sicherung oder ein anderes Gerät, das es hat, bringt es beim Übernehmen zurück.
