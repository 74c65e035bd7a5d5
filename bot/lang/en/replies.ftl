# What Bellyful says in English.
# Each message is one thought. A text is put together from a few of them and kept to one segment, so: short words,
# what to do first, then why. Only letters of the GSM alphabet.

### Who we are and how we talk
hello = Hello! I am Bellyful. I help feed your biogas tank. This is advice: local rules and your fitter come first. Text STOP to end, HELP for help.
hello-again = Hello! Tell me what you fed, like: 3 kg scraps, 6 L water. Or ask: how much can I feed?
help = Text me what you fed, like: 3 kg scraps, 6 L water. How the gas is: gas low, cooked 50 min. Or ask: how much can I feed? STOP ends, UNDO takes back.
stopped = Bellyful: you will get no more texts from us. If you smell gas, go out and text us all the same. Text START to come back.
started = Welcome back! Tell me what you feed and how the gas burns, and I will tell you what to do next.
muted = No more reminders from me. I still answer when you text.
forget-sure = Shall I erase your name, number and texts for good? Answer YES to erase. Any other answer keeps them.
forgotten = Done. Your name, number and texts are erased. Farewell, and keep flames away from the gas.
kept = Fine, I keep everything as it is.
language-is = I will write English from now on.
language-unknown = I can write: { $languages }. Which one?
nothing-more = That was all. Ask me anything about your tank.
undone = Taken back: { $what }.
nothing-to-undo = There is nothing to take back.
welcome = You are welcome. Tell me what you feed each day, and I will tell you what comes next.
joined = This phone now belongs to the same tank.
too-long = That was too long for me. Please send it in shorter texts.
person-called = I have asked your field worker to call you.
person-none = I cannot reach a field worker for you. Please ask the fitter who built your tank.

### Danger. No question, no dose in this text
alarm = Everyone out now! No flame, switch or phone inside. Shut the gas valve only if safe on your way. { $number ->
    [none] Call for help from outside.
   *[other] Call { $number } from outside.
} Never go back in or into a pit.
safe-again = Good that you wrote. Light nothing before a fitter has checked all joints with soapy water. When all is tight, text me and we go on.
safe-again-first = Light nothing before a fitter has checked all joints with soapy water.

### What we heard
heard = Noted: { $what }.
item-fed = { $amount } { $feed }
item-fed-unknown = { $feed }, amount not known
item-water = { $amount } water
item-water-none = no water
item-water-unknown = water
item-not-fed = { $days ->
    [one] no feed
   *[other] no feed for { $days } days
}
item-usual = usually { $amount } { $feed } a day
item-burned = cooked { $minutes } min
item-gas = gas { $level ->
    [none] empty
    [low] low
    [half] half
    [good] good
   *[full] full
}
item-flame = flame { $look ->
    [blue] blue
    [yellow] yellow
    [weak] weak
    [goes_out] goes out
   *[will_not_light] will not light
}
item-temperature = { $of ->
    [air] air { $celsius } C
   *[tank] tank { $celsius } C
}
item-ph = pH { $value }
item-pressure = pressure { $cm } cm
item-tank = tank { $litres } L
item-store = gas bag { $litres } L
item-walls = tank { $look ->
    [black] black
    [white] white
    [insulated] wrapped warm
    [greenhouse] in a greenhouse
    [heated] heated
   *[buried] in the ground
}
item-started = started { $days ->
    [0] today
    [one] yesterday
   *[other] { $days } days ago
}
item-removed = { $amount } taken out
item-alkali = { $amount } { $what ->
    [soda] soda
    [lime] lime
   *[ash] ash
}
item-alkali-bare = { $what ->
    [soda] soda
    [lime] lime
   *[ash] ash
}
item-measure = 1 { $measure } is { $litres } L
item-people = { $count ->
    [one] { $count } person
   *[other] { $count } people
}
item-place = { $name }
item-seeded = started with { $amount } { $feed }
item-sign = { $sign ->
    [sour_smell] sour smell
    [egg_smell] egg smell
    [bad_smell] bad smell
    [foam] foam
    [scum] scum on top
    [overflow] overflowing
    [level_drop] level going down
    [inlet_blocked] inlet blocked
    [outlet_blocked] outlet blocked
    [gas_line_blocked] gas pipe blocked
    [water_in_gas_line] water in gas pipe
    [green_liquid] green liquid
    [thick_slurry] thick slurry
    [watery_slurry] watery slurry
    [flies] flies
    [worms] worms
    [bag_torn] gas bag torn
    [tank_cracked] tank cracked
    [gas_leak] gas leak
    [fire] fire
   *[unwell] someone unwell
}
item-day = { $item } ({ $days ->
    [one] yesterday
   *[other] { $days } days ago
})
corrected = Mended: { $what }.
not-mended = What should I mend? Text it whole, like: fed 3 kg scraps, 6 L water.

