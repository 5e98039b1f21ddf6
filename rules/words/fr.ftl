# What Chough says in French. Names, questions, reasons and cautions stand in fr.json; here are the sentences that join
# them. Before ; : ! ? stands a no-break space.

## Bits
list-last = { $first } ou { $last }
line = { $text }
years = { $number } ans
days = { $number } jours
fewer-than = moins de { $number }
not-known = on ne sait pas
fact-line = { $fact } : { $value }
understood = J'ai lu : { $list }.
standing = Chough conseille, il ne certifie jamais : ce sont les règles locales, la notice du fabricant et un équipeur qualifié qui décident.

## The frame of an answer
title-checks = Vérifications
title-checks-kn = Vérifications (1 kN = 225 lbf)
title-reject = À ne pas utiliser
assumed = Pas précisé, donc supposé (le pire cas, quand il y en a un) : { $list }.
title-cautions = Attention
always = Toujours : { $list }.
took = Pris en compte : { $list }.
rejected = { $what } : { $why }
limited = { $what }, seulement avec des limites : { $why }
reason = { $why }
deferral = C'est un conseil, pas un certificat. Les règles locales et le gestionnaire du site, la notice du fabricant et un équipeur qualifié sur place passent avant.
source-memory = { $title }, de mémoire
source-read-second-hand = { $title }, de seconde main
sources = Sources : { $list }.
sources-more = Sources : { $list }, et { $more } de plus (écris "pourquoi").
footer = Réponse { $id }, règles { $ruleset }. Écris "pourquoi" pour tout le raisonnement.
footer-why = Réponse { $id }, règles { $ruleset }.
check-mean = moyenne { $value }
check-characteristic = valeur à 5 % { $value }
check-design = valeur de calcul { $value }
check-plain = { $value }
check-met = { $name } : { $values } ; il faut { $limit } : atteint
check-atmost-met = { $name } : { $values } ; au plus { $limit } : respecté
check-atmost-short = { $name } : { $values } ; au plus { $limit } : NON respecté
check-open = { $name } : { $values } ; il faut { $limit } : seulement en moyenne, pas prouvé
check-short = { $name } : { $values } ; il faut { $limit } : NON atteint
check-length = longueur posée (EN 959)
check-plating = { $thickness } de zinc, années jusqu'à ce qu'il ait disparu
check-cure-share = part du temps de durcissement
check-cured = heures depuis le collage
check-bending = flexion à la sortie du rocher
check-edge = distance au bord ou à la fissure la plus proche
check-spacing = distance entre les ancrages
check-tension = en traction, { $mode }
check-shear = en cisaillement, { $mode }
mode-steel = le métal
mode-bondSteel = résine décollée du métal
mode-bondRock = résine arrachée du trou
mode-cone = cône de rocher
mode-pullThrough = glissement à travers la bague
mode-pryOut = rocher soulevé par effet de levier
mode-edge = bord du rocher
mode-dowel = rocher écrasé sous la tige

## why
title-why-facts = Ce dont je suis parti
title-why-rules = Règles appliquées
title-why-formulas = Formules
title-why-sources = Sources
why-fact = { $line } ({ $origin })
why-rule = { $words } [{ $id }]
why-input = { $symbol } = { $value } ({ $from } ; valable de { $least } à { $most })
why-from-fact = { $fact }, { $origin }
why-from-row = d'après la table { $row }
why-from-method = calculé en cours de route
why-formula = { $name } : { $symbols } ; { $inputs } → { $value }{ $kind } ({ $source }, { $clause })
kind-mean = , une moyenne
kind-characteristic = , une valeur à 5 %
kind-design = , une valeur de calcul
kind-plain = { "" }
origin-said = tu l'as dit
origin-assumed = supposé, personne ne l'a dit
origin-club = réglage de ton club
origin-map = d'après la carte
origin-measured = essais du club

## Buttons
choice-dont-know = Je ne sais pas
choice-why = Pourquoi ?
choice-back = Retour
choice-restart = Recommencer
choice-settle = { $fact } : { $value }

## Talk
language-set = Je réponds maintenant en français.
resumed = De la dernière fois, je garde : { $list }.
restarted = Oublié. Qu'est-ce que tu veux savoir ?
back-nothing = Il n'y a rien à annuler.
back-start = Annulé. Qu'est-ce que tu veux savoir ?
why-nothing = Je n'ai pas encore donné de réponse à expliquer.
what-about = Noté. Qu'est-ce que tu veux savoir là-dessus ?
greeting = Salut. Pose-moi tes questions sur les ancrages dans le rocher : quel métal, quel type, quelle profondeur, quelle résine, combien de temps elle durcit.
welcome = De rien. Fais un essai d'arrachement avant de faire confiance.
help-material = Dis-moi où va l'ancrage ; le rocher, la pluie et le climat aident. Par exemple : "quel métal pour une falaise maritime en calcaire et en dévers ?" ou "l'inox 316 suffit sur une falaise à l'intérieur des terres ?"
help-anchor = Dis-moi le rocher et à quoi sert l'ancrage. Par exemple : "quel type d'ancrage pour un relais dans du grès tendre ?"
help-embedment = Dis-moi le type, la taille, le rocher et la résine. Par exemple : "un scellement de 10x80 dans du granite à l'époxy, c'est assez profond ?"
help-adhesive = Dis-moi si le trou est mouillé et à quelle température est le rocher. Par exemple : "quelle résine dans un trou humide à 8 °C ?"
help-adhesive-amount = Dis-moi la taille et le nombre. Par exemple : "combien de résine pour 20 broches de 12 x 100 ?"
help-cure = Dis-moi le type de résine et la température du rocher. Par exemple : "combien de temps doit durcir du vinylester à 6 °C ?"
help-hole = Par exemple : "comment nettoyer le trou pour un scellement ?"
help-spacing = Dis-moi la profondeur. Par exemple : "quelle distance au bord pour un 12x100 ?"
help-coating-life = Dis-moi l'épaisseur et le lieu. Par exemple : "combien de temps tiennent 50 µm de zinc sur une falaise à l'intérieur des terres ?"
help-inspect = Dis-moi ce que tu vois, sur quel métal, et où. Par exemple : "coulure brune sous une plaquette en 304 sur une falaise maritime, je peux m'y fier ?"
help-cost = Dis-moi le prix, le travail et la durée de vie. Par exemple : "qu'est-ce qui est le moins cher sur 50 ans sur une falaise de l'intérieur des terres en climat tempéré, du 316 à 20 euros ou du titane à 43 euros, main d'œuvre 20 ?"
help-pulltest-plan = Par exemple : "quelle charge d'épreuve pour 20 scellements de relais dans du granite ?"
help-pulltest-result = Dis-moi les charges auxquelles les ancrages ont lâché. Par exemple : "on a arraché à 24,1 27,3 22,8 30,2 26 kN, qu'est-ce que ça prouve ?"
help-compare = Dis-moi les deux séries de résultats. Par exemple : "lisses : 33 35 37, crantées : 36 44 51, les crantées sont meilleures ?"
help-load = Dis-moi ce qu'on fait avec l'ancrage. Par exemple : "quelle force fait une chute de facteur 1 avec 80 kg ?" ou "quelle force sur deux points à 60 degrés avec 2 kN ?"
help-cautions = Par exemple : "à quoi faire attention en perçant dans du grès mouillé ?"
help = Demande avec tes mots, par exemple :
    • quel métal pour une falaise maritime en calcaire et en dévers ?
    • un scellement de 10x80 dans du granite à l'époxy, c'est assez profond ?
    • 12 x 100 dans du grès mouillé, 4 °C : quelle résine, et combien pour 20 broches ?
    • combien de temps doit durcir du vinylester à 6 °C ?
    Ensuite : "pourquoi" pour le raisonnement derrière une réponse, "retour" pour annuler la dernière chose, "recommencer" pour repartir de zéro. Pour corriger, dis-le simplement : "pardon, granite".
not-understood = Je n'ai pas compris ça comme une question sur les ancrages.
words-not-understood = Je ne connais pas ces mots : { $words }.
still-open = Ma dernière question attend toujours ; "je ne sais pas" est une bonne réponse.
not-yet = Je ne sais pas encore répondre sur ce sujet : { $topic }. Je peux aider sur les sujets ci-dessous.
too-long = C'est plus long que { $most } caractères, je ne l'ai donc pas lu. Pose une seule question en quelques lignes.
file-not-yet = Ici, je ne peux pas lire de fichiers. Écris-moi les chiffres.
place-not-yet = Ici, je ne peux pas lire de position. Dis-moi à quelle distance est la mer, et si la pluie atteint l'ancrage.
button-old = Ce bouton vient d'une question plus ancienne et ne convient plus.
impossible = "{ $text }", ça ne peut pas être ça ({ $fact }) : j'accepte de { $least } à { $most }. Rien n'a été changé.
contradiction = Ces deux choses ne vont pas ensemble : { $one } et { $other }. Laquelle est juste ? Rien n'a été changé.
contradiction-relation = { $words } Rien n'a été changé.
out-of-range = { $what } : j'arrive à { $value } ; la méthode couvre de { $least } à { $most }, donc je ne donne pas de chiffre. Donne-moi une valeur dans cette plage, ou demande à un équipeur qualifié.
problem-unit-mismatch = "{ $text }" : cette unité ne va pas. Quelle valeur veux-tu dire ({ $fact }) ? Rien n'a été changé.
problem-ambiguous = "{ $text }" peut vouloir dire plusieurs choses. Dis-le plus précisément, s'il te plaît. Rien n'a été changé.
problem-conflict = "{ $text }" dit deux choses différentes sur un même point ({ $fact }). Laquelle est juste ? Rien n'a été changé.
problem-not-a-number = Je n'arrive pas à lire "{ $text }" comme un nombre. Rien n'a été changé.
problem-impossible = "{ $text }", ce n'est pas possible. Rien n'a été changé.

settings-none = Rien n'est réglé pour ce chat.
settings-are = Pour ce chat, je retiens, sauf si un message dit autre chose : { $list }.
settings-how = Pour régler : « /club grès tendre, intérieur des terres » (roche, lieu), « /club français », « /club pouces », « /club seulement ici ». Pour effacer : « /club effacer ».

## Topics, as buttons and in sentences
topic-material = quel métal
topic-anchor = quel type d'ancrage
topic-embedment = assez profond et solide ?
topic-adhesive = quelle résine
topic-adhesive-amount = combien de résine
topic-cure = temps de durcissement
topic-load = charges
topic-pulltest-plan = prévoir un essai d'arrachement
topic-pulltest-record = noter un essai d'arrachement
topic-pulltest-result = résultats d'essais d'arrachement
topic-compare = comparer des options
topic-inspect = contrôler un ancrage
topic-spacing = bords et espacement
topic-coating-life = combien de temps tient un métal
topic-cost = coût au fil des ans
topic-hole = percer et nettoyer
topic-cautions = précautions
topic-permission = autorisation
topic-settings = réglages du club
topic-register = le registre
topic-remind = rappels
topic-why = pourquoi
topic-help = aide
topic-smalltalk = discussion
topic-emergency = urgence
topic-refuse = ce que je ne fais pas

## A metal, adhesive or kind that was asked for by name
asked-suitable = Oui, ça convient : { $what }. { $why }
asked-limited = { $what } : seulement avec des limites. { $why }
asked-unsuitable = Non, pas ça : { $what }. { $why }

