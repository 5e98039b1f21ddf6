/** The store over whichever database: the same statements, through one query builder. */
import type { Kysely, Transaction } from 'kysely';
import type { Posting } from '../contracts/ledger.ts';
import type { Rendered } from '../contracts/reply.ts';
import { emptyClub } from '../contracts/session.ts';
import { applyChanges, recordsIn } from './records.ts';
import { clubIn, renderedIn, sessionIn, type Tables } from './shapes.ts';
import type { Kept, Store } from './store.ts';

type Database = Kysely<Tables> | Transaction<Tables>;

/** A chat that was left before it was ever known to be joined. */
const neverJoined = '';

/** False: somebody claimed it before. */
async function claim(db: Database, id: string, at: string): Promise<boolean> {
  const { numInsertedOrUpdatedRows } = await db
    .insertInto('claims')
    .values({ claim: id, at })
    .onConflict((conflict) => conflict.column('claim').doNothing())
    .executeTakeFirst();
  return numInsertedOrUpdatedRows === 1n;
}

async function putOut(db: Database, posting: Posting, rendered: Rendered, at: string): Promise<void> {
  const { claim: id, platform, address } = posting;
  await db
    .insertInto('outbox')
    .values({ id, platform, address, body: JSON.stringify(rendered), at })
    .execute();
}

async function write(db: Database, { talk, at, session, club, changes = [] }: Kept): Promise<void> {
  const { chat, room, user } = talk;
  await applyChanges(db, chat, user, at, changes);
  if (session !== undefined) {
    const body = JSON.stringify(session);
    await db
      .insertInto('talks')
      .values({ chat, room, member: user, body, updated: at })
      .onConflict((conflict) =>
        conflict.columns(['chat', 'room', 'member']).doUpdateSet({ body, updated: at }),
      )
      .execute();
  }
  if (club !== undefined) {
    const { facts, ...others } = club;
    const row = { facts: JSON.stringify(facts), settings: JSON.stringify(others) };
    await db
      .insertInto('clubs')
      .values({ chat, ...row })
      .onConflict((conflict) => conflict.column('chat').doUpdateSet(row))
      .execute();
  }
}

export function keeping(db: Kysely<Tables>): Store {
  return {
    records: recordsIn(db),

    async loadSession({ chat, room, user }) {
      const row = await db
        .selectFrom('talks')
        .select('body')
        .where('chat', '=', chat)
        .where('room', '=', room)
        .where('member', '=', user)
        .executeTakeFirst();
      return row === undefined ? null : sessionIn(row.body);
    },

    async loadClub(chat) {
      const row = await db
        .selectFrom('clubs')
        .select(['facts', 'settings'])
        .where('chat', '=', chat)
        .executeTakeFirst();
      return row === undefined ? emptyClub : clubIn(row);
    },

    async keep(kept) {
      const { posting, rendered, at, changes = [] } = kept;
      if (posting === undefined && changes.length === 0) {
        await write(db, kept);
        return true;
      }
      return db.transaction().execute(async (within) => {
        if (posting !== undefined && !(await claim(within, posting.claim, at))) return false;
        await write(within, kept);
        if (posting !== undefined && rendered) await putOut(within, posting, rendered, at);
        return true;
      });
    },

    async seen(id) {
      const row = await db.selectFrom('claims').select('claim').where('claim', '=', id).executeTakeFirst();
      return row !== undefined;
    },

    async delivered(id) {
      await db.deleteFrom('outbox').where('id', '=', id).execute();
    },

    async undelivered(platform) {
      const rows = await db
        .selectFrom('outbox')
        .select(['id', 'address', 'body'])
        .where('platform', '=', platform)
        .orderBy('at')
        .execute();
      return rows.flatMap(({ id, address, body }) => {
        const rendered = renderedIn(body);
        return rendered === null ? [] : [{ id, address, rendered, again: true }];
      });
    },

    async joined(chat, platform, at) {
      const { numInsertedOrUpdatedRows } = await db
        .insertInto('chats')
        .values({ chat, platform, joined: at, paused: 0 })
        .onConflict((conflict) => conflict.column('chat').doNothing())
        .executeTakeFirst();
      if (numInsertedOrUpdatedRows === 1n) return true;
      await db.updateTable('chats').set({ paused: 0 }).where('chat', '=', chat).execute();
      const { numUpdatedRows } = await db
        .updateTable('chats')
        .set({ joined: at })
        .where('chat', '=', chat)
        .where('joined', '=', neverJoined)
        .executeTakeFirst();
      return numUpdatedRows === 1n;
    },

    async left(chat) {
      const [platform = ''] = chat.split(':');
      await db
        .insertInto('chats')
        .values({ chat, platform, joined: neverJoined, paused: 1 })
        .onConflict((conflict) => conflict.column('chat').doUpdateSet({ paused: 1 }))
        .execute();
    },

    async isPaused(chat) {
      const row = await db.selectFrom('chats').select('paused').where('chat', '=', chat).executeTakeFirst();
      return row?.paused === 1;
    },

    async moved(from, to) {
      await db.transaction().execute(async (within) => {
        for (const table of ['talks', 'clubs', 'chats', 'records', 'record_steps'] as const) {
          // The new id may have been spoken to already: what was there before the move is what the members know.
          const old = await within
            .selectFrom(table)
            .select('chat')
            .where('chat', '=', from)
            .executeTakeFirst();
          if (old === undefined) continue;
          await within.deleteFrom(table).where('chat', '=', to).execute();
          await within.updateTable(table).set({ chat: to }).where('chat', '=', from).execute();
        }
      });
    },

    post: (posting, rendered, at) =>
      db.transaction().execute(async (within) => {
        if (!(await claim(within, posting.claim, at))) return false;
        await putOut(within, posting, rendered, at);
        return true;
      }),

    async forgetClaims(before) {
      await db.deleteFrom('claims').where('at', '<', before).execute();
    },

    close: () => db.destroy(),
  };
}
