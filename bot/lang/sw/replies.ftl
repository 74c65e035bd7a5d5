# What Bellyful says in Swahili.

### Danger
alarm = Tokeni nje nyote sasa! Msiwashe moto, swichi wala simu ndani. Fungeni valvu njiani ikiwa tu ni salama. { $number ->
    [none] Mkiwa nje iteni msaada.
   *[other] Mkiwa nje pigeni { $number }.
} Msirudi ndani wala shimoni.
safe-again = Vizuri kwamba umeandika. Msiwashe chochote kabla fundi hajakagua viungo vyote kwa maji ya sabuni. Vikiwa sawa, niandikie tuendelee.
safe-again-first = Msiwashe chochote kabla fundi hajakagua viungo vyote kwa maji ya sabuni.

### Who we are and how we talk
hello = Habari! Mimi ni Bellyful. Nasaidia kulisha tangi lako la gesi. Huu ni ushauri: sheria za hapo na fundi wako kwanza. Andika STOP kuacha, HELP kwa msaada.
hello-again = Habari! Niambie ulichoweka, mfano: mabaki kilo 3, maji lita 6. Au uliza: niweke kiasi gani?
help = Niandikie ulichoweka: mabaki kilo 3, maji lita 6. Gesi ikoje: gesi kidogo, nimepika dk 50. Au uliza: niweke kiasi gani? STOP huacha, UNDO hufuta.
stopped = Bellyful: hutapata ujumbe tena. Ukisikia harufu ya gesi, toka nje kisha tuandikie tu. Andika START kurudi.
started = Karibu tena! Niambie unachoweka na gesi inavyowaka, nami nitakuambia la kufanya.
muted = Sitakukumbusha tena. Ukiandika bado nitajibu.
forget-sure = Nifute jina, namba na ujumbe wako kabisa? Jibu NDIYO kufuta. Jibu lingine linabakiza.
forgotten = Tayari. Jina, namba na ujumbe wako vimefutwa. Kwaheri, weka moto mbali na gesi.
kept = Sawa, nabakiza kila kitu kama kilivyo.
language-is = Kuanzia sasa nitaandika Kiswahili.
language-unknown = Naweza kuandika: { $languages }. Ipi?
nothing-more = Hayo tu. Uliza lolote kuhusu tangi lako.
undone = Nimefuta: { $what }.
nothing-to-undo = Hakuna cha kufuta.
welcome = Karibu. Niambie unachoweka kila siku, nami nitakuambia kinachofuata.
joined = Simu hii sasa ni ya tangi hilo hilo.
too-long = Huo ni mrefu mno kwangu. Tafadhali tuma ujumbe mfupi mfupi.
person-called = Nimemwomba mhudumu wako akupigie simu.
person-none = Sipati mhudumu wa kukupigia. Tafadhali muulize fundi aliyejenga tangi lako.

