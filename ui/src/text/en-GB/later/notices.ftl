## Notices: what they offer, and what the settings tell of them

notice-answer-dry = Dry
notice-answer-moist = Moist
notice-answer-wet = Wet
notice-test-title = Notices come through
notice-test = This one was asked for on { $at }.

notices-title = Notices
notices-off = Notices are off on this device. Turn them on under “This device” below.
notices-none-soon = Nothing to tell of in the next two weeks, as things stand.
notices-next = The next comes on { $moment }:
notices-granted = They are allowed.
notices-refused = They are not allowed, so nothing will call you to your trays.
notices-ask = You have not said yet whether Plumule may send notices.
notices-nobody = Nothing on this system shows notices, so none can reach you while the window is hidden.
notices-held-back = The system holds Plumule back to save the battery: notices may come late, or not until you open it.
notices-allow = Allow notices
notices-test = Send a test notice
notices-test-sent = Sent. If you do not see it, look at what is said here and try again.
notices-how-linux-nobody = Turn on notifications in your desktop’s settings, or install a notification daemon, then try the test notice.
notices-how-linux = If none appears, look whether “Do not disturb” is on in your desktop’s settings.
notices-how-windows = Windows settings, System, Notifications: turn them on for Plumule, and look whether “Do not disturb” is on.
notices-how-macos = System settings, Notifications, Plumule: allow notifications. A Focus may hold them back.
notices-how-android = The phone’s settings, Apps, Plumule, Notifications: allow them.
notices-how-android-held-back = The phone’s settings, Apps, Plumule, Battery: choose “Unrestricted”.
notices-how-ios = Settings, Notifications, Plumule: allow notifications. A Focus may hold them back.
notices-desktop = On this computer they come while Plumule is running. What was missed comes as one when it is opened.
notices-phone = The phone shows them by itself for the next two weeks, also when Plumule is closed.

error-notice-not-shown = The system did not take the notice. See what is said here about notices, and try again.
error-at-login-failed = Your desktop’s folder of what starts at login cannot be written to. Add Plumule in the desktop’s own settings instead.

sign-open = Open Plumule
sign-quit = Quit

## What notices say

notice-morning = This morning’s round
notice-evening = This evening’s round
notice-frost-title = Frost tonight
notice-light-title = Into the light
notice-place = { $place }: { $what }
notice-feel-the-compost =
    { $count ->
        [one] { $count } tray to feel
       *[other] { $count } trays to feel
    }
notice-read-the-thermometer = read the thermometer
notice-frost-tonight = frost tonight: { $crops }
notice-open-the-lid = open the lid
notice-close-the-lid = close the lid
notice-last-chance = last chance to sow { $crops } again
notice-before-you-go = water before you go
notice-look-over = look it over after your days away
notice-end-of-the-cold-weeks = { $crops } out of the cold
notice-sow-on = sow on { $crops }
notice-look-for-seedlings = look for { $crops }
notice-it-is-late = { $crops } late
notice-into-the-light = { $crops } into the light
notice-cover-off = cover off { $crops }
notice-thin = thin { $crops }
notice-prick-out = prick out { $crops }
notice-pot-on = pot on { $crops }
notice-harden-off = { $crops } out for the day
notice-plant-out = plant out { $crops }
notice-bring-in = bring { $crops } in for the night
notice-seed = Seed: { $what }
notice-count-the-test =
    { $count ->
        [one] a germination test to count
       *[other] { $count } germination tests to count
    }
notice-stocktake = stocktake before ordering
