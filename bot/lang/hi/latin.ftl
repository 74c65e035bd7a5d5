# What Bellyful says in Hindi, in Latin letters as people text it. The same sentences in Devanagari: replies.ftl.
### Who we are and how we talk
hello = Namaste! Main Bellyful hun, gobar gas tank ko khana dene mein madad karta hun. Yeh salah hai: pehle sarkari niyam aur aapke mistri ki baat. Band: STOP. Madad: HELP.
hello-again = Namaste! Bataiye kya dala, jaise: 3 kilo jhootan, 6 litre paani. Ya poochhiye: kitna dalun?
help = Likhiye kya dala, jaise: 3 kilo jhootan, 6 litre paani. Gas kaisi hai: gas kam, 50 min pakaya. Ya poochhiye: kitna dalun? STOP se band, UNDO se wapas.
stopped = Bellyful: ab hum message nahi bhejenge. Gas ki boo aaye to bahar niklen aur tab bhi humein likhen. Wapas aane ko START likhen.
started = Phir se swagat hai! Bataiye kya dala aur gas kaisi jalti hai, main bataunga aage kya karna hai.
muted = Ab main yaad nahi dilaunga. Aap likhenge to jawab dunga.
forget-sure = Kya aapka naam, number aur message hamesha ke liye mita dun? Mitane ko HAAN likhen. Kuch aur likhen to sab rahega.
forgotten = Ho gaya. Aapka naam, number aur message mita diye. Namaste, aag ko gas se door rakhiye.
kept = Theek hai, sab waisa hi rahega.
language-is = Ab main Hindi mein likhunga.
language-unknown = Main in mein likh sakta hun: { $languages }. Kaun si?
nothing-more = Bas itna hi tha. Tank ke baare mein kuch bhi poochhiye.
undone = Wapas liya: { $what }.
nothing-to-undo = Wapas lene ko kuch nahi hai.
welcome = Koi baat nahi. Roz bataiye kya dala, main bataunga aage kya karna hai.
joined = Yeh phone bhi ab usi tank ka hai.
too-long = Yeh message mere liye bahut lamba tha. Chhote message mein bhejiye.
person-called = Maine aapke karyakarta se kaha hai ki aapko phone karen.
person-none = Abhi koi karyakarta nahi mil raha. Jis mistri ne tank banaya, unse poochhiye.

### Danger. No question, no dose in this text
alarm = Sab turant bahar! Andar aag, switch, phone nahi. Valve raaste mein, bina khatre ho tabhi band karen. { $number ->
    [none] Bahar se madad bulayen.
   *[other] Bahar se { $number } milayen.
} Andar ya gaddhe mein wapas na jayen.
safe-again = Achha kiya likha. Mistri sabun-paani se sab jod jaanch le, tab tak kuch na jalayen. Sab theek ho to likhiye, aage badhenge.
safe-again-first = Mistri sabun-paani se sab jod jaanch le, tab tak kuch na jalayen.

