# O que dizem as páginas da equipe em português. Palavras do ofício, curtas.

### Em cada página
nav-skip = Ir ao conteúdo
nav-today = Hoje
nav-programme = Programa
nav-broadcast = Aviso a muitos
nav-setup = Pessoas e ajustes
nav-log-out = Sair, { $name }

### Datas
weekday = { $weekday ->
    [1] segunda-feira
    [2] terça-feira
    [3] quarta-feira
    [4] quinta-feira
    [5] sexta-feira
    [6] sábado
   *[7] domingo
}
month = { $month ->
    [1] janeiro
    [2] fevereiro
    [3] março
    [4] abril
    [5] maio
    [6] junho
    [7] julho
    [8] agosto
    [9] setembro
    [10] outubro
    [11] novembro
   *[12] dezembro
}
month-short = { $month ->
    [1] jan
    [2] fev
    [3] mar
    [4] abr
    [5] mai
    [6] jun
    [7] jul
    [8] ago
    [9] set
    [10] out
    [11] nov
   *[12] dez
}
date-full = { weekday }, { $day } de { month } de { $year }
date-day = { $day } { month-short } { $year }
date-short = { $day } { month-short }
date-moment = { $day } { month-short } { $time }
date-full-moment = { $day } { month-short } { $year } { $time }
date-month = { month } de { $year }

### Entrada
login-title = Entrar
login-head = Entrada da equipe
login-name = Nome
login-password = Senha
login-enter = Entrar
login-wait = Tentativas demais com este nome. Espere cinco minutos e tente de novo.
login-wrong = O nome e a senha não combinam. Tente de novo.

### O que não deu certo
broken-head = Isso não deu certo
broken-back = Voltar para hoje
broken-here = Algo falhou aqui. Nada se perdeu; tente de novo daqui a pouco.
broken-no-page = Esta página não existe.
broken-role = Sua função não permite isso; peça a um responsável.
broken-no-household = A família { $id } não existe.
broken-no-broadcast = O aviso { $id } não existe.

### Hoje
today-none = Nenhuma família escreveu ainda. Dê o número às famílias: com a primeira mensagem elas aparecem aqui.
today-pressing = { $n ->
    [0] Ninguém espera visita.
    [one] Uma família precisa de alguém.
   *[other] { $n } famílias precisam de alguém.
}
today-find-label = Achar uma família por nome ou número
today-find = Buscar
today-by-need = Pelo que precisam
today-all = Todas { $n }
today-none-fits = Nenhuma família combina.
today-show-all = Ver todas
today-last = { $n ->
    [0] última mensagem hoje
    [1] última mensagem ontem
   *[other] última mensagem há { $n } dias
}
today-last-never = ainda sem mensagem
today-fed = carga
today-cooked = fogão
today-risk = risco
today-take = Eu cuido
today-done = Feito
today-taken-by = { $name } está cuidando.
today-done-by = Resolvido por { $name }.
today-alarm = { $signs }, avisado { $when }; ninguém assumiu
today-danger-open = Avisou de perigo; ainda não resolvido
today-asked = Pediu para falar com alguém { $when }
today-never = Ainda não escreveu
today-silent = { $n ->
    [one] Um dia sem mensagem
   *[other] { $n } dias sem mensagem
}
today-pages = Páginas
today-before = Antes
today-next = Depois
today-page = { $page } de { $pages }, { $n ->
    [one] { $n } família
   *[other] { $n } famílias
}
spark-fed = Carga nos últimos 30 dias: { $total } kg em { $n ->
    [one] { $n } dia
   *[other] { $n } dias
}
spark-cooked = Fogão nos últimos 30 dias: { $total } min em { $n ->
    [one] { $n } dia
   *[other] { $n } dias
}
need-danger = Perigo
need-souring = Azedando
need-person = Pede alguém
need-silent = Sem notícia
need-rest = Em repouso
need-leak = Vazamento?
need-start_up = Partida
need-watch = Observar
need-well = Bem

### Mapa
map-title = { $n ->
    [one] Mapa: uma família
   *[other] Mapa: { $n } famílias
}
map-bundle = { $n } famílias perto de { $place }, { $pressing } precisam de alguém; o mais urgente: { $need }
map-unplaced = { $n ->
    [one] Uma família não está no mapa: não disse uma cidade conhecida.
   *[other] { $n } famílias não estão no mapa: não disseram uma cidade conhecida.
}
map-more = { $n ->
    [one] Mais uma está só na lista.
   *[other] Mais { $n } estão só na lista.
}

