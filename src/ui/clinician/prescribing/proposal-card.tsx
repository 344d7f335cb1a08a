/** A proposed dose with everything a signature rests on: what changes this dose open, the rest folded and printed. */
import type { ReactNode } from 'react';
import { jointsToTell } from '#core/exercises/catalogue.ts';
import { cautionsParted, notesParted } from '#core/prescribing/proposal-parts.ts';
import { counted, jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/prescribing/workbench.ts';
import { say as sayPlain } from '#messages/en/staff/prescribing.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { doseInWords, doseTitle } from '../dose-words.ts';
import { supportInWords } from '../support-note.tsx';
import { CardLines, type CardLinesProps } from './card-lines.tsx';
import { CautionList } from './caution-list.tsx';
import { DoseLarge } from './dose-large.tsx';

interface ProposalCardProps extends CardLinesProps {
  readonly isSigned?: boolean;
  /** What is done with it, under what changes this dose. */
  readonly children?: ReactNode;
}

/** What changes this dose, or speaks of this dose alone; never behind a press. */
const Open = (props: ProposalCardProps) => {
  const { proposed, inForce } = props;
  const { open } = cautionsParted(proposed.cautions, inForce?.cautions ?? null);
  return (
    <>
      <CardLines {...props} />
      {open.length > 0 ? (
        <section className="stack-close card-own">
          <h3>{say(inForce ? 'own.title-new' : 'own.title')}</h3>
          <ul className="cautions">
            {open.map((caution) => (
              <li key={caution.id}>
                {caution.text} <span className="soft">({supportInWords(caution.support)})</span>
              </li>
            ))}
          </ul>
        </section>
      ) : null}
    </>
  );
};

const Folded = ({ proposed, inForce }: ProposalCardProps) => {
  const { open, folded: cautions } = cautionsParted(proposed.cautions, inForce?.cautions ?? null);
  const general = notesParted(proposed.notes).folded;
  return (
    <div className="folded">
      <Disclosure summary={say('cautions.folded', { count: cautions.length })}>
        <CautionList cautions={cautions} />
      </Disclosure>
      {open.length > 0 ? (
        <Disclosure summary={say('patient-words.folded', { count: open.length })}>
          <ul className="notes">
            {open.map(({ id, toPatient }) => (
              <li key={id}>{toPatient}</li>
            ))}
          </ul>
        </Disclosure>
      ) : null}
      <Disclosure summary={say('working.folded', { steps: counted(proposed.working.length, 'step') })}>
        <ol>
          {proposed.working.map((line) => (
            <li key={line.text}>
              {line.text} <span className="soft">({supportInWords(line.support)})</span>
            </li>
          ))}
        </ol>
      </Disclosure>
      {general.length > 0 ? (
        <Disclosure summary={say('general.folded', { count: general.length })}>
          <ul className="notes">
            {general.map((note) => (
              <li key={`${note.code} ${note.text}`}>{note.text}</li>
            ))}
          </ul>
        </Disclosure>
      ) : null}
    </div>
  );
};

export const ProposalCard = (props: ProposalCardProps) => {
  const { proposed } = props;
  return (
    <div className="stack-close">
      <p className="soft small">
        {say(props.isSigned ? 'is-signed' : 'to-be-signed')} · {doseTitle(proposed.dose)}
      </p>
      <DoseLarge dose={proposed.dose} />
      <p className="small">
        <strong>{sayPlain('easier')}</strong> {doseInWords(proposed.badDay)}
      </p>
      <Open {...props} />
      {props.children}
      <p className="small">
        <strong>{sayPlain('monitored')}</strong>{' '}
        {sayPlain('monitored-note', {
          joints: jointsToTell(proposed.dose.exerciseId, proposed.dose.side, proposed.joints)
            .map(jointInWords)
            .join(', '),
        })}
      </p>
      <Folded {...props} />
    </div>
  );
};
