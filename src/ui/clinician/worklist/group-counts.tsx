/** The clinic's patients in seven groups, each a list one can open. Nobody is in two, and nobody in none. */

import { dayInWords, listed } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import type { WorklistGroup } from '#core/worklist/groups.ts';
import { say } from '#messages/en/staff/worklist.ts';
import type { WorklistGroups } from '../answers.ts';

type Count = WorklistGroups['counts'][number];

export const groupInWords = ({ group, count, names, until }: Count, day: Day): string =>
  (group === 'snoozed' || group === 'paused') && until
    ? say(`group.${group}-until`, { count, until: dayInWords(until, day) })
    : say(`group.${group}`, { count, names: listed(names) });

/** A group with nobody in it is left out, but for the first: that nobody needs the reader is worth saying. */
export const GroupCounts = (props: {
  readonly counts: WorklistGroups['counts'];
  readonly current: WorklistGroup | null;
  readonly day: Day;
}) => (
  <nav aria-label={say('groups')} className="group-counts">
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
