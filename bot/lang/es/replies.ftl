# What Bellyful says in Spanish, as texted in Latin America: usted, and only letters of the GSM alphabet (é and ñ are
# in it; the other accents are left off, as people text).

### Who we are and how we talk
hello = ¡Hola! Soy Bellyful. Le ayudo a alimentar su tanque de biogas. Es un consejo: primero las normas locales y su instalador. Escriba ALTO para salir, AYUDA para ayuda.
hello-again = ¡Hola! Digame qué puso en el tanque, asi: 3 kg de sobras, 6 L de agua. O pregunte: ¿cuanto puedo echar?
help = Digame qué puso: 3 kg de sobras, 6 L de agua. Como esta el gas: poco gas, cociné 50 min. O pregunte: ¿cuanto puedo echar? ALTO para salir, DESHACER borra lo ultimo.
stopped = Bellyful: ya no le mandamos mensajes. Si huele a gas, salga y escribanos igual. Escriba EMPEZAR para volver.
started = ¡Bienvenido otra vez! Digame qué echa y como arde el gas, y le digo qué sigue.
muted = Ya no le mando recordatorios. Si me escribe, le contesto.
forget-sure = ¿Borro para siempre su nombre, numero y mensajes? Conteste SI para borrar. Con otra respuesta se quedan.
forgotten = Listo. Borré su nombre, numero y mensajes. Que le vaya bien, y el fuego siempre lejos del gas.
kept = Esta bien, dejo todo como esta.
language-is = Desde ahora le escribo en español.
language-unknown = Puedo escribir: { $languages }. ¿Cual prefiere?
nothing-more = Eso era todo. Pregunteme lo que quiera de su tanque.
undone = Borrado: { $what }.
nothing-to-undo = No hay nada que borrar.
welcome = Con gusto. Digame cada dia qué echa y le digo qué sigue.
joined = Este teléfono ya es del mismo tanque.
too-long = Ese mensaje es muy largo para mi. Por favor mandelo en partes cortas.
person-called = Le pedi a su promotor que le llame.
person-none = No encuentro a un promotor para usted. Pregunte por favor a quien hizo su tanque.

### Danger. No question, no dose in this text
alarm = ¡Salgan todos ya! Adentro nada de fuego, interruptor ni teléfono. Cierren el gas solo si es seguro al salir. { $number ->
    [none] Afuera pidan ayuda.
   *[other] Afuera llamen al { $number }.
} No entren mas, ni al pozo.
safe-again = Qué bueno que escribio. No prenda nada hasta que un instalador revise las uniones con agua y jabon. Cuando no haya fuga, escribame y seguimos.
safe-again-first = No prenda nada hasta que un instalador revise las uniones con agua y jabon.

