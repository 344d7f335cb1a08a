import { base32 } from '@better-auth/utils/base32';

/** The secret of one-time codes as a person types it into an app. */
export const typedSecret = (secret: string): string => base32.encode(secret, { padding: false });
