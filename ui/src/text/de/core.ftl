# What the core says. Keys with a dash for every underscore of a word or code.
# $variety brings its own leading blank and quotes, or is empty. What is put in
# (places, crops, lists) stands where no case ending is called for.

list-last = { $rest } und { $last }

## Crops

crop-asparagus = Spargel
crop-bean-lima = Limabohne
crop-bean-snap = Gartenbohne
crop-beet = Rote Bete
crop-cabbage = Kopfkohl
crop-carrot = Möhre
crop-cauliflower = Blumenkohl
crop-celery = Stangensellerie
crop-corn-sweet = Zuckermais
crop-cucumber = Gurke
crop-eggplant = Aubergine
crop-lettuce = Salat
crop-muskmelon = Zuckermelone
crop-okra = Okra
crop-onion = Zwiebel
crop-parsley = Petersilie
crop-parsnip = Pastinake
crop-pea = Erbse
crop-pepper = Paprika
crop-radish = Radieschen
crop-spinach = Spinat
crop-tomato = Tomate
crop-turnip = Speiserübe
crop-watermelon = Wassermelone

## Words of the closed sets

place-kind-heated-propagator = beheizter Anzuchtkasten
place-kind-windowsill = Fensterbank
place-kind-shed = Schuppen
place-kind-greenhouse = Gewächshaus
place-kind-cold-frame = Frühbeet
place-kind-outdoors = draußen
place-kind-fridge = Kühlschrank

light-dark = dunkel
light-dim = dämmrig
light-bright = hell

container-cells = Multitopfplatte
container-open-tray = Saatschale
container-pot = Topf
container-pots = Topfgruppe
container-damp-paper = feuchtes Papier
container-bag = Beutel

compost-seed = Aussaaterde
compost-multi-purpose = Universalerde
compost-potting = Topferde
compost-garden-soil = Gartenerde
compost-coarse = grobe Erde
compost-no-compost = ohne Erde

storage-fridge-sealed = dicht verschlossen im Kühlschrank
storage-cool-cupboard = in einem kühlen Schrank
storage-warm-room = in einem warmen Zimmer
storage-damp-shed = in einem feuchten Schuppen

feel-dry = trocken
feel-moist = feucht
feel-wet = nass

watering-below = von unten
watering-rose = mit Brause
watering-mist = mit Sprüher

medium-air = Luft
medium-compost = Erde

step-cut-apart = geteilt
step-sown-on = in Erde gelegt
step-pricked-out = pikiert
step-potted-on = umgetopft

cause-eaten = gefressen
cause-damped-off = Umfallkrankheit
cause-frosted = erfroren
cause-baked = überhitzt
cause-dried-out = vertrocknet
cause-spilt = verschüttet
cause-unknown = Ursache unbekannt

origin-cuttings = Stecklinge
origin-tubers = Knollen
origin-bulbs = Blumenzwiebeln
origin-plugs = Jungpflanzen

leaving-thinned = vereinzelt
leaving-lost = verloren
leaving-planted-out = ausgepflanzt
leaving-sold = verkauft
leaving-given-away = verschenkt

stage-sown = gesät
stage-coming-up = geht auf
stage-up = aufgegangen
stage-pricked-out = pikiert
stage-set = eingesetzt
stage-potted-on = umgetopft
stage-hardening-off = beim Abhärten
stage-ready = fertig
stage-gone = fort
stage-nothing-came-up = nichts aufgegangen
stage-lost = verloren
stage-finished = abgeschlossen

job-say-where = Standort angeben
job-cooler-now = jetzt kühler stellen
job-look-for-legginess = auf Vergeilen prüfen
job-feed = düngen
job-empty-the-tray = Schale leeren
job-into-the-light = ans Licht
job-cover-off = Haube abnehmen
job-frost-tonight = Frost heute Nacht
job-bring-in = zur Nacht hereinholen
job-open-the-lid = Deckel öffnen
job-close-the-lid = Deckel schließen
job-last-chance = letzte Gelegenheit, neu zu säen
job-before-you-go = vor der Abreise
job-look-over = durchsehen
job-end-of-the-cold-weeks = Ende der Kältewochen
job-sow-on = in Erde legen
job-look-for-seedlings = nach Sämlingen sehen
job-it-is-late = überfällig
job-feel-the-compost = Erde fühlen
job-read-the-thermometer = Thermometer ablesen
job-thin = vereinzeln
job-prick-out = pikieren
job-pot-on = umtopfen
job-harden-off = abhärten
job-plant-out = auspflanzen
job-count-the-test = Keimprobe auszählen
job-stocktake = Saatgut-Inventur

## Why something is to be done

why-feel-first = { $days ->
        [0] Heute gesät
        [one] Vor einem Tag befüllt
       *[other] Vor { $days } Tagen befüllt
    }; bei { $temperature } trocknet die Erde in etwa { $interval ->
        [one] { $interval } Tag
       *[other] { $interval } Tagen
    }.{ $lift ->
        [1] {" "}Der Samen liegt obenauf: Schale anheben, nicht hineinfassen.
       *[0] {""}
    }
why-feel = { $days ->
        [0] Heute
        [one] Gestern
       *[other] Vor { $days } Tagen
    } { $felt }; bei { $temperature } trocknet die Erde in etwa { $interval ->
        [one] { $interval } Tag
       *[other] { $interval } Tagen
    }.{ $lift ->
        [1] {" "}Der Samen liegt obenauf: Schale anheben, nicht hineinfassen.
       *[0] {""}
    }
why-feel-watered = { $days ->
        [0] Heute
        [one] Gestern
       *[other] Vor { $days } Tagen
    } gegossen; bei { $temperature } trocknet die Erde in etwa { $interval ->
        [one] { $interval } Tag
       *[other] { $interval } Tagen
    }.{ $lift ->
        [1] {" "}Der Samen liegt obenauf: Schale anheben, nicht hineinfassen.
       *[0] {""}
    }
why-feel-daily = Unter Glas oder über der Heizung ist etwas aufgegangen, bei { $temperature }: täglich fühlen. Zuletzt { $days ->
        [0] heute
        [one] gestern
       *[other] vor { $days } Tagen
    }.{ $lift ->
        [1] {" "}Der Samen liegt obenauf: Schale anheben, nicht hineinfassen.
       *[0] {""}
    }
why-feel-dry = { $days ->
        [0] Heute
        [one] Gestern
       *[other] Vor { $days } Tagen
    } trocken und seither nicht gegossen.{ $lift ->
        [1] {" "}Der Samen liegt obenauf: Schale anheben, nicht hineinfassen.
       *[0] {""}
    }
why-read = { $place }: seit { $days ->
        [one] { $days } Tag
       *[other] { $days } Tagen
    } nicht abgelesen, und dort { $trays ->
        [one] steht eine Schale
       *[other] stehen { $trays } Schalen
    }.
