import type { Metadata } from 'next';
import { EmergencyAccessNotice } from '#ui/clinician/access/emergency-access-notice.tsx';
import { momentInWords } from '#ui/clinician/when.ts';
import { filterFrom, inputFrom, type WorklistQuery } from '#ui/clinician/worklist/worklist-query.ts';
import { WorklistScreen } from '#ui/clinician/worklist/worklist-screen.tsx';
import { clinicPage } from '../clinic-page.ts';
import { CoveredFrame } from '../covered-frame.tsx';

export const metadata: Metadata = { title: 'Worklist' };

const WorklistPage = async ({ searchParams }: { readonly searchParams: Promise<WorklistQuery> }) => {
  const { person, clinician, clock } = await clinicPage();
  const query = await searchParams;
  return (
    <CoveredFrame place="/worklist" name={person.name}>
      <EmergencyAccessNotice
        emergencyAccesses={await clinician.team.emergencyAccesses()}
        when={(instant) => momentInWords(instant, clock)}
      />
      <WorklistScreen
        list={await clinician.worklist.list(inputFrom(query))}
        clock={clock}
        filter={filterFrom(query)}
        filters={await clinician.worklist.filters()}
        signer={person.name}
        groups={await clinician.worklist.groups({ group: filterFrom(query).group })}
      />
    </CoveredFrame>
  );
};

export default WorklistPage;