### What we heard
heard = Nimepata: { $what }.
item-fed = { $feed } { $amount }
item-fed-unknown = { $feed }, kiasi hakijulikani
item-water = maji { $amount }
item-water-none = bila maji
item-water-unknown = maji
item-not-fed = { $days ->
    [one] bila chakula
   *[other] bila chakula siku { $days }
}
item-usual = kwa kawaida { $feed } { $amount } kwa siku
item-burned = kupika dk { $minutes }
item-gas = gesi { $level ->
    [none] hakuna
    [low] kidogo
    [half] nusu
    [good] nzuri
   *[full] imejaa
}
item-flame = moto { $look ->
    [blue] wa bluu
    [yellow] wa njano
    [weak] dhaifu
    [goes_out] unazimika
   *[will_not_light] hauwaki
}
item-temperature = { $of ->
    [air] hewa { $celsius } C
   *[tank] tangi { $celsius } C
}
item-ph = pH { $value }
item-pressure = presha { $cm } cm
item-tank = tangi lita { $litres }
item-store = mfuko wa gesi lita { $litres }
item-walls = tangi { $look ->
    [black] jeusi
    [white] jeupe
    [insulated] lililofunikwa
    [greenhouse] kwenye banda la nailoni
    [heated] linalopashwa moto
   *[buried] la chini ya ardhi
}
item-started = lilianza { $days ->
    [0] leo
    [one] jana
   *[other] siku { $days } zilizopita
}
item-removed = kutoa { $amount }
item-alkali = { $what ->
    [soda] soda
    [lime] chokaa
   *[ash] majivu
} { $amount }
item-alkali-bare = { $what ->
    [soda] soda
    [lime] chokaa
   *[ash] majivu
}
item-measure = { $measure } 1 ni lita { $litres }
item-people = { $count ->
    [one] mtu { $count }
   *[other] watu { $count }
}
item-place = { $name }
item-seeded = lilianza na { $feed } { $amount }
item-sign = { $sign ->
    [sour_smell] harufu chachu
    [egg_smell] harufu ya yai bovu
    [bad_smell] harufu mbaya
    [foam] povu
    [scum] utando juu
    [overflow] linafurika
    [level_drop] maji yanashuka
    [inlet_blocked] mdomo umeziba
    [outlet_blocked] tokeo limeziba
    [gas_line_blocked] bomba la gesi limeziba
    [water_in_gas_line] maji kwenye bomba la gesi
    [green_liquid] maji ya kijani
    [thick_slurry] tope zito
    [watery_slurry] tope jepesi
    [flies] nzi
    [worms] funza
    [bag_torn] mfuko wa gesi umechanika
    [tank_cracked] tangi lina ufa
    [gas_leak] gesi inavuja
    [fire] moto
   *[unwell] mtu anaumwa
}
item-day = { $item } ({ $days ->
    [one] jana
   *[other] siku { $days } zilizopita
})
corrected = Nimesahihisha: { $what }.
not-mended = Nisahihishe nini? Andika yote, mfano: nimeweka mabaki kilo 3, maji lita 6.

### What to do
do-feed-today = Leo unaweza kuweka { $amount } na maji { $water }.
do-feed-tomorrow = Kesho weka hadi { $amount } na maji { $water }.
do-less-today = Leo punguza: { $amount } na maji { $water }.
do-less-tomorrow = Kesho punguza: { $amount } na maji { $water }.
do-feed-dry-today = Leo unaweza kuweka { $amount }, bila maji zaidi.
do-feed-dry-tomorrow = Kesho weka hadi { $amount }, bila maji zaidi.
do-more-today = Leo bado unaweza kuweka { $amount }.
do-hold = { $days ->
    [one] Leo usiweke chakula.
   *[other] Usiweke chakula kwa siku { $days }, kuanzia leo.
}
do-hold-tomorrow = { $days ->
    [one] Leo usiongeze, na kesho usiweke chakula.
   *[other] Usiweke chakula kwa siku { $days }, kuanzia kesho.
}
do-same-today = Leo vilevile: { $amount } na maji { $water }.
do-same-tomorrow = Kesho vilevile: { $amount } na maji { $water }.
do-same-dry-today = Leo vilevile: { $amount }, bila maji zaidi.
do-same-dry-tomorrow = Kesho vilevile: { $amount }, bila maji zaidi.
do-hold-still = { $days ->
    [one] Leo pia usiweke chakula.
   *[other] Endelea kutoweka chakula: siku { $days }, kuanzia leo.
}
do-water = Ongeza maji { $water } kabla ya kuweka chakula tena.
do-warm = Weka tangi lenye joto: mchana lifunike kwa kitu cheusi, usiku kwa blanketi au nyasi kavu. Lilishe saa za joto.
do-warm-feed = Ndani kuna baridi, hivyo linakula kidogo: hadi { $amount } kwa siku. Litie joto.
do-check-gas = Paka maji ya sabuni kwenye viungo vya bomba la gesi, nje, bila moto. Mapovu huonyesha panapovuja.
remedy-slurry = Kupumzika peke yake huenda kusitoshe. Mwombe fundi abadilishe { $amount } kwa tope la tangi linalofanya kazi vizuri.
alkali-careful = Magadi, chokaa au majivu kwa ushauri wa fundi wako tu: zikizidi hudhuru.
gas-today = Leo kuna gesi ya dk { $minutes } hivi.
gas-none-yet = Bado hakuna gesi ya kupikia.
gas-little = Leo gesi ni kidogo tu.

