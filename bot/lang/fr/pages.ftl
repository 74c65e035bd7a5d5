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
