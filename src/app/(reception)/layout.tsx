/** Styles of the front desk's pages. Access is checked by each page. */
import type { ReactNode } from 'react';
import { TypedEarly } from '#ui/design-system/typed-early.tsx';
import '../../ui/clinician/styles/clinician.css';

const ReceptionLayout = ({ children }: { readonly children: ReactNode }) => (
  <>
    {children}
    <TypedEarly />
  </>
);

export default ReceptionLayout;
