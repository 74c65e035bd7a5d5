# What Bellyful says in French, as texted in West and Central Africa and in Haiti: vous, and only letters of the GSM
# alphabet (é è à ù are in it; ç and the hats are left off, as people text).

### Who we are and how we talk
hello = Bonjour! Je suis Bellyful. Je vous aide à nourrir votre cuve à biogaz. C'est un conseil: les règles locales et votre installateur d'abord. Ecrivez ARRET pour finir, AIDE pour l'aide.
hello-again = Bonjour! Dites-moi ce que vous avez mis: 3 kg de restes, 6 L d'eau. Ou demandez: combien je peux mettre?
help = Ecrivez ce que vous mettez: 3 kg de restes, 6 L d'eau. Et le gaz: peu de gaz, cuisiné 50 min. Ou: combien je peux mettre? ARRET pour finir, ANNULER efface le dernier.
stopped = Bellyful: plus de messages de nous. Si ca sent le gaz, sortez et écrivez-nous quand meme. Ecrivez COMMENCER pour revenir.
started = Bon retour! Dites-moi ce que vous mettez et comment brule le gaz, je vous dirai la suite.
muted = Plus de rappels de ma part. Je réponds encore si vous écrivez.
forget-sure = J'efface pour toujours votre nom, numéro et messages? Répondez OUI pour effacer. Toute autre réponse les garde.
forgotten = C'est fait. Votre nom, numéro et messages sont effacés. Au revoir, et gardez le feu loin du gaz.
kept = D'accord, je garde tout comme c'est.
language-is = Je vous écris en francais à partir de maintenant.
language-unknown = Je peux écrire: { $languages }. Laquelle?
nothing-more = C'est tout. Demandez-moi ce que vous voulez sur votre cuve.
undone = Effacé: { $what }.
nothing-to-undo = Il n'y a rien à effacer.
welcome = Avec plaisir. Dites-moi chaque jour ce que vous mettez, je vous dirai la suite.
joined = Ce téléphone est maintenant lié à la meme cuve.
too-long = Ce message est trop long pour moi. Envoyez-le en plusieurs petits messages svp.
person-called = J'ai demandé à votre agent de vous appeler.
person-none = Je ne trouve pas d'agent pour vous. Demandez svp à l'installateur de votre cuve.

### Danger. No question, no dose in this text
alarm = Sortez tous! Dedans ni feu, ni interrupteur, ni téléphone. Fermez le gaz en sortant si sans danger. { $number ->
    [none] Dehors, criez à l'aide.
   *[other] Dehors, appelez le { $number }.
} N'y rentrez pas, ni dans la fosse.
safe-again = Vous avez bien fait d'écrire. N'allumez rien avant qu'un installateur ait vu tous les joints à l'eau savonneuse. Quand rien ne fuit, écrivez-moi.
safe-again-first = N'allumez rien avant qu'un installateur ait vu tous les joints à l'eau savonneuse.

