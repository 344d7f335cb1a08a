/** A paper on the screen and in print: its parts in order, then a line to sign on. */
import type { ReactNode } from 'react';
import { adviceOf, type CareDocument, type DocumentPart } from '#core/episode/documents/document-words.ts';
import { say } from '#messages/en/staff/documents.ts';
import type { LanguageTag } from '#messages/languages.ts';
import { ReadFirst } from './read-first.tsx';

export interface DocumentViewProps {
  /** null where the episode of care has not been closed, or there is none. */
  readonly document: CareDocument | null;
  readonly patientId: string;
  /** Address of the same as a file. */
  readonly pdf: string;
  /** Language of the paper itself; what stands around it for the clinician is English. */
  readonly language?: LanguageTag;
  /** Leads to the same paper in another language. */
  readonly children?: ReactNode;
}

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
  adviceTitle,
}: DocumentPart & Pick<CareDocument, 'adviceTitle'>) => (
  <section className="stack-close keep-together">
    <h3>{title}</h3>
    {lines.length > 0 ? <Lines lines={lines} /> : null}
    {advice.length > 0 ? (
      <div className="document-advice">
        <p className="document-advice-title">{adviceTitle}</p>
        <Lines lines={advice} />
      </div>
    ) : null}
  </section>
);

export const DocumentView = ({ document, patientId, pdf, language = 'en', children }: DocumentViewProps) => (
  <article className="document stack-wide">
    <p className="screen-only">
      <a href={`/patients/${patientId}/care/episode`}>{say('back-to-the-episode-of-care')}</a>
    </p>
    {document === null ? (
      <p>{say('this-document-can-be-made')}</p>
    ) : (
      <>
        {children}
        <ReadFirst advice={adviceOf(document)} language={language} pdf={pdf} />
        <div lang={language} className="stack-wide">
          <p className="document-from print-only">
            {document.from.map((line) => (
              <span key={line}>{line}</span>
            ))}
          </p>
          <h2>{document.title}</h2>
          <p className="print-only">{document.about}</p>
          {document.parts.map((part) => (
            <Part key={part.title} {...part} adviceTitle={document.adviceTitle} />
          ))}
          <p className="document-sign print-only">{document.signature}</p>
        </div>
      </>
    )}
  </article>
);
