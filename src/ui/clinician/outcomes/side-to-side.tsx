/** One limb against the other, by the newest measurement of each side. */
import { type SideLine, sideLines } from '#core/assessment/course/side-to-side.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/outcomes.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import type { CourseAnswer } from '../answers.ts';

interface Props {
  readonly measurements: CourseAnswer['measurements'];
  readonly day: Day;
}

const verdicts = {
  differ: say('sides.differ'),
  'within-error': say('sides.within-error'),
  'not-judged': say('sides.not-judged'),
} as const satisfies Record<SideLine['verdict'], string>;

export const SideToSide = ({ measurements, day }: Props) => {
  const lines = sideLines(measurements);
  const cell = ({ text, day: on }: SideLine['left']) =>
    say('sides.on', { value: text, date: dayInWords(on, day) });
  return lines.length === 0 ? null : (
    <section className="stack-close">
      <h2>{say('sides.title')}</h2>
      <DataTable
        caption={say('sides.title')}
        hidesCaption
        columns={[
          { key: 'what', title: 'Measures' },
          { key: 'left', title: 'Left' },
          { key: 'right', title: 'Right' },
          { key: 'difference', title: say('sides.difference') },
        ]}
        rows={lines.map((line) => ({
          key: line.key,
          cells: [
            line.title,
            cell(line.left),
            cell(line.right),
            <>
              <strong>{verdicts[line.verdict]}</strong> {line.sentence}
            </>,
          ],
        }))}
      />
      <p className="soft">{say('sides.note')}</p>
    </section>
  );
};