### What we heard
heard = Noté: { $what }.
item-fed = { $feed } { $amount }
item-fed-unknown = { $feed }, quantité inconnue
item-water = eau { $amount }
item-water-none = sans eau
item-water-unknown = eau
item-not-fed = { $days ->
    [one] rien mis
   *[other] rien mis pendant { $days } jours
}
item-usual = d'habitude { $feed } { $amount } par jour
item-burned = cuisiné { $minutes } min
item-gas = { $level ->
    [none] pas de gaz
    [low] peu de gaz
    [half] gaz à moitié
    [good] assez de gaz
   *[full] gaz plein
}
item-flame = { $look ->
    [blue] flamme bleue
    [yellow] flamme jaune
    [weak] flamme faible
    [goes_out] flamme qui s'éteint
   *[will_not_light] ca ne s'allume pas
}
item-temperature = { $of ->
    [air] air { $celsius } C
   *[tank] cuve { $celsius } C
}
item-ph = pH { $value }
item-pressure = pression { $cm } cm
item-tank = cuve de { $litres } L
item-store = sac à gaz de { $litres } L
item-walls = cuve { $look ->
    [black] noire
    [white] blanche
    [insulated] bien couverte
    [greenhouse] sous serre
    [heated] chauffée
   *[buried] enterrée
}
item-started = démarré { $days ->
    [0] aujourd'hui
    [1] hier
   *[other] il y a { $days } jours
}
item-removed = retiré { $amount }
item-alkali = { $what ->
    [soda] bicarbonate
    [lime] chaux
   *[ash] cendre
} { $amount }
item-alkali-bare = { $what ->
    [soda] bicarbonate
    [lime] chaux
   *[ash] cendre
}
item-measure = 1 { $measure } fait { $litres } L
item-people = { $count ->
    [one] { $count } personne
   *[other] { $count } personnes
}
item-place = { $name }
item-seeded = démarré avec { $feed } { $amount }
item-sign = { $sign ->
    [sour_smell] odeur aigre
    [egg_smell] odeur d'oeuf pourri
    [bad_smell] mauvaise odeur
    [foam] mousse
    [scum] croute dessus
    [overflow] ca déborde
    [level_drop] le niveau baisse
    [inlet_blocked] entrée bouchée
    [outlet_blocked] sortie bouchée
    [gas_line_blocked] tuyau de gaz bouché
    [water_in_gas_line] eau dans le tuyau de gaz
    [green_liquid] liquide vert
    [thick_slurry] mélange épais
    [watery_slurry] mélange trop clair
    [flies] mouches
    [worms] vers
    [bag_torn] sac à gaz déchiré
    [tank_cracked] cuve fendue
    [gas_leak] fuite de gaz
    [fire] feu
   *[unwell] quelqu'un se sent mal
}
item-day = { $item } ({ $days ->
    [1] hier
   *[other] il y a { $days } jours
})
corrected = Corrigé: { $what }.
not-mended = Je corrige quoi? Ecrivez tout, comme: mis 3 kg de restes, 6 L d'eau.

### What to do
do-feed-today = Aujourd'hui vous pouvez mettre { $amount } avec { $water } d'eau.
do-feed-tomorrow = Demain mettez au plus { $amount } avec { $water } d'eau.
do-less-today = Mettez moins aujourd'hui: { $amount } avec { $water } d'eau.
do-less-tomorrow = Mettez moins demain: { $amount } avec { $water } d'eau.
do-feed-dry-today = Aujourd'hui vous pouvez mettre { $amount }, sans ajouter d'eau.
do-feed-dry-tomorrow = Demain mettez au plus { $amount }, sans ajouter d'eau.
do-more-today = Aujourd'hui vous pouvez encore mettre { $amount }.
do-hold = { $days ->
    [one] Ne mettez rien aujourd'hui svp.
   *[other] Ne mettez rien pendant { $days } jours svp, dès aujourd'hui.
}
do-hold-tomorrow = { $days ->
    [one] Plus rien aujourd'hui, et rien demain svp.
   *[other] Ne mettez rien pendant { $days } jours svp, dès demain.
}
do-same-today = Pareil aujourd'hui: { $amount } avec { $water } d'eau.
do-same-tomorrow = Demain pareil: { $amount } avec { $water } d'eau.
do-same-dry-today = Pareil aujourd'hui: { $amount }, sans ajouter d'eau.
do-same-dry-tomorrow = Demain pareil: { $amount }, sans ajouter d'eau.
do-hold-still = { $days ->
    [one] Toujours rien aujourd'hui svp.
   *[other] Toujours rien svp: { $days } jours, dès aujourd'hui.
}
do-water = Ajoutez { $water } d'eau avant de remettre à manger.
do-warm = Gardez la cuve au chaud: toile sombre le jour, couvertures ou paille la nuit. Nourrissez à l'heure la plus chaude.
do-warm-feed = Il fait froid dedans, elle mange peu: au plus { $amount } par jour. Gardez-la au chaud.
do-check-gas = Passez de l'eau savonneuse sur les joints du tuyau de gaz, dehors, sans feu. Les bulles montrent la fuite.
remedy-slurry = Le repos seul peut ne pas suffire. Demandez à l'installateur d'échanger { $amount } contre le liquide d'une cuve qui marche bien.
alkali-careful = Bicarbonate, chaux ou cendre: seulement comme dit votre technicien. Trop lui fait du mal.
gas-today = Gaz pour environ { $minutes } min aujourd'hui.
gas-none-yet = Pas encore de gaz pour cuisiner.
gas-little = Très peu de gaz aujourd'hui.

