/** The words of pictures: labels for the drawing, and the alternative text that says the same to who cannot see it. */
import type { Phrase } from '../contracts/phrase.ts';
import type {
  BondData,
  BondTexts,
  CostData,
  CostTexts,
  ForceData,
  ForceTexts,
  GroupData,
  GroupTexts,
  Need,
  RiskData,
  RiskTexts,
  TestValue,
} from '../contracts/pictures.ts';
import { oneLine } from '../units/one-line.ts';
import type { Words } from './words.ts';

/** Platforms allow 1024 and more letters; a listener has enough of it by then anyway. */
export const longestAlt = 1000;

const kn = (value: number) => ({ value, unit: 'kN', metric: true });
/** A demand is printed as the standard prints it, never rounded. */
const asked = (value: number) => ({ ...kn(value), exact: true });
const mpa = (value: number) => ({ value, unit: 'MPa', metric: true });
const name = (text: string): string => oneLine(text, 60);

function common(words: Words, title: Phrase) {
  const decimal: '.' | ',' = words.number(1.5).includes(',') ? ',' : '.';
  return { decimal, title: words.say(title), nothing: words.say({ say: 'picture-nothing' }) };
}

const more =
  (words: Words) =>
  (count: number): string =>
    words.say({ say: 'picture-more', with: { count } });

/** The verdict, then as many lines as there is room for, then how many are left. Never cut within a figure. */
function alt(words: Words, verdict: string, lines: readonly string[]): string {
  const sentence = (line: string): string => {
    const capital = line.slice(0, 1).toLocaleUpperCase(words.glossary.language) + line.slice(1);
    return /[.!?…]$/.test(line) ? capital : `${capital}.`;
  };
  const all = lines.filter((line) => line !== '').map(sentence);
  const from = (count: number): string =>
    [
      sentence(verdict),
      ...all.slice(0, count),
      ...(count < all.length ? [sentence(more(words)(all.length - count))] : []),
    ].join(' ');
  let count = all.length;
  while (count > 0 && from(count).length > longestAlt) count -= 1;
  return from(count);
}

const needText = (words: Words, need: Need): string =>
  words.say({ say: 'picture-need', with: { name: name(need.name), load: asked(need.kn) } });

const pullTexts = (words: Words, data: ForceData): string[] =>
  data.pulls.map(({ peak, firstDrop }) =>
    firstDrop === undefined
      ? words.say({ say: 'picture-pull', with: { peak: kn(peak.kn) } })
      : words.say({ say: 'picture-pull-dropped', with: { peak: kn(peak.kn), drop: kn(firstDrop.kn) } }),
  );

export function forceTexts(words: Words, data: ForceData): ForceTexts {
  const label = (say: string): string => words.say({ say });
  const of = name(data.name);
  return {
    ...common(words, { say: 'picture-force-time', with: { name: of } }),
    displacementTitle: words.say({ say: 'picture-force-displacement', with: { name: of } }),
    time: label('picture-axis-time'),
    force: label('picture-axis-force'),
    displacement: label('picture-axis-displacement'),
    peak: label('picture-peak'),
    firstDrop: label('picture-first-drop'),
    pulls: pullTexts(words, data),
    needs: data.needs.map((need) => needText(words, need)),
    more: more(words),
  };
}

export function forceAlt(words: Words, data: ForceData, over: 'time' | 'displacement' = 'time'): string {
  const peaks = data.pulls.map(({ peak }) => peak.kn);
  const count = peaks.length;
  const reached = data.needs.map((need) =>
    words.say({
      say: 'picture-alt-reached',
      with: {
        reached: peaks.filter((peak) => peak >= need.kn).length,
        count,
        load: asked(need.kn),
        name: name(need.name),
      },
    }),
  );
  const range =
    count === 0
      ? words.say({ say: 'picture-alt-no-pulls', with: { count } })
      : words.say({
          say: 'picture-alt-peaks',
          with: { count, least: kn(Math.min(...peaks)), most: kn(Math.max(...peaks)) },
        });
  const verdict = count === 0 || reached.length === 0 ? range : reached.slice(0, 4).join(' ');
  return alt(words, verdict, [
    words.say({ say: `picture-force-${over}`, with: { name: name(data.name) } }),
    ...pullTexts(words, data).map((text, index) => `(${index + 1}) ${text}`),
  ]);
}

