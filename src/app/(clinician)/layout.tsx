/** Styles of the clinic's pages. Access is checked by each page, which also draws the frame. */
import type { ReactNode } from 'react';
import { TypedEarly } from '#ui/design-system/typed-early.tsx';
import '../../ui/clinician/styles/clinician.css';
import '../../ui/design-system/what-if/what-if.css';
import '../../ui/clinician/styles/chart.css';
import '../../ui/clinician/styles/outcomes.css';
import '../../ui/clinician/styles/prescribe.css';
import '../../ui/clinician/styles/summary.css';
import '../../ui/clinician/styles/trial.css';

const ClinicLayout = ({ children }: { readonly children: ReactNode }) => (
  <>
    {children}
    <TypedEarly />
  </>
);

export default ClinicLayout;
