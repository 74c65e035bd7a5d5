# What Bellyful says in Hindi, in Devanagari. The same sentences in Latin letters: latin.ftl.
### Who we are and how we talk
hello = नमस्ते! मैं Bellyful हूँ, गोबर गैस टंकी को खाना देने में मदद करता हूँ। यह सलाह है: पहले सरकारी नियम और आपके मिस्त्री की बात। बंद: STOP। मदद: HELP।
hello-again = नमस्ते! बताइए क्या डाला, जैसे: 3 किलो जूठन, 6 लीटर पानी। या पूछिए: कितना डालूँ?
help = लिखिए क्या डाला, जैसे: 3 किलो जूठन, 6 लीटर पानी। गैस कैसी है: गैस कम, 50 मिनट पकाया। या पूछिए: कितना डालूँ? STOP से बंद, UNDO से वापस।
stopped = Bellyful: अब हम मैसेज नहीं भेजेंगे। गैस की बू आए तो बाहर निकलें और तब भी हमें लिखें। वापसी: START लिखें।
started = फिर से स्वागत है! बताइए क्या डाला और गैस कैसी जलती है, मैं बताऊँगा आगे क्या करना है।
muted = अब मैं याद नहीं दिलाऊँगा। आप लिखेंगे तो जवाब दूँगा।
forget-sure = क्या आपका नाम, नंबर और मैसेज हमेशा के लिए मिटा दूँ? मिटाने को हाँ लिखें। कुछ और लिखें तो सब रहेगा।
forgotten = हो गया। आपका नाम, नंबर और मैसेज मिटा दिए। नमस्ते, आग को गैस से दूर रखिए।
kept = ठीक है, सब वैसा ही रहेगा।
language-is = अब मैं हिन्दी में लिखूँगा।
language-unknown = मैं इनमें लिख सकता हूँ: { $languages }। कौन सी?
nothing-more = बस इतना ही था। टंकी के बारे में कुछ भी पूछिए।
undone = वापस लिया: { $what }।
nothing-to-undo = वापस लेने को कुछ नहीं है।
welcome = कोई बात नहीं। रोज़ बताइए क्या डाला, मैं बताऊँगा आगे क्या करना है।
joined = यह फ़ोन भी अब उसी टंकी का है।
too-long = यह मैसेज बहुत लंबा था। छोटे मैसेज में भेजिए।
person-called = मैंने आपके कार्यकर्ता से कहा है कि आपको फ़ोन करें।
person-none = अभी कोई कार्यकर्ता नहीं मिल रहा। जिस मिस्त्री ने टंकी बनाई, उनसे पूछिए।

### Danger. No question, no dose in this text
alarm = सब तुरंत बाहर! अंदर आग, स्विच, फ़ोन नहीं। वाल्व रास्ते में हो, खतरा न हो तभी बंद करें। { $number ->
    [none] बाहर से मदद बुलाएँ।
   *[other] बाहर से { $number } मिलाएँ।
} अंदर या गड्ढे में न जाएँ।
safe-again = अच्छा किया लिखा। मिस्त्री साबुन-पानी से सब जोड़ जाँच ले, तब तक कुछ न जलाएँ। सब ठीक हो तो लिखिए।
safe-again-first = मिस्त्री साबुन-पानी से सब जोड़ जाँच ले, तब तक कुछ न जलाएँ।

