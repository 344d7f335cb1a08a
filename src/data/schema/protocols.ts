/** Protocols after surgery or injury. Append-only: a phase written anew and each step are rows of their own. */
import { sql } from 'drizzle-orm';
import { mostPhases } from '#core/episode/protocol/protocol-fields.ts';
import { movements } from '#core/exercises/movements.ts';
import { weightBearings } from '#core/record/limit.ts';
import { dayShape, kit, words } from './kit.ts';
import { owned } from './owned.ts';

export const protocol = kit.appendOnly(
  'protocol',
  {
    ...owned(),
    joint: kit.text('joint'),
    procedure: kit.text('procedure'),
    /** Day of the operation or injury. */
    on: kit.day('on_day'),
    author: kit.text('author'),
    /** The surgeon’s letter as text; null = none was given. */
    letter: kit.textOrNull('letter'),
  },
  (t) => [
    kit.index('protocol_by_patient').on(t.patientId, t.recordedAt),
    kit.check('protocol_day', sql`${t.on} GLOB ${sql.raw(`'${dayShape}'`)}`),
  ],
);

export const protocolPhase = kit.appendOnly(
  'protocol_phase',
  {
    ...owned(),
    protocolId: kit.id('protocol_id').references(() => protocol.id),
    place: kit.whole('place'),
    name: kit.text('name'),
    /** Planned first day; it opens nothing by itself. */
    from: kit.day('from_day'),
    weightBearing: kit.word('weight_bearing', weightBearings),
    /** The most the limb may take, kg; only of partial weight-bearing. */
    bearKg: kit.realOrNull('bear_kg'),
    movement: kit.wordOrNull('movement', movements),
    fromDegrees: kit.realOrNull('from_degrees'),
    toDegrees: kit.realOrNull('to_degrees'),
    limitKg: kit.realOrNull('limit_kg'),
    lowLoad: kit.yes('low_load'),
    variation: kit.yes('variation'),
    occlusion: kit.yes('occlusion'),
    recordedOn: kit.day('recorded_on'),
  },
  (t) => [
    kit.index('protocol_phase_by_patient').on(t.patientId, t.protocolId, t.recordedAt),
    kit.index('protocol_phase_of').on(t.protocolId),
    kit.check('protocol_phase_place', sql`${t.place} BETWEEN 1 AND ${sql.raw(String(mostPhases))}`),
    kit.check('protocol_phase_bearing', sql`${t.weightBearing} IN (${words(weightBearings)})`),
    kit.check('protocol_phase_bear_kg', sql`(${t.weightBearing} = 'partial') = (${t.bearKg} IS NOT NULL)`),
    kit.check(
      'protocol_phase_degrees',
      sql`(${t.movement} IS NULL AND ${t.fromDegrees} IS NULL AND ${t.toDegrees} IS NULL) OR (${t.movement} IS NOT NULL AND ${t.fromDegrees} IS NOT NULL AND ${t.toDegrees} IS NOT NULL AND ${t.fromDegrees} <= ${t.toDegrees})`,
    ),
    kit.check(
      'protocol_phase_movement',
      sql`${t.movement} IS NULL OR ${t.movement} IN (${words(movements)})`,
    ),
    kit.check('protocol_phase_day', sql`${t.from} GLOB ${sql.raw(`'${dayShape}'`)}`),
  ],
);

/** A phase confirmed, or the end of the protocol; the newest row counts. */
export const protocolStep = kit.appendOnly(
  'protocol_step',
  {
    ...owned(),
    protocolId: kit.id('protocol_id').references(() => protocol.id),
    /** 0 = the protocol ended. */
    place: kit.whole('place'),
    on: kit.day('on_day'),
    seen: kit.text('seen'),
  },
  (t) => [
    kit.index('protocol_step_by_patient').on(t.patientId, t.protocolId, t.recordedAt),
    kit.index('protocol_step_of').on(t.protocolId),
    kit.check('protocol_step_place', sql`${t.place} BETWEEN 0 AND ${sql.raw(String(mostPhases))}`),
    kit.check('protocol_step_seen', sql`length(trim(${t.seen})) > 0`),
  ],
);
