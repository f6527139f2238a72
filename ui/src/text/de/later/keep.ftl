# What is kept: drafts, corrections, backups, exchange.

## Drafts

draft-kept = Von vorhin, noch nicht eingetragen.
draft-discard = Neu anfangen
draft-discarded = Beiseitegelegt.
draft-bring-back = Zurückholen

## Corrections

fix-correct = Berichtigen
fix-correct-this = Berichtigen: { $what }
fix-title = Eintrag berichtigen
fix-what = Was dastand, bleibt durchgestrichen im Tagebuch; was du jetzt sagst, gilt.
fix-day = Tag
fix-time = Uhrzeit
fix-feel = Erde
fix-feel-none = Nicht gefühlt
fix-water = Gegossen
fix-water-none = Nicht gegossen
fix-how-many = Wie viele
fix-exactly = Genau
fix-pinch = Eine Prise
fix-about = Etwa
fix-packet = Tüte
fix-packet-same = Die Tüte wie bisher
fix-seeds = Samen
fix-depth = Tiefe
fix-wanted = Gewünschte Pflanzen
fix-wanted-hint = Leer lassen, wenn du keine Zahl im Sinn hast.
fix-words = Worte
fix-number = Wie viele
fix-how = Was aus ihnen wurde
fix-how-thinned = Vereinzelt
fix-how-lost = Verloren
fix-how-planted_out = Ausgepflanzt
fix-how-sold = Verkauft
fix-how-given_away = Verschenkt
fix-cause = Warum
fix-place = Umgestellt nach
fix-save = Berichtigung speichern
fix-was = Zuerst eingetragen als: { $what }, { $moment }
fix-amended = Berichtigt { $moment }
fix-withdrawn-on = Gestrichen { $moment }
fix-bring-back = Zurückholen
fix-bring-back-this = Zurückholen: { $what }
history-title = Im Tagebuch
history-open = Einträge im Tagebuch
history-none = Dazu ist noch nichts eingetragen.

## Long work

work-progress = Wie weit es ist
work-cancel = Abbrechen
work-cancelled = Abgebrochen. Nichts wurde geändert.
work-step-begins = Beginnt
work-step-file = Sieht die Datei an
work-step-entries = Liest die Einträge
work-step-projections = Rechnet zusammen, was sie sagen
work-step-photos = Sieht die Fotos an
work-step-copy = Kopiert
work-step-salvage = Liest, was die beschädigte Datei noch hergibt
work-step-verify = Liest zur Prüfung zurück

## Backup and other devices

keep-title = Sicherung und andere Geräte
keep-what = Kopien des Tagebuchs, ein neues Handy, ein zweites Gerät, andere Programme.
keep-open = Öffnen
keep-demo = Dies ist die Demo: von ihr gibt es keine Sicherungen. Verlasse sie erst, um dein eigenes Tagebuch zu sichern oder wiederherzustellen.

backups-title = Sicherungen auf diesem Gerät
backups-what = Entstehen von selbst, nachdem du etwas einträgst, höchstens eine je Stunde. Sie schützen vor Schäden, nicht vor einem verlorenen Handy: speichere auch anderswo eine Datei.
backups-current = Die neueste enthält alles, was im Tagebuch steht.
backups-behind = Seit der neuesten wurde etwas eingetragen.
backups-none = Noch keine.
backups-look = Was darin ist
backups-look-this = Was darin ist: { $moment }
backups-all = Alle { $number } zeigen
backups-make = Jetzt sichern
backups-made = Gesichert und zurückgelesen.
backups-of = Sicherung vom { $moment }

inside-written = Gespeichert { $moment }
inside-entries = { $entries ->
    [one] Ein Eintrag, gelesen und unversehrt
   *[other] { $entries } Einträge, alle gelesen und unversehrt
}
inside-days = Von { $first } bis { $last }
inside-photos = { $photos ->
    [0] Keine Fotos
   *[other] { $found } von { $photos } Fotos geprüft
}
inside-sealed = Durch ein Kennwort geschützt

restore-title = Aus einer Datei wiederherstellen
restore-what = Dies wird zum Tagebuch. Das jetzige wird beiseitegelegt, nicht gelöscht.
restore-do = Dies wiederherstellen

