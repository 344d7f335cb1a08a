/** On the worklist: who opened a record of the reader's team from outside it, and why. */
import { say } from '#messages/en/staff/access.ts';
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
    <Notice tone="care" title={say('opened-from-outside')}>
      <ul>
        {emergencyAccesses.map((one) => (
          <li key={`${one.patientId} ${one.openedAt}`}>
            {say('opened-the-record-of', { 'user-name': one.userName })}{' '}
            <a href={`/patients/${one.patientId}/access`}>
              {one.givenName} {one.familyName}
            </a>{' '}
            {when(one.openedAt)}: {one.reason}
          </li>
        ))}
      </ul>
    </Notice>
  );
