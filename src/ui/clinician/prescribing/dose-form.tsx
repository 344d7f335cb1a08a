'use client';
/** The fields of a dose: its figures beside those in force, then what is chosen, then what is seldom changed. */
import type { FormEvent, ReactNode } from 'react';
import type { Field, NumberField } from '#core/calculations/describe.ts';
import { exerciseById, exerciseTitle } from '#core/exercises/catalogue.ts';
import { say } from '#messages/en/staff/prescribing/workbench.ts';
import { say as sayPlain } from '#messages/en/staff/prescribing.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { Mark } from '#ui/design-system/mark.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { readNumber } from '#ui/design-system/read-number.ts';
import { DescriptorFields } from '../forms/descriptor-fields.tsx';
import { optionInWords } from '../forms/field-words.ts';
import type { Typed } from '../forms/typed.ts';
import type { Submit } from '../forms/use-submit.ts';
import { daysPlannedInWords } from '../programme/days-apart-words.ts';
import { methodInWords } from '../words.ts';
import { DoseFigures } from './dose-figures.tsx';
import { LadderTable } from './ladder-table.tsx';
import { isOnMachine, loadsChosen, machineChoices, machinesFor } from './place/machines.ts';
import type { PrescribeFormProps } from './prescribe-form-props.ts';
import { allAsked, schemeChoices } from './request-fields.ts';

interface DoseFormProps extends PrescribeFormProps {
  readonly typed: Typed;
  readonly onType: (path: string, text: string) => void;
  readonly submit: Submit;
  readonly onPropose: (event: FormEvent) => Promise<void>;
  /** Above the figures. */
  readonly note: ReactNode;
}

const ofMaximum = new Set(['knownOneRepMaxKg', 'percent']);

const isFigure = (field: Field): field is NumberField => field.kind === 'number' || field.kind === 'integer';

const isLoad = ({ name }: Field): boolean => name === 'loadKg' || name === 'addedKg';

/** A share of the maximum is one way to a load; of a cuff it is the pressure itself. */
const partsOf = ({ method, typed }: Pick<DoseFormProps, 'method' | 'typed'>) => {
  const asked = allAsked(method, typed).filter(({ name }) => name !== 'exerciseId');
  const isMaximum = ({ name }: Field) =>
    name === 'knownOneRepMaxKg' || (method === 'low-load' && ofMaximum.has(name));
  const figures = asked.filter((field): field is NumberField => isFigure(field) && !isMaximum(field));
  return {
    figures: figures.toSorted((a, b) => Number(isLoad(b)) - Number(isLoad(a))),
    chosen: asked.filter((field) => !isFigure(field)),
    maximum: asked.filter(isMaximum),
  };
};

/** What stands in force beside an answer that is chosen. */
const nowHints = (fields: readonly Field[], now: Typed | null) =>
  Object.fromEntries(
    fields.flatMap(({ name, kind }) =>
      now?.[name] && kind !== 'text'
        ? [[name, say('figures.now-is', { now: optionInWords(now[name]).toLowerCase() })]]
        : [],
    ),
  );

const hints = { knownOneRepMaxKg: sayPlain('maximum-hint') };
const ownedHint = (
  kg: readonly number[],
  key: 'figures.owned' | 'figures.of-machine',
): Readonly<Record<string, string>> =>
  kg.length > 0
    ? Object.fromEntries(
        ['loadKg', 'addedKg'].map((name) => [
          name,
          say(key, { low: Math.min(...kg), high: Math.max(...kg) }),
        ]),
      )
    : {};
const cuffHints = { percent: sayPlain('percent-hint'), tightness: sayPlain('tightness-hint') };

/** Then the load has to be one of those at home, or of the machine. */
const isOfItsPlace = ({ method, typed }: DoseFormProps): boolean =>
  method !== 'occlusion' || typed.supervised === 'no';

