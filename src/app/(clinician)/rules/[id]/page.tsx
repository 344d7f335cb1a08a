import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { RuleProofView } from '#ui/clinician/rules/proof/rule-proof.tsx';
import { clinicPage } from '../../clinic-page.ts';
import { CoveredFrame } from '../../covered-frame.tsx';

export const metadata: Metadata = { title: 'Rule' };

const RulePage = async ({ params }: { readonly params: Promise<{ readonly id: string }> }) => {
  const { person, clinician } = await clinicPage();
  const { id } = await params;
  const { rules, proofRun } = await clinician.rules.list();
  const rule = rules.find((one) => one.id === id);
  if (!rule) notFound();
  return (
    <CoveredFrame place="/calculations" name={person.name}>
      <RuleProofView rule={rule} run={proofRun} />
    </CoveredFrame>
  );
};

export default RulePage;