### Why
why-usual = Tout va bien.
why-overloaded = Ces jours-ci elle a eu plus qu'elle ne peut manger, et trop la rend aigre.
why-load_rising = La quantité monte trop vite. Ses petits microbes ont besoin de temps pour grandir.
why-underfed = Elle a faim: un peu plus à manger donne plus de gaz.
why-fed_today = Elle a eu sa part pour aujourd'hui.
why-spread_out = Peu et souvent vaut mieux que beaucoup d'un coup.
why-after_gap = Après une pause, reprenez petit. Ne rattrapez pas les jours manqués.
why-no_seed = Il faut de la bouse de vache fraiche pour démarrer: sans elle, tout devient aigre.
why-seed_resting = La bouse doit travailler d'abord. Nourrissez quand la flamme tient 3 jours.
why-start_up = Elle est jeune. On augmente de semaine en semaine.
why-first_gas = Laissez partir le premier sac de gaz dehors, loin du feu: il contient de l'air. Essayez le réchaud avec le suivant.
why-souring = Elle devient aigre: trop d'acide, pas assez de microbes. Le repos la guérit.
why-recovering = Elle guérit. Donnez peu, jusqu'à ce que la flamme soit forte.
why-sour_risk = Avec plus, elle peut devenir aigre.
why-too_thick = Le mélange est trop épais pour couler et se digérer.
why-too_thin = Trop d'eau emporte ses microbes.
why-grease = L'huile et la graisse flottent et l'étouffent: une ou deux cuillères par jour, pas plus.
why-citrus = Les peaux d'orange et de citron la ralentissent: juste un peu avec autre chose.
why-protein = Trop de viande, poisson ou oeuf donne du mauvais gaz: mélangez avec autre chose.
why-salt = Ce qui est très salé lui fait du mal.
why-inhibitor = Ca tue ce qui vit dedans. N'en mettez plus, seulement de l'eau et un peu de bouse.
why-not_food = Elle ne digère pas ca et ca va la boucher. Enlevez de dehors ce que vous pouvez attraper.
why-needs_dung = Avec les restes de cuisine seuls il lui manque quelque chose: une pelle de bouse de vache fraiche par semaine.
why-cold = Le froid la ralentit, et ce qui reste dedans devient aigre.
why-too_hot = Il fait trop chaud dedans. Mettez-la à l'ombre.
why-cold_coming = Des jours plus froids arrivent: elle mangera moins.
why-low_gas = Moins de gaz que normal.
why-leak_suspected = Elle devrait donner plus de gaz: peut-etre une fuite.
why-gas_unused = Il y a beaucoup de gaz: utilisez-le avant de remettre à manger.
why-part = Une pièce est à vérifier.
why-people_at_risk = Le gaz brule et empoisonne. Les gens d'abord.
why-size_unknown = Je ne sais pas encore la taille de votre cuve, alors je reste prudent.
why-amount_unknown = Je ne sais pas combien est entré, alors je reste prudent.
why-intro = Parce que: { $reasons }

### Signs: one step a family can take
sign-sour_smell = Une odeur aigre veut dire trop d'acide.
sign-egg_smell = Odeur d'oeuf à la sortie: normale, mais poison, ne respirez pas. Dedans ou forte: sortez tous, écrivez.
sign-bad_smell = Contre l'odeur, mettez un film fin d'huile de cuisine sur l'eau des tuyaux ouverts.
sign-scum = Remuez doucement de dehors par l'entrée, puis mettez plus fin et avec plus d'eau.
sign-outlet_blocked = Débouchez la sortie de dehors avec un long baton. N'y mettez jamais la main, n'entrez jamais.
sign-gas_line_blocked = Fermez la vanne, puis cherchez un pli ou de l'eau dans le tuyau de gaz. Pas de feu à coté.
sign-water_in_gas_line = Fermez la vanne et videz l'eau au point le plus bas du tuyau de gaz. Pas de feu à coté.
sign-green_liquid = La lumière entre et fait pousser du vert: couvrez la cuve ou peignez-la en sombre.
sign-thick_slurry = Le mélange est trop épais.
sign-watery_slurry = Mettez moins d'eau les prochaines fois.
sign-flies = Couvrez l'entrée et la sortie, et rincez l'entrée chaque fois.
sign-worms = Couvrez la fosse de sortie et rincez l'entrée chaque fois.
sign-bag_torn = N'utilisez pas le gaz. Fermez la vanne, pas de feu à coté, et appelez l'installateur pour réparer le sac.
sign-tank_cracked = Eloignez les gens et le feu de la cuve et appelez l'installateur. Ne mettez rien avant la réparation.
flame-yellow = Ouvrez un peu le trou d'air du bruleur et enlevez la suie.