### What we heard
heard = Anotado: { $what }.
item-fed = { $amount } de { $feed }
item-fed-unknown = { $feed }, no sé cuanto
item-water = { $amount } de agua
item-water-none = sin agua
item-water-unknown = agua
item-not-fed = { $days ->
    [one] sin comida
   *[other] sin comida { $days } dias
}
item-usual = casi siempre { $amount } de { $feed } al dia
item-burned = cocinaron { $minutes } min
item-gas = { $level ->
    [none] sin gas
    [low] poco gas
    [half] gas a la mitad
    [good] buen gas
   *[full] gas lleno
}
item-flame = llama { $look ->
    [blue] azul
    [yellow] amarilla
    [weak] débil
    [goes_out] que se apaga
   *[will_not_light] que no prende
}
item-temperature = { $of ->
    [air] aire a { $celsius } C
   *[tank] tanque a { $celsius } C
}
item-ph = pH { $value }
item-pressure = presion { $cm } cm
item-tank = tanque de { $litres } L
item-store = bolsa de gas de { $litres } L
item-walls = tanque { $look ->
    [black] negro
    [white] blanco
    [insulated] forrado
    [greenhouse] en invernadero
    [heated] con calefaccion
   *[buried] enterrado
}
item-started = iniciado { $days ->
    [0] hoy
    [one] ayer
   *[other] hace { $days } dias
}
item-removed = sacaron { $amount }
item-alkali = { $amount } de { $what ->
    [soda] bicarbonato
    [lime] cal
   *[ash] ceniza
}
item-alkali-bare = { $what ->
    [soda] bicarbonato
    [lime] cal
   *[ash] ceniza
}
item-measure = 1 { $measure } son { $litres } L
item-people = { $count ->
    [one] { $count } persona
   *[other] { $count } personas
}
item-place = { $name }
item-seeded = iniciado con { $amount } de { $feed }
item-sign = { $sign ->
    [sour_smell] olor agrio
    [egg_smell] olor a huevo podrido
    [bad_smell] mal olor
    [foam] espuma
    [scum] nata encima
    [overflow] se rebalsa
    [level_drop] baja el nivel
    [inlet_blocked] entrada tapada
    [outlet_blocked] salida tapada
    [gas_line_blocked] tubo de gas tapado
    [water_in_gas_line] agua en el tubo de gas
    [green_liquid] liquido verde
    [thick_slurry] mezcla espesa
    [watery_slurry] mezcla aguada
    [flies] moscas
    [worms] gusanos
    [bag_torn] bolsa de gas rota
    [tank_cracked] tanque rajado
    [gas_leak] fuga de gas
    [fire] fuego
   *[unwell] alguien se siente mal
}
item-day = { $item } ({ $days ->
    [one] ayer
   *[other] hace { $days } dias
})
corrected = Corregido: { $what }.
not-mended = ¿Qué corrijo? Escribalo completo, asi: eché 3 kg de sobras, 6 L de agua.

### What to do
do-feed-today = Hoy puede echar { $amount } con { $water } de agua.
do-feed-tomorrow = Mañana eche hasta { $amount } con { $water } de agua.
do-less-today = Hoy eche menos: { $amount } con { $water } de agua.
do-less-tomorrow = Mañana eche menos: { $amount } con { $water } de agua.
do-feed-dry-today = Hoy puede echar { $amount }, sin mas agua.
do-feed-dry-tomorrow = Mañana eche hasta { $amount }, sin mas agua.
do-more-today = Hoy todavia puede echar { $amount }.
do-hold = { $days ->
    [one] Hoy no eche comida, por favor.
   *[other] No eche comida { $days } dias, por favor, desde hoy.
}
do-hold-tomorrow = { $days ->
    [one] Hoy ya no eche mas, y mañana nada, por favor.
   *[other] No eche comida { $days } dias, por favor, desde mañana.
}
do-same-today = Hoy igual: { $amount } con { $water } de agua.
do-same-tomorrow = Mañana igual: { $amount } con { $water } de agua.
do-same-dry-today = Hoy igual: { $amount }, sin mas agua.
do-same-dry-tomorrow = Mañana igual: { $amount }, sin mas agua.
do-hold-still = { $days ->
    [one] Hoy siga sin echar comida.
   *[other] Siga sin echar comida: { $days } dias, desde hoy.
}
do-water = Agregue { $water } de agua antes de echar mas comida.
do-warm = Mantenga el tanque caliente: de dia tela oscura, de noche cobijas o paja. Eche la comida a la hora mas caliente.
do-warm-feed = Adentro hace frio y come poco: hasta { $amount } al dia. Mantengalo caliente.
do-check-gas = Revise las uniones del tubo de gas con agua y jabon, al aire libre, sin fuego. Las burbujas muestran la fuga.
remedy-slurry = El descanso solo quizas no la sane. Pida a su instalador cambiar { $amount } por liquido de un tanque que trabaja bien.
alkali-careful = Bicarbonato, cal o ceniza solo como diga su técnico: demasiado le hace daño.
gas-today = Hoy hay gas para unos { $minutes } min.
gas-none-yet = Todavia no hay gas para cocinar.
gas-little = Hoy hay muy poco gas.

