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
need-silent = चुप
need-rest = आराम पर
need-leak = रिसाव?
need-start_up = शुरुआत
need-watch = नज़र रखें
need-well = ठीक

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
