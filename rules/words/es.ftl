# What Chough says in Spanish. Names, questions, reasons and cautions stand in es.json; here are the sentences that join
# them.

## Bits
list-last = { $first } o { $last }
line = { $text }
fewer-than = menos de { $number }
years = { $number } años
days = { $number } días
not-known = no se sabe
fact-line = { $fact }: { $value }
understood = He leído: { $list }.
standing = Chough aconseja, nunca certifica: deciden las normas locales, las instrucciones del fabricante y un equipador cualificado.

## The frame of an answer
title-checks = Comprobaciones
title-checks-kn = Comprobaciones (1 kN son 225 lbf)
title-reject = No sirve
assumed = No me lo has dicho y lo he supuesto (el peor caso, donde lo hay): { $list }.
title-cautions = Ojo con esto
always = Siempre: { $list }.
took = He contado con: { $list }.
rejected = { $what }: { $why }
limited = { $what }, solo con límites: { $why }
reason = { $why }
deferral = Esto es un consejo, no un certificado. Antes van las normas locales y quien gestiona el terreno, las instrucciones del fabricante y un equipador cualificado en el sitio.
source-memory = { $title }, de memoria
source-read-second-hand = { $title }, de segunda mano
sources = Fuentes: { $list }.
sources-more = Fuentes: { $list }, y { $more } más (escribe "por qué").
footer = Respuesta { $id }, reglas { $ruleset }. Escribe "por qué" y te doy toda la cadena.
footer-why = Respuesta { $id }, reglas { $ruleset }.
check-mean = media { $value }
check-characteristic = valor del 5 % { $value }
check-design = valor de cálculo { $value }
check-plain = { $value }
check-met = { $name }: { $values }; mínimo { $limit }: se cumple
check-atmost-met = { $name }: { $values }; máximo { $limit }: se cumple
check-atmost-short = { $name }: { $values }; máximo { $limit }: NO se cumple
check-open = { $name }: { $values }; mínimo { $limit }: solo de media, no está probado
check-short = { $name }: { $values }; mínimo { $limit }: NO se cumple
check-length = longitud instalada (EN 959)
check-plating = { $thickness } de zinc, años hasta que desaparece
check-cure-share = parte del tiempo de curado
check-cured = horas desde que se pegó
check-bending = flexión donde sale de la roca
check-edge = distancia al borde o grieta más cercanos
check-spacing = distancia entre los anclajes
check-tension = a extracción, { $mode }
check-shear = a cortante, { $mode }
mode-steel = el metal
mode-bondSteel = adhesivo despegado del metal
mode-bondRock = adhesivo despegado de la roca
mode-cone = cono de roca
mode-pullThrough = salida a través de su clip
mode-pryOut = roca levantada por palanca
mode-edge = borde de la roca
mode-dowel = roca aplastada bajo el vástago

## why
title-why-facts = De qué he partido
title-why-rules = Reglas que se han aplicado
title-why-formulas = Fórmulas
title-why-sources = Fuentes
why-fact = { $line } ({ $origin })
why-rule = { $words } [{ $id }]
why-input = { $symbol } = { $value } ({ $from }; válido de { $least } a { $most })
why-from-fact = { $fact }, { $origin }
why-from-row = de la tabla { $row }
why-from-method = calculado por el camino
why-formula = { $name }: { $symbols }; { $inputs } → { $value }{ $kind } ({ $source }, { $clause })
kind-mean = , un valor medio
kind-characteristic = , un valor del 5 %
kind-design = , un valor de cálculo
kind-plain = { "" }
origin-said = lo has dicho tú
origin-assumed = supuesto, nadie lo ha dicho
origin-club = ajuste de tu club
origin-map = del mapa
origin-measured = de los ensayos del club

## Buttons
choice-dont-know = No lo sé
choice-why = ¿Por qué?
choice-back = Atrás
choice-restart = Empezar de nuevo
choice-settle = { $fact }: { $value }

## Talk
language-set = Ahora respondo en español.
resumed = De la última vez conservo: { $list }.
restarted = Olvidado. ¿Qué quieres saber?
back-nothing = No hay nada que deshacer.
back-start = Deshecho. ¿Qué quieres saber?
why-nothing = Todavía no te he dado ninguna respuesta que pueda explicar.
what-about = Anotado. ¿Qué quieres saber de eso?
greeting = Hola. Pregúntame por anclajes en roca: qué metal, qué tipo, a qué profundidad, qué adhesivo, cuánto tarda en curar.
welcome = De nada. Haz un ensayo de extracción antes de fiarte.
help-material = Dime dónde va el anclaje; ayudan la roca, la lluvia y el clima. Por ejemplo: "qué metal para un acantilado de mar de caliza desplomado?" o "vale 316 en una pared del interior de clima templado?"
help-anchor = Dime la roca y para qué es el anclaje. Por ejemplo: "qué tipo de anclaje para una reunión en arenisca blanda?"
help-embedment = Dime tipo, medida, roca y adhesivo. Por ejemplo: "es bastante profundo un químico de 10x80 en granito con epoxi?"
help-adhesive = Dime lo mojado que está el agujero y la temperatura de la roca. Por ejemplo: "qué resina en un agujero húmedo a 8 °C?"
help-adhesive-amount = Dime medida y número. Por ejemplo: "cuánta resina para 20 anclajes de 12 x 100?"
help-cure = Dime el tipo de adhesivo y la temperatura de la roca. Por ejemplo: "cuánto tiempo tiene que curar el viniléster a 6 °C?"
help-hole = Por ejemplo: "cómo limpio el agujero para un químico?"
help-spacing = Dime la profundidad. Por ejemplo: "a qué distancia del borde para un 12x100?"
help-coating-life = Dime espesor y lugar. Por ejemplo: "cuánto duran 50 µm de zinc en una pared del interior de clima templado?"
help-inspect = Dime qué ves, en qué metal y dónde. Por ejemplo: "mancha marrón bajo una chapa de 304 en un acantilado de mar, qué hago?"
help-cost = Dime precio, trabajo y duración. Por ejemplo: "el 316 cuesta 20, el titanio cuesta 43, el trabajo 20, pared del interior de clima templado, qué sale más barato en 50 años?"
help-pulltest-plan = Por ejemplo: "cómo hacemos la prueba de carga de 20 químicos de reunión en granito?"
help-pulltest-result = Dime las cargas a las que cedieron los anclajes. Por ejemplo: "hemos arrancado a 24,1 27,3 22,8 30,2 26 kN, qué demuestra?"
help-compare = Dime las dos series de resultados. Por ejemplo: "lisos: 33 35 37, rugosos: 36 44 51, son mejores los rugosos?"
help-load = Dime qué se hace con el anclaje. Por ejemplo: "qué fuerza da una caída de factor 1 con 80 kg?" o "qué fuerza en dos anclajes a 60 grados con 2 kN?"
help-cautions = Por ejemplo: "con qué tengo que tener cuidado al taladrar en arenisca mojada?"
help = Pregunta con tus palabras, por ejemplo:
    • qué metal para un acantilado de mar de caliza desplomado?
    • es bastante profundo un químico de 10x80 en granito con epoxi?
    • 12 x 100 en arenisca mojada, 4 °C: qué resina, y cuánta para 20 anclajes?
    • cuánto tiempo tiene que curar el viniléster a 6 °C?
    Después: "por qué" para ver toda la cadena de una respuesta, "atrás" para deshacer lo último, "empezar de nuevo" para volver a empezar. Para corregir algo, dilo sin más: "perdón, granito".
not-understood = No lo he entendido como una pregunta sobre anclajes.
words-not-understood = No conozco estas palabras: { $words }.
still-open = Mi última pregunta sigue abierta; "no lo sé" también vale como respuesta.
not-yet = Todavía no puedo responder sobre este tema: { $topic }. Puedo ayudarte con los temas de abajo.
too-long = Son más de { $most } caracteres y no lo he leído. Haz una sola pregunta en unas pocas líneas.
file-not-yet = Aquí no puedo leer archivos. Dime los números por escrito.
place-not-yet = Aquí no puedo leer ubicaciones. Dime a qué distancia está el mar y si la lluvia llega al anclaje.
button-old = Ese botón es de una pregunta anterior y ya no vale.
impossible = "{ $text }" no puede ser ({ $fact }): admito de { $least } a { $most }. No se ha cambiado nada.
contradiction = No pueden ser las dos cosas a la vez: { $one } y también { $other }. ¿Cuál de las dos vale? No se ha cambiado nada.
contradiction-relation = { $words } No se ha cambiado nada.
out-of-range = { $what }: sale { $value }; el método vale de { $least } a { $most }, así que no doy ningún número. Dime un valor dentro de ese margen o pregunta a un equipador cualificado.
problem-unit-mismatch = "{ $text }": esa unidad no encaja. ¿Qué valor quieres decir ({ $fact })? No se ha cambiado nada.
problem-ambiguous = "{ $text }" puede significar más de una cosa. Dilo con más precisión, por favor. No se ha cambiado nada.
problem-conflict = "{ $text }" dice dos cosas distintas sobre lo mismo ({ $fact }). ¿Cuál vale? No se ha cambiado nada.
problem-not-a-number = No puedo leer "{ $text }" como un número. No se ha cambiado nada.
problem-impossible = "{ $text }" no puede ser. No se ha cambiado nada.

settings-none = Este chat no tiene ningún ajuste.
settings-are = En este chat doy por hecho, si un mensaje no dice otra cosa: { $list }.
settings-how = Para fijarlo: «/club arenisca blanda, interior» (roca, lugar), «/club español», «/club pulgadas», «/club solo aquí». Para borrarlo: «/club borrar».

## Topics, as buttons and in sentences
topic-material = qué metal
topic-anchor = qué tipo de anclaje
topic-embedment = ¿bastante profundo y resistente?
topic-adhesive = qué adhesivo
topic-adhesive-amount = cuánto adhesivo
topic-cure = tiempo de curado
topic-load = cargas
topic-pulltest-plan = planear un ensayo de extracción
topic-pulltest-record = anotar un ensayo de extracción
topic-pulltest-result = resultados de ensayos de extracción
topic-compare = comparar opciones
topic-inspect = revisar un anclaje
topic-spacing = bordes y separación
topic-coating-life = cuánto dura un metal
topic-cost = coste a lo largo de los años
topic-hole = taladrar y limpiar
topic-cautions = precauciones
topic-permission = permisos
topic-settings = ajustes del club
topic-register = el registro
topic-remind = recordatorios
topic-why = por qué
topic-help = ayuda
topic-smalltalk = charla
topic-emergency = emergencia
topic-refuse = lo que no hago

## A metal, adhesive or kind that was asked for by name
asked-suitable = Sí, { $what } vale. { $why }
asked-limited = { $what }: solo con límites. { $why }
asked-unsuitable = No: { $what } no vale. { $why }