### Why
why-usual = Mambo ni mazuri.
why-overloaded = Siku hizi limepata kuliko linavyoweza kula, na chakula kingi hulifanya lichache.
why-load_rising = Chakula kinaongezeka haraka. Vijidudu vyake vinahitaji siku kukua.
why-underfed = Lina njaa: chakula zaidi kidogo hutoa gesi zaidi.
why-fed_today = Limeshapata sehemu yake ya leo.
why-spread_out = Kidogo kidogo mara nyingi ni bora kuliko kingi mara moja.
why-after_gap = Baada ya kupumzika anza kidogo. Usifidie siku zilizopita.
why-no_seed = Linahitaji kinyesi kibichi cha ng'ombe kuanza: bila hicho chakula huchacha tu.
why-seed_resting = Kinyesi kifanye kazi kwanza. Chakula ni baada ya moto kuwaka siku 3.
why-start_up = Bado ni changa. Chakula huongezwa wiki hadi wiki.
why-first_gas = Gesi ya mfuko wa kwanza ina hewa: itoe nje mahali wazi, mbali na moto. Jaribu jiko kwa mfuko unaofuata.
why-souring = Linaanza kuchacha: asidi nyingi, vijidudu vichache. Mapumziko huliponya.
why-recovering = Linapona. Weka kidogo kidogo mpaka moto uwe na nguvu tena.
why-sour_risk = Zaidi ya hapo linaweza kuchacha.
why-too_thick = Mchanganyiko ni mzito mno, haupiti wala kumeng'enywa.
why-too_thin = Maji mengi hivyo huondoa vijidudu vyake.
why-grease = Mafuta huelea na kuliziba: kijiko kimoja au viwili tu kwa siku.
why-citrus = Maganda ya machungwa hulipunguza kasi: kidogo tu na chakula kingine.
why-protein = Nyama, samaki au mayai mengi hutoa gesi mbaya: changanya na chakula kingine.
why-salt = Chakula chenye chumvi nyingi hulidhuru.
why-inhibitor = Hicho hudhuru vijidudu vya ndani. Usiweke tena, ongeza maji na kinyesi kidogo tu.
why-not_food = Hicho si chakula chake na kitaliziba. Toa unachofikia ukiwa nje.
why-needs_dung = Kwa chakula cha jikoni tu linakosa kitu: kila wiki weka koleo la kinyesi kibichi cha ng'ombe.
why-cold = Baridi hulipunguza kasi, na chakula kinachobaki huchacha.
why-too_hot = Ndani kuna joto mno. Litie kivuli.
why-cold_coming = Siku za baridi zinakuja: litakula kidogo.
why-low_gas = Gesi ni kidogo kuliko ilivyotakiwa.
why-leak_suspected = Gesi ilitakiwa kuwa zaidi ya uliyoipata: labda inavuja.
why-gas_unused = Gesi ni nyingi: itumie kabla ya kuweka zaidi.
why-part = Kuna kifaa kinachohitaji kuangaliwa.
why-people_at_risk = Gesi huchoma na ni sumu. Watu kwanza.
why-size_unknown = Bado sijui ukubwa wa tangi lako, hivyo naenda kwa tahadhari.
why-amount_unknown = Sijui kiasi kilichowekwa, hivyo naenda kwa tahadhari.
why-intro = Kwa sababu: { $reasons }

### Signs
sign-sour_smell = Harufu chachu ni asidi kuzidi.
sign-egg_smell = Harufu ya yai bovu kwenye tokeo ni kawaida, lakini ni sumu: usiivute. Ndani au kali: tokeni nje, niandikie.
sign-bad_smell = Weka mafuta ya kupikia kidogo juu ya maji kwenye mabomba yaliyo wazi kuzuia harufu.
sign-scum = Koroga polepole ukiwa nje kupitia mdomo, kisha weka chakula chenye maji na kilichokatwa.
sign-outlet_blocked = Zibua tokeo kwa fimbo ndefu ukiwa nje. Usiingize mkono wala kuingia kamwe.
sign-gas_line_blocked = Funga valvu, kisha tafuta bomba lililokunjika au lenye maji. Moto uwe mbali.
sign-water_in_gas_line = Funga valvu, toa maji sehemu ya chini kabisa ya bomba la gesi. Moto uwe mbali.
sign-green_liquid = Mwanga unaingia na kuotesha kijani: funika au paka tangi rangi nyeusi.
sign-thick_slurry = Tope la tangi ni zito mno.
sign-watery_slurry = Punguza maji utakapoweka chakula tena.
sign-flies = Funika mdomo na tokeo, na suuza mdomo kila ukiweka chakula.
sign-worms = Funika shimo la tokeo na suuza mdomo kila ukiweka chakula.
sign-bag_torn = Usitumie gesi. Funga valvu, weka moto mbali, na mwite fundi atengeneze mfuko.
sign-tank_cracked = Weka watu na moto mbali na tangi, mwite fundi. Usiweke chakula mpaka litengenezwe.
flame-yellow = Fungua kidogo tundu la hewa la jiko na safisha masizi.

