/**
 * A value sealed under a PIN: PBKDF2 makes the key, AES-GCM seals, and no key is kept. Whoever copies the sealed
 * bytes can try every PIN elsewhere, at the price of the rounds for each.
 */

/** For each try; the figure OWASP names for PBKDF2 with SHA-256, from memory. */
export const pinRounds = 600_000;
export const pinDigits = { least: 6, most: 12 } as const;

export interface PinSealed {
  readonly rounds: number;
  readonly salt: Uint8Array<ArrayBuffer>;
  readonly iv: Uint8Array<ArrayBuffer>;
  readonly data: ArrayBuffer;
}

/** What is sealed while the page is open, by the key the PIN made. */
export type KeySealed = Pick<PinSealed, 'iv' | 'data'>;

const letters = new TextEncoder();

/** The same digit throughout, or digits that follow each other, are the first that are tried. */
const isPlain = (pin: string): boolean => {
  const steps = new Set(
    [...pin].slice(1).map((digit, place) => (Number(digit) - Number(pin[place]) + 10) % 10),
  );
  return steps.size === 1 && [0, 1, 9].includes([...steps][0]!);
};

export const pinProblem = (pin: string): 'digits' | 'plain' | null =>
  !/^\d+$/.test(pin) || pin.length < pinDigits.least || pin.length > pinDigits.most
    ? 'digits'
    : isPlain(pin)
      ? 'plain'
      : null;

export const keyOfPin = async (
  pin: string,
  { salt, rounds }: Pick<PinSealed, 'salt' | 'rounds'>,
): Promise<CryptoKey> => {
  const base = await crypto.subtle.importKey('raw', letters.encode(pin), 'PBKDF2', false, ['deriveKey']);
  return crypto.subtle.deriveKey(
    { name: 'PBKDF2', hash: 'SHA-256', salt, iterations: rounds },
    base,
    { name: 'AES-GCM', length: 256 },
    false,
    ['encrypt', 'decrypt'],
  );
};

/** `bound`: what stands beside it in the clear and must not be changed. */
export const sealBy = async (key: CryptoKey, value: unknown, bound: string): Promise<KeySealed> => {
  const iv = crypto.getRandomValues(new Uint8Array(12));
  const additionalData = letters.encode(bound);
  const plain = letters.encode(JSON.stringify(value));
  return { iv, data: await crypto.subtle.encrypt({ name: 'AES-GCM', iv, additionalData }, key, plain) };
};

/** null: another key, or what stands beside it was changed. */
export const openBy = async <T>(
  key: CryptoKey,
  { iv, data }: KeySealed,
  bound: string,
): Promise<T | null> => {
  try {
    const additionalData = letters.encode(bound);
    const plain = await crypto.subtle.decrypt({ name: 'AES-GCM', iv, additionalData }, key, data);
    return JSON.parse(new TextDecoder().decode(plain)) as T;
  } catch {
    return null;
  }
};

export const sealUnderPin = async (pin: string, value: unknown, bound: string): Promise<PinSealed> => {
  const made = { salt: crypto.getRandomValues(new Uint8Array(16)), rounds: pinRounds };
  return { ...made, ...(await sealBy(await keyOfPin(pin, made), value, bound)) };
};
