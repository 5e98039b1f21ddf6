/** What every part of the adapter needs. */
import type { Bot } from 'grammy';
import type { Logger } from 'pino';
import type { Post } from '../post.ts';
import type { Admins } from './admin.ts';
import type { Edits } from './edits.ts';
import type { Fetch } from './file.ts';
import type { Hearing } from './hear.ts';
import type { Outgoing } from './outgoing.ts';

export interface Desk {
  readonly bot: Bot;
  readonly post: Post;
  readonly outgoing: Outgoing;
  readonly admins: Admins;
  readonly edits: Edits;
  readonly hearing: Hearing;
  readonly fetchFile: Fetch;
  readonly log: Logger;
}

/** Each update counts once, by this. */
export const claimOf = (desk: Desk, update: number): string => `telegram:${desk.hearing.me.id}:${update}`;
