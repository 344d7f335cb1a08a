/** On every page of the clinic until somebody is named who takes over what nobody acknowledges in time. */
import { Notice } from '#ui/design-system/notice.tsx';

export const UncoveredNotice = () => (
  <div className="screen-only uncovered">
    <Notice tone="care" title="No covering clinician is named">
      A warning sign that nobody acknowledges in time passes to nobody. An administrator names one under{' '}
      <a href="/administration/care">Administration, care</a>.
    </Notice>
  </div>
);
