# What Chough says in Portuguese, worded to be understood in Portugal and in Brazil. Names, questions, reasons and
# cautions stand in pt.json; here are the sentences that join them.

## Bits
list-last = { $first } ou { $last }
line = { $text }
fewer-than = menos de { $number }
years = { $number } anos
days = { $number } dias
not-known = não se sabe
fact-line = { $fact }: { $value }
understood = Entendi: { $list }.
standing = Chough aconselha, nunca certifica: decidem as regras locais, as instruções do fabricante e um equipador qualificado.

## The frame of an answer
title-checks = Verificações
title-checks-kn = Verificações (1 kN são 225 lbf)
title-reject = Não usar
assumed = Não foi dito, então supus (o pior caso, onde existe): { $list }.
title-cautions = Cuidado
always = Sempre: { $list }.
took = Contei com: { $list }.
rejected = { $what }: { $why }
limited = { $what }, só com limites: { $why }
reason = { $why }
deferral = Isto é um conselho, não um certificado. Antes dele vêm as normas locais e quem gere o terreno, as instruções do fabricante e um equipador qualificado no local.
source-memory = { $title }, de memória
source-read-second-hand = { $title }, em segunda mão
sources = Fontes: { $list }.
sources-more = Fontes: { $list }, e mais { $more } (escreva "porquê").
footer = Resposta { $id }, regras { $ruleset }. Escreva "porquê" para ver toda a cadeia.
footer-why = Resposta { $id }, regras { $ruleset }.
check-mean = média { $value }
check-characteristic = valor de 5 % { $value }
check-design = valor de cálculo { $value }
check-plain = { $value }
check-met = { $name }: { $values }; no mínimo { $limit }: cumpre
check-atmost-met = { $name }: { $values }; no máximo { $limit }: cumpre
check-atmost-short = { $name }: { $values }; no máximo { $limit }: NÃO cumpre
check-open = { $name }: { $values }; no mínimo { $limit }: só na média, não está provado
check-short = { $name }: { $values }; no mínimo { $limit }: NÃO cumpre
check-length = comprimento instalado (EN 959)
check-plating = { $thickness } de zinco, anos até acabar
check-cure-share = parte do tempo de cura
check-cured = horas desde a colagem
check-bending = flexão onde sai da rocha
check-edge = distância até a borda ou fissura mais próxima
check-spacing = distância entre as ancoragens
check-tension = ao arrancamento, { $mode }
check-shear = de lado, { $mode }
mode-steel = o metal
mode-bondSteel = cola solta do metal
mode-bondRock = cola solta da rocha
mode-cone = cone de rocha
mode-pullThrough = saída através do clipe de expansão
mode-pryOut = rocha levantada por alavanca
mode-edge = borda da rocha
mode-dowel = rocha esmagada sob a haste

## why
title-why-facts = De onde parti
title-why-rules = Regras que valeram
title-why-formulas = Fórmulas
title-why-sources = Fontes
why-fact = { $line } ({ $origin })
why-rule = { $words } [{ $id }]
why-input = { $symbol } = { $value } ({ $from }; válido de { $least } a { $most })
why-from-fact = { $fact }, { $origin }
why-from-row = da tabela { $row }
why-from-method = calculado pelo caminho
why-formula = { $name }: { $symbols }; { $inputs } → { $value }{ $kind } ({ $source }, { $clause })
kind-mean = , uma média
kind-characteristic = , um valor de 5 %
kind-design = , um valor de cálculo
kind-plain = { "" }
origin-said = você disse
origin-assumed = suposto, ninguém disse
origin-club = definido pelo seu clube
origin-map = do mapa
origin-measured = dos testes do próprio clube

## Buttons
choice-dont-know = Não sei
choice-why = Porquê?
choice-back = Voltar
choice-restart = Recomeçar
choice-settle = { $fact }: { $value }

## Talk
language-set = Agora respondo em português.
resumed = Ainda guardo da última vez: { $list }.
restarted = Esquecido. O que você quer saber?
back-nothing = Não há nada para desfazer.
back-start = Desfeito. O que você quer saber?
why-nothing = Ainda não dei nenhuma resposta que eu possa explicar.
what-about = Anotado. O que você quer saber sobre isso?
greeting = Olá. Pergunte sobre ancoragens na rocha: qual metal, qual tipo, que profundidade, qual adesivo, quanto tempo de cura.
welcome = De nada. Teste ao arrancamento antes de confiar.
help-material = Diga onde vai ficar a ancoragem; rocha, chuva e clima ajudam. Por exemplo: "qual metal para uma falésia marítima de calcário em desaprumo?" ou "inox 316 serve numa falésia do interior?"
help-anchor = Diga qual é a rocha e para que serve a ancoragem. Por exemplo: "que tipo de ancoragem para uma parada em arenito mole?"
help-embedment = Diga tipo, medida, rocha e adesivo. Por exemplo: "um químico de 10x80 em granito com epóxi tem profundidade suficiente?"
help-adhesive = Diga se o furo está molhado e a temperatura da rocha. Por exemplo: "qual resina para um furo úmido a 8 °C?"
help-adhesive-amount = Diga medida e quantidade. Por exemplo: "quanta resina para 20 chumbadores de 12 x 100?"
help-cure = Diga o tipo de adesivo e a temperatura da rocha. Por exemplo: "quanto tempo de cura para viniléster a 6 °C?"
help-hole = Por exemplo: "como limpo o furo para um químico?"
help-spacing = Diga a profundidade. Por exemplo: "a que distância da borda para um 12x100?"
help-coating-life = Diga espessura e lugar. Por exemplo: "quanto tempo duram 50 µm de zinco numa falésia do interior?"
help-inspect = Diga o que se vê, em que metal e onde. Por exemplo: "mancha castanha debaixo de uma chapeleta de 304 numa falésia marítima, posso confiar?"
help-cost = Diga preço, trabalho e duração. Por exemplo: "o que sai mais barato em 50 anos no interior temperado, 316 a 20 euros ou titânio a 43 euros, mão de obra 20?"
help-pulltest-plan = Por exemplo: "como fazemos o teste de prova de 20 químicos de parada em granito?"
help-pulltest-result = Diga as cargas em que as ancoragens cederam. Por exemplo: "arrancamos 24,1 27,3 22,8 30,2 26 kN, o que isso prova?"
help-compare = Diga as duas séries de resultados. Por exemplo: "lisa: 33 35 37, rugosa: 36 44 51, a rugosa é melhor?"
help-load = Diga o que se faz com a ancoragem. Por exemplo: "quanto puxa uma queda de fator 1 com 80 kg?" ou "que força em dois chumbadores a 60 graus com 2 kN?"
help-cautions = Por exemplo: "que cuidados devo ter ao furar em arenito molhado?"
help = Pergunte com as suas palavras, por exemplo:
    • qual metal para uma falésia marítima de calcário em desaprumo?
    • um químico de 10x80 em granito com epóxi tem profundidade suficiente?
    • 12 x 100 em arenito molhado, 4 °C: qual resina, e quanta para 20 chumbadores?
    • quanto tempo de cura para viniléster a 6 °C?
    Depois: "porquê" para a cadeia por trás da resposta, "voltar" para desfazer a última coisa, "recomeçar" para começar de novo. Para corrigir algo, é só dizer: "desculpa, granito".
not-understood = Não entendi isso como uma pergunta sobre ancoragens.
words-not-understood = Não conheço estas palavras: { $words }.
still-open = A minha última pergunta continua em aberto; "não sei" é uma boa resposta.
not-yet = Ainda não sei responder a perguntas sobre este tema: { $topic }. Posso ajudar com os temas abaixo.
too-long = Isso passa de { $most } caracteres, então não li. Faça uma pergunta em poucas linhas.
file-not-yet = Aqui não consigo ler arquivos. Diga os números em palavras.
place-not-yet = Aqui não consigo ler lugares. Diga a que distância fica o mar e se a chuva chega à ancoragem.
button-old = Esse botão é de uma pergunta anterior e já não serve.
impossible = "{ $text }" não pode ser ({ $fact }): aceito de { $least } a { $most }. Nada foi mudado.
contradiction = { $one } e { $other } não combinam. Qual dos dois vale? Nada foi mudado.
contradiction-relation = { $words } Nada foi mudado.
out-of-range = { $what }: dá { $value }; o método cobre de { $least } a { $most }, por isso não dou número. Diga um valor dentro dessa faixa ou pergunte a um equipador qualificado.
problem-unit-mismatch = "{ $text }": essa unidade não serve. Qual é o valor ({ $fact })? Nada foi mudado.
problem-ambiguous = "{ $text }" pode significar mais de uma coisa. Diga com mais exatidão, por favor. Nada foi mudado.
problem-conflict = "{ $text }" diz duas coisas diferentes ({ $fact }). Qual vale? Nada foi mudado.
problem-not-a-number = Não consigo ler "{ $text }" como número. Nada foi mudado.
problem-impossible = "{ $text }" não pode ser. Nada foi mudado.

settings-none = Não há nada definido para esta conversa.
settings-are = Para esta conversa guardo, salvo se uma mensagem disser outra coisa: { $list }.
settings-how = Para definir: "/club arenito mole, interior" (rocha, lugar), "/club português", "/club polegadas", "/club só aqui". Para apagar: "/club apagar".

## Topics, as buttons and in sentences
topic-material = qual metal
topic-anchor = qual tipo de ancoragem
topic-embedment = fundo e forte o bastante?
topic-adhesive = qual adesivo
topic-adhesive-amount = quanto adesivo
topic-cure = tempo de cura
topic-load = cargas
topic-pulltest-plan = planejar um teste de arrancamento
topic-pulltest-record = anotar um teste de arrancamento
topic-pulltest-result = resultados de testes de arrancamento
topic-compare = comparar opções
topic-inspect = inspecionar uma ancoragem
topic-spacing = bordas e espaçamento
topic-coating-life = quanto dura um metal
topic-cost = custo ao longo dos anos
topic-hole = furar e limpar
topic-cautions = cuidados
topic-permission = autorização
topic-settings = definições do clube
topic-register = o registro
topic-remind = lembretes
topic-why = porquê
topic-help = ajuda
topic-smalltalk = conversa
topic-emergency = emergência
topic-refuse = o que não faço

## A metal, adhesive or kind that was asked for by name
asked-suitable = Sim, serve: { $what }. { $why }
asked-limited = { $what }: só com limites. { $why }
asked-unsuitable = Não, isto não: { $what }. { $why }

## material
material-only = Use { $metals }, e nada menos que isso: aqui o sal racha o aço inox.
material-anywhere = Não conheço o lugar. O que serve em todos os lugares que conheço: { $metals }. Diga onde fica a falésia; um lugar mais brando pode permitir mais.
material-use = Use { $metals }.
material-limited = Nenhum metal está livre de limites aqui; o melhor: { $metals }, com os limites abaixo.
material-none = Nenhum metal que conheço serve para este lugar. Pergunte a um engenheiro de corrosão antes de furar.
material-class = Pela norma estrutural, este lugar precisa da classe de resistência { $class } (fator { $factor }).
material-class-boundary = Pela norma estrutural, este lugar está no limite entre duas classes (fator { $factor }); fique com { $class }.
material-beyond = A norma estrutural do aço inox não cobre um lugar assim.
material-cracking = Risco de o sal rachar o aço inox: { $risk }.
material-kinds = Tipo de ancoragem que combina com o que você disse: { $kinds }.
material-kinds-limited = Tipo de ancoragem, depois de bater na rocha com o martelo e ouvir: { $kinds }.
material-one-metal = Chumbador, porca, arruela, chapeleta, argola e corrente: tudo do mesmo metal. Decide a peça mais fraca.