### Causes of a trouble: one step for each, and one question that a yes answers for it
cause-little_fed = Elle a faim: donnez chaque jour ce que je dis, le gaz vient en quelques jours.
cause-overfed = Elle a eu plus qu'elle ne peut manger: donnez seulement ce que je dis.
cause-souring = Il y a peut-etre trop d'acide: donnez les petits repas que je dis, ou rien.
cause-cold = Il fait froid dedans: couvrez-la bien la nuit, donnez à l'heure la plus chaude.
cause-young = Elle est jeune: laissez partir le premier gaz dehors, loin du feu, et essayez demain.
cause-poisoned = Plus de savon, de javel ni de remèdes. Donnez seulement de l'eau et un peu de bouse fraiche.
cause-fat = Pas d'huile, de gras ni de viande pendant une semaine.
cause-leak = Passez de l'eau savonneuse sur sac, vanne et joints, dehors, sans feu: des bulles, c'est une fuite.
cause-used_up = Vous brulez presque tout: fermez la vanne entre les repas, laissez le sac se remplir.
cause-water_in_pipe = Fermez la vanne et videz l'eau au point le plus bas du tuyau. Pas de feu à coté.
cause-burner_air = Fermez un peu le trou d'air du bruleur, ouvrez le gaz doucement et rallumez.
cause-light_in = Couvrez ou peignez la cuve en sombre: la lumière fait des algues et gate le gaz.
cause-siphon = La sortie aspire peut-etre: son T doit etre ouvert en haut. Remettez de l'eau à la marque.
cause-tank_leak = Marquez le niveau. S'il a encore baissé demain, appelez l'installateur. Gardez le feu loin.
cause-much_water = Mettez moins d'eau les prochaines fois.
cause-outlet_shut = Débouchez la sortie de dehors avec un long baton. N'y mettez jamais la main, n'entrez jamais.
cause-thick_feed = Poussez avec un long baton et rincez. Coupez petit et mettez plus d'eau.
cause-vapour_lock = Du gaz bloque l'entrée: remuez doucement avec un long baton, puis versez lentement. Pas de feu à coté.
call-fitter = Ca dure depuis des jours: demandez à votre installateur de venir voir.
ask-cause-little_fed = A-t-elle eu moins à manger que d'habitude cette semaine?
ask-cause-overfed = A-t-elle eu plus que ce que j'ai dit?
ask-cause-souring = La sortie sent-elle aigre, comme du vinaigre?
ask-cause-cold = Les nuits sont-elles plus froides ces jours-ci?
ask-cause-young = Attend-elle encore sa première bonne flamme?
ask-cause-poisoned = Du savon, de la javel, un remède ou du poison est-il tombé dedans?
ask-cause-fat = A-t-elle eu de l'huile, du gras ou beaucoup de viande?
ask-cause-leak = Le sac devient-il mou la nuit, meme sans cuisiner?
ask-cause-used_up = Avez-vous cuisiné plus longtemps que d'habitude?
ask-cause-water_in_pipe = La flamme saute, ou le tuyau gargouille?
ask-cause-burner_air = La flamme se décolle du bruleur, ou siffle?
ask-cause-light_in = Le liquide est vert, ou la lumière entre dans la cuve?
ask-cause-siphon = La sortie a-t-elle beaucoup coulé d'un coup?
ask-cause-tank_leak = Le sol est-il mouillé sous la cuve ou les tuyaux?
ask-cause-much_water = La pluie ou beaucoup d'eau est-elle entrée?
ask-cause-outlet_shut = La sortie reste-t-elle sèche quand vous mettez à manger?
ask-cause-thick_feed = Les morceaux étaient-ils gros ou secs?
ask-cause-vapour_lock = Quand vous versez, ca fait des bulles et ca remonte?

