# Lo que dicen las páginas del personal en español. Palabras del oficio, cortas.

### Sobre cada página
nav-skip = Ir al contenido
nav-today = Hoy
nav-programme = Programa
nav-broadcast = Aviso a muchos
nav-setup = Personas y ajustes
nav-log-out = Salir, { $name }

### Fechas
weekday = { $weekday ->
    [1] lunes
    [2] martes
    [3] miércoles
    [4] jueves
    [5] viernes
    [6] sábado
   *[7] domingo
}
month = { $month ->
    [1] enero
    [2] febrero
    [3] marzo
    [4] abril
    [5] mayo
    [6] junio
    [7] julio
    [8] agosto
    [9] septiembre
    [10] octubre
    [11] noviembre
   *[12] diciembre
}
month-short = { $month ->
    [1] ene
    [2] feb
    [3] mar
    [4] abr
    [5] may
    [6] jun
    [7] jul
    [8] ago
    [9] sep
    [10] oct
    [11] nov
   *[12] dic
}
date-full = { weekday } { $day } de { month } de { $year }
date-day = { $day } { month-short } { $year }
date-short = { $day } { month-short }
date-moment = { $day } { month-short } { $time }
date-full-moment = { $day } { month-short } { $year } { $time }
date-month = { month } de { $year }

### Entrada
login-title = Entrar
login-head = Entrada del personal
login-name = Nombre
login-password = Contraseña
login-enter = Entrar
login-wait = Demasiados intentos con este nombre. Espere cinco minutos y pruebe otra vez.
login-wrong = El nombre y la contraseña no coinciden. Pruebe otra vez.

### Lo que no funcionó
broken-head = Eso no funcionó
broken-back = Volver a hoy
broken-here = Algo falló aquí. No se perdió nada; pruebe otra vez en un momento.
broken-no-page = No existe esa página.
broken-role = Su función no lo permite; pregunte a un responsable.
broken-no-household = No existe el hogar { $id }.
broken-no-broadcast = No existe el aviso { $id }.

### Hoy
today-none = Ningún hogar ha escrito todavía. Dé a las familias el número: con su primer mensaje aparecen aquí.
today-pressing = { $n ->
    [0] Nadie espera una visita.
    [one] Un hogar necesita a alguien.
   *[other] { $n } hogares necesitan a alguien.
}
today-find-label = Buscar un hogar por nombre o número
today-find = Buscar
today-by-need = Según lo que necesitan
today-all = Todos { $n }
today-none-fits = Ningún hogar coincide.
today-show-all = Ver todos
today-last = { $n ->
    [0] último mensaje hoy
    [1] último mensaje ayer
   *[other] último mensaje hace { $n } días
}
today-last-never = sin mensajes todavía
today-fed = carga
today-cooked = cocina
today-risk = riesgo
today-take = Me encargo
today-done = Hecho
today-taken-by = { $name } se encarga.
today-done-by = Atendido por { $name }.
today-alarm = { $signs }, avisado { $when }; nadie se ha encargado
today-danger-open = Avisó de un peligro; aún sin atender
today-asked = Pidió hablar con alguien { $when }
today-never = Todavía no ha escrito
today-silent = { $n ->
    [one] Un día sin mensajes
   *[other] { $n } días sin mensajes
}
today-pages = Páginas
today-before = Anterior
today-next = Siguiente
today-page = { $page } de { $pages }, { $n ->
    [one] { $n } hogar
   *[other] { $n } hogares
}
spark-fed = Cargado en los últimos 30 días: { $total } kg en { $n ->
    [one] { $n } día
   *[other] { $n } días
}
spark-cooked = Cocinado en los últimos 30 días: { $total } min en { $n ->
    [one] { $n } día
   *[other] { $n } días
}
need-danger = Peligro
need-souring = Se agria
need-person = Pide a alguien
need-silent = Callado
need-rest = En reposo
need-leak = ¿Fuga?
need-start_up = Arranque
need-watch = Vigilar
need-well = Bien

