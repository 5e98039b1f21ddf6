/**
 * The gateway as documented (Gateway, Connection lifecycle): hello, identify, ready, guild creates, heartbeats, resume
 * with replay, reconnect, invalid session and close codes. Uncompressed, or compressed where the client asks.
 */

import type { Server } from 'node:http';
import { constants, createDeflate, type Deflate, deflateSync } from 'node:zlib';
import { type WebSocket, WebSocketServer } from 'ws';
import { z } from 'zod';

/** GUILD_PRESENCES, GUILD_MEMBERS, MESSAGE_CONTENT. */
const privileged = (1 << 1) | (1 << 8) | (1 << 15);

const payloadSchema = z.looseObject({ op: z.int(), d: z.unknown() });
const identifySchema = z.looseObject({
  token: z.string(),
  intents: z.int(),
  compress: z.boolean().optional(),
  shard: z.tuple([z.int(), z.int()]).optional(),
});
const resumeSchema = z.looseObject({ token: z.string(), session_id: z.string(), seq: z.int() });

interface Dispatched {
  readonly t: string;
  readonly s: number;
  readonly d: unknown;
}

export interface Session {
  readonly id: string;
  readonly shard: readonly [number, number];
  readonly sent: Dispatched[];
  sequence: number;
  line: Line | null;
}

interface Line {
  readonly socket: WebSocket;
  readonly stream: Deflate | null;
  packed: boolean;
}

export interface GatewayHost {
  readonly token: string;
  readonly url: string;
  readonly breaches: string[];
  ready(session: Session): { readonly ready: object; readonly guilds: readonly { readonly id: string }[] };
}

export class Gateway {
  readonly sessions: Session[] = [];
  readonly identifies: { readonly intents: number; readonly shard: readonly [number, number] }[] = [];
  resumes = 0;
  heartbeats = 0;
  /** No answer to heartbeats any more: what a half-dead line looks like. */
  deaf = false;
  heartbeatMs = 41_250;
  readonly #sockets: WebSocketServer;

  constructor(
    private readonly host: GatewayHost,
    server: Server,
  ) {
    this.#sockets = new WebSocketServer({ server, path: '/gateway' });
    this.#sockets.on('connection', (socket, request) => {
      const wantsStream = (request.url ?? '').includes('compress=zlib-stream');
      const stream = wantsStream ? createDeflate() : null;
      const line: Line = { socket, stream, packed: false };
      stream?.on('data', (chunk: Buffer) => socket.send(chunk));
      socket.on('message', (data) => this.#hear(line, String(data)));
      socket.on('error', () => undefined);
      this.#send(line, { op: 10, d: { heartbeat_interval: this.heartbeatMs }, s: null, t: null });
    });
  }

  #send(line: Line, payload: object): void {
    const text = JSON.stringify(payload);
    if (line.socket.readyState !== line.socket.OPEN) return;
    if (line.stream) {
      line.stream.write(text);
      line.stream.flush(constants.Z_SYNC_FLUSH);
    } else if (line.packed) line.socket.send(deflateSync(text));
    else line.socket.send(text);
  }

  #hear(line: Line, text: string): void {
    const { op, d } = payloadSchema.parse(JSON.parse(text));
    const session = this.sessions.find((one) => one.line === line);
    if (op === 1) {
      this.heartbeats += 1;
      if (!this.deaf) this.#send(line, { op: 11 });
    } else if (op === 2) this.#identify(line, d);
    else if (op === 6) this.#resume(line, d);
    else if (session === undefined) line.socket.close(4003);
    else this.host.breaches.push(`gateway: opcode ${op} was not needed`);
  }

  #identify(line: Line, d: unknown): void {
    const { token, intents, compress = false, shard = [0, 1] } = identifySchema.parse(d);
    if (token !== this.host.token) {
      line.socket.close(4004);
      return;
    }
    if ((intents & privileged) !== 0) {
      this.host.breaches.push(`identify: privileged intents ${intents & privileged}`);
      line.socket.close(4014);
      return;
    }
    line.packed = compress;
    this.identifies.push({ intents, shard });
    const session: Session = {
      id: `session-${this.sessions.length}-${Date.now()}`,
      shard,
      sent: [],
      sequence: 0,
      line,
    };
    this.sessions.push(session);
    const { ready, guilds } = this.host.ready(session);
    this.dispatchTo(session, 'READY', {
      ...ready,
      session_id: session.id,
      resume_gateway_url: this.host.url,
      shard,
      guilds: guilds.map(({ id }) => ({ id, unavailable: true })),
    });
    for (const guild of guilds) this.dispatchTo(session, 'GUILD_CREATE', guild);
  }

  #resume(line: Line, d: unknown): void {
    const { token, session_id, seq } = resumeSchema.parse(d);
    if (token !== this.host.token) {
      line.socket.close(4004);
      return;
    }
    const session = this.sessions.find(({ id }) => id === session_id);
    if (session === undefined) {
      this.#send(line, { op: 9, d: false });
      return;
    }
    session.line = line;
    this.resumes += 1;
    for (const { t, s, d: data } of session.sent.filter(({ s }) => s > seq))
      this.#send(line, { op: 0, t, s, d: data });
    this.dispatchTo(session, 'RESUMED', {});
  }

  dispatchTo(session: Session, t: string, d: unknown): void {
    session.sequence += 1;
    const sent = { t, s: session.sequence, d };
    session.sent.push(sent);
    if (session.sent.length > 500) session.sent.shift();
    if (session.line) this.#send(session.line, { op: 0, ...sent });
  }

  /** To every live session that serves this guild; direct messages come to shard 0 only. */
  dispatch(t: string, d: unknown, guild: string | undefined): void {
    for (const session of this.sessions) {
      const [index, count] = session.shard;
      const home = guild === undefined ? 0 : Number((BigInt(guild) >> 22n) % BigInt(count));
      if (home === index) this.dispatchTo(session, t, d);
    }
  }

  /** The line breaks; the session can be resumed. Without a code the socket is cut without a word. */
  breakLine(code?: number): void {
    for (const { line } of this.sessions)
      if (line) code === undefined ? line.socket.terminate() : line.socket.close(code);
  }

  tell(op: 7): void;
  tell(op: 9, d: boolean): void;
  tell(op: number, d: unknown = null): void {
    for (const { line } of this.sessions) if (line) this.#send(line, { op, d, s: null, t: null });
  }

  /** Sessions are forgotten: a resume is answered with an invalid session. */
  forget(): void {
    this.sessions.length = 0;
  }

  close(): Promise<void> {
    for (const socket of this.#sockets.clients) socket.terminate();
    return new Promise((resolve) => this.#sockets.close(() => resolve()));
  }
}