why-look = { $crop }{ $variety } ist zu { $progress } so weit: die ersten sind bis { $first } fällig.
why-frost-bring-in = { $place }: heute Nacht { $low }, zu kalt für { $crops }. Hereinholen: { $to }.
why-frost-fleece = { $place }: heute Nacht { $low }, an der Grenze für { $crops }. Zwei Lagen Vlies genügen, oder hereinholen: { $to }.
why-frost-fleece-only = { $place }: heute Nacht { $low }, zu kalt für { $crops }. Wenn möglich ins Haus holen, sonst zwei Lagen Vlies.
why-bring-in = Tagsüber draußen: { $crops }. Vor der Dämmerung hereinholen.
why-open-the-lid = { $place }: es waren { $highest }. An einem sonnigen Morgen den Deckel öffnen, bevor die Sonne die Sämlinge verbrüht ({ $crops }).
why-open-the-lid-unread = Unter einem Deckel kann die Sonne Sämlinge verbrühen ({ $crops }): an einem sonnigen Morgen öffnen, vor der Dämmerung schließen.
why-close-the-lid = { $place } wurde heute Morgen geöffnet: vor der Dämmerung schließen.
why-last-chance =
    { $days ->
        [0] Heute ist der letzte sinnvolle Tag, { $crop }{ $variety } neu zu säen; bisher aufgegangen: { $up }.
        [one] Morgen, { $last }, ist der letzte sinnvolle Tag, { $crop }{ $variety } neu zu säen; bisher aufgegangen: { $up }.
       *[other] { $last }, in { $days } Tagen, ist der letzte sinnvolle Tag, { $crop }{ $variety } neu zu säen; bisher aufgegangen: { $up }.
    }
why-before-you-go =
    { $open ->
        [1] Du bist ab { $from } fort
       *[other] Du bist von { $from } bis { $to } fort
    }. Was hier steht, von unten gießen, Sämlinge aus der Wärme nehmen und den Zettel für die Vertretung hinlegen ({ $trays ->
        [one] { $trays } Schale
       *[other] { $trays } Schalen
    }).
why-before-you-go-meanwhile =
    { $open ->
        [1] Du bist ab { $from } fort
       *[other] Du bist von { $from } bis { $to } fort
    }. Was hier steht, von unten gießen und Sämlinge aus der Wärme nehmen ({ $trays ->
        [one] { $trays } Schale
       *[other] { $trays } Schalen
    }). Wird inzwischen fällig: { $jobs }. Vorher erledigen oder warten lassen.
why-look-over = Du warst bis { $to } fort. { $trays ->
        [one] Die Schale hier
       *[other] Die { $trays } Schalen hier
    } einmal durchsehen: was ist trocken, was ist aufgegangen. Was dann noch zu tun ist, kommt danach.
why-feel-together = { $trays } Schalen sind hier dran: die kleinste ({ $smallest }), die wärmste ({ $warmest }) und eine am Rand ({ $edge }) fühlen. Stimmen sie überein, für alle antworten.
why-look-sprouts = { $crop }{ $variety } ist zu { $progress } so weit: nach den ersten Wurzeln sehen, fällig bis { $first }.
why-look-sprouts-more = { $crop }{ $variety }: bisher { $up } von { $seeds } gekeimt, weitere sind fällig.
why-sow-on =
    { $there ->
        [one] { $crop }{ $variety }: { $there } Samen hat gekeimt. { $low } bis { $high } tief in Erde legen, bevor die Wurzel länger ist als der Samen. Am Samen anfassen, nicht an der Wurzel.
       *[other] { $crop }{ $variety }: { $there } Samen haben gekeimt. { $low } bis { $high } tief in Erde legen, bevor die Wurzeln länger sind als die Samen. Am Samen anfassen, nicht an der Wurzel.
    }
why-sow-on-surface =
    { $there ->
        [one] { $crop }{ $variety }: { $there } Samen hat gekeimt. Auf die Erde legen und nicht bedecken.
       *[other] { $crop }{ $variety }: { $there } Samen haben gekeimt. Auf die Erde legen und nicht bedecken.
    }
why-sow-on-unknown =
    { $there ->
        [one] { $crop }{ $variety }: { $there } Samen hat gekeimt. In Erde legen, bevor die Wurzel länger ist als der Samen.
       *[other] { $crop }{ $variety }: { $there } Samen haben gekeimt. In Erde legen, bevor die Wurzeln länger sind als die Samen.
    }
why-cold-over-fridge =
    { $weeks ->
        [0] Die Kältewochen für { $crop }{ $variety } sind vorbei: aus dem Kühlschrank und an einen Platz mit { $from } bis { $to }.
        [one] { $crop }{ $variety } hatte { $weeks } Woche Kälte: aus dem Kühlschrank und an einen Platz mit { $from } bis { $to }.
       *[other] { $crop }{ $variety } hatte { $weeks } Wochen Kälte: aus dem Kühlschrank und an einen Platz mit { $from } bis { $to }.
    }
why-cold-over =
    { $weeks ->
        [one] { $crop }{ $variety } hatte { $weeks } Woche Kälte. { $place } hat { $temperature }; nötig sind jetzt { $from } bis { $to }.
       *[other] { $crop }{ $variety } hatte { $weeks } Wochen Kälte. { $place } hat { $temperature }; nötig sind jetzt { $from } bis { $to }.
    }
why-look-more = { $crop }{ $variety }: bisher { $up } von { $seeds } aufgegangen, weitere sind fällig.
why-say-where = Niemand hat gesagt, wo { $tray } steht ({ $crops }); so lässt sich nichts berechnen. Standort angeben, dann gehört { $tray } zur Runde dort.
why-cooler = Aufgegangen: { $crops }. Bei { $temperature } ({ $place }) werden Sämlinge weich und lang; nach dem Aufgehen brauchen sie tagsüber { $from } bis { $to }.
why-leggy = { $place } ({ $light }): { $crop }{ $variety } ist aufgegangen; nach { $days } Tagen strecken sich die Stängel aus Lichtmangel. Sind sie lang und dünn oder kurz und gedrungen?
why-light-leggy = Vergeilt ({ $place }): { $crops }. Heute mehr Licht und weniger Wärme, dann wächst es gedrungen weiter. Beim Pikieren tiefer gesetzt, stehen die meisten wieder.
why-feed = Am { $since } in frische Erde gesetzt: nach vier Wochen hat { $crop }{ $variety } sie ausgezehrt. Mit halber Konzentration düngen, auf feuchte Erde.
why-feed-again = Zuletzt am { $since } gedüngt: { $crop }{ $variety } braucht das alle zwei Wochen, bis es hinausgeht. Mit halber Konzentration, auf feuchte Erde.
why-feed-pale = Blasse Blätter am { $since }: { $crop }{ $variety } hat schon Laubblätter, also mit halber Konzentration düngen, auf feuchte Erde.
why-empty = { $tray }: alles Aufgegangene ist fort ({ $crops }){ $seeds ->
        [0] .
        [one] ; ein Samen ging nie auf.
       *[other] ; { $seeds } Samen gingen nie auf.
    } Leeren, oder „Später“ wählen, wenn du noch auf welche wartest.
why-look-unknown = { $crop }{ $variety } steht nicht im Pflanzenbuch, also lässt sich nicht sagen, wann: die meisten Samen gehen ein bis drei Wochen nach der Aussaat auf, und dies ist Tag { $days }.
why-late-unknown = { $crop }{ $variety } steht nicht im Pflanzenbuch, also lassen sich keine Chancen nennen; nach { $days } Tagen ({ $up } aufgegangen) wären die meisten Samen da. Zwei ausgraben, warten oder neu säen.
why-light-dark = Aufgegangen: { $crops } ({ $up }), und es ist dunkel: { $place }. Noch heute ans Licht.
why-light-heated = Aufgegangen: { $crops } ({ $up }), über der Heizung, wo Sämlinge vergeilen: { $place }. Noch heute heller und kühler stellen.
why-light-mixed = Aufgegangen: { $crops } ({ $up }), aber { $waiting } braucht noch die Heizung: { $place }. Schale teilen, alles umstellen oder eine für feuchte Räume gebaute Lampe darüber hängen.
why-light-mixed-dark = Aufgegangen: { $crops } ({ $up }), im Dunkeln ({ $place }), aber { $waiting } noch nicht. Schale teilen, alles umstellen oder eine für feuchte Räume gebaute Lampe darüber hängen.
why-cover-off = Aufgegangen: { $crops } ({ $up }). Unter der Haube faulen Sämlinge, also abnehmen.
why-cover-off-mixed = Aufgegangen: { $crops } ({ $up }), aber { $waiting } noch nicht. Haube abnehmen und öfter fühlen, oder die Schale teilen.
why-late = Neun von zehn sollten bis { $most } da sein, { $days ->
        [one] vor { $days } Tag
       *[other] vor { $days } Tagen
    }; aufgegangen: { $up ->
        [0] keine
       *[other] { $up }
    }, erwartet: { $spread ->
        [0] { $high }
       *[other] { $low } bis { $high }
    }. Im Mittel { $temperature }, Stand: { $way }.