### What to do
do-feed-today = Today you can feed { $amount } with { $water } water.
do-feed-tomorrow = Tomorrow feed up to { $amount } with { $water } water.
do-less-today = Feed less today: { $amount } with { $water } water.
do-less-tomorrow = Feed less tomorrow: { $amount } with { $water } water.
do-feed-dry-today = Today you can feed { $amount }, no more water.
do-feed-dry-tomorrow = Tomorrow feed up to { $amount }, no more water.
do-more-today = You may still feed { $amount } today.
do-hold = { $days ->
    [one] No feed today please.
   *[other] No feed for { $days } days please, from today.
}
do-hold-tomorrow = { $days ->
    [one] No more today, and no feed tomorrow please.
   *[other] No feed for { $days } days please, from tomorrow.
}
do-same-today = Still { $amount } today with { $water } water.
do-same-tomorrow = Tomorrow again { $amount } with { $water } water.
do-same-dry-today = Still { $amount } today, no more water.
do-same-dry-tomorrow = Tomorrow again { $amount }, no more water.
do-hold-still = { $days ->
    [one] Still no feed today please.
   *[other] Still no feed for { $days } more days please.
}
do-water = Add { $water } water before the next feed.
do-warm = Keep the tank warm: dark cover by day, blankets or straw by night. Feed at the warmest hour.
do-warm-feed = It is cold inside, so it eats little: up to { $amount } a day. Keep it warm.
do-check-gas = Check the gas pipe joints with soapy water, outdoors, no flame. Bubbles show the leak.
remedy-slurry = Rest alone may not heal it. Ask your fitter to swap { $amount } for slurry from a tank that works well.
alkali-careful = Soda, lime or ash only as your field worker says: too much harms it.
gas-today = Gas for about { $minutes } min today.
gas-none-yet = No gas to cook with yet.
gas-little = Only a little gas today.

### Why
why-usual = All looks well.
why-overloaded = It got more than it can eat these days, and too much turns it sour.
why-load_rising = The load is rising fast. Its small helpers need days to grow.
why-underfed = It is hungry: a little more food gives more gas.
why-fed_today = It has had its share for today.
why-spread_out = Small and often is better than much at once.
why-after_gap = After a break start small. Do not make up for missed days.
why-no_seed = It needs fresh cow dung to start: without it, food only turns sour.
why-seed_resting = The dung must work first. Food comes when a flame holds for 3 days.
why-start_up = It is young. Feed grows week by week.
why-first_gas = Let the first bag of gas out in the open, far from flame: there is air in it. Try the stove with the next.
why-souring = It is turning sour: too much acid, too few helpers. Rest heals it.
why-recovering = It is healing. Small meals until the flame is strong again.
why-sour_risk = More than this could turn it sour.
why-too_thick = The mix is too thick to flow and digest.
why-too_thin = So much water washes its helpers out.
why-grease = Oil and fat float and choke it: only a spoon or two a day.
why-citrus = Citrus peel slows it: only a little among other food.
why-protein = Much meat, fish or egg makes bad gas: mix with other food.
why-salt = Very salty food harms it.
why-inhibitor = That harms what lives inside. Keep it out, add only water and some dung.
why-not_food = That is no food for it and will block it. Take out what you can reach from outside.
why-needs_dung = With only kitchen food it lacks something: give a shovel of fresh cow dung each week.
why-cold = Cold makes it slow, and food left lying turns sour.
why-too_hot = It is too hot inside for it. Give shade.
why-cold_coming = Colder days are coming: it will eat less.
why-low_gas = Less gas than it should make.
why-leak_suspected = It should have made more gas than you found: maybe a leak.
why-gas_unused = There is plenty of gas: use it before you feed more.
why-part = A part needs looking at.
why-people_at_risk = Gas can burn and poison. People come first.
why-size_unknown = I do not know your tank's size yet, so I stay careful.
why-amount_unknown = I do not know how much went in, so I stay careful.
why-intro = Because: { $reasons }

