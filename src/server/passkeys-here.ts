/** Whether passkeys can be made and used at the address of this product. */
import 'server-only';
import { passkeyPlace } from './passkey/signed.ts';
import { runtime } from './runtime.ts';

export const hasPasskeys = (): boolean => passkeyPlace(runtime().settings.PUBLIC_ORIGIN) !== null;
