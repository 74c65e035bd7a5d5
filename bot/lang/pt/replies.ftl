# What Bellyful says in Portuguese, to be understood in Mozambique, Angola and Brazil; only letters of the GSM alphabet
# (é and à are in it; the other accents are left off, as people text).

### Who we are and how we talk
hello = Bom dia! Sou o Bellyful. Ajudo a alimentar o seu tanque de biogas. Isto é um conselho: primeiro as regras locais e o seu técnico. Escreva PARAR para sair, AJUDA para ajuda.
hello-again = Bom dia! Diga o que pos no tanque, assim: 3 kg de restos, 6 L de agua. Ou pergunte: quanto posso por?
help = Diga o que pos: 3 kg de restos, 6 L de agua. Como esta o gas: pouco gas, cozinhei 50 min. Ou pergunte: quanto posso por? PARAR para sair, DESFAZER apaga o ultimo.
stopped = Bellyful: nao mandamos mais mensagens. Se cheirar a gas, saia e escreva mesmo assim. Escreva VOLTAR para voltar.
started = Que bom ter voltado! Diga o que poe e como arde o gas, e eu digo o que fazer a seguir.
muted = Nao mando mais lembretes. Se escrever, eu respondo.
forget-sure = Apago para sempre o seu nome, numero e mensagens? Responda SIM para apagar. Com outra resposta ficam.
forgotten = Pronto. O seu nome, numero e mensagens foram apagados. Tudo de bom, e o fogo sempre longe do gas.
kept = Esta bem, fica tudo como esta.
language-is = A partir de agora escrevo em portugues.
language-unknown = Posso escrever: { $languages }. Qual prefere?
nothing-more = Era tudo. Pergunte o que quiser sobre o seu tanque.
undone = Apagado: { $what }.
nothing-to-undo = Nao ha nada para apagar.
welcome = De nada. Diga cada dia o que poe, e eu digo o que vem a seguir.
joined = Este telefone agora é do mesmo tanque.
too-long = Essa mensagem é longa demais para mim. Por favor mande em partes curtas.
person-called = Pedi ao seu técnico de campo para lhe ligar.
person-none = Nao encontro um técnico de campo para si. Por favor pergunte a quem fez o seu tanque.

### Danger. No question, no dose in this text
alarm = Saiam todos ja! La dentro nada de fogo, interruptor ou telefone. Feche o gas so se for seguro ao sair. { $number ->
    [none] De fora chame ajuda.
   *[other] De fora ligue { $number }.
} Nao voltem a entrar nem na fossa.
safe-again = Fez bem em escrever. Nao acenda nada até um técnico ver todas as juntas com agua e sabao. Quando nada vazar, escreva-me e continuamos.
safe-again-first = Nao acenda nada até um técnico ver todas as juntas com agua e sabao.

