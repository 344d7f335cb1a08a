/** Sign-in: passwords hashed, sessions kept on the server, all by the sign-in library. */
import { betterAuth } from 'better-auth';
import { symmetricEncrypt } from 'better-auth/crypto';
import { twoFactor } from 'better-auth/plugins/two-factor';
import { authDatabase, signInState } from '#data/accounts/auth-database.ts';
import { passphraseLength } from '#data/accounts/passphrase.ts';
import type { PhoneContext } from '#data/accounts/phones.ts';
import type { Store } from '#data/database/store.ts';
import { passkeyPlace } from './passkey/answers.ts';
import { passkeySignIn } from './passkey/passkey-sign-in.ts';
import { phoneSignIn } from './phone-sign-in.ts';

export interface AuthSettings {
  readonly secret: string;
  readonly origin: string;
  /** Clinics nobody may sign in to. */
  readonly closedClinics?: readonly string[];
  /** What phones and passkeys need of the running product, asked for at each call; without it they do not sign in. */
  readonly context?: () => PhoneContext;
}

/** Cookies this product sets all begin so; behind TLS the library puts `__Secure-` before it. */
export const cookiePrefix = 'loadgate';

/** Twelve hours: a working day, so that nobody is signed out in the middle of one. */
const sessionSeconds = 60 * 60 * 12;

const userFields = {
  clinicId: { type: 'string', required: true, input: false },
  role: { type: 'string', required: true, input: false },
  patientId: { type: 'string', required: false, input: false },
  administers: { type: 'boolean', required: false, input: false, defaultValue: false },
  deactivatedAt: { type: 'date', required: false, input: false },
  startingUntil: { type: 'date', required: false, input: false },
} as const;

const sessionFields = {
  provedAt: { type: 'date', required: false, input: false },
  deviceId: { type: 'string', required: false, input: false },
  passkeyId: { type: 'string', required: false, input: false },
} as const;

/** No session for who was deactivated, whose handed-over passphrase has run out, or in a closed clinic. */
const mayOpenSession = async (
  store: Store,
  { closedClinics = [] }: AuthSettings,
  userId: string,
): Promise<boolean> => {
  const account = await signInState(store, userId);
  if (account && closedClinics.includes(account.clinicId)) return false;
  const isRunOut = account?.startingUntil ? account.startingUntil.getTime() < Date.now() : false;
  return account !== null && !account.deactivatedAt && !isRunOut;
};

/** None where the product's address is a number. */
const passkeys = ({ context, origin }: AuthSettings) => {
  const place = passkeyPlace(origin);
  return context && place ? [passkeySignIn(context, place)] : [];
};

export const makeAuth = (store: Store, settings: AuthSettings) =>
  betterAuth({
    appName: 'Loadgate',
    baseURL: settings.origin,
    secret: settings.secret,
    database: authDatabase(store),
    telemetry: { enabled: false },
    // A fault is thrown to the door, which logs it without its text; the library would print it whole.
    onAPIError: { throw: true },
    logger: { disabled: true },
    trustedOrigins: [settings.origin],
    emailAndPassword: {
      enabled: true,
      disableSignUp: true,
      minPasswordLength: passphraseLength.min,
      maxPasswordLength: passphraseLength.max,
    },
    user: { additionalFields: userFields },
    session: { expiresIn: sessionSeconds, updateAge: 60 * 30, additionalFields: sessionFields },
    databaseHooks: {
      session: {
        create: {
          before: async (session) =>
            (await mayOpenSession(store, settings, session.userId)) ? undefined : false,
        },
      },
    },
    plugins: [
      twoFactor({ issuer: 'Loadgate', skipVerificationOnEnable: false, twoFactorCookieMaxAge: 300 }),
      ...(settings.context ? [phoneSignIn(settings.context)] : []),
      ...passkeys(settings),
    ],
    // Its own limit counts by network alone, with which one neighbour could shut a whole clinic out;
    // the door in front of it counts by account and network (sign-in-door.ts).
    rateLimit: { enabled: false },
    advanced: {
      useSecureCookies: settings.origin.startsWith('https://'),
      cookiePrefix,
      defaultCookieAttributes: { httpOnly: true, sameSite: 'lax' },
      ipAddress: { disableIpTracking: true },
    },
  });

export type Auth = ReturnType<typeof makeAuth>;

export interface NewAccount {
  readonly email: string;
  readonly name: string;
  readonly clinicId: string;
  readonly role: 'clinician' | 'administrator' | 'reception' | 'patient';
  readonly patientId: string | null;
  readonly password: string;
  /** For a clinician who also administers the clinic. */
  readonly administers?: boolean;
  /** Switches one-time codes on with this secret, 16 characters or more; an app takes it in base32. */
  readonly codeSecret?: string;
}

const switchCodesOn = async (auth: Auth, userId: string, text: string): Promise<void> => {
  const { adapter, internalAdapter, secretConfig } = await auth.$context;
  const secret = await symmetricEncrypt({ key: secretConfig, data: text });
  const backupCodes = await symmetricEncrypt({ key: secretConfig, data: '[]' });
  await adapter.create({ model: 'twoFactor', data: { userId, secret, backupCodes, verified: true } });
  await internalAdapter.updateUser(userId, { twoFactorEnabled: true });
};

/** Opens an account with a password. There is no public sign-up; this is called by set-up and by staff procedures. */
export const openAccount = async (auth: Auth, account: NewAccount): Promise<string> => {
  const context = await auth.$context;
  const { password, codeSecret, ...fields } = account;
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
  if (codeSecret) await switchCodesOn(auth, user.id, codeSecret);
  return user.id;
};
