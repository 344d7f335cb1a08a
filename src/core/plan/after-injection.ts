/**
 * The days after a joint was injected: exercises that load it are the easier session. The sources disagree on
 * rest (`injection-evidence.ts`), so the length is the clinic's choice. Only the day of an injection is known
 * and not its hour: one day stands for 24 hours and two for 48, each counted on to its end.
 */
import type { CareAround } from '../episode/care-eligibility.ts';
import { programmeDefaults } from '../prescribing/programme/session-length.ts';
import type { PrescriptionVersion } from '../record/record.ts';
import type { SettingValues } from '../sources/clinic-setting.ts';
import { addDays, type Day } from '../time/day.ts';
import type { PlanReason } from './plan.ts';

const setting = 'injection-easier-days';

const easierUntil = (injectedOn: Day, settings: SettingValues): Day =>
  addDays(injectedOn, settings[setting] ?? programmeDefaults[setting]);

interface Injected {
  readonly care: Pick<CareAround, 'events'>;
  readonly settings: SettingValues;
  readonly at: { readonly day: Day };
}

type InjectionReason = Extract<PlanReason, { readonly code: 'injection-easier' }>;

/** An injection of which nobody named the joint may have been any. */
export const injectionReasons = (
  { care, settings, at }: Injected,
  { joints }: Pick<PrescriptionVersion, 'joints'>,
): readonly InjectionReason[] =>
  care.events.flatMap(({ kind, day: injectedOn, joint }): readonly InjectionReason[] => {
    if (kind !== 'joint-injection' || (joint !== null && !joints.includes(joint))) return [];
    const until = easierUntil(injectedOn, settings);
    return injectedOn <= at.day && at.day <= until
      ? [{ code: 'injection-easier', today: 'bad-day', joint, injectedOn, until }]
      : [];
  });
