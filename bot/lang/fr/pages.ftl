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
date-month = { month } { $year }

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
today-asked = A demandé quelqu'un { $when }
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
need-person = Demande quelqu'un
need-silent = Silencieux
need-rest = Au repos
need-leak = Fuite ?
need-start_up = Démarrage
need-watch = À surveiller
need-well = Bien

### Carte
map-title = { $n ->
    [one] Carte : un ménage
   *[other] Carte : { $n } ménages
}
map-bundle = { $n } ménages autour de { $place }, dont { $pressing } ont besoin de quelqu'un ; le plus pressant : { $need }
map-unplaced = { $n ->
    [one] Un ménage n'est pas sur la carte : il n'a dit aucune ville connue.
   *[other] { $n } ménages ne sont pas sur la carte : ils n'ont dit aucune ville connue.
}
map-more = { $n ->
    [one] Un de plus est seulement dans la liste.
   *[other] { $n } de plus sont seulement dans la liste.
}

### Jetons des programmes
tokens-head = Lecture par machine
tokens-what = Un jeton laisse lire un autre programme ; numéros et messages ne sont jamais donnés. Ce qui peut être lu est décrit ici :
tokens-name = Qui le reçoit
tokens-scope = Peut lire
scope-read = ce qui a été dit et conseillé, sans noms
scope-people = ce qui a été dit et conseillé, avec noms et lieux
tokens-make = Faire un jeton
tokens-new = Jeton pour { $name }
tokens-once = Copiez-le maintenant : il n'est montré que cette fois. Donnez-le seulement par une voie sûre.
tokens-remove = Retirer
tokens-remove-of = Retirer le jeton de { $name }
tokens-removed = Le jeton de { $name } n'ouvre plus rien.
tokens-none = Il n'y a pas encore de jeton.
form-token-there = Il y a déjà un jeton pour { $name } ; retirez-le d'abord ou donnez un autre nom.
form-token-gone = Il n'y a pas de jeton pour { $name } ; il a peut-être déjà été retiré.

### Photos de visites
photo-take = Photos
photo-how = Jusqu'à 4, en JPEG, PNG ou WebP. Prenez-les dehors et loin du gaz ; demandez d'abord à la famille. Où et avec quoi elles ont été prises n'est pas gardé.
photo-alt = Photo { $name } de la visite
photo-remove = Enlever
photo-remove-of = Enlever la photo { $name }
form-unread = Le formulaire n'est pas arrivé entier ; envoyez-le encore.
form-photo-many = Donnez au plus { $n } photos ; rien n'a été gardé.
form-photo-kind = Une photo doit être en JPEG, PNG ou WebP ; rien n'a été gardé. Reprenez-la avec l'appareil du téléphone.
form-photo-big = Une photo peut avoir au plus { $n } Mo et 10 000 points de côté ; rien n'a été gardé. Réglez l'appareil sur une taille plus petite.
form-photo-damaged = Une photo est abîmée et ne peut être lue ; rien n'a été gardé. Reprenez-la.