save-title = Alles in eine Datei speichern
save-what = Das ganze Tagebuch mit seinen Fotos, um es anderswo aufzuheben oder auf ein anderes Gerät zu bringen. Es wird zurückgelesen, bevor es als gespeichert gilt.
save-locked = Durch ein Kennwort schützen
save-passphrase-hint = Schreibe es auf: ohne es kann niemand die Datei öffnen, auch du nicht.
save-do = In eine Datei speichern
save-done = Gespeichert und zurückgelesen.
save-left-out = { $entries ->
    [one] Ein Eintrag ist hier beschädigt und nicht darin. Prüfe das Tagebuch unten.
   *[other] { $entries } Einträge sind hier beschädigt und nicht darin. Prüfe das Tagebuch unten.
}
keep-passphrase = Kennwort

take-in-title = Datei eines anderen Geräts übernehmen
file-what-restore = Wähle eine von dieser App gespeicherte Datei. Du siehst, was darin ist, bevor sich etwas ändert.
file-what-take_in = Was darin neu ist, kommt dazu; nichts hier geht. Du siehst zuerst, was sie bringt. Dieselbe Datei zweimal ändert nichts.
file-choose = Datei wählen
file-passphrase-hint = Diese Datei ist durch ein Kennwort geschützt.
file-look = Hineinsehen
file-take-in = Übernehmen
file-taken-in = Übernommen.

brings-nothing = Nichts darin ist hier neu.
brings-new = { $entries ->
    [one] Ein neuer Eintrag
   *[other] { $entries } neue Einträge
}
brings-known = { $entries ->
    [0] Keiner, der schon hier ist
    [one] Einer, der schon hier ist
   *[other] { $entries }, die schon hier sind
}
brings-photos = { $photos ->
    [one] Ein neues Foto
   *[other] { $photos } neue Fotos
}
brings-photos-missing = { $photos ->
    [one] Ein Foto ist auf keinem der beiden Geräte; eine spätere Datei bringt es vielleicht
   *[other] { $photos } Fotos sind auf keinem der beiden Geräte; eine spätere Datei bringt sie vielleicht
}
brings-conflicts = { $conflicts ->
    [one] Eines wurde auf beiden Seiten geändert: beide Einträge bleiben, der spätere gilt (von der anderen Seite: { $theirs })
   *[other] { $conflicts } Dinge wurden auf beiden Seiten geändert: beide Einträge bleiben, der spätere gilt (von der anderen Seite: { $theirs })
}
brings-unknown = { $entries ->
    [one] Ein Eintrag ist von einer neueren Version; er bleibt, wie er ist
   *[other] { $entries } Einträge sind von einer neueren Version; sie bleiben, wie sie sind
}
kind-sown = { $number ->
    [one] eine Aussaat
   *[other] { $number } Aussaaten
}
kind-felt = { $number ->
    [one] Erde einmal gefühlt oder gegossen
   *[other] Erde { $number }-mal gefühlt oder gegossen
}
kind-counted = { $number ->
    [one] eine Zählung
   *[other] { $number } Zählungen
}
kind-reading-taken = { $number ->
    [one] eine Ablesung
   *[other] { $number } Ablesungen
}
kind-noted = { $number ->
    [one] eine Notiz
   *[other] { $number } Notizen
}
kind-photo-taken = { $number ->
    [one] ein Foto
   *[other] { $number } Fotos
}
kind-packet-described = { $number ->
    [one] eine Tüte angelegt oder geändert
   *[other] { $number }-mal Tüten angelegt oder geändert
}
kind-tray-moved = { $number ->
    [one] einmal umgestellt
   *[other] { $number }-mal umgestellt
}
kind-amended = { $number ->
    [one] eine Berichtigung oder Streichung
   *[other] { $number } Berichtigungen oder Streichungen
}

move-phone-title = Umzug auf ein neues Handy
move-phone-what = Schritt für Schritt, auf dem alten und dem neuen Handy
move-which = Dies ist
move-old = Das alte Handy
move-new = Das neue Handy
move-old-save = Alles in eine Datei speichern.
move-old-carry = Die Datei auf das neue Handy bringen: per Kabel, Karte oder womit du sonst Dateien schickst.
move-old-keep = Das Tagebuch auf diesem Handy behalten, bis das neue sagt, dass alle Fotos geprüft sind.
move-new-have = Die Datei vom alten Handy auf diesem haben.
move-new-restore = Sie wählen, ansehen, was darin ist, wiederherstellen.
move-new-check = Eine Schale ansehen, die du kennst. Von jetzt an auf diesem Handy schreiben.

