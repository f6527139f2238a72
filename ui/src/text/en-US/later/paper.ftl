# American English: only what is said otherwise than in en-GB.

paper-round-what = Check off with a pencil. To enter it later, open the round and choose “Write down something earlier”.
sitter-feel =
    { $days ->
        [one] Every day, put a finger on the mix of { $trays ->
            [one] the tray
           *[other] the { $trays } trays
        }.
       *[other] Every { $days } days, put a finger on the mix of { $trays ->
            [one] the tray
           *[other] the { $trays } trays
        }.
    }
sitter-up-uncover = Look for { $crops } from { $first }. When something is up, take the dome off.
sitter-up-move-uncover = Look for { $crops } from { $first }. When something is up, take the dome off and move the tray to { $to } the same day: it needs light.
sitter-sprouts = Look for roots of { $crops } from { $first }. When there are some, lay those seeds on potting mix, cover them thinly and water with a mist.
