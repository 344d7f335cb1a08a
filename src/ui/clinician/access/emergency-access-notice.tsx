/** On the worklist: who opened a record of the reader's team from outside it, and why. */
import { Notice } from '#ui/design-system/notice.tsx';

export interface EmergencyAccessNoticeProps {
  readonly emergencyAccesses: readonly {
    readonly patientId: string;
    readonly givenName: string;
    readonly familyName: string;
    readonly userName: string;
    readonly reason: string;
    readonly openedAt: number;
  }[];
  readonly when: (instant: number) => string;
}

export const EmergencyAccessNotice = ({ emergencyAccesses, when }: EmergencyAccessNoticeProps) =>
  emergencyAccesses.length === 0 ? null : (
    <Notice tone="care" title="Opened from outside the care team">
      <ul>
        {emergencyAccesses.map((one) => (
          <li key={`${one.patientId} ${one.openedAt}`}>
            {one.userName} opened the record of{' '}
            <a href={`/patients/${one.patientId}/access`}>
              {one.givenName} {one.familyName}
            </a>{' '}
            {when(one.openedAt)}: {one.reason}
          </li>
        ))}
      </ul>
    </Notice>
  );
