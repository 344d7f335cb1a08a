/** What is prescribed, as the colleague finds it: first what nobody has signed. */
import { say } from '#messages/en/staff/handover.ts';
import { doseInWords, doseTitle } from '#ui/clinician/dose-words.ts';
import type { HandoverAnswer } from '../episode/answers.ts';

export const Doses = ({ handover }: { readonly handover: Pick<HandoverAnswer, 'unsigned' | 'inForce'> }) => (
  <section className="stack-close">
    <h3>{say('not-signed-yet')}</h3>
    {handover.unsigned.length === 0 ? <p className="soft">{say('no-prescription-needs')}</p> : null}
    <ul>
      {handover.unsigned.map(({ id, dose }) => (
        <li key={id}>
          <strong>{doseTitle(dose)}</strong>: {doseInWords(dose)}.
        </li>
      ))}
    </ul>
    <h4>{say('in-force')}</h4>
    {handover.inForce.length === 0 ? <p className="soft">{say('no-prescription-is-in-force')}</p> : null}
    <ul>
      {handover.inForce.map(({ id, dose, signedName }) => (
        <li key={id}>
          <strong>{doseTitle(dose)}</strong>: {doseInWords(dose)}.{' '}
          <span className="soft">{say('signed-by', { name: signedName ?? '' })}</span>
        </li>
      ))}
    </ul>
  </section>
);
