/** Asks the server from an account page: procedures and the sign-in door answer in one shape. */

interface Refused {
  readonly ok: false;
  readonly problem: string | null;
  readonly message: string;
  readonly refusals: readonly { readonly field: string; readonly reason: string }[];
}

export type Answer<T> = { readonly ok: true; readonly data: T } | Refused;

const noAnswer: Refused = {
  ok: false,
  problem: null,
  message: 'The clinic’s server did not answer. What you entered is still here; try again.',
  refusals: [],
};

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
  readonly data?: Partial<Refused>;
}

/** A procedure that changes something. */
export const change = async <T>(path: string, input: unknown = {}): Promise<Answer<T>> => {
  const answer = await post(`/api/trpc/${path}`, input);
  if (!answer) return noAnswer;
  const { result, error } = answer.json as { result?: { data?: T }; error?: Failure };
  if (result) return { ok: true, data: result.data as T };
  return {
    ok: false,
    problem: error?.data?.problem ?? null,
    message: error?.message ?? noAnswer.message,
    refusals: error?.data?.refusals ?? [],
  };
};

/** An endpoint of the sign-in door. */
export const postForm = async <T>(path: string, body: Record<string, string>): Promise<Answer<T>> => {
  const answer = await post(`/api/auth/${path}`, body);
  if (!answer) return noAnswer;
  if (answer.isOk) return { ok: true, data: answer.json as T };
  const { problem, message } = answer.json as { problem?: string; message?: string };
  return { ok: false, problem: problem ?? null, message: message ?? noAnswer.message, refusals: [] };
};
