/** What the picture of a look back is drawn from. */
import { shortestRange } from '#core/review/zoom.ts';
import type { WhatIfOfPatient } from '#ui/clinician/answers.ts';
import { choiceFrom } from '#ui/clinician/review/review-choice.ts';
import { OnTheChart } from '#ui/clinician/what-if/on-the-chart.tsx';
import type { recordPage } from '../../../../clinic-page.ts';

/** The joint that is asked about, or else the one with most days that would have been others. */
const jointOf = ({ lines }: WhatIfOfPatient, asked: string | undefined): string => {
  const count = (joint: string) => lines.filter((line) => line.joint === joint).length;
  const [most = ''] = lines.map(({ joint }) => joint).toSorted((a, b) => count(b) - count(a));
  return asked ?? most;
};

interface Shown {
  readonly at: Awaited<ReturnType<typeof recordPage>>;
  readonly found: WhatIfOfPatient;
  readonly joint: string | undefined;
  readonly weeks: number;
}

/** The review's picture of that joint over the weeks looked at; nothing where no day differs. */
export const Picture = async ({ at, found, joint, weeks }: Shown) => {
  if (found.lines.length === 0) return null;
  const { clinician, patient, person, clock, day } = at;
  const prescriptions = await clinician.prescriptions.list({ patientId: patient.id });
  const choice = choiceFrom({ joint: jointOf(found, joint) }, patient, prescriptions.versions);
  const dose =
    choice.joint && choice.version ? { itemId: choice.version.itemId, joint: choice.joint } : undefined;
  const days = Math.max(shortestRange, weeks * 7);
  const review = await clinician.review.get({ patientId: patient.id, days, dose });
  return (
    <OnTheChart
      at={{ patient, choice, review, prescriptions, signer: person.name, clock, day }}
      found={found}
    />
  );
};