### What we heard
heard = Likh liya: { $what }.
item-fed = { $amount } { $feed }
item-fed-unknown = { $feed }, kitna pata nahi
item-water = { $amount } paani
item-water-none = paani nahi
item-water-unknown = paani
item-not-fed = { $days ->
    [1] kuch nahi dala
   *[other] { $days } din kuch nahi dala
}
item-usual = roz { $amount } { $feed }
item-burned = { $minutes } min pakaya
item-gas = gas { $level ->
    [none] khatam
    [low] kam
    [half] aadhi
    [good] achhi
   *[full] bhari
}
item-flame = lau { $look ->
    [blue] neeli
    [yellow] peeli
    [weak] dheemi
    [goes_out] bujh jati hai
   *[will_not_light] jalti nahi
}
item-temperature = { $of ->
    [air] bahar { $celsius } C
   *[tank] tank mein { $celsius } C
}
item-ph = pH { $value }
item-pressure = pressure { $cm } cm
item-tank = tank { $litres } litre
item-store = gas ka thaila { $litres } litre
item-walls = tank { $look ->
    [black] kaala
    [white] safed
    [insulated] dhaka hua
    [greenhouse] plastic ghar mein
    [heated] garam kiya hua
   *[buried] zameen mein
}
item-started = shuru { $days ->
    [0] aaj
    [1] kal
   *[other] { $days } din pehle
}
item-removed = nikala { $amount }
item-alkali = { $amount } { $what ->
    [soda] soda
    [lime] chuna
   *[ash] raakh
}
item-alkali-bare = { $what ->
    [soda] soda
    [lime] chuna
   *[ash] raakh
}
item-measure = 1 { $measure } = { $litres } litre
item-people = { $count ->
    [one] { $count } jan
   *[other] { $count } log
}
item-place = { $name }
item-seeded = shuru mein { $amount } { $feed }
item-sign = { $sign ->
    [sour_smell] khatti boo
    [egg_smell] sade ande ki boo
    [bad_smell] badboo
    [foam] jhaag
    [scum] upar papdi
    [overflow] bahar bah raha
    [level_drop] paani neeche ja raha
    [inlet_blocked] dalne ka munh jaam
    [outlet_blocked] nikasi jaam
    [gas_line_blocked] gas pipe jaam
    [water_in_gas_line] gas pipe mein paani
    [green_liquid] hara paani
    [thick_slurry] ghol gaadha
    [watery_slurry] ghol patla
    [flies] makkhi
    [worms] keede
    [bag_torn] gas ka thaila phata
    [tank_cracked] tank mein daraar
    [gas_leak] gas leak
    [fire] aag
   *[unwell] kisi ki tabiyat kharab
}
item-day = { $item } ({ $days ->
    [1] beeta kal
   *[other] { $days } din pehle
})
corrected = Theek kar diya: { $what }.
not-mended = Kya theek karun? Poora likhiye, jaise: 3 kilo jhootan dali, 6 litre paani.

### What to do
do-feed-today = Aaj { $amount } dal sakte hain, { $water } paani ke saath.
do-feed-tomorrow = Kal { $amount } tak dalen, { $water } paani ke saath.
do-less-today = Aaj kam dalen: { $amount }, { $water } paani ke saath.
do-less-tomorrow = Kal kam dalen: { $amount }, { $water } paani ke saath.
do-feed-dry-today = Aaj { $amount } dal sakte hain, aur paani nahi.
do-feed-dry-tomorrow = Kal { $amount } tak dalen, aur paani nahi.
do-more-today = Aaj abhi { $amount } aur dal sakte hain.
do-hold = { $days ->
    [1] Aaj kuch na dalen.
   *[other] Aaj se { $days } din kuch na dalen.
}
do-hold-tomorrow = { $days ->
    [1] Aaj aur na dalen, kal bhi kuch na dalen.
   *[other] Kal se { $days } din kuch na dalen.
}
do-same-today = Aaj bhi utna hi: { $amount }, { $water } paani.
do-same-tomorrow = Kal bhi utna hi: { $amount }, { $water } paani.
do-same-dry-today = Aaj bhi utna hi: { $amount }, aur paani nahi.
do-same-dry-tomorrow = Kal bhi utna hi: { $amount }, aur paani nahi.
do-hold-still = { $days ->
    [1] Aaj bhi kuch na dalen.
   *[other] Abhi bhi kuch na dalen: aaj se { $days } din.
}
do-water = Agli baar dalne se pehle { $water } paani dalen.
do-warm = Tank ko garam rakhen: din mein kaala kapda, raat mein kambal ya pual. Khana garam samay par dalen.
do-warm-feed = Tank andar se thanda hai, kam khata hai: din mein { $amount } tak. Garam rakhen.
do-check-gas = Gas pipe ke jod par sabun-paani lagayen, khule mein, aag nahi. Bulbule jahan, leak wahan.
remedy-slurry = Sirf aaram shayad kafi na ho. Mistri se kahen: { $amount } nikal kar achhi chalti tanki ka ghol dale.
alkali-careful = Soda, chuna ya raakh sirf karyakarta ke kehne par: zyada nuksan karta hai.
gas-today = Aaj gas karib { $minutes } min.
gas-none-yet = Abhi pakane layak gas nahi.
gas-little = Aaj gas thodi hi hai.

