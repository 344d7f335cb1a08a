/** Whether passkeys can be made and used at the address of this product. */
import 'server-only';
import { runtime } from '../runtime.ts';
import { passkeyPlace } from './passkey/answers.ts';

export const hasPasskeys = (): boolean => passkeyPlace(runtime().settings.PUBLIC_ORIGIN) !== null;
