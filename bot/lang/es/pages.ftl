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
need-silent = Callado
need-rest = En reposo
need-leak = ¿Fuga?
need-start_up = Arranque
need-watch = Vigilar
need-well = Bien

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
