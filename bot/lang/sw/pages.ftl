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
need-silent = Kimya
need-rest = Inapumzika
need-leak = Inavuja?
need-start_up = Inaanza
need-watch = Angalia
need-well = Salama

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
