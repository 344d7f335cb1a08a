/** The letters of one person, newest first, each with its state, and a new one. */
import type { Addressee } from '#core/episode/letters/letter.ts';
import { say } from '#messages/en/staff/papers/letters.ts';
import { Notice } from '#ui/design-system/notice.tsx';
import { wholeDayText } from '../../language/text-of-time.ts';
import type { Letters } from '../answers.ts';
import { type ClinicClock, momentInWords } from '../when.ts';
import { BeginLetter } from './letter-forms.tsx';

interface LettersScreenProps {
  readonly patientId: string;
  readonly answer: Letters;
  /** Of the addressees offered again, the one that was chosen. */
  readonly again: Addressee | null;
  /** Notes chosen for the new letter, in one text. */
  readonly notes: string;
  readonly notesCount: number;
  readonly clock: ClinicClock;
}

const placed = ({ name, organisation }: Pick<Addressee, 'name' | 'organisation'>): string =>
  organisation ? say('to-place', { name, place: organisation }) : name;

const lineOf = (letter: Letters['letters'][number], clock: ClinicClock): string => {
  const to = placed(letter);
  if (letter.voided) {
    const { on, by, reason } = letter.voided;
    return say('void-line', { to, on: wholeDayText(on), name: by, reason });
  }
  return letter.signed
    ? say('signed-line', { to, on: wholeDayText(letter.signed.on), name: letter.signed.by })
    : say('draft-line', { to, at: momentInWords(letter.savedAt, clock), name: letter.savedBy });
};

export const NotAgreed = ({ patientId }: { readonly patientId: string }) => (
  <Notice tone="care" title={say('not-agreed')}>
    <p>
      <a href={`/patients/${patientId}/care`}>{say('ask-first')}</a>
    </p>
  </Notice>
);

const Again = ({ patientId, answer, notes }: LettersScreenProps) =>
  answer.addressees.length === 0 ? null : (
    <section className="stack-close" aria-labelledby="letter-again">
      <h3 id="letter-again">{say('use-again')}</h3>
      <ul>
        {answer.addressees.map((one, at) => (
          <li key={placed(one)}>
            <a
              href={`/patients/${patientId}/care/letters?${new URLSearchParams({ again: String(at), notes })}`}
            >
              {placed(one)}
            </a>
          </li>
        ))}
      </ul>
    </section>
  );

const referrerOf = ({ referrer }: Letters): Addressee | null =>
  referrer ? { name: referrer.slice(0, 120), role: null, organisation: null, address: null } : null;

export const LettersScreen = (props: LettersScreenProps) => {
  const { patientId, answer, again, notes, notesCount, clock } = props;
  return (
    <div className="visit-notes">
      <section className="stack" aria-labelledby="new-letter">
        <h2 id="new-letter">{say('new')}</h2>
        <p className="soft small">{say('new-about')}</p>
        {answer.mayTellOthers ? null : <NotAgreed patientId={patientId} />}
        <Again {...props} />
        <BeginLetter
          key={JSON.stringify(again)}
          patientId={patientId}
          notes={notes}
          addressee={again ?? referrerOf(answer)}
        />
        <p className="soft small">
          {notesCount > 0 ? (
            say('notes-chosen', { count: notesCount })
          ) : (
            <a href={`/patients/${patientId}/care/notes`}>{say('choose-notes')}</a>
          )}
        </p>
      </section>
      <section className="stack-close" aria-labelledby="letters-heading">
        <h2 id="letters-heading">{say('title')}</h2>
        {answer.letters.length === 0 ? <p className="soft">{say('none')}</p> : null}
        <ul className="stack-close">
          {answer.letters.map((letter) => (
            <li key={letter.letterId}>
              <a href={`/patients/${patientId}/care/letters/${letter.letterId}`}>{lineOf(letter, clock)}</a>
            </li>
          ))}
        </ul>
      </section>
    </div>
  );
};
