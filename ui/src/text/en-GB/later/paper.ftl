## Sheets of paper: for whoever looks after the trays, and the round to tick

sitter-water = Dry and light: stand the tray in two fingers of lukewarm water for twenty minutes, then let it drain. Moist or wet: leave it. Never water from a can without a fine rose.
sitter-no-more = Too little and it can be helped; too wet and it rots. If in doubt, leave it until tomorrow.
sitter-fridge = Leave these in the fridge, closed. They want nothing.
sitter-feel =
    { $days ->
        [one] Every day, put a finger on the compost of { $trays ->
            [one] the tray
           *[other] the { $trays } trays
        }.
       *[other] Every { $days } days, put a finger on the compost of { $trays ->
            [one] the tray
           *[other] the { $trays } trays
        }.
    }
sitter-lid = On a sunny morning open the lid a hand’s breadth; close it before dusk.
sitter-frost = If frost is forecast, bring these indoors for the night: { $trays }.
sitter-what = { $crops }
sitter-up = Look for { $crops } from { $first }. When something is up, write down the day and how many.
sitter-up-uncover = Look for { $crops } from { $first }. When something is up, take the cover off.
sitter-up-move = Look for { $crops } from { $first }. When something is up, move the tray to { $to } the same day: it needs light.
sitter-up-move-uncover = Look for { $crops } from { $first }. When something is up, take the cover off and move the tray to { $to } the same day: it needs light.
sitter-sprouts = Look for roots of { $crops } from { $first }. When there are some, lay those seeds on compost, cover them thinly and water with a mist.

paper-title-away = While I am away
paper-title-round = The round on paper
paper-away-what = { $to ->
        [none] From { $from } until further notice.
       *[other] From { $from } to { $to }.
    }
paper-away-none = No days away are noted in Settings: this is how things stand today.
paper-print = Print
paper-share = Send as text
paper-copied = The text is copied: paste it wherever you write to them.
paper-empty = Nothing lives in a tray: there is nothing to look after.
paper-round-none = Nothing is due now.
paper-round-what = Tick with a pencil. To enter it later, open the round and choose “Write down something earlier”.
paper-moist = dry / moist / wet
paper-count = up: ____
paper-done = done
paper-back = Back to the round
paper-place-reading = lowest ____ highest ____
