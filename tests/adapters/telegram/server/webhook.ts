/** The platform as a caller: one update after the other, again until it is taken, with the secret in a header. */
import type { Updates } from './updates.ts';

export class Webhook {
  url = '';
  lastError: string | null = null;
  #secret: string | undefined;
  #running = false;
  readonly #updates: Updates;

  constructor(updates: Updates) {
    this.#updates = updates;
  }

  set(url: string, secret: string | undefined): void {
    this.url = url;
    this.#secret = secret;
    this.#updates.onNew = url === '' ? null : () => void this.#deliver();
    if (url !== '') void this.#deliver();
  }

  call(body: string, secret = this.#secret, url = this.url): Promise<Response> {
    return fetch(url, {
      method: 'POST',
      headers: {
        'content-type': 'application/json',
        ...(secret === undefined ? {} : { 'X-Telegram-Bot-Api-Secret-Token': secret }),
      },
      body,
    });
  }

  async #deliver(): Promise<void> {
    if (this.#running) return;
    this.#running = true;
    for (let tries = 0; this.url !== '' && tries < 20; ) {
      const [update] = this.#updates.waiting;
      if (update === undefined) break;
      try {
        const { status } = await this.call(JSON.stringify(update));
        if (status >= 200 && status < 300) {
          this.#updates.remove(update);
          continue;
        }
        this.lastError = `Wrong response from the webhook: ${status}`;
      } catch {
        this.lastError = 'Connection refused';
      }
      tries += 1;
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
    this.#running = false;
  }
}
