/** The browser's side of a passkey: bytes in, what the browser writes of an answer out. Null when the person or the device says no. */

export interface Begun {
  readonly challenge: string;
  readonly host: string;
  readonly algorithms: readonly number[];
  readonly userId: string;
}

const bytesOf = (text: string): Uint8Array<ArrayBuffer> => new TextEncoder().encode(text);

const fromText = (text: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (letter) => letter.charCodeAt(0));

/** As long as the challenge is good. */
const patience = 300_000;

/** As the browser itself writes an answer for a server, in one text. */
const answered = async (asked: Promise<Credential | null>): Promise<string | null> => {
  try {
    const answer = (await asked) as PublicKeyCredential | null;
    return answer && JSON.stringify(answer.toJSON());
  } catch {
    // Closed by the person, out of time, or made already: the browser does not tell which.
    return null;
  }
};

/** Makes one on this device or a key that is plugged in. */
export const makePasskey = (
  { challenge, host, algorithms, userId }: Begun,
  person: { readonly name: string; readonly email: string },
  known: readonly string[],
): Promise<string | null> =>
  answered(
    navigator.credentials.create({
      publicKey: {
        challenge: bytesOf(challenge),
        rp: { id: host, name: 'Loadgate' },
        user: { id: bytesOf(userId), name: person.email, displayName: person.name },
        pubKeyCredParams: algorithms.map((alg) => ({ type: 'public-key', alg })),
        authenticatorSelection: { residentKey: 'required', userVerification: 'required' },
        excludeCredentials: known.map((id) => ({ type: 'public-key', id: fromText(id) })),
        attestation: 'none',
        timeout: patience,
      },
    }),
  );

/** Lets the person choose one of the passkeys this device has for us. */
export const answerWithPasskey = (challenge: string, host: string): Promise<string | null> =>
  answered(
    navigator.credentials.get({
      publicKey: {
        challenge: bytesOf(challenge),
        rpId: host,
        userVerification: 'required',
        timeout: patience,
      },
    }),
  );
