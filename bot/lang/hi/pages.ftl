# कर्मचारियों के पन्ने हिन्दी में क्या कहते हैं। काम के शब्द, छोटे।

### हर पन्ने पर
nav-skip = सीधे सामग्री पर
nav-today = आज
nav-programme = कार्यक्रम
nav-broadcast = सबको संदेश
nav-setup = लोग और सेटिंग
nav-log-out = बाहर निकलें, { $name }

### तारीख़ें
weekday = { $weekday ->
    [1] सोमवार
    [2] मंगलवार
    [3] बुधवार
    [4] गुरुवार
    [5] शुक्रवार
    [6] शनिवार
   *[7] रविवार
}
month = { $month ->
    [1] जनवरी
    [2] फ़रवरी
    [3] मार्च
    [4] अप्रैल
    [5] मई
    [6] जून
    [7] जुलाई
    [8] अगस्त
    [9] सितंबर
    [10] अक्टूबर
    [11] नवंबर
   *[12] दिसंबर
}
month-short = { $month ->
    [1] जन॰
    [2] फ़र॰
    [3] मार्च
    [4] अप्रैल
    [5] मई
    [6] जून
    [7] जुल॰
    [8] अग॰
    [9] सित॰
    [10] अक्टू॰
    [11] नव॰
   *[12] दिस॰
}
date-full = { weekday } { $day } { month } { $year }
date-day = { $day } { month-short } { $year }
date-short = { $day } { month-short }
date-moment = { $day } { month-short } { $time }
date-full-moment = { $day } { month-short } { $year } { $time }
date-month = { month } { $year }

### अंदर आना
login-title = अंदर आएँ
login-head = कर्मचारी यहाँ से आएँ
login-name = नाम
login-password = पासवर्ड
login-enter = अंदर आएँ
login-wait = इस नाम से बहुत बार कोशिश हुई। पाँच मिनट रुककर फिर कोशिश करें।
login-wrong = नाम और पासवर्ड मेल नहीं खाते। फिर कोशिश करें।

### जो नहीं हो सका
broken-head = यह नहीं हो सका
broken-back = आज पर लौटें
broken-here = यहाँ कुछ बिगड़ गया। कुछ खोया नहीं; थोड़ी देर में फिर कोशिश करें।
broken-no-page = ऐसा कोई पन्ना नहीं है।
broken-role = आपकी भूमिका में इसकी अनुमति नहीं; प्रमुख से पूछें।
broken-no-household = परिवार { $id } नहीं है।
broken-no-broadcast = सबको संदेश { $id } नहीं है।

### आज
today-none = अभी किसी परिवार ने नहीं लिखा। परिवारों को नंबर दें: पहला संदेश आते ही वे यहाँ दिखेंगे।
today-pressing = { $n ->
    [0] किसी के यहाँ जाना बाकी नहीं।
    [one] एक परिवार को किसी की ज़रूरत है।
   *[other] { $n } परिवारों को किसी की ज़रूरत है।
}
today-find-label = नाम या संख्या से परिवार ढूँढें
today-find = ढूँढें
today-by-need = ज़रूरत के अनुसार
today-all = सब { $n }
today-none-fits = कोई परिवार नहीं मिला।
today-show-all = सब दिखाएँ
today-last = { $n ->
    [0] पिछला संदेश आज
    [1] पिछला संदेश कल
   *[other] पिछला संदेश { $n } दिन पहले
}
today-last-never = अभी कोई संदेश नहीं
today-fed = डाला
today-cooked = पकाया
today-risk = जोखिम
today-take = मेरे ज़िम्मे
today-done = हो गया
today-taken-by = { $name } देख रहे हैं।
today-done-by = { $name } ने देख लिया।
today-alarm = { $signs }, { $when } को बताया; किसी ने ज़िम्मा नहीं लिया
today-danger-open = ख़तरा बताया था; अभी देखा नहीं गया
today-asked = { $when } को किसी से बात करने को कहा
today-never = अभी तक नहीं लिखा
today-silent = { $n ->
    [one] { $n } दिन से कोई संदेश नहीं
   *[other] { $n } दिनों से कोई संदेश नहीं
}
today-pages = पन्ने
today-before = पिछला
today-next = अगला
today-page = { $pages } में से { $page }, { $n ->
    [one] { $n } परिवार
   *[other] { $n } परिवार
}
spark-fed = पिछले 30 दिन में डाला: { $n } दिन में { $total } किग्रा
spark-cooked = पिछले 30 दिन में पकाया: { $n } दिन में { $total } मिनट
need-danger = ख़तरा
need-souring = खट्टा हो रहा
need-person = किसी को बुलाया
need-silent = चुप
need-rest = आराम पर
need-leak = रिसाव?
need-start_up = शुरुआत
need-watch = नज़र रखें
need-well = ठीक

