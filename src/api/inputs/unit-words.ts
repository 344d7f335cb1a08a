/** UCUM codes as people write them. A code not listed is already readable (kg, cm, s). */
const words: Readonly<Record<string, string>> = {
  'mm[Hg]': 'mmHg',
  a: 'years',
  d: 'days',
  wk: 'weeks',
  h: 'hours',
  min: 'minutes',
  s: 'seconds',
  deg: 'degrees',
  'kcal/d': 'kcal a day',
  'g/d': 'g a day',
  'mL/min/{1.73_m2}': 'mL/min per 1.73 m²',
};

/** Empty for a pure number and for words. Annotations in braces are dropped: {score} says nothing to add. */
export const unitWords = (unit: string): string => {
  if (unit === '1' || unit === '') return '';
  const known = words[unit];
  return known ?? unit.replace(/\{[^}]*\}/g, '').replace(/^\/$/, '');
};

/** A figure with its unit: "40 kg", "10". */
export const withUnit = (value: number, unit: string): string => {
  const suffix = unitWords(unit);
  return suffix === '' ? `${value}` : suffix === '%' ? `${value} %` : `${value} ${suffix}`;
};