### What we heard
heard = लिख लिया: { $what }।
item-fed = { $amount } { $feed }
item-fed-unknown = { $feed }, कितना पता नहीं
item-water = { $amount } पानी
item-water-none = पानी नहीं
item-water-unknown = पानी
item-not-fed = { $days ->
    [1] कुछ नहीं डाला
   *[other] { $days } दिन कुछ नहीं डाला
}
item-usual = रोज़ { $amount } { $feed }
item-burned = { $minutes } मिनट पकाया
item-gas = गैस { $level ->
    [none] खत्म
    [low] कम
    [half] आधी
    [good] अच्छी
   *[full] भरी
}
item-flame = लौ { $look ->
    [blue] नीली
    [yellow] पीली
    [weak] धीमी
    [goes_out] बुझ जाती है
   *[will_not_light] जलती नहीं
}
item-temperature = { $of ->
    [air] बाहर { $celsius } C
   *[tank] टंकी में { $celsius } C
}
item-ph = pH { $value }
item-pressure = प्रेशर { $cm } सेमी
item-tank = टंकी { $litres } लीटर
item-store = गैस का थैला { $litres } लीटर
item-walls = टंकी { $look ->
    [black] काली
    [white] सफ़ेद
    [insulated] ढकी हुई
    [greenhouse] प्लास्टिक घर में
    [heated] गरम की हुई
   *[buried] ज़मीन में
}
item-started = शुरू { $days ->
    [0] आज
    [1] कल
   *[other] { $days } दिन पहले
}
item-removed = निकाला { $amount }
item-alkali = { $amount } { $what ->
    [soda] सोडा
    [lime] चूना
   *[ash] राख
}
item-alkali-bare = { $what ->
    [soda] सोडा
    [lime] चूना
   *[ash] राख
}
item-measure = 1 { $measure } = { $litres } लीटर
item-people = { $count ->
    [one] { $count } जन
   *[other] { $count } लोग
}
item-place = { $name }
item-seeded = शुरू में { $amount } { $feed }
item-sign = { $sign ->
    [sour_smell] खट्टी बू
    [egg_smell] सड़े अंडे की बू
    [bad_smell] बदबू
    [foam] झाग
    [scum] ऊपर पपड़ी
    [overflow] बाहर बह रहा
    [level_drop] पानी नीचे जा रहा
    [inlet_blocked] डालने का मुँह जाम
    [outlet_blocked] निकासी जाम
    [gas_line_blocked] गैस पाइप जाम
    [water_in_gas_line] गैस पाइप में पानी
    [green_liquid] हरा पानी
    [thick_slurry] घोल गाढ़ा
    [watery_slurry] घोल पतला
    [flies] मक्खी
    [worms] कीड़े
    [bag_torn] गैस का थैला फटा
    [tank_cracked] टंकी में दरार
    [gas_leak] गैस लीक
    [fire] आग
   *[unwell] किसी की तबीयत खराब
}
item-day = { $item } ({ $days ->
    [1] बीता कल
   *[other] { $days } दिन पहले
})
corrected = ठीक कर दिया: { $what }।
not-mended = क्या ठीक करूँ? पूरा लिखिए, जैसे: 3 किलो जूठन डाली, 6 लीटर पानी।

### What to do
do-feed-today = आज { $amount } डाल सकते हैं, { $water } पानी के साथ।
do-feed-tomorrow = कल { $amount } तक डालें, { $water } पानी के साथ।
do-less-today = आज कम डालें: { $amount }, { $water } पानी के साथ।
do-less-tomorrow = कल कम डालें: { $amount }, { $water } पानी के साथ।
do-feed-dry-today = आज { $amount } डाल सकते हैं, और पानी नहीं।
do-feed-dry-tomorrow = कल { $amount } तक डालें, और पानी नहीं।
do-more-today = आज अभी { $amount } और डाल सकते हैं।
do-hold = { $days ->
    [1] आज कुछ न डालें।
   *[other] आज से { $days } दिन कुछ न डालें।
}
do-hold-tomorrow = { $days ->
    [1] आज और न डालें, कल भी कुछ न डालें।
   *[other] कल से { $days } दिन कुछ न डालें।
}
do-same-today = आज भी उतना ही: { $amount }, { $water } पानी।
do-same-tomorrow = कल भी उतना ही: { $amount }, { $water } पानी।
do-same-dry-today = आज भी उतना ही: { $amount }, और पानी नहीं।
do-same-dry-tomorrow = कल भी उतना ही: { $amount }, और पानी नहीं।
do-hold-still = { $days ->
    [1] आज भी कुछ न डालें।
   *[other] अभी भी कुछ न डालें: आज से { $days } दिन।
}
do-water = अगली बार डालने से पहले { $water } पानी डालें।
do-warm = टंकी को गरम रखें: दिन में काला कपड़ा, रात में कंबल या पुआल। खाना गरम समय पर डालें।
do-warm-feed = टंकी अंदर से ठंडी है, कम खाती है: दिन में { $amount } तक। गरम रखें।
do-check-gas = गैस पाइप के जोड़ पर साबुन-पानी लगाएँ, खुले में, आग नहीं। बुलबुले जहाँ, लीक वहाँ।
remedy-slurry = सिर्फ़ आराम शायद काफ़ी न हो। मिस्त्री से कहें: { $amount } निकालकर अच्छी चलती टंकी का घोल डाले।
alkali-careful = सोडा, चूना या राख सिर्फ़ कार्यकर्ता के कहने पर: ज़्यादा नुकसान करता है।
gas-today = आज गैस करीब { $minutes } मिनट।
gas-none-yet = अभी पकाने लायक गैस नहीं।
gas-little = आज गैस थोड़ी ही है।

