/** Writes demo/recordings/*.csv: pull tests of the invented Seagull Bay Climbing Club, the same each time. `tsx demo/recordings.ts` */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { disturb } from '../tests/recordings/faults.ts';
import { Load } from '../tests/recordings/load.ts';
import { addPull, type EndingKind } from '../tests/recordings/pulls.ts';
import { Random } from '../tests/recordings/random.ts';
import { type Style, write } from '../tests/recordings/writing.ts';

const folder = join(fileURLToPath(new URL('.', import.meta.url)), 'recordings');

const usual: Style = {
  separator: ';',
  decimal: '.',
  time: 's',
  unit: 'kN',
  unitPlace: 'header',
  move: null,
  encoding: 'utf8',
  lineEnd: '\n',
  preamble: true,
  language: 'en',
  sections: false,
};

interface Demo {
  readonly name: string;
  readonly endings: readonly EndingKind[];
  readonly peak: number;
  readonly rate: number;
  readonly style: Partial<Style>;
  readonly reSeat?: boolean;
  readonly spikes?: number;
}

const demos: readonly Demo[] = [
  { name: 'broke', endings: ['brittle'], peak: 31, rate: 50, style: { move: 'mm' } },
  {
    name: 'slipped',
    endings: ['bond'],
    peak: 18,
    rate: 50,
    style: { decimal: ',', language: 'de', time: 'clock' },
  },
  {
    name: 'slid-out',
    endings: ['slow'],
    peak: 9,
    rate: 20,
    style: { unit: 'daN', language: 'fr', move: 'mm' },
  },
  {
    name: 'stopped',
    endings: ['stopped'],
    peak: 15,
    rate: 20,
    style: { unit: 'lbf', separator: ',', time: 'ms' },
  },
  {
    name: 'three-pulls',
    endings: ['stopped', 'bond', 'brittle'],
    peak: 24,
    rate: 10,
    style: { time: 'iso' },
  },
  {
    name: 'disturbed',
    endings: ['brittle'],
    peak: 22,
    rate: 100,
    style: { unit: 'N', separator: '\t' },
    reSeat: true,
    spikes: 5,
  },
];

mkdirSync(folder, { recursive: true });
for (const [index, { name, endings, peak, rate, style, reSeat = false, spikes = 0 }] of demos.entries()) {
  const random = new Random(100 + index);
  const load = new Load(random, 1 / rate, 6);
  load.rest(1);
  const pulls = endings.map((ending) =>
    addPull(load, {
      ending,
      peak,
      seconds: 15,
      reSeat,
      preLoad: false,
      cycle: false,
      pump: false,
      cutOff: false,
    }),
  );
  const faults = { noise: 0.0005 * peak, offset: 0.002 * peak, clipAt: null, spikes, dropOuts: 0 };
  const kn = disturb(load.kn, pulls, 1 / rate, faults, random);
  const bytes = write({ kn, mm: load.mm, step: 1 / rate, sectionRows: [] }, { ...usual, ...style }, random);
  writeFileSync(join(folder, `${name}.csv`), bytes);
}
