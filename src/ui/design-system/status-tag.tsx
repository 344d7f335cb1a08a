/** One status: a shape and a word; colour only repeats them. */
import { Mark, type Shape } from './mark.tsx';

export type StatusTone = 'plain' | 'soft' | 'accent' | 'care' | 'danger';

export interface StatusTagProps {
  readonly shape: Shape;
  readonly tone?: StatusTone;
  /** An adjective or two, sentence case. */
  readonly children: string;
}

export const StatusTag = ({ shape, tone = 'plain', children }: StatusTagProps) => (
  <span className={tone === 'plain' ? 'status' : `status status-${tone}`}>
    <Mark shape={shape} />
    {children}
  </span>
);
