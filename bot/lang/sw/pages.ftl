# Kurasa za wafanyakazi kwa Kiswahili. Maneno ya kazi, mafupi.

### Juu ya kila ukurasa
nav-skip = Nenda kwenye maudhui
nav-today = Leo
nav-programme = Mradi
nav-broadcast = Ujumbe kwa wengi
nav-setup = Watu na mipangilio
nav-log-out = Toka, { $name }

### Tarehe
weekday = { $weekday ->
    [1] Jumatatu
    [2] Jumanne
    [3] Jumatano
    [4] Alhamisi
    [5] Ijumaa
    [6] Jumamosi
   *[7] Jumapili
}
month = { $month ->
    [1] Januari
    [2] Februari
    [3] Machi
    [4] Aprili
    [5] Mei
    [6] Juni
    [7] Julai
    [8] Agosti
    [9] Septemba
    [10] Oktoba
    [11] Novemba
   *[12] Desemba
}
month-short = { $month ->
    [1] Jan
    [2] Feb
    [3] Mac
    [4] Apr
    [5] Mei
    [6] Jun
    [7] Jul
    [8] Ago
    [9] Sep
    [10] Okt
    [11] Nov
   *[12] Des
}
date-full = { weekday } { $day } { month } { $year }
date-day = { $day } { month-short } { $year }
date-short = { $day } { month-short }
date-moment = { $day } { month-short } { $time }
date-full-moment = { $day } { month-short } { $year } { $time }
date-month = { month } { $year }

### Kuingia
login-title = Ingia
login-head = Wafanyakazi ingieni hapa
login-name = Jina
login-password = Nenosiri
login-enter = Ingia
login-wait = Majaribio mengi mno kwa jina hili. Subiri dakika tano, kisha jaribu tena.
login-wrong = Jina na nenosiri havilingani. Jaribu tena.

### Kilichoshindikana
broken-head = Hiyo haikufanikiwa
broken-back = Rudi kwenye leo
broken-here = Kuna hitilafu hapa. Hakuna kilichopotea; jaribu tena baada ya muda mfupi.
broken-no-page = Hakuna ukurasa kama huo.
broken-role = Wadhifa wako hauruhusu hili; muulize msimamizi.
broken-no-household = Hakuna kaya { $id }.
broken-no-broadcast = Hakuna ujumbe kwa wengi { $id }.

### Leo
today-none = Hakuna kaya iliyotuma ujumbe bado. Zipe familia namba: ujumbe wao wa kwanza unazionyesha hapa.
today-pressing = { $n ->
    [0] Hakuna anayesubiri kutembelewa.
    [one] Kaya moja inahitaji mtu.
   *[other] Kaya { $n } zinahitaji mtu.
}
today-find-label = Tafuta kaya kwa jina au namba
today-find = Tafuta
today-by-need = Kwa hitaji
today-all = Zote { $n }
today-none-fits = Hakuna kaya inayolingana.
today-show-all = Onyesha zote
today-last = { $n ->
    [0] ujumbe wa mwisho leo
    [1] ujumbe wa mwisho jana
   *[other] ujumbe wa mwisho siku { $n } zilizopita
}
today-last-never = hakuna ujumbe bado
today-fed = lishe
today-cooked = kupika
today-risk = hatari
today-take = Nitashughulikia
today-done = Tayari
today-taken-by = { $name } anashughulikia.
today-done-by = Imeshughulikiwa na { $name }.
today-alarm = { $signs }, iliripotiwa { $when }; hakuna aliyeichukua
today-danger-open = Hatari iliripotiwa; bado haijashughulikiwa
today-asked = Aliomba kuzungumza na mtu { $when }
today-never = Hajatuma ujumbe bado
today-silent = { $n ->
    [one] Siku moja bila ujumbe
   *[other] Siku { $n } bila ujumbe
}
today-pages = Kurasa
today-before = Nyuma
today-next = Mbele
today-page = { $page } kati ya { $pages }, { $n ->
    [one] kaya { $n }
   *[other] kaya { $n }
}
spark-fed = Lishe ya siku 30 zilizopita: kg { $total } kwa siku { $n }
spark-cooked = Kupika kwa siku 30 zilizopita: dak { $total } kwa siku { $n }
need-danger = Hatari
need-souring = Inachacha
need-person = Anaomba mtu
need-silent = Kimya
need-rest = Inapumzika
need-leak = Inavuja?
need-start_up = Inaanza
need-watch = Angalia
need-well = Salama

