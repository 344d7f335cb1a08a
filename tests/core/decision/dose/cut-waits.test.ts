/** Which mornings end the waiting of a cut that only pain asks for: how many, how far back, and in which joint. */
import { describe, expect, it } from 'vitest';
import { cutWaits } from '#core/decision/dose/cut-waits.ts';
import { engineSettingValues } from '#core/decision/settings.ts';
import { version3 } from '#core/decision/version-3-settings.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { MorningRecord, PatientRecord, SessionRecord } from '#core/record/record.ts';
import { addDays, dayNumber } from '#core/time/day.ts';
import { variation } from '../propose.ts';
import {
  baseline,
  judgedMorning,
  knee,
  kneeDose,
  morning,
  noonOf,
  record,
  session,
  shoulder,
  shoulderVersion,
  version,
} from '../small-record.ts';

const quiet = 1;
/** 2 over usual pain. */
const over = 3;

interface Done {
  /** Days back of the session, and what the morning after it said; left out where nobody answered. */
  readonly back: number;
  readonly pain?: number | null;
  readonly recordedAt?: number;
}

const recordOf = (done: readonly Done[], changed: Partial<PatientRecord> = {}) => {
  const sessions: SessionRecord[] = done.map(({ back, recordedAt }) => {
    const day = addDays(judgedMorning, -back);
    const known = recordedAt === undefined ? {} : { recordedAt };
    return session(day, known, {}, [version(), shoulderVersion]);
  });
  const mornings: MorningRecord[] = done.flatMap(({ back, pain }) =>
    pain === undefined ? [] : [morning(addDays(judgedMorning, 1 - back), { pain })],
  );
  return record({ sessions, mornings, baselines: [baseline()], ...changed });
};

const waits = (
  of: PatientRecord,
  more: { dose?: Dose; present?: Dose; joints?: readonly Joint[]; settings?: object } = {},
) =>
  cutWaits({
    record: of,
    item: {
      itemId: 'knee',
      version: version({ dose: more.present ?? kneeDose }),
      limitingJoints: more.joints ?? [knee],
      decision: 'ease-back',
      largestStep: null,
      today: 'as-planned',
      contact: 'none',
      reasons: [],
    },
    at: noonOf(judgedMorning),
    flareDays: 0,
    tolerated: [{ dose: more.dose ?? kneeDose, day: dayNumber(judgedMorning) - 20 }],
    settings: engineSettingValues({ ...version3, ...more.settings }),
  });
const withMornings = (...pains: readonly (number | null | undefined)[]) =>
  waits(
    recordOf(
      pains.map((pain, place) =>
        pain === undefined ? { back: 1 + 2 * place } : { back: 1 + 2 * place, pain },
      ),
    ),
  );

describe('the mornings after the last three sessions', () => {
  it('are looked at, the newest first, and none before them', () => {
    expect(withMornings(quiet, over, over)).toBeNull();
    expect(withMornings(quiet, quiet, over, over)).toBe('tolerated-lately');
    expect(withMornings(quiet, over, quiet, over)).toBe('tolerated-lately');
  });

  it('are the last three that were answered: one left out, or without a word on pain, is passed over', () => {
    for (const open of [null, undefined]) {
      expect(withMornings(open, over, quiet, over)).toBeNull();
      expect(withMornings(open, over, quiet, quiet, over)).toBe('tolerated-lately');
    }
  });

  it('count for sessions of the last 14 days', () => {
    const second = (back: number) =>
      waits(
        recordOf([
          { back: 1, pain: over },
          { back, pain: over },
        ]),
      );
    expect([13, 14, 15].map(second)).toEqual([null, null, 'tolerated-lately']);
  });

  it('count once the session is known', () => {
    const { instant } = noonOf(judgedMorning);
    const second = (recordedAt: number) =>
      waits(
        recordOf([
          { back: 1, pain: over },
          { back: 3, pain: over, recordedAt },
        ]),
      );
    expect([instant - 1, instant, instant + 1].map(second)).toEqual([null, null, 'tolerated-lately']);
  });

  it('say nothing where no session loaded the joint', () => {
    expect(waits(recordOf([]))).toBe('tolerated-lately');
  });

  it('end the waiting in one joint of the line', () => {
    const of = recordOf(
      [
        { back: 1, pain: over },
        { back: 3, pain: over },
      ],
      {
        baselines: [baseline(), baseline({ joint: shoulder })],
      },
    );
    expect(waits(of, { joints: [shoulder] })).toBe('tolerated-lately');
    expect(waits(of, { joints: [shoulder, knee] })).toBeNull();
  });
});

describe('a dose that was borne', () => {
  const calm = recordOf([{ back: 1, pain: 0 }]);

  it('is at most a tenth under the present one: 9 of 10 kg, not 8.9', () => {
    const at = (loadKg: number) => waits(calm, { dose: { ...kneeDose, loadKg } });
    expect([8.9, 9, 10].map(at)).toEqual([null, 'tolerated-lately', 'tolerated-lately']);
  });

  it('is none that cannot be compared', () => {
    const unknown = { ...variation, effectiveLoadKg: null };
    expect(waits(calm, { present: unknown, dose: { ...unknown, exerciseId: 'another' } })).toBeNull();
  });

  it('keeps no cut back where the clinic lets none wait', () => {
    expect(waits(calm)).toBe('tolerated-lately');
    expect(waits(calm, { settings: { 'tolerated-cut-rise': 0 } })).toBeNull();
    expect(waits(calm, { settings: { 'tolerated-cut-rise': 1 } })).toBe('tolerated-lately');
  });
});