### Mapa
map-title = { $n ->
    [one] Mapa: un hogar
   *[other] Mapa: { $n } hogares
}
map-bundle = { $n } hogares cerca de { $place }, { $pressing } necesitan a alguien; lo más urgente: { $need }
map-unplaced = { $n ->
    [one] Un hogar no está en el mapa: no dijo una ciudad conocida.
   *[other] { $n } hogares no están en el mapa: no dijeron una ciudad conocida.
}
map-more = { $n ->
    [one] Uno más está solo en la lista.
   *[other] { $n } más están solo en la lista.
}

### Fichas de programas
tokens-head = Lectura por máquina
tokens-what = Una ficha deja leer a otro programa; números y mensajes nunca se dan. Lo que se puede leer está descrito en
tokens-name = Quién la recibe
tokens-scope = Puede leer
scope-read = lo dicho y aconsejado, sin nombres
scope-people = lo dicho y aconsejado, con nombres y lugares
tokens-make = Hacer una ficha
tokens-new = Ficha para { $name }
tokens-once = Cópiela ahora: se muestra solo esta vez. Entréguela solo por una vía segura.
tokens-remove = Retirar
tokens-remove-of = Retirar la ficha de { $name }
tokens-removed = La ficha de { $name } ya no abre nada.
tokens-none = Todavía no hay ninguna ficha.
form-token-there = Ya hay una ficha para { $name }; retírela primero o dé otro nombre.
form-token-gone = No hay ficha para { $name }; quizá ya se retiró.

### Fotos de visitas
photo-take = Fotos
photo-how = Hasta 4, JPEG, PNG o WebP. Tómelas afuera y lejos del gas; pida permiso a la familia. No se guarda dónde ni con qué se tomaron.
photo-alt = Foto { $name } de la visita
photo-remove = Quitar
photo-remove-of = Quitar la foto { $name }
form-unread = El formulario no llegó entero; envíelo otra vez.
form-photo-many = Dé como máximo { $n } fotos; no se guardó nada.
form-photo-kind = Una foto debe ser JPEG, PNG o WebP; no se guardó nada. Tómela otra vez con la cámara del teléfono.
form-photo-big = Una foto puede tener como máximo { $n } MB y 10 000 puntos por lado; no se guardó nada. Ponga la cámara en un tamaño menor.
form-photo-damaged = Una foto está dañada y no se puede leer; no se guardó nada. Tómela otra vez.

### Las cifras del programa para llevar
out-head = Para llevar
out-xlsx = Una fila por hogar y mes, como libro de cálculo (XLSX)
out-from = Informe desde el mes
out-to = hasta el mes (vacío: solo ese)
out-report = Un informe para imprimir
report-title = Informe del programa, { $name }
report-span = { $first } a { $last }
report-made = Hecho el { $date } para { $name }.
report-print = Imprímalo desde el menú de su navegador.
report-households = Hogares en el programa
form-rows-many = Son { $n } filas, más de las que caben en un libro; pida menos meses o tome el CSV.
column-household = Hogar
column-name = Nombre
column-days_told = Días contados
column-water_l = Agua, L
column-cooked_min = Cocina, min
column-spared_fuel = Combustible ahorrado
column-non_renewable_share = Parte que no vuelve a crecer
column-spared_fuel_kg = Combustible ahorrado, kg
column-texts_in = Mensajes que entran
column-texts_out = Mensajes que salen

