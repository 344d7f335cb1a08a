/** A paper on the screen and in print: its parts in order, then a line to sign on. */
import type { Paper } from '#core/care/paper-words.ts';

export interface PaperViewProps {
  /** null where the stretch of care has not been closed, or there is none. */
  readonly paper: Paper | null;
  readonly patientId: string;
}

export const PaperView = ({ paper, patientId }: PaperViewProps) => (
  <article className="stack-wide">
    <p className="screen-only">
      <a href={`/patients/${patientId}/care/course`}>Back to the course of care</a>
    </p>
    {paper === null ? (
      <p>There is nothing to write yet: this paper is put together when a stretch of care has been closed.</p>
    ) : (
      <>
        <h2>{paper.title}</h2>
        <p className="screen-only soft">Read it before you print and sign it. Nothing is sent from here.</p>
        {paper.parts.map((part) => (
          <section key={part.title} className="stack-close keep-together">
            <h3>{part.title}</h3>
            <ul>
              {part.lines.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </section>
        ))}
        <p className="print-only">Read and signed by the clinician, with name and date:</p>
      </>
    )}
  </article>
);