### नक्शा
map-title = { $n ->
    [one] नक्शा: एक परिवार
   *[other] नक्शा: { $n } परिवार
}
map-bundle = { $place } के आसपास { $n } परिवार, { $pressing } को किसी की ज़रूरत है; सबसे ज़रूरी: { $need }
map-unplaced = { $n ->
    [one] एक परिवार नक्शे पर नहीं है: उसने कोई जाना हुआ शहर नहीं बताया।
   *[other] { $n } परिवार नक्शे पर नहीं हैं: उन्होंने कोई जाना हुआ शहर नहीं बताया।
}
map-more = { $n ->
    [one] एक और सिर्फ़ सूची में है।
   *[other] { $n } और सिर्फ़ सूची में हैं।
}

### प्रोग्रामों के टोकन
tokens-head = मशीन से पढ़ना
tokens-what = टोकन से दूसरा प्रोग्राम पढ़ सकता है; नंबर और संदेश कभी नहीं दिए जाते। क्या पढ़ा जा सकता है, यहाँ लिखा है:
tokens-name = किसे मिलेगा
tokens-scope = पढ़ सकता है
scope-read = जो बताया और सलाह दी गई, बिना नाम
scope-people = जो बताया और सलाह दी गई, नाम और जगह के साथ
tokens-make = टोकन बनाएँ
tokens-new = { $name } का टोकन
tokens-once = अभी नक़ल कर लें: यह सिर्फ़ इसी बार दिखता है। सुरक्षित रास्ते से ही दें।
tokens-remove = वापस लें
tokens-remove-of = { $name } का टोकन वापस लें
tokens-removed = { $name } का टोकन अब कुछ नहीं खोलता।
tokens-none = अभी कोई टोकन नहीं है।
form-token-there = { $name } का टोकन पहले से है; पहले उसे वापस लें, या दूसरा नाम दें।
form-token-gone = { $name } का कोई टोकन नहीं है; शायद पहले ही वापस ले लिया गया।

### मुलाक़ात की तस्वीरें
photo-take = तस्वीरें
photo-how = ज़्यादा से ज़्यादा 4, JPEG, PNG या WebP. बाहर और गैस से दूर लें; पहले परिवार से पूछें। कहाँ और किससे ली गई, यह नहीं रखा जाता।
photo-alt = मुलाक़ात की तस्वीर { $name }
photo-remove = हटाएँ
photo-remove-of = तस्वीर { $name } हटाएँ
form-unread = फ़ॉर्म पूरा नहीं पहुँचा; फिर से भेजें।
form-photo-many = ज़्यादा से ज़्यादा { $n } तस्वीरें दें; कुछ नहीं रखा गया।
form-photo-kind = तस्वीर JPEG, PNG या WebP होनी चाहिए; कुछ नहीं रखा गया। फ़ोन के कैमरे से फिर लें।
form-photo-big = एक तस्वीर ज़्यादा से ज़्यादा { $n } MB और हर ओर 10,000 बिंदु की हो; कुछ नहीं रखा गया। कैमरे का आकार छोटा करें।
form-photo-damaged = एक तस्वीर ख़राब है और पढ़ी नहीं जाती; कुछ नहीं रखा गया। फिर से लें।

### कार्यक्रम के आँकड़े साथ ले जाने के लिए
out-head = साथ ले जाने के लिए
out-xlsx = हर परिवार और महीने की एक पंक्ति, वर्कबुक में (XLSX)
out-from = रिपोर्ट किस महीने से
out-to = किस महीने तक (ख़ाली: सिर्फ़ वही)
out-report = छापने की रिपोर्ट
report-title = कार्यक्रम की रिपोर्ट, { $name }
report-span = { $first } से { $last }
report-made = { $name } के लिए { $date } को बनी।
report-print = अपने ब्राउज़र के मेनू से छापें।
report-households = कार्यक्रम में परिवार
form-rows-many = ये { $n } पंक्तियाँ हैं, एक वर्कबुक में नहीं आतीं; कम महीने माँगें या CSV लें।
column-household = परिवार
column-name = नाम
column-days_told = बताए गए दिन
column-water_l = पानी, लीटर
column-cooked_min = पकाया, मिनट
column-spared_fuel = बचा ईंधन
column-non_renewable_share = हिस्सा जो दोबारा नहीं उगता
column-spared_fuel_kg = बचा ईंधन, किग्रा
column-texts_in = संदेश आए
column-texts_out = संदेश गए