### Ramani
map-title = { $n ->
    [one] Ramani: kaya moja
   *[other] Ramani: kaya { $n }
}
map-bundle = Kaya { $n } karibu na { $place }, { $pressing } zinahitaji mtu; la haraka zaidi: { $need }
map-unplaced = { $n ->
    [one] Kaya moja haipo kwenye ramani: haikutaja mji unaojulikana.
   *[other] Kaya { $n } hazipo kwenye ramani: hazikutaja mji unaojulikana.
}
map-more = { $n ->
    [one] Nyingine moja ipo kwenye orodha tu.
   *[other] Nyingine { $n } zipo kwenye orodha tu.
}

### Tokeni za programu
tokens-head = Kusoma kwa mashine
tokens-what = Tokeni huruhusu programu nyingine kusoma; namba na ujumbe havitolewi kamwe. Yanayoweza kusomwa yameelezwa hapa:
tokens-name = Anayepewa
tokens-scope = Inaweza kusoma
scope-read = yaliyosemwa na ushauri, bila majina
scope-people = yaliyosemwa na ushauri, pamoja na majina na mahali
tokens-make = Tengeneza tokeni
tokens-new = Tokeni ya { $name }
tokens-once = Nakili sasa: inaonyeshwa mara hii tu. Itoe kwa njia salama tu.
tokens-remove = Futa
tokens-remove-of = Futa tokeni ya { $name }
tokens-removed = Tokeni ya { $name } haifungui kitu tena.
tokens-none = Hakuna tokeni bado.
form-token-there = Tayari kuna tokeni ya { $name }; ifute kwanza, au toa jina lingine.
form-token-gone = Hakuna tokeni ya { $name }; huenda imeshafutwa.

### Picha za ziara
photo-take = Picha
photo-how = Hadi 4, JPEG, PNG au WebP. Piga nje na mbali na gesi; omba ruhusa ya familia kwanza. Mahali na kifaa cha kupigia havihifadhiwi.
photo-alt = Picha { $name } ya ziara
photo-remove = Ondoa
photo-remove-of = Ondoa picha { $name }
form-unread = Fomu haikufika yote; itume tena.
form-photo-many = Weka picha { $n } tu au chache; hakuna kilichohifadhiwa.
form-photo-kind = Picha iwe JPEG, PNG au WebP; hakuna kilichohifadhiwa. Piga tena kwa kamera ya simu.
form-photo-big = Picha iwe na MB { $n } na nukta 10,000 kila upande, si zaidi; hakuna kilichohifadhiwa. Punguza ukubwa kwenye kamera.
form-photo-damaged = Picha imeharibika na haisomeki; hakuna kilichohifadhiwa. Piga tena.

### Takwimu za programu za kuchukua
out-head = Za kuchukua
out-xlsx = Mstari kwa kaya na mwezi, kama kitabu cha hesabu (XLSX)
out-from = Ripoti tangu mwezi
out-to = hadi mwezi (wazi: huo tu)
out-report = Ripoti ya kuchapa
report-title = Ripoti ya programu, { $name }
report-span = { $first } hadi { $last }
report-made = Imetengenezwa { $date } kwa { $name }.
report-print = Ichape kutoka kwenye menyu ya kivinjari chako.
report-households = Kaya kwenye programu
form-rows-many = Hiyo ni mistari { $n }, zaidi ya inayoingia kitabu kimoja; omba miezi michache, au chukua CSV.
column-household = Kaya
column-name = Jina
column-days_told = Siku zilizosemwa
column-water_l = Maji, L
column-cooked_min = Kupika, dak
column-spared_fuel = Nishati iliyookolewa
column-non_renewable_share = Sehemu isiyoota tena
column-spared_fuel_kg = Nishati iliyookolewa, kg
column-texts_in = Ujumbe ulioingia
column-texts_out = Ujumbe uliotoka

