/** Limits as they are told with a prescription: to the clinician in words, to the patient by what is known. */

import type { LimitInForce } from '../decision/dose/limits.ts';
import { isWithoutWeight } from '../decision/dose/volume.ts';
import { exerciseById } from '../exercises/catalogue.ts';
import type { Exercise, WorkedSide } from '../exercises/exercise.ts';
import type { Movement } from '../exercises/movements.ts';
import type { Caution } from '../prescribing/cautions/caution.ts';
import type { PatientCaution } from '../prescribing/cautions/patient-caution.ts';
import type { Dose } from '../prescribing/dose.ts';
import type { Limit } from '../record/limit.ts';
import type { Day } from '../time/day.ts';
import { bearingInWords, limitSentence, limitsFor } from './limit-bounds.ts';
import { allowedArc, degreesToJudge } from './limit-degrees.ts';

const kindWords: Readonly<Record<Limit['kind'], string>> = {
  'weight-bearing': 'weight-bearing',
  range: 'range of movement',
  'load-limit': 'load',
  'no-impact': 'impact',
  methods: 'methods',
  none: 'nothing',
};

/**
 * A limit as the patient is told it; null where there is nothing to tell. `isUnweighted`: it stands under an exercise
 * that is done without one, where a figure alone would read like a load to add.
 */
export const limitTold = (limit: Limit, isUnweighted = false): PatientCaution | null => {
  const { kind, joint, author, weightBearing, bearKg, limitKg } = limit;
  if (kind === 'none' || kind === 'methods') return null;
  const about = { key: 'limit', joint, author } as const;
  if (weightBearing) return { ...about, kind: `bears-${weightBearing}`, ...(bearKg ? { kg: bearKg } : {}) };
  return kind === 'load-limit' && limitKg !== null
    ? { ...about, kind: isUnweighted ? 'load-limit-kg-none' : 'load-limit-kg', kg: limitKg }
    : { ...about, kind };
};

const limitInWords = (limit: LimitInForce, exercise: Exercise | undefined, side: WorkedSide): string => {
  const allowed = limit.kind === 'range' ? allowedArc(limit) : null;
  if (allowed && exercise) return degreesToJudge(limit, allowed, exercise, side);
  const most = limit.kind === 'load-limit' && limit.limitKg !== null ? `, at most ${limit.limitKg} kg` : '';
  const what = limit.weightBearing ? bearingInWords(limit) : `Limit on ${kindWords[limit.kind]}${most}`;
  return `${what}; the clinician judges that the exercise keeps within it`;
};

/** What tells two limits of one kind on one joint apart: a stricter one beside another is a caution of its own. */
const boundOf = (
  { weightBearing, bearKg, limitKg, fromDegrees, toDegrees }: Limit,
  movement: Movement | null,
): readonly string[] => [
  ...(movement ? [movement, String(fromDegrees), String(toDegrees)] : []),
  ...(weightBearing ? [weightBearing] : []),
  ...(bearKg ? [String(bearKg)] : []),
  ...(limitKg === null ? [] : [String(limitKg)]),
];

const limitCaution = (
  limit: LimitInForce,
  exercise: Exercise | undefined,
  side: WorkedSide,
  isUnweighted: boolean,
): readonly Caution[] => {
  const patient = limitTold(limit, isUnweighted);
  if (patient === null) return [];
  const movement = limit.kind === 'range' ? (allowedArc(limit)?.movement ?? null) : null;
  return [
    {
      id: ['limit', limit.kind, limit.joint, ...boundOf(limit, movement)].join('-'),
      text: limitSentence(limit, limitInWords(limit, exercise, side)),
      patient,
      from: 'limit',
      support: 'clinic',
    },
  ];
};

/** Every limit that touches the exercise, told with the prescription. */
export const limitCautions = (
  all: readonly Limit[],
  on: { readonly exerciseId: string; readonly side: WorkedSide; readonly isUnweighted?: boolean },
  today: Day,
): readonly Caution[] =>
  limitsFor(all, on.exerciseId, on.side, today).limits.flatMap((limit) =>
    limitCaution(limit, exerciseById(on.exerciseId), on.side, on.isUnweighted ?? false),
  );

/** Two limits of which the patient is told the same are one sentence to her. */
const toldOnce = (cautions: readonly Caution[]): readonly Caution[] =>
  [
    ...new Map(cautions.toReversed().map((caution) => [JSON.stringify(caution.patient), caution])).values(),
  ].toReversed();

/** What the patient is told: cautions as signed, with the limits of today in place of those that stood when it was signed. */
export const cautionsOn = (
  signed: readonly Caution[],
  limits: readonly Limit[],
  dose: Dose,
  today: Day,
): readonly Caution[] => [
  ...signed.filter(({ from }) => from !== 'limit'),
  ...toldOnce(limitCautions(limits, { ...dose, isUnweighted: isWithoutWeight(dose) }, today)),
];
