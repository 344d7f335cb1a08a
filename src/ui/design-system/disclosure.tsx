/** More, for those who want it. Opens without a script; what is fetched on opening needs one. */
import type { ReactNode } from 'react';

export interface DisclosureProps {
  readonly summary: ReactNode;
  readonly children: ReactNode;
  readonly isOpen?: boolean;
  /** Sources of a figure and the like, which nobody needs on paper; everything else is printed open. */
  readonly isScreenOnly?: boolean;
  readonly onOpen?: () => void;
}

export const Disclosure = ({ summary, children, isOpen, isScreenOnly, onOpen }: DisclosureProps) => (
  <details
    className={isScreenOnly ? 'disclosure screen-only' : 'disclosure'}
    open={isOpen}
    onToggle={onOpen && ((event) => event.currentTarget.open && onOpen())}
  >
    <summary>{summary}</summary>
    <div className="disclosure-body stack-close">{children}</div>
  </details>
);