### Signs: one step a family can take
sign-sour_smell = A sour smell means too much acid.
sign-egg_smell = Egg smell at the outlet is usual, but it is poison: do not breathe it. Indoors or strong: all go out and text me.
sign-bad_smell = Put a thin film of cooking oil on the water in the open pipes against smell.
sign-scum = Stir gently from outside through the inlet pipe, and feed wetter, finer food.
sign-outlet_blocked = Clear the outlet with a long stick from outside. Never reach in or climb in.
sign-gas_line_blocked = Close the valve, then look for a bend or water in the gas pipe. No flame near.
sign-water_in_gas_line = Close the valve and drain the water at the lowest point of the gas pipe. No flame near.
sign-green_liquid = Light gets in and grows green algae: cover or paint the tank dark.
sign-thick_slurry = The slurry is too thick.
sign-watery_slurry = Give less water with the next feeds.
sign-flies = Cover inlet and outlet, and rinse the inlet after each feed.
sign-worms = Cover the outlet pit and rinse the inlet after each feed.
sign-bag_torn = Do not use the gas. Close the valve, keep flames away, and call your fitter to mend the bag.
sign-tank_cracked = Keep people and flames away from the tank and call your fitter. Do not feed until it is mended.
flame-yellow = Open the burner's air hole a little and clean the soot.

### Causes of a trouble: one step for each, and one question that a yes answers for it
cause-little_fed = It is hungry: feed as I say each day, and gas comes in some days.
cause-overfed = It got more than it can eat: give only what I say.
cause-souring = There may be too much acid inside: keep to the rest or the small meals I say.
cause-cold = It is cold inside: cover it well at night and feed at the warmest hour.
cause-young = It is young: let the first gas out in the open, far from flame, and try again tomorrow.
cause-poisoned = Keep soap, bleach and medicine out. Give only water and some fresh dung.
cause-fat = Leave out oil, fat and meat for a week.
cause-leak = Put soapy water on bag, valve and joints, outdoors, no flame: bubbles show a leak.
cause-used_up = You burn about all it makes: shut the valve between meals and let the bag fill.
cause-water_in_pipe = Shut the valve and drain the water at the lowest point of the gas pipe. No flame near.
cause-burner_air = Close the burner's air hole a little, open the gas slowly and try again.
cause-light_in = Cover or paint the tank dark: light grows green algae and spoils the gas.
cause-siphon = The outlet may suck: its tee must be open to the air on top. Refill with water to the mark.
cause-tank_leak = Mark the level. If it has fallen again tomorrow, call your fitter. Keep flames away.
cause-much_water = Use less water with the next feeds.
cause-outlet_shut = Free the outlet with a long stick from outside. Never reach or climb in.
cause-thick_feed = Push it through with a long stick and rinse. Cut food small and mix it with more water.
cause-vapour_lock = Gas is caught in the inlet: move a long stick gently up and down, then pour slowly. No flame near.
call-fitter = It has gone on for days: please ask your fitter to look.
ask-cause-little_fed = Did it get less food than usual this week?
ask-cause-overfed = Did it get more than I said?
ask-cause-souring = Does the outlet smell sour, like vinegar?
ask-cause-cold = Were the nights colder lately?
ask-cause-young = Is it still waiting for its first good flame?
ask-cause-poisoned = Did soap, bleach, medicine or poison go in?
ask-cause-fat = Did oil, fat or much meat go in?
ask-cause-leak = Does the bag go soft overnight with no cooking?
ask-cause-used_up = Did you cook longer than usual?
ask-cause-water_in_pipe = Does the flame jump or the pipe gurgle?
ask-cause-burner_air = Does the flame lift off the burner or hiss?
ask-cause-light_in = Is the liquid green, or does light get into the tank?
ask-cause-siphon = Did much run out of the outlet all at once?
ask-cause-tank_leak = Is the ground wet below the tank or pipes?
ask-cause-much_water = Did rain or much water get in?
ask-cause-outlet_shut = Does the outlet stay dry when you feed?
ask-cause-thick_feed = Was the food in big or dry pieces?
ask-cause-vapour_lock = When you pour, does it bubble and push back?