### Why
why-usual = सब ठीक है।
why-overloaded = इन दिनों ज़्यादा खाना गया, ज़्यादा से टंकी खट्टी हो जाती है।
why-load_rising = खाना जल्दी बढ़ रहा है। अंदर के कीटाणु बढ़ने में दिन लगते हैं।
why-underfed = टंकी भूखी है: थोड़ा और खाना, तो गैस ज़्यादा।
why-fed_today = आज का खाना हो चुका।
why-spread_out = थोड़ा थोड़ा बार बार, एक साथ बहुत से अच्छा।
why-after_gap = रुक कर शुरू करें तो थोड़े से। छूटे दिनों का न जोड़ें।
why-no_seed = शुरू के लिए ताज़ा गोबर चाहिए: बिना गोबर खाना बस खट्टा होता है।
why-seed_resting = पहले गोबर काम करे। 3 दिन लौ टिके, तब खाना।
why-start_up = टंकी नई है। खाना हफ़्ते हफ़्ते बढ़ेगा।
why-first_gas = पहली थैली की गैस में हवा है: खुले में, आग से दूर निकाल दें। अगली थैली से चूल्हा जलाकर देखें।
why-souring = टंकी खट्टी हो रही है: तेज़ाब ज़्यादा, कीटाणु कम। आराम से ठीक होगी।
why-recovering = टंकी ठीक हो रही है। लौ तेज़ होने तक थोड़ा थोड़ा।
why-sour_risk = इससे ज़्यादा से खट्टी हो सकती है।
why-too_thick = घोल बहुत गाढ़ा है, न बहता है न गलता है।
why-too_thin = इतना पानी कीटाणु बहा ले जाता है।
why-grease = तेल-चर्बी ऊपर तैरती है, जाम करती है: दिन में एक दो चम्मच बस।
why-citrus = नींबू-संतरे के छिलके धीमा करते हैं: और खाने में थोड़े ही।
why-protein = बहुत मांस, मछली, अंडा खराब गैस देता है: और खाने में मिलाएँ।
why-salt = बहुत नमकीन खाना नुकसान करता है।
why-inhibitor = यह कीटाणु मारता है। इसे न डालें, बस पानी और थोड़ा गोबर डालें।
why-not_food = यह टंकी का खाना नहीं, जाम करेगा। बाहर से जो हाथ आए निकाल लें।
why-needs_dung = सिर्फ़ रसोई के खाने में कुछ कमी है: हर हफ़्ते एक बेलचा ताज़ा गोबर दें।
why-cold = ठंड में धीमी है, पड़ा खाना खट्टा होता है।
why-too_hot = अंदर बहुत गर्मी है। छाया करें।
why-cold_coming = ठंडे दिन आ रहे हैं: टंकी कम खाएगी।
why-low_gas = गैस जितनी होनी चाहिए उससे कम है।
why-leak_suspected = गैस और मिलनी चाहिए थी: शायद लीक है।
why-gas_unused = गैस बहुत है: पहले इस्तेमाल करें, फिर खाना डालें।
why-part = एक पुर्ज़ा देखना होगा।
why-people_at_risk = गैस जला सकती है, ज़हर है। पहले लोग।
why-size_unknown = टंकी कितनी बड़ी है पता नहीं, इसलिए संभल कर।
why-amount_unknown = कितना गया पता नहीं, इसलिए संभल कर।
why-intro = क्योंकि: { $reasons }

