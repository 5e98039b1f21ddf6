/** Crags whose exact places are nobody's business (nests, access): of what is there only the crag is kept and shown. */
import type { RecordBody, RecordStep, Records } from '../contracts/record.ts';
import { foldedName } from './anchor.ts';

/** Free words may tell the way there as well. */
const telling = ['sector', 'route', 'position', 'note'];

export const isSensitive = (sensitive: readonly string[], crag: string | undefined): boolean =>
  crag !== undefined && sensitive.some((one) => foldedName(one) === foldedName(crag));

export function sheltered(sensitive: readonly string[], body: RecordBody): RecordBody {
  if (!isSensitive(sensitive, body.texts.crag)) return body;
  const texts = Object.entries(body.texts).filter(([id]) => !telling.includes(id));
  return { facts: body.facts, texts: Object.fromEntries(texts) };
}

/** What was written down before the crag was marked is shown without its place from then on. */
export function shelteredRecords(records: Records, sensitive: readonly string[]): Records {
  if (sensitive.length === 0) return records;
  const shelter = <T extends { readonly body: RecordBody }>(one: T): T => ({
    ...one,
    body: sheltered(sensitive, one.body),
  });
  return {
    list: async (chat, kind) => (await records.list(chat, kind)).map(shelter),
    find: async (chat, id) => {
      const record = await records.find(chat, id);
      return record === null ? null : shelter(record);
    },
    history: async (chat, id) => {
      const steps = await records.history(chat, id);
      // A step that named another crag is of the same anchor.
      const any = steps.some(({ body }) => isSensitive(sensitive, body.texts.crag));
      const hide = ({ body }: RecordStep): RecordBody =>
        any ? sheltered([...sensitive, body.texts.crag ?? ''], body) : body;
      return steps.map((step) => ({ ...step, body: hide(step) }));
    },
  };
}
