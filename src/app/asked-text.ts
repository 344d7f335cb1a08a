/** Words looked for, as the address has them: one text, of a length a search takes, without what no store keeps. */
export const askedText = (asked: string | readonly string[] | undefined, most = 100): string =>
  typeof asked === 'string'
    ? asked
        .replace(/\p{Cc}/gu, ' ')
        .trim()
        .slice(0, most)
    : '';