why-late-too-cold = Bei { $temperature } geht { $crop }{ $variety } nicht auf: nötig sind { $from } bis { $to }. Wärmer stellen.
why-late-too-hot = Bei { $temperature } geht { $crop }{ $variety } nicht auf: nötig sind { $from } bis { $to }. Kühler stellen.
why-thin = { $crop }{ $variety }: { $there } in { $cells ->
        [one] { $cells } Zelle
       *[other] { $cells } Zellen
    }; aufgegangen am { $up }, { $days } Tage später mit den ersten Laubblättern. Je die beste stehen lassen.
why-prick-out = { $crop }{ $variety }: { $there } dicht beieinander; aufgegangen am { $up }, nach { $days } Tagen mit den ersten Laubblättern.
why-pot-on = Gesät am { $sown }: { $crop }{ $variety } braucht { $weeks } bis { $weeksmost } Wochen Anzucht, und nach der Hälfte sind die Zellen voll.
why-pot-on-cuttings = Stecklinge vom { $began } bewurzeln in etwa vier Wochen: unten nach Wurzeln sehen.
why-pot-on-plugs = Jungpflanzen kamen am { $began } ({ $there }): umtopfen, bevor sie austrocknen.
why-harden-off-first = Ab { $from } darf { $crop }{ $variety } hinaus (letzter Frost { $frost }{ $record ->
        [0] )
       *[other] ; Frostrisiko nach { $out }: { $chance })
    }: davor { $least } bis { $most } Tage lang tagsüber hinaus und nachts herein.
why-harden-off-no-frost-date = Gesät am { $sown }: { $crop }{ $variety } braucht { $weeks } bis { $weeksmost } Wochen Anzucht. Tagsüber hinaus und nachts herein. Kein letzter Frost eingetragen: in den Einstellungen eintragen.
why-harden-off = Tag { $day } von { $least } bis { $most }: tagsüber hinaus und nachts herein.
why-plant-out = { $hardened ->
        [one] { $hardened } Tag
       *[other] { $hardened } Tage
    } abgehärtet; { $crop } ist { $hardiness }, und nach dem letzten Frost, { $frost }, geht es ab { $from }{ $record ->
        [0] .
       *[other] ; Frostrisiko nach { $out }: { $chance }.
    }
why-plant-out-no-frost-date = { $hardened ->
        [one] { $hardened } Tag
       *[other] { $hardened } Tage
    } abgehärtet. Kein letzter Frost eingetragen: in den Einstellungen eintragen und auf die Nächte achten; { $crop } ist { $hardiness }.
why-plant-out-not-hardened = Ab { $from } könnte es hinaus, aber keine Woche Abhärten ist eingetragen ({ $hardened ->
        [one] { $hardened } Tag
       *[other] { $hardened } Tage
    }); { $crop } ist { $hardiness }.

why-count-the-test = { $crop }{ $variety }: { $seeds } Samen, { $days ->
        [0] heute auf Papier gelegt
        [one] ein Tag auf Papier
       *[other] { $days } Tage auf Papier
    }. Alle bisher gekeimten zählen und abnehmen.
why-count-the-test-last = { $crop }{ $variety }: { $seeds } Samen, { $days ->
        [one] ein Tag auf Papier
       *[other] { $days } Tage auf Papier
    }. Die meisten, die keimen können, haben es getan: noch einmal zählen, dann die Probe abschließen.
why-stocktake = Bevor Saatgut bestellt wird: { $left ->
        [one] eine Tüte war
       *[other] { $left } Tüten waren
    } dieses Jahr noch nicht in der Hand.

hardiness-hardy = frosthart
hardiness-half-hardy = bedingt frosthart
hardiness-tender = frostempfindlich

## Forecasts

forecast-due = Die ersten etwa { $first }, die Hälfte bis { $half }, fast alle bis { $most }: am Ende { $spread ->
        [0] { $high }
       *[other] { $low } bis { $high }
    }. Stand: { $way }; { $place } hatte { $temperature }.
forecast-due-today = Fast alle bis { $most }: am Ende { $spread ->
        [0] { $high }
       *[other] { $low } bis { $high }
    }. Heute gesät, bei { $temperature }: { $place }.
forecast-half-up = Die Hälfte war bis { $half } fällig, fast alle bis { $most }: am Ende { $spread ->
        [0] { $high }
       *[other] { $low } bis { $high }
    }. Stand: { $way }; { $place } hatte { $temperature }.
forecast-past = Fast alle sollten bis { $most } da sein; erwartet: { $spread ->
        [0] { $high }
       *[other] { $low } bis { $high }
    }. Stand: { $way }; { $place } hatte { $temperature }.
way-0 = kaum begonnen
way-1 = ein Viertel des Weges
way-2 = halber Weg
way-3 = drei Viertel des Weges
way-4 = so weit, dass die Hälfte da ist
way-5 = weiter, als bis die Hälfte da ist
way-6 = viel weiter, als bis die Hälfte da ist
forecast-none = Bei { $temperature } geht binnen eines Jahres nichts auf.
forecast-winter = Wartet den Winter ab: ab { $until } wird wieder nachgesehen.
forecast-cold-until = In den Kältewochen bis { $until }: dann beginnt es.
forecast-cold-fridge-until = In den Kältewochen: ab { $until } darf es aus dem Kühlschrank, dann beginnt es.
forecast-cold-weeks = In den Kältewochen: es beginnt, wenn es aus dem Kühlschrank kommt.
bench-due =
    { $to ->
        [one] { $from } bis { $to } Tag
       *[other] { $from } bis { $to } Tage
    }
bench-none-below = Unter { $limit } geht nichts auf; dort sind es { $temperature }.
bench-none-above = Über { $limit } geht nichts auf; dort sind es { $temperature }.
next-due = { $place }: { $job }
next-due-seed = Saatgut: { $job }

## Wait or sow again

odds-under = unter 1 von 20
odds-1 = etwa 1 von 10
odds-2 = etwa 2 von 10
odds-3 = etwa 3 von 10
odds-4 = etwa 4 von 10
odds-5 = etwa halb und halb
odds-6 = etwa 6 von 10
odds-7 = etwa 7 von 10
odds-8 = etwa 8 von 10
odds-9 = etwa 9 von 10
odds-over = über 19 von 20

verdict-look = Zuletzt vor zu langer Zeit gezählt, um Chancen zu nennen: jetzt zählen, was da ist, nichts als 0.
verdict-too-early = Chancen lassen sich erst nennen, wenn es etwas Wärme zum Wachsen hatte.
verdict-pinch = Eine Prise zählt niemand, also gibt es keine Chancen zu nennen; { $crop }{ $variety } ist meist bis { $usual } größtenteils da.
verdict-record-wrong = Bei den eingetragenen Temperaturen könnte { $crop }{ $variety } nicht aufgehen, doch { $up ->
        [one] ist
       *[other] sind
    } { $up } da: Ablesungen und Standort prüfen, denn daraus lassen sich keine Chancen nennen.
