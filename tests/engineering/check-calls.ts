import { z } from 'zod';
import * as engineering from '../../src/engineering/index.ts';

type Call = (inputs: Readonly<Record<string, unknown>>) => number | string | boolean;

/** Typed by the schema: a row with a missing or misspelt input fails loudly. */
function call<S extends z.ZodType>(schema: S, run: (i: z.infer<S>) => number | string | boolean): Call {
  return (inputs) => run(schema.parse(inputs));
}

const num = z.number();
const category = z.enum(engineering.categories);
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
    'connector-strength',
    call(
      z.strictObject({
        class: z.enum(['B', 'H', 'K', 'A', 'T', 'Q', 'X']),
        axis: z.enum(['closed', 'open', 'minor']),
      }),
      (i) => engineering.connectorStrength(i.class, i.axis) ?? 'none',
    ),
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

const list = z.array(num);
const summary = z.strictObject({ mean: num, deviation: num, count: num });
const plan = z.strictObject({
  installed: num,
  life: num,
  inspection: z.strictObject({ cost: num, every: num }).optional(),
});
const over = { horizon: num, rate: num };
const cost = z.strictObject({ plan, ...over });
const proof = z.strictObject({
  anchors: num,
  failures: num,
  share: z.union([z.literal(0.025), z.literal(0.05)]),
});
const sample = z.strictObject({ values: list, confidence: num });
const ofComparison = z.enum(['t', 'freedom', 'p', 'low95', 'high95']);
const estimate = z.strictObject({ metal, rate: num });
const update = z.strictObject({
  prior: z.strictObject({ median: num, scatter: num, weight: num, freedom: num }),
  values: list,
});

const later: [string, Call][] = [
  ['strength-grade', call(z.strictObject({ ucs: num }), (i) => engineering.strengthGrade(i.ucs).grade)],
  [
    'rebound-class-min',
    call(z.strictObject({ rebound: num }), (i) => engineering.reboundClass(i.rebound).min),
  ],
  [
    'rebound-spread-max',
    call(z.strictObject({ rebound: num }), (i) => engineering.reboundSpread(i.rebound).max),
  ],
  [
    'outlier-grubbs',
    call(z.strictObject({ values: list }), (i) => engineering.checkOutlier(i.values).grubbs),
  ],
  [
    'outlier-flagged',
    call(z.strictObject({ values: list }), (i) => engineering.checkOutlier(i.values).flagged),
  ],
  ['dixon-critical', call(z.strictObject({ count: num }), (i) => engineering.dixonCritical(i.count))],
  [
    'origin-fit',
    call(
      z.strictObject({ x: list, y: list, what: z.enum(['slope', 'slopeError', 'deviation', 'rSquared']) }),
      (i) => engineering.fitThroughOrigin(i.x, i.y)[i.what],
    ),
  ],
  [
    'welch-summary',
    call(
      z.strictObject({ one: summary, two: summary, what: ofComparison }),
      (i) => engineering.compareSummaries(i.one, i.two)[i.what],
    ),
  ],
  [
    'welch',
    call(
      z.strictObject({ one: list, two: list, what: ofComparison }),
      (i) => engineering.compareGroups(i.one, i.two)[i.what],
    ),
  ],
  ['characteristic', call(sample, (i) => engineering.characteristicStrength(i.values, i.confidence).value)],
  [
    'characteristic-normal',
    call(sample, (i) => engineering.characteristicStrength(i.values, i.confidence).normal),
  ],
  [
    'characteristic-nonsense',
    call(sample, (i) => engineering.characteristicStrength(i.values, i.confidence).normalIsNonsense),
  ],
  [
    'scatter-reduction',
    call(z.strictObject({ scatter: num }), (i) => engineering.scatterReduction(i.scatter)),
  ],
  ['updated-fractile', call(update, (i) => engineering.updateStrength(i.prior, i.values).predictive5)],
  ['updated-median', call(update, (i) => engineering.updateStrength(i.prior, i.values).median)],
  ['updated-scatter', call(update, (i) => engineering.updateStrength(i.prior, i.values).scatter)],
  ['estimate-band-low', call(estimate, (i) => engineering.estimateBand(i.metal, i.rate).low)],
  ['estimate-band-high', call(estimate, (i) => engineering.estimateBand(i.metal, i.rate).high)],
  [
    'worst-category',
    call(z.strictObject({ found: z.tuple([category], category) }), (i) => engineering.worstCategory(i.found)),
  ],
  [
    'rebound-law',
    call(
      z.strictObject({ rebound: num, law: num }),
      (i) => engineering.reboundSpread(i.rebound).all[i.law] ?? 'none',
    ),
  ],
  [
    'outlier-grubbs-limit',
    call(z.strictObject({ values: list }), (i) => engineering.checkOutlier(i.values).grubbsLimit),
  ],
  ['outlier-dixon', call(z.strictObject({ values: list }), (i) => engineering.checkOutlier(i.values).dixon)],
  [
    'censored',
    call(
      z.strictObject({
        failures: list,
        stopped: list,
        what: z.enum(['location', 'spread', 'fractile5', 'characteristic']),
      }),
      (i) => engineering.fitCensored(i.failures, i.stopped)[i.what],
    ),
  ],
  [
    'bond-from-tests',
    call(
      z.strictObject({ tests: z.array(z.strictObject({ diameter: num, embedment: num, load: num })) }),
      (i) => engineering.bondFromTests(i.tests).mean,
    ),
  ],
  ['proof-count', call(proof, (i) => engineering.proofPlan(i.anchors, i.failures, i.share).anchors)],
  ['proof-factor', call(proof, (i) => engineering.proofPlan(i.anchors, i.failures, i.share).loadFactor)],
  [
    'life-cycle-present-value',
    call(cost, (i) => engineering.lifeCycleCost(i.plan, i.horizon, i.rate).presentValue),
  ],
  ['life-cycle-yearly', call(cost, (i) => engineering.lifeCycleCost(i.plan, i.horizon, i.rate).yearly)],
  ['life-cycle-holes', call(cost, (i) => engineering.lifeCycleCost(i.plan, i.horizon, i.rate).holes)],
  [
    'break-even-price',
    call(z.strictObject({ plan: z.strictObject({ life: num }), other: plan, ...over }), (i) =>
      engineering.breakEvenPrice(i.plan, i.other, i.horizon, i.rate),
    ),
  ],
  [
    'break-even-life',
    call(
      z.strictObject({ plan: z.strictObject({ installed: num }), other: plan, ...over }),
      (i) => engineering.breakEvenLife(i.plan, i.other, i.horizon, i.rate) ?? 'never',
    ),
  ],
];

export const calls: ReadonlyMap<string, Call> = new Map([...formulas, ...functions, ...later]);
