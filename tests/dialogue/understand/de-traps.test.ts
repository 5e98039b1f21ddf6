/** Where a wrong fact would make advice bolder, in German. What the words mean is common practice, no source. */
import { describe, expect, it } from 'vitest';
import { makeSplitter } from '../../../src/dialogue/understand/compounds.ts';
import { loadUnderstand, told } from './setup.ts';

const { understand, vocabulary } = await loadUnderstand('de');
const facts = (text: string, context = {}) => told(understand(text, context));

describe('what is denied, before or behind, is no fact', () => {
  it.each([
    ['kein Granit', {}],
    ['Granit ist es nicht', {}],
    ['Granit ist das nicht, sondern Gneis', { rock: 'gneiss' }],
    ['nicht Granit sondern Kalk', { rock: 'limestone' }],
    ['weder Epoxid noch Polyester', {}],
    ['316 haben wir nicht', {}],
    ['trocken ist das Loch nicht', {}],
    ['das Loch ist nicht trocken', { hole_moisture: 'damp' }],
    ['der Haken wackelt nicht', {}],
    ['Titan Grade 2 kommt nicht in Frage', {}],
    ['ohne Epoxid', {}],
    ['weicher als Granit', {}],
    ['fast so hart wie Quarzit', {}],
    ['koa Granit', {}],
    ['reicht 316 nicht?', { metal: 'stainless-316' }],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));
});

describe('what is only perhaps so is no fact', () => {
  it.each([
    'vielleicht Granit',
    'Granit oder so',
    'könnte Gneis sein',
    'Kalk, keine Ahnung',
    'bin mir nicht sicher ob der Fels Granit ist',
    'vermutlich Dolomit',
    'Gneis, vermute ich',
    'weiß nicht ob es Kalk ist',
  ])('%s', (text) => expect([facts(text).rock].filter((rock) => rock === 'granite')).toEqual([]));
});

describe('words that mean another thing', () => {
  it.each([
    ['Schiefer', 'rock', 'schist'],
    ['Tuff', 'rock', 'volcanic-tuff'],
    ['Edelstahl', 'metal', 'stainless-304'],
    ['verzinkt', 'metal', 'zinc-plated'],
    ['Klebehaken', 'anchor', 'glue-in-single-leg'],
    ['Dübel', 'anchor', 'drop-in'],
    ['in Meeresnähe', 'environment', 'sea-cliff'],
  ])('%s may be several, and the careful one is asked back', (text, fact, value) => {
    const { found, problems } = understand(text);
    expect(found).toEqual([]);
    expect(problems).toMatchObject([{ kind: 'ambiguous', fact, value }]);
  });

  it.each([
    ['500 m vom See', {}],
    ['am Gardasee', {}],
    ['an dem See', {}],
    ['an der See', { environment: 'coast-250m' }],
    ['2 km von der See', { sea_distance_m: 2000 }],
    ['1200 m über dem Meer', {}],
    ['1800 m ü. M.', {}],
    ['schiefer Haken', { signs: 'bent' }],
    ['Haken voller Chalk', {}],
    ['Glimmerschiefer', { rock: 'schist' }],
    ['Kalktuff', { rock: 'tufa' }],
    ['in der Höhle', { environment: 'cave' }],
    ['hohle Platte', { rock_condition: 'hollow' }],
    ['Edelstahlbürste', {}],
    ['Betonanker', {}],
    ['Stand der Technik', {}],
    ['schiefergraue Lasche', {}],
    ['A2 Papier', {}],
    ['A2 Hakentechnik', { use: 'aid' }],
    ['eine 7c im Kalk', { rock: 'limestone' }],
    ['sie klettert 7c', {}],
    ['Haken aus den 80er Jahren', {}],
    ['60 m Seil, 25 m Seillänge', {}],
    ['316 m vom Meer', { sea_distance_m: 316 }],
    ['"10x80 in Granit reicht" sagt er', {}],
    ['die Route namens Granitkante ist Gneis', { rock: 'gneiss' }],
    ['der Schlaghaken', {}],
    ['Ist trockenes Wetter wichtig?', {}],
    ['alles ok', {}],
    ['Abstand 30 cm', {}],
    ['Haken A4, Kette feuerverzinkt', { metal: 'stainless-316', metal_other: 'hot-dip-galvanised' }],
    ['Titan Gr. 2', { metal: 'titanium-grade-2' }],
    ['Dolomiten', { environment: 'alpine' }],
    ['Dolomit', { rock: 'dolomite' }],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));

  it.each(['knapp 80 mm tief', 'unter 5 Grad', 'Lufttemperatur 15 Grad', '45 Grad Felstemperatur'])(
    '%s is asked back',
    (text) => {
      const { found, problems } = understand(text);
      expect(found).toEqual([]);
      expect(problems).toMatchObject([{ kind: 'ambiguous' }]);
    },
  );

  it.each(['Granate', 'Titel', 'Kalkulation', 'Gipfel', 'Basar', 'Polyp', 'Duplikat', 'Titanic'])(
    '%s is no misspelt metal or rock',
    (word) => expect(facts(`ein ${word}`)).toEqual({}),
  );
});