### Fichas de programas
tokens-head = Leitura por máquina
tokens-what = Uma ficha deixa outro programa ler; números e mensagens nunca são dados. O que se pode ler está descrito em
tokens-name = Quem a recebe
tokens-scope = Pode ler
scope-read = o que foi dito e aconselhado, sem nomes
scope-people = o que foi dito e aconselhado, com nomes e lugares
tokens-make = Fazer uma ficha
tokens-new = Ficha para { $name }
tokens-once = Copie agora: mostra-se só esta vez. Entregue só por um caminho seguro.
tokens-remove = Retirar
tokens-remove-of = Retirar a ficha de { $name }
tokens-removed = A ficha de { $name } já não abre nada.
tokens-none = Ainda não há ficha.
form-token-there = Já há uma ficha para { $name }; retire-a antes ou dê outro nome.
form-token-gone = Não há ficha para { $name }; talvez já tenha sido retirada.

### Fotos de visitas
photo-take = Fotos
photo-how = Até 4, JPEG, PNG ou WebP. Tire-as fora e longe do gás; peça antes à família. Onde e com que foram tiradas não se guarda.
photo-alt = Foto { $name } da visita
photo-remove = Retirar
photo-remove-of = Retirar a foto { $name }
form-unread = O formulário não chegou inteiro; envie outra vez.
form-photo-many = Dê no máximo { $n } fotos; nada foi guardado.
form-photo-kind = Uma foto deve ser JPEG, PNG ou WebP; nada foi guardado. Tire outra vez com a câmera do telefone.
form-photo-big = Uma foto pode ter no máximo { $n } MB e 10 000 pontos de lado; nada foi guardado. Ponha a câmera num tamanho menor.
form-photo-damaged = Uma foto está estragada e não se lê; nada foi guardado. Tire outra vez.

### Os números do programa para levar
out-head = Para levar
out-xlsx = Uma linha por família e mês, em planilha (XLSX)
out-from = Relatório desde o mês
out-to = até o mês (vazio: só esse)
out-report = Um relatório para imprimir
report-title = Relatório do programa, { $name }
report-span = { $first } a { $last }
report-made = Feito em { $date } para { $name }.
report-print = Imprima pelo menu do seu navegador.
report-households = Famílias no programa
form-rows-many = São { $n } linhas, mais do que uma planilha leva; peça menos meses ou leve o CSV.
column-household = Família
column-name = Nome
column-days_told = Dias contados
column-water_l = Água, L
column-cooked_min = Fogão, min
column-spared_fuel = Combustível poupado
column-non_renewable_share = Parte que não cresce de novo
column-spared_fuel_kg = Combustível poupado, kg
column-texts_in = Mensagens recebidas
column-texts_out = Mensagens enviadas

