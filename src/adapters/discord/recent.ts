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
