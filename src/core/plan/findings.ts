/**
 * What a screening answer or a measurement found against a dose already in force. A screening that was not
 * asked yet, or has grown old, found nothing: it is due on the worklist and stops no signed dose by itself.
 */
import { exerciseById } from '../exercises/catalogue.ts';
import type { PrescribingContext } from '../prescribing/prescribing-context.ts';
import type { PrescriptionVersion } from '../record/record.ts';
import { exerciseEligibility } from '../screening/joint-blocks.ts';
import type { MethodReason } from '../screening/screening.ts';
import type { PlanReason } from './plan.ts';

export type Screened = Pick<PrescribingContext, 'outcomes' | 'screening' | 'clearances' | 'today'>;

/** Reasons that say what has not been asked, measured or agreed: they are no finding. */
const nothingFound =
  /^(never-screened$|not-asked-|not-judged$|screening-|returned-from-break$|after-|no-consent-|care-closed$|on-break$|unknown-item$)|-not-measured$/;

const closes = ({ code, eligibility }: MethodReason): boolean =>
  (eligibility === 'closed' || eligibility === 'closed-until-cleared') && !nothingFound.test(code);

type Closed = Extract<PlanReason, { readonly code: 'contraindicated' | 'needs-clearance' }>;

/** Null where nothing was found against it. */
export const closedByFindings = (
  screened: Screened,
  { dose, joints }: Pick<PrescriptionVersion, 'dose' | 'joints'>,
): Closed | null => {
  const exercise = exerciseById(dose.exerciseId);
  if (!exercise) return null;
  const wanted = { method: dose.method, limb: exercise.limb, side: dose.side, joints };
  const found = exerciseEligibility({ ...screened, exercise: wanted }).reasons.filter(closes);
  if (found.length === 0) return null;
  return {
    code: found.some(({ eligibility }) => eligibility === 'closed') ? 'contraindicated' : 'needs-clearance',
    today: 'rest-this-joint',
    foundOn: screened.screening?.day ?? screened.today,
    findings: [...new Map(found.map(({ code, text }) => [code, { code, text }])).values()],
  };
};
