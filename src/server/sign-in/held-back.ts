/** What the door hands to the sign-in library, held back when it was tried too often. */
import { provePassphrase } from '#api/account/prove-passphrase.ts';
import { flushAttempts, storedAttempts } from '#data/accounts/stored-attempts.ts';
import { perStore } from '#data/database/per-store.ts';
import { refusalText } from '#messages/refusals.ts';
import { networkOf } from '../http/network.ts';
import { tooOften } from '../http/requests.ts';
import type { Runtime } from '../runtime.ts';
import { guardCodes, guardSignIns } from './sign-in-guard.ts';
import { rememberCodes } from './used-codes.ts';

/** What was tried before, read from the file when it is asked for first. */
const guards = perStore('sign-in-guards', (store, key: Uint8Array) => {
  const keep = (kind: string) => storedAttempts(store, key, kind);
  return { signIns: guardSignIns(keep), codes: guardCodes(keep), used: rememberCodes(keep('used-code')) };
});

export const guardsOf = (at: Runtime) => guards(at.store, at.keys.audit);

export const askedToWait = (seconds: number): Response =>
  tooOften(seconds, refusalText('wait-seconds', { seconds }));

/** A session is in its cookie alone, which no script reads; the library would repeat it in the body. */
const withoutToken = async (answer: Response): Promise<Response> => {
  const body: unknown = await answer
    .clone()
    .json()
    .catch(() => null);
  if (typeof body !== 'object' || body === null || !('token' in body)) return answer;
  const { token: _, ...rest } = body;
  const headers = new Headers(answer.headers);
  headers.delete('content-length');
  return Response.json(rest, { status: answer.status, headers });
};

export const ask = async (
  at: Runtime,
  request: Request,
  fields: Record<string, string>,
): Promise<Response> => {
  const headers = new Headers(request.headers);
  headers.delete('content-length');
  headers.set('content-type', 'application/json');
  const passed = new Request(request.url, { method: 'POST', headers, body: JSON.stringify(fields) });
  return withoutToken(await at.auth.handler(passed));
};

/** What nobody has to be known for: an invitation's code, a passkey. Held back by network. */
export const heldBack = async (
  at: Runtime,
  request: Request,
  path: string,
  fields: Record<string, string>,
) => {
  const network = `${networkOf(request.headers)} ${path}`;
  const { codes } = guardsOf(at);
  const now = Date.now();
  const wait = codes.wait(network, now);
  if (wait > 0) return askedToWait(wait);
  codes.wrong(network, now);
  await flushAttempts(at.store, now);
  const answer = await ask(at, request, fields);
  if (!answer.ok) return answer;
  codes.right(network);
  await flushAttempts(at.store, now);
  return answer;
};

export type Session = NonNullable<Awaited<ReturnType<Runtime['auth']['api']['getSession']>>>;

/** What asks for the passphrase of who is signed in already. The library alone would let it be guessed at leisure. */
export const withPassphrase = async (
  at: Runtime,
  request: Request,
  fields: Record<string, string>,
  { session }: Session,
): Promise<Response> => {
  let answer: Response | null = null;
  const proof = await provePassphrase({ store: at.store, auditKey: at.keys.audit }, session.id, async () => {
    answer = await ask(at, request, fields);
    return answer.ok;
  });
  return proof.is === 'too-often' ? askedToWait(proof.seconds) : answer!;
};
