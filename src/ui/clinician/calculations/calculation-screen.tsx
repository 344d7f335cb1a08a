/** One calculation: a form to try it with its result beside it; below, what it takes and who says so. */
import { calculationById } from '#core/calculations/registry.ts';
import { say } from '#messages/en/staff/calculations.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import type { CalculationRow } from '../answers.ts';
import { CitationNote } from '../support-note.tsx';
import { plainNameOf } from './calculations-screen.tsx';
import { InputTable } from './input-table.tsx';
import { TryForm } from './try-form.tsx';

export const CalculationScreen = ({ row }: { readonly row: CalculationRow }) => {
  const { id, title, input, result, example, citations } = row;
  const outcome = calculationById(id)?.calculate(example);
  return (
    <div className="stack-wide">
      <div className="stack-close">
        <PageHeading caption={<a href="/calculations">Calculations</a>}>{title}</PageHeading>
        <p className="lead">{plainNameOf(id)}.</p>
      </div>
      <TryForm
        row={{ id, input, result, example }}
        exampleAnswer={outcome?.ok ? { result: outcome.result, notes: outcome.notes } : null}
      />
      <Disclosure summary={say('inputs', { count: input.length })}>
        <InputTable fields={input} />
      </Disclosure>
      <section className="stack-close">
        <h2>Sources</h2>
        {citations.map((citation) => (
          <CitationNote key={`${citation.source} ${citation.locator} ${citation.mark}`} citation={citation} />
        ))}
      </section>
      <p className="soft small">{say('id', { id })}</p>
    </div>
  );
};
