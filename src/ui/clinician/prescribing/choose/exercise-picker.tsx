/** Exercises found by a search, those that can be proposed now first; works before any script has come. */

import { sideOf, sides } from '#core/exercises/joints.ts';
import type { Way, WayNotPossible } from '#core/prescribing/exercise-choice.ts';
import { prescriptionTemplates } from '#core/prescribing/templates.ts';
import { counted } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/prescribing/workbench.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { Choice, ClinicTemplate, Version } from '../../answers.ts';
import { methodInWords } from '../../words.ts';
import { TemplatePick } from '../templates/template-pick.tsx';
import { addressOf, type ChoiceAddress, searchOf } from './choice-address.ts';
import { PickerForm } from './picker-form.tsx';

export interface PickerProps {
  readonly patientId: string;
  readonly at: ChoiceAddress;
  readonly choices: readonly Choice[];
  readonly inForce: readonly Version[];
  /** Of the clinic, those that are offered. */
  readonly templates: readonly ClinicTemplate[];
}

/** On the first page of what is possible. */
const firstShown = 7;

const sideWords = { left: 'left', right: 'right', both: say('side.both') } as const;

const wayInWords = ({ method, side }: Way): string =>
  say('way', { method: methodInWords[method], side: sideWords[side] });

/** To the version in force where there is one of this exercise, method and side. */
const hrefOf = (
  { patientId, at, inForce }: PickerProps,
  exerciseId: string,
  { method, side }: Way,
): string => {
  const version = inForce.find(
    ({ dose }) => dose.exerciseId === exerciseId && dose.method === method && dose.side === side,
  );
  const search = { ...searchOf(at), exerciseId, method, side };
  return addressOf(patientId, version ? { ...search, line: version.itemId } : search);
};

const isChosen = ({ at }: PickerProps, exerciseId: string, way: Way): boolean =>
  at.exerciseId === exerciseId && at.method === way.method && at.side === way.side;

const WayLink = (props: PickerProps & { readonly choice: Choice; readonly way: Way }) => {
  const { choice, way } = props;
  return (
    <a
      href={hrefOf(props, choice.exerciseId, way)}
      aria-current={isChosen(props, choice.exerciseId, way) ? 'true' : undefined}
    >
      {wayInWords(way)}
      <span className="visually-hidden">: {choice.trade}</span>
    </a>
  );
};

const Possible = (props: PickerProps & { readonly choice: Choice }) => {
  const { choice } = props;
  return (
    <li>
      <p className="choice-name">
        <strong>{choice.trade}</strong>
        {choice.isInForce ? <span className="soft one-line">{say('in-force')}</span> : null}
      </p>
      <p className="soft">{choice.plain}</p>
      <p className="choice-ways">
        {choice.possible.map((way) => (
          <WayLink key={`${way.method} ${way.side}`} {...props} way={way} />
        ))}
      </p>
    </li>
  );
};

interface NotNow {
  readonly choice: Choice;
  readonly way: WayNotPossible;
}

/** By what stands in the way: many exercises wait for the same. */
const byReason = (choices: readonly Choice[]): readonly (readonly [string, readonly NotNow[]])[] => {
  const groups = new Map<string, NotNow[]>();
  for (const choice of choices)
    for (const way of choice.notPossible) {
      const reason = way.reasons.join(' ');
      groups.set(reason, [...(groups.get(reason) ?? []), { choice, way }]);
    }
  return [...groups];
};

const NotPossible = (props: PickerProps & { readonly choices: readonly Choice[] }) => {
  const rows = byReason(props.choices);
  const count = props.choices.filter(({ possible }) => possible.length === 0).length;
  return rows.length === 0 ? null : (
    <Disclosure
      summary={count > 0 ? say('not-possible', { exercises: counted(count, 'exercise') }) : say('other-ways')}
    >
      {rows.map(([reason, found]) => (
        <section key={reason} className="stack-close">
          <p>{reason}</p>
          <ul className="small">
            {found.map(({ choice, way }) => (
              <li key={`${choice.exerciseId} ${way.method} ${way.side}`}>
                {choice.trade}:{' '}
                {way.isMissing ? <WayLink {...props} choice={choice} way={way} /> : wayInWords(way)}
              </li>
            ))}
          </ul>
        </section>
      ))}
    </Disclosure>
  );
};

/** Each on the side the search is about, where it is about one. */
const Starts = (props: PickerProps) => {
  const { at } = props;
  const side = at.joint ? sideOf(at.joint) : null;
  const worked = side ? [side] : sides;
  return (
    <Disclosure summary={say('starts', { count: prescriptionTemplates.length })}>
      <p className="soft">{say('starts.about')}</p>
      <ul className="small">
        {prescriptionTemplates.map(({ id, title, request: { exerciseId, method } }) => (
          <li key={id}>
            {title}:{' '}
            {worked.map((one) => (
              <span key={one}>
                <a href={hrefOf(props, exerciseId, { method, side: one })}>
                  {wayInWords({ method, side: one })}
                  <span className="visually-hidden">: {title}</span>
                </a>{' '}
              </span>
            ))}
          </li>
        ))}
      </ul>
    </Disclosure>
  );
};

const anyMethod = ({ method: _, ...at }: ChoiceAddress): ChoiceAddress => searchOf(at);

export const ExercisePicker = (props: PickerProps) => {
  const { choices, at, patientId } = props;
  const possible = choices.filter((choice) => choice.possible.length > 0);
  const shown = at.isAll ? possible : possible.slice(0, firstShown);
  return (
    <section className="picker stack-close screen-only" aria-labelledby="picker-heading">
      <div className="side-head">
        <h2 id="picker-heading">{say('exercise')}</h2>
        <p className="soft">{say('exercise.names')}</p>
      </div>
      <PickerForm patientId={patientId} at={at} />
      <p role="status" className="soft small">
        {say('found', { possible: possible.length, all: choices.length })}
      </p>
      {at.method ? (
        <p className="small">
          <a href={addressOf(patientId, anyMethod(at))}>
            {say('any-method', { method: methodInWords[at.method] })}
          </a>
        </p>
      ) : null}
      <ul className="plain-list lined" id="possible">
        {shown.map((choice) => (
          <Possible key={choice.exerciseId} {...props} choice={choice} />
        ))}
      </ul>
      {shown.length < possible.length ? (
        <p>
          <a href={`${addressOf(patientId, { ...at, isAll: true })}#possible`}>
            {say('show-all', { count: possible.length })}
          </a>
        </p>
      ) : null}
      <div className="folded">
        <TemplatePick {...props} />
        <Starts {...props} />
        <NotPossible {...props} choices={choices} />
      </div>
    </section>
  );
};
