/** Who is signed in, by the request's cookie. */
import type { Person } from '#api/person.ts';
import { requiresTwoFactor } from '#data/accounts/staff.ts';
import { inventedClinics } from '../demo-file.ts';
import type { Runtime } from '../runtime.ts';

type Session = NonNullable<Awaited<ReturnType<Runtime['auth']['api']['getSession']>>>;

/** A passkey is the device and what unlocks it: two factors in one. A passphrase alone is not, whatever else there is. */
const setUpOf = async (at: Runtime, { user, session }: Session): Promise<Person['setUp']> => {
  if (user.startingUntil) return 'passphrase';
  if (user.role === 'patient' || user.twoFactorEnabled || session.passkeyId || at.settings.DEMO)
    return 'done';
  return (await requiresTwoFactor(at.store, user.clinicId)) ? 'two-factor' : 'done';
};

/** However much a session is used, it ends a day after it began; one begun more than a day from now is none. */
const longestSession = 24 * 3_600_000;

/** Null when nobody is signed in, the account was deactivated since, a day has passed, or it is one of the demo outside it. */
export const personOf = async (at: Runtime, headers: Headers): Promise<Person | null> => {
  const found = await at.auth.api.getSession({ headers });
  if (!found || found.user.deactivatedAt) return null;
  const { user, session } = found;
  if (!at.settings.DEMO && inventedClinics.includes(user.clinicId)) return null;
  if (Math.abs(Date.now() - session.createdAt.getTime()) >= longestSession) return null;
  return {
    userId: user.id,
    name: user.name,
    email: user.email,
    clinicId: user.clinicId,
    role: user.role as Person['role'],
    administers: user.role === 'administrator' || (user.role === 'clinician' && user.administers === true),
    patientId: user.patientId ?? null,
    sessionId: session.id,
    provedAt: (session.provedAt ?? session.createdAt).getTime(),
    setUp: await setUpOf(at, found),
  };
};
