/**
 * Something on both sides of an @, and no blank. Read in one pass: a pattern that backs up over a long text
 * holds everybody else meanwhile.
 */
export const isAddressLike = (text: string): boolean => text.slice(1, -1).includes('@') && !/\s/.test(text);
