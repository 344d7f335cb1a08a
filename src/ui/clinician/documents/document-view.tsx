/** A paper on the screen and in print: its parts in order, then a line to sign on. */
import type { ReactNode } from 'react';
import { adviceOf, type CareDocument, type DocumentPart } from '#core/episode/documents/document-words.ts';
import { ReadFirst } from './read-first.tsx';

export interface DocumentViewProps {
  /** null where the episode of care has not been closed, or there is none. */
  readonly document: CareDocument | null;
  readonly patientId: string;
  /** Language of the paper itself; what stands around it for the clinician is English. */
  readonly language?: DocumentLanguage;
  /** Leads to the same paper in another language. */
  readonly children?: ReactNode;
}

export interface DocumentLanguage {
  readonly tag: 'en' | 'de';
  readonly translate: (text: string) => string;
}

const asWritten: DocumentLanguage = { tag: 'en', translate: (text) => text };

const Lines = ({ lines }: { readonly lines: readonly string[] }) => (
  <ul>
    {lines.map((line) => (
      <li key={line}>{line}</li>
    ))}
  </ul>
);

const Part = ({
  title,
  lines,
  advice = [],
  translate,
}: DocumentPart & Pick<DocumentLanguage, 'translate'>) => (
  <section className="stack-close keep-together">
    <h3>{title}</h3>
    {lines.length > 0 ? <Lines lines={lines} /> : null}
    {advice.length > 0 ? (
      <div className="document-advice">
        <p className="document-advice-title">{translate('Advice of the clinic')}</p>
        <Lines lines={advice} />
      </div>
    ) : null}
  </section>
);

export const DocumentView = ({ document, patientId, language = asWritten, children }: DocumentViewProps) => (
  <article className="document stack-wide">
    <p className="screen-only">
      <a href={`/patients/${patientId}/care/course`}>Back to the course of care</a>
    </p>
    {document === null ? (
      <p>
        There is nothing to write yet: this paper is put together when an episode of care has been closed.
      </p>
    ) : (
      <>
        {children}
        <ReadFirst advice={adviceOf(document)} language={language.tag} />
        <div lang={language.tag} className="stack-wide">
          <p className="document-from print-only">
            {document.from.map((line) => (
              <span key={line}>{line}</span>
            ))}
          </p>
          <h2>{document.title}</h2>
          <p className="print-only">{document.about}</p>
          {document.parts.map((part) => (
            <Part key={part.title} {...part} translate={language.translate} />
          ))}
          <p className="document-sign print-only">
            {language.translate('Read and signed by the clinician, with name and date:')}
          </p>
        </div>
      </>
    )}
  </article>
);
