/** Names and values in lines, each with room for one action such as "Change". */
import type { ReactNode } from 'react';

export interface Definition {
  readonly key: string;
  readonly name: ReactNode;
  /** What is known; a missing value is said in words, never left blank. */
  readonly value: ReactNode;
  readonly action?: ReactNode;
}

export const DefinitionList = ({ rows }: { readonly rows: readonly Definition[] }) => (
  <dl className="facts">
    {rows.map((row) => (
      <div className="facts-row" key={row.key}>
        <dt>{row.name}</dt>
        <dd>{row.value}</dd>
        {row.action ? <dd className="facts-action">{row.action}</dd> : null}
      </div>
    ))}
  </dl>
);
