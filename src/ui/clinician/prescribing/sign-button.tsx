'use client';
/** Signing by name. The button says whose name it will be; the same exercise in force is replaced only when asked. */
import { useRouter } from 'next/navigation';
import { say } from '#messages/en/staff/prescribing.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { client } from '../client.ts';
import { useSubmit } from '../forms/use-submit.ts';

export const SignButton = (props: {
  readonly patientId: string;
  readonly prescriptionId: string;
  readonly signer: string;
  readonly title: string;
  /** Instant at which the page was read: a warning sign that came in since is looked at first. */
  readonly readAt: number;
  readonly onSigned?: (signedName: string) => void;
}) => {
  const router = useRouter();
  const { patientId, prescriptionId, readAt } = props;
  const id = `sign-${prescriptionId}`;
  const submit = useSubmit('', id);
  const sign = (replace: boolean) =>
    submit.send([], async () => {
      const signed = await client.clinician.prescriptions.sign.mutate({
        patientId,
        prescriptionId,
        replace,
        readAt,
      });
      props.onSigned?.(signed.signedName);
      router.refresh();
    });
  return (
    <div className="stack-close screen-only">
      <ErrorSummary problems={submit.problems} />
      {submit.questions.length > 0 ? (
        <ConfirmQuestion
          question={submit.questions.join(' ')}
          yes={say('replace')}
          no={say('keep')}
          onYes={() => void sign(true)}
          onNo={submit.forget}
        />
      ) : (
        <Button id={id} onClick={() => void sign(false)} aria-disabled={submit.isBusy || undefined}>
          {say('sign-as', { name: props.signer })}
          <span className="visually-hidden">: {props.title}</span>
        </Button>
      )}
    </div>
  );
};
