/** One letter: while it is a draft to whom it goes and what it says; then what was signed, and whether it still counts. */
import { say } from '#messages/en/staff/papers/letters.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { wholeDayText } from '../../language/text-of-time.ts';
import type { Letter } from '../answers.ts';
import { PaperLink } from '../documents/paper-link.tsx';
import { ChangeLetter, SignLetter, SummaryForm, VoidLetter } from './letter-forms.tsx';
import { LetterWordsView } from './letter-words.tsx';
import { NotAgreed } from './letters-screen.tsx';

interface LetterScreenProps {
  readonly patientId: string;
  readonly letter: Letter;
  readonly signer: string;
}

const State = ({ letter: { state, signed, voided } }: Pick<LetterScreenProps, 'letter'>) => {
  if (voided) {
    const { on, by, reason } = voided;
    return <Notice tone="care" title={say('state-void', { on: wholeDayText(on), name: by, reason })} />;
  }
  return (
    <p>
      <strong>
        {state === 'signed' && signed
          ? say('state-signed', { on: wholeDayText(signed.on), name: signed.by })
          : say('state-draft')}
      </strong>
    </p>
  );
};

const Papers = ({ patientId, letter: { letterId } }: LetterScreenProps) => (
  <p className="row">
    <PaperLink kind="letter" patientId={patientId} asked={{ letter: letterId }}>
      {say('as-pdf')}
    </PaperLink>
    <PaperLink kind="letter" patientId={patientId} asked={{ letter: letterId, paper: 'letter' }}>
      {say('as-pdf-us')}
    </PaperLink>
    <PaperLink kind="letter" patientId={patientId} asked={{ letter: letterId, large: '1' }}>
      {say('as-pdf-large')}
    </PaperLink>
  </p>
);

const Writing = ({ patientId, letter, signer }: LetterScreenProps) => {
  const { letterId, draft, made, digest, signsAs } = letter;
  const about = { patientId, letterId, seen: String(letter.seen) };
  return (
    <>
      <section className="stack-close" aria-labelledby="letter-to-whom">
        <h2 id="letter-to-whom">{say('to-whom')}</h2>
        <p className="soft small">{say('language-changed')}</p>
        <ChangeLetter
          about={about}
          addressee={draft}
          copies={draft.copies ?? ''}
          toPatient={draft.toPatient}
          language={draft.language}
        />
      </section>
      {made ? (
        <section className="stack-close" aria-labelledby="letter-sentences">
          <h2 id="letter-sentences">{say('sentences')}</h2>
          <p className="soft small">{say('sentences-about')}</p>
          <SummaryForm key={draft.language} about={about} made={made} own={draft.own} />
        </section>
      ) : null}
      <section className="stack-close" aria-labelledby="letter-sign">
        <h2 id="letter-sign">{say('sign')}</h2>
        {letter.mayTellOthers ? null : <NotAgreed patientId={patientId} />}
        <p className="soft small">{say('sign-about')}</p>
        <SignLetter
          about={{ ...about, digest }}
          signer={signer}
          role={signsAs?.role ?? ''}
          registration={signsAs?.registration ?? ''}
        />
      </section>
    </>
  );
};

export const LetterScreen = (props: LetterScreenProps) => {
  const { patientId, letter } = props;
  const { letterId, state } = letter;
  return (
    <div className="stack">
      <p>
        <a href={`/patients/${patientId}/care/letters`}>{say('back')}</a>
      </p>
      <State letter={letter} />
      {letter.notesGone > 0 ? (
        <Notice tone="care" title={say('notes-gone', { count: letter.notesGone })} />
      ) : null}
      <Papers {...props} />
      <div className="visit-notes">
        <section className="stack-close" aria-labelledby="letter-read">
          <h2 id="letter-read">{say(state === 'draft' ? 'read' : 'as-signed')}</h2>
          <LetterWordsView words={letter.words} />
        </section>
        <div className="stack-wide">
          {state === 'draft' ? <Writing {...props} /> : null}
          {state === 'void' ? null : (
            <Disclosure summary={say('make-void')}>
              <div className="stack-close">
                <p className="soft small">{say('void-about')}</p>
                <VoidLetter patientId={patientId} letterId={letterId} />
              </div>
            </Disclosure>
          )}
        </div>
      </div>
    </div>
  );
};
