/** A proposed dose with everything a signature rests on: what changes this dose open, the rest folded and printed. */
import type { ReactNode } from 'react';
import { largeStepPercent, shareOf } from '#core/decision/dose/volume.ts';
import { changesFromInForce } from '#core/prescribing/changes-in-words.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { doseInShort } from '#core/prescribing/dose-in-short.ts';
import { cautionsParted, notesParted } from '#core/prescribing/proposal-parts.ts';
import { counted, jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/prescribing/workbench.ts';
import { say as sayPlain } from '#messages/en/staff/prescribing.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { Mark, type Shape } from '#ui/design-system/mark.tsx';
import type { Proposed, Version } from '../answers.ts';
import { doseInWords, doseTitle } from '../dose-words.ts';
import { supportInWords } from '../support-note.tsx';
import { largeStepInWords } from '../worklist/dose-step.ts';
import { CautionList } from './caution-list.tsx';
import { DoseLarge } from './dose-large.tsx';
import { type Held, heldInWords } from './held.ts';

interface ProposalCardProps {
  readonly proposed: Proposed;
  /** The version in force that it takes the place of; null for a new exercise. */
  readonly inForce: Pick<Version, 'dose' | 'badDay' | 'cautions'> | null;
  readonly held: readonly Held[];
  /** What is done with it, under what changes this dose. */
  readonly children?: ReactNode;
}

const Line = (props: {
  readonly shape: Shape;
  readonly tone?: 'care' | 'danger';
  readonly children: ReactNode;
}) => (
  <li className={props.tone ? `card-line card-${props.tone}` : 'card-line'}>
    <Mark shape={props.shape} />
    <span>{props.children}</span>
  </li>
);

/** A tenth more in all is named, as a tenth more load is: a slip of typing lies there. */
const wholeMoreInWords = (before: Dose, now: Dose): string | null => {
  const share = shareOf(now, before);
  const percent = share === null ? 0 : Math.round((share - 1) * 100);
  return percent > largeStepPercent ? say('whole-more', { percent }) : null;
};

const easierChange = (before: Dose, now: Dose): string | null => {
  const [from, to] = [doseInShort(before), doseInShort(now)];
  return from === to ? null : say('easier-change', { from, to });
};

type InForce = NonNullable<ProposalCardProps['inForce']>;

const InAll = ({
  proposed,
  inForce,
}: Pick<ProposalCardProps, 'proposed'> & { readonly inForce: InForce }) => {
  const whole = wholeMoreInWords(inForce.dose, proposed.dose);
  const easier = easierChange(inForce.badDay, proposed.badDay);
  return (
    <>
      {whole ? (
        <Line shape="care" tone="care">
          {whole}
        </Line>
      ) : null}
      {easier ? <Line shape="note">{easier}</Line> : null}
    </>
  );
};

/** What changes this dose, or speaks of this dose alone; never behind a press. */
const Open = ({ proposed, inForce, held }: ProposalCardProps) => {
  const heldBy = heldInWords(held, proposed.joints);
  const before = inForce?.dose ?? null;
  const large = largeStepInWords(before, proposed.dose);
  const { open } = cautionsParted(proposed.cautions, inForce?.cautions ?? null);
  return (
    <>
      <ul className="plain-list lined card-lines">
        {heldBy ? (
          <Line shape="stop" tone="danger">
            {say('held.card', { by: heldBy })}
          </Line>
        ) : null}
        {before
          ? changesFromInForce(before, proposed.dose).map((change) => (
              <li key={change}>
                <strong>{change}</strong>
              </li>
            ))
          : null}
        {large ? (
          <Line shape="care" tone="care">
            {large}
          </Line>
        ) : null}
        {inForce ? <InAll proposed={proposed} inForce={inForce} /> : null}
        {notesParted(proposed.notes).open.map((note) => (
          <Line key={`${note.code} ${note.text}`} shape="note">
            {note.text}
          </Line>
        ))}
      </ul>
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
        {say('to-be-signed')} · {doseTitle(proposed.dose)}
      </p>
      <DoseLarge dose={proposed.dose} />
      <p className="small">
        <strong>{sayPlain('easier')}</strong> {doseInWords(proposed.badDay)}
      </p>
      <Open {...props} />
      {props.children}
      <p className="small">
        <strong>{sayPlain('monitored')}</strong>{' '}
        {sayPlain('monitored-note', { joints: proposed.joints.map(jointInWords).join(', ') })}
      </p>
      <Folded {...props} />
    </div>
  );
};
