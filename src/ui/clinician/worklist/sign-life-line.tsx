/** How far a warning sign has come, on one line; the open step in bold. */
import { say } from '#messages/en/staff/worklist.ts';
import type { SignLife } from './sign-life.ts';

export const SignLifeLine = ({ steps, due }: SignLife) => (
  <div className="life">
    <ol className="life-steps" aria-label={say('life')}>
      {steps.map(({ text, state }) => (
        <li key={text} className={`life-${state}`}>
          {text}
        </li>
      ))}
    </ol>
    {due ? <p className={due.isOver ? 'life-open' : undefined}>{due.text}</p> : null}
  </div>
);
