# What Bellyful says in Tolmi: the sentences of a first talk. What is not here is said in English.
hello = Saluk! Mi Bellyful, helpok di tankor. HALTUK: nulgo. HELPOK: helpok.
help = Skribuk: metuk skrapi kilt 3, vodur lurt 6. HALTUK, MALFUK.
stopped = Nulgo skribuk plu. DENOVUK: retro.
started = Saluk denovuk!
heard = Auduk: { $what }.
item-fed = { $feed } { $amount }
item-water = vodur { $amount }
item-water-none = vodur nulgo
item-tank = tankor lurt { $litres }
item-gas = gazol { $level ->
    [none] nulgo
    [low] malto
    [full] plenko
   *[other] bonko
}
item-flame = flambo { $look ->
    [blue] azuk
   *[other] gelbo
}
item-burned = bolkuk mirk { $minutes }
item-sign = { $sign ->
    [sour_smell] smelk akri
   *[gas_leak] gazol ekfugi
}
undone = Malfuk: { $what }.
alarm = Ekstero nunk! Flambo nenk.
cause-leak = Sapvodur sur bonko gazol.
answer-can-no = Nejo: { $feed } di tankor nenk.
ask-tank = Tankor: lurt kvontu?
decimal-mark = ,
unit-kg = kilt { $n }
unit-g = gilt { $n }
unit-l = lurt { $n }
unit-bucket = bakulo { $n }
measure-bucket = bakulo
feed-food_waste = skrapi
feed-cooked_rice = rizumi
feed-cattle_manure = gobolo
feed-bone = ostrix
language-name = Tolmi
