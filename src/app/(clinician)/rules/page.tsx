import type { Metadata } from 'next';
import { RulesScreen } from '#ui/clinician/rules/rules-screen.tsx';
import { clinicPage } from '../clinic-page.ts';
import { CoveredFrame } from '../covered-frame.tsx';

export const metadata: Metadata = { title: 'Rules' };

interface RulesPageProps {
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

const RulesPage = async ({ searchParams }: RulesPageProps) => {
  const { person, clinician } = await clinicPage();
  const { words } = await searchParams;
  return (
    <CoveredFrame place="/calculations" name={person.name}>
      <RulesScreen
        table={await clinician.rules.list()}
        invented={await clinician.inventedPeople.get()}
        words={String(words ?? '')}
      />
    </CoveredFrame>
  );
};

export default RulesPage;
