/** Sign-in as data: what is wrong with what was typed, and what the server's answer means. */
import { isAddressLike } from '../address-like.ts';
import './words.ts';
import type { Said } from '#ui/language/said.ts';
import type { PlainWordKey } from '#ui/language/words.ts';

/** What came back: no answer at all is status null. */
export interface Reply {
  readonly status: number | null;
  /** Seconds to wait after too many tries. */
  readonly waitSeconds: number;
  /** The passphrase was right and a one-time code is asked for. */
  readonly asksCode: boolean;
}

export type CodeKind = 'code' | 'recovery';

const plain = (field: string, key: PlainWordKey): Said => ({ field, text: (say) => say(key) });

export const problemsOf = (email: string, passphrase: string): readonly Said[] => [
  ...(email === ''
    ? [plain('email', 'sign-in.no-email')]
    : isAddressLike(email)
      ? []
      : [plain('email', 'sign-in.email-shape')]),
  ...(passphrase === '' ? [plain('passphrase', 'sign-in.no-passphrase')] : []),
];

export const codeProblem = (kind: CodeKind, code: string): Said | null => {
  if (kind === 'recovery') return code === '' ? plain(kind, 'sign-in.no-recovery') : null;
  return /^\d{6}$/.test(code) ? null : plain(kind, 'sign-in.code-shape');
};

export const codeDoors = {
  code: '/two-factor/verify-totp',
  recovery: '/two-factor/verify-backup-code',
} as const;

const wrong = {
  passphrase: 'sign-in.wrong',
  code: 'sign-in.code-wrong',
  recovery: 'sign-in.recovery-wrong',
} as const;

/** null when it was taken. */
export const problemAfter = (
  { status, waitSeconds }: Pick<Reply, 'status' | 'waitSeconds'>,
  field: 'passphrase' | CodeKind,
): Said | null => {
  if (status === null || status >= 500) return plain(field, 'sign-in.no-answer');
  if (status === 429) return { field, text: (say) => say('sign-in.too-often', { seconds: waitSeconds }) };
  return status >= 400 ? plain(field, wrong[field]) : null;
};

const seconds = (header: string | null): number => (header && /^\d+$/.test(header) ? Number(header) : 60);

/** One question to the sign-in library's door. */
export const askSignIn = async (path: string, fields: Readonly<Record<string, string>>): Promise<Reply> => {
  try {
    const answer = await fetch(`/api/auth${path}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(fields),
    });
    const body = (await answer.json().catch(() => null)) as { twoFactorRedirect?: boolean } | null;
    return {
      status: answer.status,
      waitSeconds: seconds(answer.headers.get('retry-after')),
      asksCode: body?.twoFactorRedirect === true,
    };
  } catch {
    return { status: null, waitSeconds: 0, asksCode: false };
  }
};
