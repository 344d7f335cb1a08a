'use client';
/** Trying a calculation: the form is drawn from its own descriptor and starts with its example, the result beside it. */
import { useState } from 'react';
import type { Note, Refusal } from '#core/outcome.ts';
import { say } from '#messages/en/staff/calculations.ts';
import type { CalculationRow } from '../answers.ts';
import { client } from '../client.ts';
import { FormFrame } from '../forms/form-frame.tsx';
import { typedFrom } from '../forms/typed.ts';
import { ResultView } from './result-view.tsx';

interface Worked {
  readonly result: unknown;
  readonly notes: readonly Note[];
}

type Answer = ({ readonly ok: true } & Worked) | { readonly ok: false; readonly refused: readonly Refusal[] };

type Row = Pick<CalculationRow, 'id' | 'input' | 'result' | 'example'>;

/** A refusal takes the way of every other form: beside its field. */
const refusedAsError = (refused: readonly Refusal[]) =>
  Object.assign(new Error('refused'), { data: { refusals: refused } });

interface ResultProps {
  readonly row: Row;
  readonly heading: string;
  readonly worked: Worked;
}

const WorkedResult = ({ row, heading, worked }: ResultProps) => (
  <>
    <h2>{heading}</h2>
    <ResultView result={worked.result} fields={row.result} />
    {worked.notes.length > 0 ? (
      <ul className="notes">
        {worked.notes.map((note) => (
          <li key={`${note.code} ${note.text}`}>{note.text}</li>
        ))}
      </ul>
    ) : null}
  </>
);

/** A result never stands beside figures it was not worked out from. */
type Shown = 'example' | 'changed' | Worked;

interface TryFormProps {
  readonly row: Row;
  /** What the example answers; null where it gives no result. */
  readonly exampleAnswer: Worked | null;
}

const Beside = ({ row, exampleAnswer, shown }: TryFormProps & { readonly shown: Shown }) => {
  if (shown === 'changed') return <p className="soft">{say('changed')}</p>;
  if (shown !== 'example') return <WorkedResult row={row} heading="Result" worked={shown} />;
  return exampleAnswer ? (
    <WorkedResult row={row} heading={say('the-example-gives')} worked={exampleAnswer} />
  ) : (
    <p className="soft">{say('no-result')}</p>
  );
};

export const TryForm = ({ row, exampleAnswer }: TryFormProps) => {
  const [shown, setShown] = useState<Shown>('example');
  const send = async (input: Record<string, unknown>) => {
    const asked = client.clinician.calculations.tryOne.mutate({ id: row.id, input });
    const outcome = (await asked) as Answer;
    if (!outcome.ok) throw refusedAsError(outcome.refused);
    setShown(outcome);
  };
  return (
    <div className="side-by-side">
      <section className="stack">
        <h2>{say('try-it')}</h2>
        <p className="soft">{say('example-filled-in')}</p>
        <FormFrame
          prefix="try-"
          fields={row.input}
          start={typedFrom(row.example as Record<string, unknown>)}
          label="Calculate"
          busyLabel="Calculating…"
          taken=""
          send={send}
          onTyped={() => setShown('changed')}
        />
      </section>
      <section aria-live="polite" className="stack-close">
        <Beside row={row} exampleAnswer={exampleAnswer} shown={shown} />
      </section>
    </div>
  );
};