### La historia de un hogar
house-closed = Esta historia está cerrada: el tanque se vació y empezó de nuevo con otro número.
house-goes-on = Sigue con el número { $name }
house-before = Lo de antes está en el número { $name }
house-danger = Peligro.
house-alarm = { $signs }, avisado { $when }: "{ $said }"
house-take = Me encargo
house-doing = Lo que se les dice ahora
figure-risk = Riesgo de agriarse, 14 días
figure-olr = COV, 7 días
figure-olr-is = { $n } kg SV/m3/d
figure-hrt = TRH, 7 días
figure-ts = ST que entran
figure-slurry = Lodo
figure-gas = Gas hoy
figure-started = Empezó
figure-no-feed = sin carga
not-told = no se sabe
nobody = nadie
if-lead = ¿Y si cargaran
if-kg = kg al día
if-kg-with = kg con
if-litres = litros de agua al día
if-each-day = L de agua cada día?
if-look = Ver 14 días adelante
if-wrong = Dé kilos y litros al día como números de 0 a { $most }.
if-told = Con { $kg } kg de la mezcla de siempre y { $water } L de agua cada día: en { $days } días COV { $olr } kg SV/m3/d, TRH { $hrt }, riesgo de agriarse { $risk }%, gas { $gas } min al día. Entonces el bot diría: { $verdict }, hasta { $ration } kg.
if-no-end = sin fin
if-chart = Dos semanas por delante, día por día
verdict-feed = cargar
verdict-less = cargar menos
verdict-hold = no cargar
verdict-water = echar agua
verdict-warm = abrigar
verdict-check = revisar algo
verdict-danger = peligro
story-head = Su historia
story-span = Cuánto hacia atrás
span-30 = 30 días
span-120 = 120 días
span-365 = Un año
span-1826 = 5 años
story-chart = Gráfica, día por día
story-weeks = Cada trazo es la media de una semana.
chart-label = La historia del hogar, día por día
chart-read = Leer un día
chart-dashes = (rayas: { $name })
chart-dots = (puntos: { $name })
chart-fed = Carga, kg al día
chart-advised = ración aconsejada
chart-other = otros
chart-water = Agua, L al día
chart-olr = COV en 7 días, kg SV/m3/d
chart-most = máximo, sin agitar
chart-cooked = Cocina, min al día
chart-gas = gas que esperábamos
chart-made = Gas hecho, min al día: estimado
chart-left = queda en la bolsa
chart-risk = Riesgo de agriarse en 14 días, %
chart-slurry = Lodo, °C: estimado
chart-told = medido
chart-ph = pH: estimado
chart-ph-told = pH medido
chart-acids = Ácidos (AGV), g/L como ácido acético: estimados
chart-signs = Señales avisadas
days-go = Leerlo día por día
days-head = Día por día
days-how = El último día va primero. Cargado, agua, cocinado, lodo y señales son lo dicho; * marca un pH medido, los demás son estimados.
days-day = Día
days-advised = Ración aconsejada, kg
days-olr = OLR, kg VS/m3/d
days-gas = Gas estimado, min: hecho / queda
days-slurry = Lodo medido, °C
days-ph = pH
days-acids = Ácidos estimados, g/L
talk-head = Conversación
talk-none = Sin mensajes todavía.
talk-why = Por qué
talk-note = { $verdict } · ración { $kg } kg, { $water } L · riesgo { $risk }% · { $segments }
segments = { $n ->
    [one] { $n } segmento
   *[other] { $n } segmentos
}
trail-head = Notas y actos del personal
trail-new = Nota nueva
trail-keep = Guardar
did-noted = { $by }: { $words }
did-took_alarm = { $by } se hizo cargo de la alarma.
did-sees_to_it = { $by } se encarga.
did-has_seen_to_it = { $by } ya lo atendió.
did-told_danger = { $by } avisó de un peligro por la familia.
did-told_facts = { $by } contó datos por la familia.
did-asked_history = { $by } pidió la historia.
did-told_family = { $by } dijo a la familia: { $words }
did-took_over = { $by } tomó el hogar a su cargo.
did-handed_back = { $by } devolvió el hogar.
did-lifted_cap = { $by } quitó por un día el tope de mensajes.
did-added_phone = { $by } añadió un teléfono.
did-took_phone_off = { $by } quitó un teléfono.
did-told_measure = { $by } dijo cuánto cabe en su { $measure }: { $litres } L.
did-ended_reminders = { $by } terminó los recordatorios.
did-began_reminders = { $by } volvió a poner los recordatorios, como pidió la familia.
did-began_anew = { $by }: el tanque empezó de nuevo; su historia hasta ahora está en el número { $id }.
did-closed_story = { $by } cerró esta historia: el tanque se vació y se llenó de nuevo.
did-changed_settings = { $by } cambió los ajustes.
did-changed_settings_to = { $by } cambió los ajustes: { $settings }
did-visited = { $by } estuvo allí. { $errand }
did-took_photo_away = { $by } quitó una foto.
did-set_up = { $by } dio de alta el hogar; aceptaron recibir mensajes.
did-asked_needs = { $by } preguntó quién le necesita.
did-asked_more = { $by } pidió más.
did-set_pin = { $by } puso un PIN.
did-gave_pin = { $by } dio el PIN.
did-gave_wrong_pin = { $by } dio un PIN equivocado.
did-gave_no_pin = { $by } dio algo que no es un PIN.
did-tried_while_locked = { $by } dio un PIN con la línea bloqueada.
did-got_locked = { $by } tiene la línea bloqueada por PIN equivocados.
did-added_staff = { $by } añadió a { $name } como { $role }.
did-changed_staff = { $by } cambió a { $name }: ahora { $role }.
did-gave_password = { $by } dio a { $name } una contraseña nueva.
did-freed_of_pin = { $by } libró a { $name } del PIN.
did-took_off_staff = { $by } quitó a { $name } del personal.
did-made_token = { $by } hizo una ficha para { $name }: { $scope }.
did-took_token_back = { $by } retiró la ficha de { $name }.
did-set_call = { $by } puso el número al que llamar en { $country }: { $number }.
did-set_call_back = { $by } devolvió a { $country } el número incorporado.
did-taught_word = { $by } enseñó una palabra de { $place }: { $word } es { $feed }.
did-took_word_away = { $by } quitó la palabra { $word }.
did-set_keeping = { $by } fijó que las palabras de los mensajes se guardan { $n } días.
did-set_keeping_ever = { $by } fijó que los mensajes se guardan para siempre.
did-pin_for_all = { $by } fijó que todos necesitan un PIN.
did-pin_for_some = { $by } fijó que el PIN queda a elección de cada uno.
did-sent_broadcast = { $by } mandó un aviso a { $n ->
    [one] { $n } hogar
   *[other] { $n } hogares
} ({ $audience }): { $words }
did-stopped_broadcast = { $by } detuvo el aviso { $id }; { $n } mensajes no salieron.
nothing-yet = Nada todavía.
visits-head = Visitas
visits-none = Nadie ha ido todavía.
visits-before = Visitas anteriores
visit-go-new_tank = Revisar un tanque nuevo
visit-go-fault = Ver una falla
phones-head = Teléfonos y recordatorios
phone-by = por { $name }
phone-stopped = dijo STOP: no recibe nada
phone-off = Quitar
phone-off-label = Quitar { $name }
phone-none = Sin teléfono.
phone-another = Otro número de ellos
gateway = Pasarela
phone-add = Añadir
reminders-are-off = Sin recordatorios.
reminders-are-on = Con recordatorios.
reminders-again = Los pidieron de nuevo
reminders-end = Quitar recordatorios
restart-head = El tanque se vació y se llenó de nuevo, o la familia se mudó
restart-fine = Su historia empieza otra vez con un número nuevo, con los mismos teléfonos, tamaños y medidas. Lo de antes se puede leer aquí.
restart-manure = Arranque: estiércol, kg
restart-place = Dónde está ahora, si la familia se mudó: pueblo
restart-sure = Vaciado y llenado de nuevo hoy
restart-do = Empezar de nuevo
settings-head = Digestor y familia
set-name = Nombre
set-place = Lugar
set-tank_l = Tanque, L
set-liquid_l = Lodo hasta el rebose, L
set-store_l = Bolsa de gas, L
set-people = Personas a la mesa
set-started = Llenado por primera vez
set-walls = Paredes
set-lang = Les escribimos en
set-staff = Trabajador de campo
set-keep = Guardar los cambios
walls-black = negro
walls-white = blanco
walls-insulated = abrigado
walls-greenhouse = invernadero
walls-heated = calentado
walls-buried = enterrado
holds-lead = Su
holds-measure = Medida
holds-holds = lleva
holds-litres = Litros
told-head = Lo que se dijo, y desde qué día vale
told-liquid = lodo hasta el rebose { $n } L
told-started = llenado por primera vez