## material
material-only = Usa { $metals }, y nada por debajo de eso: aquí la sal agrieta el acero inoxidable.
material-anywhere = No conozco el lugar. Lo que vale en todos los lugares que conozco: { $metals }. Dime dónde está la pared; un lugar más suave puede permitir más.
material-use = Usa { $metals }.
material-limited = Ningún metal está libre de límites aquí; lo mejor es { $metals }, con los límites de abajo.
material-none = Ningún metal que yo conozca vale para este lugar. Pregunta a un ingeniero de corrosión antes de taladrar.
material-class = Según la norma estructural, este lugar pide la clase de resistencia { $class } (factor { $factor }).
material-class-boundary = Según la norma estructural, este lugar está en el límite entre dos clases (factor { $factor }); toma: { $class }.
material-beyond = La norma estructural del acero inoxidable no cubre un lugar así.
material-cracking = Riesgo de que la sal agriete el acero inoxidable: { $risk }.
material-kinds = Tipo de anclaje que va con lo que has dicho: { $kinds }.
material-kinds-limited = Tipo de anclaje, una vez auscultada la roca con el martillo: { $kinds }.
material-one-metal = Perno, tuerca, arandela, chapa, argolla y cadena: todo del mismo metal. Manda la parte más débil.

## two metals that touch
check-galvanic-marine = diferencia máxima entre los dos en agua de mar (límite junto al mar)
check-galvanic-outdoors = diferencia máxima entre los dos en agua de mar (límite al aire libre en el interior)
check-galvanic-indoors = diferencia máxima entre los dos en agua de mar (límite bajo techo)
pairing-good = { $metal } con { $other }: un mismo metal, no se hacen daño.
pairing-poor = { $metal } con { $other }: no lo planees así; se toleran, pero el anclaje vale lo que el más débil de los dos.
pairing-never = { $metal } con { $other }: que no se toquen nunca.
pairing-untold = Dime los dos metales; hasta entonces no los juntes.
pairing-goes = Donde siguen mojados, la pieza que se corroe es la de { $metal }.
pairing-small-anode = Un perno pequeño en una chapa grande de metal más noble se va más rápido que nada, y lo que se va está dentro de la roca.
pairing-active = En una rendija con sal, { $metal } puede perder su película protectora; entonces la diferencia llega a { $volts }.
pairing-place = Que se toleren no hace que ninguno de los dos valga para el lugar: dime dónde está la pared.
pitting-line = Resistencia a las picaduras, { $metal }: número { $pren }, puesto { $place } de { $count } aceros inoxidables. No dice nada del agrietamiento.

## salt and damp on a warm bolt
humidity-cracks = Peligroso para el acero inoxidable: a { $surface } el aire junto al anclaje tiene solo { $humidity } de humedad, y la sal de mar forma encima una salmuera fuerte y caliente.
humidity-caution = Ten cuidado: a { $surface } el aire junto al anclaje tiene { $humidity } de humedad.
humidity-low = Poco peligro de agrietamiento en ese momento: a { $surface } el aire junto al anclaje tiene { $humidity } de humedad.
humidity-none = Sin peligro de agrietamiento por sal: a { $surface } el aire junto al anclaje tiene { $humidity } de humedad.
humidity-film-concentrated = Eso cae en la franja peligrosa, de { $driest } a { $wettest }: la sal común se seca por debajo del 75 %, pero la sal de magnesio del mar sigue líquida hasta el 33 %, lo más fuerte que puede estar.
humidity-film-dilute = Eso está por encima de la franja peligrosa, de { $driest } a { $wettest }: la salmuera está ahora diluida, y se hace fuerte al secarse.
humidity-film-dry = Eso está por debajo de la franja peligrosa, de { $driest } a { $wettest }: la sal está ahora casi seca, y pasa por la franja por la mañana y al atardecer.
humidity-dew = Se le forma rocío cuando está a menos de { $dew }.
humidity-changes = Cada día pasa por otros estados: una sola medida no libra de sospecha a ningún anclaje. El metal lo decide el lugar.

## coating-life
coating-place = Dime dónde está la pared: sin el lugar no hay duración que calcular.
coating-life = { $thickness } de zinc: cuenta con { $worst }, no más; { $mean } al ritmo habitual.
coating-rate = El zinc pierde ahí unos { $rate } el primer año: categoría { $category } (entre { $from } y { $to }; una estimación así no afina más que de −33 % a +50 %).
coating-hidden = Cuando se acaba el zinc empieza a irse el acero, sin que se vea, dentro del agujero. Las rendijas y el agua que rezuma lo hacen varias veces más rápido.

## anchor
anchor-use = Usa: { $kinds }.
anchor-limited = Ningún tipo está libre de límites aquí; lo mejor: { $kinds }, con los límites de abajo.
anchor-none = Ningún tipo de anclaje que yo conozca vale para lo que has dicho. Cambia de punto o pregunta a un equipador cualificado.
anchor-next = Dime una medida y compruebo si es bastante profunda y resistente.

## embedment
embedment-meets = { $diameter } × { $length } cumple los mínimos según este cálculo; demuéstralo con un ensayo de extracción en esta roca.
embedment-test-first = { $diameter } × { $length }: no está demostrado que baste. Ensáyalo en esta roca antes de que nadie se fíe.
embedment-too-short = { $diameter } × { $length } es demasiado corto: EN 959 pide al menos { $minimum } instalados.
embedment-too-weak = { $diameter } × { $length } es demasiado débil para esta roca según este cálculo.
embedment-too-weak-assumed = { $diameter } × { $length } puede ser demasiado débil: en el peor caso que no has descartado, lo es.
embedment-best-case = Si todo lo que no has dicho fuera bueno (roca sana, agujero seco, vástago con relieve, ninguna carga permanente): media { $mean }, valor del 5 % { $characteristic } a extracción.
embedment-near-edge = { $diameter } × { $length }: demasiado cerca de un borde o grieta, o no se sabe a qué distancia. Mídelo y cambia de punto si hace falta.
embedment-refuse = { $diameter } × { $length }: no lo pongas ahí, ni así.
embedment-cannot = Sin roca, tipo y medida del anclaje no doy ningún número.
embedment-cannot-next = Según EN 959, un anclaje pegado entra al menos 70 mm (2¾ in), y uno mecánico al menos 5 veces el diámetro de su agujero; la roca más blanda pide más.
embedment-governs = A extracción falla primero: { $mode }, media { $mean }, valor del 5 % { $characteristic }. A cortante: { $side }, media { $sideMean }, valor del 5 % { $sideCharacteristic }. (Valor del 5 %: 19 de cada 20 aguantan más.)
embedment-longer = Más largo, { $size }: media { $mean }, valor del 5 % { $characteristic }; falla primero: { $mode }.
embedment-fatter = Más grueso, { $size }: media { $mean }, valor del 5 % { $characteristic }; falla primero: { $mode }.
embedment-depth = Calculado con { $depth } dentro de la roca, contados desde la cara.
embedment-rebound = Un número de rebote de { $rebound } corresponde a roca de { $min } a { $max }; cuento con el extremo bajo. (Las leyes publicadas lo leen como { $low } a { $high }.)
embedment-grade = La roca de grado { $grade } tiene de { $min } a { $max }; cuento con el extremo bajo.
embedment-strength-capped = Has dicho { $told }, pero una roca así llega como mucho a { $most }; cuento con eso.
embedment-find-class = Raya la roca con una navaja, golpéala con un martillo y dime cómo responde (grado R0 a R6), o un número de rebote: entonces cuento con su clase y no con su nombre.
embedment-lasting = La adherencia cuenta al 60 %: la carga se queda puesta días, o nadie ha dicho que no.
embedment-heat-warm = Al sol pasa de 40 °C (104 °F): la adherencia cuenta al 65 %, y solo si la ficha técnica admite ese calor.
embedment-heat-softens = Con el calor que has dicho, un adhesivo así puede ablandarse: casi no cuento con adherencia.
embedment-oblique = Tirando a { $angle } de su eje: valor del 5 % { $characteristic }.
embedment-oblique-worst = A extracción y cortante a la vez, el punto más débil está a { $angle } de su eje: valor del 5 % { $characteristic }.
embedment-chance = A extracción, de 1000 anclajes así, más o menos: menos de { $least } aguantarían { $underLeast }; menos de { $seldom }, que la escalada rara vez supera, { $underSeldom } (práctica habitual, sin fuente).
embedment-chance-use = A extracción, de 1000 anclajes así, más o menos: menos de { $least } aguantarían { $underLeast }; menos de { $action }, con los que hay que contar en este uso, { $underAction }; menos de { $seldom }, que la escalada rara vez supera, { $underSeldom } (práctica habitual, sin fuente).
embedment-uiaa = Algunas ediciones de UIAA 123 piden { $aim } hacia fuera (de memoria): apunta a eso; de 1000 aguantarían menos, más o menos: { $underAim }.
embedment-upper-bound = Si se sale a través de su clip no se puede calcular, solo ensayar; las cifras son un límite superior.

## embedment, no size told
sizing-meets = La medida usual más pequeña que basta, según este cálculo: { $diameter } × { $length } ({ $anchor }); demuéstralo con un ensayo de extracción en esta roca.
sizing-test-first = La medida usual más pequeña que probar: { $diameter } × { $length } ({ $anchor }). No está demostrado: ensáyala en esta roca antes de que nadie se fíe.
sizing-average = Con lo que has dicho, ninguna medida usual basta con seguridad; la más resistente, { $diameter } × { $length } ({ $anchor }), solo basta de media. Ensáyala en esta roca antes de que nadie se fíe.
sizing-not-so = Ninguna medida arregla esto. La más pequeña con resistencia suficiente es { $diameter } × { $length } ({ $anchor }), pero no ahí, o no así.
sizing-none = Ninguna medida usual resiste lo suficiente ahí según este cálculo.
sizing-none-next = Busca roca más sana, usa un adhesivo mejor o un agujero más seco, o pide a un equipador cualificado ensayos de extracción en esta roca.
sizing-best = Si todo lo que no has dicho fuera bueno (roca sana, agujero seco, vástago con relieve, ninguna carga permanente): { $diameter } × { $length } ({ $anchor }).
sizing-need = Hace falta: { $tension } hacia fuera y { $shear } a lo largo de la roca, que lo aguanten { $share } de cada 100 anclajes así.
sizing-kind = { $anchor }: { $diameter } × { $length }, valor del 5 % { $characteristic } a extracción.
sizing-kind-none = { $anchor }: ninguna medida usual basta con seguridad.
sizing-check-next = Dime una medida y compruebo esa.

## adhesive
adhesive-use = Usa: { $what }.
adhesive-limited = Ningún adhesivo está libre de límites aquí; puede servir { $what }, con los límites de abajo.
adhesive-none = Tal como está, no se puede usar ningún adhesivo. Espera a que el agujero esté más seco o la roca menos fría.
adhesive-cure-unknown = Dime la temperatura de la roca y te doy el tiempo de curado.

## amount
amount-size = Dime diámetro y profundidad, por ejemplo 12 × 100, y calculo la cantidad.
amount-verdict = Unos { $volume } por agujero, { $total } en total para { $holes ->
    [one] un agujero
   *[other] { $holes } agujeros
 }, con el desperdicio incluido.
amount-hole = { $volume } por agujero (varilla de { $diameter } en un agujero de { $hole }, { $depth } de profundidad).
amount-total = { $anchors ->
    [one] 1 anclaje
   *[other] { $anchors } anclajes
 }, { $holes ->
    [one] 1 agujero
   *[other] { $holes } agujeros
 }: { $total } con un { $waste } % de desperdicio, al menos { $cartridges ->
    [one] 1 cartucho
   *[other] { $cartridges } cartuchos
 } de { $size } ml.