verdict-wait = Warten: Chance, dass noch welche kommen: { $any }; auf die gewünschten { $wanted }: { $reach } ({ $up } da, am Ende etwa { $expected }). Die nächste wird bis { $until } erwartet.
verdict-wait-look = Die nächste wurde bis { $until } erwartet: noch einmal zählen. Die Chance auf die gewünschten { $wanted } war { $reach }.
verdict-warm = Eher von Kälte gebremst als tot: Chance auf rechtzeitig { $wanted } bei { $temperature }: { $reach }, bei { $from } bis { $to }: { $there }.{ $place ->
        [0] {" "}Keiner deiner Standorte ist so warm.
       *[1] {""}
    }
verdict-cool = Eher von Hitze gehemmt als tot: Chance auf rechtzeitig { $wanted } bei { $temperature }: { $reach }, bei { $from } bis { $to }: { $there }.{ $place ->
        [0] {" "}Keiner deiner Standorte ist so kühl.
       *[1] {""}
    }
verdict-nothing-more = Mehr ist kaum zu erwarten: Chance auf weitere: { $any }, und { $up } von { $wanted } gewünschten { $up ->
        [one] ist
       *[other] sind
    } da.{ $dug ->
        [0] {" "}Zwei Samen ausgraben, um sicherzugehen.
       *[other] {""}
    }{ $over ->
        [1] {" "}Zum Neusäen ist es in dieser Saison spät: { $last } war der letzte sinnvolle Tag.
       *[0] {""}
    }
verdict-sow-beside = Chance, dass noch welche kommen: { $any }; auf die gewünschten { $wanted }: { $reach } ({ $up } da, am Ende etwa { $expected }).{ $over ->
        [1] {" "}Zum Nachsäen ist es in dieser Saison spät: { $last } war der letzte sinnvolle Tag.
       *[0] { $seeds ->
            [0] {" "}Besseres Saatgut dazusäen.
            [one] {" "}Noch einen Samen dazusäen.
           *[other] {" "}Noch { $seeds } dazusäen.
        }
    }

choice-wait = Bis { $until } warten
choice-move-to = Umstellen: { $place }
choice-dig-up = { $number ->
        [one] Einen ausgraben
       *[other] Zwei ausgraben
    }
choice-sow-beside = Noch { $seeds } dazusäen
choice-sow-again = Neu säen
choice-sow-other = Andere Tüte säen
choice-sow-better = { $seeds } × { $crop }{ $variety }{ $year } säen
choice-give-up = Aufgeben
choice-enough = { $up ->
        [one] Die eine, die da ist, genügt
       *[other] Die { $up }, die da sind, genügen
    }

gives-wait = Chance auf die gewünschten { $wanted }: { $reach }, und am Ende etwa { $expected }.
gives-move = Chance auf die gewünschten { $wanted }: { $there }; am jetzigen Standort { $reach }.
gives-move-to = In etwa { $days } Tagen wäre die Hälfte da.
gives-dig-up = { $number ->
        [one] Fest: Chance, dass noch welche kommen, { $firm }; weich: { $soft }.
       *[other] Beide fest: Chance, dass noch welche kommen, { $firm }; beide weich: { $soft }.
    }
gives-sow = Aus derselben Tüte: Chance auf die gewünschten { $wanted } etwa 9 von 10.{ $season ->
        [1] {" "}Sinnvoll bis { $last }.
       *[0] {""}
    }
gives-sow-better = Besseres Saatgut, also genügen weniger: Chance auf die gewünschten { $wanted } etwa 9 von 10.{ $season ->
        [1] {" "}Sinnvoll bis { $last }.
       *[0] {""}
    }
gives-give-up = Es wird eingetragen, dass nichts aufging; { $cells ->
        [one] die Zelle und die Erde sind
       *[other] die { $cells } Zellen und die Erde sind
    } frei für anderes.
gives-enough = Dass es überfällig ist, kommt nicht mehr vor, bis du wieder zählst.

find = { $soft ->
        [0] { $firm ->
            [one] Er war fest
           *[other] Beide fest
        }
       *[other] { $firm ->
            [0] { $soft ->
                [one] Er war weich
               *[other] Beide weich
            }
           *[other] Einer fest, einer weich
        }
    }
find-gives = Dann ist die Chance, dass noch welche kommen: { $any }.

## Why it did badly

reason = { $likely ->
        [1] Wahrscheinlich
       *[0] Möglicherweise
    } { $cause }: das kann etwa { $seedlings ->
        [one] einen Sämling
       *[other] { $seedlings } Sämlinge
    } gekostet haben.
reason-cause-too-cold = zu kalt
reason-cause-too-hot = zu heiß
reason-cause-old-seed = altes Saatgut
reason-cause-too-deep = zu tief gesät
reason-cause-too-shallow = zu flach gesät
reason-cause-buried-from-light = vom Licht abgedeckt
reason-cause-dried-out = ausgetrocknet
reason-cause-wet-and-cool = nass und kühl gehalten
reason-cause-wrong-compost = die falsche Erde
reason-cause-washed-out = mit der Kanne fortgeschwemmt
reason-cause-eaten = gefressen
reason-cause-damped-off = Umfallkrankheit
reason-cause-frosted = erfroren
reason-cause-baked = überhitzt
reason-cause-want-of-light = vergeilt aus Lichtmangel
reason-cause-long-in-the-heat = zu lange in der Wärme

reason-fact-days = { $days ->
        [one] Ein Tag
       *[other] { $days } Tage
    } bei im Mittel { $temperature }; nötig sind { $from } bis { $to }.
reason-fact-germination = Beim Abfüllen gingen davon vielleicht { $packed } von 10 auf, jetzt { $now ->
        [0] weniger als 1
       *[other] { $now }
    } von 10.
reason-fact-germination-year = Von { $year }: damals gingen davon vielleicht { $packed } von 10 auf, jetzt { $now ->
        [0] weniger als 1
       *[other] { $now }
    } von 10.
reason-fact-depth-most = { $depth } tief gesät; { $right } ist das Höchste.
reason-fact-depth-least = { $depth } tief gesät; { $right } ist das Mindeste.
reason-fact-dry = Trocken und an dem Tag nicht gegossen: { $felt ->
        [one] einmal
        [2] zweimal
       *[other] { $felt }-mal
    } vor dem Aufgehen.
reason-fact-gap = Einmal { $days } Tage lang nicht gefühlt.
reason-fact-wet = { $felt ->
        [2] Zweimal
       *[other] { $felt }-mal
    } nass, bei im Mittel { $temperature }; nötig sind { $from } bis { $to }.
reason-fact-sown-in = Gesät in: { $compost }.
reason-fact-can = { $times ->
        [one] Einmal
       *[other] { $times }-mal
    } mit einer Kanne ohne Brause gegossen.
reason-fact-saw = Du hast { $number } als dadurch verloren eingetragen.
reason-fact-saw-it = Du hast es eingetragen.
reason-fact-light = Es stand nach dem Aufgehen nicht hell.
reason-fact-heat = { $days } Tage über der Heizung, nachdem es aufging.

