/** Styles of the pages about signing in. Access is checked by each page, which also draws the frame. */
import type { ReactNode } from 'react';
import { TypedEarly } from '#ui/design-system/typed-early.tsx';
import '../../ui/clinician/styles/clinician.css';
import '../../ui/design-system/what-if/what-if.css';
import '../../ui/account/account.css';
import '../../ui/admin/admin.css';

const AccountLayout = ({ children }: { readonly children: ReactNode }) => (
  <>
    {children}
    <TypedEarly />
  </>
);

export default AccountLayout;
