/** What the patient saw of fingers or toes after each time with a cuff. A missing answer says so and is never "as usual". */
import { dayInWords } from '#core/review/plain-words.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import type { ReviewAnswer } from '../answers.ts';
import { doseTitle } from '../dose-words.ts';
import { type ClinicClock, today } from '../when.ts';

type Check = ReviewAnswer['limbChecks'][number];

const moments = { after: 'two minutes after release', later: 'checked again' } as const;
const answers = { usual: 'as usual', 'not-usual': 'not as usual' } as const;
const unasked = { 'not-asked': 'not asked', 'not-shown': 'says: never shown how' } as const;

const signText = (answer: Check['colour']): string => (answer === null ? 'not known' : answers[answer]);

const pulseText = ({ pulse, pulseState }: Check): string =>
  pulseState === 'asked' ? signText(pulse) : unasked[pulseState];

const columns = [
  { key: 'day', title: 'Day' },
  { key: 'exercise', title: 'Exercise' },
  { key: 'moment', title: 'When' },
  { key: 'colour', title: 'Colour' },
  { key: 'feeling', title: 'Feeling' },
  { key: 'pulse', title: 'Pulse beyond the cuff' },
];

interface LimbViewProps {
  readonly checks: readonly Check[];
  readonly prescriptions: ReviewAnswer['prescriptions'];
  readonly clock: ClinicClock;
}

export const LimbView = ({ checks, prescriptions, clock }: LimbViewProps) => {
  if (checks.length === 0) return null;
  const titleOf = (itemId: string): string => {
    const version = prescriptions.findLast((one) => one.itemId === itemId);
    return version ? doseTitle(version.dose) : 'an exercise not on record';
  };
  return (
    <section className="stack-close">
      <h2>Fingers or toes after cuff work</h2>
      <p className="soft">
        What the patient reported seeing and feeling at home. If it is not as usual ten minutes after release,
        that is a warning sign.
      </p>
      <DataTable
        caption="Fingers or toes after cuff work"
        hidesCaption
        columns={columns}
        rows={checks.map((check) => ({
          key: `${check.sessionId} ${check.itemId} ${check.moment}`,
          cells: [
            dayInWords(check.day, today(clock)),
            titleOf(check.itemId),
            moments[check.moment],
            signText(check.colour),
            signText(check.feeling),
            pulseText(check),
          ],
        }))}
      />
    </section>
  );
};
