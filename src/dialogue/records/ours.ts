/** What the club's own pulls say: those that match, compared with one another, or by depth. */
import type { Advice } from '../../contracts/advice.ts';
import type { Fact, Facts } from '../../contracts/facts.ts';
import type { Phrase } from '../../contracts/phrase.ts';
import type { GroupsShown } from '../../contracts/picture.ts';
import {
  alsoDiffer,
  byDepth,
  failedKn,
  type Group,
  grouped,
  groupOf,
  matching,
  modesOf,
  type Pull,
  pullsOf,
  resultFacts,
  stoppedKn,
  type Wanted,
} from '../../field/groups.ts';
import { isTestFact } from '../../field/test-record.ts';
import { around } from '../expressions.ts';
import { factsOf } from '../fold.ts';
import { hear } from '../hear.ts';
import type { Parsed } from '../understand/index.ts';
import { advised, type Recorded, type Said, saying, type Tools } from './context.ts';
import { figuresOf, groupLines, listed, nameOf, nameOfWanted } from './group-lines.ts';

const mostGroups = 8;
/** Results told in a message are no question about the club's own. */
const results = ['load_kn', 'pulls_kn', 'pulls_other_kn', 'stopped_kn', 'proof_tests'];
const mostBefore = 2;

interface Asked {
  readonly wanted: readonly Wanted[];
  readonly parsed: Parsed;
  readonly language: string;
}

/** What a text asks for, words that are only understood beside a shank included. */
async function wantedIn(tools: Tools, own: string, text: string): Promise<Asked> {
  const { parsed, language } = await hear(tools.ears, text, own, { pending: 'shank' });
  const open = parsed.problems.flatMap(({ fact, value }): Wanted[] =>
    fact === undefined || value === undefined ? [] : [{ fact, value, family: true }],
  );
  const said = parsed.found.map(({ fact, value }): Wanted => ({ fact, value, family: false }));
  const asked = [...said, ...open].filter(({ fact }) => isTestFact(fact) && !results.includes(fact));
  return { wanted: asked, parsed, language };
}

interface Judged {
  readonly group: Group;
  readonly advice: Advice | null;
}

const judged = async (tools: Tools, group: Group): Promise<Judged> => ({
  group,
  advice: await advised(tools, 'pulltest-result', resultFacts(group)),
});

const pictured = (all: readonly Judged[]): { kind: 'groups'; data: GroupsShown } => ({
  kind: 'groups',
  data: {
    groups: all.map(({ group, advice }) => {
      const figures = figuresOf(advice);
      return {
        name: nameOf(group.facts),
        tests: group.pulls.map((pull) => ({ value: pull.kn, stopped: pull.stopped })),
        ...(figures === null ? {} : { characteristic_kn: figures.low }),
        ...(figures === null || figures.fitted ? {} : { mean_kn: figures.middle }),
      };
    }),
  },
});

const plainFacts = (facts: Facts) =>
  Object.fromEntries(Object.entries(facts).map(([id, { value }]) => [id, value]));

/** The talk goes on from this answer: "why" shows where it came from. */
const answeredBy = (session: Said['session'], topic: string, facts: Facts): Said['session'] => ({
  ...session,
  turn: session.turn + 1,
  pending: null,
  answered: { topic, facts },
});

async function shown(tools: Tools, said: Said, pulls: readonly Pull[], asked: Asked): Promise<Recorded> {
  const { language } = asked;
  const found = matching(tools.rules, pulls, asked.wanted);
  if (found.length === 0)
    return saying(
      tools,
      said.session,
      [
        {
          say: 'ours-no-match',
          with: { what: nameOfWanted(tools.rules, asked.wanted), count: pulls.length },
        },
      ],
      { language, topic: 'pulltest-result' },
    );
  const groups = grouped(found);
  const all = await Promise.all(groups.slice(0, mostGroups).map((group) => judged(tools, group)));
  const [first] = all.toSorted((a, b) => failedKn(b.group).length - failedKn(a.group).length);
  if (first === undefined) throw new Error('pulls without a group');
  const facts = resultFacts(first.group);
  const lines: Phrase[] = [
    { say: 'ours-found', with: { count: found.length, groups: groups.length } },
    ...all.flatMap(({ group, advice }) => groupLines(tools.rules, group, advice)),
    ...(groups.length > mostGroups
      ? [{ say: 'ours-more', with: { count: groups.length - mostGroups } }]
      : []),
    ...(groups.length > 1 ? [{ say: 'ours-about', with: { what: nameOf(first.group.facts) } }] : []),
  ];
  const session = first.advice === null ? said.session : answeredBy(said.session, 'pulltest-result', facts);
  return saying(tools, session, lines, {
    language,
    topic: 'pulltest-result',
    facts: plainFacts(facts),
    advice: first.advice,
    pictures: [pictured(all)],
  });
}

const measured = (values: readonly number[]): Fact => ({ value: values, from: 'measured' });

