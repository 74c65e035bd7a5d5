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
date-full-moment = { $day } { month-short } { $year } { $time }
date-month = { month } { $year }

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
today-asked = Asked for a person { $when }
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
need-person = Asked for a person
need-silent = Silent
need-rest = Resting
need-leak = Leak?
need-start_up = Starting
need-watch = Watch
need-well = Well

### Map
map-title = { $n ->
    [one] Map: one household
   *[other] Map: { $n } households
}
map-bundle = { $n } households around { $place }, { $pressing } of them in need of somebody; the most pressing: { $need }
map-unplaced = { $n ->
    [one] One household is not on the map: it told no town that is known.
   *[other] { $n } households are not on the map: they told no town that is known.
}
map-more = { $n ->
    [one] One more is in the list only.
   *[other] { $n } more are in the list only.
}

### Tokens of programmes
tokens-head = Reading by machine
tokens-what = A token lets another program read; numbers and texts are never given. What can be read is described at
tokens-name = Who gets it
tokens-scope = May read
scope-read = what was told and advised, without names
scope-people = what was told and advised, with names and places
tokens-make = Make a token
tokens-new = Token for { $name }
tokens-once = Copy it now: it is shown this once. Give it only by a safe way.
tokens-remove = Take back
tokens-remove-of = Take back the token of { $name }
tokens-removed = The token of { $name } opens nothing any more.
tokens-none = There is no token yet.
form-token-there = There is a token for { $name } already; take it back first, or give another name.
form-token-gone = There is no token for { $name }; it may have been taken back already.

### Photos of visits
photo-take = Photos
photo-how = Up to 4, JPEG, PNG or WebP. Take them outside and away from gas; ask the family first. Where and with what they were taken is not kept.
photo-alt = Photo { $name } of the visit
photo-remove = Take away
photo-remove-of = Take away photo { $name }
form-unread = The form did not arrive whole; send it again.
form-photo-many = Give at most { $n } photos; nothing was kept.
form-photo-kind = A photo must be JPEG, PNG or WebP; nothing was kept. Take it again with the phone's camera.
form-photo-big = A photo may have at most { $n } MB and 10,000 dots on a side; nothing was kept. Set the camera to a smaller size.
form-photo-damaged = A photo is damaged and cannot be read; nothing was kept. Take it again.

### The programme's figures to take away
out-head = To take away
out-xlsx = A row a household and month, as a workbook (XLSX)
out-from = Report from month
out-to = to month (empty: that one alone)
out-report = A report to print
report-title = Programme report, { $name }
report-span = { $first } to { $last }
report-made = Made on { $date } for { $name }.
report-print = Print it from the menu of your browser.
report-households = Households in the programme
form-rows-many = That is { $n } rows, more than one workbook bears; ask for fewer months, or take the CSV.
column-household = Household
column-name = Name
column-days_told = Days told of
column-water_l = Water, L
column-cooked_min = Cooked, min
column-spared_fuel = Fuel spared
column-non_renewable_share = Share that does not grow again
column-spared_fuel_kg = Fuel spared, kg
column-texts_in = Texts in
column-texts_out = Texts out

