'use client';
/** The second step of signing in: a one-time code, or one of the recovery codes. */
import { type FormEvent, useState } from 'react';
import './words.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary, type Problem } from '#ui/design-system/error-summary.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { usePosted } from '#ui/design-system/posted/posted.tsx';
import { PostedForm } from '#ui/design-system/posted/posted-form.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { spokenOf } from '#ui/language/said.ts';
import { t } from '#ui/language/words.ts';
import { askSignIn, type CodeKind, codeDoors, codeProblem, problemAfter } from './sign-in.ts';

const useCode = (onDone: () => void) => {
  const posted = usePosted('sign-in-code');
  const [kind, setKind] = useState<CodeKind>(posted?.step === 'recovery' ? 'recovery' : 'code');
  const [problem, setProblem] = useState<Problem | null>(posted?.problems[0] ?? null);
  const [isGoing, setGoing] = useState(false);
  const submit = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const code = String(new FormData(event.currentTarget).get(kind)).replace(/\s/g, '');
    const typed = codeProblem(kind, code);
    setProblem(typed && spokenOf(typed));
    if (typed) return;
    setGoing(true);
    const refused = problemAfter(await askSignIn(codeDoors[kind], { code }), kind);
    if (!refused) return onDone();
    setGoing(false);
    setProblem(spokenOf(refused));
  };
  const change = () => {
    setKind(kind === 'code' ? 'recovery' : 'code');
    setProblem(null);
  };
  return { kind, problem, isGoing, submit, change };
};

export const CodeForm = ({ onDone }: { readonly onDone: () => void }) => {
  const { kind, problem, isGoing, submit, change } = useCode(onDone);
  const isCode = kind === 'code';
  return (
    <PostedForm form="sign-in-code" className="stack" onSubmit={submit}>
      <ErrorSummary problems={problem ? [problem] : []} />
      <PageHeading>{t('sign-in.code-title')}</PageHeading>
      <TextField
        key={kind}
        name={kind}
        label={t(isCode ? 'sign-in.code' : 'sign-in.recovery')}
        hint={t(isCode ? 'sign-in.code-hint' : 'sign-in.recovery-hint')}
        inputMode={isCode ? 'numeric' : 'text'}
        autoComplete={isCode ? 'one-time-code' : 'off'}
        autoCapitalize="none"
        spellCheck={false}
        error={problem?.text}
        className={isCode ? 'input input-short' : 'input'}
      />
      <div className="row">
        <Button type="submit" isLarge disabled={isGoing}>
          {t(isGoing ? 'sign-in.going' : 'sign-in.go')}
        </Button>
        <Button
          type="submit"
          name="other"
          value={isCode ? 'recovery' : 'code'}
          tone="quiet"
          onClick={(event) => {
            event.preventDefault();
            change();
          }}
        >
          {t(isCode ? 'sign-in.use-recovery' : 'sign-in.use-code')}
        </Button>
      </div>
    </PostedForm>
  );
};
