'use client';
/** What of protein and energy the patient is shown: typed by a clinician, signed by name, taken back in one press. */
import { useRouter } from 'next/navigation';
import type { LockQuestion } from '#core/nutrition/lock-fields.ts';
import { say } from '#messages/en/staff/episode/nutrition.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { client } from '../client.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { showAdvice } from '../forms/sent/notes.ts';
import { useSubmit } from '../forms/use-submit.ts';

export const AdviceForm = (props: {
  readonly patientId: string;
  readonly signer: string;
  readonly notAsked: readonly LockQuestion[];
}) => {
  const router = useRouter();
  const { patientId, notAsked } = props;
  const open = notAsked.map((question) => say(`question.${question}`)).join(', ');
  return (
    <SentFrame
      sent={showAdvice}
      about={{ patientId }}
      label={say('sign', { name: props.signer })}
      hints={{ restAnsweredNo: open ? say('rest-hint', { what: open }) : say('nothing-open') }}
      onTaken={router.refresh}
    />
  );
};

export const TakeBack = ({ patientId }: { readonly patientId: string }) => {
  const router = useRouter();
  const submit = useSubmit('', 'take-back');
  const takeBack = () =>
    submit.send([], async () => {
      await client.clinician.nutrition.takeBack.mutate({ patientId });
      router.refresh();
    });
  return (
    <div className="stack-close screen-only">
      <ErrorSummary problems={submit.problems} />
      <Button tone="plain" id="take-back" onClick={() => void takeBack()}>
        {say('take-back')}
      </Button>
    </div>
  );
};
