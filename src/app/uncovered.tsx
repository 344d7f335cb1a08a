/** What every page for staff says until somebody is named who takes over. */
import { serverCaller } from '#server/http/caller.ts';
import { UncoveredNotice } from '#ui/clinician/uncovered-notice.tsx';

export const Uncovered = async () => {
  const { account } = await serverCaller();
  return (await account.isUncovered()) ? <UncoveredNotice /> : null;
};