### A household's story
house-closed = This story is closed: the tank was emptied and began anew under another number.
house-goes-on = It goes on under number { $name }
house-before = What came before stands at number { $name }
house-danger = Danger.
house-alarm = { $signs }, told { $when }: "{ $said }"
house-take = I take it
house-doing = Told to do now
figure-risk = Risk of souring, 14 days
figure-olr = OLR, 7 days
figure-olr-is = { $n } kg VS/m3/d
figure-hrt = HRT, 7 days
figure-ts = TS going in
figure-slurry = Slurry
figure-gas = Gas today
figure-started = Started
figure-no-feed = no feed
not-told = not told
nobody = nobody
if-lead = What if they fed
if-kg = kg a day
if-kg-with = kg with
if-litres = litres of water a day
if-each-day = L water each day?
if-look = Look 14 days ahead
if-wrong = Give kilograms and litres a day as numbers from 0 to { $most }.
if-told = With { $kg } kg of the usual mix and { $water } L water every day: in { $days } days OLR { $olr } kg VS/m3/d, HRT { $hrt }, risk of souring { $risk }%, gas { $gas } min a day. Then the bot would say: { $verdict }, up to { $ration } kg.
if-no-end = without end
if-chart = Two weeks ahead, day by day
verdict-feed = feed
verdict-less = feed less
verdict-hold = no feed
verdict-water = add water
verdict-warm = keep warm
verdict-check = look at something
verdict-danger = danger
story-head = Its story
story-span = How far back
span-30 = 30 days
span-120 = 120 days
span-365 = A year
span-1826 = 5 years
story-chart = Chart, day by day
story-weeks = Each stroke is the mean of a week.
chart-label = The household's story, day by day
chart-read = Read off a day
chart-dashes = (dashes: { $name })
chart-dots = (dots: { $name })
chart-fed = Fed, kg a day
chart-advised = ration advised
chart-other = other
chart-water = Water, L a day
chart-olr = OLR over 7 days, kg VS/m3/d
chart-most = most, unstirred
chart-cooked = Cooked, min a day
chart-gas = gas we counted on
chart-made = Gas made, min a day: believed
chart-left = left in the store
chart-risk = Chance of souring in 14 days, %
chart-slurry = Slurry, °C: believed
chart-told = told
chart-ph = pH: believed
chart-ph-told = pH told
chart-acids = Acids (VFA), g/L as acetic acid: believed
chart-signs = Signs told
days-go = Read it off, day by day
days-head = Day by day
days-how = The latest day comes first. Fed, water, cooked, slurry and signs are as told; * marks a pH that was told, the others are believed.
days-day = Day
days-advised = Ration advised, kg
days-olr = OLR, kg VS/m3/d
days-gas = Gas believed, min: made / left
days-slurry = Slurry told, °C
days-ph = pH
days-acids = Acids believed, g/L
talk-head = Conversation
talk-none = No text yet.
talk-why = Why
talk-note = { $verdict } · ration { $kg } kg, { $water } L · risk { $risk }% · { $segments }
segments = { $n ->
    [one] { $n } segment
   *[other] { $n } segments
}
trail-head = Notes and acts of staff
trail-new = New note
trail-keep = Keep it
did-noted = { $by }: { $words }
did-took_alarm = { $by } took the alarm.
did-sees_to_it = { $by } sees to it.
did-has_seen_to_it = { $by } has seen to it.
did-told_danger = { $by } told of danger for the family.
did-told_facts = { $by } told facts for the family.
did-asked_history = { $by } asked for the history.
did-told_family = { $by } told the family: { $words }
did-took_over = { $by } took the household over.
did-handed_back = { $by } handed the household back.
did-lifted_cap = { $by } lifted the cap on texts for a day.
did-added_phone = { $by } added a phone.
did-took_phone_off = { $by } took a phone off.
did-told_measure = { $by } told what their { $measure } holds: { $litres } L.
did-ended_reminders = { $by } ended reminders.
did-began_reminders = { $by } began reminders again, as the family asked.
did-began_anew = { $by }: the tank began anew; its story until now stands under number { $id }.
did-closed_story = { $by } closed this story: the tank was emptied and filled anew.
did-changed_settings = { $by } changed the settings.
did-changed_settings_to = { $by } changed the settings: { $settings }
did-visited = { $by } was there. { $errand }
did-took_photo_away = { $by } took a photo away.
did-set_up = { $by } set the household up; they agreed to texts.
did-asked_needs = { $by } asked who needs them.
did-asked_more = { $by } asked for more.
did-set_pin = { $by } set a PIN.
did-gave_pin = { $by } gave the PIN.
did-gave_wrong_pin = { $by } gave a wrong PIN.
did-gave_no_pin = { $by } gave something that is no PIN.
did-tried_while_locked = { $by } gave a PIN while locked.
did-got_locked = { $by } is locked after wrong PINs.
did-added_staff = { $by } added { $name } as { $role }.
did-changed_staff = { $by } changed { $name }: { $role } now.
did-gave_password = { $by } gave { $name } a new password.
did-freed_of_pin = { $by } freed { $name } of the PIN.
did-took_off_staff = { $by } took { $name } off the staff.
did-made_token = { $by } made a token for { $name }: { $scope }.
did-took_token_back = { $by } took back the token of { $name }.
did-set_call = { $by } set the number to call in { $country }: { $number }.
did-set_call_back = { $by } gave { $country } the built-in number to call again.
did-taught_word = { $by } taught a word of { $place }: { $word } means { $feed }.
did-took_word_away = { $by } took the word { $word } away.
did-set_keeping = { $by } set that the words of texts are kept { $n } days.
did-set_keeping_ever = { $by } set that texts are kept for ever.
did-pin_for_all = { $by } set that everybody needs a PIN.
did-pin_for_some = { $by } set that a PIN is left to each.
did-sent_broadcast = { $by } sent a broadcast to { $n ->
    [one] { $n } household
   *[other] { $n } households
} ({ $audience }): { $words }
did-stopped_broadcast = { $by } stopped broadcast { $id }; { $n } texts did not go.
nothing-yet = Nothing yet.
visits-head = Visits
visits-none = Nobody was there yet.
visits-before = Earlier visits
visit-go-new_tank = Check a new tank
visit-go-fault = Look at a fault
phones-head = Phones and reminders
phone-by = by { $name }
phone-stopped = said STOP: gets nothing
phone-off = Take off
phone-off-label = Take off { $name }
phone-none = No phone.
phone-another = Another number of theirs
gateway = Gateway
phone-add = Add it
reminders-are-off = Reminders are off.
reminders-are-on = Reminders are on.
reminders-again = They asked for them again
reminders-end = End reminders
restart-head = The tank was emptied and filled anew, or the family moved
restart-fine = Its story begins again under a new number, with the same phones, sizes and measures. What came before stays to be read here.
restart-manure = Starter put in: manure, kg
restart-place = Where it stands now, if the family moved: town
restart-sure = Emptied and filled anew today
restart-do = Begin anew
settings-head = Digester and family
set-name = Name
set-place = Place
set-tank_l = Tank, L
set-liquid_l = Slurry up to the overflow, L
set-store_l = Gas store, L
set-people = People at table
set-started = First filled on
set-walls = Walls
set-lang = We write in
set-staff = Field worker
set-keep = Keep the changes
walls-black = black
walls-white = white
walls-insulated = insulated
walls-greenhouse = greenhouse
walls-heated = heated
walls-buried = in the ground
holds-lead = Their
holds-measure = Measure
holds-holds = holds
holds-litres = Litres
told-head = What was told, and from which day it holds
told-liquid = slurry up to the overflow { $n } L
told-started = first filled