### एक परिवार की कहानी
house-closed = यह कहानी बंद है: टंकी ख़ाली हुई और दूसरी संख्या पर फिर शुरू हुई।
house-goes-on = आगे की कहानी संख्या { $name } पर है
house-before = पहले की कहानी संख्या { $name } पर है
house-danger = ख़तरा।
house-alarm = { $signs }, { $when } को बताया: "{ $said }"
house-take = मेरे ज़िम्मे
house-doing = उन्हें अभी यह कहा गया
figure-risk = खट्टा होने का जोखिम, 14 दिन
figure-olr = OLR, 7 दिन
figure-olr-is = { $n } kg VS/m3/d
figure-hrt = HRT, 7 दिन
figure-ts = जाने वाला TS
figure-slurry = घोल
figure-gas = आज गैस
figure-started = शुरू हुई
figure-no-feed = कुछ नहीं डाला
not-told = नहीं बताया
nobody = कोई नहीं
if-lead = अगर रोज़ डालें
if-kg = किलो रोज़
if-kg-with = किग्रा और
if-litres = लीटर पानी रोज़
if-each-day = लीटर पानी?
if-look = 14 दिन आगे देखें
if-wrong = रोज़ के किलो और लीटर 0 से { $most } तक की संख्या में दें।
if-told = रोज़ { $kg } किग्रा वही मिश्रण और { $water } लीटर पानी: { $days } दिन में OLR { $olr } kg VS/m3/d, HRT { $hrt }, खट्टा होने का जोखिम { $risk }%, गैस { $gas } मिनट रोज़। तब बॉट कहेगा: { $verdict }, { $ration } किग्रा तक।
if-no-end = अनंत
if-chart = अगले दो हफ़्ते, दिन-ब-दिन
verdict-feed = खाना डालें
verdict-less = कम डालें
verdict-hold = खाना नहीं
verdict-water = पानी डालें
verdict-warm = गर्म रखें
verdict-check = कुछ जाँचें
verdict-danger = ख़तरा
story-head = टंकी की कहानी
story-span = कितने पीछे तक
span-30 = 30 दिन
span-120 = 120 दिन
span-365 = एक साल
span-1826 = 5 साल
story-chart = रोज़ का चित्र
story-weeks = हर रेखा एक हफ़्ते का औसत है।
chart-label = परिवार की कहानी, दिन-ब-दिन
chart-read = एक दिन पढ़ें
chart-dashes = (डैश: { $name })
chart-dots = (बिंदु: { $name })
chart-fed = डाला, किग्रा रोज़
chart-advised = बताई गई मात्रा
chart-other = बाक़ी
chart-water = पानी, लीटर रोज़
chart-olr = 7 दिन का OLR, kg VS/m3/d
chart-most = सीमा, बिना हिलाए
chart-cooked = पकाया, मिनट रोज़
chart-gas = जितनी गैस सोची थी
chart-made = बनी गैस, मिनट रोज़: अनुमान
chart-left = भंडार में बची
chart-risk = 14 दिन में खट्टा होने की संभावना, %
chart-slurry = घोल, °C: अनुमान
chart-told = नापा हुआ
chart-ph = pH: अनुमान
chart-ph-told = नापा हुआ pH
chart-acids = अम्ल (VFA), g/L एसिटिक अम्ल जितने: अनुमान
chart-signs = बताए गए लक्षण
days-go = रोज़ का हिसाब पढ़ें
days-head = रोज़ का हिसाब
days-how = सबसे नया दिन पहले। डाला हुआ, पानी, पकाना, घोल और लक्षण जैसे बताए गए; * वाला pH नापा हुआ है, बाक़ी अनुमान है।
days-day = दिन
days-advised = सुझाई मात्रा, किग्रा
days-olr = OLR, kg VS/m3/d
days-gas = गैस का अनुमान, मिनट: बनी / बची
days-slurry = घोल नापा, °C
days-ph = pH
days-acids = अम्ल का अनुमान, g/L
talk-head = बातचीत
talk-none = अभी कोई संदेश नहीं।
talk-why = क्यों
talk-note = { $verdict } · मात्रा { $kg } किग्रा, { $water } लीटर · जोखिम { $risk }% · { $segments }
segments = { $n ->
    [one] { $n } खंड
   *[other] { $n } खंड
}
trail-head = कर्मचारियों की टिप्पणियाँ और काम
trail-new = नई टिप्पणी
trail-keep = रखें
did-noted = { $by }: { $words }
did-took_alarm = { $by } ने ख़तरे का अलार्म अपने ज़िम्मे लिया।
did-sees_to_it = { $by } ने इसे अपने ज़िम्मे लिया।
did-has_seen_to_it = { $by } ने देख लिया।
did-told_danger = { $by } ने परिवार की ओर से ख़तरा बताया।
did-told_facts = { $by } ने परिवार की ओर से हाल बताया।
did-asked_history = { $by } ने पिछला हाल पूछा।
did-told_family = { $by } ने परिवार से कहा: { $words }
did-took_over = { $by } ने परिवार को अपने ज़िम्मे लिया।
did-handed_back = { $by } ने परिवार का ज़िम्मा लौटाया।
did-lifted_cap = { $by } ने एक दिन के लिए संदेशों की सीमा हटाई।
did-added_phone = { $by } ने एक फ़ोन जोड़ा।
did-took_phone_off = { $by } ने एक फ़ोन हटाया।
did-told_measure = { $by } ने बताया कि उनके नाप ({ $measure }) में { $litres } L आता है।
did-ended_reminders = { $by } ने याद दिलाना बंद किया।
did-began_reminders = { $by } ने परिवार के कहने पर याद दिलाना फिर शुरू किया।
did-began_anew = { $by }: टंकी फिर से शुरू हुई; अब तक की कहानी संख्या { $id } पर है।
did-closed_story = { $by } ने यह कहानी बंद की: टंकी ख़ाली करके फिर भरी गई।
did-changed_settings = { $by } ने जानकारी बदली।
did-changed_settings_to = { $by } ने जानकारी बदली: { $settings }
did-visited = { $by } वहाँ गए। { $errand }
did-took_photo_away = { $by } ने एक फ़ोटो हटाई।
did-set_up = { $by } ने परिवार को दर्ज किया; वे संदेश पाने को राज़ी हैं।
did-asked_needs = { $by } ने पूछा कि किसे ज़रूरत है।
did-asked_more = { $by } ने और पूछा।
did-set_pin = { $by } ने PIN चुना।
did-gave_pin = { $by } ने PIN दिया।
did-gave_wrong_pin = { $by } ने ग़लत PIN दिया।
did-gave_no_pin = { $by } ने जो दिया वह PIN नहीं है।
did-tried_while_locked = { $by } ने ताला लगे होने पर PIN दिया।
did-got_locked = { $by } पर ग़लत PIN के बाद ताला लगा।
did-added_staff = { $by } ने { $name } को जोड़ा: { $role }।
did-changed_staff = { $by } ने { $name } को बदला: अब { $role }।
did-gave_password = { $by } ने { $name } को नया पासवर्ड दिया।
did-freed_of_pin = { $by } ने { $name } का PIN मिटाया।
did-took_off_staff = { $by } ने { $name } को कर्मचारियों से हटाया।
did-made_token = { $by } ने { $name } के लिए टोकन बनाया: { $scope }।
did-took_token_back = { $by } ने { $name } का टोकन वापस लिया।
did-set_call = { $by } ने { $country } में फ़ोन करने का नंबर रखा: { $number }।
did-set_call_back = { $by } ने { $country } में पहले वाला नंबर फिर लागू किया।
did-taught_word = { $by } ने { $place } का एक शब्द सिखाया: { $word } का मतलब { $feed }।
did-took_word_away = { $by } ने शब्द { $word } हटाया।
did-set_keeping = { $by } ने तय किया कि संदेशों के शब्द { $n } दिन रखे जाएँ।
did-set_keeping_ever = { $by } ने तय किया कि संदेश हमेशा रखे जाएँ।
did-pin_for_all = { $by } ने तय किया कि PIN सबको चाहिए।
did-pin_for_some = { $by } ने PIN हर एक की मरज़ी पर छोड़ा।
did-sent_broadcast = { $by } ने { $n ->
    [one] { $n } परिवार
   *[other] { $n } परिवारों
} को "सबको संदेश" भेजा ({ $audience }): { $words }
did-stopped_broadcast = { $by } ने "सबको संदेश" { $id } रोका; { $n } संदेश नहीं गए।
nothing-yet = अभी कुछ नहीं।
visits-head = दौरे
visits-none = अभी कोई वहाँ नहीं गया।
visits-before = पहले के दौरे
visit-go-new_tank = नई टंकी जाँचें
visit-go-fault = ख़राबी देखें
phones-head = फ़ोन और याद दिलाना
phone-by = { $name } से
phone-stopped = STOP कहा: कुछ नहीं मिलता
phone-off = हटाएँ
phone-off-label = { $name } हटाएँ
phone-none = कोई फ़ोन नहीं।
phone-another = उनका दूसरा नंबर
gateway = गेटवे
phone-add = जोड़ें
reminders-are-off = याद दिलाना बंद है।
reminders-are-on = याद दिलाना चालू है।
reminders-again = उन्होंने फिर माँगा
reminders-end = याद दिलाना बंद करें
restart-head = टंकी ख़ाली करके फिर भरी गई, या परिवार कहीं और गया
restart-fine = कहानी नई संख्या पर फिर शुरू होती है, वही फ़ोन, वही नाप। पहले की कहानी यहाँ पढ़ी जा सकती है।
restart-manure = शुरुआती गोबर, किग्रा
restart-place = परिवार कहीं और गया हो तो अब टंकी कहाँ है: क़स्बा
restart-sure = आज ख़ाली करके फिर भरी गई
restart-do = फिर शुरू करें
settings-head = टंकी और परिवार
set-name = नाम
set-place = जगह
set-tank_l = टंकी, लीटर
set-liquid_l = निकास तक घोल, लीटर
set-store_l = गैस बैग, लीटर
set-people = खाने वाले लोग
set-started = पहली बार भरी गई
set-walls = दीवारें
set-lang = हम लिखते हैं
set-staff = क्षेत्र कर्मचारी
set-keep = बदलाव रखें
walls-black = काली
walls-white = सफ़ेद
walls-insulated = गर्म ढकी हुई
walls-greenhouse = ग्रीनहाउस में
walls-heated = गर्म की हुई
walls-buried = ज़मीन में
holds-lead = उनके नाप
holds-measure = नाप
holds-holds = में आता है
holds-litres = लीटर
told-head = क्या बताया गया, और किस दिन से
told-liquid = निकास तक घोल { $n } लीटर
told-started = पहली बार भरी गई

