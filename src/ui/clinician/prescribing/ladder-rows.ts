/** The ladder of a family as lines: the computed figure, the step to it, and the measured share beside the model. */
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import type { Anthropometry, Level } from '#core/exercises/exercise.ts';
import { ladder, stepBetween } from '#core/exercises/ladder/ladder.ts';
import { figure } from '#core/review/plain-words.ts';

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

const stepText = (from: Level | undefined, to: Level): string => {
  if (!from) return 'first';
  const { percent } = stepBetween(from, to);
  return percent === null
    ? 'not known'
    : `${percent >= 0 ? '+' : ''}${figure(percent)} %${percent > 10 ? ', over 10 %' : ''}`;
};

const percentText = (share: number): string => `${figure(share * 100)} %`;

const measuredText = (level: Level): string =>
  level.measuredShare === null
    ? 'not measured'
    : `${percentText(level.measuredShare)} of body weight${
        level.modelError === null
          ? ''
          : `; model ${level.modelError >= 0 ? '+' : ''}${figure(level.modelError * 100)} points`
      }`;

/** Easiest first. */
export const ladderRows = (family: string, person: Anthropometry): readonly LadderRow[] => {
  const levels = ladder(family, person);
  return levels.map((level, place) => ({
    exerciseId: level.exerciseId,
    title: exerciseTitle(level.exerciseId),
    effectiveLoad: level.effectiveLoadKg === null ? 'not computed' : `${figure(level.effectiveLoadKg)} kg`,
    measure: level.measure
      ? `${figure(level.measure.value)}${level.measure.unit === '1' ? '' : ` ${level.measure.unit.replace('.', '·')}`}, ${level.measure.about}`
      : 'none',
    step: stepText(levels[place - 1], level),
    measured: measuredText(level),
    moments:
      level.moments.map(({ joint, newtonMetres }) => `${joint} ${figure(newtonMetres)} N·m`).join(', ') ||
      'not computed',
    remark: level.remark,
  }));
};