### Visitas
visit-title = Visita a { $name }
visit-for = Para qué es la visita
errand-new_tank = Revisión de un tanque nuevo
errand-fault = Revisión de una falla
errand-short-new_tank = Tanque nuevo
errand-short-fault = Falla
visit-cautions = Ni llama, ni teléfono, ni interruptor donde pueda haber gas; nunca se asome ni entre a un tanque o pozo. El gas que huele a huevo envenena. Las conexiones de gas son trabajo de un instalador autorizado, y las normas locales van antes que esta lista, que es práctica común.
mark-good = bien
mark-bad = por arreglar
mark-none = sin mirar
visit-note = Nota
visit-keep = Guardar la visita
visit-told = { $errand }: { $good } bien, por arreglar: { $bad }.
visit-told-good = { $errand }: { $good } bien, nada por arreglar.
check-walls_dark = Paredes oscuras: no llega luz al lodo
check-gas_tight = Sin fugas: agua con jabón en cada unión, sello y costura no hace burbujas
check-overflow_low = Rebose unos 50 mm más bajo que la boca de entrada
check-overflow_open = El rebose pasa por una te abierta al aire
check-inlet_floor = Tubo de entrada de 50 mm, llega al fondo, pie cortado a 45 grados
check-outlet_middle = La salida abre a media altura, en diagonal con la entrada
check-gas_high = Salida de gas unos 20 mm bajo el techo; su tubo sube sobre el nivel del agua
check-pipe_seals = Sellos firmes donde los tubos cruzan la pared
check-valve = La llave de gas gira bien y cierra; media pulgada, uniones sin pegamento
check-water_trap = Trampa de agua en el punto más bajo del tubo de gas, vaciada
check-bag = Bolsa de gas entera, a la sombra, fija, sin nada filoso cerca
check-hose = Manguera y conexiones de la estufa sin grietas, con abrazaderas
check-inlet_free = Entrada libre: el agua que se echa baja
check-outlet_free = Salida libre: sale tanto como entra
check-level = El lodo está al nivel del rebose
check-flame_blue = Llama firme y azul
check-flame_far = Llama y chispas lejos de tanque, bolsa y tubos; la cocina tiene aire
check-nobody_falls_in = Tapas cerradas; ningún niño ni animal puede caer; pozo cercado
check-family_told = La familia sabe: el gas explota, el olor a huevo envenena, lavarse las manos, nunca entrar

