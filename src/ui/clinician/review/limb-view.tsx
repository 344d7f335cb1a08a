/** What the patient saw of fingers or toes after each time with a cuff. A missing answer says so and is never "as usual". */
import { dayInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/review.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import type { ReviewAnswer } from '../answers.ts';
import { doseTitle } from '../dose-words.ts';
import { type ClinicClock, today } from '../when.ts';

type Check = ReviewAnswer['limbChecks'][number];

const moments = { after: say('limb.after'), later: say('limb.later') } as const;
const answers = { usual: say('limb.usual'), 'not-usual': say('limb.not-usual') } as const;
const unasked = { 'not-asked': say('limb.not-asked'), 'not-shown': say('limb.not-shown') } as const;

const signText = (answer: Check['colour']): string =>
  answer === null ? say('limb.not-known') : answers[answer];

const pulseText = ({ pulse, pulseState }: Check): string =>
  pulseState === 'asked' ? signText(pulse) : unasked[pulseState];

const columns = [
  { key: 'day', title: 'Day' },
  { key: 'exercise', title: 'Exercise' },
  { key: 'moment', title: 'When' },
  { key: 'colour', title: 'Colour' },
  { key: 'feeling', title: 'Feeling' },
  { key: 'pulse', title: say('limb.pulse') },
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
    return version ? doseTitle(version.dose) : say('limb.no-exercise');
  };
  return (
    <section className="stack-close">
      <h2>{say('limb.title')}</h2>
      <p className="soft">{say('limb.note')}</p>
      <DataTable
        caption={say('limb.title')}
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
