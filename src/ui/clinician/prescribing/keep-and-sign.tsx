'use client';
/** From a proposal to a signature: keep it unsigned, then sign by name. Only then can the patient see it. */
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { Button } from '#ui/shared/button.tsx';
import { ErrorSummary } from '#ui/shared/error-summary.tsx';
import { client } from '../client.ts';
import { useSubmit } from '../forms/use-submit.ts';

export interface KeepAndSignProps {
  readonly patientId: string;
  readonly wish: Readonly<Record<string, unknown>>;
  readonly itemId: string | null;
  readonly signer: string;
}

export const KeepAndSign = ({ patientId, wish, itemId, signer }: KeepAndSignProps) => {
  const router = useRouter();
  const [keptId, setKeptId] = useState<string | null>(null);
  const [signedBy, setSignedBy] = useState<string | null>(null);
  const submit = useSubmit('', 'keep-or-sign');
  const keep = () =>
    submit.send([], async () => {
      const kept = await client.staff.prescriptions.keep.mutate({
        patientId,
        wish,
        ...(itemId ? { itemId } : {}),
      });
      setKeptId(kept);
      router.refresh();
    });
  const sign = (prescriptionId: string) =>
    submit.send([], async () => {
      const signed = await client.staff.prescriptions.sign.mutate({ patientId, prescriptionId });
      setSignedBy(signed.signedName);
      router.refresh();
    });
  return (
    <div className="stack">
      <ErrorSummary problems={submit.problems} />
      <p role="status" id="keep-or-sign" tabIndex={-1}>
        {signedBy
          ? `Signed by ${signedBy}. The patient sees it on the days the programme gives it.`
          : keptId
            ? 'Kept unsigned. The patient does not see it yet.'
            : 'Nothing is kept yet.'}
      </p>
      {signedBy ? (
        <p>
          <a href={`/patients/${patientId}/programme`}>Give it its weekdays</a> or{' '}
          <a href={`/patients/${patientId}/prescriptions`}>see all prescriptions</a>.
        </p>
      ) : keptId ? (
        <Button onClick={() => void sign(keptId)}>Sign as {signer}</Button>
      ) : (
        <Button onClick={() => void keep()}>Keep unsigned</Button>
      )}
    </div>
  );
};
