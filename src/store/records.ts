/** The club's records and every step of their history. */
import type { Selectable } from 'kysely';
import type {
  ClubRecord,
  RecordBody,
  RecordChange,
  RecordKind,
  RecordStep,
  Records,
} from '../contracts/record.ts';
import type { Database } from './once.ts';
import { recordBodyIn, type Tables } from './shapes.ts';
import { RecordConflict } from './store.ts';

const recordOf = (row: Selectable<Tables['records']>): ClubRecord => ({
  id: row.id,
  chat: row.chat,
  kind: row.kind as RecordKind,
  author: row.author,
  at: row.at,
  version: row.version,
  withdrawn: row.withdrawn === 1,
  body: recordBodyIn(row.body),
});

export function recordsIn(db: Database): Records {
  return {
    async list(chat, kind) {
      const rows = await db
        .selectFrom('records')
        .selectAll()
        .where('chat', '=', chat)
        .where('kind', '=', kind)
        .where('withdrawn', '=', 0)
        .orderBy('at')
        .orderBy('id')
        .execute();
      return rows.map(recordOf);
    },

    async find(chat, id) {
      const row = await db
        .selectFrom('records')
        .selectAll()
        .where('chat', '=', chat)
        .where('id', '=', id)
        .executeTakeFirst();
      return row === undefined ? null : recordOf(row);
    },

    async history(chat, id) {
      const rows = await db
        .selectFrom('record_steps')
        .selectAll()
        .where('chat', '=', chat)
        .where('id', '=', id)
        .orderBy('version')
        .execute();
      return rows.map(({ version, did, member, at, body }) => ({
        id,
        version,
        did: did as RecordStep['did'],
        by: member,
        at,
        body: recordBodyIn(body),
      }));
    },
  };
}

/** Statements take a bounded number of values, so many records go in by the hundred. */
const atOnce = 100;

export async function applyChanges(
  db: Database,
  chat: string,
  member: string,
  at: string,
  changes: readonly RecordChange[],
): Promise<void> {
  const added = changes.filter((change) => change.do === 'add');
  for (let from = 0; from < added.length; from += atOnce) {
    const some = added.slice(from, from + atOnce);
    const bodies = some.map(({ id, kind, body }) => ({ id, kind, body: JSON.stringify(body) }));
    await db
      .insertInto('records')
      .values(bodies.map((one) => ({ ...one, chat, author: member, at, version: 1, withdrawn: 0 })))
      .execute();
    await db
      .insertInto('record_steps')
      .values(bodies.map(({ id, body }) => ({ chat, id, version: 1, did: 'added', member, at, body })))
      .execute();
  }
  for (const change of changes) if (change.do !== 'add') await applyStep(db, chat, member, at, change);
}

async function applyStep(
  db: Database,
  chat: string,
  member: string,
  at: string,
  change: Exclude<RecordChange, { do: 'add' }>,
): Promise<void> {
  const { id, version } = change;
  const withdraw = change.do === 'withdraw';
  const body: RecordBody | undefined = withdraw ? (await recordsIn(db).find(chat, id))?.body : change.body;
  const text = JSON.stringify(body);
  const { numUpdatedRows } = await db
    .updateTable('records')
    .set({ version: version + 1, ...(withdraw ? { withdrawn: 1 } : { body: text }) })
    .where('chat', '=', chat)
    .where('id', '=', id)
    .where('version', '=', version)
    .where('withdrawn', '=', 0)
    .executeTakeFirst();
  if (numUpdatedRows !== 1n || body === undefined)
    throw new RecordConflict(`record ${id} was changed meanwhile`);
  const did = withdraw ? 'withdrawn' : 'corrected';
  await db
    .insertInto('record_steps')
    .values({ chat, id, version: version + 1, did, member, at, body: text })
    .execute();
}
