import type { Metadata } from 'next';
import { stepAsked } from '#core/episode/first-visit/first-visit-steps.ts';
import { say } from '#messages/en/staff/record.ts';
import { runtime } from '#server/runtime.ts';
import { VisitScreen } from '#ui/clinician/first-visit/visit-screen.tsx';
import { type RecordParams, recordPage } from '../../../../clinic-page.ts';
import '../../../../../../ui/account/account.css';
import { FramedRecord } from '../../../../framed-record.tsx';
import { visitPlan } from '../../../../visit-plan.ts';

export const metadata: Metadata = { title: say('first-visit') };

interface Props {
  readonly params: RecordParams;
  readonly searchParams: Promise<{ readonly step?: string | string[] }>;
}

const FirstVisit = async ({ params, searchParams }: Props) => {
  const at = await recordPage(params);
  const { person, clinician, patient, clock } = at;
  const patientId = patient.id;
  const page = await clinician.visits.firstVisit({ patientId });
  const step = stepAsked(page.states, (await searchParams).step);
  const draft = await clinician.drafts.get({ patientId, form: `first-visit-${step}` });
  return (
    <FramedRecord at={at} section="/care/first-visit">
      <VisitScreen
        {...{ patient, step, page, clock }}
        draft={draft?.typed ?? null}
        {...(await visitPlan(at, step))}
        signer={person.name}
        origin={runtime().settings.PUBLIC_ORIGIN}
      />
    </FramedRecord>
  );
};

export default FirstVisit;
