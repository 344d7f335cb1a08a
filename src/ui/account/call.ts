/** Asks the server from an account page: procedures and the sign-in door answer in one shape. */
import '#messages/en/pages/account.ts';
import type { Text } from '#messages/text.ts';
import { t } from '#ui/language/words.ts';

interface Refused {
  readonly ok: false;
  readonly problem: string | null;
  /** For whoever reads the page; in every language where a patient may. */
  readonly text: Text | string;
  readonly refusals: readonly { readonly field: string; readonly reason: string; readonly text?: Text }[];
}

export type Answer<T> = { readonly ok: true; readonly data: T } | Refused;

/** `said` is what the server answered, if it did. */
const refused = (
  problem: string | null | undefined,
  ...said: readonly (Text | string | null | undefined)[]
) => ({
  ok: false as const,
  problem: problem ?? null,
  text: said.find((one) => one != null) ?? t('frame.no-answer'),
  refusals: [],
});

const post = async (address: string, body: unknown): Promise<{ isOk: boolean; json: unknown } | null> => {
  try {
    const response = await fetch(address, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
    return { isOk: response.ok, json: await response.json() };
  } catch {
    return null;
  }
};

interface Failure {
  readonly message?: string;
  readonly data?: Partial<Pick<Refused, 'problem' | 'refusals'>> & { readonly text?: Text | null };
}

/** A procedure that changes something. */
export const change = async <T>(path: string, input: unknown = {}): Promise<Answer<T>> => {
  const answer = await post(`/api/trpc/${path}`, input);
  if (!answer) return refused(null);
  const { result, error } = answer.json as { result?: { data?: T }; error?: Failure };
  if (result) return { ok: true, data: result.data as T };
  const { problem, text, refusals = [] } = error?.data ?? {};
  return { ...refused(problem, text, error?.message), refusals };
};

/** An endpoint of the sign-in door. */
export const postForm = async <T>(path: string, body: Record<string, string>): Promise<Answer<T>> => {
  const answer = await post(`/api/auth/${path}`, body);
  if (!answer) return refused(null);
  if (answer.isOk) return { ok: true, data: answer.json as T };
  const { problem, text, message } = answer.json as { problem?: string; text?: Text; message?: string };
  return refused(problem, text, message);
};
