/** Lines of a calendar file (RFC 5545): escaped text, folded by octets, each ended by CR and LF. */

/** The backslash first, or the ones put in would be escaped again. */
export const textValue = (text: string): string =>
  text
    .replaceAll('\\', '\\\\')
    .replaceAll(';', '\\;')
    .replaceAll(',', '\\,')
    .replace(/\r\n|\r|\n/g, '\\n')
    // What cannot be seen and has no place in a line.
    .replaceAll('\t', ' ')
    .replace(/\p{Cc}/gu, '');

const mostOctets = 75;

/** A line goes on after a blank, which is the first octet of the next one; no character is cut in two. */
export const folded = (line: string): string => {
  const lines: string[] = [];
  let now = '';
  let octets = 0;
  for (const character of line) {
    const size = Buffer.byteLength(character);
    if (octets + size > mostOctets) {
      lines.push(now);
      now = ' ';
      octets = 1;
    }
    now += character;
    octets += size;
  }
  return [...lines, now].map((one) => `${one}\r\n`).join('');
};

/** 20260302T090000Z */
export const instantValue = (at: number): string =>
  `${new Date(at).toISOString().slice(0, 19).replace(/[-:]/g, '')}Z`;

/** 20260302 */
export const dayValue = (day: string): string => day.replaceAll('-', '');