### Visits
visit-title = Visit to { $name }
visit-for = What the visit is for
errand-new_tank = Check of a new tank
errand-fault = A look at a fault
errand-short-new_tank = New tank
errand-short-fault = Fault
visit-cautions = No flame, no phone and no switch where gas may be; never lean over or enter a tank or pit. Gas that smells of eggs poisons. Gas fittings are the work of a licensed fitter, and local codes come before this list, which is common practice.
mark-good = good
mark-bad = to mend
mark-none = not looked at
visit-note = Note
visit-keep = Keep the visit
visit-told = { $errand }: { $good } good, to mend: { $bad }.
visit-told-good = { $errand }: { $good } good, nothing to mend.
check-walls_dark = Walls dark: no light reaches the slurry
check-gas_tight = Gas-tight: soapy water on every joint, seal and seam shows no bubble
check-overflow_low = Overflow about 50 mm lower than the mouth of the inlet
check-overflow_open = Overflow runs through a tee that is open to the air
check-inlet_floor = Inlet pipe 50 mm wide, reaches the floor, foot cut at 45 degrees
check-outlet_middle = Outlet opens at about half height, diagonally across from the inlet
check-gas_high = Gas opening about 20 mm below the top; its pipe rises above the water line
check-pipe_seals = Seals sit tight where the pipes go through the wall
check-valve = Gas valve turns easily and shuts; half inch, joints not glued
check-water_trap = Water trap at the lowest point of the gas line, drained
check-bag = Gas bag whole, in shade, fixed, nothing sharp near it
check-hose = Hose and stove fittings without cracks, clamped
check-inlet_free = Inlet free: water poured in goes down
check-outlet_free = Outlet free: as much comes out as goes in
check-level = Slurry stands at the overflow
check-flame_blue = Flame steady and blue
check-flame_far = Flame and sparks far from tank, bag and pipes; kitchen has moving air
check-nobody_falls_in = Lids shut; no child or animal can fall in; slurry pit fenced
check-family_told = Family knows: gas explodes, egg smell poisons, wash hands, never enter

