/** One advice as text for a phone: verdict first, cautions and deferral always, details behind `why`. */
import type { Advice, Check } from '../contracts/advice.ts';
import type { FactValue } from '../contracts/facts.ts';
import type { AdviceInReply, Paragraph } from '../contracts/reply.ts';
import type { Words } from './words.ts';

const bullet = (line: string): string => `• ${line}`;

/** "rock: granite", or "rock: not known" where even the assumption is that it is not known. */
export function factLine(words: Words, fact: string, value: FactValue): string {
  const shown = value === 'unknown' ? words.say({ say: 'not-known' }) : words.value(fact, value);
  return words.say({ say: 'fact-line', with: { fact: words.glossary.factName(fact), value: shown } });
}

function outcomeOf(mode: readonly Check[]): string {
  const met = mode.every(({ ok }) => ok);
  if (mode.some(({ atMost }) => atMost)) return met ? 'check-atmost-met' : 'check-atmost-short';
  if (met) return 'check-met';
  return mode.some(({ ok }) => ok) ? 'check-open' : 'check-short';
}

/** Checks of one mode stand in one line: its mean, its 5 % fractile, and what is needed. */
function checkLines(words: Words, checks: readonly Check[]): string[] {
  const ids = [...new Set(checks.map((check) => check.id))];
  return ids.map((id) => {
    const mode = checks.filter((check) => check.id === id);
    const first = mode[0] as Check;
    const values = mode.map((check) =>
      words.say({
        say: `check-${check.kind}`,
        with: { value: { value: check.value, unit: check.unit, metric: check.unit === 'kN' } },
      }),
    );
    return words.say({
      say: outcomeOf(mode),
      with: {
        name: words.say(first.name),
        values: values.join(', '),
        limit: { value: first.limit, unit: first.unit, exact: true, metric: first.unit === 'kN' },
      },
    });
  });
}

function section(words: Words, title: string, lines: readonly string[]): string {
  return lines.length === 0 ? '' : [words.say({ say: title }), ...lines.map(bullet)].join('\n');
}

/** Every caution in full: what `why` shows. */
export const cautionsInFull = (words: Words, advice: Advice): string =>
  section(
    words,
    'title-cautions',
    advice.cautions.map((id) => words.glossary.caution(id)),
  );

/** Every caution: those of this case in full, those that hold nearly always in one line of a few words each. */
export function cautionsText(words: Words, cautions: readonly string[]): string {
  const { glossary } = words;
  const short = (id: string): string | undefined => glossary.cautionInShort(id);
  const full = cautions.filter((id) => short(id) === undefined);
  const always = cautions.flatMap((id) => short(id) ?? []);
  const line = always.length === 0 ? [] : [words.say({ say: 'always', with: { list: always.join('; ') } })];
  return section(words, 'title-cautions', [...full.map((id) => glossary.caution(id)), ...line]);
}

/** How many sources an answer names; `why` names all. Those of the decision itself stand first. */
const namedSources = 6;

function sourcesText(words: Words, advice: Advice): string {
  const named = advice.sources.slice(0, namedSources).map((id) => words.glossary.sourceInShort(id));
  const more = advice.sources.length - named.length;
  const list = named.join('; ');
  return more === 0
    ? words.say({ say: 'sources', with: { list } })
    : words.say({ say: 'sources-more', with: { list, more } });
}

/** The parts in the order in which they are read; what must not be cut off is marked. */
export function adviceParagraphs(words: Words, advice: Advice): readonly Paragraph[] {
  const told = Object.entries(advice.facts).filter(([fact]) => !advice.assumed.includes(fact));
  const assumed = advice.assumed.map((fact) => factLine(words, fact, advice.facts[fact] ?? 'unknown'));
  const must = (text: string): Paragraph => ({ text, first: true });
  const may = (text: string): Paragraph => ({ text, first: false });
  return [
    must(words.say(advice.verdict)),
    may(advice.points.map((point) => bullet(words.say(point))).join('\n')),
    may(
      section(
        words,
        advice.checks.some(({ unit }) => unit === 'kN') ? 'title-checks-kn' : 'title-checks',
        checkLines(words, advice.checks),
      ),
    ),
    may(
      section(
        words,
        'title-reject',
        advice.reject.map(({ what, why }) =>
          words.say({ say: 'rejected', with: { what, why: { rule: why[0] } } }),
        ),
      ),
    ),
    may(
      told.length === 0
        ? ''
        : words.say({
            say: 'took',
            with: {
              // A number alone does not say what it is of.
              list: told
                .map(([fact, value]) =>
                  typeof value !== 'string' ? factLine(words, fact, value) : words.value(fact, value),
                )
                .join(' · '),
            },
          }),
    ),
    may(assumed.length === 0 ? '' : words.say({ say: 'assumed', with: { list: assumed.join(' · ') } })),
    // Whoever asks for the cautions gets them in full.
    must(advice.topic === 'cautions' ? cautionsInFull(words, advice) : cautionsText(words, advice.cautions)),
    must(words.say({ say: 'deferral' })),
    may(sourcesText(words, advice)),
    may(words.say({ say: 'footer', with: { id: advice.id, ruleset: advice.ruleset } })),
  ].filter(({ text }) => text !== '');
}

/** Paragraphs as one text. */
export const joined = (paragraphs: readonly Paragraph[]): string =>
  paragraphs.map(({ text }) => text).join('\n\n');

export const adviceText = (words: Words, advice: Advice): string => joined(adviceParagraphs(words, advice));

/** The same advice for machines, as the pipe protocol has it. */
export function adviceInReply(words: Words, advice: Advice): AdviceInReply {
  return {
    id: advice.id,
    verdict: words.say(advice.verdict),
    recommend: advice.recommend,
    reject: advice.reject.map(({ what, why }) => ({
      what: what.value,
      why: why.map((rule) => words.glossary.rule(rule)).join(' '),
    })),
    checks: advice.checks.map(({ name, value, unit, limit, kind, ok }) => ({
      name: words.say(name),
      value: Number(value.toPrecision(4)),
      unit,
      limit,
      kind,
      ok,
    })),
    cautions: advice.cautions,
    deferral: advice.deferral,
    sources: advice.sources,
    rules: advice.rules,
    ruleset: advice.ruleset,
  };
}