### Signs: one step a family can take
sign-sour_smell = खट्टी बू यानी तेज़ाब ज़्यादा।
sign-egg_smell = निकासी पर अंडे की बू आम है, पर ज़हर है: सूँघें नहीं। घर में या तेज़ हो तो सब बाहर, मुझे लिखें।
sign-bad_smell = बदबू के लिए खुले पाइप के पानी पर थोड़ा खाने का तेल डालें।
sign-scum = बाहर से, डालने के पाइप से धीरे हिलाएँ। खाना महीन और गीला डालें।
sign-outlet_blocked = बाहर से लंबी लकड़ी से निकासी खोलें। हाथ न डालें, अंदर कभी न उतरें।
sign-gas_line_blocked = वाल्व बंद करें, फिर पाइप में मोड़ या पानी देखें। पास में आग नहीं।
sign-water_in_gas_line = वाल्व बंद करें, पाइप की सबसे नीची जगह से पानी निकालें। पास में आग नहीं।
sign-green_liquid = रोशनी से काई जमती है: टंकी ढकें या काली रंगें।
sign-thick_slurry = घोल बहुत गाढ़ा है।
sign-watery_slurry = अगली बार पानी कम डालें।
sign-flies = दोनों मुँह ढकें, खाना डालने के बाद मुँह पानी से धोएँ।
sign-worms = निकासी का गड्ढा ढकें, खाना डालने के बाद मुँह धोएँ।
sign-bag_torn = गैस न जलाएँ। वाल्व बंद करें, आग दूर रखें, थैला ठीक करने मिस्त्री बुलाएँ।
sign-tank_cracked = लोग और आग टंकी से दूर रखें, मिस्त्री बुलाएँ। ठीक होने तक कुछ न डालें।
flame-yellow = चूल्हे का हवा का छेद थोड़ा खोलें, कालिख साफ़ करें।

