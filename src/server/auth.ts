/** Sign-in: passwords hashed, sessions kept on the server, all by the sign-in library. */
import { betterAuth } from 'better-auth';
import { authDatabase } from '#data/auth-database.ts';
import type { Store } from '#data/store/store.ts';

export interface AuthSettings {
  readonly secret: string;
  readonly origin: string;
}

export const makeAuth = (store: Store, settings: AuthSettings) =>
  betterAuth({
    appName: 'Loadgate',
    baseURL: settings.origin,
    secret: settings.secret,
    database: authDatabase(store),
    telemetry: { enabled: false },
    logger: { disabled: true },
    trustedOrigins: [settings.origin],
    emailAndPassword: { enabled: true, disableSignUp: true, minPasswordLength: 12, maxPasswordLength: 128 },
    user: {
      additionalFields: {
        clinicId: { type: 'string', required: true, input: false },
        role: { type: 'string', required: true, input: false },
        patientId: { type: 'string', required: false, input: false },
      },
    },
    session: { expiresIn: 60 * 60 * 12, updateAge: 60 * 30 },
    // Sign-in costs a fifth of a second of a core, so it is the call to hold back.
    rateLimit: {
      enabled: true,
      storage: 'memory',
      window: 60,
      max: 300,
      customRules: { '/sign-in/email': { window: 60, max: 30 }, '/get-session': false },
    },
    advanced: {
      useSecureCookies: settings.origin.startsWith('https://'),
      cookiePrefix: 'loadgate',
      defaultCookieAttributes: { httpOnly: true, sameSite: 'lax' },
    },
  });

export type Auth = ReturnType<typeof makeAuth>;

export interface NewAccount {
  readonly email: string;
  readonly name: string;
  readonly clinicId: string;
  readonly role: 'clinician' | 'administrator' | 'patient';
  readonly patientId: string | null;
  readonly password: string;
}

/** Opens an account with a password. There is no public sign-up; this is called by set-up and by staff procedures. */
export const openAccount = async (auth: Auth, account: NewAccount): Promise<string> => {
  const context = await auth.$context;
  const { password, ...fields } = account;
  const user = await context.internalAdapter.createUser({ ...fields, emailVerified: true }, {
    method: 'email-password',
  } as never);
  const hash = await context.password.hash(password);
  await context.internalAdapter.linkAccount({
    userId: user.id,
    accountId: user.id,
    providerId: 'credential',
    password: hash,
  });
  return user.id;
};
