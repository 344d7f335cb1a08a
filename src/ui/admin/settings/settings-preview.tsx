/** What changed settings would have decided on past records, said before they are saved. */
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/administration/settings.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';

import { type PreviewWeek, PreviewWeeks } from './preview-weeks.tsx';

export interface Preview {
  /** Sent with what is saved, as proof of having looked. */
  readonly lookedAt: string;
  readonly since: string;
  readonly looked: number;
  readonly differing: number;
  readonly bolder: number;
  readonly moreCautious: number;
  readonly patients: number;
  readonly weeks: readonly PreviewWeek[];
  readonly lines: readonly {
    readonly patientId: string;
    readonly name: string;
    readonly joint: string;
    readonly day: string;
    readonly before: string;
    readonly after: string;
  }[];
}

const Lines = ({ lines }: Pick<Preview, 'lines'>) => (
  <Disclosure summary={say('differing')}>
    <DataTable
      caption={say('differing')}
      columns={[
        { key: 'who', title: 'Patient' },
        { key: 'joint', title: 'Joint' },
        { key: 'day', title: 'Day' },
        { key: 'before', title: 'Was' },
        { key: 'after', title: say('would-be') },
      ]}
      rows={lines.map((line) => ({
        key: `${line.patientId} ${line.joint} ${line.day} ${line.before} ${line.after}`,
        cells: [line.name, jointInWords(line.joint as never), dayInWords(line.day), line.before, line.after],
      }))}
    />
  </Disclosure>
);

export const SettingPreview = ({ preview }: { readonly preview: Preview }) => {
  const { looked, differing, bolder, moreCautious, patients, since, lines, weeks } = preview;
  const other = differing - bolder - moreCautious;
  return (
    <div className="stack-close">
      <h4>{say('would-change')}</h4>
      <p>
        {say('checked-again', { looked, date: dayInWords(since) })}{' '}
        <strong>
          {differing === 0
            ? say('none-differ')
            : say('differ', { differing, patients, bolder, cautious: moreCautious, other })}
        </strong>
      </p>
      {bolder + moreCautious > 0 ? <PreviewWeeks weeks={weeks} /> : null}
      <p className="soft small">{say('collecting-note')}</p>
      {lines.length > 0 ? <Lines lines={lines} /> : null}
    </div>
  );
};