## two metals that touch
check-galvanic-marine = máximo que os dois se afastam em água do mar (limite à beira-mar)
check-galvanic-outdoors = máximo que os dois se afastam em água do mar (limite ao ar livre no interior)
check-galvanic-indoors = máximo que os dois se afastam em água do mar (limite em recinto fechado)
pairing-good = { $metal } com { $other }: um só metal, não se fazem mal.
pairing-poor = { $metal } com { $other }: não planeje isso; eles se toleram, mas a ancoragem vale o que vale o mais fraco dos dois.
pairing-never = { $metal } com { $other }: nunca deixe os dois se tocarem.
pairing-untold = Diga os dois metais; até lá, não os junte.
pairing-goes = Onde ficam molhados, quem se gasta é a peça deste metal: { $metal }.
pairing-small-anode = Um chumbador pequeno numa chapeleta grande de metal mais nobre se gasta mais depressa, e a parte que se gasta está dentro da rocha.
pairing-active = Numa fresta salgada este metal pode perder a proteção: { $metal }; aí os dois se afastam até { $volts }.
pairing-place = Que eles se tolerem não torna nenhum dos dois certo para o lugar: diga onde fica a falésia.
pitting-line = Resistência à corrosão por pites, { $metal }: índice { $pren }, posição { $place } entre { $count } aços inox. Não diz nada sobre fissuras.

## salt and damp on a warm bolt
humidity-cracks = Perigoso para o aço inox: a { $surface } o ar junto ao chumbador tem só { $humidity } de umidade, e o sal do mar nele é uma salmoura forte e quente.
humidity-caution = Cuidado: a { $surface } o ar junto ao chumbador tem { $humidity } de umidade.
humidity-low = Pouco perigo de fissuras nesse momento: a { $surface } o ar junto ao chumbador tem { $humidity } de umidade.
humidity-none = Nenhum perigo de fissuras por sal: a { $surface } o ar junto ao chumbador tem { $humidity } de umidade.
humidity-film-concentrated = Isso fica na faixa perigosa, de { $driest } a { $wettest }: o sal comum seca abaixo de 75 %, mas o sal de magnésio do mar fica líquido até 33 %, tão forte quanto pode ser.
humidity-film-dilute = Isso fica acima da faixa perigosa, de { $driest } a { $wettest }: agora a salmoura está fraca, e fica forte quando seca.
humidity-film-dry = Isso fica abaixo da faixa perigosa, de { $driest } a { $wettest }: agora o sal está quase seco, e passa pela faixa de manhã e ao fim da tarde.
humidity-dew = Forma-se orvalho nele quando está mais frio que { $dew }.
humidity-changes = Todos os dias passa por outros estados: uma leitura não livra nenhuma ancoragem. Quem decide o metal é o lugar.

## coating-life
coating-place = Diga onde fica a falésia: sem o lugar não dá para calcular a duração.
coating-life = Com { $thickness } de zinco, planeje { $worst } e não mais; { $mean } no ritmo habitual.
coating-rate = Lá o zinco perde cerca de { $rate } no primeiro ano: classe { $category } (entre { $from } e { $to }; essa estimativa não é melhor que −33 % a +50 %).
coating-hidden = Onde o zinco acaba, o aço começa a ir embora, escondido no furo. Frestas e água que escorre tornam isso várias vezes mais rápido.

## anchor
anchor-use = Use { $kinds }.
anchor-limited = Nenhum tipo está livre de limites aqui; o melhor: { $kinds }, com os limites abaixo.
anchor-none = Nenhum tipo de ancoragem que conheço serve para o que você disse. Mude de ponto ou pergunte a um equipador qualificado.
anchor-next = Diga uma medida, e verifico se é funda e forte o bastante.

## embedment
embedment-meets = { $diameter } × { $length } cumpre os mínimos por este cálculo; prove com um teste de arrancamento nesta rocha.
embedment-test-first = Não está provado que { $diameter } × { $length } baste: teste nesta rocha antes que alguém confie.
embedment-too-short = { $diameter } × { $length } é curto demais: a EN 959 pede pelo menos { $minimum } instalados.
embedment-too-weak = { $diameter } × { $length } é fraco demais para esta rocha por este cálculo.
embedment-too-weak-assumed = { $diameter } × { $length } pode ser fraco demais: no pior caso que você não excluiu, é.
embedment-best-case = Se tudo o que não foi dito fosse bom (rocha sã, furo seco, haste com ranhuras, nenhuma carga permanente): média { $mean }, valor de 5 % { $characteristic } ao arrancamento.
embedment-near-edge = { $diameter } × { $length }: perto demais de uma borda ou fissura, ou não se sabe a distância. Meça e, se preciso, mude de ponto.
embedment-refuse = { $diameter } × { $length }: não coloque ali, e não assim.
embedment-cannot = Sem rocha, tipo e medida da ancoragem não dou número.
embedment-cannot-next = Pela EN 959 uma ancoragem colada fica pelo menos a 70 mm (2¾ in) de profundidade, uma mecânica pelo menos a 5 vezes o diâmetro do seu furo; rocha mais mole precisa de mais.
embedment-governs = Ao arrancamento, falha primeiro: { $mode }; média { $mean }, valor de 5 % { $characteristic }. De lado: { $side }; média { $sideMean }, valor de 5 % { $sideCharacteristic }. (Valor de 5 %: 19 de 20 aguentam mais.)
embedment-longer = Mais comprido, { $size }: média { $mean }, valor de 5 % { $characteristic } ({ $mode }).
embedment-fatter = Mais grosso, { $size }: média { $mean }, valor de 5 % { $characteristic } ({ $mode }).
embedment-depth = Calculado com { $depth } na rocha, contados a partir da face.
embedment-rebound = Um índice de ressalto de { $rebound } corresponde a rocha de { $min } a { $max }; conto com o extremo mais baixo. (As leis publicadas o leem como { $low } a { $high }.)
embedment-grade = Rocha de grau { $grade } tem de { $min } a { $max }; conto com o extremo mais baixo.
embedment-strength-capped = Você disse { $told }, mas uma rocha assim chega no máximo a { $most }; conto com isso.
embedment-find-class = Risque a rocha com uma faca, bata com um martelo e diga como ela responde (grau R0 a R6), ou um índice de ressalto: então conto com a classe e não com o nome.
embedment-lasting = A aderência é contada a 60 %: a carga fica durante dias, ou ninguém disse que não fica.
embedment-heat-warm = Ao sol passa de 40 °C (104 °F): a aderência é contada a 65 %, e só se a ficha técnica permitir esse calor.
embedment-heat-softens = Com o calor que você disse, um adesivo desses pode amolecer: quase nenhuma aderência é contada.
embedment-oblique = Puxado a { $angle } do eixo: valor de 5 % { $characteristic }.
embedment-oblique-worst = Puxado para fora e de lado ao mesmo tempo, mais fraco a { $angle } do eixo: valor de 5 % { $characteristic }.
embedment-chance = De 1000 ancoragens assim, ao arrancamento, tantas aguentariam menos de { $least }: { $underLeast }; menos que { $seldom }, o que a escalada raramente ultrapassa (prática comum, sem fonte): { $underSeldom }.
embedment-chance-use = De 1000 ancoragens assim, ao arrancamento, tantas aguentariam menos de { $least }: { $underLeast }; menos que { $action }, com que se deve contar neste uso: { $underAction }; menos que { $seldom }, o que a escalada raramente ultrapassa (prática comum, sem fonte): { $underSeldom }.
embedment-uiaa = Algumas edições da UIAA 123 pedem { $aim } direto para fora (de memória): aponte para isso; cerca de { $underAim } de 1000 aguentariam menos.
embedment-upper-bound = Se ele sai através do clipe de expansão não se calcula, só se testa; os números são um limite superior.

## embedment, no size told
sizing-meets = A menor medida usual que serve, por este cálculo: { $diameter } × { $length } ({ $anchor }); prove com um teste de arrancamento nesta rocha.
sizing-test-first = A menor medida usual a experimentar: { $diameter } × { $length } ({ $anchor }). Não está provada: teste nesta rocha antes que alguém confie.
sizing-average = Pelo que foi dito, nenhuma medida usual basta com certeza; a mais forte, { $diameter } × { $length } ({ $anchor }), só basta na média. Teste nesta rocha antes que alguém confie.
sizing-not-so = Nenhuma medida resolve isto. A menor que é forte o bastante é { $diameter } × { $length } ({ $anchor }), mas não ali ou não assim.
sizing-none = Nenhuma medida usual é forte o bastante ali por este cálculo.
sizing-none-next = Procure rocha mais sã, um adesivo melhor ou um furo mais seco, ou peça a um equipador qualificado testes de arrancamento nesta rocha.
sizing-best = Se tudo o que não foi dito fosse bom (rocha sã, furo seco, haste com ranhuras, nenhuma carga permanente): { $diameter } × { $length } ({ $anchor }).
sizing-need = Necessário: { $tension } direto para fora e { $shear } ao longo da rocha, aguentados por { $share } de 100 ancoragens assim.
sizing-kind = { $anchor }: { $diameter } × { $length }, valor de 5 % { $characteristic } ao arrancamento.
sizing-kind-none = { $anchor }: nenhuma medida usual basta com certeza.
sizing-check-next = Diga uma medida, e verifico essa.

## adhesive
adhesive-use = Use { $what }.
adhesive-limited = Nenhum adesivo está livre de limites aqui; pode servir: { $what }, com os limites abaixo.
adhesive-none = Do jeito que está, nenhum adesivo pode ser usado. Espere um furo mais seco ou rocha mais quente.
adhesive-cure-unknown = Diga a temperatura da rocha, e dou o tempo de cura.

## amount
amount-size = Diga diâmetro e profundidade, por exemplo 12 × 100, e calculo a quantidade.
amount-verdict = Cerca de { $volume } por furo, { $total } no total para { $holes ->
    [one] um furo
   *[other] { $holes } furos
 }, com desperdício incluído.
amount-hole = { $volume } por furo (haste de { $diameter } em furo de { $hole }, { $depth } de profundidade).
amount-total = { $anchors ->
    [one] 1 ancoragem
   *[other] { $anchors } ancoragens
 }, { $holes ->
    [one] 1 furo
   *[other] { $holes } furos
 }: { $total } com { $waste } % de desperdício, pelo menos { $cartridges ->
    [one] 1 cartucho
   *[other] { $cartridges } cartuchos
 } de { $size } ml.