/** What a load is held against, and said of, beside its figure. */
const loadsBeside = (props: DoseFormProps) => {
  const ofMachine = loadsChosen(props.machines, props.typed);
  const loadsKg = ofMachine ?? props.ownedKg;
  return {
    ownedKg: isOfItsPlace(props) ? loadsKg : null,
    isOnMachine: ofMachine !== null,
    hints:
      props.method === 'occlusion'
        ? cuffHints
        : ownedHint(loadsKg, ofMachine ? 'figures.of-machine' : 'figures.owned'),
  };
};

const Ladder = (props: DoseFormProps) => {
  const family = exerciseById(props.typed.exerciseId ?? '')?.family ?? '';
  const rows = props.method === 'variation' ? props.ladders[family] : undefined;
  return rows ? (
    <Disclosure summary={say('levels')}>
      <p className="soft">{say('levels.hint')}</p>
      <LadderTable
        rows={rows}
        chosen={props.typed.exerciseId ?? ''}
        onChoose={(id) => props.onType('exerciseId', id)}
      />
    </Disclosure>
  ) : null;
};

/** What a load may be taken from instead, and the neighbouring levels of an exercise. */
const Seldom = (props: DoseFormProps & { readonly maximum: readonly Field[] }) => (
  <div className="folded">
    {props.maximum.length > 0 ? (
      <Disclosure summary={say('maximum')} isOpen={!props.isMaximumKnown}>
        <DescriptorFields
          typed={props.typed}
          onType={props.onType}
          errorOf={props.submit.errorOf}
          fields={props.maximum}
          hints={hints}
        />
      </Disclosure>
    ) : null}
    <Ladder {...props} />
  </div>
);

/** The trade name is of the exercise the page was opened with; another level has its own. */
const tradeAndMethod = ({ typed, start, trade, method }: DoseFormProps): string =>
  [...(typed.exerciseId === start.exerciseId ? [trade] : []), methodInWords[method]].join(' · ');

/** As it is typed; of a week with a clinician beside it says nothing. */
const DaysTyped = ({ typed, plannedDays }: Pick<DoseFormProps, 'typed' | 'plannedDays'>) => {
  const prescribed = readNumber(typed.sessionsPerWeek ?? '');
  const isWithClinician = typed.supervised === 'yes' || isOnMachine(typed.exerciseId ?? '');
  const isKnown = prescribed !== null && !Number.isNaN(prescribed) && !isWithClinician;
  return isKnown && plannedDays !== null && plannedDays !== prescribed ? (
    <p role="status" className="card-line card-care">
      <Mark shape="care" />
      <span>{daysPlannedInWords(plannedDays, prescribed)}</span>
    </p>
  ) : null;
};

export const DoseForm = (props: DoseFormProps) => {
  const { submit, typed, onType, now } = props;
  const { figures, chosen, maximum } = partsOf(props);
  const shared = { typed, onType, errorOf: submit.errorOf };
  return (
    <section className="stack-close" aria-labelledby="exerciseId">
      <div className="side-head">
        <h2 id="exerciseId" tabIndex={-1}>
          {exerciseTitle(typed.exerciseId ?? '')}
        </h2>
        <p className="soft">{tradeAndMethod(props)}</p>
      </div>
      <ScriptedForm className="stack-close" onSubmit={(event) => void props.onPropose(event)}>
        <ErrorSummary problems={submit.problems} />
        {props.note}
        <div className="dose-chosen">
          <DescriptorFields
            {...shared}
            fields={chosen}
            choices={{
              schemeId: schemeChoices,
              machineId: machineChoices(machinesFor(props.machines, typed.exerciseId ?? '')),
            }}
            hints={nowHints(chosen, now)}
          />
        </div>
        <DoseFigures {...shared} {...loadsBeside(props)} fields={figures} now={now} />
        <DaysTyped typed={typed} plannedDays={props.plannedDays} />
        <SendButton id="propose" aria-disabled={submit.isBusy || undefined}>
          {submit.isBusy ? 'Computing…' : sayPlain('propose')}
        </SendButton>
        {props.about.map((text) => (
          <p key={text} className="soft small">
            {text}
          </p>
        ))}
        <Seldom {...props} maximum={maximum} />
      </ScriptedForm>
    </section>
  );
};
