'use client';
/** Trying a calculation: the form is drawn from its own descriptor and starts with its example. */
import { useState } from 'react';
import type { Note, Refusal } from '#core/outcome.ts';
import type { CalculationRow } from '../answers.ts';
import { client } from '../client.ts';
import { FormFrame } from '../forms/form-frame.tsx';
import { typedFrom } from '../forms/typed.ts';
import { ResultView } from './result-view.tsx';

type Answer =
  | { readonly ok: true; readonly result: unknown; readonly notes: readonly Note[] }
  | { readonly ok: false; readonly refused: readonly Refusal[] };

/** A refusal takes the way of every other form: beside its field. */
const refusedAsError = (refused: readonly Refusal[]) =>
  Object.assign(new Error('refused'), { data: { refusals: refused } });

export const TryForm = ({
  row,
}: {
  readonly row: Pick<CalculationRow, 'id' | 'input' | 'result' | 'example'>;
}) => {
  const [answer, setAnswer] = useState<Extract<Answer, { ok: true }> | null>(null);
  return (
    <div className="stack">
      <FormFrame
        prefix="try-"
        fields={row.input}
        start={typedFrom(row.example as Record<string, unknown>)}
        label="Calculate"
        busyLabel="Calculating…"
        taken=""
        send={async (input) => {
          setAnswer(null);
          const outcome = (await client.clinician.calculations.tryOne.mutate({
            id: row.id,
            input,
          })) as Answer;
          if (!outcome.ok) throw refusedAsError(outcome.refused);
          setAnswer(outcome);
        }}
      />
      <section aria-live="polite" className="stack-close">
        {answer ? (
          <>
            <h3>Result</h3>
            <ResultView result={answer.result} fields={row.result} />
            {answer.notes.length > 0 ? (
              <ul className="notes">
                {answer.notes.map((note) => (
                  <li key={`${note.code} ${note.text}`}>{note.text}</li>
                ))}
              </ul>
            ) : null}
          </>
        ) : null}
      </section>
    </div>
  );
};