amount-legs = Contei um furo para cada uma das duas pernas. Se as duas pernas ficam no mesmo furo, siga o número do fabricante.
amount-too-tight = Uma folga de { $each } de cada lado é tão apertada que ficam vazios. Use o diâmetro de furo que o fabricante indica.
amount-too-wide = Uma folga de { $each } de cada lado é mais larga do que qualquer adesivo aqui preenche. Use o diâmetro de furo que o fabricante indica.
amount-too-wide-for-most = Uma folga de { $each } de cada lado: pelos valores usuais, só estes a preenchem: { $who }. Use o diâmetro de furo que o fabricante indica.
amount-nozzle = De cada cartucho, contam-se { $lost } como jogados fora até a cor ficar uniforme; um bico novo depois de uma pausa gasta mais ou menos o mesmo outra vez.
amount-gap-next = Folga apertada ou larga não se conserta com mais adesivo: procure o diâmetro de furo do fabricante e abandone este furo.
amount-check = Se um furo leva muito mais que isso, há um vazio: pare e não confie nele.

## cure
cure-sheet = A ficha técnica do seu cartucho vem primeiro; estes são tempos usuais do tipo, de memória.
cure-rock-temperature = Guie-se pela temperatura da rocha, não do ar, e pela hora mais fria até estar curado.
cure-your-adhesive = O seu adesivo
cure-by-sheet = Calculado com os números da ficha técnica que você disse. Confira-os no cartucho, e se valem para um furo tão molhado como o seu.
cure-sheet-short = O tempo que você leu na ficha é muito mais curto do que o usual deste tipo: leia de novo, horas e não minutos, tempo até a carga e não tempo de gel.
cure-below-sheet = { $what }: a linha mais fria que você disse é para { $lowest }, e a rocha está mais fria. Leia a linha da ficha para esse frio; se não existir, não se pode usar.
cure-above-sheet = { $what }: a linha mais quente que você disse é para { $highest }, e a rocha está muito mais quente. Leia a linha da ficha para esse calor.
cure-spell = { $hours } a { $temperature }, onde são precisas { $needed }: { $share } % da cura.
cure-spell-cold = { $hours } a { $temperature } não contam nada: mais frio do que se sabe que este adesivo cura.
cure-spells-probably = Normalmente já curado: os períodos que você disse somam { $share } % do tempo de cura ({ $what }). Quem decide é a ficha técnica.
cure-spells-not-yet = Ainda não carregue: os períodos que você disse somam { $share } % do tempo de cura ({ $what }).
cure-spells-rest = Faltam mais ou menos { $hours } a { $temperature }.
cure-spells-warmer = Com o frio que faz agora, esperar não adianta: precisa de rocha mais quente.
cure-spells-which = Qual é o adesivo? Enquanto não souber, não carregue.
cure-spells-line = { $what }: { $share } % do tempo de cura usual.
cure-working = Trabalhe dentro de { $working } depois da mistura; depois ninguém toca.
cure-wet = Dobrado, porque o furo está molhado ou não se sabe a umidade.
cure-line = { $what } a { $temperature }: { $working } para trabalhar, { $hours } antes da carga.
cure-line-wet = { $what } a { $temperature }: { $working } para trabalhar, { $hours } antes da carga (dobrado por furo molhado).
cure-too-cold = { $what }: frio demais. Abaixo de { $lowest } pode nunca curar, por mais que se espere.
cure-too-hot = { $what }: quente demais. Acima de { $highest } endurece antes de o chumbador entrar.
cure-temperature = Diga a temperatura da rocha: sem ela não há tempo de cura.
cure-any = Tempos usuais a { $temperature }, por tipo:
cure-wait = { $what } a { $temperature }: deixe { $hours } antes de qualquer carga.
cure-probably = { $what } a { $temperature }: normalmente curado após { $hours }, e já passaram { $since }. Quem decide é a ficha técnica.
cure-not-yet = Ainda não carregue: { $what } a { $temperature } precisa de { $hours }, e só passaram { $since }.

## hole
hole-verdict = Fure e limpe nesta ordem; furo com pó é o erro mais comum.
hole-size = Furo de { $hole } de largura e { $depth } de profundidade, salvo se o fabricante disser outra coisa.

## inspect
inspect-trust = { $signs }: nada do que foi dito fala contra ela. Isso não prova que está boa.
inspect-limit = { $signs }: use só com outra ancoragem de reforço, até alguém que entende a examinar.
inspect-do-not-use = { $signs }: não use até alguém que entende a examinar.
inspect-replace-now = { $signs }: não use nunca mais. Interdite e substitua.
inspect-trust-next = Bata na rocha e na ancoragem com um martelo, olhe a cola e a chapeleta, e anote o que viu.
inspect-limit-next = Reforce com outra ancoragem, avise o clube e mande testar ou substituir.
inspect-do-not-use-next = Marque para que ninguém se prenda nela, e avise o clube.
inspect-replace-now-next = Marque, tire a chapeleta se puder, avise o clube e olhe as vizinhas do mesmo tipo e idade.
inspect-interval-months-6 = Inspecione ancoragens assim a cada 6 meses.
inspect-interval-months-12 = Inspecione ancoragens assim todos os anos.
inspect-interval-years-2 = Inspecione ancoragens assim a cada 2 anos.
inspect-interval-years-3 = Inspecione ancoragens assim a cada 3 anos.
inspect-hidden = O que não se vê: fissuras no metal, ferrugem no furo, cola que nunca curou.

## spacing
spacing-rule = Fique a 1,5 vezes a profundidade, e pelo menos a 150 mm (6 in), de qualquer borda e fissura; entre ancoragens, 3 vezes a profundidade, e pelo menos 200 mm (8 in).
spacing-verdict = Para { $depth } de profundidade: pelo menos { $edge } de qualquer borda e fissura, e { $spacing } entre ancoragens.
spacing-too-near = Perto demais. Para { $depth } de profundidade mantenha { $edge } de qualquer borda e fissura, e { $spacing } entre ancoragens.
spacing-old-holes = Furos velhos contam como fissuras: fique a duas vezes a profundidade deles, ou preencha-os e fique a 5 diâmetros de furo.
spacing-hollow = Bata todo o círculo com um martelo; um som oco em qualquer parte significa outro ponto.

## load
load-cannot = Diga o que se faz com a ancoragem, e calculo a carga: a dureza de uma queda, o ângulo de dois ramos, o vão e a flecha de uma linha, ou quem fica pendurado nela.
load-tell-more = Por exemplo: "queda de fator 0,5, 80 kg", "dois chumbadores a 60 graus, 2 kN", "descer 90 kg", "linha de 30 m, 1,5 m de flecha, 80 kg". Pêndulos, trancos e linhas esticadas fazem várias vezes o peso.
load-took-person = Nenhum peso foi dito: contei com { $mass }, uma pessoa pesada com equipamento.
load-took-rescue = Nenhum peso foi dito: contei com { $mass }, duas pessoas e equipamento.
load-share = Isso é { $out } % dos 15 kN direto para fora e { $along } % dos 25 kN ao longo da rocha da EN 959: testes de tipo em bom concreto (betão), não o que a sua rocha aguenta.
load-share-out = Isso é { $out } % dos 15 kN direto para fora da EN 959: um teste de tipo em bom concreto (betão), não o que a sua rocha aguenta.
load-share-along = Isso é { $along } % dos 25 kN ao longo da rocha da EN 959: um teste de tipo em bom concreto (betão), não o que a sua rocha aguenta.
load-above-rare = Isso é mais do que { $rare }, que a prática comum prevê como a carga máxima rara: escale ou monte de modo que não possa chegar a isso.
load-design-met = O valor de 5 % dos seus testes dividido por { $strength }, contra { $load } vezes a carga: cumpre. Só para ancoragens como as testadas, nessa rocha.
load-design-short = O valor de 5 % dos seus testes dividido por { $strength } é menos que { $load } vezes a carga: não basta.
check-load-rare = carga máxima rara que a prática comum prevê
check-load-design = valor de 5 % dos seus testes, com os dois fatores
check-line-most = tensão máxima da linha que os slackliners aconselham, com movimento
load-plan = A prática comum prevê para uma ancoragem assim { $usual } em uso e { $rare } como carga máxima rara, cada chumbador sozinho.
load-haul = Içar por um mosquetão puxa mais do que descer: { $haul }.

load-fall-bolt = Queda de fator { $factor }, { $mass }: conte com até { $bolt } no chumbador de cima, { $climber } no escalador.
load-fall-belay = Queda de fator { $factor }, { $mass }: conte com até { $climber } direto na parada, { $bolt } se a corda passa por um mosquetão dela.
load-fall-common = Com uma corda comum ({ $label } na etiqueta), pela conta simples de manual: { $bolt } no chumbador, { $climber } no escalador.
load-fall-common-belay = Com uma corda comum ({ $label } na etiqueta), pela conta simples de manual: { $climber } direto nela, { $bolt } se a corda passa por um mosquetão.
load-rope-limit = Nenhuma corda foi dita: contei com a mais rígida que a EN 892 permite, 12 kN na queda de ensaio. Diga a força de choque da etiqueta da sua corda, e uso essa.
load-rope-label = Leio a etiqueta como a de uma corda simples, testada com 80 kg; uma meia corda (corda dupla) é testada com 55 kg e é mais rígida do que a etiqueta parece. Cordas molhadas, geladas ou velhas também são mais rígidas.
load-rope-told = Calculado com o módulo da corda que você disse; cordas molhadas, geladas ou velhas são mais rígidas.
load-fall-drag = O chumbador recebe as duas pontas da corda, 1,66 vezes a força no escalador. O atrito ali impede que parte da corda estique, por isso a queda age como fator { $effective } em vez de { $factor }.
load-fall-strands = Um chumbador por onde passa a corda recebe as duas pontas dela, 1,66 vezes a força no escalador.
load-fall-legs = Em dois chumbadores com { $angle }° entre os ramos: { $each } em cada um, e cada um tem de aguentar tudo sozinho.
load-fall-measured = Quedas medidas em ginásio, para comparar: { $mean } no chumbador em média, { $most } no máximo. Corpos e quem assegura cedem, por isso a maioria das quedas fica abaixo deste cálculo; nunca conte com isso.
load-fall-carabiner = Um mosquetão aguenta { $closed } com o gatilho fechado e só { $open } com ele aberto (EN 12275, tipo básico).
load-fall-rope-out = Diga quanta corda está dada: o comprimento dela e a altura da queda definem a dureza.
load-fall-factor = Fator de queda: altura da queda dividida pela corda dada, 0 a 2. O mesmo fator puxa igual com corda curta ou comprida.
load-sling = Nunca suba acima da parada preso a uma fita estática: uma queda de fator 1 nela faz { $force }; fitas e ancoragens quebram.
load-absorber = Sem número: uma queda assim passa do que uma corda, uma ancoragem ou um corpo sobrevive sem absorvedor de energia.
load-absorber-why = Um fator de queda acima de 2 acontece em via ferrata, onde a longe é curta e a queda é grande.
load-absorber-next = Use um conjunto de via ferrata com absorvedor para o seu peso. Quem projeta a via dimensiona as ancoragens e o cabo.

