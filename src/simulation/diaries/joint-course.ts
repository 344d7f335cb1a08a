/** The course of one invented joint over some weeks: pain of each day and the flares in it. */
import type { Seeded } from '../raises/seeded.ts';
import type { DiaryType } from './diary-types.ts';

export interface DayOfJoint {
  /** Unrounded pain of the morning. */
  readonly pain: number;
  readonly isFlare: boolean;
}

/** Spread of flare lengths on the log scale; quartiles then lie near 0.6 and 1.6 of the median. */
const flareLengthSpread = 0.7;

export const jointCourse = (type: DiaryType, days: number, random: Seeded): readonly DayOfJoint[] => {
  const course: DayOfJoint[] = [];
  let drift = random.normal() * type.scatter;
  let flareLeft = 0;
  for (let day = 0; day < days; day++) {
    const fresh = Math.sqrt(1 - type.likeness ** 2) * type.scatter * random.normal();
    drift = type.likeness * drift + fresh;
    if (flareLeft === 0 && random.chance(type.flaresPerWeek / 7)) {
      flareLeft = Math.max(1, Math.round(type.flareDays * Math.exp(flareLengthSpread * random.normal())));
    }
    const isFlare = flareLeft > 0;
    if (isFlare) flareLeft--;
    course.push({ pain: type.usualPain + drift + (isFlare ? type.flareRise : 0), isFlare });
  }
  return course;
};

export const asScore = (pain: number): number => Math.max(0, Math.min(10, Math.round(pain)));