### Causes of a trouble: one step for each, and one question that a yes answers for it
cause-little_fed = Lina njaa: lilishe kila siku kama nisemavyo, gesi itakuja baada ya siku chache.
cause-overfed = Limepata zaidi ya linavyoweza kula: weka tu kiasi nisemacho.
cause-souring = Huenda asidi imezidi: fuata mapumziko au milo midogo nisemayo.
cause-cold = Ndani kuna baridi: lifunike vizuri usiku, lilishe saa ya joto zaidi.
cause-young = Tangi ni changa: toa gesi ya kwanza nje, mbali na moto, kisha jaribu kesho.
cause-poisoned = Usiweke sabuni, dawa wala blichi. Weka maji na kinyesi kibichi kidogo tu.
cause-fat = Usiweke mafuta wala nyama kwa wiki moja.
cause-leak = Paka maji ya sabuni kwenye mfuko, valvu na viungo, nje, bila moto: mapovu ni kuvuja.
cause-used_up = Mnatumia karibu gesi yote: funga valvu kati ya milo, acha mfuko ujae.
cause-water_in_pipe = Funga valvu, toa maji sehemu ya chini kabisa ya bomba la gesi. Moto uwe mbali.
cause-burner_air = Funga kidogo tundu la hewa la jiko, fungua gesi polepole, jaribu tena.
cause-light_in = Funika au paka tangi rangi nyeusi: mwanga huotesha mwani na kuharibu gesi.
cause-siphon = Tokeo huenda linanyonya: T yake iwe wazi juu. Ongeza maji hadi alama.
cause-tank_leak = Weka alama ya maji. Yakishuka tena kesho, mwite fundi. Moto uwe mbali.
cause-much_water = Punguza maji utakapoweka chakula tena.
cause-outlet_shut = Zibua tokeo kwa fimbo ndefu ukiwa nje. Usiingize mkono wala kuingia kamwe.
cause-thick_feed = Sukuma kwa fimbo ndefu na suuza. Kata chakula vipande vidogo, ongeza maji.
cause-vapour_lock = Gesi imenaswa mdomoni: koroga polepole kwa fimbo ndefu, kisha mimina taratibu. Moto uwe mbali.
call-fitter = Shida imeendelea siku kadhaa: mwombe fundi aje kuangalia.
ask-cause-little_fed = Wiki hii limepata chakula kidogo kuliko kawaida?
ask-cause-overfed = Limepata zaidi ya nilivyosema?
ask-cause-souring = Tokeo lina harufu chachu kama siki?
ask-cause-cold = Usiku umekuwa na baridi zaidi siku hizi?
ask-cause-young = Bado linasubiri moto mzuri wa kwanza?
ask-cause-poisoned = Iliingia sabuni, blichi, dawa au sumu?
ask-cause-fat = Yaliingia mafuta au nyama nyingi?
ask-cause-leak = Mfuko hulegea usiku hata bila kupika?
ask-cause-used_up = Mlipika muda mrefu kuliko kawaida?
ask-cause-water_in_pipe = Moto unarukaruka, au bomba lina sauti ya maji?
ask-cause-burner_air = Moto unaruka juu ya jiko au unavuma?
ask-cause-light_in = Maji ni ya kijani, au mwanga unaingia tangini?
ask-cause-siphon = Maji mengi yalitoka kwenye tokeo mara moja?
ask-cause-tank_leak = Chini ya tangi au mabomba kumelowa?
ask-cause-much_water = Iliingia mvua au maji mengi?
ask-cause-outlet_shut = Unapolisha, tokeo linabaki kavu?
ask-cause-thick_feed = Chakula kilikuwa vipande vikubwa au vikavu?
ask-cause-vapour_lock = Ukimimina, kunatoka mapovu na chakula kinarudi?

