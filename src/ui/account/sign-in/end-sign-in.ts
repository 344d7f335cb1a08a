import { forgetHour } from '#ui/on-device/hour-kept.ts';
import { phoneStore } from '#ui/on-device/phone-store.ts';

/**
 * Asks the server to end the sign-in of this browser; rejects where nobody answered. A group hour that was taken along
 * goes first, whether anybody answers or not.
 */
export const endSignIn = async (): Promise<Response> => {
  await forgetHour(await phoneStore()).catch(() => undefined);
  return fetch('/api/auth/sign-out', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: '{}',
  });
};
