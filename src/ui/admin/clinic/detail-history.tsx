/** Who changed what the clinic says of itself, when, from what to what. */
import { say } from '#messages/en/staff/administration/clinic.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { systemMoment } from '../../account/system-moment.ts';

export interface DetailHistoryProps {
  readonly changes: readonly {
    readonly before: string;
    readonly after: string;
    readonly at: number;
    readonly by: string;
  }[];
  readonly zone: string;
}

export const DetailHistory = ({ changes, zone }: DetailHistoryProps) =>
  changes.length === 0 ? null : (
    <Disclosure summary={say('history', { count: changes.length })}>
      <ul className="plain-list small">
        {changes.map((one) => (
          <li key={`${one.at} ${one.after}`}>
            {say('history.line', {
              before: one.before || say('history.nothing'),
              after: one.after || say('history.nothing'),
              by: one.by,
              at: systemMoment(one.at, zone),
            })}
          </li>
        ))}
      </ul>
    </Disclosure>
  );
