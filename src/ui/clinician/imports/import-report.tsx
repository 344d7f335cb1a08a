/** What was found in a file before anything of it is taken. */
import { dayInWords } from '#core/review/plain-words.ts';
import type { QuestionId } from '#exchange/import/questions.ts';
import { say } from '#messages/en/staff/exchange/imports.ts';
import { CheckField } from '#ui/design-system/checkbox-group.tsx';
import { DataTable } from '#ui/design-system/data-table.tsx';
import type { LookedThrough } from '../answers.ts';

export interface ImportReportProps {
  readonly looked: LookedThrough;
  readonly confirmed: readonly QuestionId[];
  readonly onConfirm: (id: QuestionId, isRight: boolean) => void;
}

const Columns = ({ mapped, notTaken }: Pick<LookedThrough, 'mapped' | 'notTaken'>) => (
  <ul>
    {mapped.map(({ name, heading, isGuessed }) => (
      <li key={name}>{say(isGuessed ? 'column-found' : 'column-holds', { name, heading })}</li>
    ))}
    {notTaken.length > 0 ? <li>{say('columns-not-taken', { headings: notTaken.join(', ') })}</li> : null}
  </ul>
);

const Faults = ({ faults, report }: Pick<LookedThrough, 'faults' | 'report'>) =>
  faults.length === 0 ? null : (
    <>
      <DataTable
        caption={say('not-taken-rows')}
        columns={[
          { key: 'row', title: say('row'), isNumber: true },
          { key: 'at', title: say('where') },
          { key: 'found', title: say('found') },
          { key: 'write', title: say('what-to-write') },
        ]}
        rows={faults.map(({ place, at, found, write }, index) => ({
          key: String(index),
          cells: [place, at, found, write],
        }))}
      />
      {report.faultCount > faults.length ? (
        <p>{say('more', { count: report.faultCount - faults.length })}</p>
      ) : null}
    </>
  );

const Questions = ({ looked, confirmed, onConfirm }: ImportReportProps) =>
  looked.report.questions.length === 0 ? null : (
    <section className="stack-close">
      <h3>{say('asked-before')}</h3>
      {looked.report.questions.map(({ id, about, count, examples }) => (
        <div key={id}>
          <p>
            {about} ({count})
          </p>
          <ul>
            {examples.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
          <CheckField
            name={`confirm-${id}`}
            label={say('yes-right')}
            isChecked={confirmed.includes(id)}
            onSwitch={(isRight) => onConfirm(id, isRight)}
          />
        </div>
      ))}
    </section>
  );

export const ImportReport = (props: ImportReportProps) => {
  const { looked } = props;
  const { taken, firstDay, lastDay } = looked.report;
  return (
    <section className="stack-close">
      <h3 role="status">{say('would-take', { count: taken })}</h3>
      {firstDay && lastDay ? (
        <p>{say('from-to', { first: dayInWords(firstDay), last: dayInWords(lastDay) })}</p>
      ) : null}
      <Columns {...looked} />
      <Questions {...props} />
      <Faults {...looked} />
      {looked.why.length > 0 ? (
        <>
          <h3>{say('in-the-way')}</h3>
          <ul>
            {looked.why.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
        </>
      ) : null}
    </section>
  );
};