### Why
why-usual = Todo se ve bien.
why-overloaded = Estos dias recibio mas de lo que puede comer, y demasiado lo pone agrio.
why-load_rising = La comida sube muy rapido. Sus bichitos necesitan dias para crecer.
why-underfed = Tiene hambre: un poco mas de comida da mas gas.
why-fed_today = Hoy ya comio su parte.
why-spread_out = Poco y seguido es mejor que mucho de una vez.
why-after_gap = Después de una pausa empiece con poco. No reponga los dias perdidos.
why-no_seed = Necesita estiércol fresco de vaca para empezar: sin eso la comida solo se agria.
why-seed_resting = Primero debe trabajar el estiércol. La comida va cuando la llama dure 3 dias.
why-start_up = Esta nuevo. La comida sube semana a semana.
why-first_gas = Suelte la primera bolsa de gas al aire libre, lejos del fuego: trae aire. Pruebe la estufa con la siguiente.
why-souring = Se esta agriando: mucho acido y pocos bichitos. El descanso lo cura.
why-recovering = Se esta curando. Poca comida hasta que la llama vuelva a ser fuerte.
why-sour_risk = Con mas se podria agriar.
why-too_thick = La mezcla esta muy espesa: no corre ni se digiere.
why-too_thin = Tanta agua se lleva sus bichitos.
why-grease = El aceite y la grasa flotan y lo ahogan: solo una o dos cucharas al dia.
why-citrus = Las cascaras de naranja y limon lo frenan: solo pocas, con otra comida.
why-protein = Mucha carne, pescado o huevo da mal gas: mézclelo con otra comida.
why-salt = La comida muy salada le hace daño.
why-inhibitor = Eso daña lo que vive adentro. No lo eche mas; solo agua y algo de estiércol.
why-not_food = Eso no es comida para el tanque y lo tapa. Saque desde afuera lo que alcance.
why-needs_dung = Solo con comida de cocina le falta algo: eche cada semana una pala de estiércol fresco de vaca.
why-cold = El frio lo pone lento, y la comida que se queda se agria.
why-too_hot = Adentro hace demasiado calor. Déle sombra.
why-cold_coming = Vienen dias mas frios: va a comer menos.
why-low_gas = Hay menos gas del que debe dar.
why-leak_suspected = Debia haber mas gas: tal vez hay una fuga.
why-gas_unused = Hay bastante gas: uselo antes de echar mas.
why-part = Hay una pieza que se debe revisar.
why-people_at_risk = El gas quema y envenena. Primero la gente.
why-size_unknown = Aun no sé el tamaño de su tanque, por eso voy con cuidado.
why-amount_unknown = No sé cuanto fue, por eso voy con cuidado.
why-intro = Porque: { $reasons }

### Signs: one step a family can take
sign-sour_smell = El olor agrio es por mucho acido.
sign-egg_smell = Olor a huevo en la salida: es normal, pero es veneno, no lo respire. Adentro o fuerte: salgan y escribame.
sign-bad_smell = Contra el olor ponga una capa fina de aceite de cocina sobre el agua de los tubos abiertos.
sign-scum = Remueva suave desde afuera por la entrada, y eche comida mas fina y con mas agua.
sign-outlet_blocked = Destape la salida desde afuera con un palo largo. Nunca meta la mano ni se meta.
sign-gas_line_blocked = Cierre la llave y busque un doblez o agua en el tubo de gas. Sin fuego cerca.
sign-water_in_gas_line = Cierre la llave y saque el agua por la parte mas baja del tubo de gas. Sin fuego cerca.
sign-green_liquid = Le entra luz y crece lama verde: tape el tanque o pintelo oscuro.
sign-thick_slurry = La mezcla esta muy espesa.
sign-watery_slurry = Ponga menos agua las proximas veces.
sign-flies = Tape la entrada y la salida, y enjuague la entrada cada vez que eche comida.
sign-worms = Tape el pozo de salida y enjuague la entrada cada vez que eche comida.
sign-bag_torn = No use el gas. Cierre la llave, aleje el fuego y llame al instalador para arreglar la bolsa.
sign-tank_cracked = Aleje a la gente y el fuego del tanque y llame al instalador. No eche nada hasta que esté arreglado.
flame-yellow = Abra un poco el hueco de aire de la hornilla y limpie el hollin.

