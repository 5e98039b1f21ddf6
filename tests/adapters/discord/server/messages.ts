/** Messages that were posted, by the bot and by people. */
import type { SentFile } from './exchange.ts';
import { snowflake } from './ids.ts';
import type { SentMessage, SentRow } from './limits.ts';

export interface Posted {
  readonly id: string;
  readonly channel: string;
  readonly author: string;
  readonly byBot: boolean;
  readonly private: boolean;
  readonly replyTo: string | null;
  readonly nonce: string | null;
  readonly via: 'channel' | 'callback' | 'follow-up' | 'original' | 'person';
  content: string;
  components: readonly SentRow[];
  files: readonly (SentFile & { readonly description: string })[];
  edits: number;
  deleted: boolean;
}

export class Messages {
  readonly all: Posted[] = [];

  post(
    body: SentMessage,
    files: readonly SentFile[],
    rest: Pick<Posted, 'channel' | 'author' | 'byBot' | 'private' | 'via'>,
  ): Posted {
    const posted: Posted = {
      id: snowflake(),
      replyTo: body.message_reference?.message_id ?? null,
      nonce: body.nonce === undefined ? null : String(body.nonce),
      content: '',
      components: [],
      files: [],
      edits: 0,
      deleted: false,
      ...rest,
    };
    this.write(posted, body, files);
    this.all.push(posted);
    return posted;
  }

  /** Fields that are not sent stay as they are. */
  edit(posted: Posted, body: SentMessage, files: readonly SentFile[]): void {
    this.write(posted, body, files);
    posted.edits += 1;
  }

  private write(posted: Posted, body: SentMessage, files: readonly SentFile[]): void {
    if (body.content !== undefined) posted.content = body.content;
    if (body.components !== undefined) posted.components = body.components;
    if (files.length > 0)
      posted.files = files.map((file, index) => ({
        ...file,
        description: body.attachments?.[index]?.description ?? '',
      }));
  }

  byId(id: string): Posted | undefined {
    return this.all.find((one) => one.id === id && !one.deleted);
  }
}