load-legs = { $load } em dois chumbadores com { $angle }° entre os ramos: { $each } em cada um, { $share } % da carga, enquanto os dois dividem por igual.
load-legs-too-wide = Aberto demais: { $load } com { $angle }° entre os ramos põe { $each } em cada chumbador, { $share } % da carga. Nunca acima de 90°; 60° ou menos é boa prática.
load-legs-unequal = { $load } em ramos a { $a }° e { $b }° da vertical: { $first }, { $firstShare } %, no primeiro e { $second }, { $secondShare } %, no segundo.
load-legs-unequal-wide = Aberto demais: { $load } em ramos a { $a }° e { $b }° da vertical põe { $first }, { $firstShare } %, no primeiro e { $second }, { $secondShare } %, no segundo. Nunca acima de 90° entre eles.
load-legs-sum = Os dois ramos fazem { $sum }° entre si, não { $told }°; dois ramos iguais a { $told }° receberiam { $each } cada um.
load-legs-narrow = 60° ou menos é boa prática: alongue os ramos.
load-legs-each = Planeje cada chumbador para aguentar tudo sozinho, { $load } e mais o que se move e cai: a tração muda de direção, nenhuma fita divide por igual, e um chumbador pode falhar.
load-legs-failure = Se um ramo falha e { $slack } de folga corre numa fita estática de { $length }, chega ao outro { $shock }: amarre de modo que nada possa correr.
load-legs-triangle = Nunca passe um só anel pelos dois chumbadores (o triângulo): seriam { $triangle } em cada um.
load-legs-lowering = Enquanto alguém desce ali por um mosquetão, tudo isto é 1,66 vezes maior: até { $most } num chumbador.

load-line = { $load } no meio de { $span } com { $sag } de flecha: a linha puxa { $tension } em cada ponta enquanto ninguém se mexe. Quem decide é um técnico de cordas qualificado.
load-line-tension = Uma linha a { $tension } puxa esse valor em cada ponta enquanto ninguém se mexe. Quem decide é um técnico de cordas qualificado.
load-line-cannot = Sem vão e flecha, ou a tensão, não consigo calcular quanto puxa uma linha.
load-line-rule = Regra prática: flecha de um décimo do vão puxa 2,5 vezes o peso nela, um vigésimo 5 vezes, um quinquagésimo 12,5 vezes.
load-line-rigger = Highlines, pontes de corda e linhas de resgate: explico as forças e não libero nada. Um técnico de cordas qualificado planeja, inspeciona e testa.
load-line-bounce = Saltar ou cair na leash fez 1,7 a 1,9 vezes a tração de caminhar, em medições publicadas: aqui até { $moving }.
load-line-anchor = Técnicos de cordas querem que cada ponto de ancoragem aguente pelo menos 3 vezes a tensão da linha, aqui { $anchor }, com cada ramo capaz de aguentar tudo (prática comum).
load-line-half = Metade da flecha, { $sag }, puxaria { $tension }.
load-line-own = O peso da própria linha acrescenta { $added }.
load-line-both = Só vão e flecha dão { $tension }; a tensão que você disse é maior, por isso usei essa.
load-line-pretension = Tomei a tensão como a da linha carregada. Se é a que você monta antes de alguém subir, a linha carregada puxa mais.
load-line-slacken = O conselho dos slackliners é manter a linha abaixo de { $most }, com movimento: dê mais flecha.
load-line-ends = Dois chumbadores numa ponta com { $angle }° entre os ramos: { $each } disso em cada um.
load-line-measured = Medido, para comparar, 57 kg em 41 m de fita de poliéster: 3,1 kN a caminhar, 4,4 a saltar, 5,3 numa queda na leash.

load-lower = Descer { $mass } põe { $lower } na ancoragem de cima; seguro de repente por uma corda sem folga, { $sudden }.
load-top-rope = Top-rope com { $mass }: { $lower } na ancoragem de cima ao descer, { $sudden } quando a corda segura sem folga.
load-lower-friction = A ancoragem recebe as duas pontas da corda: o peso do escalador e o que segura quem assegura, 1,66 vezes o peso num mosquetão, duas vezes numa polia.
load-top-rope-slack = Com folga de um décimo da corda, na corda mais rígida que a EN 892 permite: { $slack }. Medido e relatado em top-rope: 1,5 a 3 kN (prática comum).
load-abseil = Rapel com { $mass }: { $hang } parado, { $jerky } quando vai aos trancos.
load-abseil-jerk = Um rapel suave fica em 1 a 1,5 kN por pessoa; parar de repente e dar trancos faz 2 a 2,5 (prática comum). Vá com suavidade.
load-rescue = Carga de resgate de { $mass }: { $hang } parada, { $lower } descida por um mosquetão, { $haul } içada por um. Quem decide é um técnico de cordas qualificado.
load-rescue-rigger = Explico cargas de resgate e não libero nada: quem planeja é um técnico de cordas qualificado ou a equipe de resgate, em duas ancoragens, cada uma capaz de aguentar tudo.
load-rescue-shock = Um escorregão ou um tranco com duas pessoas faz { $least } a { $most } (prática comum).
load-belay = Uma parada com { $mass } pendurados nela leva { $hang }; uma queda de fator 2 direto nela puxa até { $fall }.
load-lead = Queda de guia com { $mass }: planeje o chumbador de cima para { $rare }, a carga máxima rara; quedas duras fazem 4 a 8 kN (prática comum).
load-lead-factors = Estimativas por cima no chumbador, com a corda mais rígida que a EN 892 permite e nada que ceda: { $easy } com fator de queda 0,1, { $usual } com 0,3, { $hard } com 0,5.
load-hang = { $mass } pendurados parados são { $hang }; largados numa corda sem folga, { $sudden }.
load-lower-of = Descido por um mosquetão: { $lower } na ancoragem.

load-strength-cannot = O que um chumbador aguenta não posso dizer sem a rocha, o tipo, a grossura e o comprimento.
load-strength-open = Se uma ancoragem aguenta { $load } não posso dizer sem a rocha, o tipo, a grossura e o comprimento.
load-strength-minimums = Pela EN 959 uma ancoragem de rocha aguenta 15 kN direto para fora e 25 kN ao longo da rocha no teste de tipo, em bom concreto (betão). Isso não é carga de trabalho, e rocha mole aguenta menos.
load-strength-tell = Diga, por exemplo, "químico de 12 x 100 em granito com epóxi"; e faça testes de arrancamento nessa rocha.
load-strength-signs = O que está enferrujado, rachado, torto ou solto não tem resistência que se possa calcular. Não carregue; pergunte-me sobre a inspeção.

## results of pull tests
results-meets = { $count } arrancamentos: média { $mean }, valor de 5 % { $characteristic }. Está acima de { $need }, que a EN 959 pede num teste de tipo, e mesmo assim não é carga para se pendurar.
results-upper = { $count } arrancamentos: média { $mean }, valor de 5 % { $characteristic }, mas só como limite superior, porque os pés do pórtico estavam perto da ancoragem.
results-upper-open = { $count } arrancamentos: média { $mean }, valor de 5 % { $characteristic }; um limite superior enquanto ninguém disser que os pés do pórtico estavam afastados da ancoragem.
results-unproved = { $count } arrancamentos: média { $mean }, valor de 5 % só { $characteristic }. Não está provado: fica abaixo de { $need }, que a EN 959 pede num teste de tipo.
results-weak = Fraco demais: { $count } arrancamentos aguentam { $mean } em média, valor de 5 % { $characteristic }, e a EN 959 pede { $need } num teste de tipo.
results-scattered = Não confie nestes { $count } arrancamentos: variam { $scatter } %, média { $mean }, valor de 5 % { $characteristic }. Descubra primeiro o que havia de diferente entre eles.
results-too-few = { $count ->
    [0] Diga as cargas em que cederam: pelo menos 3 delas.
    [one] Um arrancamento não diz nada sobre a próxima ancoragem: arranque mais { $missing }, do mesmo tipo na mesma rocha.
   *[other] { $count } arrancamentos não dizem nada sobre a próxima ancoragem: arranque mais { $missing }, do mesmo tipo na mesma rocha.
 }
results-lowest = Só se sabe o que as ancoragens daquele dia aguentaram: { $value } a mais fraca.
results-how-many = 3 são o mínimo, 5 são o usual, 10 dão um valor de 5 % útil.
results-equal = Os { $count } resultados são todos iguais: as leituras foram arredondadas ou copiadas, por isso não dão resistência nenhuma.
results-equal-next = Leia os picos de novo, ao décimo de quilonewton, ou arranque mais uma vez.
results-mean = Desvio-padrão { $deviation }, dispersão { $scatter } %; a mais fraca aguentou { $min }.
results-lognormal-few = Valor de 5 % { $value } com 90 % de confiança: 19 de 20 aguentam mais. Pela curva lognormal, porque { $count } arrancamentos são poucos{ $other }.
results-lognormal-scatter = Valor de 5 % { $value } com 90 % de confiança: 19 de 20 aguentam mais. Pela curva lognormal, porque variam mais de 15 %{ $other }.
results-normal = Valor de 5 % { $value } com 90 % de confiança a partir de { $count } arrancamentos: 19 de 20 aguentam mais. Pela curva normal{ $other }.
results-other = ; a outra curva dá { $value }
results-other-nonsense = ; a curva normal cairia abaixo de zero
results-cut = Com dispersão acima de 20 % (aqui { $scatter } %), as avaliações deixam contar só { $factor } do valor de 5 %: { $value }.
results-outlier-low = { $value } fica muito abaixo dos outros. Pergunte o que houve ali: mistura ruim, vazio, fissura, pórtico escorregou? Fica na conta: o teste serve justamente para ancoragens assim.
results-outlier-high = { $value } fica muito acima dos outros: confira essa leitura. Fica na conta até que se mostre um erro.
results-more = Com a mesma média e dispersão, { $count } arrancamentos no total provariam.
results-more-useless = Com a mesma média e dispersão nem { $count } arrancamentos provariam: são precisas ancoragens mais compridas ou mais grossas.
results-bond = Aderência da cola em { $legs ->
    [one] uma perna
   *[other] { $legs } pernas
 } de { $diameter } × { $depth }: média { $mean }, valor de 5 % { $low }.
results-bond-least = Aderência, se { $legs ->
    [one] uma perna
   *[other] { $legs } pernas
 } de { $diameter } × { $depth } com cola: pelo menos { $mean } em média, valor de 5 % { $low }; mais onde foi outra coisa que cedeu.
results-bond-update = A tabela diz { $table } ({ $adhesive }); com os seus arrancamentos na conta, o valor do meio é { $median }, o valor de 5 % para a próxima ancoragem { $low }.
results-direction = Tomado como puxado direto para fora. Se você puxou ao longo da rocha, compare com { $need }.
results-missing = Você disse { $told } ancoragens mas { $count } resultados. Os outros também contam: por que não estão aí?
results-frame = Se os pés do pórtico estavam mais perto do que duas vezes a profundidade, seguraram a rocha: o que quebrou mostra menos da rocha do que da cola e do metal.
results-mixed = Falhas diferentes são séries de números diferentes: julgue rocha, cola e metal à parte.
results-steel = O metal quebrou primeiro: rocha e cola aguentam pelo menos isto, e quanto mais não se sabe.
results-few = { $count } resultados são poucos: cada um a mais move o valor de 5 %.
results-not-said = Vale para esta rocha, este tipo, este instalador e este tempo. De furos molhados, cargas permanentes, corrosão e da próxima falésia não diz nada.
results-all-above = Todos os { $count } arrancamentos aguentaram pelo menos { $least }, e { $failed ->
    [0] nenhum cedeu
    [one] só um cedeu
   *[other] só { $failed } cederam
 }: poucos demais para um valor de 5 %.