### दौरे
visit-title = { $name } के यहाँ दौरा
visit-for = दौरा किसलिए
errand-new_tank = नई टंकी की जाँच
errand-fault = ख़राबी की जाँच
errand-short-new_tank = नई टंकी
errand-short-fault = ख़राबी
visit-cautions = जहाँ गैस हो सकती है वहाँ न आग, न फ़ोन, न स्विच; टंकी या गड्ढे पर कभी न झुकें, कभी अंदर न जाएँ। अंडे जैसी बू वाली गैस ज़हर है। गैस के जोड़ लाइसेंस वाले मिस्त्री का काम हैं, और स्थानीय नियम इस सूची से पहले आते हैं; यह सूची आम चलन है।
mark-good = ठीक
mark-bad = सुधारना है
mark-none = नहीं देखा
visit-note = टिप्पणी
visit-keep = दौरा रखें
visit-told = { $errand }: { $good } ठीक, सुधारना है: { $bad }।
visit-told-good = { $errand }: { $good } ठीक, सुधारने को कुछ नहीं।
check-walls_dark = दीवारें गहरी: घोल तक रोशनी नहीं जाती
check-gas_tight = रिसाव नहीं: हर जोड़ और सिलाई पर साबुन का पानी बुलबुला नहीं बनाता
check-overflow_low = निकास प्रवेश के मुँह से क़रीब 50 मिमी नीचे
check-overflow_open = निकास हवा के लिए खुली टी से होकर जाता है
check-inlet_floor = प्रवेश पाइप 50 मिमी, तले तक, निचला सिरा 45 डिग्री पर कटा
check-outlet_middle = निकास आधी ऊँचाई पर, प्रवेश के सामने तिरछा
check-gas_high = गैस का मुँह ऊपर से क़रीब 20 मिमी नीचे; पाइप पानी की रेखा से ऊपर
check-pipe_seals = जहाँ पाइप दीवार से गुज़रते हैं वहाँ सील कसी हैं
check-valve = गैस वाल्व आसानी से घूमता और बंद होता है; आधा इंच, जोड़ चिपके नहीं
check-water_trap = गैस पाइप के सबसे नीचे पानी का जाल, ख़ाली किया हुआ
check-bag = गैस बैग साबुत, छाया में, बँधा हुआ, पास कुछ नुकीला नहीं
check-hose = पाइप और चूल्हे के जोड़ बिना दरार, क्लैंप लगे
check-inlet_free = प्रवेश खुला: डाला पानी नीचे जाता है
check-outlet_free = निकास खुला: जितना जाता है उतना निकलता है
check-level = घोल निकास के बराबर है
check-flame_blue = लौ स्थिर और नीली
check-flame_far = आग और चिनगारी टंकी, बैग, पाइप से दूर; रसोई हवादार
check-nobody_falls_in = ढक्कन बंद; बच्चा या जानवर गिर नहीं सकता; गड्ढे पर बाड़
check-family_told = परिवार जानता है: गैस फटती है, अंडे की बू ज़हर है, हाथ धोएँ, अंदर कभी न जाएँ

