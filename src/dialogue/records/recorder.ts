/** The club's own records in the talk: which messages are about them, and what comes of those. */

import { markOf } from '../../field/index.ts';
import { anchorLayout } from '../../field/table/layout.ts';
import { around } from '../expressions.ts';
import { settledElsewhere } from '../read.ts';
import type { Parsed } from '../understand/index.ts';
import { aboutRecord, withdrawal } from './by-id.ts';
import { type Recorded, type Said, saying, type Tools } from './context.ts';
import { begin, dropped, fix, goOn, goOnWith, keep, tapped } from './drafting.ts';
import { tellsOfPull, withLoad } from './hearing.ts';
import { aboutOurs } from './ours.ts';
import { notePull } from './recordings.ts';
import { aboutRegister, registerAsked } from './register.ts';
import { exported, tableIn } from './tables.ts';

/** As many other words as such a message may have. */
const mostBeside = 2;
const command = /^\s*\/([a-z]+)(?:@\w+)?(?=\s|$)/i;

/** "Keep it", "drop": an expression and hardly another word. */
function only(text: string, expressions: readonly string[]): boolean {
  const found = around(text, expressions);
  if (found === undefined) return false;
  const beside = `${found.before} ${found.after}`.split(' ').filter((word) => word !== '');
  return beside.length <= mostBeside && !/\d/.test(text);
}

async function pressed(tools: Tools, said: Said, press: string): Promise<Recorded | null> {
  const { session, message } = said;
  const [kind, what = '', name = '', version = ''] = press.split(':');
  if (kind === 'f') return tapped(tools, said, press);
  if (kind === 't' && what === 'pulltest-record') return begin(tools, said, '');
  if (kind === 't' && what === 'register') return registerAsked(tools, said, '');
  if (kind !== 'r') return null;
  const { draft } = session;
  const stale = (): Promise<Recorded> => saying(tools, session, [{ say: 'button-old' }]);
  switch (what) {
    case 'keep':
      return (await keep(tools, said, name)) ?? stale();
    case 'drop':
      return draft !== null && name === markOf(draft) ? dropped(tools, said) : stale();
    case 'pull':
      return (await notePull(tools, said, name, version)) ?? stale();
    case 'fix':
      return (await fix(tools, said, name)) ?? stale();
    case 'withdraw': {
      const record = await tools.records.find(message.chat, name);
      const fits = record !== null && !record.withdrawn && String(record.version) === version;
      return fits ? withdrawal(tools, said, record) : stale();
    }
    default:
      return stale();
  }
}

/** Before a message is read as a question: presses, names of records, and what goes on with an open one. */
export async function aboutRecords(tools: Tools, said: Said): Promise<Recorded | null> {
  const { session, message } = said;
  const { press, text } = message;
  if (press !== undefined) return pressed(tools, said, press);
  const table = await tableIn(tools, said);
  if (table !== null) return table;
  if (text === undefined || settledElsewhere(tools.ears, text)) return null;
  const { draft } = session;
  const { records } = tools.ears.expressions;
  const confirms = draft?.do === 'withdraw' ? records.withdraw : records.keep;
  if (draft !== null && only(text, confirms)) return keep(tools, said);
  if (draft !== null && only(text, records.drop)) return dropped(tools, said);
  if (around(text, records.export) !== undefined && !/\d/.test(text)) return exported(tools, said);
  const { register } = tools.ears.expressions;
  if (around(text, register.export) !== undefined && !/\d/.test(text))
    return exported(tools, said, anchorLayout);
  const named =
    (await aboutRecord(tools, said, text)) ??
    (await aboutRegister(tools, said, text)) ??
    (await aboutOurs(tools, said, text));
  if (named !== null) return named;
  if (draft === null || command.test(text)) return null;
  return goOnWith(tools, said, draft, text);
}

/** A message that was understood and tells of a pull begins a record; an open one comes first. */
export async function beginsRecord(tools: Tools, said: Said, parsed: Parsed): Promise<Recorded | null> {
  const { session, message } = said;
  const { text = '' } = message;
  if (parsed.topics[0] === 'register') return registerAsked(tools, said, text);
  if (!tellsOfPull(tools, withLoad(parsed), text)) return null;
  if (session.draft !== null)
    return goOn(tools, session, session.draft, { lines: [{ say: 'record-open-first' }] });
  return begin(tools, said, text.replace(command, ''));
}
