/** The last ids that were seen, up to a number. */
export class Recent {
  readonly #seen = new Set<string>();

  constructor(private readonly most: number) {}

  isNew(id: string): boolean {
    if (this.#seen.has(id)) return false;
    this.#seen.add(id);
    if (this.#seen.size > this.most) {
      const [oldest] = this.#seen;
      if (oldest !== undefined) this.#seen.delete(oldest);
    }
    return true;
  }
}

/** The language in which a member has the platform: commands tell it, plain messages do not. */
export class LastLocales {
  readonly #known = new Map<string, string>();

  constructor(private readonly most: number) {}

  of(user: string): string | undefined {
    return this.#known.get(user);
  }

  note(user: string, locale: string): void {
    this.#known.delete(user);
    this.#known.set(user, locale);
    if (this.#known.size <= this.most) return;
    const [oldest] = this.#known.keys();
    if (oldest !== undefined) this.#known.delete(oldest);
  }
}
