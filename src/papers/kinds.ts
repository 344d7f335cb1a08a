/** The papers there are. A kind is offered once it can be made, and not before. */
export const paperKinds = ['plan'] as const;
export type PaperKind = (typeof paperKinds)[number];
