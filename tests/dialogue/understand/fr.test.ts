import { describe, expect, it } from 'vitest';
import { printScore } from './score.ts';
import { contextOf, loadCases, loadUnderstand, told } from './setup.ts';

const { understand } = await loadUnderstand('fr');
const facts = (text: string, context = {}) => told(understand(text, context));
const files = ['fr/messages.json', 'fr/messages-late.json', 'fr/messages-more.json'];

describe('French messages, topic and exact facts', () => {
  it.each(files)('%s', async (name) => {
    const { topic, f1 } = await printScore(name, understand);
    expect(topic).toBeGreaterThanOrEqual(0.95);
    expect(f1).toBeGreaterThanOrEqual(0.95);
  });

  it('say the same without accents and with the apostrophe of a phone', async () => {
    const cases = (await Promise.all(files.map(loadCases))).flat();
    const changed = cases.filter((one) => {
      const { topic, found } = understand(one.say, contextOf(one));
      const plain = one.say.normalize('NFD').replace(/\p{M}/gu, '').replaceAll("'", '’');
      const again = understand(plain, contextOf(one));
      const values = (list: typeof found) => JSON.stringify(list.map(({ fact, value }) => [fact, value]));
      return again.topic !== topic || values(again.found) !== values(found);
    });
    expect(changed.map(({ say }) => say)).toEqual([]);
  });
});

describe('numbers as the French write them', () => {
  it.each([
    ['quatre-vingt-douze mm de profondeur', { embedment_mm: 92 }],
    ['soixante-quinze mm de profondeur', { embedment_mm: 75 }],
    ['cent vingt mm de profondeur', { embedment_mm: 120 }],
    ['à deux mille cinq cents mètres de la mer', { sea_distance_m: 2500 }],
    ['à 2 500 m de la mer', { sea_distance_m: 2500 }],
    ['à 2.500 m de la mer', { sea_distance_m: 2500 }],
    ['à 2,5 km de la mer', { sea_distance_m: 2500 }],
    ["moins d'1 km de la mer", { sea_distance_m: 1000 }],
    ['relais 2 300 m de la mer', { use: 'belay', sea_distance_m: 300 }],
    ['goujon 10 100 mm', { anchor: 'wedge', diameter_mm: 10, length_mm: 100 }],
    ['au moins 80 mm de profondeur', { embedment_mm: 80 }],
    ['5 à 10 cm du bord', { edge_distance_mm: 50 }],
    ['goujon de 12 à 10 cm du bord', { anchor: 'wedge', diameter_mm: 12, edge_distance_mm: 100 }],
    ['goujon de 10 à 15 cm du bord', { anchor: 'wedge', diameter_mm: 10, edge_distance_mm: 150 }],
    ['20 goujons de 10', { anchor: 'wedge', count: 20, diameter_mm: 10 }],
    ['2e longueur, 3ème relais', { use: 'belay' }],
    ['moins 5', { temperature_c: -5 }],
    ['un M10 de 90', { diameter_mm: 10, length_mm: 90 }],
    ['à 80 km de la côte', { sea_distance_m: 80000 }],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));
});

describe('what is denied, doubted or quoted tells nothing', () => {
  it.each([
    ["ce n'est pas de l'inox", 'metal'],
    ["c'est pas du granite", 'rock'],
    ['ni époxy ni polyester', 'adhesive'],
    ["peut-être de l'époxy", 'adhesive'],
    ['il a dit « inox 316 » hier', 'metal'],
    ['pas en dévers', 'rain_washed'],
    ['aucune fissure sur la plaquette', 'signs'],
    ['goujon tordu mais pas fissuré', 'rock_condition'],
  ])('%s: no %s', (text, fact) => expect(facts(text)).not.toHaveProperty(fact));
});

describe('a denial within a phrase', () => {
  it.each([
    ['la pluie lave pas le mur', { rain_washed: 'no' }],
    ['ça prend pas la pluie', { rain_washed: 'no' }],
    ['prend rarement la pluie', { rain_washed: 'no' }],
    ['pas encore sec', { hole_moisture: 'damp' }],
    ['le rocher ne sonne pas plein', { rock_condition: 'hollow' }],
    ["le rocher n'est pas très compact", {}],
    ['grès pas tendre du tout', { rock: 'sandstone' }],
    ['calcaire pas dur, plutôt tendre', { rock: 'limestone-soft' }],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));
});

describe('words that only look like the trade', () => {
  it.each([
    "on mange une fondue ce soir avant l'orage",
    'je prends la voiture, rendez-vous sur le parking à 8h',
    'feuille A4 à imprimer pour la réunion du club',
    "ma cheville me fait mal, je ne viens pas au marché avec l'équipe",
    'la mise au point du programme prend du temps',
    'premiers secours : la formation est samedi',
    'ligne droite puis à gauche, la boutique est fermée',
    'le côté gauche du topo est plus joli',
    "l'abîme entre nous est énorme, dit le président",
    "800 m au-dessus du niveau de la mer, c'est haut",
  ])('%s', (text) => expect(facts(text)).toEqual({}));

  it('keeps a word of two meanings open, and puts what is said to the noun that it belongs to', () => {
    expect(facts('du tuf', { pending: 'rock' })).toEqual({});
    expect(facts('tuf volcanique')).toEqual({ rock: 'volcanic-tuff' });
    expect(facts('tuffeau')).toEqual({ rock: 'limestone-soft' });
    expect(facts('foret de 12')).toEqual({ hole_diameter_mm: 12 });
    expect(facts('inox', { pending: 'metal' })).toEqual({});
    expect(facts('plaquette zinguée sur un goujon en 316')).toEqual({
      metal: 'stainless-316',
      metal_other: 'zinc-plated',
      anchor: 'wedge',
    });
    expect(facts('paroi fissurée')).toEqual({ rock_condition: 'fractured' });
    expect(facts('plaquette fissurée, calcaire')).toEqual({ signs: 'crack', rock: 'limestone' });
  });
});
