/**
 * A statement is built by the query builder once and then run with other values: building it anew for every message
 * would cost more than running it. The values are marked in the build and put in their places at each run.
 */
import type { Compilable, CompiledQuery, Kysely, QueryResult, Transaction } from 'kysely';
import type { Tables } from './shapes.ts';

export type Database = Kysely<Tables> | Transaction<Tables>;

/** Stands for a value while the statement is built. */
class Mark {
  constructor(readonly name: string) {}
}

type Values = Readonly<Record<string, string | number | null>>;

export interface Prepared<V extends Values, Row> {
  run(db: Database, values: V): Promise<QueryResult<Row>>;
}

/** `build` gets a mark for each value; what it returns is compiled at the first run and kept for this kind of database. */
export function prepare<V extends Values, Row>(
  build: (db: Database, mark: { readonly [K in keyof V]: V[K] }) => Compilable<Row>,
): Prepared<V, Row> {
  const marks = new Map<string, Mark>();
  const mark = new Proxy({} as { readonly [K in keyof V]: V[K] }, {
    get(_, name) {
      const known = marks.get(String(name)) ?? new Mark(String(name));
      marks.set(String(name), known);
      return known;
    },
  });
  const known = new WeakMap<object, CompiledQuery<Row>>();
  return {
    run(db, values) {
      const dialect = db.getExecutor().adapter.constructor;
      let query = known.get(dialect);
      if (query === undefined) {
        query = build(db, mark).compile();
        known.set(dialect, query);
      }
      const parameters = query.parameters.map((one) => (one instanceof Mark ? values[one.name] : one));
      return db.executeQuery<Row>({ ...query, parameters });
    },
  };
}
