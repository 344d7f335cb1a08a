'use client';
/**
 * One page from an empty patient to one signed low-load exercise: who, what was asked, what was
 * measured, where to begin. Whatever can be saved is; then the proposal, and a signature of its own.
 */
import { useRouter } from 'next/navigation';
import { type FormEvent, useCallback, useState } from 'react';
import { say } from '#messages/en/staff/first-visit.ts';
import { client } from '#ui/clinician/client.ts';
import { type DraftState, useDraft } from '#ui/clinician/forms/use-draft.ts';
import { useSubmit } from '#ui/clinician/forms/use-submit.ts';
import { ProposalCard } from '#ui/clinician/prescribing/proposal-card.tsx';
import type { ItemState } from '#ui/clinician/screening/screening-form-state.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import type { FirstVisitPage, ProposedVisit } from '../episode/answers.ts';
import { Exercise, Measured, UsualValues } from './first-visit-measured.tsx';
import { type PartProps, Questions, Who } from './first-visit-parts.tsx';
import { fromHome, restNo, startFrom, type Typed, withItem } from './first-visit-state.ts';
import { requireAllSaved, visitFrom } from './visit-to-send.ts';

const draftWords: Readonly<Record<DraftState, string>> = {
  none: say('draft-is-private'),
  waiting: say('saving-the-draft'),
  saved: say('draft-saved'),
  'not-saved': say('draft-not-saved'),
};

export interface FirstVisitProps {
  readonly patientId: string;
  readonly page: FirstVisitPage;
  readonly signer: string;
}

const Signed = ({ patientId }: { readonly patientId: string }) => (
  <div className="stack-close" role="status">
    <p>
      <strong>Signed.</strong> {say('visible-now')}
    </p>
    <p>
      <a href={`/patients/${patientId}/programme`}>{say('set-the-weekdays')}</a> ·{' '}
      <a href={`/patients/${patientId}/screening`}>{say('continue-the-screening')}</a>
    </p>
  </div>
);

const Saved = (props: FirstVisitProps & { readonly saved: ProposedVisit }) => {
  const router = useRouter();
  const [isSigned, setSigned] = useState(false);
  const submit = useSubmit('', 'sign-first');
  const { patientId, saved } = props;
  const sign = async () => {
    const taken = await submit.send([], async () => {
      await client.clinician.prescriptions.sign.mutate({ patientId, prescriptionId: saved.prescriptionId });
    });
    setSigned(taken);
    if (taken) router.refresh();
  };
  return (
    <section className="proposal stack" aria-label={say('proposed-exercise')}>
      <h3>{say('proposed-saved-as-a-draft')}</h3>
      <ProposalCard proposed={saved} inForce={null} beside={[]} held={[]} />
      <ErrorSummary problems={submit.problems} />
      {isSigned ? (
        <Signed patientId={patientId} />
      ) : (
        <Button id="sign-first" onClick={() => void sign()} aria-disabled={submit.isBusy || undefined}>
          {say('sign-as', { signer: props.signer })}
        </Button>
      )}
    </section>
  );
};

const Parts = (props: PartProps & Omit<Parameters<typeof Questions>[0], 'page' | 'typed'>) => (
  <ol className="visit-parts">
    <li className="visit-part stack-close">
      <h3>{say('patient-and-equipment')}</h3>
      <Who {...props} />
      <UsualValues {...props} />
    </li>
    <li className="visit-part stack-close">
      <h3>{say('asked-today')}</h3>
      <Questions {...props} />
    </li>
    <li className="visit-part stack-close">
      <h3>{say('measured-today')}</h3>
      <Measured {...props} />
    </li>
    <li className="visit-part stack-close">
      <h3>{say('first-exercise')}</h3>
      <Exercise {...props} />
    </li>
  </ol>
);

const useFirstVisit = ({ patientId, page }: FirstVisitProps) => {
  const [typed, setTyped] = useState<Typed>(() => startFrom(page));
  const [saved, setSaved] = useState<ProposedVisit | null>(null);
  const [sentence, setSentence] = useState('');
  const submit = useSubmit('', 'propose-first');
  const draft = useDraft(patientId, 'first-visit', typed, saved !== null);
  const onItem = useCallback(
    (id: string, state: ItemState) => setTyped((known) => withItem(known, id, state)),
    [],
  );
  const send = (confirmed: boolean) => {
    const { visit, request, problems } = visitFrom(typed, page.items, page);
    const { visits } = client.clinician;
    return submit.send([], async () => {
      const answer = await visits.saveFirstVisit.mutate({ patientId, visit, confirmed });
      setSentence(answer.sentence);
      requireAllSaved(answer, problems);
      const replaces = saved?.prescriptionId ?? null;
      setSaved(await visits.proposeFirstVisit.mutate({ patientId, request, replaces }));
    });
  };
  return { typed, setTyped, saved, sentence, submit, draft, onItem, send };
};

export const FirstVisitForm = (props: FirstVisitProps) => {
  const { page } = props;
  const { typed, setTyped, saved, sentence, submit, draft, onItem, send } = useFirstVisit(props);
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    void send(false);
  };
  return (
    <div className="stack-wide">
      <form method="post" className="stack" noValidate onSubmit={onSubmit}>
        <ErrorSummary problems={submit.problems} />
        <p role="status">{sentence}</p>
        <Parts
          page={page}
          items={page.items}
          typed={typed}
          errorOf={submit.errorOf}
          onType={(name, text) => setTyped((known) => ({ ...known, [name]: text }))}
          onItem={onItem}
          onRest={() => setTyped((known) => restNo(known, page.items))}
          onHome={() => setTyped((known) => fromHome(known, page.items, page.preVisit?.answers ?? []))}
        />
        {submit.questions.length > 0 ? (
          <ConfirmQuestion
            question={submit.questions.join(' ')}
            yes={say('it-is-correct-save')}
            no={say('change-it')}
            onYes={() => void send(true)}
            onNo={submit.forget}
          />
        ) : (
          <div className="row">
            <Button type="submit" id="propose-first" aria-disabled={submit.isBusy || undefined}>
              {saved ? say('propose-again') : say('save-and-propose')}
            </Button>
            <span role="status" className="soft draft-note">
              {saved ? '' : draftWords[draft]}
            </span>
          </div>
        )}
      </form>
      {saved ? <Saved key={saved.prescriptionId} {...props} saved={saved} /> : null}
    </div>
  );
};
