# Was Chough auf Deutsch sagt. Namen, Fragen, Gründe und Warnungen stehen in de.json; hier stehen die Sätze, die sie
# verbinden. Eingesetzte Wörter ({ $what }, Listen) stehen nach Doppelpunkt oder in Klammern: dort müssen sie nicht gebeugt werden.

## Bits
list-last = { $first } oder { $last }
line = { $text }
fewer-than = weniger als { $number }
years = { $number } Jahre
days = { $number } Tage
not-known = nicht bekannt
fact-line = { $fact }: { $value }
understood = Verstanden: { $list }.
standing = Chough berät, bescheinigt aber nie etwas: Es entscheiden die örtlichen Regeln, die Anleitung des Herstellers und eine qualifizierte Fachperson.

## The frame of an answer
title-checks = Geprüft
title-checks-kn = Geprüft (1 kN sind 225 lbf)
title-reject = Nicht verwenden
assumed = Nicht gesagt, also angenommen (der ungünstigere Fall, wo es einen gibt): { $list }.
title-cautions = Pass auf
always = Immer: { $list }.
took = Zugrunde gelegt: { $list }.
rejected = { $what }: { $why }
limited = { $what }, nur mit Einschränkungen: { $why }
reason = { $why }
deferral = Das ist ein Rat, keine Bescheinigung. Vorrang haben die örtlichen Regeln und wer für das Gelände zuständig ist, die Anleitung des Herstellers und eine qualifizierte Fachperson vor Ort.
source-memory = { $title }, aus dem Gedächtnis
source-read-second-hand = { $title }, aus zweiter Hand
sources = Quellen: { $list }.
sources-more = Quellen: { $list } und { $more } weitere (schreib „warum“).
footer = Antwort { $id }, Regeln { $ruleset }. Schreib „warum“ für den ganzen Rechenweg.
footer-why = Antwort { $id }, Regeln { $ruleset }.
check-mean = Mittelwert { $value }
check-characteristic = 5-%-Wert { $value }
check-design = Bemessungswert { $value }
check-plain = { $value }
check-met = { $name }: { $values }; nötig { $limit }: erfüllt
check-atmost-met = { $name }: { $values }; höchstens { $limit }: erfüllt
check-atmost-short = { $name }: { $values }; höchstens { $limit }: NICHT erfüllt
check-open = { $name }: { $values }; nötig { $limit }: nur im Mittel, nicht nachgewiesen
check-short = { $name }: { $values }; nötig { $limit }: NICHT erfüllt
check-length = eingebaute Länge (EN 959)
check-plating = Zink { $thickness }, Zeit, bis es weg ist
check-cure-share = Anteil der Aushärtezeit
check-cured = Zeit seit dem Kleben
check-bending = Biegung an der Felsoberfläche
check-edge = Abstand zur nächsten Kante oder zum nächsten Riss
check-spacing = Abstand zwischen den Haken
check-tension = herausgezogen, { $mode }
check-shear = quer belastet, { $mode }
mode-steel = Metallbruch
mode-bondSteel = Kleber löst sich vom Metall
mode-bondRock = Kleber löst sich aus dem Fels
mode-cone = Felskegel bricht aus
mode-pullThrough = Bolzen rutscht durch seinen Spreizclip
mode-pryOut = Fels wird rückseitig ausgehebelt
mode-edge = Felskante bricht aus
mode-dowel = Fels wird unter dem Schaft zerdrückt

## why
title-why-facts = Davon bin ich ausgegangen
title-why-rules = Angewandte Regeln
title-why-formulas = Formeln
title-why-sources = Quellen
why-fact = { $line } ({ $origin })
why-rule = { $words } [{ $id }]
why-input = { $symbol } = { $value } ({ $from }; gültig von { $least } bis { $most })
why-from-fact = { $fact }, { $origin }
why-from-row = aus der Tabelle { $row }
why-from-method = unterwegs ausgerechnet
why-formula = { $name }: { $symbols }; { $inputs } → { $value }{ $kind } ({ $source }, { $clause })
kind-mean = , ein Mittelwert
kind-characteristic = , ein 5-%-Wert
kind-design = , ein Bemessungswert
kind-plain = { "" }
origin-said = von dir gesagt
origin-assumed = angenommen, niemand hat es gesagt
origin-club = Vorgabe deines Vereins
origin-map = aus der Karte
origin-measured = aus den Versuchen des Vereins

## Buttons
choice-dont-know = Weiß nicht
choice-why = Warum?
choice-back = Zurück
choice-restart = Neu anfangen
choice-settle = { $fact }: { $value }

## Talk
language-set = Ich antworte jetzt auf Deutsch.
resumed = Vom letzten Mal weiß ich noch: { $list }.
restarted = Alles vergessen. Was willst du wissen?
back-nothing = Es gibt nichts zurückzunehmen.
back-start = Zurückgenommen. Was willst du wissen?
why-nothing = Ich habe noch keine Antwort gegeben, die ich erklären könnte.
what-about = Notiert. Was willst du darüber wissen?
greeting = Hallo. Frag mich nach Haken im Fels: welches Metall, welche Art, wie tief, welcher Kleber, wie lange aushärten.
welcome = Gern geschehen. Erst Ausziehversuche machen, dann vertrauen.
help-material = Sag mir, wo der Haken hinkommt; Gestein, Regen und Klima helfen. Zum Beispiel: „Welcher Haken für eine überhängende Kalkklippe am Meer?“ oder „Reicht 316 im gemäßigten Binnenland?“
help-anchor = Sag mir das Gestein und wofür der Haken ist. Zum Beispiel: „Welche Hakenart für einen Standplatz in weichem Sandstein?“
help-embedment = Sag mir Art, Größe, Gestein und Kleber. Zum Beispiel: „Ist ein Klebehaken 10x80 in Granit mit Epoxid tief genug?“
help-adhesive = Sag mir, wie nass das Loch und wie warm der Fels ist. Zum Beispiel: „Welcher Kleber im feuchten Loch bei 8 °C?“
help-adhesive-amount = Sag mir Größe und Anzahl. Zum Beispiel: „Wie viel Kleber für 20 Haken 12 x 100?“
help-cure = Sag mir die Art des Klebers und die Temperatur des Felses. Zum Beispiel: „Wie lange muss Vinylester bei 6 °C aushärten?“
help-hole = Zum Beispiel: „Wie reinige ich das Bohrloch für einen Klebehaken?“
help-spacing = Sag mir die Tiefe. Zum Beispiel: „Wie weit von der Kante bei 12x100?“
help-coating-life = Sag mir Dicke und Ort. Zum Beispiel: „Wie lange halten 50 µm Zink im gemäßigten Binnenland?“
help-inspect = Sag mir, was du siehst, an welchem Metall und wo. Zum Beispiel: „Brauner Fleck unter einer 304-Lasche an einer Meeresklippe, kann ich dem trauen?“
help-cost = Sag mir Preis, Arbeit und Lebensdauer. Zum Beispiel: „Was ist über 50 Jahre günstiger im gemäßigten Binnenland, 316 für 20 Euro oder Titan für 43 Euro, Arbeit 20?“
help-pulltest-plan = Zum Beispiel: „Wie machen wir eine Probebelastung von 20 Klebehaken am Stand in Granit?“
help-pulltest-result = Sag mir die Lasten, bei denen Haken versagt haben. Zum Beispiel: „Wir haben 24,1 27,3 22,8 30,2 26 kN gezogen, was beweist das?“
help-compare = Sag mir beide Ergebnisreihen. Zum Beispiel: „glatt: 33 35 37, rau: 36 44 51, ist rau besser?“
help-load = Sag mir, was mit dem Haken gemacht wird. Zum Beispiel: „Wie hart ist ein Sturz mit Faktor 1 und 80 kg?“ oder „Welche Kraft auf zwei Haken bei 60 Grad mit 2 kN?“
help-cautions = Zum Beispiel: „Worauf aufpassen beim Bohren in nassem Sandstein?“
help = Frag in deinen eigenen Worten, zum Beispiel:
    • Welcher Haken für eine überhängende Kalkklippe am Meer?
    • Ist ein Klebehaken 10x80 in Granit mit Epoxid tief genug?
    • 12 x 100 in nassem Sandstein, 4 °C: welcher Kleber, und wie viel für 20 Haken?
    • Wie lange muss Vinylester bei 6 °C aushärten?
    Danach: „warum“ zeigt den Weg zur Antwort, „zurück“ nimmt das Letzte zurück, „neu anfangen“ beginnt von vorn. Zum Korrigieren sag es einfach: „Sorry, Granit“.
not-understood = Das habe ich nicht als Frage zu Haken verstanden.
words-not-understood = Diese Wörter kenne ich nicht: { $words }.
still-open = Meine letzte Frage ist noch offen; „weiß nicht“ ist eine gute Antwort.
not-yet = Dazu kann ich noch nichts beantworten: { $topic }. Bei den Themen unten kann ich helfen.
too-long = Das sind mehr als { $most } Zeichen, deshalb habe ich es nicht gelesen. Stell eine Frage in wenigen Zeilen.
file-not-yet = Dateien kann ich hier nicht lesen. Sag mir die Zahlen in Worten.
place-not-yet = Orte kann ich hier nicht lesen. Sag mir, wie weit das Meer weg ist und ob Regen an den Haken kommt.
button-old = Dieser Knopf gehört zu einer älteren Frage und passt nicht mehr.
impossible = „{ $text }“ kann nicht stimmen ({ $fact }): Möglich sind { $least } bis { $most }. Nichts wurde geändert.
contradiction = Das passt nicht zusammen: { $one } und { $other }. Was von beiden stimmt? Nichts wurde geändert.
contradiction-relation = { $words } Nichts wurde geändert.
out-of-range = { $what }: Heraus kommt { $value }; die Methode gilt für { $least } bis { $most }, also nenne ich keine Zahl. Sag mir einen Wert in diesem Bereich oder frag eine qualifizierte Fachperson.
problem-unit-mismatch = „{ $text }“: Diese Einheit passt nicht. Was meinst du genau ({ $fact })? Nichts wurde geändert.
problem-ambiguous = „{ $text }“ kann mehreres heißen. Sag es bitte genauer. Nichts wurde geändert.
problem-conflict = „{ $text }“ sagt zwei verschiedene Dinge ({ $fact }). Was stimmt? Nichts wurde geändert.
problem-not-a-number = „{ $text }“ kann ich nicht als Zahl lesen. Nichts wurde geändert.
problem-impossible = „{ $text }“ kann nicht sein. Nichts wurde geändert.

settings-none = Für diesen Chat ist nichts festgelegt.
settings-are = Für diesen Chat gilt, wenn eine Nachricht nichts anderes sagt: { $list }.
settings-how = Festlegen: „/club weicher Sandstein, Binnenland“ (Fels, Ort), „/club Deutsch“, „/club Zoll“, „/club nur hier“. Löschen: „/club löschen“.

## Topics, as buttons and in sentences
topic-material = Welches Metall
topic-anchor = Welche Hakenart
topic-embedment = Tief und fest genug?
topic-adhesive = Welcher Kleber
topic-adhesive-amount = Wie viel Kleber
topic-cure = Aushärtezeit
topic-load = Lasten
topic-pulltest-plan = Ausziehversuch planen
topic-pulltest-record = Ausziehversuch notieren
topic-pulltest-result = Ergebnisse von Versuchen
topic-compare = Möglichkeiten vergleichen
topic-inspect = Haken kontrollieren
topic-spacing = Kanten und Abstände
topic-coating-life = Wie lange ein Metall hält
topic-cost = Kosten über die Jahre
topic-hole = Bohren und reinigen
topic-cautions = Vorsicht
topic-permission = Erlaubnis
topic-settings = Vorgaben des Vereins
topic-register = Das Hakenverzeichnis
topic-remind = Erinnerungen
topic-why = Warum
topic-help = Hilfe
topic-smalltalk = Plaudern
topic-emergency = Notfall
topic-refuse = Was ich nicht mache

## A metal, adhesive or kind that was asked for by name
asked-suitable = Ja, das passt: { $what }. { $why }
asked-limited = { $what }: nur mit Einschränkungen. { $why }
asked-unsuitable = Nein, das nicht: { $what }. { $why }

## material
material-only = Nimm nur { $metals }, nichts Geringeres: Salz lässt Edelstahl hier reißen.
material-anywhere = Den Ort kenne ich nicht. Für jeden Ort, den ich kenne, taugt: { $metals }. Sag mir, wo der Fels ist; ein milderer Ort lässt vielleicht mehr zu.
material-use = Nimm { $metals }.
material-limited = Kein Metall ist hier ohne Einschränkung; das beste ist { $metals }, mit den Einschränkungen unten.
material-none = Kein Metall, das ich kenne, taugt für diesen Ort. Frag jemanden vom Fach für Korrosion, bevor du bohrst.
material-class = Nach der Baunorm braucht dieser Ort die Korrosionsbeständigkeitsklasse { $class } (Faktor { $factor }).
material-class-boundary = Nach der Baunorm liegt dieser Ort an der Grenze zweier Klassen (Faktor { $factor }); nimm { $class }.
material-beyond = Die Baunorm für nichtrostenden Stahl deckt so einen Ort nicht ab.
material-cracking = Risiko, dass Edelstahl durch Salz reißt: { $risk }.
material-kinds = Hakenart, die zu deinen Angaben passt: { $kinds }.
material-kinds-limited = Hakenart, sobald der Fels abgeklopft ist: { $kinds }.
material-one-metal = Haken, Mutter, Scheibe, Lasche, Ring und Kette: alles aus demselben Metall. Das schwächste Teil entscheidet.

