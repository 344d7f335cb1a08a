/** On every page of the clinic until somebody is named who takes over what nobody acknowledges in time. */
export const UncoveredNotice = () => (
  <p className="screen-only uncovered">
    <strong>No covering clinician is named.</strong> A warning sign that nobody acknowledges in time passes to
    nobody. An administrator can name one under <a href="/administration/care">Administration, care</a>.
  </p>
);