### A história de uma família
house-closed = Esta história está fechada: o tanque foi esvaziado e recomeçou com outro número.
house-goes-on = Continua com o número { $name }
house-before = O que veio antes está no número { $name }
house-danger = Perigo.
house-alarm = { $signs }, avisado { $when }: "{ $said }"
house-take = Eu cuido
house-doing = O que se diz a eles agora
figure-risk = Risco de azedar, 14 dias
figure-olr = COV, 7 dias
figure-olr-is = { $n } kg SV/m3/d
figure-hrt = TRH, 7 dias
figure-ts = ST que entram
figure-slurry = Lodo
figure-gas = Gás hoje
figure-started = Começou
figure-no-feed = sem carga
not-told = não dito
nobody = ninguém
if-lead = E se dessem
if-kg = kg por dia
if-kg-with = kg com
if-litres = litros de água por dia
if-each-day = L de água por dia?
if-look = Ver 14 dias à frente
if-wrong = Dê quilos e litros por dia como números de 0 a { $most }.
if-told = Com { $kg } kg da mistura de sempre e { $water } L de água por dia: em { $days } dias COV { $olr } kg SV/m3/d, TRH { $hrt }, risco de azedar { $risk }%, gás { $gas } min por dia. Então o bot diria: { $verdict }, até { $ration } kg.
if-no-end = sem fim
if-chart = Duas semanas à frente, dia a dia
verdict-feed = dar comida
verdict-less = dar menos
verdict-hold = não dar comida
verdict-water = pôr água
verdict-warm = manter quente
verdict-check = olhar algo
verdict-danger = perigo
story-head = Sua história
story-span = Até onde atrás
span-30 = 30 dias
span-120 = 120 dias
span-365 = Um ano
span-1826 = 5 anos
story-chart = Gráfico, dia a dia
story-weeks = Cada traço é a média de uma semana.
chart-label = A história da família, dia a dia
chart-read = Ler um dia
chart-dashes = (traços: { $name })
chart-dots = (pontos: { $name })
chart-fed = Carga, kg por dia
chart-advised = ração aconselhada
chart-other = outros
chart-water = Água, L por dia
chart-olr = COV em 7 dias, kg SV/m3/d
chart-most = máximo, sem mexer
chart-cooked = Fogão, min por dia
chart-gas = gás que esperávamos
chart-made = Gás feito, min por dia: estimado
chart-left = resta no saco
chart-risk = Risco de azedar em 14 dias, %
chart-slurry = Lodo, °C: estimado
chart-told = medido
chart-ph = pH: estimado
chart-ph-told = pH medido
chart-acids = Ácidos (AGV), g/L como ácido acético: estimados
chart-signs = Sinais avisados
days-go = Ler dia a dia
days-head = Dia a dia
days-how = O último dia vem primeiro. Dado, água, cozido, lodo e sinais são o que foi dito; * marca um pH medido, os outros são estimados.
days-day = Dia
days-advised = Ração aconselhada, kg
days-olr = OLR, kg VS/m3/d
days-gas = Gás estimado, min: feito / resta
days-slurry = Lodo medido, °C
days-ph = pH
days-acids = Ácidos estimados, g/L
talk-head = Conversa
talk-none = Ainda sem mensagem.
talk-why = Por quê
talk-note = { $verdict } · ração { $kg } kg, { $water } L · risco { $risk }% · { $segments }
segments = { $n ->
    [one] { $n } segmento
   *[other] { $n } segmentos
}
trail-head = Notas e atos da equipe
trail-new = Nota nova
trail-keep = Guardar
did-noted = { $by }: { $words }
did-took_alarm = { $by } ficou com o alarme.
did-sees_to_it = { $by } está cuidando.
did-has_seen_to_it = { $by } já resolveu.
did-told_danger = { $by } avisou de perigo pela família.
did-told_facts = { $by } contou dados pela família.
did-asked_history = { $by } pediu a história.
did-told_family = { $by } disse à família: { $words }
did-took_over = { $by } ficou com a família a seu cuidado.
did-handed_back = { $by } devolveu a família.
did-lifted_cap = { $by } tirou por um dia o limite de mensagens.
did-added_phone = { $by } juntou um telefone.
did-took_phone_off = { $by } tirou um telefone.
did-told_measure = { $by } disse quanto cabe na medida deles ({ $measure }): { $litres } L.
did-ended_reminders = { $by } acabou com os lembretes.
did-began_reminders = { $by } recomeçou os lembretes, como a família pediu.
did-began_anew = { $by }: o tanque recomeçou; a história até agora está no número { $id }.
did-closed_story = { $by } fechou esta história: o tanque foi esvaziado e enchido de novo.
did-changed_settings = { $by } mudou os ajustes.
did-changed_settings_to = { $by } mudou os ajustes: { $settings }
did-visited = { $by } esteve lá. { $errand }
did-took_photo_away = { $by } tirou uma foto da lista.
did-set_up = { $by } inscreveu a família; aceitaram receber mensagens.
did-asked_needs = { $by } perguntou quem precisa de ajuda.
did-asked_more = { $by } pediu mais.
did-set_pin = { $by } escolheu um PIN.
did-gave_pin = { $by } deu o PIN.
did-gave_wrong_pin = { $by } deu um PIN errado.
did-gave_no_pin = { $by } deu algo que não é um PIN.
did-tried_while_locked = { $by } deu um PIN com a linha bloqueada.
did-got_locked = { $by }: linha bloqueada depois de PIN errados.
did-added_staff = { $by } juntou { $name } como { $role }.
did-changed_staff = { $by } mudou { $name }: agora { $role }.
did-gave_password = { $by } deu a { $name } uma senha nova.
did-freed_of_pin = { $by } livrou { $name } do PIN.
did-took_off_staff = { $by } tirou { $name } da equipe.
did-made_token = { $by } fez uma ficha para { $name }: { $scope }.
did-took_token_back = { $by } retirou a ficha de { $name }.
did-set_call = { $by } pôs o número a chamar em { $country }: { $number }.
did-set_call_back = { $by } devolveu a { $country } o número de origem.
did-taught_word = { $by } ensinou uma palavra de { $place }: { $word } é { $feed }.
did-took_word_away = { $by } tirou a palavra { $word }.
did-set_keeping = { $by } marcou que as palavras das mensagens se guardam { $n } dias.
did-set_keeping_ever = { $by } marcou que as mensagens se guardam para sempre.
did-pin_for_all = { $by } marcou que todos precisam de um PIN.
did-pin_for_some = { $by } deixou o PIN à escolha de cada um.
did-sent_broadcast = { $by } mandou um aviso a { $n ->
    [one] { $n } família
   *[other] { $n } famílias
} ({ $audience }): { $words }
did-stopped_broadcast = { $by } parou o aviso { $id }; { $n } mensagens não saíram.
nothing-yet = Nada ainda.
visits-head = Visitas
visits-none = Ninguém foi lá ainda.
visits-before = Visitas anteriores
visit-go-new_tank = Conferir um tanque novo
visit-go-fault = Ver um defeito
phones-head = Telefones e lembretes
phone-by = por { $name }
phone-stopped = disse STOP: não recebe nada
phone-off = Tirar
phone-off-label = Tirar { $name }
phone-none = Sem telefone.
phone-another = Outro número deles
gateway = Canal
phone-add = Acrescentar
reminders-are-off = Sem lembretes.
reminders-are-on = Com lembretes.
reminders-again = Pediram de novo
reminders-end = Parar lembretes
restart-head = O tanque foi esvaziado e enchido de novo, ou a família mudou
restart-fine = A história recomeça com um número novo, com os mesmos telefones, tamanhos e medidas. O que veio antes continua aqui para ler.
restart-manure = Partida: esterco, kg
restart-place = Onde está agora, se a família mudou: cidade
restart-sure = Esvaziado e enchido de novo hoje
restart-do = Recomeçar
settings-head = Digestor e família
set-name = Nome
set-place = Lugar
set-tank_l = Tanque, L
set-liquid_l = Lodo até o transbordo, L
set-store_l = Saco de gás, L
set-people = Pessoas à mesa
set-started = Enchido pela primeira vez
set-walls = Paredes
set-lang = Escrevemos em
set-staff = Agente de campo
set-keep = Guardar as mudanças
walls-black = preto
walls-white = branco
walls-insulated = isolado
walls-greenhouse = estufa
walls-heated = aquecido
walls-buried = enterrado
holds-lead = Na medida deles
holds-measure = Medida
holds-holds = cabem
holds-litres = Litros
told-head = O que foi dito, e desde que dia vale
told-liquid = lodo até o transbordo { $n } L
told-started = enchido pela primeira vez

