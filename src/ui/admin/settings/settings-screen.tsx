/** The clinic's settings, by group and by words. */
import { say } from '#messages/en/staff/administration/settings.ts';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { SettingsBrowser, type SettingsBrowserProps } from './settings-browser.tsx';

export const SettingsScreen = (props: SettingsBrowserProps) => (
  <div className="stack">
    <PageHeading>{say('title')}</PageHeading>
    <p>
      {say('lead')}
      {props.mayChange ? '' : ` ${say('only-administrators')}`}
    </p>
    <SettingsBrowser {...props} />
  </div>
);