## two metals that touch
check-galvanic-marine = größter Potenzialabstand der beiden in Meerwasser (Grenze am Meer)
check-galvanic-outdoors = größter Potenzialabstand der beiden in Meerwasser (Grenze im Freien im Binnenland)
check-galvanic-indoors = größter Potenzialabstand der beiden in Meerwasser (Grenze in Innenräumen)
pairing-good = { $metal } mit { $other }: ein Metall, sie schaden einander nicht.
pairing-poor = { $metal } mit { $other }: nicht so planen; sie vertragen sich, aber der Haken ist nur so gut wie das schwächere der beiden.
pairing-never = { $metal } mit { $other }: Diese beiden dürfen sich nie berühren.
pairing-untold = Sag mir beide Metalle; bis dahin nicht miteinander verbinden.
pairing-goes = Wo es nass bleibt, wird dieses Teil zerfressen: { $metal }.
pairing-small-anode = Ein kleiner Bolzen in einer großen Lasche aus edlerem Metall wird am schnellsten zerfressen, und was da zerfressen wird, steckt im Fels.
pairing-active = In einem salzigen Spalt kann der Schutz verloren gehen ({ $metal }); dann liegen die beiden bis zu { $volts } auseinander.
pairing-place = Dass die beiden sich vertragen, macht keines davon richtig für den Ort: Sag mir, wo der Fels ist.
pitting-line = Beständigkeit gegen Lochfraß, { $metal }: Wirksumme { $pren }, Platz { $place } von { $count } Edelstählen. Über Risse sagt das nichts.

## salt and damp on a warm bolt
humidity-cracks = Gefährlich für Edelstahl: Bei { $surface } hat die Luft am Haken nur { $humidity } Feuchte, und Meersalz darauf ist eine starke, warme Salzlake.
humidity-caution = Vorsicht: Bei { $surface } hat die Luft am Haken { $humidity } Feuchte.
humidity-low = In diesem Moment wenig Gefahr von Rissen: Bei { $surface } hat die Luft am Haken { $humidity } Feuchte.
humidity-none = Keine Gefahr von Rissen durch Salz: Bei { $surface } hat die Luft am Haken { $humidity } Feuchte.
humidity-film-concentrated = Das liegt im gefährlichen Bereich, { $driest } bis { $wettest }: Kochsalz trocknet unter 75 %, aber das Magnesiumsalz des Meeres bleibt bis hinab zu 33 % flüssig, so konzentriert wie nur möglich.
humidity-film-dilute = Das liegt über dem gefährlichen Bereich, { $driest } bis { $wettest }: Die Salzlake ist jetzt dünn und wird beim Trocknen stark.
humidity-film-dry = Das liegt unter dem gefährlichen Bereich, { $driest } bis { $wettest }: Das Salz ist jetzt fast trocken und durchläuft den Bereich morgens und abends.
humidity-dew = Tau bildet sich darauf, wenn es kälter ist als { $dew }.
humidity-changes = Jeden Tag durchläuft es andere Zustände: Eine einzelne Messung entlastet keinen Haken. Über das Metall entscheidet der Ort.

## coating-life
coating-place = Sag mir, wo der Fels ist: Ohne den Ort lässt sich keine Lebensdauer rechnen.
coating-life = Zink { $thickness }: Plane höchstens { $worst } ein, nicht mehr; beim üblichen Abtrag wären es { $mean }.
coating-rate = Zink verliert dort im ersten Jahr etwa { $rate }: Klasse { $category } (zwischen { $from } und { $to }; so eine Schätzung ist nicht genauer als −33 % bis +50 %).
coating-hidden = Wenn das Zink weg ist, beginnt der Stahl zu rosten, unsichtbar im Bohrloch. In Spalten und bei Sickerwasser geht es um ein Mehrfaches schneller.

## anchor
anchor-use = Nimm: { $kinds }.
anchor-limited = Keine Hakenart ist ohne Einschränkung; am besten: { $kinds }, mit den Einschränkungen unten.
anchor-none = Keine Hakenart, die ich kenne, taugt für das, was du gesagt hast. Such eine andere Stelle oder frag eine qualifizierte Fachperson.
anchor-next = Sag mir eine Größe, dann prüfe ich, ob sie tief und fest genug ist.

## embedment
embedment-meets = { $diameter } × { $length } erfüllt die Mindestwerte nach dieser Rechnung; weise es mit einem Ausziehversuch in diesem Fels nach.
embedment-test-first = { $diameter } × { $length } ist nicht als ausreichend nachgewiesen: in diesem Fels testen, bevor sich jemand darauf verlässt.
embedment-too-short = { $diameter } × { $length } ist zu kurz: EN 959 verlangt mindestens { $minimum } eingebaut.
embedment-too-weak = { $diameter } × { $length } ist nach dieser Rechnung zu schwach für diesen Fels.
embedment-too-weak-assumed = { $diameter } × { $length } kann zu schwach sein: Im ungünstigsten Fall, den du nicht ausgeschlossen hast, ist es so.
embedment-best-case = Wäre alles nicht Gesagte gut (fester Fels, trockenes Loch, profilierter Schaft, keine Dauerlast): herausgezogen Mittelwert { $mean }, 5-%-Wert { $characteristic }.
embedment-near-edge = { $diameter } × { $length }: zu nah an Kante oder Riss, oder der Abstand ist nicht bekannt. Miss ihn, und weich aus, wenn nötig.
embedment-refuse = { $diameter } × { $length }: nicht dort setzen, und nicht so.
embedment-cannot = Ohne Gestein, Art und Größe des Hakens nenne ich keine Zahl.
embedment-cannot-next = Nach EN 959 sitzt ein geklebter Haken mindestens 70 mm (2¾ in) tief, ein mechanischer mindestens das 5-Fache seines Bohrlochdurchmessers; weicherer Fels braucht mehr.
embedment-governs = Was zuerst versagt: herausgezogen „{ $mode }“, Mittelwert { $mean }, 5-%-Wert { $characteristic }; quer „{ $side }“, Mittelwert { $sideMean }, 5-%-Wert { $sideCharacteristic }. (5-%-Wert: 19 von 20 halten mehr.)
embedment-longer = Länger, { $size }: Mittelwert { $mean }, 5-%-Wert { $characteristic } ({ $mode }).
embedment-fatter = Dicker, { $size }: Mittelwert { $mean }, 5-%-Wert { $characteristic } ({ $mode }).
embedment-depth = Gerechnet mit { $depth } im Fels, ab der Felsoberfläche.
embedment-rebound = Ein Rückprallwert von { $rebound } steht für Fels mit { $min } bis { $max }; ich rechne mit dem unteren Ende. (Veröffentlichte Formeln lesen ihn als { $low } bis { $high }.)
embedment-grade = Fels der Stufe { $grade } hat { $min } bis { $max }; ich rechne mit dem unteren Ende.
embedment-strength-capped = Du hast { $told } gesagt, aber solcher Fels erreicht höchstens { $most }; damit rechne ich.
embedment-find-class = Ritz den Fels mit dem Messer, schlag mit dem Hammer darauf und sag mir, wie er reagiert (Stufe R0 bis R6), oder nenn mir einen Rückprallwert: Dann rechne ich mit seiner Klasse statt mit seinem Namen.
embedment-lasting = Der Verbund zählt nur zu 60 %: Die Last bleibt tagelang, oder niemand hat das ausgeschlossen.
embedment-heat-warm = In der Sonne wird er wärmer als 40 °C (104 °F): Der Verbund zählt nur zu 65 %, und auch das nur, wenn das Datenblatt diese Wärme zulässt.
embedment-heat-softens = Bei der Wärme, die du genannt hast, kann so ein Kleber weich werden: Der Verbund zählt kaum noch.
embedment-oblique = Schräg gezogen, { $angle } zur Hakenachse: 5-%-Wert { $characteristic }.
embedment-oblique-worst = Zugleich heraus und quer gezogen, am schwächsten bei { $angle } zur Hakenachse: 5-%-Wert { $characteristic }.
embedment-chance = Herausgezogen würden von 1000 solchen Haken etwa { $underLeast } weniger als { $least } halten und { $underSeldom } weniger als { $seldom }, was beim Klettern selten überschritten wird (übliche Praxis, keine Quelle).
embedment-chance-use = Herausgezogen würden von 1000 solchen Haken etwa { $underLeast } weniger als { $least } halten, { $underAction } weniger als die hier anzusetzende Last ({ $action }) und { $underSeldom } weniger als { $seldom }, was beim Klettern selten überschritten wird (übliche Praxis, keine Quelle).
embedment-uiaa = Manche Ausgaben von UIAA 123 verlangen { $aim } gerade raus (aus dem Gedächtnis): Richte dich danach; etwa { $underAim } von 1000 würden weniger halten.
embedment-upper-bound = Ob er durch seinen Spreizclip rutscht, lässt sich nicht rechnen, nur testen; die Zahlen sind eine Obergrenze.

## embedment, no size told
sizing-meets = Kleinste übliche Größe, die nach dieser Rechnung reicht: { $diameter } × { $length } ({ $anchor }); weise es mit einem Ausziehversuch in diesem Fels nach.
sizing-test-first = Kleinste übliche Größe für einen Versuch: { $diameter } × { $length } ({ $anchor }). Nicht nachgewiesen: in diesem Fels testen, bevor sich jemand darauf verlässt.
sizing-average = Keine übliche Größe reicht sicher; im Mittel reicht als kleinste { $diameter } × { $length } ({ $anchor }). In diesem Fels testen, bevor sich jemand darauf verlässt.
sizing-not-so = Keine Größe macht das hier richtig. Die kleinste, die fest genug ist: { $diameter } × { $length } ({ $anchor }), aber nicht dort oder nicht so.
sizing-none = Keine übliche Größe ist dort nach dieser Rechnung fest genug.
sizing-none-next = Such festeren Fels, nimm einen besseren Kleber oder ein trockeneres Loch, oder lass eine qualifizierte Fachperson Ausziehversuche in diesem Fels machen.
sizing-best = Wäre alles nicht Gesagte gut (fester Fels, trockenes Loch, profilierter Schaft, keine Dauerlast): { $diameter } × { $length } ({ $anchor }).
sizing-need = Nötig: { $tension } gerade raus und { $shear } entlang der Wand, gehalten von { $share } von 100 solchen Haken.
sizing-kind = { $anchor }: { $diameter } × { $length }, herausgezogen 5-%-Wert { $characteristic }.
sizing-kind-none = { $anchor }: Keine übliche Größe reicht sicher.
sizing-check-next = Sag mir eine Größe, dann prüfe ich genau die.

## adhesive
adhesive-use = Nimm: { $what }.
adhesive-limited = Kein Kleber ist hier ohne Einschränkung; es geht mit den Einschränkungen unten: { $what }.
adhesive-none = So wie es ist, darf kein Kleber verwendet werden. Warte auf ein trockeneres Loch oder wärmeren Fels.
adhesive-cure-unknown = Sag mir die Temperatur des Felses, dann nenne ich die Aushärtezeit.

## amount
amount-size = Sag mir Durchmesser und Tiefe, zum Beispiel 12 × 100, dann rechne ich die Menge.
amount-verdict = Etwa { $volume } pro Loch, insgesamt { $total } für { $holes ->
    [one] ein Loch
   *[other] { $holes } Löcher
 }, Verlust eingerechnet.
amount-hole = { $volume } pro Loch (Stab { $diameter }, Loch { $hole }, { $depth } tief).
amount-total = { $anchors ->
    [one] 1 Haken
   *[other] { $anchors } Haken
 }, { $holes ->
    [one] 1 Loch
   *[other] { $holes } Löcher
 }: { $total } mit { $waste } % Verlust, mindestens { $cartridges ->
    [one] 1 Kartusche
   *[other] { $cartridges } Kartuschen
 } mit { $size } ml.
