/** What was done about the disease in this episode of care, what the plan makes of an injection, and on what ground. */
import { injectionEvidence, injectionReading } from '#core/episode/treatment/injection-evidence.ts';
import { type TreatmentLine, treatmentLines } from '#core/episode/treatment/treatment-timeline.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/episode/treatment.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { CareAnswer } from '../answers.ts';

interface TreatmentProps {
  readonly care: CareAnswer;
  readonly day: Day;
}

const Lines = ({
  caption,
  lines,
  day,
}: {
  readonly caption: string;
  readonly lines: readonly TreatmentLine[];
  readonly day: Day;
}) => (
  <DataTable
    caption={caption}
    columns={[
      { key: 'day', title: 'Day' },
      { key: 'what', title: 'Treatment' },
      { key: 'joint', title: 'Joint' },
      { key: 'remark', title: 'Note' },
    ]}
    rows={lines.toReversed().map((line) => ({
      key: line.id,
      cells: [
        dayInWords(line.day, day),
        line.correctedPending ? `${line.what} ${say('entered-in-error')}` : line.what,
        line.joint === null ? say('none-named') : jointInWords(line.joint),
        line.remark ?? '',
      ],
    }))}
    empty={say('none')}
  />
);

const AfterInjection = ({ care }: Pick<TreatmentProps, 'care'>) => (
  <>
    <p>{say('after-injection', { count: care.injectionEasierDays })}</p>
    <Disclosure summary={say('sources')}>
      <p>{injectionReading}</p>
      <ul>
        {injectionEvidence.map(({ finding }) => (
          <li key={finding}>{finding}</li>
        ))}
      </ul>
    </Disclosure>
  </>
);

export const TreatmentSection = ({ care, day }: TreatmentProps) => {
  const lines = treatmentLines(care.events);
  const began = care.episodeBeganOn;
  // A course that was begun before and goes on is part of this episode as well.
  const own = lines.filter(({ lastDay }) => began === null || lastDay >= began);
  const earlier = lines.filter((line) => !own.includes(line));
  return (
    <>
      <Lines caption={say('title')} lines={own} day={day} />
      {earlier.length > 0 ? (
        <Disclosure summary={say('earlier', { count: earlier.length })}>
          <Lines caption={say('before')} lines={earlier} day={day} />
        </Disclosure>
      ) : null}
      {own.some(({ kind }) => kind === 'joint-injection') ? <AfterInjection care={care} /> : null}
    </>
  );
};
