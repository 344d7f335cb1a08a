/** Every table, for the drizzle client and the migration tool. */
export * from './accounts.ts';
export * from './audit.ts';
export * from './care.ts';
export * from './clinical.ts';
export * from './corrections.ts';
export * from './danger.ts';
export * from './decisions.ts';
export * from './logs.ts';
export * from './notes.ts';
export * from './nutrition.ts';
export * from './people.ts';
export * from './protocols.ts';
export * from './questionnaires.ts';
export * from './review.ts';
export * from './signatures.ts';
export * from './templates.ts';
export * from './worklist.ts';
