# American English: only what is said otherwise than in en-GB.

warn-mixed-up = The { $there } in this tray is up and wants light and air; new seed wants warmth and often a dome.
warn-compost-garden-soil = Garden soil sets hard in a tray and brings weeds and molds: use it for big plants.
warn-compost-coarse = Coarse potting mix leaves gaps round the seed: sieve it.
warn-compost-rich = Potting mix is rich for seedlings: it can scorch fine roots.
compost-wanted-fine-seed = Fine seed-starting mix, sieved and low in feed, suits it.
compost-wanted-gritty = Seed-starting mix with about a third of sharp sand or grit suits it.
compost-wanted-multi-purpose = All-purpose potting mix with the lumps taken out will do.
caution-compost-dust = Dust of potting mix can carry Legionella: wear gloves, damp the mix and the bench before you tip or sweep, keep your face away, and wash your hands. Follow the words on the bag and local rules.
sowing-compost-fine-seed = fine seed-starting mix
sowing-compost-gritty = seed-starting mix with a third of sharp sand or grit
sowing-compost-multi-purpose = all-purpose potting mix, the lumps taken out
