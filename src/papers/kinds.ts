/** The papers there are, each in every language. A kind is offered once it can be made, and not before. */
export const paperKinds = [
  'plan',
  'letter',
  'discharge',
  'self-management',
  'handover',
  'flare-note',
  'record',
] as const;
export type PaperKind = (typeof paperKinds)[number];