### Hadithi ya kaya
house-closed = Hadithi hii imefungwa: tangi lilimwagwa na kuanza upya kwa namba nyingine.
house-goes-on = Inaendelea kwa namba { $name }
house-before = Ya awali yapo kwenye namba { $name }
house-danger = Hatari.
house-alarm = { $signs }, iliripotiwa { $when }: "{ $said }"
house-take = Nitashughulikia
house-doing = Wanachoambiwa sasa
figure-risk = Hatari ya kuchacha, siku 14
figure-olr = OLR, siku 7
figure-olr-is = { $n } kg VS/m3/d
figure-hrt = HRT, siku 7
figure-ts = TS inayoingia
figure-slurry = Tope
figure-gas = Gesi leo
figure-started = Lilianza
figure-no-feed = bila lishe
not-told = haijasemwa
nobody = hakuna
if-lead = Je, wakiweka
if-kg = kg kwa siku
if-kg-with = kg na
if-litres = lita za maji kwa siku
if-each-day = L za maji kila siku?
if-look = Tazama siku 14 mbele
if-wrong = Weka kilo na lita kwa siku kama namba kutoka 0 hadi { $most }.
if-told = Kwa kg { $kg } za mchanganyiko wa kawaida na lita { $water } za maji kila siku: baada ya siku { $days } OLR { $olr } kg VS/m3/d, HRT { $hrt }, hatari ya kuchacha { $risk }%, gesi dak { $gas } kwa siku. Kisha bot ingesema: { $verdict }, hadi kg { $ration }.
if-no-end = bila mwisho
if-chart = Wiki mbili zijazo, siku kwa siku
verdict-feed = weka chakula
verdict-less = punguza chakula
verdict-hold = usiweke chakula
verdict-water = ongeza maji
verdict-warm = weka joto
verdict-check = kagua kitu
verdict-danger = hatari
story-head = Hadithi yake
story-span = Nyuma kiasi gani
span-30 = Siku 30
span-120 = Siku 120
span-365 = Mwaka
span-1826 = Miaka 5
story-chart = Chati, siku kwa siku
story-weeks = Kila mstari ni wastani wa wiki moja.
chart-label = Hadithi ya kaya, siku kwa siku
chart-read = Soma siku moja
chart-dashes = (vistari: { $name })
chart-dots = (nukta: { $name })
chart-fed = Lishe, kg kwa siku
chart-advised = kiasi kilichoshauriwa
chart-other = nyingine
chart-water = Maji, L kwa siku
chart-olr = OLR ya siku 7, kg VS/m3/d
chart-most = kikomo, bila kukoroga
chart-cooked = Kupika, dak kwa siku
chart-gas = gesi tuliyotarajia
chart-made = Gesi iliyotengenezwa, dk kwa siku: makadirio
chart-left = iliyobaki
chart-risk = Hatari ya kuchacha siku 14, %
chart-slurry = Tope, °C: makadirio
chart-told = iliyopimwa
chart-ph = pH: makadirio
chart-ph-told = pH iliyopimwa
chart-acids = Asidi (VFA), g/L kama asidi asetiki: makadirio
chart-signs = Dalili zilizosemwa
days-go = Soma siku kwa siku
days-head = Siku kwa siku
days-how = Siku ya mwisho iko juu. Kilichowekwa, maji, kupika, tope na dalili ni kama vilivyosemwa; * huonyesha pH iliyopimwa, nyingine ni makadirio.
days-day = Siku
days-advised = Kiasi kilichoshauriwa, kg
days-olr = OLR, kg VS/m3/d
days-gas = Makadirio ya gesi, dk: iliyotengenezwa / iliyobaki
days-slurry = Tope lililopimwa, °C
days-ph = pH
days-acids = Makadirio ya asidi, g/L
talk-head = Mazungumzo
talk-none = Hakuna ujumbe bado.
talk-why = Kwa nini
talk-note = { $verdict } · kiasi kg { $kg }, L { $water } · hatari { $risk }% · { $segments }
segments = { $n ->
    [one] sehemu { $n }
   *[other] sehemu { $n }
}
trail-head = Maelezo na matendo ya wafanyakazi
trail-new = Maelezo mapya
trail-keep = Hifadhi
did-noted = { $by }: { $words }
did-took_alarm = { $by } amechukua tahadhari hii.
did-sees_to_it = { $by } anashughulikia.
did-has_seen_to_it = { $by } ameshughulikia.
did-told_danger = { $by } aliarifu hatari kwa niaba ya familia.
did-told_facts = { $by } alitoa taarifa kwa niaba ya familia.
did-asked_history = { $by } aliuliza historia.
did-told_family = { $by } aliiambia familia: { $words }
did-took_over = { $by } alichukua kaya hii.
did-handed_back = { $by } alirudisha kaya hii.
did-lifted_cap = { $by } aliondoa kikomo cha ujumbe kwa siku moja.
did-added_phone = { $by } aliongeza simu.
did-took_phone_off = { $by } aliondoa simu.
did-told_measure = { $by } alisema kipimo chao ({ $measure }) kinabeba lita { $litres }.
did-ended_reminders = { $by } alisimamisha vikumbusho.
did-began_reminders = { $by } alianzisha tena vikumbusho, kama familia ilivyoomba.
did-began_anew = { $by }: tangi lilianza upya; hadithi yake hadi sasa ipo kwenye namba { $id }.
did-closed_story = { $by } alifunga hadithi hii: tangi lilimwagwa na kujazwa upya.
did-changed_settings = { $by } alibadilisha taarifa.
did-changed_settings_to = { $by } alibadilisha taarifa: { $settings }
did-visited = { $by } alifika. { $errand }
did-took_photo_away = { $by } aliondoa picha.
did-set_up = { $by } aliandikisha kaya; walikubali kupokea ujumbe.
did-asked_needs = { $by } aliuliza nani anamhitaji.
did-asked_more = { $by } aliomba zaidi.
did-set_pin = { $by } aliweka PIN.
did-gave_pin = { $by } alitoa PIN.
did-gave_wrong_pin = { $by } alitoa PIN isiyo sahihi.
did-gave_no_pin = { $by } alitoa kitu ambacho si PIN.
did-tried_while_locked = { $by } alitoa PIN wakati laini imefungwa.
did-got_locked = { $by } amefungiwa baada ya PIN zisizo sahihi.
did-added_staff = { $by } alimwongeza { $name } kama { $role }.
did-changed_staff = { $by } alimbadilisha { $name }: sasa { $role }.
did-gave_password = { $by } alimpa { $name } nenosiri jipya.
did-freed_of_pin = { $by } alifuta PIN ya { $name }.
did-took_off_staff = { $by } alimwondoa { $name } kwenye wafanyakazi.
did-made_token = { $by } alitengeneza tokeni ya { $name }: { $scope }.
did-took_token_back = { $by } alifuta tokeni ya { $name }.
did-set_call = { $by } aliweka namba ya kupiga katika { $country }: { $number }.
did-set_call_back = { $by } alirudisha namba ya awali ya { $country }.
did-taught_word = { $by } alifundisha neno la { $place }: { $word } ni { $feed }.
did-took_word_away = { $by } aliondoa neno { $word }.
did-set_keeping = { $by } aliamua maneno ya ujumbe yahifadhiwe siku { $n }.
did-set_keeping_ever = { $by } aliamua ujumbe uhifadhiwe daima.
did-pin_for_all = { $by } aliamua kila mtu ahitaji PIN.
did-pin_for_some = { $by } aliamua PIN iwe hiari ya kila mtu.
did-sent_broadcast = { $by } alituma ujumbe kwa wengi kwa { $n ->
    [one] kaya { $n }
   *[other] kaya { $n }
} ({ $audience }): { $words }
did-stopped_broadcast = { $by } alisimamisha ujumbe kwa wengi { $id }; ujumbe { $n } haukwenda.
nothing-yet = Hakuna bado.
visits-head = Ziara
visits-none = Hakuna aliyefika bado.
visits-before = Ziara za awali
visit-go-new_tank = Kagua tangi jipya
visit-go-fault = Angalia hitilafu
phones-head = Simu na vikumbusho
phone-by = kwa { $name }
phone-stopped = ilisema STOP: haipati kitu
phone-off = Ondoa
phone-off-label = Ondoa { $name }
phone-none = Hakuna simu.
phone-another = Namba yao nyingine
gateway = Njia ya ujumbe
phone-add = Ongeza
reminders-are-off = Vikumbusho vimezimwa.
reminders-are-on = Vikumbusho vimewashwa.
reminders-again = Wameviomba tena
reminders-end = Zima vikumbusho
restart-head = Tangi lilimwagwa na kujazwa upya, au familia imehama
restart-fine = Hadithi yake inaanza tena kwa namba mpya, na simu, ukubwa na vipimo vilevile. Ya awali yanabaki hapa kusomwa.
restart-manure = Kianzio: kinyesi, kg
restart-place = Liko wapi sasa, kama familia imehama: mji
restart-sure = Limemwagwa na kujazwa upya leo
restart-do = Anza upya
settings-head = Tangi na familia
set-name = Jina
set-place = Mahali
set-tank_l = Tangi, L
set-liquid_l = Tope hadi tokeo, L
set-store_l = Mfuko wa gesi, L
set-people = Watu mezani
set-started = Lilijazwa mara ya kwanza
set-walls = Kuta
set-lang = Tunawaandikia kwa
set-staff = Mfanyakazi wa nyanjani
set-keep = Hifadhi mabadiliko
walls-black = nyeusi
walls-white = nyeupe
walls-insulated = limefunikwa joto
walls-greenhouse = nyumba ya plastiki
walls-heated = linapashwa joto
walls-buried = ardhini
holds-lead = Kipimo chao
holds-measure = Kipimo
holds-holds = kinabeba
holds-litres = Lita
told-head = Kilichosemwa, na tangu siku gani
told-liquid = tope hadi tokeo L { $n }
told-started = lilijazwa mara ya kwanza