remedy-too-cold = Nächstes Mal bis zum Aufgehen bei { $from } bis { $to } aufstellen.
remedy-too-hot = Nächstes Mal bei { $from } bis { $to } aufstellen: bis zum Aufgehen nicht in die Sonne und nicht auf die Heizung.
remedy-old-seed = Neues Saatgut kaufen oder gewinnen, oder zur Hälfte dieses und zur Hälfte aus einer neuen Tüte säen: ein fairer Versuch.
remedy-too-deep = Nächstes Mal { $least } bis { $most } tief säen; halb und halb ist ein fairer Versuch.
remedy-too-shallow = Nächstes Mal { $least } bis { $most } hoch bedecken; halb und halb ist ein fairer Versuch.
remedy-buried-from-light = Andrücken und offen lassen, oder höchstens { $most } bedecken; halb und halb ist ein fairer Versuch.
remedy-dried-out = Alle paar Tage fühlen und bis zum Aufgehen abdecken.
remedy-wet-and-cool = Nur gießen, wenn es sich trocken anfühlt, und wärmer stellen.
remedy-wrong-compost = Nächstes Mal Aussaaterde nehmen, vor dem Schütten angefeuchtet; halb und halb ist ein fairer Versuch.
remedy-washed-out = Feine Saat von unten oder mit Sprüher gießen.
remedy-eaten = Nächstes Mal außer Reichweite stellen, unter Deckel oder feines Netz.
remedy-damped-off = Dünner säen, in saubere Schalen und frische Erde; Haube ab, sobald es aufgeht.
remedy-frosted = Nächstes Mal hereinholen oder abdecken, wenn die Nacht Frost bringen kann.
remedy-baked = Nächstes Mal schattieren und an sonnigen Morgen den Deckel öffnen.
remedy-want-of-light = Nächstes Mal am Tag des Aufgehens ins Helle stellen.
remedy-long-in-the-heat = Nächstes Mal am Tag des Aufgehens von der Heizung nehmen.

## Notices

notice-morning = Runde heute Morgen
notice-evening = Runde heute Abend
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

## What was done: lines of the journal, and the answer to an act

line-garden-described = Angaben zum Garten eingetragen
line-away = Fort von { $from } bis { $to }
line-place-described = Standort eingetragen: { $place }
line-packet-described = Tüte eingetragen: { $crop }{ $variety }
line-test-counted = Keimprobe { $crop }{ $variety }: bisher { $sprouted } von { $seeds } gekeimt
line-test-closed = Keimprobe { $crop }{ $variety } abgeschlossen: { $sprouted } von { $seeds } gekeimt
line-tray-described = Schale { $tray } beschriftet
line-moved = { $tray } umgestellt: { $place }
line-moved-many =
    { $trays ->
        [one] { $trays } Schale umgestellt: { $place }
       *[other] { $trays } Schalen umgestellt: { $place }
    }
line-covered = { $tray } abgedeckt
line-uncovered = Haube ab: { $tray }
line-emptied = { $tray } geleert
line-away-open = Fort ab { $from } bis auf Weiteres
line-came-back = Zurück am { $day }
line-frost-reckoned = Frostrisiko berechnet aus Tiefstwerten von { $from } bis { $to }
line-night = Tiefstwert der Nacht draußen, { $day }: { $temperature }
line-night-in = Tiefstwert der Nacht, { $place }, { $day }: { $temperature }
line-sheltered-brought-in = { $tray } zur Nacht hereingeholt
line-sheltered-brought-in-many = { $trays } Schalen zur Nacht hereingeholt
line-sheltered-fleece = Vlies zur Nacht über { $tray }
line-sheltered-fleece-many = Vlies zur Nacht über { $trays } Schalen
line-aired = Deckel geöffnet: { $place }
line-heat-back = { $place }: Heizung wieder an, { $at }
line-sown =
    { $seeds ->
        [one] Gesät in { $tray }: { $seeds } Samen { $crop }{ $variety }
       *[other] Gesät in { $tray }: { $seeds } Samen { $crop }{ $variety }
    }
line-sown-about = Gesät in { $tray }: etwa { $seeds } Samen { $crop }{ $variety }
line-sown-pinch = Gesät in { $tray }: eine Prise { $crop }{ $variety }
line-started-cuttings =
    { $number ->
        [one] Eingesetzt in { $tray }: { $number } Steckling { $crop }{ $variety }
       *[other] Eingesetzt in { $tray }: { $number } Stecklinge { $crop }{ $variety }
    }
line-started-tubers =
    { $number ->
        [one] Eingesetzt in { $tray }: { $number } Knolle { $crop }{ $variety }
       *[other] Eingesetzt in { $tray }: { $number } Knollen { $crop }{ $variety }
    }
line-started-bulbs =
    { $number ->
        [one] Eingesetzt in { $tray }: { $number } Blumenzwiebel { $crop }{ $variety }
       *[other] Eingesetzt in { $tray }: { $number } Blumenzwiebeln { $crop }{ $variety }
    }
line-started-plugs =
    { $number ->
        [one] Eingesetzt in { $tray }: { $number } Jungpflanze { $crop }{ $variety }
       *[other] Eingesetzt in { $tray }: { $number } Jungpflanzen { $crop }{ $variety }
    }
line-felt = { $tray } fühlte sich { $feel } an
line-felt-and-watered = { $tray } fühlte sich { $feel } an, { $water } gegossen
line-watered = { $tray } { $water } gegossen
line-felt-many =
    { $trays ->
        [one] { $trays } Schale fühlte sich { $feel } an
       *[other] { $trays } Schalen fühlten sich { $feel } an
    }
line-felt-and-watered-many =
    { $trays ->
        [one] { $trays } Schale fühlte sich { $feel } an, { $water } gegossen
       *[other] { $trays } Schalen fühlten sich { $feel } an, { $water } gegossen
    }
line-watered-many =
    { $trays ->
        [one] { $trays } Schale { $water } gegossen
       *[other] { $trays } Schalen { $water } gegossen
    }
line-fed = { $tray } gedüngt
line-hardened-off = { $tray } tagsüber hinausgestellt
line-reading = { $place }: { $low } bis { $high } ({ $of })
line-reading-now = { $place }: jetzt { $temperature } ({ $of })
line-heat-off = { $place }: Heizung aus von { $from } bis { $to }
line-heat-off-still = { $place }: Heizung aus seit { $from }
line-counted =
    { $number ->
        [0] Nachgesehen in { $tray }: { $crop }{ $variety } noch nicht aufgegangen
       *[other] Gezählt in { $tray }: { $number } × { $crop }{ $variety } aufgegangen
    }
line-counted-batch = Gezählt in { $tray }: { $number } × { $crop }{ $variety } am Leben
line-counted-few = Nachgesehen in { $tray }: { $crop }{ $variety }, einige aufgegangen
line-counted-half = Nachgesehen in { $tray }: { $crop }{ $variety }, die Hälfte aufgegangen
line-counted-nearly-all = Nachgesehen in { $tray }: { $crop }{ $variety }, fast alle aufgegangen
line-went-on-cut-apart = Abgeteilt von { $tray }: { $number } × { $crop }{ $variety } in { $into }
line-went-on-sown-on = Aus { $tray } in Erde gelegt: { $number } × { $crop }{ $variety } in { $into }
line-went-on-pricked-out = Pikiert aus { $tray }: { $number } × { $crop }{ $variety } in { $into }
line-went-on-potted-on = Umgetopft aus { $tray }: { $number } × { $crop }{ $variety } in { $into }
line-left-thinned = Vereinzelt in { $tray }: { $number } × { $crop }{ $variety } herausgenommen
line-left-planted-out = Ausgepflanzt aus { $tray }: { $number } × { $crop }{ $variety }
line-left-sold = Verkauft aus { $tray }: { $number } × { $crop }{ $variety }
line-left-given-away = Verschenkt aus { $tray }: { $number } × { $crop }{ $variety }
line-left-lost = Verloren in { $tray }: { $number } × { $crop }{ $variety } ({ $cause })
line-ready = Fertig in { $tray }: { $crop }{ $variety }
line-dug-up = Ausgegraben in { $tray }: { $crop }{ $variety }, { $firm } fest und { $soft } weich
line-nothing-came-up = Nichts aufgegangen in { $tray }: { $crop }{ $variety }
line-finished = Abgeschlossen in { $tray }: { $crop }{ $variety }
line-noted = Notiz: { $text }
line-photo-taken = Foto gemacht
line-photo-named = Foto benannt
line-job-put-off = Verschoben auf { $until }: { $job }
line-job-dismissed = Nicht mehr: { $job }
line-withdrawn = Ein Eintrag wurde gestrichen
line-corrected = Ein Eintrag wurde berichtigt
line-undone = Rückgängig gemacht
line-unknown = Von einer neueren Version geschrieben: { $kind }