### Causes of a trouble: one step for each, and one question that a yes answers for it
cause-little_fed = Tiene hambre: eche cada dia lo que le digo, y en unos dias hay gas.
cause-overfed = Recibio mas de lo que puede comer: eche solo lo que le digo.
cause-souring = Tal vez hay mucho acido adentro: siga el descanso o las comidas chicas que le digo.
cause-cold = Adentro hace frio: tapelo bien de noche y eche comida a la hora mas caliente.
cause-young = Es nuevo: suelte el primer gas al aire libre, lejos del fuego, y pruebe mañana.
cause-poisoned = Nada de jabon, cloro ni medicinas. Eche solo agua y algo de estiércol fresco.
cause-fat = Deje fuera aceite, grasa y carne por una semana.
cause-leak = Ponga agua con jabon en bolsa, llave y uniones, afuera, sin fuego: si hay burbujas, hay fuga.
cause-used_up = Usan casi todo lo que da: cierre la llave entre comidas y deje que la bolsa se llene.
cause-water_in_pipe = Cierre la llave y saque el agua en el punto mas bajo del tubo de gas. Sin fuego cerca.
cause-burner_air = Cierre un poco el hueco de aire de la hornilla, abra el gas despacio y pruebe.
cause-light_in = Tape o pinte el tanque de oscuro: la luz cria algas verdes y daña el gas.
cause-siphon = La salida tal vez chupa: su T debe estar abierta al aire arriba. Eche agua hasta la marca.
cause-tank_leak = Marque el nivel. Si mañana baja otra vez, llame a su instalador. Aleje el fuego.
cause-much_water = Use menos agua con las siguientes comidas.
cause-outlet_shut = Destape la salida con un palo largo desde afuera. Nunca meta la mano ni entre.
cause-thick_feed = Empuje con un palo largo y enjuague. Pique chico y mezcle con mas agua.
cause-vapour_lock = Hay gas atrapado en la entrada: mueva un palo largo despacio y eche poco a poco. Sin fuego cerca.
call-fitter = Ya van varios dias: pida a su instalador que venga a verlo.
ask-cause-little_fed = ¿Recibio menos comida que siempre esta semana?
ask-cause-overfed = ¿Le echaron mas de lo que dije?
ask-cause-souring = ¿La salida huele agrio, como vinagre?
ask-cause-cold = ¿Las noches han sido mas frias estos dias?
ask-cause-young = ¿Aun espera su primera buena llama?
ask-cause-poisoned = ¿Le cayo jabon, cloro, medicina o veneno?
ask-cause-fat = ¿Le cayo aceite, grasa o mucha carne?
ask-cause-leak = ¿La bolsa se afloja de noche aunque nadie cocine?
ask-cause-used_up = ¿Cocinaron mas tiempo que siempre?
ask-cause-water_in_pipe = ¿La llama salta o el tubo gorgotea?
ask-cause-burner_air = ¿La llama se levanta de la hornilla o silba?
ask-cause-light_in = ¿El liquido esta verde, o le entra luz al tanque?
ask-cause-siphon = ¿Salio mucho de golpe por la salida?
ask-cause-tank_leak = ¿El suelo esta mojado bajo el tanque o los tubos?
ask-cause-much_water = ¿Le ha entrado lluvia o mucha agua?
ask-cause-outlet_shut = ¿La salida sigue seca cuando echa comida?
ask-cause-thick_feed = ¿La comida iba en pedazos grandes o secos?
ask-cause-vapour_lock = ¿Burbujea y se devuelve cuando echa comida?