amount-legs = He tomado un agujero para cada una de las dos patas. Si las dos patas van en un solo agujero, usa la cifra del fabricante.
amount-too-tight = Una holgura de { $each } por lado es tan justa que quedan huecos. Toma el diámetro de agujero que indica el fabricante.
amount-too-wide = Una holgura de { $each } por lado es más de lo que rellena cualquier adhesivo de aquí. Toma el diámetro de agujero que indica el fabricante.
amount-too-wide-for-most = Una holgura de { $each } por lado: según las cifras usuales solo la rellena { $who }. Toma el diámetro de agujero que indica el fabricante.
amount-nozzle = De cada cartucho cuento { $lost } perdidos hasta que el color es uniforme; una cánula nueva tras una pausa cuesta más o menos lo mismo otra vez.
amount-gap-next = Una holgura justa o ancha no se arregla con más adhesivo: busca el diámetro de agujero del fabricante y abandona este agujero.
amount-check = Si un agujero traga mucho más que esto, hay un hueco: para y no te fíes.

## cure
cure-sheet = Manda la ficha técnica de tu cartucho; estos son tiempos usuales para ese tipo, de memoria.
cure-rock-temperature = Guíate por la temperatura de la roca, no del aire, y por la hora más fría hasta que esté curado.
cure-your-adhesive = Tu adhesivo
cure-by-sheet = Calculado con las cifras de la ficha técnica que me has dicho. Compruébalas en el cartucho, y que valgan para un agujero tan mojado como el tuyo.
cure-sheet-short = El tiempo que has leído en la ficha es muchísimo más corto de lo usual para este tipo: léelo otra vez, horas y no minutos, carga y no gelificado.
cure-below-sheet = { $what }: la línea más fría que me has dicho es para { $lowest }, y la roca está más fría. Lee en la ficha la línea para ese frío; si no la hay, no se debe usar.
cure-above-sheet = { $what }: la línea más caliente que me has dicho es para { $highest }, y la roca está mucho más caliente. Lee en la ficha la línea para ese calor.
cure-spell = { $hours } a { $temperature }, donde hacen falta { $needed }: { $share } % del curado.
cure-spell-cold = { $hours } a { $temperature } no cuentan nada: no se sabe que este adhesivo cure con tanto frío.
cure-spells-probably = Lo normal es que ya esté curado: los ratos que has dicho suman el { $share } % del tiempo de curado ({ $what }). Decide la ficha técnica.
cure-spells-not-yet = No lo cargues todavía: los ratos que has dicho suman el { $share } % del tiempo de curado ({ $what }).
cure-spells-rest = Le falta todavía, más o menos: { $hours } a { $temperature }.
cure-spells-warmer = Con el frío que hace ahora, esperar no sirve: necesita roca más caliente.
cure-spells-which = ¿Qué adhesivo es? Hasta que lo sepas, no lo cargues.
cure-spells-line = { $what }: { $share } % de su tiempo de curado usual.
cure-working = Trabájalo en { $working } desde la mezcla; después que nadie lo toque.
cure-wet = Doblado, porque el agujero está mojado o no se sabe si lo está.
cure-line = { $what } a { $temperature }: { $working } para trabajar, { $hours } antes de cargar.
cure-line-wet = { $what } a { $temperature }: { $working } para trabajar, { $hours } antes de cargar (doblado por agujero mojado).
cure-too-cold = { $what }: demasiado frío. Por debajo de { $lowest } puede no curar nunca, por mucho que esperes.
cure-too-hot = { $what }: demasiado calor. Por encima de { $highest } fragua antes de que el anclaje esté dentro.
cure-temperature = Dime la temperatura de la roca: sin ella no hay tiempo de curado.
cure-any = Tiempos usuales a { $temperature }, por tipo:
cure-wait = { $what } a { $temperature }: déjalo { $hours } antes de ponerle cualquier carga.
cure-probably = { $what } a { $temperature }: lo normal es que esté curado tras { $hours }, y han pasado { $since }. Decide la ficha técnica.
cure-not-yet = No lo cargues todavía: { $what } a { $temperature } necesita { $hours }, y solo han pasado { $since }.

## hole
hole-verdict = Taladra y limpia en este orden; un agujero con polvo es el fallo más común.
hole-size = Agujero de { $hole } de diámetro y { $depth } de profundidad, si el fabricante no dice otra cosa.

## inspect
inspect-trust = { $signs }: nada de lo que has dicho habla en contra. Eso no demuestra que esté sano.
inspect-limit = { $signs }: úsalo solo con un seguro de respaldo, hasta que lo haya mirado alguien que entienda.
inspect-do-not-use = { $signs }: no lo uses hasta que lo haya mirado alguien que entienda.
inspect-replace-now = { $signs }: no lo uses más. Ciérralo y cámbialo.
inspect-trust-next = Golpea la roca y el anclaje con un martillo, mira la resina y la chapa, y anota lo que has visto.
inspect-limit-next = Respáldalo, avisa al club y haz que lo ensayen o lo cambien.
inspect-do-not-use-next = Márcalo para que nadie lo chape, y avisa al club.
inspect-replace-now-next = Márcalo, quita la chapa si puedes, avisa al club y mira los vecinos del mismo tipo y edad.
inspect-interval-months-6 = Revisa los anclajes como este cada 6 meses.
inspect-interval-months-12 = Revisa los anclajes como este cada año.
inspect-interval-years-2 = Revisa los anclajes como este cada 2 años.
inspect-interval-years-3 = Revisa los anclajes como este cada 3 años.
inspect-hidden = Lo que no se ve: grietas en el metal, óxido dentro del agujero, resina que nunca curó.

## spacing
spacing-rule = Quédate a 1,5 veces la profundidad, y al menos a 150 mm (6 in), de cualquier borde y grieta; los anclajes entre sí, a 3 veces la profundidad y al menos 200 mm (8 in).
spacing-verdict = Para { $depth } de profundidad: al menos { $edge } hasta cualquier borde y grieta, y { $spacing } entre anclajes.
spacing-too-near = Demasiado cerca. Para { $depth } de profundidad deja { $edge } hasta cualquier borde y grieta, y { $spacing } entre anclajes.
spacing-old-holes = Los agujeros viejos cuentan como grietas: aléjate el doble de su profundidad, o rellénalos y deja 5 diámetros de agujero.
spacing-hollow = Ausculta todo el círculo con un martillo; si suena a hueco en cualquier parte, busca otro punto.

## load
load-cannot = Dime qué se hace con el anclaje y calculo la carga: lo dura que es la caída, el ángulo de dos ramales, luz y flecha de una línea, o quién se cuelga.
load-tell-more = Por ejemplo: "caída de factor 0,5, 80 kg", "dos anclajes a 60 grados, 2 kN", "descolgar 90 kg", "línea de 30 m, 1,5 m de flecha, 80 kg". Los péndulos, los tirones y las líneas tensadas dan varias veces el peso.
load-took-person = No has dicho el peso: he tomado { $mass }, una persona pesada con el material.
load-took-rescue = No has dicho el peso: he tomado { $mass }, dos personas y el material.
load-share = Es el { $out } % de los 15 kN hacia fuera y el { $along } % de los 25 kN a lo largo de la roca de EN 959: ensayos de tipo en buen hormigón, no lo que aguanta tu roca.
load-share-out = Es el { $out } % de los 15 kN hacia fuera de EN 959: un ensayo de tipo en buen hormigón, no lo que aguanta tu roca.
load-share-along = Es el { $along } % de los 25 kN a lo largo de la roca de EN 959: un ensayo de tipo en buen hormigón, no lo que aguanta tu roca.
load-above-rare = Es más que los { $rare } que la práctica habitual prevé como carga máxima rara: escala o monta de modo que no se pueda llegar a eso.
load-design-met = El valor del 5 % de tus ensayos entre { $strength }, contra { $load } veces la carga: se cumple. Solo para anclajes como los ensayados, en esa roca.
load-design-short = El valor del 5 % de tus ensayos entre { $strength } es menos que { $load } veces la carga: no basta.
check-load-rare = carga máxima rara que prevé la práctica habitual
check-load-design = valor del 5 % de tus ensayos, con los dos factores contados
check-line-most = tensión máxima de línea que aconsejan los slackliners, con el movimiento contado
load-plan = La práctica habitual prevé para un anclaje así { $usual } en uso y { $rare } como carga máxima rara, cada anclaje por sí solo.
load-haul = Izar con la cuerda pasada por un mosquetón tira más que descolgar: { $haul }.

load-fall-bolt = Caída de factor { $factor }, { $mass }: cuenta con hasta { $bolt } en el último anclaje chapado, { $climber } en quien escala.
load-fall-belay = Caída de factor { $factor }, { $mass }: cuenta con hasta { $climber } directos a la reunión, { $bolt } si la cuerda pasa por un mosquetón de ella.
load-fall-common = Con una cuerda corriente ({ $label } en su etiqueta), con la cuenta simple de los libros: { $bolt } en el anclaje, { $climber } en quien escala.
load-fall-common-belay = Con una cuerda corriente ({ $label } en su etiqueta), con la cuenta simple de los libros: { $climber } directos a la reunión, { $bolt } si la cuerda va chapada.
load-rope-limit = No has dicho la cuerda: he tomado la más rígida que permite EN 892, 12 kN en su caída de ensayo. Dime la fuerza de choque de la etiqueta de tu cuerda y uso esa.
load-rope-label = He leído la etiqueta como la de una cuerda simple, ensayada con 80 kg; una cuerda doble se ensaya con 55 kg y es más rígida de lo que parece por su etiqueta. Las cuerdas mojadas, heladas o viejas también son más rígidas.
load-rope-told = Calculado con el módulo de cuerda que has dicho; las cuerdas mojadas, heladas o viejas son más rígidas.
load-fall-drag = El anclaje recibe los dos cabos, 1,66 veces el tirón de quien escala. El roce ahí no deja estirarse a una parte de la cuerda, y la caída actúa como de factor { $effective } en vez de { $factor }.
load-fall-strands = Un anclaje por el que pasa la cuerda recibe los dos cabos, 1,66 veces el tirón de quien escala.
load-fall-legs = En dos anclajes con { $angle }° entre los ramales: { $each } en cada uno, y cada uno tiene que poder con todo.
load-fall-measured = Caídas medidas en rocódromo, para comparar: { $mean } en el anclaje de media, { $most } como mucho. El cuerpo y quien asegura ceden, y la mayoría de las caídas quedan por debajo de este cálculo; no cuentes nunca con ello.
load-fall-carabiner = Un mosquetón aguanta { $closed } con el gatillo cerrado y solo { $open } con él abierto (EN 12275, tipo básico).
load-fall-rope-out = Dime cuánta cuerda hay fuera: su longitud y la altura de la caída dicen lo dura que es.
load-fall-factor = Factor de caída: altura de la caída entre cuerda fuera, de 0 a 2. El mismo factor tira igual de fuerte con cuerda corta que con larga.
load-sling = No escales nunca por encima de la reunión colgado de una cinta estática: una caída de factor 1 sobre ella da { $force }; se rompen cintas y anclajes.
load-absorber = Sin número: una caída así es más de lo que aguanta una cuerda, un anclaje o un cuerpo sin disipador de energía.
load-absorber-why = Un factor de caída mayor que 2 se da en vías ferratas, donde el cabo es corto y la caída larga.
load-absorber-next = Usa un disipador de vía ferrata para tu peso. Los anclajes y el cable los dimensiona el técnico de la vía.