### Ziara
visit-title = Ziara kwa { $name }
visit-for = Ziara ni ya nini
errand-new_tank = Ukaguzi wa tangi jipya
errand-fault = Ukaguzi wa hitilafu
errand-short-new_tank = Tangi jipya
errand-short-fault = Hitilafu
visit-cautions = Hakuna moto, simu wala swichi mahali penye gesi; usiinamie wala kuingia kwenye tangi au shimo. Gesi yenye harufu ya yai bovu ni sumu. Viungo vya gesi ni kazi ya fundi mwenye leseni, na sheria za eneo hutangulia orodha hii, ambayo ni desturi ya kazi.
mark-good = nzuri
mark-bad = ya kurekebisha
mark-none = haijaangaliwa
visit-note = Maelezo
visit-keep = Hifadhi ziara
visit-told = { $errand }: { $good } nzuri, za kurekebisha: { $bad }.
visit-told-good = { $errand }: { $good } nzuri, hakuna la kurekebisha.
check-walls_dark = Kuta za giza: hakuna mwanga unaofika kwenye tope
check-gas_tight = Haivuji: maji ya sabuni kwenye kila kiungo na mshono hayatoi mapovu
check-overflow_low = Tokeo la juu liko mm 50 chini ya mdomo wa kuingizia
check-overflow_open = Tokeo la juu lina kiungo cha T kilicho wazi kwa hewa
check-inlet_floor = Bomba la kuingizia mm 50, linafika chini, mguu umekatwa nyuzi 45
check-outlet_middle = Tokeo liko katikati ya kimo, upande wa pili kutoka kwa ingizo
check-gas_high = Tundu la gesi mm 20 chini ya juu; bomba lake liko juu ya usawa wa maji
check-pipe_seals = Viziba vimekaza mabomba yanapopita ukutani
check-valve = Vali ya gesi inazunguka vizuri na kufunga; nusu inchi, viungo bila gundi
check-water_trap = Mtego wa maji sehemu ya chini kabisa ya bomba la gesi, umemwagwa
check-bag = Mfuko wa gesi mzima, kivulini, umefungwa, hakuna kitu chenye ncha karibu
check-hose = Mpira na viungo vya jiko bila nyufa, vimebanwa
check-inlet_free = Ingizo wazi: maji yanayomiminwa hushuka
check-outlet_free = Tokeo wazi: kinatoka kiasi kinachoingia
check-level = Tope liko usawa wa tokeo
check-flame_blue = Moto thabiti na wa buluu
check-flame_far = Moto na cheche mbali na tangi, mfuko na mabomba; jiko lina hewa
check-nobody_falls_in = Vifuniko vimefungwa; mtoto wala mnyama hawezi kuanguka; shimo lina uzio
check-family_told = Familia inajua: gesi hulipuka, harufu ya yai ni sumu, nawa mikono, usiingie kamwe

