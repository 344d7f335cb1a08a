'use client';
/** Email and passphrase; what was typed stays, the passphrase apart. */
import { type FormEvent, type ReactNode, useState } from 'react';
import './words.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary, type Problem } from '#ui/design-system/error-summary.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { usePosted } from '#ui/design-system/posted/posted.tsx';
import { PostedForm } from '#ui/design-system/posted/posted-form.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { spokenOf } from '#ui/language/said.ts';
import { t } from '#ui/language/words.ts';
import { CodeForm } from './code-form.tsx';
import { PasskeyButton } from './passkey-button.tsx';
import { goOnSignedIn } from './saved-page.ts';
import { askSignIn, problemAfter, problemsOf } from './sign-in.ts';

interface DemoPerson {
  readonly email: string;
  readonly about: string;
}

export interface SignInFormProps {
  readonly hasPasskeys: boolean;
  /** Shown in the demo only. */
  readonly demo?: { readonly people: readonly DemoPerson[]; readonly passphrase: string };
  /** Who looks at what is sent, where the clinic is known before anybody signs in. */
  readonly children?: ReactNode;
}

const DemoPeople = ({
  demo,
  onUse,
}: {
  readonly demo: NonNullable<SignInFormProps['demo']>;
  readonly onUse: (email: string) => void;
}) => (
  <section className="stack-close">
    <h2>{t('sign-in.demo-title')}</h2>
    <p>{t('sign-in.demo', { passphrase: demo.passphrase })}</p>
    <ul className="demo-people">
      {demo.people.map((person) => (
        <li key={person.email} className="demo-person">
          <span>
            {person.email}
            <span className="choice-hint">{person.about}</span>
          </span>
          <Button tone="quiet" onClick={() => onUse(person.email)}>
            {t('sign-in.demo-use')}
            <span className="visually-hidden"> {person.email}</span>
          </Button>
        </li>
      ))}
    </ul>
  </section>
);

/** Two fields and what is wrong with them; the passphrase is emptied after a refusal. */
const useSignIn = () => {
  const posted = usePosted('sign-in');
  const [email, setEmail] = useState(posted?.typed.email ?? '');
  const [passphrase, setPassphrase] = useState('');
  const [problems, setProblems] = useState<readonly Problem[]>(posted?.problems ?? []);
  const [isGoing, setGoing] = useState(false);
  const [asksCode, setAsksCode] = useState(posted?.step === 'code');
  const submit = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    // A password manager may fill the fields without telling the page: the form itself is read.
    const form = new FormData(event.currentTarget);
    const typed = { email: String(form.get('email')).trim(), passphrase: String(form.get('passphrase')) };
    const wrong = problemsOf(typed.email, typed.passphrase);
    setProblems(wrong.map(spokenOf));
    if (wrong.length > 0) return;
    setGoing(true);
    const reply = await askSignIn('/sign-in/email', { email: typed.email, password: typed.passphrase });
    const problem = problemAfter(reply, 'passphrase');
    if (!problem && !reply.asksCode) return goOnSignedIn();
    setGoing(false);
    if (!problem) return setAsksCode(true);
    setEmail(typed.email);
    setPassphrase('');
    setProblems([spokenOf(problem)]);
  };
  return { email, setEmail, passphrase, setPassphrase, problems, isGoing, asksCode, submit };
};

export const SignInForm = ({ hasPasskeys, demo, children }: SignInFormProps) => {
  const at = useSignIn();
  if (at.asksCode) return <CodeForm onDone={goOnSignedIn} />;
  const errorAt = (field: string) => at.problems.find((problem) => problem.field === field)?.text;
  return (
    <div className="stack-wide">
      <PostedForm form="sign-in" className="stack" onSubmit={at.submit}>
        <ErrorSummary problems={at.problems} />
        <PageHeading>{t('sign-in.title')}</PageHeading>
        <TextField
          name="email"
          type="email"
          label={t('sign-in.email')}
          autoComplete="username"
          autoCapitalize="none"
          spellCheck={false}
          error={errorAt('email')}
          value={at.email}
          onChange={(event) => at.setEmail(event.target.value)}
        />
        <TextField
          name="passphrase"
          type="password"
          label={t('sign-in.passphrase')}
          autoComplete="current-password"
          error={errorAt('passphrase')}
          value={at.passphrase}
          onChange={(event) => at.setPassphrase(event.target.value)}
        />
        <Button type="submit" isLarge disabled={at.isGoing}>
          {t(at.isGoing ? 'sign-in.going' : 'sign-in.go')}
        </Button>
        <p className="soft">{t('sign-in.help')}</p>
        <p className="soft">{t('sign-in.cover')}</p>
      </PostedForm>
      {hasPasskeys ? <PasskeyButton onDone={goOnSignedIn} /> : null}
      {children}
      {demo ? (
        <DemoPeople
          demo={demo}
          onUse={(email) => {
            at.setEmail(email);
            at.setPassphrase(demo.passphrase);
          }}
        />
      ) : null}
    </div>
  );
};
