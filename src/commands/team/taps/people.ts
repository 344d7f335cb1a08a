/** Invented people for the paths that are counted, told through the functions the product uses. */
import path from 'node:path';
import { readEnvironment } from '#commands/environment.mjs';
import type { Joint } from '#core/exercises/joints.ts';
import type { Access } from '#data/access.ts';
import { actOnShortSigns } from '#data/danger/short-signs.ts';
import { createClinic } from '#data/patients/people.ts';
import { body, measures, plans, prescribes, pressure, screens, setsBaseline, toFailure } from '#demo/acts.ts';
import { demoClinic, demoPassphrase } from '#demo/clinic.ts';
import { accessAt } from '#demo/context.ts';
import { atHome, loads } from '#demo/home.ts';
import { occlusionCleared } from '#demo/patients/occlusion-cleared.ts';
import { on, type Story, week } from '#demo/story.ts';
import { openRecord, tell } from '#demo/tell.ts';
import { openRuntime } from '#server/runtime.ts';
import { openAccount } from '#server/sign-in/auth.ts';

/** A Thursday: the last list of signs was answered that Wednesday, within seven days. */
const tapsDay = '2026-04-23';
/** Half past seven in Dublin: inside the hours in which a morning is taken. */
export const tapsNow = `${tapsDay}T07:30:00+01:00`;

const exercises = {
  knee: { method: 'low-load', exerciseId: 'knee-extension-seated', side: 'right', sessionsPerWeek: 3 },
  chair: {
    method: 'variation',
    exerciseId: 'sit-to-stand-chair',
    side: 'both',
    repetitionsLow: 8,
    repetitionsHigh: 12,
    sessionsPerWeek: 3,
  },
  bridge: {
    method: 'variation',
    exerciseId: 'bridge-two-legs',
    side: 'both',
    repetitionsLow: 8,
    repetitionsHigh: 12,
    sessionsPerWeek: 3,
  },
} as const;

/** Two weeks of quiet mornings and sessions up to yesterday; today stands on the plan and nothing of it is sent. */
export const trained = (
  id: string,
  items: readonly (keyof typeof exercises)[],
  joints: readonly Joint[],
  inflammatoryArthritis = false,
): Story => ({
  id,
  email: `${id}@demo.invalid`,
  shows: 'counted',
  person: { givenName: 'Test', familyName: id, birthDay: '1958-06-01', phone: null },
  profile: {
    diagnosis: 'Knee osteoarthritis',
    inflammatoryArthritis,
    followedJoints: [...joints],
    ownedLoadsKg: loads(2, 5, 0.5),
    ownedEquipment: atHome('ankle weight'),
    formulaSex: 'female',
  },
  days: 17,
  visits: [
    on(
      0,
      screens(),
      measures(...body(71, 162), pressure(128, 78), toFailure('knee-extension-seated', 'right', 6, 14)),
      ...items.map((item) => prescribes(item, exercises[item])),
      ...joints.map((joint) => setsBaseline(joint, 2, 10, 'As told.')),
      plans(Object.fromEntries(items.map((item) => [item, 'Mon Tue Thu']))),
    ),
  ],
  weeks: [
    // One point over usual on the mornings after: the dose holds, and this week tells of no change.
    week(0, '. 3 2 2 3 2 2', 10, 'Mon 2 3 2, Thu 2 3 2'),
    week(7, '2 3 2 2 3 2 2', 10, 'Mon 2 3 2, Thu 2 3 2'),
    week(14, '2 3 3', 10, 'Mon 2 3 2, Tue 2 3 2'),
  ],
  remarks: [],
  expected: [],
  disagreements: [],
});

/** The story of the demo with a cuff at home, up to a Thursday on which it is done. */
const withCuff: Story = {
  ...occlusionCleared,
  id: 'taps-cuff',
  email: 'taps-cuff@demo.invalid',
  days: 59,
  weeks: [...occlusionCleared.weeks.slice(0, -1), week(56, '2 2 2', 10, 'Mon 1 3 2')],
};

/** In the order in which they are asked about; the exercises load the last two. */
export const sixJoints: readonly Joint[] = [
  'left-hand',
  'right-hand',
  'left-wrist',
  'right-wrist',
  'left-knee',
  'right-knee',
];

const people: readonly Story[] = [
  trained('taps-two', ['knee', 'chair'], ['right-knee']),
  trained('taps-three', ['knee', 'chair', 'bridge'], ['right-knee']),
  trained('taps-flare', ['knee', 'chair'], ['left-knee', 'right-knee']),
  trained('taps-six', ['knee', 'chair'], sixJoints, true),
  trained('taps-six-flare', ['knee', 'chair'], sixJoints, true),
  trained('taps-six-apart', ['knee', 'chair'], sixJoints, true),
  withCuff,
];

/**
 * Fills a new file with the clinic, a clinician who has approved the short wording, and the people; `after` is
 * what comes in on the morning of the count.
 */
export const fill = async (
  file: string,
  port: string,
  told: readonly Story[] = people,
  after: (access: Access) => Promise<void> = async () => {},
): Promise<void> => {
  const at = openRuntime(
    readEnvironment({ DEMO: '1', DATABASE_FILE: path.resolve(file), PORT: port, HOST: '127.0.0.1' }),
  );
  try {
    await createClinic(at.store, demoClinic, Date.parse('2025-09-01T09:00:00+01:00'));
    const open = (email: string, name: string, role: 'clinician' | 'patient', patientId: string | null) =>
      openAccount(at.auth, {
        email,
        name,
        clinicId: demoClinic.id,
        role,
        patientId,
        password: demoPassphrase,
      });
    const clinician = {
      id: await open('taps-clinician@demo.invalid', 'Nuala Derravane', 'clinician', null),
      name: 'Nuala Derravane',
    };
    const context = {
      store: at.store,
      auditKey: at.keys.audit,
      clinicId: demoClinic.id,
      zone: demoClinic.zone,
      clinician,
      now: Date.parse(tapsNow),
      today: tapsDay,
    };
    for (const story of told) {
      await openRecord(context, story);
      const id = await open(`${story.id}@demo.invalid`, story.person.givenName, 'patient', story.id);
      await tell(context, story, { id, name: story.person.givenName });
    }
    await actOnShortSigns(accessAt(context, clinician, Date.parse('2026-04-20T09:00:00+01:00')), 'approved');
    await after(accessAt(context, clinician, Date.parse(tapsNow)));
  } finally {
    at.store.close();
  }
};