/** "5 tests, 2 of them stopped before failure". */
const testsText = (words: Words, tests: readonly TestValue[]): string =>
  words.say({
    say: 'picture-tests',
    with: { count: tests.length, stopped: tests.filter(({ stopped }) => stopped).length },
  });

const groupText = (words: Words, group: GroupData['groups'][number]): string => {
  const parts = [
    testsText(words, group.tests),
    ...(group.mean_kn === undefined
      ? []
      : [words.say({ say: 'picture-group-mean', with: { mean: kn(group.mean_kn) } })]),
    group.characteristic_kn === undefined
      ? words.say({ say: 'picture-group-no-low' })
      : words.say({ say: 'picture-group-low', with: { low: kn(group.characteristic_kn) } }),
  ];
  return words.say({ say: 'picture-group', with: { name: name(group.name), parts: parts.join(' · ') } });
};

const groupTextsOf = (words: Words, data: GroupData): string[] =>
  data.groups.map((group) => groupText(words, group));

export function groupTexts(words: Words, data: GroupData): GroupTexts {
  const label = (say: string): string => words.say({ say });
  return {
    ...common(words, { say: 'picture-groups', with: { name: name(data.name) } }),
    force: label('picture-axis-force'),
    failed: label('picture-failed'),
    stopped: label('picture-stopped'),
    mean: label('picture-mean'),
    characteristic: label('picture-characteristic'),
    need: data.need === undefined ? '' : needText(words, data.need),
    groups: groupTextsOf(words, data),
  };
}

export function groupAlt(words: Words, data: GroupData): string {
  const { need, groups } = data;
  const count = groups.length;
  const lows = groups.flatMap((group) =>
    group.characteristic_kn === undefined ? [] : [{ name: group.name, low: group.characteristic_kn }],
  );
  const [lowest] = lows.toSorted((one, other) => one.low - other.low);
  const tests = groups.reduce((sum, group) => sum + group.tests.length, 0);
  const verdict = (): Phrase => {
    if (need !== undefined) {
      const met = lows.filter(({ low }) => low >= need.kn).length;
      return {
        say: 'picture-alt-groups-met',
        with: { met, count, load: asked(need.kn), name: name(need.name) },
      };
    }
    return lowest === undefined
      ? { say: 'picture-alt-groups-no-low', with: { count, tests } }
      : { say: 'picture-alt-groups-lowest', with: { count, low: kn(lowest.low), name: name(lowest.name) } };
  };
  return alt(words, words.say(verdict()), groupTextsOf(words, data));
}

const publishedText = (words: Words, { published }: BondData): string =>
  published === undefined
    ? ''
    : words.say({
        say: 'picture-published',
        with: { low: mpa(published.low), high: mpa(published.high) },
      });

const learnedText = (words: Words, { learned }: BondData): string =>
  learned === undefined
    ? ''
    : words.say({
        say: 'picture-learned',
        with: {
          mean: mpa(learned.mean),
          low: mpa(learned.low),
          high: mpa(learned.high),
          share: words.number(Math.round(learned.share * 100)),
        },
      });

const ownText = (words: Words, data: BondData): string =>
  words.say({ say: 'picture-own', with: { tests: testsText(words, data.tests) } });

export function bondTexts(words: Words, data: BondData): BondTexts {
  const label = (say: string): string => words.say({ say });
  return {
    ...common(words, { say: 'picture-bond', with: { name: name(data.name) } }),
    strength: label('picture-axis-bond'),
    published: publishedText(words, data),
    tests: ownText(words, data),
    learned: learnedText(words, data),
    used: words.say({ say: 'picture-used', with: { used: mpa(data.used) } }),
    failed: label('picture-failed'),
    stopped: label('picture-stopped'),
  };
}

