/** A proposed dose with everything a signature rests on. */
import { jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/prescribing.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { Proposed } from '../answers.ts';
import { doseInWords, doseTitle } from '../dose-words.ts';
import { supportInWords } from '../support-note.tsx';
import { CautionList } from './caution-list.tsx';

export const ProposalView = ({ proposed }: { readonly proposed: Proposed }) => (
  <div className="stack">
    <p className="prescribed-dose">
      <strong>{doseTitle(proposed.dose)}</strong>
      <br />
      {doseInWords(proposed.dose)}
    </p>
    {proposed.notes.length > 0 ? (
      <ul className="notes">
        {proposed.notes.map((note) => (
          <li key={`${note.code} ${note.text}`}>{note.text}</li>
        ))}
      </ul>
    ) : null}
    <section className="stack-close">
      <h3>{say('working')}</h3>
      <ol>
        {proposed.working.map((line) => (
          <li key={line.text}>
            {line.text} <span className="soft">({supportInWords(line.support)})</span>
          </li>
        ))}
      </ol>
    </section>
    <p>
      <strong>{say('easier')}</strong> {doseInWords(proposed.badDay)}
    </p>
    <p>
      <strong>{say('monitored')}</strong>{' '}
      {say('monitored-note', { joints: proposed.joints.map(jointInWords).join(', ') })}
    </p>
    <Disclosure summary={say('cautions', { count: proposed.cautions.length })} isOpen>
      <CautionList cautions={proposed.cautions} />
    </Disclosure>
  </div>
);