### What we heard
heard = Anotado: { $what }.
item-fed = { $amount } de { $feed }
item-fed-unknown = { $feed }, nao sei quanto
item-water = { $amount } de agua
item-water-none = sem agua
item-water-unknown = agua
item-not-fed = { $days ->
    [one] sem comida
   *[other] sem comida { $days } dias
}
item-usual = quase sempre { $amount } de { $feed } por dia
item-burned = cozinhou { $minutes } min
item-gas = { $level ->
    [none] sem gas
    [low] pouco gas
    [half] gas pela metade
    [good] bom gas
   *[full] gas cheio
}
item-flame = chama { $look ->
    [blue] azul
    [yellow] amarela
    [weak] fraca
    [goes_out] que se apaga
   *[will_not_light] que nao acende
}
item-temperature = { $of ->
    [air] ar a { $celsius } C
   *[tank] tanque a { $celsius } C
}
item-ph = pH { $value }
item-pressure = pressao { $cm } cm
item-tank = tanque de { $litres } L
item-store = saco de gas de { $litres } L
item-walls = tanque { $look ->
    [black] preto
    [white] branco
    [insulated] bem coberto
    [greenhouse] em estufa
    [heated] aquecido
   *[buried] enterrado
}
item-started = comecou { $days ->
    [0] hoje
    [1] ontem
   *[other] ha { $days } dias
}
item-removed = tirou { $amount }
item-alkali = { $amount } de { $what ->
    [soda] bicarbonato
    [lime] cal
   *[ash] cinza
}
item-alkali-bare = { $what ->
    [soda] bicarbonato
    [lime] cal
   *[ash] cinza
}
item-measure = 1 { $measure } tem { $litres } L
item-people = { $count ->
    [one] { $count } pessoa
   *[other] { $count } pessoas
}
item-place = { $name }
item-seeded = comecou com { $amount } de { $feed }
item-sign = { $sign ->
    [sour_smell] cheiro azedo
    [egg_smell] cheiro a ovo podre
    [bad_smell] mau cheiro
    [foam] espuma
    [scum] crosta em cima
    [overflow] esta a transbordar
    [level_drop] nivel a baixar
    [inlet_blocked] entrada entupida
    [outlet_blocked] saida entupida
    [gas_line_blocked] tubo de gas entupido
    [water_in_gas_line] agua no tubo de gas
    [green_liquid] liquido verde
    [thick_slurry] mistura grossa
    [watery_slurry] mistura aguada
    [flies] moscas
    [worms] bichos (larvas)
    [bag_torn] saco de gas rasgado
    [tank_cracked] tanque rachado
    [gas_leak] fuga de gas
    [fire] fogo
   *[unwell] alguém passa mal
}
item-day = { $item } ({ $days ->
    [1] ontem
   *[other] ha { $days } dias
})
corrected = Corrigido: { $what }.
not-mended = O que corrijo? Escreva tudo, assim: pus 3 kg de restos, 6 L de agua.

### What to do
do-feed-today = Hoje pode por { $amount } com { $water } de agua.
do-feed-tomorrow = Amanha ponha até { $amount } com { $water } de agua.
do-less-today = Hoje ponha menos: { $amount } com { $water } de agua.
do-less-tomorrow = Amanha ponha menos: { $amount } com { $water } de agua.
do-feed-dry-today = Hoje pode por { $amount }, sem mais agua.
do-feed-dry-tomorrow = Amanha ponha até { $amount }, sem mais agua.
do-more-today = Hoje ainda pode por { $amount }.
do-hold = { $days ->
    [one] Hoje nao ponha comida, por favor.
   *[other] Nao ponha comida { $days } dias, por favor, a partir de hoje.
}
do-hold-tomorrow = { $days ->
    [one] Hoje nao ponha mais, e amanha nada, por favor.
   *[other] Nao ponha comida { $days } dias, por favor, a partir de amanha.
}
do-same-today = Hoje igual: { $amount } com { $water } de agua.
do-same-tomorrow = Amanha igual: { $amount } com { $water } de agua.
do-same-dry-today = Hoje igual: { $amount }, sem mais agua.
do-same-dry-tomorrow = Amanha igual: { $amount }, sem mais agua.
do-hold-still = { $days ->
    [one] Hoje continue sem por comida.
   *[other] Continue sem por comida: { $days } dias, a partir de hoje.
}
do-water = Junte { $water } de agua antes de por mais comida.
do-warm = Mantenha o tanque quente: pano escuro de dia, mantas ou palha de noite. Ponha a comida na hora mais quente.
do-warm-feed = La dentro esta frio e ele come pouco: até { $amount } por dia. Mantenha quente.
do-check-gas = Veja as juntas do tubo de gas com agua e sabao, ao ar livre, sem fogo. As bolhas mostram a fuga.
remedy-slurry = So o descanso talvez nao chegue. Peca ao instalador para trocar { $amount } por liquido de um tanque que trabalha bem.
alkali-careful = Bicarbonato, cal ou cinza so como disser o seu técnico: demais faz mal.
gas-today = Hoje ha gas para uns { $minutes } min.
gas-none-yet = Ainda nao ha gas para cozinhar.
gas-little = Hoje ha muito pouco gas.

