/** Leads to a paper as a file, on a page of its own so that the record stays open. */
import type { ReactNode } from 'react';

interface PaperLinkProps {
  readonly kind: string;
  readonly patientId: string;
  readonly asked?: Readonly<Record<string, string>>;
  readonly children: ReactNode;
}

/** In English, as everything for staff. */
export const languageName = (tag: string): string =>
  new Intl.DisplayNames('en', { type: 'language' }).of(tag) ?? tag;

export const paperAddress = (kind: string, patientId: string, asked: Readonly<Record<string, string>> = {}) =>
  `/papers/${kind}?${new URLSearchParams({ patient: patientId, ...asked })}`;

export const PaperLink = ({ kind, patientId, asked = {}, children }: PaperLinkProps) => (
  <a href={paperAddress(kind, patientId, asked)} target="_blank" rel="noreferrer">
    {children}
  </a>
);