### Why
why-usual = Sab theek hai.
why-overloaded = In dino zyada khana gaya, zyada se tank khatta ho jata hai.
why-load_rising = Khana jaldi badh raha hai. Andar ke keetanu badhne mein din lagte hain.
why-underfed = Tank bhookha hai: thoda aur khana, to gas zyada.
why-fed_today = Aaj ka khana ho chuka.
why-spread_out = Thoda thoda baar baar, ek saath bahut se achha.
why-after_gap = Ruk kar shuru karen to thode se. Chhoote dino ka na jodein.
why-no_seed = Shuru ke liye taaza gobar chahiye: bina gobar khana bas khatta hota hai.
why-seed_resting = Pehle gobar kaam kare. 3 din lau tike, tab khana.
why-start_up = Tank naya hai. Khana hafte hafte badhega.
why-first_gas = Pehli theli ki gas mein hawa hai: khule mein, aag se door nikal den. Agli theli se chulha jala kar dekhen.
why-souring = Tank khatta ho raha hai: tezaab zyada, keetanu kam. Aaram se theek hoga.
why-recovering = Tank theek ho raha hai. Lau tez hone tak thoda thoda.
why-sour_risk = Isse zyada se khatta ho sakta hai.
why-too_thick = Ghol bahut gaadha hai, na bahta hai na galta hai.
why-too_thin = Itna paani keetanu baha le jata hai.
why-grease = Tel-charbi upar tairti hai, jaam karti hai: din mein ek do chammach bas.
why-citrus = Nimbu-santre ke chhilke dheema karte hain: aur khane mein thode hi.
why-protein = Bahut maans, machhli, anda kharab gas deta hai: aur khane mein milayen.
why-salt = Bahut namkeen khana nuksan karta hai.
why-inhibitor = Yeh keetanu maarta hai. Ise na dalen, bas paani aur thoda gobar dalen.
why-not_food = Yeh tank ka khana nahi, jaam karega. Bahar se jo haath aaye nikal len.
why-needs_dung = Sirf rasoi ke khane mein kuch kami hai: har hafte ek belcha taaza gobar den.
why-cold = Thand mein dheema hai, pada khana khatta hota hai.
why-too_hot = Andar bahut garmi hai. Chhaya karen.
why-cold_coming = Thande din aa rahe hain: tank kam khayega.
why-low_gas = Gas jitni honi chahiye usse kam hai.
why-leak_suspected = Gas aur milni chahiye thi: shayad leak hai.
why-gas_unused = Gas bahut hai: pehle use karen, phir khana dalen.
why-part = Ek purza dekhna hoga.
why-people_at_risk = Gas jala sakti hai, zehar hai. Pehle log.
why-size_unknown = Tank kitna bada hai pata nahi, isliye sambhal kar.
why-amount_unknown = Kitna gaya pata nahi, isliye sambhal kar.
why-intro = Kyunki: { $reasons }

### Signs: one step a family can take
sign-sour_smell = Khatti boo yaani tezaab zyada.
sign-egg_smell = Nikasi par ande ki boo aam hai, par zehar hai: soonghen nahi. Ghar mein ya tez ho to sab bahar, mujhe likhen.
sign-bad_smell = Badboo ke liye khule pipe ke paani par thoda khane ka tel dalen.
sign-scum = Bahar se, dalne ke pipe se dheere hilayen. Khana mahin aur geela dalen.
sign-outlet_blocked = Bahar se lambi lakdi se nikasi kholen. Haath na dalen, andar kabhi na utren.
sign-gas_line_blocked = Valve band karen, phir pipe mein mod ya paani dekhen. Paas mein aag nahi.
sign-water_in_gas_line = Valve band karen, pipe ki sabse neechi jagah se paani nikalen. Paas mein aag nahi.
sign-green_liquid = Roshni se kaai jamti hai: tank dhaken ya kaala rangen.
sign-thick_slurry = Ghol bahut gaadha hai.
sign-watery_slurry = Agli baar paani kam dalen.
sign-flies = Dono munh dhaken, khana dalne ke baad munh paani se dhoyen.
sign-worms = Nikasi ka gaddha dhaken, khana dalne ke baad munh dhoyen.
sign-bag_torn = Gas na jalayen. Valve band karen, aag door rakhen, thaila theek karne mistri bulayen.
sign-tank_cracked = Log aur aag tank se door rakhen, mistri bulayen. Theek hone tak kuch na dalen.
flame-yellow = Chulhe ka hawa ka chhed thoda kholen, kaalikh saaf karen.

