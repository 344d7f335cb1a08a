/** The ladder of a family as lines: the computed figure, the step to it, and the measured share beside the model. */
import { largeStepPercent } from '#core/decision/dose/volume.ts';
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import type { Anthropometry, Level } from '#core/exercises/exercise.ts';
import { ladder, stepBetween } from '#core/exercises/ladder/ladder.ts';
import { figure } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/prescribing.ts';

export interface LadderRow {
  readonly exerciseId: string;
  readonly title: string;
  readonly effectiveLoad: string;
  readonly measure: string;
  readonly step: string;
  readonly measured: string;
  readonly moments: string;
  readonly remark: string;
}

const signed = (value: number): string => `${value >= 0 ? '+' : ''}${figure(value)}`;

const stepText = (from: Level | undefined, to: Level): string => {
  if (!from) return 'first';
  const { percent } = stepBetween(from, to);
  if (percent === null) return say('step-not-known');
  return percent > largeStepPercent
    ? say('step-large', { percent: signed(percent) })
    : `${signed(percent)} %`;
};

const measuredText = ({ measuredShare, modelError }: Level): string => {
  if (measuredShare === null) return say('not-measured');
  const percent = figure(measuredShare * 100);
  return modelError === null
    ? say('measured', { percent })
    : say('measured-model', { percent, points: signed(modelError * 100) });
};

/** Easiest first. */
export const ladderRows = (family: string, person: Anthropometry): readonly LadderRow[] => {
  const levels = ladder(family, person);
  return levels.map((level, place) => ({
    exerciseId: level.exerciseId,
    title: exerciseTitle(level.exerciseId),
    effectiveLoad:
      level.effectiveLoadKg === null
        ? say('not-computed')
        : say('kilograms', { number: figure(level.effectiveLoadKg) }),
    measure: level.measure
      ? `${figure(level.measure.value)}${level.measure.unit === '1' ? '' : ` ${level.measure.unit.replace('.', '·')}`}, ${level.measure.about}`
      : 'none',
    step: stepText(levels[place - 1], level),
    measured: measuredText(level),
    moments:
      level.moments.map(({ joint, newtonMetres }) => `${joint} ${figure(newtonMetres)} N·m`).join(', ') ||
      say('not-computed'),
    remark: level.remark,
  }));
};
