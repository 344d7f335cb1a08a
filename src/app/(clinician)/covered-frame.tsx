/** The frame of the clinic's pages. */
import { ClinicFrame, type ClinicFrameProps } from '#ui/clinician/clinic-frame.tsx';
import { Uncovered } from '../uncovered.tsx';

export const CoveredFrame = ({ children, ...frame }: ClinicFrameProps) => (
  <ClinicFrame {...frame}>
    <Uncovered />
    {children}
  </ClinicFrame>
);