results-no-fractile = Um valor de 5 % precisa de pelo menos { $needed } arrancamentos até a ruptura com resultados diferentes.
results-share = Com 95 % de confiança, até { $share } % de ancoragens assim ainda podem aguentar menos que { $least }.
results-censored = { $count } arrancamentos, { $failed } até a ruptura e { $stopped } parados antes: valor do meio { $median }, valor de 5 % { $characteristic }. { $ends }
results-censored-meets = Acima de { $need }, que a EN 959 pede num teste de tipo, e mesmo assim não é carga para se pendurar.
results-censored-upper = Um limite superior, salvo se os pés do pórtico estavam afastados da ancoragem.
results-censored-unproved = Não está provado: abaixo de { $need }, que a EN 959 pede num teste de tipo.
results-censored-weak = Fraco demais: a EN 959 pede { $need } num teste de tipo.
results-censored-scattered = Variam demais para se confiar: descubra o que havia de diferente.
results-stopped = Um arrancamento parado conta como "pelo menos isto". O valor de 5 % é rebaixado conforme o número de rupturas reais: { $failed }.
results-censored-point = Sem essa redução, a curva ajustada tem o ponto de 5 % em { $value }; a dispersão é { $scatter } %.
check-pulls-out = direto para fora, contra o mínimo do teste de tipo da EN 959
check-pulls-sideways = ao longo da rocha, contra o mínimo do teste de tipo da EN 959

## proof tests
proof-load = { $load }
proof-load-untold = essa carga
proof-held = { $count ->
    [one] Uma ancoragem aguentou
   *[other] { $count } ancoragens aguentaram
 } { $load }: nenhum defeito grosseiro { $count ->
    [one] nessa
   *[other] nessas
 }, mas das outras até { $share } % ainda podem estar ruins.
proof-proves = Prova { $load }, naquele dia, naquela direção, para aquelas ancoragens. Pode até ter estragado uma.
proof-needed = Para ter 95 % de certeza de que no máximo uma em vinte é ruim, teriam de aguentar { $needed }.
proof-little = Não prova nada sobre resistência acima dessa carga, cargas permanentes ou fissuras de corrosão.
proof-failure-instead = A força das ancoragens só se sabe com pelo menos 3, melhor 5 a 10, arrancadas até falhar.
proof-count = Diga quantas ancoragens aguentaram: sem o número não prova nada.
proof-one-gave-way = Pare: uma ancoragem falhou no teste de prova, e isso põe todas as outras em dúvida.
proof-several-gave-way = Pare: várias ancoragens falharam. Interdite a via e teste cada uma, ou substitua todas.
proof-failed-out = O que se mexeu ou falhou está fora: marque, retire, guarde a peça.
proof-double = Encontre a causa, depois teste pelo menos 5 % de todas as ancoragens dali, e pelo menos 6.
proof-all = Teste todas as ancoragens desse tipo ali, e repense rocha, ancoragem e adesivo.
proof-why = Procure a causa: pó, mistura ruim, frio, vazio, rocha mole ou fissurada, furo errado.

## comparing two groups
compare-groups = Diga as cargas dos dois grupos, por exemplo: lisa 33 35 37, rugosa 36 44 51.
compare-too-few = Cada grupo precisa de pelo menos 3 resultados antes de se poder comparar.
compare-example = 5 a 10 resultados em cada grupo mostram mais.
compare-no-scatter = Nenhum dos grupos varia: as leituras foram arredondadas ou copiadas, por isso não há o que comparar.
compare-first = O primeiro grupo é mais forte: o acaso sozinho mostraria uma diferença assim em { $chance } % dos casos.
compare-second = O segundo grupo é mais forte: o acaso sozinho mostraria uma diferença assim em { $chance } % dos casos.
compare-none = Não se mostra diferença; isso não quer dizer que sejam iguais (só acaso: { $chance } % dos casos).
compare-group-first = Primeiro grupo: { $count } arrancamentos, média { $mean }, dispersão { $scatter } %, o mais fraco { $min }.
compare-group-second = Segundo grupo: { $count } arrancamentos, média { $mean }, dispersão { $scatter } %, o mais fraco { $min }.
compare-interval = Primeiro menos segundo: { $difference }; com 95 % de confiança entre { $low } e { $high }.
compare-interval-ratio = Primeiro dividido pelo segundo: { $ratio } vezes; com 95 % de confiança entre { $low } e { $high } vezes.
compare-logs = Comparados pelos logaritmos, porque um grupo varia mais de 20 % (teste de Welch).
compare-plain = Pelo teste de Welch, que deixa os dois variarem de modo diferente.
compare-needed = Para ver uma diferença de 20 % com esta dispersão, cada grupo precisa de cerca de { $needed } arrancamentos.
compare-hopeless = Com esta dispersão nem { $most } arrancamentos em cada grupo mostrariam uma diferença de 20 %.
compare-same-failure = Só se podem comparar arrancamentos que falharam da mesma maneira.
compare-lowest = O que conta para uma vida é a ancoragem mais fraca, não a média: pergunte também o valor de 5 % de cada grupo.

## planning a pull test
plan-failure-first = Arranque primeiro pelo menos { $fewest } ancoragens de sobra até falharem, depois teste as que ficam com { $load }.
plan-failure = Arranque até falharem pelo menos { $fewest } ancoragens que você sacrifica, nesta rocha e deste tipo.
plan-proof = Teste as ancoragens que ficam com { $load } direto para fora, não mais: isso só encontra defeitos grosseiros.
plan-failure-count = Até a ruptura: { $fewest } é o mínimo para cada rocha e tipo, { $good } dão um valor de 5 % útil; em rocha onde não se vai escalar.
plan-failure-rate = Carregue de modo constante para que o pico chegue após { $shortest } a { $longest } minutos, e siga 2 a 5 mm além dele.
plan-failure-keep = Anote cada pico e o que cedeu. As fracas são o resultado.
plan-which-all = Prova: todas as ancoragens.
plan-which-tenth = Prova: uma em cada dez, e pelo menos { $fewest } de cada trecho de rocha.
plan-which-all-of = Prova: todas as ancoragens, { $tested } no total.
plan-which-tenth-of = Prova: uma em cada dez, e pelo menos { $fewest } de cada trecho de rocha: { $tested } de { $count }.
plan-proof-load = Carga de prova { $load } (usual até { $most }) direto para fora; mantenha { $shortest } a { $longest } segundos.
plan-proof-too-high = { $wanted } é demais para uma ancoragem que fica: uma carga de prova pode estragar o que testa, e alguns olhais dobram a partir de 6 a 10 kN.
plan-proof-above-half = Metade do valor de 5 % que calculo é só { $cap }. Arranque primeiro algumas de sobra até falharem: uma carga de prova acima da metade do verdadeiro valor de 5 % pode quebrar ancoragens boas.
plan-accept = Aprovada quando a carga não cai mais de 5 %, nada escorrega, uma ancoragem colada não se move mais de 0,5 mm (outros tipos 1 mm), e não aparece fissura nem anel de pó.
plan-frame = Pés do pórtico a pelo menos duas vezes a profundidade de cada lado, senão a rocha não pode romper e o resultado sai bom demais.
plan-frame-depth = Pés do pórtico a pelo menos { $side } de cada lado (um anel de { $ring } de largura interna), senão a rocha não pode romper e o resultado sai bom demais.
plan-energy = A { $force } um pórtico que se move 5 mm guarda { $energy }: uma peça de 1 kg sai voando a { $speed }. Dez metros de fita de nylon em linha guardariam cerca de { $times } vezes isso: só correntes e barras.
plan-stand = Ninguém na linha de tração; a 3 m para o lado, bomba com mangueira; o chão embaixo interditado; quem testa preso a uma ancoragem própria.
plan-write = Anote rocha, umidade, medida, adesivo e idade dele, temperatura, pés do pórtico, carga de pico, o que cedeu; tire uma foto.
plan-then = Depois diga todas as cargas, e calculo a média e o valor de 5 %.
check-proof = metade do valor de 5 % calculado, contra a carga de prova

## life of a metal
life-place = Diga onde fica a falésia: sem o lugar não há duração para planejar.
life-suitable = Planeje lá { $range } ({ $what }): uma faixa de planejamento, nunca uma garantia.
life-limited = Planeje lá não mais que { $low } anos ({ $what }), e inspecione: { $why }
life-none = Não planeje duração nenhuma lá ({ $what }): { $why }
life-was = Onde foi colocado mesmo assim, durou { $range }, e alguns quebraram sem sinal.
life-range = { $low } a { $high } anos
life-range-one = { $low } anos
life-because = O que define a faixa lá: { $why }.
life-because-cracks = O que define a faixa lá é o risco de rachar: { $why }.
life-practice = A faixa é prática comum, não lei da natureza: a primeira mancha, fissura ou peça solta acaba com ela.
life-hidden = Frestas, água que escorre e soldas envelhecem mais depressa que o metal à vista, e a parte no furo não se vê.
life-rock = Além disso, rocha, cola e desgaste acabam com a vida de uma ancoragem antes do metal.
life-bar = De aço sem proteção, com { $diameter } de grossura, sobrariam { $left } % da seção após { $years } anos se enferrujasse por igual. Não enferruja: os pites vão 2 a 5 vezes mais fundo, então este é o melhor caso.
life-bar-gone = Uma barra de aço sem proteção pode enferrujar de lado a lado em { $years } anos.
coating-usual = Ninguém disse a espessura: contei com { $thickness }, a mais fina que é usual.

## cost
cost-one = Para { $name }: { $yearly } por ano por ancoragem em { $horizon } anos, com { $holes ->
    [one] um furo
   *[other] { $holes } furos
 }.
cost-cheapest = Entre o que é seguro lá, o mais barato é: { $name }; { $yearly } por ano por ancoragem em { $horizon } anos, contra { $otherYearly } ({ $other }).
cost-cheapest-if-safe = Se todos são seguros no seu lugar, o mais barato é: { $name }; { $yearly } por ano por ancoragem em { $horizon } anos, contra { $otherYearly } ({ $other }).
cost-place = A segurança vem primeiro: diga onde fica a falésia, e comparo o que é seguro lá. Até lá, nenhuma classificação.
cost-none-safe = Nenhum destes é seguro lá, por isso não há o que comparar: pergunte que metal usar.
cost-price = Diga quanto custam as peças de uma ancoragem, em qualquer moeda: { $name }.
cost-life = Diga quantos anos dura, ou onde fica a falésia: { $name }.
cost-this = Custa { $yearly } por ano por ancoragem em { $horizon } anos, com { $holes ->
    [one] um furo
   *[other] { $holes } furos
 }.
cost-anchor = esta ancoragem
cost-nth = opção { $number }
cost-option = Por ano { $yearly } para { $name } ({ $total } em dinheiro de hoje), { $holes ->
    [one] um furo
   *[other] { $holes } furos
 } em { $horizon } anos; peças { $parts }, trabalho { $labour }, dura { $life }.