### Visitas
visit-title = Visita a { $name }
visit-for = Para que é a visita
errand-new_tank = Vistoria de um tanque novo
errand-fault = Vistoria de um defeito
errand-short-new_tank = Tanque novo
errand-short-fault = Defeito
visit-cautions = Nem chama, nem telefone, nem interruptor onde pode haver gás; nunca se debruce nem entre num tanque ou fossa. O gás que cheira a ovo envenena. As ligações de gás são trabalho de um instalador habilitado, e as normas locais vêm antes desta lista, que é prática comum.
mark-good = bom
mark-bad = a consertar
mark-none = não visto
visit-note = Nota
visit-keep = Guardar a visita
visit-told = { $errand }: { $good } bons, a consertar: { $bad }.
visit-told-good = { $errand }: { $good } bons, nada a consertar.
check-walls_dark = Paredes escuras: nenhuma luz chega ao lodo
check-gas_tight = Sem vazamento: água com sabão em cada junta, vedação e costura não faz bolha
check-overflow_low = Transbordo uns 50 mm mais baixo que a boca de entrada
check-overflow_open = O transbordo passa por um tê aberto ao ar
check-inlet_floor = Tubo de entrada de 50 mm, chega ao fundo, pé cortado a 45 graus
check-outlet_middle = A saída abre a meia altura, em diagonal com a entrada
check-gas_high = Saída de gás uns 20 mm abaixo do topo; o tubo sobe acima da água
check-pipe_seals = Vedações firmes onde os tubos cruzam a parede
check-valve = A válvula de gás gira bem e fecha; meia polegada, juntas sem cola
check-water_trap = Purga de água no ponto mais baixo do tubo de gás, esvaziada
check-bag = Saco de gás inteiro, à sombra, preso, nada cortante perto
check-hose = Mangueira e ligações do fogão sem rachas, com abraçadeiras
check-inlet_free = Entrada livre: a água despejada desce
check-outlet_free = Saída livre: sai tanto quanto entra
check-level = O lodo está na altura do transbordo
check-flame_blue = Chama firme e azul
check-flame_far = Chama e faíscas longe do tanque, do saco e dos tubos; cozinha arejada
check-nobody_falls_in = Tampas fechadas; nenhuma criança ou animal pode cair; fossa cercada
check-family_told = A família sabe: o gás explode, cheiro de ovo envenena, lavar as mãos, nunca entrar