### Answers
answer-water = For each { $feed } of feed give about { $water } water.
answer-gas = You have gas for about { $minutes } min of cooking today.
answer-digestate = Mix 1 part of the liquid with 3 parts water for soil. Wait a month before harvest, never on leaves or food eaten raw. Wash hands.
answer-start_up = Fill with fresh cow dung and water, half and half, keep warm and dark. No food until a flame holds for 3 days. Let the first gas out in the open.
answer-why-usual = It is what your tank can eat now, by its size, its warmth and what it got lately.
answer-can-yes = Yes, it likes { $feed }. Cut small and mix with water.
answer-can-yes-short = Yes, it likes { $feed }.
answer-can-some = Yes, but only a little, with other food: { $feed }.
answer-can-no = No, please keep { $feed } out of the tank.
answer-history = Last 7 days: fed { $kg } kg on { $days ->
    [one] { $days } day
   *[other] { $days } days
}, { $water } L water, cooked { $minutes } min.
answer-history-none = I have nothing noted for the last 7 days. Tell me what you fed.
answer-status-good = Your tank looks well.
answer-status-watch = Your tank needs care.

### Questions, one at a time
ask-tank = How many litres does your tank hold?
ask-started = When was the tank first filled? Like: 3 weeks ago.
ask-seed = What was put in to start it, and how much? Like: 40 kg cow dung.
ask-place = Which town are you in or near?
ask-bucket = How many litres does your { $measure } hold?
ask-usual = What do you feed on most days, and how much?
ask-store = How many litres does your gas bag hold?
ask-walls = Is your tank black, white, wrapped warm or in the ground?
ask-people = How many people do you cook for?
ask-amount = How much { $feed } was it, in kg or { $measure }?
ask-sure-amount = "{ $said }" is a lot. Is it right? Answer yes, or the right amount.
doubt-amount = How much is "{ $said }"? Like: 2 kg or 1 bucket.
doubt-unit = "{ $said }": do you mean kg or { $measure }?
doubt-feed = What food is "{ $said }"?
doubt-two = "{ $said }": is it { $first } or { $second }?
doubt-one = "{ $said }": is it { $first }, or what?
doubt-water = "{ $said }": is it water or { $first }?
doubt-day = "{ $said }": which day was it?
doubt-sign = What is wrong: smell, leak, no gas, or something else?
doubt-word = Sorry, I did not get "{ $said }". Tell me like: fed 3 kg scraps, 6 L water.

### Texts we start
remind-silence = { $days ->
    [one] { $days } day
   *[other] { $days } days
} without news. How is the tank? Tell me what you fed and how the gas burns. MUTE ends reminders.
remind-rest-over = The rest is over.
remind-rest-on = It needs a longer rest.
remind-cold = Colder weeks are coming. Cover the tank well and feed less: I will tell you how much. MUTE ends reminders.
remind-oil = Time for a new thin film of cooking oil on the water in the open pipes, against smell. MUTE ends reminders.
remind-trap = Please drain the water from the gas pipe's lowest point today. Valve shut, no flame near. MUTE ends reminders.
remind-yearly = Once a year a fitter should look over tank, pipes, valve and gas bag: please ask yours. MUTE ends reminders.
remind-leak = Once a month: soapy water on all gas joints, no flame near. Bubbles mean a leak. MUTE ends reminders.
warn-souring = Please hold the feed now: your tank may be turning sour. Tell me how it smells and how the flame is.

