/** The triggers of the file, written from the marks of the append-only tables. The migration tool writes none. */
import { getTableName } from 'drizzle-orm';
import { appendOnlyTables } from './kit.ts';
import './schema.ts';

export interface Trigger {
  readonly name: string;
  /** As the file's catalogue shows it. */
  readonly sql: string;
}

/** Two for each append-only table, in order of name. */
export const triggersOfSchema = (): readonly Trigger[] =>
  [...appendOnlyTables]
    .flatMap(([table, keptWhile]) => {
      const name = getTableName(table);
      return (['update', 'delete'] as const).map((act) => {
        const when = act === 'delete' && keptWhile !== null ? ` WHEN ${keptWhile}` : '';
        const body = `BEGIN SELECT RAISE(ABORT, '${name} is append-only'); END`;
        return {
          name: `${name}_no_${act}`,
          sql: `CREATE TRIGGER ${name}_no_${act} BEFORE ${act.toUpperCase()} ON ${name}${when} ${body}`,
        };
      });
    })
    .sort((one, other) => (one.name < other.name ? -1 : 1));