### Les chiffres du programme à emporter
out-head = À emporter
out-xlsx = Une ligne par ménage et par mois, en classeur (XLSX)
out-from = Rapport depuis le mois
out-to = jusqu'au mois (vide : celui-là seul)
out-report = Un rapport à imprimer
report-title = Rapport du programme, { $name }
report-span = { $first } à { $last }
report-made = Fait le { $date } pour { $name }.
report-print = Imprimez-le depuis le menu de votre navigateur.
report-households = Ménages du programme
form-rows-many = Cela fait { $n } lignes, plus qu'un classeur n'en porte ; demandez moins de mois ou prenez le CSV.
column-household = Ménage
column-name = Nom
column-days_told = Jours racontés
column-water_l = Eau, L
column-cooked_min = Cuisson, min
column-spared_fuel = Combustible évité
column-non_renewable_share = Part qui ne repousse pas
column-spared_fuel_kg = Combustible évité, kg
column-texts_in = Messages reçus
column-texts_out = Messages envoyés

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
if-chart = Deux semaines à venir, jour par jour
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
story-weeks = Chaque trait est la moyenne d'une semaine.
chart-label = L'histoire du ménage, jour par jour
chart-read = Lire un jour
chart-dashes = (tirets : { $name })
chart-dots = (points : { $name })
chart-fed = Chargé, kg par jour
chart-advised = ration conseillée
chart-other = autres
chart-water = Eau, L par jour
chart-olr = CVO sur 7 jours, kg MV/m3/d
chart-most = maximum, sans brassage
chart-cooked = Cuisson, min par jour
chart-gas = gaz attendu
chart-made = Gaz produit, min par jour : estimé
chart-left = reste en réserve
chart-risk = Risque d'acidité en 14 jours, %
chart-slurry = Boue, °C : estimée
chart-told = mesurée
chart-ph = pH : estimé
chart-ph-told = pH mesuré
chart-acids = Acides (AGV), g/L en acide acétique : estimés
chart-signs = Signes signalés
days-go = Le lire jour par jour
days-head = Jour par jour
days-how = Le dernier jour vient en premier. Chargé, eau, cuisson, boue et signes sont tels que dits ; * marque un pH mesuré, les autres sont estimés.
days-day = Jour
days-advised = Ration conseillée, kg
days-olr = OLR, kg VS/m3/j
days-gas = Gaz estimé, min : produit / reste
days-slurry = Boue mesurée, °C
days-ph = pH
days-acids = Acides estimés, g/L
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
did-noted = { $by } : { $words }
did-took_alarm = { $by } a pris l'alarme.
did-sees_to_it = { $by } s'en occupe.
did-has_seen_to_it = { $by } s'en est occupé.
did-told_danger = { $by } a signalé un danger pour la famille.
did-told_facts = { $by } a donné des faits pour la famille.
did-asked_history = { $by } a demandé l'histoire.
did-told_family = { $by } a dit à la famille : { $words }
did-took_over = { $by } a pris le ménage en charge.
did-handed_back = { $by } a rendu le ménage.
did-lifted_cap = { $by } a levé pour un jour la limite de messages.
did-added_phone = { $by } a ajouté un téléphone.
did-took_phone_off = { $by } a retiré un téléphone.
did-told_measure = { $by } a dit ce que contient leur { $measure } : { $litres } L.
did-ended_reminders = { $by } a arrêté les rappels.
did-began_reminders = { $by } a remis les rappels, comme la famille le demandait.
did-began_anew = { $by } : la cuve a recommencé ; son histoire jusqu'ici est au numéro { $id }.
did-closed_story = { $by } a clos cette histoire : la cuve a été vidée et remplie.
did-changed_settings = { $by } a changé les réglages.
did-changed_settings_to = { $by } a changé les réglages : { $settings }
did-visited = { $by } y était. { $errand }
did-took_photo_away = { $by } a retiré une photo.
did-set_up = { $by } a inscrit le ménage ; il accepte les messages.
did-asked_needs = { $by } a demandé qui a besoin d'aide.
did-asked_more = { $by } a demandé la suite.
did-set_pin = { $by } a choisi un PIN.
did-gave_pin = { $by } a donné le PIN.
did-gave_wrong_pin = { $by } a donné un mauvais PIN.
did-gave_no_pin = { $by } a donné autre chose qu'un PIN.
did-tried_while_locked = { $by } a donné un PIN alors que la ligne était bloquée.
did-got_locked = { $by } : ligne bloquée après de mauvais PIN.
did-added_staff = { $by } a ajouté { $name } : { $role }.
did-changed_staff = { $by } a changé { $name } : { $role } désormais.
did-gave_password = { $by } a donné à { $name } un nouveau mot de passe.
did-freed_of_pin = { $by } a libéré { $name } du PIN.
did-took_off_staff = { $by } a retiré { $name } du personnel.
did-made_token = { $by } a fait un jeton pour { $name } : { $scope }.
did-took_token_back = { $by } a retiré le jeton de { $name }.
did-set_call = { $by } a fixé le numéro à appeler pour { $country } : { $number }.
did-set_call_back = { $by } a remis le numéro d'origine pour { $country }.
did-taught_word = { $by } a appris un mot de { $place } : { $word } veut dire { $feed }.
did-took_word_away = { $by } a retiré le mot { $word }.
did-set_keeping = { $by } a fixé que les mots des messages sont gardés { $n } jours.
did-set_keeping_ever = { $by } a fixé que les messages sont gardés pour toujours.
did-pin_for_all = { $by } a fixé que chacun a besoin d'un PIN.
did-pin_for_some = { $by } a laissé le PIN au choix de chacun.
did-sent_broadcast = { $by } a envoyé un message à tous à { $n ->
    [one] { $n } ménage
   *[other] { $n } ménages
} ({ $audience }) : { $words }
did-stopped_broadcast = { $by } a arrêté le message à tous { $id } ; { $n } messages ne sont pas partis.
nothing-yet = Rien encore.
visits-head = Visites
visits-none = Personne n'y est encore allé.
visits-before = Visites précédentes
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
restart-head = La cuve a été vidée et remplie, ou la famille a déménagé
restart-fine = Son histoire recommence sous un nouveau numéro, avec les mêmes téléphones, tailles et mesures. Ce qui précède reste lisible ici.
restart-manure = Démarrage : fumier, kg
restart-place = Où elle se trouve, si la famille a déménagé : ville
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

