### What the core says of the bench

## How many are enough

times-80 = in 8 von 10 Fällen
times-90 = in 9 von 10 Fällen
times-95 = in 19 von 20 Fällen
enough-seeds =
    { $seeds ->
        [one] Ein Samen gibt
       *[other] { $seeds } Samen geben
    } { $wanted ->
        [one] eine Pflanze
       *[other] { $wanted } Pflanzen
    } oder mehr, { $times }.
enough-cells =
    { $cells ->
        [one] Eine Zelle
       *[other] { $cells } Zellen
    } mit { $each ->
        [one] je einem Samen
       *[other] je { $each } Samen
    } { $cells ->
        [one] gibt
       *[other] geben
    } { $wanted ->
        [one] eine Pflanze
       *[other] { $wanted } Pflanzen
    } oder mehr, { $times }.
enough-unknown = Wie viele hier aufgehen, ist nicht bekannt: säe ein paar mehr, als du willst.
enough-better-seed = Von diesem Saatgut geht wohl zu wenig auf für so viele Pflanzen: mach eine Keimprobe auf feuchtem Papier, wünsche weniger oder besorge besseres Saatgut.

## What speaks against it

warn-wants-light = Es geht im Licht besser auf, und { $place } ist dunkel.
warn-wants-dark = Es geht im Dunkeln besser auf, und { $place } ist hell: Pappe auf die Schale legen, bis die ersten da sind.
warn-alternating = { $place } ist nachts so warm wie am Tag. Geprüft wird dieses Saatgut bei { $night } für 16 Stunden und { $day } für 8: kühlere Nächte können helfen.
warn-due-while-away = Es ginge dort auf, während du fort bist: { $from } bis { $to }.
warn-mixed-warmth = Zum Aufgehen braucht es { $low } bis { $high }; { $there } in dieser Schale braucht { $there_low } bis { $there_high }.
warn-mixed-warmth-after = Nach dem Aufgehen braucht es tagsüber { $low } bis { $high }; { $there } in dieser Schale braucht { $there_low } bis { $there_high }. Wähle eine Schale, die sich teilen lässt.
warn-mixed-light = Eines braucht zum Aufgehen Licht, das andere Dunkelheit: dieses hier und { $there } in dieser Schale.
warn-mixed-days = Die Hälfte sollte am { $half } da sein, in dieser Schale ({ $there }) am { $there_half }: mehr als eine Woche auseinander.
warn-mixed-up = In dieser Schale ist { $there } aufgegangen und braucht Licht und Luft; neue Saat braucht Wärme und oft eine Haube.
warn-too-early = Früh zum Auspflanzen nach deinem letzten Frost: üblich ist { $from } bis { $to }.
warn-too-late = Spät in der Saison: üblich ist { $from } bis { $to }.
warn-too-shallow = Flacher als üblich: dort trocknet es eher aus. Auf die Oberfläche achten.
warn-too-deep = Tiefer als üblich: weniger gehen auf, und später.
warn-buried = Es ist ein Lichtkeimer: so tief geht es vielleicht gar nicht auf.
warn-compost-garden-soil = Gartenerde wird in der Schale hart und bringt Unkraut und Schimmel mit: für große Pflanzen nehmen.
warn-compost-coarse = Grobe Erde lässt Lücken um den Samen: sieben.
warn-compost-rich = Topferde ist für Sämlinge stark gedüngt: sie kann feine Wurzeln verbrennen.
warn-compost-lumps = Feine Saat fällt zwischen die Brocken: obenauf eine Schicht sieben.
compost-wanted-fine-seed = Dazu passt feine Aussaaterde, gesiebt und nährstoffarm.
compost-wanted-gritty = Dazu passt Aussaaterde mit etwa einem Drittel scharfem Sand oder Splitt.
compost-wanted-multi-purpose = Universalerde ohne Brocken genügt.

## The last sowing

last-sown =
    { $seeds ->
        [one] ein Samen
       *[other] { $seeds } Samen
    } in { $cells ->
        [one] einer Zelle
       *[other] { $cells } Zellen
    }, { $place }
last-sown-pinch =
    eine Prise in { $cells ->
        [one] einer Zelle
       *[other] { $cells } Zellen
    }, { $place }

## Seed, light and cautions at the bench

bench-due =
    { $to ->
        [one] { $from } bis { $to } Tag
       *[other] { $from } bis { $to } Tagen
    }
bench-none-below = Unter { $limit } geht nichts auf; dort sind es { $temperature }.
bench-none-above = Über { $limit } geht nichts auf; dort sind es { $temperature }.
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
light-need-needed = Lichtkeimer: dünn oder gar nicht bedecken
light-need-dark = Dunkelkeimer: gut bedecken
caution-compost-dust = Staub von Erde und Kompost kann Legionellen enthalten: Handschuhe tragen, Erde und Arbeitstisch anfeuchten, bevor du schüttest oder kehrst, das Gesicht fernhalten und die Hände waschen. Hinweise auf dem Sack und örtliche Vorschriften befolgen.
caution-treated-seed = Gebeiztes Saatgut: Handschuhe tragen, von Kindern und Tieren fernhalten, niemals essen, und die Angaben auf der Tüte befolgen.
caution-poisonous-leaves = Blätter und Stängel sind giftig, wenn man sie isst: von Kindern und Tieren fernhalten.
caution-poisonous-raw-seeds = Die Samen sind roh giftig: von Kindern und Tieren fernhalten.
caution-poisonous-berries = Die Beeren sind giftig: von Kindern fernhalten.
caution-sap-burns-in-sun = Der Saft auf der Haut führt in der Sonne zu Verbrennungen: Handschuhe tragen und ihn abwaschen.
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