load-legs = { $load } en dos anclajes con { $angle }° entre los ramales: { $each } en cada uno, el { $share } % de la carga, mientras los dos repartan por igual.
load-legs-too-wide = Demasiado abierto: { $load } con { $angle }° entre los ramales pone { $each } en cada anclaje, el { $share } % de la carga. Nunca más de 90°; 60° o menos es buena práctica.
load-legs-unequal = { $load } en ramales a { $a }° y { $b }° de la vertical: { $first }, el { $firstShare } %, en el primero y { $second }, el { $secondShare } %, en el segundo.
load-legs-unequal-wide = Demasiado abierto: { $load } en ramales a { $a }° y { $b }° de la vertical pone { $first }, el { $firstShare } %, en el primero y { $second }, el { $secondShare } %, en el segundo. Nunca más de 90° entre ellos.
load-legs-sum = Los dos ramales hacen { $sum }° entre ellos, no { $told }°; dos ramales iguales a { $told }° recibirían { $each } cada uno.
load-legs-narrow = 60° o menos es buena práctica: alarga los ramales.
load-legs-each = Prevé cada anclaje para todo él solo, { $load } y encima lo que se mueva y caiga: el tirón cambia de dirección, ninguna cinta reparte por igual y un anclaje puede fallar.
load-legs-failure = Si falla un ramal y corren { $slack } de holgura en una cinta estática de { $length }, al otro le llegan { $shock }: átala de modo que no pueda correr nada.
load-legs-triangle = No pases nunca un solo anillo por los dos anclajes (el triángulo): serían { $triangle } en cada uno.
load-legs-lowering = Mientras se descuelga ahí a alguien por un mosquetón, todo esto es 1,66 veces más: hasta { $most } en un anclaje.

load-line = { $load } en el centro de { $span } con { $sag } de flecha: la línea tira { $tension } en cada extremo mientras nadie se mueve. Decide un técnico de cuerdas cualificado.
load-line-tension = Una línea a { $tension } tira eso en cada extremo mientras nadie se mueve. Decide un técnico de cuerdas cualificado.
load-line-cannot = Sin luz y flecha, o la tensión, no puedo calcular lo que tira una línea.
load-line-rule = Regla práctica: una flecha de un décimo de la luz tira 2,5 veces el peso que lleva, de un veinteavo 5 veces, de un cincuentavo 12,5 veces.
load-line-rigger = Highlines, puentes de cuerda y líneas de rescate: explico las fuerzas y no doy nada por bueno. Un técnico de cuerdas cualificado lo planea, lo revisa y lo ensaya.
load-line-bounce = Botar o caer al leash dio de 1,7 a 1,9 veces el tirón de caminar en mediciones publicadas: aquí hasta { $moving }.
load-line-anchor = Los técnicos piden que cada punto de anclaje aguante al menos 3 veces la tensión de la línea, aquí { $anchor }, y que cada ramal pueda con todo (práctica habitual).
load-line-half = La mitad de flecha, { $sag }, tiraría { $tension }.
load-line-own = El peso propio de la línea añade { $added }.
load-line-both = Solo luz y flecha dan { $tension }; la tensión que has dicho es mayor, y he tomado esa.
load-line-pretension = He tomado la tensión como la de la línea cargada. Si es la que montas antes de que nadie se suba, la línea cargada tira más.
load-line-slacken = El consejo de los slackliners es mantener la línea por debajo de { $most }, con el movimiento contado: dale más flecha.
load-line-ends = Dos anclajes en un extremo con { $angle }° entre los ramales: { $each } de eso en cada uno.
load-line-measured = Medido para comparar, 57 kg en 41 m de cinta de poliéster: 3,1 kN caminando, 4,4 botando, 5,3 en una caída al leash.

load-lower = Descolgar { $mass } pone { $lower } en el anclaje de arriba; si la cuerda frena sin comba, { $sudden }.
load-top-rope = Top-rope con { $mass }: { $lower } en el anclaje de arriba al descolgar, { $sudden } cuando la cuerda frena sin comba.
load-lower-friction = El anclaje recibe los dos cabos: el peso de quien escala y lo que sujeta quien asegura, 1,66 veces el peso por un mosquetón, el doble por una polea.
load-top-rope-slack = Con una comba de un décimo de la cuerda, con la cuerda más rígida que permite EN 892: { $slack }. Medido y contado en top-rope: de 1,5 a 3 kN (práctica habitual).
load-abseil = Rapelar con { $mass }: { $hang } colgando quieto, { $jerky } si va a tirones.
load-abseil-jerk = Un rápel suave se queda en 1 a 1,5 kN por persona; frenazos y tirones dan de 2 a 2,5 (práctica habitual). Baja suave.
load-rescue = Carga de rescate de { $mass }: { $hang } quieta, { $lower } descolgada por un mosquetón, { $haul } izada por uno. Decide un técnico de cuerdas cualificado.
load-rescue-rigger = Explico las cargas de rescate y no doy nada por bueno: lo planea un técnico de cuerdas cualificado o el equipo de rescate, en dos anclajes que puedan cada uno con todo.
load-rescue-shock = Un resbalón o un golpe con dos personas da de { $least } a { $most } (práctica habitual).
load-belay = Una reunión con { $mass } colgando lleva { $hang }; una caída de factor 2 directa a ella tira hasta { $fall }.
load-lead = Una caída de primero con { $mass }: prevé el último anclaje chapado para { $rare }, la carga máxima rara; las caídas duras dan de 4 a 8 kN (práctica habitual).
load-lead-factors = Estimaciones altas en el anclaje, con la cuerda más rígida que permite EN 892 y sin nada que ceda: { $easy } con factor de caída 0,1, { $usual } con 0,3, { $hard } con 0,5.
load-hang = { $mass } colgando quieto son { $hang }; si se suelta sobre una cuerda sin comba, { $sudden }.
load-lower-of = Descolgado por un mosquetón: { $lower } en el anclaje.

load-strength-cannot = Lo que aguanta un anclaje no lo puedo decir sin su roca, tipo, grosor y longitud.
load-strength-open = Si un anclaje aguanta { $load } no lo puedo decir sin su roca, tipo, grosor y longitud.
load-strength-minimums = Según EN 959, un anclaje de roca aguanta en su ensayo de tipo 15 kN hacia fuera y 25 kN a lo largo de la roca, en buen hormigón. Eso no es una carga de uso, y la roca blanda aguanta menos.
load-strength-tell = Dime, por ejemplo, "químico de 12 x 100 en granito con epoxi"; y haz un ensayo de extracción en esa roca.
load-strength-signs = Lo que está oxidado, agrietado, doblado o suelto no tiene una resistencia que se pueda calcular. No lo cargues; pregúntame cómo revisarlo.

## results of pull tests
results-meets = { $count } ensayos: media { $mean }, valor del 5 % { $characteristic }. Está por encima de los { $need } que EN 959 pide en un ensayo de tipo, y sigue sin ser una carga de la que colgarse.
results-upper = { $count } ensayos: media { $mean }, valor del 5 % { $characteristic }, pero solo como límite superior, porque los apoyos del bastidor estaban cerca del anclaje.
results-upper-open = { $count } ensayos: media { $mean }, valor del 5 % { $characteristic }; es un límite superior mientras nadie diga que los apoyos del bastidor estaban lejos del anclaje.
results-unproved = { $count } ensayos: media { $mean }, valor del 5 % solo { $characteristic }. No está demostrado: queda por debajo de los { $need } que EN 959 pide en un ensayo de tipo.
results-weak = Demasiado débil: { $count } ensayos aguantan { $mean } de media, valor del 5 % { $characteristic }, y EN 959 pide { $need } en un ensayo de tipo.
results-scattered = No te fíes de estos { $count } ensayos: tienen una dispersión del { $scatter } %, media { $mean }, valor del 5 % { $characteristic }. Averigua primero en qué se diferenciaban.
results-too-few = { $count ->
    [0] Dime las cargas a las que cedieron: al menos 3.
    [one] Un ensayo no dice nada del próximo anclaje: haz { $missing } más, del mismo tipo y en la misma roca.
   *[other] { $count } ensayos no dicen nada del próximo anclaje: haz { $missing } más, del mismo tipo y en la misma roca.
 }
results-lowest = Lo único que sabes es lo que aguantaron los anclajes de ese día: { $value } el más bajo.
results-how-many = 3 es lo mínimo, 5 lo usual, 10 dan un valor del 5 % útil.
results-equal = Los { $count } resultados son iguales: las lecturas se han redondeado o copiado, y no dicen nada de la resistencia.
results-equal-next = Lee otra vez los máximos, a la décima de kilonewton, o haz otro ensayo.
results-mean = Desviación típica { $deviation }, dispersión { $scatter } %; el más bajo aguantó { $min }.
results-lognormal-few = Valor del 5 % { $value } con un 90 % de confianza: 19 de cada 20 aguantan más. Con la curva lognormal, porque { $count } ensayos son pocos{ $other }.
results-lognormal-scatter = Valor del 5 % { $value } con un 90 % de confianza: 19 de cada 20 aguantan más. Con la curva lognormal, porque la dispersión pasa del 15 %{ $other }.
results-normal = Valor del 5 % { $value } con un 90 % de confianza a partir de { $count } ensayos: 19 de cada 20 aguantan más. Con la curva normal{ $other }.
results-other = ; la otra curva da { $value }
results-other-nonsense = ; la curva normal caería por debajo de cero
results-cut = Con una dispersión de más del 20 % (aquí { $scatter } %), las evaluaciones solo dejan contar { $factor } del valor del 5 %: { $value }.
results-outlier-low = { $value } queda muy por debajo del resto. Pregunta qué pasó ahí: ¿mala mezcla, hueco, grieta, bastidor que resbaló? Se queda dentro: para encontrar anclajes así está el ensayo.
results-outlier-high = { $value } queda muy por encima del resto: comprueba esa lectura. Se queda dentro hasta que se demuestre un error.
results-more = Con la misma media y dispersión lo demostrarían { $count } ensayos en total.
results-more-useless = Con la misma media y dispersión no lo demostrarían ni { $count } ensayos: hacen falta anclajes más largos o más gruesos.
results-bond = Adherencia de la resina en { $legs ->
    [one] una pata
   *[other] { $legs } patas
 } de { $diameter } × { $depth }: media { $mean }, valor del 5 % { $low }.
results-bond-least = Adherencia, si la resina sujeta { $legs ->
    [one] una pata
   *[other] { $legs } patas
 } de { $diameter } × { $depth }: al menos { $mean } de media, valor del 5 % { $low }; más donde cedió otra cosa.
results-bond-update = La tabla dice { $table } ({ $adhesive }); contando tus ensayos, el valor central es { $median }, y el valor del 5 % para el próximo anclaje { $low }.
results-direction = Tomado como tirado recto hacia fuera. Si tiraste a lo largo de la roca, compáralo en cambio con { $need }.
results-missing = Has dicho { $told } anclajes pero { $count } resultados. Los demás también cuentan: ¿por qué no están?
results-frame = Si los apoyos del bastidor estaban a menos del doble de la profundidad, sujetaban la roca: lo que se rompió dice menos de la roca que de la resina y el metal.
results-mixed = Fallos distintos son series distintas de números: juzga por separado la roca, la resina y el metal.
results-steel = Primero se rompió el metal: la roca y la resina aguantan al menos esto, y cuánto más no se sabe.
results-few = { $count } resultados son pocos: cada uno más mueve el valor del 5 %.
results-not-said = Vale para esta roca, este tipo, este equipador y este tiempo. De agujeros mojados, cargas permanentes, corrosión y la pared de al lado no dice nada.
results-all-above = Los { $count } ensayos aguantaron al menos { $least }, y { $failed ->
    [0] no cedió ninguno
    [one] solo cedió uno
   *[other] solo cedieron { $failed }
 }: demasiado pocos para un valor del 5 %.
