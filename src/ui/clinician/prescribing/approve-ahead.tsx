'use client';
/** Steps approved ahead for one exercise: signing for them, what stands, and withdrawing. */
import { useRouter } from 'next/navigation';
import { say } from '#messages/en/staff/prescribing.ts';
import { Button } from '#ui/design-system/button.tsx';
import type { ApprovedAhead } from '../answers.ts';
import { client } from '../client.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { approveStepsAhead } from '../forms/sent/prescriptions.ts';

export interface ApproveAheadProps {
  readonly patientId: string;
  readonly itemId: string;
  /** Of this exercise, oldest first. */
  readonly approvals: readonly ApprovedAhead[];
  /** Days as the clinic reads them, by approval. */
  readonly signedOn: Readonly<Record<string, string>>;
}

export const ApproveAhead = ({ patientId, itemId, approvals, signedOn }: ApproveAheadProps) => {
  const router = useRouter();
  const inForce = approvals.filter((row) => row.withdrawnAt === null).at(-1);
  return (
    <div className="stack">
      <p>{say('ahead.limits')}</p>
      {inForce ? (
        <div className="stack-close">
          <p>
            {say('ahead.signed', {
              name: inForce.signedBy,
              time: signedOn[inForce.id] ?? '',
              steps: inForce.steps,
              days: inForce.days,
            })}
          </p>
          <Button
            tone="plain"
            onClick={async () => {
              await client.clinician.care.withdrawPreApproval.mutate({
                patientId,
                preApprovalId: inForce.id,
              });
              router.refresh();
            }}
          >
            {say('ahead.withdraw')}
          </Button>
        </div>
      ) : null}
      <SentFrame
        sent={approveStepsAhead}
        about={{ patientId, itemId }}
        label={inForce ? say('ahead.sign-again') : say('ahead.sign')}
        onTaken={router.refresh}
      />
    </div>
  );
};