describe('how German is written', () => {
  it.each([
    ['Sandsteinklettergebiet', { rock: 'sandstone' }],
    ['Bohrlochtiefe 90 mm', { embedment_mm: 90 }],
    ['Kalksteinwände', { rock: 'limestone' }],
    ['Loecher sind trocken', { hole_moisture: 'dry' }],
    ['ein 12er Loch', { hole_diameter_mm: 12 }],
    ['Zwölfer Bolt', { diameter_mm: 12 }],
    ['12,5 mm Durchmesser', { diameter_mm: 12.5 }],
    ['2.500 m vom Meer', { sea_distance_m: 2500 }],
    ['zweihundertfünfzig Meter vom Meer', { sea_distance_m: 250 }],
    ['anderthalb Kilometer von der Küste', { sea_distance_m: 1500 }],
    ['fünfundzwanzig Haken', { count: 25 }],
    ['vor einer Dreiviertelstunde geklebt', { hours_since: 0.75 }],
    ['vor 3 Std. geklebt', { hours_since: 3 }],
    ['5 Grad unter Null', { temperature_c: -5 }],
    ['5 Grad minus', { temperature_c: -5 }],
    ['Fels zwischen 4 und 6 Grad', { temperature_c: 4 }],
    ['der 2. Stand', { use: 'belay' }],
    ['nasser oder feuchter Fels', { hole_moisture: 'wet' }],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));

  it('takes only words apart whose pieces are all on the list', () => {
    const { told: asTold, found } = makeSplitter(vocabulary.compounds, vocabulary.endings);
    expect(found('sandsteinwand')).toEqual(['sandstein', 'wand']);
    expect(found('sicherungskette')).toEqual(['sicherungs', 'kette']);
    expect(asTold('viertelstunde')).toEqual(['viertel', 'stunde']);
    for (const word of ['granitplattenleger', 'edelstahlkarosserie', 'sandmannchen', 'wand', 'x'.repeat(200)])
      expect(found(word)).toBeNull();
    expect(makeSplitter(undefined, []).found('sandsteinwand')).toBeNull();
  });
});

describe('acts and calls for help', () => {
  it.each([
    ['warum?', 'why'],
    ['wieso nicht 304', 'why'],
    ['alles erklären', 'why-all'],
    ['zurück', 'back'],
    ['nochmal von vorne', 'restart'],
    ['vergiss mich', 'forget'],
    ['Hilfe', 'help'],
    ['keine Ahnung', 'dont-know'],
    ['woaß i ned', 'dont-know'],
    ['jo', 'yes'],
    ['nee', 'no'],
    ['merci', 'thanks'],
    ['Grüß Gott', 'greeting'],
    ['nein, Granit', 'correction'],
    ['ach ne, 316', 'correction'],
    ['hier ist kein Granit', 'ask'],
  ])('%s: %s', (text, act) => expect(understand(text).act).toBe(act));

  it.each(['ruf die 112', 'mein Partner hängt bewusstlos im Seil', 'Kleber im Auge!'])('%s', (text) =>
    expect(understand(text).topic).toBe('emergency'),
  );
  it.each([
    '112 mm tief',
    '144 Haken',
    'was tun wenn mein Partner am Haken hängt',
    'letztes Jahr war hier ein Unfall',
  ])('%s is no emergency', (text) => expect(understand(text).topic).not.toBe('emergency'));

  it('takes an answer to the question that was asked', () => {
    expect(facts('ja', { pending: 'overhead' })).toEqual({ overhead: 'yes' });
    expect(facts('nein', { pending: 'rain_washed' })).toEqual({ rain_washed: 'no' });
    expect(facts('tropft', { pending: 'hole_moisture' })).toEqual({ hole_moisture: 'flooded' });
    expect(facts('hohl', { pending: 'rock_condition' })).toEqual({ rock_condition: 'hollow' });
    expect(facts('12', { pending: 'diameter_mm' })).toEqual({ diameter_mm: 12 });
    expect(understand('keine Ahnung', { pending: 'rock' }).unknownFacts).toEqual(['rock']);
  });
});
