/** Answers as they are read back: what was not answered says so. */
import { t } from '#ui/language/words.ts';
import type { Score, YesNo } from '../session/draft.ts';

export const missing = (): string => t('ask.not-answered');

export const scoreText = (score: Score | null | undefined): string =>
  score === null || score === undefined
    ? missing()
    : score === 'unknown'
      ? t('ask.unknown')
      : t('ask.score', { score });

export const yesNoText = (answer: YesNo | null | undefined): string =>
  answer === null || answer === undefined
    ? missing()
    : answer === 'unknown'
      ? t('ask.unknown')
      : t(answer ? 'ask.yes' : 'ask.no');