### कार्यक्रम
prog-months = कितने महीने पीछे
prog-fuel = पहले किस पर पकाते थे
prog-share = लकड़ी का हिस्सा जो दोबारा नहीं उगता, 0 से 1
prog-work-out = हिसाब करें
prog-by-month = महीने के अनुसार
prog-by-place = जगह के अनुसार
prog-month = महीना
prog-place = जगह
prog-no-place = जगह नहीं बताई
prog-nothing = इन महीनों में कुछ नहीं बताया गया।
prog-heard = जिन परिवारों ने लिखा
prog-working = गैस पर पकाते हैं
prog-fed = डाला, किग्रा
prog-slurry = निकला घोल, लीटर
prog-hours = पकाया, घंटे
prog-gas = जली गैस, घन मी
prog-spared = बची { $name }, किग्रा
prog-co2e = बचा CO2e, किग्रा
prog-texts = संदेश आए / गए
prog-segments = चुकाए खंड
prog-csv = हर परिवार और महीने की एक पंक्ति, CSV में
prog-how = हिसाब कैसे होता है
prog-method = सिर्फ़ वही गैस गिनी जाती है जो परिवारों ने जलाई बताई: चूल्हे के मिनट, 300 लीटर बायोगैस प्रति घंटा ({ $methane }% मीथेन, नम, { $celsius } °C)। बचा ईंधन वह है जो बर्तन में उतनी ही गर्मी दे: गैस चूल्हा 55%, तीन पत्थर 12%, कोयला चूल्हा 25%, बत्ती चूल्हा 45%। CO2e 100 साल पर, AR6 के मान और IPCC 2006 के गुणांक, AMS-I.E के रूप में, कहीं और के 5% रिसाव घटाकर; ईंधन ({ $name }) का { $share } हिस्सा दोबारा न उगने वाला माना; रिसी मीथेन घटाकर, जहाँ किसी ने नहीं नापा वहाँ बनी गैस का { $leak }%। निकला घोल उतना ही है जितना गया। ये अनुमान हैं; क्रेडिट के दावे के लिए अलग सर्वेक्षण चाहिए।
fuel-wood = लकड़ी
fuel-charcoal = कोयला
fuel-lpg = एलपीजी
fuel-kerosene = मिट्टी का तेल