### Programa
prog-months = Meses hacia atrás
prog-fuel = Antes cocinaban con
prog-share = Parte de la leña que no vuelve a crecer, de 0 a 1
prog-work-out = Calcular
prog-by-month = Por mes
prog-by-place = Por lugar
prog-month = Mes
prog-place = Lugar
prog-no-place = lugar sin decir
prog-nothing = No se dijo nada en estos meses.
prog-heard = Hogares que escribieron
prog-working = Cocinan con gas
prog-fed = Carga, kg
prog-slurry = Lodo que sale, L
prog-hours = Cocina, h
prog-gas = Gas quemado, m3
prog-spared = { $name }: ahorro, kg
prog-co2e = CO2e evitado, kg
prog-texts = Mensajes que entran / salen
prog-segments = Segmentos pagados
prog-csv = Una fila por hogar y mes, en CSV
prog-how = Cómo se cuenta
prog-method = Solo cuenta el gas que las familias dijeron haber quemado: minutos de estufa, 300 L de biogás por hora ({ $methane }% de metano, húmedo, { $celsius } °C). El combustible ahorrado es el que da el mismo calor en la olla: estufa de gas 55%, fogón de tres piedras 12%, estufa de carbón 25%, de mecha 45%. CO2e a 100 años con los potenciales del AR6 y los factores del IPCC 2006, en la forma de AMS-I.E, menos 5% de fugas en otra parte; { $share } del combustible ({ $name }) se cuenta como que no vuelve a crecer; menos el metano fugado, tomado como { $leak }% de lo producido donde nadie lo midió. El lodo que sale es lo que entró. Las sumas son estimaciones; un reclamo de créditos necesita su propia encuesta.
fuel-wood = leña
fuel-charcoal = carbón
fuel-lpg = gas LP
fuel-kerosene = queroseno

