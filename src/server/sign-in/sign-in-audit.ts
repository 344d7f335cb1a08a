/** What the sign-in library answered, as a row of the clinic's audit chain. */
import { type Acting, flushReads, noteRefused, noteSignIn } from '#data/audit/audit.ts';
import type { Runtime } from '../runtime.ts';

export interface SignInAccount {
  readonly id: string;
  readonly clinicId: string;
}

const subjects: Readonly<Record<string, string>> = {
  '/sign-in/email': 'signed-in',
  '/sign-out': 'signed-out',
  '/two-factor/enable': 'codes-begun',
  '/two-factor/disable': 'codes-switched-off',
  '/two-factor/verify-totp': 'signed-in-with-code',
  '/two-factor/verify-backup-code': 'signed-in-with-recovery-code',
  '/two-factor/generate-backup-codes': 'recovery-codes-renewed',
  '/passkey/sign-in': 'signed-in-with-passkey',
};

interface Answer {
  readonly twoFactorRedirect?: boolean;
  readonly user?: { readonly id?: unknown; readonly clinicId?: unknown };
}

const read = async (answer: Response): Promise<Answer> => {
  try {
    return (await answer.clone().json()) as Answer;
  } catch {
    return {};
  }
};

const accountIn = ({ user }: Answer): SignInAccount | null =>
  typeof user?.id === 'string' && typeof user.clinicId === 'string'
    ? { id: user.id, clinicId: user.clinicId }
    : null;

/**
 * Phones audit themselves where their rows are written. What cannot be told to belong to an account
 * belongs to no clinic's chain and is only counted.
 */
export const auditAnswer = async (
  at: Runtime,
  path: string,
  answer: Response,
  known: SignInAccount | null,
): Promise<void> => {
  const subject = subjects[path];
  if (!subject) return;
  const said = await read(answer);
  const account = known ?? accountIn(said);
  if (!account) return;
  const acting: Acting = {
    store: at.store,
    auditKey: at.keys.audit,
    clinicId: account.clinicId,
    actorId: account.id,
    now: at.clock.now(),
  };
  const entry = { subject: said.twoFactorRedirect ? 'code-asked' : subject, subjectId: account.id };
  if (answer.ok) noteSignIn(acting, entry);
  else noteRefused(acting, entry);
  // A sign-in is rare and must not be lost with a crash a moment later.
  await flushReads(at.store);
};