### सबको संदेश
cast-title = सबको संदेश { $name }
cast-text = आपके शब्द, जैसे वे आपके नाम के बाद हर परिवार को जाएँगे
cast-lang = भाषा
cast-place = जगह
cast-staff = क्षेत्र कर्मचारी
cast-need = ज़रूरत
cast-all-langs = सब भाषाएँ
cast-all-places = सब जगहें
cast-all-staff = सब कर्मचारी
cast-all-needs = कोई भी ज़रूरत
cast-nobody = कोई मेल नहीं खाता।
cast-would = { $n ->
    [one] { $n } परिवार
   *[other] { $n } परिवार
}, { $segments } का ख़र्च।
cast-without = { $n } और मेल खाते हैं, पर उन्होंने STOP या MUTE कहा या फ़ोन नहीं है: उन्हें कुछ नहीं मिलेगा।
cast-when = पहला { $first } को जाएगा, आख़िरी { $last } को; रात में हर एक अपनी सुबह का इंतज़ार करता है। एक सेकंड में ज़्यादा से ज़्यादा एक।
cast-send = { $n } को भेजें
cast-look = भेजने से पहले देखें
cast-look-again = फिर देखें
cast-before = पहले भेजे गए
cast-row = { $when }, { $staff }, { $audience } को · { $progress } · { $state }
cast-progress = { $all } में से { $sent } भेजे गए
cast-done = पूरा हुआ
cast-going = जा रहा है
cast-stopped = { $name } को रोका
cast-everybody = सब परिवार
cast-to = { $when }, { $staff }, { $audience } को
cast-sent = भेजे गए
cast-waiting = इंतज़ार में
cast-not-sent = नहीं भेजे
cast-last = आख़िरी जाएगा
cast-stop = रोकें: { $n } नहीं जाएँगे
cast-see = देखें कहाँ तक पहुँचा
cast-all = सब संदेश

