/** The store over whichever database: the same statements, through one query builder. */
import type { Kysely } from 'kysely';
import type { Posting } from '../contracts/ledger.ts';
import type { Rendered } from '../contracts/reply.ts';
import { emptyClub } from '../contracts/session.ts';
import { type Database, prepare } from './once.ts';
import { applyChanges, recordsIn } from './records.ts';
import { clubIn, renderedIn, sessionIn, type Tables } from './shapes.ts';
import type { Kept, Store } from './store.ts';

/** A chat that was left before it was ever known to be joined. */
const neverJoined = '';

const theClaim = prepare((db, mark: { id: string; at: string }) =>
  db
    .insertInto('claims')
    .values({ claim: mark.id, at: mark.at })
    .onConflict((conflict) => conflict.column('claim').doNothing()),
);
const theOutgoing = prepare(
  (db, mark: { id: string; platform: string; address: string; body: string; at: string }) =>
    db.insertInto('outbox').values({
      id: mark.id,
      platform: mark.platform,
      address: mark.address,
      body: mark.body,
      at: mark.at,
    }),
);
const theTalk = prepare(
  (db, mark: { chat: string; room: string; member: string; body: string; updated: string }) =>
    db
      .insertInto('talks')
      .values({
        chat: mark.chat,
        room: mark.room,
        member: mark.member,
        body: mark.body,
        updated: mark.updated,
      })
      .onConflict((conflict) =>
        conflict.columns(['chat', 'room', 'member']).doUpdateSet({ body: mark.body, updated: mark.updated }),
      ),
);
const talkOf = prepare((db, mark: { chat: string; room: string; member: string }) =>
  db
    .selectFrom('talks')
    .select('body')
    .where('chat', '=', mark.chat)
    .where('room', '=', mark.room)
    .where('member', '=', mark.member),
);
const clubOf = prepare((db, mark: { chat: string }) =>
  db.selectFrom('clubs').select(['facts', 'settings']).where('chat', '=', mark.chat),
);
const claimOf = prepare((db, mark: { id: string }) =>
  db.selectFrom('claims').select('claim').where('claim', '=', mark.id),
);
const notOutgoing = prepare((db, mark: { id: string }) => db.deleteFrom('outbox').where('id', '=', mark.id));

/** False: somebody claimed it before. */
async function claim(db: Database, id: string, at: string): Promise<boolean> {
  const { numAffectedRows } = await theClaim.run(db, { id, at });
  return numAffectedRows === 1n;
}

async function putOut(db: Database, posting: Posting, rendered: Rendered, at: string): Promise<void> {
  const { claim: id, platform, address } = posting;
  await theOutgoing.run(db, { id, platform, address, body: JSON.stringify(rendered), at });
}

async function write(db: Database, { talk, at, session, club, changes = [] }: Kept): Promise<void> {
  const { chat, room, user } = talk;
  await applyChanges(db, chat, user, at, changes);
  if (session !== undefined) {
    const body = JSON.stringify(session);
    await theTalk.run(db, { chat, room, member: user, body, updated: at });
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
      const [row] = (await talkOf.run(db, { chat, room, member: user })).rows;
      return row === undefined ? null : sessionIn(row.body);
    },

    async loadClub(chat) {
      const [row] = (await clubOf.run(db, { chat })).rows;
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
      return (await claimOf.run(db, { id })).rows.length > 0;
    },

    async delivered(id) {
      await notOutgoing.run(db, { id });
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