### Answers
answer-water = Por cada { $feed } de comida ponga unos { $water } de agua.
answer-gas = Hoy tiene gas para cocinar unos { $minutes } min.
answer-digestate = 1 parte del liquido con 3 de agua, a la tierra. Espere un mes antes de cosechar; no en hojas ni en lo que se come crudo. Lavese las manos.
answer-start_up = Llene con estiércol fresco de vaca y agua, mitad y mitad, caliente y oscuro. Comida solo si la llama dura 3 dias. Suelte el primer gas afuera.
answer-why-usual = Es lo que su tanque puede comer ahora, por su tamaño, su calor y lo que recibio.
answer-can-yes = Si, { $feed } es buena comida para el tanque. Piquelo chico y mezcle con agua.
answer-can-yes-short = Si, { $feed } es buena comida.
answer-can-some = Si, pero solo un poco de { $feed }, y con otra comida.
answer-can-no = No, por favor no eche { $feed } al tanque.
answer-history = Ultimos 7 dias: { $kg } kg en { $days ->
    [one] { $days } dia
   *[other] { $days } dias
}, { $water } L de agua, cocino { $minutes } min.
answer-history-none = No tengo nada anotado de los ultimos 7 dias. Digame qué puso.
answer-status-good = Su tanque se ve bien.
answer-status-watch = Su tanque necesita cuidado.

### Questions, one at a time
ask-tank = ¿De cuantos litros es su tanque?
ask-started = ¿Cuando llenaron el tanque por primera vez? Asi: hace 3 semanas.
ask-seed = ¿Con qué lo empezaron, y cuanto? Asi: 40 kg de estiércol de vaca.
ask-place = ¿En qué pueblo o ciudad esta, o cerca de cual?
ask-bucket = ¿Cuantos litros caben en 1 { $measure } de los suyos?
ask-usual = ¿Qué echa casi todos los dias, y cuanto?
ask-store = ¿De cuantos litros es su bolsa de gas?
ask-walls = ¿Su tanque es negro, blanco, esta forrado o enterrado?
ask-people = ¿Para cuantas personas cocina?
ask-amount = ¿Cuanto fue de { $feed }, en kg o en { $measure }?
ask-sure-amount = "{ $said }" es mucho. ¿Esta bien? Conteste si, o la cantidad correcta.
doubt-amount = ¿Cuanto es "{ $said }"? Asi: 2 kg o 1 balde.
doubt-unit = "{ $said }": ¿son kg o { $measure }?
doubt-feed = ¿Qué comida es "{ $said }"?
doubt-two = "{ $said }": ¿es { $first } o { $second }?
doubt-one = "{ $said }": ¿es { $first }, o qué?
doubt-water = "{ $said }": ¿es agua o { $first }?
doubt-day = "{ $said }": ¿qué dia fue?
doubt-sign = ¿Qué pasa: olor, fuga, no hay gas, u otra cosa?
doubt-word = Perdon, no entendi "{ $said }". Digame asi: eché 3 kg de sobras, 6 L de agua.

### Texts we start
remind-silence = { $days ->
    [one] { $days } dia
   *[other] { $days } dias
} sin noticias. ¿Como esta el tanque? Digame qué echo y como quema el gas. SILENCIO quita los avisos.
remind-rest-over = Ya pasaron los dias de descanso.
remind-rest-on = Necesita descansar mas.
remind-cold = Vienen semanas mas frias. Tape bien el tanque y eche menos: yo le digo cuanto. SILENCIO quita los avisos.
remind-oil = Toca poner otra capa fina de aceite de cocina sobre el agua de los tubos abiertos, contra el olor. SILENCIO quita los avisos.
remind-trap = Hoy saque por favor el agua de la parte mas baja del tubo de gas. Llave cerrada, sin fuego cerca. SILENCIO quita los avisos.
remind-yearly = Una vez al año un instalador debe ver tanque, tubos, llave y bolsa de gas: llame al suyo por favor. SILENCIO quita los avisos.
remind-leak = Una vez al mes: agua y jabon en todas las uniones de gas, sin fuego cerca. Si hay burbujas, hay fuga. SILENCIO quita los avisos.
warn-souring = No eche comida ahora, por favor: el tanque puede estarse agriando. Digame a qué huele y como esta la llama.