## material
material-only = À utiliser : { $metals }, et rien de moins. Ici, le sel fissure l'inox.
material-anywhere = Je ne connais pas le lieu. Ce qui convient partout où je sais juger : { $metals }. Dis-moi où est la falaise ; un lieu moins dur permet peut-être plus.
material-use = À utiliser : { $metals }.
material-limited = Aucun métal n'est sans limites ici ; le mieux : { $metals }, avec les limites ci-dessous.
material-none = Aucun métal que je connaisse ne convient à ce lieu. Demande à un ingénieur en corrosion avant de percer.
material-class = D'après la norme de construction, ce lieu demande la classe de résistance { $class } (facteur { $factor }).
material-class-boundary = D'après la norme de construction, ce lieu est à la limite de deux classes (facteur { $factor }) ; prends : { $class }.
material-beyond = La norme de construction sur l'inox ne couvre pas un lieu pareil.
material-cracking = Risque que le sel fissure l'inox : { $risk }.
material-kinds = Type d'ancrage qui va avec ce que tu as dit : { $kinds }.
material-kinds-limited = Type d'ancrage, une fois le rocher sondé : { $kinds }.
material-one-metal = Tige, écrou, rondelle, plaquette, anneau et chaîne : tout du même métal. La pièce la plus faible décide.

## two metals that touch
check-galvanic-marine = écart maximal entre les deux dans l'eau de mer (limite au bord de la mer)
check-galvanic-outdoors = écart maximal entre les deux dans l'eau de mer (limite en plein air, à l'intérieur des terres)
check-galvanic-indoors = écart maximal entre les deux dans l'eau de mer (limite en intérieur)
pairing-good = { $metal } avec { $other } : un seul métal, aucun des deux n'abîme l'autre.
pairing-poor = { $metal } avec { $other } : ne le prévois pas ; ils se supportent, mais l'ancrage ne vaut que le plus faible des deux.
pairing-never = { $metal } avec { $other } : ne les laisse jamais se toucher.
pairing-untold = Dis-moi les deux métaux ; d'ici là, ne les assemble pas.
pairing-goes = Là où ça reste mouillé, la pièce qui part est celle-ci : { $metal }.
pairing-small-anode = Une petite tige dans une grande plaquette d'un métal plus noble part le plus vite, et la partie qui part est dans le rocher.
pairing-active = Dans un interstice salé, la couche protectrice peut disparaître ({ $metal }) ; l'écart entre les deux va alors jusqu'à { $volts }.
pairing-place = Qu'ils se supportent ne veut pas dire que l'un ou l'autre convienne au lieu : dis-moi où est la falaise.
pitting-line = Résistance aux piqûres, { $metal } : indice { $pren }, place { $place } sur { $count } inox. Ça ne dit rien de la fissuration.

## salt and damp on a warm bolt
humidity-cracks = Dangereux pour l'inox : à { $surface }, l'air contre l'ancrage n'a que { $humidity } d'humidité, et le sel de mer y forme une saumure forte et chaude.
humidity-caution = Prudence : à { $surface }, l'air contre l'ancrage a { $humidity } d'humidité.
humidity-low = Peu de danger de fissuration à ce moment-là : à { $surface }, l'air contre l'ancrage a { $humidity } d'humidité.
humidity-none = Pas de danger de fissuration par le sel : à { $surface }, l'air contre l'ancrage a { $humidity } d'humidité.
humidity-film-concentrated = C'est dans la zone dangereuse, de { $driest } à { $wettest } : le sel commun sèche sous 75 %, mais le sel de magnésium de la mer reste liquide jusqu'à 33 %, aussi concentré que possible.
humidity-film-dilute = C'est au-dessus de la zone dangereuse, de { $driest } à { $wettest } : la saumure est diluée pour l'instant, et se concentre en séchant.
humidity-film-dry = C'est en dessous de la zone dangereuse, de { $driest } à { $wettest } : le sel est presque sec pour l'instant, et traverse la zone le matin et le soir.
humidity-dew = La rosée s'y dépose quand il est plus froid que { $dew }.
humidity-changes = Chaque jour il passe par d'autres états : une seule mesure ne met aucun ancrage hors de cause. C'est le lieu qui décide du métal.

## coating-life
coating-place = Dis-moi où est la falaise : sans le lieu, pas de durée de vie à calculer.
coating-life = { $thickness } de zinc : compte { $worst }, pas plus ; { $mean } à la vitesse habituelle.
coating-rate = Le zinc y perd environ { $rate } la première année : catégorie { $category } (de { $from } à { $to } ; une telle estimation ne vaut pas mieux que −33 % à +50 %).
coating-hidden = La fin du zinc, c'est le début de la fin pour l'acier, hors de vue dans le trou. Les interstices et l'eau qui suinte accélèrent ça plusieurs fois.

## anchor
anchor-use = À utiliser : { $kinds }.
anchor-limited = Aucun type n'est sans limites ici ; le mieux : { $kinds }, avec les limites ci-dessous.
anchor-none = Aucun type d'ancrage que je connaisse ne convient à ce que tu as dit. Change d'emplacement, ou demande à un équipeur qualifié.
anchor-next = Dis-moi une taille, et je vérifie si c'est assez profond et solide.

## embedment
embedment-meets = { $diameter } × { $length } atteint les minimums d'après ce calcul ; prouve-le par un essai d'arrachement dans ce rocher.
embedment-test-first = { $diameter } × { $length } : pas prouvé que ça suffit. Teste-le dans ce rocher avant que quelqu'un s'y fie.
embedment-too-short = { $diameter } × { $length }, c'est trop court : EN 959 demande au moins { $minimum } posés.
embedment-too-weak = { $diameter } × { $length }, c'est trop faible pour ce rocher d'après ce calcul.
embedment-too-weak-assumed = { $diameter } × { $length }, c'est peut-être trop faible : dans le pire cas que tu n'as pas écarté, ça l'est.
embedment-best-case = Si tout ce qui n'est pas dit était bon (rocher sain, trou sec, tige crantée, pas de charge permanente) : moyenne { $mean }, valeur à 5 % { $characteristic } en traction.
embedment-near-edge = { $diameter } × { $length } : trop près d'un bord ou d'une fissure, ou distance inconnue. Mesure-la, et déplace-toi s'il le faut.
embedment-refuse = { $diameter } × { $length } : ne le pose pas là, et pas comme ça.
embedment-cannot = Sans rocher, type et taille de l'ancrage, je ne donne pas de chiffre.
embedment-cannot-next = D'après EN 959, un ancrage scellé est enfoncé d'au moins 70 mm (2¾ in), un ancrage mécanique d'au moins 5 fois le diamètre de son trou ; il faut plus dans un rocher plus tendre.
embedment-governs = En traction, ce qui lâche d'abord : { $mode }, moyenne { $mean }, valeur à 5 % { $characteristic }. En cisaillement : { $side }, moyenne { $sideMean }, valeur à 5 % { $sideCharacteristic }. Valeur à 5 % : 19 sur 20 tiennent plus.
embedment-longer = Plus long, { $size } : moyenne { $mean }, valeur à 5 % { $characteristic } ({ $mode }).
embedment-fatter = Plus gros, { $size } : moyenne { $mean }, valeur à 5 % { $characteristic } ({ $mode }).
embedment-depth = Calculé avec { $depth } dans le rocher, comptés depuis la surface.
embedment-rebound = Un indice de rebond de { $rebound } correspond à un rocher de { $min } à { $max } ; je compte avec le bas de la plage. (Les lois publiées le lisent de { $low } à { $high }.)
embedment-grade = Un rocher de classe { $grade } a de { $min } à { $max } ; je compte avec le bas de la plage.
embedment-strength-capped = Tu as dit { $told }, mais un tel rocher atteint au plus { $most } ; je compte avec ça.
embedment-find-class = Raye le rocher au couteau, frappe-le au marteau et dis-moi comment il réagit (classe R0 à R6), ou donne un indice de rebond : je compte alors avec sa classe et pas avec son nom.
embedment-lasting = L'adhérence est comptée à 60 % : la charge reste des jours, ou personne n'a dit que non.
embedment-heat-warm = Au soleil, ça dépasse 40 °C (104 °F) : l'adhérence est comptée à 65 %, et seulement si la fiche technique admet cette chaleur.
embedment-heat-softens = À la chaleur que tu as dite, une telle résine peut ramollir : presque aucune adhérence n'est comptée.
embedment-oblique = Tiré à { $angle } de son axe : valeur à 5 % { $characteristic }.
embedment-oblique-worst = En traction et en cisaillement à la fois, le plus faible est à { $angle } de son axe : valeur à 5 % { $characteristic }.
embedment-chance = Sur 1000 ancrages pareils, en traction, combien tiendraient moins de { $least } : { $underLeast } ; moins des { $seldom } que l'escalade dépasse rarement (usage courant, sans source) : { $underSeldom }.
embedment-chance-use = Sur 1000 ancrages pareils, en traction, combien tiendraient moins de { $least } : { $underLeast } ; moins des { $action } à compter pour cet usage : { $underAction } ; moins des { $seldom } que l'escalade dépasse rarement (usage courant, sans source) : { $underSeldom }.
embedment-uiaa = Certaines éditions de UIAA 123 demandent { $aim } en traction (de mémoire) : vise ça ; sur 1000, combien tiendraient moins : { $underAim }.
embedment-upper-bound = S'il glisse à travers sa bague, ça ne se calcule pas, ça se teste seulement ; les chiffres sont une limite haute.

## embedment, no size told
sizing-meets = La plus petite taille courante qui suffit, d'après ce calcul : { $diameter } × { $length } ({ $anchor }) ; prouve-le par un essai d'arrachement dans ce rocher.
sizing-test-first = La plus petite taille courante à essayer : { $diameter } × { $length } ({ $anchor }). Ce n'est pas prouvé : teste-la dans ce rocher avant que quelqu'un s'y fie.
sizing-average = D'après ce que tu as dit, aucune taille courante ne suffit à coup sûr ; la plus solide, { $diameter } × { $length } ({ $anchor }), ne suffit qu'en moyenne. Teste-la dans ce rocher avant que quelqu'un s'y fie.
sizing-not-so = Aucune taille n'arrange ça. La plus petite qui soit assez solide est { $diameter } × { $length } ({ $anchor }), mais pas là, ou pas comme ça.
sizing-none = Aucune taille courante n'est assez solide là, d'après ce calcul.
sizing-none-next = Cherche un rocher plus sain, prends une meilleure résine ou un trou plus sec, ou demande à un équipeur qualifié des essais d'arrachement dans ce rocher.
sizing-best = Si tout ce qui n'est pas dit était bon (rocher sain, trou sec, tige crantée, pas de charge permanente) : { $diameter } × { $length } ({ $anchor }).
sizing-need = Il faut : { $tension } en traction et { $shear } en cisaillement, tenus par { $share } ancrages pareils sur 100.
sizing-kind = { $anchor } : { $diameter } × { $length }, valeur à 5 % { $characteristic } en traction.
sizing-kind-none = { $anchor } : aucune taille courante ne suffit à coup sûr.
sizing-check-next = Dis-moi une taille, et je vérifie celle-là.

## adhesive
adhesive-use = À utiliser : { $what }.
adhesive-limited = Aucune résine n'est sans limites ici ; ce qui peut aller : { $what }, avec les limites ci-dessous.
adhesive-none = En l'état, aucune résine ne peut être utilisée. Attends un trou plus sec ou un rocher moins froid.
adhesive-cure-unknown = Dis-moi la température du rocher, et je donne le temps de durcissement.

## amount
amount-size = Dis-moi le diamètre et la profondeur, par exemple 12 × 100, et je calcule la quantité.
amount-verdict = Environ { $volume } par trou, { $total } en tout pour { $holes ->
    [one] { $holes } trou
   *[other] { $holes } trous
 }, pertes comprises.
amount-hole = { $volume } par trou (tige de { $diameter } dans un trou de { $hole }, { $depth } de profondeur).
amount-total = { $anchors ->
    [one] { $anchors } ancrage
   *[other] { $anchors } ancrages
 }, { $holes ->
    [one] { $holes } trou
   *[other] { $holes } trous
 } : { $total } avec { $waste } % de pertes, au moins { $cartridges ->
    [one] { $cartridges } cartouche
   *[other] { $cartridges } cartouches
 } de { $size } ml.
