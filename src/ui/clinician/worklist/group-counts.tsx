/** The clinic's patients in seven groups, each a list one can open. Nobody is in two, and nobody in none. */

import { dayInWords, listed } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import type { WorklistGroup } from '#core/worklist/groups.ts';
import type { WorklistGroups } from '../answers.ts';

type Count = WorklistGroups['counts'][number];

const wordsOf: Readonly<Record<WorklistGroup, (count: Count, day: Day) => string>> = {
  'needs-you': ({ count }) => `${count} ${count === 1 ? 'needs' : 'need'} you`,
  assigned: ({ count, names }) => `${count} assigned to ${listed(names)}`,
  snoozed: ({ count, until }, day) => `${count} snoozed${until ? ` until ${dayInWords(until, day)}` : ''}`,
  paused: ({ count, until }, day) => `${count} paused${until ? ` until ${dayInWords(until, day)}` : ''}`,
  'not-screened': ({ count }) => `${count} not yet screened`,
  'nothing-found': ({ count }) => `${count} nothing found`,
  discharged: ({ count }) => `${count} discharged`,
};

export const groupInWords = (count: Count, day: Day): string => wordsOf[count.group](count, day);

/** A group with nobody in it is left out, but for the first: that nobody needs the reader is worth saying. */
export const GroupCounts = (props: {
  readonly counts: WorklistGroups['counts'];
  readonly current: WorklistGroup | null;
  readonly day: Day;
}) => (
  <nav aria-label="Patients of the clinic" className="group-counts">
    <ul>
      {props.counts
        .filter(({ group, count }) => count > 0 || group === 'needs-you')
        .map((count) => (
          <li key={count.group}>
            <a
              href={count.group === 'needs-you' ? '/worklist' : `/worklist?group=${count.group}`}
              aria-current={count.group === (props.current ?? 'needs-you') ? 'page' : undefined}
            >
              {groupInWords(count, props.day)}
            </a>
          </li>
        ))}
    </ul>
  </nav>
);