### Mradi
prog-months = Miezi ya nyuma
prog-fuel = Walipikia nini awali
prog-share = Sehemu ya kuni isiyoota tena, 0 hadi 1
prog-work-out = Hesabu
prog-by-month = Kwa mwezi
prog-by-place = Kwa mahali
prog-month = Mwezi
prog-place = Mahali
prog-no-place = mahali hapajasemwa
prog-nothing = Hakuna kilichosemwa miezi hii.
prog-heard = Kaya zilizoandika
prog-working = Zinapika kwa gesi
prog-fed = Lishe, kg
prog-slurry = Tope lililotoka, L
prog-hours = Kupika, saa
prog-gas = Gesi iliyochomwa, m3
prog-spared = { $name }: kilichookolewa, kg
prog-co2e = CO2e iliyookolewa, kg
prog-texts = Ujumbe ulioingia / uliotoka
prog-segments = Sehemu zilizolipiwa
prog-csv = Mstari kwa kaya na mwezi, kama CSV
prog-how = Jinsi inavyohesabiwa
prog-method = Gesi ambayo familia zilisema zimechoma tu ndiyo huhesabiwa: dakika za jiko, lita 300 za gesi kwa saa (methani { $methane }%, yenye unyevu, { $celsius } °C). Nishati iliyookolewa ni ile inayotoa joto lilelile kwenye sufuria: jiko la gesi 55%, mafiga matatu 12%, jiko la mkaa 25%, jiko la utambi 45%. CO2e ya miaka 100 kwa viwango vya AR6 na vigezo vya IPCC 2006, kwa mfumo wa AMS-I.E baada ya kutoa 5% inayovuja kwingine; { $share } ya nishati ({ $name }) huhesabiwa kuwa haioti tena; toa methani iliyovuja, { $leak }% ya iliyotengenezwa pale ambapo hakuna aliyepima. Tope lililotoka ni sawa na kilichoingia. Jumla hizi ni makadirio; madai ya mikopo ya kaboni yanahitaji utafiti wake.
fuel-wood = kuni
fuel-charcoal = mkaa
fuel-lpg = gesi ya mtungi
fuel-kerosene = mafuta ya taa