## What the compost was last like

felt-only = Zuletzt { $feel }: { $at }
felt-and-watered = Zuletzt { $feel } und { $water } gegossen: { $at }
felt-watered = Zuletzt { $water } gegossen: { $at }

## What is likely to come up

outlook-span = Vielleicht { $low } bis { $high } von 10 gehen auf
outlook-few = Weniger als 1 von 10 geht auf
outlook-few-packed = Weniger als 1 von 10 geht auf: abgefüllt { $year }, gelagert { $storage }; gewöhnlich hält es { $life ->
        [one] { $life } Jahr
       *[other] { $life } Jahre
    }
outlook-few-harvested = Weniger als 1 von 10 geht auf: geerntet { $year }, gelagert { $storage }; gewöhnlich hält es { $life ->
        [one] { $life } Jahr
       *[other] { $life } Jahre
    }
outlook-about = Etwa { $low } von 10 gehen auf
outlook-span-packed = Vielleicht { $low } bis { $high } von 10 gehen auf: abgefüllt { $year }, gelagert { $storage }; gewöhnlich hält es { $life ->
        [one] { $life } Jahr
       *[other] { $life } Jahre
    }
outlook-about-packed = Etwa { $low } von 10 gehen auf: abgefüllt { $year }, gelagert { $storage }; gewöhnlich hält es { $life ->
        [one] { $life } Jahr
       *[other] { $life } Jahre
    }
outlook-span-harvested = Vielleicht { $low } bis { $high } von 10 gehen auf: geerntet { $year }, gelagert { $storage }; gewöhnlich hält es { $life ->
        [one] { $life } Jahr
       *[other] { $life } Jahre
    }
outlook-about-harvested = Etwa { $low } von 10 gehen auf: geerntet { $year }, gelagert { $storage }; gewöhnlich hält es { $life ->
        [one] { $life } Jahr
       *[other] { $life } Jahre
    }

outlook-own = { $sowings ->
        [one] Deine eigene Aussaat
       *[other] Deine { $sowings } eigenen Aussaaten
    }: { $up } von { $of }

## Light and cautions

light-need-needed = Lichtkeimer: dünn oder gar nicht bedecken
light-need-dark = Dunkelkeimer: gut bedecken

caution-compost-dust = Staub von Erde und Kompost kann Legionellen enthalten: Handschuhe tragen, Erde und Arbeitstisch anfeuchten, bevor du schüttest oder kehrst, das Gesicht fernhalten und die Hände waschen. Hinweise auf dem Sack und örtliche Vorschriften befolgen.
caution-treated-seed = Gebeiztes Saatgut: Handschuhe tragen, von Kindern und Tieren fernhalten, niemals essen, und die Angaben auf der Tüte befolgen.
caution-electricity = Wärme und Wasser: nur Geräte verwenden, die für feuchte Räume gebaut sind, an einer Steckdose mit FI-Schutzschalter, und örtliche Vorschriften befolgen; Leitungen nur von einer Elektrofachkraft verlegen lassen.
caution-poisonous-leaves = Blätter und Stängel sind giftig, wenn man sie isst: von Kindern und Tieren fernhalten.
caution-poisonous-raw-seeds = Die Samen sind roh giftig: von Kindern und Tieren fernhalten.
caution-poisonous-berries = Die Beeren sind giftig: von Kindern fernhalten.
caution-sap-burns-in-sun = Der Saft auf der Haut führt in der Sonne zu Verbrennungen: Handschuhe tragen und ihn abwaschen.

## What cannot be done: refused by the journal

refused-nothing-to-write = Es gibt nichts einzutragen. Wähle, was geschehen ist.
refused-nothing-to-undo = Es gibt nichts rückgängig zu machen: das ist schon geschehen.
refused-amendment-by-hand = Das geht nur, indem ein Eintrag berichtigt oder gestrichen wird.
refused-entry-too-large = Das ist zu viel für einen Eintrag. Kürze ihn oder mache zwei daraus.
refused-reading-out-of-range = { $temperature } kann nicht stimmen: möglich ist { $lowest } bis { $highest }. Sieh noch einmal auf das Thermometer.
refused-min-above-max = Der tiefste Wert, { $lowest }, liegt über dem höchsten, { $highest }. Tausche sie oder lies noch einmal ab.
refused-before-the-sowing = Es begann erst am { $day }. Wähle eine spätere Zeit oder berichtige den Beginn.
refused-in-the-future = { $day } ist noch nicht gekommen. Wähle jetzt oder früher.
refused-zone-unknown = „{ $zone }“ ist keine Zeitzone. Wähle eine aus der Liste.
refused-name-empty = Ein Name fehlt. Gib einen ein.
refused-name-too-long = Der Name ist zu lang. Höchstens { $most } Zeichen.
refused-text-empty = Die Notiz ist leer. Schreibe etwas oder lass sie.
refused-text-too-long = Der Text ist zu lang. Höchstens { $most } Zeichen, oder mache zwei daraus.
refused-tray-without-cells = Eine Schale braucht mindestens eine Reihe und eine Spalte.
refused-tray-too-large = Das sind mehr als { $most } Zellen. Nimm weniger Reihen oder Spalten.
refused-tray-would-lose-cells = In Zellen, die { $code } dann nicht mehr hätte, stehen Pflanzen. Setze sie erst um.
refused-cells-none = Dafür ist keine Zelle frei. Wähle Zellen oder nimm eine andere Schale.
refused-cells-outside = Diese Zellen liegen außerhalb von { $code } mit { $cells }. Wähle andere.
refused-cells-taken = Einige dieser Zellen sind belegt ({ $cells }). Wähle freie.
refused-code-taken = Eine andere Schale in Gebrauch heißt { $code }. Gib dieser einen anderen Code.
refused-place-unknown = Dieser Standort steht nicht im Tagebuch. Wähle einen anderen.
refused-packet-unknown = Diese Tüte steht nicht im Tagebuch. Wähle eine andere.
refused-tray-unknown = Diese Schale steht nicht im Tagebuch. Wähle eine andere.
refused-sowing-unknown = Diese Aussaat steht nicht im Tagebuch. Geh zurück und wähle noch einmal.
refused-batch-unknown = Diese Pflanzen stehen nicht im Tagebuch. Geh zurück und wähle noch einmal.
refused-entry-unknown = Dieser Eintrag steht nicht im Tagebuch. Geh zurück und wähle noch einmal.
refused-entry-not-understood = Diesen Eintrag hat eine neuere Version geschrieben; hier lässt er sich nicht ändern. Aktualisiere zuerst.
refused-id-taken = Das ist schon eingetragen.
refused-place-retired = { $name } wird nicht mehr benutzt. Wähle einen anderen Standort, oder nimm ihn in den Einstellungen wieder in Gebrauch.
refused-tray-emptied = { $code } wurde geleert. Nimm eine andere Schale, oder mache das Leeren rückgängig.
refused-tray-occupied = In { $code } lebt noch etwas. Sag erst, was daraus wurde.
refused-already-ended = Das ist schon abgeschlossen. Mache erst den Abschluss rückgängig, falls es lebt.
refused-something-came-up =
    { $up ->
        [one] { $up } ging auf, also kann es nicht sein, dass nichts aufging. Sag stattdessen, was daraus wurde.
       *[other] { $up } gingen auf, also kann es nicht sein, dass nichts aufging. Sag stattdessen, was daraus wurde.
    }
