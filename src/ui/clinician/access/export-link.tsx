/** Leads to a copy of the record in an open format, which the browser saves. */
import type { ReactNode } from 'react';

interface ExportLinkProps {
  readonly format: 'fhir' | 'csv' | 'json' | 'calendar';
  readonly patientId: string;
  readonly language?: string;
  readonly children: ReactNode;
}

export const ExportLink = ({ format, patientId, language, children }: ExportLinkProps) => (
  <a
    href={`/exports/${format}?${new URLSearchParams({ patient: patientId, ...(language ? { language } : {}) })}`}
  >
    {children}
  </a>
);