### Answers
answer-water = Pour { $feed } à manger, mettez environ { $water } d'eau.
answer-gas = Aujourd'hui vous avez du gaz pour environ { $minutes } min de cuisine.
answer-digestate = 1 part de liquide pour 3 d'eau, sur le sol. Attendez un mois avant la récolte, jamais sur les feuilles ni ce qu'on mange cru. Lavez-vous les mains.
answer-start_up = Bouse de vache fraiche et eau, moitié-moitié, au chaud, au noir. Nourrissez quand la flamme tient 3 jours. Laissez partir le premier gaz dehors.
answer-why-usual = C'est ce que votre cuve peut manger, selon sa taille, sa chaleur et ce qu'elle a eu.
answer-can-yes = Oui, { $feed }: c'est bon pour elle. Coupez petit et mélangez avec de l'eau.
answer-can-yes-short = Oui, { $feed }: c'est bon.
answer-can-some = Oui, mais juste un peu, avec autre chose: { $feed }.
answer-can-no = Non, ne mettez pas ca dans la cuve svp: { $feed }.
answer-history = 7 derniers jours: { $kg } kg en { $days ->
    [one] { $days } jour
   *[other] { $days } jours
}, { $water } L d'eau, cuisiné { $minutes } min.
answer-history-none = Je n'ai rien noté pour les 7 derniers jours. Dites-moi ce que vous avez mis.
answer-status-good = Votre cuve va bien.
answer-status-watch = Votre cuve a besoin de soin.

### Questions, one at a time
ask-tank = Votre cuve contient combien de litres?
ask-started = La cuve a été remplie quand, la première fois? Comme: il y a 3 semaines.
ask-seed = Qu'avez-vous mis pour démarrer, et combien? Comme: 40 kg de bouse de vache.
ask-place = Vous etes dans quelle ville, ou près de laquelle?
ask-bucket = Chez vous, 1 { $measure } contient combien de litres?
ask-usual = Que mettez-vous presque tous les jours, et combien?
ask-store = Votre sac à gaz contient combien de litres?
ask-walls = Votre cuve est noire, blanche, bien couverte ou enterrée?
ask-people = Vous cuisinez pour combien de personnes?
ask-amount = { $feed }: combien, en kg ou en { $measure }?
ask-sure-amount = "{ $said }", c'est beaucoup. C'est juste? Répondez oui, ou la bonne quantité.
doubt-amount = "{ $said }", c'est combien? Comme: 2 kg ou 1 seau.
doubt-unit = "{ $said }": en kg ou en { $measure }?
doubt-feed = "{ $said }", c'est quelle nourriture?
doubt-two = "{ $said }": { $first } ou { $second }?
doubt-one = "{ $said }": { $first }, ou autre chose?
doubt-water = "{ $said }" de quoi: eau ou { $first }?
doubt-day = "{ $said }": c'était quel jour?
doubt-sign = C'est quoi le problème: odeur, fuite, pas de gaz, ou autre chose?
doubt-word = Pardon, je n'ai pas compris "{ $said }". Ecrivez comme: mis 3 kg de restes, 6 L d'eau.

### Texts we start
remind-silence = { $days ->
    [one] { $days } jour
   *[other] { $days } jours
} sans nouvelles. Comment va la cuve? Dites-moi ce que vous mettez et comment brule le gaz. SILENCE coupe les rappels.
remind-rest-over = Le repos est fini.
remind-rest-on = Elle a besoin de plus de repos.
remind-cold = Des semaines plus froides arrivent. Couvrez bien la cuve et mettez moins: je vous dirai combien. SILENCE coupe les rappels.
remind-oil = C'est le moment de remettre un film fin d'huile de cuisine sur l'eau des tuyaux ouverts, contre l'odeur. SILENCE coupe les rappels.
remind-trap = Videz svp l'eau au point bas du tuyau de gaz aujourd'hui. Vanne fermée, pas de feu à coté. SILENCE coupe les rappels.
remind-yearly = Une fois par an un installateur doit voir cuve, tuyaux, vanne et sac à gaz: appelez le votre svp. SILENCE coupe les rappels.
remind-leak = Une fois par mois: eau savonneuse sur tous les joints de gaz, sans feu. Des bulles = une fuite. SILENCE coupe les rappels.
warn-souring = Ne mettez rien maintenant svp: votre cuve devient peut-etre aigre. Dites-moi son odeur et comment est la flamme.

