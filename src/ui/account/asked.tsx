'use client';
/** What stands over a form of an account page: what is wrong, or the passphrase or PIN asked for first. */
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { FreshSignIn, type FreshSignInProps } from './fresh-sign-in.tsx';
import type { Asking } from './use-asking.ts';

export interface AskedProps extends Pick<FreshSignInProps, 'by'> {
  readonly asking: Asking;
}

export const Asked = ({ asking, by }: AskedProps) => (
  <>
    <ErrorSummary problems={asking.problems} />
    {asking.waiting ? <FreshSignIn by={by} onProved={asking.waiting} onCancel={asking.forget} /> : null}
  </>
);