### To field workers
staff-alarm = PELIGRO con { $name } ({ $number }): { $signs }. Escribieron: "{ $said }". Conteste OK { $id } si va usted.
staff-alarm-again = SIGUE ABIERTO: peligro con { $name } ({ $number }): { $signs }. Conteste OK { $id } si va usted.
staff-ok = Gracias. { $name } queda con usted. Escriba: nota { $id } y lo que hallo.
staff-person = { $name } ({ $number }) pide que le llame.
staff-unknown = No conozco el hogar "{ $said }". Escriba su numero o nombre.
staff-which = ¿Cual? Escriba su numero: { $list }.
staff-help = Escriba: mi lista, history 12, for 12: fed 5 kg, nota 12 llave nueva, dile a 12 llego el martes, tomo 12, devuelvo 12, quita el limite 12, ok 12, listo 12.
staff-history = { $name }: 7 d, { $kg } kg en { $days } d, OLR { $olr } kg VS/m3/d, agua { $water } L, cocino { $minutes } min. Consejo: { staff-verdict }, { $ration } kg/d, riesgo { $risk }%. Ultimo mensaje hace { $ago } d.
staff-history-more = MAS lo cuenta dia por dia.
staff-verdict = { $verdict ->
   *[feed] cargar
    [less] cargar menos
    [hold] no cargar
    [water] echar agua
    [warm] abrigar
    [check] revisar
    [danger] peligro
}
staff-noted = Para { $name }: { $reply }
staff-needs = { $count ->
    [one] { $count } le necesita.
   *[other] { $count } le necesitan.
} { $list }
staff-needs-item = { $name }: { $need ->
    [danger] PELIGRO
    [souring] agriandose
    [person] pide a alguien
    [silent] sin noticias
    [rest] en descanso
   *[leak] ¿fuga?
}.
staff-needs-none = Ahora nadie le necesita.
staff-needs-rest = Y { $count } mas: MAS.
staff-note = Anotado para { $name }.
staff-take = { $name } ya queda con usted. DEVUELVO { $id } lo devuelve.
staff-hand-back = { $name } ya no queda con usted.
staff-done = Atendido: { $name }. Todos lo ven.
staff-done-none = Nadie atendia a { $name }. Primero: tomo { $id }.
staff-not-yours = { $name } no esta con usted.
staff-tell = Enviado a { $name }.
staff-tell-none = { $name } no tiene un teléfono que reciba mensajes.
staff-word = De { $worker }: { $text }
staff-what = ¿Qué escribo? Asi: nota 12 llave nueva, o: dile a 12 llego el martes.
staff-lift = { $name } puede escribir sin limite por un dia.
staff-viewer = Usted puede ver, pero no cambiar. Pregunte a su jefe.
staff-pin-ask = Para esto necesito su PIN, una vez al dia. Escriba: pin y su numero.
staff-pin-choose = Para esto necesita un PIN. Elija uno de 4 a 8 cifras y escriba, asi: pin 4711.
staff-pin-form = Un PIN tiene de 4 a 8 cifras, asi: pin 4711.
staff-pin-set = Este es su PIN desde ahora. Se lo pido una vez al dia.
staff-pin-ok = Gracias, vale por hoy.
staff-pin-wrong = Ese PIN no es. Intentos que quedan: { $left }.
staff-pin-locked = Demasiados PIN malos: cerrado por una hora. Ya avisé a su jefe.
staff-pin-told = { $worker } ({ $number }) queda cerrado una hora por PIN malos. ¿Esta el teléfono en buenas manos?