amount-legs = J'ai compté un trou pour chacune des deux branches. Si les deux branches vont dans un seul trou, suis le chiffre du fabricant.
amount-too-tight = Un jeu de { $each } de chaque côté est si serré qu'il reste des vides. Prends le diamètre de trou indiqué par le fabricant.
amount-too-wide = Un jeu de { $each } de chaque côté, c'est plus que ce que remplit n'importe quelle résine ici. Prends le diamètre de trou indiqué par le fabricant.
amount-too-wide-for-most = Un jeu de { $each } de chaque côté : d'après les chiffres courants, il n'y a pour le remplir que : { $who }. Prends le diamètre de trou indiqué par le fabricant.
amount-nozzle = Pour chaque cartouche, je compte { $lost } perdus jusqu'à ce que la couleur soit uniforme ; une nouvelle buse après une pause coûte à peu près autant.
amount-gap-next = Un jeu trop serré ou trop large ne se rattrape pas avec plus de résine : cherche le diamètre de trou du fabricant, et abandonne ce trou.
amount-check = Si un trou avale bien plus que ça, il y a un vide : arrête, et ne t'y fie pas.

## cure
cure-sheet = La fiche technique de ta cartouche passe avant ; ce sont des temps courants pour ce type, de mémoire.
cure-rock-temperature = Compte avec la température du rocher, pas de l'air, et avec l'heure la plus froide jusqu'à ce que ce soit dur.
cure-your-adhesive = Ta résine
cure-by-sheet = Calculé avec les chiffres de la fiche technique que tu as donnés. Vérifie-les sur la cartouche, et qu'ils valent pour un trou aussi mouillé que le tien.
cure-sheet-short = Le temps que tu as lu sur la fiche est bien plus court que d'habitude pour ce type : relis-le, des heures et pas des minutes, la mise en charge et pas la prise.
cure-below-sheet = { $what } : la ligne la plus froide que tu as donnée vaut pour { $lowest }, et le rocher est plus froid. Lis la ligne de la fiche pour ce froid ; s'il n'y en a pas, il ne faut pas l'utiliser.
cure-above-sheet = { $what } : la ligne la plus chaude que tu as donnée vaut pour { $highest }, et le rocher est bien plus chaud. Lis la ligne de la fiche pour cette chaleur.
cure-spell = { $hours } à { $temperature }, là où il faut { $needed } : { $share } % du durcissement.
cure-spell-cold = { $hours } à { $temperature } ne comptent pas : on ne connaît pas de durcissement de cette résine par un tel froid.
cure-spells-probably = D'habitude, c'est durci maintenant : les périodes que tu as données font { $share } % du temps de durcissement ({ $what }). La fiche technique décide.
cure-spells-not-yet = Ne charge pas encore : les périodes que tu as données font { $share } % du temps de durcissement ({ $what }).
cure-spells-rest = Il faut encore environ { $hours } à { $temperature }.
cure-spells-warmer = Avec ce froid, attendre ne sert à rien : il faut un rocher plus chaud.
cure-spells-which = C'est quelle résine ? Tant que tu ne le sais pas, ne charge pas.
cure-spells-line = { $what } : { $share } % de son temps de durcissement habituel.
cure-working = À travailler en { $working } après le mélange ; ensuite, plus personne n'y touche.
cure-wet = Doublé, parce que le trou est mouillé ou que son humidité n'est pas connue.
cure-line = { $what } à { $temperature } : { $working } pour travailler, { $hours } avant la charge.
cure-line-wet = { $what } à { $temperature } : { $working } pour travailler, { $hours } avant la charge (doublé pour un trou mouillé).
cure-too-cold = { $what } : trop froid. Sous { $lowest }, ça risque de ne jamais durcir, même si tu attends longtemps.
cure-too-hot = { $what } : trop chaud. Au-dessus de { $highest }, ça prend avant que l'ancrage soit dedans.
cure-temperature = Dis-moi la température du rocher : sans elle, pas de temps de durcissement.
cure-any = Temps courants à { $temperature }, par type :
cure-wait = { $what } à { $temperature } : laisse { $hours } avant toute charge.
cure-probably = { $what } à { $temperature } : d'habitude durci après { $hours }, et il s'est passé { $since }. La fiche technique décide.
cure-not-yet = Ne charge pas encore : { $what } à { $temperature }, il faut { $hours }, et il ne s'est passé que { $since }.

## hole
hole-verdict = Perce et nettoie dans cet ordre ; un trou poussiéreux est le défaut le plus courant.
hole-size = Trou de { $hole } de diamètre et { $depth } de profondeur, sauf si le fabricant dit autre chose.

## inspect
inspect-trust = { $signs } : rien de ce que tu as dit ne parle contre. Ça ne prouve pas que c'est sain.
inspect-limit = { $signs } : à n'utiliser que contre-assuré, jusqu'à ce que quelqu'un qui s'y connaît l'ait regardé.
inspect-do-not-use = { $signs } : ne l'utilise pas tant que quelqu'un qui s'y connaît ne l'a pas regardé.
inspect-replace-now = { $signs } : ne l'utilise plus. Condamne-le et remplace-le.
inspect-trust-next = Frappe le rocher et l'ancrage au marteau, regarde la résine et la plaquette, et note ce que tu as vu.
inspect-limit-next = Contre-assure-le, préviens le club, et fais-le tester ou remplacer.
inspect-do-not-use-next = Marque-le pour que personne ne mousquetonne dessus, et préviens le club.
inspect-replace-now-next = Marque-le, enlève la plaquette si tu peux, préviens le club, et regarde ses voisins du même type et du même âge.
inspect-interval-months-6 = Contrôle de tels ancrages tous les 6 mois.
inspect-interval-months-12 = Contrôle de tels ancrages tous les ans.
inspect-interval-years-2 = Contrôle de tels ancrages tous les 2 ans.
inspect-interval-years-3 = Contrôle de tels ancrages tous les 3 ans.
inspect-hidden = Ce qui ne se voit pas : les fissures dans le métal, la rouille dans le trou, une résine qui n'a jamais durci.

## spacing
spacing-rule = Reste à 1,5 fois la profondeur, et au moins 150 mm (6 in), de tout bord et de toute fissure ; entre ancrages, 3 fois la profondeur, et au moins 200 mm (8 in).
spacing-verdict = Pour { $depth } de profondeur : au moins { $edge } de tout bord et de toute fissure, et { $spacing } entre les ancrages.
spacing-too-near = Trop près. Pour { $depth } de profondeur, garde { $edge } de tout bord et de toute fissure, et { $spacing } entre les ancrages.
spacing-old-holes = Les vieux trous comptent comme des fissures : reste à deux fois leur profondeur, ou rebouche-les et garde 5 diamètres de trou.
spacing-hollow = Sonde tout le cercle au marteau ; si ça sonne creux quelque part, c'est un autre emplacement qu'il faut.

## load
load-cannot = Dis-moi ce qu'on fait avec l'ancrage, et je calcule la charge : quelle chute, l'angle entre deux brins, la portée et la flèche d'une ligne, ou qui s'y pend.
load-tell-more = Par exemple : "chute de facteur 0,5, 80 kg", "deux points à 60 degrés, 2 kN", "mouliner 90 kg", "ligne de 30 m, flèche 1,5 m, 80 kg". Les pendules, les à-coups et les lignes tendues font plusieurs fois le poids.
load-took-person = Aucun poids n'est donné : j'ai pris { $mass }, une personne lourde avec son matériel.
load-took-rescue = Aucun poids n'est donné : j'ai pris { $mass }, deux personnes et leur matériel.
load-share = Ça fait { $out } % des 15 kN en traction et { $along } % des 25 kN en cisaillement de EN 959 : des essais de type dans du bon béton, pas ce que tient ton rocher.
load-share-out = Ça fait { $out } % des 15 kN en traction de EN 959 : un essai de type dans du bon béton, pas ce que tient ton rocher.
load-share-along = Ça fait { $along } % des 25 kN en cisaillement de EN 959 : un essai de type dans du bon béton, pas ce que tient ton rocher.
load-above-rare = C'est plus que les { $rare } que l'usage courant prévoit comme charge maximale rare : grimpe ou installe de façon que ça ne puisse pas arriver.
load-design-met = La valeur à 5 % de tes essais divisée par { $strength }, contre { $load } fois la charge : atteint. Seulement pour des ancrages comme ceux testés, dans ce rocher.
load-design-short = La valeur à 5 % de tes essais divisée par { $strength } est inférieure à { $load } fois la charge : pas assez.
check-load-rare = charge maximale rare prévue par l'usage courant
check-load-design = valeur à 5 % de tes essais, les deux facteurs comptés
check-line-most = tension maximale conseillée par les slackeurs, mouvements compris
load-plan = L'usage courant prévoit un tel ancrage pour { $usual } en service et { $rare } comme charge maximale rare, chaque point à lui seul.
load-haul = Hisser en passant dans un mousqueton tire plus fort que descendre : { $haul }.

load-fall-bolt = Chute de facteur { $factor }, { $mass } : compte jusqu'à { $bolt } sur le point du haut, { $climber } sur le grimpeur.
load-fall-belay = Chute de facteur { $factor }, { $mass } : compte jusqu'à { $climber } directement sur le relais, { $bolt } si la corde passe dans un mousqueton du relais.
load-fall-common = Avec une corde courante ({ $label } sur son étiquette), par le simple calcul du manuel : { $bolt } sur le point, { $climber } sur le grimpeur.
load-fall-common-belay = Avec une corde courante ({ $label } sur son étiquette), par le simple calcul du manuel : { $climber } directement dessus, { $bolt } si mousquetonnée.
load-rope-limit = Pas de corde précisée : j'ai pris la plus raide qu'EN 892 autorise, 12 kN à sa chute d'essai. Donne-moi la force de choc de l'étiquette de ta corde, et je l'utilise.
load-rope-label = Je lis l'étiquette comme celle d'une corde à simple, testée avec 80 kg ; une corde à double est testée avec 55 kg et elle est plus raide que son étiquette n'en a l'air. Mouillées, gelées ou vieilles, les cordes sont plus raides aussi.
load-rope-told = Calculé avec le module de corde que tu as donné ; mouillées, gelées ou vieilles, les cordes sont plus raides.
load-fall-drag = Le point reçoit les deux brins, 1,66 fois ce que prend le grimpeur. Le frottement y empêche une partie de la corde de s'allonger, donc la chute agit comme un facteur { $effective } au lieu de { $factor }.
load-fall-strands = Un point où la corde est mousquetonnée reçoit les deux brins, 1,66 fois ce que prend le grimpeur.
load-fall-legs = Sur deux points avec { $angle }° entre les brins : { $each } sur chacun, et chacun doit pouvoir tout prendre.
load-fall-measured = Chutes mesurées en salle, pour comparer : { $mean } sur le point en moyenne, { $most } au plus. Les corps et les assureurs amortissent, donc la plupart des chutes restent sous ce calcul ; n'y compte jamais.
load-fall-carabiner = Un mousqueton tient { $closed } doigt fermé et seulement { $open } doigt ouvert (EN 12275, type de base).
load-fall-rope-out = Dis-moi combien de corde est sortie : c'est sa longueur et la hauteur de la chute qui la rendent dure ou non.
load-fall-factor = Facteur de chute : hauteur de la chute divisée par la corde sortie, de 0 à 2. Le même facteur tire aussi fort sur une corde courte que sur une longue.
load-sling = Ne grimpe jamais au-dessus du relais sur une sangle statique : une chute de facteur 1 dessus fait { $force } ; les sangles et les ancrages cassent.
load-absorber = Pas de chiffre : une telle chute dépasse ce que supportent une corde, un ancrage ou un corps sans absorbeur d'énergie.
load-absorber-why = Un facteur de chute au-dessus de 2 se produit en via ferrata, où la longe est courte et la chute longue.
load-absorber-next = Utilise une longe de via ferrata avec absorbeur adaptée à ton poids. C'est l'équipeur du parcours qui dimensionne ses ancrages et son câble.

