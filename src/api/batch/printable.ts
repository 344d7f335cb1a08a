/** True when JSON can hold every number of a value. JSON.stringify would write NaN and infinity as null. */
export const isPrintable = (value: unknown): boolean => {
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'object' || value === null) return true;
  if (Array.isArray(value)) return value.every(isPrintable);
  for (const key in value) if (!isPrintable((value as Record<string, unknown>)[key])) return false;
  return true;
};