### Causes of a trouble: one step for each, and one question that a yes answers for it
cause-little_fed = टंकी भूखी है: रोज़ उतना डालें जितना मैं कहूँ, कुछ दिन में गैस आएगी।
cause-overfed = ज़्यादा खाना गया: सिर्फ़ उतना डालें जितना मैं कहूँ।
cause-souring = शायद अंदर तेज़ाब ज़्यादा है: उतना ही डालें जितना मैं कहूँ, या कुछ नहीं।
cause-cold = अंदर ठंड है: रात को अच्छे से ढकें, खाना दिन के गरम समय डालें।
cause-young = टंकी नई है: पहली गैस खुले में, आग से दूर निकाल दें, कल फिर जलाकर देखें।
cause-poisoned = साबुन, ब्लीच, दवाई न डालें। सिर्फ़ पानी और थोड़ा ताज़ा गोबर डालें।
cause-fat = एक हफ़्ते तेल, चर्बी और मांस न डालें।
cause-leak = थैले, वाल्व और जोड़ पर साबुन-पानी लगाएँ, खुले में, आग नहीं: बुलबुले यानी लीक।
cause-used_up = जितनी गैस बनती है उतनी जल जाती है: खाने के बीच वाल्व बंद रखें, थैला भरने दें।
cause-water_in_pipe = वाल्व बंद करें, पाइप की सबसे नीची जगह से पानी निकालें। पास में आग नहीं।
cause-burner_air = चूल्हे का हवा का छेद थोड़ा बंद करें, गैस धीरे खोलें, फिर जलाएँ।
cause-light_in = टंकी ढकें या काली रंगें: रोशनी से काई जमती है, गैस खराब होती है।
cause-siphon = निकासी शायद पानी खींचती है: उसका T ऊपर से खुला रहे। निशान तक पानी भरें।
cause-tank_leak = पानी पर निशान लगाएँ। कल तक और गिरे तो मिस्त्री बुलाएँ। आग दूर रखें।
cause-much_water = अगली बार पानी कम डालें।
cause-outlet_shut = बाहर से लंबी लकड़ी से निकासी खोलें। हाथ न डालें, अंदर कभी न उतरें।
cause-thick_feed = लंबी लकड़ी से धकेलें, पानी डालें। खाना छोटा काटें, पानी ज़्यादा मिलाएँ।
cause-vapour_lock = डालने के पाइप में गैस फँसी है: लंबी लकड़ी धीरे हिलाएँ, फिर धीरे डालें। पास में आग नहीं।
call-fitter = कई दिन हो गए: मिस्त्री को दिखा लें।
ask-cause-little_fed = क्या इस हफ़्ते खाना कम डाला?
ask-cause-overfed = क्या मेरे कहे से ज़्यादा गया?
ask-cause-souring = क्या निकासी से सिरके जैसी खट्टी बू आती है?
ask-cause-cold = क्या रातें ज़्यादा ठंडी हो गई हैं?
ask-cause-young = क्या पहली अच्छी लौ अभी आनी बाकी है?
ask-cause-poisoned = क्या साबुन, ब्लीच, दवाई या ज़हर गया?
ask-cause-fat = क्या तेल, चर्बी या बहुत मांस गया?
ask-cause-leak = क्या बिना पकाए भी थैला रात में ढीला होता है?
ask-cause-used_up = क्या आम दिनों से ज़्यादा देर पकाया?
ask-cause-water_in_pipe = क्या लौ उछलती है, या पाइप गुड़-गुड़ करता है?
ask-cause-burner_air = क्या लौ चूल्हे से ऊपर उठती है, या सीटी देती है?
ask-cause-light_in = क्या पानी हरा है, या टंकी में रोशनी जाती है?
ask-cause-siphon = क्या निकासी से एक साथ बहुत पानी निकला?
ask-cause-tank_leak = क्या टंकी या पाइप के नीचे ज़मीन गीली है?
ask-cause-much_water = क्या बारिश या ज़्यादा पानी गया?
ask-cause-outlet_shut = क्या खाना डालने पर भी निकासी सूखी रहती है?
ask-cause-thick_feed = क्या खाना बड़े या सूखे टुकड़ों में था?
ask-cause-vapour_lock = क्या डालने पर बुलबुले आते हैं और खाना वापस आता है?

### Answers
answer-water = { $feed } खाने के साथ करीब { $water } पानी डालें।
answer-gas = आज करीब { $minutes } मिनट पकाने की गैस है।
answer-digestate = 1 हिस्सा घोल, 3 हिस्सा पानी मिट्टी में। कटाई से महीना भर पहले तक। पत्ते या कच्चे खाने पर नहीं। हाथ धोएँ।
answer-start_up = ताज़ा गोबर और पानी आधा-आधा भरें, गरम और ढका रखें। 3 दिन लौ टिके तब खाना। पहली गैस खुले में, आग से दूर निकालें।
answer-why-usual = टंकी अभी इतना ही खा सकती है: उसके आकार, गर्मी और जो मिला, उसी से।
answer-can-yes = हाँ, { $feed } अच्छा खाना है। छोटा काट कर पानी में मिलाएँ।
answer-can-yes-short = हाँ, { $feed } अच्छा खाना है।
answer-can-some = { $feed }: थोड़ा ही, और खाने के साथ, अकेला नहीं।
answer-can-no = नहीं, { $feed } टंकी में न डालें।
answer-history = पिछले 7 दिन: { $days } दिन में { $kg } किलो खाना, { $water } लीटर पानी, { $minutes } मिनट पकाया।
answer-history-none = पिछले 7 दिन का कुछ लिखा नहीं है। बताइए क्या डाला।
answer-status-good = आपकी टंकी ठीक दिखती है।
answer-status-watch = टंकी पर ध्यान देना होगा।

