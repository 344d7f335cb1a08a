'use client';
/** What stands over a form of an account page: what is wrong, or the passphrase asked for first. */
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { FreshSignIn } from './fresh-sign-in.tsx';
import type { Asking } from './use-asking.ts';

export const Asked = ({ asking }: { readonly asking: Asking }) => (
  <>
    <ErrorSummary problems={asking.problems} />
    {asking.waiting ? <FreshSignIn onProved={asking.waiting} onCancel={asking.forget} /> : null}
  </>
);
