/** People of the demo clinic who send entries to a real server, as their phones do. */
import { entryFormat } from '#core/record/entries.ts';

export const people = Array.from({ length: 8 }, (_, n) => `patient-${n + 1}`);
const passphrase = 'demo-clinic-demo';

export interface Saver {
  readonly address: string;
  readonly cookie: string;
}

export const post = (address: string, path: string, body: unknown, cookie = ''): Promise<Response> =>
  fetch(`${address}${path}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: address, cookie },
    body: JSON.stringify(body),
    signal: AbortSignal.timeout(20_000),
  });

export const signedIn = async (address: string, who: string): Promise<Saver> => {
  const sent = { email: `${who}@demo.invalid`, password: passphrase };
  const answer = await post(address, '/api/auth/sign-in/email', sent);
  if (!answer.ok) throw new Error(`${who} could not sign in: ${answer.status}`);
  const cookie = answer.headers
    .getSetCookie()
    .map((line) => line.split(';')[0])
    .join('; ');
  return { address, cookie };
};

export const sessionOf = (entryId: string, now: number) => ({
  ...{ format: entryFormat, entryId, zone: 'Europe/Lisbon', day: new Date(now).toISOString().slice(0, 10) },
  ...{ sentAt: now, beganAt: now - 20 * 60_000, endedAt: now - 60_000, kind: 'full' },
  ...{ redFlags: [], extraPainRelief: false, didExtra: false, stoppedByFlag: false, sets: [], joints: [] },
});
