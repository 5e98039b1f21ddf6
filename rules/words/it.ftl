# What Chough says in Italian. Names, questions, reasons and cautions stand in it.json; here are the sentences that join
# them.

## Bits
list-last = { $first } o { $last }
line = { $text }
fewer-than = meno di { $number }
years = { $number } anni
days = { $number } giorni
not-known = non si sa
fact-line = { $fact }: { $value }
understood = Ho letto: { $list }.
standing = Chough consiglia, non certifica mai: decidono le regole locali, le istruzioni del produttore e un chiodatore qualificato.

## The frame of an answer
title-checks = Verifiche
title-checks-kn = Verifiche (1 kN sono 225 lbf)
title-reject = Da non usare
assumed = Non me l'hai detto e l'ho supposto (il caso peggiore, dove c'è): { $list }.
title-cautions = Attenzione
always = Sempre: { $list }.
took = Ho preso: { $list }.
rejected = { $what }: { $why }
limited = { $what }, solo con limiti: { $why }
reason = { $why }
deferral = Questo è un consiglio, non un certificato. Prima vengono le regole locali e chi gestisce il terreno, le istruzioni del produttore e un chiodatore qualificato sul posto.
source-memory = { $title }, a memoria
source-read-second-hand = { $title }, di seconda mano
sources = Fonti: { $list }.
sources-more = Fonti: { $list }, e altre { $more } (scrivi "perché").
footer = Risposta { $id }, regole { $ruleset }. Scrivi "perché" per vedere tutti i passaggi.
footer-why = Risposta { $id }, regole { $ruleset }.
check-mean = media { $value }
check-characteristic = valore al 5 % { $value }
check-design = valore di progetto { $value }
check-plain = { $value }
check-met = { $name }: { $values }; serve { $limit }: rispettato
check-atmost-met = { $name }: { $values }; al massimo { $limit }: rispettato
check-atmost-short = { $name }: { $values }; al massimo { $limit }: NON rispettato
check-open = { $name }: { $values }; serve { $limit }: solo in media, non dimostrato
check-short = { $name }: { $values }; serve { $limit }: NON rispettato
check-length = lunghezza installata (EN 959)
check-plating = { $thickness } di zinco, anni prima che sparisca
check-cure-share = quota del tempo di indurimento
check-cured = ore dalla resinatura
check-bending = flessione dove esce dalla roccia
check-edge = distanza dallo spigolo o dalla fessura più vicini
check-spacing = distanza tra gli ancoraggi
check-tension = a estrazione, { $mode }
check-shear = a taglio, { $mode }
mode-steel = metallo
mode-bondSteel = resina che si stacca dal metallo
mode-bondRock = resina che si stacca dalla roccia
mode-cone = cono di roccia
mode-pullThrough = sfilamento dalla fascetta
mode-pryOut = roccia scalzata dal retro
mode-edge = spigolo di roccia
mode-dowel = roccia schiacciata sotto il gambo

## why
title-why-facts = Da cosa sono partito
title-why-rules = Regole applicate
title-why-formulas = Formule
title-why-sources = Fonti
why-fact = { $line } ({ $origin })
why-rule = { $words } [{ $id }]
why-input = { $symbol } = { $value } ({ $from }; vale da { $least } a { $most })
why-from-fact = { $fact }, { $origin }
why-from-row = dalla tabella { $row }
why-from-method = calcolato strada facendo
why-formula = { $name }: { $symbols }; { $inputs } → { $value }{ $kind } ({ $source }, { $clause })
kind-mean = , un valore medio
kind-characteristic = , un valore al 5 %
kind-design = , un valore di progetto
kind-plain = { "" }
origin-said = l'hai detto tu
origin-assumed = supposto, non l'ha detto nessuno
origin-club = impostazione del tuo club
origin-map = dalla mappa
origin-measured = dalle prove del club

## Buttons
choice-dont-know = Non so
choice-why = Perché?
choice-back = Indietro
choice-restart = Ricomincia
choice-settle = { $fact }: { $value }

## Talk
language-set = Adesso rispondo in italiano.
resumed = Dall'altra volta ricordo ancora: { $list }.
restarted = Dimenticato. Cosa vuoi sapere?
back-nothing = Non c'è niente da annullare.
back-start = Annullato. Cosa vuoi sapere?
why-nothing = Non ho ancora dato una risposta da spiegare.
what-about = Preso nota. Cosa vuoi sapere?
greeting = Ciao. Chiedimi degli ancoraggi su roccia: quale metallo, che tipo, quanto profondo, quale resina, quanto deve indurire.
welcome = Prego. Prova a estrazione prima di fidarti.
help-material = Dimmi dove va l'ancoraggio; roccia, pioggia e clima aiutano. Per esempio: "quale metallo per una scogliera di calcare strapiombante?" o "il 316 va bene in una falesia dell'entroterra a clima temperato?"
help-anchor = Dimmi la roccia e a cosa serve l'ancoraggio. Per esempio: "che tipo di ancoraggio per una sosta in arenaria tenera?"
help-embedment = Dimmi tipo, misura, roccia e resina. Per esempio: "un resinato 10x80 in granito con epossidica è abbastanza profondo?"
help-adhesive = Dimmi quanto è bagnato il foro e quanto è calda la roccia. Per esempio: "quale resina in un foro umido a 8 °C?"
help-adhesive-amount = Dimmi misura e numero. Per esempio: "quanta resina per 20 fittoni 12 x 100?"
help-cure = Dimmi il tipo di resina e la temperatura della roccia. Per esempio: "quanto deve indurire la vinilestere a 6 °C?"
help-hole = Per esempio: "come pulisco il foro per un resinato?"
help-spacing = Dimmi la profondità. Per esempio: "a che distanza dallo spigolo per un 12x100?"
help-coating-life = Dimmi spessore e posto. Per esempio: "quanto durano 50 µm di zinco in una falesia dell'entroterra?"
help-inspect = Dimmi cosa vedi, su quale metallo, dove. Per esempio: "macchia marrone sotto una placchetta in 304 su una scogliera, mi posso fidare?"
help-cost = Dimmi prezzo, lavoro e durata. Per esempio: "cosa costa meno in 50 anni in una falesia dell'entroterra a clima temperato, 316 a 20 euro o titanio a 43 euro, lavoro 20?"
help-pulltest-plan = Per esempio: "come facciamo la prova di carico su 20 resinati di sosta in granito?"
help-pulltest-result = Dimmi a quali carichi hanno ceduto gli ancoraggi. Per esempio: "abbiamo estratto a 24,1 27,3 22,8 30,2 26 kN, cosa dimostra?"
help-compare = Dimmi tutte e due le serie di risultati. Per esempio: "lisci: 33 35 37, zigrinati: 36 44 51, gli zigrinati sono migliori?"
help-load = Dimmi cosa si fa con l'ancoraggio. Per esempio: "che forza fa una caduta di fattore 1 con 80 kg?" o "che forza su due fittoni a 60 gradi con 2 kN?"
help-cautions = Per esempio: "a cosa devo stare attento quando foro in arenaria bagnata?"
help = Chiedi con parole tue, per esempio:
    • quale metallo per una scogliera di calcare strapiombante?
    • un resinato 10x80 in granito con epossidica è abbastanza profondo?
    • 12 x 100 in arenaria bagnata, 4 °C: quale resina, e quanta per 20 fittoni?
    • quanto deve indurire la vinilestere a 6 °C?
    Poi: "perché" per i passaggi dietro una risposta, "indietro" per annullare l'ultima cosa, "ricomincia" per ripartire da zero. Per correggere, dillo e basta: "scusa, granito".
not-understood = Non l'ho capita come una domanda sugli ancoraggi.
words-not-understood = Non conosco queste parole: { $words }.
still-open = La mia ultima domanda è ancora aperta; "non so" va benissimo.
not-yet = Su questo tema non so ancora rispondere: { $topic }. Posso aiutarti con quelli qui sotto.
too-long = È più lungo di { $most } caratteri, quindi non l'ho letto. Fai una domanda in poche righe.
file-not-yet = Qui non posso leggere file. Dimmi i numeri a parole.
place-not-yet = Qui non posso leggere posizioni. Dimmi quanto dista il mare, e se la pioggia arriva sull'ancoraggio.
button-old = Quel pulsante è di una domanda vecchia e non vale più.
impossible = "{ $text }" non è possibile per: { $fact }. Accetto da { $least } a { $most }. Non ho cambiato niente.
contradiction = { $one } e { $other } non vanno insieme. Quale delle due vale? Non ho cambiato niente.
contradiction-relation = { $words } Non ho cambiato niente.
out-of-range = { $what }: viene { $value }; il metodo vale da { $least } a { $most }, quindi non do nessun numero. Dimmi un valore in quell'intervallo, o chiedi a un chiodatore qualificato.
problem-unit-mismatch = "{ $text }": quell'unità non va bene. Che valore intendi per: { $fact }? Non ho cambiato niente.
problem-ambiguous = "{ $text }" può voler dire più cose. Dillo in modo più preciso, per favore. Non ho cambiato niente.
problem-conflict = "{ $text }" dice due cose diverse su: { $fact }. Quale vale? Non ho cambiato niente.
problem-not-a-number = Non riesco a leggere "{ $text }" come numero. Non ho cambiato niente.
problem-impossible = "{ $text }" non è possibile. Non ho cambiato niente.

settings-none = Per questa chat non è impostato niente.
settings-are = Per questa chat tengo, se un messaggio non dice altro: { $list }.
settings-how = Per impostare: «/club arenaria tenera, entroterra» (roccia, luogo), «/club italiano», «/club pollici», «/club solo qui». Per cancellare: «/club cancella».

## Topics, as buttons and in sentences
topic-material = quale metallo
topic-anchor = quale tipo di ancoraggio
topic-embedment = profondo e robusto abbastanza?
topic-adhesive = quale resina
topic-adhesive-amount = quanta resina
topic-cure = tempo di indurimento
topic-load = carichi
topic-pulltest-plan = preparare una prova a estrazione
topic-pulltest-record = annotare una prova a estrazione
topic-pulltest-result = risultati delle prove
topic-compare = confrontare opzioni
topic-inspect = controllare un ancoraggio
topic-spacing = spigoli e distanze
topic-coating-life = quanto dura un metallo
topic-cost = costo negli anni
topic-hole = forare e pulire
topic-cautions = precauzioni
topic-permission = permessi
topic-settings = impostazioni del club
topic-register = il registro
topic-remind = promemoria
topic-why = perché
topic-help = aiuto
topic-smalltalk = chiacchiere
topic-emergency = emergenza
topic-refuse = cosa non faccio

## A metal, adhesive or kind that was asked for by name
asked-suitable = Sì, va bene: { $what }. { $why }
asked-limited = { $what }: solo con limiti. { $why }
asked-unsuitable = No: { $what } non va bene. { $why }

## material
material-only = Usa { $metals }, e niente di meno: qui il sale fa criccare l'inox.
material-anywhere = Non conosco il posto. Va bene in ogni posto che conosco: { $metals }. Dimmi dov'è la falesia; un posto meno aggressivo può permettere altro.
material-use = Usa { $metals }.
material-limited = Qui nessun metallo è senza limiti; il migliore: { $metals }, con i limiti qui sotto.
material-none = Nessun metallo che conosco va bene per questo posto. Chiedi a un ingegnere della corrosione prima di forare.
material-class = Secondo il codice strutturale questo posto richiede la classe di resistenza { $class } (fattore { $factor }).
material-class-boundary = Secondo il codice strutturale questo posto è al limite tra due classi (fattore { $factor }); prendi la { $class }.
material-beyond = Il codice strutturale per l'acciaio inox non copre un posto così.
material-cracking = Rischio che l'inox si cricchi per il sale: { $risk }.
material-kinds = Tipo di ancoraggio adatto a quanto hai detto: { $kinds }.
material-kinds-limited = Tipo di ancoraggio, dopo aver battuto la roccia col martello: { $kinds }.
material-one-metal = Fittone, dado, rondella, placchetta, anello e catena: tutto dello stesso metallo. Decide il pezzo più debole.

## two metals that touch
check-galvanic-marine = massima distanza di potenziale tra i due in acqua di mare (limite vicino al mare)
check-galvanic-outdoors = massima distanza di potenziale tra i due in acqua di mare (limite all'aperto nell'entroterra)
check-galvanic-indoors = massima distanza di potenziale tra i due in acqua di mare (limite al chiuso)
pairing-good = { $metal } con { $other }: un solo metallo, non si fanno danno.
pairing-poor = { $metal } con { $other }: da non prevedere; si sopportano, ma l'ancoraggio vale quanto il più debole dei due.
pairing-never = { $metal } con { $other }: questi due non devono mai toccarsi.
pairing-untold = Dimmi tutti e due i metalli; fino ad allora non unirli.
pairing-goes = Dove restano bagnati, il pezzo che si consuma è quello in { $metal }.
pairing-small-anode = Un gambo piccolo in una placchetta grande di metallo più nobile si consuma più in fretta di tutto, e il pezzo che si consuma è dentro la roccia.
pairing-active = In una fessura salata può perdere la sua protezione: { $metal }. Allora tra i due ci sono fino a { $volts }.
pairing-place = Che si sopportino non rende nessuno dei due adatto al posto: dimmi dov'è la falesia.
pitting-line = Resistenza alla vaiolatura, { $metal }: numero { $pren }, posto { $place } su { $count } acciai inox. Non dice niente delle cricche.

## salt and damp on a warm bolt
humidity-cracks = Pericoloso per l'inox: a { $surface } l'aria sull'ancoraggio ha solo { $humidity } di umidità, e il sale marino che c'è sopra è una salamoia calda e concentrata.
humidity-caution = Attento: a { $surface } l'aria sull'ancoraggio ha { $humidity } di umidità.
humidity-low = Poco pericolo di cricche in quel momento: a { $surface } l'aria sull'ancoraggio ha { $humidity } di umidità.
humidity-none = Nessun pericolo di cricche da sale: a { $surface } l'aria sull'ancoraggio ha { $humidity } di umidità.
humidity-film-concentrated = È nella fascia pericolosa, da { $driest } a { $wettest }: il sale comune si asciuga sotto il 75 %, ma il sale di magnesio del mare resta liquido fino al 33 %, concentrato al massimo.
humidity-film-dilute = È sopra la fascia pericolosa, da { $driest } a { $wettest }: adesso la salamoia è diluita, e asciugandosi si concentra.
humidity-film-dry = È sotto la fascia pericolosa, da { $driest } a { $wettest }: adesso il sale è quasi asciutto, e passa per la fascia al mattino e alla sera.
humidity-dew = Ci si forma rugiada quando è più freddo di { $dew }.
humidity-changes = Ogni giorno passa per altri stati: una sola misura non assolve nessun ancoraggio. Il metallo lo decide il posto.

## coating-life
coating-place = Dimmi dov'è la falesia: senza il posto non posso calcolare nessuna durata.
coating-life = { $thickness } di zinco: conta su { $worst }, non di più; { $mean } al ritmo usuale.
coating-rate = Lì lo zinco perde circa { $rate } nel primo anno: classe { $category } (tra { $from } e { $to }; una stima così non è più precisa di −33 % / +50 %).
coating-hidden = Dove finisce lo zinco comincia a consumarsi l'acciaio, nascosto nel foro. Interstizi e acqua che cola lo fanno andare molte volte più in fretta.

## anchor
anchor-use = Usa { $kinds }.
anchor-limited = Qui nessun tipo è senza limiti; il migliore: { $kinds }, con i limiti qui sotto.
anchor-none = Nessun tipo di ancoraggio che conosco va bene per quanto hai detto. Sposta il punto, o chiedi a un chiodatore qualificato.
anchor-next = Dimmi una misura, e controllo se è profonda e robusta abbastanza.

## embedment
embedment-meets = { $diameter } × { $length } rispetta i minimi secondo questo calcolo; dimostralo con una prova a estrazione in questa roccia.
embedment-test-first = { $diameter } × { $length }: non è dimostrato che basti. Provalo in questa roccia prima che qualcuno se ne fidi.
embedment-too-short = { $diameter } × { $length } è troppo corto: la EN 959 chiede almeno { $minimum } installati.
embedment-too-weak = { $diameter } × { $length } è troppo debole per questa roccia secondo questo calcolo.
embedment-too-weak-assumed = { $diameter } × { $length } può essere troppo debole: nel caso peggiore che non hai escluso, lo è.
embedment-best-case = Se tutto quello che non hai detto fosse buono (roccia sana, foro asciutto, gambo zigrinato, nessun carico che resta): media { $mean }, valore al 5 % { $characteristic } a estrazione.
embedment-near-edge = { $diameter } × { $length }: troppo vicino a uno spigolo o a una fessura, o la distanza non si sa. Misurala, e se serve spostati.
embedment-refuse = { $diameter } × { $length }: non metterlo lì, e non così.
embedment-cannot = Senza roccia, tipo e misura dell'ancoraggio non do nessun numero.
embedment-cannot-next = Secondo la EN 959 un resinato sta almeno 70 mm (2¾ in) dentro, un meccanico almeno 5 volte il diametro del foro; nella roccia più tenera serve di più.
embedment-governs = A estrazione cede prima: { $mode }; media { $mean }, valore al 5 % { $characteristic }. A taglio: { $side }; media { $sideMean }, valore al 5 % { $sideCharacteristic }. (Valore al 5 %: 19 su 20 tengono di più.)
embedment-longer = Più lungo, { $size }: media { $mean }, valore al 5 % { $characteristic } ({ $mode }).
embedment-fatter = Più grosso, { $size }: media { $mean }, valore al 5 % { $characteristic } ({ $mode }).
embedment-depth = Calcolato con { $depth } dentro la roccia, contati dalla superficie.
embedment-rebound = Un indice di rimbalzo di { $rebound } indica una roccia da { $min } a { $max }; conto con l'estremo basso. (Le leggi pubblicate lo leggono da { $low } a { $high }.)
embedment-grade = Una roccia di grado { $grade } ha da { $min } a { $max }; conto con l'estremo basso.
embedment-strength-capped = Hai detto { $told }, ma una roccia così arriva al massimo a { $most }; conto con quello.
embedment-find-class = Graffia la roccia con un coltello, battila col martello e dimmi come risponde (grado da R0 a R6), o un indice di rimbalzo: così conto con la sua classe e non con il suo nome.
embedment-lasting = L'aderenza è contata al 60 %: il carico resta per giorni, o nessuno ha detto che non resta.
embedment-heat-warm = Al sole supera i 40 °C (104 °F): l'aderenza è contata al 65 %, e solo se la scheda tecnica ammette quel caldo.
embedment-heat-softens = Al caldo che hai detto una resina così può rammollire: l'aderenza è contata quasi zero.
embedment-oblique = Tirato a { $angle } dal suo asse: valore al 5 % { $characteristic }.
embedment-oblique-worst = Tirato in fuori e a taglio insieme, più debole a { $angle } dal suo asse: valore al 5 % { $characteristic }.
embedment-chance = Su 1000 ancoraggi così, a estrazione, terrebbero meno di { $least }: { $underLeast }; meno di { $seldom }, che in arrampicata si supera di rado (pratica comune, nessuna fonte): { $underSeldom }.
embedment-chance-use = Su 1000 ancoraggi così, a estrazione, terrebbero meno di { $least }: { $underLeast }; meno di { $action }, da mettere in conto per questo uso: { $underAction }; meno di { $seldom }, che in arrampicata si supera di rado (pratica comune, nessuna fonte): { $underSeldom }.
embedment-uiaa = Alcune edizioni della UIAA 123 chiedono { $aim } a estrazione (a memoria): punta a quello; circa { $underAim } su 1000 terrebbero meno.
embedment-upper-bound = Se la fascetta si sfila non si può calcolare, solo provare; i valori sono un limite superiore.

## embedment, no size told
sizing-meets = La misura usuale più piccola che basta, secondo questo calcolo: { $diameter } × { $length } ({ $anchor }); dimostralo con una prova a estrazione in questa roccia.
sizing-test-first = La misura usuale più piccola da tentare: { $diameter } × { $length } ({ $anchor }). Non è dimostrata: provala in questa roccia prima che qualcuno se ne fidi.
sizing-average = Per quanto hai detto, nessuna misura usuale basta di sicuro; la più robusta, { $diameter } × { $length } ({ $anchor }), basta solo in media. Provala in questa roccia prima che qualcuno se ne fidi.
sizing-not-so = Nessuna misura rimette a posto questo. La più piccola che sarebbe robusta abbastanza è { $diameter } × { $length } ({ $anchor }), ma non lì o non così.
sizing-none = Lì nessuna misura usuale è robusta abbastanza, secondo questo calcolo.
sizing-none-next = Cerca roccia più sana, prendi una resina migliore o un foro più asciutto, o chiedi a un chiodatore qualificato delle prove a estrazione in questa roccia.
sizing-best = Se tutto quello che non hai detto fosse buono (roccia sana, foro asciutto, gambo zigrinato, nessun carico che resta): { $diameter } × { $length } ({ $anchor }).
sizing-need = Serve: { $tension } a estrazione e { $shear } a taglio, tenuti da { $share } ancoraggi così su 100.
sizing-kind = { $anchor }: { $diameter } × { $length }, valore al 5 % { $characteristic } a estrazione.
sizing-kind-none = { $anchor }: nessuna misura usuale basta di sicuro.
sizing-check-next = Dimmi una misura, e controllo quella.

## adhesive
adhesive-use = Usa { $what }.
adhesive-limited = Qui nessun adesivo è senza limiti; può andare: { $what }, con i limiti qui sotto.
adhesive-none = Così com'è non si può usare nessun adesivo. Aspetta un foro più asciutto o una roccia più calda.
adhesive-cure-unknown = Dimmi la temperatura della roccia, e ti do il tempo di indurimento.

## amount
amount-size = Dimmi diametro e profondità, per esempio 12 × 100, e calcolo la quantità.
amount-verdict = Circa { $volume } a foro, { $total } in tutto per { $holes ->
    [one] un foro
   *[other] { $holes } fori
 }, scarto compreso.
amount-hole = { $volume } a foro (barra da { $diameter } in un foro da { $hole }, profondo { $depth }).
amount-total = { $anchors ->
    [one] 1 ancoraggio
   *[other] { $anchors } ancoraggi
 }, { $holes ->
    [one] 1 foro
   *[other] { $holes } fori
 }: { $total } con { $waste } % di scarto, almeno { $cartridges ->
    [one] 1 cartuccia
   *[other] { $cartridges } cartucce
 } da { $size } ml.
amount-legs = Ho contato un foro per ognuna delle due gambe. Se le due gambe stanno in un solo foro, segui la quantità del produttore.
amount-too-tight = Un gioco di { $each } per lato è così stretto che restano vuoti. Prendi il diametro del foro indicato dal produttore.
amount-too-wide = Un gioco di { $each } per lato è più largo di quanto qualsiasi adesivo riempia qui. Prendi il diametro del foro indicato dal produttore.
amount-too-wide-for-most = Gioco di { $each } per lato: secondo i valori usuali lo riempie solo { $who }. Prendi il diametro del foro indicato dal produttore.
amount-nozzle = Di ogni cartuccia { $lost } sono contati come buttati finché il colore è uniforme; un ugello nuovo dopo una pausa ne costa circa altrettanti.
amount-gap-next = Un gioco stretto o largo non si rimedia con più resina: trova il diametro del foro indicato dal produttore, e lascia perdere questo foro.
amount-check = Se un foro ne prende molta di più, c'è un vuoto: fermati, e non fidartene.

## cure
cure-sheet = La scheda tecnica della tua cartuccia viene prima; questi sono tempi usuali per il tipo, a memoria.
cure-rock-temperature = Conta la temperatura della roccia, non dell'aria, e l'ora più fredda fino a indurimento finito.
cure-your-adhesive = La tua resina
cure-by-sheet = Calcolato con i valori della scheda tecnica come me li hai detti. Controllali sulla cartuccia, e che valgano per un foro bagnato come il tuo.
cure-sheet-short = Il tempo che hai letto sulla scheda è molto più corto del solito per questo tipo: rileggilo, ore e non minuti, tempo al carico e non tempo di lavorazione.
cure-below-sheet = { $what }: la riga più fredda che hai detto è per { $lowest }, e la roccia è più fredda. Leggi sulla scheda la riga per quel freddo; se non c'è, non si deve usare.
cure-above-sheet = { $what }: la riga più calda che hai detto è per { $highest }, e la roccia è molto più calda. Leggi sulla scheda la riga per quel caldo.
cure-spell = { $hours } a { $temperature }, dove ne servono { $needed }: { $share } % dell'indurimento.
cure-spell-cold = { $hours } a { $temperature } non contano niente: più freddo di quanto si sa che questa resina indurisca.
cure-spells-probably = Di solito ormai è indurita: i periodi che hai detto fanno { $share } % del tempo di indurimento ({ $what }). Decide la scheda tecnica.
cure-spells-not-yet = Non caricarlo ancora: i periodi che hai detto fanno { $share } % del tempo di indurimento ({ $what }).
cure-spells-rest = Servono ancora circa { $hours } a { $temperature }.
cure-spells-warmer = Con il freddo di adesso aspettare non serve: ci vuole roccia più calda.
cure-spells-which = Che resina è? Finché non lo sai, non caricarlo.
cure-spells-line = { $what }: { $share } % del suo tempo usuale di indurimento.
cure-working = Lavora entro { $working } dalla miscela; poi nessuno lo tocca.
cure-wet = Raddoppiato, perché il foro è bagnato o non si sa quanto è umido.
cure-line = { $what } a { $temperature }: { $working } per lavorare, { $hours } prima del carico.
cure-line-wet = { $what } a { $temperature }: { $working } per lavorare, { $hours } prima del carico (raddoppiato per foro bagnato).
cure-too-cold = { $what }: troppo freddo. Sotto { $lowest } può non indurire mai, per quanto aspetti.
cure-too-hot = { $what }: troppo caldo. Sopra { $highest } fa presa prima che il fittone sia dentro.
cure-temperature = Dimmi la temperatura della roccia: senza, non c'è tempo di indurimento.
cure-any = Tempi usuali a { $temperature }, per tipo:
cure-wait = { $what } a { $temperature }: lascialo stare { $hours } prima di qualsiasi carico.
cure-probably = { $what } a { $temperature }: di solito indurisce in { $hours }, e ne sono passate { $since }. Decide la scheda tecnica.
cure-not-yet = Non caricarlo ancora: { $what } a { $temperature }, servono { $hours }, e ne sono passate solo { $since }.

## hole
hole-verdict = Fora e pulisci in quest'ordine; un foro polveroso è l'errore più comune.
hole-size = Foro da { $hole }, profondo { $depth }, se il produttore non dice altro.

## inspect
inspect-trust = { $signs }: niente di quanto hai detto parla contro. Non è una prova che sia sano.
inspect-limit = { $signs }: usalo solo con un backup, finché non l'ha guardato qualcuno che se ne intende.
inspect-do-not-use = { $signs }: non usarlo finché non l'ha guardato qualcuno che se ne intende.
inspect-replace-now = { $signs }: non usarlo più. Chiudilo e sostituiscilo.
inspect-trust-next = Batti col martello la roccia e l'ancoraggio, guarda resina e placchetta, e annota cosa hai visto.
inspect-limit-next = Metti un backup, avvisa il club, e fallo provare o sostituire.
inspect-do-not-use-next = Segnalalo perché nessuno lo moschettoni, e avvisa il club.
inspect-replace-now-next = Segnalalo, togli la placchetta se puoi, avvisa il club, e guarda quelli vicini dello stesso tipo e della stessa età.
inspect-interval-months-6 = Controlla ancoraggi come questo ogni 6 mesi.
inspect-interval-months-12 = Controlla ancoraggi come questo ogni anno.
inspect-interval-years-2 = Controlla ancoraggi come questo ogni 2 anni.
inspect-interval-years-3 = Controlla ancoraggi come questo ogni 3 anni.
inspect-hidden = Quello che non si vede: cricche nel metallo, ruggine nel foro, resina mai indurita.

## spacing
spacing-rule = Stai a 1,5 volte la profondità, e almeno 150 mm (6 in), da ogni spigolo e fessura; ancoraggi a 3 volte la profondità, e almeno 200 mm (8 in), l'uno dall'altro.
spacing-verdict = Per { $depth } di profondità: almeno { $edge } da ogni spigolo e fessura, e { $spacing } tra gli ancoraggi.
spacing-too-near = Troppo vicino. Per { $depth } di profondità tieni { $edge } da ogni spigolo e fessura, e { $spacing } tra gli ancoraggi.
spacing-old-holes = I fori vecchi contano come fessure: stai a due volte la loro profondità, o riempili e tieni 5 diametri del foro.
spacing-hollow = Batti col martello tutto il cerchio intorno; se suona vuoto in un punto qualsiasi, cerca un altro posto.

## load
load-cannot = Dimmi cosa si fa con l'ancoraggio, e calcolo il carico: quanto dura è la caduta, l'angolo tra due rami, campata e freccia di una linea, o chi ci sta appeso.
load-tell-more = Per esempio: "caduta di fattore 0,5, 80 kg", "due fittoni a 60 gradi, 2 kN", "calata di 90 kg", "linea di 30 m, freccia 1,5 m, 80 kg". Pendoli, strattoni e linee tese fanno varie volte il peso.
load-took-person = Non hai detto il peso: ho preso { $mass }, una persona pesante col materiale.
load-took-rescue = Non hai detto il peso: ho preso { $mass }, due persone col materiale.
load-share = Cioè { $out } % dei 15 kN a estrazione e { $along } % dei 25 kN a taglio della EN 959: prove di tipo in buon calcestruzzo, non quello che tiene la tua roccia.
load-share-out = Cioè { $out } % dei 15 kN a estrazione della EN 959: una prova di tipo in buon calcestruzzo, non quello che tiene la tua roccia.
load-share-along = Cioè { $along } % dei 25 kN a taglio della EN 959: una prova di tipo in buon calcestruzzo, non quello che tiene la tua roccia.
load-above-rare = È più di { $rare }, che la pratica comune prevede come raro carico massimo: arrampica o attrezza in modo che non ci si possa arrivare.
load-design-met = Il valore al 5 % delle tue prove diviso { $strength }, contro { $load } volte il carico: rispettato. Solo per ancoraggi come quelli provati, in quella roccia.
load-design-short = Il valore al 5 % delle tue prove diviso { $strength } è meno di { $load } volte il carico: non basta.
check-load-rare = raro carico massimo previsto dalla pratica comune
check-load-design = valore al 5 % delle tue prove, con tutti e due i fattori
check-line-most = tensione massima consigliata dagli slackliner, movimento compreso
load-plan = La pratica comune prevede per un ancoraggio così { $usual } in uso e { $rare } come raro carico massimo, ogni fittone da solo.
load-haul = Recuperare in salita su un moschettone tira più che calare: { $haul }.

load-fall-bolt = Caduta di fattore { $factor }, { $mass }: metti in conto fino a { $bolt } sul fittone più alto, { $climber } su chi cade.
load-fall-belay = Caduta di fattore { $factor }, { $mass }: metti in conto fino a { $climber } direttamente sulla sosta, { $bolt } se la corda passa in un suo moschettone.
load-fall-common = Con una corda comune ({ $label } sull'etichetta), col semplice calcolo da manuale: { $bolt } sul fittone, { $climber } su chi cade.
load-fall-common-belay = Con una corda comune ({ $label } sull'etichetta), col semplice calcolo da manuale: { $climber } direttamente sulla sosta, { $bolt } se è rinviata.
load-rope-limit = Non hai detto la corda: ho preso la più rigida ammessa dalla EN 892, 12 kN nella sua prova di caduta. Dammi la forza di arresto sull'etichetta della tua corda, e uso quella.
load-rope-label = Leggo l'etichetta come quella di una corda singola, provata con 80 kg; una mezza corda è provata con 55 kg ed è più rigida di quanto sembri dall'etichetta. Anche le corde bagnate, ghiacciate o vecchie sono più rigide.
load-rope-told = Calcolato col modulo della corda che hai detto; corde bagnate, ghiacciate o vecchie sono più rigide.
load-fall-drag = Il fittone prende tutti e due i rami di corda, 1,66 volte lo strappo su chi cade. L'attrito lì impedisce a una parte di corda di allungarsi, quindi la caduta si comporta come fattore { $effective } invece di { $factor }.
load-fall-strands = Un fittone dove la corda è rinviata prende tutti e due i rami di corda, 1,66 volte lo strappo su chi cade.
load-fall-legs = Su due fittoni con { $angle }° tra i rami: { $each } su ognuno, e ognuno deve poter reggere tutto.
load-fall-measured = Cadute misurate in palestra, per confronto: { $mean } sul fittone in media, { $most } al massimo. Corpi e assicuratori cedono, quindi la maggior parte delle cadute resta sotto questo calcolo; non contarci mai.
load-fall-carabiner = Un moschettone tiene { $closed } a leva chiusa e solo { $open } a leva aperta (EN 12275, tipo base).
load-fall-rope-out = Dimmi quanta corda c'è fuori: la sua lunghezza e l'altezza della caduta dicono quanto è dura.
load-fall-factor = Fattore di caduta: altezza della caduta diviso corda fuori, da 0 a 2. Lo stesso fattore tira uguale su corda corta e su corda lunga.
load-sling = Non salire mai sopra la sosta con una longe o fettuccia statica: una caduta di fattore 1 lì sopra fa { $force }; fettucce e ancoraggi si rompono.
load-absorber = Nessun numero: una caduta così va oltre quello che corda, ancoraggio o corpo sopportano senza un dissipatore.
load-absorber-why = Un fattore di caduta sopra 2 capita in ferrata, dove la longe è corta e la caduta è lunga.
load-absorber-next = Usa un set da ferrata con dissipatore adatto al tuo peso. Ancoraggi e cavo li dimensiona chi attrezza il percorso.

load-legs = { $load } su due fittoni con { $angle }° tra i rami: { $each } su ognuno, { $share } % del carico, finché si dividono il carico in parti uguali.
load-legs-too-wide = Troppo largo: { $load } con { $angle }° tra i rami mette { $each } su ogni fittone, { $share } % del carico. Mai sopra 90°; la buona pratica è 60° o meno.
load-legs-unequal = { $load } su rami a { $a }° e { $b }° dalla verticale: { $first }, { $firstShare } %, sul primo e { $second }, { $secondShare } %, sul secondo.
load-legs-unequal-wide = Troppo largo: { $load } su rami a { $a }° e { $b }° dalla verticale mette { $first }, { $firstShare } %, sul primo e { $second }, { $secondShare } %, sul secondo. Mai sopra 90° tra i due.
load-legs-sum = I due rami fanno { $sum }° tra loro, non { $told }°; due rami uguali a { $told }° prenderebbero { $each } ciascuno.
load-legs-narrow = La buona pratica è 60° o meno: allunga i rami.
load-legs-each = Prevedi ogni fittone per tutto il carico da solo, { $load } più quello che si muove e cade: la trazione cambia direzione, nessuna fettuccia divide in parti uguali, e un fittone può cedere.
load-legs-failure = Se un ramo cede e scorrono { $slack } di lasco in una fettuccia statica di { $length }, sull'altro arrivano { $shock }: legala in modo che non possa scorrere niente.
load-legs-triangle = Mai infilare un solo anello in tutti e due i fittoni (il triangolo): sarebbero { $triangle } su ognuno.
load-legs-lowering = Mentre qualcuno viene calato lì su un moschettone, tutto questo è 1,66 volte tanto: fino a { $most } su un fittone.

load-line = { $load } al centro di { $span } con { $sag } di freccia: la linea tira { $tension } a ogni estremo finché nessuno si muove. Decide un rigger qualificato.
load-line-tension = Una linea a { $tension } tira così a ogni estremo finché nessuno si muove. Decide un rigger qualificato.
load-line-cannot = Senza campata e freccia, o la tensione, non posso calcolare quanto tira una linea.
load-line-rule = Regola a spanne: una freccia di un decimo della campata tira 2,5 volte il peso che c'è sopra, un ventesimo 5 volte, un cinquantesimo 12,5 volte.
load-line-rigger = Highline, ponti di corda e linee di soccorso: spiego le forze e non do il via libera a niente. Un rigger qualificato progetta, controlla e prova.
load-line-bounce = Rimbalzare o cadere sulla longe ha fatto da 1,7 a 1,9 volte la trazione del camminare, in misure pubblicate: qui fino a { $moving }.
load-line-anchor = I rigger vogliono che ogni punto di ancoraggio tenga almeno 3 volte la tensione della linea, qui { $anchor }, con ogni ramo capace di reggere tutto (pratica comune).
load-line-half = Metà freccia, { $sag }, tirerebbe { $tension }.
load-line-own = Il peso proprio della linea aggiunge { $added }.
load-line-both = Campata e freccia da sole danno { $tension }; la tensione che hai detto è più alta, quindi ho preso quella.
load-line-pretension = Ho preso la tensione come quella della linea carica. Se è quella che metti prima che qualcuno ci salga, la linea carica tira di più.
load-line-slacken = Gli slackliner consigliano di tenere la linea sotto { $most }, movimento compreso: dalle più freccia.
load-line-ends = Due fittoni a un estremo con { $angle }° tra i rami: su ognuno { $each } di quello.
load-line-measured = Misurato, per confronto, con 57 kg su 41 m di fettuccia di poliestere: 3,1 kN camminando, 4,4 rimbalzando, 5,3 in una caduta sulla longe.

load-lower = Calare { $mass } mette { $lower } sull'ancoraggio in alto; trattenuti da una corda senza lasco, { $sudden }.
load-top-rope = Moulinette con { $mass }: { $lower } sull'ancoraggio in alto durante la calata, { $sudden } quando la corda trattiene senza lasco.
load-lower-friction = L'ancoraggio prende tutti e due i rami di corda: il peso di chi arrampica e quello che tiene l'assicuratore, 1,66 volte il peso su un moschettone, il doppio su una carrucola.
load-top-rope-slack = Con lasco di un decimo della corda, sulla corda più rigida ammessa dalla EN 892: { $slack }. Misurato e riferito in moulinette: da 1,5 a 3 kN (pratica comune).
load-abseil = Corda doppia con { $mass }: { $hang } appeso fermo, { $jerky } se si scende a strappi.
load-abseil-jerk = Una doppia fluida resta tra 1 e 1,5 kN a persona; fermate e strappi fanno da 2 a 2,5 (pratica comune). Scendi fluido.
load-rescue = Carico di soccorso di { $mass }: { $hang } fermo, { $lower } calato su un moschettone, { $haul } recuperato su un moschettone. Decide un rigger qualificato.
load-rescue-rigger = Spiego i carichi di soccorso e non do il via libera a niente: lo pianifica un rigger qualificato o la squadra di soccorso, su due ancoraggi capaci ognuno di reggere tutto.
load-rescue-shock = Uno scivolone o uno strattone con due persone fa da { $least } a { $most } (pratica comune).
load-belay = Una sosta con { $mass } appesi regge { $hang }; una caduta di fattore 2 direttamente sulla sosta tira fino a { $fall }.
load-lead = Caduta da primo con { $mass }: prevedi il fittone più alto per { $rare }, il raro carico massimo; le cadute dure fanno da 4 a 8 kN (pratica comune).
load-lead-factors = Stime per eccesso sul fittone, con la corda più rigida ammessa dalla EN 892 e niente che cede: { $easy } a fattore di caduta 0,1, { $usual } a 0,3, { $hard } a 0,5.
load-hang = { $mass } appesi fermi sono { $hang }; lasciati andare su una corda senza lasco, { $sudden }.
load-lower-of = In calata su un moschettone: { $lower } sull'ancoraggio.

load-strength-cannot = Quanto tiene un fittone non lo posso dire senza roccia, tipo, spessore e lunghezza.
load-strength-open = Se un ancoraggio tiene { $load } non lo posso dire senza roccia, tipo, spessore e lunghezza.
load-strength-minimums = Secondo la EN 959 un ancoraggio da roccia tiene 15 kN a estrazione e 25 kN a taglio nella sua prova di tipo, in buon calcestruzzo. Non è un carico di lavoro, e la roccia tenera tiene meno.
load-strength-tell = Dimmi, per esempio, "resinato 12 x 100 in granito con epossidica"; e fai una prova a estrazione in quella roccia.
load-strength-signs = Quello che è arrugginito, criccato, piegato o lasco non ha una resistenza che si possa calcolare. Non caricarlo; chiedimi come controllarlo.

## results of pull tests
results-meets = { $count } estrazioni: media { $mean }, valore al 5 % { $characteristic }. È sopra i { $need } che la EN 959 chiede in una prova di tipo, ma non è un carico a cui appendersi.
results-upper = { $count } estrazioni: media { $mean }, valore al 5 % { $characteristic }, ma solo come limite superiore, perché i piedi del telaio stavano vicino all'ancoraggio.
results-upper-open = { $count } estrazioni: media { $mean }, valore al 5 % { $characteristic }; un limite superiore finché nessuno dice che i piedi del telaio stavano lontani dall'ancoraggio.
results-unproved = { $count } estrazioni: media { $mean }, valore al 5 % solo { $characteristic }. Non dimostrato: è sotto i { $need } che la EN 959 chiede in una prova di tipo.
results-weak = Troppo debole: { $count } estrazioni tengono { $mean } in media, valore al 5 % { $characteristic }, e la EN 959 chiede { $need } in una prova di tipo.
results-scattered = Non fidarti di queste { $count } estrazioni: dispersione { $scatter } %, media { $mean }, valore al 5 % { $characteristic }. Prima scopri cosa c'era di diverso tra l'una e l'altra.
results-too-few = { $count ->
    [0] Dimmi a quali carichi hanno ceduto: almeno 3.
    [one] Una estrazione non dice niente del prossimo ancoraggio: fanne altre { $missing }, dello stesso tipo nella stessa roccia.
   *[other] { $count } estrazioni non dicono niente del prossimo ancoraggio: fanne ancora { $missing }, dello stesso tipo nella stessa roccia.
 }
results-lowest = Sai solo quanto hanno tenuto gli ancoraggi di quel giorno: { $value } il più basso.
results-how-many = 3 è il minimo, 5 è usuale, 10 danno un valore al 5 % utile.
results-equal = Tutti i { $count } risultati sono uguali: le letture sono arrotondate o copiate, quindi non se ne ricava nessuna resistenza.
results-equal-next = Rileggi i picchi, al decimo di kilonewton, o fai un'altra estrazione.
results-mean = Deviazione standard { $deviation }, dispersione { $scatter } %; il più basso ha tenuto { $min }.
results-lognormal-few = Valore al 5 % { $value } con confidenza del 90 %: 19 su 20 tengono di più. Con la curva lognormale, perché le estrazioni sono poche ({ $count }){ $other }.
results-lognormal-scatter = Valore al 5 % { $value } con confidenza del 90 %: 19 su 20 tengono di più. Con la curva lognormale, perché la dispersione supera il 15 %{ $other }.
results-normal = Valore al 5 % { $value } con confidenza del 90 % da { $count } estrazioni: 19 su 20 tengono di più. Con la curva normale{ $other }.
results-other = ; l'altra curva dà { $value }
results-other-nonsense = ; la curva normale andrebbe sotto zero
results-cut = Per dispersione sopra il 20 % (qui { $scatter } %) le valutazioni tecniche fanno contare solo { $factor } del valore al 5 %: { $value }.
results-outlier-low = { $value } è molto sotto gli altri. Chiediti cosa è successo lì: miscela sbagliata, vuoto, fessura, telaio scivolato? Resta nel conto: la prova si fa proprio per ancoraggi così.
results-outlier-high = { $value } è molto sopra gli altri: controlla quella lettura. Resta nel conto finché non si trova un errore.
results-more = Con la stessa media e dispersione, { $count } estrazioni in tutto lo dimostrerebbero.
results-more-useless = Con la stessa media e dispersione nemmeno { $count } estrazioni lo dimostrerebbero: servono ancoraggi più lunghi o più grossi.
results-bond = Aderenza della resina su { $legs ->
    [one] una gamba
   *[other] { $legs } gambe
 } da { $diameter } × { $depth }: media { $mean }, valore al 5 % { $low }.
results-bond-least = Aderenza, se teneva la resina su { $legs ->
    [one] una gamba
   *[other] { $legs } gambe
 } da { $diameter } × { $depth }: almeno { $mean } in media, valore al 5 % { $low }; di più dove ha ceduto altro.
results-bond-update = La tabella dice { $table } per { $adhesive }; contando anche le tue estrazioni, il valore centrale è { $median }, il valore al 5 % per il prossimo ancoraggio { $low }.
results-direction = Le ho prese come estrazioni dritte in fuori. Se hai tirato a taglio, confronta invece con { $need }.
results-missing = Hai detto { $told } ancoraggi ma { $count } risultati. Contano anche gli altri: perché non ci sono?
results-frame = Se i piedi del telaio stavano a meno di due volte la profondità, tenevano giù la roccia: quello che si è rotto dice meno della roccia che di resina e metallo.
results-mixed = Cedimenti diversi sono serie di numeri diverse: giudica separatamente roccia, resina e metallo.
results-steel = Si è rotto prima il metallo: roccia e resina tengono almeno questo, e quanto di più non si sa.
results-few = { $count } risultati sono pochi: ognuno in più sposta il valore al 5 %.
results-not-said = Vale per questa roccia, questo tipo, questo chiodatore e questo tempo. Di fori bagnati, carichi che durano, corrosione e della prossima falesia non dice niente.
results-all-above = Tutte le { $count } estrazioni hanno tenuto almeno { $least }, e { $failed ->
    [0] nessuno ha ceduto
    [one] solo uno ha ceduto
   *[other] solo { $failed } hanno ceduto
 }: troppo pochi per un valore al 5 %.
results-no-fractile = Un valore al 5 % richiede almeno { $needed } estrazioni fino a rottura con risultati diversi.
results-share = Con confidenza del 95 %, fino a { $share } % di ancoraggi così può ancora tenere meno di { $least }.
results-censored = { $count } estrazioni, { $failed } fino a rottura e { $stopped } fermate prima: valore centrale { $median }, valore al 5 % { $characteristic }. { $ends }
results-censored-meets = Sopra i { $need } che la EN 959 chiede in una prova di tipo, ma non è un carico a cui appendersi.
results-censored-upper = Un limite superiore, a meno che i piedi del telaio stessero lontani dall'ancoraggio.
results-censored-unproved = Non dimostrato: sotto i { $need } che la EN 959 chiede in una prova di tipo.
results-censored-weak = Troppo debole: la EN 959 chiede { $need } in una prova di tipo.
results-censored-scattered = Sono troppo dispersi per fidarsene: scopri cosa c'era di diverso.
results-stopped = Un'estrazione fermata conta come "almeno tanto". Il valore al 5 % è abbassato di quanto meritano { $failed } rotture vere.
results-censored-point = Senza quella penalità la curva ha il suo punto al 5 % a { $value }; la sua dispersione è { $scatter } %.
check-pulls-out = a estrazione, rispetto al minimo della prova di tipo EN 959
check-pulls-sideways = a taglio, rispetto al minimo della prova di tipo EN 959

## proof tests
proof-load = { $load }
proof-load-untold = quel carico
proof-held = { $count ->
    [one] Un ancoraggio ha tenuto
   *[other] { $count } ancoraggi hanno tenuto
 } { $load }: nessun difetto grossolano in { $count ->
    [one] quello
   *[other] quelli
 }, ma degli altri fino a { $share } % può ancora essere cattivo.
proof-proves = Dimostra { $load }, quel giorno, in quella direzione, per quegli ancoraggi. Può perfino averne rovinato uno.
proof-needed = Per essere sicuri al 95 % che al massimo uno su venti sia cattivo, dovrebbero tenere in { $needed }.
proof-little = Non dimostra niente sulla resistenza sopra quel carico, sui carichi che durano o sulle cricche da corrosione.
proof-failure-instead = Quanto sono robusti gli ancoraggi lo dicono almeno 3, meglio da 5 a 10, tirati fino a rottura.
proof-count = Dimmi quanti ancoraggi hanno tenuto: senza il numero non dimostra niente.
proof-one-gave-way = Fermati: un ancoraggio non ha superato la prova di carico, e questo mette in dubbio tutti gli altri.
proof-several-gave-way = Fermati: diversi ancoraggi hanno ceduto. Chiudi la via e provali tutti, o sostituiscili.
proof-failed-out = Quello che si è mosso o ha ceduto è fuori: segnalalo, toglilo, conserva il pezzo.
proof-double = Trova la causa, poi prova almeno il 5 % di tutti gli ancoraggi lì, e almeno 6.
proof-all = Prova tutti gli ancoraggi di quel tipo lì, e ripensa roccia, ancoraggio e resina.
proof-why = Cerca la causa: polvere, miscela sbagliata, freddo, vuoto, roccia tenera o fessurata, foro sbagliato.

## comparing two groups
compare-groups = Dimmi i carichi dei due gruppi, per esempio: lisci 33 35 37, zigrinati 36 44 51.
compare-too-few = Ogni gruppo ha bisogno di almeno 3 risultati prima di poterli confrontare.
compare-example = Da 5 a 10 risultati per gruppo dicono di più.
compare-no-scatter = Nessuno dei due gruppi ha dispersione: le letture sono arrotondate o copiate, quindi non c'è niente da confrontare.
compare-first = Il primo gruppo è più robusto: il solo caso darebbe una differenza così in { $chance } % dei casi.
compare-second = Il secondo gruppo è più robusto: il solo caso darebbe una differenza così in { $chance } % dei casi.
compare-none = Non si vede una differenza; non vuol dire che siano uguali (il solo caso: { $chance } % dei casi).
compare-group-first = Primo gruppo: { $count } estrazioni, media { $mean }, dispersione { $scatter } %, il più basso { $min }.
compare-group-second = Secondo gruppo: { $count } estrazioni, media { $mean }, dispersione { $scatter } %, il più basso { $min }.
compare-interval = Primo meno secondo: { $difference }; con confidenza del 95 % tra { $low } e { $high }.
compare-interval-ratio = Primo diviso secondo: { $ratio } volte; con confidenza del 95 % tra { $low } e { $high } volte.
compare-logs = Confrontati con i logaritmi, perché un gruppo ha una dispersione sopra il 20 % (test di Welch).
compare-plain = Col test di Welch, che ammette dispersioni diverse nei due.
compare-needed = Per vedere una differenza del 20 % con questa dispersione, ogni gruppo richiede circa { $needed } estrazioni.
compare-hopeless = Con questa dispersione nemmeno { $most } estrazioni per gruppo farebbero vedere una differenza del 20 %.
compare-same-failure = Si possono confrontare solo estrazioni che hanno ceduto allo stesso modo.
compare-lowest = Per una vita conta l'ancoraggio più debole, non la media: chiedi anche il valore al 5 % di ogni gruppo.

## planning a pull test
plan-failure-first = Prima tira fino a rottura almeno { $fewest } ancoraggi sacrificali, poi prova quelli che restano con { $load }.
plan-failure = Tira fino a rottura almeno { $fewest } ancoraggi a perdere, in questa roccia e di questo tipo.
plan-proof = Prova gli ancoraggi che restano con { $load } a estrazione, non di più: trova solo difetti grossolani.
plan-failure-count = Fino a rottura: { $fewest } è il minimo per ogni roccia e tipo, { $good } danno un valore al 5 % utile; in roccia dove non si arrampicherà.
plan-failure-rate = Carica in modo continuo, così che il picco arrivi dopo { $shortest } - { $longest } minuti, e vai da 2 a 5 mm oltre.
plan-failure-keep = Scrivi ogni picco e cosa ha ceduto. I più deboli sono il risultato.
plan-which-all = Prova di carico: ogni ancoraggio.
plan-which-tenth = Prova di carico: uno su dieci, e almeno { $fewest } per ogni tratto di roccia.
plan-which-all-of = Prova di carico: ogni ancoraggio, { $tested } in tutto.
plan-which-tenth-of = Prova di carico: uno su dieci, e almeno { $fewest } per ogni tratto di roccia: { $tested } su { $count }.
plan-proof-load = Carico di prova { $load } (usuale fino a { $most }) dritto in fuori; tienilo da { $shortest } a { $longest } secondi.
plan-proof-too-high = { $wanted } è troppo per un ancoraggio che resta: un carico di prova può rovinare quello che prova, e certi occhielli si piegano già da 6 a 10 kN.
plan-proof-above-half = La metà del valore al 5 % che calcolo è solo { $cap }. Prima tira fino a rottura degli ancoraggi sacrificali: un carico di prova sopra la metà del vero valore al 5 % può rompere ancoraggi buoni.
plan-accept = Superata se il carico non cala di più del 5 %, niente scivola, un resinato non si muove più di 0,5 mm (gli altri tipi 1 mm), e non si vedono fessure né un anello di polvere.
plan-frame = Piedi del telaio ad almeno due volte la profondità su ogni lato, o la roccia non può staccarsi e il risultato è troppo bello.
plan-frame-depth = Piedi del telaio ad almeno { $side } su ogni lato (un anello largo { $ring } all'interno), o la roccia non può staccarsi e il risultato è troppo bello.
plan-energy = A { $force } un telaio che si muove di 5 mm contiene { $energy }: un pezzo da 1 kg vola via a { $speed }. Dieci metri di fettuccia di nylon in linea ne conterrebbero circa { $times } volte tanto: solo catena e barre.
plan-stand = Nessuno in linea con la trazione; 3 m di lato, pompa con tubo lungo; zona sotto chiusa; chi prova sta su un ancoraggio suo.
plan-write = Annota roccia, umidità, misura, resina e la sua età, temperatura, piedi del telaio, carico di picco, cosa ha ceduto; fai una foto.
plan-then = Poi dimmi tutti i carichi, e calcolo media e valore al 5 %.
check-proof = metà del valore al 5 % calcolato, rispetto al carico di prova

## life of a metal
life-place = Dimmi dov'è la falesia: senza il posto non si può prevedere nessuna durata.
life-suitable = Prevedi { $range } per { $what } lì: un intervallo per pianificare, mai una garanzia.
life-limited = Prevedi non più di { $low } anni per { $what } lì, e controllalo: { $why }
life-none = Lì non prevedere nessuna durata per { $what }: { $why }
life-was = Dove è stato messo lo stesso è durato { $range }, e alcuni si sono rotti senza un segno.
life-range = da { $low } a { $high } anni
life-range-one = { $low } anni
life-because = Cosa determina l'intervallo lì: { $why }.
life-because-cracks = A determinare l'intervallo lì è il rischio che si cricchi: { $why }.
life-practice = L'intervallo è pratica comune, non una legge di natura: finisce con la prima macchia, cricca o parte lasca.
life-hidden = Interstizi, acqua che cola e saldature invecchiano più in fretta del metallo libero, e la parte nel foro non si vede.
life-rock = Oltre, roccia, resina e usura mettono fine all'ancoraggio prima del metallo.
life-bar = Di acciaio nudo, spesso { $diameter }, resterebbe { $left } % della sezione dopo { $years } anni se arrugginisse in modo uniforme. Non lo fa: i crateri vanno da 2 a 5 volte più a fondo, quindi questo è il caso migliore.
life-bar-gone = Una barra di acciaio nudo può essere tutta mangiata dalla ruggine entro { $years } anni.
coating-usual = Nessuno ha detto lo spessore: ho preso { $thickness }, il più sottile usuale.

## cost
cost-one = { $name }: { $yearly } l'anno per ogni ancoraggio su { $horizon } anni, con { $holes ->
    [one] un foro
   *[other] { $holes } fori
 }.
cost-cheapest = Tra quello che è sicuro lì, il più economico: { $name }. Costa { $yearly } l'anno per ogni ancoraggio su { $horizon } anni, contro { $otherYearly } per { $other }.
cost-cheapest-if-safe = Se nel tuo posto sono tutti sicuri, il più economico: { $name }. Costa { $yearly } l'anno per ogni ancoraggio su { $horizon } anni, contro { $otherYearly } per { $other }.
cost-place = Prima la sicurezza: dimmi dov'è la falesia, e confronto quello che è sicuro lì. Fino ad allora niente classifica.
cost-none-safe = Nessuno di questi è sicuro lì, quindi non c'è niente da confrontare: chiedi quale metallo usare.
cost-price = Dimmi quanto costano i pezzi di un ancoraggio per { $name }, in qualsiasi valuta.
cost-life = Dimmi quanti anni dura ({ $name }), o dov'è la falesia.
cost-this = Costa { $yearly } l'anno per ogni ancoraggio su { $horizon } anni, con { $holes ->
    [one] un foro
   *[other] { $holes } fori
 }.
cost-anchor = questo ancoraggio
cost-nth = opzione { $number }
cost-option = Ogni anno { $yearly } per { $name } ({ $total } in soldi di oggi), { $holes ->
    [one] un foro
   *[other] { $holes } fori
 } in { $horizon } anni; pezzi { $parts }, lavoro { $labour }, dura { $life }.
cost-planned = La durata è prevista dal posto per { $name } ({ $range }, pratica comune, nessuna garanzia); conto con l'estremo corto.
cost-no-price = Lasciato fuori: { $name }. Nessuno ha detto il prezzo.
cost-no-life = Lasciato fuori: { $name }. Nessuno ha detto la durata, e per lì non ne ho una.
cost-all = Per { $count } ancoraggi, { $name }: { $total } in soldi di oggi.
cost-break-price = Con i pezzi a { $price } o meno, { $name } non costerebbe più di { $other }.
cost-break-price-never = Anche con i pezzi gratis, { $name } costerebbe più di { $other }.
cost-break-life = Con una durata di { $life } o più, { $name } non costerebbe più di { $other }.
cost-break-life-never = Per quanto duri, { $name } costa più di { $other }.
cost-robust = La classifica regge anche se il più economico dura un quarto in meno e gli altri un quarto in più.
cost-not-robust = La classifica si ribalta se il più economico dura un quarto in meno e gli altri un quarto in più: non farci affidamento.
cost-rates = In soldi di oggi: { $none } allo 0 %, { $three } al 3 %, { $five } al 5 %.
cost-rates-same = Sia allo 0, sia al 3, sia al 5 % il più economico: { $first }.
cost-rates-turn = Dipende dal tasso d'interesse; il più economico: allo 0 % { $none }, al 3 % { $three }, al 5 % { $five }.
cost-terms = Calcolato su { $horizon } anni, tasso { $rate } % l'anno sopra l'inflazione; dimmi altro e ricalcolo.
cost-no-labour = Il lavoro non è contato, perché nessuno ha detto quanto vale; questo favorisce quello che va sostituito spesso.
cost-holes = Ogni sostituzione è un foro nuovo nella roccia, a meno che il vecchio si possa riusare.

## cautions, permission, emergency
cautions-verdict = Prima di forare:
permission-verdict = Chiedi prima di forare: non posso dire se lì gli ancoraggi sono permessi.
permission-owner = Decide il proprietario o chi gestisce la falesia, e le regole di chiodatura della zona.
permission-nature = Aree protette, periodi di nidificazione e siti storici hanno regole proprie.
permission-club = Il responsabile accessi del tuo club, o la federazione regionale, sa a chi chiedere.
emergency-verdict = Chiedi aiuto adesso: chiama il soccorso, e che nessuno carichi quell'ancoraggio.
emergency-call = Chiama il numero di emergenza locale. Di' dove siete, quante persone, chi è ferito.
emergency-back-up = Assicura la persona a qualcosa di indipendente: un altro ancoraggio sano, un albero, una seconda corda.
emergency-do-not-load = Non calare, tirare o arrampicare su quello che ha ceduto né su quelli vicini dello stesso tipo.
emergency-after = Quando sono tutti al sicuro: chiudi la via, avvisa il club, conserva il pezzo rotto così com'è.

## refusal
refusal-reason = { $why }
refusal-certify = Non certifico niente.
refusal-certify-next = Un chiodatore qualificato che controlla e prova sul posto può darti un verbale; chiedi a lui o a chi gestisce il terreno.
refusal-hang-people = Non dico che delle persone possano appendercisi.
refusal-hang-people-next = Deve vederlo, provarlo e decidere un chiodatore o un rigger qualificato. Fino ad allora usa un altro ancoraggio.
refusal-structure = Non giudico strutture.
refusal-structure-next = Chiedi a un ingegnere strutturista abilitato e al proprietario della struttura.
refusal-banned-place = Non aiuto a mettere ancoraggi dove non sono permessi.
refusal-banned-place-next = Chiedi a chi gestisce il terreno; forse si può fare domanda.
refusal-expired-adhesive = Non usarla: quella resina è scaduta.
refusal-expired-adhesive-next = Prendi una cartuccia nuova, e guarda la data e come è stata conservata. Se dei fittoni sono già stati resinati con quella vecchia, chiudili, e prova a estrazione ognuno di loro o sostituiscili.
refusal-skip-safety = Non aiuto a saltare un passaggio di sicurezza.
refusal-skip-safety-next = Fai il passaggio, o oggi non mettere l'ancoraggio.
refusal-hollow-rock = Nessun ancoraggio e nessun numero per roccia che suona vuota.
refusal-hollow-rock-next = Batti la roccia intorno col martello e spostati dove suona piena tutt'intorno; se non c'è, lascia perdere.

failed = Qualcosa in me si è guastato, quindi non do nessuna risposta invece di una sbagliata. Non ho cambiato niente; per favore avvisa chi si occupa di me.

## Terminal
chat-greeting = Chough. Chiedi degli ancoraggi su roccia con parole tue; "aiuto" mostra esempi, Ctrl-D chiude.
chat-choose = Scrivi una lettera per scegliere, o rispondi a parole:

## Settings, units, and words that point back
settings-admins-only = Solo chi gestisce questo gruppo può cambiarne le impostazioni. Nulla è stato cambiato.
settings-no-rooms = Questa chat non ha argomenti né canali tra cui scegliere.
settings-language = Lingua, se un membro non scrive in un'altra: { $name }.
settings-units-metric = Prima le unità metriche.
settings-units-imperial = Prima pollici e libbre.
settings-rooms = { $count ->
    [one] Rispondo in un solo argomento o canale.
   *[other] Rispondo solo in { $count } argomenti o canali.
  }
units-set-metric = D'ora in poi ti mostro prima le unità metriche.
units-set-imperial = D'ora in poi ti mostro prima pollici e libbre.
language-en = English
language-es = español
language-pt = português
language-fr = français
language-it = italiano
language-de = Deutsch
other-which = Quale dei due intendi?
other-none = Non so a quale altro ti riferisci: dimmi il nome.

## In a group
too-fast = Troppo veloce per me. Dammi un minuto, poi chiedi di nuovo.
group-greeting =
  Ciao, sono Chough. Aiuto con gli ancoraggi fissi in roccia: quale metallo, quale tipo, quanto profondo, quale resina, quanto deve indurire, che cosa mostra una prova di trazione, che cosa vuol dire la ruggine.
  Scrivimi con un comando come /material o /help, menzionami o rispondimi; altrimenti sto zitto.
  Non vedo la roccia e non certifico mai. Un ancoraggio sbagliato può uccidere: decidono le regole locali, le istruzioni del produttore e un chiodatore qualificato.
  Chi gestisce il gruppo può fissare roccia, costa, lingua e unità con /club, per esempio «/club granito, entroterra».
sent-again = (Inviato di nuovo dopo un'interruzione; forse l'hai già ricevuto.)
press-for-another = Questa domanda era per un'altra persona. Chiedimi tu e avrai la tua.

## Pictures
picture-nothing = Niente da disegnare: nessun valore.
picture-more = e altri { $count }
picture-axis-time = tempo, s
picture-axis-force = forza, kN
picture-axis-displacement = spostamento, mm
picture-axis-bond = aderenza, MPa
picture-axis-cost = costo all'anno
picture-axis-risk = probabilità di cedere entro un anno
picture-force-time = Forza nel tempo: { $name }
picture-force-displacement = Forza secondo lo spostamento: { $name }
picture-peak = picco di un'estrazione
picture-first-drop = primo calo della forza
picture-pull = picco { $peak }
picture-pull-dropped = picco { $peak }, primo calo a { $drop }
picture-need = { $name }: almeno { $load }
picture-groups = Estrazioni a confronto: { $name }
picture-failed = un'estrazione, portata fino a rottura
picture-stopped = un'estrazione, fermata prima della rottura: ha tenuto almeno tanto
picture-mean = media: la metà tiene meno
picture-characteristic = valore al 5 %: 19 su 20 tengono di più
picture-tests = { $count ->
    [one] { $count } estrazione
   *[other] { $count } estrazioni
 }{ $stopped ->
    [0] { "" }
   *[other] , di cui fermate prima della rottura: { $stopped }
 }
picture-group = { $name }: { $parts }
picture-group-mean = media { $mean }
picture-group-low = valore al 5 % { $low }
picture-group-no-low = nessun valore al 5 %
picture-bond = Aderenza, imparata e pubblicata: { $name }
picture-published = pubblicato: da { $low } a { $high }
picture-learned = media contando le proprie estrazioni: { $mean }; con probabilità del { $share } % tra { $low } e { $high }
picture-own = estrazioni proprie: { $tests }
picture-used = valore usato: { $used }
picture-costs = Quanto costa la sostituzione: { $name }
picture-policy = { $name }: { $total } in tutto
picture-risks = Quali ancoraggi per primi: { $name }
picture-share = { $share } %
picture-share-under = meno dello { $share } %
picture-risk-act = pieno: agire prima qui
picture-risk-watch = vuoto: continuare a ispezionare
picture-alt-reached = Hanno raggiunto { $load } ({ $name }): { $reached } su { $count } estrazioni.
picture-alt-peaks = { $count ->
    [one] Un'estrazione, picco { $most }.
   *[other] { $count } estrazioni, picchi da { $least } a { $most }.
 }
picture-alt-no-pulls = { $count } estrazioni trovate in questa registrazione.
picture-alt-groups-met = Gruppi in cui il valore al 5 % raggiunge { $load } ({ $name }): { $met } su { $count }.
picture-alt-groups-lowest = Valore al 5 % più basso di { $count } gruppi: { $low } ({ $name }).
picture-alt-groups-no-low = { $count } gruppi con { $tests } estrazioni, nessuno con un valore al 5 %.
picture-alt-below = Hanno ceduto sotto l'intervallo pubblicato: { $below } su { $count } estrazioni proprie.
picture-alt-range = Estrazioni proprie da { $least } a { $most }.
picture-alt-cheapest = Il meno caro in { $years } anni: { $name }, { $total } in tutto.
picture-alt-policy = { $policy }, al massimo { $most } in un anno ({ $year }).
picture-alt-no-policies = { $count } piani da confrontare.
picture-alt-act = Agire prima qui: { $act } su { $count } ancoraggi.
picture-alt-highest = Probabilità più alta di cedere entro un anno: { $name }, { $share }.
## Places
place-impossible = Quel luogo non esiste: la latitudine va da -90 a 90, la longitudine da -180 a 180. Nulla è stato cambiato.
place-null = È il punto 0, 0, quello di un ricevitore senza segnale. Nulla è stato cambiato.
place-at-sea = Quel luogo è in mare aperto. Nulla è stato cambiato.
place-sea = Secondo la mappa aperta il mare è a circa { $distance }, con un margine di { $uncertainty }. Conto con questo; dimmi se è sbagliato. Lagune e foci possono mancare.
place-near-limit = Secondo la mappa aperta il mare è a circa { $distance }, con un margine di { $uncertainty }: troppo vicino a un limite di classe. Conto con { $used } finché non mi dici meglio. Lagune e foci possono mancare.
place-far = Secondo la mappa aperta il mare è a più di { $distance }; conto con questo. Anche laghi salati, piscine e strade salate contano: dimmelo.
# telegram
telegram-old-button = Questo pulsante è di una versione precedente. Chiedi di nuovo e ne avrai uno nuovo.
telegram-only-words = Leggo parole, una posizione o una tabella di risultati di prova; foto, registrazioni e adesivi non posso guardarli. Scrivi quello che vedi, per favore.
telegram-file-too-big = Quel file è troppo grande per me: al massimo 4 MB. Manda solo la tabella dei risultati, come testo o CSV.
telegram-file-failed = Quel file non mi è arrivato. Mandalo ancora una volta, per favore, o scrivi i valori in un messaggio.
telegram-inline-private = Chiedimelo in privato
telegram-description = Aiuto con gli ancoraggi fissi in roccia: quale metallo, quale tipo, quanto profondo, quale resina, quanto tempo di indurimento, che cosa mostra una prova di trazione, che cosa significa la ruggine. Ogni risposta dice le sue fonti e i suoi dubbi. Non vedo la roccia e non certifico mai: decidono le regole locali, le istruzioni del produttore e un installatore qualificato.
telegram-short-description = Risposte prudenti e con fonti sugli ancoraggi in roccia. Non certifico mai; decide un installatore qualificato.
# discord
discord-ask-about = Chiedi su questo messaggio
discord-option = domanda
discord-option-does = La tua domanda, con parole tue
discord-type-it = Scriverlo
discord-type-title = La tua risposta
discord-type-label = Con parole tue
discord-pick = Scegli …
discord-more = Non tutto sta nel menu: quello che manca si può scrivere.
discord-empty = In quel messaggio non c'è testo che io possa leggere.
discord-not-here = Rispondo solo in altri canali di questo server.
discord-nothing = Per ora non ho niente da aggiungere. Se hai chiesto molto in una volta, aspetta un minuto.
discord-stopping = Mi stanno riavviando. Chiedi di nuovo tra un minuto.
discord-thread-closed = Da un thread che ormai è chiuso:
discord-file-too-big = Quel file supera { $most } MB, quindi non l'ho letto.
discord-file-failed = Non sono riuscito a prendere quel file. Mandalo di nuovo tra un minuto.
discord-file-one = Leggo un file alla volta. Mandali uno per uno.

## Club records
record-load = carico massimo
record-fact = • { $fact }: { $value }
record-text-day = • giorno della prova: { $text }
record-text-crag = • falesia: { $text }
record-text-route = • via: { $text }
record-text-batch = • lotto: { $text }
record-text-note = • nota: { $text }
record-name-day = giorno della prova
record-name-crag = falesia
record-name-route = via
record-name-batch = lotto
record-name-note = nota
record-change = • { $fact }: { $before } → { $after }
record-did-added = { $version }. Annotata da { $by }, { $at }:
record-did-corrected = { $version }. Corretta da { $by }, { $at }:
record-did-withdrawn = { $version }. Ritirata da { $by }, { $at }.
record-by-forgotten = un socio che ha chiesto di essere dimenticato
record-draft = Annoterei questa prova:
record-draft-how = Non è ancora salvato nulla. Salva, scarta, o di' che cosa è sbagliato: "erano 34 kN".
record-correct = La scheda { $id } cambierebbe così:
record-withdraw = Ritirare la scheda { $id }? Non conterà più; la sua cronologia resta.
record-kept = Salvata come { $id }.
record-kept-how = Per correggerla: "{ $id } era 34 kN". Per toglierla: "ritira { $id }". Tutti i passi: "cronologia { $id }".
record-corrected = Corretta: { $id }. Quello che era prima resta nella sua cronologia.
record-withdrawn = Ritirata: { $id }. Non conta più; la sua cronologia resta.
record-dropped = Scartata. Non è stato salvato nulla.
record-same = È già quello che dice { $id }. Non è stato cambiato nulla.
record-shown = Scheda { $id }, versione { $version }:
record-shown-withdrawn = La scheda { $id }, versione { $version }, è stata ritirata e non conta:
record-history = Scheda { $id }, tutti i passi:
record-none = Questa chat non ha una scheda { $id }.
record-is-withdrawn = { $id } è stata ritirata e non si può più cambiare. Annota la prova di nuovo. Non è stato cambiato nulla.
record-not-yours = Solo chi l'ha annotata, o chi si occupa di questo gruppo, può cambiare quella scheda. Non è stato cambiato nulla.
record-changed-meanwhile = Qualcuno ha cambiato quella scheda nel frattempo. Non è stato cambiato nulla; guardala di nuovo.
record-open-first = Prima salva o scarta questa:
record-one-at-a-time = Una prova alla volta, per favore, o più in una tabella: un file o un elenco incollato con intestazione. Non ho preso nulla di questo.
record-no-day = "{ $text }" non è un giorno. Scrivilo come 2027-05-02. Non è stato cambiato nulla.
record-future-day = { $text } deve ancora venire. Non è stato cambiato nulla.
record-load-impossible = Nessuna prova su un ancoraggio arriva a un carico simile, o è troppo piccolo. Non è stato cambiato nulla.
record-clash-glue = Quel tipo di ancoraggio non ha resina che possa cedere. Quale dei due è sbagliato? Non è stato cambiato nulla.
record-clash-facts = Questo non va d'accordo con il resto della scheda. Non è stato cambiato nulla.
choice-keep = Salva
choice-drop = Scarta
choice-withdraw = Ritira
choice-fix = Cambia: { $fact }
table-ready = Si possono salvare { $count } righe. Non è ancora salvato nulla.
table-kept = Salvate: { $count } schede, da { $first } a { $last }.
table-read = Ho letto { $rows } righe: { $good } si possono salvare, { $bad } no.
table-there = Già qui, e tralasciate: { $count }.
table-left = Colonne che non conosco, e che ho tralasciato: { $names }.
table-row = • Riga { $number }: { $why }
table-rows-more = • e altre { $count } righe
table-range = Carichi da { $least } a { $most }.
table-nothing = Non c'è nulla da salvare. Non è stato cambiato nulla.
table-too-large = Quel file supera 5 MB, quindi non l'ho letto. Non è stato cambiato nulla.
table-too-many = Quella tabella ha più di { $most } righe, quindi non ne ho presa nessuna. Mandala a pezzi.
table-empty = Quella tabella ha un'intestazione e nessuna riga. Non è stato cambiato nulla.
table-no-text = Quel file non contiene testo che io possa leggere come tabella. Mandalo come CSV. Non è stato cambiato nulla.
table-column-twice = La colonna "{ $column }" c'è due volte. Non ho preso nulla.
table-unit-missing = La colonna "{ $column }" non ha unità. Scrivila tra parentesi: "carico massimo [kN]", "lunghezza [mm]". Non ho preso nulla.
table-unit-unknown = L'unità in "{ $column }" non va con quella colonna, o non la conosco. Non ho preso nulla.
table-row-number = "{ $text }" non è un numero ({ $fact })
table-row-impossible = "{ $text }" non può essere: { $fact }
table-row-value = "{ $text }" non lo conosco ({ $fact })
table-row-lacking = manca: { $fact }{ $text }
table-row-day = "{ $text }" non è un giorno; scrivilo come 2027-05-02
table-row-future = { $text } deve ancora venire
table-row-too-wide = ha più celle dell'intestazione
table-row-too-long = una cella è troppo lunga; manca una virgoletta?
table-row-clash-glue = quel tipo di ancoraggio non ha resina
table-row-clash-facts = due dei suoi valori non vanno d'accordo
table-row-differs = { $id } è già qui e dice altro; correggila a parole
table-exported = { $count } prove in una tabella
table-exported-how = I valori sono nomi brevi, uguali in ogni lingua. Rimandato qui, il file non aggiunge nulla due volte.
ours-none = Questa chat non ha ancora prove. Dimmene una: "tirato un 12x100 a due gambi, epossidica, granito, 36,5 kN, la resina è uscita pulita".
ours-list = { $first }, { $rest }
ours-size = { $diameter } × { $depth }
ours-mixed = tutte le prove insieme
ours-found = Le vostre prove che corrispondono: { $count }, in { $groups } gruppi dello stesso tipo.
ours-no-match = Delle vostre { $count } prove nessuna corrisponde: { $what }.
ours-more = e { $count } gruppi più piccoli.
ours-about = Quello che segue riguarda solo il gruppo con più rotture: { $what }.
ours-group = • { $what }
ours-loads-failed = – hanno ceduto ({ $failed }): { $pulls }
ours-loads-stopped = – hanno tenuto almeno ({ $stopped }): { $held }; nulla ha ceduto
ours-loads-both = – hanno ceduto ({ $failed }): { $pulls }; hanno tenuto almeno ({ $stopped }): { $held }
ours-figures = – media { $mean }, valore al 5 % { $low }
ours-figures-fitted = – centro della curva adattata { $mean }, valore al 5 % { $low }
ours-no-figures = – troppo poche rotture per un valore al 5 %
ours-mode = { $mode } ({ $count })
ours-modes = – { $list }
ours-first = Primo gruppo: { $what }
ours-second = Secondo gruppo: { $what }
ours-differ = I due differiscono anche, o sono misti, in: { $list }. Una differenza può venire da lì.
ours-modes-differ = Non tutti hanno ceduto allo stesso modo: a rigore, si confrontano solo rotture uguali.
ours-stopped-out = Le prove fermate, { $count }, non sono rotture e restano fuori da questo confronto.
ours-longer = Il primo gruppo è il più profondo, il secondo il meno, il resto dello stesso tipo.
ours-longer-none = Le vostre prove non lo mostrano: non ce ne sono dello stesso tipo a due profondità. Fatene almeno 3, meglio 5 a 10, per ciascuna.
bond-ours = Aderenza: pubblicata da { $low } a { $high }, di cui conto una media di { $published }; con le vostre { $failures } prove che vi hanno ceduto, { $median } nel centro, valore al 5 % { $five }.
bond-ours-least = Altre { $others } delle vostre prove sono finite diversamente (metallo, roccia, attrezzatura, o fermate): l'aderenza ha tenuto almeno quello.
bond-ours-lower = Il vostro è il più basso, quindi conto { $used }.
bond-ours-higher = Il vostro non è più basso, e non rende ancora nulla più ardito: devono cedere { $needed } nell'aderenza prima di contare sopra quanto è pubblicato (EOTA TR 053, a memoria); ne mancano { $missing }.
bond-ours-would = Con il vostro sarebbe: media { $mean }, valore al 5 % { $characteristic } ({ $mode }).
bond-ours-without = Con la sola aderenza pubblicata sarebbe: media { $mean }, valore al 5 % { $characteristic } ({ $mode }).
bond-ours-enough = { $needed } cedimenti nell'aderenza bastano perché conti il vostro (EOTA TR 053, a memoria): conto { $used }, e mai più dell'estremo superiore di quanto è pubblicato, { $top }.
plan-steps = Con la pompa a mano, a passi di al massimo { $share } % di quello che ti aspetti, ognuno tenuto { $minutes } minuti mentre leggi lo spostamento (ASTM E488, a memoria); prima assesta con un ventesimo.
plan-steps-expected = Con la pompa a mano, a passi di al massimo { $step }, cioè { $share } % dei { $mean } che calcolo in media, ognuno tenuto { $minutes } minuti mentre leggi lo spostamento (ASTM E488, a memoria); prima assesta con un ventesimo.
plan-proof-steps = Sali in { $steps } passi uguali di { $seconds } secondi, e fermati al primo movimento.
plan-number = Che cosa può mostrare quel numero: con { $count } risultati il valore al 5 % è circa { $left } % della media, con { $good } circa { $goodLeft } %, con centinaia circa { $endless } % (dispersione { $scatter } %, confidenza 90 %). Pochi risultati costano resistenza.
plan-number-too-few = Con meno di { $fewest } risultati non si può dire nulla del prossimo ancoraggio.
plan-number-compare = Con { $count } prove di ogni tipo è probabile che si veda solo una differenza di { $seen } % o più (dispersione { $scatter } %, quattro volte su cinque). Alterna i due, non un giorno ciascuno.
plan-range = Lanciato liberamente cade fino a { $range } su terreno piano, e più lontano sotto una parete: chiudi la linea di tiro fin lì, nei due sensi.
plan-rig = Ogni parte dell'attrezzatura per almeno { $load }, { $factor } volte il carico massimo: un'attrezzatura che cede lancia anche i suoi pezzi.
plan-protect = Lega il telaio e i pezzi sciolti, metti una coperta pesante sull'attrezzatura, occhiali e casco; scarica la pressione prima che qualcuno si avvicini, anche se nulla si è rotto.
plan-log = Dimmi ogni prova con /log, e conta per la vostra roccia.
ours-picture = Le nostre prove

## Recordings
recording-title = { $file }, trazione { $number }
recording-failed = Ha ceduto: il carico massimo è stato { $peak }.
recording-stopped = Fermato prima che qualcosa cedesse: ha tenuto { $peak } quella volta, e quanto tenga al massimo non si sa.
recording-none = { $file }: nessuna trazione trovata. Il carico non è mai salito chiaramente sopra il riposo.
recording-time = Massimo { $time } s dopo il primo campione.
recording-drop = Primo calo brusco dopo { $time } s: da { $from } a { $to }.
recording-plateau = Poi teneva ancora circa { $level } per { $seconds } s.
recording-rate = Caricato a circa { $rate }.
recording-stiffness = Rigidezza prima di cedere o di fermare: { $stiffness }.
recording-energy = Energia fino al massimo: { $energy }.
recording-rest = La cella segnava { $rest } a riposo; è tolto da ogni carico qui.
recording-mode-bond-loss = Sembra che prima abbia ceduto l'aderenza e poi l'ancoraggio sia scivolato. È quello che hai visto: ancoraggio uscito con adesivo o polvere?
recording-mode-brittle = Sembra che qualcosa si sia rotto di colpo: acciaio o roccia. Che cosa: un tassello rotto o un cono di roccia?
recording-mode-slow-slip = Sembra che l'ancoraggio sia uscito lentamente sotto carico. È uscito, e di quanto?
recording-mode-rig = Il carico è calato e poi è salito più di prima. Si è assestata l'attrezzatura, o si è mosso l'ancoraggio?
recording-mode-stopped = Sembra che tu abbia fermato apposta. È così, e nulla si era mosso o crepato?
recording-reason = Perché lo penso: { $list }.
recording-reason-sharp-drop = è calato in circa un decimo di secondo
recording-reason-plateau = poi ha tenuto a un carico più basso
recording-reason-no-plateau = poi non ha tenuto quasi nulla
recording-reason-rose-again = più tardi è salito sopra quel carico
recording-reason-slow-fall = il carico è sceso non più in fretta di come era salito
recording-reason-moved-on = l'ancoraggio continuava a muoversi mentre il carico scendeva
recording-reason-taken-off = il carico è sceso dolcemente e più in fretta di come era salito
recording-reason-ends-loaded = la registrazione finisce sotto carico
recording-note-clipped = La cima è piatta: la cella era forse al suo limite e il massimo vero più alto. Non usare questo massimo.
recording-note-disturbed = La cella era disturbata: picchi o interruzioni sono stati tolti. Controlla spine e cavo.
recording-note-gap = Mancano campioni durante la trazione; nel frattempo può essere successo qualcosa.
recording-note-starts-loaded = La registrazione non torna mai a zero. Se sia precarico o uno zero sbagliato non so dirlo; i carichi possono essere sbagliati di altrettanto.
recording-note-coarse = Meno di circa dieci campioni al secondo: una rottura e uno scarico rapido si somigliano.
recording-note-re-seated = All'inizio il carico è calato e risalito, come quando l'attrezzatura si assesta. Assicurati che non fosse l'ancoraggio.
recording-refused = { $file }: { $why }
recording-problem-unreadable = Questo file non c'è o non si può leggere.
recording-problem-empty = Il file è vuoto.
recording-problem-packed = È un file compresso o un foglio di calcolo. Salva la tabella come testo CSV e manda quello.
recording-problem-binary = Questo non è testo. Esporta la registrazione come testo CSV.
recording-problem-too-large = Il file è più grande di quanto leggo. Ritaglia le trazioni.
recording-problem-long-line = Riga { $line }: è troppo lunga per una riga di tabella.
recording-problem-no-table = Non ci trovo nessuna tabella di numeri.
recording-problem-no-header = Riga { $line }: qui cominciano i numeri senza intestazione con colonne e unità. In che unità è il carico: kN, N, daN, kgf o lbf?
recording-problem-no-load = Non trovo nessuna colonna di carico. Chiamala "Forza" o "Carico", con la sua unità.
recording-problem-many-loads = Più colonne possono essere il carico. Lascia solo quella che conta.
recording-problem-unit = L'unità del carico non è indicata o non la conosco, e non indovino. È kN, N, daN, kgf o lbf? Scrivila dopo il nome della colonna.
recording-problem-no-time = Non trovo una colonna del tempo né la frequenza di campionamento sopra la tabella.
recording-problem-time-unit = In che unità è il tempo: s o ms? Scrivila dopo il nome della colonna.
recording-problem-no-rate = I campioni sono numerati, ma quanti al secondo? Scrivi una riga "Frequenza: … Hz" sopra la tabella.
recording-problem-missing-cell = Riga { $line }: manca un valore.
recording-problem-no-number = Riga { $line }: quello che c'è qui non è un numero.
recording-problem-no-clock = Riga { $line }: quello che c'è qui non è una data né un'ora.
recording-problem-formula = Riga { $line }: c'è una formula. Leggo solo numeri; salva i valori.
recording-problem-time-back = Riga { $line }: il tempo va all'indietro.
recording-problem-truncated = Riga { $line }: il file è troncato qui. Copialo di nuovo dal registratore.
recording-problem-too-short = Ci sono troppo pochi campioni per dire qualcosa.
recording-problem-strange-text = Riga { $line }: c'è del testo in mezzo ai numeri.
recording-problem-decimal-mark = Virgole e punti sono mescolati: non distinguo decimali e migliaia. Salva i numeri senza separatore delle migliaia.

recording-no-offer = Non propongo di annotare { $count ->
    [one] una prova
   *[other] { $count } prove
}: il vero carico massimo non è noto.
recording-offer = La annoto come prova di estrazione con { $peak }? Tocca ciò che hai visto cedere, o che nulla ha ceduto. Ancora nulla è conservato.
recording-offer-several = La più forte è la prova { $number } con { $peak }. Quale annoto come prova di estrazione? Ancora nulla è conservato.
choice-note-mode = Annota: { $mode }
choice-note-open = Annota e chiedimi che cosa ha ceduto
choice-note-pull = Annota la prova { $number }: { $peak }
recording-file-neither = Leggo le registrazioni di una cella di carico e le tabelle di prove di estrazione. Nulla è stato cambiato.
recording-picture = Immagine: { $file }
recording-picture-kept = { $file } esiste già e non l’ho disegnata io: l’ho lasciata com’è.
recording-picture-failed = Non è stato possibile scrivere { $file }.
## Register
record-text-sector = • settore: { $text }
record-name-sector = settore
record-text-position = • posizione: { $text }
record-name-position = posizione
record-text-installer = • posto da: { $text }
record-name-installer = posto da
record-text-anchor = • ancoraggio: { $text }
record-name-anchor = ancoraggio
register-day-anchor = • posto: { $text }
register-day-inspection = • visto: { $text }
register-name-day-anchor = giorno della posa
register-name-day-inspection = giorno dell'ispezione
register-day-not-known = • posto: non noto
register-anchor-draft = Inserirei questo ancoraggio nel registro:
register-anchor-draft-how = Nulla è ancora salvato. Salvalo, scartalo o di' che cosa è sbagliato o manca: "posto 2024-05-02", "è 304".
register-anchor-withdraw = Ritirare l'ancoraggio { $id } dal registro? Non comparirà più; la sua cronologia resta.
register-anchor-kept-how = Per correggere: "{ $id } è 304". Che cosa hai visto: "{ $id } ha macchie marroni". Per toglierlo: "ritira { $id }". Tutti i passi: "cronologia { $id }".
register-inspection-draft = Annoterei questa ispezione di un ancoraggio:
register-inspection-draft-how = Nulla è ancora salvato. Salvalo, scartalo o di' che cosa è sbagliato.
register-inspection-withdraw = Ritirare l'ispezione { $id }? Non conterà più; la sua cronologia resta.
register-inspection-kept-how = Per toglierla: "ritira { $id }". Tutti i passi: "cronologia { $id }".
register-which-crag = In quale falesia si trova? Basta il nome; settore, via e posizione aiutano a ritrovarlo.
register-nowhere = Senza falesia nessuno ritrova quell'ancoraggio. Nulla è stato salvato.
register-twice = { $id } è già in quel punto. Correggi o ritira quello, o di' un'altra posizione. Nulla è stato salvato.
register-is-withdrawn = { $id } è stato ritirato dal registro e non si può più cambiare. Nulla è stato cambiato.
register-no-day = { $text } non è un giorno tra il 1950 e oggi. Scrivi 2024-05-02, o solo l'anno. Nulla è stato cambiato.
register-look = • { $day }: { $signs } (annotato da { $by } come { $id })
register-look-of = Con quello che il registro dice di { $id }, { $crag }:
register-look-note = Annotarlo nella sua cronologia? Nulla è ancora salvato.
register-look-later = Non annoto nulla finché un'altra scheda è aperta: prima salvala o scartala, poi ripeti.
register-entry = • { $id }: { $where } — { $what }
register-entry-figures = • { $id }: { $where } — { $what }, { $figures }
register-found = { $what }: { $count } nel registro.
register-more = • e altri { $count }. Di' un settore, una via o un metallo, o esporta il registro.
register-no-match = Il registro ha { $count } ancoraggi, ma nessuno per: { $what }.
register-all = Nel registro: { $count } ancoraggi, falesie: { $crags }.
register-crag = • { $name }: { $count }
register-how = Per trovarne: "ancoraggi su Gannet Slab", "tutti gli zincati". Per aggiungere: "registra ancoraggio 3 su Gannet Slab: 12x100 316". Da che cosa cominciare: "quali ancoraggi per primi?"
register-none = Questa chat non ha ancora ancoraggi nel registro. Dimmene uno: "registra ancoraggio 3 su Gannet Slab: 12x100 316, posto 2024-05-02", o manda una tabella con falesia e tipo di ancoraggio.
register-exported = { $count } ancoraggi come tabella
register-row-lacking = manca: { $what }
register-row-twice = { $id } è già in quel punto
register-row-same = indica lo stesso punto della riga { $number }
register-first = Per primi, { $shown } di { $count } ancoraggi, il più urgente in alto:
register-first-one = { $place }. { $id }: { $where }
register-first-why =    • { $why }
register-first-seen = visto { $day } ({ $id }), { $signs }. { $verdict }
register-metal-unknown = Il metallo non è noto, e questo conta come peggio.
register-place-unknown = Il metallo non si può giudicare senza conoscere il luogo, e questo conta come peggio. Di': "è nell'entroterra", "a 300 m dal mare".
register-age-unknown = L'età non è nota, e questo conta come durata prevista superata.
register-age-only = Ha { $years } anni; non ci sono anni da prevedere.
register-age-past = Ha { $years } anni: oltre l'estremo breve dei { $low }-{ $high } anni previsti.
register-age-within = Ha { $years } anni; se ne prevedono da { $low } a { $high }, mai promessi.
register-first-limits = È un ordine di lavoro secondo quanto detto: segni, metallo e luogo, età, uso. Ciò che non è noto conta come peggio. Un ancoraggio più in basso, o che manca qui, non è per questo sano.
register-sensitive = Di queste falesie tengo e mostro solo il nome, senza settore, via, posizione o nota: { $names }. Quanto annotato prima resta salvato, ma non si mostra più. Per togliere: "/club non sensibile …".
register-sheltered = Questa falesia è segnata come sensibile: tralascio settore, via, posizione e nota.
