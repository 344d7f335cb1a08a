/** A low-load dose for this patient, from their own test and the loads of the place where it is done. */
import { loadsWithin } from '#core/decision/dose/limits.ts';
import { limitsFor } from '#core/episode/limit-bounds.ts';
import { answer, refuse } from '#core/outcome.ts';
import type { DoseMachine, LowLoadDose } from '../dose.ts';
import type { LowLoadRequest } from '../dose-request.ts';
import { type DosedOutcome, newestTest, type PrescribingContext } from '../prescribing-context.ts';
import { proposeLowLoadDose } from './low-load-dose.ts';
import { notOwnedInWords } from './owned-load.ts';
import { placeOfRequest } from './place-of-request.ts';
import type { WithTypedLoad } from './typed-load.ts';

/** The load a clinician typed, beside the one signed and in force for the same exercise, side and place. */
const typedOf = (
  { inForce }: PrescribingContext,
  { loadKg, exerciseId, side }: LowLoadRequest,
  machine: DoseMachine | null,
): Pick<WithTypedLoad, 'typed'> => {
  if (loadKg === undefined) return {};
  const loads = inForce.flatMap((dose) =>
    dose.method === 'low-load' &&
    dose.exerciseId === exerciseId &&
    dose.side === side &&
    dose.machine?.id === machine?.id
      ? dose.loadKg
      : [],
  );
  return { typed: { loadKg, inForceKg: loads.length > 0 ? Math.max(...loads) : null } };
};

/** What is left of the request once the load, the maximum, the place and the exercise are read. */
const workAsked = ({
  method: _method,
  exerciseId: _exercise,
  side: _side,
  knownOneRepMaxKg: _maximum,
  loadKg: _load,
  machineId: _machine,
  ...work
}: LowLoadRequest) => work;

export const dosedLowLoad = (
  context: PrescribingContext,
  request: LowLoadRequest,
): DosedOutcome<LowLoadDose> => {
  const { exerciseId, side, knownOneRepMaxKg, loadKg } = request;
  const place = placeOfRequest(context, request);
  if (!place.ok) return place;
  const { machine, loadsKg } = place.result;
  const test = newestTest(context, request);
  if (knownOneRepMaxKg === undefined && !test) {
    return refuse(
      'exerciseId',
      'missing',
      'Record repetitions to failure for this exercise and side first, or give a maximum already known.',
    );
  }
  const { limitKg } = limitsFor(context.limits, exerciseId, side, context.today);
  const allowedKg = loadsWithin(loadsKg, limitKg);
  if (allowedKg.length === 0) {
    return refuse(
      'exerciseId',
      'outside-validity',
      `${machine ? `No load of ${machine.name}` : 'Nothing the patient owns'} lies within the limit of ${limitKg} kg that stands for a joint.`,
    );
  }
  const unowned = loadKg === undefined ? null : notOwnedInWords(loadKg, loadsKg, machine?.name);
  if (unowned) return refuse('loadKg', 'not-listed', unowned);
  const from =
    knownOneRepMaxKg === undefined
      ? { test: { loadKg: test!.loadKg, repetitions: test!.repetitions } }
      : { knownOneRepMaxKg };
  const own = { availableKg: allowedKg, ageYears: context.ageYears };
  const input = { ...workAsked(request), ...from, ...own, ...typedOf(context, request, machine) };
  const outcome = proposeLowLoadDose({ exerciseId, side }, input, context.settings);
  if (!outcome.ok) return outcome;
  const { dose, badDay, working, warnings } = outcome.result;
  const notes = [...place.result.notes, ...warnings, ...outcome.notes];
  const at = machine ? { machine } : {};
  const lines = [
    ...(machine ? [{ text: `Place: at the clinic, ${machine.name}.`, support: 'clinician' }] : []),
    ...working.map((line) => ({ text: `${line.label}: ${line.how}`, support: line.source })),
    ...(allowedKg.length < loadsKg.length
      ? [{ text: `Limit: loads over ${limitKg} kg are left out while a limit stands.`, support: 'clinic' }]
      : []),
  ];
  return answer({ dose: { ...dose, ...at }, badDay: { ...badDay, ...at }, working: lines, notes }, notes);
};