load-legs = { $load } sur deux points à { $angle }° entre les brins : { $each } sur chacun, { $share } % de la charge, tant que les deux se la partagent également.
load-legs-too-wide = Trop ouvert : { $load } à { $angle }° entre les brins met { $each } sur chaque point, { $share } % de la charge. Jamais au-dessus de 90° ; 60° ou moins, c'est la bonne pratique.
load-legs-unequal = { $load } sur des brins à { $a }° et { $b }° de la verticale : { $first }, { $firstShare } %, sur le premier et { $second }, { $secondShare } %, sur le second.
load-legs-unequal-wide = Trop ouvert : { $load } sur des brins à { $a }° et { $b }° de la verticale met { $first }, { $firstShare } %, sur le premier et { $second }, { $secondShare } %, sur le second. Jamais au-dessus de 90° entre les deux.
load-legs-sum = Les deux brins font { $sum }° entre eux, pas { $told }° ; deux brins égaux à { $told }° prendraient { $each } chacun.
load-legs-narrow = 60° ou moins, c'est la bonne pratique : rallonge les brins.
load-legs-each = Prévois chaque point pour tout prendre à lui seul, { $load } et en plus tout ce qui bouge et tombe : la traction change de direction, aucune sangle ne partage également, et un point peut lâcher.
load-legs-failure = Si un brin lâche et que { $slack } de mou filent dans une sangle statique de { $length }, l'autre prend { $shock } : noue-la pour que rien ne puisse filer.
load-legs-triangle = Ne passe jamais une seule boucle dans les deux points (le triangle) : ça ferait { $triangle } sur chacun.
load-legs-lowering = Pendant qu'on y mouline quelqu'un sur un mousqueton, tout ça vaut 1,66 fois plus : jusqu'à { $most } sur un point.

load-line = { $load } au milieu de { $span } avec { $sag } de flèche : la ligne tire { $tension } à chaque bout tant que personne ne bouge. C'est un gréeur qualifié qui décide.
load-line-tension = Une ligne à { $tension } tire autant à chaque bout tant que personne ne bouge. C'est un gréeur qualifié qui décide.
load-line-cannot = Sans portée et flèche, ou sans la tension, je ne peux pas calculer ce que tire une ligne.
load-line-rule = Règle simple : une flèche d'un dixième de la portée tire 2,5 fois le poids qui est dessus, d'un vingtième 5 fois, d'un cinquantième 12,5 fois.
load-line-rigger = Highlines, ponts de corde et lignes de secours : j'explique les forces et je ne valide rien. Un gréeur qualifié prévoit, contrôle et teste.
load-line-bounce = Rebondir ou tomber dans le leash a fait 1,7 à 1,9 fois la traction de la marche dans des mesures publiées : ici jusqu'à { $moving }.
load-line-anchor = Les gréeurs veulent que chaque ancrage tienne au moins 3 fois la tension de la ligne, ici { $anchor }, chaque brin pouvant tout prendre (usage courant).
load-line-half = La moitié de la flèche, { $sag }, tirerait { $tension }.
load-line-own = Le poids propre de la ligne ajoute { $added }.
load-line-both = La portée et la flèche seules donnent { $tension } ; la tension que tu as donnée est plus haute, c'est elle que j'ai prise.
load-line-pretension = J'ai pris la tension comme celle de la ligne chargée. Si c'est celle que tu mets avant que quelqu'un monte dessus, la ligne chargée tire plus.
load-line-slacken = Les slackeurs conseillent de rester sous { $most }, mouvements compris : donne plus de flèche.
load-line-ends = Deux points à un bout avec { $angle }° entre leurs brins : { $each } de ça sur chacun.
load-line-measured = Mesuré, pour comparer, 57 kg sur 41 m de sangle polyester : 3,1 kN en marchant, 4,4 en rebondissant, 5,3 dans une chute au leash.

load-lower = Mouliner { $mass } met { $lower } sur l'ancrage du haut ; retenu par une corde sans mou, { $sudden }.
load-top-rope = En moulinette avec { $mass } : { $lower } sur l'ancrage du haut à la descente, { $sudden } quand la corde retient sans mou.
load-lower-friction = L'ancrage reçoit les deux brins : le poids du grimpeur et ce que retient l'assureur, 1,66 fois le poids sur un mousqueton, deux fois sur une poulie.
load-top-rope-slack = Avec un dixième de la corde en mou, sur la corde la plus raide qu'EN 892 autorise : { $slack }. Mesuré et rapporté en moulinette : 1,5 à 3 kN (usage courant).
load-abseil = En rappel avec { $mass } : { $hang } à l'arrêt, { $jerky } quand ça va par à-coups.
load-abseil-jerk = Un rappel souple reste à 1 à 1,5 kN par personne ; les arrêts et les à-coups font 2 à 2,5 (usage courant). Descends en souplesse.
load-rescue = Charge de secours de { $mass } : { $hang } à l'arrêt, { $lower } descendue sur un mousqueton, { $haul } hissée sur un mousqueton. C'est un gréeur qualifié qui décide.
load-rescue-rigger = J'explique les charges de secours et je ne valide rien : un gréeur qualifié ou l'équipe de secours les prévoit, sur deux ancrages pouvant chacun tout prendre.
load-rescue-shock = Une glissade ou un choc avec deux personnes fait { $least } à { $most } (usage courant).
load-belay = Un relais avec { $mass } pendus porte { $hang } ; une chute de facteur 2 directement dessus tire jusqu'à { $fall }.
load-lead = Chute en tête avec { $mass } : prévois le point du haut pour { $rare }, la charge maximale rare ; les chutes dures font 4 à 8 kN (usage courant).
load-lead-factors = Estimations hautes sur le point, avec la corde la plus raide qu'EN 892 autorise et rien qui amortisse : { $easy } au facteur de chute 0,1, { $usual } à 0,3, { $hard } à 0,5.
load-hang = { $mass } pendus à l'arrêt, c'est { $hang } ; lâchés sur une corde sans mou, { $sudden }.
load-lower-of = Mouliné sur un mousqueton : { $lower } sur l'ancrage.

load-strength-cannot = Ce que tient un ancrage, je ne peux pas le dire sans son rocher, son type, son diamètre et sa longueur.
load-strength-open = Si un ancrage tient { $load }, je ne peux pas le dire sans son rocher, son type, son diamètre et sa longueur.
load-strength-minimums = D'après EN 959, un ancrage pour le rocher tient 15 kN en traction et 25 kN en cisaillement à son essai de type, dans du bon béton. Ce n'est pas une charge de service, et un rocher tendre tient moins.
load-strength-tell = Dis-moi, par exemple, "scellement de 12 x 100 dans du granite à l'époxy" ; et fais un essai d'arrachement dans ce rocher.
load-strength-signs = Ce qui est rouillé, fissuré, tordu ou branlant n'a pas de résistance calculable. Ne le charge pas ; demande-moi comment le contrôler.

## results of pull tests
results-meets = { $count } essais : moyenne { $mean }, valeur à 5 % { $characteristic }. C'est au-dessus des { $need } qu'EN 959 demande à un essai de type, et toujours pas une charge à laquelle se pendre.
results-upper = { $count } essais : moyenne { $mean }, valeur à 5 % { $characteristic }, mais seulement comme limite haute, parce que les pieds du bâti étaient près de l'ancrage.
results-upper-open = { $count } essais : moyenne { $mean }, valeur à 5 % { $characteristic } ; une limite haute tant que personne ne dit que les pieds du bâti étaient loin de l'ancrage.
results-unproved = { $count } essais : moyenne { $mean }, valeur à 5 % seulement { $characteristic }. Pas prouvé : c'est en dessous des { $need } qu'EN 959 demande à un essai de type.
results-weak = Trop faible : { $count } essais tiennent { $mean } en moyenne, valeur à 5 % { $characteristic }, et EN 959 demande { $need } à un essai de type.
results-scattered = Ne te fie pas à ces { $count } essais : ils sont dispersés de { $scatter } %, moyenne { $mean }, valeur à 5 % { $characteristic }. Cherche d'abord ce qui différait entre eux.
results-too-few = { $count ->
    [0] Dis-moi les charges auxquelles ils ont lâché : au moins 3.
    [one] Un essai ne dit rien du prochain ancrage : arraches-en { $missing } de plus, du même type dans le même rocher.
   *[other] { $count } essais ne disent rien du prochain ancrage : arraches-en { $missing } de plus, du même type dans le même rocher.
 }
results-lowest = Tout ce que tu sais, c'est ce que tenaient les ancrages de ce jour-là : { $value } pour le plus faible.
results-how-many = 3 est le minimum, 5 est courant, 10 donnent une valeur à 5 % utile.
results-equal = Les { $count } résultats sont tous identiques : les lectures ont été arrondies ou recopiées, donc on n'en tire aucune résistance.
results-equal-next = Relis les pics, au dixième de kilonewton, ou fais encore un essai.
results-mean = Écart-type { $deviation }, dispersion { $scatter } % ; le plus faible a tenu { $min }.
results-lognormal-few = Valeur à 5 % { $value } avec 90 % de confiance : 19 sur 20 tiennent plus. Par la courbe log-normale, parce que { $count } essais, c'est peu{ $other }.
results-lognormal-scatter = Valeur à 5 % { $value } avec 90 % de confiance : 19 sur 20 tiennent plus. Par la courbe log-normale, parce que la dispersion dépasse 15 %{ $other }.
results-normal = Valeur à 5 % { $value } avec 90 % de confiance sur { $count } essais : 19 sur 20 tiennent plus. Par la courbe normale{ $other }.
results-other = { "\u00A0" }; l'autre courbe donne { $value }
results-other-nonsense = { "\u00A0" }; la courbe normale tomberait sous zéro
results-cut = Pour une dispersion au-dessus de 20 % (ici { $scatter } %), les évaluations ne laissent compter que { $factor } de la valeur à 5 % : { $value }.
results-outlier-low = { $value } est loin sous les autres. Demande ce qui s'est passé là : mauvais mélange, vide, fissure, bâti qui a glissé ? Il reste compté : c'est pour de tels ancrages qu'on teste.
results-outlier-high = { $value } est loin au-dessus des autres : vérifie cette lecture. Elle reste comptée tant qu'aucune erreur n'est montrée.
results-more = Avec la même moyenne et la même dispersion, { $count } essais en tout le prouveraient.
results-more-useless = Avec la même moyenne et la même dispersion, même { $count } essais ne le prouveraient pas : il faut des ancrages plus longs ou plus gros.
results-bond = Adhérence de la résine sur { $legs ->
    [one] { $legs } branche
   *[other] { $legs } branches
 } de { $diameter } × { $depth } : moyenne { $mean }, valeur à 5 % { $low }.
results-bond-least = Adhérence, si la résine tenait { $legs ->
    [one] { $legs } branche
   *[other] { $legs } branches
 } de { $diameter } × { $depth } : au moins { $mean } en moyenne, valeur à 5 % { $low } ; plus là où c'est autre chose qui a lâché.
results-bond-update = La table dit { $table } ({ $adhesive }) ; avec tes essais comptés, le milieu est { $median }, la valeur à 5 % pour le prochain ancrage { $low }.
results-direction = Compris comme tiré en traction. Si tu as tiré en cisaillement, compare plutôt à { $need }.
results-missing = Tu as dit { $told } ancrages mais { $count } résultats. Les autres comptent aussi : pourquoi manquent-ils ?
results-frame = Si les pieds du bâti étaient à moins de deux fois la profondeur, ils tenaient le rocher : ce qui a cassé en dit moins sur le rocher que sur la résine et le métal.
results-mixed = Des ruptures différentes sont des séries différentes : juge le rocher, la résine et le métal à part.
results-steel = C'est le métal qui a cassé d'abord : rocher et résine tiennent au moins ça, et combien de plus, on ne le sait pas.
results-few = { $count } résultats, c'est peu : chaque nouvel essai déplace la valeur à 5 %.
results-not-said = Ça vaut pour ce rocher, ce type, cet équipeur et cette météo. Sur les trous mouillés, les charges permanentes, la corrosion et la falaise d'à côté, ça ne dit rien.
results-all-above = Les { $count } essais ont tous tenu au moins { $least }, et { $failed ->
    [0] aucun n'a lâché
    [one] un seul a lâché
   *[other] seulement { $failed } ont lâché
 } : trop peu pour une valeur à 5 %.