### To field workers
staff-alarm = DANGER at { $name } ({ $number }): { $signs }. They wrote: "{ $said }". Answer OK { $id } when you take it.
staff-alarm-again = STILL OPEN: danger at { $name } ({ $number }): { $signs }. Answer OK { $id } when you take it.
staff-ok = Thank you. { $name } is yours. Write: note { $id } and what you found.
staff-person = { $name } ({ $number }) asks you to call.
staff-unknown = I know no household "{ $said }". Text its number or name.
staff-which = Which one? Text its number: { $list }.
staff-help = Text: who needs me, history 12, for 12: fed 5 kg, note 12 new valve, tell 12 I come Tuesday, take 12, hand back 12, lift 12, ok 12, done 12.
staff-history = { $name }: 7 d fed { $kg } kg on { $days } d, OLR { $olr } kg VS/m3/d, water { $water } L, cooked { $minutes } min. Advice: { staff-verdict }, { $ration } kg/d, risk { $risk }%. Last text { $ago } d ago.
staff-history-more = MORE tells it day by day.
staff-verdict = { $verdict ->
   *[feed] feed
    [less] feed less
    [hold] no feed
    [water] add water
    [warm] keep warm
    [check] look at it
    [danger] danger
}
staff-noted = For { $name }: { $reply }
staff-needs = { $count ->
    [one] { $count } needs you.
   *[other] { $count } need you.
} { $list }
staff-needs-item = { $name }: { $need ->
    [danger] DANGER
    [souring] souring
    [person] wants a person
    [silent] silent
    [rest] resting
   *[leak] leak?
}.
staff-needs-none = Nobody needs you now.
staff-needs-rest = And { $count } more: MORE.
staff-note = Written down for { $name }.
staff-take = { $name } is yours now. HAND BACK { $id } gives it back.
staff-hand-back = { $name } is no longer yours.
staff-done = Seen to: { $name }. All see it.
staff-done-none = Nobody had { $name } in hand. TAKE { $id } first.
staff-not-yours = { $name } is not yours.
staff-tell = Sent to { $name }.
staff-tell-none = { $name } has no phone that takes texts.
staff-word = From { $worker }: { $text }
staff-what = What shall I write? Like: note 12 valve replaced, or: tell 12 I come Tuesday.
staff-lift = { $name } may text without limit for a day.
staff-viewer = You may look but not act. Ask your manager.
staff-pin-ask = For this I need your PIN, once a day. Text: pin and your number.
staff-pin-choose = For this you need a PIN. Choose one of 4 to 8 digits and text it, like: pin 4711.
staff-pin-form = A PIN has 4 to 8 digits, like: pin 4711.
staff-pin-set = This is your PIN from now on. I will ask for it once a day.
staff-pin-ok = Thank you, that holds for today.
staff-pin-wrong = That PIN is wrong. Tries left: { $left }.
staff-pin-locked = Too many wrong PINs: locked for an hour. Your manager is told.
staff-pin-told = { $worker } ({ $number }) is locked for an hour after wrong PINs. Is the phone in the right hands?

