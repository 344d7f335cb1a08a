'use client';
/** From a proposal to a signature in one press, or kept beside others for one signature. Only signed is it seen. */
import { useRouter } from 'next/navigation';
import { type ReactNode, useState } from 'react';
import { mostAskedPercent, muchMorePercent } from '#core/prescribing/asked-more.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { doseInShort } from '#core/prescribing/dose-in-short.ts';
import { say } from '#messages/en/staff/prescribing/workbench.ts';
import { say as sayPlain } from '#messages/en/staff/prescribing.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import type { Proposed } from '../answers.ts';
import { client } from '../client.ts';
import { useSubmit } from '../forms/use-submit.ts';

interface SignProposalProps {
  readonly patientId: string;
  readonly request: Readonly<Record<string, unknown>>;
  readonly proposed: Proposed;
  /** In force, that it takes the place of. */
  readonly inForce: { readonly itemId: string; readonly dose: Dose } | null;
  readonly signer: string;
  /** Instant at which the page was read: a warning sign that came in since is looked at first. */
  readonly readAt: number;
  /** It waits with the others now. */
  readonly onKept: () => void;
  readonly onSigned?: (() => void) | undefined;
  /** What to do once it is signed; left out = the pages of the plan. */
  readonly next?: ReactNode;
}

type Act = 'sign' | 'keep';

/** What was asked before it goes on: whether an unlikely figure is right, or whether another is replaced. */
const useSigning = (props: SignProposalProps) => {
  const { patientId, request, proposed, inForce, readAt } = props;
  const router = useRouter();
  const [keptId, setKeptId] = useState<string | null>(null);
  const [signedBy, setSignedBy] = useState<string | null>(null);
  const [act, setAct] = useState<Act>('sign');
  const submit = useSubmit('', 'sign-proposal');
  const keep = async (confirmed: boolean): Promise<string> => {
    const id = await client.clinician.prescriptions.saveDraft.mutate({
      patientId,
      request,
      confirmed,
      shown: proposed.dose,
      ...(inForce ? { itemId: inForce.itemId } : {}),
    });
    setKeptId(id);
    return id;
  };
  const go = async (wanted: Act, isConfirmed: boolean) => {
    setAct(wanted);
    await submit.send([], async () => {
      const prescriptionId = keptId ?? (await keep(isConfirmed));
      if (wanted === 'keep') return props.onKept();
      // What is confirmed of a kept draft is that it replaces another.
      const replace = keptId !== null && isConfirmed;
      const sign = { patientId, prescriptionId, replace, readAt };
      setSignedBy((await client.clinician.prescriptions.sign.mutate(sign)).signedName);
      props.onSigned?.();
    });
    router.refresh();
  };
  return { submit, keptId, signedBy, act, go };
};

const Signed = ({
  patientId,
  name,
  next,
}: Pick<SignProposalProps, 'patientId' | 'next'> & { readonly name: string }) => (
  <>
    <p role="status">{sayPlain('signed', { name })}</p>
    {next ?? (
      <p>
        <a href={`/patients/${patientId}/programme`}>{sayPlain('set-weekdays')}</a> {sayPlain('or')}{' '}
        <a href={`/patients/${patientId}/prescriptions`}>{sayPlain('see-all')}</a>.
      </p>
    )}
  </>
);

const percentMore = ({ proposed, inForce }: SignProposalProps): number | null =>
  inForce ? mostAskedPercent(inForce.dose, proposed.dose) : null;

/** What is signed stands on the button, and how much more it asks where that is more than a step. */
const signLabel = (props: SignProposalProps): string => {
  const { proposed, signer } = props;
  const percent = percentMore(props);
  const signed = { dose: doseInShort(proposed.dose), name: signer };
  return percent === null ? say('sign-dose', signed) : say('sign-more', { ...signed, percent });
};

export const SignProposal = (props: SignProposalProps) => {
  const { submit, keptId, signedBy, act, go } = useSigning(props);
  const [isAsking, setAsking] = useState(false);
  const percent = percentMore(props);
  const sign = () =>
    percent !== null && percent > muchMorePercent ? setAsking(true) : void go('sign', false);
  if (signedBy) return <Signed patientId={props.patientId} name={signedBy} next={props.next} />;
  return (
    <div className="stack-close screen-only">
      <ErrorSummary problems={submit.problems} />
      {keptId && !submit.isBusy ? <p role="status">{say('kept-not-signed')}</p> : null}
      {isAsking ? (
        <ConfirmQuestion
          question={say('much-more', { percent: percent ?? 0 })}
          yes={signLabel(props)}
          no={say('much-more.no')}
          onYes={() => {
            setAsking(false);
            void go('sign', false);
          }}
          onNo={() => setAsking(false)}
        />
      ) : submit.questions.length > 0 ? (
        <ConfirmQuestion
          question={submit.questions.join(' ')}
          yes={sayPlain(keptId ? 'replace' : 'save-anyway')}
          no={sayPlain(keptId ? 'keep' : 'save-change')}
          onYes={() => void go(act, true)}
          onNo={submit.forget}
        />
      ) : (
        <div className="row">
          <Button id="sign-proposal" onClick={sign} aria-disabled={submit.isBusy || undefined}>
            {submit.isBusy ? say('signing') : signLabel(props)}
          </Button>
          {keptId ? null : (
            <Button tone="plain" onClick={() => void go('keep', false)}>
              {say('add-another')}
            </Button>
          )}
        </div>
      )}
    </div>
  );
};
