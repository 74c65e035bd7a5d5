# Ce que disent les pages du personnel en français. Mots du métier, courts.

### Sur chaque page
nav-skip = Aller au contenu
nav-today = Aujourd'hui
nav-programme = Programme
nav-broadcast = Message à tous
nav-setup = Personnes et réglages
nav-log-out = Sortir, { $name }

### Dates
weekday = { $weekday ->
    [1] lundi
    [2] mardi
    [3] mercredi
    [4] jeudi
    [5] vendredi
    [6] samedi
   *[7] dimanche
}
month = { $month ->
    [1] janvier
    [2] février
    [3] mars
    [4] avril
    [5] mai
    [6] juin
    [7] juillet
    [8] août
    [9] septembre
    [10] octobre
    [11] novembre
   *[12] décembre
}
month-short = { $month ->
    [1] janv.
    [2] févr.
    [3] mars
    [4] avr.
    [5] mai
    [6] juin
    [7] juil.
    [8] août
    [9] sept.
    [10] oct.
    [11] nov.
   *[12] déc.
}
date-full = { weekday } { $day } { month } { $year }
date-day = { $day } { month-short } { $year }
date-short = { $day } { month-short }
date-moment = { $day } { month-short } { $time }
date-full-moment = { $day } { month-short } { $year } { $time }

### Entrée
login-title = Entrer
login-head = Entrée du personnel
login-name = Nom
login-password = Mot de passe
login-enter = Entrer
login-wait = Trop d'essais pour ce nom. Attendez cinq minutes, puis réessayez.
login-wrong = Le nom et le mot de passe ne vont pas ensemble. Réessayez.

### Ce qui n'a pas marché
broken-head = Cela n'a pas marché
broken-back = Retour à aujourd'hui
broken-here = Quelque chose s'est cassé ici. Rien n'est perdu ; réessayez dans un moment.
broken-no-page = Cette page n'existe pas.
broken-role = Votre rôle ne le permet pas ; demandez à un responsable.
broken-no-household = Le ménage { $id } n'existe pas.
broken-no-broadcast = Le message à tous { $id } n'existe pas.

### Aujourd'hui
today-none = Aucun ménage n'a encore écrit. Donnez le numéro aux familles : leur premier message les fait apparaître ici.
today-pressing = { $n ->
    [0] Personne n'attend de visite.
    [one] Un ménage a besoin de quelqu'un.
   *[other] { $n } ménages ont besoin de quelqu'un.
}
today-find-label = Trouver un ménage par nom ou numéro
today-find = Chercher
today-by-need = Selon le besoin
today-all = Tous { $n }
today-none-fits = Aucun ménage ne correspond.
today-show-all = Tout montrer
today-last = { $n ->
    [0] dernier message aujourd'hui
    [1] dernier message hier
   *[other] dernier message il y a { $n } jours
}
today-last-never = pas encore de message
today-fed = chargé
today-cooked = cuisson
today-risk = risque
today-take = Je m'en occupe
today-done = Fait
today-taken-by = { $name } s'en occupe.
today-done-by = Réglé par { $name }.
today-alarm = { $signs }, signalé { $when } ; personne ne s'en occupe
today-danger-open = Danger signalé ; pas encore réglé
today-never = N'a pas encore écrit
today-silent = { $n ->
    [one] Pas de message depuis un jour
   *[other] Pas de message depuis { $n } jours
}
today-pages = Pages
today-before = Avant
today-next = Suite
today-page = { $page } sur { $pages }, { $n ->
    [one] { $n } ménage
   *[other] { $n } ménages
}
spark-fed = Chargé ces 30 derniers jours : { $total } kg en { $n ->
    [one] { $n } jour
   *[other] { $n } jours
}
spark-cooked = Cuisson ces 30 derniers jours : { $total } min en { $n ->
    [one] { $n } jour
   *[other] { $n } jours
}
need-danger = Danger
need-souring = S'acidifie
need-silent = Silencieux
need-rest = Au repos
need-leak = Fuite ?
need-start_up = Démarrage
need-watch = À surveiller
need-well = Bien

