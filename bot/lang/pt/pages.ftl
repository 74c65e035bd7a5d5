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
need-silent = Sem notícia
need-rest = Em repouso
need-leak = Vazamento?
need-start_up = Partida
need-watch = Observar
need-well = Bem

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