results-no-fractile = Une valeur à 5 % demande au moins { $needed } essais jusqu'à la rupture, avec des résultats différents.
results-share = Avec 95 % de confiance, jusqu'à { $share } % de tels ancrages peuvent encore tenir moins de { $least }.
results-censored = { $count } essais, { $failed } jusqu'à la rupture et { $stopped } arrêtés avant : milieu { $median }, valeur à 5 % { $characteristic }. { $ends }
results-censored-meets = Au-dessus des { $need } qu'EN 959 demande à un essai de type, et toujours pas une charge à laquelle se pendre.
results-censored-upper = Une limite haute, sauf si les pieds du bâti étaient loin de l'ancrage.
results-censored-unproved = Pas prouvé : en dessous des { $need } qu'EN 959 demande à un essai de type.
results-censored-weak = Trop faible : EN 959 demande { $need } à un essai de type.
results-censored-scattered = Trop dispersés pour s'y fier : cherche ce qui différait.
results-stopped = Un essai arrêté compte comme "au moins autant". La valeur à 5 % est réduite comme le méritent { $failed } vraies ruptures.
results-censored-point = Sans cette pénalité, la courbe ajustée a son point à 5 % à { $value } ; sa dispersion est de { $scatter } %.
check-pulls-out = en traction, contre le minimum d'essai de type de EN 959
check-pulls-sideways = en cisaillement, contre le minimum d'essai de type de EN 959

## proof tests
proof-load = { $load }
proof-load-untold = cette charge
proof-held = { $count ->
    [one] { $count } ancrage a tenu { $load } : pas de gros défaut sur celui-là
   *[other] { $count } ancrages ont tenu { $load } : pas de gros défaut sur ceux-là
 }, mais parmi les autres, jusqu'à { $share } % peuvent encore être mauvais.
proof-proves = Ça prouve { $load }, ce jour-là, dans cette direction, pour ces ancrages. Ça peut même en avoir abîmé un.
proof-needed = Pour être sûr à 95 % qu'au plus un sur vingt est mauvais, il faudrait que { $needed } tiennent.
proof-little = Ça ne prouve rien sur la résistance au-dessus de cette charge, les charges permanentes ou les fissures de corrosion.
proof-failure-instead = Ce que tiennent les ancrages, ce sont au moins 3, mieux 5 à 10, arrachés jusqu'à la rupture, qui le disent.
proof-count = Dis-moi combien d'ancrages ont tenu : sans le nombre, ça ne prouve rien.
proof-one-gave-way = Stop : un ancrage a raté son essai de contrôle, et ça met tous les autres en doute.
proof-several-gave-way = Stop : plusieurs ancrages ont lâché. Ferme la voie et contrôle-les tous, ou remplace-les.
proof-failed-out = Ce qui a bougé ou lâché est hors service : marque-le, enlève-le, garde la pièce.
proof-double = Trouve la cause, puis contrôle au moins 5 % de tous les ancrages de l'endroit, et au moins 6.
proof-all = Teste tous les ancrages de ce type à cet endroit, et réfléchis à nouveau au rocher, à l'ancrage et à la résine.
proof-why = Cherche la cause : poussière, mauvais mélange, froid, vide, rocher tendre ou fissuré, trou mal fait.

## comparing two groups
compare-groups = Dis-moi les charges des deux séries, par exemple : lisses 33 35 37, crantées 36 44 51.
compare-too-few = Il faut au moins 3 résultats par série pour pouvoir comparer.
compare-example = 5 à 10 résultats par série en montrent plus.
compare-no-scatter = Aucune des deux séries n'est dispersée : les lectures ont été arrondies ou recopiées, il n'y a donc rien à comparer.
compare-first = La première série est plus solide : le seul hasard montrerait une telle différence dans { $chance } % des cas.
compare-second = La seconde série est plus solide : le seul hasard montrerait une telle différence dans { $chance } % des cas.
compare-none = Aucune différence n'est montrée ; ça ne veut pas dire qu'elles se valent (le seul hasard : { $chance } % des cas).
compare-group-first = Première série : { $count } essais, moyenne { $mean }, dispersion { $scatter } %, plus faible { $min }.
compare-group-second = Seconde série : { $count } essais, moyenne { $mean }, dispersion { $scatter } %, plus faible { $min }.
compare-interval = Première moins seconde : { $difference } ; avec 95 % de confiance entre { $low } et { $high }.
compare-interval-ratio = Première sur seconde : { $ratio } fois ; avec 95 % de confiance entre { $low } et { $high } fois.
compare-logs = Comparées par leurs logarithmes, parce qu'une série est dispersée de plus de 20 % (test de Welch).
compare-plain = Par le test de Welch, qui laisse à chacune sa dispersion.
compare-needed = Pour voir une différence de 20 % avec cette dispersion, il faut environ { $needed } essais par série.
compare-hopeless = Avec cette dispersion, même { $most } essais par série ne montreraient pas une différence de 20 %.
compare-same-failure = On ne compare que des essais qui ont lâché de la même façon.
compare-lowest = Ce qui compte pour une vie, c'est l'ancrage le plus faible, pas la moyenne : demande aussi la valeur à 5 % de chaque série.

