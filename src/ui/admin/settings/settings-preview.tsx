/** What other numbers would have decided. */
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/administration.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';

export interface Preview {
  readonly since: string;
  readonly looked: number;
  readonly differing: number;
  readonly bolder: number;
  readonly moreCautious: number;
  readonly patients: number;
  readonly lines: readonly {
    readonly patientId: string;
    readonly name: string;
    readonly joint: string;
    readonly day: string;
    readonly before: string;
    readonly after: string;
  }[];
}

export const SettingPreview = ({ preview }: { readonly preview: Preview }) => (
  <div className="stack">
    <h2>{say('would-change')}</h2>
    <p>
      {say('checked-again', { count: preview.looked, date: dayInWords(preview.since) })}{' '}
      {preview.differing === 0
        ? say('none-differ')
        : say('differ', {
            differing: preview.differing,
            patients: preview.patients,
            bolder: preview.bolder,
            cautious: preview.moreCautious,
          })}
    </p>
    <p className="soft">{say('checked-note')}</p>
    {preview.lines.length > 0 ? (
      <DataTable
        caption={say('differing')}
        columns={[
          { key: 'who', title: 'Patient' },
          { key: 'joint', title: 'Joint' },
          { key: 'day', title: 'Day' },
          { key: 'before', title: 'Was' },
          { key: 'after', title: say('would-be') },
        ]}
        rows={preview.lines.map((line) => ({
          key: `${line.patientId} ${line.joint} ${line.day} ${line.before} ${line.after}`,
          cells: [
            line.name,
            jointInWords(line.joint as never),
            dayInWords(line.day),
            line.before,
            line.after,
          ],
        }))}
      />
    ) : null}
  </div>
);