### Why
why-usual = Parece tudo bem.
why-overloaded = Nestes dias recebeu mais do que pode comer, e comida demais deixa o tanque azedo.
why-load_rising = A comida sobe muito depressa. Os bichinhos dele precisam de dias para crescer.
why-underfed = Esta com fome: um pouco mais de comida traz mais gas.
why-fed_today = Hoje ja comeu a sua parte.
why-spread_out = Pouco e muitas vezes é melhor que muito de uma vez.
why-after_gap = Depois de uma pausa comece com pouco. Nao reponha os dias perdidos.
why-no_seed = Precisa de estrume fresco de vaca para comecar: sem ele a comida so azeda.
why-seed_resting = Primeiro o estrume tem de trabalhar. Comida so quando a chama durar 3 dias.
why-start_up = Ainda é novo. A comida sobe de semana em semana.
why-first_gas = Solte o primeiro saco de gas ao ar livre, longe do fogo: traz ar. Experimente o fogao com o seguinte.
why-souring = Esta a ficar azedo: muito acido, poucos bichinhos. O descanso cura.
why-recovering = Esta a recuperar. Pouca comida até a chama ficar forte.
why-sour_risk = Com mais pode azedar.
why-too_thick = A mistura esta grossa demais: nao corre nem digere.
why-too_thin = Tanta agua leva os bichinhos embora.
why-grease = Oleo e gordura boiam e sufocam o tanque: so uma ou duas colheres por dia.
why-citrus = Cascas de laranja e limao fazem-no lento: so poucas, com outra comida.
why-protein = Muita carne, peixe ou ovo faz mau gas: misture com outra comida.
why-salt = Comida muito salgada faz-lhe mal.
why-inhibitor = Isso mata o que vive la dentro. Nao ponha mais; so agua e um pouco de estrume.
why-not_food = Isso nao é comida para o tanque e vai entupir. Tire de fora o que alcancar.
why-needs_dung = So com comida de cozinha falta-lhe algo: ponha uma pa de estrume fresco de vaca por semana.
why-cold = O frio deixa-o lento, e a comida parada azeda.
why-too_hot = Esta quente demais la dentro. Ponha sombra.
why-cold_coming = Vem dias mais frios: vai comer menos.
why-low_gas = Ha menos gas do que devia.
why-leak_suspected = Devia ter dado mais gas do que encontrou: talvez haja uma fuga.
why-gas_unused = Ha muito gas: use-o antes de por mais comida.
why-part = Ha uma parte que precisa de ser vista.
why-people_at_risk = O gas queima e envenena. Primeiro as pessoas.
why-size_unknown = Ainda nao sei o tamanho do seu tanque, por isso vou com cuidado.
why-amount_unknown = Nao sei quanto entrou, por isso vou com cuidado.
why-intro = Porque: { $reasons }

### Signs: one step a family can take
sign-sour_smell = Cheiro azedo quer dizer muito acido.
sign-egg_smell = Cheiro a ovo na saida é normal, mas é veneno: nao respire. Em casa ou forte: saiam todos, escrevam-me.
sign-bad_smell = Contra o cheiro ponha uma camada fina de oleo de cozinha sobre a agua dos tubos abertos.
sign-scum = Mexa devagar de fora pela entrada, e ponha comida mais fina e com mais agua.
sign-outlet_blocked = Desentupa a saida de fora com um pau comprido. Nunca meta a mao nem entre.
sign-gas_line_blocked = Feche a torneira do gas e procure uma dobra ou agua no tubo. Sem fogo por perto.
sign-water_in_gas_line = Feche a torneira e tire a agua no ponto mais baixo do tubo de gas. Sem fogo por perto.
sign-green_liquid = Entra luz e cresce limo verde: cubra o tanque ou pinte de escuro.
sign-thick_slurry = A mistura esta grossa demais.
sign-watery_slurry = Ponha menos agua nas proximas vezes.
sign-flies = Tape a entrada e a saida, e lave a entrada cada vez que puser comida.
sign-worms = Tape a fossa da saida e lave a entrada cada vez que puser comida.
sign-bag_torn = Nao use o gas. Feche a torneira, afaste o fogo e chame o técnico para arranjar o saco.
sign-tank_cracked = Afaste as pessoas e o fogo do tanque e chame o técnico. Nao ponha comida até estar arranjado.
flame-yellow = Abra um pouco o buraco de ar do fogao e limpe a fuligem.

