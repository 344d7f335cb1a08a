'use client';
/** The patients of one group by name, each leading to the record; what was snoozed can be brought back. */
import { useRouter } from 'next/navigation';
import { dayInWords, listed } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/worklist.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import type { WorklistGroups } from '../answers.ts';
import { client } from '../client.ts';
import { useSubmit } from '../forms/use-submit.ts';

type GroupLine = WorklistGroups['lines'][number];

const Unsnooze = ({ line }: { readonly line: GroupLine }) => {
  const router = useRouter();
  const id = `unsnooze-${line.patientId}`;
  const submit = useSubmit('', id);
  const bringBack = () =>
    submit.send([], async () => {
      await client.clinician.worklist.unsnooze.mutate({
        patientId: line.patientId,
        keys: [...line.snoozedKeys],
      });
      router.refresh();
    });
  return (
    <>
      <ErrorSummary problems={submit.problems} />
      <Button tone="quiet" id={id} onClick={() => void bringBack()}>
        Unsnooze
        <span className="visually-hidden">
          : {line.givenName} {line.familyName}
        </span>
      </Button>
    </>
  );
};

const notes = ({ group, until, assignedNames }: GroupLine, day: Day): string => {
  if ((group === 'snoozed' || group === 'paused') && until)
    return say('snoozed-until', { until: dayInWords(until, day) });
  return group === 'assigned' ? say('assigned-with', { names: listed(assignedNames) }) : '';
};

export const GroupList = ({ lines, day }: { readonly lines: readonly GroupLine[]; readonly day: Day }) => (
  <ul className="people">
    {lines.map((line) => (
      <li key={line.patientId}>
        <a href={`/patients/${line.patientId}`}>
          {line.familyName}, {line.givenName}
        </a>
        <span className="soft">{notes(line, day)}</span>
        {line.group === 'snoozed' ? <Unsnooze line={line} /> : null}
      </li>
    ))}
  </ul>
);