### To field workers
staff-alarm = DANGER chez { $name } ({ $number }): { $signs }. Ecrit: "{ $said }". Répondez OK { $id } si vous y allez.
staff-alarm-again = TOUJOURS OUVERT: danger chez { $name } ({ $number }): { $signs }. Répondez OK { $id } si vous y allez.
staff-ok = Merci. { $name } est à vous. Ecrivez: note { $id } et ce que vous avez trouvé.
staff-person = { $name } ({ $number }) vous demande de l'appeler.
staff-unknown = Je ne connais pas le foyer "{ $said }". Ecrivez son numéro ou son nom.
staff-which = Lequel? Ecrivez son numéro: { $list }.
staff-help = Ecrivez: ma liste, history 12, for 12: fed 5 kg, note 12 vanne neuve, dis à 12 je viens mardi, je prends 12, je rends 12, lever la limite 12, ok 12, fait 12.
staff-history = { $name }: 7 j, { $kg } kg en { $days } j, OLR { $olr } kg VS/m3/j, eau { $water } L, cuisiné { $minutes } min. Conseil: { staff-verdict }, { $ration } kg/j, risque { $risk }%. Dernier message il y a { $ago } j.
staff-history-more = PLUS le dit jour par jour.
staff-verdict = { $verdict ->
   *[feed] charger
    [less] charger moins
    [hold] ne pas charger
    [water] ajouter de l'eau
    [warm] garder au chaud
    [check] vérifier
    [danger] danger
}
staff-noted = Pour { $name }: { $reply }
staff-needs = { $count ->
    [one] { $count } a
   *[other] { $count } ont
} besoin de vous. { $list }
staff-needs-item = { $name }: { $need ->
    [danger] DANGER
    [souring] devient aigre
    [person] demande quelqu'un
    [silent] sans nouvelles
    [rest] au repos
   *[leak] fuite?
}.
staff-needs-none = Personne n'a besoin de vous maintenant.
staff-needs-rest = { $count ->
    [one] Et { $count } autre
   *[other] Et { $count } autres
}: PLUS.
staff-note = Noté pour { $name }.
staff-take = { $name } est à vous maintenant. JE RENDS { $id } pour le rendre.
staff-hand-back = { $name } n'est plus à vous.
staff-done = Réglé: { $name }. Tous le voient.
staff-done-none = Personne ne suivait { $name }. D'abord: je prends { $id }.
staff-not-yours = { $name } n'est pas à vous.
staff-tell = Envoyé à { $name }.
staff-tell-none = { $name } n'a pas de téléphone qui recoit les messages.
staff-word = De { $worker }: { $text }
staff-what = J'écris quoi? Comme: note 12 vanne neuve, ou: dis à 12 je viens mardi.
staff-lift = { $name } peut écrire sans limite pendant un jour.
staff-viewer = Vous pouvez voir, mais pas agir. Demandez à votre responsable.
staff-pin-ask = Pour cela il me faut votre PIN, une fois par jour. Ecrivez: pin et votre numéro.
staff-pin-choose = Pour cela il faut un PIN. Choisissez 4 à 8 chiffres et écrivez, comme: pin 4711.
staff-pin-form = Un PIN a 4 à 8 chiffres, comme: pin 4711.
staff-pin-set = C'est votre PIN à partir de maintenant. Je le demande une fois par jour.
staff-pin-ok = Merci, c'est bon pour aujourd'hui.
staff-pin-wrong = Ce PIN est faux. Essais restants: { $left }.
staff-pin-locked = Trop de faux PIN: bloqué une heure. Votre responsable est prévenu.
staff-pin-told = { $worker } ({ $number }) est bloqué une heure après de faux PIN. Le téléphone est dans de bonnes mains?

