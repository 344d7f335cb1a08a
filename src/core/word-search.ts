/** Texts found by what somebody types: each typed word begins a word of the text, or means one that does. */

/** A word somebody may type, and the beginnings of words that say the same in the text. */
export type SameMeaning = Readonly<Record<string, readonly string[]>>;

/** "Sit-to-stand, 46 cm" → "sit to stand 46 cm": how it is typed has no hyphens to remember. */
const plainText = (text: string): string =>
  text
    .toLowerCase()
    .replace(/ß/g, 'ss')
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\p{L}\p{N}.]+/gu, ' ')
    .trim();

/** "squats" finds a squat; a word is found by its beginning, so that one which ends in s is found too. */
const singular = (word: string): string => word.replace(/(?<=\p{L}{3})(?<!s)s$/u, '');

/** Shorter beginnings and parts of words would mean too much. */
const shortestBeginning = 3;
const shortestPart = 4;

const begins = (text: string, word: string): boolean => text.includes(` ${word}`);
const anyBegins = (text: string, words: readonly string[]): boolean =>
  words.some((word) => begins(text, word));

/** Known words inside a longer one, such as "schmerz" and "grenze" in "schmerzgrenze"; one inside another is left out. */
const partsOf = (word: string, known: SameMeaning): readonly string[] => {
  const inside = Object.keys(known).filter((one) => one.length >= shortestPart && word.includes(one));
  return inside.filter((one) => !inside.some((other) => other !== one && other.includes(one)));
};

const isMeant = (text: string, word: string, known: SameMeaning): boolean => {
  const exact = Object.hasOwn(known, word) ? known[word] : undefined;
  if (exact) return anyBegins(text, exact);
  const begun =
    word.length < shortestBeginning
      ? []
      : Object.entries(known).flatMap(([one, means]) => (one.startsWith(word) ? means : []));
  if (anyBegins(text, begun)) return true;
  const parts = partsOf(word, known);
  return parts.length > 0 && parts.every((part) => anyBegins(text, known[part]!));
};

/** Whether every typed word is found; nothing typed finds everything. */
export const hasWords = (text: string, typed: string, known: SameMeaning = {}): boolean => {
  const words = plainText(typed)
    .split(' ')
    .filter((word) => word !== '');
  if (words.length === 0) return true;
  const read = ` ${plainText(text)}`;
  // "Uebung" is typed where a keyboard has no "Ü", which is read as "u".
  const spelt = (word: string) => [word, word.replace(/([aou])e/g, '$1')];
  return words.every(
    (word) => begins(read, singular(word)) || spelt(word).some((one) => isMeant(read, one, known)),
  );
};
