/** Units that are written, as UCUM spells them. */
const units = new Set([
  ...['kg', 'cm', 'mm', 'm', 'mm[Hg]', 'min', 's', 'd', '/wk', '%', '1', 'deg', 'N'],
  ...['{score}', '{rep}', '{set}', '{joint}'],
]);

export const isUnit = (code: string): boolean => units.has(code);