amount-legs = Ich habe für jeden der beiden Schenkel ein eigenes Loch gerechnet. Sitzen beide in einem Loch, gilt die Angabe des Herstellers.
amount-too-tight = Ein Spalt von { $each } auf jeder Seite ist so eng, dass Hohlräume bleiben. Nimm den Bohrdurchmesser, den der Hersteller angibt.
amount-too-wide = Ein Spalt von { $each } auf jeder Seite ist breiter, als irgendein Kleber hier füllt. Nimm den Bohrdurchmesser, den der Hersteller angibt.
amount-too-wide-for-most = Ein Spalt von { $each } auf jeder Seite: Nach üblichen Werten füllt ihn nur { $who }. Nimm den Bohrdurchmesser, den der Hersteller angibt.
amount-nozzle = Von jeder Kartusche sind { $lost } als Vorlauf gerechnet, bis die Farbe gleichmäßig ist; eine neue Mischdüse nach einer Pause kostet etwa noch einmal so viel.
amount-gap-next = Ein enger oder weiter Spalt wird mit mehr Kleber nicht besser: Such den Bohrdurchmesser des Herstellers, und lass dieses Loch.
amount-check = Nimmt ein Loch viel mehr auf, ist da ein Hohlraum: aufhören und ihm nicht trauen.

## cure
cure-sheet = Das Datenblatt deiner Kartusche geht vor; dies sind übliche Zeiten für die Art, aus dem Gedächtnis.
cure-rock-temperature = Es zählt die Temperatur des Felses, nicht der Luft, und die kälteste Stunde, bis er ausgehärtet ist.
cure-your-adhesive = Dein Kleber
cure-by-sheet = Gerechnet mit den Werten des Datenblatts, wie du sie genannt hast. Prüf sie auf der Kartusche, und dass sie für ein so nasses Loch wie deines gelten.
cure-sheet-short = Die Zeit, die du auf dem Blatt gelesen hast, ist viel kürzer als für diese Art üblich: Lies noch einmal nach, Stunden statt Minuten, Belastung statt Verarbeitung.
cure-below-sheet = { $what }: Die kälteste Zeile, die du genannt hast, gilt für { $lowest }, und der Fels ist kälter. Lies die Zeile des Datenblatts für diese Kälte; gibt es keine, darf er nicht verwendet werden.
cure-above-sheet = { $what }: Die wärmste Zeile, die du genannt hast, gilt für { $highest }, und der Fels ist viel wärmer. Lies die Zeile des Datenblatts für diese Wärme.
cure-spell = { $hours } bei { $temperature }, nötig wären { $needed }: { $share } % der Aushärtung.
cure-spell-cold = { $hours } bei { $temperature } zählen nicht: kälter, als dieser Kleber bekanntermaßen aushärtet.
cure-spells-probably = { $what }: jetzt normalerweise ausgehärtet, die genannten Zeiten ergeben { $share } % der Aushärtezeit. Das Datenblatt entscheidet.
cure-spells-not-yet = Noch nicht belasten – { $what }: Die genannten Zeiten ergeben { $share } % der Aushärtezeit.
cure-spells-rest = Es fehlen noch etwa { $hours } bei { $temperature }.
cure-spells-warmer = So kalt wie jetzt hilft Warten nicht: Es braucht wärmeren Fels.
cure-spells-which = Welcher Kleber ist es? Solange du es nicht weißt, nicht belasten.
cure-spells-line = { $what }: { $share } % der üblichen Aushärtezeit.
cure-working = Verarbeite ihn innerhalb von { $working } nach dem Mischen; danach fasst ihn niemand an.
cure-wet = Verdoppelt, weil das Loch nass ist oder seine Feuchte nicht bekannt ist.
cure-line = { $what } bei { $temperature }: { $working } Verarbeitung, { $hours } bis zur Belastung.
cure-line-wet = { $what } bei { $temperature }: { $working } Verarbeitung, { $hours } bis zur Belastung (verdoppelt fürs nasse Loch).
cure-too-cold = { $what }: zu kalt. Unter { $lowest } härtet er vielleicht nie aus, egal wie lange du wartest.
cure-too-hot = { $what }: zu heiß. Über { $highest } wird er fest, bevor der Haken drin ist.
cure-temperature = Sag mir die Temperatur des Felses: Ohne sie gibt es keine Aushärtezeit.
cure-any = Übliche Zeiten bei { $temperature }, nach Art:
cure-wait = { $what } bei { $temperature }: { $hours } ruhen lassen, vorher keine Last.
cure-probably = { $what } bei { $temperature }: Aushärtezeit üblicherweise { $hours }, vergangen { $since }. Also normalerweise ausgehärtet; das Datenblatt entscheidet.
cure-not-yet = Noch nicht belasten: { $what } braucht { $hours } bei { $temperature }, vergangen sind erst { $since }.

## hole
hole-verdict = Bohre und reinige in dieser Reihenfolge; ein staubiges Loch ist der häufigste Fehler.
hole-size = Loch { $hole } weit und { $depth } tief, wenn der Hersteller nichts anderes sagt.

## inspect
inspect-trust = Nichts, was du gesagt hast, spricht dagegen ({ $signs }). Ein Beweis, dass er gut ist, ist das nicht.
inspect-limit = Nur hintersichert benutzen, bis jemand mit Fachkenntnis ihn angesehen hat ({ $signs }).
inspect-do-not-use = Nicht benutzen, bis jemand mit Fachkenntnis ihn angesehen hat ({ $signs }).
inspect-replace-now = Nicht wieder benutzen ({ $signs }). Sperren und ersetzen.
inspect-trust-next = Klopf Fels und Haken mit dem Hammer ab, schau Kleber und Lasche an, und notiere, was du gesehen hast.
inspect-limit-next = Hintersichere ihn, sag dem Verein Bescheid, und lass ihn testen oder ersetzen.
inspect-do-not-use-next = Markiere ihn so, dass ihn niemand einhängt, und sag dem Verein Bescheid.
inspect-replace-now-next = Markiere ihn, nimm die Lasche ab, wenn du kannst, sag dem Verein Bescheid, und schau die Nachbarhaken derselben Art und desselben Alters an.
inspect-interval-months-6 = Schau solche Haken alle 6 Monate an.
inspect-interval-months-12 = Schau solche Haken jedes Jahr an.
inspect-interval-years-2 = Schau solche Haken alle 2 Jahre an.
inspect-interval-years-3 = Schau solche Haken alle 3 Jahre an.
inspect-hidden = Was man nicht sieht: Risse im Metall, Rost im Loch, Kleber, der nie ausgehärtet ist.

## spacing
spacing-rule = Halte zu jeder Kante und jedem Riss das 1,5-Fache der Tiefe, mindestens 150 mm (6 in); zwischen den Haken das 3-Fache der Tiefe, mindestens 200 mm (8 in).
spacing-verdict = Bei { $depth } Tiefe: mindestens { $edge } zu jeder Kante und jedem Riss und { $spacing } zwischen den Haken.
spacing-too-near = Zu nah. Bei { $depth } Tiefe halte { $edge } zu jeder Kante und jedem Riss und { $spacing } zwischen den Haken.
spacing-old-holes = Alte Löcher zählen wie Risse: Halte das Doppelte ihrer Tiefe Abstand, oder füll sie und halte 5 Lochdurchmesser.
spacing-hollow = Klopf den ganzen Kreis mit dem Hammer ab; klingt es irgendwo darin hohl, such eine andere Stelle.

## load
load-cannot = Sag mir, was mit dem Haken gemacht wird, dann rechne ich die Last: wie hart ein Sturz ist, der Winkel zweier Stränge, Spannweite und Durchhang einer Line, oder wer daran hängt.
load-tell-more = Zum Beispiel: „Sturz mit Faktor 0,5, 80 kg“, „zwei Haken bei 60 Grad, 2 kN“, „Ablassen mit 90 kg“, „Line 30 m, 1,5 m Durchhang, 80 kg“. Pendeln, Rucke und gespannte Lines machen ein Mehrfaches des Gewichts.
load-took-person = Kein Gewicht genannt: Ich habe { $mass } genommen, eine schwere Person mit Ausrüstung.
load-took-rescue = Kein Gewicht genannt: Ich habe { $mass } genommen, zwei Personen mit Ausrüstung.
load-share = Das sind { $out } % der 15 kN gerade raus und { $along } % der 25 kN entlang der Wand aus EN 959: Typprüfungen in gutem Beton, nicht das, was dein Fels hält.
load-share-out = Das sind { $out } % der 15 kN gerade raus aus EN 959: eine Typprüfung in gutem Beton, nicht das, was dein Fels hält.
load-share-along = Das sind { $along } % der 25 kN entlang der Wand aus EN 959: eine Typprüfung in gutem Beton, nicht das, was dein Fels hält.
load-above-rare = Das ist mehr als die { $rare }, die die übliche Praxis als seltene Höchstlast ansetzt: Klettere oder bau so, dass es nicht dazu kommen kann.
load-design-met = 5-%-Wert deiner Versuche durch { $strength }, gegen das { $load }-Fache der Last: erfüllt. Nur für Haken wie die getesteten, in jenem Fels.
load-design-short = 5-%-Wert deiner Versuche durch { $strength } ist weniger als das { $load }-Fache der Last: reicht nicht.
check-load-rare = seltene Höchstlast, die die übliche Praxis ansetzt
check-load-design = 5-%-Wert deiner Versuche, beide Faktoren eingerechnet
check-line-most = größter Zug in der Line, zu dem Slackliner raten, Bewegung eingerechnet
load-plan = Die übliche Praxis setzt für so einen Haken { $usual } im Gebrauch und { $rare } als seltene Höchstlast an, für jeden Haken allein.
load-haul = Hochziehen über einen Karabiner zieht stärker als Ablassen: { $haul }.

load-fall-bolt = Sturz mit Faktor { $factor }, { $mass }: Rechne mit bis zu { $bolt } am obersten Haken, { $climber } an der stürzenden Person.
load-fall-belay = Sturz mit Faktor { $factor }, { $mass }: Rechne mit bis zu { $climber } direkt in den Stand, { $bolt }, wenn das Seil durch einen Karabiner am Stand läuft.
load-fall-common = Mit einem üblichen Seil ({ $label } laut Etikett), nach der einfachen Lehrbuchformel: { $bolt } am Haken, { $climber } an der stürzenden Person.
load-fall-common-belay = Mit einem üblichen Seil ({ $label } laut Etikett), nach der einfachen Lehrbuchformel: { $climber } direkt in den Stand, { $bolt }, wenn eingehängt.
load-rope-limit = Kein Seil genannt: Ich habe das steifste genommen, das EN 892 zulässt, 12 kN im Normsturz. Nenn mir den Fangstoß vom Etikett deines Seils, dann nehme ich den.
load-rope-label = Ich lese das Etikett als das eines Einfachseils, geprüft mit 80 kg; ein Halbseil wird mit 55 kg geprüft und ist steifer, als sein Etikett aussieht. Auch nasse, vereiste oder alte Seile sind steifer.
load-rope-told = Gerechnet mit dem Seilmodul, den du genannt hast; nasse, vereiste oder alte Seile sind steifer.
load-fall-drag = Der Haken bekommt beide Seilstränge, das 1,66-Fache des Zugs an der stürzenden Person. Die Reibung dort hält einen Teil des Seils vom Dehnen ab, deshalb wirkt der Sturz wie Faktor { $effective } statt { $factor }.
load-fall-strands = Ein Haken, durch den das Seil läuft, bekommt beide Seilstränge, das 1,66-Fache des Zugs an der stürzenden Person.
load-fall-legs = An zwei Haken mit { $angle }° zwischen den Strängen: { $each } an jedem, und jeder muss alles allein aushalten können.
load-fall-measured = In der Halle gemessene Stürze zum Vergleich: { $mean } am Haken im Mittel, höchstens { $most }. Körper und Sichernde geben nach, deshalb bleiben die meisten Stürze unter dieser Rechnung; verlass dich nie darauf.
load-fall-carabiner = Ein Karabiner hält { $closed } mit geschlossenem Schnapper und nur { $open } mit offenem (EN 12275, Grundform).
load-fall-rope-out = Sag mir, wie viel Seil ausgegeben ist: Seine Länge und die Sturzhöhe bestimmen, wie hart es wird.
load-fall-factor = Sturzfaktor: Sturzhöhe durch ausgegebenes Seil, 0 bis 2. Derselbe Faktor zieht am kurzen Seil so stark wie am langen.
load-sling = Steig nie an einer statischen Schlinge über den Stand: Ein Sturz mit Faktor 1 hinein macht { $force }; Schlingen und Haken reißen.
load-absorber = Keine Zahl: So einen Sturz überlebt ohne Falldämpfer weder Seil noch Haken noch Körper.
load-absorber-why = Ein Sturzfaktor über 2 kommt am Klettersteig vor, wo die Äste des Sets kurz sind und der Sturz weit ist.
load-absorber-next = Nimm ein Klettersteigset mit Falldämpfer für dein Gewicht. Haken und Drahtseil legt aus, wer den Klettersteig baut.

