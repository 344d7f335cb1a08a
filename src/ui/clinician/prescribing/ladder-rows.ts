/** The ladder of a family as lines: the computed figure, the step to it, and the measured share beside the model. */
import { exerciseById } from '#core/catalogue/catalogue.ts';
import type { Anthropometry, Rung } from '#core/catalogue/exercise.ts';
import { figure } from '#core/review/plain-words.ts';
import { ladder, stepBetween } from '#core/variation/ladder.ts';

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

const stepText = (from: Rung | undefined, to: Rung): string => {
  if (!from) return 'first';
  const { percent } = stepBetween(from, to);
  return percent === null
    ? 'not known'
    : `${percent >= 0 ? '+' : ''}${figure(percent)} %${percent > 10 ? ', over 10 %' : ''}`;
};

const percentText = (share: number): string => `${figure(share * 100)} %`;

const measuredText = (rung: Rung): string =>
  rung.measuredShare === null
    ? 'not measured'
    : `${percentText(rung.measuredShare)} of body mass${
        rung.modelError === null
          ? ''
          : `; model ${rung.modelError >= 0 ? '+' : ''}${figure(rung.modelError * 100)} points`
      }`;

/** Easiest first. */
export const ladderRows = (family: string, person: Anthropometry): readonly LadderRow[] => {
  const rungs = ladder(family, person);
  return rungs.map((rung, place) => ({
    exerciseId: rung.exerciseId,
    title: exerciseById(rung.exerciseId)?.title ?? rung.exerciseId,
    effectiveLoad: rung.effectiveLoadKg === null ? 'not computed' : `${figure(rung.effectiveLoadKg)} kg`,
    measure: rung.measure
      ? `${figure(rung.measure.value)}${rung.measure.unit === '1' ? '' : ` ${rung.measure.unit.replace('.', '·')}`}, ${rung.measure.about}`
      : 'none',
    step: stepText(rungs[place - 1], rung),
    measured: measuredText(rung),
    moments:
      rung.moments.map(({ joint, newtonMetres }) => `${joint} ${figure(newtonMetres)} N·m`).join(', ') ||
      'not computed',
    remark: rung.remark,
  }));
};
