/** Styles of the care around a dose. Access is checked by each page. */
import type { ReactNode } from 'react';
import '../../../../../ui/clinician/styles/care.css';

const CareLayout = ({ children }: { readonly children: ReactNode }) => children;

export default CareLayout;