### Programme
prog-months = Months back
prog-fuel = Cooked on before
prog-share = Share of wood that does not grow again, 0 to 1
prog-work-out = Work it out
prog-by-month = By month
prog-by-place = By place
prog-month = Month
prog-place = Place
prog-no-place = place not told
prog-nothing = Nothing was told in these months.
prog-heard = Households heard
prog-working = Cooking on gas
prog-fed = Fed, kg
prog-slurry = Slurry out, L
prog-hours = Cooked, h
prog-gas = Gas burned, m3
prog-spared = { $name } spared, kg
prog-co2e = CO2e spared, kg
prog-texts = Texts in / out
prog-segments = Segments paid
prog-csv = A row a household and month, as CSV
prog-how = How it is counted
prog-method = Only gas that families told they burned counts: minutes at the stove, 300 L of biogas an hour ({ $methane }% methane, wet, { $celsius } °C). Fuel spared is what gives the same heat in the pot: gas stove 55%, three-stone fire 12%, charcoal stove 25%, wick stove 45%. CO2e over 100 years with the potentials of AR6, emission factors of IPCC 2006, in the form of AMS-I.E net of 5% leakage elsewhere, { $share } of the { $name } counted as not growing again; less methane leaked, taken as { $leak }% of what was made where nobody measured it. Slurry out is what went in: as much leaves as enters. The sums are estimates; a claim for credits needs its own survey.
fuel-wood = wood
fuel-charcoal = charcoal
fuel-lpg = LPG
fuel-kerosene = kerosene

### Broadcast
cast-title = Broadcast { $name }
cast-text = Your words, as they go to each family after your name
cast-lang = Language
cast-place = Place
cast-staff = Field worker
cast-need = Need
cast-all-langs = all languages
cast-all-places = all places
cast-all-staff = all field workers
cast-all-needs = whatever they need
cast-nobody = Nobody fits.
cast-would = { $n ->
    [one] { $n } household
   *[other] { $n } households
}, { $segments } to pay.
cast-without = { $n } more fit but said STOP or MUTE, or have no phone: they get nothing.
cast-when = The first goes { $first }, the last { $last }; at night each waits for its morning. At most one a second.
cast-send = Send to { $n }
cast-look = Look before it goes
cast-look-again = Look again
cast-before = Sent before
cast-row = { $when }, { $staff }, to { $audience } · { $progress } · { $state }
cast-progress = { $sent } of { $all } sent
cast-done = done
cast-going = going out
cast-stopped = stopped { $name }
cast-everybody = all households
cast-to = { $when }, { $staff }, to { $audience }
cast-sent = Sent
cast-waiting = Waiting
cast-not-sent = Not sent
cast-last = The last goes
cast-stop = Stop it: { $n } do not go
cast-see = See how far it is
cast-all = All broadcasts