/** Two sets side by side; the first is the one named first. */
async function compared(
  tools: Tools,
  said: Said,
  sides: readonly [one: { name: Phrase; group: Group }, other: { name: Phrase; group: Group }],
  more: { readonly lines?: readonly Phrase[]; readonly asked: readonly string[]; readonly language: string },
): Promise<Recorded> {
  const [one, other] = sides;
  const [failed, failedOther] = [failedKn(one.group), failedKn(other.group)];
  const facts: Facts = {
    ...(failed.length === 0 ? {} : { pulls_kn: measured(failed) }),
    ...(failedOther.length === 0 ? {} : { pulls_other_kn: measured(failedOther) }),
  };
  const advice = await advised(tools, 'compare', facts);
  const all = await Promise.all(sides.map(({ group }) => judged(tools, group)));
  const differ = alsoDiffer(one.group.pulls, other.group.pulls, more.asked);
  const modes = new Set(
    sides.flatMap(({ group }) =>
      modesOf({ ...group, pulls: group.pulls.filter((pull) => !pull.stopped) }).map(([mode]) => mode),
    ),
  );
  const stopped = stoppedKn(one.group).length + stoppedKn(other.group).length;
  const lines: Phrase[] = [
    { say: 'ours-first', with: { what: one.name } },
    ...groupLines(tools.rules, one.group, all[0]?.advice ?? null, false),
    { say: 'ours-second', with: { what: other.name } },
    ...groupLines(tools.rules, other.group, all[1]?.advice ?? null, false),
    ...(more.lines ?? []),
    ...(differ.length > 0
      ? [{ say: 'ours-differ', with: { list: listed(differ.map((id) => ({ of: 'fact' as const, id }))) } }]
      : []),
    ...(modes.size > 1 ? [{ say: 'ours-modes-differ' }] : []),
    ...(stopped > 0 ? [{ say: 'ours-stopped-out', with: { count: stopped } }] : []),
  ];
  return saying(tools, advice === null ? said.session : answeredBy(said.session, 'compare', facts), lines, {
    language: more.language,
    topic: 'compare',
    facts: plainFacts(facts),
    advice,
    pictures: [pictured(all)],
  });
}

/** "316 smooth against galvanised rough, same glue?": null where the club has pulled nothing of one side. */
async function against(
  tools: Tools,
  said: Said,
  pulls: readonly Pull[],
  text: string,
): Promise<Recorded | null> {
  const parts = around(text, tools.ears.expressions.records.against);
  if (parts === undefined || parts.before === '' || parts.after === '') return null;
  const [a, b] = [
    await wantedIn(tools, said.own, parts.before),
    await wantedIn(tools, said.own, parts.after),
  ];
  if ([a, b].some(({ parsed }) => parsed.found.some(({ fact }) => results.includes(fact)))) return null;
  const own = (one: Asked) => one.wanted.map(({ fact }) => fact);
  const both = own(a).filter((fact) => own(b).includes(fact));
  if (both.length === 0) return null;
  const shared = [...a.wanted, ...b.wanted].filter(({ fact }) => !both.includes(fact));
  const sideOf = ({ wanted }: Asked) => {
    const side = [...wanted.filter(({ fact }) => both.includes(fact)), ...shared];
    const found = matching(tools.rules, pulls, side);
    return { name: nameOfWanted(tools.rules, side), group: groupOf(found), size: found.length };
  };
  const [one, other] = [sideOf(a), sideOf(b)];
  if (one.size === 0 || other.size === 0) return null;
  return compared(tools, said, [one, other], {
    asked: [...both, ...shared.map(({ fact }) => fact)],
    language: a.language,
  });
}

/** "Does longer help here?": the deepest against the shallowest of one kind. */
async function longer(tools: Tools, said: Said, pulls: readonly Pull[], text: string): Promise<Recorded> {
  const { wanted, language } = await wantedIn(tools, said.own, text);
  const told = factsOf(tools.rules, said.session);
  const here = (['rock', 'adhesive'] as const).flatMap((fact): Wanted[] => {
    const value = told[fact]?.value;
    const open = value !== undefined && value !== 'unknown' && !wanted.some((one) => one.fact === fact);
    return open ? [{ fact, value, family: false }] : [];
  });
  const near = matching(tools.rules, pulls, [...wanted, ...here]);
  const groups = byDepth(near);
  const [deep, shallow] = [groups?.[0], groups?.at(-1)];
  if (groups === null || deep === undefined || shallow === undefined)
    return saying(tools, said.session, [{ say: 'ours-longer-none' }], { language, topic: 'compare' });
  const between = groups.slice(1, -1);
  const all = await Promise.all(between.map((group) => judged(tools, group)));
  const sides = [
    { name: nameOf(deep.facts), group: deep },
    { name: nameOf(shallow.facts), group: shallow },
  ] as const;
  return compared(tools, said, sides, {
    lines: [
      ...all.flatMap(({ group, advice }) => groupLines(tools.rules, group, advice)),
      { say: 'ours-longer' },
    ],
    asked: ['length_mm', 'embedment_mm'],
    language,
  });
}

/** A question about the club's own pulls; null where it is none, or nothing was pulled yet. */
export async function aboutOurs(tools: Tools, said: Said, text: string): Promise<Recorded | null> {
  const { records } = tools.ears.expressions;
  const [, command] = /^\s*\/(tests)(?:@\w+)?(?=\s|$)/i.exec(text) ?? [];
  const ours = around(text, records.ours);
  const early = ours !== undefined && ours.before.split(' ').length <= mostBefore;
  const deeper = around(text, records.longer) !== undefined;
  const sides = around(text, records.against) !== undefined;
  if (command === undefined && !early && !deeper && !sides) return null;
  const pulls = pullsOf(await tools.records.list(said.message.chat, 'test'));
  if (command !== undefined) {
    const asked = await wantedIn(tools, said.own, text.replace(/^\s*\/\S+/, ''));
    return pulls.length === 0 ? nothingYet(tools, said) : shown(tools, said, pulls, asked);
  }
  if (pulls.length === 0) return null;
  if (sides) return against(tools, said, pulls, text);
  if (deeper) return longer(tools, said, pulls, text);
  const asked = await wantedIn(tools, said.own, text);
  const tells = asked.parsed.found.some(({ fact }) => results.includes(fact));
  return tells ? null : shown(tools, said, pulls, asked);
}

const nothingYet = (tools: Tools, said: Said): Promise<Recorded> =>
  saying(tools, said.session, [{ say: 'ours-none' }], { topic: 'pulltest-result' });
