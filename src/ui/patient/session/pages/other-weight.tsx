'use client';
/** Another weight than the planned one. */
import { useState } from 'react';
import { isLoadFarOver } from '#core/record/far-over.ts';
import { gramsOf, kilogramsFromGrams } from '#core/units/units.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ConfirmQuestion } from '#ui/design-system/confirm-question.tsx';
import { ErrorSummary, type Problem } from '#ui/design-system/error-summary.tsx';
import { NumberField } from '#ui/design-system/number-field.tsx';
import { readNumber } from '#ui/design-system/read-number.ts';
import { numberText } from '#ui/language/text-of-time.ts';
import {
  isWeighedInGrams,
  kilogramsOf,
  weightFigure,
  weightText,
  weightUnit,
} from '#ui/language/weight-text.ts';
import { t } from '#ui/patient/words.ts';

/** The record takes no more. */
const mostKg = 500;

/** In the unit beside the field. */
const typedKg = (read: number, isGrams: boolean): number =>
  isGrams ? kilogramsFromGrams(read) : kilogramsOf(read);

/** Nothing lighter is held: 0.25 or 2 was meant in kilograms. */
const leastGrams = 10;

const loadProblem = (typed: string, isGrams: boolean): Problem | null => {
  const read = readNumber(typed);
  if (read === null || Number.isNaN(read))
    return { field: 'load-kg', text: t(isGrams ? 'item.load-grams' : 'item.load-number') };
  if (isGrams && read > 0 && read < leastGrams) return { field: 'load-kg', text: t('item.load-grams') };
  const loadKg = typedKg(read, isGrams);
  return loadKg < 0 || loadKg > mostKg
    ? { field: 'load-kg', text: t('item.load-range', { weight: weightText(mostKg) }) }
    : null;
};

interface OtherWeightProps {
  /** What a slip of typing is measured by. */
  readonly plannedKg: number;
  readonly given: number | null;
  /** Of the button that takes it. */
  readonly takeText: string;
  readonly onTake: (loadKg: number) => void;
  /** Nothing is taken: back to the weight that stood there; absent where the page has its own way back. */
  readonly onBack?: () => void;
}

interface SureProps {
  readonly loadKg: number;
  readonly onYes: () => void;
  readonly onNo: () => void;
}

const Sure = ({ loadKg, onYes, onNo }: SureProps) => (
  <ConfirmQuestion
    question={t('item.load-sure', { weight: weightText(loadKg) })}
    yes={t('item.load-sure-yes', { weight: weightText(loadKg) })}
    no={t('item.load-sure-no')}
    onYes={onYes}
    onNo={onNo}
    isNoFirst
  >
    <p>{t('item.load-sure-note')}</p>
  </ConfirmQuestion>
);

/** Typed, and asked about once where it is far over the plan. */
export const OtherWeight = ({ plannedKg, given, takeText, onTake, onBack }: OtherWeightProps) => {
  const isGrams = isWeighedInGrams(plannedKg);
  const figureOf = (kg: number) => (isGrams ? gramsOf(kg) : Number(weightFigure(kg)));
  const [typed, setTyped] = useState(
    given === null || given === plannedKg ? '' : numberText(figureOf(given)),
  );
  const [sure, setSure] = useState<number | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  const take = () => {
    const found = loadProblem(typed, isGrams);
    setProblem(found);
    if (found) return;
    const loadKg = typedKg(readNumber(typed) ?? 0, isGrams);
    if (isLoadFarOver(loadKg, plannedKg) && loadKg !== given) setSure(loadKg);
    else onTake(loadKg);
  };
  return (
    <>
      <ErrorSummary problems={problem ? [problem] : []} />
      <NumberField
        name="load-kg"
        label={t('item.load-other-label')}
        unit={isGrams ? 'g' : weightUnit()}
        error={problem?.text}
        value={typed}
        onChange={(event) => setTyped(event.target.value)}
      />
      {sure === null ? (
        <>
          <Button isLarge isWide onClick={take}>
            {takeText}
          </Button>
          {onBack ? (
            <Button tone="quiet" onClick={onBack}>
              {t('ask.back')}
            </Button>
          ) : null}
        </>
      ) : (
        <Sure loadKg={sure} onYes={() => onTake(sure)} onNo={() => setSure(null)} />
      )}
    </>
  );
};
