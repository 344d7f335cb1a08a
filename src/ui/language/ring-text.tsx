/** A sentence in which every number to ring is one touch away. No page writes a number to ring without it. */
export const telephone = (number: string): string => `tel:${number.replace(/[^\d+]/g, '')}`;

/** The numbers that may stand in a sentence. */
export interface NumbersToRing {
  readonly phone?: string;
  readonly urgentNumber?: string;
  readonly emergencyNumber?: string;
}

/** Its digits, however they are spaced, and not as part of a longer number. */
const patternOf = (number: string): string => {
  const digits = number
    .trim()
    .split(/\s+/)
    .map((part) => part.replace(/[^\w\s]/g, '\\$&'))
    .join('\\s');
  return `${/^\d/.test(digits) ? '\\b' : ''}${digits}\\b`;
};

export interface RingTextProps {
  readonly text: string;
  readonly clinic: NumbersToRing;
}

export const RingText = ({ text, clinic }: RingTextProps) => {
  const known = [clinic.phone, clinic.urgentNumber, clinic.emergencyNumber]
    .filter((number) => number !== undefined && /\d/.test(number))
    .sort((a = '', b = '') => b.length - a.length);
  if (known.length === 0) return text;
  // Split by a group: every second part is a number.
  const parts = text.split(new RegExp(`(${known.map((number = '') => patternOf(number)).join('|')})`));
  return parts.map((part, place) =>
    place % 2 === 0 ? (
      part
    ) : (
      // biome-ignore lint/suspicious/noArrayIndexKey: parts of one sentence, which never change places.
      <a key={place} href={telephone(part)}>
        {part}
      </a>
    ),
  );
};