### Amounts
decimal-mark = .
number-half = { $unit ->
    [basin] media
    [tin] media
    [pot] media
    [cup] media
    [jug] media
    [bottle] media
    [spoon] media
    [shovel] media
    [bag] media
    [basket] media
    [crate] media
    [wheelbarrow] media
    [piece] media
   *[other] medio
} { $measure }
unit-kg = { $n } kg
unit-g = { $n } g
unit-l = { $n } L
unit-bucket = { $n } { $count ->
    [one] balde
   *[other] baldes
}
unit-basin = { $n } { $count ->
    [one] palangana
   *[other] palanganas
}
unit-jerrycan = { $n } { $count ->
    [one] bidon
   *[other] bidones
}
unit-tin = { $n } { $count ->
    [one] lata
   *[other] latas
}
unit-pot = { $n } { $count ->
    [one] olla
   *[other] ollas
}
unit-bowl = { $n } { $count ->
    [one] tazon
   *[other] tazones
}
unit-plate = { $n } { $count ->
    [one] plato
   *[other] platos
}
unit-cup = { $n } { $count ->
    [one] taza
   *[other] tazas
}
unit-glass = { $n } { $count ->
    [one] vaso
   *[other] vasos
}
unit-jug = { $n } { $count ->
    [one] jarra
   *[other] jarras
}
unit-bottle = { $n } { $count ->
    [one] botella
   *[other] botellas
}
unit-handful = { $n } { $count ->
    [one] puñado
   *[other] puñados
}
unit-spoon = { $n } { $count ->
    [one] cuchara
   *[other] cucharas
}
unit-shovel = { $n } { $count ->
    [one] pala
   *[other] palas
}
unit-bag = { $n } { $count ->
    [one] bolsa
   *[other] bolsas
}
unit-sack = { $n } { $count ->
    [one] costal
   *[other] costales
}
unit-basket = { $n } { $count ->
    [one] canasta
   *[other] canastas
}
unit-crate = { $n } { $count ->
    [one] caja
   *[other] cajas
}
unit-wheelbarrow = { $n } { $count ->
    [one] carretilla
   *[other] carretillas
}
unit-piece = { $n }
measure-bucket = balde
measure-basin = palangana
measure-jerrycan = bidon
measure-tin = lata
measure-pot = olla
measure-bowl = tazon
measure-plate = plato
measure-cup = taza
measure-glass = vaso
measure-jug = jarra
measure-bottle = botella
measure-handful = puñado
measure-spoon = cuchara
measure-shovel = pala
measure-bag = bolsa
measure-sack = costal
measure-basket = canasta
measure-crate = caja
measure-wheelbarrow = carretilla
measure-piece = pieza
language-name = Español

### Feeds
feed-cooked_rice = arroz
feed-maize_meal = masa de maiz
feed-bread = pan
feed-flatbread = tortillas
feed-pasta = fideos
feed-porridge = avena o atol
feed-potato = papas
feed-potato_peel = cascaras de papa
feed-cassava = yuca
feed-cassava_peel = cascaras de yuca
feed-sweet_potato = camote
feed-yam = ñame
feed-plantain = platano de cocinar
feed-plantain_peel = cascaras de platano
feed-flour = harina
feed-maize = maiz
feed-banana = banano
feed-banana_peel = cascaras de banano
feed-mango = mango
feed-papaya = papaya
feed-pineapple = piña
feed-citrus_peel = cascaras de naranja y limon
feed-melon_rind = cascaras de sandia
feed-avocado = aguacate
feed-apple = manzana
feed-fruit_waste = restos de fruta
feed-tomato = tomate
feed-onion = cebolla
feed-cabbage = repollo
feed-leafy_greens = hojas verdes
feed-carrot = zanahoria
feed-pumpkin = zapallo
feed-vegetable_waste = restos de verdura
feed-beans = frijoles
feed-lentils = lentejas
feed-egg = huevo
feed-meat = carne
feed-fish = pescado
feed-milk = leche
feed-whey = suero
feed-cheese = queso
feed-cooking_oil = aceite
feed-fat = grasa
feed-sugar = azucar
feed-sweet_drink = refresco
feed-food_waste = sobras
feed-coffee_grounds = borra de café
feed-tea_leaves = hojas de té
feed-spent_grain = bagazo de cerveza
feed-starch_water = agua de almidon
feed-cattle_manure = estiércol de vaca
feed-pig_manure = estiércol de chancho
feed-chicken_manure = gallinaza
feed-goat_manure = estiércol de cabra
feed-horse_manure = estiércol de caballo
feed-human_waste = desechos del baño
feed-digestate = liquido del tanque
feed-grass = pasto
feed-leaves = hojas
feed-water_hyacinth = lirio de agua
feed-straw = paja
feed-bone = huesos
feed-eggshell = cascaras de huevo
feed-wood = madera
feed-soil = tierra
feed-ash = ceniza
feed-plastic = plastico
feed-paper = papel
feed-soap = jabon
feed-chemical = quimicos

# A text that could not be worked in many tries.
sorry = Perdon, no pude atender su ultimo mensaje. Esta guardado. Por favor digamelo otra vez con otras palabras.
