import type { Metadata } from 'next';
import { TemplatesScreen } from '#ui/clinician/prescribing/templates/templates-screen.tsx';
import { clinicPage } from '../clinic-page.ts';
import { CoveredFrame } from '../covered-frame.tsx';

export const metadata: Metadata = { title: 'Templates' };

const TemplatesPage = async () => {
  const { person, clinician, clock } = await clinicPage();
  return (
    <CoveredFrame place={null} name={person.name}>
      <TemplatesScreen templates={await clinician.templates.list()} clock={clock} />
    </CoveredFrame>
  );
};

export default TemplatesPage;