### Ujumbe kwa wengi
cast-title = Ujumbe kwa wengi { $name }
cast-text = Maneno yako, yatakavyofika kwa kila familia baada ya jina lako
cast-lang = Lugha
cast-place = Mahali
cast-staff = Mfanyakazi wa nyanjani
cast-need = Hitaji
cast-all-langs = lugha zote
cast-all-places = mahali pote
cast-all-staff = wafanyakazi wote
cast-all-needs = hitaji lolote
cast-nobody = Hakuna anayelingana.
cast-would = { $n ->
    [one] Kaya { $n }
   *[other] Kaya { $n }
}, { $segments } za kulipia.
cast-without = Nyingine { $n } zinalingana lakini zilisema STOP au MUTE, au hazina simu: hazipati kitu.
cast-when = Ya kwanza inatoka { $first }, ya mwisho { $last }; usiku kila moja husubiri asubuhi yake. Si zaidi ya moja kwa sekunde.
cast-send = Tuma kwa { $n }
cast-look = Tazama kabla ya kutuma
cast-look-again = Tazama tena
cast-before = Zilizotumwa awali
cast-row = { $when }, { $staff }, kwa { $audience } · { $progress } · { $state }
cast-progress = { $sent } kati ya { $all } zimetumwa
cast-done = imekwisha
cast-going = inatoka
cast-stopped = imesimamishwa { $name }
cast-everybody = kaya zote
cast-to = { $when }, { $staff }, kwa { $audience }
cast-sent = Zimetumwa
cast-waiting = Zinasubiri
cast-not-sent = Hazikutumwa
cast-last = Ya mwisho inatoka
cast-stop = Simamisha: { $n } hazitoki
cast-see = Tazama imefika wapi
cast-all = Ujumbe wote kwa wengi

