/** Work of one lane is done one after the other, whatever the others do: a member's second message waits for the first. */
export class Lanes {
  readonly #ends = new Map<string, Promise<unknown>>();

  run<T>(lane: string, work: () => Promise<T>): Promise<T> {
    const before = this.#ends.get(lane) ?? Promise.resolve();
    const done = before.then(work, work);
    this.#ends.set(lane, done);
    const clear = (): void => {
      if (this.#ends.get(lane) === done) this.#ends.delete(lane);
    };
    done.then(clear, clear);
    return done;
  }
}
