/** The papers about a patient that a clinician signs by hand, each as a file of today. */
import { say } from '#messages/en/staff/documents.ts';
import { languages } from '#messages/languages.ts';
import { languageName, PaperLink } from './paper-link.tsx';

const kinds = ['flare-note', 'discharge', 'self-management'] as const;

export const PapersToday = ({
  patientId,
  mayTellOthers,
}: {
  readonly patientId: string;
  /** The patient has agreed that others who treat them are told. */
  readonly mayTellOthers: boolean;
}) => (
  <section className="stack-close screen-only">
    <h3>{say('papers-today')}</h3>
    <p className="soft">{say('papers-hint')}</p>
    {mayTellOthers ? null : (
      <p>
        <strong>{say('not-agreed')}</strong> <a href={`/patients/${patientId}/care`}>{say('ask-first')}</a>
      </p>
    )}
    <ul>
      <li>
        <a href={`/patients/${patientId}/care/letters`}>{say('paper-letter')}</a>
      </li>
      {kinds.map((kind) =>
        languages.map(({ tag }) => (
          <li key={`${kind} ${tag}`}>
            <PaperLink kind={kind} patientId={patientId} asked={{ language: tag }}>
              {say(`paper-${kind}`, { language: languageName(tag) })}
            </PaperLink>
          </li>
        )),
      )}
    </ul>
  </section>
);
