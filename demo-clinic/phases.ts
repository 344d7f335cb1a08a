/** Phases after an operation, written and confirmed as at the desk. */
import type { Protocol } from '#core/episode/protocol/protocol.ts';
import { addDays } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { beginProtocol, protocolsOf, stepProtocol, writePhase } from '#data/episode/protocols.ts';
import type { PhaseAct } from './phase-act.ts';

const ofPhases: readonly string[] = [
  'begin-protocol',
  'write-phase',
  'confirm-phase',
] satisfies readonly PhaseAct['does'][];

export const isOfPhases = <A extends { readonly does: string }>(act: A): act is A & PhaseAct =>
  ofPhases.includes(act.does);

/** A story has one protocol; its name is for the reader. */
const own = async (access: Access, patientId: string): Promise<Protocol> => {
  const found = (await protocolsOf(access, patientId)).at(-1);
  if (!found) throw new RangeError(`${patientId}: no protocol has begun`);
  return found;
};

export const followsPhases = async (access: Access, patientId: string, act: PhaseAct): Promise<void> => {
  switch (act.does) {
    case 'begin-protocol': {
      const { joint, procedure, author, letter, daysAgo } = act;
      const on = addDays(access.day, -daysAgo);
      await beginProtocol(access, patientId, { joint, procedure, on, author, letter });
      return;
    }
    case 'write-phase': {
      const { place, name, inDays, weightBearing, bearKg, flexionToDegrees, limitKg } = act;
      const isBounded = flexionToDegrees !== null;
      await writePhase(access, patientId, await own(access, patientId), {
        place,
        name,
        from: addDays(access.day, inDays),
        weightBearing,
        bearKg,
        movement: isBounded ? 'flexion' : null,
        fromDegrees: isBounded ? 0 : null,
        toDegrees: flexionToDegrees,
        limitKg,
        lowLoad: true,
        variation: true,
        occlusion: false,
      });
      return;
    }
    case 'confirm-phase': {
      const of = await own(access, patientId);
      await stepProtocol(access, patientId, of, { place: act.place, seen: act.seen });
    }
  }
};