## planning a pull test
plan-failure-first = Arrache d'abord au moins { $fewest } ancrages sacrifiés jusqu'à la rupture, puis contrôle à { $load } ceux qui restent en place.
plan-failure = Arrache jusqu'à la rupture au moins { $fewest } ancrages sacrifiés, dans ce rocher et de ce type.
plan-proof = Contrôle à { $load } en traction, pas plus, les ancrages qui restent en place : ça ne trouve que les gros défauts.
plan-failure-count = Jusqu'à la rupture : { $fewest } est le minimum par rocher et par type, { $good } donnent une valeur à 5 % utile ; dans du rocher où personne ne grimpera.
plan-failure-rate = Monte la charge régulièrement pour atteindre le pic après { $shortest } à { $longest } minutes, et continue 2 à 5 mm au-delà.
plan-failure-keep = Note chaque charge maximale et ce qui a lâché. Les faibles sont le résultat.
plan-which-all = Contrôle : chaque ancrage.
plan-which-tenth = Contrôle : un sur dix, et au moins { $fewest } par portion de rocher.
plan-which-all-of = Contrôle : chaque ancrage, { $tested } en tout.
plan-which-tenth-of = Contrôle : un sur dix, et au moins { $fewest } par portion de rocher : { $tested } sur { $count }.
plan-proof-load = Charge d'épreuve { $load } (d'usage jusqu'à { $most }) en traction ; tiens-la { $shortest } à { $longest } secondes.
plan-proof-too-high = { $wanted }, c'est trop pour un ancrage qui reste : une charge d'épreuve peut abîmer ce qu'elle teste, et certains œils plient dès 6 à 10 kN.
plan-proof-above-half = La moitié de la valeur à 5 % que je calcule n'est que de { $cap }. Arrache d'abord des ancrages sacrifiés jusqu'à la rupture : une charge d'épreuve au-dessus de la moitié de la vraie valeur à 5 % peut casser de bons ancrages.
plan-accept = Réussi si la charge ne baisse pas de plus de 5 %, si rien ne glisse, si un scellement ne bouge pas de plus de 0,5 mm (les autres types 1 mm), et s'il n'apparaît ni fissure ni anneau de poussière.
plan-frame = Pieds du bâti à au moins deux fois la profondeur de chaque côté, sinon le rocher ne peut pas s'arracher et le résultat est trop beau.
plan-frame-depth = Pieds du bâti à au moins { $side } de chaque côté (un anneau de { $ring } de large à l'intérieur), sinon le rocher ne peut pas s'arracher et le résultat est trop beau.
plan-energy = À { $force }, un bâti qui bouge de 5 mm emmagasine { $energy } : une pièce de 1 kg part à { $speed }. Dix mètres de sangle en nylon dans la ligne emmagasineraient environ { $times } fois ça : chaîne et tiges seulement.
plan-stand = Personne dans l'axe de traction ; à 3 m sur le côté, pompe au bout d'un flexible ; le sol en dessous fermé ; celui qui teste sur son propre ancrage.
plan-write = Note le rocher, l'humidité, la taille, la résine et son âge, la température, les pieds du bâti, la charge maximale, ce qui a lâché ; prends une photo.
plan-then = Ensuite, dis-moi toutes les charges, et je calcule la moyenne et la valeur à 5 %.
check-proof = moitié de la valeur à 5 % calculée, contre la charge d'épreuve

## life of a metal
life-place = Dis-moi où est la falaise : sans le lieu, pas de durée de vie à prévoir.
life-suitable = { $what } : prévois { $range } là-bas. C'est une plage pour planifier, jamais une garantie.
life-limited = { $what } : ne prévois pas plus de { $low } ans là-bas, et contrôle. { $why }
life-none = { $what } : ne prévois aucune durée de vie là-bas. { $why }
life-was = Là où on l'a posé quand même, il a duré { $range }, et certains ont cassé sans aucun signe.
life-range = { $low } à { $high } ans
life-range-one = { $low } ans
life-because = Ce qui fixe la plage là-bas : { $why }.
life-because-cracks = Ce qui fixe la plage là-bas, c'est le risque qu'il se fissure : { $why }.
life-practice = La plage est un usage courant, pas une loi de la nature : la première tache, fissure ou pièce branlante y met fin.
life-hidden = Les interstices, l'eau qui suinte et les soudures vieillissent plus vite que le métal à l'air libre, et la partie dans le trou ne se voit pas.
life-rock = Au-delà, le rocher, la résine et l'usure mettent fin à un ancrage avant le métal.
life-bar = D'un acier nu de { $diameter } d'épaisseur, il resterait { $left } % de la section après { $years } ans s'il rouillait de façon uniforme. Ce n'est pas le cas : les piqûres vont 2 à 5 fois plus profond, c'est donc le meilleur cas.
life-bar-gone = Une barre d'acier nu peut être rouillée de part en part en { $years } ans.
coating-usual = Personne n'a dit l'épaisseur : j'ai pris { $thickness }, la plus mince qui soit courante.

## cost
cost-one = { $name } : { $yearly } par an et par ancrage sur { $horizon } ans, avec { $holes ->
    [one] { $holes } trou
   *[other] { $holes } trous
 }.
cost-cheapest = Parmi ce qui est sûr là-bas, le moins cher : { $name }, à { $yearly } par an et par ancrage sur { $horizon } ans, contre { $otherYearly } ({ $other }).
cost-cheapest-if-safe = Si tous sont sûrs sur ta falaise, le moins cher : { $name }, à { $yearly } par an et par ancrage sur { $horizon } ans, contre { $otherYearly } ({ $other }).
cost-place = La sécurité d'abord : dis-moi où est la falaise, et je compare ce qui y est sûr. D'ici là, pas de classement.
cost-none-safe = Rien de tout ça n'est sûr là-bas, il n'y a donc rien à comparer : demande quel métal utiliser.
cost-price = Dis-moi ce que coûtent les pièces d'un ancrage ({ $name }), dans n'importe quelle monnaie.
cost-life = Dis-moi combien d'années ça dure ({ $name }), ou où est la falaise.
cost-this = Ça coûte { $yearly } par an et par ancrage sur { $horizon } ans, avec { $holes ->
    [one] { $holes } trou
   *[other] { $holes } trous
 }.
cost-anchor = cet ancrage
cost-nth = option { $number }
cost-option = { $name } : chaque année { $yearly } ({ $total } en argent d'aujourd'hui), { $holes ->
    [one] { $holes } trou
   *[other] { $holes } trous
 } en { $horizon } ans ; pièces { $parts }, travail { $labour }, durée { $life }.
cost-planned = La durée de vie est prévue d'après le lieu ({ $name } : { $range }, usage courant, sans garantie) ; je compte avec le bas de la plage.
cost-no-price = Laissé de côté : { $name }, aucun prix donné.
cost-no-life = Laissé de côté : { $name } ; personne n'a dit sa durée de vie, et je n'en ai pas pour ce lieu.
cost-all = Pour { $count } ancrages ({ $name }) : { $total } en argent d'aujourd'hui.
cost-break-price = { $name } contre { $other } : avec des pièces à { $price } ou moins, ça ne coûterait pas plus.
cost-break-price-never = { $name } contre { $other } : même avec des pièces gratuites, ça coûterait plus.
cost-break-life = { $name } contre { $other } : avec une durée de vie de { $life } ou plus, ça ne coûterait pas plus.
cost-break-life-never = { $name } contre { $other } : aussi longtemps que ça dure, ça coûte plus.
cost-robust = Le classement tient même si le moins cher dure un quart de moins et les autres un quart de plus.
cost-not-robust = Le classement s'inverse si le moins cher dure un quart de moins et les autres un quart de plus : ne t'appuie pas dessus.
cost-rates = En argent d'aujourd'hui : { $none } à 0 %, { $three } à 3 %, { $five } à 5 %.
cost-rates-same = À 0, à 3 comme à 5 %, le moins cher : { $first }.
cost-rates-turn = Ça dépend du taux d'intérêt ; le moins cher : { $none } à 0 %, { $three } à 3 %, { $five } à 5 %.
cost-terms = Calculé sur { $horizon } ans à { $rate } % par an au-dessus de l'inflation ; dis autre chose et je recalcule.
cost-no-labour = Le travail n'est pas compté, parce que personne n'a dit ce qu'il vaut ; ça avantage ce qu'il faut remplacer souvent.
cost-holes = Chaque remplacement est un nouveau trou dans le rocher, sauf si l'ancien peut resservir.

## cautions, permission, emergency
cautions-verdict = Avant de percer :
permission-verdict = Demande avant de percer : je ne peux pas dire si les ancrages y sont autorisés.
permission-owner = C'est le propriétaire ou le gestionnaire de la falaise qui décide, et les règles d'équipement du secteur.
permission-nature = Zones protégées, périodes de nidification et sites classés ont leurs propres règles.
permission-club = Le responsable des sites de ton club, ou la fédération régionale, sait à qui demander.
emergency-verdict = Il faut de l'aide tout de suite : appelle les secours, et que personne ne charge cet ancrage.
emergency-call = Appelle le numéro d'urgence local. Dis où vous êtes, combien vous êtes, qui est blessé.
emergency-back-up = Contre-assure la personne sur quelque chose d'indépendant : un autre ancrage sain, un arbre, une seconde corde.
emergency-do-not-load = Ne mouline pas, ne tire pas et ne grimpe pas sur ce qui a lâché, ni sur ses voisins du même type.
emergency-after = Quand tout le monde est en sécurité : ferme la voie, préviens le club, garde la pièce cassée telle quelle.

## refusal
refusal-reason = { $why }
refusal-certify = Je ne certifie rien.
refusal-certify-next = Un équipeur qualifié qui contrôle et teste sur place peut te donner un rapport ; demande-lui, ou au gestionnaire du site.
refusal-hang-people = Je ne dis pas que des gens peuvent s'y pendre.
refusal-hang-people-next = Un équipeur ou un gréeur qualifié doit le voir, le tester et décider. D'ici là, utilise un autre ancrage.
refusal-structure = Je ne juge pas les ouvrages.
refusal-structure-next = Demande à un ingénieur structure diplômé et au propriétaire de l'ouvrage.
refusal-banned-place = Je n'aide pas à poser des ancrages là où ce n'est pas autorisé.
refusal-banned-place-next = Demande au gestionnaire du site ; il y a peut-être moyen de faire une demande.
refusal-expired-adhesive = Ne l'utilise pas : cette résine est périmée.
refusal-expired-adhesive-next = Prends une cartouche neuve, et regarde sa date et comment elle a été stockée. Si des ancrages sont déjà scellés avec l'ancienne, condamne-les, et fais un essai d'arrachement sur chacun ou remplace-les.
refusal-skip-safety = Je n'aide pas à sauter une étape de sécurité.
refusal-skip-safety-next = Fais l'étape, ou ne pose pas l'ancrage aujourd'hui.
refusal-hollow-rock = Pas d'ancrage et pas de chiffre pour du rocher creux.
refusal-hollow-rock-next = Sonde le rocher autour au marteau et déplace-toi là où ça sonne clair tout autour ; s'il n'y en a pas, laisse tomber.

failed = Quelque chose a raté en moi, donc je ne donne pas de réponse plutôt qu'une fausse. Rien n'a été changé ; préviens, s'il te plaît, la personne qui s'occupe de moi.

## Terminal
chat-greeting = Chough. Pose tes questions sur les ancrages dans le rocher avec tes mots ; "aide" montre des exemples, Ctrl-D termine.
chat-choose = Tape une lettre pour choisir, ou réponds avec tes mots :

## Settings, units, and words that point back
settings-admins-only = Seuls ceux qui gèrent ce groupe peuvent changer ses réglages. Rien n'a été changé.
settings-no-rooms = Cette discussion n'a ni sujets ni canaux à choisir.
settings-language = Langue, sauf si un membre écrit dans une autre : { $name }.
settings-units-metric = Unités métriques d'abord.
settings-units-imperial = Pouces et livres d'abord.
settings-rooms = { $count ->
    [one] Je réponds dans un seul sujet ou canal.
   *[other] Je réponds dans { $count } sujets ou canaux seulement.
  }
units-set-metric = Désormais je te montre d'abord les unités métriques.
units-set-imperial = Désormais je te montre d'abord les pouces et les livres.
language-en = English
language-es = español
language-pt = português
language-fr = français
language-it = italiano
language-de = Deutsch
other-which = Lequel des deux veux-tu dire ?
other-none = Je ne sais pas de quel autre tu parles : nomme-le.

## In a group
too-fast = C'est trop rapide pour moi. Laisse-moi une minute, puis redemande.
group-greeting =
  Bonjour, je suis Chough. J'aide pour les ancrages à demeure dans le rocher : quel métal, quel type, quelle profondeur, quelle résine, quel temps de prise, ce que montre un essai de traction, ce que veut dire la rouille.
  Écris-moi avec une commande comme /material ou /help, mentionne-moi ou réponds-moi ; sinon je me tais.
  Je ne vois pas le rocher et je ne certifie jamais. Un mauvais ancrage peut tuer : les règles locales, la notice du fabricant et un équipeur qualifié décident.
  Ceux qui gèrent le groupe peuvent fixer la roche, la côte, la langue et les unités avec /club, par exemple « /club granite, intérieur des terres ».
sent-again = (Renvoyé après une interruption ; tu l'as peut-être déjà reçu.)
press-for-another = Cette question était pour quelqu'un d'autre. Demande-moi toi-même et tu auras la tienne.

## Pictures
picture-nothing = Rien à dessiner : aucune valeur.
picture-more = et { $count } de plus
picture-axis-time = temps, s
picture-axis-force = force, kN
picture-axis-displacement = déplacement, mm
picture-axis-bond = adhérence, MPa
picture-axis-cost = coût par an
picture-axis-risk = probabilité de lâcher dans l'année
picture-force-time = Force dans le temps : { $name }
picture-force-displacement = Force selon le déplacement : { $name }
picture-peak = pic d'un essai
picture-first-drop = première baisse de la force
picture-pull = pic { $peak }
picture-pull-dropped = pic { $peak }, première baisse à { $drop }
picture-need = { $name } : au moins { $load }
picture-groups = Essais d'arrachement comparés : { $name }
picture-failed = un essai, mené jusqu'à la rupture
picture-stopped = un essai, arrêté avant la rupture : a tenu au moins autant
picture-mean = moyenne : la moitié tient moins
picture-characteristic = valeur à 5 % : 19 sur 20 tiennent plus
picture-tests = { $count ->
    [one] { $count } essai
   *[other] { $count } essais
 }{ $stopped ->
    [0] { "" }
   *[other] , dont arrêtés avant la rupture : { $stopped }
 }
picture-group = { $name } : { $parts }
picture-group-mean = moyenne { $mean }
picture-group-low = valeur à 5 % { $low }
picture-group-no-low = pas de valeur à 5 %
picture-bond = Adhérence, apprise et publiée : { $name }
picture-published = publié : { $low } à { $high }
picture-learned = moyenne avec nos essais comptés : { $mean } ; avec { $share } % de probabilité entre { $low } et { $high }
picture-own = nos essais : { $tests }
picture-used = valeur utilisée : { $used }
picture-costs = Ce que coûte le remplacement : { $name }
picture-policy = { $name } : { $total } en tout
picture-risks = Quels ancrages d'abord : { $name }
picture-share = { $share } %
picture-share-under = moins de { $share } %
picture-risk-act = plein : agir ici d'abord
picture-risk-watch = vide : continuer à inspecter
picture-alt-reached = { $load } atteints ({ $name }) : { $reached } sur { $count }.
picture-alt-peaks = { $count ->
    [one] { $count } essai, pic { $most }.
   *[other] { $count } essais, pics de { $least } à { $most }.
 }
picture-alt-no-pulls = { $count } essai trouvé dans cet enregistrement.
picture-alt-groups-met = Groupes dont la valeur à 5 % atteint { $load } ({ $name }) : { $met } sur { $count }.
picture-alt-groups-lowest = Plus basse valeur à 5 % de { $count } groupes : { $low } ({ $name }).
picture-alt-groups-no-low = { $count } groupes avec { $tests } essais, aucun avec une valeur à 5 %.
picture-alt-below = Ont lâché sous la plage publiée : { $below } sur nos { $count } essais.
picture-alt-range = Nos essais de { $least } à { $most }.
picture-alt-cheapest = Le moins cher sur { $years } ans : { $name }, { $total } en tout.
picture-alt-policy = { $policy }, au plus { $most } en une année ({ $year }).
picture-alt-no-policies = { $count } façon de faire à comparer.
picture-alt-act = Agir d'abord ici : { $act } sur { $count } ancrages.
picture-alt-highest = Plus haute probabilité de lâcher dans l'année : { $name }, { $share }.
## Places
place-impossible = Ce lieu n'existe pas : la latitude va de -90 à 90, la longitude de -180 à 180. Rien n'a été changé.
place-null = C'est le point 0, 0, celui d'un récepteur sans signal. Rien n'a été changé.
place-at-sea = Ce lieu est en pleine mer. Rien n'a été changé.
place-sea = D'après la carte ouverte, la mer est à environ { $distance }, à { $uncertainty } près. Je compte avec cela ; dis-moi si c'est faux. Lagunes et estuaires peuvent manquer.
place-near-limit = D'après la carte ouverte, la mer est à environ { $distance }, à { $uncertainty } près : trop près d'une limite de classe. Je compte avec { $used } jusqu'à mieux. Lagunes et estuaires peuvent manquer.
place-far = D'après la carte ouverte, la mer est à plus de { $distance } ; je compte avec cela. Lacs salés, piscines et routes salées comptent aussi : dis-le-moi.
# telegram
telegram-old-button = Ce bouton vient d'une version plus ancienne. Demande à nouveau et tu en auras un autre.
telegram-only-words = Je lis des mots, une position ou un tableau de résultats d'essai ; je ne peux pas regarder les photos, les enregistrements ni les autocollants. Écris ce que tu vois, s'il te plaît.
telegram-file-too-big = Ce fichier est trop gros pour moi : 4 Mo au plus. Envoie seulement le tableau des résultats, en texte ou en CSV.
telegram-file-failed = Ce fichier ne m'est pas parvenu. Envoie-le encore une fois, s'il te plaît, ou écris les valeurs dans un message.
telegram-inline-private = Demande-moi en privé
telegram-description = J'aide pour les ancrages fixes dans le rocher : quel métal, quel type, quelle profondeur, quelle résine, combien de temps de prise, ce que montre un essai d'arrachement, ce que signifie la rouille. Chaque réponse dit ses sources et ses doutes. Je ne vois pas le rocher et je ne certifie jamais : les règles locales, la notice du fabricant et un poseur qualifié décident.
telegram-short-description = Réponses prudentes et sourcées sur les ancrages dans le rocher. Je ne certifie jamais.
# discord
discord-ask-about = Demander sur ce message
discord-option = question
discord-option-does = Ta question, avec tes mots
discord-type-it = L'écrire
discord-type-title = Ta réponse
discord-type-label = Avec tes mots
discord-pick = Choisis …
discord-more = Tout ne tient pas dans le menu : ce qui manque peut être écrit.
discord-empty = Ce message n'a pas de texte que je puisse lire.
discord-not-here = Je ne réponds que dans d'autres salons de ce serveur.
discord-nothing = Je n'ai rien à ajouter pour l'instant. Si tu as beaucoup demandé d'un coup, attends une minute.
discord-stopping = On me redémarre. Redemande dans une minute.
discord-thread-closed = D'un fil qui est fermé maintenant :
discord-file-too-big = Ce fichier dépasse { $most } Mo, je ne l'ai donc pas lu.
discord-file-failed = Je n'ai pas pu récupérer ce fichier. Renvoie-le dans une minute.
discord-file-one = Je lis un fichier à la fois. Envoie-les un par un.

## Club records
record-load = charge maximale
record-fact = • { $fact } : { $value }
record-text-day = • jour de l'essai : { $text }
record-text-crag = • falaise : { $text }
record-text-route = • voie : { $text }
record-text-batch = • lot : { $text }
record-text-note = • note : { $text }
record-name-day = jour de l'essai
record-name-crag = falaise
record-name-route = voie
record-name-batch = lot
record-name-note = note
record-change = • { $fact } : { $before } → { $after }
record-did-added = { $version }. Noté par { $by }, { $at } :
record-did-corrected = { $version }. Corrigé par { $by }, { $at } :
record-did-withdrawn = { $version }. Retiré par { $by }, { $at }.
record-by-forgotten = un membre qui a demandé l'oubli
record-draft = Je noterais cet essai :
record-draft-how = Rien n'est encore gardé. Garde, jette, ou dis ce qui est faux : « c'était 34 kN ».
record-correct = La fiche { $id } changerait ainsi :
record-withdraw = Retirer la fiche { $id } ? Elle ne comptera plus ; son historique reste.
record-kept = Gardé sous { $id }.
record-kept-how = Pour la corriger : « { $id } était 34 kN ». Pour la retirer : « retirer { $id } ». Toutes les étapes : « historique { $id } ».
record-corrected = Corrigé : { $id }. Ce qu'elle était avant reste dans son historique.
record-withdrawn = Retirée : { $id }. Elle ne compte plus ; son historique reste.
record-dropped = Jeté. Rien n'a été gardé.
record-same = C'est déjà ce que dit { $id }. Rien n'a été changé.
record-shown = Fiche { $id }, version { $version } :
record-shown-withdrawn = La fiche { $id }, version { $version }, a été retirée et ne compte pas :
record-history = Fiche { $id }, toutes les étapes :
record-none = Ce groupe n'a pas de fiche { $id }.
record-is-withdrawn = { $id } a été retirée et ne peut plus être changée. Note l'essai à nouveau. Rien n'a été changé.
record-not-yours = Seuls celui qui l'a notée, ou ceux qui s'occupent de ce groupe, peuvent changer cette fiche. Rien n'a été changé.
record-changed-meanwhile = Quelqu'un a changé cette fiche entre-temps. Rien n'a été changé ; regarde-la à nouveau.
record-open-first = D'abord, garde ou jette celui-ci :
record-one-at-a-time = Un essai à la fois, s'il te plaît, ou plusieurs en tableau : un fichier ou une liste collée avec un en-tête. Je n'en ai rien pris.
record-no-day = « { $text } » n'est pas un jour. Écris comme 2027-05-02. Rien n'a été changé.
record-future-day = { $text } est encore à venir. Rien n'a été changé.
record-load-impossible = Aucun essai d'ancrage n'atteint une telle charge, ou elle est trop petite. Rien n'a été changé.
record-clash-glue = Ce type d'ancrage n'a pas de résine qui puisse lâcher. Lequel des deux est faux ? Rien n'a été changé.
record-clash-facts = Cela ne va pas avec le reste de la fiche. Rien n'a été changé.
choice-keep = Garder
choice-drop = Jeter
choice-withdraw = Retirer
choice-fix = Changer : { $fact }
table-ready = { $count } lignes peuvent être gardées. Rien n'est encore gardé.
table-kept = Gardé : { $count } fiches, de { $first } à { $last }.
table-read = J'ai lu { $rows } lignes : { $good } peuvent être gardées, { $bad } non.
table-there = Déjà là, et laissées de côté : { $count }.
table-left = Colonnes que je ne connais pas, et laissées de côté : { $names }.
table-row = • Ligne { $number } : { $why }
table-rows-more = • et { $count } lignes de plus
table-range = Charges de { $least } à { $most }.
table-nothing = Il n'y a rien à garder. Rien n'a été changé.
table-too-large = Ce fichier dépasse 5 Mo, je ne l'ai donc pas lu. Rien n'a été changé.
table-too-many = Ce tableau a plus de { $most } lignes, je n'en ai donc pris aucune. Envoie-le en plusieurs fois.
table-empty = Ce tableau a un en-tête et aucune ligne. Rien n'a été changé.
table-no-text = Ce fichier ne contient pas de texte que je puisse lire comme tableau. Envoie-le en CSV. Rien n'a été changé.
table-column-twice = La colonne « { $column } » s'y trouve deux fois. Rien n'a été pris.
table-unit-missing = La colonne « { $column } » n'a pas d'unité. Écris-la entre crochets : « charge maximale [kN] », « longueur [mm] ». Rien n'a été pris.
table-unit-unknown = L'unité dans « { $column } » ne va pas avec cette colonne, ou je ne la connais pas. Rien n'a été pris.
table-row-number = « { $text } » n'est pas un nombre ({ $fact })
table-row-impossible = « { $text } » ne peut pas être : { $fact }
table-row-value = « { $text } » : je ne connais pas ({ $fact })
table-row-lacking = manque : { $fact }{ $text }
table-row-day = « { $text } » n'est pas un jour ; écris comme 2027-05-02
table-row-future = { $text } est encore à venir
table-row-too-wide = elle a plus de cellules que l'en-tête
table-row-too-long = une cellule est beaucoup trop longue ; manque-t-il un guillemet ?
table-row-clash-glue = ce type d'ancrage n'a pas de résine
table-row-clash-facts = deux de ses valeurs ne vont pas ensemble
table-row-differs = { $id } est déjà là et dit autre chose ; corrige-la par des mots
table-exported = { $count } essais en tableau
table-exported-how = Les valeurs sont des noms courts, les mêmes dans toutes les langues. Renvoyé ici, le fichier n'ajoute rien deux fois.
ours-none = Ce groupe n'a pas encore d'essais. Dis-m'en un : « tiré un 12x100 deux branches, époxy, granite, 36,5 kN, la résine est sortie propre ».
ours-list = { $first }, { $rest }
ours-size = { $diameter } × { $depth }
ours-mixed = tous les essais ensemble
ours-found = Vos essais qui correspondent : { $count }, en { $groups } groupes de même sorte.
ours-no-match = De vos { $count } essais, aucun ne correspond : { $what }.
ours-more = et { $count } groupes plus petits.
ours-about = Ce qui suit ne concerne que le groupe qui a le plus de ruptures : { $what }.
ours-group = • { $what }
ours-loads-failed = – ont cédé ({ $failed }) : { $pulls }
ours-loads-stopped = – ont tenu au moins ({ $stopped }) : { $held } ; rien n'a cédé
ours-loads-both = – ont cédé ({ $failed }) : { $pulls } ; ont tenu au moins ({ $stopped }) : { $held }
ours-figures = – moyenne { $mean }, valeur à 5 % { $low }
ours-figures-fitted = – milieu de la courbe ajustée { $mean }, valeur à 5 % { $low }
ours-no-figures = – trop peu de ruptures pour une valeur à 5 %
ours-mode = { $mode } ({ $count })
ours-modes = – { $list }
ours-first = Premier groupe : { $what }
ours-second = Deuxième groupe : { $what }
ours-differ = Les deux diffèrent aussi, ou sont mêlés, par : { $list }. Une différence peut venir de là.
ours-modes-differ = Tous n'ont pas cédé de la même façon : en toute rigueur, seules des ruptures semblables se comparent.
ours-stopped-out = Les essais arrêtés, { $count }, ne sont pas des ruptures et restent hors de cette comparaison.
ours-longer = Le premier groupe est le plus profond, le deuxième le moins, le reste de même sorte.
ours-longer-none = Vos essais ne le montrent pas : il n'y en a pas de même sorte à deux profondeurs. Faites-en au moins 3, mieux 5 à 10, à chacune.
bond-ours = Adhérence : publiée de { $low } à { $high }, dont je compte une moyenne de { $published } ; avec vos { $failures } essais qui y ont cédé, { $median } au milieu, valeur à 5 % { $five }.
bond-ours-least = { $others } autres de vos essais ont fini autrement (métal, rocher, montage, ou arrêtés) : l'adhérence a tenu au moins cela.
bond-ours-lower = Le vôtre est le plus bas, je compte donc { $used }.
bond-ours-higher = Le vôtre n'est pas plus bas, et ne rend encore rien plus hardi : { $needed } doivent céder dans l'adhérence avant de compter au-dessus de ce qui est publié (EOTA TR 053, de mémoire) ; il en manque { $missing }.
bond-ours-would = Avec le vôtre ce serait : moyenne { $mean }, valeur à 5 % { $characteristic } ({ $mode }).
bond-ours-without = Avec la seule adhérence publiée ce serait : moyenne { $mean }, valeur à 5 % { $characteristic } ({ $mode }).
bond-ours-enough = { $needed } ruptures dans l'adhérence suffisent pour que le vôtre compte (EOTA TR 053, de mémoire) : je compte { $used }, et jamais plus que le haut de ce qui est publié, { $top }.
plan-steps = À la pompe à main, par paliers d'au plus { $share } % de ce que tu attends, chacun tenu { $minutes } minutes pendant que tu lis le déplacement (ASTM E488, de mémoire) ; d'abord, mets en place avec un vingtième.
plan-steps-expected = À la pompe à main, par paliers d'au plus { $step }, soit { $share } % des { $mean } que je calcule en moyenne, chacun tenu { $minutes } minutes pendant que tu lis le déplacement (ASTM E488, de mémoire) ; d'abord, mets en place avec un vingtième.
plan-proof-steps = Monte en { $steps } paliers égaux de { $seconds } secondes, et arrête au premier mouvement.
plan-number = Ce que ce nombre peut montrer : avec { $count } résultats la valeur à 5 % est d'environ { $left } % de la moyenne, avec { $good } environ { $goodLeft } %, avec des centaines environ { $endless } % (dispersion { $scatter } %, confiance 90 %). Peu de résultats coûtent de la résistance.
plan-number-too-few = Avec moins de { $fewest } résultats, on ne peut rien dire du prochain ancrage.
plan-number-compare = Avec { $count } essais de chaque sorte, seule une différence de { $seen } % ou plus a des chances de se voir (dispersion { $scatter } %, quatre fois sur cinq). Tire les deux en alternance, pas un jour chacun.
plan-range = Projetée librement, elle retombe jusqu'à { $range } sur terrain plat, et plus loin sous une paroi : ferme l'axe de traction jusque-là, dans les deux sens.
plan-rig = Chaque partie du montage prévue pour au moins { $load }, { $factor } fois la plus grande charge : un montage qui lâche projette aussi ses pièces.
plan-protect = Retiens le bâti et les pièces libres, pose une natte lourde sur le montage, lunettes et casque ; relâche la pression avant que quiconque approche, même si rien n'a cassé.
plan-log = Dis-moi chaque essai avec /log, et il compte pour votre propre rocher.
ours-picture = Nos essais

## Recordings
recording-title = { $file }, traction { $number }
recording-failed = Il a cédé : la charge la plus haute était { $peak }.
recording-stopped = Arrêté avant que quelque chose cède : il a tenu { $peak } cette fois-là, et ce qu'il tient au plus n'est pas connu.
recording-none = { $file } : aucune traction trouvée. La charge ne s'est jamais nettement élevée au-dessus du repos.
recording-time = Maximum { $time } s après le premier échantillon.
recording-drop = Première chute brusque après { $time } s : de { $from } à { $to }.
recording-plateau = Ensuite il tenait encore environ { $level } pendant { $seconds } s.
recording-rate = Chargé à environ { $rate }.
recording-stiffness = Raideur avant qu'il cède ou qu'on arrête : { $stiffness }.
recording-energy = Énergie jusqu'au maximum : { $energy }.
recording-rest = Le capteur indiquait { $rest } au repos ; c'est retranché de chaque charge ici.
recording-mode-bond-loss = On dirait que l'adhérence a lâché d'abord et que l'ancrage a glissé ensuite. Est-ce ce que tu as vu : ancrage sorti avec de la colle ou de la poussière ?
recording-mode-brittle = On dirait que quelque chose a cassé d'un coup : acier ou rocher. Qu'était-ce : une tige cassée ou un cône de rocher ?
recording-mode-slow-slip = On dirait que l'ancrage a glissé lentement sous charge. Est-il sorti, et de combien ?
recording-mode-rig = La charge est tombée puis est montée plus haut qu'avant. Est-ce le bâti qui s'est tassé ou a glissé, ou l'ancrage qui a bougé ?
recording-mode-stopped = On dirait que tu as arrêté exprès. Est-ce juste, et rien n'avait bougé ni fissuré ?
recording-reason = Pourquoi je le pense : { $list }.
recording-reason-sharp-drop = elle est tombée en un dixième de seconde environ
recording-reason-plateau = puis il a tenu à une charge plus basse
recording-reason-no-plateau = puis il ne tenait presque plus rien
recording-reason-rose-again = plus tard elle est montée au-dessus de cette charge
recording-reason-slow-fall = la charge a baissé pas plus vite qu'elle n'était montée
recording-reason-moved-on = l'ancrage continuait de bouger pendant que la charge baissait
recording-reason-taken-off = la charge est descendue sans à-coup et plus vite qu'elle n'était montée
recording-reason-ends-loaded = l'enregistrement finit sous charge
recording-note-clipped = Le sommet est plat : le capteur était peut-être à sa limite et le vrai maximum plus haut. N'utilise pas ce maximum.
recording-note-disturbed = Le capteur était perturbé : pics ou coupures ont été écartés. Vérifie prises et câble.
recording-note-gap = Des échantillons manquent pendant la traction ; quelque chose a pu se passer entre-temps.
recording-note-starts-loaded = L'enregistrement ne revient jamais à zéro. Précharge ou mauvais zéro, je ne peux pas le dire ; les charges peuvent être fausses d'autant.
recording-note-coarse = Moins de dix échantillons par seconde environ : une rupture et une décharge rapide se ressemblent.
recording-note-re-seated = Au début la charge a baissé puis est remontée, comme quand un bâti se tasse. Assure-toi que ce n'était pas l'ancrage.
recording-refused = { $file } : { $why }
recording-problem-unreadable = Ce fichier n'existe pas ou ne se lit pas.
recording-problem-empty = Le fichier est vide.
recording-problem-packed = C'est un fichier compressé ou un classeur. Enregistre la table en texte CSV et envoie-le.
recording-problem-binary = Ce n'est pas du texte. Exporte l'enregistrement en texte CSV.
recording-problem-too-large = Le fichier est plus grand que ce que je lis. Découpe les tractions.
recording-problem-long-line = Ligne { $line } : elle est trop longue pour une ligne de table.
recording-problem-no-table = Je n'y trouve aucune table de nombres.
recording-problem-no-header = Ligne { $line } : les nombres commencent ici sans en-tête qui nomme colonnes et unités. Dans quelle unité est la charge : kN, N, daN, kgf ou lbf ?
recording-problem-no-load = Je ne trouve pas de colonne de charge. Nomme-la « Force » ou « Charge », avec son unité.
recording-problem-many-loads = Plusieurs colonnes peuvent être la charge. Ne laisse que celle qui compte.
recording-problem-unit = L'unité de la charge n'est pas indiquée ou je ne la connais pas, et je ne devine pas. Est-ce kN, N, daN, kgf ou lbf ? Écris-la après le nom de la colonne.
recording-problem-no-time = Je ne trouve ni colonne de temps ni fréquence d'échantillonnage au-dessus de la table.
recording-problem-time-unit = Dans quelle unité est le temps : s ou ms ? Écris-la après le nom de la colonne.
recording-problem-no-rate = Les échantillons sont numérotés, mais combien par seconde ? Écris une ligne « Fréquence : … Hz » au-dessus de la table.
recording-problem-missing-cell = Ligne { $line } : une valeur manque.
recording-problem-no-number = Ligne { $line } : ce qui est écrit ici n'est pas un nombre.
recording-problem-no-clock = Ligne { $line } : ce qui est écrit ici n'est ni une date ni une heure.
recording-problem-formula = Ligne { $line } : il y a une formule. Je ne lis que des nombres ; enregistre les valeurs.
recording-problem-time-back = Ligne { $line } : le temps recule.
recording-problem-truncated = Ligne { $line } : le fichier est coupé ici. Copie-le encore une fois depuis l'enregistreur.
recording-problem-too-short = Il y a trop peu d'échantillons pour dire quelque chose.
recording-problem-strange-text = Ligne { $line } : il y a du texte au milieu des nombres.
recording-problem-decimal-mark = Virgules et points sont mêlés : je ne distingue pas décimales et milliers. Enregistre les nombres sans séparateur de milliers.

recording-no-offer = Je ne propose pas de noter { $count ->
    [one] un essai
   *[other] { $count } essais
} : la vraie charge maximale n’est pas connue.
recording-offer = Dois-je le noter comme essai de traction avec { $peak } ? Touche ce que tu as vu céder, ou que rien n’a cédé. Rien n’est encore gardé.
recording-offer-several = Le plus fort est l’essai { $number } avec { $peak }. Lequel dois-je noter comme essai de traction ? Rien n’est encore gardé.
choice-note-mode = Noter : { $mode }
choice-note-open = Noter et me demander ce qui a cédé
choice-note-pull = Noter l’essai { $number } : { $peak }
recording-file-neither = Je lis les enregistrements d’un capteur de force et les tableaux d’essais de traction. Rien n’a été changé.
recording-picture = Image : { $file }
recording-picture-kept = { $file } existe déjà et n’a pas été dessiné par moi : je l’ai laissé tel quel.
recording-picture-failed = { $file } n’a pas pu être écrit.
## Register
record-text-sector = • secteur : { $text }
record-name-sector = secteur
record-text-position = • position : { $text }
record-name-position = position
record-text-installer = • posé par : { $text }
record-name-installer = posé par
record-text-anchor = • ancrage : { $text }
record-name-anchor = ancrage
register-day-anchor = • posé : { $text }
register-day-inspection = • vu : { $text }
register-name-day-anchor = jour de la pose
register-name-day-inspection = jour de l'inspection
register-day-not-known = • posé : inconnu
register-anchor-draft = J'inscrirais cet ancrage au registre :
register-anchor-draft-how = Rien n'est encore gardé. Garde-le, jette-le, ou dis ce qui est faux ou manque : « posé 2024-05-02 », « c'est du 304 ».
register-anchor-withdraw = Retirer l'ancrage { $id } du registre ? Il n'y figurera plus ; son historique reste.
register-anchor-kept-how = Pour corriger : « { $id } est en 304 ». Ce que tu as vu : « { $id } a des taches brunes ». Pour le retirer : « retirer { $id } ». Toutes les étapes : « historique { $id } ».
register-inspection-draft = Je noterais cette inspection d'un ancrage :
register-inspection-draft-how = Rien n'est encore gardé. Garde-le, jette-le, ou dis ce qui est faux.
register-inspection-withdraw = Retirer l'inspection { $id } ? Elle ne comptera plus ; son historique reste.
register-inspection-kept-how = Pour la retirer : « retirer { $id } ». Toutes les étapes : « historique { $id } ».
register-which-crag = Sur quelle falaise est-il ? Le nom suffit ; secteur, voie et position aident à le retrouver.
register-nowhere = Sans falaise personne ne retrouve cet ancrage. Rien n'a été gardé.
register-twice = { $id } est déjà à cet endroit. Corrige ou retire celui-là, ou donne une autre position. Rien n'a été gardé.
register-is-withdrawn = { $id } a été retiré du registre et ne peut plus être changé. Rien n'a été changé.
register-no-day = { $text } n'est pas un jour entre 1950 et aujourd'hui. Écris 2024-05-02, ou seulement l'année. Rien n'a été changé.
register-look = • { $day } : { $signs } (noté par { $by }, { $id })
register-look-of = Avec ce que le registre dit de { $id }, { $crag } :
register-look-note = Le noter dans son historique ? Rien n'est encore gardé.
register-look-later = Je ne note rien tant qu'une autre fiche est ouverte : garde-la ou jette-la d'abord, puis redis-le.
register-entry = • { $id } : { $where } — { $what }
register-entry-figures = • { $id } : { $where } — { $what }, { $figures }
register-found = { $what } : { $count } au registre.
register-more = • et { $count } de plus. Nomme un secteur, une voie ou un métal, ou exporte le registre.
register-no-match = Le registre a { $count } ancrages, mais aucun pour : { $what }.
register-all = Au registre : { $count } ancrages, falaises : { $crags }.
register-crag = • { $name } : { $count }
register-how = Pour en trouver : « ancrages sur Gannet Slab », « tous les zingués ». Pour en ajouter : « enregistrer ancrage 3 sur Gannet Slab : 12x100 316 ». Par quoi commencer : « quels ancrages d'abord ? »
register-none = Ce groupe n'a pas encore d'ancrage au registre. Donne-m'en un : « enregistrer ancrage 3 sur Gannet Slab : 12x100 316, posé 2024-05-02 », ou envoie un tableau avec falaise et type d'ancrage.
register-exported = { $count } ancrages en tableau
register-row-lacking = il manque : { $what }
register-row-twice = { $id } est déjà à cet endroit
register-row-same = elle nomme le même endroit que la ligne { $number }
register-first = À voir en premier, { $shown } sur { $count } ancrages, le plus urgent en haut :
register-first-one = { $place }. { $id } : { $where }
register-first-why =    • { $why }
register-first-seen = vu { $day } ({ $id }), { $signs }. { $verdict }
register-metal-unknown = Le métal n'est pas connu, ce qui compte comme pire.
register-place-unknown = Le métal ne peut être jugé sans connaître le lieu, ce qui compte comme pire. Dis : « à l'intérieur des terres », « à 300 m de la mer ».
register-age-unknown = Son âge n'est pas connu, ce qui compte comme durée prévue dépassée.
register-age-only = Il a { $years } ans ; il n'y a pas de durée à prévoir.
register-age-past = Il a { $years } ans : plus que le bas de la fourchette prévue, { $low } à { $high } ans.
register-age-within = Il a { $years } ans ; on prévoit { $low } à { $high } ans, sans jamais les promettre.
register-first-limits = C'est un ordre de travail selon ce qui a été dit : signes vus, métal et lieu, âge, usage. Ce qui n'est pas connu compte comme pire. Un ancrage plus bas, ou absent d'ici, n'est pas sain pour autant.
register-sensitive = De ces falaises je ne garde et ne montre que le nom, sans secteur, voie, position ni note : { $names }. Ce qui a été noté avant reste gardé, mais ne se montre plus. Pour lever : « /club pas sensible … ».
register-sheltered = Cette falaise est marquée sensible : je laisse de côté secteur, voie, position et note.
