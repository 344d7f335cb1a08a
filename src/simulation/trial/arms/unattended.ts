/** Two arms nobody looks after: the dose of the first day for good, and one raised every week. */
import type { Arm } from '../arm.ts';
import { byLoad } from './by-load.ts';
import { tally } from './tally.ts';

const weeklyRise = 1.075;

const nothing = (): void => undefined;

export const sameDose: Arm = {
  id: 'same-dose',
  title: 'The first dose, unchanged',
  treat: () => {
    const { dose, planned } = byLoad();
    const { take } = tally();
    return {
      morning: nothing,
      look: nothing,
      planned: nothing,
      work: planned,
      session: nothing,
      dose,
      acts: take,
    };
  },
};

/** Up by 7.5 % after every week whose sessions were all done in full; nobody asks how the joint is. */
export const fixedRise: Arm = {
  id: 'fixed-rise',
  title: 'A fixed rise every week',
  treat: () => {
    const { dose, planned, change } = byLoad();
    const { add, take } = tally();
    let completed: boolean[] = [];
    return {
      morning: nothing,
      look: () => {
        if (completed.length > 0 && !completed.includes(false)) {
          change(weeklyRise);
          add('raises');
        }
        completed = [];
      },
      planned: nothing,
      work: planned,
      session: (_day, { kind, sets }) => {
        const { sets: asked, repetitions } = dose();
        const done = sets.filter((set) => (set.repetitions ?? 0) >= repetitions.low);
        completed.push(kind === 'full' && done.length >= asked);
      },
      dose,
      acts: take,
    };
  },
};