results-no-fractile = Un valor del 5 % pide al menos { $needed } ensayos hasta la rotura con resultados distintos.
results-share = Con un 95 % de confianza, hasta el { $share } % de los anclajes así puede aguantar menos de { $least }.
results-censored = { $count } ensayos, { $failed } hasta la rotura y { $stopped } parados antes: valor central { $median }, valor del 5 % { $characteristic }. { $ends }
results-censored-meets = Por encima de los { $need } que EN 959 pide en un ensayo de tipo, y sigue sin ser una carga de la que colgarse.
results-censored-upper = Un límite superior, a no ser que los apoyos del bastidor estuvieran lejos del anclaje.
results-censored-unproved = No está demostrado: por debajo de los { $need } que EN 959 pide en un ensayo de tipo.
results-censored-weak = Demasiado débil: EN 959 pide { $need } en un ensayo de tipo.
results-censored-scattered = Tienen demasiada dispersión para fiarse: averigua qué era distinto.
results-stopped = Un ensayo parado cuenta como "al menos eso". El valor del 5 % se rebaja según lo que merecen { $failed } roturas de verdad.
results-censored-point = Sin esa rebaja, la curva ajustada tiene su punto del 5 % en { $value }; su dispersión es del { $scatter } %.
check-pulls-out = hacia fuera, contra el mínimo del ensayo de tipo de EN 959
check-pulls-sideways = a lo largo de la roca, contra el mínimo del ensayo de tipo de EN 959

## proof tests
proof-load = { $load }
proof-load-untold = esa carga
proof-held = { $count ->
    [one] Un anclaje ha aguantado
   *[other] { $count } anclajes han aguantado
 } { $load }: ningún fallo grave en { $count ->
    [one] ese
   *[other] esos
 }, pero de los demás hasta el { $share } % puede seguir siendo malo.
proof-proves = Demuestra { $load }, ese día, en esa dirección, para esos anclajes. Puede incluso haber dañado alguno.
proof-needed = Para tener un 95 % de seguridad de que como mucho uno de cada veinte es malo, tendrían que aguantar { $needed }.
proof-little = No demuestra nada de la resistencia por encima de esa carga, de cargas permanentes ni de grietas por corrosión.
proof-failure-instead = Lo resistentes que son los anclajes lo dicen al menos 3, mejor de 5 a 10, tirados hasta que fallan.
proof-count = Dime cuántos anclajes aguantaron: sin el número no demuestra nada.
proof-one-gave-way = Alto: un anclaje ha fallado su prueba de carga, y eso pone en duda a todos los demás.
proof-several-gave-way = Alto: han fallado varios anclajes. Cierra la vía y haz la prueba de carga a todos, o cámbialos.
proof-failed-out = Lo que se movió o falló queda fuera: márcalo, quítalo, guarda la pieza.
proof-double = Encuentra la causa; después haz la prueba de carga al menos al 5 % de todos los anclajes de ahí, y al menos a 6.
proof-all = Ensaya todos los anclajes de ese tipo que haya ahí, y vuelve a pensar en la roca, el anclaje y el adhesivo.
proof-why = Busca la causa: polvo, mala mezcla, frío, hueco, roca blanda o agrietada, agujero equivocado.

## comparing two groups
compare-groups = Dime las cargas de los dos grupos, por ejemplo: lisos 33 35 37, rugosos 36 44 51.
compare-too-few = Cada grupo necesita al menos 3 resultados para poder compararlos.
compare-example = De 5 a 10 resultados en cada grupo dicen más.
compare-no-scatter = Ningún grupo tiene dispersión: las lecturas se han redondeado o copiado, y no hay nada que comparar.
compare-first = El primer grupo es más resistente: el azar solo daría una diferencia así en el { $chance } % de los casos.
compare-second = El segundo grupo es más resistente: el azar solo daría una diferencia así en el { $chance } % de los casos.
compare-none = No se ve ninguna diferencia; eso no quiere decir que sean iguales (el azar solo: { $chance } % de los casos).
compare-group-first = Primer grupo: { $count } ensayos, media { $mean }, dispersión { $scatter } %, el más bajo { $min }.
compare-group-second = Segundo grupo: { $count } ensayos, media { $mean }, dispersión { $scatter } %, el más bajo { $min }.
compare-interval = Primero menos segundo: { $difference }; con un 95 % de confianza, entre { $low } y { $high }.
compare-interval-ratio = Primero entre segundo: { $ratio } veces; con un 95 % de confianza, entre { $low } y { $high } veces.
compare-logs = Comparados por sus logaritmos, porque un grupo tiene una dispersión de más del 20 % (prueba de Welch).
compare-plain = Con la prueba de Welch, que deja que los dos tengan distinta dispersión.
compare-needed = Para ver una diferencia del 20 % con esta dispersión, cada grupo necesita unos { $needed } ensayos.
compare-hopeless = Con esta dispersión, ni { $most } ensayos en cada grupo mostrarían una diferencia del 20 %.
compare-same-failure = Solo se pueden comparar ensayos que fallaron de la misma manera.
compare-lowest = Para una vida cuenta el anclaje más débil, no la media: pide también el valor del 5 % de cada grupo.

## planning a pull test
plan-failure-first = Primero lleva hasta la rotura al menos { $fewest } anclajes sobrantes; después haz la prueba de carga a los que se quedan, con { $load }.
plan-failure = Lleva hasta la rotura al menos { $fewest } anclajes que des por perdidos, en esta roca y de este tipo.
plan-proof = A los anclajes que se quedan hazles la prueba con { $load } hacia fuera, no más: solo encuentra fallos graves.
plan-failure-count = Hasta la rotura: { $fewest } es lo mínimo para cada roca y tipo, { $good } dan un valor del 5 % útil; en roca que no se vaya a escalar.
plan-failure-rate = Carga de forma constante, de modo que el máximo llegue tras { $shortest } a { $longest } minutos, y sigue de 2 a 5 mm más allá.
plan-failure-keep = Apunta cada máximo y qué cedió. Los débiles son el resultado.
plan-which-all = Prueba de carga: todos los anclajes.
plan-which-tenth = Prueba de carga: uno de cada diez, y al menos { $fewest } de cada tramo de roca.
plan-which-all-of = Prueba de carga: todos los anclajes, { $tested } en total.
plan-which-tenth-of = Prueba de carga: uno de cada diez, y al menos { $fewest } de cada tramo de roca: { $tested } de { $count }.
plan-proof-load = Carga de prueba { $load } (usual hasta { $most }) hacia fuera; mantenla de { $shortest } a { $longest } segundos.
plan-proof-too-high = { $wanted } es demasiado para un anclaje que se queda: una carga de prueba puede dañar lo que prueba, y algunos ojos se doblan a partir de 6 a 10 kN.
plan-proof-above-half = La mitad del valor del 5 % que calculo es solo { $cap }. Lleva primero hasta la rotura anclajes sobrantes: una carga de prueba por encima de la mitad del verdadero valor del 5 % puede romper anclajes buenos.
plan-accept = Pasa si la carga no cae más de un 5 %, nada resbala, un químico no se mueve más de 0,5 mm (otros tipos 1 mm) y no se ve ninguna grieta ni cerco de polvo.
plan-frame = Apoyos del bastidor al menos al doble de la profundidad por cada lado; si no, la roca no puede arrancarse y el resultado sale demasiado bueno.
plan-frame-depth = Apoyos del bastidor al menos a { $side } por cada lado (un anillo de { $ring } de ancho interior); si no, la roca no puede arrancarse y el resultado sale demasiado bueno.
plan-energy = A { $force }, un bastidor que se mueve 5 mm guarda { $energy }: una pieza de 1 kg sale volando a { $speed }. Diez metros de cinta de nailon en la línea guardarían unas { $times } veces eso: solo cadena y barras.
plan-stand = Nadie en la línea del tirón; a 3 m hacia un lado, la bomba con manguera; la zona de abajo cerrada; quien ensaya, en su propio anclaje.
plan-write = Apunta roca, humedad, medida, adhesivo y su edad, temperatura, apoyos del bastidor, carga máxima, qué cedió; haz una foto.
plan-then = Después dime todas las cargas y calculo la media y el valor del 5 %.
check-proof = la mitad del valor del 5 % calculado, contra la carga de prueba

## life of a metal
life-place = Dime dónde está la pared: sin el lugar no hay duración que planear.
life-suitable = Cuenta ahí con { $range } para { $what }: un margen para planear, nunca una garantía.
life-limited = Cuenta ahí con no más de { $low } años para { $what }, y revísalo: { $why }
life-none = No cuentes ahí con ninguna duración para { $what }: { $why }
life-was = Donde se puso a pesar de todo duró { $range }, y algunos se rompieron sin ningún aviso.
life-range = de { $low } a { $high } años
life-range-one = { $low } años
life-because = Lo que marca ahí ese margen: { $why }.
life-because-cracks = Lo que marca ahí ese margen es el riesgo de que se agriete: { $why }.
life-practice = El margen es práctica habitual, no una ley de la naturaleza: con la primera mancha, grieta o pieza suelta se acaba.
life-hidden = Las rendijas, el agua que rezuma y las soldaduras envejecen antes que el metal a la vista, y la parte de dentro del agujero no se ve.
life-rock = Más allá de eso, la roca, la resina y el desgaste acaban con el anclaje antes que el metal.
life-bar = De acero sin recubrir, de { $diameter } de grosor, quedaría el { $left } % de la sección a los { $years } años si se oxidara por igual. No lo hace: las picaduras van de 2 a 5 veces más hondo, así que este es el mejor caso.
life-bar-gone = Una barra de acero sin recubrir puede estar comida de óxido del todo en { $years } años.
coating-usual = Nadie ha dicho el espesor: he tomado { $thickness }, el más fino que es usual.

## cost
cost-one = Para { $name }: { $yearly } al año por anclaje en { $horizon } años, con { $holes ->
    [one] un agujero
   *[other] { $holes } agujeros
 }.
cost-cheapest = Entre lo que es seguro ahí, lo más barato es { $name }: { $yearly } al año por anclaje en { $horizon } años, frente a { $otherYearly } con { $other }.
cost-cheapest-if-safe = Si todos son seguros en tu lugar, lo más barato es { $name }: { $yearly } al año por anclaje en { $horizon } años, frente a { $otherYearly } con { $other }.
cost-place = Primero la seguridad: dime dónde está la pared y comparo lo que es seguro ahí. Hasta entonces, sin clasificación.
cost-none-safe = Ninguno de estos es seguro ahí, así que no hay nada que comparar: pregunta qué metal usar.
cost-price = Dime cuánto cuestan las piezas de un anclaje con { $name }, en cualquier moneda.
cost-life = Dime cuántos años dura { $name }, o dónde está la pared.
cost-this = Cuesta { $yearly } al año por anclaje en { $horizon } años, con { $holes ->
    [one] un agujero
   *[other] { $holes } agujeros
 }.