### Programme
prog-months = Mois en arrière
prog-fuel = Cuisaient avant au
prog-share = Part du bois qui ne repousse pas, de 0 à 1
prog-work-out = Calculer
prog-by-month = Par mois
prog-by-place = Par lieu
prog-month = Mois
prog-place = Lieu
prog-no-place = lieu pas dit
prog-nothing = Rien n'a été dit ces mois-là.
prog-heard = Ménages entendus
prog-working = Cuisent au gaz
prog-fed = Chargé, kg
prog-slurry = Boue sortie, L
prog-hours = Cuisson, h
prog-gas = Gaz brûlé, m3
prog-spared = { $name } : économie, kg
prog-co2e = CO2e évité, kg
prog-texts = Messages reçus / envoyés
prog-segments = Segments payés
prog-csv = Une ligne par ménage et par mois, en CSV
prog-how = Comment on compte
prog-method = Seul compte le gaz que les familles disent avoir brûlé : minutes de feu, 300 L de biogaz par heure ({ $methane } % de méthane, humide, { $celsius } °C). Le combustible économisé est celui qui donne la même chaleur dans la marmite : feu à gaz 55 %, trois pierres 12 %, fourneau à charbon 25 %, réchaud à mèche 45 %. CO2e sur 100 ans avec les potentiels de l'AR6 et les facteurs du GIEC 2006, sous la forme d'AMS-I.E, moins 5 % de fuites ailleurs ; { $share } du combustible ({ $name }) compte comme ne repoussant pas ; moins le méthane échappé, pris à { $leak } % de la production là où personne n'a mesuré. La boue sortie est ce qui est entré. Les sommes sont des estimations ; une demande de crédits exige sa propre enquête.
fuel-wood = bois
fuel-charcoal = charbon de bois
fuel-lpg = GPL
fuel-kerosene = pétrole lampant

### Message à tous
cast-title = Message à tous { $name }
cast-text = Vos mots, tels qu'ils arrivent à chaque famille après votre nom
cast-lang = Langue
cast-place = Lieu
cast-staff = Agent de terrain
cast-need = Besoin
cast-all-langs = toutes les langues
cast-all-places = tous les lieux
cast-all-staff = tous les agents
cast-all-needs = quel que soit le besoin
cast-nobody = Personne ne correspond.
cast-would = { $n ->
    [one] { $n } ménage
   *[other] { $n } ménages
}, { $segments } à payer.
cast-without = { $n } de plus correspondent mais ont dit STOP ou MUTE, ou n'ont pas de téléphone : ils ne reçoivent rien.
cast-when = Le premier part { $first }, le dernier { $last } ; la nuit, chacun attend son matin. Un par seconde au plus.
cast-send = Envoyer à { $n }
cast-look = Regarder avant l'envoi
cast-look-again = Regarder encore
cast-before = Envoyés avant
cast-row = { $when }, { $staff }, à { $audience } · { $progress } · { $state }
cast-progress = { $sent } sur { $all } envoyés
cast-done = fini
cast-going = en cours
cast-stopped = arrêté { $name }
cast-everybody = tous les ménages
cast-to = { $when }, { $staff }, à { $audience }
cast-sent = Envoyés
cast-waiting = En attente
cast-not-sent = Pas envoyés
cast-last = Le dernier part
cast-stop = Arrêter : { $n } ne partent pas
cast-see = Voir où cela en est
cast-all = Tous les messages

