/** The frame of the pages about staff and their clinic. */
import { AccountFrame, type AccountFrameProps } from '#ui/account/account-frame.tsx';
import { Uncovered } from '../uncovered.tsx';

export const StaffFrame = ({ children, ...frame }: AccountFrameProps) => (
  <AccountFrame {...frame}>
    <Uncovered />
    {children}
  </AccountFrame>
);