cost-anchor = este anclaje
cost-nth = opción { $number }
cost-option = Cada año { $yearly } con { $name } ({ $total } en dinero de hoy), { $holes ->
    [one] un agujero
   *[other] { $holes } agujeros
 } en { $horizon } años; piezas { $parts }, trabajo { $labour }, dura { $life }.
cost-planned = La duración de { $name } está planeada según el lugar ({ $range }, práctica habitual, sin garantía); calculo con el extremo corto.
cost-no-price = Queda fuera { $name }: no has dicho el precio.
cost-no-life = Queda fuera { $name }: nadie ha dicho cuánto dura, y yo no tengo una duración para ahí.
cost-all = Para { $count } anclajes con { $name }: { $total } en dinero de hoy.
cost-break-price = Con las piezas a { $price } o menos, { $name } no costaría más que { $other }.
cost-break-price-never = Incluso con piezas gratis, { $name } costaría más que { $other }.
cost-break-life = Con una duración de { $life } o más, { $name } no costaría más que { $other }.
cost-break-life-never = Por mucho que dure, { $name } cuesta más que { $other }.
cost-robust = El orden se mantiene incluso si lo más barato dura una cuarta parte menos y los demás una cuarta parte más.
cost-not-robust = El orden cambia si lo más barato dura una cuarta parte menos y los demás una cuarta parte más: no te apoyes en él.
cost-rates = En dinero de hoy: { $none } al 0 %, { $three } al 3 %, { $five } al 5 %.
cost-rates-same = Al 0, al 3 y al 5 % por igual, lo más barato es { $first }.
cost-rates-turn = Depende del tipo de interés: lo más barato es { $none } al 0 %, { $three } al 3 %, { $five } al 5 %.
cost-terms = Calculado en { $horizon } años al { $rate } % anual por encima de la inflación; dime otra cosa y lo calculo de nuevo.
cost-no-labour = El trabajo no está contado, porque nadie ha dicho cuánto vale; eso favorece lo que hay que cambiar a menudo.
cost-holes = Cada cambio es un agujero nuevo en la roca, si no se puede volver a usar el viejo.

## cautions, permission, emergency
cautions-verdict = Antes de taladrar:
permission-verdict = Pregunta antes de taladrar: no puedo decir si ahí se permiten anclajes.
permission-owner = Deciden el propietario o quien gestiona el terreno, y las normas de equipamiento de la zona.
permission-nature = Las zonas protegidas, las épocas de nidificación y los lugares de patrimonio tienen sus propias normas.
permission-club = El responsable de accesos de tu club, o la federación regional, sabe a quién preguntar.
emergency-verdict = Pide ayuda ya: llama al servicio de rescate, y que nadie cargue ese anclaje.
emergency-call = Llama al número local de emergencias. Di dónde es, cuántas personas hay y quién está herido.
emergency-back-up = Asegura a la persona a algo independiente: otro anclaje sano, un árbol, una segunda cuerda.
emergency-do-not-load = No descuelgues a nadie, no tires ni escales con lo que ha fallado ni con sus vecinos del mismo tipo.
emergency-after = Cuando todos estén a salvo: cierra la vía, avisa al club y guarda la pieza rota tal como está.

## refusal
refusal-reason = { $why }
refusal-certify = No certifico nada.
refusal-certify-next = Un equipador cualificado que revise y ensaye en el sitio puede darte un informe; pregúntale, o a quien gestiona el terreno.
refusal-hang-people = No digo que se pueda colgar gente de ahí.
refusal-hang-people-next = Un equipador o técnico de cuerdas cualificado tiene que verlo, ensayarlo y decidir. Hasta entonces usa otro anclaje.
refusal-structure = No juzgo estructuras.
refusal-structure-next = Pregunta a un ingeniero de estructuras titulado y al propietario de la estructura.
refusal-banned-place = No ayudo a poner anclajes donde no están permitidos.
refusal-banned-place-next = Pregunta a quien gestiona el terreno; puede haber una forma de solicitarlo.
refusal-expired-adhesive = No lo uses: ese adhesivo está caducado.
refusal-expired-adhesive-next = Usa un cartucho nuevo y mira su fecha y cómo se ha guardado. Si ya hay anclajes puestos con el viejo, ciérralos y haz un ensayo de extracción a cada uno, o cámbialos.
refusal-skip-safety = No ayudo a saltarse un paso de seguridad.
refusal-skip-safety-next = Haz ese paso, o no pongas hoy el anclaje.
refusal-hollow-rock = Ni anclaje ni número en roca hueca.
refusal-hollow-rock-next = Ausculta la roca alrededor con un martillo y muévete a un punto que suene limpio por todos lados; si no lo hay, déjalo.

failed = Algo en mí ha fallado, y no doy ninguna respuesta antes que dar una mala. No se ha cambiado nada; avisa, por favor, a quien me cuida.

## Terminal
chat-greeting = Chough. Pregunta con tus palabras por anclajes en roca; "ayuda" muestra ejemplos, Ctrl-D termina.
chat-choose = Escribe una letra para elegir, o responde con palabras:

## Settings, units, and words that point back
settings-admins-only = Solo quienes administran este grupo pueden cambiar sus ajustes. No se ha cambiado nada.
settings-no-rooms = Este chat no tiene temas ni canales entre los que elegir.
settings-language = Idioma, salvo que un miembro escriba en otro: { $name }.
settings-units-metric = Unidades métricas primero.
settings-units-imperial = Pulgadas y libras primero.
settings-rooms = { $count ->
    [one] Solo respondo en un tema o canal.
   *[other] Solo respondo en { $count } temas o canales.
  }
units-set-metric = A partir de ahora te pongo primero las unidades métricas.
units-set-imperial = A partir de ahora te pongo primero pulgadas y libras.
language-en = English
language-es = español
language-pt = português
language-fr = français
language-it = italiano
language-de = Deutsch
other-which = ¿A cuál de los dos te refieres?
other-none = No sé a qué otro te refieres: dime su nombre.

## In a group
too-fast = Demasiado rápido para mí. Dame un minuto y vuelve a preguntar.
group-greeting =
  Hola, soy Chough. Ayudo con anclajes fijos en roca: qué metal, qué tipo, qué profundidad, qué adhesivo, cuánto debe curar, qué demuestra un ensayo de tracción, qué significa el óxido.
  Escríbeme con un comando como /material o /help, mencióname o respóndeme; si no, me callo.
  No veo la roca y nunca certifico. Un anclaje equivocado puede matar: deciden las normas locales, las instrucciones del fabricante y un equipador cualificado.
  Quienes administran el grupo pueden fijar su roca, costa, idioma y unidades con /club, por ejemplo «/club granito, interior».
sent-again = (Enviado de nuevo tras una interrupción; puede que ya lo tengas.)
press-for-another = Esta pregunta era para otra persona. Pregúntame tú y tendrás la tuya.

## Pictures
picture-nothing = Nada que dibujar: no hay valores.
picture-more = y { $count } más
picture-axis-time = tiempo, s
picture-axis-force = fuerza, kN
picture-axis-displacement = desplazamiento, mm
picture-axis-bond = adherencia, MPa
picture-axis-cost = coste por año
picture-axis-risk = probabilidad de fallar en un año
picture-force-time = Fuerza en el tiempo: { $name }
picture-force-displacement = Fuerza según el desplazamiento: { $name }
picture-peak = máximo de un ensayo
picture-first-drop = primera bajada de la fuerza
picture-pull = máximo { $peak }
picture-pull-dropped = máximo { $peak }, primera bajada a { $drop }
picture-need = { $name }: al menos { $load }
picture-groups = Ensayos de extracción comparados: { $name }
picture-failed = un ensayo, llevado hasta la rotura
picture-stopped = un ensayo, parado antes de la rotura: aguantó al menos eso
picture-mean = media: la mitad aguanta menos
picture-characteristic = valor del 5 %: 19 de cada 20 aguantan más
picture-tests = { $count ->
    [one] { $count } ensayo
   *[other] { $count } ensayos
 }{ $stopped ->
    [0] { "" }
   *[other] , de ellos parados antes de la rotura: { $stopped }
 }
picture-group = { $name }: { $parts }
picture-group-mean = media { $mean }
picture-group-low = valor del 5 % { $low }
picture-group-no-low = sin valor del 5 %
picture-bond = Adherencia, aprendida y publicada: { $name }
picture-published = publicado: de { $low } a { $high }
picture-learned = media contando los ensayos propios: { $mean }; con un { $share } % de probabilidad entre { $low } y { $high }
picture-own = ensayos propios: { $tests }
picture-used = valor usado: { $used }
picture-costs = Lo que cuesta el reequipamiento: { $name }
picture-policy = { $name }: { $total } en total
picture-risks = Qué anclajes primero: { $name }
picture-share = { $share } %
picture-share-under = menos del { $share } %
picture-risk-act = relleno: actuar aquí primero
picture-risk-watch = hueco: seguir inspeccionando
picture-alt-reached = Llegaron a { $load } ({ $name }): { $reached } de { $count } ensayos.
picture-alt-peaks = { $count ->
    [one] Un ensayo, máximo { $most }.
   *[other] { $count } ensayos, máximos de { $least } a { $most }.
 }
picture-alt-no-pulls = { $count } ensayos encontrados en este registro.
picture-alt-groups-met = Grupos cuyo valor del 5 % llega a { $load } ({ $name }): { $met } de { $count }.
picture-alt-groups-lowest = El valor del 5 % más bajo de { $count } grupos: { $low } ({ $name }).
picture-alt-groups-no-low = { $count } grupos con { $tests } ensayos, ninguno con un valor del 5 %.
picture-alt-below = Cedieron por debajo de lo publicado: { $below } de { $count } ensayos propios.
picture-alt-range = Ensayos propios de { $least } a { $most }.
picture-alt-cheapest = Lo más barato en { $years } años: { $name }, { $total } en total.
picture-alt-policy = { $policy }, como mucho { $most } en un año ({ $year }).
picture-alt-no-policies = { $count } planes que comparar.
picture-alt-act = { $act } de { $count } anclajes: actuar aquí primero.
picture-alt-highest = Mayor probabilidad de fallar en un año: { $name }, { $share }.
## Places
place-impossible = No existe ese lugar: la latitud va de -90 a 90 y la longitud de -180 a 180. No se ha cambiado nada.
place-null = Es el punto 0, 0, el que da un receptor sin señal. No se ha cambiado nada.
place-at-sea = Ese lugar está en mar abierto. No se ha cambiado nada.
place-sea = Según el mapa abierto el mar está a unos { $distance }, con un margen de { $uncertainty }. Cuento con eso; dime si está mal. Pueden faltar lagunas y ríos con marea.
place-near-limit = Según el mapa abierto el mar está a unos { $distance }, con un margen de { $uncertainty }: demasiado cerca de un límite de clase. Cuento con { $used } hasta que me digas algo mejor. Pueden faltar lagunas y ríos con marea.
place-far = Según el mapa abierto el mar está a más de { $distance }; cuento con eso. También hay sal en lagos salados, piscinas y carreteras de invierno: avísame.
# telegram
telegram-old-button = Este botón es de una versión anterior. Pregunta otra vez y recibirás uno nuevo.
telegram-only-words = Leo palabras, una ubicación o una tabla de resultados de ensayo; no puedo mirar fotos, grabaciones ni pegatinas. Escribe lo que ves, por favor.
telegram-file-too-big = Ese archivo es demasiado grande para mí: 4 MB como máximo. Envía solo la tabla de resultados, como texto o CSV.
telegram-file-failed = Ese archivo no me ha llegado. Envíalo otra vez, por favor, o escribe los valores en un mensaje.
telegram-inline-private = Pregúntame en privado
telegram-description = Ayudo con anclajes fijos en roca: qué metal, qué tipo, qué profundidad, qué adhesivo, cuánto tiempo de curado, qué muestra un ensayo de tracción, qué significa el óxido. Cada respuesta nombra sus fuentes y sus dudas. No puedo ver la roca y nunca certifico: deciden las normas locales, las instrucciones del fabricante y un instalador cualificado.
telegram-short-description = Respuestas prudentes y con fuentes sobre anclajes en roca. Nunca certifico; decide un instalador cualificado.
# discord
discord-ask-about = Preguntar sobre este mensaje
discord-option = pregunta
discord-option-does = Tu pregunta, con tus palabras
discord-type-it = Escribirlo
discord-type-title = Tu respuesta
discord-type-label = Con tus palabras
discord-pick = Elige …
discord-more = No todo cabe en el menú: lo que falta se puede escribir.
discord-empty = En ese mensaje no hay texto que yo pueda leer.
discord-not-here = Solo respondo en otros canales de este servidor.
discord-nothing = Ahora mismo no tengo nada que añadir. Si preguntaste mucho de una vez, espera un minuto.
discord-stopping = Me están reiniciando. Pregunta otra vez dentro de un minuto.
discord-thread-closed = De un hilo que ya está cerrado:
discord-file-too-big = Ese archivo ocupa más de { $most } MB, así que no lo leí.
discord-file-failed = No pude traer ese archivo. Envíalo otra vez dentro de un minuto.
discord-file-one = Leo un archivo cada vez. Envíalos uno por uno.

