/**
 * A record as it was known then. A history is lived through by phone, clinic and administration, and all that phone,
 * handover and worklist say is kept aside after each act; asked about from the end it has to be the same, to the word.
 */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { knownAt } from '#api/clinician/replay/known-then.ts';
import { addDays } from '#core/time/day.ts';
import { flushReads } from '#data/audit/audit.ts';
import { instantAt } from '#data/civil-time.ts';
import { enterClinicDetail } from '#data/clinic/clinic-details.ts';
import { saveSettings } from '#data/clinic/clinic-settings.ts';
import { writeMachine } from '#data/clinic/machines.ts';
import { sendPatientMessage } from '#data/messages/patient-messages.ts';
import { setTeamMember } from '#data/patients/care-team.ts';
import { patientOf } from '#data/patients/people.ts';
import { baselineOf, sheetWith } from '#tests/api/corrections/setting.ts';
import {
  type CareSetting,
  careSetting,
  colleague,
  firstDay,
  inCare,
  limitOn,
  worklistItemsOf,
} from '#tests/api/episode/setting.ts';
import { zone } from '#tests/support/clinic.ts';
import { sendMorning, sendSession } from '#tests/support/sore-knee.ts';

let at: CareSetting;
let patientId: string;
type Known = Awaited<ReturnType<typeof knownAt>>;
interface Kept {
  readonly act: string;
  readonly instant: number;
  readonly known: Known;
}
const lived: Kept[] = [];

const reason = 'Typed on the wrong line.';
const session = (day: number, time: string, pain: number, over: object = {}) =>
  sendSession(at.accessOn(day, time), patientId, at.item, pain, over);
const staff = (day: number, time: string) => at.clinician(day, time).clinician;
const newestId = async (subject: 'baseline' | 'limit' | 'screening', day: number, time: string) =>
  (await staff(day, time).corrections.entries({ patientId, subject }))[0]!.id;
const correct = async (
  subject: 'baseline' | 'limit' | 'screening',
  replacement: object | undefined,
  day: number,
) =>
  staff(day, '15:00').corrections.enterInError({
    ...{ patientId, subject, reason, replacement, confirmed: true },
    subjectId: await newestId(subject, day, '14:59'),
  });
const detail = (name: string, value: string, seen: number, day: number, because = 'changed-since') =>
  staff(day, '12:00').people.changeDetails({
    patientId,
    changes: [{ detail: name, value, because, reason: because === 'changed-since' ? null : reason, seen }],
  });
const acknowledged = async (day: number, time: string) => {
  const [item] = await worklistItemsOf(at, day, time);
  return staff(day, time).worklist.acknowledge({ patientId, key: item!.key });
};
const answered = async (day: number, time: string, over: object) => {
  const { decisions } = await staff(day, time).review.get({ patientId });
  const response = { decisionId: decisions.at(-1)!.id, reason: 'Seen and felt today.', ...over };
  return staff(day, time).review.respond({ patientId, response });
};

/** Each at its own instant; what only arrives, amends or corrects later is among them. */
const acts: readonly (readonly [day: number, time: string, act: string, work: () => Promise<unknown>])[] = [
  [0, '18:00', 'a session', () => session(0, '18:00', 3, { entryId: 'first' })],
  [1, '08:00', 'a morning', () => sendMorning(at.accessOn(1, '08:00'), patientId, 2)],
  [
    1,
    '11:00',
    'a baseline',
    () => staff(1, '11:00').review.setBaseline({ patientId, baseline: baselineOf() }),
  ],
  [
    2,
    '10:00',
    'a message from the clinic',
    () => staff(2, '10:00').review.write({ patientId, text: 'Well done.' }),
  ],
  [2, '20:00', 'a painful session', () => session(2, '20:00', 8, { entryId: 'second' })],
  [3, '09:30', 'something acknowledged', () => acknowledged(3, '09:30')],
  [
    3,
    '10:00',
    'a decision overruled',
    () => answered(3, '10:00', { kind: 'override', decision: 'hold', until: addDays(firstDay, 9) }),
  ],
  [
    3,
    '19:00',
    'a session amended into less',
    () =>
      session(3, '19:00', 4, {
        ...{ entryId: 'third', amends: 'second', day: addDays(firstDay, 2) },
        beganAt: instantAt(addDays(firstDay, 2), '19:30', zone),
        endedAt: instantAt(addDays(firstDay, 2), '19:50', zone),
      }),
  ],
  [4, '09:00', 'a limit', () => staff(4, '09:00').care.addLimit({ patientId, limit: limitOn() })],
  [4, '15:00', 'the limit corrected', () => correct('limit', limitOn({ limitKg: 2 }), 4)],
  [
    5,
    '10:00',
    'an event',
    () =>
      staff(5, '10:00').care.addEvent({
        patientId,
        event: { day: addDays(firstDay, 5), kind: 'fall', joint: null, remark: null },
      }),
  ],
  [5, '12:00', 'a birth day corrected', () => detail('birthDay', '1938-06-01', 1, 5, 'entered-in-error')],
  [
    5,
    '15:00',
    'a baseline corrected',
    () => correct('baseline', baselineOf({ usualPain: 1, usualPainTop: 1 }), 5),
  ],
  [
    6,
    '09:00',
    'screened again',
    () => staff(6, '09:00').screening.record({ patientId, screening: sheetWith(['osteoporosis']) }),
  ],
  [6, '15:00', 'that screening corrected', () => correct('screening', sheetWith(['hot-joint']), 6)],
  [
    7,
    '07:00',
    'a session that arrives five days late',
    () =>
      session(7, '07:00', 6, {
        day: addDays(firstDay, 1),
        beganAt: instantAt(addDays(firstDay, 1), '17:00', zone),
        endedAt: instantAt(addDays(firstDay, 1), '17:20', zone),
      }),
  ],
  [
    7,
    '09:00',
    'a warning sign',
    () =>
      staff(7, '09:00').danger.report({
        patientId,
        sign: { flags: ['calf-pain-swelling'], joint: null, remark: null },
      }),
  ],
  [7, '12:00', 'another telephone', () => detail('phone', '020 913 0100', 0, 7)],
  [
    8,
    '09:00',
    'settings changed',
    () =>
      saveSettings(at.accessOn(8, '09:00'), { 'severe-pain': 7, 'screening-valid-days': 30 }, 'Local rule'),
  ],
  [
    8,
    '10:00',
    'a message from the patient',
    () => sendPatientMessage(at.accessOn(8, '10:00'), patientId, 'It hurts on stairs.'),
  ],
  [
    8,
    '12:00',
    'a machine',
    () =>
      writeMachine(at.accessOn(8, '12:00'), {
        row: {
          ...{ name: 'Leg press', kind: 'leg-press', loading: 'stack', place: 'Gym' },
          ...{ firstKg: 10, stepKg: 5, lastKg: 30, hasHalfStep: false },
        } as never,
        isRetired: false,
        replaces: null,
      }),
  ],
  [
    9,
    '16:00',
    'the clinic rung at another number',
    () =>
      enterClinicDetail(at.accessOn(9, '16:00'), {
        detail: 'phone',
        seen: '210 000 000',
        after: '210 000 001',
      }),
  ],
  [
    10,
    '09:00',
    'an exercise ended',
    () =>
      staff(10, '09:00').prescriptions.end({
        patientId,
        prescriptionId: at.item.prescriptionId,
        reason,
      } as never),
  ],
];