refused-number-zero = Die Zahl muss mindestens 1 sein.
refused-number-too-large = Das ist zu viel, um zu stimmen: höchstens { $most }. Gib die Zahl noch einmal ein.
refused-parts-none = Sag, in welche Schalen sie kamen.
refused-more-than-there =
    { $there ->
        [one] Nur { $there } ist da. Zähle noch einmal oder gib eine kleinere Zahl an.
       *[other] Nur { $there } sind da. Zähle noch einmal oder gib eine kleinere Zahl an.
    }
refused-more-than-seeds =
    { $seeds ->
        [one] Nur { $seeds } Samen ist nicht aufgegangen. Gib kleinere Zahlen an.
       *[other] Nur { $seeds } Samen sind nicht aufgegangen. Gib kleinere Zahlen an.
    }
refused-latitude-out-of-range = Die Breite muss zwischen { $most } Süd und { $most } Nord liegen. Gib sie noch einmal an.
refused-month-day-unknown = Den Tag gibt es nicht. Gib Monat und Tag an, wie 05-14.
refused-days-out-of-range = Keimdauer in Tagen: von 1 bis { $most }, die kleinere Zahl zuerst.
refused-germination-out-of-range = Die Keimfähigkeit muss zwischen 0 und 100 % liegen.
refused-year-out-of-range = Das Jahr kann nicht stimmen. Sieh noch einmal auf die Tüte.
refused-night-out-of-range = { $day } ist keine Nacht, für die das gesagt werden kann: wähle eine von der letzten Nacht bis in zwei Wochen.
refused-night-temperature-out-of-range = Das ist keine Temperatur einer Nacht: gib eine von { $least } bis { $most } °C an.
refused-frost-nothing-reckoned = Es gibt nichts zu behalten: weder Frühjahr noch Herbst hatten genug Jahre mit Frost. Nimm eine längere Messreihe.
refused-frost-out-of-range = Diese Frosttermine können nicht stimmen. Lies die Messreihe noch einmal ein.
refused-not-away = Für dann ist keine Abwesenheit eingetragen, also gibt es nichts zu beenden.
refused-heat-not-off = Heizung nicht aus: { $name }. Trage erst ein, seit wann sie aus war.
refused-soak-out-of-range = So viel Wasser verträgt Saatgut nicht: mehr als 0 und höchstens { $most } Stunden einweichen.
refused-depth-out-of-range = Das ist zu tief, um zu stimmen: höchstens { $most } mm. Gib die Tiefe noch einmal an.
refused-photo-malformed = Das Foto ließ sich nicht übernehmen. Nimm es noch einmal auf.
refused-felt-nothing = Sag, wie sie sich anfühlte, wie gegossen wurde, oder beides.
refused-ends-before-it-starts = Es endet vor dem Anfang. Tausche die beiden.
refused-job-malformed = Diese Aufgabe gibt es nicht mehr. Sieh die Runde noch einmal an.
refused-correction-of-another-kind = Ein Eintrag lässt sich nur zu einem derselben Art berichtigen. Streiche ihn und schreibe einen neuen.
refused-correction-does-not-add-up = Damit gehen die Zahlen nicht mehr auf. Berichtige erst, was danach kam.

## What is asked first

asks-above-the-seeds = { $up } aufgegangen ist mehr als die { $seeds } Samen, die gesät wurden. Trotzdem eintragen?
asks-far-back = { $day } liegt { $days } Tage zurück. Stimmt das Datum?
asks-above-the-batch = { $up } ist mehr als die { $before }, die eingesetzt wurden. Trotzdem eintragen?
asks-count-falls = Das sind { $lost } weniger als vorher: sie zählen als verloren, und { $there } als vorhanden. Ist das so?
asks-reading-differs = { $place }: { $temperature } ist weit weg von den { $before } zuvor. Stimmt das?
asks-others-build-on-it = Andere Einträge bauen auf diesem auf und fielen mit ihm weg. Einmal „Rückgängig“ holt alle zurück. Weiter?
asks-after-the-end = Es wurde am { $day } abgeschlossen. Trotzdem eintragen?

## What went wrong

error-store-failed = Das Tagebuch ließ sich nicht schreiben. Versuche es noch einmal; nichts ging verloren.
error-disk-full = Der Speicher ist voll. Schaffe Platz und versuche es noch einmal; nichts ging verloren.
error-journal-read-only = Das Tagebuch darf nicht beschrieben werden. Prüfe, ob der Ordner beschreibbar ist.
error-journal-busy = Das Tagebuch ist anderswo geöffnet. Schließe das und versuche es noch einmal.
error-journal-damaged = Das Tagebuch ist beschädigt. Es bleibt, wie es ist; spiele eine Sicherung ein.
error-journal-newer = Das Tagebuch hat eine neuere Version geschrieben. Aktualisiere vor dem Öffnen.
error-not-a-journal = Diese Datei ist kein Tagebuch. Sie bleibt, wie sie ist.
error-file-failed = Eine Datei ließ sich nicht lesen oder schreiben. Prüfe den Speicher und versuche es noch einmal.
error-save-failed = Die Datei ließ sich dort nicht speichern. Wähle einen anderen Ordner oder schaffe Platz, und versuche es noch einmal.
error-bad-request = „{ $text }“ ist hier nicht bekannt. Geh zurück und wähle noch einmal.
error-bad-time = „{ $text }“ ist keine Uhrzeit. Gib Stunden und Minuten an, wie 08:00.
error-bad-day = „{ $text }“ ist kein Tag des Jahres. Gib Monat und Tag an, wie 05-14.
error-bad-zone = „{ $text }“ ist keine Zeitzone. Wähle eine aus der Liste.
error-draft-too-long = Das ist zu lang, um es beim Tippen zu behalten. Trage es in zwei Notizen ein.
error-no-folder = Der gemeinsame Ordner ist nicht da. Verbinde ihn oder wähle einen anderen.
error-no-folder-here = Auf diesem Gerät lässt sich kein Ordner teilen. Speichere alles in eine Datei und übernimm sie auf dem anderen.
error-work-busy = Etwas anderes läuft noch. Warte, bis es fertig ist, oder brich es ab.
error-no-file-chosen = Keine Datei gewählt. Wähle erst eine.
error-leave-demo-first = Die Demo ist offen. Verlasse sie erst, in den Einstellungen.
error-bad-habit = „{ $text }“ lässt sich hier nicht einstellen. Wähle etwas von dem, was gezeigt wird.
error-initials-too-long = „{ $text }“ ist zu lang für ein Kürzel. Höchstens 12 Zeichen.
error-not-open = Kein Tagebuch ist offen. Schließe die App und öffne sie wieder.
error-unexpected = In der App ging etwas schief. Nichts wurde halb geschrieben; versuche es noch einmal.
error-nothing-chosen = Nichts gewählt. Wähle mindestens eine Schale.

## What is odd about a tray or its plants