### Aviso a muchos
cast-title = Aviso { $name }
cast-text = Sus palabras, como llegan a cada familia después de su nombre
cast-lang = Idioma
cast-place = Lugar
cast-staff = Trabajador de campo
cast-need = Lo que necesitan
cast-all-langs = todos los idiomas
cast-all-places = todos los lugares
cast-all-staff = todos los trabajadores
cast-all-needs = lo que sea
cast-nobody = Nadie coincide.
cast-would = { $n ->
    [one] { $n } hogar
   *[other] { $n } hogares
}, se pagan { $segments }.
cast-without = { $n } más coinciden, pero dijeron STOP o MUTE o no tienen teléfono: no reciben nada.
cast-when = El primero sale { $first }, el último { $last }; de noche cada uno espera su mañana. A lo más uno por segundo.
cast-send = Enviar a { $n }
cast-look = Mirar antes de enviar
cast-look-again = Mirar otra vez
cast-before = Enviados antes
cast-row = { $when }, { $staff }, a { $audience } · { $progress } · { $state }
cast-progress = { $sent } de { $all } enviados
cast-done = terminado
cast-going = saliendo
cast-stopped = parado { $name }
cast-everybody = todos los hogares
cast-to = { $when }, { $staff }, a { $audience }
cast-sent = Enviados
cast-waiting = En espera
cast-not-sent = Sin enviar
cast-last = El último sale
cast-stop = Parar: { $n } no salen
cast-see = Ver cuánto va
cast-all = Todos los avisos

