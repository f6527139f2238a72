## Notices: what they offer, and what the settings tell of them

notice-answer-dry = Trocken
notice-answer-moist = Feucht
notice-answer-wet = Nass
notice-test-title = Mitteilungen kommen an
notice-test = Diese wurde angefordert: { $at }.

notices-title = Mitteilungen
notices-off = Mitteilungen sind auf diesem Gerät aus. Schalte sie unten bei „Dieses Gerät“ ein.
notices-none-soon = Nach jetzigem Stand gibt es in den nächsten zwei Wochen nichts mitzuteilen.
notices-next = Die nächste kommt { $moment }:
notices-granted = Sie sind erlaubt.
notices-refused = Sie sind nicht erlaubt, also ruft dich nichts zu deinen Schalen.
notices-ask = Du hast noch nicht gesagt, ob Plumule Mitteilungen senden darf.
notices-nobody = Nichts auf diesem System zeigt Mitteilungen, also erreicht dich keine, solange das Fenster verborgen ist.
notices-held-back = Das System hält Plumule zurück, um den Akku zu schonen: Mitteilungen kommen vielleicht spät oder erst, wenn du die App öffnest.
notices-allow = Mitteilungen erlauben
notices-test = Probe-Mitteilung senden
notices-test-sent = Gesendet. Wenn du sie nicht siehst, lies, was hier steht, und versuche es noch einmal.
notices-how-linux-nobody = Schalte in den Einstellungen deines Desktops die Benachrichtigungen ein oder installiere einen Benachrichtigungsdienst, dann versuche die Probe-Mitteilung.
notices-how-linux = Wenn keine erscheint, sieh nach, ob in den Einstellungen deines Desktops „Nicht stören“ an ist.
notices-how-windows = Windows-Einstellungen, System, Benachrichtigungen: für Plumule einschalten, und nachsehen, ob „Nicht stören“ an ist.
notices-how-macos = Systemeinstellungen, Mitteilungen, Plumule: Mitteilungen erlauben. Ein Fokus kann sie zurückhalten.
notices-how-android = Einstellungen des Handys, Apps, Plumule, Benachrichtigungen: erlauben.
notices-how-android-held-back = Einstellungen des Handys, Apps, Plumule, Akku: „Uneingeschränkt“ oder „Nicht eingeschränkt“ wählen.
notices-how-ios = Einstellungen, Mitteilungen, Plumule: Mitteilungen erlauben. Ein Fokus kann sie zurückhalten.
notices-desktop = Auf diesem Computer kommen sie, solange Plumule läuft. Was verpasst wurde, kommt beim Öffnen in einer.
notices-phone = Das Handy zeigt sie für die nächsten zwei Wochen von selbst, auch wenn Plumule geschlossen ist.

error-notice-not-shown = Das System hat die Mitteilung nicht angenommen. Lies, was hier zu Mitteilungen steht, und versuche es noch einmal.
error-at-login-failed = In den Ordner deines Desktops für Programme beim Anmelden lässt sich nicht schreiben. Trage Plumule stattdessen in den Einstellungen des Desktops ein.

sign-open = Plumule öffnen
sign-quit = Beenden

## What notices say

notice-morning = Morgenrunde
notice-evening = Abendrunde
notice-frost-title = Frost heute Nacht
notice-light-title = Ans Licht
notice-place = { $place }: { $what }
notice-feel-the-compost =
    { $count ->
        [one] { $count } Schale zu fühlen
       *[other] { $count } Schalen zu fühlen
    }
notice-read-the-thermometer = Thermometer ablesen
notice-frost-tonight = Frost heute Nacht: { $crops }
notice-open-the-lid = Deckel öffnen
notice-close-the-lid = Deckel schließen
notice-last-chance = letzte Gelegenheit, neu zu säen: { $crops }
notice-before-you-go = vor der Abreise gießen
notice-look-over = nach deiner Abwesenheit durchsehen
notice-end-of-the-cold-weeks = { $crops } aus der Kälte
notice-sow-on = { $crops } in Erde legen
notice-look-for-seedlings = nachsehen: { $crops }
notice-it-is-late = { $crops } überfällig
notice-into-the-light = { $crops } ans Licht
notice-cover-off = Haube abnehmen: { $crops }
notice-thin = { $crops } vereinzeln
notice-prick-out = { $crops } pikieren
notice-pot-on = { $crops } umtopfen
notice-harden-off = { $crops } tagsüber hinaus
notice-plant-out = { $crops } auspflanzen
notice-bring-in = { $crops } zur Nacht hereinholen
notice-seed = Saatgut: { $what }
notice-count-the-test =
    { $count ->
        [one] eine Keimprobe auszählen
       *[other] { $count } Keimproben auszählen
    }
notice-stocktake = Inventur vor dem Bestellen