load-legs = { $load } an zwei Haken bei { $angle }° zwischen den Strängen: { $each } an jedem, { $share } % der Last, solange beide gleich tragen.
load-legs-too-wide = Zu weit: { $load } bei { $angle }° zwischen den Strängen bringt { $each } auf jeden Haken, { $share } % der Last. Nie über 90°; 60° oder weniger ist gute Praxis.
load-legs-unequal = { $load } an Strängen mit { $a }° und { $b }° zur Senkrechten: { $first }, { $firstShare } %, am ersten und { $second }, { $secondShare } %, am zweiten.
load-legs-unequal-wide = Zu weit: { $load } an Strängen mit { $a }° und { $b }° zur Senkrechten bringt { $first }, { $firstShare } %, auf den ersten und { $second }, { $secondShare } %, auf den zweiten. Nie über 90° dazwischen.
load-legs-sum = Zwischen den beiden Strängen liegen { $sum }°, nicht { $told }°; zwei gleiche Stränge bei { $told }° bekämen je { $each }.
load-legs-narrow = 60° oder weniger ist gute Praxis: Mach die Stränge länger.
load-legs-each = Plane jeden Haken für alles allein, { $load } und dazu, was sich bewegt und stürzt: Der Zug wechselt die Richtung, keine Schlinge verteilt gleich, und ein Haken kann versagen.
load-legs-failure = Versagt ein Strang und laufen { $slack } Schlappseil in einer statischen Schlinge von { $length } durch, kommt { $shock } auf den anderen: Knüpf es so, dass nichts durchlaufen kann.
load-legs-triangle = Nie eine einzige Schlinge als Dreieck durch beide Haken fädeln: Das wären { $triangle } an jedem.
load-legs-lowering = Wird dort jemand über einen Karabiner abgelassen, ist das alles 1,66-mal so viel: bis zu { $most } an einem Haken.

load-line = { $load } in der Mitte von { $span } mit { $sag } Durchhang: Die Line zieht an jedem Ende mit { $tension }, solange sich niemand bewegt. Eine qualifizierte Fachperson für Seilaufbauten entscheidet.
load-line-tension = Eine Line mit { $tension } zieht an jedem Ende ebenso viel, solange sich niemand bewegt. Eine qualifizierte Fachperson für Seilaufbauten entscheidet.
load-line-cannot = Ohne Spannweite und Durchhang oder ohne die Spannung kann ich nicht rechnen, was eine Line zieht.
load-line-rule = Faustregel: Durchhang ein Zehntel der Spannweite zieht das 2,5-Fache des Gewichts darauf, ein Zwanzigstel das 5-Fache, ein Fünfzigstel das 12,5-Fache.
load-line-rigger = Highlines, Seilbrücken und Rettungsseile: Ich erkläre die Kräfte und gebe nichts frei. Eine qualifizierte Fachperson für Seilaufbauten plant, kontrolliert und testet.
load-line-bounce = Wippen oder ein Sturz in die Leash machte in veröffentlichten Messungen das 1,7- bis 1,9-Fache des Zugs beim Gehen: hier bis zu { $moving }.
load-line-anchor = Wer Lines aufbaut, will an jedem Fixpunkt mindestens das 3-Fache des Zugs in der Line, hier { $anchor }, und jeder Strang muss alles aushalten können (übliche Praxis).
load-line-half = Halber Durchhang, { $sag }, würde mit { $tension } ziehen.
load-line-own = Das Eigengewicht der Line bringt zusätzlich { $added }.
load-line-both = Spannweite und Durchhang allein ergeben { $tension }; die Spannung, die du genannt hast, ist höher, also habe ich sie genommen.
load-line-pretension = Ich habe die Spannung als die der belasteten Line genommen. Ist es die, die du aufbaust, bevor jemand draufsteigt, zieht die belastete Line stärker.
load-line-slacken = Slackliner raten, unter { $most } in der Line zu bleiben, Bewegung eingerechnet: Gib ihr mehr Durchhang.
load-line-ends = Zwei Haken an einem Ende mit { $angle }° zwischen den Strängen: { $each } davon an jedem.
load-line-measured = Zum Vergleich gemessen, 57 kg auf 41 m Polyesterband: 3,1 kN beim Gehen, 4,4 beim Wippen, 5,3 beim Sturz in die Leash.

load-lower = Ablassen mit { $mass } bringt { $lower } auf die Umlenkung; plötzlich gehalten am Seil ohne Schlappseil { $sudden }.
load-top-rope = Toprope mit { $mass }: { $lower } an der Umlenkung beim Ablassen, { $sudden }, wenn das Seil ohne Schlappseil plötzlich hält.
load-lower-friction = Die Umlenkung bekommt beide Seilstränge: das Gewicht der kletternden Person und was die sichernde hält, das 1,66-Fache des Gewichts über einen Karabiner, das Doppelte über eine Rolle.
load-top-rope-slack = Mit Schlappseil von einem Zehntel der Seillänge, am steifsten Seil, das EN 892 zulässt: { $slack }. Gemessen und berichtet beim Toprope: 1,5 bis 3 kN (übliche Praxis).
load-abseil = Abseilen mit { $mass }: { $hang } ruhig hängend, { $jerky }, wenn es ruckt.
load-abseil-jerk = Gleichmäßiges Abseilen bleibt bei 1 bis 1,5 kN pro Person; Stopps und Rucke machen 2 bis 2,5 (übliche Praxis). Fahr gleichmäßig ab.
load-rescue = Rettungslast { $mass }: { $hang } ruhig, { $lower } über einen Karabiner abgelassen, { $haul } darüber hochgezogen. Eine qualifizierte Fachperson für Seilaufbauten entscheidet.
load-rescue-rigger = Ich erkläre Rettungslasten und gebe nichts frei: Eine qualifizierte Fachperson oder die Bergrettung plant es, an zwei Fixpunkten, von denen jeder alles aushalten kann.
load-rescue-shock = Ein Rutscher oder Ruck mit zwei Personen macht { $least } bis { $most } (übliche Praxis).
load-belay = Ein Stand, in dem { $mass } hängt, trägt { $hang }; ein Sturz mit Faktor 2 direkt hinein zieht mit bis zu { $fall }.
load-lead = Vorstiegssturz mit { $mass }: Plane den obersten Haken für { $rare }, die seltene Höchstlast; harte Stürze machen 4 bis 8 kN (übliche Praxis).
load-lead-factors = Obere Schätzungen am Haken, mit dem steifsten Seil, das EN 892 zulässt, und ohne dass etwas nachgibt: { $easy } bei Sturzfaktor 0,1, { $usual } bei 0,3, { $hard } bei 0,5.
load-hang = { $mass } ruhig hängend sind { $hang }; in ein straffes Seil fallen gelassen { $sudden }.
load-lower-of = Über einen Karabiner abgelassen: { $lower } am Haken.

load-strength-cannot = Was ein Haken hält, kann ich ohne Gestein, Art, Dicke und Länge nicht sagen.
load-strength-open = Ob ein Haken { $load } hält, kann ich ohne Gestein, Art, Dicke und Länge nicht sagen.
load-strength-minimums = Nach EN 959 hält ein Felshaken in der Typprüfung 15 kN gerade raus und 25 kN entlang der Wand, in gutem Beton. Das ist keine Gebrauchslast, und weicher Fels hält weniger.
load-strength-tell = Sag mir zum Beispiel „Klebehaken 12 x 100 in Granit mit Epoxid“; und mach Ausziehversuche in diesem Fels.
load-strength-signs = Was rostig, gerissen, verbogen oder locker ist, hat keine Festigkeit, die man rechnen kann. Nicht belasten; frag mich nach der Kontrolle.

## results of pull tests
results-meets = { $count } Versuche: Mittelwert { $mean }, 5-%-Wert { $characteristic }. Das liegt über den { $need }, die EN 959 in der Typprüfung verlangt, und ist trotzdem keine Last zum Dranhängen.
results-upper = { $count } Versuche: Mittelwert { $mean }, 5-%-Wert { $characteristic }, aber nur als Obergrenze, weil die Stützfüße des Prüfgeräts nah am Haken standen.
results-upper-open = { $count } Versuche: Mittelwert { $mean }, 5-%-Wert { $characteristic }; eine Obergrenze, solange niemand sagt, dass die Stützfüße des Prüfgeräts weit genug vom Haken standen.
results-unproved = { $count } Versuche: Mittelwert { $mean }, 5-%-Wert nur { $characteristic }. Nicht nachgewiesen: Das liegt unter den { $need }, die EN 959 in der Typprüfung verlangt.
results-weak = Zu schwach: { $count } Versuche halten im Mittel { $mean }, 5-%-Wert { $characteristic }, und EN 959 verlangt in der Typprüfung { $need }.
results-scattered = Verlass dich nicht auf diese { $count } Versuche: Sie streuen um { $scatter } %, Mittelwert { $mean }, 5-%-Wert { $characteristic }. Finde zuerst heraus, was zwischen ihnen anders war.
results-too-few = { $count ->
    [0] Sag mir, bei welchen Lasten sie versagt haben: mindestens 3 davon.
    [one] Ein Versuch sagt nichts über den nächsten Haken: Zieh noch { $missing }, von derselben Art im selben Fels.
   *[other] { $count } Versuche sagen nichts über den nächsten Haken: Zieh noch { $missing }, von derselben Art im selben Fels.
 }
results-lowest = Du weißt nur, was die Haken an dem Tag gehalten haben: { $value } der schwächste.
results-how-many = 3 sind das Mindeste, 5 sind üblich, 10 geben einen brauchbaren 5-%-Wert.
results-equal = Alle { $count } Ergebnisse sind gleich: Die Ablesungen sind gerundet oder abgeschrieben, also steckt keine Festigkeit darin.
results-equal-next = Lies die Höchstwerte noch einmal ab, auf ein Zehntel Kilonewton, oder zieh noch einmal.
results-mean = Standardabweichung { $deviation }, Streuung { $scatter } %; der schwächste hielt { $min }.
results-lognormal-few = 5-%-Wert { $value } bei 90 % Vertrauensniveau: 19 von 20 halten mehr. Nach der Lognormalverteilung, weil { $count } Versuche wenig sind{ $other }.
results-lognormal-scatter = 5-%-Wert { $value } bei 90 % Vertrauensniveau: 19 von 20 halten mehr. Nach der Lognormalverteilung, weil sie um mehr als 15 % streuen{ $other }.
results-normal = 5-%-Wert { $value } bei 90 % Vertrauensniveau aus { $count } Versuchen: 19 von 20 halten mehr. Nach der Normalverteilung{ $other }.
results-other = ; die andere Verteilung ergibt { $value }
results-other-nonsense = ; die Normalverteilung fiele unter null
results-cut = Bei Streuung über 20 % (hier { $scatter } %) lassen Bewertungsverfahren nur das { $factor }-Fache des 5-%-Werts gelten: { $value }.
results-outlier-low = { $value } liegt weit unter dem Rest. Frag, was da war: schlecht gemischt, Hohlraum, Riss, verrutschtes Prüfgerät? Der Wert bleibt drin: Für solche Haken ist der Versuch da.
results-outlier-high = { $value } liegt weit über dem Rest: Prüf diese Ablesung. Der Wert bleibt drin, bis ein Fehler gezeigt ist.
results-more = Mit gleichem Mittelwert und gleicher Streuung würden insgesamt { $count } Versuche es nachweisen.
results-more-useless = Mit gleichem Mittelwert und gleicher Streuung würden nicht einmal { $count } Versuche es nachweisen: Es braucht längere oder dickere Haken.
results-bond = Verbund des Klebers über { $legs ->
    [one] einen Schenkel
   *[other] { $legs } Schenkel
 }, { $diameter } × { $depth }: Mittelwert { $mean }, 5-%-Wert { $low }.
results-bond-least = Verbund, falls { $legs ->
    [one] ein Schenkel
   *[other] { $legs } Schenkel
 } mit { $diameter } × { $depth } im Kleber: im Mittel mindestens { $mean }, 5-%-Wert { $low }; mehr, wo etwas anderes versagt hat.
results-bond-update = { $adhesive }: Die Tabelle sagt { $table }; mit deinen Versuchen eingerechnet ist die Mitte { $median }, der 5-%-Wert für den nächsten Haken { $low }.
results-direction = Als gerade herausgezogen genommen. Hast du entlang der Wand gezogen, vergleich stattdessen mit { $need }.
results-missing = Du hast { $told } Haken genannt, aber { $count } Ergebnisse. Die anderen zählen auch: Warum fehlen sie?
results-frame = Standen die Stützfüße des Prüfgeräts näher als die doppelte Tiefe, haben sie den Fels niedergehalten: Der Bruch zeigt dann weniger vom Fels als von Kleber und Metall.
results-mixed = Verschiedene Brucharten sind verschiedene Zahlenreihen: Beurteile Fels, Kleber und Metall getrennt.
results-steel = Das Metall ist zuerst gebrochen: Fels und Kleber halten mindestens so viel, und wie viel mehr, ist nicht bekannt.
results-few = { $count } Ergebnisse sind wenige: Jedes weitere verschiebt den 5-%-Wert.
results-not-said = Es gilt für diesen Fels, diese Hakenart, dieselben Hände beim Setzen und dieses Wetter. Über nasse Löcher, Dauerlast, Korrosion und den nächsten Felsen sagt es nichts.
results-all-above = Alle { $count } Versuche hielten mindestens { $least }, und { $failed ->
    [0] keiner hat versagt
    [one] nur einer hat versagt
   *[other] nur { $failed } haben versagt
 }: zu wenige für einen 5-%-Wert.