cost-planned = A duração de { $name } é planejada pelo lugar ({ $range }, prática comum, sem garantia); calculo com o extremo curto.
cost-no-price = Fica de fora, sem preço dito: { $name }.
cost-no-life = Fica de fora: { $name }; ninguém disse quanto dura, e não tenho esse valor para lá.
cost-all = Para { $count } ancoragens ({ $name }): { $total } em dinheiro de hoje.
cost-break-price = Com peças a { $price } ou menos, { $name } não custaria mais que { $other }.
cost-break-price-never = Mesmo com peças de graça, { $name } custaria mais que { $other }.
cost-break-life = Durando { $life } ou mais, { $name } não custaria mais que { $other }.
cost-break-life-never = Por mais que dure, { $name } custa mais que { $other }.
cost-robust = A ordem se mantém mesmo se o mais barato durar um quarto menos e os outros um quarto mais.
cost-not-robust = A ordem se inverte se o mais barato durar um quarto menos e os outros um quarto mais: não se apoie nela.
cost-rates = Em dinheiro de hoje: { $none } a 0 %, { $three } a 3 %, { $five } a 5 %.
cost-rates-same = A 0, 3 e 5 %, o mais barato é sempre o mesmo: { $first }.
cost-rates-turn = Depende da taxa de juros: o mais barato é a 0 % { $none }, a 3 % { $three }, a 5 % { $five }.
cost-terms = Calculado para { $horizon } anos a { $rate } % por ano acima da inflação; diga outro valor e calculo de novo.
cost-no-labour = O trabalho não está contado, porque ninguém disse quanto vale; isso favorece o que tem de ser trocado muitas vezes.
cost-holes = Cada substituição é um furo novo na rocha, a não ser que o velho possa ser usado de novo.

## cautions, permission, emergency
cautions-verdict = Antes de furar:
permission-verdict = Pergunte antes de furar: não posso dizer se ancoragens são permitidas ali.
permission-owner = Decidem o proprietário ou quem gere o terreno da falésia, e as regras locais de equipagem.
permission-nature = Áreas protegidas, épocas de nidificação e patrimônio histórico têm regras próprias.
permission-club = O responsável de acesso do seu clube, ou a federação regional, sabe a quem perguntar.
emergency-verdict = Peça ajuda já: chame o resgate, e ninguém carregue essa ancoragem.
emergency-call = Ligue para o número de emergência local. Diga onde vocês estão, quantas pessoas, quem está ferido.
emergency-back-up = Reforce a segurança da pessoa com algo independente: outra ancoragem boa, uma árvore, uma segunda corda.
emergency-do-not-load = Não desça, não puxe nem escale no que falhou nem nas vizinhas do mesmo tipo.
emergency-after = Quando todos estiverem a salvo: interdite a via, avise o clube, guarde a peça quebrada como está.

## refusal
refusal-reason = { $why }
refusal-certify = Não certifico nada.
refusal-certify-next = Um equipador qualificado que inspeciona e testa no local pode dar um registro; pergunte a ele ou a quem gere o terreno.
refusal-hang-people = Não digo que pessoas podem se pendurar nela.
refusal-hang-people-next = Um equipador ou técnico de cordas qualificado tem de ver, testar e decidir. Até lá, use outra ancoragem.
refusal-structure = Não avalio estruturas.
refusal-structure-next = Pergunte a um engenheiro de estruturas habilitado e ao dono da estrutura.
refusal-banned-place = Não ajudo a colocar ancoragens onde não são permitidas.
refusal-banned-place-next = Pergunte a quem gere o terreno; talvez haja um modo de pedir autorização.
refusal-expired-adhesive = Não use: esse adesivo está fora do prazo de validade.
refusal-expired-adhesive-next = Pegue um cartucho novo, e veja a data e como foi guardado. Se já há chumbadores colados com o velho, interdite-os, e teste todos ao arrancamento ou substitua-os.
refusal-skip-safety = Não ajudo a pular um passo de segurança.
refusal-skip-safety-next = Faça o passo, ou não coloque a ancoragem hoje.
refusal-hollow-rock = Nenhuma ancoragem e nenhum número para rocha oca.
refusal-hollow-rock-next = Bata na rocha em volta com um martelo e mude para um ponto que soe limpo em toda a volta; se não houver, desista.

failed = Algo falhou em mim, por isso prefiro não responder a responder errado. Nada foi mudado; avise, por favor, quem cuida de mim.

## Terminal
chat-greeting = Chough. Pergunte sobre ancoragens na rocha com as suas palavras; "ajuda" mostra exemplos, Ctrl-D termina.
chat-choose = Digite uma letra para escolher, ou responda com palavras:

## Settings, units, and words that point back
settings-admins-only = Só quem administra este grupo pode mudar as definições. Nada foi mudado.
settings-no-rooms = Este chat não tem tópicos nem canais para escolher.
settings-language = Idioma, a não ser que um membro escreva noutro: { $name }.
settings-units-metric = Unidades métricas primeiro.
settings-units-imperial = Polegadas e libras primeiro.
settings-rooms = { $count ->
    [one] Só respondo num tópico ou canal.
   *[other] Só respondo em { $count } tópicos ou canais.
  }
units-set-metric = A partir de agora mostro primeiro as unidades métricas.
units-set-imperial = A partir de agora mostro primeiro polegadas e libras.
language-en = English
language-es = español
language-pt = português
language-fr = français
language-it = italiano
language-de = Deutsch
other-which = Qual dos dois queres dizer?
other-none = Não sei a que outro te referes: diz o nome.

## In a group
too-fast = Foi depressa demais para mim. Espera um minuto e pergunta de novo.
group-greeting =
  Olá, sou o Chough. Ajudo com ancoragens fixas em rocha: que metal, que tipo, que profundidade, que adesivo, quanto tempo de cura, o que mostra um ensaio de tração, o que significa a ferrugem.
  Escreve-me com um comando como /material ou /help, menciona-me ou responde-me; de resto fico calado.
  Não vejo a rocha e nunca certifico. Uma ancoragem errada pode matar: decidem as regras locais, as instruções do fabricante e um equipador qualificado.
  Quem administra o grupo pode definir a rocha, a costa, o idioma e as unidades com /club, por exemplo "/club granito, interior".
sent-again = (Enviado de novo depois de uma interrupção; talvez já o tenhas recebido.)
press-for-another = Esta pergunta era para outra pessoa. Pergunta-me tu e terás a tua.

## Pictures
picture-nothing = Nada a desenhar: não há valores.
picture-more = e mais { $count }
picture-axis-time = tempo, s
picture-axis-force = força, kN
picture-axis-displacement = deslocamento, mm
picture-axis-bond = aderência, MPa
picture-axis-cost = custo por ano
picture-axis-risk = probabilidade de falhar em um ano
picture-force-time = Força no tempo: { $name }
picture-force-displacement = Força conforme o deslocamento: { $name }
picture-peak = pico de um arrancamento
picture-first-drop = primeira baixa da força
picture-pull = pico { $peak }
picture-pull-dropped = pico { $peak }, primeira baixa em { $drop }
picture-need = { $name }: pelo menos { $load }
picture-groups = Arrancamentos comparados: { $name }
picture-failed = um arrancamento, levado até a ruptura
picture-stopped = um arrancamento, parado antes da ruptura: aguentou pelo menos isto
picture-mean = média: metade aguenta menos
picture-characteristic = valor de 5 %: 19 de 20 aguentam mais
picture-tests = { $count ->
    [one] { $count } arrancamento
   *[other] { $count } arrancamentos
 }{ $stopped ->
    [0] { "" }
   *[other] , dos quais parados antes da ruptura: { $stopped }
 }
picture-group = { $name }: { $parts }
picture-group-mean = média { $mean }
picture-group-low = valor de 5 % { $low }
picture-group-no-low = sem valor de 5 %
picture-bond = Aderência, aprendida e publicada: { $name }
picture-published = publicado: { $low } a { $high }
picture-learned = média com os arrancamentos próprios na conta: { $mean }; com { $share } % de probabilidade entre { $low } e { $high }
picture-own = arrancamentos próprios: { $tests }
picture-used = valor usado: { $used }
picture-costs = Quanto custa a substituição: { $name }
picture-policy = { $name }: { $total } ao todo
picture-risks = Quais ancoragens primeiro: { $name }
picture-share = { $share } %
picture-share-under = menos de { $share } %
picture-risk-act = cheio: agir aqui primeiro
picture-risk-watch = vazio: continuar a inspecionar
picture-alt-reached = Chegaram a { $load } ({ $name }): { $reached } de { $count } arrancamentos.
picture-alt-peaks = { $count ->
    [one] { $count } arrancamento, pico { $most }.
   *[other] { $count } arrancamentos, picos de { $least } a { $most }.
 }
picture-alt-no-pulls = { $count } arrancamentos encontrados neste registro.
picture-alt-groups-met = Grupos cujo valor de 5 % chega a { $load } ({ $name }): { $met } de { $count }.
picture-alt-groups-lowest = Menor valor de 5 % de { $count } grupos: { $low } ({ $name }).
picture-alt-groups-no-low = { $count } grupos com { $tests } arrancamentos, nenhum com valor de 5 %.
picture-alt-below = Cederam abaixo da faixa publicada: { $below } de { $count } arrancamentos próprios.
picture-alt-range = Arrancamentos próprios de { $least } a { $most }.
picture-alt-cheapest = O mais barato em { $years } anos: { $name }, { $total } ao todo.
picture-alt-policy = { $policy }, no máximo { $most } em um ano ({ $year }).
picture-alt-no-policies = { $count } planos a comparar.
picture-alt-act = { $act } de { $count } ancoragens: agir aqui primeiro.
picture-alt-highest = Maior probabilidade de falhar em um ano: { $name }, { $share }.
## Places
place-impossible = Esse lugar não existe: a latitude vai de -90 a 90 e a longitude de -180 a 180. Nada foi mudado.
place-null = É o ponto 0, 0, o que dá um recetor sem sinal. Nada foi mudado.
place-at-sea = Esse lugar fica no mar alto. Nada foi mudado.
place-sea = Pelo mapa aberto o mar fica a cerca de { $distance }, com margem de { $uncertainty }. Conto com isso; diz-me se estiver errado. Podem faltar lagoas e rios com maré.
place-near-limit = Pelo mapa aberto o mar fica a cerca de { $distance }, com margem de { $uncertainty }: perto demais de um limite de classe. Conto com { $used } até me dizeres melhor. Podem faltar lagoas e rios com maré.
place-far = Pelo mapa aberto o mar fica a mais de { $distance }; conto com isso. Lagos salgados, piscinas e estradas de inverno também têm sal: avisa-me.
# telegram
telegram-old-button = Este botão é de uma versão anterior. Pergunta outra vez e recebes um novo.
telegram-only-words = Leio palavras, uma localização ou uma tabela de resultados de ensaio; não consigo ver fotografias, gravações nem autocolantes. Escreve o que vês, por favor.
telegram-file-too-big = Esse ficheiro é grande demais para mim: no máximo 4 MB. Envia só a tabela de resultados, como texto ou CSV.
telegram-file-failed = Esse ficheiro não me chegou. Envia-o outra vez, por favor, ou escreve os valores numa mensagem.
telegram-inline-private = Pergunta-me em privado
telegram-description = Ajudo com ancoragens fixas em rocha: que metal, que tipo, que profundidade, que adesivo, quanto tempo de cura, o que mostra um ensaio de tração, o que significa a ferrugem. Cada resposta diz as suas fontes e as suas dúvidas. Não vejo a rocha e nunca certifico: decidem as regras locais, as instruções do fabricante e um instalador qualificado.
telegram-short-description = Respostas prudentes e com fontes sobre ancoragens em rocha. Nunca certifico; decide um instalador qualificado.
# discord
discord-ask-about = Perguntar sobre esta mensagem
discord-option = pergunta
discord-option-does = A tua pergunta, por palavras tuas
discord-type-it = Escrever
discord-type-title = A tua resposta
discord-type-label = Por palavras tuas
discord-pick = Escolhe …
discord-more = Nem tudo cabe no menu: o que falta pode ser escrito.
discord-empty = Nessa mensagem não há texto que eu possa ler.
discord-not-here = Só respondo noutros canais deste servidor.
discord-nothing = Agora não tenho nada a acrescentar. Se perguntaste muito de uma vez, espera um minuto.
discord-stopping = Estou a ser reiniciado. Pergunta outra vez daqui a um minuto.
discord-thread-closed = De um tópico que já está fechado:
discord-file-too-big = Esse ficheiro tem mais de { $most } MB, por isso não o li.
discord-file-failed = Não consegui ir buscar esse ficheiro. Envia-o outra vez daqui a um minuto.
discord-file-one = Leio um ficheiro de cada vez. Envia-os um a um.

