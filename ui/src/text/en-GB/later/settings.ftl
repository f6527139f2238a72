## Settings

settings-title = Settings
settings-demo = Demo journal
settings-demo-what = You are in the demo. Nothing here touches a journal of your own.
settings-demo-leave = Leave the demo
settings-demo-leave-what = The demo journal is thrown away whole, with all you wrote in it.
settings-demo-stay = Stay in it
settings-demo-throw-away = Throw it away
settings-places = Places
settings-places-what = In the order you walk them.
settings-garden = Rounds and the garden
settings-away = Away
settings-away-what = While you are away nothing calls for you.
settings-device = This device
settings-entries = { $entries ->
    [one] One entry in the journal.
   *[other] { $entries } entries in the journal.
}

place-add = Add a place
place-kind = Kind of place
place-name = Name
place-name-hint = What you call it, such as kitchen sill.
place-usual = Usual temperatures, until a thermometer says better:
place-coldest = Coldest
place-warmest = Warmest
place-unheated = With the heat off, if you know:
place-coldest-unheated = Coldest, unheated
place-warmest-unheated = Warmest, unheated
place-light = Light for seedlings
place-covered = Closed or covered, so that it dries slowly
place-save = Save the place
place-retire = No longer used
place-use-again = Use it again
place-earlier = { $place }: earlier in the walk
place-later = { $place }: later in the walk
place-change = Change
place-change-this = Change: { $place }
place-none = No places yet.
place-retired = No longer used ({ $places })

garden-morning = Morning round
garden-evening = Evening round
garden-last-frost = Last frost of spring
garden-first-frost = First frost of autumn
garden-frost-hint = The day after which one is rare. The year does not count.
garden-latitude = Latitude
garden-latitude-hint = Degrees north; south of the equator with a minus.
garden-zone = Time zone
garden-zone-hint = By its name, such as Europe/London.
garden-save = Save

settings-frost = Frost dates from a record
frost-record-what = Daily minima from a weather service or your own thermometer: a CSV file with a day and its minimum on each line. Five years with frost are the least.
frost-file = Record of daily minima
frost-unit = The minima are in
frost-unit-celsius = Degrees Celsius
frost-unit-fahrenheit = Degrees Fahrenheit
frost-threshold = A night counts as frost at or under
frost-threshold-hint = 0 °C (32 °F) in a weather station’s screen.
frost-reading = Reading the record…
frost-was-kept = The frost dates are kept.
frost-days = { $days ->
        [one] { $days } day was read
       *[other] { $days } days were read
    }{ $missing ->
        [0] .
       *[other] , { $missing } without a minimum left out.
    }
frost-span = { $from } to { $to }.
frost-column = { $number }: { $name }
frost-day-column = Column of the day
frost-low-column = Column of the minimum
frost-day-order = Days are written
frost-day-order-ymd = year, month, day
frost-day-order-dmy = day, month, year
frost-day-order-mdy = month, day, year
frost-bad = { $lines ->
        [one] One line could not be read
       *[other] { $lines } lines could not be read
    }
frost-bad-line = Line { $line }: { $what }
frost-bad-more = and { $lines } more
frost-odds-later = The day after which a frost has these odds
frost-odds-earlier = The day before which a frost has these odds
frost-never = no day
frost-keep-what = Keeping them sets the two frost dates to the averages, and frost is spoken of as odds.
frost-keep = Keep these frost dates

away-from-to = Away from { $from } to { $to }.
away-open = Away from { $from } until you say you are back.
away-now = Away from now on
away-back = I am back
away-sheet = The sheet for whoever looks after them
away-from = First day
away-to = Last day
away-save = I shall be away

device-language = Language
device-language-system = As the device
device-clock = Clock
device-clock-h24 = 24 hours
device-clock-h12 = 12 hours
device-temperature = Temperatures
device-temperature-celsius = °C
device-temperature-fahrenheit = °F
device-length = Lengths
device-length-mm = mm
device-length-inch = inches
device-theme = Colours
device-theme-system = As the device
device-theme-light = Light
device-theme-dark = Dark
device-theme-bright = Bright sun
device-hand = Held in
device-hand-right = Right hand
device-hand-left = Left hand
device-notices = Notices at round times
device-stay = Keep running when the window is closed
device-stay-hint = So that notices come. To open the window again, start Plumule or press its sign in the desktop’s tray. To end it, choose Quit there, or turn this off and close the window.
device-at-login = Start at login, without the window
device-quiet-from = Quiet from
device-quiet-to = Quiet until
device-quiet-hint = No notice in these hours. The same time twice means none.
device-initials = Initials
device-initials-hint = Written beside what is entered here, where several share the work.