results-no-fractile = Ein 5-%-Wert braucht mindestens { $needed } Versuche bis zum Versagen mit verschiedenen Ergebnissen.
results-share = Bei 95 % Vertrauensniveau können immer noch bis zu { $share } % solcher Haken weniger als { $least } halten.
results-censored = { $count } Versuche, { $failed } bis zum Versagen und { $stopped } vorher beendet: Mitte { $median }, 5-%-Wert { $characteristic }. { $ends }
results-censored-meets = Über den { $need }, die EN 959 in der Typprüfung verlangt, und trotzdem keine Last zum Dranhängen.
results-censored-upper = Eine Obergrenze, außer die Stützfüße des Prüfgeräts standen weit genug vom Haken.
results-censored-unproved = Nicht nachgewiesen: unter den { $need }, die EN 959 in der Typprüfung verlangt.
results-censored-weak = Zu schwach: EN 959 verlangt in der Typprüfung { $need }.
results-censored-scattered = Sie streuen zu stark, um sich darauf zu verlassen: Finde heraus, was anders war.
results-stopped = Ein vorher beendeter Versuch zählt als „mindestens so viel“. Der 5-%-Wert ist so weit zurückgesetzt, wie es { $failed } echte Brüche verlangen.
results-censored-point = Ohne diesen Abschlag hat die angepasste Kurve ihren 5-%-Punkt bei { $value }; ihre Streuung ist { $scatter } %.
check-pulls-out = gerade raus, gegen den Mindestwert der Typprüfung nach EN 959
check-pulls-sideways = entlang der Wand, gegen den Mindestwert der Typprüfung nach EN 959

## proof tests
proof-load = { $load }
proof-load-untold = die Prüflast
proof-held = { $count ->
    [one] Ein Haken hat gehalten ({ $load }): kein grober Fehler an diesem
   *[other] { $count } Haken haben gehalten ({ $load }): kein grober Fehler an diesen
 }, aber von den anderen können noch bis zu { $share } % schlecht sein.
proof-proves = Das belegt nur: { $load }, an dem Tag, in der Richtung, für diese Haken. Es kann sogar einen geschädigt haben.
proof-needed = Um mit 95 % sicher zu sein, dass höchstens einer von zwanzig schlecht ist, müssten { $needed } halten.
proof-little = Über Festigkeit jenseits dieser Last, Dauerlast oder Korrosionsrisse belegt es nichts.
proof-failure-instead = Wie fest die Haken sind, zeigen mindestens 3, besser 5 bis 10, die bis zum Versagen gezogen werden.
proof-count = Sag mir, wie viele Haken gehalten haben: Ohne die Anzahl belegt es nichts.
proof-one-gave-way = Stopp: Ein Haken hat die Probebelastung nicht bestanden, und das stellt alle anderen in Frage.
proof-several-gave-way = Stopp: Mehrere Haken haben versagt. Sperr die Route und prüf jeden einzelnen, oder ersetz sie.
proof-failed-out = Was sich bewegt oder versagt hat, scheidet aus: markieren, entfernen, das Teil aufheben.
proof-double = Finde den Grund, dann probebelaste mindestens 5 % aller Haken dort, und mindestens 6.
proof-all = Teste dort alle Haken dieser Art, und denk neu über Fels, Haken und Kleber nach.
proof-why = Such den Grund: Staub, schlecht gemischt, Kälte, Hohlraum, weicher oder rissiger Fels, falsches Loch.

## comparing two groups
compare-groups = Nenn mir die Lasten beider Gruppen, zum Beispiel: glatt 33 35 37, rau 36 44 51.
compare-too-few = Jede Gruppe braucht mindestens 3 Ergebnisse, bevor man sie vergleichen kann.
compare-example = 5 bis 10 Ergebnisse in jeder Gruppe zeigen mehr.
compare-no-scatter = Keine der Gruppen streut: Die Ablesungen sind gerundet oder abgeschrieben, also gibt es nichts zu vergleichen.
compare-first = Die erste Gruppe ist fester: Zufall allein würde so einen Unterschied in { $chance } % der Fälle zeigen.
compare-second = Die zweite Gruppe ist fester: Zufall allein würde so einen Unterschied in { $chance } % der Fälle zeigen.
compare-none = Kein Unterschied ist belegt; das heißt nicht, dass sie gleich sind (Zufall allein: { $chance } % der Fälle).
compare-group-first = Erste Gruppe: { $count } Versuche, Mittelwert { $mean }, Streuung { $scatter } %, kleinster { $min }.
compare-group-second = Zweite Gruppe: { $count } Versuche, Mittelwert { $mean }, Streuung { $scatter } %, kleinster { $min }.
compare-interval = Erste minus zweite: { $difference }; bei 95 % Vertrauensniveau zwischen { $low } und { $high }.
compare-interval-ratio = Erste durch zweite: das { $ratio }-Fache; bei 95 % Vertrauensniveau zwischen dem { $low }- und dem { $high }-Fachen.
compare-logs = Verglichen über die Logarithmen, weil eine Gruppe um mehr als 20 % streut (Welch-Test).
compare-plain = Mit dem Welch-Test, bei dem die beiden verschieden streuen dürfen.
compare-needed = Um bei dieser Streuung einen Unterschied von 20 % zu sehen, braucht jede Gruppe etwa { $needed } Versuche.
compare-hopeless = Bei dieser Streuung würden nicht einmal { $most } Versuche in jeder Gruppe einen Unterschied von 20 % zeigen.
compare-same-failure = Vergleichen darf man nur Versuche, die auf dieselbe Art versagt haben.
compare-lowest = Für ein Leben zählt der schwächste Haken, nicht der Mittelwert: Frag auch nach dem 5-%-Wert jeder Gruppe.

## planning a pull test
plan-failure-first = Zieh zuerst mindestens { $fewest } entbehrliche Haken bis zum Versagen, dann probebelaste die bleibenden mit { $load }.
plan-failure = Zieh mindestens { $fewest } Haken, die du aufgibst, bis zum Versagen, in diesem Fels und von dieser Art.
plan-proof = Probebelaste bleibende Haken mit { $load } gerade raus, nicht mehr: Das findet nur grobe Fehler.
plan-failure-count = Bis zum Versagen: { $fewest } sind das Mindeste für jedes Gestein und jede Art, { $good } geben einen brauchbaren 5-%-Wert; in Fels, an dem nicht geklettert wird.
plan-failure-rate = Belaste gleichmäßig, sodass der Höchstwert nach { $shortest } bis { $longest } Minuten kommt, und zieh 2 bis 5 mm darüber hinaus weiter.
plan-failure-keep = Schreib jeden Höchstwert auf und was versagt hat. Die schwachen sind das Ergebnis.
plan-which-all = Probebelastung: jeder Haken.
plan-which-tenth = Probebelastung: jeder zehnte, und mindestens { $fewest } in jedem Felsabschnitt.
plan-which-all-of = Probebelastung: jeder Haken, insgesamt { $tested }.
plan-which-tenth-of = Probebelastung: jeder zehnte, und mindestens { $fewest } in jedem Felsabschnitt: { $tested } von { $count }.
plan-proof-load = Prüflast { $load } (üblich bis { $most }) gerade raus; { $shortest } bis { $longest } Sekunden halten.
plan-proof-too-high = { $wanted } ist zu viel für einen Haken, der bleibt: Eine Prüflast kann schädigen, was sie prüft, und manche Ösen verbiegen sich ab 6 bis 10 kN.
plan-proof-above-half = Die Hälfte des 5-%-Werts, den ich rechne, ist nur { $cap }. Zieh zuerst entbehrliche bis zum Versagen: Eine Prüflast über der Hälfte des wahren 5-%-Werts kann gute Haken brechen.
plan-accept = Bestanden, wenn die Last nicht um mehr als 5 % abfällt, nichts rutscht, ein Klebehaken sich höchstens 0,5 mm bewegt (andere Arten 1 mm) und weder Riss noch Staubring zu sehen ist.
plan-frame = Stützfüße des Prüfgeräts auf jeder Seite mindestens die doppelte Tiefe entfernt, sonst kann der Fels nicht ausbrechen und das Ergebnis ist zu gut.
plan-frame-depth = Stützfüße des Prüfgeräts auf jeder Seite mindestens { $side } entfernt (ein Ring mit { $ring } Innenweite), sonst kann der Fels nicht ausbrechen und das Ergebnis ist zu gut.
plan-energy = Bei { $force } steckt in einem Prüfgerät, das sich 5 mm bewegt, { $energy }: Ein Teil mit 1 kg fliegt mit { $speed } weg. In zehn Metern Nylonband dazwischen steckt etwa das { $times }-Fache: nur Kette und Stangen.
plan-stand = Niemand in der Zugrichtung; 3 m seitlich weg, Pumpe am Schlauch; darunter abgesperrt; wer testet, hängt an einem eigenen Fixpunkt.
plan-write = Notiere Gestein, Nässe, Größe, Kleber und sein Alter, Temperatur, Stützfüße, Höchstlast, was versagt hat; mach ein Foto.
plan-then = Sag mir dann alle Lasten, und ich rechne Mittelwert und 5-%-Wert aus.
check-proof = halber gerechneter 5-%-Wert, gegen die Prüflast

## life of a metal
life-place = Sag mir, wo der Fels ist: Ohne den Ort lässt sich keine Lebensdauer planen.
life-suitable = { $what }: Plane dort { $range } ein; ein Planungswert, nie eine Garantie.
life-limited = { $what }: Plane dort nicht mehr als { $low } Jahre ein, und kontrolliere den Haken: { $why }
life-none = { $what }: Plane dort gar keine Lebensdauer ein. { $why }
life-was = Wo man es trotzdem gesetzt hat, hielt es { $range }, und manches brach ohne Anzeichen.
life-range = { $low } bis { $high } Jahre
life-range-one = { $low } Jahre
life-because = Was dort die Spanne bestimmt: { $why }.
life-because-cracks = Was dort die Spanne bestimmt, ist das Risiko von Rissen: { $why }.
life-practice = Die Spanne ist übliche Praxis, kein Naturgesetz: Der erste Rostfleck, Riss oder lockere Teil beendet sie.
life-hidden = Spalten, Sickerwasser und Schweißnähte altern schneller als freies Metall, und der Teil im Loch ist nicht zu sehen.
life-rock = Darüber hinaus beenden Fels, Kleber und Verschleiß das Leben eines Hakens eher als das Metall.
life-bar = Von blankem Stahl, { $diameter } dick, wären nach { $years } Jahren noch { $left } % des Querschnitts übrig, wenn er gleichmäßig rostete. Tut er nicht: Lochfraß geht 2- bis 5-mal so tief, das ist also der beste Fall.
life-bar-gone = Ein Stab aus blankem Stahl kann innerhalb von { $years } Jahren durchgerostet sein.
coating-usual = Niemand hat die Dicke gesagt: Ich habe { $thickness } genommen, die dünnste übliche.

## cost
cost-one = { $name }: { $yearly } pro Jahr und Haken über { $horizon } Jahre, mit { $holes ->
    [one] einem Loch
   *[other] { $holes } Löchern
 }.
cost-cheapest = Am günstigsten von dem, was dort sicher ist: { $name } mit { $yearly } pro Jahr und Haken über { $horizon } Jahre, gegen { $otherYearly } ({ $other }).
cost-cheapest-if-safe = Wenn bei dir alle sicher sind, am günstigsten: { $name } mit { $yearly } pro Jahr und Haken über { $horizon } Jahre, gegen { $otherYearly } ({ $other }).
cost-place = Sicherheit zuerst: Sag mir, wo der Fels ist, dann vergleiche ich, was dort sicher ist. Bis dahin keine Rangfolge.
cost-none-safe = Nichts davon ist dort sicher, also gibt es nichts zu vergleichen: Frag, welches Metall passt.
cost-price = Sag mir, was die Teile für einen Haken kosten ({ $name }), in beliebiger Währung.
cost-life = Sag mir, wie viele Jahre er hält ({ $name }), oder wo der Fels ist.
cost-this = Das kostet { $yearly } pro Jahr und Haken über { $horizon } Jahre, mit { $holes ->
    [one] einem Loch
   *[other] { $holes } Löchern
 }.
cost-anchor = Haken wie dieser
cost-nth = Möglichkeit { $number }
cost-option = { $name }: { $yearly } pro Jahr ({ $total } in heutigem Geld), { $holes ->
    [one] ein Loch
   *[other] { $holes } Löcher
 } in { $horizon } Jahren; Teile { $parts }, Arbeit { $labour }, hält { $life }.
