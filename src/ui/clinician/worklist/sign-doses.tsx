'use client';
/** Waiting doses of one patient, each in full with what is new of its cautions, before they are signed. */
import { say } from '#messages/en/staff/worklist.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import type { RowDose } from './row-dose.tsx';
import { type SignsDoses, useSignDoses } from './use-sign-doses.ts';

interface SignDosesProps extends SignsDoses {
  readonly doses: readonly RowDose[];
  readonly signer: string;
  /** Of the button; left out = how many are signed, and by whom. */
  readonly label?: string | undefined;
  /** All of them are signed. */
  readonly close: () => void;
}

export const SignDoses = (props: SignDosesProps) => {
  const { doses } = props;
  const { submit, sign, id } = useSignDoses(props);
  const all = async (replace: boolean) => {
    if (await sign(doses, replace)) props.close();
  };
  return (
    <div className="stack-close">
      <ErrorSummary problems={submit.problems} />
      <ul className="plain-list stack-close">
        {doses.map((dose) => (
          <li key={dose.prescriptionId}>
            <p>
              <strong>{dose.step}</strong>
            </p>
            <p>{dose.full}</p>
            {dose.named.map((text) => (
              <p key={text}>{text}</p>
            ))}
            <p className="soft">{say('easier', { dose: dose.easier })}</p>
            {dose.newCautions}
            {dose.allCautions}
          </li>
        ))}
      </ul>
      {submit.questions.length > 0 ? (
        <ConfirmQuestion
          question={submit.questions.join(' ')}
          yes={say('replace')}
          no={say('keep')}
          onYes={() => void all(true)}
          onNo={submit.forget}
        />
      ) : (
        <Button id={id} onClick={() => void all(false)} aria-disabled={submit.isBusy || undefined}>
          {props.label ?? say('sign-all-as', { count: doses.length, name: props.signer })}
        </Button>
      )}
    </div>
  );
};