### Causes of a trouble: one step for each, and one question that a yes answers for it
cause-little_fed = Tank bhookha hai: roz utna dalen jitna main kahun, kuch din mein gas aayegi.
cause-overfed = Zyada khana gaya: sirf utna dalen jitna main kahun.
cause-souring = Shayad andar tezaab zyada hai: utna hi dalen jitna main kahun, ya kuch nahi.
cause-cold = Andar thand hai: raat ko achhe se dhaken, khana din ke garam samay dalen.
cause-young = Tank naya hai: pehli gas khule mein, aag se door nikal den, kal phir jalakar dekhen.
cause-poisoned = Sabun, bleach, dawai na dalen. Sirf paani aur thoda taaza gobar dalen.
cause-fat = Ek hafte tel, charbi aur maans na dalen.
cause-leak = Thaile, valve aur jod par sabun-paani lagayen, khule mein, aag nahi: bulbule yaani leak.
cause-used_up = Jitni gas banti hai utni jal jati hai: khane ke beech valve band rakhen, thaila bharne den.
cause-water_in_pipe = Valve band karen, pipe ki sabse neechi jagah se paani nikalen. Paas mein aag nahi.
cause-burner_air = Chulhe ka hawa ka chhed thoda band karen, gas dheere kholen, phir jalayen.
cause-light_in = Tank dhaken ya kaala rangen: roshni se kaai jamti hai, gas kharab hoti hai.
cause-siphon = Nikasi shayad paani kheenchti hai: uska T upar se khula rahe. Nishan tak paani bharen.
cause-tank_leak = Paani par nishan lagayen. Kal tak aur gire to mistri bulayen. Aag door rakhen.
cause-much_water = Agli baar paani kam dalen.
cause-outlet_shut = Bahar se lambi lakdi se nikasi kholen. Haath na dalen, andar kabhi na utren.
cause-thick_feed = Lambi lakdi se dhakelen, paani dalen. Khana chhota kaaten, paani zyada milayen.
cause-vapour_lock = Dalne ke pipe mein gas phansi hai: lambi lakdi dheere hilayen, phir dheere dalen. Paas mein aag nahi.
call-fitter = Kai din ho gaye: mistri ko dikha len.
ask-cause-little_fed = Kya is hafte khana kam dala?
ask-cause-overfed = Kya mere kahe se zyada gaya?
ask-cause-souring = Kya nikasi se sirke jaisi khatti boo aati hai?
ask-cause-cold = Kya raatein zyada thandi ho gayi hain?
ask-cause-young = Kya pehli achhi lau abhi aani baaki hai?
ask-cause-poisoned = Kya sabun, bleach, dawai ya zehar gaya?
ask-cause-fat = Kya tel, charbi ya bahut maans gaya?
ask-cause-leak = Kya bina pakaye bhi thaila raat mein dheela hota hai?
ask-cause-used_up = Kya aam dino se zyada der pakaya?
ask-cause-water_in_pipe = Kya lau uchhalti hai, ya pipe gud-gud karta hai?
ask-cause-burner_air = Kya lau chulhe se upar uthti hai, ya seeti deti hai?
ask-cause-light_in = Kya paani hara hai, ya tank mein roshni jati hai?
ask-cause-siphon = Kya nikasi se ek saath bahut paani nikla?
ask-cause-tank_leak = Kya tank ya pipe ke neeche zameen geeli hai?
ask-cause-much_water = Kya baarish ya zyada paani gaya?
ask-cause-outlet_shut = Kya khana dalne par bhi nikasi sookhi rehti hai?
ask-cause-thick_feed = Kya khana bade ya sookhe tukdon mein tha?
ask-cause-vapour_lock = Kya dalne par bulbule aate hain aur khana wapas aata hai?

