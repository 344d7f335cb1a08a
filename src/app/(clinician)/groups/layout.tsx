import type { ReactNode } from 'react';
import '../../../ui/clinician/styles/groups.css';

const GroupsLayout = ({ children }: { readonly children: ReactNode }) => children;

export default GroupsLayout;
