/** The three methods for people who cannot load heavily. */
export const methods = ['variation', 'low-load', 'occlusion'] as const;
export type Method = (typeof methods)[number];

/** What screening leaves of a method on a limb. Ordered from open to closed. */
export const eligibilities = ['open', 'open-with-precautions', 'closed-until-cleared', 'closed'] as const;
export type Eligibility = (typeof eligibilities)[number];
