/** Names in an order in which each stands after those that it needs, or the circle that forbids it. */
export type Order =
  | { readonly ok: true; readonly order: readonly string[] }
  | { readonly ok: false; readonly circle: readonly string[] };

export function inOrder(names: Iterable<string>, needs: (name: string) => Iterable<string>): Order {
  const done = new Set<string>();
  const open: string[] = [];
  let circle: readonly string[] | null = null;
  const visit = (name: string): void => {
    if (circle !== null || done.has(name)) return;
    if (open.includes(name)) {
      circle = [...open.slice(open.indexOf(name)), name];
      return;
    }
    open.push(name);
    for (const needed of needs(name)) visit(needed);
    open.pop();
    done.add(name);
  };
  for (const name of names) visit(name);
  return circle === null ? { ok: true, order: [...done] } : { ok: false, circle };
}

/** Everything reachable from a name, without the name itself unless it lies on a circle. */
export function reachable(name: string, next: (name: string) => Iterable<string>): ReadonlySet<string> {
  const seen = new Set<string>();
  const waiting = [...next(name)];
  for (let one = waiting.pop(); one !== undefined; one = waiting.pop()) {
    if (seen.has(one)) continue;
    seen.add(one);
    waiting.push(...next(one));
  }
  return seen;
}
