import { z } from 'zod';
import * as engineering from '../../src/engineering/index.ts';

type Call = (inputs: Readonly<Record<string, unknown>>) => number | string | boolean;

/** Typed by the schema: a row with a missing or misspelt input fails loudly. */
function call<S extends z.ZodType>(schema: S, run: (i: z.infer<S>) => number | string | boolean): Call {
  return (inputs) => run(schema.parse(inputs));
}

const num = z.number();
const metal = z.enum(['steel', 'zinc', 'copper', 'aluminium']);
const exposure = z.strictObject({ chloride: num, sulphur: num, cleaning: num });
const glueIn = z.strictObject({
  rodDiameter: num,
  holeDiameter: num,
  embedment: num,
  weatheredSkin: num,
  steelStrength: num,
  bondMean: num,
  rockStrength: num,
  jointFactor: num,
  rockScatter: num,
  legSpacing: num.optional(),
});

const formulas: [string, Call][] = [...engineering.formulas].map(([id, formula]) => [
  id,
  (inputs) => {
    const names = Object.keys(formula.inputs);
    const extra = Object.keys(inputs).filter((name) => !names.includes(name));
    if (extra.length > 0) throw new TypeError(`${id} has no input ${extra.join(', ')}`);
    return formula(z.record(z.string(), num).parse(inputs)).value;
  },
]);

const functions: [string, Call][] = [
  ['category', call(z.strictObject({ metal, rate: num }), (i) => engineering.category(i.metal, i.rate))],
  [
    'category-by-mass',
    call(z.strictObject({ metal, rate: num }), (i) => engineering.categoryByMass(i.metal, i.rate)),
  ],
  [
    'mass-loss',
    call(z.strictObject({ metal, micrometres: num }), (i) => engineering.massLoss(i.metal, i.micrometres)),
  ],
  [
    'corrosion-exponent',
    call(
      z.strictObject({ metal, bound: z.enum(['B1', 'B2']) }),
      (i) => engineering.exponents[i.metal][i.bound],
    ),
  ],
  [
    'zinc-life',
    call(
      z.strictObject({ thickness: num, firstYear: num }),
      (i) => engineering.zincLife(i.thickness, i.firstYear).years,
    ),
  ],
  ['resistance-class', call(exposure, (i) => engineering.resistanceFactor(i).class)],
  ['resistance-class-advised', call(exposure, (i) => engineering.resistanceFactor(i).advised)],
  ['resistance-factor', call(exposure, (i) => engineering.resistanceFactor(i).factor)],
  [
    'galvanically-compatible',
    call(z.strictObject({ difference: num, site: z.enum(['marine', 'outdoor', 'indoor']) }), (i) =>
      engineering.galvanicallyCompatible(i.difference, i.site),
    ),
  ],
  [
    'en959-strength',
    call(
      z.strictObject({ direction: z.enum(['axial', 'radial', 'link']), strength: num }),
      (i) => engineering.checkStrength(i.direction, i.strength).ok,
    ),
  ],
  [
    'en959-length',
    call(
      z.strictObject({ family: z.enum(['glued-in', 'mechanical']), installed: num, hole: num }),
      (i) => engineering.checkInstalledLength(i.family, i.installed, i.hole).ok,
    ),
  ],
  [
    'en959-attachment',
    call(z.strictObject({ thickness: num }), (i) => engineering.checkAttachmentThickness(i.thickness).ok),
  ],
  [
    'cone-factor',
    call(z.strictObject({ fastener: z.enum(['post-installed', 'cast-in']), cracked: z.boolean() }), (i) =>
      engineering.coneFactor(i.fastener, i.cracked),
    ),
  ],
  [
    'gap-verdict',
    call(z.strictObject({ rod: num, hole: num }), (i) => engineering.checkGap(i.rod, i.hole).verdict),
  ],
  ['glue-in-mean', call(glueIn, (i) => engineering.glueInTension(i).weakestMean.mean.value)],
  ['glue-in-mode', call(glueIn, (i) => engineering.glueInTension(i).weakestMean.mode)],
  [
    'glue-in-characteristic',
    call(glueIn, (i) => engineering.glueInTension(i).governing.characteristic.value),
  ],
];

export const calls: ReadonlyMap<string, Call> = new Map([...formulas, ...functions]);