### Amounts
decimal-mark = ,
number-half = { $unit ->
    [basin] une demi-
    [tin] une demi-
    [pot] une demi-
    [plate] une demi-
    [cup] une demi-
    [jug] une demi-
    [bottle] une demi-
    [handful] une demi-
    [spoon] une demi-
    [shovel] une demi-
    [crate] une demi-
    [wheelbarrow] une demi-
   *[other] un demi-
}{ $measure }
unit-kg = { $n } kg
unit-g = { $n } g
unit-l = { $n } L
unit-bucket = { $n } { $count ->
    [one] seau
   *[other] seaux
}
unit-basin = { $n } { $count ->
    [one] bassine
   *[other] bassines
}
unit-jerrycan = { $n } { $count ->
    [one] bidon
   *[other] bidons
}
unit-tin = { $n } { $count ->
    [one] boite
   *[other] boites
}
unit-pot = { $n } { $count ->
    [one] marmite
   *[other] marmites
}
unit-bowl = { $n } { $count ->
    [one] bol
   *[other] bols
}
unit-plate = { $n } { $count ->
    [one] assiette
   *[other] assiettes
}
unit-cup = { $n } { $count ->
    [one] tasse
   *[other] tasses
}
unit-glass = { $n } { $count ->
    [one] verre
   *[other] verres
}
unit-jug = { $n } { $count ->
    [one] cruche
   *[other] cruches
}
unit-bottle = { $n } { $count ->
    [one] bouteille
   *[other] bouteilles
}
unit-handful = { $n } { $count ->
    [one] poignée
   *[other] poignées
}
unit-spoon = { $n } { $count ->
    [one] cuillère
   *[other] cuillères
}
unit-shovel = { $n } { $count ->
    [one] pelle
   *[other] pelles
}
unit-bag = { $n } { $count ->
    [one] sachet
   *[other] sachets
}
unit-sack = { $n } { $count ->
    [one] sac
   *[other] sacs
}
unit-basket = { $n } { $count ->
    [one] panier
   *[other] paniers
}
unit-crate = { $n } { $count ->
    [one] caisse
   *[other] caisses
}
unit-wheelbarrow = { $n } { $count ->
    [one] brouette
   *[other] brouettes
}
unit-piece = { $n }
measure-bucket = seau
measure-basin = bassine
measure-jerrycan = bidon
measure-tin = boite
measure-pot = marmite
measure-bowl = bol
measure-plate = assiette
measure-cup = tasse
measure-glass = verre
measure-jug = cruche
measure-bottle = bouteille
measure-handful = poignée
measure-spoon = cuillère
measure-shovel = pelle
measure-bag = sachet
measure-sack = sac
measure-basket = panier
measure-crate = caisse
measure-wheelbarrow = brouette
measure-piece = morceau
language-name = Francais

### Feeds
feed-cooked_rice = riz
feed-maize_meal = pate de mais
feed-bread = pain
feed-flatbread = galette
feed-pasta = pates
feed-porridge = bouillie
feed-potato = pommes de terre
feed-potato_peel = peaux de pommes de terre
feed-cassava = manioc
feed-cassava_peel = peaux de manioc
feed-sweet_potato = patate douce
feed-yam = igname
feed-plantain = banane plantain
feed-plantain_peel = peaux de plantain
feed-flour = farine
feed-maize = mais
feed-banana = banane
feed-banana_peel = peaux de banane
feed-mango = mangue
feed-papaya = papaye
feed-pineapple = ananas
feed-citrus_peel = peaux d'orange et de citron
feed-melon_rind = peaux de pastèque
feed-avocado = avocat
feed-apple = pomme
feed-fruit_waste = restes de fruits
feed-tomato = tomates
feed-onion = oignons
feed-cabbage = chou
feed-leafy_greens = légumes-feuilles
feed-carrot = carottes
feed-pumpkin = giraumon (courge)
feed-vegetable_waste = restes de légumes
feed-beans = haricots
feed-lentils = lentilles
feed-egg = oeufs
feed-meat = viande
feed-fish = poisson
feed-milk = lait
feed-whey = petit-lait
feed-cheese = fromage
feed-cooking_oil = huile de cuisine
feed-fat = graisse
feed-sugar = sucre
feed-sweet_drink = boisson sucrée
feed-food_waste = restes
feed-coffee_grounds = marc de café
feed-tea_leaves = feuilles de thé
feed-spent_grain = drèche
feed-starch_water = eau d'amidon
feed-cattle_manure = bouse de vache
feed-pig_manure = fumier de porc
feed-chicken_manure = fiente de poule
feed-goat_manure = crottes de chèvre
feed-horse_manure = crottin de cheval
feed-human_waste = déchets de toilettes
feed-digestate = liquide de la cuve
feed-grass = herbe
feed-leaves = feuilles
feed-water_hyacinth = jacinthe d'eau
feed-straw = paille
feed-bone = os
feed-eggshell = coquilles d'oeuf
feed-wood = bois
feed-soil = terre
feed-ash = cendre
feed-plastic = plastique
feed-paper = papier
feed-soap = savon
feed-chemical = produits chimiques

# A text that could not be worked in many tries.
sorry = Pardon, je n'ai pas pu traiter votre dernier message. Il est gardé. Dites-le moi encore svp avec d'autres mots.