### Answers
answer-water = { $feed } khane ke saath karib { $water } paani dalen.
answer-gas = Aaj karib { $minutes } min pakane ki gas hai.
answer-digestate = 1 hissa ghol, 3 hissa paani mila kar mitti mein. Katai se mahina bhar pehle tak. Patte ya kachche khane par nahi. Haath dhoyen.
answer-start_up = Taaza gobar aur paani aadha-aadha bharen, garam aur dhaka rakhen. 3 din lau tike tab khana. Pehli gas khule mein, aag se door nikalen.
answer-why-usual = Tank abhi itna hi kha sakta hai: uske size, garmi aur jo mila, usi se.
answer-can-yes = Haan, { $feed } achha khana hai. Chhota kaat kar paani mein milayen.
answer-can-yes-short = Haan, { $feed } achha khana hai.
answer-can-some = { $feed }: thoda hi, aur khane ke saath, akela nahi.
answer-can-no = Nahi, { $feed } tank mein na dalen.
answer-history = Pichhle 7 din: { $days } din mein { $kg } kilo khana, { $water } litre paani, { $minutes } min pakaya.
answer-history-none = Pichhle 7 din ka kuch likha nahi hai. Bataiye kya dala.
answer-status-good = Aapka tank theek dikhta hai.
answer-status-watch = Tank par dhyan dena hoga.

### Questions, one at a time
ask-tank = Aapka tank kitne litre ka hai?
ask-started = Tank pehli baar kab bhara? Jaise: 3 hafte pehle.
ask-seed = Shuru mein kya dala, kitna? Jaise: 40 kilo gobar.
ask-place = Aap kis shehar mein ya uske paas hain?
ask-bucket = Aapke yahan 1 { $measure } mein kitne litre aate hain?
ask-usual = Aam din kya dalte hain, kitna?
ask-store = Gas ka thaila kitne litre ka hai?
ask-walls = Tank kaala hai, safed, dhaka hua ya zameen mein?
ask-people = Kitne logon ka khana banta hai?
ask-amount = { $feed } kitna tha, kilo ya { $measure } mein?
ask-sure-amount = "{ $said }" bahut hai. Sahi hai? Haan likhen, ya sahi matra.
doubt-amount = "{ $said }" kitna hua? Jaise: 2 kilo ya 1 balti.
doubt-unit = "{ $said }": kilo ya { $measure }?
doubt-feed = "{ $said }" kaun sa khana hai?
doubt-two = "{ $said }": { $first } ya { $second }?
doubt-one = "{ $said }": { $first }, ya kya?
doubt-water = "{ $said }": paani ya { $first }?
doubt-day = "{ $said }": kaun sa din tha?
doubt-sign = Kya dikkat hai: boo, leak, gas nahi, ya kuch aur?
doubt-word = Maaf kijiye, "{ $said }" samajh nahi aaya. Aise likhiye: 3 kilo jhootan dali, 6 litre paani.

### Texts we start
remind-silence = { $days } din se khabar nahi. Tank kaisa hai? Bataiye kya dala, gas kaisi jalti hai. MUTE se yaad dilana band.
remind-rest-over = Aaram poora hua.
remind-rest-on = Tank ko aur aaram chahiye.
remind-cold = Thande hafte aa rahe hain. Tank achhe se dhaken, khana kam dalen: kitna, main bataunga. MUTE se yaad dilana band.
remind-oil = Khule pipe ke paani par phir thoda khane ka tel dalen, badboo rukegi. MUTE se yaad dilana band.
remind-trap = Aaj gas pipe ki sabse neechi jagah se paani nikalen. Valve band, paas mein aag nahi. MUTE se yaad dilana band.
remind-yearly = Saal mein ek baar mistri tank, pipe, valve aur gas ka thaila dekhe: unhen bulaiye. MUTE se yaad dilana band.
remind-leak = Mahine mein ek baar gas ke sab jod par sabun-paani, aag nahi. Bulbule yaani leak. MUTE se yaad dilana band.
warn-souring = Abhi khana rok dijiye: tank shayad khatta ho raha hai. Bataiye boo kaisi hai, lau kaisi hai.