### Causes of a trouble: one step for each, and one question that a yes answers for it
cause-little_fed = Tem fome: ponha cada dia o que digo, e o gas vem em alguns dias.
cause-overfed = Recebeu mais do que pode comer: ponha so o que digo.
cause-souring = Talvez haja acido demais: siga o descanso ou as comidas pequenas que digo.
cause-cold = Esta frio por dentro: cubra bem de noite e ponha comida na hora mais quente.
cause-young = É novo: solte o primeiro gas ao ar livre, longe do fogo, e tente amanha.
cause-poisoned = Nada de sabao, lixivia nem remédios. Ponha so agua e algum estrume fresco.
cause-fat = Deixe de fora oleo, gordura e carne por uma semana.
cause-leak = Ponha agua com sabao no saco, torneira e juntas, ao ar livre, sem fogo: se fizer bolhas, ha fuga.
cause-used_up = Usam quase todo o gas que ele faz: feche a torneira entre refeicoes e deixe o saco encher.
cause-water_in_pipe = Feche a torneira e tire a agua no ponto mais baixo do tubo de gas. Sem fogo perto.
cause-burner_air = Feche um pouco o buraco de ar do fogao, abra o gas devagar e tente.
cause-light_in = Cubra ou pinte o tanque de escuro: a luz cria algas verdes e estraga o gas.
cause-siphon = A saida talvez chupe: o T dela deve estar aberto em cima. Ponha agua até à marca.
cause-tank_leak = Marque o nivel. Se amanha baixar outra vez, chame o técnico. Fogo longe.
cause-much_water = Use menos agua nas proximas vezes.
cause-outlet_shut = Desentupa a saida de fora com um pau comprido. Nunca meta a mao nem entre.
cause-thick_feed = Empurre com um pau comprido e lave. Corte miudo e misture com mais agua.
cause-vapour_lock = Ha gas preso na entrada: mexa devagar com um pau comprido e ponha aos poucos. Sem fogo perto.
call-fitter = Ja dura ha dias: chame o seu técnico para ver.
ask-cause-little_fed = O tanque recebeu menos comida esta semana?
ask-cause-overfed = O tanque recebeu mais do que eu disse?
ask-cause-souring = A saida cheira a azedo, como vinagre?
ask-cause-cold = As noites andam mais frias?
ask-cause-young = Ainda espera a primeira boa chama?
ask-cause-poisoned = Entrou sabao, lixivia, remédio ou veneno?
ask-cause-fat = Entrou oleo, gordura ou muita carne?
ask-cause-leak = O saco fica mole de noite, mesmo sem cozinhar?
ask-cause-used_up = Cozinharam mais tempo que de costume?
ask-cause-water_in_pipe = A chama salta ou o tubo gorgoleja?
ask-cause-burner_air = A chama levanta do fogao ou assobia?
ask-cause-light_in = O liquido esta verde, ou entra luz no tanque?
ask-cause-siphon = Saiu muito de uma vez pela saida?
ask-cause-tank_leak = O chao esta molhado por baixo do tanque ou dos tubos?
ask-cause-much_water = Entrou chuva ou muita agua?
ask-cause-outlet_shut = A saida fica seca quando poe comida?
ask-cause-thick_feed = A comida estava em bocados grandes ou secos?
ask-cause-vapour_lock = Quando poe comida, faz bolhas e volta para cima?

