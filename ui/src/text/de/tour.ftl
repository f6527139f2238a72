# The short tour of the main work: a strip above the bar that never stands in the way.

tour-title = Ein kurzer Überblick
tour-of = { $screen }, { $number } von { $all }
tour-at-round = Die Runde
tour-at-sow = Beim Säen
tour-at-tray = Die Seite einer Schale
tour-at-seed = Das Saatgut
tour-at-year = Die Jahre
tour-round = Einmal am Tag, Standort für Standort: was jede Schale jetzt braucht, und warum. Ein Tippen genügt als Antwort, und jede lässt sich zurücknehmen.
tour-sow = Wähle eine Tüte und sag, wie viele Pflanzen du möchtest. Du erfährst, wie viele Samen das braucht, wie tief sie kommen und wo sie am frühesten aufgehen.
tour-tray = Was in welcher Zelle steht, wann Keimlinge kommen sollten, was zu tun ist, wenn sie ausbleiben, und jede Zeile, die darüber geschrieben wurde.
tour-seed = Was jede Tüte noch taugt, was in diesen Tagen gesät wird, und was zu kaufen ist, bevor es ausgeht.
tour-year = Was jede Tüte, jeder Standort und jede Erde gebracht hat, ein Jahr neben dem anderen.
tour-next = Weiter: { $screen }
tour-end = Das ist alles
tour-not-now = Nicht jetzt
tour-never = Kein Überblick
tour-again = Den kurzen Überblick noch einmal zeigen
