/** A look back as a page shows it, of one person or of everybody: the counts, the weeks, and a day that would differ. */
import { daysIn, type OtherDay } from '#core/decision/what-if/what-if.ts';
import type { WhatIfSince } from '#data/replay/what-if.ts';

export const countsOf = ({
  since,
  byWeek,
  looked,
  other,
  bolder: bolderTo,
  moreCautious: moreCautiousTo,
}: Omit<WhatIfSince, 'days'>) => {
  const [bolder, moreCautious] = [daysIn(bolderTo), daysIn(moreCautiousTo)];
  return {
    ...{ since, weeks: byWeek, looked, other, bolder, moreCautious, bolderTo, moreCautiousTo },
    differing: bolder + moreCautious + other,
  };
};

/** `name`: empty where all are of one person. */
export const lineOf = (
  { joint, day, before, after, rules, way }: OtherDay,
  patientId: string,
  name: string,
) => ({
  ...{ patientId, name, joint, day, rules, way },
  ...{ before: before.decision, after: after.decision },
});
