/** Where nothing can be prescribed yet: why, who may change it, and what to do next. */
import { closingReasons } from '#core/episode/first-visit/first-visit-steps.ts';
import type { MethodOutcome, MethodReason } from '#core/screening/screening.ts';
import { say } from '#messages/en/staff/first-visit.ts';
import { Notice } from '#ui/design-system/notice.tsx';
import { addressOfStep } from './step-address.ts';
import { Back, StepHeading } from './step-frame.tsx';

const isUnasked = ({ code }: MethodReason): boolean => /^(never-screened|not-asked-|screening-)/.test(code);
const isPressure = ({ from }: MethodReason): boolean => from === 'blood-pressure';

const nextFor = (reason: MethodReason, patientId: string): readonly [string, string] => {
  if (isUnasked(reason)) return [say('next.ask'), addressOfStep(patientId, 'screening')];
  if (reason.from === 'consent') return [say('next.consent'), addressOfStep(patientId, 'consents')];
  if (isPressure(reason)) return [say('next.pressure'), addressOfStep(patientId, 'measurements')];
  if (reason.clearedBy === 'clinician') return [say('next.clear'), `/patients/${patientId}/screening`];
  if (reason.clearedBy === 'physician') return [say('next.physician'), `/patients/${patientId}/screening`];
  return [say('next.nobody'), `/patients/${patientId}/care/appointments`];
};

export const NothingPossible = (props: {
  readonly patientId: string;
  readonly outcomes: readonly MethodOutcome[];
}) => {
  const { patientId } = props;
  return (
    <div className="stack">
      <StepHeading step="exercise" />
      <Notice tone="care" title={say('nothing-can-be-prescribed')}>
        <ul>
          {closingReasons(props.outcomes).map((reason) => {
            const [text, href] = nextFor(reason, patientId);
            return (
              <li key={`${reason.code} ${reason.text}`}>
                {reason.text} <a href={href}>{text}</a>
              </li>
            );
          })}
        </ul>
        <p>{say('visit-is-saved')}</p>
      </Notice>
      <p className="row">
        <a href={`/patients/${patientId}/review`}>{say('book-review')}</a>
        <Back patientId={patientId} step="exercise" />
      </p>
    </div>
  );
};