### Questions, one at a time
ask-tank = आपकी टंकी कितने लीटर की है?
ask-started = टंकी पहली बार कब भरी? जैसे: 3 हफ़्ते पहले।
ask-seed = शुरू में क्या डाला, कितना? जैसे: 40 किलो गोबर।
ask-place = आप किस शहर में या उसके पास हैं?
ask-bucket = आपके यहाँ 1 { $measure } में कितने लीटर आते हैं?
ask-usual = आम दिन क्या डालते हैं, कितना?
ask-store = गैस का थैला कितने लीटर का है?
ask-walls = टंकी काली है, सफ़ेद, ढकी हुई या ज़मीन में?
ask-people = कितने लोगों का खाना बनता है?
ask-amount = { $feed } कितना था, किलो या { $measure } में?
ask-sure-amount = "{ $said }" बहुत है। सही है? हाँ लिखें, या सही कितना।
doubt-amount = "{ $said }" कितना हुआ? जैसे: 2 किलो या 1 बाल्टी।
doubt-unit = "{ $said }": किलो या { $measure }?
doubt-feed = "{ $said }" कौन सा खाना है?
doubt-two = "{ $said }": { $first } या { $second }?
doubt-one = "{ $said }": { $first }, या क्या?
doubt-water = "{ $said }": पानी या { $first }?
doubt-day = "{ $said }": कौन सा दिन था?
doubt-sign = क्या दिक्कत है: बू, लीक, गैस नहीं, या कुछ और?
doubt-word = माफ़ कीजिए, "{ $said }" समझ नहीं आया। ऐसे लिखिए: 3 किलो जूठन डाली, 6 लीटर पानी।

### Texts we start
remind-silence = { $days } दिन से खबर नहीं। टंकी कैसी है? बताइए क्या डाला, गैस कैसी जलती है। MUTE से याद दिलाना बंद।
remind-rest-over = आराम पूरा हुआ।
remind-rest-on = टंकी को और आराम चाहिए।
remind-cold = ठंडे हफ़्ते आ रहे हैं। टंकी अच्छे से ढकें, खाना कम डालें: कितना, मैं बताऊँगा। MUTE से याद दिलाना बंद।
remind-oil = खुले पाइप के पानी पर फिर थोड़ा खाने का तेल डालें, बदबू रुकेगी। MUTE से याद दिलाना बंद।
remind-trap = आज गैस पाइप की सबसे नीची जगह से पानी निकालें। वाल्व बंद, पास में आग नहीं। MUTE से याद दिलाना बंद।
remind-yearly = साल में एक बार मिस्त्री टंकी, पाइप, वाल्व और गैस का थैला देखे: उन्हें बुलाइए। MUTE से याद दिलाना बंद।
remind-leak = महीने में एक बार गैस के सब जोड़ पर साबुन-पानी, आग नहीं। बुलबुले यानी लीक। MUTE से याद दिलाना बंद।
warn-souring = अभी खाना रोक दीजिए: टंकी शायद खट्टी हो रही है। बताइए बू कैसी है, लौ कैसी है।

