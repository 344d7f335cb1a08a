/** More, for those who want it. Opens without a script; what is fetched on opening needs one. */
import type { ReactNode } from 'react';

export interface DisclosureProps {
  readonly summary: ReactNode;
  readonly children: ReactNode;
  readonly isOpen?: boolean;
  readonly onOpen?: () => void;
}

export const Disclosure = ({ summary, children, isOpen, onOpen }: DisclosureProps) => (
  <details
    className="disclosure"
    open={isOpen}
    onToggle={onOpen && ((event) => event.currentTarget.open && onOpen())}
  >
    <summary>{summary}</summary>
    <div className="disclosure-body stack-close">{children}</div>
  </details>
);
