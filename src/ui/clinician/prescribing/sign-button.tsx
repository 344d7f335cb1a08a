'use client';
/** Signing by name. The button says whose name it will be. */
import { useRouter } from 'next/navigation';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { client } from '../client.ts';
import { useSubmit } from '../forms/use-submit.ts';

export const SignButton = (props: {
  readonly patientId: string;
  readonly prescriptionId: string;
  readonly signer: string;
  readonly title: string;
}) => {
  const router = useRouter();
  const { patientId, prescriptionId } = props;
  const id = `sign-${prescriptionId}`;
  const submit = useSubmit('', id);
  const sign = () =>
    submit.send([], async () => {
      await client.clinician.prescriptions.sign.mutate({ patientId, prescriptionId });
      router.refresh();
    });
  return (
    <div className="stack-close screen-only">
      <ErrorSummary problems={submit.problems} />
      <Button id={id} onClick={() => void sign()} aria-disabled={submit.isBusy || undefined}>
        Sign as {props.signer}
        <span className="visually-hidden">: {props.title}</span>
      </Button>
    </div>
  );
};