### To field workers
staff-alarm = KHATRA: { $name } ({ $number }): { $signs }. Likha: "{ $said }". Lene par OK { $id } likhen.
staff-alarm-again = ABHI BHI KHATRA: { $name } ({ $number }): { $signs }. Lene par OK { $id } likhen.
staff-ok = Dhanyavaad. { $name } aapke zimme. Likhen: note { $id } aur kya mila.
staff-person = { $name } ({ $number }) chahte hain ki aap phone karen.
staff-unknown = "{ $said }" naam ka ghar nahi mila. Number ya naam likhen.
staff-which = Kaun sa? Uska number likhiye: { $list }.
staff-help = Likhen: who needs me, history 12, for 12: fed 5 kg, note 12 naya valve, tell 12 kal aaunga, take 12, hand back 12, lift 12, ok 12, done 12.
staff-history = { $name }: 7 din: { $days } din mein { $kg } kilo, OLR { $olr } kg VS/m3/d, paani { $water } litre, pakaya { $minutes } min. Salah: { staff-verdict }, { $ration } kg/d, khatra { $risk }%. Aakhri message { $ago } din pehle.
staff-history-more = MORE se din-din ka haal.
staff-verdict = { $verdict ->
   *[feed] khana dalen
    [less] kam dalen
    [hold] khana nahi
    [water] paani dalen
    [warm] garam rakhen
    [check] jaanchen
    [danger] khatra
}
staff-noted = { $name } ke liye: { $reply }
staff-needs = { $count ->
    [one] { $count } ghar
   *[other] { $count } gharon
} ko aapki zaroorat hai. { $list }
staff-needs-item = { $name }: { $need ->
    [danger] KHATRA
    [souring] khatta
    [person] kisi ko bulaya
    [silent] khabar nahi
    [rest] aaram par
   *[leak] leak?
}.
staff-needs-none = Abhi kisi ko aapki zaroorat nahi.
staff-needs-rest = { $count ->
    [one] Aur { $count } hai
   *[other] Aur { $count } hain
}: MORE.
staff-note = { $name } ke liye likh liya.
staff-take = { $name } ab aapke zimme. HAND BACK { $id } se wapas.
staff-hand-back = { $name } ab aapke zimme nahi.
staff-done = { $name } ka kaam ho gaya. Sabko dikhega.
staff-done-none = { $name } kisi ke zimme nahin tha. Pehle likhiye: take { $id }.
staff-not-yours = { $name } aapke zimme nahi hai.
staff-tell = { $name } ko bhej diya.
staff-tell-none = { $name } ka koi phone message nahi leta.
staff-word = { $worker } ki taraf se: { $text }
staff-what = Kya likhun? Jaise: note 12 valve badla, ya: tell 12 kal aaunga.
staff-lift = { $name } ek din jitna chahen likh sakte hain.
staff-viewer = Aap dekh sakte hain, badal nahi sakte. Apne manager se poochhiye.
staff-pin-ask = Iske liye aapka PIN chahiye, din mein ek baar. Likhen: pin aur apna number.
staff-pin-choose = Iske liye PIN chahiye. 4 se 8 ank chun kar likhiye, jaise: pin 4711.
staff-pin-form = PIN mein 4 se 8 ank hote hain, jaise: pin 4711.
staff-pin-set = Ab se yeh aapka PIN hai. Din mein ek baar poochhunga.
staff-pin-ok = Dhanyavaad, aaj ke liye theek hai.
staff-pin-wrong = Yeh PIN galat hai. Aur { $left } baar koshish kar sakte hain.
staff-pin-locked = Bahut baar galat PIN: ek ghante ke liye band. Aapke manager ko bata diya.
staff-pin-told = { $worker } ({ $number }) galat PIN se ek ghante ke liye band. Kya phone sahi haath mein hai?