## Club records
record-load = carga máxima
record-fact = • { $fact }: { $value }
record-text-day = • día del ensayo: { $text }
record-text-crag = • pared: { $text }
record-text-route = • vía: { $text }
record-text-batch = • lote: { $text }
record-text-note = • nota: { $text }
record-name-day = día del ensayo
record-name-crag = pared
record-name-route = vía
record-name-batch = lote
record-name-note = nota
record-change = • { $fact }: { $before } → { $after }
record-did-added = { $version }. Anotado por { $by }, { $at }:
record-did-corrected = { $version }. Corregido por { $by }, { $at }:
record-did-withdrawn = { $version }. Retirado por { $by }, { $at }.
record-by-forgotten = un miembro que pidió ser olvidado
record-draft = Anotaría este ensayo:
record-draft-how = Aún no se guarda nada. Guárdalo, descártalo o di qué está mal: "eran 34 kN".
record-correct = El registro { $id } cambiaría así:
record-withdraw = ¿Retirar el registro { $id }? Ya no contará; su historial queda.
record-kept = Guardado como { $id }.
record-kept-how = Para corregirlo: "{ $id } era 34 kN". Para quitarlo: "retirar { $id }". Todos los pasos: "historial { $id }".
record-corrected = Corregido: { $id }. Lo que era antes queda en su historial.
record-withdrawn = Retirado: { $id }. Ya no cuenta; su historial queda.
record-dropped = Descartado. No se guardó nada.
record-same = Eso ya lo dice { $id }. No se cambió nada.
record-shown = Registro { $id }, versión { $version }:
record-shown-withdrawn = El registro { $id }, versión { $version }, fue retirado y no cuenta:
record-history = Registro { $id }, todos los pasos:
record-none = Este chat no tiene ningún registro { $id }.
record-is-withdrawn = { $id } fue retirado y ya no se puede cambiar. Anota el ensayo de nuevo. No se cambió nada.
record-not-yours = Solo quien lo anotó, o quienes cuidan este grupo, pueden cambiar ese registro. No se cambió nada.
record-changed-meanwhile = Alguien cambió ese registro entretanto. No se cambió nada; míralo de nuevo.
record-open-first = Primero guarda o descarta este:
record-one-at-a-time = De uno en uno, por favor, o varios en una tabla: un archivo o una lista pegada con encabezado. No tomé nada de eso.
record-no-day = "{ $text }" no es un día. Escríbelo como 2027-05-02. No se cambió nada.
record-future-day = { $text } está por venir. No se cambió nada.
record-load-impossible = Ningún ensayo de un anclaje llega a esa carga, o es demasiado pequeña. No se cambió nada.
record-clash-glue = Ese tipo de anclaje no tiene resina que pueda ceder. ¿Cuál de los dos está mal? No se cambió nada.
record-clash-facts = Eso no encaja con el resto del registro. No se cambió nada.
choice-keep = Guardar
choice-drop = Descartar
choice-withdraw = Retirar
choice-fix = Cambiar: { $fact }
table-ready = Se pueden guardar { $count } filas. Aún no se guarda nada.
table-kept = Guardados: { $count } registros, de { $first } a { $last }.
table-read = Leí { $rows } filas: { $good } se pueden guardar, { $bad } no.
table-there = Ya están aquí, y se omiten: { $count }.
table-left = Columnas que no conozco, y omití: { $names }.
table-row = • Fila { $number }: { $why }
table-rows-more = • y { $count } filas más
table-range = Cargas de { $least } a { $most }.
table-nothing = No hay nada que guardar. No se cambió nada.
table-too-large = Ese archivo pasa de 5 MB, así que no lo leí. No se cambió nada.
table-too-many = Esa tabla tiene más de { $most } filas, así que no tomé ninguna. Envíala por partes.
table-empty = Esa tabla tiene encabezado y ninguna fila. No se cambió nada.
table-no-text = Ese archivo no tiene texto que pueda leer como tabla. Envíalo como CSV. No se cambió nada.
table-column-twice = La columna "{ $column }" está dos veces. No tomé nada.
table-unit-missing = La columna "{ $column }" no tiene unidad. Escríbela entre corchetes: "carga máxima [kN]", "longitud [mm]". No tomé nada.
table-unit-unknown = La unidad en "{ $column }" no encaja con esa columna, o no la conozco. No tomé nada.
table-row-number = "{ $text }" no es un número ({ $fact })
table-row-impossible = "{ $text }" no puede ser: { $fact }
table-row-value = "{ $text }" no lo conozco ({ $fact })
table-row-lacking = falta: { $fact }{ $text }
table-row-day = "{ $text }" no es un día; escríbelo como 2027-05-02
table-row-future = { $text } está por venir
table-row-too-wide = tiene más celdas que el encabezado
table-row-too-long = una celda es demasiado larga; ¿falta una comilla?
table-row-clash-glue = ese tipo de anclaje no lleva resina
table-row-clash-facts = dos de sus valores no encajan
table-row-differs = { $id } ya está aquí y dice otra cosa; corrígelo con palabras
table-exported = { $count } ensayos en una tabla
table-exported-how = Los valores son nombres cortos, iguales en todos los idiomas. Si se envía de vuelta, el archivo no añade nada dos veces.
ours-none = Este chat aún no tiene ensayos. Cuéntame uno: "sacamos un 12x100 de dos patas, epoxi, granito, 36,5 kN, la resina salió limpia".
ours-list = { $first }, { $rest }
ours-size = { $diameter } × { $depth }
ours-mixed = todos los ensayos juntos
ours-found = Vuestros ensayos que coinciden: { $count }, en { $groups } grupos del mismo tipo.
ours-no-match = De vuestros { $count } ensayos ninguno coincide: { $what }.
ours-more = y { $count } grupos más pequeños.
ours-about = Lo que sigue trata solo del grupo con más roturas: { $what }.
ours-group = • { $what }
ours-loads-failed = – cedieron ({ $failed }): { $pulls }
ours-loads-stopped = – aguantaron al menos ({ $stopped }): { $held }; nada cedió
ours-loads-both = – cedieron ({ $failed }): { $pulls }; aguantaron al menos ({ $stopped }): { $held }
ours-figures = – media { $mean }, valor del 5 % { $low }
ours-figures-fitted = – centro de la curva ajustada { $mean }, valor del 5 % { $low }
ours-no-figures = – muy pocas roturas para un valor del 5 %
ours-mode = { $mode } ({ $count })
ours-modes = – { $list }
ours-first = Primer grupo: { $what }
ours-second = Segundo grupo: { $what }
ours-differ = Los dos también difieren, o están mezclados, en: { $list }. Una diferencia puede venir de ahí.
ours-modes-differ = No todos cedieron igual: en rigor, solo se comparan roturas iguales.
ours-stopped-out = Los ensayos detenidos, { $count }, no son roturas y quedan fuera de esta comparación.
ours-longer = El primer grupo es el más profundo, el segundo el menos, lo demás del mismo tipo.
ours-longer-none = Vuestros ensayos no lo muestran: no hay del mismo tipo a dos profundidades. Haced al menos 3, mejor 5 a 10, en cada una.
bond-ours = Adherencia: publicada de { $low } a { $high }, de la que cuento una media de { $published }; con vuestros { $failures } ensayos que fallaron en ella, { $median } en el centro, valor del 5 % { $five }.
bond-ours-least = { $others } más de vuestros ensayos acabaron de otro modo (metal, roca, equipo, o detenidos): la adherencia aguantó al menos eso.
bond-ours-lower = El vuestro es el menor, así que cuento { $used }.
bond-ours-higher = El vuestro no es menor, y aún no vuelve nada más atrevido: deben fallar { $needed } en la adherencia antes de contar por encima de lo publicado (EOTA TR 053, de memoria); faltan { $missing }.
bond-ours-would = Con el vuestro sería: media { $mean }, valor del 5 % { $characteristic } ({ $mode }).
bond-ours-without = Solo con la adherencia publicada sería: media { $mean }, valor del 5 % { $characteristic } ({ $mode }).
bond-ours-enough = { $needed } fallos en la adherencia bastan para que cuente el vuestro (EOTA TR 053, de memoria): cuento { $used }, y nunca más que el extremo superior de lo publicado, { $top }.
plan-steps = Con bomba manual, en pasos de a lo sumo { $share } % de lo que esperas, cada uno mantenido { $minutes } minutos mientras lees el movimiento (ASTM E488, de memoria); antes asienta con una vigésima parte.
plan-steps-expected = Con bomba manual, en pasos de a lo sumo { $step }, que es { $share } % de los { $mean } que calculo de media, cada uno mantenido { $minutes } minutos mientras lees el movimiento (ASTM E488, de memoria); antes asienta con una vigésima parte.
plan-proof-steps = Súbela en { $steps } pasos iguales de { $seconds } segundos, y para al primer movimiento.
plan-number = Lo que ese número puede mostrar: con { $count } resultados el valor del 5 % es de un { $left } % de la media, con { $good } de un { $goodLeft } %, con cientos de un { $endless } % (dispersión { $scatter } %, confianza 90 %). Pocos resultados cuestan resistencia.
plan-number-too-few = Con menos de { $fewest } resultados no se puede decir nada del próximo anclaje.
plan-number-compare = Con { $count } ensayos de cada tipo es probable que solo se vea una diferencia de { $seen } % o más (dispersión { $scatter } %, cuatro veces de cinco). Alterna los dos, no un día cada uno.
plan-range = Lanzada libremente cae hasta a { $range } en terreno llano, y más lejos bajo una pared: cierra la línea de tiro hasta ahí, en ambos sentidos.
plan-rig = Cada parte del equipo para al menos { $load }, { $factor } veces la mayor carga: un equipo que falla también lanza sus piezas.
plan-protect = Ata el marco y las piezas sueltas, pon una manta pesada sobre el equipo, gafas y casco; suelta la presión antes de que nadie se acerque, también si nada se rompió.
plan-log = Cuéntame cada ensayo con /log, y cuenta para vuestra propia roca.
ours-picture = Nuestros ensayos