### Answers
answer-water = Kwa chakula { $feed } weka maji { $water } hivi.
answer-gas = Leo una gesi ya kupika dk { $minutes } hivi.
answer-digestate = Changanya tope 1 na maji 3 kwa udongo. Subiri mwezi kabla ya kuvuna; si kwenye majani wala vinavyoliwa vibichi. Nawa mikono.
answer-start_up = Jaza kinyesi kibichi cha ng'ombe na maji, nusu kwa nusu, pawe na joto na giza. Chakula baada ya moto kuwaka siku 3. Gesi ya kwanza itoe nje.
answer-why-usual = Ndicho tangi lako linaweza kula sasa, kwa ukubwa wake, joto lake na lilichopata.
answer-can-yes = Ndiyo, { $feed } ni chakula kizuri. Kata vipande vidogo, changanya na maji.
answer-can-yes-short = Ndiyo, { $feed } ni chakula kizuri.
answer-can-some = { $feed }: kidogo tu ni sawa, pamoja na chakula kingine.
answer-can-no = Hapana, tafadhali usiweke { $feed } kwenye tangi.
answer-history = Siku 7 zilizopita: kilo { $kg } kwa { $days ->
    [one] siku { $days }
   *[other] siku { $days }
}, maji lita { $water }, kupika dk { $minutes }.
answer-history-none = Sina habari za siku 7 zilizopita. Niambie ulichoweka.
answer-status-good = Tangi lako liko vizuri.
answer-status-watch = Tangi lako linahitaji uangalizi.

### Questions
ask-tank = Tangi lako linaingia lita ngapi?
ask-started = Tangi lilijazwa lini mara ya kwanza? Mfano: wiki 3 zilizopita.
ask-seed = Lilianza kwa kuwekwa nini, kiasi gani? Mfano: kinyesi cha ng'ombe kilo 40.
ask-place = Uko mji gani, au karibu na upi?
ask-bucket = Kwako, { $measure } 1 ni lita ngapi?
ask-usual = Siku nyingi huweka nini, kiasi gani?
ask-store = Mfuko wa gesi unaingia lita ngapi?
ask-walls = Tangi lako ni jeusi, jeupe, limefunikwa au liko chini ya ardhi?
ask-people = Unapikia watu wangapi?
ask-amount = { $feed }: ni kiasi gani, kwa kilo au { $measure }?
ask-sure-amount = "{ $said }" ni nyingi. Ni sawa? Jibu ndiyo, au kiasi sahihi.
doubt-amount = "{ $said }" ni kiasi gani? Mfano: kilo 2 au ndoo 1.
doubt-unit = "{ $said }": ni kilo au { $measure }?
doubt-feed = "{ $said }" ni chakula gani?
doubt-two = "{ $said }": ni { $first } au { $second }?
doubt-one = "{ $said }": ni { $first }, au nini?
doubt-water = "{ $said }": ni maji au { $first }?
doubt-day = "{ $said }": ilikuwa siku gani?
doubt-sign = Shida ni nini: harufu, kuvuja, hakuna gesi, au kingine?
doubt-word = Samahani, sikuelewa "{ $said }". Andika hivi: nimeweka mabaki kilo 3, maji lita 6.

### Texts we start
remind-silence = Siku { $days } bila habari. Tangi likoje? Niambie ulichoweka na gesi inavyowaka. MUTE huzima vikumbusho.
remind-cold = Wiki za baridi zinakuja. Funika tangi vizuri na punguza chakula: nitakuambia kiasi. MUTE huzima vikumbusho.
remind-oil = Ni wakati wa kuweka tena mafuta kidogo juu ya maji kwenye mabomba yaliyo wazi, kuzuia harufu. MUTE huzima vikumbusho.
remind-trap = Leo toa maji sehemu ya chini ya bomba la gesi. Valvu ifungwe, moto uwe mbali. MUTE huzima vikumbusho.
remind-leak = Mara moja kwa mwezi: maji ya sabuni kwenye viungo vyote vya gesi, bila moto. Mapovu ni kuvuja. MUTE huzima vikumbusho.
warn-souring = Acha kuweka chakula sasa: tangi lako huenda linaanza kuchacha. Niambie harufu yake na moto ulivyo.