### Watu na mipangilio
setup-on-page = Kwenye ukurasa huu
setup-staff = Wafanyakazi
setup-household = Kaya mpya
setup-gateways = Njia za ujumbe
setup-words = Majina ya vyakula
setup-numbers = Namba za dharura
setup-keeping = Ujumbe huhifadhiwa muda gani
setup-wording = Maneno ya bot
setup-trail = Yaliyobadilishwa na wafanyakazi
role-viewer = mtazamaji
role-field = mfanyakazi wa nyanjani
role-lead = msimamizi
role-long-viewer = mtazamaji: huona, namba zimefichwa
role-long-field = mfanyakazi wa nyanjani: hutenda kwa kaya
role-long-lead = msimamizi: hupanga watu na kanuni
staff-no-phone = hana simu
staff-phone = { $number } kwa { $gateway }
staff-no-log-in = haingii
staff-has-pin = ana PIN
staff-change = Badilisha
staff-change-of = Badilisha { $name }
staff-role-of = Wadhifa wa { $name }
staff-lang-of = Lugha ya { $name }
staff-new-password = Nenosiri jipya
staff-free-pin = Futa PIN
staff-pin-all = Kwa ujumbe, kila mtu anahitaji PIN mara moja kwa siku.
staff-pin-own = Kwa ujumbe, PIN huulizwa kwa aliyeichagua tu.
staff-pin-leave = Waachie wachague
staff-pin-need = Kila mtu awe nayo
staff-add-head = Ongeza mtu
staff-add = Ongeza
staff-role = Wadhifa
staff-lang = Lugha
number-texts = Namba wanayotumia kutuma
family-head = Kaya mpya, au tangi la pili
family-fine = Tangi la pili lina hesabu yake: lipe jina lake na namba yake. Kaya inayotuma ujumbe yenyewe huonekana bila fomu hii.
family-town = Mji wa karibu
family-agreed = Walikubali kupata ujumbe
family-do = Sajili
traffic-head = Njia za ujumbe, saa 24 zilizopita
traffic-none = Hakuna njia iliyowekwa.
traffic-state = Hali
traffic-in = Ulioingia
traffic-last-in = Wa mwisho
traffic-sent = Uliotumwa
traffic-delivered = Ulioripotiwa kufika
traffic-lost = Uliokataliwa
traffic-waiting = Unaosubiri
traffic-stuck = ujumbe unasubiri
traffic-stuck-why = ujumbe unasubiri: { $name }
traffic-many-lost = mwingi unakataliwa
traffic-quiet = kimya siku nzima
traffic-well = salama
traffic-never = hakuna
ago-now = sasa hivi
ago-minutes = dak { $n } zilizopita
ago-hours = saa { $n } zilizopita
words-head = Majina ya vyakula ya wilaya
words-fine = Neno linalofundishwa hapa mara moja linaeleweka kwenye ujumbe wa kila kaya ya huko.
words-word = Neno lao
words-means = Maana yake
words-country = Nchi, herufi mbili
words-place = Pale tu mahali ni (wazi: nchi nzima)
words-teach = Fundisha
words-none = Hakuna neno lililofundishwa bado.
words-by = limefundishwa na { $name }
words-off = Ondoa
words-off-label = Ondoa { $name }
call-head = Namba za kupiga wakati wa hatari
call-fine = Hutajwa kwenye ujumbe wa hatari. Uliza mamlaka ya nchi; pasipojulikana namba, ujumbe husema waite msaada.
call-number = Namba (wazi: iliyopo awali)
call-set = Weka
call-all = Namba zote { $n }
call-own = imewekwa hapa
keep-days = Siku hadi maneno ya ujumbe yafutwe (wazi: daima). Kiasi, tarehe na ushauri hubaki; sehemu zilizolipiwa hazihesabiwi zaidi ya hapo nyuma.
said-password = { $name } anaweza kuingia kwa nenosiri { $password }. Linaonyeshwa mara hii tu.
said-new-password = Nenosiri jipya la { $name } ni { $password }. Linaonyeshwa mara hii tu.
said-role = { $name } sasa ni { $role }.
said-lang = { $name } anasoma { $lang } kuanzia kuingia kunakofuata.
said-pin-free = PIN inayofuata ambayo { $name } atatuma ndiyo yake.
said-off = { $name } si mfanyakazi tena; kaya zake sasa hazina mtu.
said-call-built-in = Katika { $country } namba iliyopo awali inatumika tena.
said-call = Wakati wa hatari, familia za { $country } zinaambiwa zipige { $number }.
said-word-off = Neno limeondolewa.
said-word = Katika { $place }, { $word } ni { $feed } kuanzia sasa.
said-keep = Maneno ya ujumbe hufutwa baada ya siku { $n }; yaliyosemwa kuhusu tangi hubaki.
said-keep-ever = Ujumbe huhifadhiwa daima.
said-pin-all = Asiye na PIN anaombwa achague moja kabla ya kuambiwa kuhusu kaya yoyote.
said-pin-own = Asiye na PIN anaambiwa kuhusu kaya bila PIN.

### Maneno ya bot
wording-title = Maneno ya bot kwa { $name }
wording-lead = Ujumbe na sehemu za ujumbe { $n }, kati yake { $long } ni ndefu kuliko sehemu moja ya SMS zenyewe. Ujumbe huundwa kwazo na kufupishwa utoshe.
wording-letters = { $n ->
    [one] herufi { $n }
   *[other] herufi { $n }
}
wording-dear = herufi za baiti mbili

