/** The papers about a patient that a clinician signs by hand, each as a file of today. */
import { say } from '#messages/en/staff/documents.ts';
import { languages } from '#messages/languages.ts';
import { PaperLink } from './paper-link.tsx';

const nameOf = (tag: string): string => new Intl.DisplayNames('en', { type: 'language' }).of(tag) ?? tag;

export const PapersToday = ({ patientId }: { readonly patientId: string }) => (
  <section className="stack-close screen-only">
    <h3>{say('papers-today')}</h3>
    <p className="soft">{say('papers-hint')}</p>
    <ul>
      <li>
        <PaperLink kind="letter" patientId={patientId}>
          {say('paper-letter')}
        </PaperLink>
      </li>
      <li>
        <PaperLink kind="flare-note" patientId={patientId}>
          {say('paper-flare-note')}
        </PaperLink>
      </li>
      <li>
        <PaperLink kind="discharge" patientId={patientId}>
          {say('paper-discharge')}
        </PaperLink>
      </li>
      {languages.map(({ tag }) => (
        <li key={tag}>
          <PaperLink kind="self-management" patientId={patientId} asked={{ language: tag }}>
            {say('paper-self-management', { language: nameOf(tag) })}
          </PaperLink>
        </li>
      ))}
    </ul>
  </section>
);