### Personas y ajustes
setup-on-page = En esta página
setup-staff = Personal
setup-household = Hogar nuevo
setup-gateways = Pasarelas
setup-words = Nombres de comidas
setup-numbers = Números de emergencia
setup-keeping = Cuánto se guardan los mensajes
setup-wording = Redacción
setup-trail = Lo que cambió el personal
role-viewer = lector
role-field = trabajador de campo
role-lead = responsable
role-long-viewer = lector: mira, con números tapados
role-long-field = trabajador de campo: actúa por los hogares
role-long-lead = responsable: ajusta personas y reglas
staff-no-phone = sin teléfono
staff-phone = { $number } por { $gateway }
staff-no-log-in = sin entrada
staff-has-pin = con PIN
staff-change = Cambiar
staff-change-of = Cambiar a { $name }
staff-role-of = Función de { $name }
staff-lang-of = Idioma de { $name }
staff-new-password = Contraseña nueva
staff-free-pin = Quitar PIN
staff-pin-all = Por mensaje, todos necesitan un PIN una vez al día.
staff-pin-own = Por mensaje, solo se pide PIN a quien eligió uno.
staff-pin-leave = Que cada quien decida
staff-pin-need = Que todos tengan uno
staff-add-head = Añadir a alguien
staff-add = Añadir
staff-role = Función
staff-lang = Idioma
number-texts = Número desde el que escriben
family-head = Hogar nuevo, o un segundo tanque
family-fine = Un segundo tanque tiene su propio modelo: dele nombre y número propios. Un hogar que escribe por sí mismo aparece sin este formulario.
family-town = Pueblo más cercano
family-agreed = Aceptaron recibir mensajes
family-do = Registrar
traffic-head = Pasarelas, últimas 24 horas
traffic-none = No hay ninguna pasarela configurada.
traffic-state = Estado
traffic-in = Entran
traffic-last-in = Último
traffic-sent = Enviados
traffic-delivered = Entregados, según aviso
traffic-lost = No aceptados
traffic-waiting = En espera
traffic-stuck = hay mensajes en espera
traffic-stuck-why = hay mensajes en espera: { $name }
traffic-many-lost = muchos no se aceptan
traffic-quiet = un día en silencio
traffic-well = bien
traffic-never = ninguno
ago-now = ahora mismo
ago-minutes = hace { $n } min
ago-hours = hace { $n } h
words-head = Nombres de comidas del distrito
words-fine = Una palabra enseñada aquí una vez se entiende en los mensajes de todos los hogares de allí.
words-word = Su palabra
words-means = Significa
words-country = País, dos letras
words-place = Solo donde el lugar es (vacío: todo el país)
words-teach = Enseñar
words-none = Ninguna palabra enseñada todavía.
words-by = la enseñó { $name }
words-off = Quitar
words-off-label = Quitar { $name }
call-head = Números para llamar en peligro
call-fine = Van en el mensaje de alarma. Pregunte a la autoridad del país; donde no se conoce ninguno, el mensaje dice que pidan ayuda.
call-number = Número (vacío: el incorporado)
call-set = Poner
call-all = Los { $n } números
call-own = puesto aquí
keep-days = Días hasta que se olvidan las palabras de los mensajes (vacío: para siempre). Cantidades, fechas y consejos quedan; los segmentos pagados ya no se cuentan más atrás.
said-password = { $name } puede entrar con la contraseña { $password }. Se muestra solo esta vez.
said-new-password = La contraseña nueva de { $name } es { $password }. Se muestra solo esta vez.
said-role = { $name } ahora es { $role }.
said-lang = { $name } lee { $lang } desde la próxima entrada.
said-pin-free = El próximo PIN que escriba { $name } será el suyo.
said-off = { $name } ya no es del personal; sus hogares no son de nadie ahora.
said-call-built-in = En { $country } vale otra vez el número incorporado.
said-call = En peligro, a las familias de { $country } se les dice que llamen al { $number }.
said-word-off = La palabra se quitó.
said-word = En { $place }, { $word } es { $feed } desde ahora.
said-keep = Las palabras de los mensajes se olvidan a los { $n } días; lo dicho del digestor queda.
said-keep-ever = Los mensajes se guardan para siempre.
said-pin-all = A quien no tiene PIN se le pide elegir uno antes de decirle nada de un hogar.
said-pin-own = A quien no tiene PIN se le habla de los hogares sin él.

### Redacción
wording-title = Redacción en { $name }
wording-lead = { $n } mensajes y partes de mensajes, { $long } más largos que un segmento por sí solos. Un texto se arma con ellos y se acorta a su espacio.
wording-letters = { $n ->
    [one] { $n } letra
   *[other] { $n } letras
}
wording-dear = letras de dos bytes