### Amounts
decimal-mark = .
number-half = { $unit ->
    [bucket] aadhi
    [plate] aadhi
    [bottle] aadhi
    [handful] aadhi
    [sack] aadhi
    [basket] aadhi
   *[other] aadha
} { $measure }
unit-kg = { $n } kilo
unit-g = { $n } gram
unit-l = { $n } litre
unit-piece = { $n }
measure-piece = nag
language-name = Hindi
unit-bucket = { $n } balti
measure-bucket = balti
unit-basin = { $n } tasla
measure-basin = tasla
unit-jerrycan = { $n } jerrycan
measure-jerrycan = jerrycan
unit-tin = { $n } dibba
measure-tin = dibba
unit-pot = { $n } patila
measure-pot = patila
unit-bowl = { $n } katora
measure-bowl = katora
unit-plate = { $n } plate
measure-plate = plate
unit-cup = { $n } cup
measure-cup = cup
unit-glass = { $n } glass
measure-glass = glass
unit-jug = { $n } jug
measure-jug = jug
unit-bottle = { $n } botal
measure-bottle = botal
unit-handful = { $n } mutthi
measure-handful = mutthi
unit-spoon = { $n } chammach
measure-spoon = chammach
unit-shovel = { $n } belcha
measure-shovel = belcha
unit-bag = { $n } thaila
measure-bag = thaila
unit-sack = { $n } bori
measure-sack = bori
unit-basket = { $n } tokri
measure-basket = tokri
unit-crate = { $n } crate
measure-crate = crate
unit-wheelbarrow = { $n } thela
measure-wheelbarrow = thela

### Feeds
feed-cooked_rice = chawal
feed-maize_meal = makke ka daliya
feed-bread = double roti
feed-flatbread = roti
feed-pasta = sewai
feed-porridge = daliya
feed-potato = aloo
feed-potato_peel = aloo ke chhilke
feed-cassava = cassava
feed-cassava_peel = cassava ke chhilke
feed-sweet_potato = shakarkand
feed-yam = jimikand
feed-plantain = kachcha kela
feed-plantain_peel = kachche kele ke chhilke
feed-flour = aata
feed-maize = makka
feed-banana = kela
feed-banana_peel = kele ke chhilke
feed-mango = aam
feed-papaya = papita
feed-pineapple = ananas
feed-citrus_peel = nimbu-santre ke chhilke
feed-melon_rind = tarbooj ke chhilke
feed-avocado = avocado
feed-apple = seb
feed-fruit_waste = kharab phal
feed-tomato = tamatar
feed-onion = pyaaz
feed-cabbage = patta gobhi
feed-leafy_greens = saag
feed-carrot = gaajar
feed-pumpkin = kaddu
feed-vegetable_waste = sabzi ka kachra
feed-beans = rajma
feed-lentils = dal
feed-egg = anda
feed-meat = maans
feed-fish = machhli
feed-milk = doodh
feed-whey = chhachh ka paani
feed-cheese = paneer
feed-cooking_oil = khane ka tel
feed-fat = charbi
feed-sugar = cheeni
feed-sweet_drink = meetha sharbat
feed-food_waste = jhootan
feed-coffee_grounds = coffee ka chura
feed-tea_leaves = chai patti
feed-spent_grain = sharab ka bacha anaaj
feed-starch_water = maand
feed-cattle_manure = gobar
feed-pig_manure = suar ka gobar
feed-chicken_manure = murgi ki beet
feed-goat_manure = bakri ki mengni
feed-horse_manure = ghode ki leed
feed-human_waste = latrine ka mal
feed-digestate = ghol
feed-grass = ghaas
feed-leaves = patte
feed-water_hyacinth = jalkumbhi
feed-straw = pual
feed-bone = haddi
feed-eggshell = ande ke chhilke
feed-wood = lakdi
feed-soil = mitti
feed-ash = raakh
feed-plastic = plastic
feed-paper = kaagaz
feed-soap = sabun
feed-chemical = dawai ya chemical

# A text that could not be worked in many tries.
sorry = Maaf kijiye, aapka pichhla message samajh nahi paya. Woh rakha hai. Doosre shabdon mein phir likhiye.
