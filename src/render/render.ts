import type { Choice, Message } from '../contracts/message.ts';
import type { Reply, Silence } from '../contracts/reply.ts';
import type { Question, Turn } from '../contracts/turn.ts';
import { adviceInReply, adviceText, factLine } from './answer.ts';
import { whyText } from './why.ts';
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

function textAndChoices(words: Words, turn: Turn): { text: string; choices: Choice[] } {
  const { outcome } = turn;
  switch (outcome.kind) {
    case 'advice':
      return {
        text: [outcome.advice, ...outcome.also].map((one) => adviceText(words, one)).join('\n\n— — —\n\n'),
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
        text: whyText(words, outcome.advice, outcome.origins),
        choices: [{ id: 'c:back', label: words.say({ say: 'choice-back' }) }],
      };
    case 'question':
      return {
        text: [
          understoodLine(words, turn),
          words.glossary.ask(outcome.question.fact),
          outcome.whyAsked ? words.glossary.whyAsked(outcome.question.fact) : '',
          words.say({ say: 'standing' }),
        ]
          .filter((line) => line !== '')
          .join('\n'),
        choices: [...questionChoices(words, outcome.question), dontKnow(words, outcome.question.fact)],
      };
    case 'notice':
      return {
        text: [...outcome.lines.map((line) => words.say(line)), words.say({ say: 'standing' })].join('\n'),
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
    case 'silent':
      return { text: '', choices: [] };
  }
}

export function render(message: Message, turn: Turn, words: Words): Reply | Silence {
  if (turn.outcome.kind === 'silent') return { inReplyTo: message.id, silent: true };
  const { outcome } = turn;
  const { text, choices } = textAndChoices(words, turn);
  return {
    inReplyTo: message.id,
    chat: message.chat,
    user: message.user,
    text: turn.resumed ? `${heldLine(words, turn)}\n\n${text}` : text,
    choices: turn.resumed
      ? [{ id: 'c:restart', label: words.say({ say: 'choice-restart' }) }, ...choices]
      : choices,
    files: [],
    topic: turn.topic,
    facts: turn.facts,
    assumed: turn.assumed,
    missing: turn.missing,
    advice: outcome.kind === 'advice' || outcome.kind === 'why' ? adviceInReply(words, outcome.advice) : null,
  };
}
