/** Week summary: conflicts first, then the length of each day and the weekly sets of each muscle. */
import { refusedConflicts, type WeekPlan } from '#core/prescribing/programme/week-plan.ts';
import { say } from '#messages/en/staff/programme.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { conflictsInWords, dayName, muscleName } from './planner-words.ts';

export interface WeekViewProps {
  readonly plan: WeekPlan;
  readonly titleOf: (itemId: string) => string;
}

const Conflicts = ({ plan, titleOf }: WeekViewProps) => {
  const isRefused = (kind: WeekPlan['conflicts'][number]['kind']) => refusedConflicts.includes(kind);
  const lists = [
    { title: say('refused-title'), tone: 'danger', of: plan.conflicts.filter(({ kind }) => isRefused(kind)) },
    { title: 'Check', tone: 'care', of: plan.conflicts.filter(({ kind }) => !isRefused(kind)) },
  ] as const;
  return lists.map(({ title, tone, of }) =>
    of.length === 0 ? null : (
      <Notice key={title} tone={tone} title={title}>
        <ul>
          {conflictsInWords(of, titleOf).map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      </Notice>
    ),
  );
};

export const WeekView = (props: WeekViewProps) => {
  const busy = props.plan.days.filter(({ itemIds }) => itemIds.length > 0);
  return (
    <section className="stack" aria-label={say('summary')}>
      <Conflicts {...props} />
      <DataTable
        caption={say('lengths')}
        columns={[
          { key: 'day', title: 'Day' },
          { key: 'exercises', title: 'Exercises' },
          { key: 'minutes', title: say('lengths.minutes'), isNumber: true },
        ]}
        rows={busy.map(({ day, itemIds, minutes }) => ({
          key: String(day),
          cells: [dayName(day), itemIds.map(props.titleOf).join('; '), minutes],
        }))}
        empty={say('lengths.none')}
      />
      <DataTable
        caption={say('muscles')}
        columns={[
          { key: 'muscle', title: 'Muscle' },
          { key: 'direct', title: 'Direct', isNumber: true },
          { key: 'indirect', title: 'Indirect', isNumber: true },
          { key: 'weekly', title: say('weekly'), isNumber: true },
        ]}
        rows={props.plan.muscles.map(({ muscle, directSets, indirectSets, weeklySets }) => ({
          key: muscle,
          cells: [muscleName(muscle), directSets, indirectSets, weeklySets],
        }))}
        empty={say('muscles-none')}
      />
      <p className="soft">{say('muscles-note')}</p>
    </section>
  );
};