export function bondAlt(words: Words, data: BondData): string {
  const { published, tests, used } = data;
  // A stopped test only says "at least": it is never known to lie below.
  const below = tests.filter(
    ({ value, stopped }) => published !== undefined && !stopped && value < published.low,
  ).length;
  const values = tests.map(({ value }) => value);
  return alt(words, words.say({ say: 'picture-used', with: { used: mpa(used) } }), [
    published === undefined || tests.length === 0
      ? ''
      : words.say({ say: 'picture-alt-below', with: { below, count: tests.length } }),
    publishedText(words, data),
    learnedText(words, data),
    ownText(words, data),
    values.length === 0
      ? ''
      : words.say({
          say: 'picture-alt-range',
          with: { least: mpa(Math.min(...values)), most: mpa(Math.max(...values)) },
        }),
    words.say({ say: 'picture-bond', with: { name: name(data.name) } }),
  ]);
}

const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0);

function money(words: Words, data: CostData, amount: number): string {
  const number = words.measure({ value: amount, unit: '1' });
  return data.currency === '' ? number : `${number} ${oneLine(data.currency, 8)}`;
}

const policyText = (words: Words, data: CostData, policy: CostData['policies'][number]): string =>
  words.say({
    say: 'picture-policy',
    with: { name: name(policy.name), total: money(words, data, sum(policy.perYear)) },
  });

export function costTexts(words: Words, data: CostData): CostTexts {
  const cost = words.say({ say: 'picture-axis-cost' });
  return {
    ...common(words, { say: 'picture-costs', with: { name: name(data.name) } }),
    cost: data.currency === '' ? cost : `${cost}, ${oneLine(data.currency, 8)}`,
    policies: data.policies.map((policy) => policyText(words, data, policy)),
  };
}

export function costAlt(words: Words, data: CostData): string {
  const years = Math.max(0, ...data.policies.map(({ perYear }) => perYear.length));
  const [least] = data.policies.toSorted((one, other) => sum(one.perYear) - sum(other.perYear));
  const lines = data.policies.map((policy) => {
    const dearest = Math.max(0, ...policy.perYear);
    return words.say({
      say: 'picture-alt-policy',
      with: {
        policy: policyText(words, data, policy),
        year: String(data.firstYear + Math.max(0, policy.perYear.indexOf(dearest))),
        most: money(words, data, dearest),
      },
    });
  });
  const verdict =
    least === undefined
      ? words.say({ say: 'picture-alt-no-policies', with: { count: 0 } })
      : words.say({
          say: 'picture-alt-cheapest',
          with: { years, name: name(least.name), total: money(words, data, sum(least.perYear)) },
        });
  return alt(words, verdict, lines);
}

/** No reckoning of risks is finer, and nothing is ever said to be without risk. */
const leastShare = 0.001;

const shareText = (words: Words, perYear: number): string =>
  perYear * 100 < leastShare
    ? words.say({
        say: 'picture-share-under',
        with: { share: { value: leastShare, unit: '1', exact: true } },
      })
    : words.say({ say: 'picture-share', with: { share: { value: perYear * 100, unit: '1' } } });

export function riskTexts(words: Words, data: RiskData): RiskTexts {
  const label = (say: string): string => words.say({ say });
  return {
    ...common(words, { say: 'picture-risks', with: { name: name(data.name) } }),
    risk: label('picture-axis-risk'),
    act: label('picture-risk-act'),
    watch: label('picture-risk-watch'),
    share: (perYear) => shareText(words, perYear),
    more: more(words),
  };
}

export function riskAlt(words: Words, data: RiskData): string {
  const ranked = data.anchors
    .filter(({ perYear }) => perYear >= 0 && perYear <= 1)
    .toSorted((one, other) => other.perYear - one.perYear);
  const [first] = ranked;
  const verdict = words.say({
    say: 'picture-alt-act',
    with: { act: ranked.filter(({ act }) => act).length, count: ranked.length },
  });
  return alt(words, verdict, [
    first === undefined
      ? ''
      : words.say({
          say: 'picture-alt-highest',
          with: { name: name(first.name), share: shareText(words, first.perYear) },
        }),
    ...ranked
      .slice(1)
      .map((one, index) => `(${index + 2}) ${name(one.name)}, ${shareText(words, one.perYear)}`),
  ]);
}
