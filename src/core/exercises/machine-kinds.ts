/** Kinds of machines a clinic may have. An exercise done on one names its kind; which machine it is, the dose names. */
export const machineKinds = ['leg-press', 'knee-extension', 'leg-curl', 'chest-press', 'cable'] as const;
export type MachineKind = (typeof machineKinds)[number];