### El teléfono en una página
try-title = Un teléfono para probar
try-phone = Teléfono
try-staff = Páginas del personal
try-choose = Elija un hogar al lado, o empiece como familia nueva. Luego escriba como lo haría esa familia.
try-screen = Pantalla del teléfono
try-empty = Sin mensajes todavía. Salude, o diga qué cargó.
try-text = Su mensaje
try-send = Enviar
try-filling = Se está viviendo la historia
try-filling-fine = Cada hogar escribe a lo largo de { $n } días. Los que ya están completos se pueden elegir.
try-again = Mirar otra vez
try-whose = ¿De quién es el teléfono?
try-day-of = día { $day } de { $days }
try-new = Empezar como familia nueva
try-new-family = Una familia nueva
try-invented = Los hogares, nombres y números son inventados, y también quién vive en qué pueblo y su clima; lo que el bot les dice se calcula.
try-time = Tiempo
try-now = Es { $name }.
try-day = Dejar pasar un día
try-cautions = Precauciones
try-caution-burns = El biogás arde, y mezclado con aire explota. Ninguna llama cerca del tanque, la bolsa o los tubos.
try-caution-poison = El gas que huele a huevo podrido envenena; si es fuerte, ya no se huele.
try-caution-germs = El lodo lleva microbios: lávese las manos. Nunca entre a un tanque o pozo, ni tras alguien.
try-caution-codes = Lo que se escribe es consejo. Las normas locales y los instaladores autorizados van primero.

### Lo que se escribió en un formulario y no se puede tomar
form-letters = Escriba un texto de 1 a { $most } letras.
form-nobody-fits = Nadie coincide; no se envió nada.
form-text-long = El texto no cabe en dos segmentos; dígalo más corto. No se envió nada.
form-not-theirs = Este número no es de ellos.
form-number-needed = Dé el número desde el que escriben.
form-number-stopped = Este número dijo STOP; solo su dueño puede escribir START.
form-number-household = Este número es del hogar { $id }; quítelo allí primero.
form-number-staff = Este número es de { $name }.
form-number-taken = Este número es de un hogar o del personal, o dijo STOP; dé otro.
form-number-shape = Dé el número con + y el código del país, como +254700000000.
form-choose = Elija uno de la lista.
form-measure-litres = Diga cuántos litros caben, más de 0 y a lo más { $most }.
form-restart-sure = Marque que el tanque se vació y se llenó de nuevo; no se cambió nada.
form-starter = Dé el arranque en kilos, o nada.
form-closed = Esta historia ya está cerrada; su tanque empezó de nuevo con otro número.
form-agreed = Pregunte antes a la familia; solo se registra a quien aceptó recibir mensajes.
form-no-town = El bot no conoce ningún pueblo { $name }; dé el más cercano o el del distrito.
form-above = { $field ->
    [tank_l] El tanque
    [liquid_l] El lodo
    [people] Las personas
   *[store_l] La bolsa de gas
}: dé un número mayor que 0 y a lo más { $most }.
form-slurry-fits = { $liquid } L de lodo no caben en un tanque de { $tank } L; corrija uno de los dos.
form-date = Dé el día de llenado como año-mes-día, por ejemplo 2026-03-01.
form-date-range = El día de llenado debe estar en los últimos 30 años.
form-call-digits = Dé el número de emergencia en cifras, a lo más 15.
form-country = Dé el país con sus dos letras, como KE.
form-word-taught = Esta palabra ya se enseñó allí; quítela primero.
form-word-shape = Dé el nombre en 1 a { $most } palabras, sin cifras.
form-word-danger = El bot toma esta palabra por un peligro; no puede ser una comida.
form-word-else = El bot ya toma esta palabra por otra cosa; escríbala de otra manera.
form-word-known = El bot ya conoce esta palabra, como { $feed }.
form-days = Dé días enteros, al menos { $least }, o nada para siempre.
form-name-letters = Dé un nombre de 1 a { $most } letras.
form-staff-there = Ya hay alguien llamado { $name }; cambie a esa persona o dé otro nombre.
form-staff-none = No hay nadie llamado { $name } en el personal.
form-staff-last = { $name } es el último responsable que puede entrar; nombre antes a otro.
form-staff-number = Otra persona del personal escribe desde este número.
form-visit-empty = Marque al menos un punto o escriba una nota; no se guardó nada.
