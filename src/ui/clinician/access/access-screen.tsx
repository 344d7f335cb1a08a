/** Who may open a record, and the phones it is opened on: care team, invitations, openings from outside. */

import type { CalendarFeed } from '#api/papers/exports.ts';
import { say } from '#messages/en/staff/access.ts';
import { invitationSlips } from '#messages/invitation-slips.ts';
import { ActButton } from '#ui/account/act-button.tsx';
import { systemMoment } from '#ui/account/system-moment.ts';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import { InvitationPanel, type InvitationPanelProps } from './invitation-panel.tsx';
import { TeamForm, type TeamFormProps } from './team-form.tsx';

const phoneStates = {
  'in-use': say('in-use'),
  'no-pin-yet': say('no-pin-yet'),
  'too-many-tries': say('locked'),
} as const;

const endedBy = { patient: 'ended-by-patient', clinic: 'ended-by-clinic' } as const;

const invitationStates = {
  open: 'Open',
  used: 'Used',
  withdrawn: 'Withdrawn',
  'run-out': 'Expired',
} as const;

export interface AccessScreenProps extends Omit<InvitationPanelProps, 'slips'> {
  readonly team: Pick<TeamFormProps, 'colleagues'> & {
    readonly members: TeamFormProps['colleagues'];
    readonly emergencyAccesses: readonly {
      readonly userName: string;
      readonly reason: string;
      readonly openedAt: number;
    }[];
  };
  readonly phones: {
    readonly phones: readonly {
      readonly id: string;
      readonly enrolledAt: number;
      readonly state: keyof typeof phoneStates;
      readonly ended: { readonly at: number; readonly by: keyof typeof endedBy } | null;
    }[];
    readonly invitations: readonly {
      readonly id: string;
      readonly madeAt: number;
      readonly expiresAt: number;
      readonly state: keyof typeof invitationStates;
    }[];
  };
  /** The patient's own calendar address, the newest; null when none was made. */
  readonly calendar: CalendarFeed | null;
  /** When something of the record happened, on the clinic's clock. */
  readonly when: (instant: number) => string;
}

type Phone = AccessScreenProps['phones']['phones'][number];

const phoneInWords = ({ ended, state }: Phone, zone: string): string =>
  ended ? say(endedBy[ended.by], { at: systemMoment(ended.at, zone) }) : phoneStates[state];

const feedInWords = ({ ended, lastReadAt }: CalendarFeed, zone: string): string => {
  if (ended) return say(`calendar-ended-${ended.by}`, { at: systemMoment(ended.at, zone) });
  return lastReadAt === null
    ? say('calendar-never-read')
    : say('calendar-read', { at: systemMoment(lastReadAt, zone) });
};

const feedRow = (feed: CalendarFeed, patientId: string, zone: string) => ({
  key: 'calendar',
  name: say('calendar-made', { 'made-at': systemMoment(feed.madeAt, zone) }),
  value: feedInWords(feed, zone),
  action: feed.ended ? null : (
    <ActButton
      path="clinician.exports.endFeed"
      input={{ patientId }}
      label="End"
      about={say('the-calendar-address')}
      question={say('end-the-calendar-address')}
    />
  ),
});

const Phones = ({
  patientId,
  phones,
  calendar,
  zone,
}: Pick<AccessScreenProps, 'patientId' | 'phones' | 'calendar' | 'zone'>) => (
  <DefinitionList
    rows={[
      ...phones.phones.map((phone) => ({
        key: phone.id,
        name: say('phone-set-up', { 'enrolled-at': systemMoment(phone.enrolledAt, zone) }),
        value: phoneInWords(phone, zone),
        action: phone.ended ? null : (
          <ActButton
            path="clinician.phones.endPhone"
            input={{ patientId, phoneId: phone.id }}
            label="End"
            about={say('the-phone-set-up', { 'enrolled-at': systemMoment(phone.enrolledAt, zone) })}
            question={say('end-this-phone')}
          />
        ),
      })),
      ...phones.invitations.map((one) => ({
        key: one.id,
        name: say('invitation-made', { 'made-at': systemMoment(one.madeAt, zone) }),
        value:
          one.state === 'open'
            ? say('open-until', { 'expires-at': systemMoment(one.expiresAt, zone) })
            : invitationStates[one.state],
        action:
          one.state === 'open' ? (
            <ActButton
              path="clinician.phones.withdraw"
              input={{ patientId, invitationId: one.id }}
              label="Withdraw"
              about={say('this-invitation')}
            />
          ) : null,
      })),
      ...(calendar ? [feedRow(calendar, patientId, zone)] : []),
    ]}
  />
);

const Team = ({ patientId, team }: Pick<AccessScreenProps, 'patientId' | 'team'>) => {
  const ids = new Set(team.members.map((member) => member.userId));
  return (
    <div className="stack">
      {team.members.length === 0 ? <p>{say('no-care-team')}</p> : null}
      <DefinitionList
        rows={team.members.map((member) => ({
          key: member.userId,
          name: member.name,
          value: say('in-the-team'),
          action: (
            <ActButton
              path="clinician.team.set"
              input={{ patientId, userId: member.userId, belongs: false }}
              label="Remove"
              about={member.name}
              question={say('remove-from-the-team', { name: member.name })}
            />
          ),
        }))}
      />
      <TeamForm patientId={patientId} colleagues={team.colleagues.filter((one) => !ids.has(one.userId))} />
    </div>
  );
};

export const AccessScreen = (props: AccessScreenProps) => (
  <div className="stack-wide">
    <section className="stack">
      <h2>Phone</h2>
      <InvitationPanel
        patientId={props.patientId}
        patientName={props.patientName}
        origin={props.origin}
        zone={props.zone}
        slips={invitationSlips(props.origin)}
      />
      <div className="screen-only">
        <Phones {...props} />
      </div>
    </section>
    <section className="stack screen-only">
      <h2>{say('care-team')}</h2>
      <Team {...props} />
    </section>
    {props.team.emergencyAccesses.length > 0 ? (
      <section className="stack screen-only">
        <h2>{say('opened-from-outside-the-team')}</h2>
        <DefinitionList
          rows={props.team.emergencyAccesses.map((one) => ({
            key: String(one.openedAt),
            name: `${one.userName}, ${props.when(one.openedAt)}`,
            value: (
              <StatusTag shape="care" tone="care">
                {one.reason}
              </StatusTag>
            ),
          }))}
        />
      </section>
    ) : null}
  </div>
);