const live = async (day: number, time: string): Promise<Known> => {
  const access = at.accessOn(day, time);
  return knownAt(access, (await patientOf(access, patientId))!);
};

beforeAll(async () => {
  at = await careSetting();
  ({ patientId } = at);
  await inCare(at);
  for (const [day, time, act, work] of acts) {
    await work();
    lived.push({ act, instant: at.accessOn(day, time).now, known: await live(day, time) });
  }
}, 120_000);
afterAll(() => at.store.close());

const askedAt = async (instant: number | string) =>
  at.clinician(60).clinician.replay.knownThen({ patientId, at: String(instant) });

describe('a record as it was known then', () => {
  it.each(acts.map(([, , act], place) => [place, act] as const))(
    'says after act %i, %s, all that phone, handover and worklist said',
    async (place) => {
      const { instant, known } = lived[place]!;
      expect((await askedAt(instant)).known).toEqual(known);
    },
  );

  it('was another one after each act, so that seeing what came later would show', () => {
    const texts = lived.map(({ known }) => JSON.stringify(known));
    const same = lived.filter((_, place) => place > 0 && texts[place] === texts[place - 1]);
    expect(same.map(({ act }) => act)).toEqual(['a machine']);
  });

  it('a moment before an act it is what it was before it', async () => {
    for (const [place, { act, instant }] of lived.entries()) {
      if (!/corrected|amended|rung/.test(act)) continue;
      const before = (await askedAt(instant - 1)).known!;
      const { known } = lived[place - 1]!;
      const told = ({ messages, screening, baselines, handover, phone }: Known) => {
        return {
          messages,
          screening,
          baselines,
          ...handover,
          dangers: [],
          plan: [],
          day: '',
          ring: phone.clinic,
        };
      };
      expect(told(before)).toEqual(told(known));
    }
  });

  it('is of nobody before the clinic had a record', async () => {
    expect(await askedAt(firstDay.replace('03-02', '02-01'))).toMatchObject({ known: null });
  });

  it('is asked for by a day, by a day and a time, or as a decision names it; never ahead of now', async () => {
    const evening = await askedAt(`${firstDay}T18:00`);
    expect(evening.at).toBe(lived[0]!.instant);
    expect((await askedAt(firstDay)).known).toMatchObject({ sessions: evening.known!.sessions });
    expect((await askedAt(firstDay)).at).toBe(instantAt(addDays(firstDay, 1), '00:00', zone) - 1);
    await expect(askedAt('soon')).rejects.toThrow(/such as 2026-03-02T18:00/);
    await expect(askedAt(addDays(firstDay, 61))).rejects.toThrow(/not still to come/);
    await expect(askedAt(`${addDays(firstDay, 60)}T09:01`)).rejects.toThrow(/not still to come/);
  });

  it('is opened by those who may open the record now, and each opening is in the access log', async () => {
    await askedAt(firstDay);
    await flushReads(at.store);
    const [row] = at.store.reader.client
      .prepare(
        "SELECT count(*) AS n FROM audit WHERE subject = 'clinician.replay.knownThen' AND patient_id = ?",
      )
      .all(patientId) as { n: number }[];
    expect(row!.n).toBeGreaterThan(0);
    const other = await colleague(at, 'Other');
    await setTeamMember(at.accessOn(61), patientId, other, true);
    await saveSettings(at.accessOn(61), { 'care-team-restriction': 1 }, 'Only the team');
    await expect(at.clinician(61).clinician.replay.knownThen({ patientId, at: firstDay })).rejects.toThrow(
      /care team/,
    );
  });
});