### To field workers
staff-alarm = खतरा: { $name } ({ $number }): { $signs }। लिखा: "{ $said }"। लेने पर OK { $id } लिखें।
staff-alarm-again = अभी भी खतरा: { $name } ({ $number }): { $signs }। लेने पर OK { $id } लिखें।
staff-ok = धन्यवाद। { $name } आपके ज़िम्मे। लिखें: note { $id } और क्या मिला।
staff-person = { $name } ({ $number }) चाहते हैं कि आप फ़ोन करें।
staff-unknown = "{ $said }" नाम का घर नहीं मिला। नंबर या नाम लिखें।
staff-which = कौन सा? उसका नंबर लिखें: { $list }।
staff-help = लिखें: who needs me, history 12, for 12: fed 5 kg, note 12 नया वाल्व, tell 12 कल, take 12, hand back 12, lift 12, ok 12, done 12.
staff-history = { $name }: 7 दिन: { $days } दिन में { $kg } किलो, OLR { $olr } kg VS/m3/d, पानी { $water } L, पकाया { $minutes } मिनट। सलाह: { staff-verdict }, { $ration } kg/d, खतरा { $risk }%। आखिरी मैसेज { $ago } दिन पहले।
staff-history-more = MORE से दिन-दिन का हाल।
staff-verdict = { $verdict ->
   *[feed] खाना डालें
    [less] कम डालें
    [hold] खाना नहीं
    [water] पानी डालें
    [warm] गर्म रखें
    [check] जाँचें
    [danger] ख़तरा
}
staff-noted = { $name } के लिए: { $reply }
staff-needs = { $count ->
    [one] { $count } घर
   *[other] { $count } घरों
} को आपकी ज़रूरत है। { $list }
staff-needs-item = { $name }: { $need ->
    [danger] खतरा
    [souring] खट्टी
    [person] किसी को बुलाया
    [silent] खबर नहीं
    [rest] आराम पर
   *[leak] लीक?
}।
staff-needs-none = अभी किसी को आपकी ज़रूरत नहीं।
staff-needs-rest = { $count ->
    [one] और { $count } है
   *[other] और { $count } हैं
}: MORE.
staff-note = { $name } के लिए लिख लिया।
staff-take = { $name } अब आपके ज़िम्मे। HAND BACK { $id } से वापस।
staff-hand-back = { $name } अब आपके ज़िम्मे नहीं।
staff-done = { $name } का काम हो गया। सबको दिखेगा।
staff-done-none = { $name } किसी के ज़िम्मे नहीं था। पहले लिखें: take { $id }।
staff-not-yours = { $name } आपके ज़िम्मे नहीं है।
staff-tell = { $name } को भेज दिया।
staff-tell-none = { $name } का कोई फ़ोन मैसेज नहीं लेता।
staff-word = { $worker } की तरफ़ से: { $text }
staff-what = क्या लिखूँ? जैसे: note 12 वाल्व बदला, या: tell 12 कल आऊँगा।
staff-lift = { $name } एक दिन जितना चाहें लिख सकते हैं।
staff-viewer = आप देख सकते हैं, बदल नहीं सकते। अपने मैनेजर से पूछिए।
staff-pin-ask = इसके लिए आपका PIN चाहिए, दिन में एक बार। लिखें: pin और अपना नंबर।
staff-pin-choose = इसके लिए PIN चाहिए। 4 से 8 अंक चुनकर लिखें, जैसे: pin 4711.
staff-pin-form = PIN में 4 से 8 अंक होते हैं, जैसे: pin 4711.
staff-pin-set = अब से यह आपका PIN है। दिन में एक बार पूछूँगा।
staff-pin-ok = धन्यवाद, आज के लिए ठीक है।
staff-pin-wrong = यह PIN गलत है। और { $left } बार कोशिश कर सकते हैं।
staff-pin-locked = बहुत बार गलत PIN: एक घंटे के लिए बंद। आपके मैनेजर को बता दिया।
staff-pin-told = { $worker } ({ $number }) गलत PIN से एक घंटे के लिए बंद। क्या फ़ोन सही हाथ में है?