### Amounts
decimal-mark = .
number-half = half a { $measure }
unit-kg = { $n } kg
unit-g = { $n } g
unit-l = { $n } L
unit-bucket = { $n } { $count ->
    [one] bucket
   *[other] buckets
}
unit-basin = { $n } { $count ->
    [one] basin
   *[other] basins
}
unit-jerrycan = { $n } { $count ->
    [one] jerrycan
   *[other] jerrycans
}
unit-tin = { $n } { $count ->
    [one] tin
   *[other] tins
}
unit-pot = { $n } { $count ->
    [one] pot
   *[other] pots
}
unit-bowl = { $n } { $count ->
    [one] bowl
   *[other] bowls
}
unit-plate = { $n } { $count ->
    [one] plate
   *[other] plates
}
unit-cup = { $n } { $count ->
    [one] cup
   *[other] cups
}
unit-glass = { $n } { $count ->
    [one] glass
   *[other] glasses
}
unit-jug = { $n } { $count ->
    [one] jug
   *[other] jugs
}
unit-bottle = { $n } { $count ->
    [one] bottle
   *[other] bottles
}
unit-handful = { $n } { $count ->
    [one] handful
   *[other] handfuls
}
unit-spoon = { $n } { $count ->
    [one] spoon
   *[other] spoons
}
unit-shovel = { $n } { $count ->
    [one] shovel
   *[other] shovels
}
unit-bag = { $n } { $count ->
    [one] bag
   *[other] bags
}
unit-sack = { $n } { $count ->
    [one] sack
   *[other] sacks
}
unit-basket = { $n } { $count ->
    [one] basket
   *[other] baskets
}
unit-crate = { $n } { $count ->
    [one] crate
   *[other] crates
}
unit-wheelbarrow = { $n } { $count ->
    [one] wheelbarrow
   *[other] wheelbarrows
}
unit-piece = { $n }
measure-bucket = bucket
measure-basin = basin
measure-jerrycan = jerrycan
measure-tin = tin
measure-pot = pot
measure-bowl = bowl
measure-plate = plate
measure-cup = cup
measure-glass = glass
measure-jug = jug
measure-bottle = bottle
measure-handful = handful
measure-spoon = spoon
measure-shovel = shovel
measure-bag = bag
measure-sack = sack
measure-basket = basket
measure-crate = crate
measure-wheelbarrow = wheelbarrow
measure-piece = piece
language-name = English

### Feeds
feed-cooked_rice = rice
feed-maize_meal = maize meal
feed-bread = bread
feed-flatbread = flatbread
feed-pasta = pasta
feed-porridge = porridge
feed-potato = potatoes
feed-potato_peel = potato peels
feed-cassava = cassava
feed-cassava_peel = cassava peels
feed-sweet_potato = sweet potato
feed-yam = yam
feed-plantain = plantain
feed-plantain_peel = plantain peels
feed-flour = flour
feed-maize = maize
feed-banana = bananas
feed-banana_peel = banana peels
feed-mango = mango
feed-papaya = papaya
feed-pineapple = pineapple
feed-citrus_peel = citrus peels
feed-melon_rind = melon rind
feed-avocado = avocado
feed-apple = apples
feed-fruit_waste = fruit waste
feed-tomato = tomatoes
feed-onion = onions
feed-cabbage = cabbage
feed-leafy_greens = greens
feed-carrot = carrots
feed-pumpkin = pumpkin
feed-vegetable_waste = vegetable waste
feed-beans = beans
feed-lentils = lentils
feed-egg = egg
feed-meat = meat
feed-fish = fish
feed-milk = milk
feed-whey = whey
feed-cheese = cheese
feed-cooking_oil = cooking oil
feed-fat = fat
feed-sugar = sugar
feed-sweet_drink = sweet drink
feed-food_waste = scraps
feed-coffee_grounds = coffee grounds
feed-tea_leaves = tea leaves
feed-spent_grain = spent grain
feed-starch_water = starch water
feed-cattle_manure = cow dung
feed-pig_manure = pig dung
feed-chicken_manure = chicken dung
feed-goat_manure = goat dung
feed-horse_manure = horse dung
feed-human_waste = toilet waste
feed-digestate = slurry
feed-grass = grass
feed-leaves = leaves
feed-water_hyacinth = water hyacinth
feed-straw = straw
feed-bone = bones
feed-eggshell = eggshells
feed-wood = wood
feed-soil = soil
feed-ash = ash
feed-plastic = plastic
feed-paper = paper
feed-soap = soap
feed-chemical = chemicals

# A text that could not be worked in many tries.
sorry = Sorry, I could not work out your last text. It is kept. Please tell me again in other words.
