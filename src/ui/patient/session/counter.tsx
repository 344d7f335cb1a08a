'use client';
/**
 * Repetitions of one set: a large figure that can be typed, with plus and minus. It starts empty; the
 * first press starts from the target, which stands beside it and is never an answer by itself.
 */
import { useId } from 'react';
import { mostRepetitions } from '#core/record/entries.ts';
import { ErrorMessage } from '#ui/design-system/error-message.tsx';
import { t } from '../words.ts';

export interface CounterProps {
  readonly repetitions: number | null;
  /** What the first press on plus gives. */
  readonly startsAt: number;
  readonly label: string;
  readonly target?: string;
  readonly error?: string;
  readonly onCount: (repetitions: number | null) => void;
}

/** The count after one press. */
export const pressed = (repetitions: number | null, startsAt: number, by: 1 | -1): number =>
  Math.min(
    mostRepetitions,
    Math.max(0, repetitions === null ? (by === 1 ? startsAt : Math.max(0, startsAt - 1)) : repetitions + by),
  );

const typedCount = (text: string): number | null => {
  const digits = text.replace(/\D/g, '').slice(0, 3);
  return digits === '' ? null : Math.min(mostRepetitions, Number(digits));
};

export const Counter = ({ repetitions, startsAt, label, target, error, onCount }: CounterProps) => {
  const targetId = useId();
  return (
    <div className={error ? 'field field-wrong' : 'field'}>
      <label className="field-label" htmlFor="count">
        {label}
      </label>
      {error ? <ErrorMessage id="count-error">{error}</ErrorMessage> : null}
      {target ? (
        <p className="counter-target" id={targetId}>
          {target}
        </p>
      ) : null}
      <div className="counter">
        <button
          type="button"
          className="button button-plain counter-button"
          aria-label={t('set.fewer')}
          onClick={() => onCount(pressed(repetitions, startsAt, -1))}
        >
          <span aria-hidden="true">{t('set.fewer-sign')}</span>
        </button>
        <input
          id="count"
          className="input counter-figure figure"
          type="text"
          inputMode="numeric"
          autoComplete="off"
          placeholder="–"
          value={repetitions ?? ''}
          aria-describedby={
            [target ? targetId : '', error ? 'count-error' : ''].join(' ').trim() || undefined
          }
          onChange={(event) => onCount(typedCount(event.target.value))}
        />
        <button
          type="button"
          className="button button-plain counter-button"
          aria-label={t('set.more')}
          onClick={() => onCount(pressed(repetitions, startsAt, 1))}
        >
          <span aria-hidden="true">{t('set.more-sign')}</span>
        </button>
      </div>
      <p className="visually-hidden" aria-live="polite">
        {repetitions ?? ''}
      </p>
    </div>
  );
};
