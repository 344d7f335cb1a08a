'use client';
/** All that is wrong on a page, at its top. Takes focus when it appears; each line goes to its answer. */
import { useEffect, useRef } from 'react';
import { t } from '#ui/language/words.ts';

export interface Problem {
  /** id of the control: the field's name unless it was given another. */
  readonly field: string;
  readonly text: string;
}

export const ErrorSummary = ({ problems }: { readonly problems: readonly Problem[] }) => {
  const box = useRef<HTMLDivElement>(null);
  const known = useRef<readonly Problem[]>([]);
  useEffect(() => {
    // One that was put right leaves the list; whoever types on is not called back to it.
    if (problems.some((problem) => !known.current.includes(problem))) box.current?.focus();
    known.current = problems;
  }, [problems]);
  if (problems.length === 0) return null;
  return (
    <div className="error-summary" role="alert" tabIndex={-1} ref={box}>
      <h2>{t('ask.problem')}</h2>
      <ul>
        {problems.map((problem) => (
          <li key={`${problem.field} ${problem.text}`}>
            <a
              href={`#${problem.field}`}
              onClick={(event) => {
                // The page's own history counts steps; a link to a field is not one.
                event.preventDefault();
                const control = document.getElementById(problem.field);
                control?.focus({ preventScroll: true });
                (control?.closest('.field') ?? control)?.scrollIntoView({ block: 'start' });
              }}
            >
              {problem.text}
            </a>
          </li>
        ))}
      </ul>
    </div>
  );
};
