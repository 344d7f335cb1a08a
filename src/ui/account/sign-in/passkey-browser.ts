/** The browser's side of a passkey: bytes in, texts for the server out. Null when the person or the device says no. */

export interface Begun {
  readonly challenge: string;
  readonly host: string;
  readonly algorithms: readonly number[];
  readonly userId: string;
}

const textOf = (bytes: ArrayBuffer): string =>
  btoa(String.fromCharCode(...new Uint8Array(bytes)))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replaceAll('=', '');

const bytesOf = (text: string): Uint8Array<ArrayBuffer> => new TextEncoder().encode(text);

/** As long as the challenge is good. */
const patience = 300_000;

const or = async <T>(asked: Promise<T>): Promise<T | null> => {
  try {
    return await asked;
  } catch {
    // Closed by the person, out of time, or made already: the browser does not tell which.
    return null;
  }
};

/** Makes one on this device or a key that is plugged in. */
export const makePasskey = async (
  { challenge, host, algorithms, userId }: Begun,
  person: { readonly name: string; readonly email: string },
  known: readonly string[],
): Promise<Record<'clientData' | 'authenticatorData' | 'publicKey', string> | null> => {
  const made = await or(
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
  const answer = (made as PublicKeyCredential | null)?.response as
    | AuthenticatorAttestationResponse
    | undefined;
  const publicKey = answer?.getPublicKey();
  if (!answer || !publicKey) return null;
  return {
    clientData: textOf(answer.clientDataJSON),
    authenticatorData: textOf(answer.getAuthenticatorData()),
    publicKey: textOf(publicKey),
  };
};

const fromText = (text: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (letter) => letter.charCodeAt(0));

/** Lets the person choose one of the passkeys this device has for us. */
export const answerWithPasskey = async (
  challenge: string,
  host: string,
): Promise<Record<'id' | 'clientData' | 'authenticatorData' | 'signature', string> | null> => {
  const used = (await or(
    navigator.credentials.get({
      publicKey: {
        challenge: bytesOf(challenge),
        rpId: host,
        userVerification: 'required',
        timeout: patience,
      },
    }),
  )) as PublicKeyCredential | null;
  const answer = used?.response as AuthenticatorAssertionResponse | undefined;
  if (!used || !answer) return null;
  return {
    id: used.id,
    clientData: textOf(answer.clientDataJSON),
    authenticatorData: textOf(answer.authenticatorData),
    signature: textOf(answer.signature),
  };
};