cost-planned = Die Lebensdauer ({ $name }) ist nach dem Ort geplant ({ $range }, übliche Praxis, keine Garantie); ich rechne mit dem kurzen Ende.
cost-no-price = Weggelassen, weil kein Preis genannt: { $name }.
cost-no-life = Weggelassen: { $name }. Niemand hat die Lebensdauer gesagt, und ich habe für dort keine.
cost-all = { $name }, { $count } Haken: { $total } in heutigem Geld.
cost-break-price = { $name } wäre nicht teurer als { $other }, wenn die Teile { $price } oder weniger kosten.
cost-break-price-never = Selbst mit geschenkten Teilen wäre { $name } teurer als { $other }.
cost-break-life = { $name } wäre nicht teurer als { $other }, wenn die Lebensdauer { $life } oder mehr beträgt.
cost-break-life-never = Egal wie lange es hält: { $name } ist teurer als { $other }.
cost-robust = Die Rangfolge hält auch dann, wenn das Günstigste ein Viertel kürzer hält und die anderen ein Viertel länger.
cost-not-robust = Die Rangfolge kippt, wenn das Günstigste ein Viertel kürzer hält und die anderen ein Viertel länger: Verlass dich nicht darauf.
cost-rates = In heutigem Geld: { $none } bei 0 %, { $three } bei 3 %, { $five } bei 5 %.
cost-rates-same = Bei 0, 3 und 5 % gleichermaßen am günstigsten: { $first }.
cost-rates-turn = Es hängt am Zinssatz, was am günstigsten ist: bei 0 % { $none }, bei 3 % { $three }, bei 5 % { $five }.
cost-terms = Gerechnet über { $horizon } Jahre bei { $rate } % pro Jahr über der Inflation; sag etwas anderes, dann rechne ich neu.
cost-no-labour = Die Arbeit ist nicht gerechnet, weil niemand gesagt hat, was sie wert ist; das begünstigt, was oft ersetzt werden muss.
cost-holes = Jeder Ersatz ist ein neues Loch im Fels, außer das alte lässt sich wieder verwenden.

## cautions, permission, emergency
cautions-verdict = Bevor du bohrst:
permission-verdict = Frag, bevor du bohrst: Ob dort Haken erlaubt sind, kann ich nicht sagen.
permission-owner = Es entscheidet, wem der Fels gehört oder wer für das Gelände zuständig ist, und die Regeln des Gebiets zum Hakensetzen.
permission-nature = Schutzgebiete, Brutzeiten und Denkmäler haben eigene Regeln.
permission-club = Wer in deinem Verein für Gebietsbetreuung zuständig ist, oder der regionale Verband, weiß, wen man fragt.
emergency-verdict = Hol jetzt Hilfe: Ruf die Bergrettung, und lass niemanden diesen Haken belasten.
emergency-call = Wähl den örtlichen Notruf. Sag, wo ihr seid, wie viele, wer verletzt ist.
emergency-back-up = Sichere die Person an etwas Unabhängigem: an einem anderen festen Haken, einem Baum, einem zweiten Seil.
emergency-do-not-load = Nicht ablassen, ziehen oder klettern an dem, was versagt hat, oder an Nachbarhaken derselben Art.
emergency-after = Wenn alle in Sicherheit sind: Route sperren, Verein informieren, das gebrochene Teil aufheben, wie es ist.

## refusal
refusal-reason = { $why }
refusal-certify = Ich bescheinige nichts.
refusal-certify-next = Ein Protokoll kann dir eine qualifizierte Fachperson geben, die vor Ort kontrolliert und testet; frag sie oder wer für das Gelände zuständig ist.
refusal-hang-people = Ich sage nicht, dass sich Menschen daran hängen dürfen.
refusal-hang-people-next = Eine qualifizierte Fachperson muss es sehen, testen und entscheiden. Nimm bis dahin einen anderen Haken.
refusal-structure = Bauwerke beurteile ich nicht.
refusal-structure-next = Frag eine zugelassene Fachperson für Statik und wem das Bauwerk gehört.
refusal-banned-place = Ich helfe nicht dabei, Haken zu setzen, wo es verboten ist.
refusal-banned-place-next = Frag, wer für das Gelände zuständig ist; vielleicht kann man einen Antrag stellen.
refusal-expired-adhesive = Nicht verwenden: Dieser Kleber ist abgelaufen.
refusal-expired-adhesive-next = Nimm eine frische Kartusche, und schau auf ihr Datum und wie sie gelagert war. Sind schon Haken mit der alten gesetzt: sperren, und jeden einzelnen mit einem Ausziehversuch testen oder ersetzen.
refusal-skip-safety = Ich helfe nicht dabei, einen Sicherheitsschritt wegzulassen.
refusal-skip-safety-next = Mach den Schritt, oder setz den Haken heute nicht.
refusal-hollow-rock = Kein Haken und keine Zahl für hohlen Fels.
refusal-hollow-rock-next = Klopf den Fels ringsum mit dem Hammer ab und geh zu einer Stelle, die rundherum hell klingt; gibt es keine, lass es.

failed = In mir ist etwas schiefgegangen, also gebe ich lieber keine Antwort als eine falsche. Nichts wurde geändert; sag es bitte der Person, die mich betreut.

## Terminal
chat-greeting = Chough. Frag in deinen eigenen Worten nach Haken im Fels; „hilfe“ zeigt Beispiele, Strg-D beendet.
chat-choose = Tipp einen Buchstaben zum Auswählen, oder antworte in Worten:

## Settings, units, and words that point back
settings-admins-only = Nur wer diese Gruppe betreut, kann ihre Einstellungen ändern. Es wurde nichts geändert.
settings-no-rooms = Dieser Chat hat keine Themen oder Kanäle zur Auswahl.
settings-language = Sprache, solange ein Mitglied nicht in einer anderen schreibt: { $name }.
settings-units-metric = Metrische Einheiten zuerst.
settings-units-imperial = Zoll und Pfund zuerst.
settings-rooms = { $count ->
    [one] Ich antworte nur in einem Thema oder Kanal.
   *[other] Ich antworte nur in { $count } Themen oder Kanälen.
  }
units-set-metric = Ab jetzt zeige ich dir metrische Einheiten zuerst.
units-set-imperial = Ab jetzt zeige ich dir Zoll und Pfund zuerst.
language-en = English
language-es = español
language-pt = português
language-fr = français
language-it = italiano
language-de = Deutsch
other-which = Welches von beiden meinst du?
other-none = Ich weiß nicht, welches andere du meinst: nenne es bitte.

## In a group
too-fast = Das war mir zu schnell. Gib mir eine Minute, dann frag noch einmal.
group-greeting =
  Hallo, ich bin Chough. Ich helfe bei festen Haken im Fels: welches Metall, welche Art, wie tief, welcher Mörtel, wie lange aushärten, was ein Zugversuch zeigt, was Rost bedeutet.
  Schreib mir mit einem Befehl wie /material oder /help, erwähne mich oder antworte mir; sonst schweige ich.
  Ich sehe den Fels nicht und bescheinige nie etwas. Ein falscher Haken kann töten: örtliche Regeln, die Anleitung des Herstellers und eine fachkundige Person entscheiden.
  Wer die Gruppe betreut, legt Fels, Küste, Sprache und Einheiten mit /club fest, zum Beispiel „/club Granit, Binnenland“.
sent-again = (Nach einer Unterbrechung noch einmal gesendet; vielleicht hast du es schon.)
press-for-another = Diese Frage galt jemand anderem. Frag mich selbst, dann bekommst du deine eigene.

## Pictures
picture-nothing = Nichts zu zeichnen: keine Werte.
picture-more = und { $count } weitere
picture-axis-time = Zeit, s
picture-axis-force = Kraft, kN
picture-axis-displacement = Verschiebung, mm
picture-axis-bond = Verbundfestigkeit, MPa
picture-axis-cost = Kosten pro Jahr
picture-axis-risk = Wahrscheinlichkeit, innerhalb eines Jahres zu versagen
picture-force-time = Kraft über der Zeit: { $name }
picture-force-displacement = Kraft über der Verschiebung: { $name }
picture-peak = Höchstwert eines Versuchs
picture-first-drop = erster Abfall der Kraft
picture-pull = Höchstwert { $peak }
picture-pull-dropped = Höchstwert { $peak }, erster Abfall bei { $drop }
picture-need = { $name }: mindestens { $load }
picture-groups = Ausziehversuche im Vergleich: { $name }
picture-failed = ein Versuch, bis zum Versagen gezogen
picture-stopped = ein Versuch, vor dem Versagen beendet: hielt mindestens so viel
picture-mean = Mittelwert: die Hälfte hält weniger
picture-characteristic = 5-%-Wert: 19 von 20 halten mehr
picture-tests = { $count ->
    [one] { $count } Versuch
   *[other] { $count } Versuche
 }{ $stopped ->
    [0] { "" }
   *[other] , davon vor dem Versagen beendet: { $stopped }
 }
picture-group = { $name }: { $parts }
picture-group-mean = Mittelwert { $mean }
picture-group-low = 5-%-Wert { $low }
picture-group-no-low = kein 5-%-Wert
picture-bond = Verbundfestigkeit, gelernt und veröffentlicht: { $name }
picture-published = veröffentlicht: { $low } bis { $high }
picture-learned = Mittelwert mit den eigenen Versuchen eingerechnet: { $mean }; mit { $share } % Wahrscheinlichkeit zwischen { $low } und { $high }
picture-own = eigene Versuche: { $tests }
picture-used = verwendeter Wert: { $used }
picture-costs = Was der Austausch kostet: { $name }
picture-policy = { $name }: insgesamt { $total }
picture-risks = Welche Haken zuerst: { $name }
picture-share = { $share } %
picture-share-under = unter { $share } %
picture-risk-act = gefüllt: hier zuerst handeln
picture-risk-watch = offen: weiter prüfen
picture-alt-reached = { $load } ({ $name }) erreicht: { $reached } von { $count } Versuchen.
picture-alt-peaks = { $count ->
    [one] Ein Versuch, Höchstwert { $most }.
   *[other] { $count } Versuche, Höchstwerte von { $least } bis { $most }.
 }
picture-alt-no-pulls = { $count } Versuche in dieser Aufzeichnung gefunden.
picture-alt-groups-met = Gruppen, deren 5-%-Wert { $load } ({ $name }) erreicht: { $met } von { $count }.
picture-alt-groups-lowest = Niedrigster 5-%-Wert von { $count } Gruppen: { $low } ({ $name }).
picture-alt-groups-no-low = { $count } Gruppen mit { $tests } Versuchen, keine mit einem 5-%-Wert.
picture-alt-below = Unter dem veröffentlichten Bereich versagt: { $below } von { $count } eigenen Versuchen.
picture-alt-range = Eigene Versuche von { $least } bis { $most }.
picture-alt-cheapest = Am billigsten über { $years } Jahre: { $name }, insgesamt { $total }.
picture-alt-policy = { $policy }, höchstens { $most } in einem Jahr ({ $year }).
picture-alt-no-policies = { $count } Vorgehensweisen zu vergleichen.
picture-alt-act = { $act } von { $count } Haken: hier zuerst handeln.
picture-alt-highest = Höchste Wahrscheinlichkeit, innerhalb eines Jahres zu versagen: { $name }, { $share }.
## Places
place-impossible = Diesen Ort gibt es nicht: die Breite geht von -90 bis 90, die Länge von -180 bis 180. Es wurde nichts geändert.
place-null = Das ist der Punkt 0, 0, den ein Empfänger ohne Signal meldet. Es wurde nichts geändert.
place-at-sea = Dieser Ort liegt im offenen Meer. Es wurde nichts geändert.
place-sea = Nach der offenen Karte ist das Meer etwa { $distance } entfernt, auf { $uncertainty } genau. Damit rechne ich; sag mir, wenn es nicht stimmt. Lagunen und Flussmündungen können fehlen.
place-near-limit = Nach der offenen Karte ist das Meer etwa { $distance } entfernt, auf { $uncertainty } genau: zu nah an einer Klassengrenze. Ich rechne mit { $used }, bis du mir Besseres sagst. Lagunen und Flussmündungen können fehlen.
place-far = Nach der offenen Karte ist das Meer mehr als { $distance } entfernt; damit rechne ich. Salzseen, Bäder und gestreute Straßen sind auch salzig: sag es mir.
# telegram
telegram-old-button = Dieser Knopf ist von einer älteren Fassung. Frag noch einmal, dann bekommst du einen neuen.
telegram-only-words = Ich lese Worte, einen Standort oder eine Tabelle mit Prüfergebnissen; Bilder, Aufnahmen und Sticker kann ich nicht ansehen. Schreib bitte, was du siehst.
telegram-file-too-big = Diese Datei ist mir zu groß: höchstens 4 MB. Schick nur die Tabelle der Ergebnisse, als Text oder CSV.
telegram-file-failed = Diese Datei ist nicht bei mir angekommen. Schick sie bitte noch einmal, oder schreib die Werte in eine Nachricht.
telegram-inline-private = Frag mich unter vier Augen
telegram-description = Ich helfe bei festen Haken im Fels: welches Metall, welche Art, wie tief, welcher Mörtel, wie lange aushärten, was ein Zugversuch zeigt, was Rost bedeutet. Jede Antwort nennt ihre Quellen und ihre Zweifel. Ich sehe den Fels nicht und bescheinige nie etwas: örtliche Regeln, die Anleitung des Herstellers und eine fachkundige Person entscheiden.
telegram-short-description = Vorsichtige Antworten mit Quellen zu Haken im Fels. Ich bescheinige nie etwas; eine fachkundige Person entscheidet.
# discord
discord-ask-about = Nach dieser Nachricht fragen
discord-option = frage
discord-option-does = Deine Frage, in eigenen Worten
discord-type-it = Eintippen
discord-type-title = Deine Antwort
discord-type-label = In eigenen Worten
discord-pick = Wähle …
discord-more = Nicht alles passt ins Menü: Was fehlt, kann man eintippen.
discord-empty = In dieser Nachricht steht kein Text, den ich lesen könnte.
discord-not-here = Ich antworte nur in anderen Kanälen dieses Servers.
discord-nothing = Im Moment habe ich nichts hinzuzufügen. Wenn du viel auf einmal gefragt hast, warte eine Minute.
discord-stopping = Ich werde gerade neu gestartet. Frag in einer Minute noch einmal.
discord-thread-closed = Aus einem Thread, der inzwischen geschlossen ist:
discord-file-too-big = Diese Datei ist größer als { $most } MB, darum habe ich sie nicht gelesen.
discord-file-failed = Ich konnte diese Datei nicht holen. Schick sie in einer Minute noch einmal.
discord-file-one = Ich lese eine Datei auf einmal. Schick sie einzeln.

