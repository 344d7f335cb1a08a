/** Reads a typed number; null for nothing typed, NaN for something that is not a number. */
export const readNumber = (typed: string): number | null => {
  // Stray spaces, a decimal comma and a full stop left by dictation are meant as typed.
  const text = typed.replace(/[\s\u00a0]/g, '').replace(/[.,]$/, '');
  if (text === '') return null;
  return /^[+-]?\d+([.,]\d+)?$/.test(text) ? Number(text.replace(',', '.')) : Number.NaN;
};