### Answers
answer-water = Para { $feed } de comida ponha uns { $water } de agua.
answer-gas = Hoje tem gas para cozinhar uns { $minutes } min.
answer-digestate = 1 parte do liquido com 3 de agua, na terra. Espere um mes antes de colher; nao nas folhas nem no que se come cru. Lave as maos.
answer-start_up = Encha com estrume fresco de vaca e agua, metade-metade, quente e escuro. Comida so quando a chama durar 3 dias. Solte o primeiro gas fora.
answer-why-usual = É o que o seu tanque pode comer agora, pelo tamanho, pelo calor e pelo que recebeu.
answer-can-yes = Sim, { $feed } é boa comida para o tanque. Corte miudo e misture com agua.
answer-can-yes-short = Sim, { $feed } é boa comida.
answer-can-some = Sim, mas so um pouco de { $feed }, e com outra comida.
answer-can-no = Nao, por favor nao ponha { $feed } no tanque.
answer-history = Ultimos 7 dias: { $kg } kg em { $days ->
    [one] { $days } dia
   *[other] { $days } dias
}, { $water } L de agua, cozinhou { $minutes } min.
answer-history-none = Nao tenho nada anotado dos ultimos 7 dias. Diga o que pos.
answer-status-good = O seu tanque parece bem.
answer-status-watch = O seu tanque precisa de cuidado.

### Questions, one at a time
ask-tank = O seu tanque é de quantos litros?
ask-started = Quando encheram o tanque pela primeira vez? Assim: ha 3 semanas.
ask-seed = Com que comecaram o tanque, e quanto? Assim: 40 kg de estrume de vaca.
ask-place = Em que cidade ou vila esta, ou perto de qual?
ask-bucket = Na sua casa, 1 { $measure } tem quantos litros?
ask-usual = O que poe quase todos os dias, e quanto?
ask-store = O seu saco de gas é de quantos litros?
ask-walls = O seu tanque é preto, branco, bem coberto ou enterrado?
ask-people = Cozinha para quantas pessoas?
ask-amount = Quanto foi de { $feed }, em kg ou em { $measure }?
ask-sure-amount = "{ $said }" é muito. Esta certo? Responda sim, ou a quantidade certa.
doubt-amount = Quanto é "{ $said }"? Assim: 2 kg ou 1 balde.
doubt-unit = "{ $said }": em kg ou em { $measure }?
doubt-feed = Que comida é "{ $said }"?
doubt-two = "{ $said }": é { $first } ou { $second }?
doubt-one = "{ $said }": é { $first }, ou o que?
doubt-water = "{ $said }": é agua ou { $first }?
doubt-day = "{ $said }": foi em que dia?
doubt-sign = O que se passa: cheiro, fuga, sem gas, ou outra coisa?
doubt-word = Desculpe, nao entendi "{ $said }". Diga assim: pus 3 kg de restos, 6 L de agua.

### Texts we start
remind-silence = { $days ->
    [one] { $days } dia
   *[other] { $days } dias
} sem noticias. Como esta o tanque? Diga o que pos e como arde o gas. SILENCIO desliga os lembretes.
remind-rest-over = O descanso acabou.
remind-rest-on = Precisa de descansar mais.
remind-cold = Vem semanas mais frias. Cubra bem o tanque e ponha menos: eu digo quanto. SILENCIO desliga os lembretes.
remind-oil = Ponha outra camada fina de oleo de cozinha sobre a agua dos tubos abertos, contra o cheiro. SILENCIO desliga os lembretes.
remind-trap = Hoje tire por favor a agua do ponto mais baixo do tubo de gas. Torneira fechada, sem fogo perto. SILENCIO desliga os lembretes.
remind-yearly = Uma vez por ano um técnico deve ver tanque, tubos, torneira e saco de gas: chame o seu por favor. SILENCIO desliga os lembretes.
remind-leak = Uma vez por mes: agua e sabao em todas as juntas de gas, sem fogo perto. Se fizer bolhas, ha fuga. SILENCIO desliga os lembretes.
warn-souring = Nao ponha comida agora, por favor: o tanque pode estar a azedar. Diga a que cheira e como esta a chama.

