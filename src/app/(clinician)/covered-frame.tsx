/** The frame of the clinic's pages, with what every one of them says until somebody is named who takes over. */
import { serverCaller } from '#server/http/caller.ts';
import { ClinicFrame, type ClinicFrameProps } from '#ui/clinician/clinic-frame.tsx';
import { UncoveredNotice } from '#ui/clinician/uncovered-notice.tsx';

export const CoveredFrame = async ({ children, ...frame }: ClinicFrameProps) => {
  const { account } = await serverCaller();
  return (
    <ClinicFrame {...frame}>
      {(await account.isUncovered()) ? <UncoveredNotice /> : null}
      {children}
    </ClinicFrame>
  );
};