### L'histoire d'un ménage
house-closed = Cette histoire est close : la cuve a été vidée et a recommencé sous un autre numéro.
house-goes-on = Elle continue au numéro { $name }
house-before = Ce qui précède est au numéro { $name }
house-danger = Danger.
house-alarm = { $signs }, signalé { $when } : "{ $said }"
house-take = Je m'en occupe
house-doing = Ce qu'on leur dit maintenant
figure-risk = Risque d'acidité, 14 jours
figure-olr = CVO, 7 jours
figure-olr-is = { $n } kg MV/m3/d
figure-hrt = TRH, 7 jours
figure-ts = MS à l'entrée
figure-slurry = Boue
figure-gas = Gaz aujourd'hui
figure-started = Démarrée
figure-no-feed = sans charge
not-told = pas dit
nobody = personne
if-lead = Et s'ils chargeaient
if-kg = kg par jour
if-kg-with = kg avec
if-litres = litres d'eau par jour
if-each-day = L d'eau chaque jour ?
if-look = Voir 14 jours plus loin
if-wrong = Donnez des kilos et des litres par jour, en nombres de 0 à { $most }.
if-told = Avec { $kg } kg du mélange habituel et { $water } L d'eau chaque jour : dans { $days } jours CVO { $olr } kg MV/m3/d, TRH { $hrt }, risque d'acidité { $risk } %, gaz { $gas } min par jour. Le bot dirait alors : { $verdict }, jusqu'à { $ration } kg.
if-no-end = sans fin
verdict-feed = charger
verdict-less = charger moins
verdict-hold = ne pas charger
verdict-water = ajouter de l'eau
verdict-warm = garder au chaud
verdict-check = regarder quelque chose
verdict-danger = danger
story-head = Son histoire
story-span = Jusqu'où en arrière
span-30 = 30 jours
span-120 = 120 jours
span-365 = Un an
span-1826 = 5 ans
story-chart = Courbes, jour par jour
chart-label = L'histoire du ménage, jour par jour
chart-dashes = (tirets : { $name })
chart-dots = (points : { $name })
chart-fed = Chargé, kg par jour
chart-advised = ration conseillée
chart-water = Eau, L par jour
chart-olr = CVO sur 7 jours, kg MV/m3/d
chart-most = maximum, sans brassage
chart-cooked = Cuisson, min par jour
chart-gas = gaz attendu
chart-risk = Risque d'acidité en 14 jours, %
chart-slurry = Boue, °C : estimée
chart-told = mesurée
chart-ph = pH mesuré
chart-signs = Signes signalés
talk-head = Conversation
talk-none = Pas encore de message.
talk-why = Pourquoi
talk-note = { $verdict } · ration { $kg } kg, { $water } L · risque { $risk } % · { $segments }
segments = { $n ->
    [one] { $n } segment
   *[other] { $n } segments
}
trail-head = Notes et actes du personnel
trail-new = Nouvelle note
trail-keep = Garder
nothing-yet = Rien encore.
visits-head = Visites
visits-none = Personne n'y est encore allé.
visit-go-new_tank = Contrôler une cuve neuve
visit-go-fault = Voir une panne
phones-head = Téléphones et rappels
phone-by = par { $name }
phone-stopped = a dit STOP : ne reçoit rien
phone-off = Retirer
phone-off-label = Retirer { $name }
phone-none = Pas de téléphone.
phone-another = Un autre de leurs numéros
gateway = Passerelle
phone-add = Ajouter
reminders-are-off = Sans rappels.
reminders-are-on = Avec rappels.
reminders-again = Ils les redemandent
reminders-end = Arrêter les rappels
restart-head = La cuve a été vidée et remplie
restart-fine = Son histoire recommence sous un nouveau numéro, avec les mêmes téléphones, tailles et mesures. Ce qui précède reste lisible ici.
restart-manure = Démarrage : fumier, kg
restart-sure = Vidée et remplie aujourd'hui
restart-do = Recommencer
settings-head = Digesteur et famille
set-name = Nom
set-place = Lieu
set-tank_l = Cuve, L
set-liquid_l = Boue jusqu'au trop-plein, L
set-store_l = Sac à gaz, L
set-people = Personnes à table
set-started = Premier remplissage
set-walls = Parois
set-lang = On leur écrit en
set-staff = Agent de terrain
set-keep = Garder les changements
walls-black = noires
walls-white = blanches
walls-insulated = isolées
walls-greenhouse = sous serre
walls-heated = chauffées
walls-buried = enterrées
holds-lead = Leur
holds-measure = Mesure
holds-holds = contient
holds-litres = Litres
told-head = Ce qui a été dit, et depuis quel jour
told-liquid = boue jusqu'au trop-plein { $n } L
told-started = premier remplissage