### Simu kwenye ukurasa
try-title = Simu ya kujaribu
try-phone = Simu
try-staff = Kurasa za wafanyakazi
try-choose = Chagua kaya pembeni, au anza kama familia mpya. Kisha tuma ujumbe kama familia hiyo ingefanya.
try-screen = Skrini ya simu
try-empty = Hakuna ujumbe bado. Salimia, au sema ulichoweka.
try-text = Ujumbe wako
try-send = Tuma
try-filling = Historia inaishiwa
try-filling-fine = Kila kaya hutuma ujumbe kwa siku { $n }. Zilizokamilika zinaweza kuchaguliwa.
try-again = Tazama tena
try-whose = Simu ya nani?
try-day-of = siku { $day } kati ya { $days }
try-new = Anza kama familia mpya
try-new-family = Familia mpya
try-invented = Kaya, majina na namba ni za kubuni, na pia nani anaishi mji gani na hali yake ya hewa; bot inachowaambia kinahesabiwa.
try-time = Wakati
try-now = Ni { $name }.
try-day = Acha siku ipite
try-cautions = Tahadhari
try-caution-burns = Gesi huwaka, na ikichanganyika na hewa hulipuka. Hakuna moto karibu na tangi, mfuko au mabomba.
try-caution-poison = Gesi yenye harufu ya yai bovu ni sumu; ikiwa kali, hainuswi tena.
try-caution-germs = Tope lina vijidudu: nawa mikono. Usiingie kamwe kwenye tangi au shimo, hata kumfuata mtu.
try-caution-codes = Kinachotumwa ni ushauri. Sheria za eneo na mafundi wenye leseni hutangulia.

### Kilichoandikwa kwenye fomu na hakiwezi kuchukuliwa
form-letters = Andika ujumbe wa herufi 1 hadi { $most }.
form-nobody-fits = Hakuna anayelingana; hakuna kilichotumwa.
form-text-long = Ujumbe ni mrefu kuliko sehemu mbili; ufupishe. Hakuna kilichotumwa.
form-not-theirs = Namba hii si yao.
form-number-needed = Weka namba wanayotumia kutuma.
form-number-stopped = Namba hii ilisema STOP; mwenyewe tu anaweza kutuma START.
form-number-household = Namba hii ni ya kaya { $id }; iondoe kule kwanza.
form-number-staff = Namba hii ni ya { $name }.
form-number-taken = Namba hii ni ya kaya au ya mfanyakazi, au ilisema STOP; weka nyingine.
form-number-shape = Weka namba na + na msimbo wa nchi, kama +254700000000.
form-choose = Chagua moja kwenye orodha.
form-measure-litres = Sema kinabeba lita ngapi, zaidi ya 0 na si zaidi ya { $most }.
form-restart-sure = Weka alama kuwa tangi lilimwagwa na kujazwa upya; hakuna kilichobadilishwa.
form-starter = Weka kianzio kwa kilo, au uache wazi.
form-closed = Hadithi hii imeshafungwa; tangi lake limeanza upya kwa namba nyingine.
form-agreed = Uliza familia kwanza; anayekubali kupata ujumbe tu ndiye anayesajiliwa.
form-no-town = Bot haijui mji uitwao { $name }; weka mji wa karibu au wa wilaya.
form-above = { $field ->
    [tank_l] Tangi
    [liquid_l] Tope
    [people] Watu
   *[store_l] Mfuko wa gesi
}: weka namba zaidi ya 0 na si zaidi ya { $most }.
form-slurry-fits = Tope la lita { $liquid } halitoshi kwenye tangi la lita { $tank }; rekebisha moja.
form-date = Weka siku ya kujaza kama mwaka-mwezi-siku, mfano 2026-03-01.
form-date-range = Siku ya kujaza lazima iwe ndani ya miaka 30 iliyopita.
form-call-digits = Weka namba ya dharura kwa tarakimu, zisizozidi 15.
form-country = Weka nchi kwa herufi zake mbili, kama KE.
form-word-taught = Neno hili limeshafundishwa kule; liondoe kwanza.
form-word-shape = Weka jina la maneno 1 hadi { $most }, bila tarakimu.
form-word-danger = Bot hulichukua neno hili kuwa hatari; haliwezi kuwa chakula.
form-word-else = Bot tayari hulichukua neno hili kwa maana nyingine; liandike kwa namna nyingine.
form-word-known = Bot tayari inalijua neno hili: { $feed }.
form-days = Weka siku kamili, angalau { $least }, au acha wazi kwa daima.
form-name-letters = Weka jina la herufi 1 hadi { $most }.
form-staff-there = Tayari yupo { $name }; mbadilishe huyo, au weka jina lingine.
form-staff-none = Hakuna { $name } kati ya wafanyakazi.
form-staff-last = { $name } ndiye msimamizi wa mwisho anayeweza kuingia; weka mwingine kwanza.
form-staff-number = Mfanyakazi mwingine hutumia namba hii.
form-visit-empty = Weka alama angalau moja au andika maelezo; hakuna kilichohifadhiwa.