### Amounts
decimal-mark = .
number-half = { $unit ->
    [bucket] आधी
    [plate] आधी
    [bottle] आधी
    [handful] आधी
    [sack] आधी
    [basket] आधी
   *[other] आधा
} { $measure }
unit-kg = { $n } किलो
unit-g = { $n } ग्राम
unit-l = { $n } लीटर
unit-piece = { $n }
measure-piece = नग
language-name = हिन्दी
unit-bucket = { $n } बाल्टी
measure-bucket = बाल्टी
unit-basin = { $n } तसला
measure-basin = तसला
unit-jerrycan = { $n } जरीकेन
measure-jerrycan = जरीकेन
unit-tin = { $n } डिब्बा
measure-tin = डिब्बा
unit-pot = { $n } पतीला
measure-pot = पतीला
unit-bowl = { $n } कटोरा
measure-bowl = कटोरा
unit-plate = { $n } प्लेट
measure-plate = प्लेट
unit-cup = { $n } कप
measure-cup = कप
unit-glass = { $n } गिलास
measure-glass = गिलास
unit-jug = { $n } जग
measure-jug = जग
unit-bottle = { $n } बोतल
measure-bottle = बोतल
unit-handful = { $n } मुट्ठी
measure-handful = मुट्ठी
unit-spoon = { $n } चम्मच
measure-spoon = चम्मच
unit-shovel = { $n } बेलचा
measure-shovel = बेलचा
unit-bag = { $n } थैला
measure-bag = थैला
unit-sack = { $n } बोरी
measure-sack = बोरी
unit-basket = { $n } टोकरी
measure-basket = टोकरी
unit-crate = { $n } क्रेट
measure-crate = क्रेट
unit-wheelbarrow = { $n } ठेला
measure-wheelbarrow = ठेला

### Feeds
feed-cooked_rice = चावल
feed-maize_meal = मक्के का दलिया
feed-bread = डबल रोटी
feed-flatbread = रोटी
feed-pasta = सेवई
feed-porridge = दलिया
feed-potato = आलू
feed-potato_peel = आलू के छिलके
feed-cassava = कसावा
feed-cassava_peel = कसावा के छिलके
feed-sweet_potato = शकरकंद
feed-yam = जिमीकंद
feed-plantain = कच्चा केला
feed-plantain_peel = कच्चे केले के छिलके
feed-flour = आटा
feed-maize = मक्का
feed-banana = केला
feed-banana_peel = केले के छिलके
feed-mango = आम
feed-papaya = पपीता
feed-pineapple = अनानास
feed-citrus_peel = नींबू-संतरे के छिलके
feed-melon_rind = तरबूज के छिलके
feed-avocado = एवोकाडो
feed-apple = सेब
feed-fruit_waste = खराब फल
feed-tomato = टमाटर
feed-onion = प्याज
feed-cabbage = पत्ता गोभी
feed-leafy_greens = साग
feed-carrot = गाजर
feed-pumpkin = कद्दू
feed-vegetable_waste = सब्ज़ी का कचरा
feed-beans = राजमा
feed-lentils = दाल
feed-egg = अंडा
feed-meat = मांस
feed-fish = मछली
feed-milk = दूध
feed-whey = छाछ का पानी
feed-cheese = पनीर
feed-cooking_oil = खाने का तेल
feed-fat = चर्बी
feed-sugar = चीनी
feed-sweet_drink = मीठा शरबत
feed-food_waste = जूठन
feed-coffee_grounds = कॉफ़ी का चूरा
feed-tea_leaves = चाय पत्ती
feed-spent_grain = शराब का बचा अनाज
feed-starch_water = माँड़
feed-cattle_manure = गोबर
feed-pig_manure = सूअर का गोबर
feed-chicken_manure = मुर्गी की बीट
feed-goat_manure = बकरी की मेंगनी
feed-horse_manure = घोड़े की लीद
feed-human_waste = शौचालय का मल
feed-digestate = घोल
feed-grass = घास
feed-leaves = पत्ते
feed-water_hyacinth = जलकुंभी
feed-straw = पुआल
feed-bone = हड्डी
feed-eggshell = अंडे के छिलके
feed-wood = लकड़ी
feed-soil = मिट्टी
feed-ash = राख
feed-plastic = प्लास्टिक
feed-paper = कागज़
feed-soap = साबुन
feed-chemical = दवाई या केमिकल

# A text that could not be worked in many tries.
sorry = माफ़ कीजिए, आपका पिछला मैसेज समझ नहीं पाया। वह रखा है। दूसरे शब्दों में फिर लिखिए।
