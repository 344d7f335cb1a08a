/** Every number the clinic may set, and when it was set last. */
import { say } from '#messages/en/staff/administration.ts';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { systemMoment } from '../account/system-moment.ts';
import { ClinicSettingsForm, type ClinicSettingsFormProps } from './clinic-settings-form.tsx';
import { ShortSigns, type ShortSignsProps } from './short-signs.tsx';

export interface ClinicSettingsScreenProps {
  readonly list: ClinicSettingsFormProps & {
    readonly changes: readonly {
      readonly version: number;
      readonly changedAt: number;
      readonly reason: string;
    }[];
  };
  readonly shortSigns: ShortSignsProps['state'];
  readonly zone: string;
}

export const ClinicSettingsScreen = ({ list, shortSigns, zone }: ClinicSettingsScreenProps) => (
  <div className="stack-wide">
    <PageHeading>{say('clinic-settings')}</PageHeading>
    <p>
      {say('settings.note')}
      {list.mayChange ? '' : ` ${say('settings.only-administrators')}`}
    </p>
    <ClinicSettingsForm areas={list.areas} mayChange={list.mayChange} />
    <ShortSigns state={shortSigns} zone={zone} />
    <Disclosure summary={say('settings.changes', { count: list.changes.length })}>
      <DefinitionList
        rows={list.changes.map((one) => ({
          key: String(one.version),
          name: systemMoment(one.changedAt, zone),
          value: one.reason,
        }))}
      />
    </Disclosure>
  </div>
);
