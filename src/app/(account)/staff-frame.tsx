/** The frame of the pages about staff and their clinic, with what every page of theirs says until somebody is named who takes over. */
import { serverCaller } from '#server/http/caller.ts';
import { AccountFrame, type AccountFrameProps } from '#ui/account/account-frame.tsx';
import { UncoveredNotice } from '#ui/clinician/uncovered-notice.tsx';

export const StaffFrame = async ({ children, ...frame }: AccountFrameProps) => {
  const { account } = await serverCaller();
  return (
    <AccountFrame {...frame}>
      {(await account.isUncovered()) ? <UncoveredNotice /> : null}
      {children}
    </AccountFrame>
  );
};
