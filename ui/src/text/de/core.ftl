# What the core says at the start and of the round. Keys with a dash for every underscore of a word or code.
# $variety brings its own leading blank and quotes, or is empty. What is put in
# (places, crops, lists) stands where no case ending is called for.

list-two = { $rest } und { $last }
list-last = { $rest } und { $last }

variety = ‚{ $name }‘

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

storage-fridge-sealed = dicht im Kühlschrank
storage-cool-cupboard = im kühlen Schrank
storage-warm-room = im warmen Zimmer
storage-damp-shed = im feuchten Schuppen

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
cause-unknown = Ursache unklar

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
job-sow = säen
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
why-late = Bis { $most } ({ $days ->
        [one] vor { $days } Tag
       *[other] vor { $days } Tagen
    }) sollten neun von zehn da sein; aufgegangen: { $up ->
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
    } abgehärtet; { $crop } ist { $hardiness } und darf, gerechnet vom letzten Frost ({ $frost }), ab { $from } hinaus{ $record ->
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
why-sow-by = { $crop }{ $variety }: { $wanted ->
    [one] eine Pflanze
   *[other] { $wanted } Pflanzen
}, fertig bis { $day }. { $own ->
    [1] Nach deiner Angabe dauert das { $longest } Tage.
   *[other] Das dauert bis zu { $longest } Tage, davon { $up } bis zum Aufgehen.
} { $seeds ->
    [0] {""}
   *[other] { $seeds } Samen säen.
} Sinnvoll bis { $last }.
why-sow-sale = { $crop }{ $variety }: { $wanted ->
    [one] eine Pflanze
   *[other] { $wanted } Pflanzen
} für den Verkauf am { $day }, die Reserve mitgezählt. { $own ->
    [1] Nach deiner Angabe dauert das { $longest } Tage.
   *[other] Das dauert bis zu { $longest } Tage, davon { $up } bis zum Aufgehen.
} { $seeds ->
    [0] {""}
   *[other] { $seeds } Samen säen.
} Sinnvoll bis { $last }.
why-sow-again = { $crop }{ $variety }: { $expected } von { $wanted } sind vorhanden oder zu erwarten, für { $day }. Für { $plants } weitere säen{ $seeds ->
    [0] {""}
   *[other] , { $seeds } Samen
}. Sinnvoll bis { $last }.
why-sow-every = { $crop }{ $variety }: { $weeks ->
    [one] eine Woche
   *[other] { $weeks } Wochen
} von einer Aussaat zur nächsten. { $seeds ->
    [0] Für { $plants } säen.
   *[other] { $seeds } Samen für { $plants } säen.
}
why-sow-first = { $crop }{ $variety }: die erste Aussaat deines Plans. { $seeds ->
    [0] Für { $plants } säen.
   *[other] { $seeds } Samen für { $plants } säen.
}
why-sow-leaves = { $crop }{ $variety }: die letzte Aussaat hat Laubblätter. { $seeds ->
    [0] Für { $plants } säen.
   *[other] { $seeds } Samen für { $plants } säen.
}
why-stocktake = Bevor Saatgut bestellt wird: { $left ->
        [one] eine Tüte war
       *[other] { $left } Tüten waren
    } dieses Jahr noch nicht in der Hand.

hardiness-hardy = frosthart
hardiness-half-hardy = bedingt frosthart
hardiness-tender = frostempfindlich

## Forecasts

way-0 = kaum begonnen
way-1 = ein Viertel des Weges
way-2 = halber Weg
way-3 = drei Viertel des Weges
way-4 = so weit, dass die Hälfte da ist
way-5 = weiter, als bis die Hälfte da ist
way-6 = viel weiter, als bis die Hälfte da ist
next-due = { $place }: { $job }
next-due-seed = Saatgut: { $job }

## Wait or sow again

odds-under = unter 1 von 20
odds-1 = etwa 1 von 10
odds-2 = etwa 2 von 10
odds-3 = etwa 3 von 10
odds-4 = etwa 4 von 10
odds-5 = etwa 5 von 10
odds-6 = etwa 6 von 10
odds-7 = etwa 7 von 10
odds-8 = etwa 8 von 10
odds-9 = etwa 9 von 10
odds-over = über 19 von 20

verdict-look = Zuletzt vor zu langer Zeit gezählt, um Chancen zu nennen: jetzt zählen, was da ist; ist nichts da, 0 eintragen.
verdict-too-early = Chancen lassen sich erst nennen, wenn es etwas Wärme zum Wachsen hatte.
verdict-pinch = Eine Prise zählt niemand, also gibt es keine Chancen zu nennen; { $crop }{ $variety } ist meist bis { $usual } größtenteils da.
verdict-record-wrong = Bei den eingetragenen Temperaturen könnte { $crop }{ $variety } nicht aufgehen, doch { $up ->
        [one] ist
       *[other] sind
    } { $up } da: Ablesungen und Standort prüfen, denn daraus lassen sich keine Chancen nennen.
verdict-wait = Warten: die Chance, dass noch welche kommen, ist { $any }, die auf die gewünschten { $wanted } ist { $reach } ({ $up } da, am Ende etwa { $expected }). Die nächste wird bis { $until } erwartet.
verdict-wait-look = Die nächste wurde bis { $until } erwartet: noch einmal zählen. Die Chance auf die gewünschten { $wanted } war { $reach }.
verdict-warm = Eher von Kälte gebremst als tot: die Chance auf { $wanted } zur rechten Zeit ist bei { $temperature } { $reach }, bei { $from } bis { $to } { $there }.{ $place ->
        [0] {" "}Keiner deiner Standorte ist so warm.
       *[1] {""}
    }
verdict-cool = Eher von Hitze gehemmt als tot: die Chance auf { $wanted } zur rechten Zeit ist bei { $temperature } { $reach }, bei { $from } bis { $to } { $there }.{ $place ->
        [0] {" "}Keiner deiner Standorte ist so kühl.
       *[1] {""}
    }
verdict-nothing-more = Mehr ist kaum zu erwarten: die Chance auf weitere ist { $any }, und { $up } von { $wanted } gewünschten { $up ->
        [one] ist
       *[other] sind
    } da.{ $dug ->
        [0] {" "}Zwei Samen ausgraben, um sicherzugehen.
       *[other] {""}
    }{ $over ->
        [1] {" "}Zum Neusäen ist es in dieser Saison spät: { $last } war der letzte sinnvolle Tag.
       *[0] {""}
    }
verdict-sow-beside = Die Chance, dass noch welche kommen, ist { $any }, die auf die gewünschten { $wanted } ist { $reach } ({ $up } da, am Ende etwa { $expected }).{ $over ->
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

## What the compost was last like

felt-only = Zuletzt { $feel }: { $at }
felt-and-watered = Zuletzt { $feel } und { $water } gegossen: { $at }
felt-watered = Zuletzt { $water } gegossen: { $at }

## Light and cautions

caution-electricity = Wärme und Wasser: nur Geräte verwenden, die für feuchte Räume gebaut sind, an einer Steckdose mit FI-Schutzschalter, und örtliche Vorschriften befolgen; Leitungen nur von einer Elektrofachkraft verlegen lassen.

## What went wrong

error-store-failed = Das Tagebuch ließ sich nicht schreiben. Versuche es noch einmal; nichts ging verloren.
error-disk-full = Der Speicher ist voll. Schaffe Platz und versuche es noch einmal; nichts ging verloren.
error-journal-read-only = Das Tagebuch darf nicht beschrieben werden. Prüfe, ob der Ordner beschreibbar ist.
error-journal-busy = Das Tagebuch ist anderswo geöffnet. Schließe das und versuche es noch einmal.
error-journal-damaged = Das Tagebuch ist beschädigt. Es bleibt, wie es ist; spiele eine Sicherung ein.
error-journal-newer = Das Tagebuch hat eine neuere Version geschrieben. Aktualisiere vor dem Öffnen.
error-not-a-journal = Diese Datei ist kein Tagebuch. Sie bleibt, wie sie ist.
error-file-failed = Eine Datei ließ sich nicht lesen oder schreiben. Prüfe den Speicher und versuche es noch einmal.
error-bad-request = „{ $text }“ ist hier nicht bekannt. Geh zurück und wähle noch einmal.
error-not-open = Kein Tagebuch ist offen. Schließe die App und öffne sie wieder.
error-unexpected = In der App ging etwas schief. Nichts wurde halb geschrieben; versuche es noch einmal.

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