## Club records
record-load = größte Last
record-fact = • { $fact }: { $value }
record-text-day = • Tag des Versuchs: { $text }
record-text-crag = • Gebiet: { $text }
record-text-route = • Route: { $text }
record-text-batch = • Serie: { $text }
record-text-note = • Notiz: { $text }
record-name-day = Tag des Versuchs
record-name-crag = Gebiet
record-name-route = Route
record-name-batch = Serie
record-name-note = Notiz
record-change = • { $fact }: { $before } → { $after }
record-did-added = { $version }. Aufgeschrieben von { $by }, { $at }:
record-did-corrected = { $version }. Berichtigt von { $by }, { $at }:
record-did-withdrawn = { $version }. Zurückgezogen von { $by }, { $at }.
record-by-forgotten = einem Mitglied, das vergessen werden wollte
record-draft = Diesen Versuch würde ich aufschreiben:
record-draft-how = Noch ist nichts gespeichert. Speichern, verwerfen, oder sag, was falsch ist: "es waren 34 kN".
record-correct = Eintrag { $id } würde sich so ändern:
record-withdraw = Eintrag { $id } zurückziehen? Er zählt dann nicht mehr; sein Verlauf bleibt.
record-kept = Gespeichert als { $id }.
record-kept-how = Berichtigen: "{ $id } war 34 kN". Herausnehmen: "zurückziehen { $id }". Alle Schritte: "Verlauf { $id }".
record-corrected = Berichtigt: { $id }. Was vorher war, bleibt in seinem Verlauf.
record-withdrawn = Zurückgezogen: { $id }. Er zählt nicht mehr; sein Verlauf bleibt.
record-dropped = Verworfen. Nichts wurde gespeichert.
record-same = Das steht schon in { $id }. Nichts wurde geändert.
record-shown = Eintrag { $id }, Fassung { $version }:
record-shown-withdrawn = Eintrag { $id }, Fassung { $version }, wurde zurückgezogen und zählt nicht:
record-history = Eintrag { $id }, alle Schritte:
record-none = Dieser Chat hat keinen Eintrag { $id }.
record-is-withdrawn = { $id } wurde zurückgezogen und lässt sich nicht mehr ändern. Schreib den Versuch neu auf. Nichts wurde geändert.
record-not-yours = Nur wer ihn aufgeschrieben hat, oder wer diese Gruppe betreut, kann diesen Eintrag ändern. Nichts wurde geändert.
record-changed-meanwhile = Jemand anders hat diesen Eintrag inzwischen geändert. Nichts wurde geändert; sieh ihn dir noch einmal an.
record-open-first = Speichere oder verwirf zuerst diesen:
record-one-at-a-time = Bitte einen Versuch nach dem anderen, oder mehrere als Tabelle: eine Datei oder eine eingefügte Liste mit Kopfzeile. Davon wurde nichts genommen.
record-no-day = "{ $text }" ist kein Tag. Schreib ihn wie 2027-05-02. Nichts wurde geändert.
record-future-day = { $text } liegt noch vor uns. Nichts wurde geändert.
record-load-impossible = Kein Versuch an einem Haken erreicht so eine Last, oder sie ist zu klein. Nichts wurde geändert.
record-clash-glue = Diese Art Haken hat keinen Kleber, der loslassen könnte. Was von beidem ist falsch? Nichts wurde geändert.
record-clash-facts = Das passt nicht zum übrigen Eintrag. Nichts wurde geändert.
choice-keep = Speichern
choice-drop = Verwerfen
choice-withdraw = Zurückziehen
choice-fix = Ändern: { $fact }
table-ready = { $count } Zeilen können gespeichert werden. Noch ist nichts gespeichert.
table-kept = Gespeichert: { $count } Einträge, { $first } bis { $last }.
table-read = Ich habe { $rows } Zeilen gelesen: { $good } lassen sich speichern, { $bad } nicht.
table-there = Schon hier und ausgelassen: { $count }.
table-left = Spalten, die ich nicht kenne und ausgelassen habe: { $names }.
table-row = • Zeile { $number }: { $why }
table-rows-more = • und { $count } weitere Zeilen
table-range = Lasten von { $least } bis { $most }.
table-nothing = Es gibt nichts zu speichern. Nichts wurde geändert.
table-too-large = Diese Datei ist größer als 5 MB, also habe ich sie nicht gelesen. Nichts wurde geändert.
table-too-many = Diese Tabelle hat mehr als { $most } Zeilen, also habe ich keine genommen. Schick sie in Teilen.
table-empty = Diese Tabelle hat eine Kopfzeile und keine Zeilen. Nichts wurde geändert.
table-no-text = Diese Datei enthält keinen Text, den ich als Tabelle lesen kann. Schick sie als CSV. Nichts wurde geändert.
table-column-twice = Die Spalte "{ $column }" steht zweimal da. Nichts wurde genommen.
table-unit-missing = Die Spalte "{ $column }" hat keine Einheit. Schreib sie in Klammern: "größte Last [kN]", "Länge [mm]". Nichts wurde genommen.
table-unit-unknown = Die Einheit in "{ $column }" passt nicht zu der Spalte, oder ich kenne sie nicht. Nichts wurde genommen.
table-row-number = "{ $text }" ist keine Zahl ({ $fact })
table-row-impossible = "{ $text }" kann nicht sein: { $fact }
table-row-value = "{ $text }" kenne ich nicht ({ $fact })
table-row-lacking = es fehlt: { $fact }{ $text }
table-row-day = "{ $text }" ist kein Tag; schreib ihn wie 2027-05-02
table-row-future = { $text } liegt noch vor uns
table-row-too-wide = sie hat mehr Zellen als die Kopfzeile
table-row-too-long = eine Zelle ist viel zu lang; fehlt ein Anführungszeichen?
table-row-clash-glue = diese Art Haken hat keinen Kleber
table-row-clash-facts = zwei ihrer Werte passen nicht zusammen
table-row-differs = { $id } ist schon hier und sagt etwas anderes; berichtige ihn in Worten
table-exported = { $count } Versuche als Tabelle
table-exported-how = Die Werte stehen als kurze Namen, in jeder Sprache gleich. Zurückgeschickt fügt die Datei nichts doppelt hinzu.
ours-none = Dieser Chat hat noch keine Versuche. Nenn mir einen: "12x100 Zweischenkel gezogen, Epoxid, Granit, 36,5 kN, Kleber kam sauber heraus".
ours-list = { $first }, { $rest }
ours-size = { $diameter } × { $depth }
ours-mixed = alle Versuche zusammen
ours-found = Eure passenden Versuche: { $count }, in { $groups } Gruppen gleicher Art.
ours-no-match = Von euren { $count } Versuchen passt keiner: { $what }.
ours-more = und { $count } kleinere Gruppen.
ours-about = Was folgt, gilt nur der Gruppe mit den meisten Brüchen: { $what }.
ours-group = • { $what }
ours-loads-failed = – versagt ({ $failed }): { $pulls }
ours-loads-stopped = – hielten mindestens ({ $stopped }): { $held }; nichts hat versagt
ours-loads-both = – versagt ({ $failed }): { $pulls }; hielten mindestens ({ $stopped }): { $held }
ours-figures = – Mittel { $mean }, 5-%-Wert { $low }
ours-figures-fitted = – Mitte der angepassten Kurve { $mean }, 5-%-Wert { $low }
ours-no-figures = – zu wenige Brüche für einen 5-%-Wert
ours-mode = { $mode } ({ $count })
ours-modes = – { $list }
ours-first = Erste Gruppe: { $what }
ours-second = Zweite Gruppe: { $what }
ours-differ = Beide unterscheiden sich auch, oder sind gemischt, in: { $list }. Ein Unterschied kann daher kommen.
ours-modes-differ = Nicht alle haben gleich versagt: streng genommen lassen sich nur gleiche Brüche vergleichen.
ours-stopped-out = Abgebrochene Versuche, { $count }, sind keine Brüche und bleiben außerhalb dieses Vergleichs.
ours-longer = Die erste Gruppe ist die tiefste, die zweite die flachste, alles andere gleicher Art.
ours-longer-none = Eure Versuche zeigen es nicht: keine gleicher Art in zwei Tiefen. Zieht mindestens 3, besser 5 bis 10, in jeder.
bond-ours = Verbund: veröffentlicht { $low } bis { $high }, davon rechne ich mit { $published } im Mittel; mit euren { $failures } Versuchen, die darin versagt haben, { $median } in der Mitte, 5-%-Wert { $five }.
bond-ours-least = { $others } weitere eurer Versuche endeten anders (Metall, Fels, Vorrichtung, oder abgebrochen): der Verbund hielt mindestens das.
bond-ours-lower = Eurer ist der niedrigere, also rechne ich mit { $used }.
bond-ours-higher = Eurer ist nicht niedriger, macht aber noch nichts kühner: { $needed } müssen im Verbund versagen, bevor sie über dem Veröffentlichten zählen (EOTA TR 053, aus dem Gedächtnis); { $missing } fehlen.
bond-ours-would = Mit eurem wäre es: Mittel { $mean }, 5-%-Wert { $characteristic } ({ $mode }).
bond-ours-without = Allein mit dem veröffentlichten Verbund wäre es: Mittel { $mean }, 5-%-Wert { $characteristic } ({ $mode }).
bond-ours-enough = { $needed } Brüche im Verbund genügen, damit eurer zählt (EOTA TR 053, aus dem Gedächtnis): ich rechne mit { $used }, und nie mit mehr als dem oberen Ende des Veröffentlichten, { $top }.
plan-steps = Mit der Handpumpe in Stufen von höchstens { $share } % des Erwarteten, jede { $minutes } Minuten gehalten, während du die Bewegung abliest (ASTM E488, aus dem Gedächtnis); vorher mit einem Zwanzigstel anziehen.
plan-steps-expected = Mit der Handpumpe in Stufen von höchstens { $step }, das sind { $share } % der { $mean }, die ich im Mittel rechne, jede { $minutes } Minuten gehalten, während du die Bewegung abliest (ASTM E488, aus dem Gedächtnis); vorher mit einem Zwanzigstel anziehen.
plan-proof-steps = Steigere in { $steps } gleichen Stufen von { $seconds } Sekunden, und hör bei der ersten Bewegung auf.
plan-number = Was diese Zahl zeigen kann: mit { $count } Ergebnissen liegt der 5-%-Wert bei etwa { $left } % des Mittels, mit { $good } bei etwa { $goodLeft } %, mit Hunderten bei etwa { $endless } % (Streuung { $scatter } %, Vertrauen 90 %). Wenige Ergebnisse kosten Festigkeit.
plan-number-too-few = Mit weniger als { $fewest } Ergebnissen lässt sich über den nächsten Haken nichts sagen.
plan-number-compare = Mit { $count } Versuchen je Art zeigt sich wahrscheinlich erst ein Unterschied von { $seen } % oder mehr (Streuung { $scatter } %, vier von fünf Malen). Zieh abwechselnd, nicht jede Art an einem eigenen Tag.
plan-range = Frei geschleudert landet es auf ebenem Boden bis zu { $range } weit, unter einer Wand weiter: sperre die Zuglinie so weit ab, in beide Richtungen.
plan-rig = Jedes Teil der Vorrichtung für mindestens { $load }, das { $factor }-Fache der größten Last: eine Vorrichtung, die versagt, schleudert auch ihre Teile.
plan-protect = Sichere Rahmen und lose Teile mit einem Strick, leg eine schwere Matte über die Vorrichtung, Brille und Helm; lass den Druck ab, bevor jemand nahe kommt, auch wenn nichts gebrochen ist.
plan-log = Sag mir jeden Versuch mit /log, dann zählt er für euren eigenen Fels.
ours-picture = Unsere Versuche

