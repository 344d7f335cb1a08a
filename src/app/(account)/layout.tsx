/** Styles of the pages about signing in. Access is checked by each page, which also draws the frame. */
import type { ReactNode } from 'react';
import '../../ui/clinician/styles/clinician.css';
import '../../ui/account/account.css';

const AccountLayout = ({ children }: { readonly children: ReactNode }) => children;

export default AccountLayout;