### To field workers
staff-alarm = PERIGO em { $name } ({ $number }): { $signs }. Escreveram: "{ $said }". Responda OK { $id } se vai la.
staff-alarm-again = AINDA ABERTO: perigo em { $name } ({ $number }): { $signs }. Responda OK { $id } se vai la.
staff-ok = Obrigado. { $name } fica consigo. Escreva: nota { $id } e o que encontrou.
staff-person = { $name } ({ $number }) pede que lhe ligue.
staff-unknown = Nao conheco a casa "{ $said }". Escreva o numero ou o nome.
staff-which = Qual? Escreva o numero: { $list }.
staff-help = Escreva: minha lista, history 12, for 12: fed 5 kg, nota 12 torneira nova, diga a 12 chego na terca, assumo 12, devolvo 12, tirar limite 12, ok 12, feito 12.
staff-history = { $name }: 7 d, { $kg } kg em { $days } d, OLR { $olr } kg VS/m3/d, agua { $water } L, cozinhou { $minutes } min. Conselho: { staff-verdict }, { $ration } kg/d, risco { $risk }%. Ultima mensagem ha { $ago } d.
staff-history-more = MAIS conta dia a dia.
staff-verdict = { $verdict ->
   *[feed] dar comida
    [less] dar menos
    [hold] nao dar comida
    [water] por agua
    [warm] manter quente
    [check] verificar
    [danger] perigo
}
staff-noted = Para { $name }: { $reply }
staff-needs = { $count ->
    [one] { $count } precisa de si.
   *[other] { $count } precisam de si.
} { $list }
staff-needs-item = { $name }: { $need ->
    [danger] PERIGO
    [souring] a azedar
    [person] pede alguém
    [silent] sem noticias
    [rest] em descanso
   *[leak] fuga?
}.
staff-needs-none = Agora ninguém precisa de si.
staff-needs-rest = E mais { $count }: MAIS.
staff-note = Anotado para { $name }.
staff-take = { $name } agora fica consigo. DEVOLVO { $id } devolve.
staff-hand-back = { $name } ja nao fica consigo.
staff-done = Tratado: { $name }. Todos veem.
staff-done-none = Ninguém tratava de { $name }. Primeiro: assumo { $id }.
staff-not-yours = { $name } nao esta consigo.
staff-tell = Enviado a { $name }.
staff-tell-none = { $name } nao tem telefone que receba mensagens.
staff-word = De { $worker }: { $text }
staff-what = O que escrevo? Assim: nota 12 torneira nova, ou: diga a 12 chego na terca.
staff-lift = { $name } pode escrever sem limite por um dia.
staff-viewer = Pode ver, mas nao mudar nada. Fale com o seu chefe.
staff-pin-ask = Para isto preciso do seu PIN, uma vez por dia. Escreva: pin e o seu numero.
staff-pin-choose = Para isto precisa de um PIN. Escolha 4 a 8 algarismos e escreva, assim: pin 4711.
staff-pin-form = Um PIN tem 4 a 8 algarismos, assim: pin 4711.
staff-pin-set = Este é o seu PIN a partir de agora. Peco uma vez por dia.
staff-pin-ok = Obrigado, vale por hoje.
staff-pin-wrong = Esse PIN esta errado. Tentativas que restam: { $left }.
staff-pin-locked = PIN errado vezes demais: fechado por uma hora. Ja avisei o seu chefe.
staff-pin-told = { $worker } ({ $number }) fica fechado uma hora por PIN errado. O telefone esta em boas maos?