## Recordings
recording-title = { $file }, tracción { $number }
recording-failed = Cedió: la carga máxima fue { $peak }.
recording-stopped = Se paró antes de que algo cediera: aguantó { $peak } esa vez, y lo que aguanta como máximo no se sabe.
recording-none = { $file }: no se encontró ninguna tracción. La carga nunca subió claramente sobre el reposo.
recording-time = Máximo { $time } s después de la primera muestra.
recording-drop = Primera caída brusca a los { $time } s: de { $from } a { $to }.
recording-plateau = Después aún aguantó unos { $level } durante { $seconds } s.
recording-rate = Cargado a unos { $rate }.
recording-stiffness = Rigidez antes de ceder o de parar: { $stiffness }.
recording-energy = Energía hasta el máximo: { $energy }.
recording-rest = La célula marcaba { $rest } en reposo; eso está restado de cada carga aquí.
recording-mode-bond-loss = Parece que primero falló la adherencia y luego el anclaje deslizó. ¿Fue eso lo que viste: anclaje sacado con adhesivo o polvo?
recording-mode-brittle = Parece que algo se rompió de golpe: acero o roca. ¿Qué fue: un perno roto o un cono de roca?
recording-mode-slow-slip = Parece que el anclaje salió despacio bajo carga. ¿Salió, y cuánto?
recording-mode-rig = La carga cayó y luego subió más que antes. ¿Se asentó o resbaló el equipo de tracción, o se movió el anclaje?
recording-mode-stopped = Parece que paraste a propósito. ¿Es así, y nada se había movido ni agrietado?
recording-reason = Por qué lo creo: { $list }.
recording-reason-sharp-drop = cayó en una décima de segundo más o menos
recording-reason-plateau = luego siguió aguantando una carga menor
recording-reason-no-plateau = luego no aguantó casi nada
recording-reason-rose-again = más tarde subió por encima de esa carga
recording-reason-slow-fall = la carga bajó no más deprisa de lo que había subido
recording-reason-moved-on = el anclaje siguió moviéndose mientras la carga bajaba
recording-reason-taken-off = la carga bajó suavemente y más deprisa de lo que había subido
recording-reason-ends-loaded = el registro acaba con la carga puesta
recording-note-clipped = La cima es plana: la célula pudo llegar a su límite y el máximo real ser mayor. No uses este máximo.
recording-note-disturbed = La célula tuvo perturbaciones: se omitieron picos o cortes. Revisa conectores y cable.
recording-note-gap = Faltan muestras durante la tracción; entretanto pudo pasar algo.
recording-note-starts-loaded = El registro nunca vuelve a cero. No sé si es precarga o un cero mal puesto; las cargas pueden estar mal en esa cantidad.
recording-note-coarse = Menos de unas diez muestras por segundo: una rotura y una descarga rápida se parecen.
recording-note-re-seated = Al principio la carga bajó un poco y volvió a subir, como cuando se asienta el equipo. Asegúrate de que no fue el anclaje.
recording-refused = { $file }: { $why }
recording-problem-unreadable = No existe ese archivo o no se puede leer.
recording-problem-empty = El archivo está vacío.
recording-problem-packed = Es un archivo comprimido o una hoja de cálculo. Guarda la tabla como texto CSV y manda eso.
recording-problem-binary = Esto no es texto. Exporta el registro como texto CSV.
recording-problem-too-large = El archivo es más grande de lo que leo. Recorta las tracciones.
recording-problem-long-line = Línea { $line }: es demasiado larga para una fila de tabla.
recording-problem-no-table = No encuentro en él ninguna tabla de números.
recording-problem-no-header = Línea { $line }: aquí empiezan los números sin cabecera que nombre columnas y unidades. ¿En qué unidad está la carga: kN, N, daN, kgf o lbf?
recording-problem-no-load = No encuentro ninguna columna de carga. Llámala "Fuerza" o "Carga", con su unidad.
recording-problem-many-loads = Varias columnas pueden ser la carga. Deja solo la que cuenta.
recording-problem-unit = La unidad de la carga no está indicada o no la conozco, y no adivino. ¿Es kN, N, daN, kgf o lbf? Escríbela tras el nombre de la columna.
recording-problem-no-time = No encuentro columna de tiempo ni frecuencia de muestreo sobre la tabla.
recording-problem-time-unit = ¿En qué unidad está el tiempo: s o ms? Escríbela tras el nombre de la columna.
recording-problem-no-rate = Las muestras están numeradas, pero ¿cuántas por segundo? Escribe una línea "Frecuencia: … Hz" sobre la tabla.
recording-problem-missing-cell = Línea { $line }: falta un valor.
recording-problem-no-number = Línea { $line }: lo que hay aquí no es un número.
recording-problem-no-clock = Línea { $line }: lo que hay aquí no es una fecha ni una hora.
recording-problem-formula = Línea { $line }: hay una fórmula. Solo leo números; guarda los valores.
recording-problem-time-back = Línea { $line }: el tiempo va hacia atrás.
recording-problem-truncated = Línea { $line }: el archivo está cortado aquí. Cópialo otra vez del registrador.
recording-problem-too-short = Hay muy pocas muestras para decir algo.
recording-problem-strange-text = Línea { $line }: hay texto en medio de los números.
recording-problem-decimal-mark = Comas y puntos están mezclados: no distingo decimales de millares. Guarda los números sin separador de millares.

recording-no-offer = No ofrezco anotar { $count ->
    [one] un ensayo
   *[other] { $count } ensayos
}: no se conoce la carga máxima verdadera.
recording-offer = ¿Lo anoto como ensayo de tracción con { $peak }? Toca lo que viste ceder, o que no cedió nada. Todavía no se guarda nada.
recording-offer-several = El más fuerte es el ensayo { $number } con { $peak }. ¿Cuál anoto como ensayo de tracción? Todavía no se guarda nada.
choice-note-mode = Anotar: { $mode }
choice-note-open = Anotar y preguntarme qué cedió
choice-note-pull = Anotar el ensayo { $number }: { $peak }
recording-file-neither = Leo registros de una célula de carga y tablas de ensayos de tracción. No se ha cambiado nada.
recording-picture = Imagen: { $file }
recording-picture-kept = { $file } ya existe y no lo dibujé yo, así que lo dejé como está.
recording-picture-failed = No se pudo escribir { $file }.
## Register
record-text-sector = • sector: { $text }
record-name-sector = sector
record-text-position = • posición: { $text }
record-name-position = posición
record-text-installer = • colocado por: { $text }
record-name-installer = colocado por
record-text-anchor = • anclaje: { $text }
record-name-anchor = anclaje
register-day-anchor = • colocado: { $text }
register-day-inspection = • visto: { $text }
register-name-day-anchor = día de colocación
register-name-day-inspection = día de la revisión
register-day-not-known = • colocado: no se sabe
register-anchor-draft = Anotaría este anclaje en el registro:
register-anchor-draft-how = Aún no se guarda nada. Guárdalo, descártalo o di qué está mal o falta: "colocado 2024-05-02", "es 304".
register-anchor-withdraw = ¿Retirar el anclaje { $id } del registro? Ya no aparecerá; su historial queda.
register-anchor-kept-how = Para corregir: "{ $id } es 304". Lo que viste: "{ $id } tiene manchas marrones". Para quitarlo: "retirar { $id }". Todos los pasos: "historial { $id }".
register-inspection-draft = Anotaría esta revisión de un anclaje:
register-inspection-draft-how = Aún no se guarda nada. Guárdalo, descártalo o di qué está mal.
register-inspection-withdraw = ¿Retirar la revisión { $id }? Ya no contará; su historial queda.
register-inspection-kept-how = Para quitarla: "retirar { $id }". Todos los pasos: "historial { $id }".
register-which-crag = ¿En qué escuela está? Basta el nombre; sector, vía y posición ayudan a encontrarlo.
register-nowhere = Sin escuela nadie encuentra ese anclaje. No se guardó nada.
register-twice = { $id } ya está en ese lugar. Corrige o retira ese, o di otra posición. No se guardó nada.
register-is-withdrawn = { $id } fue retirado del registro y ya no puede cambiarse. No se cambió nada.
register-no-day = { $text } no es un día entre 1950 y hoy. Escríbelo como 2024-05-02, o solo el año. No se cambió nada.
register-look = • { $day }: { $signs } (anotado por { $by } como { $id })
register-look-of = Con lo que el registro dice de { $id }, { $crag }:
register-look-note = ¿Anotarlo en su historial? Aún no se guarda nada.
register-look-later = No anoto nada mientras otro registro está abierto: guárdalo o descártalo primero y repite esto.
register-entry = • { $id }: { $where } — { $what }
register-entry-figures = • { $id }: { $where } — { $what }, { $figures }
register-found = { $what }: { $count } en el registro.
register-more = • y { $count } más. Di un sector, una vía o un metal, o exporta el registro.
register-no-match = El registro tiene { $count } anclajes, pero ninguno para: { $what }.
register-all = En el registro: { $count } anclajes, escuelas: { $crags }.
register-crag = • { $name }: { $count }
register-how = Para encontrar: "anclajes en Gannet Slab", "todos los zincados". Para añadir: "registrar anclaje 3 en Gannet Slab: 12x100 316 doble pata". Qué ver primero: "¿qué anclajes primero?"
register-none = Este chat aún no tiene anclajes en su registro. Dime uno: "registrar anclaje 3 en Gannet Slab: 12x100 316, colocado 2024-05-02", o envía una tabla con escuela y tipo de anclaje.
register-exported = { $count } anclajes como tabla
register-row-lacking = falta: { $what }
register-row-twice = { $id } ya está en ese lugar
register-row-same = nombra el mismo lugar que la fila { $number }
register-first = Lo primero, { $shown } de { $count } anclajes, lo más urgente arriba:
register-first-one = { $place }. { $id }: { $where }
register-first-why =    • { $why }
register-first-seen = visto { $day } ({ $id }), { $signs }. { $verdict }
register-metal-unknown = El metal no se conoce, lo que cuenta como peor.
register-place-unknown = El metal no se puede juzgar sin conocer el lugar, lo que cuenta como peor. Di: "es interior", "a 300 m del mar".
register-age-unknown = No se sabe su edad, lo que cuenta como vida prevista agotada.
register-age-only = Tiene { $years } años; no hay años que prever.
register-age-past = Tiene { $years } años: pasa del extremo corto de { $low } a { $high } años previstos.
register-age-within = Tiene { $years } años; se prevén de { $low } a { $high } años, nunca se prometen.
register-first-limits = Es un orden de trabajo según lo dicho: señales, metal y lugar, edad, uso. Lo que no se sabe cuenta como peor. Un anclaje más abajo, o que falta aquí, no por eso está sano.
register-sensitive = De estas escuelas guardo y muestro solo el nombre, sin sector, vía, posición ni nota: { $names }. Lo anotado antes queda guardado, pero ya no se muestra. Para quitarlo: "/club no sensible …".
register-sheltered = Esta escuela está marcada como sensible: dejo fuera sector, vía, posición y nota.
