/** A demo clinic loaded into a real database, and what can be read from it on a day of a story. */
import type { Dose } from '#core/prescribing/dose.ts';
import type { Access } from '#data/access.ts';
import { dayAt } from '#data/civil-time.ts';
import type { Store } from '#data/database/store.ts';
import { type Decision, decisionsOf } from '#data/decision/decisions.ts';
import { type Prescription, prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { demoClinic, demoNow, otherClinic } from '#demo/clinic.ts';
import { itemIdOf } from '#demo/clinician.ts';
import type { DemoTarget } from '#demo/load.ts';
import { otherClinicStory } from '#demo/other-clinic.ts';
import type { Disagreement, Expected, Story } from '#demo/story.ts';

export const auditKey = Buffer.alloc(32, 9);

export const target = (store: Store, openAccount?: DemoTarget['openAccount']): DemoTarget => ({
  store,
  auditKey,
  openAccount: openAccount ?? (async ({ email }) => `user of ${email}`),
});

export const placeOf = (story: Story) => (story === otherClinicStory ? otherClinic : demoClinic);

export const accessTo = (
  store: Store,
  place: typeof demoClinic | typeof otherClinic = demoClinic,
): Access => {
  const now = Date.parse(demoNow);
  const day = dayAt(now, place.zone);
  return { store, auditKey, clinicId: place.id, actorId: 'reader', actorName: 'Reader', now, day };
};

const dayMs = 86_400_000;

/** Noon in UTC: after the morning answers and the visit, before the evening's session. */
export const middayOf = (story: Story, day: number): number =>
  Date.parse(`${demoNow.slice(0, 10)}T12:00:00Z`) + (day - story.days) * dayMs;

export interface Told {
  readonly decisions: readonly Decision[];
  readonly versions: readonly Prescription[];
}

export const toldOf = async (store: Store, story: Story): Promise<Told> => {
  const access = accessTo(store, placeOf(story));
  return {
    decisions: await decisionsOf(access, story.id, '2025-01-01'),
    versions: await prescriptionsOf(access, story.id),
  };
};

export const decisionsInForceAt = (told: Told, joint: string, instant: number): Decision | null =>
  told.decisions.filter((row) => row.joint === joint && row.evaluatedAt <= instant).at(-1) ?? null;

const loadInWords = (kg: number): string => (kg < 1 ? `${kg * 1000} g` : `${kg} kg`);

const inWords = (dose: Dose): string => {
  if (dose.method === 'occlusion') {
    const cuff = dose.cuff.kind === 'pneumatic' ? `${dose.cuff.pressureMmhg} mmHg` : 'wrap';
    return `${dose.scheme.join('/')}, ${dose.loadKg} kg, ${cuff}`;
  }
  const { low, high } = dose.repetitions;
  const band = `${dose.sets} × ${low}–${high}`;
  if (dose.method === 'low-load') return `${band}, ${loadInWords(dose.loadKg)}`;
  const held = dose.hold ? ` × ${dose.hold.seconds} s` : '';
  return `${band}${held}${dose.mark === undefined ? '' : `, mark ${dose.mark}`}`;
};

const before = (at: number | null, instant: number): boolean => at !== null && at <= instant;

/** Versions of a line as they stood at an instant. */
const versionsAt = (told: Told, story: Story, item: string, instant: number) =>
  told.versions.filter((row) => row.itemId === itemIdOf(story.id, item) && row.recordedAt <= instant);

export const inForceAt = (told: Told, story: Story, item: string, instant: number): string | null => {
  const newest = versionsAt(told, story, item, instant)
    .filter((row) => before(row.signedAt, instant))
    .sort((a, b) => a.version - b.version)
    .at(-1);
  return newest && !before(newest.endedAt, instant) ? inWords(newest.dose) : null;
};

export const waitsAt = (told: Told, story: Story, item: string, instant: number): string | null => {
  const newest = versionsAt(told, story, item, instant)
    .sort((a, b) => a.version - b.version)
    .at(-1);
  const waits = newest && !before(newest.signedAt, instant) && !before(newest.endedAt, instant);
  return waits ? inWords(newest.dose) : null;
};

export interface Claim extends Pick<Disagreement, 'on' | 'of'> {
  readonly says: string | null;
}

export const claimsOf = ({ joint, decision, inForce, waits }: Expected): readonly Claim[] => [
  { on: 'decision', of: joint, says: decision },
  ...Object.entries(inForce ?? {}).map(([of, says]) => ({ on: 'in force' as const, of, says })),
  ...Object.entries(waits ?? {}).map(([of, says]) => ({ on: 'waits' as const, of, says })),
];
