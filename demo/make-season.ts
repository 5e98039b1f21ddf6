/** Makes demo/season.csv: forty pulls of one season of an invented club, from a seed, so that it can be made again. */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { uniformFrom } from '../src/engineering/index.ts';

const uniform = uniformFrom(20260401);
const normal = (): number => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
const near = (mean: number, scatter: number): number => mean * Math.exp(scatter * normal());

interface Kind {
  readonly count: number;
  readonly crag: string;
  readonly rock: string;
  readonly anchor: string;
  readonly metal: string;
  readonly shank: string;
  readonly adhesive: string;
  readonly diameter: number;
  readonly length: number;
  readonly moisture: string;
  /** Invented, kN. */
  readonly mean: number;
  readonly failures: readonly string[];
}

const granite = { crag: 'Gull Wall', rock: 'granite', anchor: 'twin leg', moisture: 'dry' };
const sandstone = { crag: 'Otter Slabs', rock: 'soft sandstone', anchor: 'twin leg', moisture: 'wet' };
const clean = 'resin came out clean';
const kinds: readonly Kind[] = [
  {
    ...granite,
    count: 8,
    metal: '316',
    shank: 'smooth',
    adhesive: 'epoxy',
    diameter: 10,
    length: 80,
    mean: 27,
    failures: [clean, clean, clean, 'stopped'],
  },
  {
    ...granite,
    count: 7,
    metal: 'hot-dip galvanised',
    shank: 'rough',
    adhesive: 'epoxy',
    diameter: 10,
    length: 80,
    mean: 35,
    failures: [clean, clean, 'rock cone'],
  },
  {
    ...granite,
    count: 6,
    metal: '316',
    shank: 'smooth',
    adhesive: 'epoxy',
    diameter: 10,
    length: 120,
    mean: 38,
    failures: [clean, clean, clean, 'stopped'],
  },
  {
    ...sandstone,
    count: 8,
    metal: '316',
    shank: 'rough',
    adhesive: 'epoxy',
    diameter: 12,
    length: 150,
    mean: 19,
    failures: ['rock cone', 'cone and glue', clean],
  },
  {
    ...sandstone,
    count: 6,
    metal: '316',
    shank: 'rough',
    adhesive: 'vinyl ester',
    diameter: 12,
    length: 150,
    mean: 22,
    failures: [clean, 'cone and glue'],
  },
  {
    crag: 'Gull Wall',
    rock: 'granite',
    anchor: 'wedge',
    moisture: 'dry',
    count: 5,
    metal: '316',
    shank: '',
    adhesive: '',
    diameter: 10,
    length: 90,
    mean: 24,
    failures: ['rock cone', 'steel', 'rig slipped'],
  },
];

const heading =
  'date,crag,rock,kind of anchor,metal,shank,glue,diameter [mm],length [mm],moisture,peak load [kN],failure,note';
const rows = kinds.flatMap((kind, place) =>
  Array.from({ length: kind.count }, (_, index) => {
    const day = String(4 + 3 * place).padStart(2, '0');
    const load = near(kind.mean, 0.16).toFixed(1);
    const failure = kind.failures[index % kind.failures.length] ?? clean;
    const note = index === 0 ? 'first of the day; rig checked' : '';
    return [
      `2026-05-${day}`,
      kind.crag,
      kind.rock,
      kind.anchor,
      kind.metal,
      kind.shank,
      kind.adhesive,
      kind.diameter,
      kind.length,
      kind.moisture,
      load,
      failure,
      note,
    ].join(',');
  }),
);
writeFileSync(fileURLToPath(new URL('season.csv', import.meta.url)), `${[heading, ...rows].join('\n')}\n`);
