/** What other numbers would have decided. */
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
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
    <h2>What would change</h2>
    <p>
      {preview.looked} decisions since {dayInWords(preview.since)} were checked again with these settings.{' '}
      {preview.differing === 0
        ? 'None of them would differ.'
        : `${preview.differing} would differ, of ${preview.patients} patients: ${preview.bolder} bolder, ${preview.moreCautious} more cautious, the others different in step, advice or contact.`}
    </p>
    <p className="soft">
      Each was checked again with the facts stored with it. Settings for collecting facts, doses, screening,
      nutrition and records apply from their next use and are not shown here.
    </p>
    {preview.lines.length > 0 ? (
      <DataTable
        caption="Decisions that would differ"
        columns={[
          { key: 'who', title: 'Patient' },
          { key: 'joint', title: 'Joint' },
          { key: 'day', title: 'Day' },
          { key: 'before', title: 'Was' },
          { key: 'after', title: 'Would be' },
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