### Programa
prog-months = Meses para trás
prog-fuel = Antes cozinhavam com
prog-share = Parte da lenha que não cresce de novo, de 0 a 1
prog-work-out = Calcular
prog-by-month = Por mês
prog-by-place = Por lugar
prog-month = Mês
prog-place = Lugar
prog-no-place = lugar não dito
prog-nothing = Nada foi dito nestes meses.
prog-heard = Famílias ouvidas
prog-working = Cozinham com gás
prog-fed = Carga, kg
prog-slurry = Lodo que sai, L
prog-hours = Fogão, h
prog-gas = Gás queimado, m3
prog-spared = { $name }: poupado, kg
prog-co2e = CO2e evitado, kg
prog-texts = Mensagens recebidas / enviadas
prog-segments = Segmentos pagos
prog-csv = Uma linha por família e mês, em CSV
prog-how = Como se conta
prog-method = Só conta o gás que as famílias disseram ter queimado: minutos de fogão, 300 L de biogás por hora ({ $methane }% de metano, úmido, { $celsius } °C). O combustível poupado é o que dá o mesmo calor na panela: fogão a gás 55%, três pedras 12%, fogareiro a carvão 25%, de pavio 45%. CO2e em 100 anos com os potenciais do AR6 e os fatores do IPCC 2006, na forma da AMS-I.E, menos 5% de fugas em outra parte; { $share } do combustível ({ $name }) conta como não crescendo de novo; menos o metano escapado, tomado como { $leak }% do produzido onde ninguém mediu. O lodo que sai é o que entrou. As somas são estimativas; um pedido de créditos precisa de pesquisa própria.
fuel-wood = lenha
fuel-charcoal = carvão
fuel-lpg = GLP
fuel-kerosene = querosene

### Aviso a muitos
cast-title = Aviso { $name }
cast-text = Suas palavras, como chegam a cada família depois do seu nome
cast-lang = Língua
cast-place = Lugar
cast-staff = Agente de campo
cast-need = O que precisam
cast-all-langs = todas as línguas
cast-all-places = todos os lugares
cast-all-staff = todos os agentes
cast-all-needs = seja o que for
cast-nobody = Ninguém combina.
cast-would = { $n ->
    [one] { $n } família
   *[other] { $n } famílias
}, { $segments } a pagar.
cast-without = Mais { $n } combinam, mas disseram STOP ou MUTE, ou não têm telefone: não recebem nada.
cast-when = O primeiro sai { $first }, o último { $last }; à noite cada um espera a sua manhã. No máximo um por segundo.
cast-send = Enviar a { $n }
cast-look = Olhar antes de enviar
cast-look-again = Olhar de novo
cast-before = Enviados antes
cast-row = { $when }, { $staff }, a { $audience } · { $progress } · { $state }
cast-progress = { $sent } de { $all } enviados
cast-done = terminado
cast-going = saindo
cast-stopped = parado { $name }
cast-everybody = todas as famílias
cast-to = { $when }, { $staff }, a { $audience }
cast-sent = Enviados
cast-waiting = À espera
cast-not-sent = Não enviados
cast-last = O último sai
cast-stop = Parar: { $n } não saem
cast-see = Ver até onde foi
cast-all = Todos os avisos

