/** The frame of one patient's pages: the clinic's frame, and the bar that says who it is. */
import type { ReactNode } from 'react';
import type { RecordPath } from '#ui/clinician/record/places.ts';
import { RecordFrame } from '#ui/clinician/record/record-frame.tsx';
import type { AtRecord } from './clinic-page.ts';
import { CoveredFrame } from './covered-frame.tsx';

interface RecordPageProps {
  readonly at: AtRecord;
  readonly section: RecordPath;
  readonly children: ReactNode;
}

export const FramedRecord = ({ at, section, children }: RecordPageProps) => (
  <CoveredFrame place="/patients" name={at.person.name}>
    <RecordFrame patient={at.patient} bar={at.bar} clock={at.clock} day={at.day} section={section}>
      {children}
    </RecordFrame>
  </CoveredFrame>
);
