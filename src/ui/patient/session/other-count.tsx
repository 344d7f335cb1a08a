'use client';
/** Another number of repetitions: the nearest ones as buttons, any other typed, or "I lost count". */
import { useState } from 'react';
import { mostRepetitions } from '#core/record/entries.ts';
import { Button } from '#ui/design-system/button.tsx';
import { NumberField } from '#ui/design-system/number-field.tsx';
import { readNumber } from '#ui/design-system/read-number.ts';
import { t } from '../words.ts';

const shown = 12;

export interface OtherCountProps {
  /** The number planned; the numbers under it stand as buttons. */
  readonly high: number;
  readonly onCount: (repetitions: number) => void;
  readonly onLost: () => void;
}

const problemWith = (typed: string): string | null => {
  const count = readNumber(typed);
  return count !== null && Number.isInteger(count) && count >= 0 && count <= mostRepetitions
    ? null
    : t('set.count-number', { most: mostRepetitions });
};

export const OtherCount = ({ high, onCount, onLost }: OtherCountProps) => {
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const numbers = Array.from({ length: Math.min(shown, high) }, (_, place) => high - 1 - place);
  const take = () => {
    const found = problemWith(typed ?? '');
    setProblem(found);
    if (found === null) onCount(Number(readNumber(typed ?? '')));
  };
  return (
    <section className="stack-close" aria-labelledby="count-title">
      <h2 id="count-title">{t('set.count')}</h2>
      {typed === null ? (
        <div className="counts">
          {numbers.map((count) => (
            <button key={count} type="button" className="score" onClick={() => onCount(count)}>
              <span className="score-figure figure">{count}</span>
            </button>
          ))}
        </div>
      ) : (
        <>
          <NumberField
            name="count"
            label={t('set.count')}
            isWhole
            error={problem ?? undefined}
            value={typed}
            onChange={(event) => setTyped(event.target.value)}
          />
          <Button isLarge isWide onClick={take}>
            {t('ask.continue')}
          </Button>
        </>
      )}
      <div className="actions-quiet">
        {typed === null ? (
          <Button tone="quiet" onClick={() => setTyped('')}>
            {t('set.more-or-fewer')}
          </Button>
        ) : null}
        <Button tone="quiet" onClick={onLost}>
          {t('set.lost')}
        </Button>
      </div>
    </section>
  );
};