### Pessoas e ajustes
setup-on-page = Nesta página
setup-staff = Equipe
setup-household = Família nova
setup-gateways = Canais
setup-words = Nomes de comidas
setup-numbers = Números de emergência
setup-keeping = Quanto tempo se guardam as mensagens
setup-wording = Redação
setup-trail = O que a equipe mudou
role-viewer = leitor
role-field = agente de campo
role-lead = responsável
role-long-viewer = leitor: vê, com números tapados
role-long-field = agente de campo: age pelas famílias
role-long-lead = responsável: ajusta pessoas e regras
staff-no-phone = sem telefone
staff-phone = { $number } por { $gateway }
staff-no-log-in = sem entrada
staff-has-pin = com PIN
staff-change = Mudar
staff-change-of = Mudar { $name }
staff-role-of = Função de { $name }
staff-lang-of = Língua de { $name }
staff-new-password = Senha nova
staff-free-pin = Tirar PIN
staff-pin-all = Por mensagem, todos precisam de um PIN uma vez por dia.
staff-pin-own = Por mensagem, só se pede PIN a quem escolheu um.
staff-pin-leave = Deixar à escolha
staff-pin-need = Todos precisam de um
staff-add-head = Acrescentar alguém
staff-add = Acrescentar
staff-role = Função
staff-lang = Língua
number-texts = Número de onde escrevem
family-head = Família nova, ou um segundo tanque
family-fine = Um segundo tanque tem o seu próprio modelo: dê-lhe nome e número próprios. Uma família que escreve por si aparece sem este formulário.
family-town = Cidade mais próxima
family-agreed = Aceitaram receber mensagens
family-do = Registrar
traffic-head = Canais, últimas 24 horas
traffic-none = Nenhum canal está configurado.
traffic-state = Estado
traffic-in = Recebidas
traffic-last-in = Última
traffic-sent = Enviadas
traffic-delivered = Entregues, segundo aviso
traffic-lost = Não aceitas
traffic-waiting = À espera
traffic-stuck = há mensagens à espera
traffic-stuck-why = há mensagens à espera: { $name }
traffic-many-lost = muitas não são aceitas
traffic-quiet = um dia em silêncio
traffic-well = bem
traffic-never = nenhuma
ago-now = agora mesmo
ago-minutes = há { $n } min
ago-hours = há { $n } h
words-head = Nomes de comidas do distrito
words-fine = Uma palavra ensinada aqui uma vez é entendida nas mensagens de todas as famílias de lá.
words-word = A palavra deles
words-means = Significa
words-country = País, duas letras
words-place = Só onde o lugar é (vazio: o país todo)
words-teach = Ensinar
words-none = Nenhuma palavra ensinada ainda.
words-by = ensinada por { $name }
words-off = Tirar
words-off-label = Tirar { $name }
call-head = Números para chamar em perigo
call-fine = Vão na mensagem de alarme. Pergunte à autoridade do país; onde não se conhece nenhum, a mensagem diz que peçam ajuda.
call-number = Número (vazio: o de origem)
call-set = Pôr
call-all = Os { $n } números
call-own = posto aqui
keep-days = Dias até se esquecerem as palavras das mensagens (vazio: nunca). Quantidades, datas e conselhos ficam; os segmentos pagos já não se contam mais para trás.
said-password = { $name } pode entrar com a senha { $password }. Só se mostra desta vez.
said-new-password = A senha nova de { $name } é { $password }. Só se mostra desta vez.
said-role = { $name } agora é { $role }.
said-lang = { $name } lê { $lang } a partir da próxima entrada.
said-pin-free = O próximo PIN que { $name } escrever será o seu.
said-off = { $name } já não é da equipe; as suas famílias não são de ninguém agora.
said-call-built-in = Em { $country } vale de novo o número de origem.
said-call = Em perigo, as famílias em { $country } são mandadas ligar para { $number }.
said-word-off = A palavra foi tirada.
said-word = Em { $place }, { $word } é { $feed } a partir de agora.
said-keep = As palavras das mensagens são esquecidas depois de { $n } dias; o que se disse do digestor fica.
said-keep-ever = As mensagens guardam-se para sempre.
said-pin-all = A quem não tem PIN pede-se que escolha um antes de saber de qualquer família.
said-pin-own = Quem não tem PIN é informado das famílias sem ele.

### Redação
wording-title = Redação em { $name }
wording-lead = { $n } mensagens e partes de mensagens, { $long } maiores que um segmento por si sós. Um texto é montado com elas e encurtado ao seu espaço.
wording-letters = { $n ->
    [one] { $n } letra
   *[other] { $n } letras
}
wording-dear = letras de dois bytes

