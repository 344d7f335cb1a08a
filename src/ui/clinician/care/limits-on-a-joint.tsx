/** The limits of a joint with their days: those that hold, and those that were lifted or that a phase followed. */
import { boundInWords } from '#core/episode/limit-degrees.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/care.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import type { CareAnswer } from '../answers.ts';
import { optionInWords } from '../forms/field-words.ts';
import { stillCounts } from './still-counts.ts';

interface LimitsProps {
  readonly care: Pick<CareAnswer, 'limits'>;
  readonly day: Day;
}

const daysOfLimit = ({ from, to, liftedOn }: CareAnswer['limits'][number], day: Day): string => {
  const begun = dayInWords(from, day);
  if (liftedOn) return `${begun} ${say('lifted', { end: dayInWords(liftedOn, day) })}`;
  return `${begun} ${to === null ? say('until-lifted') : say('to', { end: dayInWords(to, day) })}`;
};

export const Limits = ({ care, day }: LimitsProps) => (
  <DataTable
    caption={say('limits-on-a-joint')}
    columns={[
      { key: 'joint', title: 'Joint' },
      { key: 'kind', title: 'Limit' },
      { key: 'days', title: 'Days' },
      { key: 'author', title: say('set-by') },
    ]}
    rows={care.limits.map((limit) => ({
      key: limit.id,
      cells: [
        optionInWords(limit.joint),
        `${optionInWords(limit.kind)}${limit.limitKg === null ? '' : `, ${say('kg', { load: limit.limitKg })}`}${boundInWords(limit)}${stillCounts(limit)}`,
        daysOfLimit(limit, day),
        limit.author,
      ],
    }))}
    empty={say('no-limit-is-recorded')}
  />
);