### लोग और सेटिंग
setup-on-page = इस पन्ने पर
setup-staff = कर्मचारी
setup-household = नया परिवार
setup-gateways = गेटवे
setup-words = खाने के नाम
setup-numbers = मदद के नंबर
setup-keeping = संदेश कब तक रखे जाएँ
setup-wording = बॉट के वाक्य
setup-trail = कर्मचारियों ने क्या बदला
role-viewer = दर्शक
role-field = क्षेत्र कर्मचारी
role-lead = प्रमुख
role-long-viewer = दर्शक: देखता है, नंबर छिपे हुए
role-long-field = क्षेत्र कर्मचारी: परिवारों के लिए काम करता है
role-long-lead = प्रमुख: लोग और नियम तय करता है
staff-no-phone = फ़ोन नहीं
staff-phone = { $number }, { $gateway } से
staff-no-log-in = अंदर नहीं आता
staff-has-pin = PIN है
staff-change = बदलें
staff-change-of = { $name } को बदलें
staff-role-of = { $name } की भूमिका
staff-lang-of = { $name } की भाषा
staff-new-password = नया पासवर्ड
staff-free-pin = PIN हटाएँ
staff-pin-all = संदेश से काम में सबको दिन में एक बार PIN देना है।
staff-pin-own = संदेश से काम में PIN उसी से पूछा जाता है जिसने चुना है।
staff-pin-leave = हर एक पर छोड़ें
staff-pin-need = सबको PIN चाहिए
staff-add-head = किसी को जोड़ें
staff-add = जोड़ें
staff-role = भूमिका
staff-lang = भाषा
number-texts = जिस नंबर से लिखते हैं
family-head = नया परिवार, या दूसरी टंकी
family-fine = दूसरी टंकी का अपना हिसाब होता है: उसे अपना नाम और अपना नंबर दें। जो परिवार ख़ुद लिखता है वह इस फ़ॉर्म के बिना दिखता है।
family-town = सबसे पास का शहर
family-agreed = वे संदेश पाने को राज़ी हैं
family-do = जोड़ें
traffic-head = गेटवे, पिछले 24 घंटे
traffic-none = कोई गेटवे नहीं लगा है।
traffic-state = हाल
traffic-in = आए
traffic-last-in = आख़िरी
traffic-sent = भेजे
traffic-delivered = पहुँचने की सूचना
traffic-lost = नहीं लिए गए
traffic-waiting = इंतज़ार में
traffic-stuck = संदेश रुके हैं
traffic-stuck-why = संदेश रुके हैं: { $name }
traffic-many-lost = बहुत से नहीं लिए गए
traffic-quiet = एक दिन से शांत
traffic-well = ठीक
traffic-never = कोई नहीं
ago-now = अभी
ago-minutes = { $n } मिनट पहले
ago-hours = { $n } घंटे पहले
words-head = ज़िले में खाने के नाम
words-fine = यहाँ एक बार सिखाया शब्द वहाँ के हर परिवार के संदेश में समझा जाता है।
words-word = उनका शब्द
words-means = मतलब
words-country = देश, दो अक्षर
words-place = सिर्फ़ जहाँ जगह हो (ख़ाली: पूरा देश)
words-teach = सिखाएँ
words-none = अभी कोई शब्द नहीं सिखाया।
words-by = { $name } ने सिखाया
words-off = हटाएँ
words-off-label = { $name } हटाएँ
call-head = ख़तरे में किस नंबर पर फ़ोन करें
call-fine = ख़तरे के संदेश में यह नंबर आता है। देश के अधिकारी से पूछें; जहाँ नंबर न पता हो, संदेश मदद बुलाने को कहता है।
call-number = नंबर (ख़ाली: पहले वाला)
call-set = तय करें
call-all = सब { $n } नंबर
call-own = यहाँ तय किया
keep-days = संदेशों के शब्द कितने दिन में भुलाए जाएँ (ख़ाली: कभी नहीं)। मात्रा, तारीख़ और सलाह रहती हैं; चुकाए खंड उससे पीछे नहीं गिने जाते।
said-password = { $name } पासवर्ड { $password } से अंदर आ सकते हैं। यह सिर्फ़ इस बार दिखाया गया।
said-new-password = { $name } का नया पासवर्ड { $password } है। यह सिर्फ़ इस बार दिखाया गया।
said-role = { $name } अब { $role } हैं।
said-lang = { $name } अगली बार अंदर आने से { $lang } पढ़ेंगे।
said-pin-free = { $name } जो अगला PIN लिखेंगे वही उनका होगा।
said-off = { $name } अब कर्मचारी नहीं; उनके परिवार अब किसी के नहीं।
said-call-built-in = { $country } में फिर पहले वाला नंबर लागू है।
said-call = ख़तरे में { $country } के परिवारों को { $number } पर फ़ोन करने को कहा जाएगा।
said-word-off = शब्द हटा दिया।
said-word = { $place } में अब से { $word } का मतलब { $feed } है।
said-keep = संदेशों के शब्द { $n } दिन बाद भुला दिए जाते हैं; टंकी के बारे में बताया हुआ रहता है।
said-keep-ever = संदेश हमेशा रखे जाते हैं।
said-pin-all = जिसके पास PIN नहीं उसे किसी परिवार की बात बताने से पहले चुनने को कहा जाएगा।
said-pin-own = जिसके पास PIN नहीं उसे उसके बिना परिवारों की बात बताई जाती है।

### बॉट के वाक्य
wording-title = { $name } में बॉट के वाक्य
wording-lead = { $n } वाक्य और वाक्य के हिस्से, { $long } अकेले ही एक खंड से लंबे। संदेश इन्हीं से बनता है और जगह के हिसाब से छोटा होता है।
wording-letters = { $n ->
    [one] { $n } अक्षर
   *[other] { $n } अक्षर
}
wording-dear = दो बाइट के अक्षर

