/**
 * A Bot API server for tests, on the wire: written from the reference (core.telegram.org/bots/api). It checks every
 * call against what the reference allows and keeps the breaches. What it cannot show: the platform's true limits and
 * timing, and how its apps draw a message.
 */
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { readParams } from './body.ts';
import { commit, Faults } from './faults.ts';
import { Files, handlers, type Pressed } from './handlers.ts';
import { isMethod, type Method, methods, type Params } from './limits.ts';
import { Updates } from './updates.ts';
import { Webhook } from './webhook.ts';
import { bot, Refused, World } from './world.ts';

export interface Call {
  readonly method: string;
  readonly params: Readonly<Record<string, unknown>>;
  /** Milliseconds, monotonic. */
  readonly at: number;
}

/** Looks like a real one and is none. */
export const testToken = '7000000001:AAtest-token_which-must-never-be-seen-in-a-log';

export class TelegramServer {
  readonly world = new World();
  readonly updates = new Updates();
  readonly webhook = new Webhook(this.updates);
  readonly faults = new Faults();
  readonly files = new Files();
  readonly pressed = new Map<string, Pressed>();
  readonly commands = new Map<string, Params<'setMyCommands'>['commands']>();
  readonly descriptions = new Map<string, string>();
  readonly inlineAnswers = new Map<string, Omit<Params<'answerInlineQuery'>, 'inline_query_id'>>();
  readonly calls: Call[] = [];
  readonly breaches: string[] = [];
  /** As it is with privacy mode switched off, or as an administrator: every message of a group arrives. */
  readsAll = true;
  /** Told of each message that the bot sent. */
  onSent: ((chat: number) => void) | null = null;
  /** For long runs: does not keep the calls. */
  keepCalls = true;
  /** Serves a file without an end, slowly: bytes a second. */
  slowFiles: number | null = null;
  readonly #watchers = new Set<() => void>();
  readonly #http = createServer((request, response) => void this.#serve(request, response));

  async start(): Promise<this> {
    await new Promise<void>((resolve) => this.#http.listen(0, '127.0.0.1', resolve));
    return this;
  }

  get root(): string {
    return `http://127.0.0.1:${(this.#http.address() as AddressInfo).port}`;
  }

  async stop(): Promise<void> {
    this.webhook.set('', undefined);
    this.#http.closeAllConnections();
    await new Promise((resolve) => this.#http.close(resolve));
  }

  me(): object {
    return {
      ...bot,
      can_join_groups: true,
      can_read_all_group_messages: this.readsAll,
      supports_inline_queries: true,
      can_connect_to_business: false,
      has_main_web_app: false,
    };
  }

  /** Tells whoever waits in `until` to look again. */
  changed(): void {
    for (const look of [...this.#watchers]) look();
  }

  /** Waits until something is true of the world. */
  until(what: string, holds: () => boolean, milliseconds = 8000): Promise<void> {
    return new Promise((resolve, reject) => {
      const end = (): void => {
        clearTimeout(timer);
        clearInterval(again);
        this.#watchers.delete(look);
      };
      const look = (): void => {
        if (!holds()) return;
        end();
        resolve();
      };
      const timer = setTimeout(() => {
        end();
        reject(new Error(`waited in vain until ${what}`));
      }, milliseconds);
      const again = setInterval(look, 20);
      this.#watchers.add(look);
      look();
    });
  }

  callsOf(method: Method): readonly Call[] {
    return this.calls.filter((call) => call.method === method);
  }

  async #serve(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const [, place = '', name = '', ...rest] = (request.url ?? '').split('/');
    try {
      if (place === 'file') this.#file(response, name, rest.join('/'));
      else if (place !== `bot${testToken}`) this.#refuse(response, new Refused(401, 'Unauthorized'));
      else await this.#call(name, await readParams(request), response);
    } catch (error) {
      if (response.headersSent || response.destroyed) return;
      if (!(error instanceof Refused)) this.breaches.push(`${name}: ${(error as Error).message}`);
      this.#refuse(
        response,
        error instanceof Refused ? error : new Refused(400, `Bad Request: ${(error as Error).message}`),
      );
    } finally {
      this.changed();
    }
  }

  async #call(name: string, params: Record<string, unknown>, response: ServerResponse): Promise<void> {
    if (this.keepCalls) this.calls.push({ method: name, params, at: performance.now() });
    if (!isMethod(name)) throw new Error('no such method');
    const fault = this.faults.next(name, params);
    if (fault !== null && fault.after !== true) return commit(fault, response);
    const read = methods[name].safeParse(params);
    if (!read.success)
      throw new Error(
        read.error.issues.map(({ path, message }) => `${path.join('.')}: ${message}`).join('; '),
      );
    const result =
      name === 'getUpdates'
        ? await this.#poll(read.data as Params<'getUpdates'>, response)
        : this.#run(name, read.data);
    if (fault !== null) return commit(fault, response);
    response.writeHead(200, { 'content-type': 'application/json' }).end(JSON.stringify({ ok: true, result }));
  }

  #run<M extends Method>(name: M, params: unknown): unknown {
    return handlers[name](this, params as Params<M>);
  }

  #poll(params: Params<'getUpdates'>, response: ServerResponse): Promise<unknown> {
    if (this.webhook.url !== '')
      throw new Refused(
        409,
        "Conflict: can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook first",
      );
    const { offset = 0, limit = 100, timeout = 0, allowed_updates } = params;
    this.updates.allow(allowed_updates);
    return this.updates.poll(offset, limit, timeout, (leave) => response.on('close', leave));
  }

  #file(response: ServerResponse, token: string, path: string): void {
    const bytes = token === `bot${testToken}` ? this.files.at(decodeURIComponent(path)) : undefined;
    if (bytes === undefined) {
      this.#refuse(response, new Refused(404, 'Not Found'));
      return;
    }
    if (this.slowFiles === null) {
      response.end(bytes);
      return;
    }
    const each = Math.max(1, Math.floor(this.slowFiles / 20));
    const drip = setInterval(() => response.write(Buffer.alloc(each)), 50);
    response.on('close', () => clearInterval(drip));
  }

  #refuse(response: ServerResponse, { code, message, parameters }: Refused): void {
    response.writeHead(code, { 'content-type': 'application/json' }).end(
      JSON.stringify({
        ok: false,
        error_code: code,
        description: message,
        ...(parameters === undefined ? {} : { parameters }),
      }),
    );
  }
}
