/** What was imported into a record, each file as one, and a file to take in. Nothing of it stands anywhere else on the desk. */
import { dayInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/exchange/imports.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { Imports } from '../answers.ts';
import { ImportForm } from './import-form.tsx';
import { importedInWords } from './imported-words.ts';
import { UndoImport } from './undo-import.tsx';

export interface ImportsScreenProps extends Imports {
  readonly patientId: string;
  readonly when: (instant: number) => string;
}

const standsInWords = (one: Imports['imports'][number], when: ImportsScreenProps['when']): string =>
  one.undone
    ? say('import-undone', { when: when(one.undone.at), by: one.undone.by, reason: one.undone.reason })
    : say('import-value', { count: one.rows, by: one.byName, left: one.leftOut });

const Usual = ({ patientId, usual }: Pick<ImportsScreenProps, 'patientId' | 'usual'>) =>
  usual.length === 0 ? null : (
    <section className="stack-close">
      <h2>{say('usual-title')}</h2>
      <DefinitionList
        rows={usual.map((one) => ({
          key: one.joint,
          name: one.joint.replaceAll('-', ' '),
          value: say('usual-line', {
            ...{ pain: one.medianPain, mornings: one.mornings },
            ...{ first: dayInWords(one.firstDay), last: dayInWords(one.lastDay) },
          }),
        }))}
      />
      <p>
        <a href={`/patients/${patientId}/review`}>{say('set-usual')}</a>
      </p>
    </section>
  );

const Rows = ({ rows }: Pick<ImportsScreenProps, 'rows'>) =>
  rows.length === 0 ? null : (
    <section className="stack-close">
      <h2>{say('rows')}</h2>
      <p className="soft">{say('rows-shown', { count: rows.length })}</p>
      <DataTable
        caption={say('rows')}
        hidesCaption
        columns={[
          { key: 'day', title: say('day') },
          { key: 'kind', title: say('entry-kind') },
          { key: 'entry', title: say('entry') },
        ]}
        rows={rows.map(({ id, day, kind, value }) => ({
          key: id,
          cells: [
            day === null ? say('no-day') : dayInWords(day),
            say(`kind.${kind}`),
            importedInWords(value),
          ],
        }))}
      />
    </section>
  );

export const ImportsScreen = ({ patientId, imports, rows, usual, when }: ImportsScreenProps) => (
  <div className="stack-wide">
    <h2>{say('title')}</h2>
    <p>{say('what')}</p>
    {imports.length === 0 ? <p>{say('nothing-yet')}</p> : null}
    {imports.length > 0 ? (
      <section className="stack-close">
        <h2>{say('imports')}</h2>
        <DefinitionList
          rows={imports.map((one) => ({
            key: one.id,
            name: say('import-name', { source: one.source, when: when(one.recordedAt) }),
            value: standsInWords(one, when),
            action: one.undone ? null : (
              <Disclosure summary={say('take-back')}>
                <UndoImport patientId={patientId} importId={one.id} />
              </Disclosure>
            ),
          }))}
        />
      </section>
    ) : null}
    <Usual patientId={patientId} usual={usual} />
    <Rows rows={rows} />
    <section className="stack">
      <h2>{say('take-a-file')}</h2>
      <ImportForm patientId={patientId} />
    </section>
  </div>
);
