'use client';
/** The figures of a dose, each beside the one in force; what differs is marked by weight and edge, and said. */
import { unitWords } from '#api/inputs/unit-words.ts';
import type { NumberField } from '#core/calculations/describe.ts';
import { say } from '#messages/en/staff/prescribing/workbench.ts';
import { ErrorMessage } from '#ui/design-system/error-message.tsx';
import { boundsInWords, labelOf } from '../forms/field-words.ts';
import type { Typed } from '../forms/typed.ts';
import { figureChange, shortUnit } from './figure-change.ts';

interface DoseFiguresProps {
  readonly fields: readonly NumberField[];
  readonly typed: Typed;
  /** Of the version in force; null where there is none. */
  readonly now: Typed | null;
  /** Loads of the place, where a load has to be one of them; null where it has not. */
  readonly ownedKg: readonly number[] | null;
  /** Of a machine and not at home. */
  readonly isOnMachine: boolean;
  /** In place of the bounds of a field, by its name. */
  readonly hints: Readonly<Record<string, string>>;
  readonly onType: (path: string, text: string) => void;
  readonly errorOf: (path: string) => string | undefined;
}

const Now = ({ id, now }: { readonly id: string; readonly now: string | undefined }) => (
  <span className="figure-now" id={id}>
    <span className="visually-hidden">
      {now ? say('figures.now-is', { now }) : say('figures.now-is-not')}
    </span>
    <span aria-hidden="true">{now || '–'}</span>
  </span>
);

const Figure = (props: DoseFiguresProps & { readonly field: NumberField }) => {
  const { field, typed, now, ownedKg, hints, onType, errorOf } = props;
  const { name } = field;
  const value = typed[name] ?? '';
  const error = errorOf(name);
  const unit = unitWords(field.unit);
  const change = figureChange(
    field,
    now?.[name],
    value,
    field.unit === 'kg' ? ownedKg : null,
    props.isOnMachine,
  );
  return (
    <div className="figure-row" data-changed={change ? '' : undefined}>
      <label className="figure-name" htmlFor={name}>
        {labelOf(field)}
        {unit ? <span className="visually-hidden">{say('figures.in-unit', { unit })}</span> : null}
      </label>
      <Now id={`${name}-now`} now={now?.[name]} />
      <span className="input-with-unit">
        <input
          id={name}
          name={name}
          type="text"
          inputMode={field.kind === 'integer' ? 'numeric' : 'decimal'}
          autoComplete="off"
          spellCheck={false}
          className="input input-short"
          value={value}
          onChange={(event) => onType(name, event.target.value)}
          aria-invalid={error ? true : undefined}
          aria-describedby={[`${name}-now`, `${name}-change`, ...(error ? [`${name}-error`] : [])].join(' ')}
        />
        {unit ? <span aria-hidden="true">{shortUnit(field.unit)}</span> : null}
      </span>
      <span className={change?.isCare ? 'figure-change figure-care' : 'figure-change'} id={`${name}-change`}>
        {change?.text ?? hints[name] ?? boundsInWords(field)}
      </span>
      {error ? (
        <div className="figure-error">
          <ErrorMessage id={`${name}-error`}>{error}</ErrorMessage>
        </div>
      ) : null}
    </div>
  );
};

export const DoseFigures = (props: DoseFiguresProps) => (
  <div className="figures">
    <div className="figure-row figure-head" aria-hidden="true">
      <span>{say('figures.dose')}</span>
      <span className="figure-now">{say('figures.now')}</span>
      <span>{say('figures.new')}</span>
      <span>{say('figures.change')}</span>
    </div>
    {props.fields.map((field) => (
      <Figure key={field.name} {...props} field={field} />
    ))}
  </div>
);