### Visites
visit-title = Visite chez { $name }
visit-for = But de la visite
errand-new_tank = Contrôle d'une cuve neuve
errand-fault = Recherche d'une panne
errand-short-new_tank = Cuve neuve
errand-short-fault = Panne
visit-cautions = Ni flamme, ni téléphone, ni interrupteur là où il peut y avoir du gaz ; ne jamais se pencher ni entrer dans une cuve ou une fosse. Le gaz qui sent l'œuf empoisonne. Les raccords de gaz sont le travail d'un installateur agréé, et les règles locales passent avant cette liste, qui est d'usage courant.
mark-good = bon
mark-bad = à réparer
mark-none = pas regardé
visit-note = Note
visit-keep = Garder la visite
visit-told = { $errand } : { $good } bons, à réparer : { $bad }.
visit-told-good = { $errand } : { $good } bons, rien à réparer.
check-walls_dark = Parois sombres : aucune lumière n'atteint la boue
check-gas_tight = Étanche : l'eau savonneuse sur chaque joint et couture ne fait pas de bulle
check-overflow_low = Trop-plein environ 50 mm plus bas que la bouche d'entrée
check-overflow_open = Le trop-plein passe par un té ouvert à l'air
check-inlet_floor = Tuyau d'entrée de 50 mm, jusqu'au fond, pied coupé à 45 degrés
check-outlet_middle = La sortie s'ouvre à mi-hauteur, en diagonale de l'entrée
check-gas_high = Sortie de gaz environ 20 mm sous le haut ; son tuyau monte au-dessus de l'eau
check-pipe_seals = Joints serrés là où les tuyaux traversent la paroi
check-valve = La vanne de gaz tourne bien et ferme ; demi-pouce, raccords non collés
check-water_trap = Purgeur d'eau au point le plus bas du tuyau de gaz, vidé
check-bag = Sac à gaz entier, à l'ombre, attaché, rien de pointu autour
check-hose = Tuyau souple et raccords du foyer sans fissure, serrés par colliers
check-inlet_free = Entrée libre : l'eau versée descend
check-outlet_free = Sortie libre : il sort autant qu'il entre
check-level = La boue est au niveau du trop-plein
check-flame_blue = Flamme stable et bleue
check-flame_far = Flamme et étincelles loin de la cuve, du sac et des tuyaux ; cuisine aérée
check-nobody_falls_in = Couvercles fermés ; ni enfant ni animal ne peut tomber ; fosse clôturée
check-family_told = La famille sait : le gaz explose, l'odeur d'œuf empoisonne, se laver les mains, ne jamais entrer

### Ce qui a été écrit dans un formulaire et ne peut être pris
form-letters = Écrivez un texte de 1 à { $most } lettres.
form-nobody-fits = Personne ne correspond ; rien n'est parti.
form-text-long = Le texte ne tient pas en deux segments ; dites-le plus court. Rien n'est parti.
form-not-theirs = Ce numéro n'est pas à eux.
form-number-needed = Donnez le numéro d'où ils écrivent.
form-number-stopped = Ce numéro a dit STOP ; seul son propriétaire peut écrire START.
form-number-household = Ce numéro est au ménage { $id } ; retirez-le d'abord là-bas.
form-number-staff = Ce numéro est celui de { $name }.
form-number-taken = Ce numéro est à un ménage ou au personnel, ou a dit STOP ; donnez-en un autre.
form-number-shape = Donnez le numéro avec + et l'indicatif du pays, comme +254700000000.
form-choose = Choisissez dans la liste.
form-measure-litres = Dites combien de litres elle contient, plus de 0 et { $most } au plus.
form-restart-sure = Cochez que la cuve a été vidée et remplie ; rien n'a changé.
form-starter = Donnez le démarrage en kilos, ou rien.
form-closed = Cette histoire est déjà close ; sa cuve a recommencé sous un autre numéro.
form-agreed = Demandez d'abord à la famille ; seuls ceux qui acceptent les messages sont inscrits.
form-no-town = Le bot ne connaît pas de ville { $name } ; donnez la plus proche ou celle du district.
form-above = { $field ->
    [tank_l] La cuve
    [liquid_l] La boue
    [people] Les personnes
   *[store_l] Le sac à gaz
} : donnez un nombre au-dessus de 0 et { $most } au plus.
form-slurry-fits = { $liquid } L de boue ne tiennent pas dans une cuve de { $tank } L ; corrigez l'un des deux.
form-date = Donnez le jour du remplissage en année-mois-jour, comme 2026-03-01.
form-date-range = Le jour du remplissage doit être dans les 30 dernières années.
form-call-digits = Donnez le numéro d'appel en chiffres, 15 au plus.
form-country = Donnez le pays en deux lettres, comme KE.
form-word-taught = Ce mot est déjà appris là-bas ; retirez-le d'abord.
form-word-shape = Donnez le nom en 1 à { $most } mots, sans chiffres.
form-word-danger = Le bot prend ce mot pour un danger ; il ne peut pas être un aliment.
form-word-else = Le bot prend déjà ce mot pour autre chose ; écrivez-le autrement.
form-word-known = Le bot connaît déjà ce mot : { $feed }.
form-days = Donnez des jours entiers, { $least } au moins, ou rien pour toujours.
form-name-letters = Donnez un nom de 1 à { $most } lettres.
form-staff-there = Il y a déjà { $name } ; changez cette personne ou donnez un autre nom.
form-staff-none = Il n'y a pas de { $name } dans le personnel.
form-staff-last = { $name } est le dernier responsable qui peut entrer ; nommez-en d'abord un autre.
form-staff-number = Une autre personne du personnel écrit de ce numéro.
form-visit-empty = Cochez au moins un point ou écrivez une note ; rien n'a été gardé.
