/**
 * Rate limits as the platform tells them (documentation, Rate Limits): a bucket for each route and its first id, named
 * in headers; more than that is 429. 50 requests a second for a bot in all; interaction endpoints are outside of that.
 */
export interface BucketState {
  readonly headers: Readonly<Record<string, string>>;
  /** Seconds to wait, where the call went over. */
  readonly retryAfter: number | null;
  readonly global: boolean;
}

interface Window {
  until: number;
  used: number;
}

export class Buckets {
  readonly #windows = new Map<string, Window>();
  #all: Window = { until: 0, used: 0 };

  constructor(
    private readonly perBucket: number,
    private readonly bucketMs: number,
    private readonly perSecond: number,
  ) {}

  count(route: string, outsideGlobal: boolean, now = Date.now()): BucketState {
    if (this.#all.until <= now) this.#all = { until: now + 1000, used: 0 };
    if (!outsideGlobal) {
      this.#all.used += 1;
      if (this.#all.used > this.perSecond) {
        const retryAfter = (this.#all.until - now) / 1000;
        return { headers: { 'x-ratelimit-global': 'true' }, retryAfter, global: true };
      }
    }
    const known = this.#windows.get(route);
    const window = known && known.until > now ? known : { until: now + this.bucketMs, used: 0 };
    if (this.#windows.size > 2000) this.#windows.clear();
    this.#windows.set(route, window);
    window.used += 1;
    const after = (window.until - now) / 1000;
    const headers = {
      'x-ratelimit-limit': String(this.perBucket),
      'x-ratelimit-remaining': String(Math.max(0, this.perBucket - window.used)),
      'x-ratelimit-reset': String(window.until / 1000),
      'x-ratelimit-reset-after': after.toFixed(3),
      'x-ratelimit-bucket': bucketName(route),
    };
    return window.used > this.perBucket
      ? { headers: { ...headers, 'x-ratelimit-scope': 'user' }, retryAfter: after, global: false }
      : { headers, retryAfter: null, global: false };
  }
}

/** The same for every channel and guild: what differs is the major parameter, which the client knows. */
const bucketName = (route: string): string =>
  route
    .replace(/\d{5,}/g, 'id')
    .replace(/[^a-z]/gi, '')
    .slice(0, 40)
    .toLowerCase();