## Club records
record-load = carga máxima
record-fact = • { $fact }: { $value }
record-text-day = • dia do ensaio: { $text }
record-text-crag = • falésia: { $text }
record-text-route = • via: { $text }
record-text-batch = • lote: { $text }
record-text-note = • nota: { $text }
record-name-day = dia do ensaio
record-name-crag = falésia
record-name-route = via
record-name-batch = lote
record-name-note = nota
record-change = • { $fact }: { $before } → { $after }
record-did-added = { $version }. Anotado por { $by }, { $at }:
record-did-corrected = { $version }. Corrigido por { $by }, { $at }:
record-did-withdrawn = { $version }. Retirado por { $by }, { $at }.
record-by-forgotten = um membro que pediu para ser esquecido
record-draft = Eu anotaria este ensaio:
record-draft-how = Ainda nada foi guardado. Guarda, descarta, ou diz o que está errado: "foram 34 kN".
record-correct = O registo { $id } mudaria assim:
record-withdraw = Retirar o registo { $id }? Deixa de contar; o seu histórico fica.
record-kept = Guardado como { $id }.
record-kept-how = Para corrigir: "{ $id } era 34 kN". Para tirar: "retirar { $id }". Todos os passos: "histórico { $id }".
record-corrected = Corrigido: { $id }. O que era antes fica no seu histórico.
record-withdrawn = Retirado: { $id }. Já não conta; o seu histórico fica.
record-dropped = Descartado. Nada foi guardado.
record-same = Isso já diz { $id }. Nada foi mudado.
record-shown = Registo { $id }, versão { $version }:
record-shown-withdrawn = O registo { $id }, versão { $version }, foi retirado e não conta:
record-history = Registo { $id }, todos os passos:
record-none = Este chat não tem nenhum registo { $id }.
record-is-withdrawn = { $id } foi retirado e já não pode ser mudado. Anota o ensaio de novo. Nada foi mudado.
record-not-yours = Só quem o anotou, ou quem cuida deste grupo, pode mudar esse registo. Nada foi mudado.
record-changed-meanwhile = Alguém mudou esse registo entretanto. Nada foi mudado; vê-o de novo.
record-open-first = Primeiro guarda ou descarta este:
record-one-at-a-time = Um de cada vez, por favor, ou vários numa tabela: um ficheiro ou uma lista colada com cabeçalho. Não tomei nada disso.
record-no-day = "{ $text }" não é um dia. Escreve como 2027-05-02. Nada foi mudado.
record-future-day = { $text } ainda está por vir. Nada foi mudado.
record-load-impossible = Nenhum ensaio de uma ancoragem chega a essa carga, ou é pequena de mais. Nada foi mudado.
record-clash-glue = Esse tipo de ancoragem não tem resina que possa ceder. Qual dos dois está errado? Nada foi mudado.
record-clash-facts = Isso não combina com o resto do registo. Nada foi mudado.
choice-keep = Guardar
choice-drop = Descartar
choice-withdraw = Retirar
choice-fix = Mudar: { $fact }
table-ready = Podem guardar-se { $count } linhas. Ainda nada foi guardado.
table-kept = Guardados: { $count } registos, de { $first } a { $last }.
table-read = Li { $rows } linhas: { $good } podem guardar-se, { $bad } não.
table-there = Já estão aqui, e ficam de fora: { $count }.
table-left = Colunas que não conheço, e deixei de fora: { $names }.
table-row = • Linha { $number }: { $why }
table-rows-more = • e mais { $count } linhas
table-range = Cargas de { $least } a { $most }.
table-nothing = Não há nada a guardar. Nada foi mudado.
table-too-large = Esse ficheiro tem mais de 5 MB, por isso não o li. Nada foi mudado.
table-too-many = Essa tabela tem mais de { $most } linhas, por isso não tomei nenhuma. Envia-a em partes.
table-empty = Essa tabela tem cabeçalho e nenhuma linha. Nada foi mudado.
table-no-text = Esse ficheiro não tem texto que eu possa ler como tabela. Envia-o como CSV. Nada foi mudado.
table-column-twice = A coluna "{ $column }" está lá duas vezes. Nada foi tomado.
table-unit-missing = A coluna "{ $column }" não tem unidade. Escreve-a entre parênteses: "carga máxima [kN]", "comprimento [mm]". Nada foi tomado.
table-unit-unknown = A unidade em "{ $column }" não serve para essa coluna, ou não a conheço. Nada foi tomado.
table-row-number = "{ $text }" não é um número ({ $fact })
table-row-impossible = "{ $text }" não pode ser: { $fact }
table-row-value = "{ $text }" não conheço ({ $fact })
table-row-lacking = falta: { $fact }{ $text }
table-row-day = "{ $text }" não é um dia; escreve como 2027-05-02
table-row-future = { $text } ainda está por vir
table-row-too-wide = tem mais células do que o cabeçalho
table-row-too-long = uma célula é comprida de mais; falta uma aspa?
table-row-clash-glue = esse tipo de ancoragem não tem resina
table-row-clash-facts = dois dos seus valores não combinam
table-row-differs = { $id } já está aqui e diz outra coisa; corrige-o por palavras
table-exported = { $count } ensaios numa tabela
table-exported-how = Os valores são nomes curtos, iguais em todas as línguas. Enviado de volta, o ficheiro não acrescenta nada duas vezes.
ours-none = Este chat ainda não tem ensaios. Conta-me um: "puxámos um 12x100 de duas pernas, epóxi, granito, 36,5 kN, a resina saiu limpa".
ours-list = { $first }, { $rest }
ours-size = { $diameter } × { $depth }
ours-mixed = todos os ensaios juntos
ours-found = Os vossos ensaios que correspondem: { $count }, em { $groups } grupos do mesmo tipo.
ours-no-match = Dos vossos { $count } ensaios nenhum corresponde: { $what }.
ours-more = e { $count } grupos mais pequenos.
ours-about = O que se segue é só sobre o grupo com mais roturas: { $what }.
ours-group = • { $what }
ours-loads-failed = – cederam ({ $failed }): { $pulls }
ours-loads-stopped = – aguentaram pelo menos ({ $stopped }): { $held }; nada cedeu
ours-loads-both = – cederam ({ $failed }): { $pulls }; aguentaram pelo menos ({ $stopped }): { $held }
ours-figures = – média { $mean }, valor de 5 % { $low }
ours-figures-fitted = – meio da curva ajustada { $mean }, valor de 5 % { $low }
ours-no-figures = – poucas roturas para um valor de 5 %
ours-mode = { $mode } ({ $count })
ours-modes = – { $list }
ours-first = Primeiro grupo: { $what }
ours-second = Segundo grupo: { $what }
ours-differ = Os dois também diferem, ou estão misturados, em: { $list }. Uma diferença pode vir daí.
ours-modes-differ = Nem todos cederam da mesma maneira: em rigor, só se comparam roturas iguais.
ours-stopped-out = Os ensaios interrompidos, { $count }, não são roturas e ficam fora desta comparação.
ours-longer = O primeiro grupo é o mais fundo, o segundo o menos, o resto do mesmo tipo.
ours-longer-none = Os vossos ensaios não o mostram: não há do mesmo tipo a duas profundidades. Façam pelo menos 3, melhor 5 a 10, em cada uma.
bond-ours = Aderência: publicada de { $low } a { $high }, de que conto uma média de { $published }; com os vossos { $failures } ensaios que falharam nela, { $median } no meio, valor de 5 % { $five }.
bond-ours-least = Mais { $others } dos vossos ensaios acabaram de outro modo (metal, rocha, equipamento, ou interrompidos): a aderência aguentou pelo menos isso.
bond-ours-lower = O vosso é o menor, por isso conto { $used }.
bond-ours-higher = O vosso não é menor, e ainda não torna nada mais ousado: devem falhar { $needed } na aderência antes de contar acima do publicado (EOTA TR 053, de memória); faltam { $missing }.
bond-ours-would = Com o vosso seria: média { $mean }, valor de 5 % { $characteristic } ({ $mode }).
bond-ours-without = Só com a aderência publicada seria: média { $mean }, valor de 5 % { $characteristic } ({ $mode }).
bond-ours-enough = { $needed } falhas na aderência bastam para que o vosso conte (EOTA TR 053, de memória): conto { $used }, e nunca mais do que o extremo superior do publicado, { $top }.
plan-steps = Com bomba manual, em passos de no máximo { $share } % do que esperas, cada um mantido { $minutes } minutos enquanto lês o movimento (ASTM E488, de memória); antes assenta com uma vigésima parte.
plan-steps-expected = Com bomba manual, em passos de no máximo { $step }, que são { $share } % dos { $mean } que calculo em média, cada um mantido { $minutes } minutos enquanto lês o movimento (ASTM E488, de memória); antes assenta com uma vigésima parte.
plan-proof-steps = Sobe em { $steps } passos iguais de { $seconds } segundos, e para ao primeiro movimento.
plan-number = O que esse número pode mostrar: com { $count } resultados o valor de 5 % é cerca de { $left } % da média, com { $good } cerca de { $goodLeft } %, com centenas cerca de { $endless } % (dispersão { $scatter } %, confiança 90 %). Poucos resultados custam resistência.
plan-number-too-few = Com menos de { $fewest } resultados nada se pode dizer da próxima ancoragem.
plan-number-compare = Com { $count } ensaios de cada tipo só é provável ver uma diferença de { $seen } % ou mais (dispersão { $scatter } %, quatro vezes em cinco). Alterna os dois, não um dia cada.
plan-range = Lançada livremente cai até { $range } em terreno plano, e mais longe abaixo de uma parede: fecha a linha do puxão até aí, nos dois sentidos.
plan-rig = Cada parte do equipamento para pelo menos { $load }, { $factor } vezes a maior carga: um equipamento que falha também lança as suas peças.
plan-protect = Prende o pórtico e as peças soltas, põe uma manta pesada sobre o equipamento, óculos e capacete; alivia a pressão antes de alguém se aproximar, mesmo que nada tenha partido.
plan-log = Conta-me cada ensaio com /log, e conta para a vossa própria rocha.
ours-picture = Os nossos ensaios

