/** More, for those who want it. Opens without a script. */
import type { ReactNode } from 'react';

export interface DisclosureProps {
  readonly summary: ReactNode;
  readonly children: ReactNode;
  readonly isOpen?: boolean;
}

export const Disclosure = ({ summary, children, isOpen }: DisclosureProps) => (
  <details className="disclosure" open={isOpen}>
    <summary>{summary}</summary>
    <div className="disclosure-body stack-close">{children}</div>
  </details>
);