### पन्ने पर फ़ोन
try-title = आज़माने का फ़ोन
try-phone = फ़ोन
try-staff = कर्मचारियों के पन्ने
try-choose = पास से एक परिवार चुनें, या नया परिवार बनें। फिर वैसे लिखें जैसे वह परिवार लिखता।
try-screen = फ़ोन का पर्दा
try-empty = अभी कोई संदेश नहीं। नमस्ते कहें, या बताएँ क्या डाला।
try-text = आपका संदेश
try-send = भेजें
try-filling = पिछले दिन जिए जा रहे हैं
try-filling-fine = हर परिवार { $n } दिन तक संदेश भेजता है। जो पूरे हो गए उन्हें चुना जा सकता है।
try-again = फिर देखें
try-whose = किसका फ़ोन?
try-day-of = { $days } में से दिन { $day }
try-new = नया परिवार बनें
try-new-family = नया परिवार
try-invented = परिवार, नाम और नंबर मनगढ़ंत हैं, और यह भी कि कौन किस शहर में रहता है और वहाँ का मौसम; बॉट उनसे जो कहता है वह हिसाब से निकला है।
try-time = समय
try-now = अभी { $name } है।
try-day = एक दिन बीतने दें
try-cautions = सावधानियाँ
try-caution-burns = बायोगैस जलती है, हवा में मिलकर फटती है। टंकी, बैग या पाइप के पास आग नहीं।
try-caution-poison = सड़े अंडे जैसी बू वाली गैस ज़हर है; तेज़ हो तो बू आती ही नहीं।
try-caution-germs = घोल में कीटाणु हैं: हाथ धोएँ। टंकी या गड्ढे में कभी न जाएँ, किसी के पीछे भी नहीं।
try-caution-codes = संदेश सलाह हैं। स्थानीय नियम और लाइसेंस वाले मिस्त्री पहले आते हैं।

### फ़ॉर्म में जो लिखा गया और लिया नहीं जा सकता
form-letters = 1 से { $most } अक्षरों का संदेश लिखें।
form-nobody-fits = कोई मेल नहीं खाता; कुछ नहीं भेजा गया।
form-text-long = संदेश दो खंडों में नहीं आता; छोटा लिखें। कुछ नहीं भेजा गया।
form-not-theirs = यह नंबर उनका नहीं है।
form-number-needed = वह नंबर दें जिससे वे संदेश भेजते हैं।
form-number-stopped = इस नंबर ने STOP कहा था; START इसका मालिक ही लिख सकता है।
form-number-household = यह नंबर परिवार { $id } का है; पहले वहाँ से हटाएँ।
form-number-staff = यह नंबर { $name } का है।
form-number-taken = यह नंबर किसी परिवार या कर्मचारी का है, या STOP कह चुका है; दूसरा दें।
form-number-shape = नंबर + और देश के कोड के साथ दें, जैसे +254700000000।
form-choose = सूची में से एक चुनें।
form-measure-litres = बताएँ उसमें कितने लीटर आते हैं, 0 से ज़्यादा और { $most } तक।
form-restart-sure = निशान लगाएँ कि टंकी ख़ाली करके फिर भरी गई; कुछ नहीं बदला।
form-starter = शुरुआती गोबर किलो में दें, या ख़ाली छोड़ें।
form-closed = यह कहानी पहले ही बंद है; टंकी दूसरी संख्या पर फिर शुरू हुई।
form-agreed = पहले परिवार से पूछें; जो संदेश पाने को राज़ी हों वही जोड़े जाते हैं।
form-no-town = बॉट { $name } नाम का शहर नहीं जानता; सबसे पास का या ज़िले का शहर दें।
form-above = { $field ->
    [tank_l] टंकी
    [liquid_l] घोल
    [people] लोग
   *[store_l] गैस बैग
}: 0 से ज़्यादा और { $most } तक की संख्या दें।
form-slurry-fits = { $liquid } लीटर घोल { $tank } लीटर की टंकी में नहीं आता; एक को सुधारें।
form-date = भरने का दिन साल-महीना-दिन में दें, जैसे 2026-03-01।
form-date-range = भरने का दिन पिछले 30 साल में होना चाहिए।
form-call-digits = मदद का नंबर अंकों में दें, 15 तक।
form-country = देश के दो अक्षर दें, जैसे KE।
form-word-taught = यह शब्द वहाँ पहले से सिखाया है; पहले उसे हटाएँ।
form-word-shape = नाम 1 से { $most } शब्दों में दें, बिना अंकों के।
form-word-danger = बॉट इस शब्द को ख़तरा समझता है; यह खाने का नाम नहीं हो सकता।
form-word-else = बॉट इस शब्द को कुछ और समझता है; इसे दूसरी तरह लिखें।
form-word-known = बॉट यह शब्द पहले से जानता है: { $feed }।
form-days = पूरे दिन दें, कम से कम { $least }, या हमेशा के लिए ख़ाली छोड़ें।
form-name-letters = 1 से { $most } अक्षरों का नाम दें।
form-staff-there = { $name } पहले से है; उसे बदलें या दूसरा नाम दें।
form-staff-none = कर्मचारियों में { $name } नहीं है।
form-staff-last = { $name } आख़िरी प्रमुख है जो अंदर आ सकता है; पहले दूसरा बनाएँ।
form-staff-number = यह नंबर किसी और कर्मचारी का है।
form-visit-empty = कम से कम एक निशान लगाएँ या कुछ लिखें; कुछ नहीं रखा गया।
