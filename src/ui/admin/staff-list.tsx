/** The clinic's people, with what an administrator may do for each. */
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import { ActButton } from '../account/act-button.tsx';
import { ResetStaff } from './reset-staff.tsx';

export interface StaffLine {
  readonly id: string;
  readonly name: string;
  readonly email: string;
  readonly role: 'clinician' | 'administrator';
  readonly administers: boolean;
  readonly twoFactorEnabled: boolean;
  readonly isActive: boolean;
  readonly hasOwnPassphrase: boolean;
  readonly isSelf: boolean;
}

const doesInWords = ({ role, administers }: StaffLine): string =>
  role === 'administrator' ? 'Administrator' : administers ? 'Clinician who also administers' : 'Clinician';

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
        Passphrase handed over, not yet changed
      </StatusTag>
    );
  return line.twoFactorEnabled ? 'Passphrase and code' : 'Passphrase only';
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
          label={line.administers ? 'Remove administrator role' : 'Make administrator'}
          about={name}
          question={
            line.administers
              ? `${name} will no longer be able to change staff, sites and clinic settings.`
              : `${name} will be able to change staff, sites and clinic settings.`
          }
        />
      ) : null}
      <ResetStaff userId={userId} name={name} />
      <ActButton
        path="admin.staff.deactivate"
        input={{ userId }}
        label="Deactivate"
        about={name}
        question={`${name} will be signed out and cannot sign in. What ${name} recorded and signed stays.`}
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
