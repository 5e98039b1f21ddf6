import type { Choice, Message } from '../contracts/message.ts';
import type { Paragraph, Rendered, Silence } from '../contracts/reply.ts';
import type { Question, Turn } from '../contracts/turn.ts';
import { adviceInReply, adviceParagraphs, factLine, joined } from './answer.ts';
import { filesSent, showRecord } from './record.ts';
import { whyParagraphs } from './why.ts';
import type { Words } from './words.ts';

/** Choice ids are short and survive a restart: `f:<fact>:<value>`, `f:<fact>:?` for "don't know", `t:<topic>`, `c:<command>`. */
function questionChoices(words: Words, question: Question): Choice[] {
  return question.values.map((value) => ({
    id: `f:${question.fact}:${value}`,
    label: words.value(question.fact, value),
  }));
}

function dontKnow(words: Words, fact: string): Choice {
  return { id: `f:${fact}:?`, label: words.say({ say: 'choice-dont-know' }) };
}

function understoodLine(words: Words, turn: Turn): string {
  const read = turn.understood.flatMap((fact) => {
    const value = turn.facts[fact];
    return value === undefined ? [] : [factLine(words, fact, value)];
  });
  return read.length === 0 ? '' : words.say({ say: 'understood', with: { list: read.join(' · ') } });
}

/** What is still held from a talk of days ago. */
function heldLine(words: Words, turn: Turn): string {
  const held = Object.entries(turn.facts)
    .filter(([fact]) => !turn.assumed.includes(fact))
    .map(([fact, value]) => factLine(words, fact, value));
  return words.say({ say: 'resumed', with: { list: held.join(' · ') } });
}

interface Shown {
  readonly groups: readonly (readonly Paragraph[])[];
  readonly choices: readonly Choice[];
}

/** A question or a notice is one paragraph: short, and never cut. */
const short = (lines: readonly string[]): Shown['groups'] => [
  [{ text: lines.filter((line) => line !== '').join('\n'), first: true }],
];

function show(words: Words, turn: Turn): Shown {
  const { outcome } = turn;
  switch (outcome.kind) {
    case 'advice':
      return {
        groups: [outcome.advice, ...outcome.also].map((one) => adviceParagraphs(words, one)),
        choices: [
          { id: 'c:why', label: words.say({ say: 'choice-why' }) },
          ...turn.settle.flatMap((question) =>
            questionChoices(words, question).map(({ id, label }) => ({
              id,
              label: words.say({
                say: 'choice-settle',
                with: { fact: words.glossary.factName(question.fact), value: label },
              }),
            })),
          ),
        ],
      };
    case 'why':
      return {
        groups: [whyParagraphs(words, outcome.advice, outcome.origins)],
        choices: [{ id: 'c:back', label: words.say({ say: 'choice-back' }) }],
      };
    case 'question':
      return {
        groups: short([
          understoodLine(words, turn),
          words.glossary.ask(outcome.question.fact),
          outcome.whyAsked ? words.glossary.whyAsked(outcome.question.fact) : '',
          words.say({ say: 'standing' }),
        ]),
        choices: [...questionChoices(words, outcome.question), dontKnow(words, outcome.question.fact)],
      };
    case 'notice':
      return {
        groups: short([...outcome.lines.map((line) => words.say(line)), words.say({ say: 'standing' })]),
        choices: [
          ...(outcome.open === null
            ? []
            : [...questionChoices(words, outcome.open), dontKnow(words, outcome.open.fact)]),
          ...outcome.topics.map((topic) => ({
            id: `t:${topic}`,
            label: words.say({ say: `topic-${topic}` }),
          })),
        ],
      };
    case 'record':
      return {
        groups: showRecord(words, outcome, understoodLine(words, turn)),
        choices: [
          ...(outcome.open === null
            ? []
            : [...questionChoices(words, outcome.open), dontKnow(words, outcome.open.fact)]),
          ...outcome.choices.map(({ id, say }) => ({ id, label: words.say(say) })),
        ],
      };
    case 'silent':
      return { groups: [], choices: [] };
  }
}

const betweenAdvices = '\n\n— — —\n\n';

export function render(message: Message, turn: Turn, words: Words): Rendered | Silence {
  if (turn.outcome.kind === 'silent') return { inReplyTo: message.id, silent: true };
  const { outcome } = turn;
  const shown = show(words, turn);
  const [head = [], ...others] = shown.groups;
  const lead: Paragraph[] = turn.lead.map((line) => ({ text: words.say(line), first: true }));
  const held: Paragraph[] = turn.resumed ? [{ text: heldLine(words, turn), first: false }] : [];
  const restart = { id: 'c:restart', label: words.say({ say: 'choice-restart' }) };
  const groups = [[...held, ...lead, ...head], ...others];
  return {
    groups,
    language: turn.language,
    reply: {
      inReplyTo: message.id,
      chat: message.chat,
      user: message.user,
      text: groups.map(joined).join(betweenAdvices),
      choices: turn.resumed ? [restart, ...shown.choices] : shown.choices,
      files: outcome.kind === 'record' ? filesSent(words, outcome.files) : [],
      topic: turn.topic,
      facts: turn.facts,
      assumed: turn.assumed,
      missing: turn.missing,
      advice: 'advice' in outcome && outcome.advice !== null ? adviceInReply(words, outcome.advice) : null,
    },
  };
}
