import type { ReactNode } from 'react';
import '../../../ui/clinician/styles/worklist.css';

const WorklistLayout = ({ children }: { readonly children: ReactNode }) => children;

export default WorklistLayout;