check-title = Tagebuch prüfen
check-what = Liest jeden Eintrag und jedes Foto und vergleicht mit dem, was geschrieben wurde.
check-do = Jetzt prüfen
check-well = Alles ist, wie es geschrieben wurde.
check-found = { $findings ->
    [one] Eines ist nicht, wie es sein sollte.
   *[other] { $findings } Dinge sind nicht, wie sie sein sollten.
}
check-then = Speichere zuerst alles in eine Datei. Stelle dann oben die neueste Sicherung wieder her; was hier ist, wird beiseitegelegt, nicht gelöscht.
check-read = Gelesen: { $entries } Einträge, { $photos } Fotos.

export-title = Für andere Programme
export-what = Teile des Tagebuchs in Formaten, die andere Programme lesen. Für das Ganze alles in eine Datei speichern.
export-sowings = Aussaaten als Tabelle
export-sowings-what = CSV: was wann und wo gesät wurde, und was daraus wurde.
export-packets = Tüten als Tabelle
export-packets-what = CSV: Pflanze, Sorte, Jahr, übrige Samen.
export-readings = Ablesungen als Tabelle
export-readings-what = CSV: tiefster und höchster Wert und jetzt, in °C.
export-calendar = Was fällig ist, für einen Kalender
export-calendar-what = iCalendar: die Aufgaben der nächsten vier Wochen. Noch einmal eingelesen, ersetzt es sich selbst.
export-report = Diese Saison, zum Drucken
export-report-what = Eine Seite, die jeder Browser öffnet und druckt.
export-saved = Gespeichert.
export-as-it-is = { $text }

## A shared folder

sharing-title = Anderes Gerät über einen gemeinsamen Ordner
sharing-what = Ein Ordner, den eines deiner Programme zwischen Geräten kopiert. Jedes Gerät schreibt dort seine eigenen Dateien und liest die der anderen. Entfernt wird dadurch nie etwas.
sharing-by = Geteilt über:
sharing-choose = Ordner wählen
sharing-another = Anderen Ordner wählen
sharing-now = Jetzt teilen
sharing-stop = Nicht mehr teilen
sharing-came = { $devices ->
    [0] Noch hat kein anderes Gerät dort geschrieben.
    [one] Ein anderes Gerät dort; hier neu: Einträge { $new }, Fotos { $photos }.
   *[other] { $devices } andere Geräte dort; hier neu: Einträge { $new }, Fotos { $photos }.
}
sharing-wrote = Dorthin geschrieben: Einträge { $entries }, Fotos { $photos }.
sharing-waiting = { $files ->
    [one] Eine Datei ist noch nicht ganz angekommen; sie wird das nächste Mal gelesen.
   *[other] { $files } Dateien sind noch nicht ganz angekommen; sie werden das nächste Mal gelesen.
}

## When the journal is damaged

recover-nothing-deleted = Nichts wird gelöscht: die beschädigte Datei wird beiseitegelegt, wie sie ist.
recover-backup = { $entries ->
    [one] Die neueste unversehrte Sicherung ist vom { $moment }, mit einem Eintrag.
   *[other] Die neueste unversehrte Sicherung ist vom { $moment }, mit { $entries } Einträgen.
}
recover-no-backup = Es gibt keine unversehrte Sicherung; alles kommt aus der beschädigten Datei.
recover-salvaged = { $entries ->
    [0] Die beschädigte Datei gibt nichts her, was der Sicherung fehlt.
    [one] Ihr fehlt ein Eintrag, den die beschädigte Datei noch hergibt.
   *[other] Ihr fehlen { $entries } Einträge, die die beschädigte Datei noch hergibt.
}
recover-altered = { $entries ->
    [one] Ein Eintrag ist nicht, wie er geschrieben wurde, und bleibt weg.
   *[other] { $entries } Einträge sind nicht, wie sie geschrieben wurden, und bleiben weg.
}
recover-missing = { $entries ->
    [0] Soweit bekannt, ist keiner verloren.
    [one] Ein Eintrag ist bekanntermaßen verloren.
   *[other] { $entries } Einträge sind bekanntermaßen verloren.
}
recover-entries = { $entries ->
    [one] Insgesamt ist ein Eintrag gerettet.
   *[other] Insgesamt sind { $entries } Einträge gerettet.
}
recover-device = Auch die Einstellungen dieses Geräts waren beschädigt; sie beginnen neu.
recover-do = Tagebuch zurückholen
recover-look = Noch einmal nachsehen
recover-done = Das Tagebuch ist wieder da.
recover-open = Öffnen

## Everywhere

screen-keep = Behalten
