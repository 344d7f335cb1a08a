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
  /** A hold counts when it was held to its end. */
  readonly isHeld?: boolean;
  readonly onCount: (repetitions: number) => void;
  readonly onLost: () => void;
  /** Back to the number planned, where the page of the set is still open under it. */
  readonly onBack?: (() => void) | undefined;
}

const problemWith = (typed: string): string | null => {
  const count = readNumber(typed);
  return count !== null && Number.isInteger(count) && count >= 0 && count <= mostRepetitions
    ? null
    : t('set.count-number', { most: mostRepetitions });
};

interface QuietWaysProps extends Pick<OtherCountProps, 'high' | 'onLost' | 'onBack'> {
  /** null once a number is typed. */
  readonly onType: (() => void) | null;
}

const QuietWays = ({ high, onType, onLost, onBack }: QuietWaysProps) => (
  <div className="actions-quiet">
    {onType ? (
      <Button tone="quiet" onClick={onType}>
        {t(high > shown ? 'set.more-or-fewer' : 'set.more')}
      </Button>
    ) : null}
    <Button tone="quiet" onClick={onLost}>
      {t('set.lost')}
    </Button>
    {onBack ? (
      <Button tone="quiet" onClick={onBack}>
        {t('ask.back')}
      </Button>
    ) : null}
  </div>
);

export const OtherCount = ({ high, isHeld = false, onCount, onLost, onBack }: OtherCountProps) => {
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const question = t(isHeld ? 'set.count-held' : 'set.count');
  const numbers = Array.from({ length: Math.min(shown, high) }, (_, place) => high - 1 - place);
  const take = () => {
    const found = problemWith(typed ?? '');
    setProblem(found);
    if (found === null) onCount(Number(readNumber(typed ?? '')));
  };
  return (
    <section className="stack-close" aria-label={question}>
      {typed === null ? <h2>{question}</h2> : null}
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
            label={question}
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
      <QuietWays onType={typed === null ? () => setTyped('') : null} {...{ high, onLost, onBack }} />
    </section>
  );
};