### Personnes et réglages
setup-on-page = Sur cette page
setup-staff = Personnel
setup-household = Nouveau ménage
setup-gateways = Passerelles
setup-words = Noms des aliments
setup-numbers = Numéros d'urgence
setup-keeping = Durée de garde des messages
setup-wording = Formulations
setup-trail = Ce que le personnel a changé
role-viewer = lecteur
role-field = agent de terrain
role-lead = responsable
role-long-viewer = lecteur : voit, numéros masqués
role-long-field = agent de terrain : agit pour les ménages
role-long-lead = responsable : règle personnes et règles
staff-no-phone = pas de téléphone
staff-phone = { $number } par { $gateway }
staff-no-log-in = sans accès
staff-has-pin = PIN choisi
staff-change = Modifier
staff-change-of = Modifier { $name }
staff-role-of = Rôle de { $name }
staff-lang-of = Langue de { $name }
staff-new-password = Nouveau mot de passe
staff-free-pin = Libérer du PIN
staff-pin-all = Par message, chacun a besoin d'un PIN une fois par jour.
staff-pin-own = Par message, le PIN n'est demandé qu'à qui en a choisi un.
staff-pin-leave = Laisser le choix
staff-pin-need = Un PIN pour tous
staff-add-head = Ajouter quelqu'un
staff-add = Ajouter
staff-role = Rôle
staff-lang = Langue
number-texts = Numéro d'où ils écrivent
family-head = Nouveau ménage, ou deuxième cuve
family-fine = Une deuxième cuve a son propre modèle : donnez-lui son nom et son numéro. Un ménage qui écrit de lui-même apparaît sans ce formulaire.
family-town = Ville la plus proche
family-agreed = Ils acceptent les messages
family-do = Inscrire
traffic-head = Passerelles, dernières 24 heures
traffic-none = Aucune passerelle n'est configurée.
traffic-state = État
traffic-in = Reçus
traffic-last-in = Dernier reçu
traffic-sent = Envoyés
traffic-delivered = Signalés remis
traffic-lost = Refusés
traffic-waiting = En attente
traffic-stuck = des messages attendent
traffic-stuck-why = des messages attendent : { $name }
traffic-many-lost = beaucoup sont refusés
traffic-quiet = calme depuis un jour
traffic-well = bien
traffic-never = aucun
ago-now = à l'instant
ago-minutes = il y a { $n } min
ago-hours = il y a { $n } h
words-head = Noms des aliments du district
words-fine = Un mot appris ici une fois est compris dans les messages de tous les ménages de là-bas.
words-word = Leur mot
words-means = Veut dire
words-country = Pays, deux lettres
words-place = Seulement là où le lieu est (vide : tout le pays)
words-teach = Apprendre
words-none = Aucun mot appris encore.
words-by = appris par { $name }
words-off = Retirer
words-off-label = Retirer { $name }
call-head = Numéros à appeler en danger
call-fine = Donnés dans le message d'alarme. Demandez à l'autorité du pays ; sans numéro connu, le message dit d'appeler à l'aide.
call-number = Numéro (vide : celui d'origine)
call-set = Fixer
call-all = Les { $n } numéros
call-own = fixé ici
keep-days = Jours avant l'oubli des mots des messages (vide : jamais). Quantités, dates et conseils restent ; les segments payés ne se comptent alors pas plus loin en arrière.
said-password = { $name } peut entrer avec le mot de passe { $password }. Il n'est montré que cette fois.
said-new-password = Le nouveau mot de passe de { $name } est { $password }. Il n'est montré que cette fois.
said-role = { $name } est maintenant { $role }.
said-lang = { $name } lit { $lang } dès la prochaine entrée.
said-pin-free = Le prochain PIN que { $name } envoie est le sien.
said-off = { $name } n'est plus du personnel ; ses ménages ne sont plus à personne.
said-call-built-in = Pour { $country }, le numéro d'origine vaut de nouveau.
said-call = En danger, on dit aux familles de { $country } d'appeler le { $number }.
said-word-off = Le mot est retiré.
said-word = À { $place }, { $word } veut dire { $feed } désormais.
said-keep = Les mots des messages sont oubliés après { $n } jours ; ce qui fut dit du digesteur reste.
said-keep-ever = Les messages sont gardés pour toujours.
said-pin-all = Qui n'a pas de PIN doit en choisir un avant d'apprendre quoi que ce soit d'un ménage.
said-pin-own = Qui n'a pas de PIN est renseigné sur les ménages sans cela.

### Formulations
wording-title = Formulations en { $name }
wording-lead = { $n } messages et parties de messages, dont { $long } plus longs qu'un segment à eux seuls. Un texte en est composé puis raccourci à sa place.
wording-letters = { $n ->
    [one] { $n } lettre
   *[other] { $n } lettres
}
wording-dear = lettres de deux octets

### Le téléphone sur une page
try-title = Un téléphone pour essayer
try-phone = Téléphone
try-staff = Pages du personnel
try-choose = Choisissez un ménage à côté, ou commencez en nouvelle famille. Écrivez ensuite comme elle le ferait.
try-screen = Écran du téléphone
try-empty = Pas encore de message. Dites bonjour, ou ce que vous avez chargé.
try-text = Votre message
try-send = Envoyer
try-filling = L'histoire est en train de se vivre
try-filling-fine = Chaque ménage écrit pendant { $n } jours. Ceux qui sont complets peuvent être choisis.
try-again = Regarder encore
try-whose = Le téléphone de qui ?
try-day-of = jour { $day } sur { $days }
try-new = Commencer en nouvelle famille
try-new-family = Une nouvelle famille
try-invented = Ménages, noms et numéros sont inventés, de même que qui vit dans quelle ville et son climat ; ce que le bot leur dit est calculé.
try-time = Temps
try-now = Nous sommes { $name }.
try-day = Laisser passer un jour
try-cautions = Précautions
try-caution-burns = Le biogaz brûle, et mêlé à l'air il explose. Aucune flamme près de la cuve, du sac ou des tuyaux.
try-caution-poison = Le gaz qui sent l'œuf pourri empoisonne ; trop fort, on ne le sent plus.
try-caution-germs = La boue porte des microbes : lavez-vous les mains. N'entrez jamais dans une cuve ou une fosse, même après quelqu'un.
try-caution-codes = Les messages sont des conseils. Les règles locales et les installateurs agréés passent d'abord.

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