problem-more-left-than-there = Es gingen mehr Pflanzen fort, als da waren: sieh die Einträge unten an und berichtige einen.
problem-cells-twice = Einige Zellen enthalten zweierlei zugleich oder liegen außerhalb der Schale.
problem-never-described = Der erste Eintrag fehlt oder ist gestrichen.
problem-after-the-end = Nach dem Abschluss wurde noch etwas eingetragen.

## Crops and cautions of the whole crop book

crop-achillea = Schafgarbe
crop-ageratum = Leberbalsam
crop-alyssum = Duftsteinrich
crop-aquilegia = Akelei
crop-artichoke = Artischocke
crop-basil = Basilikum
crop-bean-runner = Feuerbohne
crop-begonia = Eisbegonie
crop-borage = Borretsch
crop-broad-bean = Dicke Bohne
crop-broccoli = Brokkoli
crop-brussels-sprouts = Rosenkohl
crop-calendula = Ringelblume
crop-campanula = Glockenblume
crop-celeriac = Knollensellerie
crop-celosia = Celosie
crop-chard = Mangold
crop-chervil = Kerbel
crop-chicory = Chicorée
crop-chilli = Chili
crop-china-aster = Sommeraster
crop-chinese-cabbage = Chinakohl
crop-chives = Schnittlauch
crop-coleus = Buntnessel
crop-coriander = Koriander
crop-corn-salad = Feldsalat
crop-cornflower = Kornblume
crop-cosmos = Schmuckkörbchen
crop-cress-garden = Gartenkresse
crop-delphinium = Rittersporn
crop-dill = Dill
crop-echinacea = Purpursonnenhut
crop-endive = Endivie
crop-eryngium = Edeldistel
crop-fennel = Knollenfenchel
crop-foxglove = Fingerhut
crop-gomphrena = Kugelamarant
crop-hollyhock = Stockrose
crop-impatiens = Fleißiges Lieschen
crop-kale = Grünkohl
crop-kohlrabi = Kohlrabi
crop-larkspur = Sommerrittersporn
crop-lavender = Lavendel
crop-leek = Lauch
crop-lemon-balm = Zitronenmelisse
crop-lisianthus = Lisianthus
crop-lobelia = Männertreu
crop-lupin = Lupine
crop-marigold = Tagetes
crop-morning-glory = Prunkwinde
crop-mustard = Blattsenf
crop-nasturtium = Kapuzinerkresse
crop-new-zealand-spinach = Neuseeländer Spinat
crop-nicotiana = Ziertabak
crop-nigella = Jungfer im Grünen
crop-oregano = Oregano
crop-pak-choi = Pak Choi
crop-pansy = Stiefmütterchen
crop-pelargonium = Pelargonie
crop-petunia = Petunie
crop-poppy-californian = Kalifornischer Mohn
crop-portulaca = Portulakröschen
crop-primrose = Primel
crop-pumpkin = Kürbis
crop-rhubarb = Rhabarber
crop-rocket = Rucola
crop-rosemary = Rosmarin
crop-rudbeckia = Rudbeckie
crop-rutabaga = Steckrübe
crop-sage = Salbei
crop-salsify = Haferwurzel
crop-salvia-scarlet = Feuersalbei
crop-savory-summer = Bohnenkraut
crop-snapdragon = Löwenmäulchen
crop-sorrel = Sauerampfer
crop-squash = Zucchini
crop-statice = Statice
crop-stock = Levkoje
crop-strawflower = Strohblume
crop-sunflower = Sonnenblume
crop-sweet-pea = Duftwicke
crop-sweet-william = Bartnelke
crop-thyme = Thymian
crop-tomato-husk = Tomatillo oder Physalis
crop-verbena = Verbene
crop-verbena-bonariensis = Patagonisches Eisenkraut
crop-vinca = Madagaskar-Immergrün
crop-wallflower = Goldlack
crop-zinnia = Zinnie

caution-poisonous-plant = In allen Teilen giftig: Handschuhe tragen, Hände waschen, Pflanze und Samen von Kindern und Tieren fernhalten.
caution-harmful-if-eaten = Teile davon schaden, wenn man sie isst: von Kindern und Tieren fernhalten.
caution-poisonous-leaf-blades = Die Blattspreiten sind giftig: nur die Stiele werden gegessen.
caution-poisonous-seeds = Die Samen sind giftig: von Kindern und Tieren fernhalten, und niemals zu Lebensmitteln legen.
caution-irritates-skin = Kann die Haut reizen: bei empfindlicher Haut Handschuhe tragen.
caution-burns-eyes = Samen und Früchte brennen in den Augen und auf der Haut: beim Anfassen Handschuhe tragen und die Hände waschen.
caution-favism = Bohnen und Blütenstaub können Menschen mit Favismus (G6PD-Mangel) schaden: sie sollten sich fernhalten und ärztlichem Rat folgen.

treatment-soak-hours = Die Samen { $low } bis { $high } Stunden in lauwarmem Wasser einweichen.
treatment-or-soak-hours = Oder { $low } bis { $high } Stunden in lauwarmem Wasser einweichen: eines von beiden genügt.
treatment-chip = Die Samenschale anritzen oder anrauen, nicht am Nabel.
treatment-cold-weeks = Die Samen { $low } bis { $high } Wochen feucht im Kühlschrank halten.
treated-soaked =
    { $hours ->
        [one] { $hours } Stunde eingeweicht.
       *[other] { $hours } Stunden eingeweicht.
    }
treated-chipped = Die Samenschale wurde angeritzt.
treated-cold-weeks =
    { $weeks ->
        [one] Zuerst { $weeks } Woche Kälte.
       *[other] Zuerst { $weeks } Wochen Kälte.
    }

sowing-compost-fine-seed = feine Aussaaterde
sowing-compost-gritty = Aussaaterde mit einem Drittel scharfem Sand oder Splitt
sowing-compost-multi-purpose = Universalerde ohne Brocken

## Checking the journal, and backups

error-cancelled = Es wurde abgebrochen. Nichts wurde geändert.
error-backup-unknown = Diese Sicherung ist nicht mehr da. Wähle eine andere.
finding-file-damaged = Die Datei des Tagebuchs ist beschädigt ({ $fault }). Stelle das Tagebuch wieder her: sie wird beiseitegelegt, und was noch gut ist, wird übernommen.
finding-entries-unread = Die Einträge { $first } bis { $last } der Datei sind nicht lesbar. Stelle das Tagebuch wieder her, um den Rest zu übernehmen.
finding-entry-unreadable = Eintrag { $entry } der Datei ist beschädigt und nicht lesbar. Stelle das Tagebuch wieder her, um den Rest zu übernehmen.
finding-entry-altered = Eintrag { $entry } der Datei ist nicht so, wie er geschrieben wurde. Stelle das Tagebuch wieder her, um den Rest zu übernehmen.
finding-entry-misfiled = Eintrag { $entry } der Datei ist gut, aber falsch eingeordnet ({ $columns }). Stelle das Tagebuch wieder her, um das zu richten.
finding-entries-missing = Die Einträge { $first } bis { $last } eines Geräts ({ $device }) fehlen hier. Eine ältere Sicherung oder das andere Gerät hat sie vielleicht noch.
finding-projection-differs = Was das Tagebuch zusammengerechnet ergibt, ist an { $rows } Stellen veraltet ({ $table }). Alle Einträge sind da; lass neu zusammenrechnen.
finding-photo-missing = Ein Foto fehlt ({ $photo }). Eine Sicherung oder ein anderes Gerät, das es hat, bringt es beim Übernehmen zurück.
finding-photo-altered = Ein Foto ist beschädigt ({ $photo }). Eine Sicherung oder ein anderes Gerät, das es hat, bringt es beim Übernehmen zurück.
