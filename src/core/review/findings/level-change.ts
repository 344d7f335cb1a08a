/** Morning pain under one version of a prescription beside the next: by how much the two overlap. */
import { type Working, worked } from '#core/calculations/working.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { nonoverlapAllPairsRow } from '#core/statistics/nonoverlap-all-pairs.ts';
import { type Day, daysBetween } from '#core/time/day.ts';
import { counted, dayInWords } from '../plain-words.ts';
import type { ReviewSeries } from '../series.ts';
import { reviewSettingOf } from '../settings.ts';
import { painMornings } from './daily.ts';
import { type Finding, wholePercent } from './finding.ts';

interface Phase {
  readonly version: number;
  /** Day of the first session under this version. */
  readonly from: Day;
  readonly pains: readonly number[];
}

/** How many of the newest changes are told. */
const shownChanges = 3;
const mostMornings = 365;

/** A version holds from its first session to that of the next; its mornings are the days after. */
const phasesOf = (series: ReviewSeries): readonly Phase[] => {
  const starts: { version: number; from: Day }[] = [];
  for (const { version, day } of series.loads) {
    if (version !== null && version > (starts.at(-1)?.version ?? 0)) starts.push({ version, from: day });
  }
  const mornings = painMornings(series);
  return starts.map((start, place) => {
    const next = starts[place + 1]?.from;
    const own = mornings.filter(
      ({ day }) => daysBetween(start.from, day) > 0 && (next === undefined || day <= next),
    );
    return { ...start, pains: own.slice(-mostMornings).map((one) => one.pain) };
  });
};

interface Told {
  readonly sentence: string;
  readonly working: Working | null;
}

const changeBetween = (before: Phase, after: Phase, fewest: number, today: Day): Told => {
  const name = `Version ${before.version} to ${after.version} (first done ${dayInWords(after.from, today)})`;
  const counts = `${counted(before.pains.length, 'morning')} before, ${after.pains.length} after`;
  if (before.pains.length < fewest || after.pains.length < fewest)
    return {
      sentence: `${name}: not worked out, ${counts}; ${fewest} are needed on each side.`,
      working: null,
    };
  const { working, outcome } = worked(nonoverlapAllPairsRow, { before: before.pains, after: after.pains });
  if (!outcome.ok) return { sentence: `${name}: not worked out.`, working: null };
  const { nap, pairsUp, pairsDown, pairsTied } = outcome.result;
  const pairs = `${pairsUp} higher, ${pairsDown} lower, ${pairsTied} the same`;
  return {
    sentence: `${name}: a morning after was sorer than one before in ${wholePercent(nap)} of pairs, ties counted half (${pairs}; ${counts}). 50 % is no difference.`,
    working,
  };
};

export const levelChangeFinding = (series: ReviewSeries, settings?: SettingValues): Finding => {
  const fewest = reviewSettingOf(settings, 'review-phase-mornings');
  const phases = phasesOf(series);
  const told = phases
    .slice(1)
    .map((after, place) => changeBetween(phases[place]!, after, fewest, series.today))
    .slice(-shownChanges)
    .reverse();
  return {
    id: 'level-change',
    title: 'Morning pain before and after a new dose',
    sentences:
      told.length === 0
        ? ['Not worked out: no second version of this exercise was followed in this time.']
        : [
            ...told.map((one) => one.sentence),
            'It does not account for an existing trend, nor show what caused the difference.',
          ],
    workings: told.flatMap((one) => (one.working ? [one.working] : [])),
  };
};