### To field workers
staff-alarm = HATARI kwa { $name } ({ $number }): { $signs }. Waliandika: "{ $said }". Jibu OK { $id } ukiichukua.
staff-alarm-again = BADO: hatari kwa { $name } ({ $number }): { $signs }. Jibu OK { $id } ukiichukua.
staff-ok = Asante. { $name } ni wako. Andika: andika { $id } na ulichokuta.
staff-person = { $name } ({ $number }) anaomba umpigie.
staff-unknown = Sijui nyumba "{ $said }". Andika namba au jina lake.
staff-which = Ipi? Andika namba yake: { $list }.
staff-help = Andika: orodha yangu, history 12, for 12: fed 5 kg, andika 12 valvu mpya, waambie 12 nakuja, chukua 12, rudisha 12, ondoa kikomo 12, ok 12, tayari 12.
staff-history = { $name }: siku 7 kilo { $kg } kwa siku { $days }, OLR { $olr } kg VS/m3/d, maji lita { $water }, kupika dk { $minutes }. Ushauri: { staff-verdict }, kg { $ration }/d, hatari { $risk }%. Ujumbe wa mwisho siku { $ago }.
staff-history-more = ZAIDI husema siku kwa siku.
staff-verdict = { $verdict ->
   *[feed] weka chakula
    [less] punguza chakula
    [hold] usiweke chakula
    [water] ongeza maji
    [warm] weka joto
    [check] kagua
    [danger] hatari
}
staff-noted = Kwa { $name }: { $reply }
staff-needs = { $count ->
    [one] { $count } anakuhitaji.
   *[other] { $count } wanakuhitaji.
} { $list }
staff-needs-item = { $name }: { $need ->
    [danger] HATARI
    [souring] inachacha
    [person] anaomba mtu
    [silent] kimya
    [rest] inapumzika
   *[leak] inavuja?
}.
staff-needs-none = Hakuna anayekuhitaji sasa.
staff-needs-rest = { $count ->
    [one] Na mwingine { $count }
   *[other] Na wengine { $count }
}: ZAIDI.
staff-note = Imeandikwa kwa { $name }.
staff-take = { $name } ni wako sasa. RUDISHA { $id } kuirudisha.
staff-hand-back = { $name } si wako tena.
staff-done = Imekwisha: { $name }. Wote wanaona.
staff-done-none = Hakuna aliyechukua { $name }. Kwanza: chukua { $id }.
staff-not-yours = { $name } si wako.
staff-tell = Imetumwa kwa { $name }.
staff-tell-none = { $name } hana simu inayopokea ujumbe.
staff-word = Kutoka kwa { $worker }: { $text }
staff-what = Niandike nini? Mfano: andika 12 valvu mpya, au: waambie 12 nakuja Jumanne.
staff-lift = { $name } anaweza kuandika bila kikomo kwa siku moja.
staff-viewer = Unaweza kuona tu, si kutenda. Muulize meneja wako.
staff-pin-ask = Nahitaji PIN yako mara moja kwa siku. Andika: pin na namba yako.
staff-pin-choose = Kwa hili unahitaji PIN. Chagua tarakimu 4 hadi 8 uandike, kama: pin 4711.
staff-pin-form = PIN ina tarakimu 4 hadi 8, mfano: pin 4711.
staff-pin-set = Hii ni PIN yako kuanzia sasa. Nitaiuliza mara moja kwa siku.
staff-pin-ok = Asante, inatosha kwa leo.
staff-pin-wrong = PIN si sahihi. Umebaki na majaribio { $left }.
staff-pin-locked = PIN mbaya nyingi mno: imefungwa kwa saa moja. Meneja wako ameambiwa.
staff-pin-told = { $worker } ({ $number }) amefungwa kwa saa moja baada ya PIN mbaya. Je, simu iko mikononi mwake?