## Recordings
recording-title = { $file }, Zugversuch { $number }
recording-failed = Er hat nachgegeben: die höchste Last war { $peak }.
recording-stopped = Beendet, bevor etwas nachgab: er hielt { $peak } dieses eine Mal; was er höchstens hält, ist nicht bekannt.
recording-none = { $file }: kein Zugversuch gefunden. Die Last stieg nie deutlich über die Ruhe.
recording-time = Höchstwert { $time } s nach dem ersten Messwert.
recording-drop = Erster jäher Abfall nach { $time } s: von { $from } auf { $to }.
recording-plateau = Danach hielt er noch etwa { $level }, { $seconds } s lang.
recording-rate = Belastet mit etwa { $rate }.
recording-stiffness = Steifigkeit vor dem Nachgeben oder Beenden: { $stiffness }.
recording-energy = Energie bis zum Höchstwert: { $energy }.
recording-rest = Die Messdose zeigte in Ruhe { $rest }; das ist hier von jeder Last abgezogen.
recording-mode-bond-loss = Es sieht aus, als hätte erst der Verbund versagt und der Anker wäre dann gerutscht. War es so: Anker herausgezogen, mit Klebstoff oder Staub daran?
recording-mode-brittle = Es sieht aus, als wäre etwas auf einmal gebrochen: Stahl oder Fels. Was war es: ein gerissener Bolzen oder ein Ausbruchkegel?
recording-mode-slow-slip = Es sieht aus, als wäre der Anker unter Last langsam herausgerutscht. Kam er heraus, und wie weit?
recording-mode-rig = Die Last fiel und stieg dann höher als zuvor. Hat sich die Vorrichtung gesetzt, oder hat sich der Anker bewegt?
recording-mode-stopped = Es sieht aus, als hättest du absichtlich aufgehört. Stimmt das, und hatte sich nichts bewegt oder Risse bekommen?
recording-reason = Warum ich das denke: { $list }.
recording-reason-sharp-drop = sie fiel innerhalb von etwa einer Zehntelsekunde
recording-reason-plateau = dann hielt er auf niedrigerer Last weiter
recording-reason-no-plateau = dann hielt er so gut wie nichts mehr
recording-reason-rose-again = später stieg sie über diese Last
recording-reason-slow-fall = die Last sank nicht schneller, als sie gestiegen war
recording-reason-moved-on = der Anker bewegte sich weiter, während die Last sank
recording-reason-taken-off = die Last ging gleichmäßig und schneller zurück, als sie gestiegen war
recording-reason-ends-loaded = die Aufzeichnung endet unter Last
recording-note-clipped = Die Spitze ist flach: die Messdose war vielleicht am Ende ihres Bereichs und der wahre Höchstwert größer. Diesen Wert nicht verwenden.
recording-note-disturbed = Die Messdose war gestört: Spitzen oder Aussetzer sind ausgelassen. Stecker und Kabel prüfen.
recording-note-gap = Während des Zugs fehlen Messwerte; dazwischen kann etwas geschehen sein.
recording-note-starts-loaded = Die Aufzeichnung kommt nie auf null zurück. Ob das Vorlast ist oder ein falscher Nullpunkt, kann ich nicht sagen; um so viel können die Lasten falsch sein.
recording-note-coarse = Weniger als etwa zehn Messwerte in der Sekunde: ein Bruch und schnelles Ablassen sehen gleich aus.
recording-note-re-seated = Am Anfang sank die Last kurz und stieg wieder, wie wenn sich eine Vorrichtung setzt. Prüfe, dass es nicht der Anker war.
recording-refused = { $file }: { $why }
recording-problem-unreadable = Diese Datei gibt es nicht, oder sie lässt sich nicht lesen.
recording-problem-empty = Die Datei ist leer.
recording-problem-packed = Das ist ein gepacktes Archiv oder eine Tabellendatei. Speichere die Tabelle als CSV-Text und schick den.
recording-problem-binary = Das ist kein Text. Exportiere die Aufzeichnung als CSV-Text.
recording-problem-too-large = Die Datei ist größer, als ich lese. Schneide die Zugversuche heraus.
recording-problem-long-line = Zeile { $line }: sie ist zu lang für eine Tabellenzeile.
recording-problem-no-table = Ich finde darin keine Tabelle mit Zahlen.
recording-problem-no-header = Zeile { $line }: hier beginnen die Zahlen ohne Kopfzeile mit Spalten und Einheiten. In welcher Einheit ist die Last: kN, N, daN, kgf oder lbf?
recording-problem-no-load = Ich finde keine Spalte mit einer Last. Nenne sie „Kraft“ oder „Last“, mit Einheit.
recording-problem-many-loads = Mehrere Spalten können die Last sein. Lass nur die stehen, die zählt.
recording-problem-unit = Die Einheit der Last steht nicht da, oder ich kenne sie nicht, und ich rate nicht. Ist es kN, N, daN, kgf oder lbf? Schreib sie hinter den Spaltennamen.
recording-problem-no-time = Ich finde keine Zeitspalte und keine Abtastrate über der Tabelle.
recording-problem-time-unit = In welcher Einheit ist die Zeit: s oder ms? Schreib sie hinter den Spaltennamen.
recording-problem-no-rate = Die Messwerte sind nummeriert, aber wie viele je Sekunde? Schreib eine Zeile „Abtastrate: … Hz“ über die Tabelle.
recording-problem-missing-cell = Zeile { $line }: ein Wert fehlt.
recording-problem-no-number = Zeile { $line }: was hier steht, ist keine Zahl.
recording-problem-no-clock = Zeile { $line }: was hier steht, ist kein Datum und keine Uhrzeit.
recording-problem-formula = Zeile { $line }: da steht eine Formel. Ich lese nur Zahlen; speichere die Werte.
recording-problem-time-back = Zeile { $line }: die Zeit läuft rückwärts.
recording-problem-truncated = Zeile { $line }: hier ist die Datei abgeschnitten. Kopiere sie noch einmal vom Logger.
recording-problem-too-short = Es sind zu wenige Messwerte, um etwas zu sagen.
recording-problem-strange-text = Zeile { $line }: mitten in den Zahlen steht Text.
recording-problem-decimal-mark = Kommas und Punkte sind gemischt: Dezimalstellen und Tausender sind nicht zu unterscheiden. Speichere die Zahlen ohne Tausenderzeichen.

recording-no-offer = Zum Notieren biete ich { $count ->
    [one] einen Versuch
   *[other] { $count } Versuche
} nicht an: die wahre Höchstlast ist nicht bekannt.
recording-offer = Soll ich es als Zugversuch mit { $peak } notieren? Tippe an, was du nachgeben sahst, oder dass nichts nachgab. Noch ist nichts aufbewahrt.
recording-offer-several = Am stärksten ist Versuch { $number } mit { $peak }. Welchen soll ich als Zugversuch notieren? Noch ist nichts aufbewahrt.
choice-note-mode = Notieren: { $mode }
choice-note-open = Notieren und fragen, was nachgab
choice-note-pull = Versuch { $number } notieren: { $peak }
recording-file-neither = Ich lese Aufzeichnungen einer Kraftmessdose und Tabellen von Zugversuchen. Nichts wurde geändert.
recording-picture = Bild: { $file }
recording-picture-kept = { $file } gibt es schon, und es ist nicht von mir gezeichnet: ich habe es gelassen, wie es ist.
recording-picture-failed = { $file } ließ sich nicht schreiben.
## Register
record-text-sector = • Sektor: { $text }
record-name-sector = Sektor
record-text-position = • Stelle: { $text }
record-name-position = Stelle
record-text-installer = • gesetzt von: { $text }
record-name-installer = gesetzt von
record-text-anchor = • Haken: { $text }
record-name-anchor = Haken
register-day-anchor = • gesetzt: { $text }
register-day-inspection = • gesehen: { $text }
register-name-day-anchor = Tag des Setzens
register-name-day-inspection = Tag der Kontrolle
register-day-not-known = • gesetzt: nicht bekannt
register-anchor-draft = Diesen Haken würde ich ins Register eintragen:
register-anchor-draft-how = Noch ist nichts gespeichert. Speichern, verwerfen, oder sag, was falsch ist oder fehlt: „gesetzt 2024-05-02“, „es ist 304“.
register-anchor-withdraw = Haken { $id } aus dem Register zurückziehen? Er wird dann nicht mehr gelistet; sein Verlauf bleibt.
register-anchor-kept-how = Berichtigen: „{ $id } ist 304“. Was du gesehen hast: „{ $id } hat braune Flecken“. Herausnehmen: „{ $id } zurückziehen“. Alle Schritte: „Verlauf { $id }“.
register-inspection-draft = Diese Kontrolle eines Hakens würde ich notieren:
register-inspection-draft-how = Noch ist nichts gespeichert. Speichern, verwerfen, oder sag, was falsch ist.
register-inspection-withdraw = Kontrolle { $id } zurückziehen? Sie zählt dann nicht mehr; ihr Verlauf bleibt.
register-inspection-kept-how = Herausnehmen: „{ $id } zurückziehen“. Alle Schritte: „Verlauf { $id }“.
register-which-crag = An welchem Felsen steckt er? Der Name genügt; Sektor, Route und Stelle helfen beim Wiederfinden.
register-nowhere = Ohne Felsen findet niemand diesen Haken. Nichts wurde gespeichert.
register-twice = { $id } steckt schon an dieser Stelle. Berichtige ihn oder zieh ihn zurück, oder nenne eine andere Stelle. Nichts wurde gespeichert.
register-is-withdrawn = { $id } wurde aus dem Register zurückgezogen und kann nicht mehr geändert werden. Nichts wurde geändert.
register-no-day = { $text } ist kein Tag zwischen 1950 und heute. Schreib ihn wie 2024-05-02, oder nur das Jahr. Nichts wurde geändert.
register-look = • { $day }: { $signs } (notiert von { $by } als { $id })
register-look-of = Mit dem, was das Register über { $id }, { $crag }, sagt:
register-look-note = Im Verlauf notieren? Noch ist nichts gespeichert.
register-look-later = Ich notiere nichts, solange ein anderer Eintrag offen ist: erst speichern oder verwerfen, dann noch einmal sagen.
register-entry = • { $id }: { $where } — { $what }
register-entry-figures = • { $id }: { $where } — { $what }, { $figures }
register-found = { $what }: { $count } im Register.
register-more = • und { $count } mehr. Nenne Sektor, Route oder Metall, oder exportiere das Register.
register-no-match = Das Register hat { $count } Haken, aber keinen für: { $what }.
register-all = Im Register: { $count } Haken, Felsen: { $crags }.
register-crag = • { $name }: { $count }
register-how = Finden: „Haken am Gannet Slab“, „alle verzinkt“. Eintragen: „registriere Haken 3 am Gannet Slab: 12x100 316“. Womit anfangen: „welche Haken zuerst?“
register-none = Dieser Chat hat noch keine Haken im Register. Nenn mir einen: „registriere Haken 3 am Gannet Slab: 12x100 316, gesetzt 2024-05-02“, oder schick eine Tabelle mit Gebiet und Hakenart.
register-exported = { $count } Haken als Tabelle
register-row-lacking = { $what } fehlt
register-row-twice = { $id } steckt schon an dieser Stelle
register-row-same = sie nennt dieselbe Stelle wie Zeile { $number }
register-first = Zuerst ansehen, { $shown } von { $count } Haken, das Dringendste oben:
register-first-one = { $place }. { $id }: { $where }
register-first-why =    • { $why }
register-first-seen = gesehen { $day } ({ $id }), { $signs }. { $verdict }
register-metal-unknown = Das Metall ist nicht bekannt, das zählt als schlechter.
register-place-unknown = Ohne den Ort lässt sich das Metall nicht beurteilen, das zählt als schlechter. Sag: „es ist im Binnenland“, „300 m vom Meer“.
register-age-unknown = Das Alter ist nicht bekannt, das zählt als über der geplanten Zeit.
register-age-only = Er ist { $years } Jahre alt; es gibt keine Jahre, mit denen zu planen wäre.
register-age-past = Er ist { $years } Jahre alt: über dem kürzeren Ende der geplanten { $low } bis { $high } Jahre.
register-age-within = Er ist { $years } Jahre alt; geplant wird mit { $low } bis { $high } Jahren, versprochen wird nichts.
register-first-limits = Das ist eine Reihenfolge der Arbeit nach dem, was gesagt wurde: Zeichen, Metall und Ort, Alter, Nutzung. Was nicht bekannt ist, zählt als schlechter. Ein Haken weiter unten, oder einer, der hier fehlt, ist deshalb nicht in Ordnung.
register-sensitive = Von diesen Felsen speichere und zeige ich nur den Namen, keinen Sektor, keine Route, Stelle oder Notiz: { $names }. Was vorher eingetragen war, bleibt gespeichert, wird aber nicht mehr gezeigt. Aufheben: „/club nicht heikel …“.
register-sheltered = Dieser Fels ist als heikel markiert: Sektor, Route, Stelle und Notiz lasse ich weg.