### People and set-up
setup-on-page = On this page
setup-staff = Staff
setup-household = New household
setup-gateways = Gateways
setup-words = Feed names
setup-numbers = Numbers to call
setup-keeping = How long texts are kept
setup-wording = Wording
setup-trail = What staff changed
role-viewer = viewer
role-field = field worker
role-lead = lead
role-long-viewer = viewer: sees, numbers masked
role-long-field = field worker: acts for households
role-long-lead = lead: sets up people and rules
staff-no-phone = no phone
staff-phone = { $number } by { $gateway }
staff-no-log-in = no log-in
staff-has-pin = PIN set
staff-change = Change
staff-change-of = Change { $name }
staff-role-of = Role of { $name }
staff-lang-of = Language of { $name }
staff-new-password = New password
staff-free-pin = Free of PIN
staff-pin-all = By text, everybody needs a PIN once a day.
staff-pin-own = By text, a PIN is asked only of who has chosen one.
staff-pin-leave = Leave it to each
staff-pin-need = Everybody needs one
staff-add-head = Add somebody
staff-add = Add
staff-role = Role
staff-lang = Language
number-texts = Number they text from
family-head = New household, or a second tank
family-fine = A second tank has a model of its own: give it its own name and a number of its own. A household that texts by itself appears without this form.
family-town = Nearest town
family-agreed = They agreed to get texts
family-do = Set it up
traffic-head = Gateways, the last 24 hours
traffic-none = No gateway is configured.
traffic-state = State
traffic-in = Texts in
traffic-last-in = Last in
traffic-sent = Sent
traffic-delivered = Reported delivered
traffic-lost = Not taken
traffic-waiting = Waiting
traffic-stuck = texts wait
traffic-stuck-why = texts wait: { $name }
traffic-many-lost = many are not taken
traffic-quiet = quiet for a day
traffic-well = well
traffic-never = none
ago-now = just now
ago-minutes = { $n } min ago
ago-hours = { $n } h ago
words-head = Feed names of the district
words-fine = A word taught here once is understood in the texts of every household there.
words-word = Their word
words-means = Means
words-country = Country, two letters
words-place = Only where the place is (empty: whole country)
words-teach = Teach it
words-none = No word is taught yet.
words-by = taught by { $name }
words-off = Take away
words-off-label = Take away { $name }
call-head = Numbers to call in danger
call-fine = Named in the alarm text. Ask the country's authority; where none is known, the text says to call for help.
call-number = Number (empty: the built-in one)
call-set = Set it
call-all = All { $n } numbers
call-own = set here
keep-days = Days until the words of texts are forgotten (empty: for ever). Amounts, dates and advice stay; segments paid are then counted no further back.
said-password = { $name } may log in with the password { $password }. It is shown this once.
said-new-password = The new password of { $name } is { $password }. It is shown this once.
said-role = { $name } is { $role } now.
said-lang = { $name } reads { $lang } from the next log-in on.
said-pin-free = The next PIN that { $name } texts is theirs.
said-off = { $name } is off the staff; their households are nobody's now.
said-call-built-in = In { $country } the built-in number holds again.
said-call = In danger, families in { $country } are told to call { $number }.
said-word-off = The word is taken away.
said-word = In { $place }, { $word } is { $feed } from now on.
said-keep = The words of texts are forgotten after { $n } days; what was told of the digester stays.
said-keep-ever = Texts are kept for ever.
said-pin-all = Whoever has no PIN is asked to choose one before they are told of any household.
said-pin-own = Whoever has no PIN is told of households without one.

### Wording
wording-title = Wording in { $name }
wording-lead = { $n } messages and parts of messages, { $long } longer than one segment by themselves. A text is put together from them and shortened to its room.
wording-letters = { $n ->
    [one] { $n } letter
   *[other] { $n } letters
}
wording-dear = letters of two bytes

### The phone on a page
try-title = A phone to try
try-phone = Phone
try-staff = Staff pages
try-choose = Choose a household beside, or start as a new family. Then text as that family would.
try-screen = Screen of the phone
try-empty = No text yet. Say hello, or tell what you fed.
try-text = Your text
try-send = Send
try-filling = History is being lived
try-filling-fine = Each household texts its way through { $n } days. Those that are whole can be picked.
try-again = Look again
try-whose = Whose phone?
try-day-of = day { $day } of { $days }
try-new = Start as a new family
try-new-family = A new family
try-invented = Households, names and numbers are invented, and so is who lives in which town and its weather; what the bot says to them is worked out.
try-time = Time
try-now = It is { $name }.
try-day = Let a day go by
try-cautions = Cautions
try-caution-burns = Biogas burns, and mixed with air it explodes. No flame near tank, bag or pipes.
try-caution-poison = The gas that smells of rotten eggs poisons; strong gas cannot be smelt any more.
try-caution-germs = Slurry carries germs: wash hands. Never enter a tank or pit, not even after someone.
try-caution-codes = What is texted is advice. Local codes and licensed fitters come first.

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
