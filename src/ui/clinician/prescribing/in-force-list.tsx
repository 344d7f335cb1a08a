/** The doses in force, while no exercise is chosen: each leads to a new version of itself. */

import type { ClinicMachine } from '#core/clinic/machine.ts';
import { say } from '#messages/en/staff/prescribing/workbench.ts';
import { say as sayPlain } from '#messages/en/staff/prescribing.ts';
import { Mark } from '#ui/design-system/mark.tsx';
import type { Version } from '../answers.ts';
import { doseInWords, doseTitle } from '../dose-words.ts';
import { addressOf, type ChoiceAddress, searchOf } from './choose/choice-address.ts';
import { goneInWords } from './place/machines.ts';

export const InForceList = (props: {
  readonly patientId: string;
  readonly at: ChoiceAddress;
  readonly inForce: readonly Version[];
  readonly machines: readonly ClinicMachine[];
}) => (
  <section className="stack-close" aria-labelledby="in-force-heading">
    <div className="side-head">
      <h2 id="in-force-heading">{sayPlain('in-force')}</h2>
      <p className="soft">{say('choose-first')}</p>
    </div>
    {props.inForce.length === 0 ? <p className="soft">{sayPlain('none-in-force')}</p> : null}
    <ul className="plain-list lined">
      {props.inForce.map(({ id, itemId, dose }) => (
        <li key={id}>
          <strong>{doseTitle(dose)}</strong>
          <p>{doseInWords(dose)}</p>
          {goneInWords(props.machines, dose).map((text) => (
            <p key={text} className="card-line card-care">
              <Mark shape="care" />
              <span>{text}</span>
            </p>
          ))}
          <p className="small">
            <a
              href={addressOf(props.patientId, {
                ...searchOf(props.at),
                method: dose.method,
                line: itemId,
              })}
            >
              {sayPlain('write-version')}
              <span className="visually-hidden">: {doseTitle(dose)}</span>
            </a>
          </p>
        </li>
      ))}
    </ul>
  </section>
);
