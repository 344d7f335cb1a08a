/** On every page of the clinic until somebody is named who takes over what nobody acknowledges in time. */
import { say as clinic } from '#messages/en/staff/administration/clinic.ts';
import { say } from '#messages/en/staff/clinic.ts';

export const UncoveredNotice = () => (
  <p className="screen-only uncovered">
    <strong>{say('no-covering-clinician')}</strong> {say('name-one-under')}{' '}
    <a href="/administration/care#covering">{clinic('page-title')}</a>.
  </p>
);