### Amounts
decimal-mark = .
number-half = nusu { $measure }
unit-kg = kilo { $n }
unit-g = gramu { $n }
unit-l = lita { $n }
unit-piece = { $n }
measure-piece = kipande
language-name = Kiswahili
unit-bucket = ndoo { $n }
unit-basin = beseni { $n }
unit-jerrycan = dumu { $n }
unit-tin = kopo { $n }
unit-pot = sufuria { $n }
unit-bowl = bakuli { $n }
unit-plate = sahani { $n }
unit-cup = kikombe { $n }
unit-glass = glasi { $n }
unit-jug = jagi { $n }
unit-bottle = chupa { $n }
unit-handful = konzi { $n }
unit-spoon = kijiko { $n }
unit-shovel = koleo { $n }
unit-bag = mfuko { $n }
unit-sack = gunia { $n }
unit-basket = kikapu { $n }
unit-crate = kreti { $n }
unit-wheelbarrow = toroli { $n }
measure-bucket = ndoo
measure-basin = beseni
measure-jerrycan = dumu
measure-tin = kopo
measure-pot = sufuria
measure-bowl = bakuli
measure-plate = sahani
measure-cup = kikombe
measure-glass = glasi
measure-jug = jagi
measure-bottle = chupa
measure-handful = konzi
measure-spoon = kijiko
measure-shovel = koleo
measure-bag = mfuko
measure-sack = gunia
measure-basket = kikapu
measure-crate = kreti
measure-wheelbarrow = toroli

### Feeds
feed-cooked_rice = wali
feed-maize_meal = ugali
feed-bread = mkate
feed-flatbread = chapati
feed-pasta = tambi
feed-porridge = uji
feed-potato = viazi
feed-potato_peel = maganda ya viazi
feed-cassava = muhogo
feed-cassava_peel = maganda ya muhogo
feed-sweet_potato = viazi vitamu
feed-yam = viazi vikuu
feed-plantain = ndizi za kupika
feed-plantain_peel = maganda ya ndizi za kupika
feed-flour = unga
feed-maize = mahindi
feed-banana = ndizi
feed-banana_peel = maganda ya ndizi
feed-mango = embe
feed-papaya = papai
feed-pineapple = nanasi
feed-citrus_peel = maganda ya machungwa
feed-melon_rind = maganda ya tikiti
feed-avocado = parachichi
feed-apple = tufaha
feed-fruit_waste = mabaki ya matunda
feed-tomato = nyanya
feed-onion = vitunguu
feed-cabbage = kabichi
feed-leafy_greens = mboga za majani
feed-carrot = karoti
feed-pumpkin = malenge
feed-vegetable_waste = mabaki ya mboga
feed-beans = maharagwe
feed-lentils = dengu
feed-egg = mayai
feed-meat = nyama
feed-fish = samaki
feed-milk = maziwa
feed-whey = maji ya jibini
feed-cheese = jibini
feed-cooking_oil = mafuta ya kupikia
feed-fat = mafuta
feed-sugar = sukari
feed-sweet_drink = soda
feed-food_waste = mabaki
feed-coffee_grounds = machicha ya kahawa
feed-tea_leaves = majani ya chai
feed-spent_grain = machicha ya pombe
feed-starch_water = maji ya wanga
feed-cattle_manure = kinyesi cha ng'ombe
feed-pig_manure = kinyesi cha nguruwe
feed-chicken_manure = kinyesi cha kuku
feed-goat_manure = kinyesi cha mbuzi
feed-horse_manure = kinyesi cha farasi
feed-human_waste = taka za choo
feed-digestate = tope la tangi
feed-grass = nyasi
feed-leaves = majani
feed-water_hyacinth = magugu maji
feed-straw = nyasi kavu
feed-bone = mifupa
feed-eggshell = maganda ya mayai
feed-wood = mbao
feed-soil = udongo
feed-ash = majivu
feed-plastic = plastiki
feed-paper = karatasi
feed-soap = sabuni
feed-chemical = kemikali
remind-rest-over = Mapumziko yameisha.
remind-rest-on = Linahitaji kupumzika zaidi.
remind-yearly = Mara moja kwa mwaka fundi akague tangi, mabomba, valvu na mfuko wa gesi: tafadhali mwite. MUTE huzima vikumbusho.
sorry = Samahani, sikuweza kufanyia kazi ujumbe wako wa mwisho. Umehifadhiwa. Tafadhali niambie tena kwa maneno mengine.
