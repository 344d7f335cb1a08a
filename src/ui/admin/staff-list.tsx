/** The clinic's people, with what an administrator may do for each. */
import { say } from '#messages/en/staff/administration.ts';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import { ActButton } from '../account/act-button.tsx';
import { ResetStaff } from './reset-staff.tsx';

export interface StaffLine {
  readonly id: string;
  readonly name: string;
  readonly email: string;
  readonly role: 'clinician' | 'administrator' | 'reception';
  readonly administers: boolean;
  readonly twoFactorEnabled: boolean;
  readonly isActive: boolean;
  readonly hasOwnPassphrase: boolean;
  readonly isSelf: boolean;
}

const doesInWords = ({ role, administers }: StaffLine): string => {
  if (role === 'reception') return 'Reception';
  return role === 'administrator' ? 'Administrator' : administers ? say('role.both') : 'Clinician';
};

const stateOf = (line: StaffLine) => {
  if (!line.isActive)
    return (
      <StatusTag shape="stop" tone="soft">
        Deactivated
      </StatusTag>
    );
  if (!line.hasOwnPassphrase)
    return (
      <StatusTag shape="note" tone="care">
        {say('not-yet-changed')}
      </StatusTag>
    );
  return line.twoFactorEnabled ? say('passphrase-and-code') : say('passphrase-only');
};

const Acts = ({ line }: { readonly line: StaffLine }) => {
  const { id: userId, name } = line;
  if (line.isSelf) return <span className="soft">You</span>;
  if (!line.isActive) {
    return <ActButton path="admin.staff.reactivate" input={{ userId }} label="Reactivate" about={name} />;
  }
  return (
    <div className="stack-close">
      {line.role === 'clinician' ? (
        <ActButton
          path="admin.staff.setRoles"
          input={{ userId, role: 'clinician', administers: !line.administers }}
          label={line.administers ? say('role.remove') : say('role.give')}
          about={name}
          question={
            line.administers ? say('role.remove-question', { name }) : say('role.give-question', { name })
          }
        />
      ) : null}
      <ResetStaff userId={userId} name={name} />
      <ActButton
        path="admin.staff.deactivate"
        input={{ userId }}
        label="Deactivate"
        about={name}
        question={say('deactivate-question', { name })}
      />
    </div>
  );
};

export const StaffList = ({ people }: { readonly people: readonly StaffLine[] }) => (
  <DefinitionList
    rows={people.map((line) => ({
      key: line.id,
      name: line.name,
      value: (
        <>
          {doesInWords(line)}
          <br />
          <span className="soft">{line.email}</span>
          <br />
          {stateOf(line)}
        </>
      ),
      action: <Acts line={line} />,
    }))}
  />
);