### O telefone numa página
try-title = Um telefone para experimentar
try-phone = Telefone
try-staff = Páginas da equipe
try-choose = Escolha uma família ao lado, ou comece como família nova. Depois escreva como ela escreveria.
try-screen = Tela do telefone
try-empty = Ainda sem mensagem. Diga olá, ou conte o que pôs.
try-text = Sua mensagem
try-send = Enviar
try-filling = A história está sendo vivida
try-filling-fine = Cada família escreve ao longo de { $n } dias. As que já estão completas podem ser escolhidas.
try-again = Olhar de novo
try-whose = Telefone de quem?
try-day-of = dia { $day } de { $days }
try-new = Começar como família nova
try-new-family = Uma família nova
try-invented = As famílias, nomes e números são inventados, e também quem vive em que cidade e o seu clima; o que o bot lhes diz é calculado.
try-time = Tempo
try-now = É { $name }.
try-day = Deixar passar um dia
try-cautions = Cuidados
try-caution-burns = O biogás queima, e misturado com ar explode. Nenhuma chama perto do tanque, do saco ou dos tubos.
try-caution-poison = O gás que cheira a ovo podre envenena; quando é forte, já não se cheira.
try-caution-germs = O lodo leva micróbios: lave as mãos. Nunca entre num tanque ou fossa, nem atrás de alguém.
try-caution-codes = O que se escreve é conselho. As normas locais e os instaladores habilitados vêm primeiro.

### O que foi escrito num formulário e não pode ser aceito
form-letters = Escreva um texto de 1 a { $most } letras.
form-nobody-fits = Ninguém combina; nada foi enviado.
form-text-long = O texto não cabe em dois segmentos; diga mais curto. Nada foi enviado.
form-not-theirs = Este número não é deles.
form-number-needed = Dê o número de onde escrevem.
form-number-stopped = Este número disse STOP; só o dono pode escrever START.
form-number-household = Este número é da família { $id }; tire-o de lá primeiro.
form-number-staff = Este número é de { $name }.
form-number-taken = Este número é de uma família ou da equipe, ou disse STOP; dê outro.
form-number-shape = Dê o número com + e o código do país, como +254700000000.
form-choose = Escolha um da lista.
form-measure-litres = Diga quantos litros cabem, mais de 0 e no máximo { $most }.
form-restart-sure = Marque que o tanque foi esvaziado e enchido de novo; nada mudou.
form-starter = Dê a partida em quilos, ou nada.
form-closed = Esta história já está fechada; o tanque recomeçou com outro número.
form-agreed = Pergunte antes à família; só entra quem aceitou receber mensagens.
form-no-town = O bot não conhece cidade chamada { $name }; dê a mais próxima ou a do distrito.
form-above = { $field ->
    [tank_l] O tanque
    [liquid_l] O lodo
    [people] As pessoas
   *[store_l] O saco de gás
}: dê um número acima de 0 e no máximo { $most }.
form-slurry-fits = { $liquid } L de lodo não cabem num tanque de { $tank } L; corrija um dos dois.
form-date = Dê o dia do enchimento como ano-mês-dia, por exemplo 2026-03-01.
form-date-range = O dia do enchimento deve estar nos últimos 30 anos.
form-call-digits = Dê o número de emergência em algarismos, no máximo 15.
form-country = Dê o país com suas duas letras, como KE.
form-word-taught = Esta palavra já foi ensinada ali; tire-a primeiro.
form-word-shape = Dê o nome em 1 a { $most } palavras, sem algarismos.
form-word-danger = O bot toma esta palavra por um perigo; não pode ser comida.
form-word-else = O bot já toma esta palavra por outra coisa; escreva de outro jeito.
form-word-known = O bot já conhece esta palavra, como { $feed }.
form-days = Dê dias inteiros, pelo menos { $least }, ou nada para sempre.
form-name-letters = Dê um nome de 1 a { $most } letras.
form-staff-there = Já existe { $name }; mude essa pessoa ou dê outro nome.
form-staff-none = Não há { $name } na equipe.
form-staff-last = { $name } é o último responsável que pode entrar; nomeie outro antes.
form-staff-number = Outra pessoa da equipe escreve deste número.
form-visit-empty = Marque pelo menos um ponto ou escreva uma nota; nada foi guardado.
