/** Something to know (plain), to heed (care), or to act on (danger). At most two on a page. */
import type { ReactNode } from 'react';
import { Mark, type Shape } from './mark.tsx';

export interface NoticeProps {
  readonly tone?: 'plain' | 'care' | 'danger';
  readonly title: ReactNode;
  readonly children?: ReactNode;
  /** Read out when it appears on a page that is already open. */
  readonly isAnnounced?: boolean;
}

const shapeOf = { plain: 'note', care: 'care', danger: 'stop' } as const satisfies Record<string, Shape>;

export const Notice = ({ tone = 'plain', title, children, isAnnounced }: NoticeProps) => (
  <div
    className={tone === 'plain' ? 'notice' : `notice notice-${tone}`}
    role={isAnnounced ? (tone === 'danger' ? 'alert' : 'status') : undefined}
  >
    <p className="notice-title">
      <Mark shape={shapeOf[tone]} />
      <span>{title}</span>
    </p>
    {children}
  </div>
);
