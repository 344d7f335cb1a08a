/** What a token of another program may read. There is none for writing: such a program reads and changes nothing. */
export const tokenScopes = [
  'people',
  'plans',
  'sessions',
  'mornings',
  'measurements',
  'decisions',
  'worklist',
] as const;
export type TokenScope = (typeof tokenScopes)[number];

/** Longest a token holds; a new one is made after. */
export const mostTokenDays = 366;
