/** The one h1 of a page, with a caption that says what it belongs to. It can take focus when a step changes. */
import type { ReactNode, Ref } from 'react';

export interface PageHeadingProps {
  readonly caption?: ReactNode;
  readonly children: ReactNode;
  readonly ref?: Ref<HTMLHeadingElement>;
}

export const PageHeading = ({ caption, children, ref }: PageHeadingProps) => (
  <h1 className="page-heading" tabIndex={-1} ref={ref}>
    {caption ? <span className="page-caption">{caption}</span> : null}
    {children}
  </h1>
);