## Recordings
recording-title = { $file }, tração { $number }
recording-failed = Cedeu: a carga máxima foi { $peak }.
recording-stopped = Parado antes de algo ceder: aguentou { $peak } dessa vez, e o máximo que aguenta não se sabe.
recording-none = { $file }: nenhuma tração encontrada. A carga nunca subiu claramente acima do repouso.
recording-time = Máximo { $time } s depois da primeira amostra.
recording-drop = Primeira queda brusca aos { $time } s: de { $from } para { $to }.
recording-plateau = Depois ainda aguentou cerca de { $level } durante { $seconds } s.
recording-rate = Carregado a cerca de { $rate }.
recording-stiffness = Rigidez antes de ceder ou de parar: { $stiffness }.
recording-energy = Energia até ao máximo: { $energy }.
recording-rest = A célula marcava { $rest } em repouso; isso está descontado de cada carga aqui.
recording-mode-bond-loss = Parece que primeiro falhou a aderência e depois a ancoragem deslizou. Foi isso que viste: ancoragem saída com adesivo ou pó?
recording-mode-brittle = Parece que algo partiu de repente: aço ou rocha. O que foi: um perno partido ou um cone de rocha?
recording-mode-slow-slip = Parece que a ancoragem saiu devagar sob carga. Saiu, e quanto?
recording-mode-rig = A carga caiu e depois subiu mais do que antes. Assentou ou escorregou o equipamento, ou mexeu-se a ancoragem?
recording-mode-stopped = Parece que paraste de propósito. É assim, e nada se tinha mexido nem rachado?
recording-reason = Porque o penso: { $list }.
recording-reason-sharp-drop = caiu em cerca de um décimo de segundo
recording-reason-plateau = depois continuou a aguentar uma carga menor
recording-reason-no-plateau = depois não aguentou quase nada
recording-reason-rose-again = mais tarde subiu acima dessa carga
recording-reason-slow-fall = a carga desceu não mais depressa do que tinha subido
recording-reason-moved-on = a ancoragem continuou a mover-se enquanto a carga descia
recording-reason-taken-off = a carga desceu suavemente e mais depressa do que tinha subido
recording-reason-ends-loaded = o registo acaba com a carga aplicada
recording-note-clipped = O topo é plano: a célula talvez estivesse no limite e o máximo real seja maior. Não uses este máximo.
recording-note-disturbed = A célula teve perturbações: picos ou cortes foram deixados de fora. Verifica fichas e cabo.
recording-note-gap = Faltam amostras durante a tração; entretanto pode ter acontecido algo.
recording-note-starts-loaded = O registo nunca volta a zero. Não sei se é pré-carga ou um zero errado; as cargas podem estar erradas nesse tanto.
recording-note-coarse = Menos de umas dez amostras por segundo: uma rutura e uma descarga rápida parecem iguais.
recording-note-re-seated = No início a carga baixou e voltou a subir, como quando o equipamento assenta. Confirma que não foi a ancoragem.
recording-refused = { $file }: { $why }
recording-problem-unreadable = Esse ficheiro não existe ou não se pode ler.
recording-problem-empty = O ficheiro está vazio.
recording-problem-packed = É um ficheiro comprimido ou uma folha de cálculo. Guarda a tabela como texto CSV e manda isso.
recording-problem-binary = Isto não é texto. Exporta o registo como texto CSV.
recording-problem-too-large = O ficheiro é maior do que leio. Recorta as trações.
recording-problem-long-line = Linha { $line }: é demasiado longa para uma linha de tabela.
recording-problem-no-table = Não encontro nele nenhuma tabela de números.
recording-problem-no-header = Linha { $line }: aqui começam os números sem cabeçalho com colunas e unidades. Em que unidade está a carga: kN, N, daN, kgf ou lbf?
recording-problem-no-load = Não encontro nenhuma coluna de carga. Chama-lhe "Força" ou "Carga", com a unidade.
recording-problem-many-loads = Várias colunas podem ser a carga. Deixa só a que conta.
recording-problem-unit = A unidade da carga não está indicada ou não a conheço, e não adivinho. É kN, N, daN, kgf ou lbf? Escreve-a depois do nome da coluna.
recording-problem-no-time = Não encontro coluna de tempo nem frequência de amostragem acima da tabela.
recording-problem-time-unit = Em que unidade está o tempo: s ou ms? Escreve-a depois do nome da coluna.
recording-problem-no-rate = As amostras estão numeradas, mas quantas por segundo? Escreve uma linha "Frequência: … Hz" acima da tabela.
recording-problem-missing-cell = Linha { $line }: falta um valor.
recording-problem-no-number = Linha { $line }: o que está aqui não é um número.
recording-problem-no-clock = Linha { $line }: o que está aqui não é uma data nem uma hora.
recording-problem-formula = Linha { $line }: há uma fórmula. Só leio números; guarda os valores.
recording-problem-time-back = Linha { $line }: o tempo anda para trás.
recording-problem-truncated = Linha { $line }: o ficheiro está cortado aqui. Copia-o outra vez do registador.
recording-problem-too-short = Há poucas amostras para dizer alguma coisa.
recording-problem-strange-text = Linha { $line }: há texto no meio dos números.
recording-problem-decimal-mark = Vírgulas e pontos estão misturados: não distingo decimais de milhares. Guarda os números sem separador de milhares.

recording-no-offer = Não ofereço anotar { $count ->
    [one] um ensaio
   *[other] { $count } ensaios
}: não se conhece a carga máxima verdadeira.
recording-offer = Anoto como ensaio de tração com { $peak }? Toca no que viste ceder, ou que nada cedeu. Ainda nada foi guardado.
recording-offer-several = O mais forte é o ensaio { $number } com { $peak }. Qual deles anoto como ensaio de tração? Ainda nada foi guardado.
choice-note-mode = Anotar: { $mode }
choice-note-open = Anotar e perguntar-me o que cedeu
choice-note-pull = Anotar o ensaio { $number }: { $peak }
recording-file-neither = Leio registos de uma célula de carga e tabelas de ensaios de tração. Nada foi alterado.
recording-picture = Imagem: { $file }
recording-picture-kept = { $file } já existe e não foi desenhado por mim; deixei-o como está.
recording-picture-failed = Não foi possível escrever { $file }.
## Register
record-text-sector = • setor: { $text }
record-name-sector = setor
record-text-position = • posição: { $text }
record-name-position = posição
record-text-installer = • colocado por: { $text }
record-name-installer = colocado por
record-text-anchor = • ancoragem: { $text }
record-name-anchor = ancoragem
register-day-anchor = • colocado: { $text }
register-day-inspection = • visto: { $text }
register-name-day-anchor = dia da colocação
register-name-day-inspection = dia da inspeção
register-day-not-known = • colocado: não se sabe
register-anchor-draft = Eu anotaria esta ancoragem no registo:
register-anchor-draft-how = Ainda nada foi guardado. Guarda, descarta ou diz o que está errado ou falta: "colocado 2024-05-02", "é 304".
register-anchor-withdraw = Retirar a ancoragem { $id } do registo? Deixa de aparecer; o histórico fica.
register-anchor-kept-how = Para corrigir: "{ $id } é 304". O que viste: "{ $id } tem manchas castanhas". Para tirar: "retirar { $id }". Todos os passos: "histórico { $id }".
register-inspection-draft = Eu anotaria esta inspeção de uma ancoragem:
register-inspection-draft-how = Ainda nada foi guardado. Guarda, descarta ou diz o que está errado.
register-inspection-withdraw = Retirar a inspeção { $id }? Deixa de contar; o histórico fica.
register-inspection-kept-how = Para tirar: "retirar { $id }". Todos os passos: "histórico { $id }".
register-which-crag = Em que falésia está? Basta o nome; setor, via e posição ajudam a encontrá-la.
register-nowhere = Sem falésia ninguém encontra essa ancoragem. Nada foi guardado.
register-twice = { $id } já está nesse lugar. Corrige ou retira essa, ou diz outra posição. Nada foi guardado.
register-is-withdrawn = { $id } foi retirado do registo e já não pode ser mudado. Nada foi mudado.
register-no-day = { $text } não é um dia entre 1950 e hoje. Escreve como 2024-05-02, ou só o ano. Nada foi mudado.
register-look = • { $day }: { $signs } (anotado por { $by } como { $id })
register-look-of = Com o que o registo diz de { $id }, { $crag }:
register-look-note = Anotar no seu histórico? Ainda nada foi guardado.
register-look-later = Não anoto nada enquanto outro registo está aberto: guarda-o ou descarta-o primeiro e repete isto.
register-entry = • { $id }: { $where } — { $what }
register-entry-figures = • { $id }: { $where } — { $what }, { $figures }
register-found = { $what }: { $count } no registo.
register-more = • e mais { $count }. Diz um setor, uma via ou um metal, ou exporta o registo.
register-no-match = O registo tem { $count } ancoragens, mas nenhuma para: { $what }.
register-all = No registo: { $count } ancoragens, falésias: { $crags }.
register-crag = • { $name }: { $count }
register-how = Para encontrar: "ancoragens em Gannet Slab", "todas zincadas". Para juntar: "registar ancoragem 3 em Gannet Slab: 12x100 316". O que ver primeiro: "que ancoragens primeiro?"
register-none = Este chat ainda não tem ancoragens no registo. Diz-me uma: "registar ancoragem 3 em Gannet Slab: 12x100 316, colocado 2024-05-02", ou envia uma tabela com falésia e tipo de ancoragem.
register-exported = { $count } ancoragens em tabela
register-row-lacking = falta: { $what }
register-row-twice = { $id } já está nesse lugar
register-row-same = indica o mesmo lugar que a linha { $number }
register-first = Primeiro, { $shown } de { $count } ancoragens, o mais urgente em cima:
register-first-one = { $place }. { $id }: { $where }
register-first-why =    • { $why }
register-first-seen = visto { $day } ({ $id }), { $signs }. { $verdict }
register-metal-unknown = O metal não se conhece, o que conta como pior.
register-place-unknown = O metal não se pode julgar sem conhecer o lugar, o que conta como pior. Diz: "é no interior", "a 300 m do mar".
register-age-unknown = Não se sabe a idade, o que conta como vida prevista esgotada.
register-age-only = Tem { $years } anos; não há anos a prever.
register-age-past = Tem { $years } anos: passa do limite curto de { $low } a { $high } anos previstos.
register-age-within = Tem { $years } anos; preveem-se { $low } a { $high } anos, nunca se prometem.
register-first-limits = É uma ordem de trabalho segundo o que foi dito: sinais, metal e lugar, idade, uso. O que não se sabe conta como pior. Uma ancoragem mais abaixo, ou que falta aqui, não está por isso sã.
register-sensitive = Destas falésias guardo e mostro só o nome, sem setor, via, posição nem nota: { $names }. O que foi anotado antes fica guardado, mas já não se mostra. Para levantar: "/club não sensível …".
register-sheltered = Esta falésia está marcada como sensível: deixo de fora setor, via, posição e nota.
