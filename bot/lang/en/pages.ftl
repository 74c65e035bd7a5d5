# What the staff pages say in English. Trade words, short. A page puts the values in and never joins half sentences.

### Over every page
nav-skip = To the content
nav-today = Today
nav-programme = Programme
nav-broadcast = Broadcast
nav-setup = People and set-up
nav-log-out = Log out { $name }

### Dates
weekday = { $weekday ->
    [1] Monday
    [2] Tuesday
    [3] Wednesday
    [4] Thursday
    [5] Friday
    [6] Saturday
   *[7] Sunday
}
month = { $month ->
    [1] January
    [2] February
    [3] March
    [4] April
    [5] May
    [6] June
    [7] July
    [8] August
    [9] September
    [10] October
    [11] November
   *[12] December
}
month-short = { $month ->
    [1] Jan
    [2] Feb
    [3] Mar
    [4] Apr
    [5] May
    [6] Jun
    [7] Jul
    [8] Aug
    [9] Sep
    [10] Oct
    [11] Nov
   *[12] Dec
}
date-full = { weekday } { $day } { month } { $year }
date-day = { $day } { month-short } { $year }
date-short = { $day } { month-short }
date-moment = { $day } { month-short } { $time }

### Log-in
login-title = Log in
login-head = Staff log-in
login-name = Name
login-password = Password
login-enter = Log in
login-wait = Too many tries for this name. Wait five minutes, then try again.
login-wrong = Name and password do not fit. Try again.

### What did not work
broken-head = That did not work
broken-back = Back to today
broken-here = Something broke here. Nothing is lost; try again in a moment.
broken-no-page = There is no such page.
broken-role = Your role does not allow this; ask a lead.
broken-no-household = There is no household { $id }.
broken-no-broadcast = There is no broadcast { $id }.

### Today
today-none = No household has texted yet. Give families the number of the gateway: their first text makes them appear here.
today-pressing = { $n ->
    [0] Nobody waits for a visit.
    [one] One household needs somebody.
   *[other] { $n } households need somebody.
}
today-find-label = Find a household by name or number
today-find = Find
today-by-need = By need
today-all = All { $n }
today-none-fits = No household fits.
today-show-all = Show all
today-last = { $n ->
    [0] last text today
    [1] last text yesterday
   *[other] last text { $n } days ago
}
today-last-never = no text yet
today-fed = fed
today-cooked = cooked
today-risk = risk
today-take = I see to it
today-done = Done
today-taken-by = { $name } sees to it.
today-done-by = Seen to by { $name }.
today-alarm = { $signs } told { $when }, nobody has taken it
today-danger-open = Told of danger; not yet seen to
today-never = Has not texted yet
today-silent = { $n ->
    [one] No text for a day
   *[other] No text for { $n } days
}
today-pages = Pages
today-before = Before
today-next = Next
today-page = { $page } of { $pages }, { $n ->
    [one] { $n } household
   *[other] { $n } households
}
spark-fed = Fed in the last 30 days: { $total } kg on { $n ->
    [one] { $n } day
   *[other] { $n } days
}
spark-cooked = Cooked in the last 30 days: { $total } min on { $n ->
    [one] { $n } day
   *[other] { $n } days
}
need-danger = Danger
need-souring = Souring
need-silent = Silent
need-rest = Resting
need-leak = Leak?
need-start_up = Starting
need-watch = Watch
need-well = Well

### What was typed into a form and cannot be taken
form-letters = Write a text of 1 to { $most } letters.
form-nobody-fits = Nobody fits; nothing was sent.
form-text-long = The text is too long for two segments; say it shorter. Nothing was sent.
form-not-theirs = This number is not one of theirs.
form-number-needed = Give the number they text from.
form-number-stopped = This number said STOP; only its owner can text START.
form-number-household = This number belongs to household { $id }; take it off there first.
form-number-staff = This number is the one of { $name }.
form-number-taken = This number belongs to a household or to staff, or said STOP; give another one.
form-number-shape = Give the number with + and the country's code, such as +254700000000.
form-choose = Choose one of those in the list.
form-measure-litres = Say how many litres it holds, more than 0 and at most { $most }.
form-restart-sure = Tick that the tank was emptied and filled anew; nothing was changed.
form-starter = Give the starter in kilograms, or nothing.
form-closed = This story is closed already; its tank has begun anew under another number.
form-agreed = Ask the family first; only who agreed to texts is set up.
form-no-town = The bot knows no town called { $name }; give the nearest town or the district's.
form-above = { $field ->
    [tank_l] The tank
    [liquid_l] The slurry
    [people] People
   *[store_l] The gas store
} must be a number above 0 and at most { $most }.
form-slurry-fits = Slurry of { $liquid } L does not fit a tank of { $tank } L; mend one of the two.
form-date = Give the day of filling as year-month-day, such as 2026-03-01.
form-date-range = The day of filling must lie in the last 30 years.
form-call-digits = Give the number to call in digits, at most 15.
form-country = Give the country as its two letters, such as KE.
form-word-taught = This word is taught there already; take it away first.
form-word-shape = Give the name in 1 to { $most } words, without digits.
form-word-danger = The bot takes this word for a danger; it cannot mean a feed.
form-word-else = The bot takes this word for something else already; choose another way to write it.
form-word-known = The bot knows this word already, as { $feed }.
form-days = Give whole days, { $least } at least, or nothing for ever.
form-name-letters = Give a name of 1 to { $most } letters.
form-staff-there = There is a { $name } already; change that one, or give another name.
form-staff-none = There is no { $name } among the staff.
form-staff-last = { $name } is the last lead who can log in; make another one first.
form-staff-number = Another one of the staff texts from this number.
form-visit-empty = Mark at least one check, or write a note; nothing was kept.