### Amounts
decimal-mark = ,
number-half = { $unit ->
    [basin] meia
    [tin] meia
    [pot] meia
    [bowl] meia
    [cup] meia
    [jug] meia
    [bottle] meia
    [spoon] meia
    [shovel] meia
    [bag] meia
    [crate] meia
    [piece] meia
   *[other] meio
} { $measure }
unit-kg = { $n } kg
unit-g = { $n } g
unit-l = { $n } L
unit-bucket = { $n } { $count ->
    [one] balde
   *[other] baldes
}
unit-basin = { $n } { $count ->
    [one] bacia
   *[other] bacias
}
unit-jerrycan = { $n } { $count ->
    [one] bidao
   *[other] bidoes
}
unit-tin = { $n } { $count ->
    [one] lata
   *[other] latas
}
unit-pot = { $n } { $count ->
    [one] panela
   *[other] panelas
}
unit-bowl = { $n } { $count ->
    [one] tigela
   *[other] tigelas
}
unit-plate = { $n } { $count ->
    [one] prato
   *[other] pratos
}
unit-cup = { $n } { $count ->
    [one] caneca
   *[other] canecas
}
unit-glass = { $n } { $count ->
    [one] copo
   *[other] copos
}
unit-jug = { $n } { $count ->
    [one] jarra
   *[other] jarras
}
unit-bottle = { $n } { $count ->
    [one] garrafa
   *[other] garrafas
}
unit-handful = { $n } { $count ->
    [one] punhado
   *[other] punhados
}
unit-spoon = { $n } { $count ->
    [one] colher
   *[other] colheres
}
unit-shovel = { $n } { $count ->
    [one] pa
   *[other] pas
}
unit-bag = { $n } { $count ->
    [one] sacola
   *[other] sacolas
}
unit-sack = { $n } { $count ->
    [one] saco
   *[other] sacos
}
unit-basket = { $n } { $count ->
    [one] cesto
   *[other] cestos
}
unit-crate = { $n } { $count ->
    [one] caixa
   *[other] caixas
}
unit-wheelbarrow = { $n } { $count ->
    [one] carrinho
   *[other] carrinhos
}
unit-piece = { $n }
measure-bucket = balde
measure-basin = bacia
measure-jerrycan = bidao
measure-tin = lata
measure-pot = panela
measure-bowl = tigela
measure-plate = prato
measure-cup = caneca
measure-glass = copo
measure-jug = jarra
measure-bottle = garrafa
measure-handful = punhado
measure-spoon = colher
measure-shovel = pa
measure-bag = sacola
measure-sack = saco
measure-basket = cesto
measure-crate = caixa
measure-wheelbarrow = carrinho
measure-piece = unidade
language-name = Portugues

### Feeds
feed-cooked_rice = arroz
feed-maize_meal = papa de milho
feed-bread = pao
feed-flatbread = pao chato
feed-pasta = macarrao
feed-porridge = papas
feed-potato = batata
feed-potato_peel = cascas de batata
feed-cassava = mandioca
feed-cassava_peel = cascas de mandioca
feed-sweet_potato = batata doce
feed-yam = inhame
feed-plantain = banana de cozinhar
feed-plantain_peel = cascas de banana de cozinhar
feed-flour = farinha
feed-maize = milho
feed-banana = banana
feed-banana_peel = cascas de banana
feed-mango = manga
feed-papaya = papaia
feed-pineapple = abacaxi
feed-citrus_peel = cascas de laranja e limao
feed-melon_rind = cascas de melancia
feed-avocado = abacate
feed-apple = maca (fruta)
feed-fruit_waste = restos de fruta
feed-tomato = tomate
feed-onion = cebola
feed-cabbage = repolho
feed-leafy_greens = folhas verdes
feed-carrot = cenoura
feed-pumpkin = abobora
feed-vegetable_waste = restos de verdura
feed-beans = feijao
feed-lentils = lentilhas
feed-egg = ovo
feed-meat = carne
feed-fish = peixe
feed-milk = leite
feed-whey = soro de leite
feed-cheese = queijo
feed-cooking_oil = oleo de cozinha
feed-fat = gordura
feed-sugar = acucar
feed-sweet_drink = refresco
feed-food_waste = restos
feed-coffee_grounds = borra de café
feed-tea_leaves = folhas de cha
feed-spent_grain = farelo ou bagaco
feed-starch_water = agua de amido
feed-cattle_manure = estrume de vaca
feed-pig_manure = estrume de porco
feed-chicken_manure = estrume de galinha
feed-goat_manure = estrume de cabra
feed-horse_manure = estrume de cavalo
feed-human_waste = fezes da latrina
feed-digestate = liquido do tanque
feed-grass = capim
feed-leaves = folhas
feed-water_hyacinth = jacinto de agua
feed-straw = palha
feed-bone = ossos
feed-eggshell = cascas de ovo
feed-wood = madeira
feed-soil = terra
feed-ash = cinza
feed-plastic = plastico
feed-paper = papel
feed-soap = sabao
feed-chemical = quimicos

# A text that could not be worked in many tries.
sorry = Desculpe, nao consegui tratar a sua ultima mensagem. Esta guardada. Por favor diga outra vez com outras palavras.
